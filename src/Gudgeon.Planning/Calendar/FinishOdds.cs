namespace Gudgeon.Planning.Calendar;

/// <summary>
/// The dates by which half and nine in ten of the drawn futures are finished.
/// </summary>
/// <param name="Half">Finish date at 50 %.</param>
/// <param name="NineInTen">Finish date at 90 %.</param>
/// <param name="Draws">How many futures were drawn.</param>
/// <param name="Failed">Draws in which something found no place in the calendar; they count as later than any date.</param>
public sealed record FinishOdds(DateTime? Half, DateTime? NineInTen, int Draws, int Failed)
{
    public const int UsualDraws = 1000;

    public const string Method =
        "Each future draws every uncertain time from its three points and follows the plan's order. " +
        "The order is fixed on purpose: to plan each future anew would use times that nobody knows on the day, and would show dates that are too early. " +
        "Following a fixed order needs no such knowledge, so the dates can be kept; planning again on the way is meant to better them.";

    /// <summary>
    /// Monte Carlo over a fixed order. The share for each task and draw comes from the seed, so the same plan gives the same dates.
    /// Quantile by nearest rank: the ceil(p N)-th finish of N in order.
    /// </summary>
    public static FinishOdds Of(DayPlan plan, IReadOnlyList<PlanTask> tasks, WorkCalendar calendar, ulong seed, int draws = UsualDraws)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 1);
        var links = new TaskLinks(tasks);
        var number = Enumerable.Range(0, tasks.Count).ToDictionary(task => tasks[task].Id);
        int[] order = [.. plan.Order.Select(id => number[id])];
        var random = new SplitMix(seed);
        var finishes = new List<DateTime>(draws);
        var shares = new double[tasks.Count];
        for (var draw = 0; draw < draws; draw++)
        {
            for (var task = 0; task < shares.Length; task++)
                shares[task] = random.NextShare();
            var finish = DayPlanner.Finish(links, order, calendar, plan.Begun,
                task => tasks[task].Estimate is { } estimate ? estimate.Quantile(shares[task]) : tasks[task].Seconds, out var isWhole);
            if (isWhole)
                finishes.Add(finish);
        }
        finishes.Sort();
        return new FinishOdds(At(0.5), At(0.9), draws, draws - finishes.Count);

        DateTime? At(double share)
        {
            var rank = (int)Math.Ceiling(share * draws);
            return rank <= finishes.Count ? finishes[rank - 1] : null;
        }
    }
}
