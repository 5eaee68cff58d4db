using System.Collections.Immutable;

namespace Gudgeon.Planning.Calendar;

/// <summary>Earliest and latest times of one task, in seconds from the start, with its total and free slack.</summary>
public sealed record TaskTimes(string Id, long EarliestStart, long EarliestFinish, long LatestStart, long LatestFinish, long FreeSlack)
{
    public long TotalSlack => LatestStart - EarliestStart;

    public bool IsCritical => TotalSlack == 0;
}

/// <summary>
/// The critical path method, without calendar or resources.
/// Forward: ES = max EF of those before. Backward: LF = min LS of those after. Total slack = LS - ES;
/// free slack = min ES of those after - EF.
/// </summary>
public static class CriticalPath
{
    public static ImmutableArray<TaskTimes> Of(IReadOnlyList<PlanTask> tasks)
    {
        var links = new TaskLinks(tasks);
        var order = links.OrderBy(_ => 0);
        var starts = new long[tasks.Count];
        foreach (var task in order)
            starts[task] = links.Before[task].Select(before => starts[before] + tasks[before].Seconds).DefaultIfEmpty(0).Max();
        var end = order.Select(task => starts[task] + tasks[task].Seconds).DefaultIfEmpty(0).Max();
        var latest = new long[tasks.Count];
        foreach (var task in Enumerable.Reverse(order))
            latest[task] = links.After[task].Select(next => latest[next]).DefaultIfEmpty(end).Min() - tasks[task].Seconds;
        return [.. Enumerable.Range(0, tasks.Count).Select(task => new TaskTimes(
            tasks[task].Id,
            starts[task],
            starts[task] + tasks[task].Seconds,
            latest[task],
            latest[task] + tasks[task].Seconds,
            links.After[task].Select(next => starts[next]).DefaultIfEmpty(end).Min() - starts[task] - tasks[task].Seconds))];
    }
}
