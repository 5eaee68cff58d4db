using System.Collections.Immutable;
using Gudgeon.Planning.Reach;

namespace Gudgeon.Planning.StripOrder;

/// <summary>
/// The whole strip: first the least work that takes everything off (exact, by Reach), then an order of it with little
/// time lost on tool changes, turning and fetching help (beam search), and a bound on both. Effort is counted, not
/// timed: the same book gives the same plan.
/// </summary>
public static class StripPlanner
{
    /// <summary>States that the search for an order may open: a few seconds' work for 1,500 parts.</summary>
    public const int UsualEffort = 150_000;

    public static StripPlan Plan(StripWork work, int effort = UsualEffort)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(effort, 1);
        var (chosen, left, workBound) = Choose(work.Network);
        var search = new SequenceSearch(work, chosen);
        var order = search.Run(effort);
        var mustBound = new SetupBound(work, Mandatory(work.Network, chosen), effort).Seconds;
        return Finish(work, order, left, workBound + mustBound);
    }

    internal static StripPlan Finish(StripWork work, IReadOnlyCollection<int> order, ImmutableArray<int> left, long bound)
    {
        var plan = new StripPlan([.. order], work.WorkSeconds(order), work.SetupSeconds(order), bound, left);
        return plan with { BoundSeconds = Math.Min(bound, plan.TotalSeconds) };
    }

    /// <summary>Nodes to undo so that all things that can come off are off, with the least work; what stays; the least work's bound.</summary>
    internal static (ImmutableArray<int> Chosen, ImmutableArray<int> Left, long WorkBound) Choose(AndOrNetwork network)
    {
        var free = Undoable(network);
        var things = Enumerable.Range(0, network.Nodes.Length).Where(node => network.Nodes[node] is { IsDone: false, ThingsOff: > 0 }).ToArray();
        var answer = ReachSolver.Solve(network, [.. things.Where(node => free[node])])!;
        return (answer.Order, [.. things.Where(node => !free[node])], answer.CostBoundSeconds);
    }

    /// <summary>Those of the chosen that every whole strip undoes: the things themselves and what they need without choice.</summary>
    private static bool[] Mandatory(AndOrNetwork network, ImmutableArray<int> chosen)
    {
        var must = new bool[network.Nodes.Length];
        var stack = new Stack<int>(chosen.Where(node => network.Nodes[node].ThingsOff > 0));
        while (stack.TryPop(out var node))
        {
            if (must[node] || network.Nodes[node].IsDone)
                continue;
            must[node] = true;
            foreach (var need in network.Nodes[node].Needs)
                stack.Push(need.Node);
        }
        return must;
    }

    private static bool[] Undoable(AndOrNetwork network)
    {
        var needs = network.Nodes.Select(node => node.IsDone ? [] : node.Needs.Select(need => need.Node).Distinct().ToArray()).ToArray();
        var choices = network.Nodes.Select(node => node.IsDone ? [] : node.Choices.Select(choice => choice.Alternatives.Select(way => way.Distinct().ToArray()).ToArray()).ToArray()).ToArray();
        var free = new bool[network.Nodes.Length];
        foreach (var node in new Wiring(needs, choices).Derive(node => network.Nodes[node].IsDone || network.Nodes[node].Blocks.Length == 0))
            free[node] = true;
        return free;
    }
}
