namespace Gudgeon.Sums.Statistics;

/// <summary>What Grubbs' test says of the reading that lies farthest out.</summary>
/// <param name="Index">Which reading it is.</param>
/// <param name="Statistic">G = |x − mean| / s.</param>
/// <param name="Critical">The value that G would exceed by chance with the chosen risk.</param>
public sealed record GrubbsResult(int Index, double Statistic, double Critical)
{
    /// <summary>True when the reading is unlike its fellows.</summary>
    public bool IsOutlier => Statistic > Critical;
}

/// <summary>Tests for readings unlike their fellows. They ask; they throw nothing away.</summary>
public static class Outliers
{
    /// <summary>Grubbs' test for one outlier on either side.</summary>
    /// <param name="readings">Three or more readings that are not all alike. With three the test is all but powerless: G cannot exceed 1.1547.</param>
    /// <param name="risk">Chance to accuse a good reading, 0 to 0.5.</param>
    /// <returns>The farthest reading, G and its critical value.</returns>
    /// <remarks>
    /// G_crit = (n − 1)/√n · √(t²/(n − 2 + t²)), t the upper risk/(2n) point with n − 2 degrees of freedom.
    /// Source: NIST/SEMATECH e-Handbook 1.3.5.17.1; ISO 5725-2 Table 5.
    /// </remarks>
    public static GrubbsResult Grubbs(ReadOnlySpan<double> readings, double risk = 0.05)
    {
        var critical = GrubbsCritical(readings.Length, risk / 2);
        var (index, statistic) = Farthest(readings);
        return new(index, statistic, critical);
    }

    /// <summary>Critical value of Grubbs' statistic for one side.</summary>
    /// <param name="count">Three or more.</param>
    /// <param name="risk">Chance for that one side; half of it for a test on both.</param>
    /// <returns>The critical value.</returns>
    public static double GrubbsCritical(int count, double risk)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 3);
        if (risk is not (> 0 and <= 0.5))
            throw new ArgumentOutOfRangeException(nameof(risk), risk, "The risk must be above 0 and at most 0.5.");
        var t = Quantiles.StudentPoint(1 - risk / count, count - 2);
        return (count - 1) / Math.Sqrt(count) * Math.Sqrt(t * t / (count - 2 + t * t));
    }

    /// <summary>Rosner's test for up to several outliers, which two extremes cannot hide from by keeping each other company.</summary>
    /// <param name="readings">Many readings; about 25 or more for the stated risk to hold.</param>
    /// <param name="most">The most outliers to look for.</param>
    /// <param name="risk">Chance to accuse a good reading.</param>
    /// <returns>Each step: the reading taken out, R and λ. The outliers are the steps up to the last with R above λ.</returns>
    /// <remarks>Source: NIST/SEMATECH e-Handbook 1.3.5.17.3; Rosner, Technometrics 25 (1983).</remarks>
    public static IReadOnlyList<GrubbsResult> Rosner(ReadOnlySpan<double> readings, int most, double risk = 0.05)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(readings.Length, most + 3, nameof(readings));
        var left = new List<(double Value, int Index)>();
        for (var i = 0; i < readings.Length; i++)
            left.Add((readings[i], i));
        var steps = new List<GrubbsResult>();
        for (var i = 0; i < most; i++)
        {
            var values = left.ConvertAll(pair => pair.Value).ToArray();
            if (Samples.Range(values) == 0)
                break;
            var (at, statistic) = Farthest(values);
            steps.Add(new(left[at].Index, statistic, GrubbsCritical(left.Count, risk / 2)));
            left.RemoveAt(at);
        }
        return steps;
    }

    /// <summary>How many outliers Rosner's steps hold.</summary>
    /// <param name="steps">The steps.</param>
    /// <returns>The number.</returns>
    public static int CountOf(IReadOnlyList<GrubbsResult> steps)
    {
        for (var i = steps.Count; i > 0; i--)
            if (steps[i - 1].IsOutlier)
                return i;
        return 0;
    }

    private static (int Index, double Statistic) Farthest(ReadOnlySpan<double> readings)
    {
        var mean = Samples.Mean(readings);
        var s = Samples.StandardDeviation(readings);
        if (s == 0)
            throw new ArgumentException("All readings are alike; none is farthest.", nameof(readings));
        var index = 0;
        for (var i = 1; i < readings.Length; i++)
            if (Math.Abs(readings[i] - mean) > Math.Abs(readings[index] - mean))
                index = i;
        return (index, Math.Abs(readings[index] - mean) / s);
    }
}
