namespace Gudgeon.Planning.Reach;

/// <summary>
/// What each open choice can still touch: everything below its alternatives that is not yet founded. Choices
/// whose regions meet belong to one part; parts share no node that matters and are solved apart.
/// </summary>
internal sealed class Regions
{
    private readonly int count;

    public Regions(Wiring wiring, ulong[] chosen, List<int> unmet, int[] ignored, Predicate<int> isDead)
    {
        count = wiring.Count;
        Dead = new bool[wiring.Members.Length];
        var judged = new bool[wiring.Owner.Length];
        var founded = new bool[count];
        foreach (var node in wiring.Derive(node => Bits.Has(chosen, node), ignored))
            founded[node] = true;

        // owner[node] = the first open choice (position in unmet) that reached it; leaders join parts.
        var reachedBy = new int[count];
        Array.Fill(reachedBy, -1);
        var leader = new int[unmet.Count];
        var stack = new Stack<int>();
        for (var k = 0; k < unmet.Count; k++)
        {
            leader[k] = k;
            EnterWays(unmet[k], k);
            while (stack.TryPop(out var node))
            {
                Enter(wiring.Needs[node], k);
                foreach (var choice in wiring.ChoicesOf[node])
                    EnterWays(choice, k);
            }
        }
        // A choice whose owner lies in the region of another can be used by it in a circle.
        for (var k = 0; k < unmet.Count; k++)
        {
            var by = reachedBy[wiring.Owner[unmet[k]]];
            if (by >= 0)
                Join(by, k);
        }

        var partOf = new Dictionary<int, Part>();
        for (var k = 0; k < unmet.Count; k++)
        {
            var root = Root(k);
            if (!partOf.TryGetValue(root, out var part))
            {
                partOf[root] = part = new Part();
                Parts.Add(part);
            }
            part.Open.Add(unmet[k]);
        }
        for (var node = 0; node < count; node++)
        {
            if (reachedBy[node] >= 0)
                partOf[Root(reachedBy[node])].Nodes.Add(node);
        }

        void EnterWays(int choice, int k)
        {
            foreach (var way in wiring.AlternativesOf[choice])
            {
                if (!judged[choice])
                    Dead[way] = isDead(way);
                if (!Dead[way])
                    Enter(wiring.Members[way], k);
            }
            judged[choice] = true;
        }

        void Enter(int[] nodes, int k)
        {
            foreach (var node in nodes)
            {
                if (founded[node])
                    continue;
                if (reachedBy[node] < 0)
                {
                    reachedBy[node] = k;
                    stack.Push(node);
                }
                else
                {
                    Join(reachedBy[node], k);
                }
            }
        }

        int Root(int k)
        {
            while (leader[k] != k)
                k = leader[k] = leader[leader[k]];
            return k;
        }

        void Join(int one, int other)
        {
            var (a, b) = (Root(one), Root(other));
            leader[Math.Max(a, b)] = Math.Min(a, b);
        }
    }

    public List<Part> Parts { get; } = [];

    /// <summary>Ways that no completion below the limit can take.</summary>
    public bool[] Dead { get; }

    public bool[] InRegion(Part part)
    {
        var flags = new bool[count];
        foreach (var node in part.Nodes)
            flags[node] = true;
        return flags;
    }

    internal sealed class Part
    {
        public List<int> Open { get; } = [];

        public List<int> Nodes { get; } = [];

        /// <summary>Two states with the same key have the same best completion.</summary>
        public ulong[] Key(ulong[] chosen)
        {
            var key = new ulong[1 + Open.Count + Nodes.Count];
            key[0] = (ulong)Open.Count;
            for (var k = 0; k < Open.Count; k++)
                key[k + 1] = (ulong)Open[k];
            key.AsSpan(1, Open.Count).Sort();
            for (var k = 0; k < Nodes.Count; k++)
                key[1 + Open.Count + k] = ((ulong)Nodes[k] << 1) | (Bits.Has(chosen, Nodes[k]) ? 1UL : 0);
            return key;
        }
    }
}
