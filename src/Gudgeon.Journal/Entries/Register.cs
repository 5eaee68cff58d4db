using System.Text.Json.Serialization;
using Gudgeon.Engine;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(PutIn), "put-in")]
[JsonDerivedType(typeof(TakenOut), "taken-out")]
[JsonDerivedType(typeof(SmallFound), "small-found")]
[JsonDerivedType(typeof(SmallFitted), "small-fitted")]
[JsonDerivedType(typeof(WayRoundSeen), "way-round-seen")]
public abstract partial record Entry;

/// <summary>Something went in to keep dirt out, and must come out: a cap, plug, rag or tape.</summary>
/// <param name="What">cap, plug, rag, tape, or as said.</param>
/// <param name="Where">Where, in words.</param>
/// <param name="Part">The part that it is in; null when nobody said.</param>
public sealed record PutIn(string What, string Where, int Count = 1, string? Part = null) : Entry
{
    public override IEnumerable<string> About() => Part is null ? [] : [Part];

    public override Refusal? Check(Bench bench) =>
        string.IsNullOrWhiteSpace(What) ? new Refusal("put in", "nothing", "cap, plug, rag, tape or another thing", "Say what it is")
        : Count is < 1 or > 999 ? new Refusal(What, $"{Count} of them", "1 to 999", "Count them")
        : string.IsNullOrWhiteSpace(Where) && Part is null ? new Refusal(What, "no place", "where it is", "Say where, or in which part")
        : Part is null ? null : bench.NoSuchPart(Part);

    public override string Words(Bench bench) => $"{RegisterItem.Many(Count, What)} put in{Place(bench)}: must come out again";

    internal string Place(Bench bench) => $"{(Part is null ? "" : $", {bench.NameOf(Part)}")}{(Where.Length > 0 ? $", {Where}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Register[recorded.Number] = new RegisterItem(recorded.Number, this, Count);
}

/// <summary>Some or all of what was put in is out.</summary>
/// <param name="Item">Number of the entry that put it in.</param>
/// <param name="Count">How many; null for all that are left.</param>
public sealed record TakenOut(long Item, int? Count = null) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        !bench.Register.TryGetValue(Item, out var item) ? new Refusal($"entry {Item}", "nothing that is in", "the number of an entry that put something in", "Look at the register")
        : item.Left == 0 ? new Refusal(item.Put.What, "all out already", "something that is still in", "Nothing to do here")
        : Count is < 1 || Count > item.Left ? new Refusal(item.Put.What, $"{Count} out", $"1 to {item.Left}, which is what is in", "Count them")
        : null;

    public override string Words(Bench bench) => bench.Register.TryGetValue(Item, out var item)
        ? $"{RegisterItem.Many(Count ?? (item.Left > 0 ? item.Left : item.Put.Count), item.Put.What)} out again{item.Put.Place(bench)}"
        : $"What entry {Item} put in is out again";

    internal override void Apply(Bench bench, Recorded recorded) =>
        bench.Register[Item] = bench.Register[Item] with { Left = bench.Register[Item].Left - (Count ?? bench.Register[Item].Left) };
}

/// <summary>Small parts were found at a joint when it came apart: dowels, restrictors, jets, O-rings, non-return valves.</summary>
public sealed record SmallFound(string Joint, string What, int Count) : Entry
{
    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench) => bench.NoSuchJoint(Joint)
        ?? (string.IsNullOrWhiteSpace(What) ? new Refusal(bench.NameOf(Joint), "no name", "dowel, restrictor, jet, O-ring, non-return valve", "Say what they are")
        : Count is < 1 or > 999 ? new Refusal(bench.NameOf(Joint), $"{Count} of them", "1 to 999", "Count them") : null);

    public override string Words(Bench bench) => $"{bench.NameOf(Joint)}: {RegisterItem.Many(Count, What)} found between its faces";

    internal override void Apply(Bench bench, Recorded recorded) => bench.ChangeJoint(Joint).Small[RegisterItem.Key(What)] = new SmallCount(Count, 0);
}

/// <summary>Small parts of a joint are fitted again.</summary>
public sealed record SmallFitted(string Joint, string What, int Count) : Entry
{
    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchJoint(Joint) is { } missing)
            return missing;
        var small = bench.Joint(Joint).Small;
        return !small.TryGetValue(RegisterItem.Key(What), out var count) ? new Refusal(bench.NameOf(Joint), $"\"{What}\"", small.Count == 0 ? "small parts that were found there" : string.Join(", ", small.Keys), "Say first how many were found")
            : Count < 1 || count.Fitted + Count > count.Found ? new Refusal(bench.NameOf(Joint), $"{count.Fitted + Count} fitted", $"{count.Found}, as found", "Count them again")
            : null;
    }

    public override string Words(Bench bench) => $"{bench.NameOf(Joint)}: {RegisterItem.Many(Count, What)} fitted";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        var small = bench.ChangeJoint(Joint).Small;
        var key = RegisterItem.Key(What);
        small[key] = small[key] with { Fitted = small[key].Fitted + Count };
    }
}

/// <summary>A part is in its own place and the right way round: looked at on the engine.</summary>
public sealed record WayRoundSeen(string Part) : Entry
{
    public override IEnumerable<string> About() => [Part];

    public override Refusal? Check(Bench bench) => bench.NoSuchPart(Part)
        ?? ((bench.Engine.Parts[Part].Keeping & SmallThings.Kept) == 0 ? new Refusal(bench.NameOf(Part), "nothing to look at", "a part with a place or a way round of its own", "Nothing to do here")
        : bench.Part(Part) is { IsOn: true } or { IsRiding: true } ? null : new Refusal(bench.NameOf(Part), $"it is {bench.Part(Part).Where.Words(bench.NameOf)}", "a part that is back", "Put it back first"));

    public override string Words(Bench bench) => $"{bench.NameOf(Part)}: in its own place and the right way round";

    internal override void Apply(Bench bench, Recorded recorded) => bench.WayRoundSeen[Part] = recorded.Number;
}
