namespace Gudgeon.Planning.OnTheBench;

/// <summary>What a node of the network is on the bench.</summary>
public enum WorkSort
{
    /// <summary>A part to take off.</summary>
    Part,

    /// <summary>A part to split from the assembly on which it came off.</summary>
    Split,

    /// <summary>A hose, pipe or wire to part.</summary>
    Line,

    /// <summary>Something done to the whole engine, which then stays so.</summary>
    Operation,

    /// <summary>A way of doing a step, at hand whenever its equipment is.</summary>
    Way,

    /// <summary>A yes-or-no question to look at.</summary>
    Look,

    /// <summary>The body that carries the rest: bare, not off.</summary>
    Body,

    /// <summary>A place to get at: nothing is undone by it.</summary>
    Place,
}

/// <summary>One node in the owner's words, with what it takes.</summary>
/// <param name="Id">Id of the thing.</param>
public sealed record BenchWork(string Id, WorkSort Sort, string Name, Span Minutes)
{
    public IReadOnlyList<string> Equipment { get; init; } = [];
    public int Persons { get; init; } = 1;

    /// <summary>What happens when it is opened, as the tables say it.</summary>
    public string RunsOut { get; init; } = "";

    /// <summary>What is done, as said to somebody: <c>take off the starter</c>.</summary>
    public string Doing => Sort switch
    {
        WorkSort.Part => $"take off the {Name}",
        WorkSort.Split => $"split off the {Name}",
        WorkSort.Line => $"part the {Name}",
        WorkSort.Look => $"look: {Name}",
        WorkSort.Body => $"the {Name} is bare",
        WorkSort.Place => $"the {Name} is open",
        _ => Name,
    };
}
