using System.Globalization;

namespace Gudgeon.Sums.Quantities;

/// <summary>A temperature: a point on the scale. Two of them have a difference, never a sum.</summary>
public readonly record struct Temperature : IComparable<Temperature>
{
    private const double AbsoluteZero = -273.15;

    private Temperature(double celsius) => Celsius = QuantityMath.Finite(celsius) >= AbsoluteZero
        ? celsius
        : throw new ArgumentOutOfRangeException(nameof(celsius), celsius, "A temperature cannot lie below -273.15 °C.");

    /// <summary>20 °C, the temperature at which sizes are stated (ISO 1).</summary>
    public static Temperature Reference => FromCelsius(20);

    /// <summary>Degrees Celsius.</summary>
    public double Celsius { get; }

    /// <summary>Degrees Fahrenheit.</summary>
    public double Fahrenheit => Celsius * 9 / 5 + 32;

    /// <summary>Kelvins above absolute zero.</summary>
    public double Kelvins => Celsius - AbsoluteZero;

    /// <summary>Makes a temperature from degrees Celsius.</summary>
    /// <param name="degrees">Degrees Celsius, -273.15 or above.</param>
    /// <returns>The temperature.</returns>
    public static Temperature FromCelsius(double degrees) => new(degrees);

    /// <summary>Makes a temperature from degrees Fahrenheit.</summary>
    /// <param name="degrees">Degrees Fahrenheit, -459.67 or above.</param>
    /// <returns>The temperature.</returns>
    public static Temperature FromFahrenheit(double degrees) => new((degrees - 32) * 5 / 9);

    /// <summary>The step from the second to the first.</summary>
    public static TemperatureDifference operator -(Temperature left, Temperature right) =>
        TemperatureDifference.FromKelvins(left.Celsius - right.Celsius);

    /// <summary>A temperature moved by a step.</summary>
    public static Temperature operator +(Temperature left, TemperatureDifference step) => new(left.Celsius + step.Kelvins);

    /// <summary>A temperature moved back by a step.</summary>
    public static Temperature operator -(Temperature left, TemperatureDifference step) => new(left.Celsius - step.Kelvins);

    /// <summary>Colder than.</summary>
    public static bool operator <(Temperature left, Temperature right) => left.Celsius < right.Celsius;

    /// <summary>Warmer than.</summary>
    public static bool operator >(Temperature left, Temperature right) => left.Celsius > right.Celsius;

    /// <summary>Not warmer than.</summary>
    public static bool operator <=(Temperature left, Temperature right) => left.Celsius <= right.Celsius;

    /// <summary>Not colder than.</summary>
    public static bool operator >=(Temperature left, Temperature right) => left.Celsius >= right.Celsius;

    /// <summary>Whether two temperatures agree within a step, the edge included.</summary>
    /// <param name="other">The other temperature.</param>
    /// <param name="tolerance">The largest difference that still agrees.</param>
    /// <returns>True when they agree.</returns>
    public bool IsWithin(Temperature other, TemperatureDifference tolerance) => Math.Abs(Celsius - other.Celsius) <= tolerance.Kelvins;

    /// <inheritdoc/>
    public int CompareTo(Temperature other) => Celsius.CompareTo(other.Celsius);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Celsius} °C");
}
