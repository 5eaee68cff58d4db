using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Lifting;

/// <summary>Outlines, footprints and ways over the floor, each by hand.</summary>
public class OutlineTests
{
    private static readonly FloorPoint[] Square = Box(0, 0, 10, 10);

    // By hand: beside, over, corner to corner (3, 4), one holding the other, crossing like a plus, and a corner before a leaning edge (x + y = 20 is 20/√2 − 10·√2 = 0 from (10, 10); from (12, 12) 4/√2).
    [Fact]
    public void Distance_between_outlines_is_as_by_hand()
    {
        Assert.Equal(3, Both(Square, Box(13, 2, 20, 8)), 1e-12);
        Assert.Equal(7, Both(Square, Box(2, 17, 8, 20)), 1e-12);
        Assert.Equal(5, Both(Square, Box(13, 14, 20, 20)), 1e-12);
        Assert.Equal(5, Both(Square, Box(-20, -20, -3, -4)), 1e-12);
        Assert.Equal(0, Both(Square, Box(2, 2, 3, 3)));
        Assert.Equal(0, Both(Square, Box(-5, 4, 15, 6)));
        Assert.Equal(0, Both(Square, Box(5, 5, 15, 15)));
        Assert.Equal(4 / Math.Sqrt(2), Both([new(12, 12), new(14, 12), new(13, 14)], [new(0, 20), new(20, 0), new(0, 0)]), 1e-12);
        Assert.Equal(2, Both([new(12, -5), new(12, 25), new(30, 10)], Square), 1e-12);

        static double Both(IReadOnlyList<FloorPoint> a, IReadOnlyList<FloorPoint> b)
        {
            Assert.Equal(Outlines.Distance(a, b), Outlines.Distance(b, a), 1e-12);
            return Outlines.Distance(a, b);
        }
    }

    [Fact]
    public void Distance_to_the_walls_is_as_by_hand()
    {
        Assert.Equal(2, Outlines.DistanceWithin(Box(3, 2, 7, 6), Square), 1e-12);
        Assert.Equal(1, Outlines.DistanceWithin(Box(3, 4, 7, 9), Square), 1e-12);
        Assert.Equal(0, Outlines.DistanceWithin(Box(3, 4, 11, 9), Square));
        Assert.Equal(0, Outlines.DistanceWithin(Box(13, 14, 15, 16), Square));
        // A room with a corner taken out: a thing that reaches over the corner is outside although its corners are inside.
        FloorPoint[] room = [new(0, 0), new(10, 0), new(10, 4), new(4, 4), new(4, 10), new(0, 10)];
        Assert.Equal(0, Outlines.DistanceWithin([new(2, 9), new(1, 1), new(9, 2)], room));
        Assert.Equal(1, Outlines.DistanceWithin(Box(1, 1, 3, 3), room), 1e-12);
    }

    [Theory]
    [InlineData(5, 5, true)]
    [InlineData(-1, 5, false)]
    [InlineData(11, 5, false)]
    [InlineData(5, -1, false)]
    [InlineData(5, 11, false)]
    [InlineData(9, 2, true)]
    [InlineData(2, 9, true)]
    [InlineData(7, 7, false)]
    [InlineData(4, 3.9, true)]
    public void Outline_holds_what_is_in_it(double x, double y, bool holds) =>
        Assert.Equal(holds, Outlines.Holds(x == 5 || x == -1 || x == 11 ? Square : [new(0, 0), new(10, 0), new(10, 4), new(4, 4), new(4, 10), new(0, 10)], new(x, y)));

    // By hand: a triangle on its tip, at half its height from −3 to 2; a square on its corner, looked at through its corners.
    [Fact]
    public void Outline_that_leans_holds_what_is_in_it()
    {
        FloorPoint[] triangle = [new(0, 100), new(4, 110), new(-6, 110)], diamond = [new(5, 0), new(10, 5), new(5, 10), new(0, 5)];
        Assert.Equal([false, true, true, false], new[] { -3.1, -2.9, 1.9, 2.1 }.Select(x => Outlines.Holds(triangle, new(x, 105))));
        Assert.Equal([false, true, true, false], new[] { -1.0, 1, 9, 11 }.Select(x => Outlines.Holds(diamond, new(x, 5))));
        Assert.Equal([false, true, true, false], new[] { -1.0, 1, 9, 11 }.Select(y => Outlines.Holds(diamond, new(5, y))));
    }

