namespace Gudgeon.Planning.Reach;

/// <summary>Needs and choices of numbered nodes as flat arrays, readable in both directions.</summary>
internal sealed class Wiring
{
    /// <param name="needs">Node to the nodes it needs.</param>
    /// <param name="choices">Node to its choices, each a list of alternatives, each a list of nodes.</param>
    public Wiring(int[][] needs, int[][][][] choices)
    {
        Count = needs.Length;
        Needs = needs;
        ChoicesOf = new int[Count][];
        var owners = new List<int>();
        var alternativesOf = new List<int[]>();
        var choiceOf = new List<int>();
        var members = new List<int[]>();
        for (var node = 0; node < Count; node++)
        {
            ChoicesOf[node] = choices[node].Length == 0 ? [] : new int[choices[node].Length];
            for (var k = 0; k < choices[node].Length; k++)
            {
                var ways = new int[choices[node][k].Length];
                for (var at = 0; at < ways.Length; at++)
                {
                    ways[at] = members.Count;
                    choiceOf.Add(owners.Count);
                    members.Add(choices[node][k][at]);
                }
                ChoicesOf[node][k] = owners.Count;
                alternativesOf.Add(ways);
                owners.Add(node);
            }
        }
        Owner = [.. owners];
        AlternativesOf = [.. alternativesOf];
        ChoiceOf = [.. choiceOf];
        Members = [.. members];
        NeededBy = Reverse(Needs);
        MemberOf = Reverse(Members);
    }

    public int Count { get; }

    public int[][] Needs { get; }

    /// <summary>Node to the numbers of its choices.</summary>
    public int[][] ChoicesOf { get; }

    /// <summary>Choice to the node that has it.</summary>
    public int[] Owner { get; }

    /// <summary>Choice to the numbers of its alternatives.</summary>
    public int[][] AlternativesOf { get; }

    /// <summary>Alternative to its choice.</summary>
    public int[] ChoiceOf { get; }

    /// <summary>Alternative to its nodes.</summary>
    public int[][] Members { get; }

    public int[][] NeededBy { get; }

    /// <summary>Node to the alternatives that hold it.</summary>
    public int[][] MemberOf { get; }

    /// <summary>
    /// The nodes of <paramref name="allowed"/> that can be undone one after the other, in the order first found
    /// (lowest number first within a wave). Choices marked in <paramref name="ignored"/> count as met.
    /// </summary>
    public List<int> Derive(Func<int, bool> allowed, int[]? ignored = null)
    {
        var open = new int[Count];
        var missing = new int[Members.Length];
        var met = new bool[Owner.Length];
        for (var choice = 0; choice < met.Length; choice++)
            met[choice] = ignored is not null && ignored[choice] > 0;
        for (var alternative = 0; alternative < missing.Length; alternative++)
        {
            missing[alternative] = Members[alternative].Length;
            met[ChoiceOf[alternative]] |= missing[alternative] == 0;
        }
        var order = new List<int>();
        for (var node = 0; node < Count; node++)
        {
            open[node] = Needs[node].Length;
            foreach (var choice in ChoicesOf[node])
                open[node] += met[choice] ? 0 : 1;
            if (open[node] == 0 && allowed(node))
                order.Add(node);
        }
        for (var next = 0; next < order.Count; next++)
        {
            foreach (var user in NeededBy[order[next]])
                Settle(user);
            foreach (var alternative in MemberOf[order[next]])
            {
                if (--missing[alternative] > 0 || met[ChoiceOf[alternative]])
                    continue;
                met[ChoiceOf[alternative]] = true;
                Settle(Owner[ChoiceOf[alternative]]);
            }
        }
        return order;

        void Settle(int node)
        {
            if (--open[node] == 0 && allowed(node))
                order.Add(node);
        }
    }

    private int[][] Reverse(int[][] lists)
    {
        var size = new int[Count];
        foreach (var list in lists)
        {
            foreach (var item in list)
                size[item]++;
        }
        var reversed = new int[Count][];
        for (var node = 0; node < Count; node++)
            reversed[node] = size[node] == 0 ? [] : new int[size[node]];
        Array.Clear(size);
        for (var k = 0; k < lists.Length; k++)
        {
            foreach (var item in lists[k])
                reversed[item][size[item]++] = k;
        }
        return reversed;
    }
}
