using System.Globalization;
using Gudgeon.Sums.Quantities;
using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Metrology;

/// <summary>What a reading is held against as it lands. All in the unit of the reading.</summary>
/// <param name="Expected">Nominal, or the mean of the neighbours.</param>
/// <param name="Reach">How far from it a reading may plausibly lie: worn parts included.</param>
/// <param name="Unit">Unit to show.</param>
/// <param name="InchThimble">True for an inch micrometer, whose thimble turns 0.025 in.</param>
public sealed record Plausible(double Expected, double Reach, string Unit, bool InchThimble = false);

/// <summary>Asks about readings that look like slips. Common practice, no source, save Grubbs' test.</summary>
public static class ReadingCheck
{
    private const double MillimetresPerInch = 25.4;

    /// <summary>Looks at one reading as it lands.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="plausible">What it is held against.</param>
    /// <returns>The likeliest suspicion, or null when the reading is plausible.</returns>
    public static Suspicion? Of(double reading, Plausible plausible)
    {
        if (Fits(reading, plausible))
            return null;
        foreach (var power in (ReadOnlySpan<double>)[10, 0.1, 100, 0.01, 1000, 0.001])
            if (Fits(reading * power, plausible))
                return Ask(SuspicionKind.DecimalSlip, "the decimal mark may have slipped", reading, reading * power, plausible);
        if (Fits(reading * MillimetresPerInch, plausible))
            return Ask(SuspicionKind.UnitSlip, "it may be in inches", reading, reading * MillimetresPerInch, plausible);
        if (Fits(reading / MillimetresPerInch, plausible))
            return Ask(SuspicionKind.UnitSlip, "it may be in millimetres", reading, reading / MillimetresPerInch, plausible);
        var (turn, frame) = plausible.InchThimble ? (0.025, 1.0) : (0.5, 25.0);
        if (Shifted(reading, plausible, turn, 2) is { } turned)
            return Ask(SuspicionKind.ThimbleTurn, "a turn of the thimble may have been misread", reading, turned, plausible);
        if (Digits(reading, plausible) is { } slip)
            return slip;
        if (Shifted(reading, plausible, frame, 2) is { } framed)
            return Ask(SuspicionKind.WrongFrame, "another frame or rod may have been used", reading, framed, plausible);
        return new(SuspicionKind.FarOff, $"{Show(reading)} {plausible.Unit} lies far from {Show(plausible.Expected)} {plausible.Unit}. Is it this place, and this part?");
    }

    /// <summary>Looks at a reading against its neighbours: the same part at other heights, the same place on sister parts.</summary>
    /// <param name="readings">The readings.</param>
    /// <param name="uncertainty">Expanded uncertainty of one reading: closer than that is no news.</param>
    /// <returns>One suspicion for each reading that stands more than five spreads off the rest; at least three others are needed.</returns>
    public static IReadOnlyList<Suspicion> Neighbours(ReadOnlySpan<double> readings, double uncertainty)
    {
        var found = new List<Suspicion>();
        if (readings.Length < 4)
            return found;
        var others = new double[readings.Length - 1];
        for (var i = 0; i < readings.Length; i++)
        {
            readings[..i].CopyTo(others);
            readings[(i + 1)..].CopyTo(others.AsSpan(i));
            Array.Sort(others);
            var middle = (others[(others.Length - 1) / 2] + others[others.Length / 2]) / 2;
            var allowed = Math.Max(5 * (others[^1] - others[0]), uncertainty);
            if (Math.Abs(readings[i] - middle) > allowed)
                found.Add(new(SuspicionKind.UnlikeNeighbours, $"{Show(readings[i])} is unlike its neighbours near {Show(middle)}. The right place, and typed right?", null, i));
        }
        return found;
    }

    /// <summary>Looks at repeats of one place by Grubbs' test.</summary>
    /// <param name="repeats">Six or more, not all alike; fewer give no answer, since the test has no power there.</param>
    /// <param name="risk">Chance to accuse a good reading.</param>
    /// <returns>The suspicion, or null.</returns>
    /// <remarks>Source: NIST/SEMATECH e-Handbook 1.3.5.17.1.</remarks>
    public static Suspicion? Repeats(ReadOnlySpan<double> repeats, double risk = 0.05)
    {
        if (repeats.Length < 6 || Samples.Range(repeats) == 0)
            return null;
        var grubbs = Outliers.Grubbs(repeats, risk);
        return grubbs.IsOutlier
            ? new(SuspicionKind.Outlier, $"{Show(repeats[grubbs.Index])} stands apart from its repeats (Grubbs {Show(Math.Round(grubbs.Statistic, 2))}, allowed {Show(Math.Round(grubbs.Critical, 2))}). Read it again?", null, grubbs.Index)
            : null;
    }

    /// <summary>Looks at repeats of one place that lie farther apart than their instrument explains: range above 3u.</summary>
    /// <param name="repeats">Two or more.</param>
    /// <param name="standardUncertainty">Standard uncertainty of one reading, above zero.</param>
    /// <returns>The suspicion about the last, or null.</returns>
    public static Suspicion? Apart(ReadOnlySpan<double> repeats, double standardUncertainty)
    {
        if (repeats.Length < 2 || !(standardUncertainty > 0))
            return null;
        var range = Samples.Range(repeats);
        return range > 3 * standardUncertainty * (1 + 1e-9)
            ? new(SuspicionKind.Apart, $"The {repeats.Length} readings of this place lie {Show(Clean(range))} apart, more than the instrument explains. Read it again?", null, repeats.Length - 1)
            : null;
    }

