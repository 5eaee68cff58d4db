using CsCheck;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Lifting;

public class FloorPlanTests
{
    private static readonly FloorShape Crane = Box("crane", -200, -400, 1500, 400);

    // By hand: the box goes straight on; a bench stands 100 mm beside its side.
    [Fact]
    public void Straight_way_past_a_bench_leaves_the_gap_between()
    {
        var way = FloorPlan.Sweep([Crane], [At(0, 0, 0), At(3000, 0, 0)], [Box("bench", 1000, 500, 2500, 1100)], null).Value;
        Assert.True(way.Clear);
        Assert.Equal(98, way.Passes[0].Spare.Millimetres, 1e-9); // 100 less the 2 mm that a look may miss
    }

    // By hand: turning on the spot the far corner goes round at √(1500² + 400²) = 1552.42 mm.
    [Theory]
    [InlineData(1560, true)]
    [InlineData(1552, false)]
    public void Turning_on_the_spot_swings_the_far_corner(double wall, bool clear)
    {
        var way = FloorPlan.Sweep([Crane], [At(0, 0, 0), At(0, 0, 180)], [Box("wall", -3000, wall, 3000, wall + 100)], null).Value;
        Assert.Equal(clear, way.Clear);
        if (clear)
            Assert.Equal(wall - 1552.42 - 2, way.Passes[0].Spare.Millimetres, 0.05);
    }

    // A second way: the distance at random moments of the way is never below the spare that was given.
    [Fact]
    public void Spare_is_never_more_than_at_any_moment() =>
        Gen.Select(Gen.Double[-500, 500], Gen.Double[0, 500], Gen.Double[-90, 90], Gen.Double[0, 1]).Sample((x, y, turn, part) =>
        {
            FloorShape[] obstacles = [Box("car", 1800, -900, 6000, 900), Box("bench", -2000, 1500, 2000, 2100)];
            var way = FloorPlan.Sweep([Crane], [At(-400, -300, 0), At(x - 400, y - 300, turn)], obstacles, null).Value;
            var pose = At(-400 + part * x, -300 + part * y, part * turn);
            var (sin, cos) = Math.SinCos(pose.Heading.Radians);
            // Every edge walked in small steps, nearest obstacle corner or side by hand-made distance to a box.
            for (var i = 0; i < 4; i++)
            {
                var (a, b) = (Crane.Corners[i], Crane.Corners[(i + 1) % 4]);
                for (var t = 0.0; t < 1; t += 0.05)
                {
                    var (lx, ly) = (a.X + t * (b.X - a.X), a.Y + t * (b.Y - a.Y));
                    var (px, py) = (pose.At.X + cos * lx - sin * ly, pose.At.Y + sin * lx + cos * ly);
                    foreach (var pass in way.Passes)
                    {
                        var box = obstacles.Single(o => o.Name == pass.Obstacle).Corners;
                        var (dx, dy) = (Math.Max(Math.Max(box.Min(c => c.X) - px, px - box.Max(c => c.X)), 0), Math.Max(Math.Max(box.Min(c => c.Y) - py, py - box.Max(c => c.Y)), 0));
                        Assert.True(pass.Spare.Millimetres <= double.Hypot(dx, dy) + 1e-6);
                    }
                }
            }
        }, iter: 40);

    [Fact]
    public void Room_is_kept_inside()
    {
        var room = Box("garage", -1000, -2000, 6000, 2000);
        Assert.Equal(598, FloorPlan.Sweep([Crane], [At(0, 0, 0), At(500, 1000, 0)], [], room).Value.Passes[0].Spare.Millimetres, 1e-9); // by hand: 2000 − 1000 − 400, less 2
        Assert.False(FloorPlan.Sweep([Crane], [At(0, 0, 0), At(0, 1700, 0)], [], room).Value.Clear);
    }

    [Fact]
    public void Crane_that_stands_inside_a_thing_is_not_clear() =>
        Assert.False(FloorPlan.Sweep([Box("wheel", -10, -10, 10, 10)], [At(0, 0, 0), At(1, 0, 0)], [Box("pallet", -500, -500, 500, 500)], null).Value.Clear);

    [Fact]
    public void Nearest_thing_is_named_first_and_where()
    {
        var way = FloorPlan.Sweep([Crane], [At(0, 0, 0), At(2000, 0, 0)], [Box("far", 0, 900, 100, 1000), Box("near", 3600, -100, 3700, 100)], null).Value;
        Assert.Equal(["near", "far"], way.Passes.Select(pass => pass.Obstacle));
        Assert.Equal(2000, way.Passes[0].At.At.X, 1e-9);
        Assert.NotEmpty(way.Shape);
    }

    [Fact]
    public void Bad_plan_is_refused_all_at_once() => Says.All(
        FloorPlan.Sweep([], [At(double.NaN, 0, 0)], [new("bench", [new(0, 0), new(double.NaN, 1)])], null),
        "crane: met no outline; expected one or more. Draw its legs and what hangs on it.",
        "way: met 1 poses; expected two or more. Give where it starts and where it goes.",
        "bench: met 2 corners, one without a number; expected three or more, each with its place. Draw its outline again.",
        "pose 1: met NaN, 0 mm; expected a place within 100 m. Give the place on the floor again.");

    private static FloorPose At(double x, double y, double degrees) => new(new(x, y), Angle.FromDegrees(degrees));

    private static FloorShape Box(string name, double x0, double y0, double x1, double y1) => new(name, [new(x0, y0), new(x1, y0), new(x1, y1), new(x0, y1)]);
}
