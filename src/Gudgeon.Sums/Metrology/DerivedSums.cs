using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Metrology;

/// <summary>Derived figures of parts for the catalogue.</summary>
public static class DerivedSums
{
    private const string Practice = "common practice, no source";
    private const string Invented = "invented readings, exact arithmetic";

    /// <summary>The list.</summary>
    public static IReadOnlyList<SumEntry> List { get; } =
    [
        new("derived.taper", "Taper", "for each axis largest − smallest over the heights; the largest", [new("d", "diameters by height and axis", "mm")], "mm",
            "two heights or more on an axis", Practice, new("thrust 86.012 86.025 86.018, across 86.004 86.013 86.014", 0.013, 1e-9, Invented, () => Bore.Taper!.Value.Millimetres)),
        new("derived.out-of-round", "Out-of-round", "for each height largest − smallest over the axes; the largest", [new("d", "diameters by height and axis", "mm")], "mm",
            "two axes or more at a height; odd lobes are not seen by a two-point gauge", Practice,
            new("the same bore", 0.012, 1e-9, Invented, () => Bore.OutOfRound!.Value.Millimetres)),
        new("derived.clearance", "Running clearance, tightest", "smallest hole − largest shaft", [new("hole", "diameters of the hole", "mm"), new("shaft", "diameters of the shaft", "mm")], "mm",
            "a reading of each; below zero is interference", Practice,
            new("the same bore, piston 85.970", 0.034, 1e-9, Invented, () => Clearances.Range([.. Bore.Readings], [Mm(85.97)]).Smallest.Millimetres)),
        new("derived.oil-by-wall", "Oil clearance from housing and shell wall", "c = H − 2w − J", [new("H", "housing", "mm"), new("w", "shell wall", "mm"), new("J", "journal", "mm")], "mm",
            "housing tightened as in service, read square to the joint", Practice,
            new("H 57.715, w 1.836, J 54.002", 0.041, 1e-9, Invented, () => Clearances.OilByWall(Mm(57.715), Mm(1.836), Mm(54.002)).Millimetres)),
        new("derived.guide-by-rock", "Guide clearance from rocking the valve", "c = rock / (1 + 2e/L)",
            [new("rock", "side play at the head", "mm"), new("e", "dial below the guide", "mm"), new("L", "guide length", "mm")], "mm", "e not below zero, L above zero", "geometry",
            new("rock 0.15, e 20, L 40", 0.075, 1e-12, Invented, () => Clearances.GuideByRock(Mm(0.15), Mm(20), Mm(40)).Millimetres)),
        new("derived.runout", "Total indicated run-out", "largest − smallest of the dial", [new("d", "dial round one turn", "mm")], "mm", "two readings or more; includes out-of-round of the track", Practice,
            new("0, 0.02, 0.05, 0.01", 0.05, 1e-12, Invented, () => Runout.Total([Mm(0), Mm(0.02), Mm(0.05), Mm(0.01)]).Millimetres)),
        new("derived.end-float", "End float", "mean of push and pull", [new("d", "dial end to end", "mm")], "mm", "one reading or more", Practice,
            new("0.12, 0.13, 0.11", 0.12, 1e-12, Invented, () => Runout.EndFloat([Mm(0.12), Mm(0.13), Mm(0.11)]).Mean.Millimetres)),
        new("derived.rod-twist", "Bend or twist of a rod, in 100 mm", "(r₁ − r₂)·100/L", [new("r₁, r₂", "dial at two places", "mm"), new("L", "their distance", "mm")], "mm", "L above zero", Practice,
            new("0.03 and 0.01 over 80 mm", 0.025, 1e-12, Invented, () => Runout.PerHundred(Mm(0.03), Mm(0.01), Mm(80)).Millimetres)),
        new("derived.protrusion", "Liner protrusion, spread inside one liner", "largest − smallest of its places", [new("h", "flange over deck, clamped", "mm")], "mm", "one place or more", Practice,
            new("0.05, 0.06, 0.08, 0.07", 0.03, 1e-12, Invented, () => Faces.Protrusion([Mm(0.05), Mm(0.06), Mm(0.08), Mm(0.07)]).Spread.Millimetres)),
        new("derived.squish", "Squish gap", "s = gasket − deck height", [new("gasket", "thickness as compressed", "mm"), new("deck", "deck height, + above", "mm")], "mm", "cold and still", Practice,
            new("gasket 1.2, deck −0.2", 1.4, 1e-12, Invented, () => Faces.Squish(Mm(1.2), Mm(-0.2)).Millimetres)),
        new("derived.swept-volume", "Swept volume of a cylinder", "V = π/4·D²·S", [new("D", "bore", "mm"), new("S", "stroke", "mm")], "cm³", "above zero", "geometry",
            new("D 80, S 80", 402.12, 0.005, "invented engine, worked by hand", () => Space.Swept.CubicCentimetres)),
        new("derived.compression-ratio", "Compression ratio", "(V_s + V_c)/V_c, V_c = chamber + gasket − above deck − crown",
            [new("V_s", "swept volume", "cm³"), new("V_c", "clearance volume", "cm³")], "1", "clearance volume above zero; otherwise refused", "geometry",
            new("D 80, S 80, chamber 40, gasket 81 × 1.2, deck −0.2", 9.52, 0.005, "invented engine, worked by hand", () => Space.CompressionRatio)),
        new("derived.coil-bind", "Coil-bind clearance", "fitted height − lift − solid height", [new("fitted", "fitted height", "mm"), new("lift", "valve lift", "mm"), new("solid", "solid height", "mm")], "mm",
            "below zero the spring binds", "geometry", new("38, 9.5, 27.2", 1.3, 1e-9, Invented, () => ValveGear.CoilBindClearance(Mm(38), Mm(9.5), Mm(27.2)).Millimetres)),
        new("derived.chain", "Growth of a chain", "(L − N·p)/(N·p)", [new("L", "length over N pitches", "mm"), new("N", "pitches", "1"), new("p", "pitch", "mm")], "1", "N and p above zero", "definition; pitch by ISO 606",
            new("953.5 over 100 of 9.525", 0.00104987, 5e-9, "exact rational arithmetic", () => Wear.ChainElongation(Mm(953.5), 100, Mm(9.525)))),
        new("derived.leak-down", "Leak-down", "1 − p₂/p₁", [new("p₁", "supplied", "bar"), new("p₂", "held", "bar")], "1", "p₂ between zero and p₁", Practice,
            new("80 in, 62 psi out", 0.225, 1e-12, Invented, () => Wear.LeakDown(Pressure.FromPoundsPerSquareInch(80), Pressure.FromPoundsPerSquareInch(62)))),
    ];

    private static SizeTable Bore => new(new Length?[,] { { Mm(86.012), Mm(86.004) }, { Mm(86.025), Mm(86.013) }, { Mm(86.018), Mm(86.014) } });

    private static CylinderSpace Space => new(Mm(80), Mm(80), Volume.FromCubicCentimetres(40), Mm(81), Mm(1.2), Mm(-0.2), Volume.Zero);

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
