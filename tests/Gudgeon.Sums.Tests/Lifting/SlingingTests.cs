using CsCheck;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Lifting;

public class SlingingTests
{
    private const double Weight = 1800;

    // Sling makers' sheets and statics: each of two equal legs carries W/(2·sin α), α to the horizontal: 577.35, 707.11, 1000 of 1000 at 60, 45, 30° (recomputed).
    [Theory]
    [InlineData(60, 577.35)]
    [InlineData(45, 707.11)]
    [InlineData(30, 1000.00)]
    public void Two_equal_legs_carry_the_textbook_share(double toHorizontal, double each)
    {
        var half = 300.0;
        var length = half / Math.Cos(toHorizontal * Math.PI / 180);
        var hanging = Slinging.Hang(Load(1000, new(0, 0, -100)), [Leg("front", half, 0, 0, length), Leg("rear", -half, 0, 0, length)]).Value;
        Assert.All(hanging.Legs, leg => Assert.Equal(each, leg.Likely.Newtons, 0.01));
        Assert.All(hanging.Legs, leg => Assert.Equal(90 - toHorizontal, leg.ToVertical.Degrees, 1e-9));
        Assert.Equal(0, hanging.Tilt.Degrees, 1e-9);
    }

    // The sheet's table of tension factors, angle to the horizontal (seen): 75° 1.035, 60° 1.155, 45° 1.414, 35° 1.742, 30° 2.000. The 35° row is rounded down by the sheet: 1/sin 35° is 1.7434.
    [Theory]
    [InlineData(75, 1.035)]
    [InlineData(60, 1.155)]
    [InlineData(45, 1.414)]
    [InlineData(35, 1.742)]
    [InlineData(30, 2.000)]
    public void Tension_factors_are_those_of_the_sheet(double toHorizontal, double factor)
    {
        var length = 300 / Math.Cos(toHorizontal * Math.PI / 180);
        var hanging = Slinging.Hang(Load(1000, new(0, 0, -100)), [Leg("front", 300, 0, 0, length), Leg("rear", -300, 0, 0, length)]).Value;
        Assert.All(hanging.Legs, leg => Assert.Equal(factor, leg.Likely.Newtons / 500, 0.002));
    }

    // The sheet's worked example by lengths: 4 ft high, 6 ft long, slings of 6000 lb: 4000 lb each (seen). So 2·4000 on two such legs puts 6000 into each.
    [Fact]
    public void Reduction_by_lengths_is_that_of_the_sheet()
    {
        var half = Math.Sqrt(36 - 16) * 100;
        Assert.Equal(6000, Slinging.Hang(Load(8000, new(0, 0, -50)), [Leg("a", half, 0, 0, 600), Leg("b", -half, 0, 0, 600)]).Value.Legs[0].Likely.Newtons, 1e-6);
    }

    // Sling maker's sheet, worked: W 1000, leg 10, height 5: 1000 on each leg. Seen.
    [Fact]
    public void Two_legs_by_lengths_carry_what_the_sheet_says()
    {
        var half = Math.Sqrt(100 - 25) * 100;
        Assert.Equal(1000, Slinging.Hang(Load(1000, new(0, 0, -50)), [Leg("a", half, 0, 0, 1000), Leg("b", -half, 0, 0, 1000)]).Value.Legs[0].Likely.Newtons, 1e-6);
    }

    // Plain statics on invented inputs, recomputed: hook over the centre, a 0.20 m, b 0.35 m, h 0.60 m, 1800 N: 1207.415 N at 18.435°, 757.770 N at 30.256°.
    [Fact]
    public void Unequal_legs_over_the_centre_are_the_reckoned_ones()
    {
        var hanging = Slinging.Hang(Load(Weight, new(0, 0, -1)), [Leg("near", 200, 0, 0, double.Hypot(200, 600)), Leg("far", -350, 0, 0, double.Hypot(350, 600))]).Value;
        Assert.Equal(1207.415, hanging.Legs[0].Likely.Newtons, 0.001);
        Assert.Equal(757.770, hanging.Legs[1].Likely.Newtons, 0.001);
        Assert.Equal(18.435, hanging.Legs[0].ToVertical.Degrees, 0.001);
        Assert.Equal(30.256, hanging.Legs[1].ToVertical.Degrees, 0.001);
    }

