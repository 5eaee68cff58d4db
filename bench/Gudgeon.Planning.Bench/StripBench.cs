using System.Diagnostics;
using System.Globalization;
using Gudgeon.Planning.Reach;
using Gudgeon.Planning.StripOrder;
using Gudgeon.Planning.Tests.StripOrder;

namespace Gudgeon.Planning.Bench;

/// <summary>The whole strip of invented engines of 1,500 parts, and a re-plan after one entry.</summary>
internal static class StripBench
{
    public static void Run(int strips, int effort = StripPlanner.UsualEffort)
    {
        Console.WriteLine("strip  work_h  setup_h  bound_h  gap_%  plan_ms  replan_ms  moved");
        for (var seed = 0; seed <= strips; seed++)
        {
            var work = RandomStrips.Large(seed, 1500, 150);
            var watch = Stopwatch.StartNew();
            var plan = StripPlanner.Plan(work, effort);
            var planned = watch.Elapsed.TotalMilliseconds;
            var done = new AndOrNetwork(work.Network.Nodes.Select((node, k) => k == plan.Order[0] ? node with { IsDone = true }
                : k == plan.Order[700] ? node with { Needs = [.. node.Needs, new Need(plan.Order[720], "learned")] } : node));
            watch.Restart();
            var replan = StripReplanner.After(new StripWork(done, work.Setups), plan.Order);
            var again = watch.Elapsed.TotalMilliseconds;
            if (seed == 0)
                continue;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{seed,5}  {plan.WorkSeconds / 3600.0,6:0.0}  {plan.SetupSeconds / 3600.0,7:0.00}  {plan.BoundSeconds / 3600.0,7:0.0}  {100 * plan.Gap,5:0.00}  {planned,7:0}  {again,9:0}  {replan.Moves.Length,5}"));
        }
    }
}
