using System.Text.Json.Serialization;
using Gudgeon.Engine;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(NotApplicable), "not-applicable")]
public abstract partial record Entry;

/// <summary>Something of the tables is not measured on this engine, and why. A gate no longer asks for it.</summary>
/// <param name="Parts">Ids of the parts it holds for; empty for every part that carries it.</param>
/// <param name="Why">The reason, as somebody gave it.</param>
public sealed record NotApplicable(string Characteristic, IReadOnlyList<string> Parts, string Why) : Entry
{
    public override IEnumerable<string> About() => Parts;

    public override Refusal? Check(Bench bench)
    {
        if (Characteristics.Find(Characteristic) is not { } characteristic)
            return new Refusal("not applicable", $"\"{Characteristic}\"", "a characteristic of the list", "Look at its name on the Measure page");
        if (string.IsNullOrWhiteSpace(Why))
            return new Refusal(characteristic.Name, "no reason", "why it is not measured on this engine", "Say why: the part has none, it was replaced, the book gives no figure");
        return Parts.Select(p => Check(bench, characteristic, p)).FirstOrDefault(f => f is not null);
    }

    private static Refusal? Check(Bench bench, Characteristic characteristic, string part)
    {
        if (bench.NoSuchPart(part) is { } missing)
            return missing;
        if (bench.Places.On(bench.Engine.Parts[part], characteristic).Count == 0)
            return new Refusal(bench.NameOf(part), $"{characteristic.Name} as not applicable", "a part that has it on this engine", "Leave it: nothing asks for it there");
        var read = bench.Readings.Values.Count(r => r.Counts && r.Taken.Part == part && r.Taken.Characteristic == characteristic.Id);
        return read == 0 ? null
            : new Refusal(bench.NameOf(part), $"{characteristic.Name} as not applicable, with {read} {(read == 1 ? "reading" : "readings")} of it", "no reading that counts", "Set its readings aside first, or leave it as it is");
    }

    public override string Words(Bench bench) =>
        $"{(Parts.Count == 0 ? "" : $"{bench.Several(Parts)}: ")}{Characteristics.Find(Characteristic)?.Name ?? Characteristic} not applicable to this engine, because {Why}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Waive(this, recorded);
}
