using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.Tests.Lifting.InventedLift;

namespace Gudgeon.Sums.Tests.Lifting;

/// <summary>Figures of uneven rigs, reckoned apart or by hand, where an even rig would hide a changed sign.</summary>
public class LiftingFigureTests
{
    // The formulas of EngineStand.Mount on invented engines, reckoned apart with python: patterns off the axis, centre 12 and 8 mm off it and believed to 5 and 10.
    [Fact]
    public void Worst_bolt_and_worst_arm_are_those_reckoned_apart()
    {
        var engine = Engine with { Load = new(Kg(60), Mass.Zero, new(310, -12, 8), new(0, 5, 10)), Bolt = new(Mm(65), Mm(45), Mm(20)) };
        var five = EngineStand.Mount(engine with
        {
            Bolts = [new("a", 150, 160), new("b", -90, 140), new("c", -120, -60), new("d", 100, -110), new("e", 20, 190)],
            FreeArm = Mm(15),
            Arm = new(Mm(150), Mm(60), Mm(50), Mm(50), Mm(5)),
        }, Torque.FromNewtonMetres(1500)).Value;
        Told(five, "d", 573.568, 26.11942, 139.33062, 9.680635);
        Assert.Empty(five.Warnings);
        Assert.Equal(60 * 9.80665 * 0.31, five.FaceMoment.NewtonMetres, 1e-9);
        Assert.Equal(60 * 9.80665 * 0.46, five.PostMoment.NewtonMetres, 1e-9);
        Assert.Equal(60 * 9.80665 * Math.Sqrt(17 * 17 + 18 * 18) / 1000, five.TurningTorque.NewtonMetres, 1e-9);
        Assert.Equal(26.11942 / 640, five.YieldPart, 1e-6); // 8.8 yields at 640 MPa
        Told(EngineStand.Mount(engine with
        {
            Load = engine.Load with { Centre = new(200, 12, -8) },
            Bolts = [new("a", 40, 250), new("b", 160, 40), new("c", -30, 30)],
            FreeArm = Mm(4),
            Arm = new(Mm(120), Mm(30), Mm(60), Mm(12), Mm(0)),
        }, Torque.FromNewtonMetres(1500)).Value, "c", 692.52224, 17.320902, 230.30213, 66.74552);

        static void Told(StandLoad stand, string bolt, double pull, double stress, double across, double armStress)
        {
            Assert.Equal((bolt, bolt), (stand.WorstBolt, stand.Arm!.Bolt));
            Assert.Equal(pull, stand.BoltPull.Newtons, 1e-3);
            Assert.Equal(stress, stand.BoltStressMpa, 1e-5);
            Assert.Equal(pull, stand.Arm.Along.Newtons, 1e-3);
            Assert.Equal(across, stand.Arm.Across.Newtons, 1e-4);
            Assert.Equal(armStress, stand.Arm.StressMpa, 1e-5);
        }
    }

    [Fact]
    public void Small_pattern_is_refused_wherever_the_axis_is()
    {
        PlateBolt[] far = [new("a", 1000, 1000), new("b", 1049.9, 1000), new("c", 1025, 1020)];
        Says.One("bolts: met all in one line or at one place; expected a pattern round the crank. Give each bolt left of and over the turning axis.",
            EngineStand.Mount(Engine with { Bolts = far }, Torque.FromNewtonMetres(1500)));
    }

    // Least potential energy of an uneven rig, found apart with a search in python; pulls by moments about the other lifting point.
    [Theory]
    [InlineData(60, 35, 854.8859, 648.2762, 10.3176, 13.6615, -3.10774, 3.11119, 152.0707)]
    [InlineData(-90, -35, 516.1341, 985.0808, 15.9722, 8.2896, 5.18864, 12.49345, 161.1719)]
    public void Uneven_bar_hangs_as_reckoned_apart(double x, double carrier, double front, double rear, double frontAngle, double rearAngle, double tilt, double barTilt, double bending)
    {
        var hanging = BarRig.HangUnderBar(Load(150, new(x, 0, -150)), new(300, 0, 20), new(-280, 0, -10),
            new(Mm(420), Mm(90), Mm(carrier), Kg(12), Mm(400), Mm(380))).Value;
        Assert.Equal(front, hanging.FrontPull.Newtons, 0.05);
        Assert.Equal(rear, hanging.RearPull.Newtons, 0.05);
        Assert.Equal(frontAngle, hanging.FrontToVertical.Degrees, 1e-3);
        Assert.Equal(rearAngle, hanging.RearToVertical.Degrees, 1e-3);
        Assert.Equal(tilt, hanging.FrontUp.Degrees, 1e-3);
        Assert.Equal(barTilt, hanging.BarFrontUp.Degrees, 1e-3);
        Assert.Equal(Math.Abs(tilt), hanging.MostTilt.Degrees, 1e-3);
        Assert.Equal(bending, hanging.Bending.NewtonMetres, 0.02);
    }