    // By hand: two slanting bars that cross like an X; a triangle that names a corner twice, 2 beside the square.
    [Fact]
    public void Slanting_and_doubled_corners_are_as_by_hand()
    {
        Assert.Equal(0, Outlines.Distance([new(0, 0), new(100, 100), new(101, 100), new(1, 0)], [new(0, 100), new(1, 100), new(101, 0), new(100, 0)]));
        Assert.Equal(2, Outlines.Distance([new(12, 5), new(12, 5), new(14, 5), new(13, 7)], Square), 1e-12);
    }

    // By hand: the four corners, anticlockwise from the leftmost lowest; a place on an edge or inside is no corner.
    [Fact]
    public void Hull_is_made_of_the_corners()
    {
        Assert.Equal([(0, 0), (10, 0), (10, 10), (0, 10)], Footprint.Hull([(10, 10), (0, 10), (5, 5), (0, 0), (5, 0), (10, 0), (10, 5), (10, 10)]));
        Assert.Equal([(0, 0), (10, 10)], Footprint.Hull([(10, 10), (0, 0), (5, 5)]));
        Assert.Equal([(0, 0), (0, 10)], Footprint.Hull([(0, 10), (0, 0), (0, 5)]));
        Assert.Equal([(1, 2)], Footprint.Hull([(1, 2), (1, 2)]));
        Assert.Equal([(0, 0), (4, 1), (1, 4)], Footprint.Hull([(1, 4), (4, 1), (0, 0)]));
    }

    [Theory]
    [InlineData(5, 5, true)]
    [InlineData(0, 5, false)]
    [InlineData(10, 5, false)]
    [InlineData(5, 0, false)]
    [InlineData(5, 10, false)]
    [InlineData(0.1, 9.9, true)]
    [InlineData(-1, 5, false)]
    [InlineData(5, 11, false)]
    public void Footprint_holds_what_lies_strictly_in_it(double x, double y, bool holds) =>
        Assert.Equal(holds, Footprint.Holds([new(0, 0, 5), new(10, 0, 0), new(10, 10, -5), new(0, 10, 1)], new(x, y, 0)));

    [Theory]
    [InlineData(5, 5, true)]
    [InlineData(0, 0, false)]
    [InlineData(10, 5, false)]
    [InlineData(9.9, 4.95, true)]
    [InlineData(-1, -0.5, false)]
    [InlineData(11, 5.5, false)]
    public void Footprint_of_two_holds_what_lies_between_along_their_line(double x, double y, bool holds) => Assert.Equal(holds, Footprint.Holds([new(0, 0, 0), new(10, 5, 0)], new(x, y, 0)));

    // By hand: three places make a triangle, and one beside it is not held although it lies along one of its edges.
    [Theory]
    [InlineData(3, 3, true)]
    [InlineData(-5, 5, false)]
    [InlineData(6, 6, false)]
    public void Footprint_of_three_is_a_triangle(double x, double y, bool holds) => Assert.Equal(holds, Footprint.Holds([new(0, 0, 0), new(10, 0, 0), new(0, 10, 0)], new(x, y, 0)));

    [Theory]
    [InlineData(107, 1004, true)]
    [InlineData(99, 999, false)]
    [InlineData(111, 1006, false)]
    public void Footprint_of_two_holds_far_from_the_datum(double x, double y, bool holds) => Assert.Equal(holds, Footprint.Holds([new(100, 1000, 0), new(110, 1005, 0)], new(x, y, 0)));

    // A corner counts when it stands out by more than a thousand millionth of the size of the whole, wherever that lies and however narrow it is.
    [Fact]
    public void Hull_leaves_out_what_only_rounding_lifts_off_an_edge()
    {
        Assert.Equal(4, Footprint.Hull([(1e6, 1e6), (1e6 + 10, 1e6), (1e6 + 10, 1e6 + 10), (1e6, 1e6 + 10)]).Count);
        Assert.Equal(4, Footprint.Hull([(1e6, 0), (1e6 + 10, 0), (1e6 + 10, 10), (1e6, 10)]).Count);
        Assert.Equal(4, Footprint.Hull([(0, 1e6), (10, 1e6), (10, 1e6 + 10), (0, 1e6 + 10)]).Count);
        Assert.Equal([(0, 0), (1000, 0), (500, 0.001)], Footprint.Hull([(0, 0), (500, -1e-9), (1000, 0), (500, 0.001)]));
        Assert.Equal(3, Footprint.Hull([(0, 0), (-1e-9, 500), (0, 1000), (0.001, 500)]).Count);
    }

