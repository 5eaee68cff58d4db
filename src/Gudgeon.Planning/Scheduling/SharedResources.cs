using Google.OrTools.LinearSolver;

namespace Gudgeon.Planning.Scheduling;

/// <summary>
/// Resources that no file names but every schedule keeps to: weights on the tasks such that no set of tasks that can run
/// side by side weighs more than a capacity. The best weights come from a linear programme over those sets,
/// maximise sum(duration * weight) with sum over each set at most 1 (dual of the bound of Mingozzi, Maniezzo, Ricciardelli and Bianco,
/// Management Science 44, 1998, from memory). They are rounded to whole numbers and the capacity is then taken over all sets,
/// so that they hold whatever the programme says.
/// </summary>
internal static class SharedResources
{
    private const int Scale = 60;
    private const int RowsAtOnce = 60;
    private const int MostResources = 8;
    private const int FewestTasks = 4;
    private const double LeastGain = 0.3;

    /// <summary>The project with redundant resources after its own, for schedules of at most <paramref name="length"/>; itself when none helps.</summary>
    public static Project Added(Project project, ProjectBounds bounds, int length)
    {
        var windows = new ProjectWindows(project, bounds, length);
        if (windows.IsEmpty || SideBySide.Of(project, windows) is not { } sets)
            return project;
        // Tasks that all lie after a head and before a tail: where energy already asks for most, better weights may ask for more.
        var spans = new List<(double Least, int Around, int[] Tasks)>();
        foreach (var head in windows.Heads.Distinct())
        {
            foreach (var tail in windows.Tails.Distinct())
            {
                int[] inside = [.. Enumerable.Range(0, project.Tasks.Length).Where(task => project.Tasks[task].Duration > 0 && windows.Heads[task] >= head && windows.Tails[task] >= tail)];
                if (inside.Length >= FewestTasks)
                    spans.Add((head + tail + Enumerable.Range(0, project.Capacities.Length).Max(resource => Energy(project, inside, task => project.Tasks[task].Demands[resource], project.Capacities[resource])), head + tail, inside));
            }
        }
        var found = new List<(int[] Demands, int Capacity)>();
        foreach (var (least, around, tasks) in spans.OrderByDescending(span => span.Least).ThenByDescending(span => span.Tasks.Length).Take(MostResources))
        {
            if (Best(project, sets, tasks) is { } best && around + Energy(project, tasks, task => best.Demands[task], best.Capacity) > least + LeastGain)
                found.Add(best);
        }
        return new Project(
            project.Tasks.Select((task, index) => task with { Demands = [.. task.Demands, .. found.Select(resource => resource.Demands[index])] }),
            [.. project.Capacities, .. found.Select(resource => resource.Capacity)]);
    }

    private static double Energy(Project project, int[] tasks, Func<int, int> demand, int capacity) =>
        capacity == 0 ? 0 : tasks.Sum(task => (double)project.Tasks[task].Duration * demand(task)) / capacity;

    /// <summary>Demands of all tasks and the capacity, best for the tasks given; null when the programme has no answer.</summary>
    private static (int[] Demands, int Capacity)? Best(Project project, List<int[]> sets, int[] tasks)
    {
        using var solver = Solver.CreateSolver("GLOP");
        var weights = new Variable?[project.Tasks.Length];
        foreach (var task in tasks)
        {
            weights[task] = solver.MakeNumVar(0, 1, "");
            solver.Objective().SetCoefficient(weights[task], project.Tasks[task].Duration);
        }
        solver.Objective().SetMaximization();
        var value = new double[weights.Length];
        while (true)
        {
            if (solver.Solve() != Solver.ResultStatus.OPTIMAL)
                return null;
            foreach (var task in tasks)
                value[task] = weights[task]!.SolutionValue();
            var broken = sets.Select(set => (Set: set, Sum: set.Sum(task => value[task]))).Where(row => row.Sum > 1 + 1e-7)
                .OrderByDescending(row => row.Sum).Take(RowsAtOnce).ToList();
            if (broken.Count == 0)
                break;
            foreach (var (set, _) in broken)
            {
                var row = solver.MakeConstraint(double.NegativeInfinity, 1);
                foreach (var task in set.Where(task => weights[task] is not null))
                    row.SetCoefficient(weights[task], 1);
            }
        }
        var demands = Array.ConvertAll(value, weight => (int)Math.Floor(weight * Scale + 1e-6));
        return (demands, sets.Max(set => set.Sum(task => demands[task])));
    }
}
