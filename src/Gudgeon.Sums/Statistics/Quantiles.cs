using MathNet.Numerics.Distributions;

namespace Gudgeon.Sums.Statistics;

/// <summary>Points and shares of the normal and Student distributions.</summary>
public static class Quantiles
{
    /// <summary>Share of a normal distribution below z standard deviations: Φ(z).</summary>
    /// <param name="z">Any number; infinite allowed.</param>
    /// <returns>0 to 1.</returns>
    public static double NormalShareBelow(double z) =>
        double.IsNaN(z) ? throw new ArgumentOutOfRangeException(nameof(z), z, "Not a number.") : Normal.CDF(0, 1, z);

    /// <summary>The z below which a share p of a normal distribution lies.</summary>
    /// <param name="share">Above 0 and below 1.</param>
    /// <returns>z.</returns>
    public static double NormalPoint(double share) => Normal.InvCDF(0, 1, Inside(share));

    /// <summary>Coverage factor: half-width of the central interval that holds a share of Student's distribution.</summary>
    /// <param name="coverage">Share inside, above 0 and below 1.</param>
    /// <param name="degreesOfFreedom">Above zero; infinite means normal.</param>
    /// <returns>k.</returns>
    /// <remarks>Source: GUM Table G.2.</remarks>
    public static double CoverageFactor(double coverage, double degreesOfFreedom) => StudentPoint((1 + Inside(coverage)) / 2, degreesOfFreedom);

    /// <summary>The point below which a share of Student's distribution lies.</summary>
    /// <param name="share">Above 0 and below 1.</param>
    /// <param name="degreesOfFreedom">Above zero; infinite means normal.</param>
    /// <returns>t.</returns>
    public static double StudentPoint(double share, double degreesOfFreedom)
    {
        if (!(degreesOfFreedom > 0))
            throw new ArgumentOutOfRangeException(nameof(degreesOfFreedom), degreesOfFreedom, "Degrees of freedom must be above zero.");
        if (degreesOfFreedom > 1e8)
            return NormalPoint(share);
        // The library finds the point to about eight digits; one Newton step with its exact density makes it whole.
        var t = StudentT.InvCDF(0, 1, degreesOfFreedom, Inside(share));
        return t - (StudentT.CDF(0, 1, degreesOfFreedom, t) - share) / StudentT.PDF(0, 1, degreesOfFreedom, t);
    }

    /// <summary>Chance that F with the given degrees of freedom exceeds a value.</summary>
    /// <param name="f">Not negative.</param>
    /// <param name="between">Degrees of freedom above the line.</param>
    /// <param name="within">Degrees of freedom below the line.</param>
    /// <returns>0 to 1.</returns>
    public static double FisherShareAbove(double f, double between, double within) => 1 - FisherSnedecor.CDF(between, within, f);

    private static double Inside(double share) =>
        share is > 0 and < 1 ? share : throw new ArgumentOutOfRangeException(nameof(share), share, "A share must lie between 0 and 1.");
}
