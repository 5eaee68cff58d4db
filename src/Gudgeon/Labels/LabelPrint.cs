namespace Gudgeon.Labels;

/// <summary>One label as it is printed.</summary>
/// <param name="Side">Which half of a parted line: hose or port; empty for other things.</param>
/// <param name="Lines">The plain name, broken to fit.</param>
public sealed record LabelPrint(string Code, string Side, IReadOnlyList<string> Lines, double FontSize)
{
    /// <summary>Mean width of a letter of the text face, in parts of its height; generous, so that nothing is cut off.</summary>
    private const double LetterWidth = 0.56;

    /// <summary>Type sizes to try, in mm, largest first.</summary>
    private static readonly double[] sizes = [4.6, 4, 3.5, 3, 2.6];

    /// <summary>Breaks a name into lines within a box, in the largest type that fits; what fits in no size ends in an ellipsis.</summary>
    public static LabelPrint Fit(string code, string side, string name, double width, double height)
    {
        foreach (var size in sizes)
        {
            var lines = Break(name, (int)(width / (size * LetterWidth)));
            if (lines.Count * size * 1.15 <= height)
                return new LabelPrint(code, side, lines, size);
        }

        var most = Math.Max(1, (int)(height / (sizes[^1] * 1.15)));
        var cut = Break(name, (int)(width / (sizes[^1] * LetterWidth))).Take(most).ToArray();
        cut[^1] = $"{cut[^1].TrimEnd('…')}…";
        return new LabelPrint(code, side, cut, sizes[^1]);
    }

    private static List<string> Break(string name, int letters)
    {
        var lines = new List<string> { "" };
        foreach (var word in name.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var whole = lines[^1].Length == 0 ? word : $"{lines[^1]} {word}";
            if (whole.Length <= letters)
                lines[^1] = whole;
            else if (lines[^1].Length == 0)
                lines[^1] = word[..Math.Max(1, Math.Min(word.Length, letters - 1))] + (word.Length > letters - 1 ? "…" : "");
            else
                lines.Add(word.Length <= letters ? word : word[..Math.Max(1, letters - 1)] + "…");
        }

        return lines;
    }
}
