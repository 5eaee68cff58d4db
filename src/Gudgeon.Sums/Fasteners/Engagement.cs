using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Fasteners;

/// <summary>The four limit diameters of a mating thread that decide where it strips, mm.</summary>
/// <param name="BoltMajorLeastMm">Least major diameter of the bolt, Ds min.</param>
/// <param name="BoltPitchLeastMm">Least pitch diameter of the bolt, Es min.</param>
/// <param name="NutMinorMostMm">Greatest minor diameter of the nut, Kn max.</param>
/// <param name="NutPitchMostMm">Greatest pitch diameter of the nut, En max.</param>
public sealed record ThreadLimits(double BoltMajorLeastMm, double BoltPitchLeastMm, double NutMinorMostMm, double NutPitchMostMm);

/// <summary>How deep a thread must go in, and what strips first.</summary>
public static class Engagement
{
    /// <summary>Shear areas of bolt and nut thread over a length of engagement.</summary>
    /// <remarks>
    /// Formula: As = (π·Le/P)·Kn·(P/2 + (Es − Kn)/√3); An = (π·Le/P)·Ds·(P/2 + (Ds − En)/√3). Units: mm, mm².
    /// Range: limit diameters in order Kn below Es and En below Ds. Errors: full threads only; take off the lead chamfer.
    /// Source: FED-STD-H28/2B (1991), shear areas (paraphrase in Machinery's Handbook, 24th ed.).
    /// </remarks>
    public static Outcome<(double BoltMm2, double NutMm2)> ShearAreas(double engagementMm, double pitchMm, ThreadLimits limits) =>
        Check(limits, pitchMm).Positive("engagement", engagementMm, "mm").Then(() => (
            Math.PI * engagementMm / pitchMm * BoltPerTurn(limits, pitchMm),
            Math.PI * engagementMm / pitchMm * NutPerTurn(limits, pitchMm)));

    /// <summary>The engagement at which the bolt breaks before its own thread strips.</summary>
    /// <remarks>
    /// Formula: Le = 2·At/{(π/P)·Kn·[P/2 + (Es − Kn)/√3]}, times J = (As·Rm bolt)/(An·Rm nut) where the nut is so much weaker that J is above 1.
    /// Units: mm, mm², MPa. Range: as <see cref="ShearAreas"/>. Errors: assumes the shear strength is half of the tensile strength for both.
    /// Source: FED-STD-H28/2B (1991), length of engagement (paraphrase in Machinery's Handbook, 24th ed.).
    /// </remarks>
    public static Outcome<double> NoStripLength(double stressAreaMm2, double pitchMm, ThreadLimits limits, double boltTensileMpa, double nutTensileMpa) =>
        Check(limits, pitchMm).Positive("stress area", stressAreaMm2, "mm²").Positive("strength of the bolt", boltTensileMpa, "MPa")
            .Positive("strength of the nut", nutTensileMpa, "MPa").Then(() =>
            {
                var equal = 2 * stressAreaMm2 / (Math.PI / pitchMm * BoltPerTurn(limits, pitchMm));
                return equal * Math.Max(1, BoltPerTurn(limits, pitchMm) * boltTensileMpa / (NutPerTurn(limits, pitchMm) * nutTensileMpa));
            });

    /// <summary>The load at which the weaker thread strips, and which one it is.</summary>
    /// <remarks>
    /// Formula: F = ½·Rm·A, the less of bolt and nut. Units: mm², MPa, N. Range: as <see cref="ShearAreas"/>.
    /// Errors: shear strength taken as half the tensile strength; aluminium and iron castings vary by a fifth and more.
    /// Source: as <see cref="NoStripLength"/>.
    /// </remarks>
    public static Outcome<(double LoadN, bool NutStripsFirst)> StrippingLoad(
        double engagementMm, double pitchMm, ThreadLimits limits, double boltTensileMpa, double nutTensileMpa) => new InputCheck()
        .Positive("strength of the bolt", boltTensileMpa, "MPa").Positive("strength of the nut", nutTensileMpa, "MPa")
        .Go(() => ShearAreas(engagementMm, pitchMm, limits)).Then(areas =>
        {
            var (bolt, nut) = (areas.BoltMm2 * boltTensileMpa / 2, areas.NutMm2 * nutTensileMpa / 2);
            return Outcome.Of((Math.Min(bolt, nut), nut < bolt));
        });

    /// <summary>Usual least engagement by what the hole is cut in, as a multiple of the diameter: common practice, no source.</summary>
    /// <remarks>
    /// Formula: steel 1.0·d, cast iron 1.3·d, light alloy 2.0·d. Units: mm. Range: any d above 0. Errors: a habit, not a limit. Source: common practice, no source.
    /// </remarks>
    public static Outcome<double> UsualLeastMm(double nominalMm, HoleMaterial material) => new InputCheck()
        .Positive("thread diameter", nominalMm, "mm")
        .Then(() => nominalMm * material switch { HoleMaterial.Steel => 1.0, HoleMaterial.CastIron => 1.3, _ => 2.0 });

    private static double BoltPerTurn(ThreadLimits l, double pitch) => l.NutMinorMostMm * (pitch / 2 + (l.BoltPitchLeastMm - l.NutMinorMostMm) / Math.Sqrt(3));

    private static double NutPerTurn(ThreadLimits l, double pitch) => l.BoltMajorLeastMm * (pitch / 2 + (l.BoltMajorLeastMm - l.NutPitchMostMm) / Math.Sqrt(3));

    private static InputCheck Check(ThreadLimits l, double pitchMm) => new InputCheck()
        .Positive("thread pitch", pitchMm, "mm").Positive("nut minor diameter", l.NutMinorMostMm, "mm")
        .That(l.NutMinorMostMm < l.BoltPitchLeastMm, "nut minor diameter", $"{Show(l.NutMinorMostMm)} mm",
            $"less than the bolt's pitch diameter {Show(l.BoltPitchLeastMm)} mm", "Measure again: a bore this wide holds no thread")
        .That(l.NutPitchMostMm < l.BoltMajorLeastMm, "nut pitch diameter", $"{Show(l.NutPitchMostMm)} mm",
            $"less than the bolt's major diameter {Show(l.BoltMajorLeastMm)} mm", "Measure again: a thread this wide holds nothing");
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
