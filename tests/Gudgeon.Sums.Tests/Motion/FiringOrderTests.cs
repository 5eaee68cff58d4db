using Gudgeon.Sums.Motion;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Motion;

public class FiringOrderTests
{
    // The four-stroke cycle, by hand: two cylinders whose firings are a crank turn apart are at firing top and overlap together.
    [Theory]
    [InlineData(new[] { 1, 3, 4, 2 }, "1 with 4, 3 with 2, 4 with 1, 2 with 3")]
    [InlineData(new[] { 1, 5, 3, 6, 2, 4 }, "1 with 6, 5 with 2, 3 with 4, 6 with 1, 2 with 5, 4 with 3")]
    [InlineData(new[] { 1, 3, 2 }, "1 alone, 3 alone, 2 alone")]
    [InlineData(new[] { 1 }, "1 alone")]
    public void Cylinder_is_set_when_its_pair_is_at_overlap(int[] order, string expected) => Assert.Equal(expected,
        string.Join(", ", FiringOrder.ClearanceTable(order).Value.Select(step => step.Overlapping is { } pair ? $"{step.Cylinder} with {pair}" : $"{step.Cylinder} alone")));

    // A 90° twin on one pin fires at 0 and 450°: neither is at overlap when the other fires (by hand).
    [Fact]
    public void Uneven_engine_goes_by_its_angles()
    {
        Assert.All(FiringOrder.ClearanceTable([1, 2], [Deg(0), Deg(450)]).Value, step => Assert.Null(step.Overlapping));
        Assert.Equal([2, 1], FiringOrder.ClearanceTable([1, 2], [Deg(0), Deg(360)]).Value.Select(step => step.Overlapping!.Value));
    }

    [Fact]
    public void Positions_at_first_firing_are_by_hand() =>
        Assert.Equal([0, 180, 540, 360], FiringOrder.Positions([1, 3, 4, 2], Angle.Zero).Value.Select(angle => Math.Round(angle.Degrees, 9)));

    [Fact]
    public void Steps_are_spread_evenly_over_two_turns() =>
        Assert.Equal([0, 144, 288, 432, 576], FiringOrder.ClearanceTable([1, 2, 4, 5, 3]).Value.Select(step => Math.Round(step.CrankFromFirst.Degrees, 9)));

    [Fact]
    public void Order_with_a_cylinder_twice_is_refused() => Says.All(
        FiringOrder.ClearanceTable([1, 3, 3, 7]),
        "firing order: met cylinder 7 among 4; expected 1 to 4. Number the cylinders from 1 without a gap.",
        "firing order: met cylinder 3 2 times; expected each cylinder once. Read the order again.");

    [Fact]
    public void Empty_order_is_refused() => Says.One(
        "firing order: met nothing; expected each cylinder once. Give the order, for instance 1 3 4 2.", FiringOrder.Positions([], Angle.Zero));

    [Fact]
    public void Angles_that_do_not_rise_are_refused() => Says.One(
        "firing angles: met 0, 720; expected rising from 0 to less than 720°. Count on from the first cylinder's firing.", FiringOrder.ClearanceTable([1, 2], [Deg(0), Deg(720)]));

    [Fact]
    public void Too_few_angles_are_refused() => Says.One(
        "firing angles: met 1 for 2 cylinders; expected one for each cylinder. Give the angle of each firing.", FiringOrder.ClearanceTable([1, 2], [Deg(0)]));

    private static Angle Deg(double value) => Angle.FromDegrees(value);
}
