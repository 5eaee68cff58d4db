using System.Numerics;

namespace Gudgeon.Planning.Reach;

/// <summary>What a round of reduction found out about a wiring; <see cref="Folding"/> leaves it out.</summary>
internal sealed class Verdicts(Wiring wiring)
{
    /// <summary>Nodes that are undone whatever is chosen and wait for no choice: they ask for nothing and stop nobody.</summary>
    public bool[] IsFree { get; } = new bool[wiring.Count];

    /// <summary>Choices that are met by what their owner needs anyway.</summary>
    public bool[] IsMet { get; } = new bool[wiring.Owner.Length];

    /// <summary>Alternatives that nobody has to take, or can.</summary>
    public bool[] IsDropped { get; } = new bool[wiring.Members.Length];
}

/// <summary>
/// Nodes that are only ever undone together, folded into one. A node is asked for by the alternatives that hold it or
/// hold something that needs it; nodes asked for by the same alternatives come off for the same decisions. A choice
/// with one alternative left is a need. The folded nodes stand in a circle only where those they stand for do: if one
/// waits for an alternative, that alternative asks for everything in the next.
/// </summary>
internal sealed class Folding
{
    /// <summary>Stands for the node of what is undone whatever is chosen.</summary>
    public const int Free = -1;

    /// <summary>Stands for the node of what nothing left asks for.</summary>
    public const int Unused = -2;

    private readonly Wiring wiring;
    private readonly Verdicts verdicts;
    private readonly int goal;

    // What each node needs, the members of its sole alternatives among it; null for what nothing left asks for.
    private readonly int[]?[] asks;
    private readonly List<int> used = [];
    private readonly List<int> open = [];

    private Folding(Wiring wiring, int goal, Verdicts verdicts)
    {
        this.wiring = wiring;
        this.goal = goal;
        this.verdicts = verdicts;
        asks = new int[]?[wiring.Count];
    }

    /// <summary>The folded wiring, and for each node the one that now stands for it.</summary>
    public static (Wiring Wiring, int[] NodeOf) Of(Wiring wiring, int goal, Verdicts verdicts)
    {
        var folding = new Folding(wiring, goal, verdicts);
        folding.Gather();
        var (nodeOf, count) = folding.Number();
        return (folding.Fold(nodeOf, count), nodeOf);
    }

    /// <summary>The goal and everything below it, and the choices that are left.</summary>
    private void Gather()
    {
        Enter(goal);
        for (var next = 0; next < used.Count; next++)
        {
            var node = used[next];
            var asked = WithoutFree(wiring.Needs[node]);
            foreach (var choice in wiring.ChoicesOf[node])
            {
                var (left, only) = Left(choice);
                if (left == 1)
                    asked = [.. asked, .. WithoutFree(wiring.Members[only])];
                if (left <= 1)
                    continue;
                open.Add(choice);
                foreach (var way in wiring.AlternativesOf[choice])
                {
                    if (!verdicts.IsDropped[way])
                        EnterAll(WithoutFree(wiring.Members[way]));
                }
            }
            asks[node] = asked;
            EnterAll(asked);
        }

        void EnterAll(int[] nodes)
        {
            foreach (var below in nodes)
                Enter(below);
        }

        void Enter(int node)
        {
            if (asks[node] is not null)
                return;
            asks[node] = [];
            used.Add(node);
        }
    }

    /// <summary>How many alternatives a choice has left, and the last of them; none when it is met.</summary>
    private (int Left, int Only) Left(int choice)
    {
        var (left, only) = (0, -1);
        if (verdicts.IsMet[choice])
            return (left, only);
        foreach (var way in wiring.AlternativesOf[choice])
        {
            if (verdicts.IsDropped[way])
                continue;
            if (WithoutFree(wiring.Members[way]).Length == 0)
                return (0, -1);
            (left, only) = (left + 1, way);
        }
        return (left, only);
    }

    private int[] WithoutFree(int[] nodes)
    {
        foreach (var node in nodes)
        {
            if (verdicts.IsFree[node])
                return Array.FindAll(nodes, other => !verdicts.IsFree[other]);
        }
        return nodes;
    }

