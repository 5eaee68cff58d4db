namespace Gudgeon.Planning.Reach;

/// <summary>
/// The part of a network that can matter for one goal, simplified without losing the optimum: what cannot be
/// undone is gone, choices with one way left have become needs, and alternatives that another one covers,
/// or that would rest on the very node they serve, are dropped.
/// </summary>
internal sealed class ReducedNetwork
{
    private ReducedNetwork(Wiring wiring, long[] weights, int[] original, int goal, ulong[][] mustOf, ulong[][] mustOfAlternative)
    {
        Wiring = wiring;
        Weights = weights;
        Original = original;
        Goal = goal;
        MustOf = mustOf;
        MustOfAlternative = mustOfAlternative;
    }

    public Wiring Wiring { get; }

    public long[] Weights { get; }

    /// <summary>Number in the full network; -1 for the goal, which stands for all targets together.</summary>
    public int[] Original { get; }

    public int Goal { get; }

    /// <summary>Nodes that every way of undoing this node undoes too, itself among them.</summary>
    public ulong[][] MustOf { get; }

    public ulong[][] MustOfAlternative { get; }

    /// <summary>Null when the targets cannot be reached at all.</summary>
    public static ReducedNetwork? Build(AndOrNetwork network, IReadOnlyCollection<int> targets, long[] weights)
    {
        var goal = network.Nodes.Length;
        var needs = new List<int>[goal + 1];
        var choices = new List<int[][]>[goal + 1];
        Gather(network, targets, needs, choices);
        var (all, numbers) = KeepRelevant(needs, choices, goal);
        var isLost = new bool[goal + 1];
        Array.Fill(isLost, true);
        foreach (var node in all.Derive(node => numbers[node] == goal || network.Nodes[numbers[node]].Blocks.Length == 0))
            isLost[numbers[node]] = false;
        if (isLost[goal])
            return null;
        foreach (var node in numbers)
            Simplify(needs, choices, node, isLost);

        while (true)
        {
            var (wiring, original) = KeepRelevant(needs, choices, goal);
            var mustOf = MustSets.Of(wiring);
            var mustOfAlternative = MustSets.OfAlternatives(wiring, mustOf);
            if (!Prune(wiring, mustOf, mustOfAlternative, original, choices))
            {
                var kept = original.Select(node => node == goal ? 0 : weights[node]).ToArray();
                var names = original.Select(node => node == goal ? -1 : node).ToArray();
                return new ReducedNetwork(wiring, kept, names, Array.IndexOf(original, goal), mustOf, mustOfAlternative);
            }
            foreach (var node in original)
                Simplify(needs, choices, node, isLost);
        }
    }

    /// <summary>Needs and choices of the goal and of all below it; what is done already asks for nothing and is left out.</summary>
    private static void Gather(AndOrNetwork network, IReadOnlyCollection<int> targets, List<int>[] needs, List<int[][]>[] choices)
    {
        var nodes = network.Nodes;
        var goal = nodes.Length;
        needs[goal] = [.. targets.Where(target => !nodes[target].IsDone).Distinct()];
        choices[goal] = [];
        var stack = new Stack<int>(needs[goal]);
        while (stack.TryPop(out var node))
        {
            if (needs[node] is not null)
                continue;
            var own = new List<int>();
            foreach (var need in nodes[node].Needs)
            {
                if (nodes[need.Node].IsDone || own.Contains(need.Node))
                    continue;
                own.Add(need.Node);
                stack.Push(need.Node);
            }
            needs[node] = own;
            choices[node] = [];
            foreach (var choice in nodes[node].Choices)
            {
                var ways = choice.Alternatives.Select(way => way.Where(member => !nodes[member].IsDone).Distinct().ToArray()).ToArray();
                if (ways.Any(way => way.Length == 0))
                    continue;
                choices[node].Add(ways);
                foreach (var member in ways.SelectMany(way => way))
                    stack.Push(member);
            }
        }
    }

    /// <summary>Drops lost alternatives, and turns a choice with one way left into needs.</summary>
    private static void Simplify(List<int>[] needs, List<int[][]>[] choices, int node, bool[] isLost)
    {
        for (var k = choices[node].Count - 1; k >= 0; k--)
        {
            var left = choices[node][k].Where(way => !way.Any(member => isLost[member])).ToArray();
            choices[node][k] = left;
            if (left.Length != 1)
                continue;
            choices[node].RemoveAt(k);
            needs[node] = [.. needs[node].Union(left[0])];
        }
    }

    private static (Wiring Wiring, int[] Original) KeepRelevant(List<int>[] needs, List<int[][]>[] choices, int goal)
    {
        var seen = new bool[goal + 1];
        var stack = new Stack<int>([goal]);
        seen[goal] = true;
        while (stack.TryPop(out var node))
        {
            foreach (var below in needs[node])
                Enter(below);
            foreach (var ways in choices[node])
            {
                foreach (var way in ways)
                {
                    foreach (var below in way)
                        Enter(below);
                }
            }
        }
        var original = Enumerable.Range(0, goal + 1).Where(node => seen[node]).ToArray();
        var number = new int[goal + 1];
        for (var k = 0; k < original.Length; k++)
            number[original[k]] = k;
        var keptNeeds = original.Select(node => needs[node].ConvertAll(below => number[below])).ToList();
        var keptChoices = original.Select(node => choices[node].ConvertAll(
            ways => Array.ConvertAll(ways, way => Array.ConvertAll(way, below => number[below])))).ToList();
        return (new Wiring(keptNeeds, keptChoices), original);

        void Enter(int below)
        {
            if (seen[below])
                return;
            seen[below] = true;
            stack.Push(below);
        }
    }

    /// <summary>True when something was dropped, so that another round may find more.</summary>
    private static bool Prune(Wiring wiring, ulong[][] mustOf, ulong[][] mustOfAlternative, int[] original, List<int[][]>[] choices)
    {
        var changed = false;
        for (var node = 0; node < wiring.Count; node++)
        {
            var below = Bits.Empty(wiring.Count);
            foreach (var need in wiring.Needs[node])
                Bits.Unite(below, mustOf[need]);
            for (var k = wiring.ChoicesOf[node].Length - 1; k >= 0; k--)
            {
                var ways = wiring.AlternativesOf[wiring.ChoicesOf[node][k]];
                if (ways.Any(way => wiring.Members[way].All(member => Bits.Has(below, member))))
                {
                    choices[original[node]].RemoveAt(k);
                    changed = true;
                    continue;
                }
                var kept = ways.Where((way, at) => !Bits.Has(mustOfAlternative[way], node) && !IsCovered(at, ways, mustOfAlternative)).ToArray();
                if (kept.Length == ways.Length)
                    continue;
                changed = true;
                choices[original[node]][k] = [.. kept.Select(way => wiring.Members[way].Select(member => original[member]).ToArray())];
            }
        }
        return changed;
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
