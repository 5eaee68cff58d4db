namespace Gudgeon.Engine;

/// <summary>How well a thing is known. Reality wins over a guess, always.</summary>
public enum Standing
{
    /// <summary>From the tables: nobody has looked yet.</summary>
    Guess,

    /// <summary>Seen on this engine, not counted.</summary>
    Seen,

    /// <summary>Counted by the owner.</summary>
    Counted,
}

/// <summary>Whether a part is bought new as a matter of course.</summary>
public enum Renewal
{
    Kept,
    ByWear,
    UsuallyInRebuild,
    EveryStrip,
}

/// <summary>What must be kept together or in its own place.</summary>
[Flags]
public enum Keeping
{
    Free = 0,

    /// <summary>Goes back to the place that it came from.</summary>
    OwnPlace = 1,

    /// <summary>Has a way round.</summary>
    WayRound = 2,

    /// <summary>Was made or worn as a pair with its partner.</summary>
    Mated = 4,

    /// <summary>One of a set matched by mass or grade.</summary>
    MatchedSet = 8,
}

/// <summary>How a part is lifted. Ranges are common practice, no source.</summary>
public enum LiftClass
{
    /// <summary>Under 3 kg.</summary>
    Hand,

    /// <summary>3 to 15 kg.</summary>
    OnePerson,

    /// <summary>15 to 25 kg.</summary>
    Heavy,

    /// <summary>Over 25 kg: two persons or a hoist.</summary>
    TwoPersons,

    /// <summary>A hoist only.</summary>
    Crane,
}

/// <summary>Where on the engine a part sits.</summary>
public enum Zone
{
    FreeEnd,
    DriveEnd,
    Top,
    Bottom,
    Side,
    Valley,
    Inside,
}

/// <summary>
/// One part of one engine. A part kind (<c>piston</c>) is a row of the tables; a part is one of them in its place (<c>piston.3</c>).
/// </summary>
/// <param name="Id">Kind and place, as in <c>piston.3</c> or <c>valve-ex.3.1</c>; never changes once given.</param>
/// <param name="Kind">The kind's id in the tables, or <c>own</c> for a part that the owner added.</param>
/// <param name="Name">What the owner calls it: <c>piston 3</c>.</param>
/// <param name="Index">The place, from 1: cylinder, then valve; empty where there is only one.</param>
public sealed record Part(string Id, string Kind, string Name, IReadOnlyList<int> Index)
{
    public Zone Zone { get; init; } = Zone.Side;
    public Keeping Keeping { get; init; }
    public Renewal Renewal { get; init; }
    public LiftClass Lift { get; init; }

    /// <summary>Whether the part's being there at all is a guess of the tables or known.</summary>
    public Standing Standing { get; init; }

    /// <summary>The cylinder that the part belongs to, or null.</summary>
    public int? Cylinder { get; init; }

    /// <summary>The bank that the part belongs to, from 1, or null.</summary>
    public int? Bank { get; init; }
}
