using System.Collections.Immutable;

namespace Gudgeon.Planning.Reach;

/// <summary>A reason to lift, and the nodes (numbers) that it blocks on the way to the target.</summary>
public sealed record Hindrance(Block Block, ImmutableArray<int> Nodes);

/// <summary>
/// Why a target cannot be reached: the smallest set of reasons that have to be lifted (lift them all and it can be,
/// lift fewer and it cannot), or, when the rules contradict each other, the smallest contradiction.
/// Both empty: it can be reached.
/// </summary>
public sealed record WhyNotAnswer(ImmutableArray<Hindrance> Reasons, Contradiction? Contradiction)
{
    public bool CanBeReached => Reasons.IsEmpty && Contradiction is null;
}

public static class WhyNot
{
    /// <summary>Each reason becomes a thing to do that costs one; the least-cost way to the target then lifts the fewest.</summary>
    public static WhyNotAnswer Ask(AndOrNetwork network, int target)
    {
        var reasons = new List<Block>();
        var numberOf = new Dictionary<Block, int>();
        foreach (var block in network.Nodes.Where(node => !node.IsDone).SelectMany(node => node.Blocks))
        {
            if (numberOf.TryAdd(block, network.Nodes.Length + reasons.Count))
                reasons.Add(block);
        }
        var lifted = network.Nodes
            .Select(node => node.IsDone ? node : node with
            {
                CostSeconds = 0,
                FluidLines = 0,
                ThingsOff = 0,
                Blocks = [],
                Needs = [.. node.Needs, .. node.Blocks.Distinct().Select(block => new Need(numberOf[block], block.Reason))],
            })
            .Concat(reasons.Select(block => new AndOrNode(block.Reason, 1) { ThingsOff = 0 }));
        var answer = ReachSolver.Solve(new AndOrNetwork(lifted), [target]);
        if (answer is null)
            return new WhyNotAnswer([], Contradiction.Smallest(network, target));
        var onTheWay = answer.Order.Where(index => index < network.Nodes.Length).ToImmutableArray();
        return new WhyNotAnswer(
            [.. answer.Order.Where(index => index >= network.Nodes.Length).Order()
                .Select(index => reasons[index - network.Nodes.Length])
                .Select(block => new Hindrance(block, [.. onTheWay.Where(node => network.Nodes[node].Blocks.Contains(block)).Order()]))],
            null);
    }
}