    // Plain statics on invented inputs, recomputed: legs 0.700, half spacing 0.275, centre 0.075 m off and 0.150 m below: hook at 0.643720 m, tilt 5.3980°.
    [Fact]
    public void Centre_off_the_middle_tilts_the_engine_as_reckoned()
    {
        var hanging = Slinging.Hang(Load(Weight, new(75, 0, -150)), [Leg("front", 275, 0, 0, 700), Leg("rear", -275, 0, 0, 700)]).Value;
        Assert.Equal(643.720, hanging.Hook.Z, 1e-3);
        Assert.Equal(5.3980, hanging.Tilt.Degrees, 1e-4);
        Assert.Equal(-5.3980, hanging.FrontUp.Degrees, 1e-4);
        Assert.Equal(0, hanging.LeftUp.Degrees, 1e-9);
    }

    // Hibbeler and Gupta, ex. 3.2 (transcription): an engine of 250 kg on one rope at 30° to the horizontal and one level rope: 4.90 and 4.25 kN.
    // Level ropes are no lift: reckoned here through the balance at the hook, and refused as a rig.
    [Fact]
    public void Balance_at_a_ring_is_the_textbooks()
    {
        var pulls = Settling.Pulls([new(-Math.Cos(Math.PI / 6), 0, -0.5), new(1, 0, 0)], default, new(0, 0, 1), [0, 1]);
        Assert.Equal(4.90, pulls![0] * 250 * 9.80665 / 1000, 0.01);
        Assert.Equal(4.25, pulls[1] * 250 * 9.80665 / 1000, 0.01);
    }

    // Beer and Johnston, ex. 2.4 (transcription): 3500 lb on two ropes, one 2° off the upright, the other 30° below the level: 3574.2 and 144.0 lb.
    [Fact]
    public void Balance_of_two_ropes_is_the_textbooks()
    {
        var pulls = Settling.Pulls([At(92), At(-30)], default, new(0, 0, 1), [0, 1])!;
        Assert.Equal(3574.2, 3500 * pulls[0], 0.1);
        Assert.Equal(144.0, 3500 * pulls[1], 0.1);

        // Lifting points are told so that the hook, at the origin, pulls each along its rope.
        static Point3 At(double degrees) => new(-Math.Cos(degrees * Math.PI / 180), 0, -Math.Sin(degrees * Math.PI / 180));
    }

    // An eye on one side and a sling on the other, hook off the middle: the general balance, by hand from ΣT·u = W with u the legs' directions.
    [Fact]
    public void Eye_on_one_side_and_sling_on_the_other_balance()
    {
        var hanging = Slinging.Hang(Load(Weight, new(20, 30, -250)), [Leg("eye", 150, 180, 0, 620), Leg("sling", -140, -160, -60, 700)]).Value;
        var up = hanging.Hook - new Point3(20, 30, -250);
        var sum = hanging.Legs.Zip(new[] { new Point3(150, 180, 0), new Point3(-140, -160, -60) }).Aggregate(default(Point3), (held, pair) =>
            held + pair.First.Likely.Newtons / (hanging.Hook - pair.Second).Norm * (hanging.Hook - pair.Second));
        Assert.True((sum - Weight / up.Norm * up).Norm < 0.01);
    }

    // Hibbeler and Gupta, ex. 3.5 (transcription): FB 207.8, FC 150.0, FD 240.0 N hold 90 N: 0.6·FC = 90; 0.8·FC = FD·sin 30°; FB = FD·cos 30°.
    [Fact]
    public void Balance_of_three_ropes_in_space_is_the_textbooks()
    {
        var pulls = Settling.Pulls([new(1, 0, 0), new(0, 0.8, -0.6), new(-Math.Cos(Math.PI / 6), -0.5, 0)], default, new(0, 0, 1), [0, 1, 2]);
        Assert.Equal([207.8, 150.0, 240.0], pulls!.Select(pull => Math.Round(90 * pull, 1)));
    }

