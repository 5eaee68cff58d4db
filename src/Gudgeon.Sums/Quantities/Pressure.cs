using System.Globalization;

namespace Gudgeon.Sums.Quantities;

/// <summary>A pressure above or below the air's, or a stress.</summary>
/// <remarks>Kept in bar: it is what gauges at the bench print, so a reading in bar stays digit for digit as it was typed, and 10 bar are exactly 1 N/mm².</remarks>
public readonly record struct Pressure : IQuantity<Pressure>
{
    private Pressure(double amount) => Bar = QuantityMath.Finite(amount);

    /// <summary>No pressure at all.</summary>
    public static Pressure Zero => default;

    /// <summary>The amount in bar.</summary>
    public double Bar { get; }

    /// <summary>The amount in kilopascals.</summary>
    public double Kilopascals => Bar / 1e-2;

    /// <summary>The amount in megapascals, the same as N/mm².</summary>
    public double Megapascals => Bar / 10;

    /// <summary>The amount in pounds-force per square inch.</summary>
    public double PoundsPerSquareInch => Bar / (4.4482216152605 / 64.516);

    double IQuantity<Pressure>.Amount => Bar;

    /// <summary>Makes a pressure from bar.</summary>
    /// <param name="amount">The amount in bar; finite.</param>
    /// <returns>The pressure.</returns>
    public static Pressure FromBar(double amount) => new(amount);

    /// <summary>Makes a pressure from kilopascals.</summary>
    /// <param name="amount">The amount in kilopascals; finite.</param>
    /// <returns>The pressure.</returns>
    public static Pressure FromKilopascals(double amount) => new(amount * 1e-2);

    /// <summary>Makes a pressure from megapascals, the same as N/mm².</summary>
    /// <param name="amount">The amount in megapascals, the same as N/mm²; finite.</param>
    /// <returns>The pressure.</returns>
    public static Pressure FromMegapascals(double amount) => new(amount * 10);

    /// <summary>Makes a pressure from pounds-force per square inch.</summary>
    /// <param name="amount">The amount in pounds-force per square inch; finite.</param>
    /// <returns>The pressure.</returns>
    public static Pressure FromPoundsPerSquareInch(double amount) => new(amount * (4.4482216152605 / 64.516));

    static Pressure IQuantity<Pressure>.OfAmount(double amount) => new(amount);

    /// <inheritdoc/>
    public int CompareTo(Pressure other) => Bar.CompareTo(other.Bar);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Bar} bar");
}
