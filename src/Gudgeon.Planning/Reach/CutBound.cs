namespace Gudgeon.Planning.Reach;

/// <summary>
/// A lower bound on what the open choices still cost. Round by round it finds a set of nodes of which every
/// completion must undo at least one (a cut), counts the cheapest weight of the cut once, and takes that weight
/// off all its nodes, so that no weight is counted twice. Method: landmark cuts, Helmert and Domshlak,
/// "Landmarks, critical paths and abstractions" (ICAPS 2009), here on AND/OR networks; from memory. Other than there,
/// the heights that show where to cut are found anew only now and then: a cut is right whatever they say, as long as
/// it is known what the cuts have already counted in full (paid), and that is carried along.
/// </summary>
internal sealed class CutBound
{
    private const int None = int.MinValue;

    private readonly Wiring wiring;
    private readonly long[] residual;
    private readonly long[] height;
    private readonly int[] support;
    private readonly bool[] inZone;
    private readonly List<int> zone = [];
    private readonly List<int> cut = [];
    private readonly Stack<int> stack = new();

    // What a node or a way still waits for: Left while heights are found, Unpaid until the cuts have counted it in full.
    private readonly int[] openLeft;
    private readonly int[] missingLeft;
    private readonly bool[] metLeft;
    private readonly int[] openUnpaid;
    private readonly int[] missingUnpaid;
    private readonly bool[] metUnpaid;

    // When a node was paid, counted from 0; later than all while it is not.
    private readonly int[] turn;
    private int turns;

    private readonly int[] level;
    private readonly int[] heap;
    private int levelCount;
    private int heapCount;

    private bool[] inRegion = [];
    private bool[] dead = [];

    public CutBound(Wiring wiring)
    {
        this.wiring = wiring;
        residual = new long[wiring.Count];
        height = new long[wiring.Count];
        support = new int[wiring.Count];
        inZone = new bool[wiring.Count];
        openLeft = new int[wiring.Count];
        missingLeft = new int[wiring.Members.Length];
        metLeft = new bool[wiring.Owner.Length];
        openUnpaid = new int[wiring.Count];
        missingUnpaid = new int[wiring.Members.Length];
        metUnpaid = new bool[wiring.Owner.Length];
        turn = new int[wiring.Count];
        level = new int[wiring.Count];
        heap = new int[wiring.Count];
    }

    /// <summary>
    /// Bound on the extra weight that the open choices of <paramref name="part"/> ask for, beyond <paramref name="chosen"/>.
    /// Nodes outside the part are already founded or of no use. Stops early once the bound reaches <paramref name="enough"/>.
    /// </summary>
    public long Of(Regions.Part part, Regions regions, ulong[] chosen, long[] weights, long enough)
    {
        (inRegion, dead) = (regions.InRegion(part), regions.Dead);
        foreach (var node in part.Nodes)
            residual[node] = Bits.Has(chosen, node) ? 0 : weights[node];
        Prepare(part);
        Climb(part.Nodes);
        // A choice that nothing can meet in this region: the caller's branch is dead.
        if (part.Open.Exists(goal => Height(goal) == long.MaxValue))
            return long.MaxValue;
        var bound = 0L;
        // A few cuts for each choice before the heights are found anew, and more each time: each cut counts a node in full,
        // so soon all are taken at once.
        var isLeft = true;
        for (var several = 2; isLeft && bound < enough; several *= 4)
        {
            isLeft = false;
            foreach (var goal in part.Open)
            {
                for (var k = 0; k < several && bound < enough && !metUnpaid[goal]; k++)
                {
                    bound += TakeCut(goal);
                    isLeft = true;
                }
            }
            if (isLeft && bound < enough)
                Climb(part.Nodes);
        }
        return bound;
    }

    /// <summary>Weight of what <paramref name="row"/> holds beyond <paramref name="chosen"/> that no cut of the last bounds has counted: it comes on top of them.</summary>
    public long Over(ulong[] row, ulong[] chosen) => Bits.WeightBeyond(row, chosen, residual);

