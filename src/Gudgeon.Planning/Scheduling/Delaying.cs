using System.Numerics;

namespace Gudgeon.Planning.Scheduling;

/// <summary>
/// Depth-first branch and bound over delaying alternatives: time goes from one end of a task to the next; all that can start is
/// started, and where the resources do not suffice, each least set that puts it right is tried as the one to be delayed.
/// A partial schedule is left when a kept one holds the same tasks and frees the resources no later. Bounds: tails, and energy left
/// against capacity left, redundant resources included. For up to 64 tasks that take time.
/// Method: Demeulemeester and Herroelen, Management Science 38 (1992) and 43 (1997), from memory.
/// </summary>
internal sealed class Delaying
{
    public const int MostTasks = 64;
    private const int MostKept = 24 * 1024 * 1024;
    private const int TimeBits = 24;

    private readonly Project project;
    private readonly int count;
    private readonly int[] original;
    private readonly int[] duration;
    private readonly int[] tail;
    private readonly ulong[] before;
    private readonly int[][] demand;
    private readonly int[] capacity;
    private readonly int named;
    private readonly int[] byTail;
    private readonly Dictionary<ulong, int> kept = [];
    private int[] store = new int[1 << 16];
    private int stored = 1;
    private readonly List<int[]> frames = [];
    private readonly int[] free;
    private readonly long[] energy;
    private bool isStopped;
    private long budget;
    private volatile int target;
    private readonly ulong all;

    /// <param name="project">The project with redundant resources after its own <paramref name="namedResources"/>.</param>
    /// <param name="bounds">Its tails and who waits for whom.</param>
    /// <param name="namedResources">How many resources are the project's own.</param>
    public Delaying(Project project, ProjectBounds bounds, int namedResources)
    {
        this.project = project;
        original = [.. Enumerable.Range(0, project.Tasks.Length).Where(task => project.Tasks[task].Duration > 0).OrderByDescending(task => bounds.Tails[task] + project.Tasks[task].Duration)];
        count = original.Length;
        duration = [.. original.Select(task => project.Tasks[task].Duration)];
        tail = [.. original.Select(task => bounds.Tails[task])];
        before = new ulong[count];
        for (var task = 0; task < count; task++)
        {
            for (var other = 0; other < count; other++)
            {
                if (bounds.Reaches[original[other]][original[task]])
                    before[task] |= 1UL << other;
            }
        }
        named = namedResources;
        capacity = [.. project.Capacities];
        demand = [.. original.Select(task => project.Tasks[task].Demands.ToArray())];
        byTail = [.. Enumerable.Range(0, count).OrderByDescending(task => tail[task])];
        free = new int[capacity.Length];
        energy = new long[capacity.Length];
        all = count == 0 ? 0 : ulong.MaxValue >> (64 - count);
    }

    /// <summary>Called with each schedule that is better than all before.</summary>
    public Action<int[]> Found { get; init; } = _ => { };

    /// <summary>Asked now and then: true ends the search.</summary>
    public Func<bool> IsOver { get; init; } = () => false;

    /// <summary>Partial schedules looked at: a measure of effort that does not hang on the machine.</summary>
    public long Steps { get; private set; }

    public static bool Takes(Project project) => project.Tasks.Count(task => task.Duration > 0) <= MostTasks && project.Horizon < 1 << TimeBits;

    /// <summary>A shorter schedule is known from elsewhere: only what is shorter still is of interest.</summary>
    public void Aim(int longest) => target = Math.Min(target, longest);

    /// <summary>True when everything was tried: no schedule of at most <paramref name="longest"/> is left beyond those told.</summary>
    public bool Run(int longest, long steps)
    {
        target = longest;
        budget = Steps + steps;
        isStopped = false;
        kept.Clear();
        stored = 1;
        Descend(0, 0, 0, 0, new int[count]);
        return !isStopped && Steps <= budget;
    }

