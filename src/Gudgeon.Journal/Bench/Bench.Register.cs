namespace Gudgeon.Journal;

public sealed partial class Bench
{
    /// <summary>What was put in to keep dirt out, by the number of its entry; what is out again stays with nothing left.</summary>
    public SortedDictionary<long, RegisterItem> Register { get; } = [];

    /// <summary>When each part was last looked at in its place, by the number of the entry.</summary>
    internal Dictionary<string, long> WayRoundSeen { get; } = [];

    /// <summary>Whether a part was looked at in its place since it came off.</summary>
    public bool IsWayRoundSeen(string part) => WayRoundSeen.TryGetValue(part, out var seen) && seen > (Part(part).OffBy ?? 0);
}
