using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Lifting;

/// <summary>A bolt that holds the engine to the stand's plate.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Y">Left of the turning axis, mm.</param>
/// <param name="Z">Over the turning axis, mm.</param>
public sealed record PlateBolt(string Name, double Y, double Z);

/// <summary>An engine on a stand.</summary>
/// <param name="Load">Mass and centre, from the turning axis: x out from the bell-housing face, y left, z up.</param>
/// <param name="FaceToPost">From the bell-housing face back to the post.</param>
/// <param name="Bolts">The bolts, as they sit with the engine upright.</param>
/// <param name="Thread">Thread of the bolts.</param>
/// <param name="Strength">Their property class.</param>
/// <param name="FreeArm">Length of bolt between the engine's face and the stand's finger, where it is bent.</param>
/// <param name="Engagement">Thread that holds in the engine's face.</param>
/// <param name="Face">What that face is made of.</param>
public sealed record MountedEngine(
    HangingLoad Load, Length FaceToPost, IReadOnlyList<PlateBolt> Bolts, ScrewThread Thread, PropertyClass Strength, Length FreeArm, Length Engagement, HoleMaterial Face);

/// <summary>What the stand carries.</summary>
/// <param name="PostMoment">Overhung moment at the post.</param>
/// <param name="FaceMoment">Overhung moment at the bell-housing face.</param>
/// <param name="TurningTorque">Largest torque that it takes to turn the engine over.</param>
/// <param name="WorstBolt">The bolt that is used most, over a whole turn.</param>
/// <param name="BoltPull">Its pull.</param>
/// <param name="BoltStressMpa">Its stress, pull and bending and shear together, MPa.</param>
/// <param name="YieldPart">That stress over the yield stress.</param>
/// <param name="Warnings">What is allowed and yet to be looked at.</param>
public sealed record StandLoad(
    Torque PostMoment, Torque FaceMoment, Torque TurningTorque, string WorstBolt, Force BoltPull, double BoltStressMpa, double YieldPart, IReadOnlyList<Refusal> Warnings);

/// <summary>An engine that hangs out from a stand.</summary>
public static class EngineStand
{
    /// <summary>A bolt may be used to this part of its yield: common practice, no source.</summary>
    public const double YieldShare = 0.5;

    /// <summary>Moments, turning torque and bolts of an engine on a stand.</summary>
    /// <remarks>
    /// Formula: M = m·g·(x + face to post); turning torque = m·g·√(y² + z²); pull of a bolt = m·g·x·h/Σh², h over the lowest bolt, for every way the engine is turned;
    /// shear = m·g/n + turning torque shared by distance; bending = shear·arm; σ = √((F/As + 32·M/(π·d0³))² + 3·(V/As)²). The largest mass and centre within the spread are taken.
    /// Units: mm, kg, N, N·m, MPa. Range: three bolts or more, centre out from the face; above half of yield or of the plate's moment it is refused.
    /// Errors: rigid plate and face, bolts not tight: tight bolts are bent less. Source: statics; bolt group about its tipping edge as in Shigley's Mechanical Engineering Design, 9th edition, section 8-12.
    /// </remarks>
    public static Outcome<StandLoad> Mount(MountedEngine engine, Torque plateMoment)
    {
        var check = engine.Load.Check(new InputCheck()).NotNegative("face to post", engine.FaceToPost).NotNegative("free arm of the bolts", engine.FreeArm)
            .Positive("engagement", engine.Engagement).Positive("moment on the stand's plate", plateMoment)
            .That(engine.Bolts.Count >= 3, "bolts", Show(engine.Bolts.Count), "three or more", "Use every hole of the bell-housing that a finger reaches")
            .That(engine.Load.Centre.X - engine.Load.CentreSpread.X > 0, "centre of mass", $"{Show(engine.Load.Centre.X)} mm from the face", "a place out from the face", "Measure from the bell-housing face forward");
        if (check.Clean)
        {
            var wide = engine.Bolts.Max(b => engine.Bolts.Max(c => double.Hypot(b.Y - c.Y, b.Z - c.Z)));
            check.That(engine.Bolts.Count >= 3 && Footprint.Hull([.. engine.Bolts.Select(b => (b.Y, b.Z))]).Count >= 3 && wide >= 50, "bolts", "all in one line or at one place", "a pattern round the crank", "Give each bolt left of and over the turning axis");
        }

        return check.Go(() => Judge(engine, plateMoment));
    }

