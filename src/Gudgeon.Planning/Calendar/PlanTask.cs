using System.Collections.Immutable;

namespace Gudgeon.Planning.Calendar;

/// <summary>
/// Three-point estimate in seconds: at best, most likely, at worst.
/// Mean (a + 4m + b) / 6 and variance ((b - a) / 6)^2 are the usual PERT figures.
/// </summary>
public readonly record struct ThreePoint(long BestSeconds, long LikelySeconds, long WorstSeconds)
{
    public double MeanSeconds => (BestSeconds + 4.0 * LikelySeconds + WorstSeconds) / 6;

    public double VarianceSecondsSquared => Math.Pow((WorstSeconds - BestSeconds) / 6.0, 2);

    public bool IsOrdered => 0 <= BestSeconds && BestSeconds <= LikelySeconds && LikelySeconds <= WorstSeconds;

    /// <summary>
    /// The value with share <paramref name="share"/> (0 to 1) of a triangular distribution below it:
    /// a + sqrt(u (b - a) (m - a)) up to the mode, b - sqrt((1 - u) (b - a) (b - m)) beyond.
    /// Triangular, because a bench owner can say three figures and nothing about a curve (common practice, no source).
    /// </summary>
    public long Quantile(double share)
    {
        double a = BestSeconds, m = LikelySeconds, b = WorstSeconds;
        if (b <= a)
            return LikelySeconds;
        var value = share * (b - a) <= m - a
            ? a + Math.Sqrt(share * (b - a) * (m - a))
            : b - Math.Sqrt((1 - share) * (b - a) * (b - m));
        return (long)Math.Round(value);
    }
}

/// <summary>One thing to do: at the bench in the owner's hours, or away (shop, post, curing) by the clock.</summary>
public sealed record PlanTask(string Id, string Title, long Seconds)
{
    /// <summary>Ids of tasks that must have ended.</summary>
    public ImmutableArray<string> After { get; init; } = [];

    /// <summary>Equipment and persons that must be there all the while.</summary>
    public ImmutableArray<string> Wants { get; init; } = [];

    /// <summary>Runs without the owner once begun: at a shop, in the post, glue setting.</summary>
    public bool IsAway { get; init; }

    /// <summary>May be laid down and taken up in a later session. A lift may not.</summary>
    public bool MaySplit { get; init; } = true;

    public DateTime? NotBefore { get; init; }

    /// <summary>How uncertain the time is; without it the time is taken as sure.</summary>
    public ThreePoint? Estimate { get; init; }
}

/// <summary>A task on days: one piece, or several when it was laid down in between.</summary>
public sealed record PlacedTask(PlanTask Task, ImmutableArray<Window> Pieces)
{
    public DateTime Start => Pieces[0].From;

    public DateTime Finish => Pieces[^1].Until;
}

/// <summary>A task that found no place, and why.</summary>
public sealed record UnplacedTask(PlanTask Task, string Reason);

/// <summary>
/// Everything on days. <see cref="FinishBound"/>: no order can finish earlier (each task alone on its path, and all
/// bench work in the owner's hours). <see cref="Order"/> is the order in which the tasks were given their places.
/// </summary>
public sealed record DayPlan(
    DateTime Begun,
    ImmutableArray<PlacedTask> Placed,
    ImmutableArray<UnplacedTask> Unplaced,
    ImmutableArray<string> Order,
    DateTime FinishBound)
{
    public DateTime Finish => Placed.IsEmpty ? Begun : Placed.Max(placed => placed.Finish);

    public bool IsProvenEarliest => Unplaced.IsEmpty && Finish <= FinishBound;
}
