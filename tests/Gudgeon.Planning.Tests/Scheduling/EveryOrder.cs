using Gudgeon.Planning.Scheduling;

namespace Gudgeon.Planning.Tests.Scheduling;

/// <summary>
/// Brute force: serial generation over every precedence-feasible order. Serial generation reaches an optimum for
/// makespan (Kolisch 1996: it makes all active schedules), here written the plain way.
/// </summary>
internal static class EveryOrder
{
    public static int Best(Project project)
    {
        var best = int.MaxValue;
        Walk(project, new int[project.Tasks.Length], 0, 0, ref best);
        return best;
    }

    private static void Walk(Project project, int[] starts, int placed, int makespan, ref int best)
    {
        if (makespan >= best)
            return;
        if (placed == (1 << project.Tasks.Length) - 1)
        {
            best = makespan;
            return;
        }
        for (var task = 0; task < project.Tasks.Length; task++)
        {
            if ((placed & (1 << task)) != 0 || project.Predecessors[task].Any(before => (placed & (1 << before)) == 0))
                continue;
            var start = project.Predecessors[task].Select(before => starts[before] + project.Tasks[before].Duration).DefaultIfEmpty(0).Max();
            while (!Fits(project, starts, placed, task, start))
                start++;
            starts[task] = start;
            Walk(project, starts, placed | (1 << task), Math.Max(makespan, start + project.Tasks[task].Duration), ref best);
        }
    }

    private static bool Fits(Project project, int[] starts, int placed, int task, int start)
    {
        for (var instant = start; instant < start + project.Tasks[task].Duration; instant++)
        {
            for (var resource = 0; resource < project.Capacities.Length; resource++)
            {
                var used = project.Tasks[task].Demands[resource];
                for (var other = 0; other < project.Tasks.Length; other++)
                {
                    if ((placed & (1 << other)) != 0 && starts[other] <= instant && instant < starts[other] + project.Tasks[other].Duration)
                        used += project.Tasks[other].Demands[resource];
                }
                if (used > project.Capacities[resource])
                    return false;
            }
        }
        return true;
    }
}
