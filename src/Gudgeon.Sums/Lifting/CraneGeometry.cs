using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Lifting;

/// <summary>One hole of the boom and what the plate says for it.</summary>
/// <param name="BoomLength">From the boom's pivot to the pin of the hook.</param>
/// <param name="Rating">Largest mass on the plate.</param>
public sealed record BoomHole(Length BoomLength, Mass Rating);

/// <summary>A workshop crane seen from the side; all places from the foot of the post, forward and up.</summary>
/// <param name="PivotForward">Pivot of the boom, forward of the foot of the post; backward negative.</param>
/// <param name="PivotHeight">Pivot of the boom over the floor.</param>
/// <param name="RamFootForward">Foot of the ram forward.</param>
/// <param name="RamFootHeight">Foot of the ram over the floor.</param>
/// <param name="RamPinAlong">Pin of the ram, along the boom from its pivot.</param>
/// <param name="RamShortest">Ram between its pins, closed.</param>
/// <param name="RamLongest">Ram between its pins, open.</param>
/// <param name="HookDrop">From the pin at the boom's end down to the bearing point of the hook.</param>
/// <param name="Holes">The holes of the boom, shortest first.</param>
public sealed record CraneGeometry(
    Length PivotForward, Length PivotHeight, Length RamFootForward, Length RamFootHeight, Length RamPinAlong, Length RamShortest, Length RamLongest,
    Length HookDrop, IReadOnlyList<BoomHole> Holes);

/// <summary>The crane at one stroke of its ram.</summary>
/// <param name="Ram">Ram between its pins.</param>
/// <param name="BoomAngle">Boom over the level.</param>
/// <param name="Reach">Hook forward of the foot of the post.</param>
/// <param name="HookHeight">Bearing point of the hook over the floor.</param>
/// <param name="TipHeight">Pin at the end of the boom over the floor.</param>
public sealed record CranePose(Length Ram, Angle BoomAngle, Length Reach, Length HookHeight, Length TipHeight);

/// <summary>Where the hook of a workshop crane is, and what it may carry there.</summary>
public static class CraneBoom
{
    /// <summary>The crane at a length of its ram.</summary>
    /// <remarks>
    /// Formula: ram c closes a triangle with a = pivot to ram foot and b = pivot to ram pin: angle between a and b = acos((a² + b² − c²)/2ab); boom angle = that + direction of a.
    /// Units: mm, degrees. Range: ram between shortest and longest; hole one of the list. Errors: play of pins, bend of the boom. Source: cosine rule.
    /// </remarks>
    public static Outcome<CranePose> PoseAt(CraneGeometry crane, int hole, Length ram) => Check(crane, hole)
        .Within("ram", ram.Millimetres, crane.RamShortest.Millimetres, crane.RamLongest.Millimetres, "mm")
        .Then(() => Pose(crane, hole, ram));

    /// <summary>The crane along its whole stroke, from closed to open.</summary>
    /// <remarks>
    /// Formula, units, errors and source as <see cref="PoseAt"/>. Range: 2 to 200 steps.
    /// </remarks>
    public static Outcome<IReadOnlyList<CranePose>> Stroke(CraneGeometry crane, int hole, int poses) => Check(crane, hole)
        .That(poses is >= 2 and <= 200, "poses", Show(poses), "2 to 200", "Give how many pictures of the stroke are wanted")
        .Then<IReadOnlyList<CranePose>>(() => [.. Enumerable.Range(0, poses).Select(i => Pose(crane, hole,
            crane.RamShortest + (crane.RamLongest - crane.RamShortest) * ((double)i / (poses - 1))))]);

    /// <summary>Force in the ram under a load on the hook.</summary>
    /// <remarks>
    /// Formula: F = m·g·reach from pivot/perpendicular arm of the ram about the pivot. Units: kg, mm, N. Range: as <see cref="PoseAt"/>, mass 0 and above.
    /// Errors: leaves out the boom's own mass. Source: moments about the pivot.
    /// </remarks>
    public static Outcome<Force> RamForce(CraneGeometry crane, int hole, Length ram, Mass load) => Check(crane, hole).NotNegative("load", load)
        .Go(() => PoseAt(crane, hole, ram)).Then(pose =>
        {
            var (ax, az) = ((crane.RamFootForward - crane.PivotForward).Millimetres, (crane.RamFootHeight - crane.PivotHeight).Millimetres);
            var (bx, bz) = (crane.RamPinAlong.Millimetres * Math.Cos(pose.BoomAngle.Radians), crane.RamPinAlong.Millimetres * Math.Sin(pose.BoomAngle.Radians));
            var arm = Math.Abs(ax * bz - az * bx) / ram.Millimetres;
            return Outcome.Of(Force.FromKilogramsForce(load.Kilograms) * ((pose.Reach - crane.PivotForward).Millimetres / arm));
        });

