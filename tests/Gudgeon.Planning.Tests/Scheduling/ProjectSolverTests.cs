using Gudgeon.Planning.Scheduling;
using Gudgeon.Planning.Tests.OpenData;

namespace Gudgeon.Planning.Tests.Scheduling;

public class ProjectSolverTests
{
    // Published optimum of j301_1 (optimum table of the collection, seen); critical path 38, printed in the instance as MPM-Time.
    private const int PublishedOptimum = 43;
    private const int PublishedCriticalPath = 38;

    // One optimal start vector, recomputed with CP-SAT.
    private static readonly int[] OptimalStarts =
        [0, 4, 0, 0, 9, 31, 4, 4, 12, 6, 12, 13, 4, 16, 12, 13, 23, 10, 13, 26, 29, 29, 36, 38, 33, 21, 15, 33, 19, 41, 36, 43];

    [Fact]
    public void ProjectSolver_steadily_proves_the_published_optimum()
    {
        var project = ProjectFileTests.PublicInstance();
        var answer = ProjectSolver.SolveSteadily(project);
        Assert.Equal((PublishedOptimum, PublishedOptimum), (answer.Makespan, answer.Bound));
        Assert.Null(answer.Schedule.FirstFault(project));
        Assert.Equal(PublishedCriticalPath, new ProjectBounds(project).CriticalPath);
    }

    [Fact]
    public void ProjectSolver_within_a_time_proves_the_published_optimum()
    {
        var project = ProjectFileTests.PublicInstance();
        var answer = ProjectSolver.SolveWithin(project, TimeSpan.FromSeconds(20), TimeProvider.System);
        Assert.Equal((PublishedOptimum, PublishedOptimum), (answer.Makespan, answer.Bound));
    }

    [Fact]
    public void ProjectSolver_steadily_twice_gives_the_same_starts()
    {
        var project = RandomProjects.Make(7024, 60, 1.5, 1, 0.2);
        Assert.Equal(
            ProjectSolver.SolveSteadily(project, 3000, 0.2).Schedule.Starts,
            ProjectSolver.SolveSteadily(project, 3000, 0.2).Schedule.Starts);
    }

    [Fact]
    public void ProjectSolver_agrees_with_the_plain_model_on_random_projects()
    {
        for (var seed = 1; seed <= 60; seed++)
        {
            var project = RandomProjects.Make(seed, 6 + seed % 9, 1.3 + seed % 4 * 0.2, 0.25 + seed % 4 * 0.25, seed % 5 * 0.25, resources: 1 + seed % 6);
            var answer = ProjectSolver.SolveSteadily(project, 200);
            var plain = PlainModel.Solve(project, 1, 20);
            Assert.True(plain.Proven && answer.IsProven && plain.Makespan == answer.Makespan, $"seed {seed}: plain {plain.Makespan}, ours {answer.Makespan} bound {answer.Bound}");
            Assert.True(new ProjectBounds(project).Least <= plain.Makespan, $"seed {seed}: bound above the optimum");
        }
    }

    [Fact]
    public void ProjectSolver_agrees_with_every_order_of_small_projects()
    {
        for (var seed = 1; seed <= 400; seed++)
        {
            var project = RandomProjects.Make(seed, 5 + seed % 3, 1.2, 0.5 + seed % 3 * 0.25, seed % 4 * 0.3, resources: 1 + seed % 3);
            Assert.Equal((seed, EveryOrder.Best(project)), (seed, ProjectSolver.SolveSteadily(project, 60).Makespan));
        }
    }

    [Fact]
    public void ProjectSolver_of_no_tasks_ends_at_once()
    {
        Assert.Equal(0, ProjectSolver.SolveSteadily(new Project([], [])).Makespan);
    }

    [Fact]
    public void ProjectSolver_with_large_capacities_packs_wide_lanes()
    {
        // Invented: two tasks of 60,000 on a capacity of 100,000 exclude each other.
        var project = new Project([new ProjectTask(3, [60_000], []), new ProjectTask(4, [60_000], []), new ProjectTask(7, [40_000], [])], [100_000]);
        Assert.Equal(7, ProjectSolver.SolveSteadily(project).Makespan);
    }

    [Fact]
    public void ProjectSchedule_that_is_optimal_has_no_fault()
    {
        var schedule = new ProjectSchedule([.. OptimalStarts]);
        Assert.Null(schedule.FirstFault(ProjectFileTests.PublicInstance()));
        Assert.Equal(PublishedOptimum, schedule.Makespan(ProjectFileTests.PublicInstance()));
    }

    [Theory]
    [InlineData(1, 24, "task 6 starts at 31, before task 2 ends at 32")]
    [InlineData(0, -1, "task 1 starts at -1, before the project")]
    [InlineData(4, 0, "task 5 starts at 0, before task 4 ends at 6")]
    public void ProjectSchedule_with_a_fault_names_it(int task, int start, string expected)
    {
        var starts = (int[])OptimalStarts.Clone();
        starts[task] = start;
        Assert.Equal(expected, new ProjectSchedule([.. starts]).FirstFault(ProjectFileTests.PublicInstance()));
    }

    [Fact]
    public void ProjectSchedule_with_a_resource_used_twice_names_the_instant()
    {
        var project = new Project([new ProjectTask(3, [2], []), new ProjectTask(4, [2], [])], [3]);
        Assert.Equal("at 2 resource 1 is used 4 times of 3", new ProjectSchedule([0, 2]).FirstFault(project));
        Assert.Null(new ProjectSchedule([0, 3]).FirstFault(project));
    }
}
