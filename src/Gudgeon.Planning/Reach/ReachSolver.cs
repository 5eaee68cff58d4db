using System.Collections.Immutable;

namespace Gudgeon.Planning.Reach;

/// <summary>
/// The least work that reaches the targets. <see cref="Order"/> works as written; the cost is proven least when
/// <see cref="CostBoundSeconds"/> equals <see cref="CostSeconds"/>.
/// </summary>
public sealed record ReachAnswer(
    ImmutableArray<int> Order,
    long CostSeconds,
    int FluidLines,
    int ThingsOff,
    long CostBoundSeconds,
    bool IsProven,
    long Steps);

/// <summary>
/// Exact least-cost set on an AND/OR network: branch and bound over the alternatives, with the closure of what is
/// forced and a landmark-cut bound. Least cost first; then fewer fluid lines parted; then fewer things off.
/// </summary>
public static class ReachSolver
{
    /// <summary>Steps of the search before it stops and shows the bound it has; a count, so that the answer does not hang on the machine's speed.</summary>
    public const long UsualSteps = 200_000;

    /// <summary>Null when a target cannot be reached: ask <see cref="WhyNot"/> for the reasons.</summary>
    public static ReachAnswer? Solve(AndOrNetwork network, IReadOnlyCollection<int> targets, long steps = UsualSteps)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(steps, 1);
        foreach (var target in targets)
        {
            if (target < 0 || target >= network.Nodes.Length)
                throw new ArgumentOutOfRangeException(nameof(targets), target, $"a target is one of the {network.Nodes.Length} nodes, numbered from 0");
        }
        var scale = WeightScale.Of(network);
        var reduced = ReducedNetwork.Build(network, targets, scale);
        if (reduced is null)
            return null;
        var search = new Search(reduced, steps);
        var (chosen, _, bound) = search.Run();
        var order = UndoOrder.Of(reduced, chosen);
        var nodes = order.Select(index => network.Nodes[index]).ToList();
        var cost = nodes.Sum(node => node.CostSeconds);
        return new ReachAnswer(
            order,
            cost,
            nodes.Sum(node => node.FluidLines),
            nodes.Sum(node => node.ThingsOff),
            search.IsProven ? cost : scale.CostOf(bound),
            search.IsProven,
            search.Steps);
    }
}

/// <summary>Cost, fluid lines and things off packed into one number that compares as the three do in turn.</summary>
internal readonly record struct WeightScale(long PerSecond, long PerFluidLine)
{
    public static WeightScale Of(AndOrNetwork network)
    {
        try
        {
            checked
            {
                var (seconds, fluidLines, thingsOff) = (0L, 0L, 0L);
                foreach (var node in network.Nodes)
                {
                    if (node.IsDone)
                        continue;
                    seconds += node.CostSeconds;
                    fluidLines += node.FluidLines;
                    thingsOff += node.ThingsOff;
                }
                var perFluidLine = thingsOff + 1;
                var perSecond = (fluidLines + 1) * perFluidLine;
                var all = (seconds + 1) * perSecond;
                if (all < long.MaxValue / 8)
                    return new WeightScale(perSecond, perFluidLine);
            }
        }
        catch (OverflowException)
        {
            // Told below in words.
        }
        throw new ArgumentException("network: the costs add up to more than the planner can count exactly; give costs in seconds of real work");
    }

    public long Weigh(AndOrNode node) => node.IsDone ? 0 : node.CostSeconds * PerSecond + node.FluidLines * PerFluidLine + node.ThingsOff;

    public long CostOf(long weight) => weight / PerSecond;
}
