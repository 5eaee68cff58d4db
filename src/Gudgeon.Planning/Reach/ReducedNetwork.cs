namespace Gudgeon.Planning.Reach;

/// <summary>
/// The part of a network that can matter for one goal, simplified without losing the optimum: what cannot be
/// undone is gone, what is undone whatever is chosen too, choices with one way left have become needs, alternatives
/// that another one covers, or that would rest on the very node they serve, are dropped, and nodes that are only ever
/// undone together are one (<see cref="Folding"/>).
/// </summary>
internal sealed class ReducedNetwork
{
    private readonly int[] nodeOf;

    private ReducedNetwork(Wiring full, int[] original, int[] nodeOf, WeightScale scale, AndOrNetwork network, Wiring wiring, ulong[][] mustOf, ulong[][] mustOfAlternative)
    {
        Full = full;
        Original = original;
        this.nodeOf = nodeOf;
        Wiring = wiring;
        MustOf = mustOf;
        MustOfAlternative = mustOfAlternative;
        Weights = new long[wiring.Count];
        for (var node = 0; node < original.Length; node++)
        {
            var weight = scale.Weigh(network.Nodes[original[node]]);
            if (nodeOf[node] >= 0)
                Weights[nodeOf[node]] += weight;
            else if (nodeOf[node] == Folding.Free)
                FreeWeight += weight;
        }
    }

    /// <summary>All that lies below the targets and is not done yet, by numbers of its own; the last is the goal, which stands for all targets together.</summary>
    public Wiring Full { get; }

    /// <summary>Number of a node of <see cref="Full"/> in the network asked about; the goal has none.</summary>
    public int[] Original { get; }

    /// <summary>What there is to search.</summary>
    public Wiring Wiring { get; }

    public long[] Weights { get; }

    public int Goal => nodeOf[^1];

    /// <summary>Weight of what is undone whatever is chosen and is not in <see cref="Wiring"/>.</summary>
    public long FreeWeight { get; }

    /// <summary>Nodes that every way of undoing this node undoes too, itself among them.</summary>
    public ulong[][] MustOf { get; }

    public ulong[][] MustOfAlternative { get; }

    /// <summary>Null when the targets cannot be reached at all.</summary>
    public static ReducedNetwork? Build(AndOrNetwork network, IReadOnlyCollection<int> targets, WeightScale scale)
    {
        var (full, original) = Gather(network, targets);
        var goal = original.Length;
        if (LeaveOutLost(network, full, original) is not { } verdicts)
            return null;
        var (wiring, nodeOf) = Folding.Of(full, goal, verdicts);
        while (true)
        {
            var mustOf = MustSets.Of(wiring);
            var mustOfAlternative = MustSets.OfAlternatives(wiring, mustOf);
            if (Prune(wiring, nodeOf[goal], mustOf, mustOfAlternative) is not { } pruned)
                return new ReducedNetwork(full, original, nodeOf, scale, network, wiring, mustOf, mustOfAlternative);
            (wiring, var next) = Folding.Of(wiring, nodeOf[goal], pruned);
            nodeOf = Array.ConvertAll(nodeOf, node => node < 0 ? node : next[node]);
        }
    }

    /// <summary>Whether a node of <see cref="Full"/> is undone when the search has chosen these.</summary>
    public bool IsUndone(int node, ulong[] chosen) => nodeOf[node] == Folding.Free || (nodeOf[node] >= 0 && Bits.Has(chosen, nodeOf[node]));

