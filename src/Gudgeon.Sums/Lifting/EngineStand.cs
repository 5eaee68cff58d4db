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
/// <param name="Bolt">The bolts and their holes measured, or null where nobody did.</param>
/// <param name="Arm">The weakest arm, or null where nobody measured it: arms are then not judged.</param>
public sealed record MountedEngine(
    HangingLoad Load, Length FaceToPost, IReadOnlyList<PlateBolt> Bolts, ScrewThread Thread, PropertyClass Strength, Length FreeArm, Length Engagement, HoleMaterial Face,
    BoltInHole? Bolt = null, StandArm? Arm = null);

/// <summary>A bolt and its hole: what is left of its length is all that can hold.</summary>
/// <param name="UnderHead">Length of the bolt under its head.</param>
/// <param name="Through">What lies between head and engine: washer, arm, sleeve.</param>
/// <param name="HoleDepth">Depth of the threaded hole; 0 where it goes through.</param>
public sealed record BoltInHole(Length UnderHead, Length Through, Length HoleDepth);

/// <summary>What the stand carries.</summary>
/// <param name="PostMoment">Overhung moment at the post.</param>
/// <param name="FaceMoment">Overhung moment at the bell-housing face.</param>
/// <param name="TurningTorque">Largest torque that it takes to turn the engine over.</param>
/// <param name="WorstBolt">The bolt that is used most, over a whole turn.</param>
/// <param name="BoltPull">Its pull.</param>
/// <param name="BoltStressMpa">Its stress, pull and bending and shear together, MPa.</param>
/// <param name="YieldPart">That stress over the yield stress.</param>
/// <param name="Warnings">What is allowed and yet to be looked at.</param>
/// <param name="Arm">The arm that is used most; null where arms are not judged.</param>
public sealed record StandLoad(
    Torque PostMoment, Torque FaceMoment, Torque TurningTorque, string WorstBolt, Force BoltPull, double BoltStressMpa, double YieldPart, IReadOnlyList<Refusal> Warnings, BentArm? Arm = null);

/// <summary>The arm that is used most over a whole turn.</summary>
/// <param name="Bolt">The bolt at its end.</param>
/// <param name="Along">Pull or push along that bolt.</param>
/// <param name="Across">Force across it.</param>
/// <param name="StressMpa">Stress at its root, MPa.</param>
public sealed record BentArm(string Bolt, Force Along, Force Across, double StressMpa);

/// <summary>An engine that hangs out from a stand.</summary>
public static class EngineStand
{
    /// <summary>A bolt may be used to this part of its yield: common practice, no source.</summary>
    public const double YieldShare = 0.5;

    /// <summary>Moments, turning torque and bolts of an engine on a stand.</summary>
    /// <remarks>
    /// Formula: M = m·g·(x + face to post); turning torque = m·g·√(y² + z²); pull of a bolt = the larger of m·g·x·h/Σh², h over the lowest bolt (a stiff face on a stiff plate),
    /// and the share by distance from the middle of the pattern (arms that give alike), for every way the engine is turned;
    /// shear = m·g/n + turning torque shared by distance; bending = shear·arm; σ = √((F/As + 32·M/(π·d0³))² + 3·(V/As)²). The largest mass and centre within the spread are taken.
    /// Arms as <see cref="StandArms.ArmStress"/>, pull and push alike. Units: mm, kg, N, N·m, MPa. Range: three bolts or more, centre out from the face; above half of yield or of the plate's moment it is refused.
    /// Errors: bolts not tight: tight bolts are bent less. Source: statics; bolt group about its tipping edge as in Shigley's Mechanical Engineering Design, 9th edition, section 8-12.
    /// </remarks>
    public static Outcome<StandLoad> Mount(MountedEngine engine, Torque plateMoment)
    {
        var check = engine.Load.Check(new InputCheck()).NotNegative("face to post", engine.FaceToPost).NotNegative("free arm of the bolts", engine.FreeArm)
            .Positive("engagement", engine.Engagement).Positive("moment on the stand's plate", plateMoment)
            .That(engine.Bolts.Count >= 3, "bolts", Show(engine.Bolts.Count), "three or more", "Use every hole of the bell-housing that a finger reaches")
            .That(engine.Load.Centre.X - engine.Load.CentreSpread.X > 0, "centre of mass", $"{Show(engine.Load.Centre.X)} mm from the face", "a place out from the face", "Measure from the bell-housing face forward");
        engine.Arm?.Check(check);
        if (engine.Bolt is { } bolt)
            Reaches(check, engine.Engagement, bolt);
        if (check.Clean)
        {
            var wide = engine.Bolts.Max(b => engine.Bolts.Max(c => double.Hypot(b.Y - c.Y, b.Z - c.Z)));
            check.That(engine.Bolts.Count >= 3 && Footprint.Hull([.. engine.Bolts.Select(b => (b.Y, b.Z))]).Count >= 3 && wide >= 50, "bolts", "all in one line or at one place", "a pattern round the crank", "Give each bolt left of and over the turning axis");
        }

        return check.Go(() => Judge(engine, plateMoment));
    }

