using System.Diagnostics;
using System.Globalization;
using Gudgeon.Planning.Reach;
using Gudgeon.Planning.Tests.Reach;

namespace Gudgeon.Planning.Bench;

/// <summary>Reach on invented networks of 2,000 parts with 200 choices, beside the CP-SAT model of the same question.</summary>
internal static class ReachBench
{
    private const int Runs = 5;

    public static void Run(int networks)
    {
        // Both sides warm up on a network that is not measured.
        var warm = RandomNetworks.Large(new Random(1000), 2000, 200);
        for (var k = 0; k < 200; k++)
            ReachSolver.Solve(warm, [1999 - k]);
        ReachYardstick.Solve(warm, 1999, 1, 10);

        Console.WriteLine($"each the shortest of {Runs} runs, so that neither answers for what else the machine does");
        Console.WriteLine("network  cost_s  order  steps  ours_ms  cpsat1_ms  ratio  same");
        var (ours, theirs) = (new List<double>(), new List<double>());
        for (var seed = 1; seed <= networks; seed++)
        {
            var network = RandomNetworks.Large(new Random(seed), 2000, 200);
            // The part that takes most work of the last fifty: a hard one to reach.
            var target = Enumerable.Range(1950, 50).MaxBy(part => ReachSolver.Solve(network, [part])?.CostSeconds ?? -1);
            var (answer, own) = Shortest(() => ReachSolver.Solve(network, [target])!);
            var (model, other) = Shortest(() => ReachYardstick.Solve(network, target, 1, 60));
            ours.Add(own);
            theirs.Add(other);
            var same = (model.Cost, model.FluidLines, model.ThingsOff) == (answer.CostSeconds, answer.FluidLines, answer.ThingsOff);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{seed,7}  {answer.CostSeconds,6}  {answer.Order.Length,5}  {answer.Steps,5}  {own,7:0.00}  {other,9:0.0}  {other / own,5:0}  {same && answer.IsProven} {model.Status}"));
        }
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"all: ours mean {ours.Average():0.00} ms, worst {ours.Max():0.00} ms; CP-SAT mean {theirs.Average():0.0} ms; ratio of sums {theirs.Sum() / ours.Sum():0.0}"));
    }

    private static (T Answer, double Milliseconds) Shortest<T>(Func<T> solve)
    {
        var (answer, best) = (default(T)!, double.MaxValue);
        for (var run = 0; run < Runs; run++)
        {
            var watch = Stopwatch.StartNew();
            answer = solve();
            best = Math.Min(best, watch.Elapsed.TotalMilliseconds);
        }
        return (answer, best);
    }
}
