using Gudgeon.Engine;
using Gudgeon.Sums.Statistics;

namespace Gudgeon.Journal;

/// <summary>A reading that looks odd. It is asked about and kept as typed; nothing is thrown away.</summary>
/// <param name="Why">What is odd, as a sentence.</param>
public sealed record Doubt(Reading Reading, string Why);

/// <summary>Looks for slips of the hand: a turn of the thimble, a digit, a comma, inches among millimetres, a reading unlike its sisters.</summary>
/// <remarks>The signs are common practice, no source; the test of repeats is Grubbs'.</remarks>
public static class Doubts
{
    private const int FewestSisters = 3;
    private const double LooksLikeATurn = 0.03;

    /// <summary>Every reading that counts, was not said to stand, and looks odd.</summary>
    public static IReadOnlyList<Doubt> Of(Bench bench) =>
        [.. bench.Readings.Values.Where(r => r.Counts && r.Taken.Unit != Units.Look).GroupBy(r => (r.Taken.Characteristic, Row(r))).SelectMany(g => InSet(bench, [.. g]))];

    /// <summary>Inputs of a formula are different things: only like ones are sisters.</summary>
    private static string Row(Reading reading) =>
        Characteristics.Find(reading.Taken.Characteristic) is { Figure: FigureKind.Formula } ? reading.Taken.Spot : "";

    private static IEnumerable<Doubt> InSet(Bench bench, Reading[] set)
    {
        foreach (var reading in set.Where(r => !r.Stands))
        {
            var sisters = set.Where(r => r != reading).Select(r => r.Taken.Value).Order().ToArray();
            if (Unlike(bench, reading, sisters) is { } why)
                yield return new Doubt(reading, why);
        }

        foreach (var spot in set.GroupBy(r => r.Taken.Slot).Where(g => g.Count() > 3))
        {
            var repeats = spot.ToArray();
            var values = repeats.Select(r => r.Taken.Value).ToArray();
            if (Samples.Range(values) > 0 && Outliers.Grubbs(values) is { IsOutlier: true } far && !repeats[far.Index].Stands)
                yield return new Doubt(repeats[far.Index], $"It lies far from the {repeats.Length - 1} other readings of this spot (Grubbs' test, 5 % risk)");
        }
    }

    private static string? Unlike(Bench bench, Reading reading, double[] sisters)
    {
        if (sisters.Length < FewestSisters)
            return null;
        var usual = sisters[sisters.Length / 2];
        var value = reading.Taken.Value;
        var off = Math.Abs(value - usual);
        var unit = reading.Taken.Unit;
        if (usual != 0 && Near(value / usual, 25.4))
            return "It is 25.4 times its sisters: millimetres typed where inches were meant, or the other way";
        if (usual != 0 && Near(value / usual, 1 / 25.4))
            return "Its sisters are 25.4 times as much: was it read in inches?";
        if (usual != 0 && (Near(value / usual, 10) || Near(value / usual, 0.1) || Near(value / usual, 100) || Near(value / usual, 0.01)))
            return "It is ten or a hundred times off its sisters: is the decimal mark in its place?";
        if (unit == "mm" && Math.Abs(usual) > 5)
        {
            if (Math.Abs(off - 0.5) < LooksLikeATurn || Math.Abs(off - 1) < LooksLikeATurn)
                return $"It is {Units.Show(Math.Round(off, 3), "mm")} off its sisters: a turn of the thimble?";
            if (Math.Abs(off - 25) < 0.1)
                return "It is 25 mm off its sisters: the wrong frame of the micrometer?";
        }

        // The spread of the sisters, never taken finer than what the instrument can tell.
        var u = reading.Taken.Instrument is { } id && bench.Instruments.TryGetValue(id, out var instrument) ? instrument.Expanded : 0;
        var spread = Math.Max(sisters[^1] - sisters[0], u);
        return spread > 0 && Math.Max(sisters[0] - value, value - sisters[^1]) > 5 * spread
            ? $"It is unlike its {sisters.Length} sisters, which lie between {Units.Show(sisters[0], unit)} and {Units.Show(sisters[^1], unit)}: the wrong spot, or a slip in typing?"
            : null;
    }

    private static bool Near(double ratio, double wanted) => Math.Abs(ratio / wanted - 1) < 0.02;
}
