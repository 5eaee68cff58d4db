namespace Gudgeon.Planning.Scheduling;

/// <summary>
/// Serial schedule generation: tasks in the order of a list, each at the earliest instant that precedence and
/// resources allow. What is left of the resources at an instant is packed into words, a lane to each resource, so
/// that one subtraction tests them all.
/// </summary>
internal sealed class ScheduleBuilder
{
    private readonly int[] durations;
    private readonly int[][] predecessors;
    private readonly int words;
    private readonly ulong[] demand;
    private readonly ulong[] full;
    private readonly ulong guard;
    private readonly ulong[] left;
    private int used;

    /// <param name="project">The project.</param>
    /// <param name="isReversed">Time runs backwards: successors come first. Used to push tasks to the right.</param>
    public ScheduleBuilder(Project project, bool isReversed)
    {
        var count = project.Tasks.Length;
        durations = [.. project.Tasks.Select(task => task.Duration)];
        predecessors = [.. Enumerable.Range(0, count).Select(task =>
            isReversed ? project.Tasks[task].Successors.Distinct().ToArray() : [.. project.Predecessors[task]])];
        // A lane keeps its top bit free: it shows a borrow.
        var bits = project.Capacities.All(capacity => capacity < 1 << 15) ? 16 : 32;
        var lanes = 64 / bits;
        words = Math.Max(1, (project.Capacities.Length + lanes - 1) / lanes);
        guard = bits == 16 ? 0x8000_8000_8000_8000UL : 0x8000_0000_8000_0000UL;
        demand = new ulong[count * words];
        full = new ulong[words];
        for (var resource = 0; resource < project.Capacities.Length; resource++)
        {
            var (word, shift) = (resource / lanes, resource % lanes * bits);
            full[word] |= (ulong)project.Capacities[resource] << shift;
            for (var task = 0; task < count; task++)
                demand[task * words + word] |= (ulong)(durations[task] == 0 ? 0 : project.Tasks[task].Demands[resource]) << shift;
        }
        left = new ulong[(project.Horizon + 1) * words];
        used = project.Horizon + 1;
    }

    public int Count => durations.Length;

    /// <summary>Fills <paramref name="starts"/>; <paramref name="list"/> must respect precedence. Returns the makespan.</summary>
    public int Build(int[] list, int[] starts)
    {
        for (var word = 0; word < words; word++)
        {
            for (var instant = 0; instant < used; instant++)
                left[instant * words + word] = full[word] | guard;
        }
        used = 0;
        foreach (var task in list)
        {
            var earliest = 0;
            foreach (var before in predecessors[task])
                earliest = Math.Max(earliest, starts[before] + durations[before]);
            var start = words == 1 ? Place(task, earliest) : PlaceWide(task, earliest);
            starts[task] = start;
            used = Math.Max(used, start + durations[task]);
        }
        return used;
    }

    private int Place(int task, int start)
    {
        var (want, duration) = (demand[task], durations[task]);
        if (want == 0)
            return start;
        for (var instant = start + duration - 1; instant >= start;)
        {
            if (((left[instant] - want) & guard) == guard)
            {
                instant--;
                continue;
            }
            start = instant + 1;
            instant = start + duration - 1;
        }
        for (var instant = start; instant < start + duration; instant++)
            left[instant] -= want;
        return start;
    }

    private int PlaceWide(int task, int start)
    {
        var duration = durations[task];
        for (var instant = start + duration - 1; instant >= start;)
        {
            if (Fits(task, instant))
            {
                instant--;
                continue;
            }
            start = instant + 1;
            instant = start + duration - 1;
        }
        for (var instant = start; instant < start + duration; instant++)
        {
            for (var word = 0; word < words; word++)
                left[instant * words + word] -= demand[task * words + word];
        }
        return start;
    }

    private bool Fits(int task, int instant)
    {
        for (var word = 0; word < words; word++)
        {
            if (((left[instant * words + word] - demand[task * words + word]) & guard) != guard)
                return false;
        }
        return true;
    }
}
