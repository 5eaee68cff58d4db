using System.Collections.Immutable;

namespace Gudgeon.Planning.Calendar;

/// <summary>A stretch of the owner's local time, from (within) until (without).</summary>
public readonly record struct Window(DateTime From, DateTime Until);

/// <summary>Hours of one weekday on which the owner can be at the bench.</summary>
public readonly record struct BenchHours(DayOfWeek Day, TimeOnly From, TimeOnly Until);

/// <summary>
/// When the owner can work, and when equipment and helpers are there. All times are the owner's local clock time;
/// what is not listed under <see cref="Present"/> is always there.
/// </summary>
public sealed record WorkCalendar(ImmutableArray<BenchHours> Hours)
{
    /// <summary>No bench work is looked for later than this after the start: about ten years.</summary>
    private const int MostDays = 3660;

    public ImmutableHashSet<DateOnly> DaysOff { get; init; } = [];

    /// <summary>Sessions beyond the weekly hours, for a single day.</summary>
    public ImmutableArray<Window> Extra { get; init; } = [];

    /// <summary>No bench session begins earlier; what is away may.</summary>
    public DateTime BenchClosedUntil { get; init; } = DateTime.MinValue;

    /// <summary>Equipment or person to the windows in which it is there.</summary>
    public ImmutableDictionary<string, ImmutableArray<Window>> Present { get; init; } = ImmutableDictionary<string, ImmutableArray<Window>>.Empty;

    /// <summary>Bench sessions in order of time, merged where they touch, none ending before <paramref name="start"/>.</summary>
    public IEnumerable<Window> Sessions(DateTime start)
    {
        Window? held = null;
        start = start < BenchClosedUntil ? BenchClosedUntil : start;
        var first = DateOnly.FromDateTime(start);
        for (var offset = -1; offset < MostDays; offset++)
        {
            var day = first.AddDays(offset);
            foreach (var session in OfDay(day).OrderBy(session => session.From))
            {
                var from = session.From < start ? start : session.From;
                if (session.Until <= from)
                    continue;
                if (held is { } before && from <= before.Until)
                {
                    held = before with { Until = session.Until > before.Until ? session.Until : before.Until };
                    continue;
                }
                if (held is { } done)
                    yield return done;
                held = new Window(from, session.Until);
            }
        }
        if (held is { } last)
            yield return last;
    }

    private IEnumerable<Window> OfDay(DateOnly day)
    {
        foreach (var extra in Extra)
        {
            if (DateOnly.FromDateTime(extra.From) == day)
                yield return extra;
        }
        if (DaysOff.Contains(day))
            yield break;
        foreach (var hours in Hours)
        {
            // Hours that end at midnight or after run into the next day.
            if (hours.Day == day.DayOfWeek)
                yield return new Window(day.ToDateTime(hours.From), day.ToDateTime(hours.Until).AddDays(hours.Until <= hours.From ? 1 : 0));
        }
    }
}
