namespace Gudgeon.Planning.Calendar;

/// <summary>Tasks by number, with what comes before what.</summary>
internal sealed class TaskLinks
{
    public TaskLinks(IReadOnlyList<PlanTask> tasks)
    {
        Tasks = tasks;
        var number = new Dictionary<string, int>();
        for (var task = 0; task < tasks.Count; task++)
        {
            if (!number.TryAdd(tasks[task].Id, task))
                throw new ArgumentException($"task {tasks[task].Id}: its id stands twice; every task has an id of its own");
            if (tasks[task].Seconds < 0)
                throw new ArgumentException($"task {tasks[task].Id}: {tasks[task].Seconds} seconds; a time is zero or more");
            if (tasks[task].Estimate is { IsOrdered: false } estimate)
                throw new ArgumentException($"task {tasks[task].Id}: estimate {estimate.BestSeconds}, {estimate.LikelySeconds}, {estimate.WorstSeconds}; best, likely, worst rise in that order");
        }
        Before = [.. tasks.Select(task => task.After.Select(id => number.TryGetValue(id, out var before)
            ? before
            : throw new ArgumentException($"task {task.Id}: comes after {id}, which is not among the tasks")).Distinct().ToArray())];
        After = [.. tasks.Select(_ => new List<int>())];
        for (var task = 0; task < tasks.Count; task++)
        {
            foreach (var before in Before[task])
                After[before].Add(task);
        }
        if (OrderBy(_ => 0).Count < tasks.Count)
            throw new ArgumentException("tasks: some wait for each other in a circle; take one \"after\" out");
    }

    public IReadOnlyList<PlanTask> Tasks { get; }

    public int[][] Before { get; }

    public List<int>[] After { get; }

    public DateTime Ready(int task, DateTime[] ends, DateTime begun)
    {
        var ready = begun;
        foreach (var before in Before[task])
            ready = ends[before] > ready ? ends[before] : ready;
        return ready;
    }

    /// <summary>An order that works, the lowest key first among what is free; ties by number.</summary>
    public List<int> OrderBy(Func<int, double> key)
    {
        var open = Before.Select(list => list.Length).ToArray();
        var queue = new PriorityQueue<int, (double, int)>();
        for (var task = 0; task < open.Length; task++)
        {
            if (open[task] == 0)
                queue.Enqueue(task, (key(task), task));
        }
        var order = new List<int>();
        while (queue.TryDequeue(out var task, out _))
        {
            order.Add(task);
            foreach (var next in After[task])
            {
                if (--open[next] == 0)
                    queue.Enqueue(next, (key(next), next));
            }
        }
        return order;
    }

    /// <summary>Seconds of the longest road from each task's start to the end of everything.</summary>
    public long[] RoadsToEnd()
    {
        var roads = new long[Tasks.Count];
        foreach (var task in Enumerable.Reverse(OrderBy(_ => 0)))
            roads[task] = Tasks[task].Seconds + After[task].Select(next => roads[next]).DefaultIfEmpty(0).Max();
        return roads;
    }
}
