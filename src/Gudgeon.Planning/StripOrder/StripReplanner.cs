using System.Collections.Immutable;
using Gudgeon.Planning.Reach;

namespace Gudgeon.Planning.StripOrder;

/// <summary>A node whose place in the order changed, from and to (counted from 0; -1 for not in the order), and why.</summary>
public sealed record PlanMove(int Node, int From, int To, string Why);

/// <summary>A plan made from an earlier one, and what moved. Nodes not named kept their turn.</summary>
public sealed record Replan(StripPlan Plan, ImmutableArray<PlanMove> Moves);

/// <summary>
/// Plans again after an entry and keeps what still holds: the earlier order is walked, each node that may be undone at
/// its turn stays there, the others wait until they may. A fresh order replaces it only when it saves enough to be
/// worth the change.
/// </summary>
public static class StripReplanner
{
    /// <summary>A fresh order must save at least this: common practice, no source.</summary>
    public const long WorthSeconds = 15 * 60;

    private const int Effort = 60;

    public static Replan After(StripWork work, IReadOnlyList<int> earlier)
    {
        var (chosen, left, workBound) = StripPlanner.Choose(work.Network);
        var why = new Dictionary<int, string>();
        var kept = Walk(work, chosen, earlier, why);
        var fresh = new SequenceSearch(work, chosen).Run(Effort);
        var saves = work.SetupSeconds(kept) - work.SetupSeconds(fresh);
        var order = saves >= WorthSeconds ? fresh : kept;
        var plan = StripPlanner.Finish(work, order, left, workBound);
        return new Replan(plan, Moves(work, earlier, plan.Order, why, saves >= WorthSeconds ? saves : 0));
    }

    private static List<int> Walk(StripWork work, ImmutableArray<int> chosen, IReadOnlyList<int> earlier, Dictionary<int, string> why)
    {
        var nodes = work.Network.Nodes;
        var done = nodes.Select(node => node.IsDone).ToArray();
        var inPlan = chosen.ToHashSet();
        var known = earlier.ToHashSet();
        var waiting = new List<int>();
        var order = new List<int>();
        foreach (var fresh in chosen.Where(node => !known.Contains(node)))
        {
            why[fresh] = "is new in the plan";
            waiting.Add(fresh);
        }
        Release();
        foreach (var node in earlier.Where(inPlan.Contains))
        {
            if (Unmet(work.Network, node, done) is { } reason)
            {
                why.TryAdd(node, reason);
                waiting.Add(node);
                continue;
            }
            Take(node);
            Release();
        }
        return order;

        void Take(int node)
        {
            done[node] = true;
            order.Add(node);
        }

        void Release()
        {
            for (var k = 0; k < waiting.Count;)
            {
                if (Unmet(work.Network, waiting[k], done) is not null)
                {
                    k++;
                    continue;
                }
                var free = waiting[k];
                waiting.RemoveAt(k);
                Take(free);
                k = 0;
            }
        }
    }

    private static string? Unmet(AndOrNetwork network, int node, bool[] done)
    {
        foreach (var need in network.Nodes[node].Needs)
        {
            if (!done[need.Node])
                return $"waits for {network.Nodes[need.Node].Id} ({need.Rule})";
        }
        foreach (var choice in network.Nodes[node].Choices)
        {
            if (!choice.Alternatives.Any(way => way.All(member => done[member])))
                return $"waits for one of its ways ({choice.Rule})";
        }
        return null;
    }

    private static ImmutableArray<PlanMove> Moves(StripWork work, IReadOnlyList<int> earlier, ImmutableArray<int> order, Dictionary<int, string> why, long saves)
    {
        var from = earlier.Select((node, k) => (node, k)).ToDictionary(pair => pair.node, pair => pair.k);
        var to = order.Select((node, k) => (node, k)).ToDictionary(pair => pair.node, pair => pair.k);
        // What had to wait has moved, whoever passed it; of the rest as many as can be count as having stayed.
        var stayed = LongestRise([.. order.Where(node => from.ContainsKey(node) && (saves > 0 || !why.ContainsKey(node))).Select(node => from[node])]).Select(k => earlier[k]).ToHashSet();
        var moves = ImmutableArray.CreateBuilder<PlanMove>();
        foreach (var node in order)
        {
            if (stayed.Contains(node))
                continue;
            var reason = (saves > 0 && from.ContainsKey(node) ? null : why.GetValueOrDefault(node)) ?? (saves > 0 ? $"the new order saves {saves / 60} minutes in all" : "follows what it waits for");
            moves.Add(new PlanMove(node, from.GetValueOrDefault(node, -1), to[node], reason));
        }
        foreach (var node in earlier)
        {
            if (!to.ContainsKey(node))
                moves.Add(new PlanMove(node, from[node], -1, Gone(work.Network.Nodes[node])));
        }
        return moves.ToImmutable();
    }

    private static string Gone(AndOrNode node) =>
        node.IsDone ? "is done" : node.Blocks.Length > 0 ? node.Blocks[0].Reason : "is no longer needed, or waits for what cannot come off";

    /// <summary>The longest run of rising numbers, not necessarily side by side: what kept its turn.</summary>
    private static List<int> LongestRise(int[] numbers)
    {
        var ends = new List<int>();
        var before = new int[numbers.Length];
        for (var k = 0; k < numbers.Length; k++)
        {
            var (low, high) = (0, ends.Count);
            while (low < high)
            {
                var middle = (low + high) / 2;
                if (numbers[ends[middle]] < numbers[k])
                    low = middle + 1;
                else
                    high = middle;
            }
            before[k] = low > 0 ? ends[low - 1] : -1;
            if (low == ends.Count)
                ends.Add(k);
            else
                ends[low] = k;
        }
        var rise = new List<int>();
        for (var k = ends.Count > 0 ? ends[^1] : -1; k >= 0; k = before[k])
            rise.Add(numbers[k]);
        rise.Reverse();
        return rise;
    }
}
