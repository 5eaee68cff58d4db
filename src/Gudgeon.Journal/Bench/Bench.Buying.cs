namespace Gudgeon.Journal;

/// <summary>How buying one thing stands.</summary>
public sealed class BuyState
{
    public int Ordered { get; internal set; }

    /// <summary>New ones that came and are not yet fitted.</summary>
    public int AtHand { get; internal set; }
}

public sealed partial class Bench
{
    private readonly SortedDictionary<string, BuyState> buying = new(StringComparer.Ordinal);

    /// <summary>Findings that stand for a reason: by name, thing and what was met; number of the entry and reason.</summary>
    internal Dictionary<(string Finding, string Thing, string Met), (long Number, string Reason)> Exceptions { get; } = [];

    /// <summary>What was ordered and came, by part, joint or shim.</summary>
    public IReadOnlyDictionary<string, BuyState> Bought => buying;

    internal BuyState Buying(string thing) => State(buying, thing);

    private static BuyState State(SortedDictionary<string, BuyState> map, string thing)
    {
        if (!map.TryGetValue(thing, out var state))
            map[thing] = state = new BuyState();
        return state;
    }
}
