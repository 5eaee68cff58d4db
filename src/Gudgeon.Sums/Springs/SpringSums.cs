using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Springs;

/// <summary>The sums of springs for the catalogue.</summary>
public static class SpringSums
{
    /// <summary>The list.</summary>
    public static IReadOnlyList<SumEntry> List { get; } =
    [
        new("springs.at-work", "Forces, coil bind, stress and surge of a valve spring", "k = G·d⁴/(8·D³·n); F = k·(free − length); τ = Kw·8·F·D/(π·d³); f = d/(2π·D²·n)·√(G/2ρ)",
            [new("d", "wire", "mm"), new("D", "mean diameter", "mm"), new("n", "active coils", "1"), new("Nt", "total coils", "1"), new("G", "shear modulus", "MPa"), new("ρ", "density", "kg/m³")], "N/mm",
            "D 2.5 to 50 wires; one that binds is refused", "Shigley's Mechanical Engineering Design, 9th edition, chapter 10",
            new("d 5, D 30, n 15, G 84 GPa", 16.2037, 1e-4, "Jindal, Machine Design (2010), ex. 8-1, recomputed", () => ValveSprings.AtWork(
                new(Mm(5), Mm(30), 15, 17, Mm(150), true, 84_000), Mm(140), Mm(10)).Value.RateNPerMm)),
        new("springs.rate-from-loads", "Rate from two loads on a tester", "k = (F2 − F1)/(L1 − L2)", [new("F1, F2", "forces", "N"), new("L1, L2", "lengths", "mm")], "N/mm", "shorter length with the greater force; else refused", "Hooke's law",
            new("150 N at 35, 300 N at 30 mm", 30, 1e-9, "Bhandari, Design of Machine Elements, ex. 10.4, read in a transcription", () => ValveSprings.RateFromLoads(
                Force.FromNewtons(150), Mm(35), Force.FromNewtons(300), Mm(30), Force.Zero).Value.RateNPerMm)),
    ];

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
