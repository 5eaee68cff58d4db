namespace Gudgeon.Sums.Quantities;

/// <summary>A number as typed: exact, with the fraction kept so that 3/8 in is 9.525 mm to the last digit.</summary>
internal readonly record struct Fraction(decimal Numerator, decimal Denominator)
{
    /// <summary>Larger than anything measured at a bench, and far from where decimal overflows.</summary>
    internal const decimal Largest = 1_000_000_000m;

    internal static Fraction Of(decimal whole) => new(whole, 1);

    internal bool IsWhole => Denominator == 1;

    internal bool IsTooLarge => Math.Abs(Numerator) > Largest || Denominator > Largest;

    internal Fraction Plus(Fraction other) =>
        Denominator == other.Denominator
            ? this with { Numerator = Numerator + other.Numerator }
            : new(Numerator * other.Denominator + other.Numerator * Denominator, Denominator * other.Denominator);

    internal Fraction Negated => this with { Numerator = -Numerator };

    internal double Times(decimal factor) => (double)(Numerator * factor / Denominator);

    internal double Value => Times(1);
}
