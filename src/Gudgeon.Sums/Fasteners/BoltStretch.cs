using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Fasteners;

/// <summary>A length of bolt of one cross-section.</summary>
/// <param name="Length">Length under load.</param>
/// <param name="AreaMm2">Cross-section, mm²; the stress area where it is threaded.</param>
public readonly record struct BoltSection(Length Length, double AreaMm2);

/// <summary>Angle, stretch and load of a bolt and the joint that it clamps.</summary>
public static class BoltStretch
{
    /// <summary>Young's modulus of bolt steel, MPa; common in the standards and tables.</summary>
    public const double SteelMpa = 205_000;

    /// <summary>Stiffness of a bolt made of sections one after the other.</summary>
    /// <remarks>
    /// Formula: k = E/Σ(Li/Ai). Units: mm, mm², MPa, N/mm. Range: below yield. Errors: ends (head, engaged thread) stretch too;
    /// VDI 2230-1 adds about 0.4 to 0.5 d for each as an extra section. Source: springs in series, Hooke's law.
    /// </remarks>
    public static Outcome<double> StiffnessNPerMm(IReadOnlyList<BoltSection> sections, double youngMpa = SteelMpa)
    {
        var check = new InputCheck().Positive("Young's modulus", youngMpa, "MPa")
            .That(sections.Count > 0, "bolt sections", "none", "one or more", "Give the shank and the thread under load");
        for (var i = 0; i < sections.Count; i++)
            check.Positive($"length of section {i + 1}", sections[i].Length).Positive($"area of section {i + 1}", sections[i].AreaMm2, "mm²");
        return check.Then(() => youngMpa / sections.Sum(s => s.Length.Millimetres / s.AreaMm2));
    }

    /// <summary>Stretch under a load.</summary>
    /// <remarks>
    /// Formula: δ = F/k. Units: N, N/mm, mm. Range: below yield. Errors: as <see cref="StiffnessNPerMm"/>. Source: Hooke's law.
    /// </remarks>
    public static Outcome<Length> Stretch(Force load, double stiffnessNPerMm) => new InputCheck()
        .NotNegative("load", load).Positive("bolt stiffness", stiffnessNPerMm, "N/mm").Then(() => Length.FromMillimetres(load.Newtons / stiffnessNPerMm));

    /// <summary>Load from the length of the bolt before and after tightening, both at the same temperature.</summary>
    /// <remarks>
    /// Formula: F = k·(L₁ − L₀); u = k·√2·u_L. Units: mm, N/mm, N. Range: below yield; the tightened length not below the free one.
    /// Errors: the two readings' uncertainty, carried. Source: Hooke's law; JCGM 100.
    /// </remarks>
    public static Outcome<(Force Load, Force StandardUncertainty)> LoadFromLengths(
        Length free, Length tight, Length readingUncertainty, double stiffnessNPerMm) => new InputCheck()
        .Positive("free length", free).Positive("tightened length", tight)
        .NotNegative("uncertainty of a length", readingUncertainty).Positive("bolt stiffness", stiffnessNPerMm, "N/mm")
        .That(tight >= free, "tightened length", $"{Show(tight.Millimetres)} mm", $"{Show(free.Millimetres)} mm or more",
            "Check that the two readings are in the right order and taken cold")
        .Then(() => (Force.FromNewtons((tight - free).Millimetres * stiffnessNPerMm), Force.FromNewtons(Math.Sqrt(2) * readingUncertainty.Millimetres * stiffnessNPerMm)));

    /// <summary>Load gained by turning a nut or head through an angle after it is snug.</summary>
    /// <remarks>
    /// Formula: F = (θ/360)·P/(1/kb + 1/kj). Units: θ in degrees, P in mm, k in N/mm, F in N. Range: 0 to 720°, below yield;
    /// a joint that gives nothing has an endless kj. Errors: ±5 to 12 % of the load is usual for angle control. Source: springs in series; VDI 2230.
    /// </remarks>
    public static Outcome<Force> LoadFromAngle(Angle angle, Length pitch, double boltNPerMm, double jointNPerMm) => Turn(pitch, boltNPerMm, jointNPerMm)
        .Within("angle", angle, 0, 720).Then(() => Force.FromNewtons(angle.Turns * pitch.Millimetres / (1 / boltNPerMm + 1 / jointNPerMm)));

    /// <summary>The angle that gives a load after snug.</summary>
    /// <remarks>
    /// Formula: θ = 360·F·(1/kb + 1/kj)/P. Units, range, errors and source as <see cref="LoadFromAngle"/>.
    /// </remarks>
    public static Outcome<Angle> AngleForLoad(Force load, Length pitch, double boltNPerMm, double jointNPerMm) => Turn(pitch, boltNPerMm, jointNPerMm)
        .NotNegative("load", load).Then(() => Angle.FromTurns(load.Newtons * (1 / boltNPerMm + 1 / jointNPerMm) / pitch.Millimetres));

    /// <summary>The bolt's part of a load that is put on the tightened joint from outside.</summary>
    /// <remarks>
    /// Formula: C = kb/(kb + kj); the bolt carries F_i + C·P until the joint opens. Units: N/mm; result as a part of one.
    /// Range: both stiffnesses above 0. Errors: exact for springs; the joint's stiffness is seldom known within 20 %.
    /// Source: Shigley's Mechanical Engineering Design, 9th ed., section 8-7.
    /// </remarks>
    public static Outcome<double> BoltShare(double boltNPerMm, double jointNPerMm) => new InputCheck()
        .Positive("bolt stiffness", boltNPerMm, "N/mm").Positive("joint stiffness", jointNPerMm, "N/mm")
        .Then(() => boltNPerMm / (boltNPerMm + jointNPerMm));

    /// <summary>The warming that stretches a free bolt by as much as a load does.</summary>
    /// <remarks>
    /// Formula: ΔT = δ/(α·L). Units: mm, 1/K, K. Range: α above 0. Errors: α of steel is 11 to 12.5·10⁻⁶/K.
    /// Source: linear expansion; worked in Wentzell, Machine Design (2004), ex. 6.3.
    /// </remarks>
    public static Outcome<TemperatureDifference> WarmingForStretch(Length stretch, Length length, double expansionPerK) => new InputCheck()
        .NotNegative("stretch", stretch).Positive("length", length).Positive("expansion", expansionPerK, "1/K")
        .Then(() => TemperatureDifference.FromKelvins(stretch / length / expansionPerK));

    private static InputCheck Turn(Length pitch, double boltNPerMm, double jointNPerMm) => new InputCheck()
        .Positive("thread pitch", pitch).Positive("bolt stiffness", boltNPerMm, "N/mm")
        .That(jointNPerMm > 0, "joint stiffness", $"{Show(jointNPerMm)} N/mm", "more than 0 N/mm", "Look at joint stiffness again");
}
