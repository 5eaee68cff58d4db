using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Fits;

/// <summary>A hole and a shaft with their limits.</summary>
/// <param name="Hole">Limits of the hole.</param>
/// <param name="Shaft">Limits of the shaft.</param>
public sealed record Fit((Length Lower, Length Upper) Hole, (Length Lower, Length Upper) Shaft)
{
    /// <summary>Smallest hole less largest shaft; below zero is interference.</summary>
    public Length SmallestClearance => Hole.Lower - Shaft.Upper;

    /// <summary>Largest hole less smallest shaft; below zero they always bind.</summary>
    public Length LargestClearance => Hole.Upper - Shaft.Lower;

    /// <summary>Limits of the hole, mm.</summary>
    public Limits HoleLimits => Limits.Between(Hole.Lower.Millimetres, Hole.Upper.Millimetres);

    /// <summary>Limits of the shaft, mm.</summary>
    public Limits ShaftLimits => Limits.Between(Shaft.Lower.Millimetres, Shaft.Upper.Millimetres);

    /// <summary>A fit by ISO 286.</summary>
    /// <param name="nominal">Nominal size, above zero to 120 mm.</param>
    /// <param name="classes">Hole, stroke, shaft: <c>H7/g6</c>.</param>
    /// <returns>The fit.</returns>
    public static Fit Of(Length nominal, string classes)
    {
        ArgumentNullException.ThrowIfNull(classes);
        if (classes.Split('/') is not [[>= 'A' and <= 'Z', ..] hole, [>= 'a' and <= 'z', ..] shaft])
            throw new ArgumentException($"The fit \"{classes}\" cannot be read; expected a hole and a shaft such as H7/g6. Type it again.", nameof(classes));
        return new(Sizes(nominal, Iso286.Of(nominal, hole)), Sizes(nominal, Iso286.Of(nominal, shaft)));
    }

    private static (Length, Length) Sizes(Length nominal, Deviations deviations) => (nominal + deviations.Lower, nominal + deviations.Upper);
}
