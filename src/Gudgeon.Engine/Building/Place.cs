namespace Gudgeon.Engine.Building;

/// <summary>Where on the engine something is. What is null does not bear on it: the sump has no cylinder.</summary>
internal sealed record Place
{
    public int? Cylinder { get; init; }

    /// <summary>Valve of the cylinder, the inlet ones first.</summary>
    public int? Valve { get; init; }

    public int? Bank { get; init; }
    public int? Head { get; init; }
    public int? Cam { get; init; }
    public int? Main { get; init; }

    /// <summary>1 is the half that carries (upper shell, first case half), 2 is the half that closes.</summary>
    public int? Half { get; init; }

    /// <summary>The numbers that go into the id.</summary>
    public IReadOnlyList<int> Index { get; init; } = [];

    /// <summary>What of the name stands before the kind's name: <c>left exhaust</c>.</summary>
    public string Before { get; init; } = "";

    /// <summary>What stands behind it: <c>3.1</c>.</summary>
    public string Behind { get; init; } = "";

    /// <summary>Whether nothing keeps the two from being at one place.</summary>
    public bool Meets(Place other) =>
        Meet(Cylinder, other.Cylinder) && Meet(Valve, other.Valve) && Meet(Bank, other.Bank) && Meet(Head, other.Head)
        && Meet(Cam, other.Cam) && Meet(Main, other.Main) && Meet(Half, other.Half);

    /// <summary>Whether something ties the two to one place.</summary>
    public bool Shares(Place other) =>
        Meets(other) && (Both(Cylinder, other.Cylinder) || Both(Bank, other.Bank) || Both(Head, other.Head)
        || Both(Cam, other.Cam) || Both(Main, other.Main) || Both(Half, other.Half));

    private static bool Meet(int? a, int? b) => a is null || b is null || a == b;

    private static bool Both(int? a, int? b) => a is not null && b is not null;
}
