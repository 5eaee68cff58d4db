using System.Collections.Immutable;
using Gudgeon.Planning.Reach;

namespace Gudgeon.Planning.StripOrder;

/// <summary>
/// A lower bound on the time that setups cost: each setup on its own, as if the others were free, over the nodes that
/// every whole strip undoes and their plain needs; choices count as met. For one setup best-first search finds the
/// least exactly, or stops with the least that is still possible.
/// </summary>
internal sealed class SetupBound
{
    public SetupBound(StripWork work, bool[] mandatory, int effort)
    {
        var numbers = Enumerable.Range(0, mandatory.Length).Where(node => mandatory[node]).ToArray();
        var number = new int[mandatory.Length];
        for (var k = 0; k < numbers.Length; k++)
            number[numbers[k]] = k;
        var network = new AndOrNetwork(numbers.Select(node => new AndOrNode(work.Network.Nodes[node].Id, 0)
        {
            Needs = [.. work.Network.Nodes[node].Needs.Where(need => mandatory[need.Node]).Select(need => need with { Node = number[need.Node] })],
        }));
        foreach (var setup in work.Setups)
        {
            var alone = setup with { LabelOf = [.. numbers.Select(node => setup.LabelOf[node])] };
            Seconds += Least(new StripGraph(new StripWork(network, [alone]), [.. Enumerable.Range(0, numbers.Length)]), effort / Math.Max(1, work.Setups.Length));
        }
    }

    public long Seconds { get; }

    private static long Least(StripGraph graph, int effort)
    {
        var demand = new SetupDemand(graph);
        var queue = new PriorityQueue<StripState, (long Least, int Left, ulong Hash)>();
        var seen = new Dictionary<ulong, long>();
        var start = new StripState(graph);
        queue.Enqueue(start, (demand.Rest(start), graph.Nodes.Length - start.DoneCount, start.Hash));
        for (var opened = 0; queue.TryDequeue(out var state, out var rank);)
        {
            if (state.IsWhole || opened >= effort)
                return rank.Least;
            if (seen.TryGetValue(state.Key, out var before) && before < state.Seconds)
                continue;
            foreach (var node in state.Ready.DistinctBy(node => graph.Work.Setups[0].LabelOf[node]))
            {
                var next = state.Then(node);
                opened++;
                if (seen.TryGetValue(next.Key, out var known) && known <= next.Seconds)
                    continue;
                seen[next.Key] = next.Seconds;
                queue.Enqueue(next, (Math.Max(rank.Least, next.Seconds + demand.Rest(next)), graph.Nodes.Length - next.DoneCount, next.Hash));
            }
        }
        return 0;
    }
}
