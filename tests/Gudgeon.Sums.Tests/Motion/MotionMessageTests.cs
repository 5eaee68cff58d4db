using CsCheck;
using Gudgeon.Sums.Motion;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Motion;

/// <summary>What the sums of motion refuse, word for word and all at once, and what they take at the very edge. Engines are invented.</summary>
public class MotionMessageTests
{
    private static readonly ShimRange Shop = new(Mm(2.20), Mm(3.20), Mm(0.05));

    [Fact]
    public void Equal_lift_says_all_that_is_wrong() => Says.All(LobeCentre.ByEqualLift([new(Mm(0), Deg(10), Deg(10)), new(Mm(-1), Deg(0), Deg(720))], Deg(11)),
        "uncertainty of a reading: met 11°; expected 0 to 10°. Look at uncertainty of a reading again.",
        "lift of pair 1: met 0 mm; expected more than 0 mm. Look at lift of pair 1 again.",
        "closing of pair 1: met 10° after opening at 10°; expected a later angle, less than two turns on. Count degrees on through the turn: 250° and not −110°.",
        "lift of pair 2: met -1 mm; expected more than 0 mm. Look at lift of pair 2 again.",
        "closing of pair 2: met 720° after opening at 0°; expected a later angle, less than two turns on. Count degrees on through the turn: 250° and not −110°.");

    [Fact]
    public void Equal_lift_just_short_of_two_turns_is_taken() => Assert.Equal(359.5, LobeCentre.ByEqualLift([new(Mm(1), Deg(0), Deg(719))], Deg(10)).Value.Centre.Degrees, 1e-9);

    [Fact]
    public void Every_event_is_named() => Says.All(CamTiming.FromEvents(new(Deg(-91), Deg(121), Deg(-92), Deg(122))),
        "inlet opens: met -91°; expected -90 to 120°. Look at inlet opens again.",
        "inlet closes: met 121°; expected -90 to 120°. Look at inlet closes again.",
        "exhaust opens: met -92°; expected -90 to 120°. Look at exhaust opens again.",
        "exhaust closes: met 122°; expected -90 to 120°. Look at exhaust closes again.");

    [Theory]
    [InlineData(61)]
    [InlineData(-61)]
    public void Advance_beyond_sixty_is_refused(double degrees) => Says.One(
        $"advance: met {degrees}°; expected -60 to 60°. Look at advance again.", CamTiming.Advanced(new(Deg(20), Deg(60), Deg(60), Deg(20)), Deg(degrees)));

    // By hand: six teeth are 60° each.
    [Fact]
    public void Six_teeth_are_the_fewest()
    {
        Assert.Equal(60, CamTiming.OneTooth(6).Value.Degrees, 1e-9);
        Says.One("teeth of the crank wheel: met 5; expected 6 or more. Count the teeth of the wheel on the crank.", CamTiming.OneTooth(5));
    }

    [Fact]
    public void Card_says_all_that_is_wrong()
    {
        Says.All(CamTiming.AgainstCard(Deg(290), Deg(11), Deg(110), 20),
            "uncertainty of the centre: met 11°; expected 0 to 10°. Look at uncertainty of the centre again.",
            "lobe centre: met 290°; expected within half a turn of the card's 110°. Check that both count from the same top dead centre.");
        Assert.True(CamTiming.AgainstCard(Deg(289.9), Deg(0.1), Deg(110), 20).Ok);
        Assert.True(CamTiming.AgainstCard(Deg(-69.9), Deg(0.1), Deg(110), 20).Ok);
    }

    // By hand, 20 teeth of 18°: 9° lies midway. With 0.5° of uncertainty 1° of room is wanted beyond what is left over, either way.
    [Theory]
    [InlineData(117.9, true)]
    [InlineData(118.1, false)]
    [InlineData(102.1, true)]
    [InlineData(101.9, false)]
    public void Teeth_are_sure_with_twice_the_uncertainty_to_spare(double measured, bool sure) => Assert.Equal(sure, CamTiming.AgainstCard(Deg(measured), Deg(0.5), Deg(110), 20).Value.Sure);

    [Fact]
    public void Drive_says_all_that_is_wrong()
    {
        Says.All(DriveWear.LateByStretch(new(Mm(0), 5, 9, Mm(300)), 0.06),
            "pitch: met 0 mm; expected more than 0 mm. Look at pitch again.",
            "teeth of the crank wheel: met 5; expected 6 to 500. Count the teeth of the wheel on the crank.",
            "teeth of the cam wheel: met 9; expected twice the crank wheel's, 10. Count again; a drive in two stages is reckoned stage by stage.",
            "elongation: met 0.06; expected 0 to 0.05. Look at elongation again.");
        Says.All(DriveWear.LateBySkim(new(Mm(1), 501, 1002, Mm(300)), Mm(6)),
            "teeth of the crank wheel: met 501; expected 6 to 500. Count the teeth of the wheel on the crank.",
            "skim: met 6 mm; expected 0 to 5 mm. Look at skim again.");
    }

