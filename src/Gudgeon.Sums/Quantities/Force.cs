using System.Globalization;

namespace Gudgeon.Sums.Quantities;

/// <summary>A force or a load.</summary>
public readonly record struct Force : IQuantity<Force>
{
    private Force(double amount) => Newtons = QuantityMath.Finite(amount);

    /// <summary>No force at all.</summary>
    public static Force Zero => default;

    /// <summary>The amount in newtons.</summary>
    public double Newtons { get; }

    /// <summary>The amount in kilonewtons.</summary>
    public double Kilonewtons => Newtons / 1e3;

    /// <summary>The amount in pounds-force.</summary>
    public double PoundsForce => Newtons / 4.4482216152605;

    /// <summary>The amount in kilograms-force.</summary>
    public double KilogramsForce => Newtons / 9.80665;

    double IQuantity<Force>.Amount => Newtons;

    /// <summary>Makes a force from newtons.</summary>
    /// <param name="amount">The amount in newtons; finite.</param>
    /// <returns>The force.</returns>
    public static Force FromNewtons(double amount) => new(amount);

    /// <summary>Makes a force from kilonewtons.</summary>
    /// <param name="amount">The amount in kilonewtons; finite.</param>
    /// <returns>The force.</returns>
    public static Force FromKilonewtons(double amount) => new(amount * 1e3);

    /// <summary>Makes a force from pounds-force.</summary>
    /// <param name="amount">The amount in pounds-force; finite.</param>
    /// <returns>The force.</returns>
    public static Force FromPoundsForce(double amount) => new(amount * 4.4482216152605);

    /// <summary>Makes a force from kilograms-force.</summary>
    /// <param name="amount">The amount in kilograms-force; finite.</param>
    /// <returns>The force.</returns>
    public static Force FromKilogramsForce(double amount) => new(amount * 9.80665);

    static Force IQuantity<Force>.OfAmount(double amount) => new(amount);

    /// <inheritdoc/>
    public int CompareTo(Force other) => Newtons.CompareTo(other.Newtons);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Newtons} N");
}
