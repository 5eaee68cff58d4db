using System.Collections.Immutable;

namespace Gudgeon.Planning.Scheduling;

/// <summary>A schedule and the bound below which none exists; proven least when the two meet.</summary>
public sealed record ProjectAnswer(ProjectSchedule Schedule, int Makespan, int Bound)
{
    public bool IsProven => Bound >= Makespan;
}

/// <summary>Least makespan: bounds first, then schedules by genetic search, while CP-SAT tries to prove that no shorter one exists.</summary>
public static class ProjectSolver
{
    private const int FirstSchedules = 1500;
    private const int Seed = 1;
    private const long DelayingSteps = 200_000;

    /// <summary>
    /// The same answer on every machine: effort is counted in schedules built and in the solver's own count, one worker.
    /// </summary>
    public static ProjectAnswer SolveSteadily(Project project, int schedules = 20_000, double proofEffort = 2)
    {
        var bounds = new ProjectBounds(project);
        var improver = new Improver(project, bounds, Seed);
        improver.Run(schedules, bounds.Least);
        var (best, bound) = (improver.Best.Starts, bounds.Least);
        var makespan = improver.Best.Makespan;
        if (bound < makespan && Delaying.Takes(project))
        {
            var delaying = new Delaying(project, bounds, project.Capacities.Length) { Found = starts => (best, makespan) = (starts, MakespanOf(project, starts)) };
            if (delaying.Run(makespan - 1, DelayingSteps))
                bound = makespan;
        }
        var prover = new Prover(project, bounds);
        while (bound < makespan)
        {
            var (isImpossible, starts) = prover.Ask(makespan - 1, ProverStyle.Learning, proofEffort, isSteady: true);
            if (isImpossible)
                bound = makespan;
            if (starts is null)
                break;
            (best, makespan) = (starts, MakespanOf(project, starts));
        }
        return Answer(project, best, bound);
    }

    /// <summary>The best that two workers find within <paramref name="limit"/>, by <paramref name="clock"/>, or until it is called off.</summary>
    public static ProjectAnswer SolveWithin(Project project, TimeSpan limit, TimeProvider clock, CancellationToken cancel = default)
    {
        var begun = clock.GetTimestamp();
        var bounds = new ProjectBounds(project);
        var improver = new Improver(project, bounds, Seed);
        improver.Run(FirstSchedules, bounds.Least);
        var race = new Race(project, bounds, improver, limit, begun, clock, cancel);
        race.Run();
        return Answer(project, race.Best, race.Bound);
    }

    internal static int MakespanOf(Project project, int[] starts) => new ProjectSchedule([.. starts]).Makespan(project);

    private static ProjectAnswer Answer(Project project, int[] starts, int bound)
    {
        var schedule = new ProjectSchedule([.. starts]);
        if (schedule.FirstFault(project) is { } fault)
            throw new InvalidOperationException($"the schedule found is not feasible: {fault}");
        var makespan = schedule.Makespan(project);
        return new ProjectAnswer(schedule, makespan, Math.Min(bound, makespan));
    }
}
