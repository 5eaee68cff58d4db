namespace Gudgeon.Journal;

/// <summary>How one part stands.</summary>
public sealed class PartState
{
    /// <summary>What nobody has touched. Never changed.</summary>
    internal static readonly PartState AsFound = new();

    public Whereabouts Where { get; internal set; } = Whereabouts.Engine;

    /// <summary>Number of the entry that took it off last, or null.</summary>
    public long? OffBy { get; internal set; }

    /// <summary>When the work of taking it off was done.</summary>
    public DateTimeOffset? OffAt { get; internal set; }

    /// <summary>What had to be off before it and was, when it came off: the refit goes the other way round.</summary>
    public IReadOnlyList<string> OffBefore { get; internal set; } = [];

    /// <summary>A new one takes its place; it waits in <see cref="Where"/>.</summary>
    public bool Renewed { get; internal set; }

    /// <summary>It came back from a shop and was not washed since.</summary>
    public bool NeedsWash { get; internal set; }

    public bool IsOn => Where.Spot == Spot.Engine;
    public bool IsAbsent => Where.Spot == Spot.Absent;

    /// <summary>Off the engine and wanted back.</summary>
    public bool IsOff => Where.Spot is Spot.Place or Spot.Unplaced or Spot.Shop or Spot.Scrap;

    public bool IsRiding => Where.Spot == Spot.Riding;
}
