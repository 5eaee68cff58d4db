namespace Gudgeon.Capture;

/// <summary>
/// What was understood of one note. Every word of <paramref name="Text"/> is in the span of a fact, in the span of a
/// doubt, or in <paramref name="Unused"/>.
/// </summary>
public sealed record Heard(string Text, IReadOnlyList<Fact> Facts, IReadOnlyList<Doubt> Doubts, IReadOnlyList<TextSpan> Unused)
{
    /// <summary>The facts with those that are only offered: what the next note may speak of.</summary>
    internal IReadOnlyList<Fact> Spoken { get; init; } = Facts;

    /// <summary>The words that no fact and no doubt used.</summary>
    public IReadOnlyList<string> UnusedWords => [.. Unused.Select(s => s.Of(Text))];
}

/// <summary>One way to read what can be read two ways: the facts that would be recorded.</summary>
public sealed record Reading(string Echo, IReadOnlyList<Fact> Facts)
{
    /// <summary>Stands between the codes of its facts.</summary>
    internal const string And = " & ";

    /// <summary>Short and stable, by which this reading is chosen.</summary>
    public string Code => string.Join(And, Facts.Select(f => f.Code));
}

/// <summary>
/// What must be asked: words with several readings, a figure that was not told, or words not understood at all
/// (then <see cref="Readings"/> is empty, and the words become an open question in the book).
/// </summary>
public sealed record Doubt(DoubtSort Sort, string Question, string Words, IReadOnlyList<Reading> Readings, IReadOnlyList<TextSpan> Spans)
{
    public string Code => $"{(Readings.Count > 0 ? "either" : Sort == DoubtSort.NotUnderstood ? "kept" : "ask")} {string.Join(" | ", Readings.Select(r => r.Code))}".TrimEnd();
}

public enum DoubtSort
{
    /// <summary>The same words name several things of this engine.</summary>
    Which,

    /// <summary>The figure can mean two amounts.</summary>
    Figure,

    /// <summary>Something that a record needs was not told: how many, how long, seen from where.</summary>
    NotTold,

    /// <summary>Understood in one way, but said in a way that is not proven.</summary>
    Unproven,

    /// <summary>Nothing was made of these words.</summary>
    NotUnderstood,
}
