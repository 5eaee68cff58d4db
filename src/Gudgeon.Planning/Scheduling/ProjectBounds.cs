namespace Gudgeon.Planning.Scheduling;

/// <summary>
/// Earliest starts (heads), least time after each end (tails) and lower bounds on the makespan, by longest paths and by energy:
/// tasks that all lie after some instant and before the end must fit into the capacity between.
/// Formula: makespan >= h + ceil(sum(duration * demand) / capacity) + q over tasks with head >= h and tail >= q.
/// </summary>
internal sealed class ProjectBounds
{
    private readonly Project project;

    public ProjectBounds(Project project)
    {
        this.project = project;
        var count = project.Tasks.Length;
        Reaches = new bool[count][];
        foreach (var task in project.Order.Reverse())
        {
            Reaches[task] = new bool[count];
            foreach (var next in project.Tasks[task].Successors)
            {
                Reaches[task][next] = true;
                for (var far = 0; far < count; far++)
                    Reaches[task][far] |= Reaches[next][far];
            }
        }
        Heads = new int[count];
        foreach (var task in project.Order)
            Heads[task] = Math.Max(
                Longest(project.Predecessors[task], before => Heads[before] + project.Tasks[before].Duration),
                Energy([.. Enumerable.Range(0, count).Where(before => Reaches[before][task])], Heads));
        Tails = new int[count];
        foreach (var task in project.Order.Reverse())
            Tails[task] = Math.Max(
                Longest(project.Tasks[task].Successors, next => Tails[next] + project.Tasks[next].Duration),
                Energy([.. Enumerable.Range(0, count).Where(next => Reaches[task][next])], Tails));
        CriticalPath = CriticalPathOf(project);
        Least = Math.Max(CriticalPath, Both());
    }

    /// <summary>Task to whether another one must wait for it, directly or not.</summary>
    public bool[][] Reaches { get; }

    public int[] Heads { get; }

    public int[] Tails { get; }

    public int CriticalPath { get; }

    public int Least { get; }

    private static int CriticalPathOf(Project project)
    {
        var ends = new int[project.Tasks.Length];
        foreach (var task in project.Order)
            ends[task] = Longest(project.Predecessors[task], before => ends[before]) + project.Tasks[task].Duration;
        return Longest(Enumerable.Range(0, ends.Length), task => ends[task]);
    }

    private static int Longest(IEnumerable<int> tasks, Func<int, int> length) => tasks.Select(length).DefaultIfEmpty(0).Max();

    /// <summary>Least instant by which all <paramref name="tasks"/> can have ended, when each starts no earlier than its head.</summary>
    private int Energy(int[] tasks, int[] heads)
    {
        var byHead = tasks.OrderByDescending(task => heads[task]).ToArray();
        var best = 0;
        for (var resource = 0; resource < project.Capacities.Length; resource++)
        {
            var energy = 0L;
            foreach (var task in byHead)
            {
                energy += (long)project.Tasks[task].Duration * project.Tasks[task].Demands[resource];
                best = Math.Max(best, heads[task] + Needed(energy, resource));
            }
        }
        return best;
    }

    private int Both()
    {
        var count = project.Tasks.Length;
        var best = 0;
        for (var task = 0; task < count; task++)
            best = Math.Max(best, Heads[task] + project.Tasks[task].Duration + Tails[task]);
        var byHead = Enumerable.Range(0, count).OrderByDescending(task => Heads[task]).ToArray();
        for (var resource = 0; resource < project.Capacities.Length; resource++)
        {
            foreach (var tail in Tails.Distinct())
            {
                var energy = 0L;
                foreach (var task in byHead)
                {
                    if (Tails[task] < tail)
                        continue;
                    energy += (long)project.Tasks[task].Duration * project.Tasks[task].Demands[resource];
                    if (energy > 0)
                        best = Math.Max(best, Heads[task] + Needed(energy, resource) + tail);
                }
            }
        }
        return best;
    }

    private int Needed(long energy, int resource) =>
        project.Capacities[resource] == 0 ? 0 : (int)((energy + project.Capacities[resource] - 1) / project.Capacities[resource]);
}
