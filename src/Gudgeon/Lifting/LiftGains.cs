using Gudgeon.Journal;
using Gudgeon.Planning.OnTheBench;
using Gudgeon.Sums.Lifting;

namespace Gudgeon.Lifting;

/// <summary>A part that gives height when it comes off, with the least work that takes it off as matters stand.</summary>
/// <param name="Part">Its id; null for what is no part of the engine.</param>
/// <param name="Way">Null where it cannot come off now.</param>
internal sealed record GainWay(HeightGain Gain, string? Part, ReachReport? Way)
{
    /// <summary>The parts that count first; finding a way is work, and further in nobody looks.</summary>
    private const int Most = 4;

    public static IReadOnlyList<GainWay> Of(Bench bench, HeadroomPoint point, DateTimeOffset now)
    {
        var ways = new BenchWays(bench, new Circumstances(now));
        return [.. point.Gains.Take(Most).Select(gain =>
        {
            var part = bench.LiftPlace!.Heights.Select(height => height.Part).FirstOrDefault(id => id != MassTold.WholeEngine && bench.NameOf(id) == gain.Item);
            return new GainWay(gain, part, part is not null && ReachTarget.Of(bench, part).TryGet(out var target) ? ReachReport.Of(ways, target) : null);
        })];
    }

    /// <summary>How much work that is, in words.</summary>
    public string Work => Way is null ? "not to be had as matters stand"
        : $"{Way.Steps.Length} {(Way.Steps.Length == 1 ? "step" : "steps")}, about {PlanWords.Minutes(Way.Seconds)}{(Way.IsGuess ? $" ({Way.LowMinutes:0} to {Way.HighMinutes:0} minutes, a guess)" : "")}{(Way.Persons > 1 ? $", {Way.Persons} persons" : "")}";
}