    private int[] StartsOf(int[] finish)
    {
        var starts = new int[project.Tasks.Length];
        for (var task = 0; task < count; task++)
            starts[original[task]] = finish[task] - duration[task];
        foreach (var task in project.Order.Where(task => project.Tasks[task].Duration == 0))
            starts[task] = project.Predecessors[task].Select(first => starts[first] + project.Tasks[first].Duration).DefaultIfEmpty(0).Max();
        return starts;
    }

    private void Descend(int depth, ulong scheduled, ulong running, int now, int[] finish)
    {
        while (true)
        {
            isStopped |= (++Steps & 4095) == 0 && IsOver();
            if (isStopped || Steps > budget)
                return;
            if (scheduled == all)
            {
                var makespan = now;
                for (var left = running; left != 0; left &= left - 1)
                    makespan = Math.Max(makespan, finish[BitOperations.TrailingZeroCount(left)]);
                if (makespan <= target)
                {
                    Aim(makespan - 1);
                    Found(StartsOf(finish));
                }
                return;
            }
            if (!MayEnd(scheduled, running, now, finish))
                return;
            var done = scheduled & ~running;
            var eligible = 0UL;
            for (var left = all & ~scheduled; left != 0; left &= left - 1)
            {
                var task = BitOperations.TrailingZeroCount(left);
                if ((before[task] & ~done) == 0)
                    eligible |= 1UL << task;
            }
            if (eligible != 0 && IsDominated(scheduled, running, now, finish))
                return;
            var union = running | eligible;
            if (!Suffices(union))
            {
                var state = StateOf(running, now, finish);
                Branch(depth, done, running, eligible, now, finish);
                if (!isStopped && Steps <= budget)
                    Keep(scheduled, state);
                return;
            }
            for (var left = eligible; left != 0; left &= left - 1)
            {
                var task = BitOperations.TrailingZeroCount(left);
                finish[task] = now + duration[task];
            }
            scheduled |= eligible;
            (now, running) = Next(union, finish);
        }
    }

    private (int Now, ulong Running) Next(ulong running, int[] finish)
    {
        var now = int.MaxValue;
        for (var left = running; left != 0; left &= left - 1)
            now = Math.Min(now, finish[BitOperations.TrailingZeroCount(left)]);
        for (var left = running; left != 0; left &= left - 1)
        {
            var task = BitOperations.TrailingZeroCount(left);
            if (finish[task] <= now)
                running &= ~(1UL << task);
        }
        return (now, running);
    }

    private bool MayEnd(ulong scheduled, ulong running, int now, int[] finish)
    {
        Array.Clear(energy);
        foreach (var task in byTail)
        {
            int time;
            if ((scheduled >> task & 1) == 0)
                time = duration[task];
            else if ((running >> task & 1) != 0)
                time = finish[task] - now;
            else
                continue;
            var room = target - tail[task] - now;
            if (time > room)
                return false;
            var demands = demand[task];
            for (var resource = 0; resource < energy.Length; resource++)
            {
                energy[resource] += (long)time * demands[resource];
                if (energy[resource] > (long)capacity[resource] * room)
                    return false;
            }
        }
        return true;
    }

    private bool Suffices(ulong tasks)
    {
        for (var resource = 0; resource < named; resource++)
        {
            var used = 0;
            for (var left = tasks; left != 0; left &= left - 1)
                used += demand[BitOperations.TrailingZeroCount(left)][resource];
            if (used > capacity[resource])
                return false;
        }
        return true;
    }