    // By hand: a bar 100 mm, points 600 apart: drops of 285 mm lean asin(250/285) = 61.31°, of 325 mm 50.28°. Both are told of.
    [Fact]
    public void Drops_that_lean_are_told_of_one_by_one()
    {
        Outcome<BarHanging> Hang(double drop) => BarRig.HangUnderBar(Load(150, new(0, 0, -100)), new(300, 0, 0), new(-300, 0, 0), Bar with { Span = Mm(100), FrontDrop = Mm(drop), RearDrop = Mm(drop) });
        Says.All(Hang(285),
            "front drop: met 61.4° to the vertical; expected 60° at most. Take longer drops or a bar nearer to the span of the lifting points.",
            "rear drop: met 61.4° to the vertical; expected 60° at most. Take longer drops or a bar nearer to the span of the lifting points.");
        Assert.Equal(
            ["front drop: met 50.3° to the vertical; expected 45° or less. Take longer drops or a bar nearer to the span of the lifting points.",
             "rear drop: met 50.3° to the vertical; expected 45° or less. Take longer drops or a bar nearer to the span of the lifting points."],
            Hang(325).Value.Warnings.Select(w => w.ToString()));
    }

    // By hand: with the shorter drop of 250 mm, a spread of 65 mm adds (65/650)² of the pull between the corners: 1.01 of 75 kg.
    [Fact]
    public void Shorter_drop_counts_between_the_corners()
    {
        var hanging = BarRig.HangUnderBar(new(Kg(150), Mass.Zero, new(0, 0, -150), new(0, 65, 0)), new(300, 0, 0), new(-300, 0, -100), Bar with { FrontDrop = Mm(250), RearDrop = Mm(350) }).Value;
        Assert.Equal(1.01 * 75 * 9.80665, hanging.FrontPull.Newtons, 1e-2);
        Assert.Equal(1.01 * 75 * 9.80665, hanging.RearPull.Newtons, 1e-2);
    }

    [Fact]
    public void Engine_that_may_be_top_heavy_under_a_bar_is_refused()
    {
        var load = Load(150, new(0, 0, 300));
        Assert.True(BarRig.HangUnderBar(load, new(300, 0, 0), new(-300, 0, 0), Bar).Ok);
        Says.One("bar: met no rest with both drops taut; expected a centre of mass that hangs between and under its lifting points. Shift the carrier towards the heavy end, or lift from higher points.",
            BarRig.HangUnderBar(load with { CentreSpread = new(20, 0, 400) }, new(300, 0, 0), new(-300, 0, 0), Bar));
    }

    [Fact]
    public void Lifting_points_just_far_enough_apart_are_taken() =>
        Assert.True(BarRig.HangUnderBar(Load(150, new(0, 0, -100)), new(25, 0, 0), new(-25, 0, 0), Bar with { Span = Mm(50) }).Ok);

    // Moments about the pivot, the arm of the ram from a line through foot and pin, reckoned apart with python: foot 160 behind the pivot and 600 under it, ram 760, boom 1050, 200 kg.
    [Fact]
    public void Ram_that_stands_aslant_pushes_as_reckoned_apart()
    {
        var crane = Crane with { PivotForward = Mm(100), RamFootForward = Mm(-60) };
        Assert.Equal(6193.267, CraneBoom.RamForce(crane, 1, Mm(760), Kg(200)).Value.Newtons, 1e-2);
        Assert.Equal(-11.23811, CraneBoom.PoseAt(crane, 1, Mm(760)).Value.BoomAngle.Degrees, 1e-4);
        Assert.Equal(1129.867, CraneBoom.PoseAt(crane, 1, Mm(760)).Value.Reach.Millimetres, 1e-2);
        // By hand: foot to pivot √(160² + 600²) = 620.967, so the ram may be 1020.9 long and not 1021.
        Assert.True(CraneBoom.PoseAt(crane with { RamLongest = Mm(1020.9) }, 1, Mm(760)).Ok);
        Assert.False(CraneBoom.PoseAt(crane with { RamLongest = Mm(1021) }, 1, Mm(760)).Ok);
    }

    // By hand: 75 kg 1.05 m inside the front line and 100 kg 0.8 m inside it both hold: 75·g·1.05 + 100·g·0.8 = 1556.81 N·m.
    [Fact]
    public void Load_inside_the_wheels_holds_as_well()
    {
        var line = CraneTipping.Stands(OnWheels with { Tip = new(800, 0, 1500), Load = Kg(100) }).Value.Lines.Single(l => l.Line == "front right to front left");
        Assert.Equal(1556.81, line.Holding.NewtonMetres, 0.01);
        Assert.Equal(0, line.Tipping.NewtonMetres);
        Assert.Equal(double.PositiveInfinity, line.Factor);
        Assert.Null(line.SpareLoad);
    }