    // Rigging text, trigonometric method: three legs 3·cos β, and four counted as three: at 45° 2.121 of one leg's load, at 60° 1.5. Seen, recomputed.
    [Theory]
    [InlineData(45, 2.121)]
    [InlineData(60, 1.500)]
    public void Three_even_legs_lift_three_cosines(double beta, double factor)
    {
        var legs = Enumerable.Range(0, 3).Select(k => 2 * Math.PI * k / 3).Select((a, k) =>
            Leg($"{k}", 300 * Math.Cos(a), 300 * Math.Sin(a), 0, 300 / Math.Sin(beta * Math.PI / 180))).ToList();
        var hanging = Slinging.Hang(Load(Weight, new(0, 0, -200)), legs).Value;
        Assert.All(hanging.Legs, leg => Assert.Equal(factor, Weight / leg.Likely.Newtons, 0.001));
    }

    // Four even legs, worst sharing: two across carry all, each 1/(2·cos β) of the weight (statics by hand, β 45°: 0.70711).
    [Fact]
    public void Four_even_legs_may_leave_all_to_two()
    {
        var length = double.Hypot(double.Hypot(200, 150), 250);
        var hanging = Slinging.Hang(Load(Weight, new(0, 0, -200)),
            [Leg("1", 200, 150, 0, length), Leg("2", 200, -150, 0, length), Leg("3", -200, -150, 0, length), Leg("4", -200, 150, 0, length)]).Value;
        Assert.All(hanging.Legs, leg => Assert.Equal(0.70711 * Weight, leg.Most.Newtons, 0.02));
    }

    [Fact]
    public void Leg_at_45_is_not_warned_of_and_one_step_beyond_is()
    {
        Assert.Empty(TwoAt(45).Value.Warnings);
        Assert.Equal("front: met 45.1° to the vertical; expected 45° or less. Take longer legs if there is room above.", TwoAt(45.1).Value.Warnings[0].ToString());
    }

    [Fact]
    public void Leg_at_60_is_allowed_and_one_step_beyond_is_refused()
    {
        Assert.True(TwoAt(60).Ok);
        Says.All(TwoAt(60.1),
            "front: met 60.1° to the vertical; expected 60° at most. Take longer legs or a spreader bar.",
            "rear: met 60.1° to the vertical; expected 60° at most. Take longer legs or a spreader bar.");
    }

    [Fact]
    public void Slack_leg_is_warned_of()
    {
        var hanging = Slinging.Hang(Load(Weight, new(50, 0, -200)),
            [Leg("1", 300, 150, 0, 700), Leg("2", 300, -150, 0, 700), Leg("3", -300, 0, 0, 700), Leg("4", 0, 10, 0, 800)]).Value;
        Assert.Equal(0, hanging.Legs[3].Most.Newtons);
        Assert.Matches(@"^4: met \d+(\.\d+)? mm slack; expected a leg that carries\. Shorten it, or leave it out and count on the others alone\.$", Assert.Single(hanging.Warnings).ToString());
    }

    [Fact]
    public void Bad_rig_is_refused_all_at_once() => Says.All(
        Slinging.Hang(new(Mass.FromKilograms(-5), Mass.FromKilograms(-1), default, new(-1, 0, 0)), [Leg("a", 0, 0, 0, 0), Leg("b", double.NaN, 0, 0, 500)]),
        "mass: met -5 kg; expected more than 0 kg. Look at mass again.",
        "spread of the mass: met -1 kg; expected 0 kg or more. Look at spread of the mass again.",
        "spread of the centre: met -1, 0, 0 mm; expected 0 mm or more each way. Give how far off the centre may be.",
        "length of a: met 0 mm; expected more than 0 mm. Look at length of a again.",
        "lifting point of b: met no number; expected x, y and z in mm. Measure it from the same datum as the centre of mass.");

