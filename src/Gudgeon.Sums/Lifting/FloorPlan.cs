using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Lifting;

/// <summary>A place on the floor, mm.</summary>
public readonly record struct FloorPoint(double X, double Y);

/// <summary>An outline on the floor, corner after corner.</summary>
/// <param name="Name">What stands there.</param>
/// <param name="Corners">Its corners.</param>
public sealed record FloorShape(string Name, IReadOnlyList<FloorPoint> Corners);

/// <summary>Where the crane stands and which way it points.</summary>
/// <param name="At">Its own origin on the floor.</param>
/// <param name="Heading">Turn of its own x axis from the floor's, anticlockwise.</param>
public readonly record struct FloorPose(FloorPoint At, Angle Heading);

/// <summary>How near a way comes to one thing.</summary>
/// <param name="Obstacle">The thing, or the room.</param>
/// <param name="Spare">Least distance left over on the way; 0 where it touches or crosses.</param>
/// <param name="At">Where the crane is then.</param>
public sealed record NearestPass(string Obstacle, Length Spare, FloorPose At);

/// <summary>A way across the floor.</summary>
/// <param name="Passes">Every obstacle, the nearest first.</param>
/// <param name="Shape">The crane's outlines along the way, for drawing.</param>
public sealed record SweptWay(IReadOnlyList<NearestPass> Passes, IReadOnlyList<FloorShape> Shape)
{
    /// <summary>True when the crane touches nothing.</summary>
    public bool Clear => Passes.Count == 0 || Passes[0].Spare.Millimetres > 0;
}

/// <summary>Whether the crane gets through.</summary>
public static class FloorPlan
{
    // Between two looks no corner moves farther than this; the half of it is taken off every distance.
    private const double LookMm = 4;
    private const double DrawMm = 150;
    private const double MostMm = 1e5;

    /// <summary>Least distance to every obstacle while the crane goes from pose to pose, and its swept shape.</summary>
    /// <remarks>
    /// Formula: outlines moved in steps in which no corner goes farther than 4 mm; least distance between edges, less 2 mm, 0 where outlines cross or one holds the other; inside the room's outline.
    /// Units: mm, degrees. Range: two poses or more, three corners or more to an outline; the far corner's way to 500 m. Errors: up to 2 mm short, never long. Source: plane geometry.
    /// </remarks>
    /// <param name="crane">The crane's outlines about its own origin: legs, body, the engine on its hook.</param>
    /// <param name="way">Poses one after the other; between two of them it moves and turns evenly.</param>
    /// <param name="obstacles">What stands on the floor.</param>
    /// <param name="room">The walls, or none.</param>
    public static Outcome<SweptWay> Sweep(IReadOnlyList<FloorShape> crane, IReadOnlyList<FloorPose> way, IReadOnlyList<FloorShape> obstacles, FloorShape? room)
    {
        var check = new InputCheck().That(crane.Count > 0, "crane", "no outline", "one or more", "Draw its legs and what hangs on it")
            .That(way.Count >= 2, "way", $"{Show(way.Count)} poses", "two or more", "Give where it starts and where it goes");
        foreach (var shape in crane.Concat(obstacles).Concat(room is null ? [] : [room]))
        {
            check.That(shape.Corners.Count >= 3 && shape.Corners.All(Finite), shape.Name, $"{Show(shape.Corners.Count)} corners" + (shape.Corners.All(Finite) ? "" : ", one without a number"), "three or more, each with its place", "Draw its outline again");
        }

        for (var i = 0; i < way.Count; i++)
            check.That(Finite(way[i].At), $"pose {i + 1}", $"{Show(way[i].At.X)}, {Show(way[i].At.Y)} mm", "a place within 100 m", "Give the place on the floor again");
        if (check.Clean)
        {
            var travel = way.Zip(way.Skip(1)).Sum(leg => Farthest(leg.First, leg.Second, Reach(crane)));
            check.That(travel <= 5 * MostMm, "way", $"{Show(travel / 1000)} m at the far corner", $"{Show(5 * MostMm / 1000)} m at most", "Give the way in shorter pieces");
        }

        return check.Then(() => Along(crane, way, obstacles, room));
    }

    private static SweptWay Along(IReadOnlyList<FloorShape> crane, IReadOnlyList<FloorPose> way, IReadOnlyList<FloorShape> obstacles, FloorShape? room)
    {
        var reach = Reach(crane);
        var nearest = obstacles.Select(_ => (Distance: double.PositiveInfinity, At: way[0])).ToArray();
        var wall = (Distance: double.PositiveInfinity, At: way[0]);
        var drawn = new List<FloorShape>();
        var sinceDrawn = double.PositiveInfinity;
        foreach (var (pose, moved) in Looks(way, reach))
        {
            var placed = crane.Select(shape => Placed(shape, pose)).ToList();
            for (var i = 0; i < obstacles.Count; i++)
            {
                var distance = placed.Min(shape => Outlines.Distance(shape.Corners, obstacles[i].Corners));
                if (distance < nearest[i].Distance)
                    nearest[i] = (distance, pose);
            }

            if (room is not null && placed.Min(shape => Outlines.DistanceWithin(shape.Corners, room.Corners)) is var toWall && toWall < wall.Distance)
                wall = (toWall, pose);
            sinceDrawn += moved;
            if (sinceDrawn >= DrawMm)
            {
                drawn.AddRange(placed);
                sinceDrawn = 0;
            }
        }

        drawn.AddRange(crane.Select(shape => Placed(shape, way[^1])));
        var passes = nearest.Select((near, i) => Pass(obstacles[i].Name, near)).Concat(room is null ? [] : [Pass(room.Name, wall)]);
        return new SweptWay([.. passes.OrderBy(pass => pass.Spare.Millimetres)], drawn);
    }

    private static NearestPass Pass(string name, (double Distance, FloorPose At) near) =>
        new(name, Length.FromMillimetres(Math.Max(0, near.Distance - LookMm / 2)), near.At);

    private static IEnumerable<(FloorPose Pose, double Moved)> Looks(IReadOnlyList<FloorPose> way, double reach)
    {
        yield return (way[0], 0);
        foreach (var (from, to) in way.Zip(way.Skip(1)))
        {
            var farthest = Farthest(from, to, reach);
            var steps = Math.Max(1, (int)Math.Ceiling(farthest / LookMm));
            for (var i = 1; i <= steps; i++)
            {
                var part = (double)i / steps;
                yield return (new FloorPose(new(from.At.X + part * (to.At.X - from.At.X), from.At.Y + part * (to.At.Y - from.At.Y)),
                    from.Heading + (to.Heading - from.Heading) * part), farthest / steps);
            }
        }
    }

    private static double Reach(IReadOnlyList<FloorShape> crane) => crane.Max(shape => shape.Corners.Max(corner => double.Hypot(corner.X, corner.Y)));

    private static double Farthest(FloorPose from, FloorPose to, double reach) =>
        double.Hypot(to.At.X - from.At.X, to.At.Y - from.At.Y) + reach * Math.Abs((to.Heading - from.Heading).Radians);

    private static FloorShape Placed(FloorShape shape, FloorPose pose)
    {
        var (sin, cos) = Math.SinCos(pose.Heading.Radians);
        return shape with { Corners = [.. shape.Corners.Select(c => new FloorPoint(pose.At.X + cos * c.X - sin * c.Y, pose.At.Y + sin * c.X + cos * c.Y))] };
    }

    private static bool Finite(FloorPoint p) => Math.Abs(p.X) <= MostMm && Math.Abs(p.Y) <= MostMm;
}
