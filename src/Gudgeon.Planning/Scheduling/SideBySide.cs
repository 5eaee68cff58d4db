namespace Gudgeon.Planning.Scheduling;

/// <summary>
/// The largest sets of tasks that can run at one instant: none waits for another, their windows meet, the resources suffice.
/// Every instant of every schedule lies within one of them.
/// </summary>
internal sealed class SideBySide
{
    private const int MostSteps = 400_000;
    private const int MostSets = 60_000;

    private readonly Project project;
    private readonly bool[][] meets;
    private readonly int[] free;
    private readonly List<int> members = [];
    private int steps;

    private SideBySide(Project project, bool[][] meets)
    {
        this.project = project;
        this.meets = meets;
        free = [.. project.Capacities];
    }

    public List<int[]> Sets { get; } = [];

    /// <summary>All of them, or null when they are too many to list.</summary>
    public static List<int[]>? Of(Project project, ProjectWindows windows)
    {
        var count = project.Tasks.Length;
        var meets = new bool[count][];
        for (var one = 0; one < count; one++)
        {
            meets[one] = new bool[count];
            for (var other = 0; other < count; other++)
                meets[one][other] = one != other && windows.CanMeet(one, other);
        }
        var search = new SideBySide(project, meets);
        var tasks = Enumerable.Range(0, count).Where(task => project.Tasks[task].Duration > 0).ToList();
        return search.Grow(tasks, []) ? search.Sets : null;
    }

    /// <summary>Bron and Kerbosch, "Algorithm 457" (CACM 1973), from memory, on sets that the resources limit as well.</summary>
    private bool Grow(List<int> open, List<int> passed)
    {
        if (++steps > MostSteps || Sets.Count > MostSets)
            return false;
        if (open.Count == 0)
        {
            if (passed.Count == 0 && members.Count > 0)
                Sets.Add([.. members]);
            return true;
        }
        for (var k = 0; k < open.Count; k++)
        {
            var task = open[k];
            members.Add(task);
            Take(task, -1);
            var isWhole = Grow(
                [.. open.Skip(k + 1).Where(other => meets[task][other] && Fits(other))],
                [.. passed.Concat(open.Take(k)).Where(other => meets[task][other] && Fits(other))]);
            Take(task, 1);
            members.RemoveAt(members.Count - 1);
            if (!isWhole)
                return false;
        }
        return true;
    }

    private void Take(int task, int sign)
    {
        for (var resource = 0; resource < free.Length; resource++)
            free[resource] += sign * project.Tasks[task].Demands[resource];
    }

    private bool Fits(int task)
    {
        for (var resource = 0; resource < free.Length; resource++)
        {
            if (project.Tasks[task].Demands[resource] > free[resource])
                return false;
        }
        return true;
    }
}
