using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Fasteners;

/// <summary>
/// What the mark on a bolt head promises: proof stress, least yield, least tensile strength.
/// </summary>
/// <remarks>
/// Formula: none, tables; loads are stress times stress area except where the standard tabulates them (<see cref="ProofLoadTable"/>).
/// Units: MPa (N/mm²).
/// Range: ISO classes 4.6 to 12.9 to 39 mm; SAE grades 2, 5 and 8 to 1½ in. An unknown mark is refused: unknown strength is no strength.
/// Errors: least values of the standard; a bolt that was stretched, heated or corroded no longer has them.
/// Source: ISO 898-1 (8.8, 10.9 and 12.9 to 16 mm from its load tables in reproductions; other classes and 8.8 above 16 mm from memory),
/// SAE J429 (grades 2 and 5 read in a reproduction, grade 8 from memory).
/// </remarks>
/// <param name="Mark">The mark as it stands on the head or in the list.</param>
/// <param name="ProofMpa">Proof stress Sp, MPa.</param>
/// <param name="YieldMpa">Least yield stress, MPa: ReL or Rp0.2.</param>
/// <param name="TensileMpa">Least tensile strength Rm, MPa.</param>
public sealed record PropertyClass(string Mark, double ProofMpa, double YieldMpa, double TensileMpa)
{
    private const double Ksi = 6.894757293168361;

    private static readonly (string Mark, double UpToMm, double Proof, double Yield, double Tensile)[] Iso =
    [
        ("4.6", 39, 225, 240, 400), ("4.8", 39, 310, 340, 420), ("5.6", 39, 280, 300, 500), ("5.8", 39, 380, 420, 520),
        ("6.8", 39, 440, 480, 600), ("8.8", 16, 580, 640, 800), ("8.8", 39, 600, 660, 830), ("9.8", 16, 650, 720, 900),
        ("10.9", 39, 830, 940, 1040), ("12.9", 39, 970, 1100, 1220),
    ];

    private static readonly (string Mark, double UpToMm, double Proof, double Yield, double Tensile)[] Sae =
    [
        ("grade 2", 0.75 * 25.4, 55, 57, 74), ("grade 2", 1.5 * 25.4, 33, 36, 60), ("grade 5", 25.4, 85, 92, 120),
        ("grade 5", 1.5 * 25.4, 74, 81, 105), ("grade 8", 1.5 * 25.4, 120, 130, 150),
    ];

    /// <summary>The strengths of a mark ("10.9", "grade 8") at a nominal diameter.</summary>
    public static Outcome<PropertyClass> Of(string mark, Length nominal)
    {
        var nominalMm = nominal.Millimetres;
        ArgumentNullException.ThrowIfNull(mark);
        var key = string.Join(' ', mark.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries));
        foreach (var row in Iso)
        {
            if (row.Mark == key && nominalMm > 0 && nominalMm <= row.UpToMm)
                return Outcome.Of(new PropertyClass(row.Mark, row.Proof, row.Yield, row.Tensile));
        }

        foreach (var row in Sae)
        {
            if (row.Mark == key && nominalMm > 0 && nominalMm <= row.UpToMm + 1e-9)
                return Outcome.Of(new PropertyClass(row.Mark, row.Proof * Ksi, row.Yield * Ksi, row.Tensile * Ksi));
        }

        return Outcome.Refused<PropertyClass>(new Refusal("property class", $"{mark} at {Show(nominalMm)} mm",
            "4.6 to 12.9 (ISO 898-1) or grade 2, 5, 8 (SAE J429) within its sizes", "Read the mark on the head; treat an unmarked bolt as unknown and renew it"));
    }
}
