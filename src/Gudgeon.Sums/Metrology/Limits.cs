namespace Gudgeon.Sums.Metrology;

/// <summary>What a characteristic may be: a lower limit, an upper, or both, in the unit of the characteristic. A value on a limit is inside.</summary>
public sealed record Limits
{
    private Limits(double? lower, double? upper)
    {
        if (lower is null && upper is null)
            throw new ArgumentException("A limit needs a lower or an upper value.");
        if (lower is { } l && !double.IsFinite(l) || upper is { } u && !double.IsFinite(u))
            throw new ArgumentException("A limit must be a finite number; leave an open side out.");
        if (lower > upper)
            throw new ArgumentException(FormattableString.Invariant($"The lower limit {lower} lies above the upper limit {upper}."));
        (Lower, Upper) = (lower, upper);
    }

    /// <summary>The lower limit, or null for none.</summary>
    public double? Lower { get; }

    /// <summary>The upper limit, or null for none.</summary>
    public double? Upper { get; }

    /// <summary>Width of the band; infinite with one limit.</summary>
    public double Width => Upper - Lower ?? double.PositiveInfinity;

    /// <summary>Both limits.</summary>
    /// <param name="lower">The lower.</param>
    /// <param name="upper">The upper, not below the lower.</param>
    /// <returns>The limits.</returns>
    public static Limits Between(double lower, double upper) => new(lower, upper);

    /// <summary>A lower limit only.</summary>
    /// <param name="lower">The lower.</param>
    /// <returns>The limits.</returns>
    public static Limits AtLeast(double lower) => new(lower, null);

    /// <summary>An upper limit only.</summary>
    /// <param name="upper">The upper.</param>
    /// <returns>The limits.</returns>
    public static Limits AtMost(double upper) => new(null, upper);

    /// <summary>From two sides that may each be open.</summary>
    /// <param name="lower">The lower, or null.</param>
    /// <param name="upper">The upper, or null; one of the two is needed.</param>
    /// <returns>The limits.</returns>
    public static Limits Of(double? lower, double? upper) => new(lower, upper);

    /// <summary>Distance to the nearest limit: above zero inside, below zero outside.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The distance, in the unit of the limits.</returns>
    public double Margin(double value) =>
        Math.Min(value - (Lower ?? double.NegativeInfinity), (Upper ?? double.PositiveInfinity) - value);
}
