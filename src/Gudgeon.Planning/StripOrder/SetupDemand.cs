namespace Gudgeon.Planning.StripOrder;

/// <summary>
/// What the setups must still cost at least: for each setup the dearer of two counts. One, every state still asked for
/// and not set now is set once more. Two, along any chain of needs the states have to be set in the chain's order.
/// </summary>
internal sealed class SetupDemand
{
    private readonly StripGraph graph;

    /// <summary>Setup, node, state before it (0 for none): cost of the dearest chain that starts with the node.</summary>
    private readonly long[][][] chains;

    public SetupDemand(StripGraph graph)
    {
        this.graph = graph;
        var order = graph.Wiring.Derive(_ => true);
        chains = new long[graph.Work.Setups.Length][][];
        for (var k = 0; k < chains.Length; k++)
        {
            var setup = graph.Work.Setups[k];
            chains[k] = new long[graph.IsChosen.Length][];
            foreach (var node in Enumerable.Reverse(order))
                chains[k][node] = Chain(k, setup, node);
        }
    }

    public long Rest(StripState state)
    {
        var rest = 0L;
        for (var k = 0; k < chains.Length; k++)
        {
            var setup = graph.Work.Setups[k];
            var count = 0L;
            for (var label = 0; label < setup.Labels.Length; label++)
            {
                if (label != state.Labels[k] && state.Wanted[k][label] > 0)
                    count += setup.SecondsInto[label];
            }
            foreach (var node in state.Ready)
                count = Math.Max(count, chains[k][node][state.Labels[k] + 1]);
            rest += count;
        }
        return rest;
    }

    private long[] Chain(int k, Setup setup, int node)
    {
        var row = new long[setup.Labels.Length + 1];
        var own = setup.LabelOf[node];
        for (var before = 0; before < row.Length; before++)
        {
            var after = own < 0 ? before : own + 1;
            var next = 0L;
            foreach (var user in graph.Wiring.NeededBy[node])
            {
                // A user that comes earlier in the order lies in a circle through a choice; such a chain is left out.
                if (graph.IsChosen[user] && chains[k][user] is { } further)
                    next = Math.Max(next, further[after]);
            }
            row[before] = next + (after == before ? 0 : setup.SecondsInto[own]);
        }
        return row;
    }
}
