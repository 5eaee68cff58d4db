using System.Collections.Immutable;

namespace Gudgeon.Planning.Calendar;

/// <summary>Something worth doing now: how many tasks it opens, and how much earlier everything ends than if nothing were done now.</summary>
public sealed record WaitOffer(PlanTask Task, int Opens, TimeSpan Saves, bool FitsWhole);

/// <summary>What can be done in the time at hand with what is there, best first.</summary>
public static class WhileYouWait
{
    /// <summary>
    /// Offers bench tasks that nothing holds up. A task that cannot be laid down is offered only if it fits in the time.
    /// Ranked by what it saves of the finish date, then by what it opens, then shorter first.
    /// </summary>
    public static ImmutableArray<WaitOffer> Rank(
        IReadOnlyList<PlanTask> tasks, WorkCalendar calendar, DateTime now, long seconds, IReadOnlySet<string> there)
    {
        var links = new TaskLinks(tasks);
        var until = now.AddSeconds(seconds);
        // Both futures leave the bench alone for the rest of the time at hand, so that only this task's own worth shows.
        var later = calendar with { BenchClosedUntil = until };
        var idle = DayPlanner.Plan(tasks, later, now, trials: 0);
        var offers = new List<WaitOffer>();
        for (var task = 0; task < tasks.Count; task++)
        {
            var plan = tasks[task];
            var fits = plan.Seconds <= seconds;
            if (plan.IsAway || links.Before[task].Length > 0 || plan.NotBefore > now || !plan.Wants.All(there.Contains) || !(fits || plan.MaySplit))
                continue;
            var rest = tasks.Select((other, k) => k == task ? other with { Seconds = Math.Max(0, other.Seconds - seconds) } : other).ToArray();
            var finish = DayPlanner.Plan(rest, later, now.AddSeconds(Math.Min(plan.Seconds, seconds)), keep: idle.Order, trials: 0);
            var opens = links.After[task].Count(next => links.Before[next].Length == 1);
            var saves = idle.Finish - finish.Finish;
            offers.Add(new WaitOffer(plan, fits ? opens : 0, saves > TimeSpan.Zero ? saves : TimeSpan.Zero, fits));
        }
        return [.. offers.OrderByDescending(offer => offer.Saves).ThenByDescending(offer => offer.Opens).ThenBy(offer => offer.Task.Seconds).ThenBy(offer => offer.Task.Id, StringComparer.Ordinal)];
    }
}
