using System.Collections.Immutable;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Planning.StripOrder;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>A step whose turn changed against the plan that was kept, and why.</summary>
public sealed record Moved(string Doing, string Why);

/// <summary>Something that cannot come off as matters stand, and the reasons; without a reason its rules contradict each other.</summary>
public sealed record StaysOn(string Id, string Name, ImmutableArray<Reason> Reasons);

/// <summary>The whole strip from here: an order for everything that can come off, and how near it is to the least.</summary>
public sealed record StripReport(ImmutableArray<ReachStep> Steps, StripPlan Plan, ImmutableArray<StaysOn> Left, ImmutableArray<Moved> Moves)
{
    /// <summary>Effort for a page: an order in a second or so.</summary>
    public const int QuickEffort = 400;

    public static StripReport Of(Bench bench, Circumstances circumstances, int effort = StripPlanner.UsualEffort)
    {
        var ways = new BenchWays(bench, circumstances with { AnyTime = true });
        var (net, found) = HangRule.Hold<Replan>(ways, null, mayLook: false, made =>
        {
            var replan = Planned(bench, made, effort);
            return (replan, replan.Plan.Order);
        })!.Value;
        var left = found.Plan.Left.Where(n => net.Work[n].Sort is WorkSort.Part or WorkSort.Split)
            .Select(n => new StaysOn(net.Work[n].Id, net.Work[n].Name, WhyReport.ReasonsOf(ways, net.Work[n].Id)));
        return new StripReport(
            ReachReport.StepsOf(net, found.Plan.Order),
            found.Plan,
            [.. left],
            [.. found.Moves.Where(m => !net.Network.Nodes[m.Node].IsDone).Select(m => new Moved(net.Work[m.Node].Doing, Named(net, m.Why)))]);
    }

    /// <summary>The replanner speaks of ids; people of names.</summary>
    private static string Named(BenchNetwork net, string why)
    {
        const string Waits = "waits for ";
        var end = why.IndexOf(" (", StringComparison.Ordinal);
        return end > 0 && why.StartsWith(Waits, StringComparison.Ordinal) && net.IndexOf(why[Waits.Length..end]) is >= 0 and var node
            ? $"{Waits}{net.Work[node].Name}{why[end..]}" : why;
    }

    /// <summary>A kept plan is followed where it still holds; without one the order is made afresh.</summary>
    private static Replan Planned(Bench bench, BenchNetwork net, int effort)
    {
        var work = new StripWork(net.Network, Setups.Of(bench, net));
        if (bench.KeptPlan?.Entry is not PlanKept kept)
            return new Replan(Lateness.Of(work, net, StripPlanner.Plan(work, effort)), []);
        return StripReplanner.After(work, [.. kept.Order.Select(net.IndexOf).Where(n => n >= 0)]);
    }
}

/// <summary>What changes between steps and costs time: how the engine lies, the helper, the spanner in hand. Minutes: common practice, no source.</summary>
internal static class Setups
{
    private const long TurnSeconds = 10 * 60;
    private const long HelperSeconds = 15 * 60;
    private const long SpannerSeconds = 60;

    public static IEnumerable<Setup> Of(Bench bench, BenchNetwork net)
    {
        var answers = bench.Answers.Count > 0 && EngineAnswers.Read(bench.Answers) is { Ok: true } read ? read.Value : null;
        yield return Make("how the engine lies", net, TurnSeconds, work =>
            answers is not null && bench.Engine.Parts.TryGetValue(work.Id, out var part) && Guides.TurnFor(part.Kind, answers) is { Position: not Turned.Any } turn ? turn.Position.ToString() : null);
        yield return Make("who is there", net, HelperSeconds, work => work.Sort is WorkSort.Look or WorkSort.Place or WorkSort.Body or WorkSort.Ready or WorkSort.Read ? null : work.Persons > 1 ? "two" : "one", freeLabel: "one");
        yield return Make("spanner", net, SpannerSeconds, work => work.Sort == WorkSort.Part
            ? bench.Engine.JointsOf(work.Id).Select(id => bench.Engine.Joints[id]).FirstOrDefault(j => j.IsCounted && j.SizeGuess.Length > 0)?.SizeGuess : null);
    }

    private static Setup Make(string name, BenchNetwork net, long seconds, Func<BenchWork, string?> label, string? freeLabel = null)
    {
        var asked = net.Work.Select(label).ToArray();
        var labels = asked.OfType<string>().Distinct().ToImmutableArray();
        return new Setup(name, labels, [.. labels.Select(l => l == freeLabel ? 0 : seconds)], [.. asked.Select(l => l is null ? -1 : labels.IndexOf(l))], freeLabel is null ? -1 : labels.IndexOf(freeLabel));
    }
}