    // By hand: a wheel of 6 teeth has the radius of its pitch (a hexagon), 10 mm; one of 12 has 10/(2·sin 15°) = 19.3185 mm; 5 mm more for the skim is 34.3185 mm.
    [Fact]
    public void Centres_just_wide_enough_are_taken()
    {
        Assert.True(DriveWear.LateBySkim(new(Mm(10), 6, 12, Mm(34.3186)), Mm(5)).Ok);
        Says.One("centres: met 34.3185 mm; expected more than both wheels' radii and the skim, 34.3185 mm. Measure from crank axis to cam axis.",
            DriveWear.LateBySkim(new(Mm(10), 6, 12, Mm(34.3185)), Mm(0)));
        Assert.True(DriveWear.LateByStretch(new(Mm(1), 500, 1000, Mm(1000)), 0.05).Ok);
    }

    // By hand: with centres of 100 mm the free run is √(100² − 9.3185²) = 99.5649 mm; a hundredth of it, twice, over the cam's 19.3185 mm: 0.103077 rad.
    [Fact]
    public void Stretch_is_as_by_hand() => Assert.Equal(0.103077, DriveWear.LateByStretch(new(Mm(10), 6, 12, Mm(100)), 0.01).Value.Radians, 1e-6);

    [Fact]
    public void Order_says_all_that_is_wrong() => Says.All(FiringOrder.Positions([0, 2, 2, 5], Angle.Zero),
        "firing order: met cylinder 0 among 4; expected 1 to 4. Number the cylinders from 1 without a gap.",
        "firing order: met cylinder 5 among 4; expected 1 to 4. Number the cylinders from 1 without a gap.",
        "firing order: met cylinder 2 2 times; expected each cylinder once. Read the order again.");

    [Theory]
    [InlineData(10, 300)]
    [InlineData(0, 0)]
    [InlineData(0, 720)]
    public void Firing_angles_must_rise_from_nothing(double first, double second) => Says.One(
        $"firing angles: met {first}, {second}; expected rising from 0 to less than 720°. Count on from the first cylinder's firing.", FiringOrder.ClearanceTable([1, 2], [Deg(first), Deg(second)]));

    [Fact]
    public void Every_firing_angle_must_rise() => Says.One(
        "firing angles: met 0, 240, 120; expected rising from 0 to less than 720°. Count on from the first cylinder's firing.", FiringOrder.ClearanceTable([1, 2, 3], [Deg(0), Deg(240), Deg(120)]));

    // Overlap is counted to a degree: common practice, no source.
    [Theory]
    [InlineData(361, 2)]
    [InlineData(359, 2)]
    [InlineData(361.1, null)]
    [InlineData(358.9, null)]
    public void Pair_is_at_overlap_within_a_degree(double second, int? pair) => Assert.Equal(pair, FiringOrder.ClearanceTable([1, 2], [Deg(0), Deg(second)]).Value[0].Overlapping);

    // By hand, 1-3-4-2 with 180° between: a turn and a half after the first fires, cylinder 3 is a turn past its firing, 4 half a turn, 2 at its firing.
    [Fact]
    public void Positions_are_counted_on_from_each_firing() => Assert.Equal([540, 0, 360, 180],
        FiringOrder.Positions([1, 3, 4, 2], Deg(540)).Value.Select(angle => Math.Round(angle.Degrees, 6)));

    // By hand: two turns and 10° more are 10°; the other fires a turn later and stands a turn before.
    [Fact]
    public void Positions_go_round_in_two_turns() => Assert.Equal([10, 370], FiringOrder.Positions([1, 2], Deg(730)).Value.Select(angle => Math.Round(angle.Degrees, 6)));

    [Fact]
    public void Crank_gear_says_all_that_is_wrong()
    {
        Says.All(CrankSlider.Of(Mm(0), Mm(-1), Mm(1)),
            "throw: met 0 mm; expected more than 0 mm. Look at throw again.",
            "rod: met -1 mm; expected more than 0 mm. Look at rod again.",
            "rod: met -1 mm; expected more than throw and offset together, 1 mm. Measure the rod between its centres, and take half the stroke as throw.");
        Says.One("rod: met 55 mm; expected more than throw and offset together, 55 mm. Measure the rod between its centres, and take half the stroke as throw.", CrankSlider.Of(Mm(45), Mm(55), Mm(10)));
        Says.All(CrankSlider.MeanSpeedMetresPerSecond(Mm(0), -1),
            "stroke: met 0 mm; expected more than 0 mm. Look at stroke again.",
            "speed: met -1 1/min; expected 0 1/min or more. Look at speed again.");
    }

    [Fact]
    public void Whole_stroke_and_none_are_taken()
    {
        var gear = CrankSlider.Of(Mm(45), Mm(150), Mm(0)).Value;
        Assert.Equal((0, 0), (gear.AnglesAt(Mm(0)).Value.Before.Degrees + 0.0, gear.AnglesAt(Mm(0)).Value.After.Degrees));
        Assert.Equal(180, gear.AnglesAt(Mm(90)).Value.After.Degrees, 1e-4);
    }

