using System.Globalization;

namespace Gudgeon.Sums.Quantities;

/// <summary>A volume.</summary>
/// <remarks>Kept in cubic centimetres: the unit of the burette and of a swept volume.</remarks>
public readonly record struct Volume : IQuantity<Volume>
{
    private Volume(double amount) => CubicCentimetres = QuantityMath.Finite(amount);

    /// <summary>No volume at all.</summary>
    public static Volume Zero => default;

    /// <summary>The amount in cubic centimetres.</summary>
    public double CubicCentimetres { get; }

    /// <summary>The amount in cubic millimetres.</summary>
    public double CubicMillimetres => CubicCentimetres / 1e-3;

    /// <summary>The amount in litres.</summary>
    public double Litres => CubicCentimetres / 1e3;

    /// <summary>The amount in cubic inches.</summary>
    public double CubicInches => CubicCentimetres / 16.387064;

    double IQuantity<Volume>.Amount => CubicCentimetres;

    /// <summary>Makes a volume from cubic centimetres.</summary>
    /// <param name="amount">The amount in cubic centimetres; finite.</param>
    /// <returns>The volume.</returns>
    public static Volume FromCubicCentimetres(double amount) => new(amount);

    /// <summary>Makes a volume from cubic millimetres.</summary>
    /// <param name="amount">The amount in cubic millimetres; finite.</param>
    /// <returns>The volume.</returns>
    public static Volume FromCubicMillimetres(double amount) => new(amount * 1e-3);

    /// <summary>Makes a volume from litres.</summary>
    /// <param name="amount">The amount in litres; finite.</param>
    /// <returns>The volume.</returns>
    public static Volume FromLitres(double amount) => new(amount * 1e3);

    /// <summary>Makes a volume from cubic inches.</summary>
    /// <param name="amount">The amount in cubic inches; finite.</param>
    /// <returns>The volume.</returns>
    public static Volume FromCubicInches(double amount) => new(amount * 16.387064);

    static Volume IQuantity<Volume>.OfAmount(double amount) => new(amount);

    /// <inheritdoc/>
    public int CompareTo(Volume other) => CubicCentimetres.CompareTo(other.CubicCentimetres);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{CubicCentimetres} cm³");
}
