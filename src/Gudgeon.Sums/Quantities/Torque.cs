using System.Globalization;

namespace Gudgeon.Sums.Quantities;

/// <summary>A turning moment.</summary>
public readonly record struct Torque : IQuantity<Torque>
{
    private Torque(double amount) => NewtonMetres = QuantityMath.Finite(amount);

    /// <summary>No torque at all.</summary>
    public static Torque Zero => default;

    /// <summary>The amount in newton metres.</summary>
    public double NewtonMetres { get; }

    /// <summary>The amount in pound-force feet.</summary>
    public double PoundForceFeet => NewtonMetres / 1.3558179483314004;

    /// <summary>The amount in pound-force inches.</summary>
    public double PoundForceInches => NewtonMetres / (1.3558179483314004 / 12);

    /// <summary>The amount in kilogram-force metres.</summary>
    public double KilogramForceMetres => NewtonMetres / 9.80665;

    double IQuantity<Torque>.Amount => NewtonMetres;

    /// <summary>Makes a torque from newton metres.</summary>
    /// <param name="amount">The amount in newton metres; finite.</param>
    /// <returns>The torque.</returns>
    public static Torque FromNewtonMetres(double amount) => new(amount);

    /// <summary>Makes a torque from pound-force feet.</summary>
    /// <param name="amount">The amount in pound-force feet; finite.</param>
    /// <returns>The torque.</returns>
    public static Torque FromPoundForceFeet(double amount) => new(amount * 1.3558179483314004);

    /// <summary>Makes a torque from pound-force inches.</summary>
    /// <param name="amount">The amount in pound-force inches; finite.</param>
    /// <returns>The torque.</returns>
    public static Torque FromPoundForceInches(double amount) => new(amount * (1.3558179483314004 / 12));

    /// <summary>Makes a torque from kilogram-force metres.</summary>
    /// <param name="amount">The amount in kilogram-force metres; finite.</param>
    /// <returns>The torque.</returns>
    public static Torque FromKilogramForceMetres(double amount) => new(amount * 9.80665);

    static Torque IQuantity<Torque>.OfAmount(double amount) => new(amount);

    /// <inheritdoc/>
    public int CompareTo(Torque other) => NewtonMetres.CompareTo(other.NewtonMetres);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{NewtonMetres} N·m");
}
