using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Fasteners;

/// <summary>Proof and ultimate loads as ISO 898-1 prints them.</summary>
/// <remarks>
/// Formula: table where listed, else Fp = As·Sp and Fm = As·Rm. The printed loads are rounded and differ from the product by up to 0.7 %.
/// Units: N.
/// Range: table M6 to M14 coarse, classes 8.8, 10.9, 12.9; product for every other <see cref="ScrewThread"/> and <see cref="PropertyClass"/>.
/// Errors: exact to the table; the product within 0.7 %.
/// Source: ISO 898-1, proof loads and minimum ultimate tensile loads, coarse thread (read in two reproductions).
/// </remarks>
public static class ProofLoadTable
{
    private static readonly string[] Classes = ["8.8", "10.9", "12.9"];

    private static readonly Dictionary<string, (double[] Proof, double[] Ultimate)> Printed = new()
    {
        ["M6"] = ([11600, 16700, 19500], [16100, 20900, 24500]),
        ["M8"] = ([21200, 30400, 35500], [29200, 38100, 44600]),
        ["M10"] = ([33700, 48100, 56300], [46400, 60300, 70800]),
        ["M12"] = ([48900, 70000, 81800], [67400, 87700, 103000]),
        ["M14"] = ([66700, 95500, 112000], [92000, 120000, 140000]),
    };

    /// <summary>Proof load Fp, and whether it is the printed figure.</summary>
    public static (Force Load, bool Printed) Proof(ScrewThread thread, PropertyClass strength) =>
        Load(thread, strength, row => row.Proof, strength.ProofMpa);

    /// <summary>Least ultimate load Fm, and whether it is the printed figure.</summary>
    public static (Force Load, bool Printed) Ultimate(ScrewThread thread, PropertyClass strength) =>
        Load(thread, strength, row => row.Ultimate, strength.TensileMpa);

    private static (Force, bool) Load(ScrewThread thread, PropertyClass strength, Func<(double[] Proof, double[] Ultimate), double[]> column, double stressMpa)
    {
        var at = Array.IndexOf(Classes, strength.Mark);
        return at >= 0 && Printed.TryGetValue(thread.Designation, out var row)
            ? (Force.FromNewtons(column(row)[at]), true)
            : (Force.FromNewtons(thread.StressAreaMm2 * stressMpa), false);
    }
}
