using System.Collections.Immutable;
using Gudgeon.Journal;
using Gudgeon.Planning.Reach;
using Ask = Gudgeon.Planning.Reach.WhyNot;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>A reason that has to be lifted, and what it holds up.</summary>
public sealed record Reason(BlockKind Kind, string Words, IReadOnlyList<string> HoldsUp);

/// <summary>
/// Why something cannot be had now. <see cref="Reasons"/>: the smallest set that has to be lifted before it can be had at
/// all. <see cref="First"/>: what comes directly before it. <see cref="Rules"/>: rules that contradict each other.
/// </summary>
public sealed record WhyReport(ReachTarget Target, bool IsDone, ImmutableArray<Reason> Reasons, ImmutableArray<string> First, ImmutableArray<string> Rules, ReachReport? Way)
{
    /// <summary>Numbers of the entries that made the rules that contradict each other; none where only the tables did.</summary>
    public ImmutableArray<long> MadeBy { get; init; } = [];

    /// <summary>Questions that would open a way if they were answered yes; null for none, or where there is a way.</summary>
    public LookOffer? Looks { get; init; }

    public bool CanNow => !IsDone && Way is { Steps.Length: <= 1 } && First.IsEmpty;

    /// <summary>For a single question.</summary>
    public static WhyReport Of(Bench bench, ReachTarget target, Circumstances circumstances) => Of(new BenchWays(bench, circumstances), target);

    public static WhyReport Of(BenchWays ways, ReachTarget target)
    {
        var net = ways.Network(target, [], mayLook: false);
        var number = net.IndexOf(target.Id);
        var node = net.Network.Nodes[number];
        if (node.IsDone)
            return new WhyReport(target, true, [], [], [], null);
        var answer = Ask.Ask(net.Network, number);
        var first = node.Needs.Where(n => !net.Network.Nodes[n.Node].IsDone).Select(n => n.Rule)
            .Concat(node.Choices.Where(c => !c.Alternatives.Any(way => way.All(m => net.Network.Nodes[m].IsDone))).Select(c => c.Rule));
        return new WhyReport(target, false, Named(net, answer), [.. first], answer.Contradiction?.Rules ?? [], answer.CanBeReached ? ReachReport.Of(ways, target) : null)
        {
            MadeBy = answer.Contradiction?.By ?? [],
            Looks = answer.Reasons.IsEmpty ? null : ReachReport.LooksWithoutWay(ways, target),
        };
    }

    /// <summary>The smallest set of reasons alone.</summary>
    internal static ImmutableArray<Reason> ReasonsOf(BenchWays ways, string id)
    {
        var net = ways.Network();
        return Named(net, Ask.Ask(net.Network, net.IndexOf(id)));
    }

    private static ImmutableArray<Reason> Named(BenchNetwork net, WhyNotAnswer answer) =>
        [.. answer.Reasons.Select(r => new Reason(r.Block.Kind, r.Block.Reason, [.. r.Nodes.Where(n => net.Work[n].Sort != WorkSort.Look).Select(n => net.Work[n].Name)]))];
}
