using System.Text.Json.Serialization;
using Gudgeon.Engine;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(BuiltWith), "built-with")]
[JsonDerivedType(typeof(PartWashed), "part-washed")]
public abstract partial record Entry;

/// <summary>What a part was built with or is: shell size and colour, grade, batch, as it stands on the box. Empty takes it back.</summary>
/// <param name="What">Size, grade, colour: <c>0.25 undersize, blue</c>.</param>
/// <param name="Batch">Number of the batch, or empty.</param>
public sealed record BuiltWith(string Part, string What, string Batch = "") : Entry
{
    public override IEnumerable<string> About() => [Part];

    public override Refusal? Check(Bench bench) => bench.NoSuchPart(Part)
        ?? (string.IsNullOrWhiteSpace(What) && string.IsNullOrWhiteSpace(Batch) && !bench.BuiltWith.ContainsKey(Part)
            ? new Refusal(bench.NameOf(Part), "nothing", "a size, a grade or a batch", "Read it from the box or from the part") : null);

    public override string Words(Bench bench) => What.Trim().Length + Batch.Trim().Length == 0
        ? $"{bench.NameOf(Part)}: size and batch taken back"
        : $"{bench.NameOf(Part)}: {string.Join(", ", new[] { What.Trim(), Batch.Trim().Length > 0 ? $"batch {Batch.Trim()}" : "" }.Where(w => w.Length > 0))}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        if (What.Trim().Length + Batch.Trim().Length == 0)
            bench.BuiltWith.Remove(Part);
        else
            bench.BuiltWith[Part] = this;
    }
}

/// <summary>A part was washed, its oilways brushed and blown, and oiled at once.</summary>
public sealed record PartWashed(string Part) : Entry
{
    public override IEnumerable<string> About() => [Part];

    public override Refusal? Check(Bench bench) => bench.NoSuchPart(Part);

    public override string Words(Bench bench) => $"{bench.NameOf(Part)}: washed, oilways brushed and blown, oiled";

    internal override void Apply(Bench bench, Recorded recorded) => bench.ChangePart(Part).NeedsWash = false;
}
