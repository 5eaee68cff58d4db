using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(Ordered), "ordered")]
[JsonDerivedType(typeof(Bought), "bought")]
public abstract partial record Entry;

/// <summary>Something of the buy list was ordered.</summary>
/// <param name="Thing">Id of the part, or of the joint whose fasteners they are; or <c>shim</c> and its size.</param>
/// <param name="Count">How many in all are on order; 0 takes it back.</param>
/// <param name="From">Where, in words.</param>
public sealed record Ordered(string Thing, int Count, string From = "") : Entry
{
    public override IEnumerable<string> About() => [Thing];

    public override Refusal? Check(Bench bench) => BuyList.NoSuch(bench, Thing)
        ?? (Count is < 0 or > 999 ? new Refusal(BuyList.NameOf(bench, Thing), $"{Count} ordered", "0 to 999", "Say how many") : null);

    public override string Words(Bench bench) => $"{Count} for the {BuyList.NameOf(bench, Thing)} ordered{(From.Length > 0 ? $", {From}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Buying(Thing).Ordered = Count;
}

/// <summary>New fasteners for a joint, or shims, are at hand. A new part is told as such (<see cref="PartRenewed"/>).</summary>
/// <param name="Count">How many came.</param>
public sealed record Bought(string Thing, int Count, string Note = "") : Entry
{
    public override IEnumerable<string> About() => [Thing];

    public override Refusal? Check(Bench bench) => BuyList.NoSuch(bench, Thing)
        ?? (bench.Engine.Parts.ContainsKey(Thing) ? new Refusal(bench.NameOf(Thing), "a part as bought", "fasteners of a joint, or shims", "Say that a new one is at hand instead")
        : Count is < 1 or > 999 ? new Refusal(BuyList.NameOf(bench, Thing), $"{Count} at hand", "1 to 999", "Count them") : null);

    public override string Words(Bench bench) => $"{Count} new for the {BuyList.NameOf(bench, Thing)} at hand{(Note.Length > 0 ? $", {Note}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        var state = bench.Buying(Thing);
        state.AtHand += Count;
        state.Ordered = Math.Max(0, state.Ordered - Count);
    }
}
