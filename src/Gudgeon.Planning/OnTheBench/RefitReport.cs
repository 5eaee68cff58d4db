using System.Collections.Immutable;
using Gudgeon.Journal;
using Gudgeon.Planning.Reach;
using Gudgeon.Planning.StripOrder;
using Need = Gudgeon.Planning.Reach.Need;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>One step back: what it is, its minutes in the refit, and what must be on first.</summary>
public sealed record BackStep(BenchWork Work, Span Minutes, IReadOnlyList<string> After);

/// <summary>Steps that can be done from a day on: today's first, then those of each day on which something comes, then what is held.</summary>
/// <param name="Day">No step of it can be done before; null for what can be done now and for what is held.</param>
/// <param name="IsHeld">True for what waits for something of which no day is known, and all behind it.</param>
/// <param name="Waits">Parts that wait just for this, those first that hold up most.</param>
public sealed record BackStage(DateOnly? Day, bool IsHeld, ImmutableArray<BackWait> Waits, ImmutableArray<BackStep> Steps)
{
    /// <summary>Work without turning, help and spanners.</summary>
    public long Seconds => Steps.Sum(s => s.Minutes.Seconds);
}

/// <summary>
/// The whole refit: an order for everything that goes back, and how near it is to the least among the orders that do
/// before a day all that can be done before it.
/// </summary>
/// <param name="IsOfWhatIsOff">True for what is off now; false while nothing is: then what the whole strip would take off.</param>
public sealed record RefitReport(ImmutableArray<BackStage> Stages, StripPlan Plan, bool IsOfWhatIsOff)
{
    private const int MostPasses = 8;

    /// <summary>Every step in turn.</summary>
    public ImmutableArray<BackStep> Steps { get; } = [.. Stages.SelectMany(s => s.Steps)];

    public static RefitReport Of(Bench bench, Circumstances circumstances, int effort = StripPlanner.UsualEffort)
    {
        var off = new WayBack(bench, []).Steps();
        var isOff = off.Any(s => s.Work.Sort != WorkSort.Operation);
        var steps = isOff ? off : new WayBack(bench, JobOrder.Strip(StripReport.Of(bench, circumstances, StripReport.QuickEffort).Steps)).Steps();
        if (isOff)
            steps = BackNeeds.With(bench, steps);
        var waits = BackWaits.Of(bench, circumstances.Now, steps.Where(s => s.Work.Sort == WorkSort.Part).Select(s => s.Work.Id)).ToArray();
        return Of(bench, BackStages.Of(bench, circumstances.Now, steps, waits), isOff, effort);
    }

    private static RefitReport Of(Bench bench, BackStages stages, bool isOff, int effort)
    {
        var steps = stages.Steps;
        var number = steps.Select((s, k) => (s.Id, k)).ToDictionary(x => x.Id, x => x.k);
        var network = new AndOrNetwork(steps.Select(s => new AndOrNode(s.Id, s.Minutes.Seconds)
        {
            ThingsOff = 1,
            Needs = [.. s.After.Select(id => new Need(number[id], $"{steps[number[id]].Work.Return} before you {s.Work.Return}"))],
        }));
        var net = new BenchNetwork([.. steps.Select(s => s.Work)], number, network);
        var job = new StripWork(network, Setups.Of(bench, net));
        var found = StripPlanner.Plan(job, effort);
        var order = LikeItCameApart(job, found);
        var plan = found with { Order = order, SetupSeconds = job.SetupSeconds(order) };
        plan = plan with { BoundSeconds = Math.Min(plan.BoundSeconds, plan.TotalSeconds) };
        return new RefitReport(stages.Cut(plan.Order), plan, isOff);
    }

    /// <summary>
    /// The nodes are numbered the other way round than it came apart. Each that can follow its neighbour of that order
    /// without costing a change of setup does: so the plan keeps to what the owner has seen.
    /// </summary>
    private static ImmutableArray<int> LikeItCameApart(StripWork job, StripPlan plan)
    {
        var order = plan.Order.ToList();
        var seconds = plan.SetupSeconds;
        var users = Enumerable.Range(0, job.Network.Nodes.Length).SelectMany(n => job.Network.Nodes[n].Needs.Select(need => (First: need.Node, Then: n))).ToLookup(x => x.First, x => x.Then);
        for (var (pass, moved) = (0, true); moved && pass < MostPasses; pass++)
        {
            moved = false;
            for (var node = 1; node < job.Network.Nodes.Length; node++)
            {
                var (from, to) = (order.IndexOf(node), order.IndexOf(node - 1));
                if (from < 0 || to < 0 || from == to + 1 || !MayMove(node, from, to))
                    continue;
                var other = order.ToList();
                other.RemoveAt(from);
                other.Insert(other.IndexOf(node - 1) + 1, node);
                if (job.SetupSeconds(other) is var cost && cost <= seconds)
                    (order, seconds, moved) = (other, cost, true);
            }
        }

        return [.. order];

        bool MayMove(int node, int from, int to) => from > to
            ? job.Network.Nodes[node].Needs.All(need => order.IndexOf(need.Node) <= to)
            : users[node].All(user => order.IndexOf(user) > to);
    }
}