    [Fact]
    public void Rig_without_legs_is_refused() => Says.One(
        "legs: met 0; expected one to four. Give each leg from the hook to the engine.", Slinging.Hang(Load(Weight, default), []));

    [Fact]
    public void Legs_shorter_than_the_span_are_refused() => Says.One(
        "front and rear: met 590 mm of legs over a span of 600 mm; expected legs longer together than the span. Take longer legs.",
        Slinging.Hang(Load(Weight, new(0, 0, -100)), [Leg("front", 300, 0, 0, 290), Leg("rear", -300, 0, 0, 300)]));

    [Fact]
    public void Leg_that_never_comes_tight_is_refused() => Says.One(
        "front and rear: met 700 mm of difference over a span of 600 mm; expected a difference below the span. Shorten the longer one: it never comes tight.",
        Slinging.Hang(Load(Weight, new(0, 0, -100)), [Leg("front", 300, 0, 0, 500), Leg("rear", -300, 0, 0, 1200)]));

    [Fact]
    public void Centre_outside_the_lifting_points_is_refused() => Says.One(
        "centre of mass: met 310, 0 mm, outside the lifting points; expected a centre between the lifting points, seen from above. Move a lifting point so that the centre lies between them.",
        Slinging.Hang(Load(Weight, new(310, 0, -100)), [Leg("front", 300, 0, 0, 600), Leg("rear", -300, 0, 0, 600)]));

    [Fact]
    public void Centre_that_may_lie_outside_the_lifting_points_is_refused() => Says.One(
        "spread of the centre: met 15, 0 mm, which reaches outside the lifting points; expected a centre that lies between them wherever it is. "
        + "Weigh front and rear to find the centre, or move a lifting point outwards.",
        Slinging.Hang(Load(Weight, new(290, 0, -100)) with { CentreSpread = new(15, 0, 0) }, [Leg("front", 300, 0, 0, 600), Leg("rear", -300, 0, 0, 600)]));

    [Fact]
    public void Two_points_at_one_place_are_refused() => Assert.Equal(
        "lifting points of front and rear: met one place; expected two places. Measure both again.",
        Slinging.Hang(Load(Weight, new(0, 0, -100)), [Leg("front", 300, 0, 0, 600), Leg("rear", 300, 0, 0, 600)]).Refusals[0].ToString());

    [Fact]
    public void Top_heavy_engine_on_two_legs_is_refused() => Says.One(
        "rig: met no rest with the centre of mass as given; expected a centre of mass that hangs under its lifting points. Lift from higher points, or add a leg on the heavy side.",
        Slinging.Hang(Load(Weight, new(0, 0, 40)), [Leg("front", 300, 0, 0, 600), Leg("rear", -300, 0, 0, 600)]));

    [Fact]
    public void Engine_that_may_be_top_heavy_is_refused() => Says.One(
        "rig: met no rest with the centre of mass within its spread; expected a centre of mass that hangs under its lifting points. Lift from higher points, or add a leg on the heavy side.",
        Slinging.Hang(Load(Weight, new(0, 0, -20)) with { CentreSpread = new(0, 0, 30) }, [Leg("front", 300, 0, 0, 600), Leg("rear", -300, 0, 0, 600)]));

    private static Outcome<Hanging> TwoAt(double beta) => Slinging.Hang(Load(Weight, new(0, 0, -100)),
        [Leg("front", 300, 0, 0, 300 / Math.Sin(beta * Math.PI / 180)), Leg("rear", -300, 0, 0, 300 / Math.Sin(beta * Math.PI / 180))]);

    private static HangingLoad Load(double newtons, Point3 centre) => new(Mass.FromKilograms(newtons / 9.80665), Mass.Zero, centre, default);

    private static Leg Leg(string name, double x, double y, double z, double length) => new(name, new(x, y, z), Length.FromMillimetres(length));
}
