using System.Globalization;

namespace Gudgeon.Sums.Quantities;

/// <summary>An angle of turn or of slope.</summary>
public readonly record struct Angle : IQuantity<Angle>
{
    private Angle(double amount) => Radians = QuantityMath.Finite(amount);

    /// <summary>No angle at all.</summary>
    public static Angle Zero => default;

    /// <summary>The amount in radians.</summary>
    public double Radians { get; }

    /// <summary>The amount in degrees.</summary>
    public double Degrees => Radians / (Math.PI / 180);

    /// <summary>The amount in whole turns.</summary>
    public double Turns => Radians / (2 * Math.PI);

    double IQuantity<Angle>.Amount => Radians;

    /// <summary>Makes an angle from radians.</summary>
    /// <param name="amount">The amount in radians; finite.</param>
    /// <returns>The angle.</returns>
    public static Angle FromRadians(double amount) => new(amount);

    /// <summary>Makes an angle from degrees.</summary>
    /// <param name="amount">The amount in degrees; finite.</param>
    /// <returns>The angle.</returns>
    public static Angle FromDegrees(double amount) => new(amount * (Math.PI / 180));

    /// <summary>Makes an angle from whole turns.</summary>
    /// <param name="amount">The amount in whole turns; finite.</param>
    /// <returns>The angle.</returns>
    public static Angle FromTurns(double amount) => new(amount * (2 * Math.PI));

    static Angle IQuantity<Angle>.OfAmount(double amount) => new(amount);

    /// <inheritdoc/>
    public int CompareTo(Angle other) => Radians.CompareTo(other.Radians);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Radians} rad");
}
