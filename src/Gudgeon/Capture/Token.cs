namespace Gudgeon.Capture;

internal enum TokenSort
{
    Word,
    Number,
    Comma,
    Stop,
    Question,
    Other,
}

/// <summary>One word, figure or mark of what was said.</summary>
/// <param name="Text">Lower case; figures with a full stop as decimal mark.</param>
/// <param name="Glued">True when no space stands before it.</param>
internal readonly record struct Token(string Text, string Stem, TokenSort Sort, int Start, int Length, bool Glued)
{
    public bool IsWord => Sort == TokenSort.Word;
    public bool IsBreak => Sort is TokenSort.Comma or TokenSort.Stop or TokenSort.Question;
    public bool IsEnd => Sort is TokenSort.Stop or TokenSort.Question;

    /// <summary>Whether the word looks like a plural: it lost an s in its stem.</summary>
    public bool Plural => Sort == TokenSort.Word && Text != Stem;

    /// <summary>The word without its plural ending, so that one form stands for both.</summary>
    public static string StemOf(string word) => word switch
    {
        "keys" => "key",
        "this" or "is" or "was" or "has" or "its" or "us" or "as" or "yes" or "gas" or "pass" or "loss" or "across" or "cross" or "less" or "press" or "plus" or "does" or "always" or "sideways" or "towards" or "minus" or "glass" or "brass" => word,
        _ when word.Length > 4 && word.EndsWith("ies", StringComparison.Ordinal) => word[..^3] + "y",
        _ when word.Length > 4 && (word.EndsWith("shes", StringComparison.Ordinal) || word.EndsWith("ches", StringComparison.Ordinal) || word.EndsWith("xes", StringComparison.Ordinal) || word.EndsWith("sses", StringComparison.Ordinal)) => word[..^2],
        "halves" => "half",
        "shelves" => "shelf",
        _ when word.Length > 2 && word[^1] == 's' && word[^2] != 's' && word[^2] != '\'' => word[..^1],
        _ => word,
    };
}
