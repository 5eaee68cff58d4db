using System.Globalization;

namespace Gudgeon.Sums.Quantities;

/// <summary>What a scale shows, corrected or not for the air.</summary>
public readonly record struct Mass : IQuantity<Mass>
{
    private Mass(double amount) => Kilograms = QuantityMath.Finite(amount);

    /// <summary>No mass at all.</summary>
    public static Mass Zero => default;

    /// <summary>The amount in kilograms.</summary>
    public double Kilograms { get; }

    /// <summary>The amount in grams.</summary>
    public double Grams => Kilograms / 1e-3;

    /// <summary>The amount in avoirdupois pounds.</summary>
    public double Pounds => Kilograms / 0.45359237;

    /// <summary>The amount in avoirdupois ounces.</summary>
    public double Ounces => Kilograms / (0.45359237 / 16);

    double IQuantity<Mass>.Amount => Kilograms;

    /// <summary>Makes a mass from kilograms.</summary>
    /// <param name="amount">The amount in kilograms; finite.</param>
    /// <returns>The mass.</returns>
    public static Mass FromKilograms(double amount) => new(amount);

    /// <summary>Makes a mass from grams.</summary>
    /// <param name="amount">The amount in grams; finite.</param>
    /// <returns>The mass.</returns>
    public static Mass FromGrams(double amount) => new(amount * 1e-3);

    /// <summary>Makes a mass from avoirdupois pounds.</summary>
    /// <param name="amount">The amount in avoirdupois pounds; finite.</param>
    /// <returns>The mass.</returns>
    public static Mass FromPounds(double amount) => new(amount * 0.45359237);

    /// <summary>Makes a mass from avoirdupois ounces.</summary>
    /// <param name="amount">The amount in avoirdupois ounces; finite.</param>
    /// <returns>The mass.</returns>
    public static Mass FromOunces(double amount) => new(amount * (0.45359237 / 16));

    static Mass IQuantity<Mass>.OfAmount(double amount) => new(amount);

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Kilograms.CompareTo(other.Kilograms);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Kilograms} kg");
}
