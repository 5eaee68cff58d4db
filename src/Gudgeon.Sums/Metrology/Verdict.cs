using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Metrology;

/// <summary>The three words of a verdict.</summary>
public enum VerdictWord
{
    /// <summary>Proven inside the limits.</summary>
    Within,

    /// <summary>Proven outside a limit.</summary>
    Outside,

    /// <summary>Neither is proven with this uncertainty.</summary>
    TooCloseToCall,
}

/// <summary>A verdict on one value against its limits.</summary>
/// <param name="Word">The word.</param>
/// <param name="Value">The value.</param>
/// <param name="StandardUncertainty">Its standard uncertainty.</param>
/// <param name="Limits">The limits.</param>
/// <param name="Guard">Guard kept inside each limit; infinite when the band is too narrow for this uncertainty.</param>
/// <param name="ProbabilityWithin">Probability that the true value lies inside, normal distribution.</param>
/// <param name="Rule">Name of the decision rule.</param>
public sealed record Verdict(
    VerdictWord Word, double Value, double StandardUncertainty, Limits Limits, double Guard, double ProbabilityWithin, string Rule)
{
    // A trillionth of the value: far below any reading, far above the rounding of a sum or two.
    private const double Rounding = 1e-12;

    /// <summary>False when no value at all could be proven within: the uncertainty is too large for the band.</summary>
    public bool CanProveWithin => double.IsFinite(Guard);

    /// <summary>Distance to the nearest limit, above zero inside.</summary>
    public double Margin => Limits.Margin(Value);

    /// <summary>Judges a value.</summary>
    /// <param name="value">The value, in the unit of the limits; finite.</param>
    /// <param name="standardUncertainty">Its standard uncertainty, not below zero.</param>
    /// <param name="limits">The limits; a value exactly on the edge of the guard is proven.</param>
    /// <param name="rule">The rule, or null for the guard of U.</param>
    /// <returns>The verdict.</returns>
    /// <remarks>
    /// Within when L + g ≤ y ≤ U − g; outside when y &lt; L − g or y &gt; U + g; otherwise too close to call.
    /// Source: ISO 14253-1 (from memory); probability by JCGM 106:2012, 7.4.
    /// </remarks>
    public static Verdict Judge(double value, double standardUncertainty, Limits limits, DecisionRule? rule = null)
    {
        if (!double.IsFinite(value))
            throw new ArgumentOutOfRangeException(nameof(value), value, "A verdict needs a finite value.");
        if (!(standardUncertainty >= 0) || double.IsInfinity(standardUncertainty))
            throw new ArgumentOutOfRangeException(nameof(standardUncertainty), standardUncertainty, "An uncertainty is finite and not below zero.");
        rule ??= DecisionRule.ExpandedUncertainty;
        var factor = standardUncertainty == 0 ? 0 : rule.InsideFactor(limits.Width / standardUncertainty * (1 + Rounding));
        var guard = factor * standardUncertainty;
        if (double.IsPositiveInfinity(factor))
            guard = double.PositiveInfinity;
        var margin = limits.Margin(value);
        var slack = Rounding * Math.Max(Math.Abs(value), standardUncertainty);
        var word = margin >= guard - slack ? VerdictWord.Within
            : -margin > rule.OutsideFactor * standardUncertainty + slack ? VerdictWord.Outside
            : VerdictWord.TooCloseToCall;
        return new(word, value, standardUncertainty, limits, guard, Conformance.Probability(value, standardUncertainty, limits), rule.Name);
    }
}
