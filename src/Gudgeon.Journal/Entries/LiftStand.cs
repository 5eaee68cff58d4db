using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(StandTold), "stand-told")]
public abstract partial record Entry;

/// <summary>A bolt of the stand's fingers, left of and over the centre of the crank.</summary>
public sealed record StandBolt(string Name, double YMm, double ZMm);

/// <summary>The bolts and their holes, measured.</summary>
/// <param name="BoltMm">Bolt under its head.</param>
/// <param name="ThroughMm">Washer, arm and sleeve between head and engine.</param>
/// <param name="DepthMm">Depth of the threaded hole; 0 where it goes through.</param>
public sealed record StandHole(double BoltMm, double ThroughMm, double DepthMm);

/// <summary>The longest arm of the stand, measured.</summary>
/// <param name="ReachMm">From its hold on the plate to the bolt.</param>
/// <param name="OffMm">From the middle of the arm to the engine's face.</param>
/// <param name="WideMm">Along the plate.</param>
/// <param name="ThickMm">Along the bolt.</param>
/// <param name="WallMm">Wall of a tube; 0 for a solid bar.</param>
public sealed record StandFinger(double ReachMm, double OffMm, double WideMm, double ThickMm, double WallMm);

/// <summary>The stand and how the engine is to sit on it.</summary>
/// <param name="PlateMomentNm">Largest moment on its plate.</param>
/// <param name="AxisOverCrankMm">Turning axis over the centre of the crank.</param>
/// <param name="Thread">Thread of the bolts, as in M12.</param>
/// <param name="Strength">Class on their heads, as in 8.8; empty where it cannot be read.</param>
/// <param name="FreeArmMm">Bolt that stands free between face and finger.</param>
/// <param name="Face">What the bell-housing face is made of: steel, cast iron, light alloy.</param>
/// <param name="Hole">Null where nobody measured it.</param>
/// <param name="Finger">Null where nobody measured it.</param>
public sealed record StandTold(
    double PlateMomentNm, double FaceToPostMm, double AxisOverCrankMm, IReadOnlyList<StandBolt> Bolts, string Thread, string Strength, double FreeArmMm, double EngagementMm, string Face,
    StandHole? Hole = null, StandFinger? Finger = null) : Entry
{
    public static IReadOnlyList<string> Faces { get; } = ["cast iron", "light alloy", "steel"];

    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        LiftChecks.Above0("stand", "a moment", PlateMomentNm, "N·m", "Read its plate") ?? LiftChecks.From0("face to post", "", FaceToPostMm, "mm", "Measure it") ?? LiftChecks.Far("turning axis", AxisOverCrankMm)
        ?? (Bolts.Count is >= 1 and <= 12 ? null : new Refusal("bolts of the stand", $"{Bolts.Count}", "3 to 12", "Give each left of and over the crank"))
        ?? LiftChecks.First(Bolts.Select(bolt => LiftChecks.Named("bolt", bolt.Name) ?? LiftChecks.Far(bolt.Name, bolt.YMm) ?? LiftChecks.Far(bolt.Name, bolt.ZMm)))
        ?? LiftChecks.From0("free arm of the bolts", "", FreeArmMm, "mm", "Measure from the face to the finger") ?? LiftChecks.Above0("engagement", "", EngagementMm, "mm", "Count the turns that hold, times the pitch")
        ?? (Faces.Contains(Face) ? null : new Refusal("face", $"\"{Face}\"", string.Join(", ", Faces), "Choose one of these"))
        ?? (Hole is null ? null : LiftChecks.Above0("bolt under its head", "", Hole.BoltMm, "mm", "Measure it") ?? LiftChecks.From0("between head and engine", "", Hole.ThroughMm, "mm", "Measure washer, arm and sleeve together") ?? LiftChecks.From0("depth of the hole", "", Hole.DepthMm, "mm", "Measure it with a rod; 0 where it goes through"))
        ?? (Finger is null ? null : LiftChecks.Above0("reach of the arm", "", Finger.ReachMm, "mm", "Measure from its hold on the plate to the bolt") ?? LiftChecks.From0("arm to the face", "", Finger.OffMm, "mm", "Measure from the middle of the arm")
            ?? LiftChecks.Above0("width of the arm", "", Finger.WideMm, "mm", "Measure it") ?? LiftChecks.Above0("thickness of the arm", "", Finger.ThickMm, "mm", "Measure it") ?? LiftChecks.From0("wall of the arm", "", Finger.WallMm, "mm", "Measure it at an open end; 0 for a solid bar"));

    public override string Words(Bench bench) => $"Stand: {Units.Plain(PlateMomentNm)} N·m by its plate, {Bolts.Count} bolts {Thread} {Strength}".TrimEnd();

    internal override void Apply(Bench bench, Recorded recorded) => bench.Stand = this;
}