    private static void Reaches(InputCheck check, Length engagement, BoltInHole bolt)
    {
        check.Positive("bolt under its head", bolt.UnderHead).NotNegative("between head and engine", bolt.Through).NotNegative("depth of the hole", bolt.HoleDepth);
        var left = (bolt.UnderHead - bolt.Through).Millimetres;
        check.That(engagement.Millimetres <= left, "engagement", $"{Show(engagement.Millimetres)} mm told", $"{Show(left)} mm at most: {Show(bolt.UnderHead.Millimetres)} mm of bolt less {Show(bolt.Through.Millimetres)} mm before the engine", "Count the turns that hold, times the pitch, or take longer bolts")
            .That(bolt.HoleDepth.Millimetres == 0 || left <= bolt.HoleDepth.Millimetres, "bolt under its head", $"{Show(left)} mm into a hole of {Show(bolt.HoleDepth.Millimetres)} mm", "a bolt that clamps before it meets the end of its hole", "Take shorter bolts or more washers: a bolt that bottoms holds nothing");
    }

    private static Outcome<StandLoad> Judge(MountedEngine engine, Torque plateMoment)
    {
        var weight = Force.FromKilogramsForce((engine.Load.Mass + engine.Load.MassSpread).Kilograms).Newtons;
        var (centre, spread) = (engine.Load.Centre, engine.Load.CentreSpread);
        var x = centre.X + spread.X;
        var off = double.Hypot(Math.Abs(centre.Y) + spread.Y, Math.Abs(centre.Z) + spread.Z);
        var post = Torque.FromNewtonMetres(weight * (x + engine.FaceToPost.Millimetres) / 1000);
        var turning = Torque.FromNewtonMetres(weight * off / 1000);
        var (worst, arm) = OverATurn(engine, weight, weight * x, weight * off);
        var part = worst.Stress / engine.Strength.YieldMpa;
        var least = Fasteners.Engagement.UsualLeast(Length.FromMillimetres(engine.Thread.NominalMm), engine.Face).Value;
        return new InputCheck()
            .That(post <= plateMoment, "stand", $"{Show(post.NewtonMetres)} N·m at the post", $"{Show(plateMoment.NewtonMetres)} N·m at most by its plate", "Strip the engine further before it goes on, or take a stronger stand")
            .That(part <= YieldShare, worst.Name, $"{Show(worst.Stress)} MPa", $"{Show(YieldShare * engine.Strength.YieldMpa)} MPa at most, half of yield (common practice, no source)", "Bring the fingers closer to the face, or use more or thicker bolts")
            .That(arm is null || arm.StressMpa <= YieldShare * StandArm.YieldMpa, $"arm of {arm?.Bolt}", $"{Show(arm?.StressMpa ?? 0)} MPa at its root", $"{Show(YieldShare * StandArm.YieldMpa)} MPa at most, half of the yield of plain steel (common practice, no source)", "Draw the arms in, bring the face nearer, or take a stand with stouter arms")
            .Then(() => new StandLoad(post, Torque.FromNewtonMetres(weight * x / 1000), turning, worst.Name, Force.FromNewtons(worst.Pull), worst.Stress, part, Warnings(engine, least), arm));
    }