    /// <summary>Looks for readings alike at every place: copied, not measured.</summary>
    /// <param name="readings">Readings of different places; four or more.</param>
    /// <returns>The suspicion, or null.</returns>
    public static Suspicion? Copied(ReadOnlySpan<double> readings) =>
        readings.Length >= 4 && Samples.Range(readings) == 0
            ? new(SuspicionKind.Copied, $"All {readings.Length} places read {Show(readings[0])}. Was each one measured?")
            : null;

    /// <summary>Looks for one shift of all readings against an earlier day: a zero or a temperature.</summary>
    /// <param name="earlier">Readings then.</param>
    /// <param name="now">Readings of the same places now; three or more.</param>
    /// <param name="uncertainty">Expanded uncertainty of one reading.</param>
    /// <returns>The suspicion, or null.</returns>
    public static Suspicion? AllShifted(ReadOnlySpan<double> earlier, ReadOnlySpan<double> now, double uncertainty)
    {
        if (earlier.Length != now.Length || now.Length < 3)
            return null;
        var steps = new double[now.Length];
        for (var i = 0; i < now.Length; i++)
            steps[i] = now[i] - earlier[i];
        var mean = Samples.Mean(steps);
        return Math.Abs(mean) > uncertainty && Samples.Range(steps) < Math.Abs(mean) / 2
            ? new(SuspicionKind.AllShifted, $"Everything moved by {Show(Math.Round(mean, 6))} since then. Was the zero set, and is the part at the same temperature?")
            : null;
    }

    /// <summary>Looks at a hole smaller, or a shaft larger, than it was made: wear does not do that.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="unworn">Nominal of its grade on the side that wear leaves: smallest new hole, largest new shaft.</param>
    /// <param name="isHole">True for a hole.</param>
    /// <param name="uncertainty">Expanded uncertainty of the reading.</param>
    /// <returns>The suspicion, or null.</returns>
    public static Suspicion? AgainstWear(double reading, double unworn, bool isHole, double uncertainty) =>
        (isHole ? unworn - reading : reading - unworn) > uncertainty
            ? new(SuspicionKind.AgainstWear, $"{Show(reading)} is {(isHole ? "smaller" : "larger")} than when new ({Show(unworn)}). Another grade, dirt, or a wrong zero?")
            : null;

    /// <summary>Looks at an oil clearance that cannot be.</summary>
    /// <param name="clearance">The clearance, mm.</param>
    /// <returns>The suspicion, or null from 0 to 0.3 mm.</returns>
    public static Suspicion? OilClearance(double clearance) => clearance is < 0 or > 0.3
        ? new(SuspicionKind.Impossible, $"A clearance of {Show(Math.Round(clearance, 6))} mm: the wrong shell, or the wrong cap?")
        : null;

    // The last term lets a reading on the very edge fit, whatever the subtraction rounds to.
    private static bool Fits(double reading, Plausible plausible) =>
        Math.Abs(reading - plausible.Expected) <= plausible.Reach + 1e-12 * Math.Abs(plausible.Expected);

    private static double? Shifted(double reading, Plausible plausible, double step, int most)
    {
        for (var turns = 1; turns <= most; turns++)
            foreach (var side in (ReadOnlySpan<int>)[1, -1])
                if (Fits(reading + side * turns * step, plausible))
                    return reading + side * turns * step;
        return null;
    }

    // Tries each pair of neighbouring digits the other way round, then each digit as the expected value has it.
    private static Suspicion? Digits(double reading, Plausible plausible)
    {
        var text = Show(reading).ToCharArray();
        for (var i = 0; i + 1 < text.Length; i++)
        {
            var j = text[i + 1] == '.' ? i + 2 : i + 1;
            if (j >= text.Length || !char.IsAsciiDigit(text[i]) || !char.IsAsciiDigit(text[j]))
                continue;
            var swapped = (char[])text.Clone();
            (swapped[i], swapped[j]) = (swapped[j], swapped[i]);
            if (Read(swapped) is var value && Fits(value, plausible))
                return Ask(SuspicionKind.SwappedDigits, "two digits may have changed places", reading, value, plausible);
        }
        for (var i = 0; i < text.Length; i++)
            for (var digit = '0'; digit <= '9' && char.IsAsciiDigit(text[i]); digit++)
            {
                var other = (char[])text.Clone();
                other[i] = digit;
                if (Read(other) is var value && Fits(value, plausible))
                    return Ask(SuspicionKind.WrongDigit, "one digit may be wrong", reading, value, plausible);
            }
        return null;
    }

    private static double Read(char[] text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static Suspicion Ask(SuspicionKind kind, string what, double reading, double suggested, Plausible plausible) =>
        new(kind, $"{Show(reading)} {plausible.Unit}: {what}. Was it {Show(Clean(suggested))} {plausible.Unit}?", Clean(suggested));

    private static double Clean(double value) => Math.Round(value, 6);

    private static string Show(double value) => Math.Abs(value) < 1e12 ? ((decimal)value).ToString(CultureInfo.InvariantCulture) : Figures.Fixed(value, 0);
}
