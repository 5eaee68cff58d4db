using Gudgeon.Engine;
using Gudgeon.Sums.Metrology;

namespace Gudgeon.Journal;

/// <summary>A reading that looks odd. It is asked about and kept as typed; nothing is thrown away.</summary>
/// <param name="Why">What is odd, as a question.</param>
/// <param name="Suggested">What it would be if it is that slip; null where there is no telling.</param>
public sealed record Doubt(Reading Reading, string Why, double? Suggested = null)
{
    /// <summary>The suggestion with its unit, or empty.</summary>
    public string ShownSuggestion => Suggested is { } value ? Units.Show(value, Reading.Taken.Unit) : "";
}

/// <summary>Holds every reading against its sisters: the same characteristic at the other spots, places and parts.</summary>
public static class Doubts
{
    private const int FewestSisters = 3;

    /// <summary>How many spreads of its sisters a reading may lie off them.</summary>
    private const double Spreads = 5;

    /// <summary>A thirtieth of a known size is farther than wear goes, and nearer than a slip.</summary>
    private const double NearKnown = 30;

    private const double GrossFactor = 3;

    /// <summary>Below this, mm, a figure is a clearance or a step and may well be three times its sister.</summary>
    private const double SmallestSize = 5;

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
                yield return new Doubt(reading, odd.Question, odd.Suggested);

        foreach (var spot in set.GroupBy(r => r.Taken.Slot).Select(g => g.ToArray()))
            if (ReadingCheck.Repeats(spot.Select(r => r.Taken.Value).ToArray()) is { Index: { } far } odd && !spot[far].Stands)
                yield return new Doubt(spot[far], odd.Question);

        // Repeats that nobody has looked at again; a part that was machined between two days is another size, and one word settles it.
        foreach (var spot in set.GroupBy(r => r.Taken.Slot).Select(g => g.ToArray()).Where(g => g.Length > 1 && g.All(r => !r.Stands)))
            if (spot.LastOrDefault(r => r.Taken.Instrument is not null)?.Taken.Instrument is { } id && bench.Instruments.TryGetValue(id, out var instrument) && ReadingCheck.Apart(spot.Select(r => r.Taken.Value).ToArray(), instrument.StandardUncertainty) is { } apart)
                yield return new Doubt(spot[^1], apart.Question);

        foreach (var place in set.GroupBy(r => (r.Taken.Part, r.Taken.Place)).Select(g => g.ToArray()).Where(g => g.All(r => !r.Stands) && g.Select(r => r.Taken.Spot).Distinct().Count() == g.Length))
            if (place.Length >= FewestCopied && ReadingCheck.Copied(place.Select(r => r.Taken.Value).ToArray()) is { } copied)
                yield return new Doubt(place[^1], copied.Question);
    }

    private const int FewestCopied = 6;

    /// <summary>The middle of the sisters, and how far off it a reading may lie; what is known of the size before there are sisters.</summary>
    private static Plausible? Against(Bench bench, Reading reading, double[] sorted)
    {
        var (unit, isInch) = (Units.Sign(reading.Taken.Unit), bench.Units == Sums.Quantities.BookUnits.Inch);
        if (sorted.Length <= FewestSisters)
            return Known(bench, reading) is { } size ? new Plausible(size, Math.Abs(size) / NearKnown, unit, isInch) : null;
        // Without the reading itself, however often its value occurs.
        var at = Array.IndexOf(sorted, reading.Taken.Value);
        double[] sisters = WithoutGross([.. sorted[..at], .. sorted[(at + 1)..]]);
        var u = reading.Taken.Instrument is { } id && bench.Instruments.TryGetValue(id, out var instrument) ? instrument.Expanded : 0;
        var reach = Spreads * Math.Max(sisters[^1] - sisters[0], u);
        return reach > 0 ? new Plausible(sisters[sisters.Length / 2], reach, unit, isInch) : null;
    }

    /// <summary>A second slip must not hide behind the first: sizes three times the middle one, or a third of it, are no measure of spread.</summary>
    private static double[] WithoutGross(double[] sisters) => sisters[sisters.Length / 2] is var middle && Math.Abs(middle) >= SmallestSize
        ? [.. sisters.Where(s => s / middle is > 1 / GrossFactor and < GrossFactor)]
        : sisters;

    /// <summary>A size that is known before there are sisters: what the gauge was set to, the middle of a narrow limit, the bore as told.</summary>
    private static double? Known(Bench bench, Reading reading)
    {
        if (reading.Taken.Instrument is { } id && bench.ZeroOf(id)?.Setting.Size is { } zero)
            return zero;
        foreach (var state in (LimitState[])[LimitState.Service, LimitState.New])
            if (bench.LimitOf(reading.Taken.Characteristic, reading.Taken.Part, state)?.Limit is { Low: { } low, High: { } high } && (low + high) / 2 is var middle && (high - low) * NearKnown < Math.Abs(middle))
                return middle;
        return reading.Taken.Characteristic == "bore" && double.TryParse(bench.Answers.GetValueOrDefault("D"), System.Globalization.CultureInfo.InvariantCulture, out var bore) ? bore : null;
    }
}
