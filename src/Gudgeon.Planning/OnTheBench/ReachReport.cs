using System.Collections.Immutable;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Planning.Reach;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>One step on the way.</summary>
/// <param name="After">Ids of earlier steps that this one rests on.</param>
/// <param name="Layer">0 for what can be done now, then one more than the deepest of <paramref name="After"/>.</param>
public sealed record ReachStep(BenchWork Work, IReadOnlyList<string> After, int Layer);

/// <summary>Questions that would shorten the way if they were answered yes.</summary>
/// <param name="Facts">Id and question of each.</param>
/// <param name="SavesSeconds">Null when there is no way without them.</param>
public sealed record LookOffer(IReadOnlyList<(string Id, string Question)> Facts, long? SavesSeconds);

/// <summary>The least work that gets at something, in an order that works.</summary>
/// <param name="BoundSeconds">No way takes less; equal to <see cref="Seconds"/> when proven least.</param>
public sealed record ReachReport(ReachTarget Target, ImmutableArray<ReachStep> Steps, long Seconds, long BoundSeconds, bool IsProven, LookOffer? Looks)
{
    public double LowMinutes => Steps.Sum(s => s.Work.Minutes.Low);

    public double HighMinutes => Steps.Sum(s => s.Work.Minutes.High);

    /// <summary>Whether any of the minutes is a guess of the tables.</summary>
    public bool IsGuess => Steps.Any(s => s.Work.Minutes.IsGuess);

    public int Persons => Steps.Select(s => s.Work.Persons).DefaultIfEmpty(1).Max();

    /// <summary>Everything that has to be at hand, once each.</summary>
    public IReadOnlyList<string> Equipment => [.. Steps.SelectMany(s => s.Work.Equipment).Distinct()];

    /// <summary>Lines that are parted on the way.</summary>
    public IReadOnlyList<BenchWork> Parted => [.. Steps.Select(s => s.Work).Where(w => w.Sort == WorkSort.Line)];

    /// <summary>What is let out on the way.</summary>
    public IReadOnlyList<BenchWork> Drained => [.. Steps.Select(s => s.Work).Where(w => w.Id is "op:drain-oil" or "op:drain-coolant" or "op:fuel-safe")];

    /// <summary>Lines of care for the operations and parts on the way, each once.</summary>
    public IReadOnlyList<Caution> CautionsOf(Bench bench) =>
    [
        .. Steps.SelectMany(s => s.Work.Sort is WorkSort.Operation or WorkSort.Way ? Cautions.ForOperation(s.Work.Id)
            : bench.Engine.Parts.TryGetValue(s.Work.Id, out var part) ? Cautions.For(part.Kind) : []).DistinctBy(c => c.Id),
    ];

    /// <summary>For a single question.</summary>
    public static ReachReport? Of(Bench bench, ReachTarget target, Circumstances circumstances) => Of(new BenchWays(bench, circumstances), target);

    /// <summary>Null when it cannot be reached as matters stand: ask <see cref="WhyReport"/> for the reasons.</summary>
    public static ReachReport? Of(BenchWays ways, ReachTarget target)
    {
        if (Solve(ways, target, mayLook: false) is not { } found)
            return null;
        // Where no open question stands below the target, a look can change nothing.
        var looks = AsksBelow(found.Net, found.Net.IndexOf(target.Id)) ? LooksOf(ways, target, found.Answer) : null;
        return new ReachReport(target, StepsOf(found.Net, found.Answer.Order), found.Answer.CostSeconds, found.Answer.CostBoundSeconds, found.Answer.IsProven, looks);
    }

    /// <summary>Questions that would open a way where there is none without them; null for none.</summary>
    internal static LookOffer? LooksWithoutWay(BenchWays ways, ReachTarget target) => LooksOf(ways, target, null);

    private static (BenchNetwork Net, ReachAnswer Answer)? Solve(BenchWays ways, ReachTarget target, bool mayLook) =>
        HangRule.Hold<ReachAnswer>(ways, target, mayLook, net =>
            ReachSolver.Solve(net.Network, [net.IndexOf(target.Id)]) is { } answer ? (answer, answer.Order) : null);

    private static LookOffer? LooksOf(BenchWays ways, ReachTarget target, ReachAnswer? sure)
    {
        if (Solve(ways, target, mayLook: true) is not { } hoped)
            return null;
        var facts = hoped.Answer.Order.Select(k => hoped.Net.Work[k]).Where(w => w.Sort == WorkSort.Look).Select(w => (w.Id, w.Name)).ToArray();
        return facts.Length == 0 ? null : new LookOffer(facts, sure is null ? null : sure.CostSeconds - hoped.Answer.CostSeconds);
    }

    private static bool AsksBelow(BenchNetwork net, int target)
    {
        var nodes = net.Network.Nodes;
        var seen = new bool[nodes.Length];
        var stack = new Stack<int>([target]);
        while (stack.TryPop(out var node))
        {
            if (seen[node] || nodes[node].IsDone)
                continue;
            seen[node] = true;
            if (net.Work[node].Sort == WorkSort.Look)
                return true;
            foreach (var need in nodes[node].Needs)
                stack.Push(need.Node);
            foreach (var choice in nodes[node].Choices)
            {
                foreach (var way in choice.Alternatives)
                {
                    foreach (var member in way)
                        stack.Push(member);
                }
            }
        }

        return false;
    }

    internal static ImmutableArray<ReachStep> StepsOf(BenchNetwork net, IReadOnlyList<int> order)
    {
        var layers = new Dictionary<int, int>();
        var steps = ImmutableArray.CreateBuilder<ReachStep>();
        foreach (var number in order)
        {
            var node = net.Network.Nodes[number];
            var ways = node.Choices.Select(choice => choice.Alternatives.FirstOrDefault(way => way.All(m => layers.ContainsKey(m) || net.Network.Nodes[m].IsDone)));
            var after = node.Needs.Select(n => n.Node).Concat(ways.Where(way => !way.IsDefault).SelectMany(way => way)).Where(layers.ContainsKey).Distinct().ToArray();
            var layer = after.Select(n => layers[n] + 1).DefaultIfEmpty(0).Max();
            layers[number] = layer;
            steps.Add(new ReachStep(net.Work[number], [.. after.Select(n => net.Work[n].Id)], layer));
        }

        return steps.ToImmutable();
    }
}
