using System.Collections.Immutable;
using Gudgeon.Journal;
using Gudgeon.Planning.Reach;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>
/// While the engine hangs, a part that bears a lifting eye stays on: it comes off before the engine is hung, or after it
/// is set down. The network cannot say "before or after", so a plan that breaks this is made again with the rule that it broke.
/// </summary>
internal static class HangRule
{
    private const string Hang = "op:hang";
    private const string Out = "op:engine-out";
    private const int MostRounds = 12;

    public delegate (T Answer, ImmutableArray<int> Order)? Planner<T>(BenchNetwork net);

    /// <summary>Plans until nothing bearing the engine comes off while it hangs; null when there is no plan.</summary>
    /// <param name="ways">The bench, for one who asks.</param>
    /// <param name="target">What to get at; null for everything.</param>
    /// <param name="mayLook">Whether an open question may be answered yes by looking.</param>
    /// <param name="plan">The plan on a network; null when there is none.</param>
    public static (BenchNetwork Net, T Answer)? Hold<T>(BenchWays ways, ReachTarget? target, bool mayLook, Planner<T> plan)
    {
        var own = new List<OwnRule>();
        for (var round = 0; round < MostRounds; round++)
        {
            var net = ways.Network(target, own, mayLook);
            if (plan(net) is not { } found)
                return null;
            var broken = Broken(ways.Bench, net, found.Order);
            if (broken.Count == 0)
                return (net, found.Answer);
            foreach (var part in broken)
                own.Add(RuleFor(net, part));
        }

        throw new InvalidOperationException("rules for the lifting eyes did not settle; each round adds a rule for a part that had none");
    }

    /// <summary>Parts that bear an eye and come off between hanging and setting down.</summary>
    internal static IReadOnlyList<string> Broken(Bench bench, BenchNetwork net, IReadOnlyList<int> order)
    {
        var broken = new List<string>();
        var hangs = bench.IsDone(Hang) && !bench.IsDone(Out);
        foreach (var work in order.Select(k => net.Work[k]))
        {
            hangs = work.Id switch { Hang => !bench.IsDone(Out), Out => false, _ => hangs };
            if (hangs && work.Sort == WorkSort.Part && bench.Engine.Access.TryGetValue(work.Id, out var access) && access.Holds.Contains("eye"))
                broken.Add(work.Id);
        }

        return broken;
    }

    private static OwnRule RuleFor(BenchNetwork net, string part)
    {
        var alone = ReachSolver.Solve(net.Network, [net.IndexOf(part)]);
        var needsHanging = alone is null || alone.Order.Contains(net.IndexOf(Hang));
        return needsHanging
            ? new OwnRule(part, Out, $"held: the engine hangs from the {net.Work[net.IndexOf(part)].Name}")
            : new OwnRule(Hang, part, $"the engine would hang from the {net.Work[net.IndexOf(part)].Name}");
    }
}
