using Gudgeon.Engine;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

/// <summary>Closes a gate, or says what keeps it open.</summary>
internal static class GateDecision
{
    /// <summary>The entry that closes it; or null with a refusal for each finding.</summary>
    public static (Entry? Closed, IReadOnlyList<Refusal> Refusals) Close(Bench bench, Gate gate, string closing, string? reason)
    {
        var findings = GateCheck.Of(bench, gate, closing);
        if (findings.Count == 0)
        {
            return (new GatePassed(gate.Id, closing), []);
        }

        var held = reason is null ? findings : [.. findings.Where(f => f.IsFirm)];
        return held.Count > 0
            ? (null, [.. held.Select(f => new Refusal(f.Finding.Where, $"{f.Finding.Met} ({f.Finding.Name})", $"{(f.IsFirm ? "clear, and no override helps here" : "clear")}, before {gate.Name}", f.Finding.Do))])
            : (new GateOverridden(gate.Id, closing, reason!, [.. findings.Select(f => f.Finding.ToString())]), []);
    }
}

/// <summary>An operation is taken back (engine in, fluid filled), through its gate if it closes one.</summary>
public sealed record UndoOperation(string Operation, string Note = "", string? Override = null) : Request
{
    public override Outcome<IReadOnlyList<Entry>> Decide(Bench bench)
    {
        var undone = new OperationUndone(Operation, Note);
        if (bench.Gates.FirstOrDefault(g => g.ClosedBy.Contains(Operation)) is not { } gate)
        {
            return Outcome.Of<IReadOnlyList<Entry>>([undone]);
        }

        var (closed, refusals) = GateDecision.Close(bench, gate, Operation, Override);
        return closed is null ? Outcome.Refused<IReadOnlyList<Entry>>(refusals) : Outcome.Of<IReadOnlyList<Entry>>([closed, undone]);
    }
}
