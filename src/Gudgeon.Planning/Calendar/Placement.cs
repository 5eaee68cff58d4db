using System.Collections.Immutable;

namespace Gudgeon.Planning.Calendar;

/// <summary>Gives tasks their places one by one: each the earliest the owner's free sessions and what it wants allow.</summary>
internal sealed class Placement
{
    /// <summary>Shorter bits of a session than this are not begun for a part of a task: common practice, no source.</summary>
    private static readonly TimeSpan Crumb = TimeSpan.FromMinutes(15);

    private readonly WorkCalendar calendar;
    private readonly DateTime begun;
    private readonly IEnumerator<Window> sessions;
    private readonly List<Window> free = [];
    private readonly bool keepsFree;

    /// <param name="calendar">When the owner and things are there.</param>
    /// <param name="begun">Nothing is placed earlier.</param>
    /// <param name="keepsFree">Leave the owner's time free after each placing: a bound, as if each task were the only one.</param>
    public Placement(WorkCalendar calendar, DateTime begun, bool keepsFree = false)
    {
        this.calendar = calendar;
        this.begun = begun;
        this.keepsFree = keepsFree;
        sessions = calendar.Sessions(begun).GetEnumerator();
    }

    /// <summary>The pieces, or a reason when there is no place.</summary>
    public (ImmutableArray<Window> Pieces, string? Reason) Place(PlanTask task, DateTime ready, long seconds)
    {
        ready = ready < begun ? begun : ready;
        if (task.NotBefore is { } opens && opens > ready)
            ready = opens;
        if (task.IsAway || seconds == 0)
            return ([new Window(ready, ready.AddSeconds(seconds))], null);

        var left = TimeSpan.FromSeconds(seconds);
        var pieces = ImmutableArray.CreateBuilder<Window>();
        var closes = task.Wants.Where(calendar.Present.ContainsKey)
            .Select(thing => calendar.Present[thing].Select(window => window.Until).DefaultIfEmpty(DateTime.MinValue).Max())
            .DefaultIfEmpty(DateTime.MaxValue).Min();
        for (var k = FirstAfter(ready); Reach(k) && free[k].From < closes; k++)
        {
            var slice = new Window(free[k].From < ready ? ready : free[k].From, free[k].Until);
            foreach (var part in Within(slice, task.Wants))
            {
                var length = part.Until - part.From;
                if (length >= left)
                {
                    pieces.Add(part with { Until = part.From + left });
                    if (!keepsFree)
                        Use(pieces);
                    return (pieces.ToImmutable(), null);
                }
                if (!task.MaySplit || length < Crumb)
                    continue;
                pieces.Add(part);
                left -= length;
            }
        }
        return ([], Lacking(task, seconds));
    }

    private static string Lacking(PlanTask task, long seconds)
    {
        var minutes = (seconds + 59) / 60;
        var things = task.Wants.IsEmpty ? "" : $" with {string.Join(" and ", task.Wants)} there";
        return task.MaySplit
            ? $"needs {minutes} minutes at the bench{things}; the calendar has not that much after its turn"
            : $"needs {minutes} minutes at a stretch{things}; no session after its turn is that long";
    }

    private int FirstAfter(DateTime ready)
    {
        var k = 0;
        while (Reach(k) && free[k].Until <= ready)
            k++;
        return k;
    }

    private bool Reach(int k)
    {
        while (free.Count <= k)
        {
            if (!sessions.MoveNext())
                return false;
            free.Add(sessions.Current);
        }
        return true;
    }

    /// <summary>The parts of a slice in which everything wanted is there.</summary>
    private List<Window> Within(Window slice, ImmutableArray<string> wants)
    {
        var parts = new List<Window> { slice };
        foreach (var thing in wants)
        {
            if (!calendar.Present.TryGetValue(thing, out var windows))
                continue;
            parts = [.. from part in parts
                        from window in windows
                        let both = new Window(part.From > window.From ? part.From : window.From, part.Until < window.Until ? part.Until : window.Until)
                        where both.From < both.Until
                        orderby both.From
                        select both];
        }
        return parts;
    }

    private void Use(ImmutableArray<Window>.Builder pieces)
    {
        foreach (var piece in pieces)
        {
            var at = free.FindIndex(slice => slice.From <= piece.From && piece.Until <= slice.Until);
            var slice = free[at];
            free.RemoveAt(at);
            if (piece.Until < slice.Until)
                free.Insert(at, slice with { From = piece.Until });
            if (slice.From < piece.From)
                free.Insert(at, slice with { Until = piece.From });
        }
    }
}
