using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Lifting;

/// <summary>The sums of bars, headroom and floor for the catalogue.</summary>
internal static class RoomSums
{
    private const string Apart = "invented inputs, reckoned apart with python";
    private static readonly SumInput[] Bar = [new("S", "span of the bar", "mm"), new("H", "hook over the bar", "mm"), new("s", "carrier forward of the middle", "mm"), new("d", "drops", "mm"), new("G", "centre of mass", "mm")];
    private static readonly HangingBar Even = new(Mm(800), Mm(400), Length.Zero, Mass.Zero, Mm(350), Mm(350));

    public static IReadOnlyList<SumEntry> List { get; } =
    [
        new("lifting.hang-under-bar", "Pulls, tilt and bending under a spreader bar or leveller", "least potential energy of bar and engine; ΣT·u = W", Bar, "N·m", "centre between the points, drops within 60°; else refused", "least potential energy; statics",
            new("4000 N under 0.8 m, bending", 800, 0.05, Apart, () => BarRig.HangUnderBar(new(Mass.FromKilograms(4000 / 9.80665), Mass.Zero, new(0, 0, -100), default),
                new(400, 0, 0), new(-400, 0, 0), Even).Value.Bending.NewtonMetres)),
        new("lifting.level-carrier", "Where a leveller's carrier levels the engine", "no tilt, by halving", Bar, "mm", "a level place within the travel; else refused", "least potential energy; statics",
            new("even bar, centre 55 mm forward", 55, 0.05, "by hand: straight over the centre", () => BarRig.LevelCarrier(new(Mass.FromKilograms(180), Mass.Zero, new(55, 0, -100), default),
                new(400, 0, 0), new(-400, 0, 0), Even, Mm(200)).Value.Millimetres)),
        new("lifting.square-tube", "Bending of a square tube", "I = (b⁴ − (b − 2t)⁴)/12; σ = F·l·(b/2)/I; δ = F·l³/(3·E·I)",
            [new("F", "pull at the end", "N"), new("l", "arm", "mm"), new("b", "side", "mm"), new("t", "wall", "mm")], "MPa", "wall below half the side; else refused", "beam theory",
            new("2000 N at 0.4 m, 40×40×3", 156.91, 0.01, Apart, () => BarBending.SquareTube(Force.FromNewtons(2000), Mm(400), Mm(40), Mm(3)).Value.StressMpa)),
        new("lifting.spare", "What is to spare in height", "heights added up", [new("h", "heights of hook, roof, sill, legs, parts", "mm")], "mm", "tops over bottoms; else refused", "adding up heights",
            new("hook 2100, sill 850, engine 1150 below the hook, 30 free", 70, 1e-9, "by hand", () => Headroom.Spare(new(Mm(2100), Length.Zero, Mm(9000), Mm(850), Mm(900), Mm(150),
                900, Length.Zero, Mm(30), [new("block", 300, -250, false, 0)])).Value.Points.Single(point => point.Name == "over the sill").Spare.Millimetres)),
        new("lifting.sweep", "How near the crane comes to what stands on the floor", "least distance between outlines on the way, less 2 mm", [new("way", "poses of the crane", "mm"), new("outlines", "crane, obstacles, room", "mm")], "mm",
            "up to 2 mm short, never long", "plane geometry",
            new("straight on, bench 100 mm beside", 98, 1e-9, "by hand", () => FloorPlan.Sweep([new("crane", [new(0, -400), new(1500, -400), new(1500, 400), new(0, 400)])],
                [new(new(0, 0), Angle.Zero), new(new(3000, 0), Angle.Zero)], [new("bench", [new(1000, 500), new(2500, 500), new(2500, 1100), new(1000, 1100)])], null).Value.Passes[0].Spare.Millimetres)),
    ];

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
