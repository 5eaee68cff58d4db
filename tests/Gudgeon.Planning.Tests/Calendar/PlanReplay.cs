using Gudgeon.Planning.Calendar;

namespace Gudgeon.Planning.Tests.Calendar;

/// <summary>Checks a day plan minute by minute against the rules, the plain way.</summary>
internal static class PlanReplay
{
    public static string? FirstFault(DayPlan plan, IReadOnlyList<PlanTask> tasks, WorkCalendar calendar)
    {
        var busy = new HashSet<DateTime>();
        var at = plan.Placed.ToDictionary(placed => placed.Task.Id);
        foreach (var placed in plan.Placed)
        {
            foreach (var before in placed.Task.After)
            {
                if (!at.TryGetValue(before, out var earlier) || earlier.Finish > placed.Start)
                    return $"{placed.Task.Id} starts before {before} ends";
            }
            if (placed.Start < plan.Begun || placed.Start < placed.Task.NotBefore)
                return $"{placed.Task.Id} starts too early";
            if (placed.Pieces.Sum(piece => (piece.Until - piece.From).TotalSeconds) != placed.Task.Seconds)
                return $"{placed.Task.Id} takes another time";
            if (placed.Task.IsAway)
                continue;
            if (!placed.Task.MaySplit && placed.Pieces.Length > 1)
                return $"{placed.Task.Id} is split";
            foreach (var piece in placed.Pieces)
            {
                for (var minute = piece.From; minute < piece.Until; minute = minute.AddMinutes(1))
                {
                    if (!busy.Add(minute))
                        return $"{placed.Task.Id} at {minute}: the owner is busy";
                    if (!IsOwnersTime(calendar, minute))
                        return $"{placed.Task.Id} at {minute}: not in the owner's hours";
                    if (placed.Task.Wants.Any(thing => calendar.Present.TryGetValue(thing, out var windows) && !windows.Any(window => window.From <= minute && minute < window.Until)))
                        return $"{placed.Task.Id} at {minute}: something wanted is not there";
                }
            }
        }
        return tasks.Count == plan.Placed.Length + plan.Unplaced.Length ? null : "a task is lost";
    }

    private static bool IsOwnersTime(WorkCalendar calendar, DateTime minute)
    {
        var time = TimeOnly.FromDateTime(minute);
        return calendar.Extra.Any(extra => extra.From <= minute && minute < extra.Until)
            || (!calendar.DaysOff.Contains(DateOnly.FromDateTime(minute))
                && calendar.Hours.Any(hours => hours.Day == minute.DayOfWeek && hours.From <= time && time < hours.Until));
    }
}
