using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Metrology;

/// <summary>What a Monte Carlo run found.</summary>
public sealed class MonteCarloResult
{
    private readonly double[] _results;
    private bool _sorted;

    internal MonteCarloResult(double[] results)
    {
        _results = results;
        Mean = Samples.Mean(results);
        // One result that is no number makes the mean none.
        if (!double.IsFinite(Mean))
            throw new ArgumentException("The sum gave no number for some draws: its inputs reach where it does not hold.", nameof(results));
        StandardUncertainty = Math.Sqrt(Samples.SumOfSquares(results, Mean) / (results.Length - 1));
    }

    /// <summary>Mean of the results.</summary>
    public double Mean { get; }

    /// <summary>Standard deviation of the results.</summary>
    public double StandardUncertainty { get; }

    /// <summary>Interval with alike shares left out on either side.</summary>
    /// <param name="coverage">Share inside, such as 0.95.</param>
    /// <returns>The ends.</returns>
    /// <remarks>Source: JCGM 101:2008, 7.7.2.</remarks>
    public (double Low, double High) Symmetric(double coverage)
    {
        var sorted = Sorted();
        var inside = Inside(coverage);
        var first = (sorted.Length - inside) / 2;
        return (sorted[first], sorted[first + inside]);
    }

    /// <summary>The shortest interval that holds the share.</summary>
    /// <param name="coverage">Share inside, such as 0.95.</param>
    /// <returns>The ends.</returns>
    /// <remarks>Source: JCGM 101:2008, 7.7.3.</remarks>
    public (double Low, double High) Shortest(double coverage)
    {
        var sorted = Sorted();
        var inside = Inside(coverage);
        var best = 0;
        for (var i = 1; i + inside < sorted.Length; i++)
            if (sorted[i + inside] - sorted[i] < sorted[best + inside] - sorted[best])
                best = i;
        return (sorted[best], sorted[best + inside]);
    }

    /// <summary>Share of the results that lie within limits.</summary>
    /// <param name="limits">The limits.</param>
    /// <returns>0 to 1.</returns>
    public double ShareWithin(Limits limits) => (double)_results.Count(result => limits.Margin(result) >= 0) / _results.Length;

    private int Inside(double coverage) => coverage is > 0 and < 1
        ? Math.Min((int)(coverage * _results.Length + 0.5), _results.Length - 1)
        : throw new ArgumentOutOfRangeException(nameof(coverage), coverage, "A coverage lies between 0 and 1.");

    private double[] Sorted()
    {
        if (!_sorted)
            Array.Sort(_results);
        _sorted = true;
        return _results;
    }
}

/// <summary>Whether first order is good enough, by holding it against a Monte Carlo run.</summary>
/// <param name="LowDifference">Distance between the lower ends.</param>
/// <param name="HighDifference">Distance between the upper ends.</param>
/// <param name="Tolerance">Half a step in the second figure of u.</param>
public sealed record Validation(double LowDifference, double HighDifference, double Tolerance)
{
    /// <summary>True when both ends agree within the tolerance.</summary>
    public bool FirstOrderServes => LowDifference <= Tolerance && HighDifference <= Tolerance;

    /// <summary>Compares y ± U of a budget with the symmetric interval of a run.</summary>
    /// <param name="budget">The budget.</param>
    /// <param name="run">The run of the same sum.</param>
    /// <param name="coverage">Share inside.</param>
    /// <param name="figures">Figures of u that count: 2, or 1 when that is enough.</param>
    /// <returns>The comparison.</returns>
    /// <remarks>Source: JCGM 101:2008, 7.9.2 and 8.1.</remarks>
    public static Validation Of(Budget budget, MonteCarloResult run, double coverage = 0.95, int figures = 2)
    {
        var expanded = budget.ExpandedFor(coverage).Expanded;
        var (low, high) = run.Symmetric(coverage);
        var exponent = (int)Math.Floor(Math.Log10(budget.StandardUncertainty)) - figures + 1;
        return new(Math.Abs(budget.Value - expanded - low), Math.Abs(budget.Value + expanded - high), 0.5 * Math.Pow(10, exponent));
    }
}