    // By hand: a crane of two outlines, one 100 mm behind the other; the post stands 3 mm before the front one and 2 mm are taken off. The wall is 4 mm off the front one.
    [Fact]
    public void Nearest_outline_of_the_crane_counts()
    {
        FloorShape[] crane = [new("legs", Box(-110, -10, -90, 10)), new("body", Box(-10, -10, 10, 10))];
        var way = FloorPlan.Sweep(crane, [At(0, 500, 0), At(1, 500, 0)], [new("post", Box(14, 490, 20, 510))], new("room", Box(-500, 0, 15, 1000))).Value;
        Assert.Equal([("post", 1), ("room", 2)], way.Passes.Select(pass => (pass.Obstacle, Math.Round(pass.Spare.Millimetres, 9))));
        Assert.Equal(2, way.Shape.Count / crane.Length);
    }

    // By hand: from 90° to 120° the place (100, 20) of the crane ends at (1000 + 100·cos 120° − 20·sin 120°, 500 + 100·sin 120° + 20·cos 120°), and it never leaves its circle of 101.98 mm.
    [Fact]
    public void Crane_turns_on_from_where_it_points()
    {
        FloorShape[] crane = [new("crane", [new(100, 20), new(0, 0), new(50, 0)])];
        var way = FloorPlan.Sweep(crane, [At(1000, 500, 90), At(1000, 500, 120)], [new("post", Box(1090, 450, 1110, 550)), new("past", Box(890, 540, 900, 600))], null).Value;
        Assert.Equal(932.6795, way.Shape[^1].Corners[0].X, 1e-4);
        Assert.Equal(576.6025, way.Shape[^1].Corners[0].Y, 1e-4);
        Assert.Equal(980, way.Shape[0].Corners[0].X, 1e-9);
        Assert.Equal(600, way.Shape[0].Corners[0].Y, 1e-9);
        // The post lies where the crane would sweep if it began at 0°; straight beside the middle it is 90 mm away.
        Assert.Equal(88, way.Passes.Single(pass => pass.Obstacle == "post").Spare.Millimetres, 1e-9);
        Assert.Equal(932.6795 - 900 - 2, way.Passes.Single(pass => pass.Obstacle == "past").Spare.Millimetres, 1e-3);
    }

    [Fact]
    public void Outline_of_two_corners_is_told_as_such() => Says.One("bench: met 2 corners; expected three or more, each with its place. Draw its outline again.",
        FloorPlan.Sweep([new("crane", Box(-10, -10, 10, 10))], [At(0, 0, 0), At(1, 0, 0)], [new("bench", [new(0, 0), new(1, 1)])], null));

    // By hand: 300 mm straight on in 75 looks of 4 mm: drawn at the start, at the first look beyond 150 mm (152), and at the end.
    [Fact]
    public void Swept_shape_is_drawn_every_now_and_then()
    {
        var way = FloorPlan.Sweep([new("crane", Box(-10, -10, 10, 10))], [At(0, 500, 0), At(300, 500, 0)], [], null).Value;
        Assert.Equal([10, 162, 310], way.Shape.Select(shape => Math.Round(shape.Corners.Max(c => c.X), 6)));
        Assert.True(way.Clear);
        Assert.Empty(way.Passes);
    }

    // By hand: a quarter turn to the left brings (100, 20) to (−20, 100); moved by (1000, 500).
    [Fact]
    public void Crane_turns_to_the_left()
    {
        var way = FloorPlan.Sweep([new("crane", [new(100, 20), new(0, 0), new(50, 0)])], [At(1000, 500, 0), At(1000, 500, 90)], [], null).Value;
        Assert.Equal(980, way.Shape[^1].Corners[0].X, 1e-9);
        Assert.Equal(600, way.Shape[^1].Corners[0].Y, 1e-9);
        Assert.Equal("crane", way.Shape[^1].Name);
    }

    // By hand: three legs of 200 m there and back are 600 m.
    [Fact]
    public void Way_that_is_too_long_is_refused() => Says.One("way: met 600 m at the far corner; expected 500 m at most. Give the way in shorter pieces.",
        FloorPlan.Sweep([new("crane", Box(-10, -10, 10, 10))], [At(-1e5, 0, 0), At(1e5, 0, 0), At(-1e5, 0, 0), At(1e5, 0, 0)], [], null));

    [Fact]
    public void Place_beyond_a_hundred_metres_is_refused() => Says.All(
        FloorPlan.Sweep([new("crane", Box(-10, -10, 10, 10))], [At(100_001, 0, 0), At(0, -100_001, 0), At(1e5, -1e5, 0)], [], new("room", [new(0, 0), new(100_001, 0), new(0, 1)])),
        "room: met 3 corners, one without a number; expected three or more, each with its place. Draw its outline again.",
        "pose 1: met 100001, 0 mm; expected a place within 100 m. Give the place on the floor again.",
        "pose 2: met 0, -100001 mm; expected a place within 100 m. Give the place on the floor again.");

