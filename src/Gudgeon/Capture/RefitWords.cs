namespace Gudgeon.Capture;

/// <summary>The words around a part that goes on, and around a figure that it is tightened to, by the place they have in the telling.</summary>
internal static class RefitWords
{
    private static readonly Dictionary<string, PhraseBook<string>> Books = Lexicon.Rows("refit").GroupBy(r => r[0]).ToDictionary(g => g.Key, Book);

    private static PhraseBook<string> Book(IEnumerable<string[]> rows)
    {
        var book = new PhraseBook<string>();
        foreach (string[] word in rows.SelectMany(r => r[1].Split("; ")).Select(w => w.Split('=')))
            book.Add(word[0], word[^1]);
        return book;
    }

    /// <summary>One past the longest phrase of the sort at the token, or the token itself.</summary>
    public static int To(string sort, IReadOnlyList<Token> tokens, int at) => At(sort, tokens, at)?.To ?? at;

    /// <summary>What the longest phrase of the sort at the token stands for.</summary>
    public static (string Word, int To)? At(string sort, IReadOnlyList<Token> tokens, int at) =>
        at < tokens.Count && tokens[at].IsWord && Books[sort].Longest(tokens, at) is { Values: [var word, ..] } found ? (word, found.To) : null;
}
