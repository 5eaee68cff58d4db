using Gudgeon.Engine;
using Gudgeon.Sums.Metrology;

namespace Gudgeon.Journal;

/// <summary>A reading that looks odd. It is asked about and kept as typed; nothing is thrown away.</summary>
/// <param name="Why">What is odd, as a question.</param>
public sealed record Doubt(Reading Reading, string Why);

/// <summary>Holds every reading against its sisters: the same characteristic at the other spots, places and parts.</summary>
public static class Doubts
{
    private const int FewestSisters = 3;

    /// <summary>How many spreads of its sisters a reading may lie off them.</summary>
    private const double Spreads = 5;

    /// <summary>Every reading that counts, was not said to stand, and looks odd.</summary>
    public static IReadOnlyList<Doubt> Of(Bench bench) =>
        [.. bench.Readings.Values.Where(r => r.Counts && r.Taken.Unit != Units.Look).GroupBy(r => (r.Taken.Characteristic, Row(r))).SelectMany(g => InSet(bench, [.. g])).DistinctBy(d => d.Reading)];

    /// <summary>Inputs of a formula are different things: only like ones are sisters.</summary>
    private static string Row(Reading reading) =>
        Characteristics.Find(reading.Taken.Characteristic) is { Figure: FigureKind.Formula } ? reading.Taken.Spot : "";

    private static IEnumerable<Doubt> InSet(Bench bench, Reading[] set)
    {
        var values = set.Select(r => r.Taken.Value).ToArray();
        var sorted = values.Order().ToArray();
        foreach (var (reading, i) in set.Select((r, i) => (r, i)).Where(x => !x.r.Stands))
            if (Against(bench, reading, sorted) is { } plausible && ReadingCheck.Of(values[i], plausible) is { } odd)
                yield return new Doubt(reading, odd.Question);

        foreach (var spot in set.GroupBy(r => r.Taken.Slot).Select(g => g.ToArray()))
            if (ReadingCheck.Repeats(spot.Select(r => r.Taken.Value).ToArray()) is { Index: { } far } odd && !spot[far].Stands)
                yield return new Doubt(spot[far], odd.Question);

        foreach (var place in set.GroupBy(r => (r.Taken.Part, r.Taken.Place)).Select(g => g.ToArray()).Where(g => g.All(r => !r.Stands) && g.Select(r => r.Taken.Spot).Distinct().Count() == g.Length))
            if (place.Length >= FewestCopied && ReadingCheck.Copied(place.Select(r => r.Taken.Value).ToArray()) is { } copied)
                yield return new Doubt(place[^1], copied.Question);
    }

    private const int FewestCopied = 6;

    /// <summary>The middle of the sisters, and how far off it a reading may lie; the bore that the owner told before there are sisters.</summary>
    private static Plausible? Against(Bench bench, Reading reading, double[] sorted)
    {
        var unit = Units.Sign(reading.Taken.Unit);
        if (sorted.Length <= FewestSisters)
            return reading.Taken.Characteristic == "bore" && double.TryParse(bench.Answers.GetValueOrDefault("D"), out var bore) ? new Plausible(bore, bore / 30, unit) : null;
        // Without the reading itself, however often its value occurs.
        var at = Array.IndexOf(sorted, reading.Taken.Value);
        double[] sisters = [.. sorted[..at], .. sorted[(at + 1)..]];
        var u = reading.Taken.Instrument is { } id && bench.Instruments.TryGetValue(id, out var instrument) ? instrument.Expanded : 0;
        var reach = Spreads * Math.Max(sisters[^1] - sisters[0], u);
        return reach > 0 ? new Plausible(sisters[sisters.Length / 2], reach, unit, bench.Units == Sums.Quantities.BookUnits.Inch) : null;
    }
}
