namespace Gudgeon.Engine;

/// <summary>What flows in a line.</summary>
public enum Circuit
{
    OilPressure,
    OilDrain,
    OilScavenge,
    Coolant,
    Fuel,
    Air,
    Exhaust,
    Breather,
    Vacuum,
    Electrical,
    Refrigerant,
    Hydraulic,
}

/// <summary>An opening of a part, or of the vehicle (<see cref="Part"/> is <c>ext</c>).</summary>
public sealed record Port(string Part, string Name)
{
    public bool IsOutside => Part == "ext";
    public string Id => $"{Part}.{Name}";
}

/// <summary>
/// A hose, pipe, rail, wire or drilled passage between two ports.
/// </summary>
/// <param name="Id">Kind and place, as in <c>l-turbo-feed.1</c>.</param>
/// <param name="Kind">The row of the line table, or <c>own</c>.</param>
/// <param name="Name">What the owner calls it.</param>
public sealed record Line(string Id, string Kind, string Name, Port From, Port To, Circuit Circuit)
{
    /// <summary>Drilled or cast: opens only when its joint parts, so nobody parts it by hand.</summary>
    public bool IsPassage { get; init; }

    /// <summary>What runs out when it is opened, for the tray under it; empty for nothing.</summary>
    public string RunsOut { get; init; } = "";

    public Standing Standing { get; init; }
}
