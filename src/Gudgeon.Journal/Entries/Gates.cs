using System.Text.Json.Serialization;
using Gudgeon.Engine;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(GateLooked), "gate-looked")]
[JsonDerivedType(typeof(GatePassed), "gate-passed")]
[JsonDerivedType(typeof(GateOverridden), "gate-overridden")]
public abstract partial record Entry;

/// <summary>The owner looked at one thing that a gate asks for and says yes to it.</summary>
/// <param name="Closing">The part that will close the gate; empty where the gate is closed only once.</param>
public sealed record GateLooked(string Gate, string Look, string Closing = "") : Entry
{
    public override IEnumerable<string> About() => [Gate];

    public override Refusal? Check(Bench bench) =>
        bench.Gate(Gate) is not { } gate ? bench.NoSuchGate(Gate)
        : gate.Looks.Contains(Look) ? null
        : new Refusal(gate.Name, $"\"{Look}\"", "one of the looks of this gate", "Choose one of them");

    public override string Words(Bench bench) => $"Looked, before {bench.Gate(Gate)?.Name ?? Gate}: {Look}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Looks[(Gate, Closing, Look)] = recorded.Number;
}

/// <summary>A gate had no findings and was closed.</summary>
public sealed record GatePassed(string Gate, string Closing) : Entry
{
    public override IEnumerable<string> About() => [Gate, Closing];

    public override Refusal? Check(Bench bench) => bench.Gate(Gate) is null ? bench.NoSuchGate(Gate) : null;

    public override string Words(Bench bench) => $"Gate passed: {bench.Gate(Gate)?.Name ?? Gate}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Closed[(Gate, Closing)] = recorded.Number;
}

/// <summary>A gate was closed over its findings. It stands in the book for ever.</summary>
/// <param name="Findings">What was open, in words.</param>
public sealed record GateOverridden(string Gate, string Closing, string Reason, IReadOnlyList<string> Findings) : Entry
{
    public override IEnumerable<string> About() => [Gate, Closing];

    public override Refusal? Check(Bench bench) =>
        bench.Gate(Gate) is null ? bench.NoSuchGate(Gate)
        : string.IsNullOrWhiteSpace(Reason) ? new Refusal(bench.Gate(Gate)!.Name, "no reason", "why you close it all the same", "Give the reason")
        : null;

    /// <summary>A line names a few of the findings; <see cref="Findings"/> and the printed book have them all.</summary>
    private const int Named = 3;

    public override string Words(Bench bench)
    {
        var named = string.Join("; ", Findings.Take(Named));
        var more = Findings.Count > Named ? $"; and {Findings.Count - Named} more" : "";
        return $"Gate overridden: {bench.Gate(Gate)?.Name ?? Gate}, because {Reason}. Open then: {named}{more}";
    }

    internal override void Apply(Bench bench, Recorded recorded)
    {
        bench.Closed[(Gate, Closing)] = recorded.Number;
        bench.Overrides.Add(recorded);
    }
}
