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
    public bool CanNow => !IsDone && Way is { Steps.Length: <= 1 } && First.IsEmpty;

    public static WhyReport Of(Bench bench, ReachTarget target, Circumstances circumstances)
    {
        var net = new NetworkMaker(bench, circumstances) { Place = target }.Make();
        var number = net.IndexOf(target.Id);
        var node = net.Network.Nodes[number];
        if (node.IsDone)
            return new WhyReport(target, true, [], [], [], null);
        var answer = Ask.Ask(net.Network, number);
        var reasons = answer.Reasons.Select(r => new Reason(r.Block.Kind, r.Block.Reason, [.. r.Nodes.Where(n => net.Work[n].Sort != WorkSort.Look).Select(n => net.Work[n].Name)]));
        var first = node.Needs.Where(n => !net.Network.Nodes[n.Node].IsDone).Select(n => n.Rule)
            .Concat(node.Choices.Where(c => !c.Alternatives.Any(way => way.All(m => net.Network.Nodes[m].IsDone))).Select(c => c.Rule));
        return new WhyReport(target, false, [.. reasons], [.. first], answer.Contradiction?.Rules ?? [], answer.CanBeReached ? ReachReport.Of(bench, target, circumstances) : null);
    }
}
