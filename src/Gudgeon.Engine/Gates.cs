using Gudgeon.Engine.Building;

namespace Gudgeon.Engine;

/// <summary>What must be empty before a gate closes.</summary>
public enum Register
{
    /// <summary>Caps, plugs, rags and tape that were put in to keep dirt out.</summary>
    Plugs,

    /// <summary>Bags of parts and fasteners that belong inside what the gate closes.</summary>
    Bags,

    /// <summary>Ports that are still open.</summary>
    Ports,
}

/// <summary>A point of no easy return in the refit, and what it asks for. Common practice, no source.</summary>
/// <param name="ClosedBy">Part kinds, one part (<c>case-half.2</c>), an operation undone (<c>op:engine-out</c>) or a page begun (<c>page:first-start</c>).</param>
public sealed record Gate(string Id, string Name, IReadOnlyList<string> ClosedBy)
{
    /// <summary>Part kinds of which every one must be back.</summary>
    public IReadOnlyList<string> Back { get; init; } = [];

    /// <summary>Joint kinds that must be tight for good.</summary>
    public IReadOnlyList<string> Final { get; init; } = [];

    /// <summary>Ids of <see cref="Characteristics"/> that must be taken and within limits, on every part that carries them.</summary>
    public IReadOnlyList<string> Readings { get; init; } = [];

    public IReadOnlyList<Register> Empty { get; init; } = [];

    /// <summary>What a person looks at and says yes to.</summary>
    public IReadOnlyList<string> Looks { get; init; } = [];

    /// <summary>
    /// Joint kinds for which no override helps: where one of these was not tightened, or nobody knows, or a one-time
    /// fastener of it went in again, the gate stays shut.
    /// </summary>
    public IReadOnlyList<string> Firm { get; init; } = [];
}

/// <summary>The gates of an engine, in the order in which they are met.</summary>
public static class Gates
{
    internal static IReadOnlyList<Row> Rows { get; } = Table.Read("gates.psv", Table.Own("gates.psv"));

    internal static ILookup<string, string> Looks { get; } =
        Table.Read("gate-looks.psv", Table.Own("gate-looks.psv")).ToLookup(r => r["gate"], r => r["look"]);

    /// <summary>The gates as this engine has them: what it lacks is not asked for.</summary>
    public static IReadOnlyList<Gate> Of(EngineModel engine)
    {
        var kinds = engine.Parts.Values.Select(p => p.Kind).ToHashSet();
        var joints = engine.Joints.Values.Select(j => j.Kind).ToHashSet();
        return [.. Rows
            .Where(r => r["if"].StartsWith('!') ? !kinds.Contains(r["if"][1..]) : kinds.Contains(r["if"]))
            .Select(r => new Gate(r["id"], r["name"], [.. r.List("closed-by").Where(c => c.Contains(':') || kinds.Contains(c) || engine.Parts.ContainsKey(c))])
            {
                Back = [.. r.List("back").Where(kinds.Contains)],
                Final = [.. r.List("final").Where(joints.Contains)],
                Readings = [.. r.List("readings").Where(x => IsAsked(x, kinds, engine)).Select(x => x.Split('!')[0])],
                Empty = [.. r.List("registers").Select(x => Enum.Parse<Register>(x, ignoreCase: true))],
                Looks = [.. Looks[r["id"]]],
                Firm = [.. r.List("firm").Where(joints.Contains)],
            })
            .Where(g => g.ClosedBy.Count > 0)];
    }

    /// <summary>A reading is asked for if a part of the engine carries it, and unless the engine has what makes it needless: hydraulic adjusters need no clearance.</summary>
    private static bool IsAsked(string reading, HashSet<string> kinds, EngineModel engine) =>
        Characteristics.Find(reading.Split('!')[0]) is { } found
        && found.Carriers.Any(options => options.Any(o => kinds.Contains(o.Kind)))
        && (reading.Split('!') is not [_, var unless] || engine.Lines.Values.All(l => l.Kind != unless));
}
