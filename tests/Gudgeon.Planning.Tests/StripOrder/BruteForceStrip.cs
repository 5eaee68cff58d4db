using Gudgeon.Planning.StripOrder;

namespace Gudgeon.Planning.Tests.StripOrder;

/// <summary>The least time of any whole strip: every set that can be undone, with every state of the setups, cheapest first.</summary>
internal static class BruteForceStrip
{
    public static long Least(StripWork work, IReadOnlyCollection<int> things)
    {
        var nodes = work.Network.Nodes;
        var start = 0;
        for (var node = 0; node < nodes.Length; node++)
            start |= nodes[node].IsDone ? 1 << node : 0;
        var queue = new PriorityQueue<(int Set, int First, int Second), long>();
        queue.Enqueue((start, work.Setups[0].Begins, work.Setups[1].Begins), 0);
        var seen = new HashSet<(int, int, int)>();
        while (queue.TryDequeue(out var state, out var seconds))
        {
            if (!seen.Add(state))
                continue;
            if (things.All(thing => (state.Set & (1 << thing)) != 0))
                return seconds;
            for (var node = 0; node < nodes.Length; node++)
            {
                if ((state.Set & (1 << node)) != 0 || nodes[node].Blocks.Length > 0
                    || nodes[node].Needs.Any(need => (state.Set & (1 << need.Node)) == 0)
                    || !nodes[node].Choices.All(choice => choice.Alternatives.Any(way => way.All(member => (state.Set & (1 << member)) != 0))))
                {
                    continue;
                }
                var (first, firstCost) = Set(work.Setups[0], node, state.First);
                var (second, secondCost) = Set(work.Setups[1], node, state.Second);
                queue.Enqueue((state.Set | (1 << node), first, second), seconds + nodes[node].CostSeconds + firstCost + secondCost);
            }
        }
        throw new InvalidOperationException("the things cannot all come off");
    }

    private static (int State, long Cost) Set(Setup setup, int node, int now)
    {
        var wanted = setup.LabelOf[node];
        return wanted < 0 || wanted == now ? (now, 0) : (wanted, setup.SecondsInto[wanted]);
    }
}
