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

    /// <summary>Something done to a part before it goes back: it is washed, its studs are screwed in.</summary>
    Ready,

    /// <summary>Readings to take before a gate closes.</summary>
    Read,

    /// <summary>A day to wait for, or for what is settled on no day: nothing is done by it.</summary>
    Wait,
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

    /// <summary>The same on the way back: <c>put on the starter</c>.</summary>
    public string Return => Sort switch
    {
        WorkSort.Part => $"put on the {Name}",
        WorkSort.Split => $"put the {Name} back to what it came off with",
        WorkSort.Line => $"join the {Name}",
        WorkSort.Operation => Returns.GetValueOrDefault(Id) ?? $"take back: {Name}",
        _ => Name,
    };

    private static readonly Dictionary<string, string> Returns = new()
    {
        ["op:battery-off"] = "connect the battery",
        ["op:drain-oil"] = "fill with oil",
        ["op:drain-coolant"] = "fill with coolant",
        ["op:hang"] = "slacken the hoist and take it off, once the mounts carry",
        ["op:hang-aside"] = "bring back the unit that was tied aside",
        ["op:loom-aside"] = "lay the loom back and plug it in",
        ["op:out-as-unit"] = "put engine and gearbox in together",
        ["op:gearbox-down"] = "put the gearbox up",
        ["op:engine-out"] = "put the engine in",
        ["op:on-stand"] = "take the engine off the stand",
        ["op:side-plate"] = "take the side plate off the stand",
        ["op:turn-down"] = "turn the engine heads up",
        ["op:cover-case-mouth"] = "take the cloth out of the mouth of the case",
    };
}
