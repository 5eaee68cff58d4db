using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Fasteners;

/// <summary>The family a screw thread belongs to; the two share the 60° profile but not the root.</summary>
public enum ThreadFamily
{
    /// <summary>ISO metric, sizes in millimetres, rounded root.</summary>
    Metric,

    /// <summary>Unified inch, UNC and UNF.</summary>
    Unified,
}

/// <summary>
/// A 60° screw thread: its basic diameters and its stress area.
/// </summary>
/// <remarks>
/// Formula: H = (√3/2)·P; d2 = d − 0.75 H; D1 = d − 1.25 H; d3 = d − (17/12) H (metric), d − 1.5 H (unified);
/// As = (π/4)·((d2 + d3)/2)².
/// Units: mm and mm².
/// Range: nominal diameter above 0 and pitch below half of it; made by <see cref="Of"/> or found in <see cref="ThreadTable"/>.
/// Errors: exact for the basic profile; a real thread is smaller by its allowance.
/// Source: ISO 68-1 (profile), ISO 724 (basic dimensions), ISO 898-1 (stress area); ASME B1.1 At = (π/4)(D − 0.9743/n)².
/// </remarks>
public sealed record ScrewThread
{
    private ScrewThread(string designation, ThreadFamily family, double nominalMm, double pitchMm) =>
        (Designation, Family, NominalMm, PitchMm) = (designation, family, nominalMm, pitchMm);

    /// <summary>The size as it is spoken of: M10x1.25, 7/16-20.</summary>
    public string Designation { get; }

    /// <summary>Metric or unified.</summary>
    public ThreadFamily Family { get; }

    /// <summary>Nominal (major) diameter d, mm.</summary>
    public double NominalMm { get; }

    /// <summary>Pitch P, mm.</summary>
    public double PitchMm { get; }

    /// <summary>Height of the sharp triangle H, mm.</summary>
    public double TriangleMm => Math.Sqrt(3) / 2 * PitchMm;

    /// <summary>Pitch diameter d2, mm.</summary>
    public double PitchDiameterMm => NominalMm - 0.75 * TriangleMm;

    /// <summary>Minor diameter of the nut D1, mm: the bore that is tapped, less its tolerance.</summary>
    public double NutMinorMm => NominalMm - 1.25 * TriangleMm;

    /// <summary>Root diameter of the bolt d3, mm.</summary>
    public double RootMm => NominalMm - (Family == ThreadFamily.Metric ? 17.0 / 12 : 1.5) * TriangleMm;

    /// <summary>Diameter d0 of the circle whose area is the stress area, mm.</summary>
    public double StressDiameterMm => (PitchDiameterMm + RootMm) / 2;

    /// <summary>Stress area As, mm².</summary>
    public double StressAreaMm2 => Math.PI / 4 * StressDiameterMm * StressDiameterMm;

    /// <summary>A thread that no table holds, from its diameter and pitch.</summary>
    public static Outcome<ScrewThread> Of(string designation, ThreadFamily family, Length nominal, Length pitch) => new InputCheck()
        .Positive("thread diameter", nominal)
        .Positive("thread pitch", pitch)
        .That(pitch < nominal / 2, "thread pitch", $"{Show(pitch.Millimetres)} mm on {Show(nominal.Millimetres)} mm",
            "less than half of the diameter", "Measure the pitch with a gauge, crest to crest")
        .Then(() => new ScrewThread(designation, family, nominal.Millimetres, pitch.Millimetres));
}
