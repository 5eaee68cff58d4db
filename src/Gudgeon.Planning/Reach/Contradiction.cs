using System.Collections.Immutable;
using Google.OrTools.Sat;

namespace Gudgeon.Planning.Reach;

/// <summary>
/// Nodes of which none can be first: each has one rule here (a need, or a choice of which every way runs into the
/// set) that keeps it waiting for another. Drop any one rule and the set comes free.
/// </summary>
/// <param name="By">Who made them (<see cref="Need.By"/>), once each, in rising order.</param>
public sealed record Contradiction(ImmutableArray<int> Nodes, ImmutableArray<string> Rules, ImmutableArray<long> By)
{
    /// <summary>
    /// The contradiction with the fewest nodes below <paramref name="target"/>, blocks left aside; null when the
    /// rules let the target come off. Fewest means that no smaller set of nodes can keep itself waiting.
    /// </summary>
    public static Contradiction? Smallest(AndOrNetwork network, int target)
    {
        var stuck = StuckBelow(network, target);
        if (stuck.Count == 0)
            return null;
        var model = new CpModel();
        var waits = stuck.ToDictionary(node => node, _ => model.NewBoolVar(""));
        var by = new List<(int Node, string Rule, ImmutableArray<long> By, BoolVar Taken)>();
        foreach (var node in stuck)
        {
            var options = new List<ILiteral> { waits[node].Not() };
            foreach (var need in network.Nodes[node].Needs.Where(need => waits.ContainsKey(need.Node)))
                model.AddImplication(Option(node, need.Rule, need.By, options), waits[need.Node]);
            foreach (var choice in network.Nodes[node].Choices)
            {
                var runsInto = choice.Alternatives.Select(way => way.Where(waits.ContainsKey).ToArray()).ToArray();
                if (runsInto.Any(way => way.Length == 0))
                    continue;
                var taken = Option(node, choice.Rule, [], options);
                foreach (var way in runsInto)
                    model.AddBoolOr(way.Select(member => (ILiteral)waits[member]).Append(taken.Not()));
            }
            model.AddBoolOr(options);
        }
        model.AddBoolOr(waits.Values);
        model.Minimize(LinearExpr.Sum(waits.Values));
        var solver = new CpSolver { StringParameters = "num_workers:1 random_seed:1" };
        if (solver.Solve(model) != CpSolverStatus.Optimal)
            throw new InvalidOperationException("a set of stuck nodes always holds a contradiction, but the solver found none");
        var core = stuck.Where(node => solver.Value(waits[node]) == 1).ToImmutableArray();
        var rules = core.Select(node => by.First(option => option.Node == node && solver.Value(option.Taken) == 1)).ToArray();
        return new Contradiction(core, [.. rules.Select(rule => rule.Rule)], [.. rules.SelectMany(rule => rule.By).Distinct().Order()]);

        BoolVar Option(int node, string rule, ImmutableArray<long> made, List<ILiteral> options)
        {
            var taken = model.NewBoolVar("");
            options.Add(taken);
            by.Add((node, rule, made, taken));
            return taken;
        }
    }

    private static List<int> StuckBelow(AndOrNetwork network, int target)
    {
        var free = new HashSet<int>();
        for (var before = -1; before != free.Count;)
        {
            before = free.Count;
            for (var index = 0; index < network.Nodes.Length; index++)
            {
                var node = network.Nodes[index];
                if (node.IsDone || (node.Needs.All(need => free.Contains(need.Node))
                    && node.Choices.All(choice => choice.Alternatives.Any(way => way.All(free.Contains)))))
                {
                    free.Add(index);
                }
            }
        }
        var below = new SortedSet<int>();
        var stack = new Stack<int>([target]);
        while (stack.TryPop(out var index))
        {
            if (free.Contains(index) || !below.Add(index))
                continue;
            var node = network.Nodes[index];
            foreach (var next in node.Needs.Select(need => need.Node).Concat(node.Choices.SelectMany(choice => choice.Alternatives.SelectMany(way => way))))
                stack.Push(next);
        }
        return [.. below];
    }
}
