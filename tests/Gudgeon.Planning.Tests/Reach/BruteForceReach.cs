using Gudgeon.Planning.Reach;

namespace Gudgeon.Planning.Tests.Reach;

/// <summary>The plain way: walk through every set that can be undone one node at a time, cheapest first.</summary>
internal static class BruteForceReach
{
    public static (long Cost, int FluidLines, int ThingsOff)? Best(AndOrNetwork network, int target, Func<Block, bool>? lifted = null)
    {
        var start = 0;
        for (var index = 0; index < network.Nodes.Length; index++)
            start |= network.Nodes[index].IsDone ? 1 << index : 0;
        var queue = new PriorityQueue<int, (long, int, int)>();
        queue.Enqueue(start, (0, 0, 0));
        var seen = new HashSet<int>();
        while (queue.TryDequeue(out var set, out var cost))
        {
            if (!seen.Add(set))
                continue;
            if ((set & (1 << target)) != 0)
                return cost;
            for (var index = 0; index < network.Nodes.Length; index++)
            {
                var node = network.Nodes[index];
                if ((set & (1 << index)) != 0 || !node.Blocks.All(block => lifted is not null && lifted(block)))
                    continue;
                if (node.Needs.All(need => (set & (1 << need.Node)) != 0)
                    && node.Choices.All(choice => choice.Alternatives.Any(way => way.All(member => (set & (1 << member)) != 0))))
                {
                    queue.Enqueue(set | (1 << index), (cost.Item1 + node.CostSeconds, cost.Item2 + node.FluidLines, cost.Item3 + node.ThingsOff));
                }
            }
        }
        return null;
    }
}
