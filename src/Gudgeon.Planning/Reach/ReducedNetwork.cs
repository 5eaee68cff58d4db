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
        var count = network.Nodes.Length + 1;
        var goal = count - 1;
        var needs = new List<List<int>>(count);
        var choices = new List<List<int[][]>>(count);
        foreach (var node in network.Nodes)
        {
            needs.Add(node.IsDone ? [] : [.. node.Needs.Select(need => need.Node).Distinct()]);
            choices.Add(node.IsDone ? [] : [.. node.Choices.Select(choice => choice.Alternatives.Select(a => a.Distinct().ToArray()).ToArray())]);
        }
        needs.Add([.. targets.Distinct()]);
        choices.Add([]);
        bool IsFree(int node) => node != goal && network.Nodes[node].IsDone;
        bool IsBlocked(int node) => node != goal && !network.Nodes[node].IsDone && network.Nodes[node].Blocks.Length > 0;

        var derived = new bool[count];
        foreach (var node in new Wiring(needs, choices).Derive(node => !IsBlocked(node)))
            derived[node] = true;
        if (!derived[goal])
            return null;
        for (var node = 0; node < count; node++)
            Simplify(needs, choices, node, member => !derived[member], IsFree);

        while (true)
        {
            var (wiring, original) = KeepRelevant(needs, choices, goal);
            var mustOf = MustSets.Of(wiring);
            var mustOfAlternative = MustSets.OfAlternatives(wiring, mustOf);
            if (!Prune(wiring, mustOf, mustOfAlternative, original, choices))
            {
                var kept = original.Select(node => node == goal ? 0 : weights[node]).ToArray();
                var numbers = original.Select(node => node == goal ? -1 : node).ToArray();
                return new ReducedNetwork(wiring, kept, numbers, Array.IndexOf(original, goal), mustOf, mustOfAlternative);
            }
            foreach (var node in original)
                Simplify(needs, choices, node, _ => false, _ => false);
        }
    }

    /// <summary>Drops lost alternatives and free members, and turns a choice with one way left into needs.</summary>
    private static void Simplify(List<List<int>> needs, List<List<int[][]>> choices, int node, Func<int, bool> isLost, Func<int, bool> isFree)
    {
        needs[node].RemoveAll(need => isFree(need));
        for (var k = choices[node].Count - 1; k >= 0; k--)
        {
            var left = choices[node][k]
                .Where(alternative => !alternative.Any(isLost))
                .Select(alternative => alternative.Where(member => !isFree(member)).ToArray())
                .ToArray();
            choices[node][k] = left;
            if (left.Length == 0 || (left.Length > 1 && left.All(alternative => alternative.Length > 0)))
                continue;
            choices[node].RemoveAt(k);
            if (left.Length == 1)
                needs[node] = [.. needs[node].Union(left[0])];
        }
    }

    private static (Wiring Wiring, int[] Original) KeepRelevant(List<List<int>> needs, List<List<int[][]>> choices, int goal)
    {
        var seen = new bool[needs.Count];
        var stack = new Stack<int>([goal]);
        seen[goal] = true;
        while (stack.TryPop(out var node))
        {
            foreach (var below in needs[node].Concat(choices[node].SelectMany(ways => ways.SelectMany(way => way))))
            {
                if (!seen[below])
                {
                    seen[below] = true;
                    stack.Push(below);
                }
            }
        }
        var original = Enumerable.Range(0, needs.Count).Where(node => seen[node]).ToArray();
        var number = new int[needs.Count];
        for (var k = 0; k < original.Length; k++)
            number[original[k]] = k;
        var keptNeeds = original.Select(node => needs[node].ConvertAll(below => number[below])).ToList();
        var keptChoices = original.Select(node => choices[node].ConvertAll(
            ways => Array.ConvertAll(ways, way => Array.ConvertAll(way, below => number[below])))).ToList();
        return (new Wiring(keptNeeds, keptChoices), original);
    }

    /// <summary>True when something was dropped, so that another round may find more.</summary>
    private static bool Prune(Wiring wiring, ulong[][] mustOf, ulong[][] mustOfAlternative, int[] original, List<List<int[][]>> choices)
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
