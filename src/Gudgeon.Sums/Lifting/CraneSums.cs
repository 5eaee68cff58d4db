using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Lifting;

/// <summary>The sums of crane and stand for the catalogue.</summary>
internal static class CraneSums
{
    private const string Apart = "invented inputs, reckoned apart with python";
    private static readonly SumInput[] Ram = [new("a", "pivot to ram foot", "mm"), new("b", "pivot to ram pin", "mm"), new("c", "ram", "mm"), new("L", "boom", "mm")];
    private static readonly CraneGeometry Crane = new(Length.Zero, Mm(1500), Length.Zero, Mm(900), Mm(400), Mm(550), Mm(950), Mm(120), [new(Mm(1200), Kg(750))]);
    private static readonly Length Level = Mm(Math.Sqrt(520_000));

    public static IReadOnlyList<SumEntry> List { get; } =
    [
        new("lifting.pose-at", "Where the hook is at a stroke", "boom angle = acos((a² + b² − c²)/2ab) + direction of a", Ram, "mm", "ram within its stroke; else refused", "cosine rule",
            new("level boom, hook 120 below the pin 1500 up", 1380, 1e-9, "by hand", () => CraneBoom.PoseAt(Crane, 0, Level).Value.HookHeight.Millimetres)),
        new("lifting.stroke", "The crane along its stroke", "as for one stroke", Ram, "mm", "2 to 200 poses; else refused", "cosine rule",
            new("last of five poses, ram", 950, 1e-9, "by hand: the open ram", () => CraneBoom.Stroke(Crane, 0, 5).Value[^1].Ram.Millimetres)),
        new("lifting.ram-force", "Force in the ram", "F = m·g·reach/arm", [.. Ram, new("m", "load", "kg")], "N", "ram within its stroke; else refused", "moments about the pivot",
            new("200 kg at 1.2 m, boom level", 7071.68, 0.01, Apart, () => CraneBoom.RamForce(Crane, 0, Level, Kg(200)).Value.Newtons)),
        new("lifting.on-plate", "A load against the crane's plate", "m ≤ plate at the hole", [new("m", "load", "kg")], "1", "beyond the plate it is refused", "the crane's own plate",
            new("375 kg on 750", 0.5, 1e-12, "by hand", () => CraneBoom.OnPlate(Crane, 0, Kg(375)).Value)),
        new("lifting.stands", "Whether a crane stands on each wheel line", "Σ w·(d·cos σ − z·sin σ), rope load (w/cos δ)·(d·cos(σ + δ) − z·sin(σ + δ))",
            [new("w", "weight", "N"), new("d", "distance inside the line", "mm"), new("z", "height", "mm"), new("σ", "slope", "°"), new("δ", "swing", "°")], "kg", "swing to 30°, slope to 10°; one that tips is refused", "moments about a line",
            new("75 kg at 0.55, front line 1.60, boom end 1.75 m", 525, 1e-9, Apart, () => CraneTipping.Stands(new(
                [new("fl", 1600, 450), new("fr", 1600, -450), new("rr", 0, -350), new("rl", 0, 350)], Kg(75), new(550, 0, 500), Mass.Zero, new(1750, 0, 1500), Angle.Zero, Angle.Zero))
                .Value.Lines.Single(line => line.SpareLoad is { Kilograms: < 600 }).SpareLoad!.Value.Kilograms)),
        new("lifting.arm-stress", "Stress at the root of a stand's arm", "σ = (F·r + V·s)/Wt + V·r/Ww; τ = V·s/Wk + 1.5·√(F² + V²)/A; σv = √(σ² + 3·τ²)",
            [new("F", "force along the bolt", "N"), new("V", "force across the bolt", "N"), new("r", "reach of the arm", "mm"), new("s", "face to arm", "mm"), new("w, t, h", "width, thickness, wall", "mm")], "MPa", "wall below half the thickness; else refused",
            "beam theory; Shigley's Mechanical Engineering Design, 9th edition, equation 3-40; Bredt",
            new("1200 N along and 450 N across, 150 mm, 60 off, 40×40×4 tube", 44.7865, 1e-3, Apart, () => StandArms.ArmStress(Force.FromNewtons(1200), Force.FromNewtons(450), new(Mm(150), Mm(60), Mm(40), Mm(40), Mm(4))).Value)),
        new("lifting.mount", "Moment, turning torque and bolts of an engine on a stand", "M = m·g·(x + face to post); F = m·g·x·h/Σh²; σ = √((F/As + 32·M/(π·d0³))² + 3·(V/As)²)",
            [new("m", "mass", "kg"), new("x", "centre out from the face", "mm"), new("h", "bolt over the lowest one", "mm"), new("d0", "stress diameter", "mm")], "N·m", "half of yield, plate's moment; beyond it is refused",
            "statics; Shigley's Mechanical Engineering Design, 9th edition, section 8-12",
            new("180 kg, 0.28 m out, 0.15 m to the post", 759.0347, 1e-4, Apart, () => EngineStand.Mount(new(new(Kg(180), Mass.Zero, new(280, 0, 18), default), Mm(150),
                [new("1", 130, 100), new("2", -130, 100), new("3", 130, -100), new("4", -130, -100)], ThreadTable.Find("M12").Value, PropertyClass.Of("8.8", Mm(12)).Value,
                Length.Zero, Mm(20), HoleMaterial.CastIron), Torque.FromNewtonMetres(1500)).Value.PostMoment.NewtonMetres)),
    ];

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static Mass Kg(double value) => Mass.FromKilograms(value);
}
