using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Lifting;

/// <summary>A leg from the hook to a place on the engine.</summary>
/// <param name="Name">What the leg is called.</param>
/// <param name="LiftingPoint">Where it holds the engine, mm.</param>
/// <param name="Length">From the hook to that place.</param>
public sealed record Leg(string Name, Point3 LiftingPoint, Length Length);

/// <summary>What a leg carries.</summary>
/// <param name="Name">The leg.</param>
/// <param name="Likely">Pull with mass and centre as given.</param>
/// <param name="Most">Largest pull within the spread of mass and centre, and of how four legs share.</param>
/// <param name="ToVertical">Angle to the vertical with the centre as given.</param>
/// <param name="MostToVertical">Largest angle to the vertical within the spread.</param>
/// <param name="Slack">How much the leg hangs slack; none when it carries.</param>
public sealed record LegLoad(string Name, Force Likely, Force Most, Angle ToVertical, Angle MostToVertical, Length Slack);

/// <summary>How the engine hangs.</summary>
/// <param name="Legs">Each leg.</param>
/// <param name="Hook">The hook's place in the engine's own axes, mm.</param>
/// <param name="Tilt">Angle by which the engine is off the level.</param>
/// <param name="FrontUp">How far the front is up; down counts negative.</param>
/// <param name="LeftUp">How far the left side is up; down counts negative.</param>
/// <param name="MostTilt">Largest tilt within the spread of the centre.</param>
/// <param name="Warnings">What is allowed and yet to be looked at.</param>
public sealed record Hanging(
    IReadOnlyList<LegLoad> Legs, Point3 Hook, Angle Tilt, Angle FrontUp, Angle LeftUp, Angle MostTilt, IReadOnlyList<Refusal> Warnings);

/// <summary>An engine on one to four legs under one hook.</summary>
public static class Slinging
{
    /// <summary>Above this angle to the vertical a leg is warned of.</summary>
    public const double WarnDeg = 45;

    /// <summary>Above this angle to the vertical a lift is refused.</summary>
    public const double RefuseDeg = 60;

    /// <summary>Pulls and angles of the legs, and how the engine tilts when it is let hang.</summary>
    /// <remarks>
    /// Formula: the hook comes to rest straight over the centre of mass, farthest from it that the legs allow; ΣT·u = W at the hook, no leg pushes.
    /// Four legs: each is given the largest pull that any three of them could leave it, legs that are slack by less than a hundredth of their length included.
    /// The most is over all corners of the spread of the centre, with the largest mass, and a second-order part for the places between the corners.
    /// Units: mm, kg, N, degrees. Range: one to four legs; centre within the lifting points and under them; angles to the vertical of 60° at most.
    /// Errors: rigid engine, legs that do not stretch, forces at rest; a jerk adds to every pull.
    /// Source: statics of a rigid body; angle limits as EN 818-4 (60°), 45° as its table's first column.
    /// </remarks>
    public static Outcome<Hanging> Hang(HangingLoad load, IReadOnlyList<Leg> legs) => Check(load, legs).Go(() => AtRest(load, legs));

    private static Outcome<Hanging> AtRest(HangingLoad load, IReadOnlyList<Leg> legs)
    {
        var points = legs.Select(leg => leg.LiftingPoint).ToList();
        var lengths = legs.Select(leg => leg.Length.Millimetres).ToList();
        var centred = LegStates.At(points, lengths, load.Centre);
        if (centred is null)
            return Outcome.Refused<Hanging>(TurnsOver("centre of mass as given"));
        var worst = Corners(load).Select(centre => LegStates.At(points, lengths, centre)).ToList();
        if (worst.Contains(null))
            return Outcome.Refused<Hanging>(TurnsOver("centre of mass within its spread"));

        var weight = Force.FromKilogramsForce(load.Mass.Kilograms);
        var most = Force.FromKilogramsForce((load.Mass + load.MassSpread).Kilograms);
        var between = 1 + Math.Pow(load.CentreSpread.Norm / (centred.Rest.Hook - load.Centre).Norm, 2);
        var loads = legs.Select((leg, j) => new LegLoad(leg.Name, weight * centred.Pulls[j],
            most * (between * worst.Max(state => state!.MostPulls[j])), Angle.FromRadians(centred.Angles[j]),
            Angle.FromRadians(worst.Max(state => state!.Angles[j])), Length.FromMillimetres(centred.Slack[j]))).ToList();
        var check = new InputCheck();
        foreach (var leg in loads)
        {
            check.That(leg.MostToVertical.Degrees <= RefuseDeg + 1e-9, leg.Name, $"{Above(leg.MostToVertical)}° to the vertical", $"{Show(RefuseDeg)}° at most",
                "Take longer legs or a spreader bar");
        }

        return check.Then(() => new Hanging(loads, centred.Rest.Hook, centred.Tilt, Angle.FromRadians(Math.Atan2(centred.Rest.Up.X, centred.Rest.Up.Z)),
            Angle.FromRadians(Math.Atan2(centred.Rest.Up.Y, centred.Rest.Up.Z)), Angle.FromRadians(worst.Max(state => state!.Tilt.Radians)), Warnings(loads)));
    }

