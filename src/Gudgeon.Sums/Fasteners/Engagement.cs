using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Fasteners;

/// <summary>The four limit diameters of a mating thread that decide where it strips.</summary>
/// <param name="BoltMajorLeast">Least major diameter of the bolt, Ds min.</param>
/// <param name="BoltPitchLeast">Least pitch diameter of the bolt, Es min.</param>
/// <param name="NutMinorMost">Greatest minor diameter of the nut, Kn max.</param>
/// <param name="NutPitchMost">Greatest pitch diameter of the nut, En max.</param>
public sealed record ThreadLimits(Length BoltMajorLeast, Length BoltPitchLeast, Length NutMinorMost, Length NutPitchMost);

/// <summary>How deep a thread must go in, and what strips first.</summary>
public static class Engagement
{
    /// <summary>Shear areas of bolt and nut thread over a length of engagement.</summary>
    /// <remarks>
    /// Formula: As = (π·Le/P)·Kn·(P/2 + (Es − Kn)/√3); An = (π·Le/P)·Ds·(P/2 + (Ds − En)/√3). Units: mm, mm².
    /// Range: limit diameters in order Kn below Es and En below Ds. Errors: full threads only; take off the lead chamfer.
    /// Source: FED-STD-H28/2B (1991), shear areas (paraphrase in Machinery's Handbook, 24th ed.).
    /// </remarks>
    public static Outcome<(double BoltMm2, double NutMm2)> ShearAreas(Length engagement, Length pitch, ThreadLimits limits) =>
        Check(limits, pitch).Positive("engagement", engagement).Then(() => (
            Math.PI * (engagement / pitch) * BoltPerTurn(limits, pitch),
            Math.PI * (engagement / pitch) * NutPerTurn(limits, pitch)));

    /// <summary>The engagement at which the bolt breaks before its own thread strips.</summary>
    /// <remarks>
    /// Formula: Le = 2·At/{(π/P)·Kn·[P/2 + (Es − Kn)/√3]}, times J = (As·Rm bolt)/(An·Rm nut) where the nut is so much weaker that J is above 1.
    /// Units: mm, mm², MPa. Range: as <see cref="ShearAreas"/>. Errors: assumes the shear strength is half of the tensile strength for both.
    /// Source: FED-STD-H28/2B (1991), length of engagement (paraphrase in Machinery's Handbook, 24th ed.).
    /// </remarks>
    public static Outcome<Length> NoStripLength(double stressAreaMm2, Length pitch, ThreadLimits limits, double boltTensileMpa, double nutTensileMpa) =>
        Check(limits, pitch).Positive("stress area", stressAreaMm2, "mm²").Positive("strength of the bolt", boltTensileMpa, "MPa")
            .Positive("strength of the nut", nutTensileMpa, "MPa").Then(() =>
            {
                var equal = 2 * stressAreaMm2 / (Math.PI / pitch.Millimetres * BoltPerTurn(limits, pitch));
                return Length.FromMillimetres(equal * Math.Max(1, BoltPerTurn(limits, pitch) * boltTensileMpa / (NutPerTurn(limits, pitch) * nutTensileMpa)));
            });

    /// <summary>The load at which the weaker thread strips, and which one it is.</summary>
    /// <remarks>
    /// Formula: F = ½·Rm·A, the less of bolt and nut. Units: mm², MPa, N. Range: as <see cref="ShearAreas"/>.
    /// Errors: shear strength taken as half the tensile strength; aluminium and iron castings vary by a fifth and more.
    /// Source: as <see cref="NoStripLength"/>.
    /// </remarks>
    public static Outcome<(Force Load, bool NutStripsFirst)> StrippingLoad(
        Length engagement, Length pitch, ThreadLimits limits, double boltTensileMpa, double nutTensileMpa) => new InputCheck()
        .Positive("strength of the bolt", boltTensileMpa, "MPa").Positive("strength of the nut", nutTensileMpa, "MPa")
        .Go(() => ShearAreas(engagement, pitch, limits)).Then(areas =>
        {
            var (bolt, nut) = (areas.BoltMm2 * boltTensileMpa / 2, areas.NutMm2 * nutTensileMpa / 2);
            return Outcome.Of((Force.FromNewtons(Math.Min(bolt, nut)), nut < bolt));
        });

    /// <summary>Usual least engagement by what the hole is cut in, as a multiple of the diameter: common practice, no source.</summary>
    /// <remarks>
    /// Formula: steel 1.0·d, cast iron 1.3·d, light alloy 2.0·d. Units: mm. Range: any d above 0. Errors: a habit, not a limit. Source: common practice, no source.
    /// </remarks>
    public static Outcome<Length> UsualLeast(Length nominal, HoleMaterial material) => new InputCheck()
        .Positive("thread diameter", nominal)
        .Then(() => nominal * (material switch { HoleMaterial.Steel => 10, HoleMaterial.CastIron => 13, _ => 20 }) / 10); // in tenths, so that 1.3·12 mm is 15.6 mm and no bit more

    private static double BoltPerTurn(ThreadLimits l, Length pitch) => l.NutMinorMost.Millimetres * (pitch.Millimetres / 2 + (l.BoltPitchLeast.Millimetres - l.NutMinorMost.Millimetres) / Math.Sqrt(3));

    private static double NutPerTurn(ThreadLimits l, Length pitch) => l.BoltMajorLeast.Millimetres * (pitch.Millimetres / 2 + (l.BoltMajorLeast.Millimetres - l.NutPitchMost.Millimetres) / Math.Sqrt(3));

    private static InputCheck Check(ThreadLimits l, Length pitch) => new InputCheck()
        .Positive("thread pitch", pitch).Positive("nut minor diameter", l.NutMinorMost)
        .That(l.NutMinorMost.Millimetres < l.BoltPitchLeast.Millimetres, "nut minor diameter", $"{Show(l.NutMinorMost.Millimetres)} mm",
            $"less than the bolt's pitch diameter {Show(l.BoltPitchLeast.Millimetres)} mm", "Measure again: a bore this wide holds no thread")
        .That(l.NutPitchMost.Millimetres < l.BoltMajorLeast.Millimetres, "nut pitch diameter", $"{Show(l.NutPitchMost.Millimetres)} mm",
            $"less than the bolt's major diameter {Show(l.BoltMajorLeast.Millimetres)} mm", "Measure again: a thread this wide holds nothing");
}

/// <summary>What a tapped hole is cut in.</summary>
public enum HoleMaterial
{
    /// <summary>Steel.</summary>
    Steel,

    /// <summary>Grey or nodular iron.</summary>
    CastIron,

    /// <summary>Aluminium or magnesium alloy.</summary>
    LightAlloy,
}
