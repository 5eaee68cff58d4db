using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Fluids;

/// <summary>The sums of fluids for the catalogue.</summary>
public static class FluidSums
{
    /// <summary>The list.</summary>
    public static IReadOnlyList<SumEntry> List { get; } =
    [
        new("fluids.from-reading", "Size of a leak from a leak-down reading", "A/A₀ = ψ(p₀, p₁)/ψ(p₁, p_a), ψ = p·√(2γ/(γ − 1)·(r^(2/γ) − r^((γ + 1)/γ)))",
            [new("p₀", "supply pressure", "bar"), new("p₁", "cylinder pressure", "bar"), new("p_a", "ambient pressure", "bar"), new("d₀", "orifice", "mm")], "mm",
            "cylinder below supply; else refused", "isentropic flow of a perfect gas; FAA AC 43.13-1B change 1 (2001), 8-14",
            new("80 psi supply, 70 psi in the cylinder, 0.040 in", 0.0336 * 25.4, 0.002, "invented inputs, reckoned apart with python", () => LeakDown.FromReading(
                Pressure.FromPoundsPerSquareInch(80), Pressure.FromPoundsPerSquareInch(70), Pressure.FromPoundsPerSquareInch(14.696), Length.FromInches(0.040)).Value.EquivalentDiameter.Millimetres)),
        new("fluids.orifice-for", "Orifice of a leak-down tester by bore", "0.040 in under 5.00 in of bore, else 0.060 in", [new("bore", "bore", "mm")], "mm", "bore above 0", "FAA AC 43.13-1B change 1 (2001), 8-14",
            new("86 mm", 1.016, 1e-9, "FAA AC 43.13-1B as an FAA safety notice (2011) quotes it", () => LeakDown.OrificeFor(Length.FromMillimetres(86)).Value.Millimetres)),
    ];
}
