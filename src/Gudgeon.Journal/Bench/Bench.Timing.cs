namespace Gudgeon.Journal;

public sealed partial class Bench
{
    /// <summary>The last reading of the piston stop, or null.</summary>
    public TopFound? Top { get; internal set; }

    /// <summary>Lobes as read, in order.</summary>
    internal List<LobeRead> Lobes { get; } = [];

    /// <summary>Thickness of the shim at each valve, mm.</summary>
    internal SortedDictionary<string, double> Shims { get; } = new(StringComparer.Ordinal);

    /// <summary>The drive from crank to cam as told last, or null.</summary>
    public CamDriveTold? CamDrive { get; internal set; }

    /// <summary>Static settings by what was set.</summary>
    internal SortedDictionary<string, StaticTimingNoted> StaticTiming { get; } = new(StringComparer.Ordinal);

    /// <summary>Static settings as they stand.</summary>
    public IReadOnlyCollection<StaticTimingNoted> StaticSettings => StaticTiming.Values;

    /// <summary>Sizes, grades and batches by part.</summary>
    internal SortedDictionary<string, BuiltWith> BuiltWith { get; } = new(StringComparer.Ordinal);

    /// <summary>The shims that can be had, or null.</summary>
    public ShimsOffered? ShimsOffered { get; internal set; }
}