    [Fact]
    public void Three_wheels_are_enough() => Assert.Equal(3,
        CraneTipping.Stands(OnWheels with { Wheels = [new("front left", 1600, 450), new("front right", 1600, -450), new("rear", 0, 0)], Tip = new(800, 0, 1500) }).Value.Lines.Count);

    // By hand: one leg of 700 mm over a centre 200 mm under its point: the hook is 900 mm from the centre, 50 mm of spread add (50/900)² of the pull;
    // with the centre 30 mm aside and 40 mm higher the engine leans by atan(30/160).
    [Fact]
    public void Spread_of_the_centre_counts_for_pull_and_tilt()
    {
        var hanging = Slinging.Hang(new(Kg(150), Mass.Zero, new(0, 0, -200), new(30, 0, 40)), [new("only", default, Mm(700))]).Value;
        Assert.Equal(150 * 9.80665 * (1 + 2500.0 / 810_000), hanging.Legs[0].Most.Newtons, 1e-6);
        Assert.Equal(Math.Atan(30.0 / 160) * 180 / Math.PI, hanging.MostTilt.Degrees, 1e-9);
        Assert.Equal(0, hanging.Tilt.Degrees, 1e-9);
    }

    // By hand, on the places where a general case would divide by nothing: centre in the only point; in the middle of two, level and aslant; two points in one place; three in one line; legs too short.
    [Fact]
    public void Rest_is_found_where_places_fall_together()
    {
        Near(new(0, 0, 700), Settling.Find([default], [700], default)!.Hook);
        Near(new(0, 0, 400), Settling.Find([new(300, 0, 0), new(-300, 0, 0)], [500, 500], default)!.Hook);
        var along = Math.Sqrt(300 * 300 + 30 * 30);
        Near(Math.Sqrt(250_000 - along * along) / along * new Point3(-30, 0, 300), Settling.Find([new(300, 0, 30), new(-300, 0, -30)], [500, 500], default)!.Hook);
        Near(new(0, 0, 500), Settling.Find([default, default], [500, 500], new(0, 0, -100))!.Hook);
        Near(new(0, 0, 500), Settling.Find([default, default, new(1, 0, 0)], [500, 500, 600], new(0, 0, -100))!.Hook);
        Near(new(0, 0, 400), Settling.Find([new(300, 0, 0), default, new(-300, 0, 0)], [500, 400, 500], new(0, 0, -100))!.Hook);
        Assert.Null(Settling.Find([new(300, 0, 0), new(-300, 0, 0)], [290, 300], new(0, 0, -100)));

        static void Near(Point3 expected, Point3 hook) => Assert.True((expected - hook).Norm < 1e-6, $"{hook}");
    }

    // Statics: two legs on one side of the upright would have to push; two that span no plane with it hold nothing straight.
    [Fact]
    public void Legs_that_would_push_or_pull_aside_hold_nothing()
    {
        Assert.Null(Settling.Pulls([new(1, 0, -1), new(0.5, 0, -1)], default, new(0, 0, 1), [0, 1]));
        Assert.Null(Settling.Pulls([new(1, 0, -1), new(-1, 0.5, -1)], default, new(0, 0, 1), [0, 1]));
        Assert.Null(Settling.Pulls([new(0, 0, -1), new(0, 0, -2)], default, new(0, 0, 1), [0, 1]));
        Assert.Null(Settling.Pulls([new(1, 0, -1), new(0.5, 0, -1), new(0, 1, -1)], default, new(0, 0, 1), [0, 1, 2]));
        Assert.Null(Settling.Pulls([new(1, 0, 0)], default, new(0, 0, 1), [0]));
    }

    [Fact]
    public void Hook_without_a_place_and_hooks_far_from_the_datum_are_judged_by_their_distance()
    {
        Assert.Equal("hooks", Assert.Single(CentreOfMass.FromTwoScales(Kg(90), new(2e6, 0, 0), Kg(60), default, Mass.Zero, Mm(0), Mm(0)).Refusals).Where);
        Says.One("hooks: met 40 mm apart; expected 50 mm apart or more. Hang the engine from two places well apart.",
            CentreOfMass.FromTwoScales(Kg(90), new(1040, 0, 0), Kg(60), new(1000, 0, 0), Mass.Zero, Mm(0), Mm(0)));
    }

    [Fact]
    public void Choked_chain_off_the_table_is_refused() => Says.One(
        "diameter of the chain: met 9 mm; expected 6, 7, 8, 10, 13 mm. Measure the chain again, or take one that the table lists.", GearTables.ChokedChain("8", Mm(9), Deg(0), Deg(120)));
}
