using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Metrology;

/// <summary>One line of an uncertainty budget: a named cause, its standard uncertainty, and how strongly it acts on the result.</summary>
/// <param name="Name">The cause, in the words of the trade.</param>
/// <param name="StandardUncertainty">u, in the unit of the cause; not below zero.</param>
/// <param name="Basis">How u was reached, to show.</param>
/// <param name="Sensitivity">Change of the result per unit of the cause.</param>
/// <param name="DegreesOfFreedom">How well u is known; infinite when taken as exact.</param>
public sealed record BudgetLine(
    string Name, double StandardUncertainty, string Basis, double Sensitivity = 1, double DegreesOfFreedom = double.PositiveInfinity)
{
    /// <summary>u, checked.</summary>
    public double StandardUncertainty { get; init; } = StandardUncertainty >= 0 && double.IsFinite(StandardUncertainty)
        ? StandardUncertainty
        : throw new ArgumentOutOfRangeException(nameof(StandardUncertainty), StandardUncertainty, $"{Name}: an uncertainty is finite and not below zero.");

    /// <summary>ν, checked.</summary>
    public double DegreesOfFreedom { get; init; } = DegreesOfFreedom > 0
        ? DegreesOfFreedom
        : throw new ArgumentOutOfRangeException(nameof(DegreesOfFreedom), DegreesOfFreedom, $"{Name}: degrees of freedom are above zero.");

    /// <summary>What the line adds, with its sign: c·u.</summary>
    public double Contribution => Sensitivity * StandardUncertainty;

    /// <summary>Type A: the mean of repeated readings, s/√n with n − 1 degrees of freedom.</summary>
    /// <param name="name">The cause.</param>
    /// <param name="readings">Two or more.</param>
    /// <returns>The line.</returns>
    /// <remarks>Source: GUM 4.2.3.</remarks>
    public static BudgetLine Repeats(string name, ReadOnlySpan<double> readings) =>
        new(name, Samples.StandardUncertaintyOfMean(readings), $"{readings.Length} readings, s/√n", DegreesOfFreedom: readings.Length - 1);

    /// <summary>Type A from a pooled standard deviation: s_p/√n, with the freedom of the pool.</summary>
    /// <param name="name">The cause.</param>
    /// <param name="pooledDeviation">Standard deviation of one reading, from earlier runs.</param>
    /// <param name="freedom">Degrees of freedom of the pool.</param>
    /// <param name="count">How many readings were averaged now.</param>
    /// <returns>The line.</returns>
    /// <remarks>Source: GUM 4.2.4.</remarks>
    public static BudgetLine Pooled(string name, double pooledDeviation, double freedom, int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        return new(name, pooledDeviation / Math.Sqrt(count), $"pooled s, {count} reading(s), s/√n", DegreesOfFreedom: freedom);
    }

    /// <summary>Anywhere between −a and +a alike: a/√3.</summary>
    /// <param name="name">The cause.</param>
    /// <param name="halfWidth">a.</param>
    /// <returns>The line.</returns>
    /// <remarks>Source: GUM 4.3.7.</remarks>
    public static BudgetLine Rectangular(string name, double halfWidth) => new(name, halfWidth / Math.Sqrt(3), "rectangular, a/√3");

    /// <summary>Likelier in the middle: a/√6.</summary>
    /// <inheritdoc cref="Rectangular"/>
    public static BudgetLine Triangular(string name, double halfWidth) => new(name, halfWidth / Math.Sqrt(6), "triangular, a/√6");

    /// <summary>Swinging between two ends, as a room's heating does: a/√2.</summary>
    /// <inheritdoc cref="Rectangular"/>
    public static BudgetLine Arcsine(string name, double halfWidth) => new(name, halfWidth / Math.Sqrt(2), "swinging, a/√2");

    /// <summary>The last step of a display or scale: r/√12.</summary>
    /// <param name="name">The cause.</param>
    /// <param name="step">r, the resolution.</param>
    /// <returns>The line.</returns>
    /// <remarks>Source: GUM F.2.2.1.</remarks>
    public static BudgetLine Resolution(string name, double step) => new(name, step / Math.Sqrt(12), "resolution, r/√12");

    /// <summary>A certificate that states U with its k: U/k.</summary>
    /// <param name="name">The cause.</param>
    /// <param name="expanded">U.</param>
    /// <param name="coverageFactor">k, above zero.</param>
    /// <returns>The line.</returns>
    /// <remarks>Source: GUM 4.3.3.</remarks>
    public static BudgetLine Certificate(string name, double expanded, double coverageFactor = 2)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(coverageFactor);
        return new(name, expanded / coverageFactor, FormattableString.Invariant($"certificate, U/k with k = {coverageFactor}"));
    }

    /// <summary>Degrees of freedom of an estimated u whose own relative doubt is r: ν = 1/(2r²).</summary>
    /// <param name="relativeDoubt">r = Δu/u, above zero.</param>
    /// <returns>ν.</returns>
    /// <remarks>Source: GUM G.4.2, equation G.3.</remarks>
    public static double FreedomOfEstimate(double relativeDoubt)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(relativeDoubt);
        return 1 / (2 * relativeDoubt * relativeDoubt);
    }
}
