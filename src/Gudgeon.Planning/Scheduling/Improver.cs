namespace Gudgeon.Planning.Scheduling;

/// <summary>
/// Good schedules by a genetic search over task lists: biased random starts by latest finish, two-point crossover,
/// and forward-backward improvement (all tasks pushed right, then left) of every child. Deterministic in its seed.
/// Methods: Hartmann 1998 (crossover on lists), Valls, Ballestin and Quintanilla 2005 (justification), both from memory.
/// </summary>
internal sealed class Improver
{
    private readonly Project project;
    private readonly ProjectBounds bounds;
    private readonly Random random;
    private readonly ScheduleBuilder forward;
    private readonly ScheduleBuilder backward;
    private readonly int[] rank;
    private readonly int[] durations;
    private readonly long[] keys;
    private readonly int[] list;
    private readonly int[] mirrored;
    private readonly List<Member> members = [];
    private readonly int size;
    private int idle;

    public Improver(Project project, ProjectBounds bounds, int seed)
    {
        this.project = project;
        this.bounds = bounds;
        random = new Random(seed);
        forward = new ScheduleBuilder(project, isReversed: false);
        backward = new ScheduleBuilder(project, isReversed: true);
        var count = project.Tasks.Length;
        size = Math.Clamp(count, 20, 60);
        rank = new int[count];
        for (var k = 0; k < count; k++)
            rank[project.Order[k]] = k;
        durations = [.. project.Tasks.Select(task => task.Duration)];
        keys = new long[count];
        list = new int[count];
        mirrored = new int[count];
        Best = Improved(ByLatestFinish(0));
    }

    public Member Best { get; private set; }

    /// <summary>How many schedules were built: a measure of effort that does not hang on the machine.</summary>
    public long Built { get; private set; }

    /// <summary>Builds about <paramref name="schedules"/> more, or fewer once the bound is met.</summary>
    public void Run(long schedules, int lowerBound)
    {
        for (var end = Built + schedules; Built < end && Best.Makespan > lowerBound;)
        {
            if (members.Count < size)
                Add(Improved(ByLatestFinish(members.Count < size / 2 ? 0.3 : 1.0)));
            else
                Breed();
        }
    }

    /// <summary>Takes in a schedule found elsewhere.</summary>
    public void Offer(int[] starts)
    {
        var member = Justified((int[])starts.Clone());
        if (members.Count >= size)
            members.RemoveAt(members.Count - 1);
        Add(member);
    }

    private void Breed()
    {
        var mother = Tournament();
        var father = Tournament();
        var child = Cross(mother.List, father.List);
        if (random.Next(2) == 0)
            Mutate(child);
        var member = Improved(child);
        var worst = members[^1];
        if (member.CompareTo(worst) < 0 && !members.Exists(other => other.Fingerprint == member.Fingerprint))
        {
            members.RemoveAt(members.Count - 1);
            Add(member);
        }
        if (++idle < 60 * size)
            return;
        // The pool has run dry: keep one in ten and start the others afresh.
        members.RemoveRange(Math.Max(1, size / 10), members.Count - Math.Max(1, size / 10));
        if (random.Next(2) == 0)
            members.Clear();
        idle = 0;
    }

    private void Add(Member member)
    {
        var at = members.BinarySearch(member);
        members.Insert(at < 0 ? ~at : at, member);
        if (at is 0 or -1)
            idle = 0;
        if (member.CompareTo(Best) < 0)
            Best = member;
    }

    private Member Tournament() => members[Math.Min(random.Next(members.Count), random.Next(members.Count))];

    private int[] Cross(int[] mother, int[] father)
    {
        var count = mother.Length;
        var (from, to) = (random.Next(count), random.Next(count));
        if (from > to)
            (from, to) = (to, from);
        var child = new int[count];
        var taken = new bool[count];
        for (var k = 0; k < from; k++)
            taken[child[k] = mother[k]] = true;
        var at = from;
        for (var k = 0; at < to; k++)
        {
            if (!taken[father[k]])
                taken[child[at++] = father[k]] = true;
        }
        for (var k = 0; at < count; k++)
        {
            if (!taken[mother[k]])
                taken[child[at++] = mother[k]] = true;
        }
        return child;
    }

    private void Mutate(int[] child)
    {
        var swaps = 1 + random.Next(3);
        for (var k = 0; k < swaps; k++)
        {
            // A task moves forward as far as its predecessors let it, up to a random distance.
            var from = random.Next(child.Length);
            var task = child[from];
            var to = Math.Max(0, from - 1 - random.Next(10));
            while (from > to && !bounds.Reaches[child[from - 1]][task])
            {
                child[from] = child[from - 1];
                from--;
            }
            child[from] = task;
        }
    }

    private int[] ByLatestFinish(double noise)
    {
        var count = project.Tasks.Length;
        var scale = Math.Max(1, bounds.CriticalPath) * noise;
        for (var task = 0; task < count; task++)
            keys[task] = (long)(1000 * (-bounds.Tails[task] + scale * random.NextDouble()));
        var open = new int[count];
        var queue = new PriorityQueue<int, (long, int)>();
        for (var task = 0; task < count; task++)
        {
            open[task] = project.Predecessors[task].Length;
            if (open[task] == 0)
                queue.Enqueue(task, (keys[task], task));
        }
        var order = new int[count];
        for (var k = 0; queue.TryDequeue(out var task, out _); k++)
        {
            order[k] = task;
            foreach (var next in project.Tasks[task].Successors.Distinct())
            {
                if (--open[next] == 0)
                    queue.Enqueue(next, (keys[next], next));
            }
        }
        return order;
    }

    private Member Improved(int[] tasks)
    {
        var starts = new int[tasks.Length];
        forward.Build(tasks, starts);
        Built++;
        return Justified(starts);
    }

    /// <summary>Pushes all tasks to the right in order of falling ends, then back to the left in order of rising starts.</summary>
    private Member Justified(int[] starts)
    {
        var count = starts.Length;
        for (var task = 0; task < count; task++)
        {
            keys[task] = -(((long)(starts[task] + durations[task]) << 20) + rank[task]);
            list[task] = task;
        }
        Array.Sort(keys, list);
        backward.Build(list, mirrored);
        for (var task = 0; task < count; task++)
        {
            keys[task] = -(((long)(mirrored[task] + durations[task]) << 20) + count - rank[task]);
            list[task] = task;
        }
        Array.Sort(keys, list);
        var makespan = forward.Build(list, starts);
        Built += 2;
        var order = (int[])list.Clone();
        for (var task = 0; task < count; task++)
            keys[task] = ((long)starts[task] << 20) + rank[task];
        var sum = 0L;
        var print = 17L;
        for (var task = 0; task < count; task++)
        {
            sum += starts[task];
            print = print * 1_000_003 + starts[task];
            order[task] = task;
        }
        Array.Sort(keys, order);
        return new Member(order, starts, makespan, sum, print);
    }

    /// <summary>A task list, the schedule it makes, and how good it is: makespan first, then how early tasks start in all.</summary>
    internal sealed record Member(int[] List, int[] Starts, int Makespan, long SumOfStarts, long Fingerprint) : IComparable<Member>
    {
        public int CompareTo(Member? other) => other is null ? -1 : (Makespan, SumOfStarts).CompareTo((other.Makespan, other.SumOfStarts));
    }
}
