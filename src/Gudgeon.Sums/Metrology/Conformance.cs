using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Metrology;

/// <summary>Probabilities that a thing conforms, and the risks of judging it.</summary>
public static class Conformance
{
    /// <summary>Probability that the true value lies inside the limits: Φ((U − y)/u) − Φ((L − y)/u).</summary>
    /// <param name="value">The value y.</param>
    /// <param name="standardUncertainty">u, not below zero.</param>
    /// <param name="limits">The limits.</param>
    /// <returns>0 to 1.</returns>
    /// <remarks>Source: JCGM 106:2012, 7.2 to 7.4. Normal distribution, no knowledge beforehand.</remarks>
    public static double Probability(double value, double standardUncertainty, Limits limits)
    {
        if (standardUncertainty == 0)
            return limits.Margin(value) >= 0 ? 1 : 0;
        var above = limits.Upper is { } upper ? Quantiles.NormalShareBelow((value - upper) / standardUncertainty) : 0;
        var below = limits.Lower is { } lower ? Quantiles.NormalShareBelow((lower - value) / standardUncertainty) : 0;
        return Math.Max(0, 1 - above - below);
    }

    /// <summary>Chances that a part taken from a process is passed wrongly or failed wrongly, when it is judged by a plain acceptance band.</summary>
    /// <param name="processMean">Mean of the process.</param>
    /// <param name="processDeviation">Its standard deviation, above zero.</param>
    /// <param name="uncertainty">Standard uncertainty of the measurement, above zero.</param>
    /// <param name="limits">The limits of the part.</param>
    /// <param name="acceptance">The band in which a reading is passed.</param>
    /// <returns>Chance of a bad part passed, of a good part failed, and the share of bad among the passed.</returns>
    /// <remarks>Source: JCGM 106:2012, 9.5. Integrated by Simpson's rule over ±9 deviations; accurate to 1e-9.</remarks>
    public static (double FalsePass, double FalseFail, double BadAmongPassed) Risks(
        double processMean, double processDeviation, double uncertainty, Limits limits, Limits acceptance)
    {
        if (!(processDeviation > 0) || !(uncertainty > 0))
            throw new ArgumentOutOfRangeException(nameof(processDeviation), "Process deviation and uncertainty must be above zero.");
        double Density(double x) => Math.Exp(-0.5 * Square((x - processMean) / processDeviation)) / (processDeviation * Math.Sqrt(2 * Math.PI));
        double Passed(double x) => Density(x) * Probability(x, uncertainty, acceptance);
        double Failed(double x) => Density(x) - Passed(x);
        double from = processMean - 9 * processDeviation, to = processMean + 9 * processDeviation;
        double lower = Math.Clamp(limits.Lower ?? from, from, to), upper = Math.Clamp(limits.Upper ?? to, from, to);
        var falsePass = Integral(Passed, from, lower) + Integral(Passed, upper, to);
        var falseFail = Integral(Failed, lower, upper);
        return (falsePass, falseFail, falsePass / Integral(Passed, from, to));
    }

    private static double Integral(Func<double, double> f, double from, double to)
    {
        const int Steps = 2000;
        var h = (to - from) / Steps;
        var sum = f(from) + f(to);
        for (var i = 1; i < Steps; i++)
            sum += (i % 2 == 0 ? 2 : 4) * f(from + i * h);
        return sum * h / 3;
    }

    private static double Square(double x) => x * x;
}