    /// <summary>
    /// Adds to <paramref name="set"/> a completion of the part just bounded that asks for nothing the cuts have not
    /// counted in full: once no cut is left, such a completion exists. Of several ways it goes the one that adds least.
    /// </summary>
    public void AddPaid(Regions.Part part, ulong[] set, ulong[][] mustOfAlternative, long[] weights)
    {
        ClearZone();
        foreach (var goal in part.Open)
            Go(goal);
        while (stack.TryPop(out var node))
        {
            Bits.Add(set, node);
            foreach (var need in wiring.Needs[node])
                Undo(need);
            foreach (var choice in wiring.ChoicesOf[node])
                Go(choice);
        }

        void Go(int choice)
        {
            var owner = wiring.Owner[choice];
            var before = inRegion[owner] ? turn[owner] : int.MaxValue;
            var (pick, pickAdded) = (-1, long.MaxValue);
            foreach (var way in wiring.AlternativesOf[choice])
            {
                if (dead[way] || !Array.TrueForAll(wiring.Members[way], member => !inRegion[member] || turn[member] < before))
                    continue;
                var added = Bits.WeightBeyond(mustOfAlternative[way], set, weights);
                if (added < pickAdded)
                    (pick, pickAdded) = (way, added);
            }
            foreach (var member in wiring.Members[pick])
                Undo(member);
        }

        void Undo(int node)
        {
            if (inRegion[node])
                Enter(node);
        }
    }

    /// <summary>What everything in the region waits for, and what is paid from the start.</summary>
    private void Prepare(Regions.Part part)
    {
        foreach (var goal in part.Open)
            PrepareWays(goal);
        foreach (var node in part.Nodes)
        {
            var wanted = 0;
            foreach (var need in wiring.Needs[node])
                wanted += inRegion[need] ? 1 : 0;
            foreach (var choice in wiring.ChoicesOf[node])
                wanted += PrepareWays(choice) ? 0 : 1;
            openUnpaid[node] = wanted;
            turn[node] = int.MaxValue;
        }
        turns = 0;
        foreach (var node in part.Nodes)
        {
            if (openUnpaid[node] == 0 && residual[node] == 0)
                Pay(node);
        }
    }

    /// <summary>Whether a way asks for nothing here, so that the choice is met.</summary>
    private bool PrepareWays(int choice)
    {
        var isMet = false;
        foreach (var way in wiring.AlternativesOf[choice])
        {
            // One more than it can lose: a dead way is never complete.
            var missing = dead[way] ? 1 : 0;
            foreach (var member in wiring.Members[way])
                missing += inRegion[member] ? 1 : 0;
            missingUnpaid[way] = missing;
            isMet |= missing == 0;
        }
        return metUnpaid[choice] = isMet;
    }

    /// <summary>Nothing of this node, or of what it rests on, is left to count; and so on upwards.</summary>
    private void Pay(int first)
    {
        if (turn[first] < int.MaxValue)
            return;
        turn[first] = turns++;
        stack.Push(first);
        while (stack.TryPop(out var node))
        {
            foreach (var user in wiring.NeededBy[node])
                Settle(user);
            foreach (var way in wiring.MemberOf[node])
            {
                var choice = wiring.ChoiceOf[way];
                if (--missingUnpaid[way] > 0 || metUnpaid[choice])
                    continue;
                metUnpaid[choice] = true;
                Settle(wiring.Owner[choice]);
            }
        }

        void Settle(int node)
        {
            if (!inRegion[node] || --openUnpaid[node] > 0 || residual[node] > 0)
                return;
            turn[node] = turns++;
            stack.Push(node);
        }
    }

    private bool IsUnpaid(int node) => inRegion[node] && turn[node] == int.MaxValue;

