using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Lifting;

/// <summary>An arm of the stand, from where it is held on the plate to its bolt.</summary>
/// <param name="Reach">Length that stands free, from its hold on the plate to the bolt.</param>
/// <param name="StandOff">From the middle of the arm to the engine's face, along the bolt.</param>
/// <param name="Wide">Its width, along the plate.</param>
/// <param name="Thick">Its thickness, along the bolt.</param>
/// <param name="Wall">Its wall, where it is a tube; 0 for a solid bar.</param>
public sealed record StandArm(Length Reach, Length StandOff, Length Wide, Length Thick, Length Wall)
{
    /// <summary>Yield that is counted on, MPa: plain structural steel S235, EN 10025-2, from memory; no arm is counted on for more.</summary>
    public const double YieldMpa = 235;

    internal InputCheck Check(InputCheck check) => check.Positive("reach of the arm", Reach).NotNegative("face to arm", StandOff).Positive("width of the arm", Wide).Positive("thickness of the arm", Thick)
        .NotNegative("wall of the arm", Wall)
        .That(Wall.Millimetres * 2 < Math.Min(Wide.Millimetres, Thick.Millimetres), "wall of the arm", $"{Show(Wall.Millimetres)} mm", $"less than half of its thickness, {Show(Math.Min(Wide.Millimetres, Thick.Millimetres) / 2)} mm; 0 for a solid bar",
            "Measure the wall at an open end");
}

/// <summary>The arms, or fingers, between a stand's plate and the bolts.</summary>
public static class StandArms
{
    /// <summary>Stress at the root of an arm under what its bolt does to it.</summary>
    /// <remarks>
    /// Formula: σ = (F·r + V·s)/Wt + V·r/Ww; τ = V·s/Wk + 1.5·√(F² + V²)/A; σv = √(σ² + 3·τ²), r reach, s stand-off, as if every part were worst at one place.
    /// Bar: Wk = a²b²/(3a + 1.8b), a the longer side; tube: Wk = 2·(w − h)·(t − h)·h. Units: N, mm, MPa. Range: wall below half the thickness; forces 0 and above.
    /// Errors: never below the true stress of a straight arm held stiffly at its root; a slot or a weld there takes strength away. Source: beam theory; torsion of a bar as Shigley's Mechanical Engineering Design, 9th edition, equation 3-40 (from memory), of a tube by Bredt.
    /// </remarks>
    /// <param name="along">Force along the bolt, pull or push.</param>
    /// <param name="across">Force across the bolt.</param>
    /// <param name="arm">The arm.</param>
    /// <returns>Stress, MPa.</returns>
    public static Outcome<double> ArmStress(Force along, Force across, StandArm arm) => arm.Check(new InputCheck()).NotNegative("force along the bolt", along).NotNegative("force across the bolt", across)
        .Then(() => Stress(along.Newtons, across.Newtons, arm));

    internal static double Stress(double f, double v, StandArm arm)
    {
        var (r, s, w, t, h) = (arm.Reach.Millimetres, arm.StandOff.Millimetres, arm.Wide.Millimetres, arm.Thick.Millimetres, arm.Wall.Millimetres);
        var (inW, inT) = h > 0 ? (w - 2 * h, t - 2 * h) : (0, 0);
        var bendThick = (w * t * t * t - inW * inT * inT * inT) / (6 * t);
        var bendWide = (t * w * w * w - inT * inW * inW * inW) / (6 * w);
        var (longer, shorter) = (Math.Max(w, t), Math.Min(w, t));
        var twist = h > 0 ? 2 * (w - h) * (t - h) * h : longer * longer * shorter * shorter / (3 * longer + 1.8 * shorter);
        var bending = (f * r + v * s) / bendThick + v * r / bendWide;
        var shear = v * s / twist + 1.5 * double.Hypot(f, v) / (w * t - inW * inT);
        return Math.Sqrt(bending * bending + 3 * shear * shear);
    }
}
