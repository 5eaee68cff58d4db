using CsCheck;
using Gudgeon.Sums.Fasteners;

namespace Gudgeon.Sums.Tests.Fasteners;

public class TighteningOrderTests
{
    private static readonly Gen<List<PlanePoint>> Pins = Gen.Select(Gen.Int[0, 4000], Gen.Int[0, 2000]).Array[1, 20]
        .Select(raw => raw.Distinct().Select(p => new PlanePoint(p.Item1, p.Item2)).ToList());

    // ASME PCC-1 legacy cross pattern. 12 bolts: seen in a general-audience page; the others from memory.
    [Theory]
    [InlineData(4, "1 3 2 4")]
    [InlineData(8, "1 5 3 7 2 6 4 8")]
    [InlineData(12, "1 7 4 10 2 8 5 11 3 9 6 12")]
    [InlineData(16, "1 9 5 13 3 11 7 15 2 10 6 14 4 12 8 16")]
    [InlineData(20, "1 11 6 16 3 13 8 18 5 15 10 20 2 12 7 17 4 14 9 19")]
    [InlineData(24, "1 13 7 19 4 16 10 22 2 14 8 20 5 17 11 23 3 15 9 21 6 18 12 24")]
    public void Cross_on_a_bolt_circle_is_the_published_order(int count, string expected) =>
        Assert.Equal(expected, Numbers(TighteningOrder.Cross(PlanePoint.Circle(count, 100))));

    // Common practice, no source: a star for odd counts, pairs for the other even counts.
    [Theory]
    [InlineData(1, "1")]
    [InlineData(2, "1 2")]
    [InlineData(3, "1 2 3")]
    [InlineData(5, "1 3 5 2 4")]
    [InlineData(6, "1 4 2 5 3 6")]
    [InlineData(7, "1 4 7 3 6 2 5")]
    [InlineData(10, "1 6 3 8 5 10 2 7 4 9")]
    public void Cross_on_other_counts_goes_across(int count, string expected) =>
        Assert.Equal(expected, Numbers(TighteningOrder.Cross(PlanePoint.Circle(count, 100))));

    // The structure that every published order has: groups of four a quarter turn apart.
    [Fact]
    public void Cross_with_a_multiple_of_four_goes_by_right_angles() =>
        Gen.Int[1, 15].Sample(quarter =>
        {
            var order = TighteningOrder.Cross(PlanePoint.Circle(4 * quarter, 50)).Value;
            Assert.Equal(Enumerable.Range(0, 4 * quarter), order.Order());
            for (var i = 0; i < order.Count; i += 4)
            {
                Assert.InRange(order[i], 0, quarter - 1);
                Assert.Equal([2 * quarter, quarter, 3 * quarter], order.Skip(i + 1).Take(3).Select(place => place - order[i]));
            }
        });

    // The picture in the head of most who have done one: common practice, no source.
    //   8 4 1 5 9
    //   7 3 2 6 10
    [Fact]
    public void Spiral_on_a_ten_bolt_head_starts_in_the_middle_and_ends_at_the_corners() =>
        Assert.Equal([8, 4, 1, 5, 9, 7, 3, 2, 6, 10], Ranks(TighteningOrder.SpiralFromCentre(PlanePoint.Grid(5, 2, 90, 100)).Value));

    [Fact]
    public void Spiral_on_a_row_changes_sides() =>
        Assert.Equal([5, 3, 1, 2, 4], Ranks(TighteningOrder.SpiralFromCentre(PlanePoint.Grid(5, 1, 80, 1)).Value));

    [Fact]
    public void Loosening_is_the_spiral_backwards() =>
        Assert.Equal([3, 7, 10, 6, 2, 4, 8, 9, 5, 1], Ranks(TighteningOrder.LoosenFromTheEndsIn(PlanePoint.Grid(5, 2, 90, 100)).Value));

    [Fact]
    public void Circles_go_round_from_the_top() =>
        Assert.Equal("1 2 3 4 5 6 7", Numbers(TighteningOrder.InCircles(PlanePoint.Circle(7, 30))));

    [Fact]
    public void Spiral_with_pins_a_little_off_is_the_same() =>
        Gen.Select(Gen.Double[-0.05, 0.05], Gen.Double[-0.05, 0.05]).Array[10].Sample(noise =>
        {
            var grid = PlanePoint.Grid(5, 2, 90, 100);
            var moved = grid.Zip(noise, (p, n) => new PlanePoint(p.X + 90 * n.Item1, p.Y + 90 * n.Item2)).ToList();
            Assert.Equal(TighteningOrder.SpiralFromCentre(grid).Value, TighteningOrder.SpiralFromCentre(moved).Value);
        });

    [Fact]
    public void Spiral_does_not_depend_on_the_order_of_the_pins() =>
        Pins.SelectMany(p => Gen.Shuffle(Enumerable.Range(0, p.Count).ToArray()), (p, s) => (p, s)).Sample(x =>
        {
            var points = x.p;
            var shuffled = x.s.Select(i => points[i]).ToList();
            Assert.Equal(
                TighteningOrder.SpiralFromCentre(points).Value.Select(i => points[i]),
                TighteningOrder.SpiralFromCentre(shuffled).Value.Select(i => shuffled[i]));
        });

