namespace Gudgeon.Journal;

/// <summary>Where a reading belongs.</summary>
/// <param name="Place">From 1, along the part.</param>
/// <param name="Spot">Where on the place.</param>
public readonly record struct Slot(string Part, string Characteristic, int Place, string Spot);

/// <summary>A reading and what became of it.</summary>
public sealed class Reading(Recorded recorded, ReadingTaken taken)
{
    public long Number => recorded.Number;
    public DateTimeOffset At => recorded.At;
    public ReadingTaken Taken => taken;

    /// <summary>Why it is not used, or null while it is.</summary>
    public string? SetAside { get; internal set; }

    /// <summary>True when somebody looked again and it stands.</summary>
    public bool Stands { get; internal set; }

    public bool Counts => SetAside is null;
}

/// <summary>A limit with the entry that set it.</summary>
public sealed record StandingLimit(long Number, LimitSet Limit);

/// <summary>Why something is not measured, with the entry that said so.</summary>
public sealed record StandingReason(long Number, NotApplicable Said);

/// <summary>The last setting of a gauge, and what it showed when it was looked at after the work.</summary>
public sealed record Zero(GaugeZeroed Setting, DateTimeOffset At, double? Drift);
