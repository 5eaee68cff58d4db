using Gudgeon.Planning.Scheduling;
using Gudgeon.Planning.Tests.OpenData;

namespace Gudgeon.Planning.Tests.Scheduling;

public class DelayingTests
{
    private const long Steps = 5_000_000;

    [Fact]
    public void Delaying_of_the_public_instance_finds_the_published_optimum()
    {
        // Published optimum of j301_1: 43 (optimum table of the collection, seen).
        Assert.Equal((true, 43), Least(ProjectFileTests.PublicInstance(), tighten: false));
        Assert.Equal((true, 43), Least(ProjectFileTests.PublicInstance().Reversed(), tighten: false));
    }

    [Fact]
    public void Delaying_agrees_with_every_order_of_small_projects()
    {
        for (var seed = 1; seed <= 1500; seed++)
        {
            var project = RandomProjects.Make(seed, 4 + seed % 4, 1.2, 0.25 + seed % 4 * 0.25, seed % 5 * 0.25, resources: 1 + seed % 4);
            Assert.Equal((seed, true, EveryOrder.Best(project)), (seed, Least(project, tighten: false).IsAll, Least(project, tighten: false).Makespan));
        }
    }

    [Fact]
    public void Delaying_agrees_with_the_plain_model_with_redundant_resources_and_from_both_ends()
    {
        for (var seed = 1; seed <= 120; seed++)
        {
            var project = RandomProjects.Make(seed, 8 + seed % 9, 1.3 + seed % 4 * 0.2, 0.25 + seed % 4 * 0.25, seed % 5 * 0.25, resources: 1 + seed % 6);
            var plain = PlainModel.Solve(project, 1, 20);
            Assert.True(plain.Proven, $"seed {seed}");
            Assert.Equal((seed, true, plain.Makespan), (seed, Least(project, tighten: true).IsAll, Least(project, tighten: true).Makespan));
            Assert.Equal((seed, true, plain.Makespan), (seed, Least(project.Reversed(), tighten: true).IsAll, Least(project.Reversed(), tighten: true).Makespan));
        }
    }

    [Fact]
    public void Delaying_for_less_than_the_least_finds_nothing_and_says_that_all_was_tried()
    {
        for (var seed = 1; seed <= 60; seed++)
        {
            var project = RandomProjects.Make(seed, 8 + seed % 9, 1.5, 0.75, 0.2);
            var plain = PlainModel.Solve(project, 1, 20);
            var tight = SharedResources.Added(project, new ProjectBounds(project), plain.Makespan - 1);
            var found = 0;
            var search = new Delaying(tight, new ProjectBounds(tight), project.Capacities.Length) { Found = _ => found++ };
            Assert.Equal((seed, true, 0), (seed, search.Run(plain.Makespan - 1, Steps), found));
        }
    }

    [Fact]
    public void Delaying_with_too_few_steps_does_not_say_that_all_was_tried()
    {
        var project = ProjectFileTests.PublicInstance();
        Assert.False(new Delaying(project, new ProjectBounds(project), project.Capacities.Length).Run(project.Horizon, 3));
    }

    [Fact]
    public void Delaying_called_off_does_not_say_that_all_was_tried()
    {
        var project = RandomProjects.Make(7024, 60, 1.5, 1, 0.2);
        var search = new Delaying(project, new ProjectBounds(project), project.Capacities.Length) { IsOver = () => true };
        Assert.False(search.Run(project.Horizon, long.MaxValue / 2));
        Assert.True(search.Steps < 10_000);
    }

    [Theory]
    [InlineData(64, true)]
    [InlineData(65, false)]
    public void Delaying_takes_up_to_sixty_four_tasks(int jobs, bool isTaken)
    {
        var project = RandomProjects.Make(1, jobs, 1.5, 0.5, 0.5);
        Assert.Equal(isTaken, Delaying.Takes(project));
    }

    [Fact]
    public void SharedResources_hold_in_every_schedule_of_the_length()
    {
        var added = 0;
        for (var seed = 1; seed <= 200; seed++)
        {
            var project = RandomProjects.Make(seed, 12, 1.5, 0.25 + seed % 4 * 0.25, seed % 3 * 0.2);
            var schedule = ProjectSolver.SolveSteadily(project, 60);
            var tight = SharedResources.Added(project, new ProjectBounds(project), schedule.Makespan);
            added += tight.Capacities.Length - project.Capacities.Length;
            Assert.Null(schedule.Schedule.FirstFault(tight));
            Assert.True(new ProjectBounds(tight).Least <= schedule.Makespan, $"seed {seed}: bound above a schedule");
        }
        Assert.True(added > 100, $"only {added} were added: nothing was tested");
    }

    private static (bool IsAll, int Makespan) Least(Project project, bool tighten)
    {
        var bounds = new ProjectBounds(project);
        var used = tighten ? SharedResources.Added(project, bounds, project.Horizon) : project;
        var best = int.MaxValue;
        var search = new Delaying(used, new ProjectBounds(used), project.Capacities.Length)
        {
            Found = starts =>
            {
                Assert.Null(new ProjectSchedule([.. starts]).FirstFault(project));
                best = ProjectSolver.MakespanOf(project, starts);
            },
        };
        return (search.Run(project.Horizon, Steps), best);
    }
}
