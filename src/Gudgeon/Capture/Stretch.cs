using System.Text;
using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>Tokens as one plain line, so that whole ways of speaking can be told by pattern and traced back to tokens.</summary>
internal sealed class Stretch
{
    private readonly List<(int At, int Token)> starts = [];

    public Stretch(IReadOnlyList<Token> tokens, int from, int to)
    {
        From = from;
        To = to;
        var line = new StringBuilder();
        for (int i = from; i < to; i++)
        {
            if (line.Length > 0)
                line.Append(' ');
            starts.Add((line.Length, i));
            line.Append(tokens[i].Text.Length > 0 ? tokens[i].Text.Replace('\n', '.') : ",");
        }

        Line = line.ToString();
    }

    public int From { get; }
    public int To { get; }
    public string Line { get; }

    /// <summary>First token and one past the last token of a group.</summary>
    public (int From, int To) Tokens(Group group)
    {
        int from = To;
        int to = From;
        foreach (var (at, token) in starts)
        {
            if (at >= group.Index && at < group.Index + group.Length)
            {
                from = Math.Min(from, token);
                to = Math.Max(to, token + 1);
            }
        }

        return (from, Math.Max(from, to));
    }
}
