using Gudgeon.Planning.Calendar;

namespace Gudgeon.Planning.Tests.Calendar;

public class DayPlannerTests
{
    // Invented owner: Tuesday and Thursday evenings, Saturdays. 6 May 2030 is a Monday.
    private static readonly DateTime Monday = new(2030, 5, 6, 8, 0, 0);

    private static readonly WorkCalendar Owner = new(
    [
        new BenchHours(DayOfWeek.Tuesday, new TimeOnly(19, 0), new TimeOnly(21, 0)),
        new BenchHours(DayOfWeek.Thursday, new TimeOnly(19, 0), new TimeOnly(21, 0)),
        new BenchHours(DayOfWeek.Saturday, new TimeOnly(9, 0), new TimeOnly(13, 0)),
    ]);

    [Fact]
    public void Plan_of_three_hours_work_fills_one_evening_and_half_the_next()
    {
        var plan = DayPlanner.Plan([new PlanTask("a", "a", 3 * 3600)], Owner, Monday);
        Assert.Equal([At(7, 19, 21), At(9, 19, 20)], plan.Placed.Single().Pieces);
        Assert.True(plan.IsProvenEarliest);
    }

    [Fact]
    public void Plan_of_a_lift_that_may_not_split_waits_for_a_session_long_enough()
    {
        var plan = DayPlanner.Plan([new PlanTask("lift", "lift", 3 * 3600) { MaySplit = false }], Owner, Monday);
        Assert.Equal([At(11, 9, 12)], plan.Placed.Single().Pieces);
    }

    [Fact]
    public void Plan_with_the_stand_due_on_saturday_does_other_work_first()
    {
        var calendar = Owner with { Present = Owner.Present.Add("stand", [new Window(At(11, 8, 9).From, At(31, 8, 9).From)]) };
        var plan = DayPlanner.Plan(
            [new PlanTask("strip", "strip", 3600) { Wants = ["stand"] }, new PlanTask("clean", "clean", 4 * 3600)], calendar, Monday);
        Assert.Equal([At(7, 19, 21), At(9, 19, 21)], plan.Placed[0].Pieces);
        Assert.Equal([At(11, 9, 10)], plan.Placed[1].Pieces);
    }

    [Fact]
    public void Plan_sends_shop_work_away_first_and_works_on_meanwhile()
    {
        var plan = DayPlanner.Plan(
        [
            new PlanTask("clean", "clean", 2 * 3600),
            new PlanTask("send", "send the head away", 3600),
            new PlanTask("shop", "at the shop", 7 * 24 * 3600) { After = ["send"], IsAway = true },
            new PlanTask("fit", "fit the head", 3600) { After = ["shop", "clean"] },
        ], Owner, Monday);
        Assert.Equal("send", plan.Placed[0].Task.Id);
        Assert.Equal(At(14, 20, 21).Until, plan.Finish.AddHours(0));
        Assert.True(plan.IsProvenEarliest);
    }

    [Fact]
    public void Plan_with_a_thing_that_never_comes_says_so_and_what_waits_for_it()
    {
        var calendar = Owner with { Present = Owner.Present.Add("stand", []) };
        var plan = DayPlanner.Plan(
            [new PlanTask("strip", "strip", 3600) { Wants = ["stand"] }, new PlanTask("measure", "measure", 600) { After = ["strip"] }], calendar, Monday);
        Assert.Equal(
            ["needs 60 minutes at the bench with stand there; the calendar has not that much after its turn", "waits for strip"],
            plan.Unplaced.Select(item => item.Reason));
    }

