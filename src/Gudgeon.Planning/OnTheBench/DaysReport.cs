using System.Collections.Immutable;
using Gudgeon.Journal;
using Gudgeon.Planning.Calendar;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>The whole job on the owner's days, with the dates by which it may be done.</summary>
/// <param name="HoursTold">False while the hours are only what is usual.</param>
public sealed record DaysReport(ImmutableArray<JobTask> Tasks, DayPlan Plan, FinishOdds Odds, WorkCalendar Calendar, bool HoursTold, StripReport Strip)
{
    private const ulong Seed = 1;

    /// <summary>Parts that are off and wait for something of which no day is known: the dates leave that out.</summary>
    public ImmutableArray<BackWait> Held { get; init; } = [];

    /// <summary>When the last thing is off; null when nothing is left to take off.</summary>
    public DateTime? StripDone => Last(Phase.Strip);

    /// <summary>When all is back on: the first start.</summary>
    public DateTime? AllBack => Last(Phase.Refit);

    public Phase PhaseOf(string task) => Tasks.First(t => t.Task.Id == task).Phase;

    public static DaysReport Of(Bench bench, Circumstances circumstances, int effort, int trials = DayPlanner.UsualTrials, int draws = FinishOdds.UsualDraws)
    {
        var strip = StripReport.Of(bench, circumstances, effort);
        var tasks = JobTasks.Of(bench, circumstances, strip.Steps);
        var calendar = JobTasks.Calendar(bench, circumstances, tasks);
        PlanTask[] plain = [.. tasks.Select(t => t.Task)];
        var plan = DayPlanner.Plan(plain, calendar, circumstances.Now.DateTime, keep: [.. plain.Select(t => t.Id)], trials: trials);
        return new DaysReport(tasks, plan, FinishOdds.Of(plan, plain, calendar, Seed, draws), calendar, bench.Hours.Count > 0, strip)
        {
            Held = [.. BackWaits.Of(bench, circumstances.Now, bench.WayBackOn().Select(s => s.Part)).Where(w => w.Day is null)],
        };
    }

    private DateTime? Last(Phase phase)
    {
        var finishes = Plan.Placed.Where(p => PhaseOf(p.Task.Id) == phase).Select(p => p.Finish).ToArray();
        return finishes.Length == 0 ? null : finishes.Max();
    }
}

/// <summary>What is worth doing in the time at hand, best first.</summary>
public sealed record WaitReport(ImmutableArray<WaitOffer> Offers, ImmutableArray<JobTask> Tasks)
{
    /// <param name="tasks">The whole job, whoever is there: <see cref="JobTasks.Of"/>.</param>
    public static WaitReport Of(Bench bench, Circumstances circumstances, long seconds, ImmutableArray<JobTask> tasks)
    {
        var there = tasks.SelectMany(t => t.Task.Wants).Distinct()
            .Where(w => circumstances.Lacks(bench, w) is null && !(circumstances.Alone && w == EquipmentTold.SecondPerson)).ToHashSet();
        var offers = WhileYouWait.Rank([.. tasks.Select(t => t.Task)], JobTasks.Calendar(bench, circumstances, tasks), circumstances.Now.DateTime, seconds, there);
        return new WaitReport(offers, tasks);
    }
}
