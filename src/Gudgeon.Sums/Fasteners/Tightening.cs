using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Fasteners;

/// <summary>Torque to preload and back.</summary>
public static class Tightening
{
    /// <summary>Torque for a preload by the nut factor.</summary>
    /// <remarks>
    /// Formula: T = K·d·F. Units: F in N, d in mm, T in N·m. Range: K 0.05 to 0.5. Errors: ±25 % and more, all of it hidden in K.
    /// Source: the short form in every machine design text, e.g. Shigley's Mechanical Engineering Design, 9th ed., section 8-8.
    /// </remarks>
    public static Outcome<Torque> TorqueByNutFactor(Force preload, Length nominal, double nutFactor) => new InputCheck()
        .Positive("preload", preload).Positive("thread diameter", nominal).Within("nut factor", nutFactor, 0.05, 0.5, "")
        .Then(() => Torque.FromNewtonMetres(nutFactor * nominal.Metres * preload.Newtons));

    /// <summary>Preload of a torque by the nut factor.</summary>
    /// <remarks>
    /// Formula: F = T/(K·d). Units: T in N·m, d in mm, F in N. Range: K 0.05 to 0.5. Errors: ±25 % and more, all of it hidden in K.
    /// Source: as <see cref="TorqueByNutFactor"/>.
    /// </remarks>
    public static Outcome<Force> PreloadByNutFactor(Torque torque, Length nominal, double nutFactor) => new InputCheck()
        .Positive("torque", torque).Positive("thread diameter", nominal).Within("nut factor", nutFactor, 0.05, 0.5, "")
        .Then(() => Force.FromNewtons(torque.NewtonMetres / (nutFactor * nominal.Metres)));

    /// <summary>Torque for a preload by the full friction form, at the middle of the friction bands.</summary>
    /// <remarks>
    /// Formula: T = F·[P/2π + μG·d2/(2 cos 30°) + μK·Db/2]. Units: F in N, lengths in mm, T in N·m.
    /// Range: friction 0 to 0.6, 60° threads, below yield. Errors: leaves out μ·tan λ, 0.3 % of the torque at μ 0.15.
    /// Source: ISO 16047; VDI 2230-1 (which rounds the factors to 0.16 and 0.58).
    /// </remarks>
    public static Outcome<Torque> TorqueByFriction(Force preload, ScrewThread thread, JointFriction friction) =>
        friction.Check(new InputCheck().Positive("preload", preload), thread)
            .Then(() => Torque.FromNewtonMetres(preload.Newtons * friction.LeverMm(thread, friction.Thread.Mid, friction.Bearing.Mid) / 1000));

    /// <summary>Preload of a torque by the full friction form, with the scatter of friction and of the wrench carried through.</summary>
    /// <remarks>
    /// Formula: F = T/[P/2π + μG·d2/(2 cos 30°) + μK·Db/2]; u² = Σ (∂F/∂x·u_x)² over torque, μG and μK, each rectangular.
    /// Units: T in N·m, lengths in mm, F in N; wrench tolerance as a part of one (0.04 for ±4 %).
    /// Range: friction 0 to 0.6, tolerance 0 to 0.5, below yield. Errors: first order in the spread; the least and most are exact corners.
    /// Source: ISO 16047, VDI 2230-1; JCGM 100 for the propagation; ISO 6789 for what a setting wrench may deviate.
    /// </remarks>
    public static Outcome<Preload> PreloadByFriction(Torque torque, double wrenchTolerance, ScrewThread thread, JointFriction friction) =>
        friction.Check(new InputCheck().Positive("torque", torque).Within("wrench tolerance", wrenchTolerance, 0, 0.5, ""), thread)
            .That(friction.Thread.Low + friction.Bearing.Low > 0, "friction", "0 in thread and under head", "more than 0 in one of the two",
                "Give the lubricant's band; nothing runs without friction")
            .Then(() =>
            {
                var turn = torque.NewtonMetres * 1000;
                var lever = friction.LeverMm(thread, friction.Thread.Mid, friction.Bearing.Mid);
                var likely = turn / lever;
                var fromTorque = likely * wrenchTolerance / Math.Sqrt(3);
                var fromThread = likely * JointFriction.ThreadArm(thread) / lever * friction.Thread.StandardUncertainty;
                var fromHead = likely * friction.BearingArm / lever * friction.Bearing.StandardUncertainty;
                return new Preload(Force.FromNewtons(likely),
                    Force.FromNewtons(turn * (1 - wrenchTolerance) / friction.LeverMm(thread, friction.Thread.High, friction.Bearing.High)),
                    Force.FromNewtons(turn * (1 + wrenchTolerance) / friction.LeverMm(thread, friction.Thread.Low, friction.Bearing.Low)),
                    Force.FromNewtons(Math.Sqrt(fromTorque * fromTorque + fromThread * fromThread + fromHead * fromHead)));
            });

    /// <summary>The preload at which tightening uses a given part of the bolt's yield, tension and twist together.</summary>
    /// <remarks>
    /// Formula: F = As·ν·Rp0.2/√(1 + 3·[1.5·(d2/d0)·(P/(π·d2) + 1.155·μG)]²). Units: mm, MPa, N.
    /// Range: ν above 0 to 1, friction 0 to 0.6, plain shank not thinner than the thread. Errors: within 0.7 % of the printed tables.
    /// Source: VDI 2230-1 (2003), assembly preload, tables A1 to A4.
    /// </remarks>
    public static Outcome<Force> PreloadAtUtilisation(double utilisation, ScrewThread thread, PropertyClass strength, double threadFriction) => new InputCheck()
        .That(utilisation > 0 && utilisation <= 1, "utilisation", Show(utilisation), "more than 0, at most 1", "Give 0.9 for nine tenths of yield")
        .Within("thread friction", threadFriction, 0, 0.6, "")
        .Then(() => Force.FromNewtons(thread.StressAreaMm2 * utilisation * strength.YieldMpa / TwistFactor(thread, threadFriction)));

    /// <summary>How much of the yield a preload uses while the wrench is still on, tension and twist together.</summary>
    /// <remarks>
    /// Formula: ν = F·√(1 + 3·[…]²)/(As·Rp0.2), the inverse of <see cref="PreloadAtUtilisation"/>. Units: N, mm, MPa; result as a part of one.
    /// Range: friction 0 to 0.6; a result above 1 says that the bolt yields. Errors: as there. Source: VDI 2230-1 (2003).
    /// </remarks>
    public static Outcome<double> Utilisation(Force preload, ScrewThread thread, PropertyClass strength, double threadFriction) => new InputCheck()
        .NotNegative("preload", preload).Within("thread friction", threadFriction, 0, 0.6, "")
        .Then(() => preload.Newtons * TwistFactor(thread, threadFriction) / (thread.StressAreaMm2 * strength.YieldMpa));

    private static double TwistFactor(ScrewThread thread, double threadFriction)
    {
        var twist = 1.5 * thread.PitchDiameterMm / thread.StressDiameterMm
            * (thread.PitchMm / (Math.PI * thread.PitchDiameterMm) + 2 / Math.Sqrt(3) * threadFriction);
        return Math.Sqrt(1 + 3 * twist * twist);
    }
}