    private void Branch(int depth, ulong done, ulong running, ulong eligible, int now, int[] finish)
    {
        if (frames.Count <= depth)
            frames.Add(new int[count]);
        for (var left = eligible; left != 0; left &= left - 1)
        {
            var task = BitOperations.TrailingZeroCount(left);
            finish[task] = now + duration[task];
        }
        for (var resource = 0; resource < named; resource++)
            free[resource] = capacity[resource];
        var list = new List<Alternative>();
        Keep(running | eligible, 0, 0, finish, list);
        list.Sort((a, b) => (a.Bound, a.Waits, a.Keep).CompareTo((b.Bound, b.Waits, b.Keep)));
        var frame = frames[depth];
        foreach (var alternative in list)
        {
            if (alternative.Bound > target)
                return;
            finish.CopyTo(frame, 0);
            var (next, still) = Next(alternative.Keep, frame);
            Descend(depth + 1, done | alternative.Keep, still, next, frame);
            if (isStopped || Steps > budget)
                return;
        }
    }

    /// <summary>All largest sets that fit, each once.</summary>
    private void Keep(ulong open, ulong keep, ulong passed, int[] finish, List<Alternative> list)
    {
        if (open == 0)
        {
            for (var left = passed; left != 0; left &= left - 1)
            {
                if (Fits(BitOperations.TrailingZeroCount(left)))
                    return;
            }
            list.Add(Judge(keep, passed, finish));
            return;
        }
        var task = BitOperations.TrailingZeroCount(open);
        open &= open - 1;
        if (Fits(task))
        {
            for (var resource = 0; resource < named; resource++)
                free[resource] -= demand[task][resource];
            Keep(open, keep | 1UL << task, passed, finish, list);
            for (var resource = 0; resource < named; resource++)
                free[resource] += demand[task][resource];
        }
        Keep(open, keep, passed | 1UL << task, finish, list);
    }

    private bool Fits(int task)
    {
        for (var resource = 0; resource < named; resource++)
        {
            if (demand[task][resource] > free[resource])
                return false;
        }
        return true;
    }

    private Alternative Judge(ulong keep, ulong delayed, int[] finish)
    {
        var next = int.MaxValue;
        for (var left = keep; left != 0; left &= left - 1)
            next = Math.Min(next, finish[BitOperations.TrailingZeroCount(left)]);
        var (bound, waits) = (0, 0);
        for (var left = delayed; left != 0; left &= left - 1)
        {
            var task = BitOperations.TrailingZeroCount(left);
            bound = Math.Max(bound, next + duration[task] + tail[task]);
            waits += duration[task] + tail[task];
        }
        return new Alternative(keep, bound, waits);
    }

    /// <summary>Whether a state that was tried to the end holds the same tasks and is as early in everything.</summary>
    private bool IsDominated(ulong scheduled, ulong running, int now, int[] finish)
    {
        for (var at = kept.GetValueOrDefault(scheduled); at != 0; at = store[at])
        {
            if (store[at + 1] > now)
                continue;
            var items = store[at + 2];
            var isAsEarly = true;
            for (var k = 0; k < items && isAsEarly; k++)
            {
                var (task, end) = (store[at + 3 + k] >> TimeBits, store[at + 3 + k] & ((1 << TimeBits) - 1));
                isAsEarly = end <= now || ((running >> task & 1) != 0 && end <= finish[task]);
            }
            if (isAsEarly)
                return true;
        }
        return false;
    }

    private static int[] StateOf(ulong running, int now, int[] finish)
    {
        var state = new int[2 + BitOperations.PopCount(running)];
        (state[0], state[1]) = (now, state.Length - 2);
        var slot = 2;
        for (var left = running; left != 0; left &= left - 1)
        {
            var task = BitOperations.TrailingZeroCount(left);
            state[slot++] = task << TimeBits | finish[task];
        }
        return state;
    }

    private void Keep(ulong scheduled, int[] state)
    {
        if (stored > MostKept)
            return;
        while (stored + 1 + state.Length > store.Length)
            Array.Resize(ref store, store.Length * 2);
        store[stored] = kept.GetValueOrDefault(scheduled);
        state.CopyTo(store, stored + 1);
        kept[scheduled] = stored;
        stored += 1 + state.Length;
    }

    /// <summary>What goes on, the bound by what then waits, and how much waits in all.</summary>
    private readonly record struct Alternative(ulong Keep, int Bound, int Waits);
}
