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

/// <summary>A gauge study out of the book's own readings: the same spots read on several days, or by several persons.</summary>
/// <param name="Width">Width of the tolerance of what was read, or null without limits on both sides.</param>
public sealed record BookStudy(string Characteristic, StudyTable Table, double? Width);

/// <summary>How well the owner repeats with one instrument, from readings that are in the book anyway.</summary>
/// <param name="Pooled">Standard deviation of one reading over all repeated spots, with its degrees of freedom; null without repeats.</param>
/// <param name="ByRange">The same by the mean range of the pairs and triples.</param>
/// <param name="Days">The study with a day in place of a person; null without two days.</param>
/// <param name="Persons">The study by those who were named as having read; null without two persons.</param>
public sealed record Repeats(InstrumentKept Instrument, IReadOnlyList<RepeatedSpot> Spots, (double Deviation, double Freedom)? Pooled, double? ByRange, BookStudy? Days, BookStudy? Persons)
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
            StudyOf(bench, read, r => r.At.ToString("d MMM yyyy", CultureInfo.InvariantCulture)),
            StudyOf(bench, [.. read.Where(r => r.Taken.By is not null)], Named(read)));
    }

    /// <summary>Persons as their names were first spelled: <c>Anna</c> and <c>anna</c> are one.</summary>
    private static Func<Reading, string> Named(IEnumerable<Reading> read)
    {
        var spelled = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var name in read.Select(r => r.Taken.By).OfType<string>())
            spelled.TryAdd(name, name);
        return reading => spelled[reading.Taken.By!];
    }

    /// <summary>The two or three days or persons that read most spots of one characteristic twice or more; null without two of them and two spots.</summary>
    private static BookStudy? StudyOf(Bench bench, IReadOnlyList<Reading> read, Func<Reading, string> who)
    {
        BookStudy? best = null;
        foreach (var of in read.GroupBy(r => r.Taken.Characteristic))
        {
            var cells = of.GroupBy(r => (r.Taken.Slot, Who: who(r)))
                .Where(g => g.Count() > 1).ToDictionary(g => g.Key, g => g.Select(r => r.Taken.Value).ToArray());
            var all = cells.Keys.GroupBy(k => k.Who).OrderByDescending(g => g.Count()).Select(g => g.Key).Take(MostTrials).ToArray();
            for (var count = all.Length; count >= 2; count--)
            {
                var taken = all[..count];
                var slots = cells.Keys.Select(k => k.Slot).Distinct().Where(s => taken.All(w => cells.ContainsKey((s, w)))).Take(10).ToArray();
                if (slots.Length < 2 || best is { } held && held.Table.Parts.Count * held.Table.Operators.Count >= slots.Length * count)
                    continue;
                var trials = Math.Min(MostTrials, slots.Min(s => taken.Min(w => cells[(s, w)].Length)));
                var readings = new double[slots.Length, count, trials];
                for (var s = 0; s < slots.Length; s++)
                    for (var w = 0; w < count; w++)
                        for (var t = 0; t < trials; t++)
                            readings[s, w, t] = cells[(slots[s], taken[w])][t];
                best = new BookStudy(of.Key, new StudyTable([.. slots.Select(bench.NameOf)], taken, readings), WidthOf(bench, of.Key, slots[0].Part));
            }
        }

        return best;
    }

    private static double? WidthOf(Bench bench, string characteristic, string part) =>
        (bench.LimitOf(characteristic, part, LimitState.Service) ?? bench.LimitOf(characteristic, part, LimitState.New))?.Limit is { Low: { } low, High: { } high } && high > low ? high - low : null;
}
