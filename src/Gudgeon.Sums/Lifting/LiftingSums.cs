using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Lifting;

/// <summary>The sums of lifting for the catalogue.</summary>
public static class LiftingSums
{
    private const string Statics = "statics of a rigid body";
    private static readonly SumInput MassIn = new("m", "mass", "kg");
    private static readonly SumInput CentreIn = new("G", "centre of mass", "mm");

    /// <summary>The list.</summary>
    public static IReadOnlyList<SumEntry> List { get; } =
    [
        new("lifting.from-parts", "Mass and centre from parts", "M = Σm; x = Σ(m·x)/M", [MassIn, new("x", "centre of a part", "mm")], "mm", "masses above 0; else refused", "definition of the centre of mass; JCGM 100, 5.1.2",
            new("120, 35 and 18.5 kg, x", 44.2075, 1e-4, "invented inputs, reckoned apart with python", () => CentreOfMass.FromParts(
                [Part("block", 120, new(0, 0, 250)), Part("head", 35, new(420, 50, 300)), Part("rest", 18.5, new(-380, 20, 150))]).Value.Centre.X)),
        new("lifting.from-two-scales", "Mass and centre from two hook scales", "M = m1 + m2; x = (m1·p1 + m2·p2)/M", [new("m1", "front scale", "kg"), new("m2", "rear scale", "kg"), new("p1, p2", "hooks", "mm")], "mm",
            "scales above 0, hooks 50 mm apart or more; else refused", "moments about either hook",
            new("90 kg at 400, 60 kg at 0, x", 240, 1e-9, "by hand: 90·400/150", () => CentreOfMass.FromTwoScales(Mass.FromKilograms(90), new(400, 0, 0),
                Mass.FromKilograms(60), default, Mass.Zero, Length.Zero, Length.Zero).Value.Centre.X)),
        new("lifting.as-it-is-now", "Mass and centre after parts came off or went on", "M = M0 ± Σm; x = (M0·x0 ± Σ(m·x))/M", [new("M0", "mass as weighed or guessed", "kg"), MassIn, new("x", "centre of a part", "mm")], "mm",
            "what is left above its own spread; else refused", "definition of the centre of mass; JCGM 100, 5.1.2",
            new("200 kg at 300, 40 kg at 500 off, x", 250, 1e-9, "by hand: (60000 − 20000)/160", () => CentreOfMass.AsItIsNow(new(Mass.FromKilograms(200), Mass.Zero, new(300, 0, 0), default),
                [Part("part", 40, new(500, 0, 0))], []).Value.Centre.X)),
        new("lifting.hang", "Pulls, angles and tilt of an engine on legs", "ΣT·u = W at the hook, hook straight over G and farthest from it", [MassIn, CentreIn, new("A", "lifting points", "mm"), new("L", "legs", "mm")], "N",
            "one to four legs, 60° to the vertical at most; else refused", Statics,
            new("1800 N, hook over G, arms 200 and 350, height 600", 1207.415, 0.001, "invented inputs, statics reckoned apart with python", () => Slinging.Hang(
                new(Mass.FromKilograms(1800 / 9.80665), Mass.Zero, new(0, 0, -1), default),
                [new("near", new(200, 0, 0), Mm(double.Hypot(200, 600))), new("far", new(-350, 0, 0), Mm(double.Hypot(350, 600)))]).Value.Legs[0].Likely.Newtons)),
        .. GearSums.List,
        .. CraneSums.List,
        .. RoomSums.List,
    ];

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static MassPart Part(string name, double kg, Point3 centre) => new(name, Mass.FromKilograms(kg), Mass.Zero, centre, Length.Zero);
}
