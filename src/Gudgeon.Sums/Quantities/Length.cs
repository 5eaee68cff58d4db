using System.Globalization;

namespace Gudgeon.Sums.Quantities;

/// <summary>A length or a size. A size in the workshop is told apart from its difference by its name, not by its type.</summary>
public readonly record struct Length : IQuantity<Length>
{
    private Length(double amount) => Millimetres = QuantityMath.Finite(amount);

    /// <summary>No length at all.</summary>
    public static Length Zero => default;

    /// <summary>The amount in millimetres.</summary>
    public double Millimetres { get; }

    /// <summary>The amount in micrometres.</summary>
    public double Micrometres => Millimetres / 1e-3;

    /// <summary>The amount in metres.</summary>
    public double Metres => Millimetres / 1e3;

    /// <summary>The amount in inches of 25.4 mm.</summary>
    public double Inches => Millimetres / 25.4;

    /// <summary>The amount in thousandths of an inch.</summary>
    public double Thou => Millimetres / 0.0254;

    double IQuantity<Length>.Amount => Millimetres;

    /// <summary>Makes a length from millimetres.</summary>
    /// <param name="amount">The amount in millimetres; finite.</param>
    /// <returns>The length.</returns>
    public static Length FromMillimetres(double amount) => new(amount);

    /// <summary>Makes a length from micrometres.</summary>
    /// <param name="amount">The amount in micrometres; finite.</param>
    /// <returns>The length.</returns>
    public static Length FromMicrometres(double amount) => new(amount * 1e-3);

    /// <summary>Makes a length from metres.</summary>
    /// <param name="amount">The amount in metres; finite.</param>
    /// <returns>The length.</returns>
    public static Length FromMetres(double amount) => new(amount * 1e3);

    /// <summary>Makes a length from inches of 25.4 mm.</summary>
    /// <param name="amount">The amount in inches of 25.4 mm; finite.</param>
    /// <returns>The length.</returns>
    public static Length FromInches(double amount) => new(amount * 25.4);

    /// <summary>Makes a length from thousandths of an inch.</summary>
    /// <param name="amount">The amount in thousandths of an inch; finite.</param>
    /// <returns>The length.</returns>
    public static Length FromThou(double amount) => new(amount * 0.0254);

    static Length IQuantity<Length>.OfAmount(double amount) => new(amount);

    /// <inheritdoc/>
    public int CompareTo(Length other) => Millimetres.CompareTo(other.Millimetres);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Millimetres} mm");
}
