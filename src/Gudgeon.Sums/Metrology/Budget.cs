using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Metrology;

/// <summary>Two lines of a budget that move together.</summary>
/// <param name="First">Index of one line.</param>
/// <param name="Second">Index of the other.</param>
/// <param name="Coefficient">Correlation, −1 to 1. The same gauge on a bore and on its piston has 1 for its own error, and the difference cancels it.</param>
public readonly record struct Correlation(int First, int Second, double Coefficient);

/// <summary>An uncertainty budget: a value, its lines, and what they come to. First order (GUM, clause 5).</summary>
public sealed class Budget
{
    private const double AllowedRounding = -1e-12;

    /// <summary>Builds a budget.</summary>
    /// <param name="value">The value of the result.</param>
    /// <param name="unit">Its unit, to show.</param>
    /// <param name="lines">The lines; at least one.</param>
    /// <param name="correlations">Pairs that move together; left out, all are independent.</param>
    public Budget(double value, string unit, IReadOnlyList<BudgetLine> lines, IReadOnlyList<Correlation>? correlations = null)
    {
        if (lines.Count == 0)
            throw new ArgumentException("A budget without a line has no uncertainty to state.", nameof(lines));
        (Value, Unit, Lines, Correlations) = (value, unit, lines, correlations ?? []);
        var variance = lines.Sum(line => line.Contribution * line.Contribution);
        var scale = variance;
        foreach (var (first, second, r) in Correlations)
        {
            if (first == second || first < 0 || second < 0 || first >= lines.Count || second >= lines.Count)
                throw new ArgumentException($"A correlation joins two different lines of the budget; it named {first} and {second}.", nameof(correlations));
            if (!(Math.Abs(r) <= 1))
                throw new ArgumentException(FormattableString.Invariant($"A correlation lies between -1 and 1; it was {r}."), nameof(correlations));
            variance += 2 * r * lines[first].Contribution * lines[second].Contribution;
        }
        if (variance < AllowedRounding * scale)
            throw new ArgumentException("These correlations cannot hold together: the variance falls below zero.", nameof(correlations));
        StandardUncertainty = Math.Sqrt(Math.Max(0, variance));
    }

    /// <summary>The value of the result.</summary>
    public double Value { get; }

    /// <summary>The unit of the result.</summary>
    public string Unit { get; }

    /// <summary>The lines.</summary>
    public IReadOnlyList<BudgetLine> Lines { get; }

    /// <summary>The pairs that move together.</summary>
    public IReadOnlyList<Correlation> Correlations { get; }

    /// <summary>Combined standard uncertainty: u_c² = Σ(cᵢuᵢ)² + 2Σ r cᵢuᵢ cⱼuⱼ.</summary>
    /// <remarks>Source: GUM 5.1.2 and 5.2.2.</remarks>
    public double StandardUncertainty { get; }

    /// <summary>Effective degrees of freedom by Welch and Satterthwaite: u_c⁴ / Σ((cᵢuᵢ)⁴/νᵢ).</summary>
    /// <remarks>Source: GUM G.4.1. It is derived for independent lines; with correlations it is a guide only.</remarks>
    public double EffectiveDegreesOfFreedom
    {
        get
        {
            var sum = Lines.Sum(line => Math.Pow(line.Contribution, 4) / line.DegreesOfFreedom);
            return sum == 0 ? double.PositiveInfinity : Math.Max(Math.Pow(StandardUncertainty, 4) / sum, 1);
        }
    }

    /// <summary>Expanded uncertainty U = k·u_c.</summary>
    /// <param name="coverageFactor">k; 2 unless stated.</param>
    /// <returns>U.</returns>
    public double Expanded(double coverageFactor = 2) => coverageFactor * StandardUncertainty;

    /// <summary>Expanded uncertainty for a coverage, with the effective degrees of freedom cut to a whole number.</summary>
    /// <param name="coverage">Share, such as 0.95.</param>
    /// <returns>U and the k it used.</returns>
    /// <remarks>Source: GUM G.4.1 note 1 and G.6.4.</remarks>
    public (double Expanded, double CoverageFactor) ExpandedFor(double coverage)
    {
        var k = Quantiles.CoverageFactor(coverage, Math.Floor(EffectiveDegreesOfFreedom));
        return (k * StandardUncertainty, k);
    }

    /// <summary>Share of the variance that a line brings when all are independent.</summary>
    /// <param name="index">Which line.</param>
    /// <returns>0 to 1.</returns>
    public double ShareOf(int index)
    {
        var total = Lines.Sum(line => line.Contribution * line.Contribution);
        return total == 0 ? 0 : Lines[index].Contribution * Lines[index].Contribution / total;
    }
}
