namespace Gudgeon.Planning.Scheduling;

/// <summary>
/// When each task may run if the whole must be done within a length: no earlier than its head, ended its tail before the end.
/// Narrowed by precedence, by pairs that exclude each other, and by energy before and after each task.
/// </summary>
internal sealed class ProjectWindows
{
    private readonly Project project;
    private readonly ProjectBounds bounds;

    /// <param name="project">The project, with whatever redundant resources are known.</param>
    /// <param name="bounds">Its heads, tails and who waits for whom.</param>
    /// <param name="length">Longest makespan allowed.</param>
    public ProjectWindows(Project project, ProjectBounds bounds, int length)
    {
        this.project = project;
        this.bounds = bounds;
        Length = length;
        Heads = (int[])bounds.Heads.Clone();
        Tails = (int[])bounds.Tails.Clone();
        IsEmpty = !Narrow();
    }

    public int Length { get; }

    public int[] Heads { get; }

    public int[] Tails { get; }

    /// <summary>True when some task has no place left: no schedule of this length exists.</summary>
    public bool IsEmpty { get; }

    public bool CanMeet(int one, int other) =>
        !bounds.Reaches[one][other] && !bounds.Reaches[other][one]
        && Math.Max(Heads[one], Heads[other]) < Length - Math.Max(Tails[one], Tails[other])
        && !project.Excludes(one, other);

    private bool Narrow()
    {
        var count = project.Tasks.Length;
        bool changed;
        do
        {
            changed = false;
            foreach (var task in project.Order)
            {
                foreach (var next in project.Tasks[task].Successors)
                    changed |= Raise(Heads, next, Heads[task] + project.Tasks[task].Duration);
            }
            for (var k = count - 1; k >= 0; k--)
            {
                var task = project.Order[k];
                foreach (var next in project.Tasks[task].Successors)
                    changed |= Raise(Tails, task, Tails[next] + project.Tasks[next].Duration);
            }
            for (var one = 0; one < count; one++)
            {
                if (Heads[one] + project.Tasks[one].Duration + Tails[one] > Length)
                    return false;
                for (var other = 0; other < count; other++)
                {
                    if (one == other || !project.Excludes(one, other) || Heads[one] + project.Tasks[one].Duration + project.Tasks[other].Duration + Tails[other] <= Length)
                        continue;
                    // One cannot come before the other, so it comes after.
                    changed |= Raise(Heads, one, Heads[other] + project.Tasks[other].Duration);
                    changed |= Raise(Tails, other, Tails[one] + project.Tasks[one].Duration);
                }
            }
        }
        while (changed);
        return true;
    }

    private static bool Raise(int[] values, int task, int least)
    {
        if (values[task] >= least)
            return false;
        values[task] = least;
        return true;
    }
}