    /// <summary>A load against the plate, at a hole.</summary>
    /// <remarks>
    /// Formula: m ≤ plate at the hole. Units: kg. Range: hole one of the list; a load beyond the plate is refused with the hole that carries it, if one does.
    /// Errors: none. Source: the crane's own plate.
    /// </remarks>
    /// <returns>Load over plate.</returns>
    public static Outcome<double> OnPlate(CraneGeometry crane, int hole, Mass load) => Check(crane, hole).Positive("load", load)
        .Go(() => new InputCheck().That(load <= crane.Holes[hole].Rating, "boom", $"{Show(load.Kilograms)} kg at hole {Show(hole + 1)}", $"{Show(crane.Holes[hole].Rating.Kilograms)} kg at most by the plate",
            crane.Holes.Any(other => load <= other.Rating) ? $"Draw the boom in to hole {Show(1 + Enumerable.Range(0, crane.Holes.Count).Last(i => load <= crane.Holes[i].Rating))}" : "Take a larger crane, or parts off the engine")
            .Then(() => load / crane.Holes[hole].Rating));

    internal static CranePose Pose(CraneGeometry crane, int hole, Length ram)
    {
        var (ax, az) = ((crane.RamFootForward - crane.PivotForward).Millimetres, (crane.RamFootHeight - crane.PivotHeight).Millimetres);
        var (a, b, c) = (double.Hypot(ax, az), crane.RamPinAlong.Millimetres, ram.Millimetres);
        var angle = Math.Atan2(az, ax) + Math.Acos(Math.Clamp((a * a + b * b - c * c) / (2 * a * b), -1, 1));
        var boom = crane.Holes[hole].BoomLength;
        var tip = crane.PivotHeight + boom * Math.Sin(angle);
        return new CranePose(ram, Angle.FromRadians(angle), crane.PivotForward + boom * Math.Cos(angle), tip - crane.HookDrop, tip);
    }

    private static InputCheck Check(CraneGeometry crane, int hole)
    {
        var check = new InputCheck().Positive("height of the pivot", crane.PivotHeight).Positive("pin of the ram", crane.RamPinAlong).Positive("closed ram", crane.RamShortest)
            .NotNegative("drop of the hook", crane.HookDrop)
            .That(crane.RamLongest > crane.RamShortest, "open ram", $"{Show(crane.RamLongest.Millimetres)} mm", $"more than closed, {Show(crane.RamShortest.Millimetres)} mm", "Measure the ram between its pins, closed and open")
            .That(hole >= 0 && hole < crane.Holes.Count, "hole of the boom", Show(hole + 1), $"1 to {Show(crane.Holes.Count)}", "Count the holes from the post");
        for (var i = 0; i < crane.Holes.Count; i++)
        {
            check.Positive($"boom at hole {i + 1}", crane.Holes[i].BoomLength).Positive($"plate at hole {i + 1}", crane.Holes[i].Rating);
            if (i > 0)
            {
                check.That(crane.Holes[i].BoomLength > crane.Holes[i - 1].BoomLength && crane.Holes[i].Rating <= crane.Holes[i - 1].Rating, $"hole {i + 1}",
                    $"{Show(crane.Holes[i].BoomLength.Millimetres)} mm for {Show(crane.Holes[i].Rating.Kilograms)} kg", "a longer boom for less mass than the hole before", "Read the plate again");
            }
        }

        var side = double.Hypot((crane.RamFootForward - crane.PivotForward).Millimetres, (crane.RamFootHeight - crane.PivotHeight).Millimetres);
        var pin = crane.RamPinAlong.Millimetres;
        return check.That(crane.RamShortest.Millimetres > Math.Abs(side - pin) && crane.RamLongest.Millimetres < side + pin, "ram",
            $"{Show(crane.RamShortest.Millimetres)} to {Show(crane.RamLongest.Millimetres)} mm", $"between {Show(Math.Abs(side - pin))} and {Show(side + pin)} mm, or it cannot close its triangle",
            "Measure foot, pin and pivot again");
    }
}
