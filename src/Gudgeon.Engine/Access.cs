namespace Gudgeon.Engine;

/// <summary>One thing that must be so before another can be done. The prefix of the id says which sort it is.</summary>
public enum NeedSort
{
    PartOff,
    LineParted,
    Operation,
    Fact,
}

/// <summary>A part off, a line parted, an operation done or a fact answered yes.</summary>
public readonly record struct Need(string Id)
{
    public NeedSort Sort => Id switch
    {
        _ when Id.StartsWith("op:", StringComparison.Ordinal) => NeedSort.Operation,
        _ when Id.StartsWith("fact:", StringComparison.Ordinal) => NeedSort.Fact,
        _ when Id.Length > 2 && Id[1] == '-' && "glaxevc".Contains(Id[0]) => NeedSort.LineParted,
        _ => NeedSort.PartOff,
    };

    public override string ToString() => Id;
}

/// <summary>At least one of the sets must be done; inside a set, all.</summary>
public sealed record Choice(IReadOnlyList<IReadOnlyList<Need>> Sets);

/// <summary>Why X must come off or be done before Y: all of <see cref="First"/>, and one set of each choice.</summary>
/// <param name="Target">Part id or operation id (<c>op:engine-out</c>).</param>
/// <param name="Holds">What the target holds while it is on: <c>eye</c>, <c>engine</c>, <c>stand</c>, <c>loose:kind</c>, <c>state:kind</c>.</param>
public sealed record Access(string Target, IReadOnlyList<Need> First, IReadOnlyList<Choice> Choices, IReadOnlyList<string> Holds);

/// <summary>Something done to the whole engine, or a way of doing a step, with what it takes.</summary>
/// <param name="Id">As in <c>op:drain-oil</c>.</param>
/// <param name="Lasts">True when it changes how the engine stands (oil drained, engine out); false when it is a way to work that is at hand whenever its equipment is (spring compressor).</param>
public sealed record Operation(string Id, string Name, IReadOnlyList<string> Equipment, int Persons, string Why, bool Lasts)
{
    /// <summary>Whether it is taken back in the refit: oil filled, engine in.</summary>
    public bool IsTakenBack { get; init; }
}

/// <summary>A yes-or-no question about this engine that opens a way of access when the answer is yes.</summary>
public sealed record Fact(string Id, string Question);
