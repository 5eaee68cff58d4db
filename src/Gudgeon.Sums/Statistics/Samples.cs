using System.Numerics;

namespace Gudgeon.Sums.Statistics;

/// <summary>Mean, spread and drift of repeated readings. No allocation; two passes, because one pass loses the digits that matter here.</summary>
public static class Samples
{
    // Expected range of n normal readings in units of their standard deviation, n = 2 to 10.
    private static ReadOnlySpan<double> RangeFactors => [1.128, 1.693, 2.059, 2.326, 2.534, 2.704, 2.847, 2.970, 3.078];

    /// <summary>The mean: sum / n, corrected by the mean of what is left over.</summary>
    /// <param name="readings">At least one reading, any unit.</param>
    /// <returns>The mean, in the unit of the readings.</returns>
    /// <remarks>Source: GUM 4.2.1. Accuracy: the last digit of a double, for readings with any constant part.</remarks>
    public static double Mean(ReadOnlySpan<double> readings)
    {
        AtLeast(1, readings.Length);
        var mean = SumsLess(readings, 0).Sum / readings.Length;
        return mean + SumsLess(readings, mean).Sum / readings.Length;
    }

    /// <summary>Sum of squared deviations from the mean, corrected for the rounding of the mean.</summary>
    /// <param name="readings">At least one reading.</param>
    /// <returns>The sum, in the unit squared.</returns>
    public static double SumOfSquares(ReadOnlySpan<double> readings) => SumOfSquares(readings, Mean(readings));

    internal static double SumOfSquares(ReadOnlySpan<double> readings, double mean)
    {
        var (left, squares) = SumsLess(readings, mean);
        return squares - left * left / readings.Length;
    }

    // Sum and sum of squares of what lies above a level, a vector of lanes at a time: a million Monte Carlo results pass here.
    private static (double Sum, double Squares) SumsLess(ReadOnlySpan<double> readings, double level)
    {
        var levels = new Vector<double>(level);
        Vector<double> sums = default, squares = default;
        var at = 0;
        for (; at <= readings.Length - Vector<double>.Count; at += Vector<double>.Count)
        {
            var above = new Vector<double>(readings[at..]) - levels;
            sums += above;
            squares += above * above;
        }
        double sum = Vector.Sum(sums), square = Vector.Sum(squares);
        foreach (var x in readings[at..])
        {
            sum += x - level;
            square += (x - level) * (x - level);
        }
        return (sum, square);
    }

    /// <summary>Experimental standard deviation: s = √(Σ(x − mean)² / (n − 1)).</summary>
    /// <param name="readings">At least two readings, any unit.</param>
    /// <returns>s, in the unit of the readings.</returns>
    /// <remarks>Source: GUM 4.2.2.</remarks>
    public static double StandardDeviation(ReadOnlySpan<double> readings)
    {
        AtLeast(2, readings.Length);
        return Math.Sqrt(SumOfSquares(readings) / (readings.Length - 1));
    }

    /// <summary>Standard uncertainty of the mean: s / √n.</summary>
    /// <param name="readings">At least two readings, any unit.</param>
    /// <returns>The uncertainty, in the unit of the readings.</returns>
    /// <remarks>Source: GUM 4.2.3.</remarks>
    public static double StandardUncertaintyOfMean(ReadOnlySpan<double> readings) =>
        StandardDeviation(readings) / Math.Sqrt(readings.Length);

    /// <summary>Lag-1 autocorrelation: Σ(xᵢ − m)(xᵢ₊₁ − m) / Σ(xᵢ − m)². Near 1 when readings drift.</summary>
    /// <param name="readings">At least two readings that are not all alike, in the order taken.</param>
    /// <returns>A number between −1 and 1.</returns>
    /// <remarks>Source: NIST/SEMATECH e-Handbook 1.3.5.12.</remarks>
    public static double LagOneAutocorrelation(ReadOnlySpan<double> readings)
    {
        AtLeast(2, readings.Length);
        var mean = Mean(readings);
        double together = 0, squares = 0;
        for (var i = 0; i < readings.Length; i++)
        {
            squares += (readings[i] - mean) * (readings[i] - mean);
            if (i > 0)
                together += (readings[i - 1] - mean) * (readings[i] - mean);
        }
        return squares > 0 ? together / squares : throw new ArgumentException("All readings are alike; they have no autocorrelation.", nameof(readings));
    }

    /// <summary>Largest less smallest.</summary>
    /// <param name="readings">At least one reading.</param>
    /// <returns>The range, in the unit of the readings.</returns>
    public static double Range(ReadOnlySpan<double> readings)
    {
        AtLeast(1, readings.Length);
        double low = readings[0], high = readings[0];
        foreach (var x in readings)
        {
            low = Math.Min(low, x);
            high = Math.Max(high, x);
        }
        return high - low;
    }

    /// <summary>Standard deviation from the range of a few readings: range / d₂.</summary>
    /// <param name="readings">2 to 10 readings.</param>
    /// <returns>An estimate of s, in the unit of the readings.</returns>
    /// <remarks>Source: d₂ of ASTM E2587; from memory, recomputed by integrating the range distribution.</remarks>
    public static double StandardDeviationFromRange(ReadOnlySpan<double> readings) =>
        readings.Length is >= 2 and <= 10
            ? Range(readings) / RangeFactors[readings.Length - 2]
            : throw new ArgumentException($"The range serves for 2 to 10 readings, not for {readings.Length}.", nameof(readings));

    /// <summary>Pooled standard deviation: √(Σ(nᵢ − 1)sᵢ² / Σ(nᵢ − 1)), from several short runs of one operator and instrument.</summary>
    /// <param name="groups">Each group: how many readings (two or more) and their standard deviation.</param>
    /// <returns>The pooled s and its degrees of freedom.</returns>
    /// <remarks>Source: GUM 4.2.4 and H.3.6.</remarks>
    public static (double Deviation, double DegreesOfFreedom) Pooled(ReadOnlySpan<(int Count, double Deviation)> groups)
    {
        double squares = 0, freedom = 0;
        foreach (var (count, deviation) in groups)
        {
            AtLeast(2, count);
            squares += (count - 1) * deviation * deviation;
            freedom += count - 1;
        }
        return freedom > 0 ? (Math.Sqrt(squares / freedom), freedom) : throw new ArgumentException("No group to pool.", nameof(groups));
    }

    private static void AtLeast(int needed, int count)
    {
        if (count < needed)
            throw new ArgumentException($"At least {needed} reading(s) are needed; there are {count}.");
    }
}