    /// <summary>One number for all nodes that the same alternatives ask for, in the order of their lowest.</summary>
    private (int[] NodeOf, int Count) Number()
    {
        var (rows, width) = AskedBy();
        var nodeOf = new int[wiring.Count];
        var table = new int[(int)BitOperations.RoundUpToPowerOf2((uint)(2 * used.Count))];
        var first = new List<int>();
        for (var node = 0; node < nodeOf.Length; node++)
        {
            if (asks[node] is null)
            {
                nodeOf[node] = verdicts.IsFree[node] ? Free : Unused;
                continue;
            }
            var row = rows.AsSpan(node * width, width);
            // The table holds numbers from 1; 0 is an empty place.
            var at = Bits.Hash(row) & (table.Length - 1);
            while (table[at] > 0 && !row.SequenceEqual(rows.AsSpan(first[table[at] - 1] * width, width)))
                at = (at + 1) & (table.Length - 1);
            if (table[at] == 0)
            {
                first.Add(node);
                table[at] = first.Count;
            }
            nodeOf[node] = table[at] - 1;
        }
        return (nodeOf, first.Count);
    }

    /// <summary>For each node a row of bits: the alternatives that ask for it, and behind them the goal.</summary>
    private (ulong[] Rows, int Width) AskedBy()
    {
        var width = (wiring.Members.Length + 64) >> 6;
        var rows = new ulong[wiring.Count * width];
        Ask(goal, wiring.Members.Length);
        foreach (var choice in open)
        {
            foreach (var way in wiring.AlternativesOf[choice])
            {
                if (verdicts.IsDropped[way])
                    continue;
                foreach (var member in wiring.Members[way])
                    Ask(member, way);
            }
        }
        var users = new int[wiring.Count];
        foreach (var node in used)
        {
            foreach (var below in asks[node]!)
                users[below]++;
        }
        // Who needs a node comes before it; needs never stand in a circle here, for then nobody could come off.
        var order = used.FindAll(node => users[node] == 0);
        for (var next = 0; next < order.Count; next++)
        {
            var node = order[next];
            foreach (var below in asks[node]!)
            {
                for (var word = 0; word < width; word++)
                    rows[(below * width) + word] |= rows[(node * width) + word];
                if (--users[below] == 0)
                    order.Add(below);
            }
        }
        return (rows, width);

        void Ask(int node, int way) => rows[(node * width) + (way >> 6)] |= 1UL << (way & 63);
    }

    private Wiring Fold(int[] nodeOf, int count)
    {
        var needs = new int[count][];
        var choices = new int[count][][][];
        Array.Fill(needs, []);
        Array.Fill(choices, []);
        // The nodes that one number stands for, as a chain: first, next, and so on.
        var (first, next) = (new int[count], new int[wiring.Count]);
        Array.Fill(first, -1);
        for (var node = wiring.Count - 1; node >= 0; node--)
        {
            if (nodeOf[node] >= 0)
                (next[node], first[nodeOf[node]]) = (first[nodeOf[node]], node);
        }
        var mark = new int[count];
        var marked = 0;
        var list = new List<int>();
        for (var own = 0; own < count; own++)
        {
            mark[own] = ++marked;
            list.Clear();
            for (var node = first[own]; node >= 0; node = next[node])
                AddNew(asks[node]!);
            needs[own] = [.. list];
        }
        foreach (var choice in open)
        {
            var owner = nodeOf[wiring.Owner[choice]];
            choices[owner] = [.. choices[owner], [.. Ways(choice)]];
        }
        return new Wiring(needs, choices);

        IEnumerable<int[]> Ways(int choice)
        {
            foreach (var way in wiring.AlternativesOf[choice])
            {
                if (verdicts.IsDropped[way])
                    continue;
                marked++;
                list.Clear();
                AddNew(WithoutFree(wiring.Members[way]));
                yield return [.. list];
            }
        }

        void AddNew(int[] nodes)
        {
            foreach (var node in nodes)
            {
                if (mark[nodeOf[node]] == marked)
                    continue;
                mark[nodeOf[node]] = marked;
                list.Add(nodeOf[node]);
            }
        }
    }
}