    private static Outcome<StandLoad> Judge(MountedEngine engine, Torque plateMoment)
    {
        var weight = Force.FromKilogramsForce((engine.Load.Mass + engine.Load.MassSpread).Kilograms).Newtons;
        var (centre, spread) = (engine.Load.Centre, engine.Load.CentreSpread);
        var x = centre.X + spread.X;
        var off = double.Hypot(Math.Abs(centre.Y) + spread.Y, Math.Abs(centre.Z) + spread.Z);
        var post = Torque.FromNewtonMetres(weight * (x + engine.FaceToPost.Millimetres) / 1000);
        var turning = Torque.FromNewtonMetres(weight * off / 1000);
        var (name, pull, stress) = Worst(engine, weight, weight * x, weight * off);
        var part = stress / engine.Strength.YieldMpa;
        var least = Fasteners.Engagement.UsualLeast(Length.FromMillimetres(engine.Thread.NominalMm), engine.Face).Value;
        return new InputCheck()
            .That(post <= plateMoment, "stand", $"{Show(post.NewtonMetres)} N·m at the post", $"{Show(plateMoment.NewtonMetres)} N·m at most by its plate", "Strip the engine further before it goes on, or take a stronger stand")
            .That(part <= YieldShare, name, $"{Show(stress)} MPa", $"{Show(YieldShare * engine.Strength.YieldMpa)} MPa at most, half of yield (common practice, no source)", "Bring the fingers closer to the face, or use more or thicker bolts")
            .Then(() => new StandLoad(post, Torque.FromNewtonMetres(weight * x / 1000), turning, name, Force.FromNewtons(pull), stress, part,
                engine.Engagement >= least ? [] : [new Refusal("engagement", $"{Show(engine.Engagement.Millimetres)} mm", $"{Show(least.Millimetres)} mm or more (common practice, no source)", "Take longer bolts, if the hole is deep enough")]));
    }

    private static (string Name, double Pull, double Stress) Worst(MountedEngine engine, double weight, double moment, double twist)
    {
        var (my, mz) = (engine.Bolts.Average(b => b.Y), engine.Bolts.Average(b => b.Z));
        var spokes = engine.Bolts.Sum(b => Math.Pow(double.Hypot(b.Y - my, b.Z - mz), 2));
        var (area, d0) = (engine.Thread.StressAreaMm2, engine.Thread.StressDiameterMm);
        var worst = (Name: engine.Bolts[0].Name, Pull: 0.0, Stress: -1.0);
        for (var degrees = 0; degrees < 360; degrees++)
        {
            var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
            var heights = engine.Bolts.Select(b => b.Y * sin + b.Z * cos).ToList();
            var edge = heights.Min();
            var squares = heights.Sum(h => (h - edge) * (h - edge));
            for (var i = 0; i < engine.Bolts.Count; i++)
            {
                var pull = moment * (heights[i] - edge) / squares;
                var shear = weight / engine.Bolts.Count + twist * double.Hypot(engine.Bolts[i].Y - my, engine.Bolts[i].Z - mz) / spokes;
                var bending = 32 * shear * engine.FreeArm.Millimetres / (Math.PI * d0 * d0 * d0);
                var stress = Math.Sqrt(Math.Pow(pull / area + bending, 2) + 3 * Math.Pow(shear / area, 2));
                if (stress > worst.Stress)
                    worst = (engine.Bolts[i].Name, pull, stress);
            }
        }

        return worst;
    }
}
