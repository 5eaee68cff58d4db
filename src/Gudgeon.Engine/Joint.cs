namespace Gudgeon.Engine;

/// <summary>Whether a fastener may be used again.</summary>
public enum OneUse
{
    No,
    Yes,

    /// <summary>Depends on the fastener: the owner's book says.</summary>
    Ask,
}

/// <summary>
/// A set of like fasteners (or clips, clamps, press fits) that ties one part to what carries it.
/// </summary>
/// <param name="Id">Kind and place, as in <c>j-head.1</c>.</param>
/// <param name="Kind">The row of the joint table, or <c>own</c>.</param>
/// <param name="Part">The part that comes away when the joint is undone.</param>
/// <param name="FixedTo">What it is fixed to; the first is the part that carries it.</param>
public sealed record Joint(string Id, string Kind, string Part, IReadOnlyList<string> FixedTo)
{
    /// <summary>bolt, stud, cap screw, union, banjo, clamp, clip, the usual one first; empty where nothing is counted.</summary>
    public IReadOnlyList<string> Fasteners { get; init; } = [];

    /// <summary>How it holds where nothing is counted: press, loose (laid in), oring, circlip, self (screwed in by its own thread).</summary>
    public string Fit { get; init; } = "";

    /// <summary>Fewest and most that the tables expect. Equal when the tables are sure.</summary>
    public (int Fewest, int Most) Guess { get; init; }

    /// <summary>Size that the tables expect, as in <c>M6..M8</c>; empty where unknown.</summary>
    public string SizeGuess { get; init; } = "";

    /// <summary>How it is tightened: T, TA, ST, F, C, P of the tables.</summary>
    public IReadOnlyList<string> Tightening { get; init; } = [];

    public OneUse OneUse { get; init; }
    public IReadOnlyList<string> Seals { get; init; } = [];

    /// <summary>Whether there is anything to count.</summary>
    public bool IsCounted => Fasteners.Count > 0;
}