    [Fact]
    public void Plan_replayed_on_random_tasks_keeps_every_rule_and_its_bound()
    {
        for (var seed = 1; seed <= 300; seed++)
        {
            var random = new Random(seed);
            var calendar = Owner with
            {
                DaysOff = [new DateOnly(2030, 5, 6 + random.Next(14))],
                Extra = [At(8 + random.Next(10), 6, 8)],
                Present = Owner.Present.Add("stand", [At(7 + random.Next(8), 0, 23), At(18, 0, 23)]).Add("helper", [At(11, 8, 12), At(18, 8, 12), At(25, 8, 12)]),
            };
            var tasks = RandomTasks(random, 1 + random.Next(7));
            var plan = DayPlanner.Plan(tasks, calendar, Monday);
            var spoiled = PlanReplay.FirstFault(plan, tasks, calendar);
            Assert.True(spoiled is null, $"seed {seed}: {spoiled}");
            Assert.Equal(tasks.Count, plan.Placed.Length + plan.Unplaced.Length);
            Assert.True(plan.Unplaced.Length > 0 || plan.FinishBound <= plan.Finish, $"seed {seed}: bound {plan.FinishBound} after the finish {plan.Finish}");
            Assert.Equal(plan.Order, DayPlanner.Plan(tasks, calendar, Monday).Order);
            var kept = DayPlanner.Plan(tasks, calendar, Monday, keep: plan.Order);
            Assert.True(kept.Order.SequenceEqual(plan.Order), $"seed {seed}: the order moved without cause");
        }
    }

    [Fact]
    public void FinishOdds_without_uncertainty_gives_the_plans_own_date_twice()
    {
        PlanTask[] tasks = [new PlanTask("a", "a", 3600)];
        var plan = DayPlanner.Plan(tasks, Owner, Monday);
        Assert.Equal(new FinishOdds(plan.Finish, plan.Finish, 50, 0), FinishOdds.Of(plan, tasks, Owner, seed: 3, draws: 50));
    }

    [Fact]
    public void FinishOdds_of_one_delivery_match_the_triangle()
    {
        // Post alone, 2 to 10 days, likely 2: by hand, 50 % at 10 - 8 sqrt(0.5) = 4.343 days, 90 % at 10 - 8 sqrt(0.1) = 7.470 days.
        const long Day = 24 * 3600;
        PlanTask[] tasks = [new PlanTask("post", "post", 2 * Day) { IsAway = true, Estimate = new ThreePoint(2 * Day, 2 * Day, 10 * Day) }];
        var odds = FinishOdds.Of(DayPlanner.Plan(tasks, Owner, Monday), tasks, Owner, seed: 11, draws: 20_000);
        Assert.Equal(4.343, (odds.Half!.Value - Monday).TotalDays, 0.1);
        Assert.Equal(7.470, (odds.NineInTen!.Value - Monday).TotalDays, 0.1);
        Assert.Equal(odds, FinishOdds.Of(DayPlanner.Plan(tasks, Owner, Monday), tasks, Owner, seed: 11, draws: 20_000));
    }

    [Fact]
    public void WhileYouWait_ranks_what_saves_days_before_what_only_opens_work()
    {
        PlanTask[] tasks =
        [
            new("tidy", "tidy", 3600),
            new("send", "send the crank away", 3600),
            new("shop", "at the shop", 14 * 24 * 3600) { After = ["send"], IsAway = true },
            new("fit", "fit", 3600) { After = ["shop"] },
            new("strip", "strip", 3600) { Wants = ["stand"] },
            new("lift", "lift", 3 * 3600) { MaySplit = false },
        ];
        var offers = WhileYouWait.Rank(tasks, Owner, At(7, 19, 21).From, 2 * 3600, new HashSet<string>());
        Assert.Equal(["send", "tidy"], offers.Select(offer => offer.Task.Id));
        Assert.True(offers[0].Saves >= TimeSpan.FromDays(1) && offers[0].Opens == 1);
        Assert.Equal(TimeSpan.Zero, offers[1].Saves);
    }

    private static Window At(int day, int from, int until) => new(new DateTime(2030, 5, day, from, 0, 0), new DateTime(2030, 5, day, until, 0, 0));

    private static List<PlanTask> RandomTasks(Random random, int count)
    {
        var tasks = new List<PlanTask>();
        for (var k = 0; k < count; k++)
        {
            tasks.Add(new PlanTask($"t{k}", $"t{k}", 600 * random.Next(20))
            {
                After = [.. Enumerable.Range(0, k).Where(_ => random.Next(4) == 0).Select(before => $"t{before}")],
                Wants = [.. new[] { "stand", "helper", "puller" }.Where(_ => random.Next(5) == 0)],
                IsAway = random.Next(5) == 0,
                MaySplit = random.Next(3) > 0,
                NotBefore = random.Next(6) == 0 ? Monday.AddDays(random.Next(10)) : null,
            });
        }
        return tasks;
    }
}