    private long Height(int choice)
    {
        if (metUnpaid[choice])
            return 0;
        var best = long.MaxValue;
        foreach (var way in wiring.AlternativesOf[choice])
        {
            if (!dead[way] && Top(way) is >= 0 and var top)
                best = Math.Min(best, height[top]);
        }
        return best;
    }

    /// <summary>The highest that is unpaid; -1 when all is paid.</summary>
    private int Top(int way)
    {
        var top = -1;
        foreach (var member in wiring.Members[way])
        {
            if (IsUnpaid(member) && (top < 0 || height[member] > height[top]))
                top = member;
        }
        return top;
    }

    /// <summary>Least height of every node: its own weight on top of the dearest of what it asks for.</summary>
    private void Climb(List<int> region)
    {
        foreach (var node in region)
        {
            if (!IsUnpaid(node))
                continue;
            height[node] = long.MaxValue;
            support[node] = None;
            foreach (var choice in wiring.ChoicesOf[node])
            {
                metLeft[choice] = metUnpaid[choice];
                foreach (var way in wiring.AlternativesOf[choice])
                    missingLeft[way] = missingUnpaid[way];
            }
            openLeft[node] = openUnpaid[node];
            if (openLeft[node] == 0)
                Push(node, 0);
        }
        while (TryPop(out var node))
        {
            foreach (var user in wiring.NeededBy[node])
            {
                if (inRegion[user] && --openLeft[user] == 0)
                {
                    support[user] = node;
                    Push(user, height[node]);
                }
            }
            foreach (var way in wiring.MemberOf[node])
            {
                var choice = wiring.ChoiceOf[way];
                var owner = wiring.Owner[choice];
                if (!inRegion[owner] || --missingLeft[way] > 0 || metLeft[choice])
                    continue;
                metLeft[choice] = true;
                if (--openLeft[owner] == 0)
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

    /// <summary>Counts the next cut for a choice that is not paid yet. From each node in the zone the search goes on to one thing that it waits for and that is not paid.</summary>
    private long TakeCut(int goal)
    {
        ClearZone();
        cut.Clear();
        EnterWays(goal);
        while (stack.TryPop(out var node))
        {
            if (residual[node] > 0)
                cut.Add(node);
            else if (Support(node) is >= 0 and var need)
                Enter(need);
            else
                EnterWays(~support[node]);
        }
        var least = long.MaxValue;
        foreach (var node in cut)
            least = Math.Min(least, residual[node]);
        foreach (var node in cut)
            residual[node] -= least;
        foreach (var node in cut)
        {
            if (residual[node] == 0 && openUnpaid[node] == 0)
                Pay(node);
        }
        return least;
    }

    /// <summary>What of the node's needs and choices stands highest and is not paid: a need, or the complement of a choice.</summary>
    private int Support(int node)
    {
        var known = support[node];
        if (known >= 0 ? IsUnpaid(known) : !metUnpaid[~known])
            return known;
        var (best, bestHeight) = (None, -1L);
        foreach (var need in wiring.Needs[node])
        {
            if (IsUnpaid(need) && height[need] > bestHeight)
                (best, bestHeight) = (need, height[need]);
        }
        foreach (var choice in wiring.ChoicesOf[node])
        {
            if (!metUnpaid[choice] && Height(choice) is var at && at > bestHeight)
                (best, bestHeight) = (~choice, at);
        }
        return support[node] = best;
    }

    private void EnterWays(int choice)
    {
        foreach (var way in wiring.AlternativesOf[choice])
        {
            if (!dead[way] && Top(way) is var top && height[top] < long.MaxValue)
                Enter(top);
        }
    }

    private void Enter(int node)
    {
        if (inZone[node])
            return;
        inZone[node] = true;
        zone.Add(node);
        stack.Push(node);
    }

    private void ClearZone()
    {
        foreach (var node in zone)
            inZone[node] = false;
        zone.Clear();
    }
}
