using System.Globalization;
using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Statistics;

namespace Gudgeon.Journal;

/// <summary>A spot that was read more than once with one instrument.</summary>
public sealed record RepeatedSpot(Slot Slot, string Name, IReadOnlyList<double> Values)
{
    public double Deviation => Samples.StandardDeviation([.. Values]);

    public double Range => Samples.Range([.. Values]);
}

/// <summary>The same spots read on several days: a gauge study with a day in place of a person.</summary>
/// <param name="Width">Width of the tolerance of what was read, or null without limits on both sides.</param>
public sealed record DayStudy(string Characteristic, StudyTable Table, double? Width);

/// <summary>How well the owner repeats with one instrument, from readings that are in the book anyway.</summary>
/// <param name="Pooled">Standard deviation of one reading over all repeated spots, with its degrees of freedom; null without repeats.</param>
/// <param name="ByRange">The same by the mean range of the pairs and triples.</param>
public sealed record Repeats(InstrumentKept Instrument, IReadOnlyList<RepeatedSpot> Spots, (double Deviation, double Freedom)? Pooled, double? ByRange, DayStudy? Days)
{
    private const int MostTrials = 3;

    public static Repeats Of(Bench bench, InstrumentKept instrument)
    {
        var read = bench.Readings.Values.Where(r => r.Counts && r.Taken.Instrument == instrument.Instrument).ToArray();
        var spots = read.GroupBy(r => r.Taken.Slot).Where(g => g.Count() > 1)
            .Select(g => new RepeatedSpot(g.Key, bench.NameOf(g.Key), [.. g.Select(r => r.Taken.Value)])).ToArray();
        // Only groups of one size share a factor: the commonest size speaks.
        var alike = spots.Where(s => s.Values.Count <= 10).GroupBy(s => s.Values.Count).MaxBy(g => g.Count());
        return new Repeats(
            instrument,
            spots,
            spots.Length == 0 ? null : Samples.Pooled(spots.Select(s => (s.Values.Count, s.Deviation)).ToArray()),
            alike?.Average(s => Samples.StandardDeviationFromRange([.. s.Values])),
            StudyOf(bench, read));
    }

    /// <summary>The two or three days on which most spots of one characteristic were read twice or more; null without two days and two spots.</summary>
    private static DayStudy? StudyOf(Bench bench, IReadOnlyList<Reading> read)
    {
        DayStudy? best = null;
        foreach (var of in read.GroupBy(r => r.Taken.Characteristic))
        {
            var cells = of.GroupBy(r => (r.Taken.Slot, Day: r.At.ToString("d MMM yyyy", CultureInfo.InvariantCulture)))
                .Where(g => g.Count() > 1).ToDictionary(g => g.Key, g => g.Select(r => r.Taken.Value).ToArray());
            var days = cells.Keys.GroupBy(k => k.Day).OrderByDescending(g => g.Count()).Select(g => g.Key).Take(MostTrials).ToArray();
            for (var count = days.Length; count >= 2; count--)
            {
                var taken = days[..count];
                var slots = cells.Keys.Select(k => k.Slot).Distinct().Where(s => taken.All(d => cells.ContainsKey((s, d)))).Take(10).ToArray();
                if (slots.Length < 2 || best is { } held && held.Table.Parts.Count * held.Table.Operators.Count >= slots.Length * count)
                    continue;
                var trials = Math.Min(MostTrials, slots.Min(s => taken.Min(d => cells[(s, d)].Length)));
                var readings = new double[slots.Length, count, trials];
                for (var s = 0; s < slots.Length; s++)
                    for (var d = 0; d < count; d++)
                        for (var t = 0; t < trials; t++)
                            readings[s, d, t] = cells[(slots[s], taken[d])][t];
                best = new DayStudy(of.Key, new StudyTable([.. slots.Select(bench.NameOf)], taken, readings), WidthOf(bench, of.Key, slots[0].Part));
            }
        }

        return best;
    }

    private static double? WidthOf(Bench bench, string characteristic, string part) =>
        (bench.LimitOf(characteristic, part, LimitState.Service) ?? bench.LimitOf(characteristic, part, LimitState.New))?.Limit is { Low: { } low, High: { } high } && high > low ? high - low : null;
}
