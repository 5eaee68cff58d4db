using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Metrology;

/// <summary>What makes up the space over a piston.</summary>
/// <param name="Bore">Cylinder diameter.</param>
/// <param name="Stroke">Stroke.</param>
/// <param name="Chamber">Chamber in the head, by burette.</param>
/// <param name="GasketBore">Bore of the gasket.</param>
/// <param name="GasketThickness">Thickness of the gasket as compressed.</param>
/// <param name="DeckHeight">Above zero when the piston stands above the deck.</param>
/// <param name="Crown">Above zero for a dome, below zero for a dish.</param>
public sealed record CylinderSpace(
    Length Bore, Length Stroke, Volume Chamber, Length GasketBore, Length GasketThickness, Length DeckHeight, Volume Crown)
{
    /// <summary>Swept volume: π/4·D²·S.</summary>
    public Volume Swept => Disc(Bore, Stroke);

    /// <summary>Clearance volume: chamber + gasket − what stands above the deck − crown.</summary>
    public Volume Clearance => Chamber + Disc(GasketBore, GasketThickness) - Disc(Bore, DeckHeight) - Crown;

    /// <summary>Compression ratio: (V_s + V_c) / V_c.</summary>
    /// <remarks>Geometry. A clearance volume of zero or less is refused: some figure is wrong.</remarks>
    public double CompressionRatio
    {
        get
        {
            Require.Positive(Bore, "bore");
            Require.Positive(Stroke, "stroke");
            Require.Positive(Clearance, "clearance volume");
            return (Swept + Clearance) / Clearance;
        }
    }

    /// <summary>Chamber volume that would give a wanted ratio, all else alike.</summary>
    /// <param name="ratio">The ratio, above 1.</param>
    /// <returns>The volume of the chamber in the head.</returns>
    public Volume ChamberFor(double ratio)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(ratio, 1);
        return Chamber + Swept / (ratio - 1) - Clearance;
    }

    private static Volume Disc(Length diameter, Length height) =>
        Volume.FromCubicMillimetres(Math.PI / 4 * diameter.Millimetres * diameter.Millimetres * height.Millimetres);
}
