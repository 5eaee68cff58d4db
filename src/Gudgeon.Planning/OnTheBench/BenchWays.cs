using System.Collections.Immutable;
using Gudgeon.Journal;
using Gudgeon.Planning.Reach;
using Need = Gudgeon.Planning.Reach.Need;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>A further rule that a plan puts up for itself.</summary>
internal sealed record OwnRule(string Target, string Need, string Why);

/// <summary>
/// The ways through a bench for one who asks: its rules with the reasons that hold things up just then. Made once and
/// kept as long as nobody records anything, so that each question about the same state costs its search alone.
/// </summary>
public sealed class BenchWays
{
    private readonly Lazy<BenchRules> rules;
    private readonly Lazy<BenchNetwork> sure;
    private readonly Lazy<BenchNetwork> hoped;

    /// <param name="rules">Of the bench as it stands.</param>
    /// <param name="circumstances">Who asks, and when.</param>
    public BenchWays(BenchRules rules, Circumstances circumstances)
        : this(rules.Bench, circumstances, new Lazy<BenchRules>(rules))
    {
    }

    /// <summary>For a single question: the rules are worked out when it is asked.</summary>
    public BenchWays(Bench bench, Circumstances circumstances)
        : this(bench, circumstances, new Lazy<BenchRules>(() => new BenchRules(bench)))
    {
    }

    private BenchWays(Bench bench, Circumstances circumstances, Lazy<BenchRules> rules)
    {
        this.rules = rules;
        Bench = bench;
        Circumstances = circumstances;
        sure = new Lazy<BenchNetwork>(() => rules.Value.Under(circumstances, mayLook: false));
        hoped = new Lazy<BenchNetwork>(() => rules.Value.Under(circumstances, mayLook: true));
    }

    public Bench Bench { get; }

    public Circumstances Circumstances { get; }

    /// <summary>Everything that can be undone; open questions are taken as not to be counted on.</summary>
    public BenchNetwork Network() => sure.Value;

    /// <param name="target">What to get at: a place becomes the last node.</param>
    /// <param name="own">Rules beyond those of the bench.</param>
    /// <param name="mayLook">Whether an open question may be answered yes by looking.</param>
    internal BenchNetwork Network(ReachTarget? target, IReadOnlyList<OwnRule> own, bool mayLook)
    {
        var net = (mayLook ? hoped : sure).Value;
        var isPlace = target is { IsPlace: true };
        if (own.Count == 0 && !isPlace)
            return net;
        var changed = own.GroupBy(rule => net.IndexOf(rule.Target)).Select(group => (group.Key, WithRules(net, net.Network.Nodes[group.Key], group)));
        var place = isPlace ? new BenchWork(target!.Id, WorkSort.Place, target.Name, default) : null;
        return new BenchNetwork(
            place is null ? net.Work : net.Work.Add(place),
            rules.Value.NumberOf,
            net.Network.With(changed, place is null ? null : rules.Value.NodeOf(place, target)),
            place?.Id);
    }

    private static AndOrNode WithRules(BenchNetwork net, AndOrNode node, IEnumerable<OwnRule> own)
    {
        var needs = node.Needs;
        foreach (var rule in own)
        {
            if (net.IndexOf(rule.Need) is >= 0 and var number && needs.All(n => n.Node != number))
                needs = needs.Add(new Need(number, rule.Why));
        }

        return node with { Needs = needs };
    }
}