    /// <summary>Needs and choices of the goal and of all below it; what is done already asks for nothing and is left out.</summary>
    private static (Wiring Full, int[] Original) Gather(AndOrNetwork network, IReadOnlyCollection<int> targets)
    {
        var nodes = network.Nodes;
        var needs = new int[]?[nodes.Length];
        var choices = new int[][][]?[nodes.Length];
        var stack = new Stack<int>();
        var left = new List<int>();
        var ways = new List<int[]>();
        var open = new List<int[][]>();
        var goalNeeds = NotDone([.. targets]);
        Enter(goalNeeds);
        while (stack.TryPop(out var node))
        {
            left.Clear();
            foreach (var need in nodes[node].Needs)
                AddNotDone(need.Node);
            Enter(needs[node] = [.. left]);
            open.Clear();
            foreach (var choice in nodes[node].Choices)
            {
                ways.Clear();
                foreach (var way in choice.Alternatives)
                    ways.Add(NotDone(way.AsSpan()));
                if (ways.Exists(way => way.Length == 0))
                    continue;
                open.Add([.. ways]);
                foreach (var way in ways)
                    Enter(way);
            }
            choices[node] = [.. open];
        }

        var original = new List<int>();
        var number = new int[nodes.Length];
        for (var node = 0; node < nodes.Length; node++)
        {
            if (choices[node] is null)
                continue;
            number[node] = original.Count;
            original.Add(node);
        }
        var keptNeeds = new int[original.Count + 1][];
        var keptChoices = new int[original.Count + 1][][][];
        for (var k = 0; k < original.Count; k++)
        {
            keptNeeds[k] = Renumber(needs[original[k]]!);
            keptChoices[k] = choices[original[k]]!;
            foreach (var choice in keptChoices[k])
            {
                foreach (var way in choice)
                    Renumber(way);
            }
        }
        keptNeeds[^1] = Renumber(goalNeeds);
        keptChoices[^1] = [];
        return (new Wiring(keptNeeds, keptChoices), [.. original]);

        int[] NotDone(ReadOnlySpan<int> members)
        {
            left.Clear();
            foreach (var member in members)
                AddNotDone(member);
            return [.. left];
        }

        void AddNotDone(int node)
        {
            if (!nodes[node].IsDone && !left.Contains(node))
                left.Add(node);
        }

        void Enter(int[] below)
        {
            foreach (var node in below)
            {
                if (needs[node] is not null)
                    continue;
                needs[node] = [];
                stack.Push(node);
            }
        }

        int[] Renumber(int[] members)
        {
            for (var k = 0; k < members.Length; k++)
                members[k] = number[members[k]];
            return members;
        }
    }

    /// <summary>
    /// Drops the alternatives with a member that can never be undone, and frees what the goal needs without any choice;
    /// that much is cheap to see at once. Null when the goal cannot be undone.
    /// </summary>
    private static Verdicts? LeaveOutLost(AndOrNetwork network, Wiring full, int[] original)
    {
        var isLost = new bool[full.Count];
        Array.Fill(isLost, true);
        foreach (var node in full.Derive(node => node == original.Length || network.Nodes[original[node]].Blocks.Length == 0))
            isLost[node] = false;
        if (isLost[^1])
            return null;
        var verdicts = new Verdicts(full);
        for (var way = 0; way < full.Members.Length; way++)
        {
            foreach (var member in full.Members[way])
                verdicts.IsDropped[way] |= isLost[member];
        }
        var isNeeded = new bool[full.Count];
        var stack = new Stack<int>(full.Needs[^1]);
        while (stack.TryPop(out var node))
        {
            if (isNeeded[node])
                continue;
            isNeeded[node] = true;
            foreach (var need in full.Needs[node])
                stack.Push(need);
        }
        foreach (var node in full.Derive(node => isNeeded[node]))
            verdicts.IsFree[node] = true;
        return verdicts;
    }

    /// <summary>What can go; null when nothing can.</summary>
    private static Verdicts? Prune(Wiring wiring, int goal, ulong[][] mustOf, ulong[][] mustOfAlternative)
    {
        var verdicts = new Verdicts(wiring);
        var changed = false;
        foreach (var node in wiring.Derive(node => Bits.Has(mustOf[goal], node)))
        {
            if (node != goal)
                verdicts.IsFree[node] = changed = true;
        }
        var below = Bits.Empty(wiring.Count);
        for (var choice = 0; choice < wiring.Owner.Length; choice++)
        {
            var node = wiring.Owner[choice];
            Array.Clear(below);
            foreach (var need in wiring.Needs[node])
                Bits.Unite(below, mustOf[need]);
            var ways = wiring.AlternativesOf[choice];
            if (Array.Exists(ways, way => Array.TrueForAll(wiring.Members[way], member => Bits.Has(below, member))))
            {
                verdicts.IsMet[choice] = changed = true;
                continue;
            }
            for (var at = 0; at < ways.Length; at++)
            {
                if (Bits.Has(mustOfAlternative[ways[at]], node) || IsCovered(at, ways, mustOfAlternative))
                    verdicts.IsDropped[ways[at]] = changed = true;
            }
        }
        return changed ? verdicts : null;
    }

    /// <summary>
    /// A way is covered when another way of the same choice asks for no more than it does: whoever goes this way has gone the other as well.
    /// </summary>
    private static bool IsCovered(int at, int[] ways, ulong[][] mustOfAlternative)
    {
        var own = mustOfAlternative[ways[at]];
        for (var k = 0; k < ways.Length; k++)
        {
            var other = mustOfAlternative[ways[k]];
            if (k != at && Bits.IsSubset(other, own) && (k < at || !Bits.Same(other, own)))
                return true;
        }
        return false;
    }
}
