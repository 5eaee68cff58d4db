using System.Text.Json.Serialization;
using Gudgeon.Engine;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(BookStarted), "book-started")]
[JsonDerivedType(typeof(PartAdded), "part-added")]
[JsonDerivedType(typeof(PartAbsent), "part-absent")]
[JsonDerivedType(typeof(PartNamed), "part-named")]
[JsonDerivedType(typeof(LineAdded), "line-added")]
[JsonDerivedType(typeof(LineAbsent), "line-absent")]
[JsonDerivedType(typeof(AccessLearned), "access-learned")]
[JsonDerivedType(typeof(FactAnswered), "fact-answered")]
[JsonDerivedType(typeof(OperationDone), "operation-done")]
[JsonDerivedType(typeof(OperationUndone), "operation-undone")]
public abstract partial record Entry;

/// <summary>A book was started: its name and what the owner answered. No answers: the engine grows as it is stripped.</summary>
public sealed record BookStarted(string Title, IReadOnlyDictionary<string, string> Answers) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        bench.IsStarted ? new Refusal("book", "it was started already", "one start", "Start another book beside it")
        : string.IsNullOrWhiteSpace(Title) ? new Refusal("book", "no name", "a name for the book", "Give it one, such as the car's")
        : Answers.Count == 0 ? null
        : EngineAnswers.Read(Answers) is { Ok: false } read ? read.Refusals[0]
        : null;

    public override string Words(Bench bench) => $"Book \"{Title}\" started{(Answers.Count == 0 ? " from nothing" : "")}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        bench.Title = Title;
        bench.IsStarted = true;
        bench.Answers = Answers;
        if (Answers.Count > 0)
        {
            bench.Engine = Anatomy.Build(EngineAnswers.Read(Answers).Value);
            bench.ForgetPlaces();
        }
    }
}

/// <summary>A part that the tables lack was found on the engine.</summary>
/// <param name="Part">Its id: <c>own.</c> and a short name.</param>
/// <param name="FixedTo">What it is fixed to, or null.</param>
/// <param name="Count">Fasteners that hold it; null when nobody counted, 0 for none.</param>
public sealed record PartAdded(string Part, string Name, string? FixedTo = null, int? Count = null, string Size = "", string Fastener = "bolt") : Entry
{
    public override IEnumerable<string> About() => [Part];

    public override Refusal? Check(Bench bench) =>
        string.IsNullOrWhiteSpace(Name) ? new Refusal("part", "no name", "a name for it", "Call it what you like: the brass thing with two pipes")
        : !Part.StartsWith("own.", StringComparison.Ordinal) ? new Refusal("part", $"id \"{Part}\"", "an id that begins with own.", "Give it such an id")
        : bench.Engine.Parts.ContainsKey(Part) ? new Refusal(Name, "there is one of that name", "a name of its own", "Give it another name")
        : FixedTo is not null ? bench.NoSuchPart(FixedTo)
        : Count < 0 ? new Refusal(Name, $"{Count} fasteners", "0 or more", "Say how many hold it")
        : null;

    public override string Words(Bench bench) =>
        $"{Name} added as a part of this engine{(FixedTo is null ? "" : $", on the {bench.NameOf(FixedTo)}")}{(Count is > 0 ? $", held by {Count} {Size} {Fastener}s".Replace("  ", " ", StringComparison.Ordinal) : "")}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        bench.ForgetPlaces();
        bench.Engine.Add(new Part(Part, "own", Name, []) { Standing = Standing.Seen, Keeping = Keeping.OwnPlace });
        var joint = new Joint($"j-{Part}", "own", Part, FixedTo is null ? [] : [FixedTo])
        {
            Fasteners = Count == 0 ? [] : [Fastener],
            Guess = (Count ?? 1, Count ?? 4),
            SizeGuess = Size,
            Tightening = ["T"],
            OneUse = OneUse.Ask,
        };
        bench.Engine.Add(joint);
        if (Count is > 0)
        {
            var state = bench.ChangeJoint(joint.Id);
            state.Open(new Lot(Whereabouts.Engine, Count.Value, Size, Fastener));
            state.Required = Count;
            state.Standing = Standing.Counted;
        }
    }
}

/// <summary>This engine does not have that part. What hangs on it is not there either.</summary>
public sealed record PartAbsent(string Part) : Entry
{
    public override IEnumerable<string> About() => [Part];

    public override Refusal? Check(Bench bench) => bench.NoSuchPart(Part)
        ?? (bench.Part(Part).IsOn ? null : new Refusal(bench.NameOf(Part), $"it is {bench.Part(Part).Where.Words(bench.NameOf)}", "a part that nobody has touched", "Strike out the entry that took it off"));

    public override string Words(Bench bench) => $"No {bench.NameOf(Part)} on this engine";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        bench.ForgetPlaces();
        foreach (var id in bench.RidersOf(Part).Prepend(Part))
        {
            bench.ChangePart(id).Where = Whereabouts.Absent;
            foreach (var line in bench.Engine.LinesOf(id))
            {
                bench.ChangeLine(line).IsAbsent = true;
            }
        }
    }
}

/// <summary>The owner calls a part something else.</summary>
public sealed record PartNamed(string Part, string Name) : Entry
{
    public override IEnumerable<string> About() => [Part];

    public override Refusal? Check(Bench bench) => bench.NoSuchPart(Part)
        ?? (string.IsNullOrWhiteSpace(Name) ? new Refusal(bench.NameOf(Part), "an empty name", "a name", "Say what you call it") : null);

