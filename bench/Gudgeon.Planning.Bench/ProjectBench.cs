using System.Diagnostics;
using System.Globalization;
using Gudgeon.Planning.Scheduling;
using Gudgeon.Planning.Tests.Scheduling;

namespace Gudgeon.Planning.Bench;

/// <summary>
/// Our own invented projects over the grid of the public generator's parameters, solved by ours and by the plain CP-SAT
/// model with two workers, one after the other in the same run, with the same limit. Every schedule of both is checked.
/// </summary>
internal static class ProjectBench
{
    public static void Run(int jobs, double limit, int every, int firstSeed)
    {
        ProjectSolver.SolveWithin(RandomProjects.Make(1, 30, 1.5, 1, 0.2), TimeSpan.FromSeconds(1), TimeProvider.System);
        PlainModel.Solve(RandomProjects.Make(1, 30, 1.5, 1, 0.2), 2, 1);
        var (ours, plain) = (new Tally(), new Tally());
        var number = 0;
        foreach (var (complexity, factor, strength) in RandomProjects.Grid())
        {
            var seed = firstSeed + number;
            if (number++ % every != 0)
                continue;
            var project = RandomProjects.Make(seed, jobs, complexity, factor, strength);
            var watch = Stopwatch.StartNew();
            var own = ProjectSolver.SolveWithin(project, TimeSpan.FromSeconds(limit), TimeProvider.System);
            var ownSeconds = watch.Elapsed.TotalSeconds;
            watch.Restart();
            var (proven, makespan, bound, starts) = PlainModel.Solve(project, 2, limit);
            var plainSeconds = watch.Elapsed.TotalSeconds;
            var isFeasible = starts.Length > 0 && new ProjectSchedule([.. starts]).FirstFault(project) is null;
            var best = Math.Min(own.Makespan, makespan);
            ours.Add(own.IsProven, ownSeconds, (own.Makespan - best) / (double)best, (own.Makespan - own.Bound) / (double)own.Makespan);
            plain.Add(proven && isFeasible, plainSeconds, (makespan - best) / (double)best, (makespan - bound) / (double)makespan);
            if (ownSeconds > 1 || plainSeconds > 1)
            {
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                    $"seed {seed} ({complexity}, {factor}, {strength}): ours {own.Makespan} bound {own.Bound} {ownSeconds:0.0} s; plain {makespan} bound {bound} {plainSeconds:0.0} s"));
            }
        }
        Console.WriteLine($"{jobs} tasks, invented, limit {limit.ToString(CultureInfo.InvariantCulture)} s: ours {ours}; plain {plain}");
    }

    private sealed class Tally
    {
        private int count;
        private int proven;
        private double seconds;
        private double aboveBest;
        private double aboveBound;

        public void Add(bool isProven, double time, double toBest, double toBound)
        {
            count++;
            proven += isProven ? 1 : 0;
            seconds += time;
            aboveBest += toBest;
            aboveBound += toBound;
        }

        public override string ToString() => string.Create(CultureInfo.InvariantCulture,
            $"{proven} of {count} proven, {seconds:0.0} s in all, {100 * aboveBest / count:0.00} % above the better of both, {100 * aboveBound / count:0.00} % above own bound");
    }
}
