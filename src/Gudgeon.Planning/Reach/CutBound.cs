namespace Gudgeon.Planning.Reach;

/// <summary>
/// A lower bound on what the open choices still cost. Round by round it finds a set of nodes of which every
/// completion must undo at least one (a cut), counts the cheapest weight of the cut once, and takes that weight
/// off all its nodes, so that no weight is counted twice. Method: landmark cuts, Helmert and Domshlak,
/// "Landmarks, critical paths and abstractions" (ICAPS 2009), here on AND/OR networks; from memory.
/// </summary>
internal sealed class CutBound
{
    private const int None = int.MinValue;

    private readonly Wiring wiring;
    private readonly long[] residual;
    private readonly long[] height;
    private readonly int[] open;
    private readonly int[] missing;
    private readonly int[] support;
    private readonly int[] met;
    private readonly bool[] inZone;
    private bool[] dead = [];
    private readonly int[] openAtFirst;
    private readonly int[] missingAtFirst;
    private readonly int[] metAtFirst;
    private readonly List<int> choices = [];
    private readonly int[] level;
    private readonly int[] heap;
    private int levelCount;
    private int heapCount;
    private readonly List<int> cut = [];
    private readonly Stack<int> stack = new();

    public CutBound(Wiring wiring)
    {
        this.wiring = wiring;
        residual = new long[wiring.Count];
        height = new long[wiring.Count];
        open = new int[wiring.Count];
        support = new int[wiring.Count];
        inZone = new bool[wiring.Count];
        level = new int[wiring.Count];
        heap = new int[wiring.Count];
        missing = new int[wiring.Members.Length];
        met = new int[wiring.Owner.Length];
        openAtFirst = new int[open.Length];
        missingAtFirst = new int[missing.Length];
        metAtFirst = new int[met.Length];
    }

    /// <summary>
    /// Bound on the extra weight that the open choices of <paramref name="part"/> ask for, beyond <paramref name="chosen"/>.
    /// Nodes outside the part are already founded or of no use. Stops early once the bound reaches <paramref name="enough"/>.
    /// </summary>
    public long Of(Regions.Part part, Regions regions, ulong[] chosen, long[] weights, long enough)
    {
        var (goals, region, inRegion) = (part.Open, part.Nodes, regions.InRegion(part));
        dead = regions.Dead;
        foreach (var node in region)
            residual[node] = Bits.Has(chosen, node) ? 0 : weights[node];
        Prepare(region, inRegion);
        var bound = 0L;
        while (bound < enough)
        {
            Climb(region, inRegion);
            var worst = -1;
            var worstHeight = 0L;
            foreach (var goal in goals)
            {
                var best = long.MaxValue;
                foreach (var way in wiring.AlternativesOf[goal])
                    best = Math.Min(best, WayHeight(way, inRegion));
                if (best > worstHeight)
                    (worst, worstHeight) = (goal, best);
            }
            if (worst < 0)
                break;
            // A choice that nothing can meet in this region: the caller's branch is dead.
            if (worstHeight == long.MaxValue)
                return long.MaxValue;
            bound += TakeCut(worst, inRegion, region);
            // More cuts from the same heights, as long as they still lead to weights that are left.
            foreach (var goal in goals)
            {
                for (var more = long.MaxValue; more > 0 && bound < enough; bound += more)
                    more = TakeCut(goal, inRegion, region);
            }
        }
        return bound;
    }

    /// <summary>Weight of what <paramref name="row"/> holds beyond <paramref name="chosen"/> that no cut of the last bounds has counted: it comes on top of them.</summary>
    public long Over(ulong[] row, ulong[] chosen) => Bits.WeightBeyond(row, chosen, residual);

    private long WayHeight(int way, bool[] inRegion)
    {
        if (dead[way])
            return long.MaxValue;
        var top = 0L;
        foreach (var member in wiring.Members[way])
        {
            if (inRegion[member])
                top = Math.Max(top, height[member]);
        }
        return top;
    }

    /// <summary>What every node of the region asks for before anything is passed: the same for each climb.</summary>
    private void Prepare(List<int> region, bool[] inRegion)
    {
        choices.Clear();
        foreach (var node in region)
        {
            var wanted = 0;
            foreach (var need in wiring.Needs[node])
                wanted += inRegion[need] ? 1 : 0;
            foreach (var choice in wiring.ChoicesOf[node])
            {
                choices.Add(choice);
                metAtFirst[choice] = -1;
                wanted++;
                foreach (var way in wiring.AlternativesOf[choice])
                {
                    // One more than it can lose: a dead way is never complete.
                    missingAtFirst[way] = dead[way] ? 1 : 0;
                    foreach (var member in wiring.Members[way])
                        missingAtFirst[way] += inRegion[member] ? 1 : 0;
                    if (missingAtFirst[way] == 0 && metAtFirst[choice] < 0)
                    {
                        metAtFirst[choice] = way;
                        wanted--;
                    }
                }
            }
            openAtFirst[node] = wanted;
        }
    }

