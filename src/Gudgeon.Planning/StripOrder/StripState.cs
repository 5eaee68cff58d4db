namespace Gudgeon.Planning.StripOrder;

/// <summary>
/// How far a strip has gone: what is still missing for each node, what is set, what it has cost. Whatever can be undone
/// with things set as they are is undone at once: waiting with it never saves anything.
/// </summary>
internal sealed class StripState
{
    private readonly StripGraph graph;
    private readonly short[] open;
    private readonly short[] missing;
    private readonly bool[] met;
    private readonly List<int> ready = [];

    public StripState(StripGraph graph)
    {
        this.graph = graph;
        open = (short[])graph.Open.Clone();
        missing = (short[])graph.Missing.Clone();
        met = (bool[])graph.Met.Clone();
        Labels = [.. graph.Work.Setups.Select(setup => setup.Begins)];
        Wanted = [.. graph.Wanted.Select(counts => (int[])counts.Clone())];
        foreach (var node in graph.Nodes)
        {
            if (open[node] == 0)
                ready.Add(node);
        }
        Close();
    }

    private StripState(StripState from)
    {
        graph = from.graph;
        open = (short[])from.open.Clone();
        missing = (short[])from.missing.Clone();
        met = (bool[])from.met.Clone();
        ready = [.. from.ready];
        Labels = (int[])from.Labels.Clone();
        Seconds = from.Seconds;
        Hash = from.Hash;
        DoneCount = from.DoneCount;
        Wanted = [.. from.Wanted.Select(counts => (int[])counts.Clone())];
        Trail = new StripTrail(from.Trail, []);
    }

    /// <summary>How the state was come by, without the states on the way, which are large.</summary>
    public StripTrail Trail { get; } = new(null, []);

    public int[] Labels { get; }

    public long Seconds { get; private set; }

    public ulong Hash { get; private set; }

    public int DoneCount { get; private set; }

    /// <summary>Setup and state to how many nodes left ask for it.</summary>
    public int[][] Wanted { get; }

    /// <summary>Nodes that could be undone after some change of setup.</summary>
    public IReadOnlyList<int> Ready => ready;

    public bool IsWhole => DoneCount == graph.Nodes.Length;

    public ulong Key => Hash ^ Labels.Aggregate(0UL, (key, label) => key * 31 + (ulong)(label + 2)) * 0x9E3779B97F4A7C15UL;

    /// <summary>Changes what <paramref name="node"/> asks for, undoes it and everything that then follows.</summary>
    public StripState Then(int node)
    {
        var next = new StripState(this);
        for (var k = 0; k < Labels.Length; k++)
        {
            var label = graph.Work.Setups[k].LabelOf[node];
            if (label < 0 || label == next.Labels[k])
                continue;
            next.Seconds += graph.Work.Setups[k].SecondsInto[label];
            next.Labels[k] = label;
        }
        next.Close();
        return next;
    }

    private void Close()
    {
        for (var k = 0; k < ready.Count;)
        {
            var node = ready[k];
            if (!graph.Suits(node, Labels))
            {
                k++;
                continue;
            }
            ready.RemoveAt(k);
            Undo(node);
            // What has just come free goes to the end of the list and is met further on.
        }
    }

    private void Undo(int node)
    {
        Trail.Steps.Add(node);
        for (var k = 0; k < Wanted.Length; k++)
        {
            if (graph.Work.Setups[k].LabelOf[node] is >= 0 and var label)
                Wanted[k][label]--;
        }
        DoneCount++;
        Hash ^= graph.Hashes[node];
        foreach (var user in graph.Wiring.NeededBy[node])
            Settle(user);
        foreach (var way in graph.Wiring.MemberOf[node])
        {
            var choice = graph.Wiring.ChoiceOf[way];
            if (--missing[way] > 0 || met[choice])
                continue;
            met[choice] = true;
            Settle(graph.Wiring.Owner[choice]);
        }
    }

    private void Settle(int node)
    {
        if (--open[node] == 0 && graph.IsChosen[node])
            ready.Add(node);
    }
}

/// <summary>Nodes undone since the trail before, in order.</summary>
internal sealed record StripTrail(StripTrail? Before, List<int> Steps)
{
    public List<int> Order()
    {
        var trails = new Stack<StripTrail>();
        for (var trail = this; trail is not null; trail = trail.Before)
            trails.Push(trail);
        return [.. trails.SelectMany(trail => trail.Steps)];
    }
}
