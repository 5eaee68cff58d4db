using System.Collections.Immutable;

namespace Gudgeon.Planning.Reach;

/// <summary>Orders that work, and the check that an order works.</summary>
public static class UndoOrder
{
    /// <summary>
    /// Plays <paramref name="order"/> through the access rules. Null when every step may be done when its turn
    /// comes; else the first node that may not.
    /// </summary>
    public static int? FirstBreach(AndOrNetwork network, IEnumerable<int> order)
    {
        var done = network.Nodes.Select(node => node.IsDone).ToArray();
        foreach (var index in order)
        {
            var node = network.Nodes[index];
            if (done[index] || node.Blocks.Length > 0
                || node.Needs.Any(need => !done[need.Node])
                || node.Choices.Any(choice => !choice.Alternatives.Any(way => way.All(member => done[member]))))
            {
                return index;
            }
            done[index] = true;
        }
        return null;
    }

    /// <summary>
    /// The chosen nodes that the goal really rests on, each just before it is wanted, so that work stays in one
    /// place as long as it can. Numbers of the full network, without the goal.
    /// </summary>
    internal static ImmutableArray<int> Of(ReducedNetwork reduced, ulong[] chosen)
    {
        var wiring = reduced.Full;
        var rank = new int[wiring.Count];
        Array.Fill(rank, int.MaxValue);
        var derived = wiring.Derive(node => reduced.IsUndone(node, chosen));
        for (var k = 0; k < derived.Count; k++)
            rank[derived[k]] = k;

        var order = ImmutableArray.CreateBuilder<int>();
        var entered = new bool[wiring.Count];
        var stack = new Stack<(int Node, bool Leaving)>([(wiring.Count - 1, false)]);
        while (stack.TryPop(out var top))
        {
            if (top.Leaving)
            {
                if (top.Node < reduced.Original.Length)
                    order.Add(reduced.Original[top.Node]);
                continue;
            }
            if (entered[top.Node])
                continue;
            entered[top.Node] = true;
            stack.Push((top.Node, true));
            // Only what was derived earlier is entered, so the walk meets no circle.
            foreach (var below in Supports(wiring, rank, top.Node).OrderByDescending(node => rank[node]))
                stack.Push((below, false));
        }
        return order.ToImmutable();
    }

    private static IEnumerable<int> Supports(Wiring wiring, int[] rank, int node)
    {
        var way = wiring.ChoicesOf[node].SelectMany(choice => wiring.Members[
            wiring.AlternativesOf[choice].MinBy(candidate => wiring.Members[candidate].Max(member => rank[member]))]);
        return wiring.Needs[node].Concat(way).Distinct();
    }
}