    /// <summary>Least height of every node: its own weight on top of the dearest of what it asks for.</summary>
    private void Climb(List<int> region, bool[] inRegion)
    {
        foreach (var choice in choices)
        {
            met[choice] = metAtFirst[choice];
            foreach (var way in wiring.AlternativesOf[choice])
                missing[way] = missingAtFirst[way];
        }
        foreach (var node in region)
        {
            height[node] = long.MaxValue;
            support[node] = None;
            open[node] = openAtFirst[node];
            if (open[node] == 0)
                Push(node, 0);
        }
        while (TryPop(out var node))
        {
            foreach (var user in wiring.NeededBy[node])
            {
                if (inRegion[user] && --open[user] == 0)
                {
                    support[user] = node;
                    Push(user, height[node]);
                }
            }
            foreach (var way in wiring.MemberOf[node])
            {
                var choice = wiring.ChoiceOf[way];
                var owner = wiring.Owner[choice];
                if (!inRegion[owner] || --missing[way] > 0)
                    continue;
                if (met[choice] >= 0)
                    continue;
                met[choice] = way;
                if (--open[owner] == 0)
                {
                    support[owner] = ~choice;
                    Push(owner, height[node]);
                }
            }
        }
    }

    /// <summary>What adds nothing stands as high as what is being passed: it needs no place in the heap.</summary>
    private void Push(int node, long below)
    {
        height[node] = below + residual[node];
        if (residual[node] == 0)
        {
            level[levelCount++] = node;
            return;
        }
        var at = heapCount++;
        while (at > 0 && IsLower(node, heap[(at - 1) >> 1]))
        {
            heap[at] = heap[(at - 1) >> 1];
            at = (at - 1) >> 1;
        }
        heap[at] = node;
    }

    /// <summary>The lowest of what waits; of two alike the one with the lower number, so that the same network gives the same cuts.</summary>
    private bool TryPop(out int node)
    {
        if (levelCount > 0)
        {
            node = level[--levelCount];
            return true;
        }
        if (heapCount == 0)
        {
            node = -1;
            return false;
        }
        node = heap[0];
        var last = heap[--heapCount];
        var at = 0;
        for (var child = 1; child < heapCount; child = (2 * at) + 1)
        {
            if (child + 1 < heapCount && IsLower(heap[child + 1], heap[child]))
                child++;
            if (!IsLower(heap[child], last))
                break;
            heap[at] = heap[child];
            at = child;
        }
        heap[at] = last;
        return true;
    }

    private bool IsLower(int one, int other) => height[one] != height[other] ? height[one] < height[other] : one < other;

    /// <summary>The weight that was counted; 0 when the heights are too old to tell and the way is free instead.</summary>
    private long TakeCut(int goal, bool[] inRegion, List<int> region)
    {
        foreach (var node in region)
            inZone[node] = false;
        cut.Clear();
        if (!EnterWays(goal, inRegion))
            return 0;
        while (stack.TryPop(out var node))
        {
            if (residual[node] > 0)
            {
                cut.Add(node);
                continue;
            }
            if (support[node] == None)
            {
                stack.Clear();
                return 0;
            }
            if (support[node] >= 0)
                Enter(support[node]);
            else if (!EnterWays(~support[node], inRegion))
                return 0;
        }
        if (cut.Count == 0)
            return 0;
        var least = long.MaxValue;
        foreach (var node in cut)
            least = Math.Min(least, residual[node]);
        foreach (var node in cut)
            residual[node] -= least;
        return least;
    }

    /// <summary>False when a way asks for nothing here: then nothing is cut off.</summary>
    private bool EnterWays(int choice, bool[] inRegion)
    {
        foreach (var way in wiring.AlternativesOf[choice])
        {
            if (dead[way])
                continue;
            var top = -1;
            foreach (var member in wiring.Members[way])
            {
                if (inRegion[member] && (top < 0 || height[member] > height[top]))
                    top = member;
            }
            if (top < 0)
            {
                stack.Clear();
                return false;
            }
            if (height[top] < long.MaxValue)
                Enter(top);
        }
        return true;
    }

    private void Enter(int node)
    {
        if (inZone[node])
            return;
        inZone[node] = true;
        stack.Push(node);
    }
}