    private static IReadOnlyList<Refusal> Warnings(MountedEngine engine, Length least) =>
    [
        .. engine.Engagement >= least ? Array.Empty<Refusal>() : [new Refusal("engagement", $"{Show(engine.Engagement.Millimetres)} mm", $"{Show(least.Millimetres)} mm or more (common practice, no source)", "Take longer bolts, if the hole is deep enough")],
        .. engine.Bolt is not null ? Array.Empty<Refusal>() : [new Refusal("bolt and hole", "not measured", "the bolt's length, what it goes through and the depth of its hole", "Measure them: too short tears out, too long bottoms and holds nothing")],
        .. engine.Arm is not null ? Array.Empty<Refusal>() : [new Refusal("arms of the stand", "not measured, so not judged", "their reach, width, thickness and wall", "Measure the longest arm")],
    ];

    private static ((string Name, double Pull, double Stress) Bolt, BentArm? Arm) OverATurn(MountedEngine engine, double weight, double moment, double twist)
    {
        var (my, mz) = (engine.Bolts.Average(b => b.Y), engine.Bolts.Average(b => b.Z));
        var spokes = engine.Bolts.Sum(b => Math.Pow(double.Hypot(b.Y - my, b.Z - mz), 2));
        var (area, d0) = (engine.Thread.StressAreaMm2, engine.Thread.StressDiameterMm);
        var worst = (Name: engine.Bolts[0].Name, Pull: 0.0, Stress: -1.0);
        BentArm? arm = null;
        for (var degrees = 0; degrees < 360; degrees++)
        {
            var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
            var heights = engine.Bolts.Select(b => b.Y * sin + b.Z * cos).ToList();
            var edge = heights.Min();
            var squares = heights.Sum(h => (h - edge) * (h - edge));
            var alike = Alike(engine.Bolts.Select(b => ((b.Y - my) * sin + (b.Z - mz) * cos, (b.Y - my) * cos - (b.Z - mz) * sin)).ToList());
            for (var i = 0; i < engine.Bolts.Count; i++)
            {
                var pull = moment * Math.Max((heights[i] - edge) / squares, alike[i]);
                var shear = weight / engine.Bolts.Count + twist * double.Hypot(engine.Bolts[i].Y - my, engine.Bolts[i].Z - mz) / spokes;
                var bending = 32 * shear * engine.FreeArm.Millimetres / (Math.PI * d0 * d0 * d0);
                var stress = Math.Sqrt(Math.Pow(pull / area + bending, 2) + 3 * Math.Pow(shear / area, 2));
                if (stress > worst.Stress)
                    worst = (engine.Bolts[i].Name, pull, stress);
                var along = Math.Max(pull, -moment * alike[i]);
                if (engine.Arm is { } told && StandArms.Stress(along, shear, told) is var atRoot && atRoot > (arm?.StressMpa ?? -1))
                    arm = new BentArm(engine.Bolts[i].Name, Force.FromNewtons(along), Force.FromNewtons(shear), atRoot);
            }
        }

        return (worst, arm);
    }

    /// <summary>Pull of each bolt for a moment of one where all give alike: a plane over the pattern that balances the moment upwards and none across; push counts negative.</summary>
    private static IReadOnlyList<double> Alike(IReadOnlyList<(double Up, double Across)> bolts)
    {
        var (uu, ua, aa) = (bolts.Sum(b => b.Up * b.Up), bolts.Sum(b => b.Up * b.Across), bolts.Sum(b => b.Across * b.Across));
        var det = uu * aa - ua * ua;
        return [.. bolts.Select(b => (aa * b.Up - ua * b.Across) / det)];
    }
}
