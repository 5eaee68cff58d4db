using System.Globalization;

namespace Gudgeon.Sums.Quantities;

/// <summary>A step of temperature. A step of one kelvin is one degree Celsius; it has no zero of its own, unlike <see cref="Temperature"/>.</summary>
public readonly record struct TemperatureDifference : IQuantity<TemperatureDifference>
{
    private TemperatureDifference(double amount) => Kelvins = QuantityMath.Finite(amount);

    /// <summary>No step at all.</summary>
    public static TemperatureDifference Zero => default;

    /// <summary>The amount in kelvins.</summary>
    public double Kelvins { get; }

    /// <summary>The amount in degrees Fahrenheit of difference.</summary>
    public double FahrenheitDegrees => Kelvins / (5.0 / 9);

    double IQuantity<TemperatureDifference>.Amount => Kelvins;

    /// <summary>Makes a step from kelvins.</summary>
    /// <param name="amount">The amount in kelvins; finite.</param>
    /// <returns>The step.</returns>
    public static TemperatureDifference FromKelvins(double amount) => new(amount);

    /// <summary>Makes a step from degrees Fahrenheit of difference.</summary>
    /// <param name="amount">The amount in degrees Fahrenheit of difference; finite.</param>
    /// <returns>The step.</returns>
    public static TemperatureDifference FromFahrenheitDegrees(double amount) => new(amount * (5.0 / 9));

    static TemperatureDifference IQuantity<TemperatureDifference>.OfAmount(double amount) => new(amount);

    /// <inheritdoc/>
    public int CompareTo(TemperatureDifference other) => Kelvins.CompareTo(other.Kelvins);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Kelvins} K");
}
