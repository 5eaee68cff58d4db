using System.Collections.Immutable;

namespace Gudgeon.Planning.Reach;

/// <summary>Why a node cannot be undone now. Two nodes blocked for the same kind and text share one reason.</summary>
public enum BlockKind
{
    Held,
    Equipment,
    Person,
    Fact,
    Other,
}

/// <summary>One reason that keeps a node from being undone, in words fit for the owner.</summary>
public sealed record Block(BlockKind Kind, string Reason);

/// <summary>Another node that must be undone first, and the rule that says so.</summary>
public sealed record Need(int Node, string Rule)
{
    /// <summary>Numbers under which the caller knows who made the rule; none where nobody in particular did.</summary>
    public ImmutableArray<long> By { get; init; } = [];
}

/// <summary>A choice: at least one alternative must be wholly undone first. Each alternative is a set of nodes.</summary>
public sealed record Choice(ImmutableArray<ImmutableArray<int>> Alternatives, string Rule);

/// <summary>
/// One thing to undo: a part, a joint, a line, an operation, or a fact that has to hold.
/// Costs are whole seconds, so that sums are exact.
/// </summary>
public sealed record AndOrNode(string Id, long CostSeconds)
{
    /// <summary>How many fluid lines are parted by undoing this: the first tie-break.</summary>
    public int FluidLines { get; init; }

    /// <summary>How many things are off the engine by undoing this (0 for an operation): the second tie-break.</summary>
    public int ThingsOff { get; init; } = 1;

    public ImmutableArray<Need> Needs { get; init; } = [];

    public ImmutableArray<Choice> Choices { get; init; } = [];

    /// <summary>Already undone: costs nothing and asks for nothing.</summary>
    public bool IsDone { get; init; }

    /// <summary>All of these must be lifted before the node can be undone.</summary>
    public ImmutableArray<Block> Blocks { get; init; } = [];
}

/// <summary>
/// Who must come off before whom. A set of nodes can be undone when there is an order in which each node
/// follows all its needs and at least one whole alternative of each choice; support in a circle is no support.
/// </summary>
public sealed class AndOrNetwork
{
    public AndOrNetwork(IEnumerable<AndOrNode> nodes)
    {
        Nodes = [.. nodes];
        for (var index = 0; index < Nodes.Length; index++)
            Check(index);
    }

    private AndOrNetwork(ImmutableArray<AndOrNode> nodes) => Nodes = nodes;

    public ImmutableArray<AndOrNode> Nodes { get; }

    /// <summary>The same network with some nodes changed and one more behind them: what stays is neither copied nor checked anew.</summary>
    internal AndOrNetwork With(IEnumerable<(int Index, AndOrNode Node)> changed, AndOrNode? added = null)
    {
        var nodes = Nodes.ToBuilder();
        var indices = new List<int>();
        foreach (var (index, node) in changed)
        {
            nodes[index] = node;
            indices.Add(index);
        }

        if (added is not null)
        {
            indices.Add(nodes.Count);
            nodes.Add(added);
        }

        var network = new AndOrNetwork(nodes.ToImmutable());
        foreach (var index in indices)
            network.Check(index);
        return network;
    }

    public int IndexOf(string id)
    {
        for (var index = 0; index < Nodes.Length; index++)
        {
            if (Nodes[index].Id == id)
                return index;
        }
        return -1;
    }

    private void Check(int index)
    {
        var node = Nodes[index];
        if (node.CostSeconds < 0 || node.FluidLines < 0 || node.ThingsOff < 0)
            throw new ArgumentException($"node {node.Id}: cost, fluid lines and things off are zero or more; give a cost that is not negative");
        foreach (var need in node.Needs)
            CheckIndex(node, need.Node);
        foreach (var choice in node.Choices)
        {
            foreach (var alternative in choice.Alternatives)
            {
                foreach (var member in alternative)
                    CheckIndex(node, member);
            }
        }
    }

    private void CheckIndex(AndOrNode node, int member)
    {
        if (member < 0 || member >= Nodes.Length)
            throw new ArgumentException($"node {node.Id}: refers to node number {member}; there are {Nodes.Length} nodes, numbered from 0");
    }
}
