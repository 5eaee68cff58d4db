namespace Gudgeon.Engine;

/// <summary>How the judged figure comes from the readings.</summary>
public enum FigureKind
{
    /// <summary>Every reading is judged by itself.</summary>
    Each,
    Max,
    Min,
    Mean,

    /// <summary>Passes or fails by look or gauge.</summary>
    Look,

    /// <summary>Largest less smallest down one axis; the largest of the axes.</summary>
    Taper,

    /// <summary>Largest less smallest round one height; the largest of the heights. A difference of diameters.</summary>
    OutOfRound,

    /// <summary>Of a hole: largest reading less the unworn spot.</summary>
    Wear,

    /// <summary>Of a shaft: unworn spot less the smallest reading.</summary>
    Loss,

    /// <summary>First characteristic less the second: smallest and largest are both judged.</summary>
    Difference,

    /// <summary>Of heights on a grid: least distance of two planes that hold them all.</summary>
    Flatness,

    /// <summary>Below the best of the set, as a share of the best.</summary>
    Shortfall,

    /// <summary>A formula of named inputs.</summary>
    Formula,
}

/// <summary>Which kinds of limit make sense.</summary>
[Flags]
public enum LimitKinds
{
    None = 0,
    Low = 1,
    High = 2,

    /// <summary>Largest less smallest of a set.</summary>
    Spread = 4,
    Look = 8,
}

/// <summary>One spot that is read.</summary>
/// <param name="Id">Row and column: <c>top.across</c>; or one word.</param>
/// <param name="Row">Height, plane, line or input.</param>
/// <param name="Column">Axis, or empty.</param>
/// <param name="Name">As it is read out: <c>top, across the crank</c>.</param>
/// <param name="Unit">Unit of what is read there.</param>
public sealed record MeasuringSpot(string Id, string Row, string Column, string Name, string Unit)
{
    /// <summary>The spot that wear is taken from; no part of the grid.</summary>
    public const string Unworn = "unworn";

    public bool IsUnworn => Id == Unworn;
}

/// <summary>Another characteristic that a figure stands on.</summary>
/// <param name="Column">Only this axis of it, or empty for all.</param>
public sealed record Source(string Characteristic, string Column);

/// <summary>
/// Something that can be measured on a kind of part: where it is read, what figure comes of it, which limits make sense.
/// A row of the tables; it holds no limit itself.
/// </summary>
public sealed record Characteristic
{
    /// <summary>Stable name: <c>main-journal-taper</c>.</summary>
    public required string Id { get; init; }
    public required string Name { get; init; }

    /// <summary>Group in lists: Block, Crank, Head.</summary>
    public required string Area { get; init; }

    /// <summary>What one place on the part is called: <c>bore</c>; empty where the part is the place.</summary>
    public required string Place { get; init; }
    public required FigureKind Figure { get; init; }

    /// <summary>The formula, in the names of the spots; empty for the other figures.</summary>
    public required string Formula { get; init; }

    /// <summary>Unit of the figure: mm, um, g, cm3, N, Nm, bar, mbar, deg, C, %, HB, HRC, 1 or look.</summary>
    public required string Unit { get; init; }
    public required LimitKinds Limits { get; init; }

    /// <summary>Usual instrument, an id of the tools; empty for a figure that is only worked out.</summary>
    public required string Tool { get; init; }

    /// <summary>What is usually done about it when it is out, in the order of cost.</summary>
    public required IReadOnlyList<RepairAction> Actions { get; init; }

    /// <summary>Where it is read; empty when it is worked out from other characteristics.</summary>
    public required IReadOnlyList<MeasuringSpot> Spots { get; init; }

    /// <summary>What it is worked out from; empty when it is read.</summary>
    public required IReadOnlyList<Source> From { get; init; }

    /// <summary>What ties a place to its mate on another part: cyl, main, pin, valve, cam, head, bank; a dash for nothing.</summary>
    public required string Key { get; init; }
    internal IReadOnlyList<IReadOnlyList<Carrier>> Carriers { get; init; } = [];

    public bool IsRead => Spots.Count > 0;

    public MeasuringSpot? FindSpot(string id) => Spots.FirstOrDefault(s => s.Id == id);

    /// <summary>The formula at the given inputs.</summary>
    public double Evaluate(IReadOnlyDictionary<string, double> inputs) => Building.Formula.Value(Formula, inputs);
}

/// <summary>A kind of part that carries a characteristic.</summary>
/// <param name="Only">Only the part of this index, or 0.</param>
/// <param name="Count">How many places on one part, a formula; empty for one.</param>
internal sealed record Carrier(string Kind, int Only, string Count);

/// <summary>What is usually done about a part that is out. Common practice, no source.</summary>
/// <param name="Who">At home, or a shop.</param>
public sealed record RepairAction(string Id, string Name, string Who);

/// <summary>One place on one part where a characteristic is found.</summary>
/// <param name="Number">From 1, along the part; 1 where the part is the place.</param>
/// <param name="Name">As people say it: <c>bore 3</c>, or the part's own name.</param>
/// <param name="Key">What ties it to its mate: <c>cyl 3</c>, <c>valve 2.1</c>.</param>
public sealed record MeasuringPlace(string Part, int Number, string Name, string Key);
