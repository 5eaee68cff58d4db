using System.Collections.Immutable;
using Gudgeon.Planning.StripOrder;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>
/// Small doings that no rule ties to a time (mark the rods, clear the ridge, lock the crank) are done just before the
/// first thing that wants them, where they can be seen to make sense, as long as that costs no change of setup.
/// </summary>
internal static class Lateness
{
    /// <summary>Done early and at leisure: they make the rest safe.</summary>
    private static readonly string[] early = ["op:battery-off", "op:fuel-safe", "op:drain-oil", "op:drain-coolant", "op:hang", "op:set-tdc"];

    public static bool IsSmall(BenchWork work, bool isFree) =>
        work.Sort == WorkSort.Way || (work.Sort == WorkSort.Operation && isFree && !early.Contains(work.Id));

    public static StripPlan Of(StripWork work, BenchNetwork net, StripPlan plan)
    {
        var order = plan.Order;
        var seconds = plan.SetupSeconds;
        foreach (var small in plan.Order.Where(n => IsSmall(net.Work[n], IsFree(net, n))).Reverse())
        {
            var at = order.IndexOf(small);
            var user = Enumerable.Range(at + 1, order.Length - at - 1).FirstOrDefault(k => Wants(net, order[k], small), -1);
            if (user <= at + 1)
                continue;
            var later = order.RemoveAt(at).Insert(user - 1, small);
            var cost = work.SetupSeconds(later);
            if (cost <= seconds)
                (order, seconds) = (later, cost);
        }

        return plan with { Order = order, SetupSeconds = seconds, BoundSeconds = Math.Min(plan.BoundSeconds, plan.WorkSeconds + seconds) };
    }

    private static bool IsFree(BenchNetwork net, int node) => net.Network.Nodes[node].Needs.IsEmpty && net.Network.Nodes[node].Choices.IsEmpty;

    private static bool Wants(BenchNetwork net, int node, int first) =>
        net.Network.Nodes[node].Needs.Any(n => n.Node == first) || net.Network.Nodes[node].Choices.Any(c => c.Alternatives.Any(way => way.Contains(first)));
}
