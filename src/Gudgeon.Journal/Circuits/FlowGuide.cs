using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>Ways inside parts, where no line is drawn: from sump to pickup, from crank to shell. The tables' habit, until air and eye say otherwise.</summary>
internal static class FlowGuide
{
    /// <summary>The kind of a way that has no line of its own.</summary>
    public const string Inside = "flow";

    private static readonly Dictionary<string, Circuit> circuits = new()
    {
        ["oil"] = Circuit.OilPressure,
        ["coolant"] = Circuit.Coolant,
        ["fuel"] = Circuit.Fuel,
        ["air"] = Circuit.Air,
        ["exhaust"] = Circuit.Exhaust,
    };

    /// <summary>The ways between neighbours of a flow that no line of this engine joins.</summary>
    public static IReadOnlyList<Line> Of(Bench bench, string family, IReadOnlyList<Line> lines)
    {
        if (bench.Answers.Count == 0 || !circuits.TryGetValue(family, out var circuit))
            return [];
        var joined = lines.SelectMany(l => new[] { (l.From.Part, l.To.Part), (l.To.Part, l.From.Part) }).ToHashSet();
        var parts = bench.Engine.Parts.Values.Where(p => !bench.Part(p.Id).IsAbsent).ToLookup(p => p.Kind);
        var ways = new Dictionary<string, Line>();
        foreach (var flow in Flows.Of(EngineAnswers.Read(bench.Answers).Value, bench.Engine).Where(f => f.Name.Split(' ')[0] == family))
        {
            foreach (var (from, to) in flow.Kinds.Zip(flow.Kinds.Skip(1)))
            {
                var pairs = parts[from].SelectMany(a => parts[to].Where(b => AreNeighbours(a, b)).Select(b => (a, b))).ToArray();
                if (pairs.Any(p => joined.Contains((p.a.Id, p.b.Id))))
                    continue;
                foreach (var (a, b) in pairs)
                    ways.TryAdd($"{Inside}:{a.Id}:{b.Id}", new Line($"{Inside}:{a.Id}:{b.Id}", Inside, "inside", new Port(a.Id, "out"), new Port(b.Id, "in"), circuit) { IsPassage = true });
            }
        }

        return [.. ways.Values];
    }

    private static bool AreNeighbours(Part a, Part b) =>
        (a.Bank is null || b.Bank is null || a.Bank == b.Bank) && (a.Cylinder is null || b.Cylinder is null || a.Cylinder == b.Cylinder);
}
