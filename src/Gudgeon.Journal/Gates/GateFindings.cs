using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>Gates that the work went past without looking, or whose looks were taken back.</summary>
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

    /// <summary>A gate was passed, and a look that it asks for does not stand in the book any more, as when its tick was struck out afterwards.</summary>
    public static IEnumerable<Finding> Unlooked(Bench bench) =>
        from passed in bench.Closed
        let gate = bench.Gate(passed.Key.Gate)
        where gate is not null && IsShut(bench, passed.Key.Closing)
        let known = bench.Overrides.Where(o => o.Number == passed.Value).SelectMany(o => ((GateOverridden)o.Entry).Findings).ToArray()
        from look in gate.Looks
        where !bench.HasLooked(gate, passed.Key.Closing, look) && !known.Any(k => k.Contains(look.TrimEnd('.'), StringComparison.Ordinal))
        select new Finding(FindingNames.LookOpen, passed.Key.Closing, gate.Name, $"passed, and this look is not in the book: {look.TrimEnd('.')}", "Look again where it can still be seen, and tick it; else open it again");

    /// <summary>Whether what closed a gate still closes it. An operation that closes one is known to hold by its gate alone.</summary>
    private static bool IsShut(Bench bench, string closing) => !bench.Engine.Parts.ContainsKey(closing) || bench.Part(closing) is { IsOn: true } or { IsRiding: true };

    private static bool IsSkipped(Bench bench, Gate gate, string closing, long since) =>
        !bench.Closed.TryGetValue((gate.Id, closing), out var closed) || closed <= since;

    private static Finding Finding(Gate gate, string closing, string met) =>
        new(FindingNames.GateSkipped, closing, gate.Name, $"{met}, and nobody went through this gate", "Look at what the gate asks for; open it again where that cannot be seen any more");
}