    private static IReadOnlyList<Refusal> Warnings(IReadOnlyList<LegLoad> legs) =>
    [
        .. legs.Where(leg => leg.MostToVertical.Degrees > WarnDeg).Select(leg => new Refusal(leg.Name, $"{Above(leg.MostToVertical)}° to the vertical",
            $"{Show(WarnDeg)}° or less", "Take longer legs if there is room above")),
        .. legs.Where(leg => leg.Slack.Millimetres > 0).Select(leg => new Refusal(leg.Name, $"{Show(leg.Slack.Millimetres)} mm slack", "a leg that carries",
            "Shorten it, or leave it out and count on the others alone")),
    ];

    private static IEnumerable<Point3> Corners(HangingLoad load)
    {
        var s = load.CentreSpread;
        foreach (var x in new[] { -s.X, 0, s.X }.Distinct())
        {
            foreach (var y in new[] { -s.Y, 0, s.Y }.Distinct())
            {
                foreach (var z in new[] { -s.Z, 0, s.Z }.Distinct())
                    yield return load.Centre + new Point3(x, y, z);
            }
        }
    }

    /// <summary>An angle to a tenth, upwards: one beyond a limit never reads as the limit.</summary>
    internal static string Above(Angle angle) => Show(Math.Ceiling(10 * angle.Degrees - 1e-6) / 10);

    private static Refusal TurnsOver(string which) => new("rig", $"no rest with the {which}", "a centre of mass that hangs under its lifting points",
        "Lift from higher points, or add a leg on the heavy side");

    private static InputCheck Check(HangingLoad load, IReadOnlyList<Leg> legs)
    {
        var check = load.Check(new InputCheck()).That(legs.Count is >= 1 and <= 4, "legs", Show(legs.Count), "one to four", "Give each leg from the hook to the engine");
        foreach (var leg in legs)
        {
            check.Positive($"length of {leg.Name}", leg.Length)
                .That(leg.LiftingPoint.IsFinite, $"lifting point of {leg.Name}", "no number", "x, y and z in mm", "Measure it from the same datum as the centre of mass");
        }

        if (!check.Clean)
            return check;
        for (var j = 0; j < legs.Count; j++)
        {
            for (var i = 0; i < j; i++)
            {
                var span = (legs[i].LiftingPoint - legs[j].LiftingPoint).Norm;
                check.That(span > 1, $"lifting points of {legs[i].Name} and {legs[j].Name}", "one place", "two places", "Measure both again")
                    .That((legs[i].Length + legs[j].Length).Millimetres > span, $"{legs[i].Name} and {legs[j].Name}",
                        $"{Show((legs[i].Length + legs[j].Length).Millimetres)} mm of legs over a span of {Show(span)} mm", "legs longer together than the span", "Take longer legs")
                    .That(Math.Abs((legs[i].Length - legs[j].Length).Millimetres) < span, $"{legs[i].Name} and {legs[j].Name}",
                        $"{Show(Math.Abs((legs[i].Length - legs[j].Length).Millimetres))} mm of difference over a span of {Show(span)} mm", "a difference below the span",
                        "Shorten the longer one: it never comes tight");
            }
        }

        if (legs.Count == 1)
            return check;
        var points = legs.Select(leg => leg.LiftingPoint).ToList();
        if (!Footprint.Holds(points, load.Centre))
        {
            return check.That(false, "centre of mass", $"{Show(load.Centre.X)}, {Show(load.Centre.Y)} mm, outside the lifting points", "a centre between the lifting points, seen from above",
                "Move a lifting point so that the centre lies between them");
        }

        return check.That(Corners(load).All(corner => Footprint.Holds(points, corner)), "spread of the centre",
            $"{Show(load.CentreSpread.X)}, {Show(load.CentreSpread.Y)} mm, which reaches outside the lifting points", "a centre that lies between them wherever it is",
            "Weigh front and rear to find the centre, or move a lifting point outwards");
    }
}
