using Gudgeon.Sums;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

/// <summary>The crane's way across the floor with the engine on its hook.</summary>
public static class LiftFloor
{
    /// <summary>A wheel reaches this far beyond the place where it touches.</summary>
    private const double WheelMm = 80;

    /// <summary>All of the crane that stands neither under the legs' way nor over the sill: what goes over a thing that the legs go under is judged by the headroom.</summary>
    private static FloorShape Post { get; } = new("post", [new(-WheelMm, -WheelMm), new(WheelMm, -WheelMm), new(WheelMm, WheelMm), new(-WheelMm, WheelMm)]);

    /// <summary>The crane and what hangs from it, about the foot of the post; the hook anywhere along its stroke.</summary>
    public static IReadOnlyList<FloorShape> Crane(CraneTold crane, PlaceTold place, IReadOnlyList<CranePose> stroke) => [Legs(crane), .. Above(place, stroke)];

    public static FloorShape Of(FloorThing thing)
    {
        var (sin, cos) = Math.SinCos(thing.TurnDeg * Math.PI / 180);
        return new FloorShape(thing.Name, [.. new[] { (0.0, 0.0), (thing.LengthMm, 0), (thing.LengthMm, thing.WidthMm), (0, thing.WidthMm) }
            .Select(c => new FloorPoint(thing.XMm + cos * c.Item1 - sin * c.Item2, thing.YMm + sin * c.Item1 + cos * c.Item2))]);
    }

    internal static Outcome<SweptWay> Sweep(PlaceTold place, CraneTold crane, IReadOnlyList<CranePose> stroke, Func<FloorThing, bool> stays)
    {
        FloorPose[] way = [.. place.Way!.Select(stop => new FloorPose(new(stop.XMm, stop.YMm), Angle.FromDegrees(stop.HeadingDeg)))];
        var things = (place.Things ?? []).Where(stays).ToList();
        var room = place is { RoomLengthMm: > 0, RoomWidthMm: > 0 } ? Of(new FloorThing("the walls", 0, 0, place.RoomLengthMm, place.RoomWidthMm)) : null;
        return FloorPlan.Sweep(Crane(crane, place, stroke), way, [.. things.Where(thing => !thing.LegsPass).Select(Of)], room)
            .Then(low => things.Any(thing => thing.LegsPass)
                ? FloorPlan.Sweep([Post], way, [.. things.Where(thing => thing.LegsPass).Select(Of)], null)
                    .Then(high => Outcome.Of(low with { Passes = [.. low.Passes.Concat(high.Passes).OrderBy(pass => pass.Spare.Millimetres)] }))
                : Outcome.Of(low));
    }

    /// <summary>What to move, and in which order, when only things that move stand in the way; nothing when that does not help.</summary>
    internal static IReadOnlyList<string> Moves(PlaceTold place, CraneTold crane, IReadOnlyList<CranePose> stroke, SweptWay blocked)
    {
        var names = blocked.Passes.Where(pass => pass.Spare.Millimetres <= 0).Select(pass => pass.Obstacle).ToHashSet();
        var inTheWay = (place.Things ?? []).Where(thing => thing.Moves && names.Contains(thing.Name)).ToList();
        if (inTheWay.Count == 0 || !Sweep(place, crane, stroke, thing => !inTheWay.Contains(thing)).TryGet(out var without) || !without.Clear)
            return [];
        return
        [
            .. inTheWay.Select(thing => $"Before anything hangs, move {thing.Name} off the crane's way and secure it: brake on, wheels chocked"),
            $"Tell the place again with {(inTheWay.Count == 1 ? "it" : "them")} where {(inTheWay.Count == 1 ? "it stands" : "they stand")} then, and see that the way is clear",
            "Only then lift; take the crane its way with the load low",
            .. inTheWay.Select(thing => $"Set the engine down before {thing.Name} comes back"),
        ];
    }

    internal static LiftFigure Figure(NearestPass pass) => new($"past {pass.Obstacle}: nearest", LiftText.Show(pass.Spare.Millimetres, "mm"), Workings.Of("lifting.sweep", $"nearest to {pass.Obstacle}",
        [new("x", "foot of the post then, along the floor", pass.At.At.X, "mm"), new("y", "the same, across", pass.At.At.Y, "mm"), new("turn", "boom points", pass.At.Heading.Degrees, "°")], new("spare", "least distance", pass.Spare.Millimetres, "mm"), LiftingCautions.Crane));

    private static FloorShape Legs(CraneTold crane)
    {
        var (left, right) = (crane.Wheels.Max(wheel => wheel.YMm) + WheelMm, crane.Wheels.Min(wheel => wheel.YMm) - WheelMm);
        var (front, rear) = (crane.Wheels.Max(wheel => wheel.XMm) + WheelMm, crane.Wheels.Min(wheel => wheel.XMm) - WheelMm);
        return new FloorShape("legs", [new(rear, right), new(front, right), new(front, left), new(rear, left)]);
    }

    private static IReadOnlyList<FloorShape> Above(PlaceTold place, IReadOnlyList<CranePose> stroke)
    {
        var (near, far) = (stroke.Min(pose => pose.Reach.Millimetres), stroke.Max(pose => pose.Reach.Millimetres));
        // The engine may hang turned either way.
        var half = Math.Max(place.EngineLengthMm, place.EngineWidthMm) / 2;
        return
        [
            new FloorShape("boom and post", [new(-WheelMm, -WheelMm), new(far, -WheelMm), new(far, WheelMm), new(-WheelMm, WheelMm)]),
            new FloorShape("engine", [new(near - half, -half), new(far + half, -half), new(far + half, half), new(near - half, half)]),
        ];
    }
}
