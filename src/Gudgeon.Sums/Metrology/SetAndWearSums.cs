using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Metrology;

/// <summary>Figures of wear, of sets, and of what is to be cut or fitted, for the catalogue.</summary>
public static class SetAndWearSums
{
    private const string Practice = "common practice, no source";
    private const string Invented = "invented readings, exact arithmetic";

    /// <summary>The list.</summary>
    public static IReadOnlyList<SumEntry> List { get; } =
    [
        new("derived.wear", "Wear of a bore", "largest reading − unworn", [new("d", "diameters", "mm"), new("unworn", "unworn spot or nominal of the grade", "mm")], "mm", "one reading or more", Practice,
            new("86.025 and 86.013, unworn 86.000", 0.025, 1e-9, Invented, () => new SizeTable(new Length?[,] { { Mm(86.025), Mm(86.013) } }).HoleWear(Mm(86))!.Value.Millimetres)),
        new("derived.taper-on", "Taper on one axis", "largest − smallest over the heights", [new("d", "diameters on one axis", "mm")], "mm", "two heights or more", Practice, new("86.012, 86.025, 86.018", 0.013, 1e-9, Invented, () => Bore.TaperOn(0)!.Value.Millimetres)),
        new("derived.end-taper", "Taper from top to bottom", "top − bottom", [new("d", "diameters on one axis", "mm")], "mm", "below zero is wider at the bottom", Practice, new("86.012 and 86.018", -0.006, 1e-9, Invented, () => Bore.EndTaperOn(0)!.Value.Millimetres)),
        new("derived.barrel", "Barrel of a bore or journal", "middle − mean of the ends", [new("d", "diameters on one axis", "mm")], "mm", "three heights; below zero is an hourglass", Practice, new("86.012, 86.025, 86.018", 0.010, 1e-9, Invented, () => Bore.BarrelOn(0)!.Value.Millimetres)),
        new("derived.out-of-round-at", "Out-of-round at one height", "largest − smallest over the axes", [new("d", "diameters at one height", "mm")], "mm", "two axes or more; a difference of diameters", Practice, new("86.025 and 86.013", 0.012, 1e-9, Invented, () => Bore.OutOfRoundAt(1)!.Value.Millimetres)),
        new("derived.shaft-wear", "Wear of a shaft", "unworn − smallest reading", [new("d", "diameters", "mm"), new("unworn", "unworn spot or nominal of the grade", "mm")], "mm", "one reading or more", Practice,
            new("53.98 and 53.99, unworn 54.00", 0.02, 1e-9, Invented, () => new SizeTable(new Length?[,] { { Mm(53.98), Mm(53.99) } }).ShaftWear(Mm(54))!.Value.Millimetres)),
        new("derived.between", "Clearance of one hole and one shaft", "hole − shaft", [new("hole", "inside diameter", "mm"), new("shaft", "outside diameter", "mm")], "mm", "below zero is interference", "definition", new("50.02 and 49.98", 0.04, 1e-9, Invented, () => Clearances.Between(Mm(50.02), Mm(49.98)).Millimetres)),
        new("derived.chamber-for", "Chamber for a wanted compression ratio", "V_s/(ε − 1) − gasket + above deck + crown", [new("V_s", "swept volume", "cm³"), new("ε", "wanted ratio", "1")], "cm³", "ratio above 1; others are refused", "geometry",
            new("D 80, S 80, gasket 81 × 1.2, deck −0.2, ratio 9.52", 40.0, 0.05, "invented engine, worked by hand", () => new CylinderSpace(Mm(80), Mm(80), Volume.FromCubicCentimetres(40), Mm(81), Mm(1.2), Mm(-0.2), Volume.FromCubicCentimetres(0)).ChamberFor(9.52).CubicCentimetres)),
        new("derived.interference", "Interference of a pressed part", "shaft − hole", [new("shaft", "outside diameter", "mm"), new("hole", "inside diameter", "mm")], "mm", "below zero is clearance", "definition",
            new("36.10 in 36.00", 0.10, 1e-9, Invented, () => Clearances.Interference(Mm(36.10), Mm(36)).Millimetres)),
        new("derived.set-spread", "Spread of a matched set", "largest − smallest", [new("x", "one value per member", "mm")], "mm", "two members or more", Practice,
            new("4.90, 5.00, 4.75", 0.25, 1e-9, Invented, () => Clearances.SetSpread([Mm(4.9), Mm(5), Mm(4.75)]).Spread.Millimetres)),
        new("derived.set-drop", "Drop within a set, of its largest", "(largest − smallest)/largest", [new("x", "one value per cylinder", "any")], "1", "two values or more, the largest above zero", Practice,
            new("150, 148, 150, 110", 0.266666667, 1e-9, Invented, () => Wear.SetDrop([150, 148, 150, 110]))),
        new("derived.bend", "Bend of a shaft from its run-out", "TIR/2", [new("TIR", "total indicated run-out", "mm")], "mm", "part of the run-out may be out-of-round", "geometry",
            new("TIR 0.05", 0.025, 1e-12, Invented, () => Runout.Bend(Mm(0.05)).Millimetres)),
        new("derived.deck-height", "Deck height at top dead centre", "mean of two readings over the pin axis", [new("r", "dial, + above deck", "mm")], "mm", "both sides of the pin axis", Practice,
            new("−0.12 and −0.18", -0.15, 1e-12, Invented, () => Faces.DeckHeight(Mm(-0.12), Mm(-0.18)).Millimetres)),
        new("derived.step", "Largest step between neighbouring liners", "largest |hᵢ₊₁ − hᵢ|", [new("h", "mean protrusion, in order", "mm")], "mm", "two liners or more", Practice,
            new("0.06, 0.07, 0.02, 0.04", 0.05, 1e-12, Invented, () => Faces.StepToNeighbour([Mm(0.06), Mm(0.07), Mm(0.02), Mm(0.04)]).Step.Millimetres)),
        new("derived.crush", "Crush of a pair of shells", "smaller of the two gaps, one bolt slack at a time", [new("g", "gap by feeler", "mm")], "mm", "cap tightened on the other side", Practice,
            new("0.08 and 0.05", 0.05, 1e-12, Invented, () => Faces.Crush(Mm(0.08), Mm(0.05)).Smaller.Millimetres)),
        new("derived.flatness-feeler", "Flatness by straight edge", "largest feeler that passed on any line", [new("f", "feelers, by line", "mm")], "mm", "one line or more", Practice,
            new("0.03, 0.05, 0.08, 0.04", 0.08, 1e-12, Invented, () => Faces.Flatness([Mm(0.03), Mm(0.05), Mm(0.08), Mm(0.04)]).Largest.Millimetres)),
        new("derived.lobe-lift", "Lift of a cam lobe", "height − base circle", [new("height", "over nose and heel", "mm"), new("base", "base circle", "mm")], "mm", "any cam", "geometry",
            new("42.2 and 34.0", 8.2, 1e-9, Invented, () => ValveGear.LobeLift(Mm(42.2), Mm(34)).Millimetres)),
        new("derived.valve-lift", "Lift at the valve", "lobe lift × ratio − lash", [new("lift", "lobe lift", "mm"), new("ratio", "rocker ratio", "1"), new("lash", "clearance", "mm")], "mm",
            "ratio above zero; others are refused", "geometry", new("8.2 × 1.5 − 0.2", 12.1, 1e-9, Invented, () => ValveGear.ValveLift(Mm(8.2), 1.5, Mm(0.2)).Millimetres)),
        new("derived.bolt-stretch", "Stretch of a bolt", "length now − length new", [new("L", "lengths", "mm")], "mm", "both at one temperature", Practice,
            new("120.15 and 120.00", 0.15, 1e-9, Invented, () => Wear.BoltStretch(Mm(120.15), Mm(120)).Millimetres)),
        new("derived.oversize", "Oversize for a worn bore", "smallest v of the ladder with v ≥ 2w + clean-up", [new("w", "worst wear on one side", "mm"), new("clean-up", "metal to take", "mm")], "mm",
            "none when the ladder is too short; look up what is sold before cutting", Practice,
            new("w 0.10, clean-up 0.07, ladder 0.25 0.50", 0.5, 1e-12, Invented, () => Wear.Oversize(Mm(0.10), Mm(0.07), [Mm(0.25), Mm(0.5)])!.Value.Millimetres)),
        new("derived.undersize", "Undersize for a worn journal", "smallest u of the ladder with u ≥ standard − smallest + clean-up",
            [new("standard", "standard size", "mm"), new("smallest", "smallest reading", "mm"), new("clean-up", "metal to take", "mm")], "mm",
            "none when the ladder is too short; look up what is sold before grinding", Practice,
            new("54.00, 53.90, 0.04, ladder 0.25 0.50", 0.25, 1e-12, Invented, () => Wear.Undersize(Mm(54), Mm(53.9), Mm(0.04), [Mm(0.25), Mm(0.5)])!.Value.Millimetres)),
    ];

    // Invented bore: thrust axis first, top to bottom.
    private static SizeTable Bore => new(new Length?[,] { { Mm(86.012), Mm(86.004) }, { Mm(86.025), Mm(86.013) }, { Mm(86.018), Mm(86.014) } });

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
