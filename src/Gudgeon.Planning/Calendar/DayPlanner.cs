using System.Collections.Immutable;

namespace Gudgeon.Planning.Calendar;

/// <summary>
/// Puts tasks on the owner's days so that the last ends early: longest road to the end first, then seeded trials of
/// other orders. Same input, same plan.
/// </summary>
public static class DayPlanner
{
    public const int UsualTrials = 200;

    /// <param name="tasks">Any order; every id in <c>After</c> must be among them.</param>
    /// <param name="calendar">When the owner and things are there.</param>
    /// <param name="begun">The first instant at which anything can begin.</param>
    /// <param name="keep">An earlier plan's order: kept unless another order ends earlier, so that a plan does not jump about.</param>
    /// <param name="trials">Orders tried beyond the first.</param>
    public static DayPlan Plan(IReadOnlyList<PlanTask> tasks, WorkCalendar calendar, DateTime begun, IReadOnlyList<string>? keep = null, int trials = UsualTrials)
    {
        var links = new TaskLinks(tasks);
        var bound = Bound(links, calendar, begun);
        var random = new SplitMix(1);
        var roads = links.RoadsToEnd();
        var best = Place(links, links.OrderBy(task => -roads[task]), calendar, begun, bound);
        if (keep is not null)
        {
            var place = keep.Select((id, k) => (id, k)).ToDictionary(pair => pair.id, pair => (double)pair.k);
            var kept = Place(links, links.OrderBy(task => place.GetValueOrDefault(tasks[task].Id, keep.Count)), calendar, begun, bound);
            best = IsBetter(best, kept) ? best : kept;
        }
        var longest = roads.DefaultIfEmpty(0).Max();
        for (var trial = 0; trial < trials && !best.IsProvenEarliest; trial++)
        {
            var other = Place(links, links.OrderBy(task => -roads[task] + 0.5 * longest * random.NextShare()), calendar, begun, bound);
            if (IsBetter(other, best))
                best = other;
        }
        return best;
    }

    /// <summary>The same order with other durations: what happens when the plan is followed and times turn out differently.</summary>
    internal static DateTime Finish(TaskLinks links, IReadOnlyList<int> order, WorkCalendar calendar, DateTime begun, Func<int, long> seconds, out bool isWhole)
    {
        var placement = new Placement(calendar, begun);
        var ends = new DateTime[links.Tasks.Count];
        isWhole = true;
        var finish = begun;
        foreach (var task in order)
        {
            var (pieces, reason) = placement.Place(links.Tasks[task], links.Ready(task, ends, begun), seconds(task));
            isWhole &= reason is null;
            ends[task] = pieces.IsEmpty ? begun : pieces[^1].Until;
            finish = ends[task] > finish ? ends[task] : finish;
        }
        return finish;
    }

    private static bool IsBetter(DayPlan one, DayPlan other) =>
        (one.Unplaced.Length, one.Finish).CompareTo((other.Unplaced.Length, other.Finish)) < 0;

    private static DayPlan Place(TaskLinks links, IReadOnlyList<int> order, WorkCalendar calendar, DateTime begun, DateTime bound)
    {
        var placement = new Placement(calendar, begun);
        var ends = new DateTime[links.Tasks.Count];
        var lost = new bool[links.Tasks.Count];
        var placed = ImmutableArray.CreateBuilder<PlacedTask>();
        var unplaced = ImmutableArray.CreateBuilder<UnplacedTask>();
        foreach (var task in order)
        {
            var plan = links.Tasks[task];
            var waits = links.Before[task].FirstOrDefault(before => lost[before], -1);
            var (pieces, reason) = waits >= 0
                ? ([], $"waits for {links.Tasks[waits].Title}")
                : placement.Place(plan, links.Ready(task, ends, begun), plan.Seconds);
            if (reason is null)
            {
                placed.Add(new PlacedTask(plan, pieces));
                ends[task] = pieces[^1].Until;
                continue;
            }
            lost[task] = true;
            unplaced.Add(new UnplacedTask(plan, reason));
        }
        return new DayPlan(begun, [.. placed.OrderBy(item => item.Start).ThenBy(item => item.Finish)], unplaced.ToImmutable(), [.. order.Select(task => links.Tasks[task].Id)], bound);
    }

    private static DateTime Bound(TaskLinks links, WorkCalendar calendar, DateTime begun)
    {
        var alone = new Placement(calendar, begun, keepsFree: true);
        var ends = new DateTime[links.Tasks.Count];
        var bound = begun;
        foreach (var task in links.OrderBy(_ => 0))
        {
            var (pieces, _) = alone.Place(links.Tasks[task], links.Ready(task, ends, begun), links.Tasks[task].Seconds);
            ends[task] = pieces.IsEmpty ? begun : pieces[^1].Until;
            bound = ends[task] > bound ? ends[task] : bound;
        }
        var work = links.Tasks.Where(task => !task.IsAway).Sum(task => task.Seconds);
        foreach (var session in calendar.Sessions(begun))
        {
            var length = (long)(session.Until - session.From).TotalSeconds;
            if (length >= work)
                return work > 0 && session.From.AddSeconds(work) is var together && together > bound ? together : bound;
            work -= length;
        }
        return bound;
    }
}
