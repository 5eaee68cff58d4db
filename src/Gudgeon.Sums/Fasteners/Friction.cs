using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Fasteners;

/// <summary>A coefficient of friction as it is known: between two bounds, most likely midway.</summary>
/// <param name="Low">The lowest that is believed.</param>
/// <param name="High">The highest that is believed.</param>
public readonly record struct FrictionBand(double Low, double High)
{
    /// <summary>The middle of the band.</summary>
    public double Mid => (Low + High) / 2;

    /// <summary>Standard uncertainty of a rectangular spread between the bounds.</summary>
    public double StandardUncertainty => (High - Low) / (2 * Math.Sqrt(3));

    /// <summary>A coefficient taken as known.</summary>
    public static FrictionBand Exactly(double value) => new(value, value);
}

/// <summary>The two places where a tightened bolt rubs, and how wide the head sits.</summary>
/// <param name="Thread">Friction in the thread, μG.</param>
/// <param name="Bearing">Friction under the head or nut, μK.</param>
/// <param name="BearingDiameter">Mean bearing diameter: (contact outside + hole) / 2.</param>
public sealed record JointFriction(FrictionBand Thread, FrictionBand Bearing, Length BearingDiameter)
{
    internal InputCheck Check(InputCheck check, ScrewThread thread) => check
        .Within("thread friction, low", Thread.Low, 0, 0.6, "").Within("thread friction, high", Thread.High, 0, 0.6, "")
        .That(!(Thread.Low > Thread.High), "thread friction", $"{Show(Thread.Low)} to {Show(Thread.High)}", "low before high", "Swap the two")
        .Within("head friction, low", Bearing.Low, 0, 0.6, "").Within("head friction, high", Bearing.High, 0, 0.6, "")
        .That(!(Bearing.Low > Bearing.High), "head friction", $"{Show(Bearing.Low)} to {Show(Bearing.High)}", "low before high", "Swap the two")
        .That(BearingDiameter.Millimetres > thread.NominalMm, "bearing diameter", $"{Show(BearingDiameter.Millimetres)} mm",
            $"more than the thread's {Show(thread.NominalMm)} mm", "Measure across the face under the head and across the hole, and take the mean");

    internal static double PitchArm(ScrewThread thread) => thread.PitchMm / (2 * Math.PI);

    internal static double ThreadArm(ScrewThread thread) => thread.PitchDiameterMm / (2 * Math.Cos(Math.PI / 6));

    internal double BearingArm => BearingDiameter.Millimetres / 2;

    /// <summary>Torque per newton of preload, mm, at given friction: P/2π + μG·d2/(2 cos 30°) + μK·Db/2.</summary>
    internal double LeverMm(ScrewThread thread, double threadFriction, double bearingFriction) =>
        PitchArm(thread) + threadFriction * ThreadArm(thread) + bearingFriction * BearingArm;
}
