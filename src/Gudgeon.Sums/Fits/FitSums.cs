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
        new("fits.deviation", "Limit deviation of a hole or shaft class", "table", [new("D", "nominal size", "mm"), new("class", "as H7 or g6", "1")], "µm",
            "above 0 to 120 mm, grades 5 to 9, letters d to u; others are refused", "ISO 286-2:2010, tables",
            new("86 H7, upper", 35, 1e-9, "ISO 286-2 as read in two public transcriptions that agree, seen", () => Iso286.Of(Mm(86), "H7").Upper.Micrometres)),
        new("fits.grade-table", "Width of a tolerance grade", "table", [new("D", "nominal size", "mm"), new("IT", "grade, 5 to 9", "1")], "µm", "above 0 to 120 mm; others are refused", "ISO 286-1:2010, table 1",
            new("30 to 50 mm, IT6", 16, 1e-9, "ISO 286-1 as read in two public transcriptions that agree, seen", () => Iso286.Grade(Mm(36), 6).Micrometres)),
        new("fits.contact", "Pressure in a press fit", "p = δ / (R[(1/E_o)((r_o² + R²)/(r_o² − R²) + ν_o) + (1/E_i)((R² + r_i²)/(R² − r_i²) − ν_i)])",
            [
                new("δ", "radial interference", "mm"), new("R", "joint radius", "mm"), new("r_i, r_o", "bore and outside radius", "mm"),
                new("E", "Young's modulus", "MPa"), new("ν", "Poisson's ratio", "1"),
            ], "MPa", "long elastic cylinders; radii must grow outwards", "Ugural and Fenster, Advanced Strength and Applied Elasticity, 8.5",
            new("r 150/200/250, E 200 GPa, δ 0.1", 12.304688, 1e-6, "Ugural and Fenster, Example 8.3 (prints 12.3), seen; recomputed with NumPy", () => Example.Contact.Megapascals)),
        new("fits.hoop", "Hoop stress in the outer part of a press fit", "σ = p(r_o² + R²)/(r_o² − R²)", [new("p", "contact pressure", "MPa"), new("R, r_o", "joint and outside radius", "mm")], "MPa",
            "long elastic cylinders", "Ugural and Fenster, Advanced Strength and Applied Elasticity, 8.5",
            new("the same tubes", 56.0547, 5e-5, "Ugural and Fenster, Example 8.3 (prints 56.03), seen; recomputed", () => Example.OuterHoopAtJoint.Megapascals)),
        new("fits.interference-at", "Interference left when both parts are warm", "δ − d(α_o − α_i)(t − 20)",
            [new("δ", "interference at 20 °C", "mm"), new("d", "joint diameter", "mm"), new("α_o, α_i", "expansions", "1/K"), new("t", "temperature of both", "°C")], "mm", "below zero the joint is loose", "definition of the coefficient of expansion",
            new("0.10 on 36 mm, iron in aluminium, 200 °C", 0.034552, 1e-9, "invented dimensions, recomputed with NumPy",
                () => PressFit.InterferenceAt(Mm(0.10), Mm(36), 21.5e-6, 11.4e-6, Temperature.FromCelsius(200)).Millimetres)),
        new("fits.clearance-while", "Clearance while the outer is hot and the inner cold", "d(α_o(t_o − 20) − α_i(t_i − 20)) − δ",
            [new("δ", "interference at 20 °C", "mm"), new("d", "joint diameter", "mm"), new("α", "expansions", "1/K"), new("t", "temperatures", "°C")], "mm", "below zero it will not go in", "definition of the coefficient of expansion",
            new("0.10 on 36 mm, head 150 °C, seat −70 °C", 0.037556, 1e-9, "invented dimensions, recomputed with NumPy",
                () => PressFit.ClearanceWhile(Mm(0.10), Mm(36), 21.5e-6, Temperature.FromCelsius(150), 11.4e-6, Temperature.FromCelsius(-70)).Millimetres)),
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
