namespace Gudgeon.Capture;

/// <summary>
/// Words that name a condition and yet tell of none: "poked them through a box" is a deed, "in two rounds" a way of
/// doing, "stuck to the magnet" where something is.
/// </summary>
internal static class NoState
{
    private static readonly PhraseBook<HashSet<string>> Followers = Read();

    private static readonly HashSet<string> Holding = ["magnet", "magnets", "tape", "tack", "grease", "glue", "gum"];

    private static readonly HashSet<string> Own = ["my", "me", "your", "his", "her", "our"];

    private static readonly HashSet<string> Limbs = ["back", "hands", "hand", "arms", "arm", "knees", "knee", "fingers", "thumb", "head", "brain", "patience", "phone", "eyes", "legs", "shoulder", "wrist", "nerves", "day", "tea"];

    private static readonly HashSet<string> Links = ["is", "'s", "are", "'re", "was", "were", "has", "had", "all", "completely", "just", "really", "quite", "well", "absolutely", "totally", "feels", "feel", "now", "too"];

    public static bool At(IReadOnlyList<Token> tokens, int at, int to)
    {
        string next = Word(tokens, to);
        var (followers, end) = Followers.Longest(tokens, at);
        if (end == to && followers.Count > 0 && followers[0].Contains(next))
            return true;
        // "stuck to the magnet", "stuck in with grease", "stuck on with tape"
        if (Word(tokens, at) == "stuck" && Range(to, 4).TakeWhile(k => !Ends(tokens, k)).Any(k => Holding.Contains(Word(tokens, k)) && Range(to, k - to).All(i => Word(tokens, i) is "to" or "on" or "in" or "with" or "a" or "the" or "my" or "of" or "some" or "masking" or "dab" or "bit")))
            return true;
        return Speaker(tokens, at);
    }

    /// <summary>"my back is finished", "me knees are shot": the one who speaks, no part.</summary>
    private static bool Speaker(IReadOnlyList<Token> tokens, int at)
    {
        int k = at - 1;
        while (k > 0 && Links.Contains(Word(tokens, k)))
            k--;
        return k > 0 && k < at - 1 && Limbs.Contains(Word(tokens, k)) && Own.Contains(Word(tokens, k - 1)) && Word(tokens, k - 2) is not ("off" or "from" or "of" or "to" or "in" or "on");
    }

    private static PhraseBook<HashSet<string>> Read()
    {
        var book = new PhraseBook<HashSet<string>>();
        foreach (string[] row in Lexicon.Rows("no-state"))
        {
            HashSet<string> after = [.. row[1].Split("; ")];
            foreach (string words in row[0].Split("; "))
                book.Add(words, after);
        }

        return book;
    }

    private static IEnumerable<int> Range(int from, int count) => Enumerable.Range(from, Math.Max(0, count));

    private static bool Ends(IReadOnlyList<Token> tokens, int at) => at >= tokens.Count || tokens[at].IsBreak;

    private static string Word(IReadOnlyList<Token> tokens, int at) => at >= 0 && at < tokens.Count && tokens[at].IsWord ? tokens[at].Text : "";
}