    // By hand: a crane of 20 mm each way goes past a post 13 mm beside it: 3 mm, less the 2 mm that a look may miss; one 12 mm beside it is not counted as clear.
    [Theory]
    [InlineData(13, true, 1)]
    [InlineData(12, false, 0)]
    public void Way_is_clear_only_beyond_what_a_look_may_miss(double gap, bool clear, double spare)
    {
        var way = FloorPlan.Sweep([new("crane", Box(-10, -10, 10, 10))], [At(0, 0, 0), At(200, 0, 0)], [new("post", Box(90, gap, 110, gap + 20))], null).Value;
        Assert.Equal(clear, way.Clear);
        Assert.Equal(spare, way.Passes[0].Spare.Millimetres, 1e-9);
    }

    [Fact]
    public void Working_of_each_lift_names_every_figure()
    {
        var load = new HangingLoad(Mass.FromKilograms(150), Mass.FromKilograms(10), new(1, 2, -100), new(20, 10, 30));
        Leg[] legs = [new("front", new(300, 4, 5), Length.FromMillimetres(700)), new("rear", new(-300, -4, -5), Length.FromMillimetres(700))];
        Assert.Equal("largest pull of front: m mass with its spread 160 kg; Gx centre of mass to the front 1 mm; Gy centre of mass to the left 2 mm; Gz centre of mass up -100 mm; Ax lifting point to the front 300 mm; Ay lifting point to the left 4 mm; Az lifting point up 5 mm; L leg 700 mm; β largest angle to the vertical # °; T pull # N",
            Told(LiftWorkings.Legs(load, legs, Slinging.Hang(load, legs).Value)[0], "β", "T"));
        Assert.Equal([10, 5, 15], LiftWorkings.Legs(load, legs, Slinging.Hang(load, legs).Value)[0].Inputs.Skip(1).Take(3).Select(i => i.StandardUncertainty)); // spreads are twofold
        var gear = Gear.Use([new("hook", Force.FromNewtons(4903.325), Outcome.Of(Mass.FromKilograms(1000)))]).Value;
        Assert.Equal("use of hook: F load 4903.325 N; WLL rating 1000 kg; part load over rating 0.5 1", Told(LiftWorkings.Pieces(gear)[0]));
        var crane = new StandingCrane([new("fl", 1600, 450), new("fr", 1600, -450), new("rr", 0, -350), new("rl", 0, 350)], Mass.FromKilograms(75), new(550, 0, 500),
            Mass.FromKilograms(300), new(1750, 0, 1500), Angle.FromRadians(0), Angle.FromRadians(0));
        Assert.Equal("standing on the line fr to fl: w mass of the crane 75 kg; m load 300 kg; x end of the boom forward 1750 mm; z end of the boom up 1500 mm; δ swing 0 °; σ slope 0 °; hold moment that holds # N·m; tip moment that tips # N·m; factor holding over tipping # 1",
            Told(LiftWorkings.WheelLines(crane, CraneTipping.Stands(crane).Value)[0], "hold", "tip", "factor"));
    }

    [Fact]
    public void Working_of_a_stand_names_every_figure()
    {
        var engine = new MountedEngine(new(Mass.FromKilograms(60), Mass.FromKilograms(5), new(280, 0, 18), new(20, 0, 0)), Length.FromMillimetres(150),
            [new("1", 130, 100), new("2", -130, 100), new("3", 130, -100), new("4", -130, -100)], ThreadTable.Find("M12").Value,
            PropertyClass.Of("8.8", Length.FromMillimetres(12)).Value, Length.Zero, Length.FromMillimetres(20), HoleMaterial.CastIron);
        Assert.Equal("moment at the post of the stand: m mass with its spread 65 kg; x centre out from the face, with its spread 300 mm; a face to post 150 mm; M moment # N·m",
            Told(LiftWorkings.Stand(engine, EngineStand.Mount(engine, Torque.FromNewtonMetres(1500)).Value), "M"));
    }

    private static string Told(Working working, params string[] left) =>
        $"{working.What}: {string.Join("; ", working.Inputs.Append(working.Result).Select(f => FormattableString.Invariant($"{f.Symbol} {f.Meaning} {(left.Contains(f.Symbol) ? "#" : f.Value)} {f.Unit}")))}";

    private static FloorPoint[] Box(double x0, double y0, double x1, double y1) => [new(x0, y0), new(x1, y0), new(x1, y1), new(x0, y1)];

    private static FloorPose At(double x, double y, double degrees) => new(new(x, y), Angle.FromDegrees(degrees));
}