    [Fact]
    public void Stops_at_the_edges_are_taken()
    {
        Assert.Equal(355, PositiveStop.FindTop(Deg(350), Deg(0), Angle.Zero).Value.DiscAtTop.Degrees, 1e-9);
        Assert.Equal(-5, PositiveStop.FindTop(Deg(350), Deg(0), Angle.Zero).Value.TurnPointerBy.Degrees, 1e-9);
        Assert.Equal(120, PositiveStop.FindTop(Deg(0), Deg(240), Angle.Zero).Value.HalfTravel.Degrees, 1e-9);
        Says.All(PositiveStop.FindTop(Deg(0), Deg(241), Deg(11)),
            "uncertainty of a reading: met 11°; expected 0 to 10°. Look at uncertainty of a reading again.",
            "turn between the stops: met 241°; expected 10 to 240°. Read again: first against the stop in the running direction, then backwards.");
    }

    [Fact]
    public void Set_of_shims_says_all_that_is_wrong() => Says.All(
        ValveShims.LeastNew([new("1", Mm(11), Mm(51), Mm(-0.1), Mm(0.2)), new("2", Mm(0.2), Mm(2), Mm(0.2), Mm(0.2)), new("3", Mm(0.2), Mm(2), Mm(0.2), Mm(10.1))], [Mm(2), Mm(51)], new(Mm(0.05), Mm(51), Mm(0.0009))),
        "thinnest shim: met 0.05 mm; expected 0.1 to 50 mm. Look at thinnest shim again.",
        "step of the shims: met 0.0009 mm; expected 0.001 mm or more. Read the shim list again.",
        "thickest shim: met 51 mm; expected 0.05 to 50 mm. Read the shim list again.",
        "1, clearance: met 11 mm; expected 0 to 10 mm. Look at 1, clearance again.",
        "1, shim: met 51 mm; expected 0.1 to 50 mm. Look at 1, shim again.",
        "1, limits: met -0.1 to 0.2 mm; expected least before most, 0 to 10 mm. Read the book's limits again.",
        "2, limits: met 0.2 to 0.2 mm; expected least before most, 0 to 10 mm. Read the book's limits again.",
        "3, limits: met 0.2 to 10.1 mm; expected least before most, 0 to 10 mm. Read the book's limits again.",
        "spare shim 2: met 51 mm; expected 0.1 to 50 mm. Look at spare shim 2 again.");

    [Theory]
    [InlineData(500, true)]
    [InlineData(501, false)]
    public void Five_hundred_valves_are_the_most(int count, bool good)
    {
        var valves = Enumerable.Range(1, count).Select(i => new MeasuredValve($"{i}", Mm(0.22), Mm(2.5), Mm(0.2), Mm(0.25))).ToList();
        Assert.Equal(good, ValveShims.LeastNew(valves, [], Shop).Ok);
    }

    // By hand: only 2.20 fits the first valve and only 3.20 the second, the ends of the shop's list; limits from 0 to 10 mm and one size alone are taken too.
    [Fact]
    public void Ends_of_the_list_are_bought()
    {
        Assert.Equal([2.20, 3.20], ValveShims.LeastNew([Needs("1", 2.20), Needs("2", 3.20)], [], Shop).Value.Select(c => Math.Round(c.Shim.Millimetres, 6)));
        Assert.True(ValveShims.LeastNew([Needs("1", 2.20)], [], new(Mm(2.2), Mm(50), Mm(1))).Ok);
        Assert.Equal(ShimSource.Stays, ValveShims.LeastNew([new("1", Mm(5), Mm(2.5), Mm(0), Mm(10))], [], new(Mm(2.5), Mm(2.5), Mm(0.001))).Value[0].Source);

        // Without any clearance the shim under it is 0.225 mm too thick.
        static MeasuredValve Needs(string name, double shim) => new(name, Mm(0), Mm(shim + 0.225), Mm(0.2), Mm(0.25));
    }

    // Every square table of costs against every order there is: the dearest way to be sure.
    [Fact]
    public void Assignment_is_the_cheapest_of_all_orders() =>
        Gen.Int[0, 20].Array[20].Sample(raw =>
        {
            for (var rows = 1; rows <= 4; rows++)
            {
                var columns = rows + 1;
                var cost = new long[rows, columns];
                for (var i = 0; i < rows * columns; i++)
                    cost[i / columns, i % columns] = raw[i];
                var answer = Assignment.Least(cost);
                Assert.Equal(rows, answer.Distinct().Count());
                Assert.Equal(Cheapest(cost, 0, 0), Enumerable.Range(0, rows).Sum(r => cost[r, answer[r]]));
            }
        }, iter: 500);

    private static long Cheapest(long[,] cost, int row, int taken)
    {
        if (row == cost.GetLength(0))
            return 0;
        return Enumerable.Range(0, cost.GetLength(1)).Where(column => (taken >> column & 1) == 0).Min(column => cost[row, column] + Cheapest(cost, row + 1, taken | 1 << column));
    }

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static Angle Deg(double value) => Angle.FromDegrees(value);
}
