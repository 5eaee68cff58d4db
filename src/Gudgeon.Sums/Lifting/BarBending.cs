using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Lifting;

/// <summary>A square tube under bending.</summary>
/// <param name="StressMpa">Largest bending stress, MPa.</param>
/// <param name="EndDeflection">How far the end goes down.</param>
public sealed record BentBar(double StressMpa, Length EndDeflection);

/// <summary>The bar of a spreader or leveller that hangs from its middle.</summary>
public static class BarBending
{
    private const double SteelMpa = 210_000;

    /// <summary>Bending of a square steel tube from its carrier to a loaded end.</summary>
    /// <remarks>
    /// Formula: I = (b⁴ − (b − 2t)⁴)/12; σ = F·l·(b/2)/I; δ = F·l³/(3·E·I), E 210 GPa. Units: mm, N, MPa.
    /// Range: wall below half the side; steel. Errors: straight tube without holes or welds; a hole at the carrier takes strength away. Source: beam theory.
    /// </remarks>
    public static Outcome<BentBar> SquareTube(Force endPull, Length arm, Length side, Length wall) => new InputCheck()
        .NotNegative("pull at the end", endPull).Positive("arm", arm).Positive("side of the tube", side).Positive("wall of the tube", wall)
        .That(wall.Millimetres * 2 < side.Millimetres, "wall of the tube", $"{Show(wall.Millimetres)} mm", $"less than half the side, {Show(side.Millimetres / 2)} mm", "Measure the wall at an open end")
        .Then(() =>
        {
            var (b, l, f) = (side.Millimetres, arm.Millimetres, endPull.Newtons);
            var inertia = (Math.Pow(b, 4) - Math.Pow(b - 2 * wall.Millimetres, 4)) / 12;
            return new BentBar(f * l * b / 2 / inertia, Length.FromMillimetres(f * l * l * l / (3 * SteelMpa * inertia)));
        });
}