    [Fact]
    public void Spiral_names_every_fastener_once_and_never_steps_inwards_by_more_than_a_ring() =>
        Pins.Sample(points =>
        {
            var order = TighteningOrder.SpiralFromCentre(points).Value;
            Assert.Equal(Enumerable.Range(0, points.Count), order.Order());
            var middle = new PlanePoint(points.Average(p => p.X), points.Average(p => p.Y));
            var spacing = points.SelectMany((p, i) => points.Take(i).Select(q => double.Hypot(p.X - q.X, p.Y - q.Y))).DefaultIfEmpty(0).Min();
            var distances = order.Select(i => double.Hypot(points[i].X - middle.X, points[i].Y - middle.Y)).ToList();
            Assert.All(distances.Zip(distances.Skip(1)), step => Assert.True(step.Second >= step.First - 0.25 * spacing - 1e-9));
        });

    // By hand, all about (0, 0): one at 10 to the right, two at 20 (at 350° and 170°), one at 30, one at 40. Clockwise on from the right the one at 170° comes first.
    [Fact]
    public void Spiral_goes_on_from_where_a_lone_fastener_stood()
    {
        var (x, y) = (20 * Math.Cos(Math.PI / 18), 20 * Math.Sin(Math.PI / 18));
        Assert.Equal([0, 2, 1, 3, 4], TighteningOrder.SpiralFromCentre([new(10, 0), new(x, -y), new(-x, y), new(30, 0), new(-40, 0)]).Value);
    }

    [Fact]
    public void Lone_fastener_is_an_order_of_its_own()
    {
        Assert.Equal([0], TighteningOrder.SpiralFromCentre([new(7, 3)]).Value);
        Assert.Equal([0], TighteningOrder.InCircles([new(7, 3)]).Value);
        Assert.Equal([0], TighteningOrder.Cross([new(7, 3)]).Value);
    }

    // By hand: two straight over the middle, the nearer one first.
    [Fact]
    public void Circles_take_the_nearer_of_two_in_one_direction() => Assert.Equal([0, 1, 2], TighteningOrder.InCircles([new(0, -10), new(0, -20), new(0, 30)]).Value);

    [Fact]
    public void Pins_nearer_than_a_millionth_of_the_joint_are_one() => Says.One(
        "fastener 3: met the place of fastener 2; expected a place of its own. Move or take away one of the two pins.",
        TighteningOrder.SpiralFromCentre([new(0, 0), new(1000, 0), new(1000.0005, 0)]));

    // By hand: with a fifth at (3, 0) the middle moves to (0.6, 0), so that it is 2.4 off, and a twentieth of the reach is 5.
    [Fact]
    public void Fastener_within_a_twentieth_of_the_middle_is_in_the_middle()
    {
        const string message = "fastener 5: met a place at the middle of the pattern; expected fasteners round an open middle. Use the spiral from the centre for this joint.";
        Says.One(message, TighteningOrder.Cross([.. PlanePoint.Circle(4, 100), new(3, 0)]));
        Says.One(message, TighteningOrder.InCircles([.. PlanePoint.Circle(4, 100), new(3, 0)]));
        Assert.True(TighteningOrder.Cross([.. PlanePoint.Circle(4, 100), new(10, 0)]).Ok);
    }

    [Fact]
    public void Spiral_without_fasteners_is_refused() => Says.One(
        "fasteners: met none; expected one or more. Put a pin on each fastener.", TighteningOrder.SpiralFromCentre([]));

    [Fact]
    public void Spiral_with_two_pins_at_one_place_is_refused() => Says.One(
        "fastener 3: met the place of fastener 1; expected a place of its own. Move or take away one of the two pins.",
        TighteningOrder.SpiralFromCentre([new(0, 0), new(1, 0), new(0, 0)]));

    [Fact]
    public void Spiral_with_a_pin_nowhere_is_refused() => Says.One(
        "fastener 2: met NaN, 0; expected a place on the picture. Put its pin again.", TighteningOrder.SpiralFromCentre([new(0, 0), new(double.NaN, 0)]));

    [Fact]
    public void Cross_with_a_fastener_in_the_middle_is_refused() => Says.One(
        "fastener 5: met a place at the middle of the pattern; expected fasteners round an open middle. Use the spiral from the centre for this joint.",
        TighteningOrder.Cross([.. PlanePoint.Circle(4, 10), new(0, 0)]));

    [Fact]
    public void Flange_passes_are_cross_at_each_part_and_a_circle_at_the_end()
    {
        // Three flange guides that cite ASME PCC-1: 30, 60, 100 % across, then circular at 100 %. Seen.
        var passes = TighteningPasses.Flange(PlanePoint.Circle(8, 10), TighteningPasses.UsualParts).Value;
        Assert.Equal([0.3, 0.6, 1, 1], passes.Select(p => p.PartOfFinal));
        Assert.Equal([false, false, false, true], passes.Select(p => p.UntilNoneMoves));
        Assert.Equal([0, 1, 2, 3, 4, 5, 6, 7], passes[3].Order);
        Assert.Equal([0, 4, 2, 6, 1, 5, 3, 7], passes[0].Order);
    }

    [Fact]
    public void Head_passes_that_do_not_end_at_the_whole_torque_are_refused() => Says.One(
        "stages: met 0.3, 0.6; expected rising parts of the final torque, the last one 1. Give the stages again, for instance 0.3, 0.6, 1.",
        TighteningPasses.Head(PlanePoint.Grid(5, 2, 90, 100), [0.3, 0.6]));

    private static string Numbers(Outcome<IReadOnlyList<int>> order) => string.Join(' ', order.Value.Select(i => i + 1));

    private static IEnumerable<int> Ranks(IReadOnlyList<int> order) => Enumerable.Range(0, order.Count).Select(i => order.ToList().IndexOf(i) + 1);
}
