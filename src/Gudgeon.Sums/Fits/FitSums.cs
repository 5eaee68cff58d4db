using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Fits;

/// <summary>The sums of fits for the catalogue.</summary>
public static class FitSums
{
    /// <summary>The list.</summary>
    public static IReadOnlyList<SumEntry> List { get; } =
    [
        new("fits.iso286-clearance", "Largest clearance of an ISO 286 fit", "largest hole − smallest shaft", [new("D", "nominal size", "mm"), new("fit", "hole and shaft class", "1")], "mm",
            "above 0 to 120 mm, grades 5 to 9, shafts d to u; others are refused", "ISO 286-1:2010 and ISO 286-2:2010, tables",
            new("25 H7/r6, smallest", -0.041, 1e-9, "Jindal, Machine Design, Example 4-2, seen (interference 0.041)", () => Fit.Of(Mm(25), "H7/r6").SmallestClearance.Millimetres)),
        new("fits.grade", "Width of a tolerance grade by its formula", "IT = n(0.45·∛D + 0.001·D)", [new("D", "geometric mean of the step", "mm"), new("n", "7, 10, 16, 25, 40 for IT5 to IT9", "1")], "µm",
            "above 0 to 120 mm; the table rounds on its own and rules", "ISO 286-1:1988, annex A",
            new("80 to 120 mm, IT7", 34.76, 0.005, "recomputed; the table has 35", () => Iso286.GradeByFormula(Mm(100), 7).Micrometres)),
        new("fits.contact", "Pressure in a press fit", "p = δ / (R[(1/E_o)((r_o² + R²)/(r_o² − R²) + ν_o) + (1/E_i)((R² + r_i²)/(R² − r_i²) − ν_i)])",
            [
                new("δ", "radial interference", "mm"), new("R", "joint radius", "mm"), new("r_i, r_o", "bore and outside radius", "mm"),
                new("E", "Young's modulus", "MPa"), new("ν", "Poisson's ratio", "1"),
            ], "MPa", "long elastic cylinders; radii must grow outwards", "Ugural and Fenster, Advanced Strength and Applied Elasticity, 8.5",
            new("r 150/200/250, E 200 GPa, δ 0.1", 12.304688, 1e-6, "Ugural and Fenster, Example 8.3 (prints 12.3), seen; recomputed with NumPy", () => Example.Contact.Megapascals)),
        new("fits.heat", "Heating to assemble a press fit", "ΔT = (δ + clearance)/(α·d)",
            [new("δ", "interference on diameter", "mm"), new("clearance", "wanted while assembling", "mm"), new("α", "expansion of the outer part", "1/K"), new("d", "joint diameter", "mm")], "K",
            "diameter and coefficient above zero; others are refused", "definition of the coefficient of expansion",
            new("0.10 + 0.03 on 36 mm aluminium", 167.96, 0.005, "invented dimensions, recomputed with NumPy", () => PressFit.HeatToAssemble(Mm(0.1), Mm(0.03), Mm(36), 21.5e-6).Kelvins)),
    ];

    private static PressFit Example
    {
        get
        {
            var steel = new Elasticity(Pressure.FromMegapascals(200_000), 0.3);
            return new(Mm(150), Mm(200), Mm(250), Mm(0.1), steel, steel);
        }
    }

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
