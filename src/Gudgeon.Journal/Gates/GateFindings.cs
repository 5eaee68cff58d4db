using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>Gates that the work went past without looking.</summary>
public static class GateFindings
{
    /// <summary>What closes a gate was off and is back, and the gate was neither passed nor overridden since.</summary>
    public static IEnumerable<Finding> Skipped(Bench bench)
    {
        foreach (var gate in bench.Gates)
        {
            foreach (var part in bench.Engine.Parts.Values.Where(p => gate.ClosedBy.Contains(p.Kind) || gate.ClosedBy.Contains(p.Id)))
                if (bench.Part(part.Id) is { OffBy: { } off } state && (state.IsOn || state.IsRiding) && IsSkipped(bench, gate, part.Id, off))
                    yield return Finding(gate, part.Id, $"the {part.Name} is back");
            foreach (var closing in gate.ClosedBy.Where(c => c.Contains(':', StringComparison.Ordinal)))
                if (bench.DoneBy(closing) is { } done ? !bench.IsDone(closing) && IsSkipped(bench, gate, closing, done) : bench.IsBegun(closing) && IsSkipped(bench, gate, closing, 0))
                    yield return Finding(gate, closing, bench.Engine.Operations.ContainsKey(closing) ? $"\"{bench.NameOf(closing)}\" was taken back" : "it was begun");
        }
    }

    private static bool IsSkipped(Bench bench, Gate gate, string closing, long since) =>
        !bench.Closed.TryGetValue((gate.Id, closing), out var closed) || closed <= since;

    private static Finding Finding(Gate gate, string closing, string met) =>
        new(FindingNames.GateSkipped, closing, gate.Name, $"{met}, and nobody went through this gate", "Look at what the gate asks for; open it again where that cannot be seen any more");
}
