namespace Gudgeon.Planning.Reach;

/// <summary>Needs and choices of numbered nodes as flat arrays, readable in both directions.</summary>
internal sealed class Wiring
{
    public Wiring(IReadOnlyList<List<int>> needs, IReadOnlyList<List<int[][]>> choices)
    {
        Count = needs.Count;
        Needs = [.. needs.Select(list => list.ToArray())];
        ChoicesOf = new int[Count][];
        var owners = new List<int>();
        var alternativesOf = new List<int[]>();
        var choiceOf = new List<int>();
        var members = new List<int[]>();
        for (var node = 0; node < Count; node++)
        {
            ChoicesOf[node] = new int[choices[node].Count];
            for (var k = 0; k < choices[node].Count; k++)
            {
                ChoicesOf[node][k] = owners.Count;
                alternativesOf.Add([.. Enumerable.Range(members.Count, choices[node][k].Length)]);
                foreach (var alternative in choices[node][k])
                {
                    choiceOf.Add(owners.Count);
                    members.Add(alternative);
                }
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
            open[node] = Needs[node].Length + ChoicesOf[node].Count(choice => !met[choice]);
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
            reversed[node] = new int[size[node]];
        Array.Clear(size);
        for (var k = 0; k < lists.Length; k++)
        {
            foreach (var item in lists[k])
                reversed[item][size[item]++] = k;
        }
        return reversed;
    }
}
