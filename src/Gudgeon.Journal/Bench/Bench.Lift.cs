using Gudgeon.Engine;

namespace Gudgeon.Journal;

public sealed partial class Bench
{
    private readonly Dictionary<string, MassTold> partMasses = [];

    /// <summary>Masses of parts that somebody told, by part.</summary>
    public IReadOnlyDictionary<string, MassTold> PartMasses => partMasses;

    /// <summary>The whole engine as it was weighed or told last, or null.</summary>
    public WholeMass? WholeMass { get; private set; }

    public RigTold? Rig { get; internal set; }

    public CraneTold? Crane { get; internal set; }

    public StandTold? Stand { get; internal set; }

    public PlaceTold? LiftPlace { get; internal set; }

    /// <summary>Number of the entry that last changed what a lift is made of: what was looked at before does not count.</summary>
    internal long LiftToldBy { get; set; }

    internal Dictionary<string, long> LiftLooks { get; } = [];

    internal void Take(MassTold told, Recorded recorded)
    {
        if (told.IsWhole)
            WholeMass = new WholeMass(recorded, PartsOffNow());
        else
            partMasses[told.What] = told;
        LiftToldBy = recorded.Number;
    }

    internal void Take(Weighed weighed, Recorded recorded)
    {
        WholeMass = new WholeMass(recorded, PartsOffNow());
        LiftToldBy = recorded.Number;
    }

    private HashSet<string> PartsOffNow() => [.. Engine.Parts.Keys.Where(id => !Part(id).IsOn)];
}

/// <summary>What the whole weighed, and what was not on it then.</summary>
public sealed record WholeMass(Recorded Recorded, IReadOnlySet<string> OffThen);
