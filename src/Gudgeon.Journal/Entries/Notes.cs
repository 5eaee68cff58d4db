using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(Said), "said")]
[JsonDerivedType(typeof(Noted), "noted")]
[JsonDerivedType(typeof(Asked), "asked")]
[JsonDerivedType(typeof(Settled), "settled")]
[JsonDerivedType(typeof(Waiting), "waiting")]
[JsonDerivedType(typeof(Struck), "struck")]
public abstract partial record Entry;

/// <summary>A line as it was typed or spoken. What was understood of it stands in the entries of the same act.</summary>
/// <param name="Unused">Words that no entry of the act used.</param>
public sealed record Said(string Text, string Unused = "") : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        string.IsNullOrWhiteSpace(Text) ? new Refusal("line", "nothing", "a few words", "Say what you did") : null;

    public override string Words(Bench bench) => $"You said: {Text}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
    }
}

/// <summary>What was seen about a thing.</summary>
/// <param name="What">Part, joint, line; null for the engine as a whole.</param>
/// <param name="Mark">One of <see cref="Marks"/>.</param>
public sealed record Noted(string? What, string Mark, string Text) : Entry
{
    public static readonly IReadOnlyList<string> Marks = ["damaged", "missing", "odd", "seen", "marked", "measured", "found", "put", "parted", "tagged", "to buy", "left on", "planned", "note"];

    public override IEnumerable<string> About() => What is null ? [] : [What];

    public override Refusal? Check(Bench bench) =>
        !Marks.Contains(Mark) ? new Refusal("note", $"\"{Mark}\"", string.Join(", ", Marks), "Choose one of these")
        : string.IsNullOrWhiteSpace(Text) ? new Refusal("note", "nothing", "what you saw", "Say what you saw")
        : What is null || bench.Knows(What) ? null
        : new Refusal("note", $"\"{What}\"", "a thing of this engine", "Look at its name, or add it as a part");

    public override string Words(Bench bench)
    {
        var name = What is null ? "Engine" : bench.NameOf(What);
        return $"{name}: {Mark}, {(Text.StartsWith($"{name}: ", StringComparison.Ordinal) ? Text[(name.Length + 2)..] : Text)}";
    }

    internal override void Apply(Bench bench, Recorded recorded) => bench.NotesAbout.Add(recorded);
}

/// <summary>Something that the book could not settle, kept as it was said.</summary>
/// <param name="Text">The words.</param>
/// <param name="Why">Why it is open: read two ways, not understood, a question of the owner's.</param>
public sealed record Asked(string Text, string Why, string? What = null) : Entry
{
    public override IEnumerable<string> About() => What is null ? [] : [What];

    public override Refusal? Check(Bench bench) =>
        string.IsNullOrWhiteSpace(Text) ? new Refusal("question", "nothing", "the words", "Say what is open") : null;

    public override string Words(Bench bench) => $"Open: \"{Text}\" ({Why})";

    internal override void Apply(Bench bench, Recorded recorded) => bench.OpenQuestions[recorded.Number] = recorded;
}

/// <summary>An open question got its answer.</summary>
public sealed record Settled(long Question, string Answer) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) => bench.OpenQuestions.ContainsKey(Question)
        ? null
        : new Refusal($"question {Question}", "it is not open", "the number of an open question", "Look at the list of open questions");

    public override string Words(Bench bench) => $"Question {Question} settled: {Answer}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.OpenQuestions.Remove(Question);
}

/// <summary>Work waits for something: a stand, a parcel, a friend.</summary>
/// <param name="Until">When it is expected; null when nobody knows.</param>
/// <param name="Over">True when the wait is over.</param>
public sealed record Waiting(string For, DateTimeOffset? Until = null, string? What = null, bool Over = false) : Entry
{
    public override IEnumerable<string> About() => What is null ? [] : [What];

    public override Refusal? Check(Bench bench) =>
        string.IsNullOrWhiteSpace(For) ? new Refusal("waiting", "nothing", "what you wait for", "Say what it is")
        : Over && !bench.Waits.ContainsKey(Key) ? new Refusal("waiting", $"\"{For}\"", "something that is waited for", "Look at the list of waits")
        : null;

    public override string Words(Bench bench) => Over ? $"No longer waiting for {For}" : $"Waiting for {For}{(Until is { } until ? $", {until:ddd d MMM yyyy}" : "")}";

    private string Key => For.Trim().ToLowerInvariant();

    internal override void Apply(Bench bench, Recorded recorded)
    {
        if (Over)
        {
            bench.Waits.Remove(Key);
        }
        else
        {
            bench.Waits[Key] = recorded;
        }
    }
}

/// <summary>An earlier entry does not count. It stays in the journal.</summary>
public sealed record Struck(long Entry, string Why = "") : Entry
{
    public override IEnumerable<string> About() => [];

    // Whether the rest of the book stands without it can only be seen by folding again: the book does that.
    public override Refusal? Check(Bench bench) => null;

    public override string Words(Bench bench) => $"Entry {Entry} struck out{(Why.Length > 0 ? $": {Why}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
    }
}