    public override string Words(Bench bench) => $"{bench.NameOf(Part)} is called {Name} now";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        bench.ForgetPlaces();
        bench.Engine.Replace(bench.Engine.Parts[Part] with { Name = Name.Trim(), Standing = Standing.Seen });
    }
}

/// <summary>A line that the tables lack was found.</summary>
/// <param name="From">Part id, or <c>ext</c> for the vehicle.</param>
public sealed record LineAdded(string Line, string Name, Circuit Circuit, string From, string To) : Entry
{
    public override IEnumerable<string> About() => [Line];

    public override Refusal? Check(Bench bench) =>
        string.IsNullOrWhiteSpace(Name) ? new Refusal("line", "no name", "a name for it", "Call it what you like")
        : bench.Engine.Lines.ContainsKey(Line) ? new Refusal(Name, "there is one of that name", "a name of its own", "Give it another name")
        : new[] { From, To }.Where(p => p != "ext").Select(bench.NoSuchPart).FirstOrDefault(f => f is not null);

    public override string Words(Bench bench) => $"{Name} added as a line of this engine";

    internal override void Apply(Bench bench, Recorded recorded) =>
        bench.Engine.Add(new Line(Line, "own", Name, new Port(From, $"{Line}-from"), new Port(To, $"{Line}-to"), Circuit) { Standing = Standing.Seen });
}

/// <summary>This engine does not have that line.</summary>
public sealed record LineAbsent(string Line) : Entry
{
    public override IEnumerable<string> About() => [Line];

    public override Refusal? Check(Bench bench) => bench.NoSuchLine(Line);

    public override string Words(Bench bench) => $"No {bench.NameOf(Line)} on this engine";

    internal override void Apply(Bench bench, Recorded recorded) => bench.ChangeLine(Line).IsAbsent = true;
}

/// <summary>What had to come off to get at something. Kept, and it governs the refit.</summary>
/// <param name="Target">Part, joint or line that could not be got at.</param>
/// <param name="Needs">What had to be off or parted first: all of it.</param>
public sealed record AccessLearned(string Target, IReadOnlyList<string> Needs, string Why = "") : Entry
{
    public override IEnumerable<string> About() => Needs.Prepend(Target);

    public override Refusal? Check(Bench bench)
    {
        var unknown = Needs.Prepend(Target).FirstOrDefault(id => !bench.Engine.Parts.ContainsKey(id) && !bench.Engine.Joints.ContainsKey(id) && !bench.Engine.Lines.ContainsKey(id) && !bench.Engine.Operations.ContainsKey(id));
        return unknown is not null ? new Refusal("access", $"\"{unknown}\"", "parts, joints or lines of this engine", "Add the part first")
            : Needs.Count == 0 ? new Refusal(bench.NameOf(Target), "nothing in its way", "what had to be off first", "Name it")
            : Needs.Contains(Target) ? new Refusal(bench.NameOf(Target), "itself in its own way", "something else", "Name what had to be off first")
            : Needs.Select(n => bench.WayBack(n, Target)).FirstOrDefault(w => w is not null) is { } way
                ? new Refusal(bench.NameOf(Target), $"{bench.NameOf(Needs[0])} before it", $"an order that can be worked, for the book holds already: {way}", "Strike out the one that is wrong")
            : null;
    }

    public override string Words(Bench bench) =>
        $"{string.Join(" and ", Needs.Select(bench.NameOf))} first, to get at the {bench.NameOf(Target)}{(Why.Length > 0 ? $" ({Why})" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Learn(this);
}

/// <summary>The owner answered a question of the tables.</summary>
public sealed record FactAnswered(string Fact, bool Yes) : Entry
{
    public override IEnumerable<string> About() => [Fact];

    public override Refusal? Check(Bench bench) => bench.Engine.Facts.ContainsKey(Fact)
        ? null
        : new Refusal("question", $"\"{Fact}\"", "a question of this engine", "Look at its name");

    public override string Words(Bench bench) => $"{bench.Engine.Facts[Fact].Question} {(Yes ? "Yes" : "No")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.SetFact(Fact, Yes);
}

/// <summary>Something was done to the whole engine: oil drained, engine out.</summary>
public sealed record OperationDone(string Operation, string Note = "") : Entry
{
    public override IEnumerable<string> About() => [Operation];

    public override Refusal? Check(Bench bench) =>
        !bench.Engine.Operations.ContainsKey(Operation) ? new Refusal("operation", $"\"{Operation}\"", "an operation of this engine", "Look at its name")
        : bench.IsDone(Operation) ? new Refusal(bench.NameOf(Operation), "it is done already", "something not yet done", "Nothing to do here")
        : null;

    public override string Words(Bench bench) => $"Done: {bench.NameOf(Operation)}{(Note.Length > 0 ? $", {Note}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.SetDone(Operation, true, recorded.Number);
}

/// <summary>It was done the other way round: oil filled, engine in.</summary>
public sealed record OperationUndone(string Operation, string Note = "") : Entry
{
    public override IEnumerable<string> About() => [Operation];

    public override Refusal? Check(Bench bench) =>
        !bench.Engine.Operations.ContainsKey(Operation) ? new Refusal("operation", $"\"{Operation}\"", "an operation of this engine", "Look at its name")
        : !bench.IsDone(Operation) ? new Refusal(bench.NameOf(Operation), "it is not done", "something done before", "Nothing to do here")
        : null;

    public override string Words(Bench bench) => $"Put back: {bench.NameOf(Operation)}{(Note.Length > 0 ? $", {Note}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.SetDone(Operation, false, recorded.Number);
}
