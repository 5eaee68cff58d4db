namespace Gudgeon.Capture;

/// <summary>Finds the longest listed phrase at a token, by word stems.</summary>
/// <param name="strange">Which stems are no plain words and so may be a listed word misspelt; none when it is left out.</param>
internal sealed class PhraseBook<T>(Func<string, bool>? strange = null)
{
    private readonly Dictionary<string, List<(string[] Stems, T Value)>> byFirst = [];
    private readonly Spelling spelling = new();

    public void Add(string phrase, T value)
    {
        string[] stems = [.. phrase.Split(' ').SelectMany<string, string>(w => w.StartsWith('\'') ? [w] : [.. Tokeniser.Plain(w).Where(t => t.Sort is TokenSort.Word or TokenSort.Number).Select(t => t.Stem)])];
        if (stems.Length == 0)
            return;
        if (!byFirst.TryGetValue(stems[0], out var list))
            byFirst[stems[0]] = list = [];
        list.Add((stems, value));
        if (strange is null)
            return;
        foreach (string stem in stems)
            spelling.Add(stem);
    }

    /// <summary>Every entry of the longest phrase that stands at the token; empty when none does.</summary>
    public (List<T> Values, int To) Longest(IReadOnlyList<Token> tokens, int at)
    {
        var found = new List<T>();
        int longest = 0;
        if (at >= tokens.Count || !byFirst.TryGetValue(Meant(tokens[at].Stem), out var list))
            return (found, at);
        foreach (var (stems, value) in list)
        {
            if (stems.Length < longest || !Stands(tokens, at, stems))
                continue;
            if (stems.Length > longest)
                found.Clear();
            longest = stems.Length;
            found.Add(value);
        }

        return (found, at + longest);
    }

    private string Meant(string stem) => strange is not null && !byFirst.ContainsKey(stem) && spelling.Nearest(stem) is { } near && strange(stem) ? near : stem;

    private bool Stands(IReadOnlyList<Token> tokens, int at, string[] stems)
    {
        if (at + stems.Length > tokens.Count)
            return false;
        for (int i = 0; i < stems.Length; i++)
        {
            if (tokens[at + i].Stem != stems[i] && Meant(tokens[at + i].Stem) != stems[i])
                return false;
        }

        return true;
    }
}
