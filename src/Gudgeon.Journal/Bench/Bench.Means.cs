namespace Gudgeon.Journal;

public sealed partial class Bench
{
    private readonly SortedDictionary<string, EquipmentTold> equipment = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> minutes = [];
    private readonly SortedDictionary<string, (LeadTold Told, DateTimeOffset At)> leads = new(StringComparer.Ordinal);

    /// <summary>Lead times by part, with when each was told: the days count from then.</summary>
    public IReadOnlyDictionary<string, (LeadTold Told, DateTimeOffset At)> Leads => leads;

    /// <summary>What was told of equipment and helpers, the last of each, by name in lower case.</summary>
    public IReadOnlyDictionary<string, EquipmentTold> Equipment => equipment;

    /// <summary>The owner's week at the bench; empty while nobody told.</summary>
    public IReadOnlyList<DayHours> Hours { get; internal set; } = [];

    /// <summary>The plan that is worked to, or null.</summary>
    public Recorded? KeptPlan { get; internal set; }

    /// <summary>The owner's minutes for a part, line or operation, or null.</summary>
    public int? MinutesOf(string what) => minutes.TryGetValue(what, out var told) ? told : null;

    internal void Tell(EquipmentTold told) => equipment[Whereabouts.PlaceName(told.What)] = told;

    internal void TellLead(LeadTold told, DateTimeOffset at) => leads[told.Part] = (told, at);

    /// <summary>What was waited for has come.</summary>
    internal void EndLead(string part) => leads.Remove(part);

    internal void TellMinutes(string what, int taken) => minutes[what] = taken;
}
