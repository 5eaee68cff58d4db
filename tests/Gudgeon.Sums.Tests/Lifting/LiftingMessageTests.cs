using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.Tests.Lifting.InventedLift;

namespace Gudgeon.Sums.Tests.Lifting;

/// <summary>What the sums of lifting refuse, word for word and all at once, and what they take at the very edge.</summary>
public class LiftingMessageTests
{
    [Fact]
    public void Tube_says_all_that_is_wrong() => Says.All(BarBending.SquareTube(N(-1), Mm(0), Mm(0), Mm(0)),
        "pull at the end: met -1 N; expected 0 N or more. Look at pull at the end again.",
        "arm: met 0 mm; expected more than 0 mm. Look at arm again.",
        "side of the tube: met 0 mm; expected more than 0 mm. Look at side of the tube again.",
        "wall of the tube: met 0 mm; expected more than 0 mm. Look at wall of the tube again.",
        "wall of the tube: met 0 mm; expected less than half the side, 0 mm. Measure the wall at an open end.");

    [Fact]
    public void Sling_says_all_that_is_wrong()
    {
        Says.All(GearTables.WireRopeSling(Mm(9), 0, Deg(-1)),
            "angle to the vertical: met -1°; expected 60° at most. Take longer legs or a spreader bar.",
            "diameter of the rope: met 9 mm; expected 8, 10, 12 mm. Measure the rope again, or take one that the table lists.",
            "legs: met 0; expected one to four. Give the number of legs that carry.");
        Says.One("diameter of the rope: met 9 mm; expected 8, 10, 12 mm. Measure the rope again, or take one that the table lists.", GearTables.ChokedRope(Mm(9), Deg(0), Deg(120)));
        Says.One("diameter of the chain: met -6 mm; expected 6, 7, 8, 10, 13 mm. Measure the chain again, or take one that the table lists.", GearTables.ChainSling("8", Mm(-6), 1, Deg(0)));
        Says.One("grade of the chain: met 10; expected 8 or 80, as the tag says. Leave this chain out: unfit for lifting until its grade can be read.", GearTables.ChainSling("10", Mm(8), 1, Deg(0)));
    }

    // A chain or rope counts as listed when it is within a twentieth of the listed diameter: common practice, no source.
    [Theory]
    [InlineData(9.5, true)]
    [InlineData(10.5, true)]
    [InlineData(9.49, false)]
    [InlineData(10.51, false)]
    [InlineData(12.3, false)]
    [InlineData(13.4, true)]
    [InlineData(13.6, false)]
    public void Worn_link_is_taken_within_a_twentieth(double link, bool good) => Assert.Equal(good, GearTables.ChainSling(" 80 ", Mm(link), 1, Deg(0)).Ok);

    [Theory]
    [InlineData(1, 2000)]
    [InlineData(1.01, 1400)]
    [InlineData(45, 1400)]
    [InlineData(45.01, 1000)]
    public void Basket_is_upright_as_far_as_an_eye_can_tell(double angle, double kg) => Assert.Equal(kg, GearTables.TextileSling(Kg(1000), TextileLay.Basket, Deg(angle)).Value.Kilograms, 1e-9);

    [Fact]
    public void Textile_sling_without_a_tag_or_too_flat_is_refused() => Says.All(GearTables.TextileSling(Mass.Zero, TextileLay.Straight, Deg(60.1)),
        "rating on the tag: met 0 kg; expected more than 0 kg. Look at rating on the tag again.",
        "angle to the vertical: met 60.1°; expected 60° at most. Take longer legs or a spreader bar.");

    [Theory]
    [InlineData(180, 1)]
    [InlineData(89.9, 0.74)]
    [InlineData(59.9, 0.62)]
    [InlineData(29.9, 0.49)]
    public void Choke_is_rated_a_step_below_each_edge(double angle, double part) => Assert.Equal(part, GearTables.ChokeFactor(Deg(angle)).Value);

    [Theory]
    [InlineData(-1)]
    [InlineData(181)]
    public void Choke_that_cannot_be_is_refused(double angle) => Says.One($"angle of the choke: met {angle}°; expected 0 to 180°. Look at angle of the choke again.", GearTables.ChokeFactor(Deg(angle)));

    // The tables of GearTests a step beyond each edge: axial to 1°, then at the side; BS 4278 × 0.625, 0.4, 0.25 of 400 kg.
    [Theory]
    [InlineData(EyeBoltPattern.Din580, 1, 340)]
    [InlineData(EyeBoltPattern.Din580, 1.01, 240)]
    [InlineData(EyeBoltPattern.Bs4278, 1, 400)]
    [InlineData(EyeBoltPattern.Bs4278, 1.01, 250)]
    [InlineData(EyeBoltPattern.Bs4278, 15.01, 160)]
    [InlineData(EyeBoltPattern.Bs4278, 30.01, 100)]
    [InlineData(EyeBoltPattern.Machinery, 1, 1000)]
    [InlineData(EyeBoltPattern.Machinery, 1.01, 250)]
    public void Eye_bolt_loses_a_step_beyond_each_edge(EyeBoltPattern pattern, double angle, double kg) => Assert.Equal(kg, GearTables.EyeBolt(pattern, "M12", Kg(1000), Deg(angle)).Value.Kilograms, 1e-9);

    [Fact]
    public void Eye_bolt_says_all_that_is_wrong()
    {
        Says.All(GearTables.EyeBolt(EyeBoltPattern.Din580, "M9", Mass.Zero, Deg(-1)),
            "size of the eye bolt: met M9; expected M8, M10, M12, M16, M20, M24, M30. Take an eye bolt that the table lists.",
            "pull off the shank: met -1°; expected 0 to 45°. Look at pull off the shank again.");
        Says.One("rating on the eye bolt: met 0 kg; expected more than 0 kg. Look at rating on the eye bolt again.", GearTables.EyeBolt(EyeBoltPattern.Machinery, "any", Mass.Zero, Deg(0)));
    }

    [Theory]
    [InlineData(1, 1000)]
    [InlineData(1.01, 700)]
    [InlineData(45.01, 500)]
    public void Shackle_loses_a_step_beyond_each_edge(double angle, double kg) => Assert.Equal(kg, GearTables.Shackle(Kg(1000), Deg(angle)).Value.Kilograms, 1e-9);

    [Fact]
    public void Shackle_pulled_across_is_refused() => Says.One("pull off the line: met 91°; expected 0 to 90°. Look at pull off the line again.", GearTables.Shackle(Kg(1000), Deg(91)));

    [Theory]
    [InlineData(200.1, 0.9)]
    [InlineData(300.1, 0.75)]
    public void Warm_chain_loses_a_step_beyond_each_edge(double celsius, double part) => Assert.Equal(part, GearTables.ChainWarmthFactor(Temperature.FromCelsius(celsius)).Value);

    [Fact]
    public void Cold_chain_is_refused() => Says.One(
        "temperature of the chain: met -41 °C; expected -40 to 400 °C. Look at temperature of the chain again.", GearTables.ChainWarmthFactor(Temperature.FromCelsius(-41)));

    [Fact]
    public void Piece_under_less_than_no_load_is_refused() => Says.One(
        "load on hook: met -1 N; expected 0 N or more. Look at load on hook again.", Gear.Use([new("hook", N(-1), Outcome.Of(Kg(1000)))]));

    [Fact]
    public void Crane_says_all_that_is_wrong() => Says.All(
        CraneBoom.RamForce(new(Length.Zero, Mm(0), Length.Zero, Mm(-600), Mm(0), Mm(0), Mm(0), Mm(-1), [new(Mm(0), Kg(0)), new(Mm(0), Kg(1))]), -1, Mm(1), Kg(-1)),
        "height of the pivot: met 0 mm; expected more than 0 mm. Look at height of the pivot again.",
        "pin of the ram: met 0 mm; expected more than 0 mm. Look at pin of the ram again.",
        "closed ram: met 0 mm; expected more than 0 mm. Look at closed ram again.",
        "drop of the hook: met -1 mm; expected 0 mm or more. Look at drop of the hook again.",
        "open ram: met 0 mm; expected more than closed, 0 mm. Measure the ram between its pins, closed and open.",
        "hole of the boom: met 0; expected 1 to 2. Count the holes from the post.",
        "boom at hole 1: met 0 mm; expected more than 0 mm. Look at boom at hole 1 again.",
        "plate at hole 1: met 0 kg; expected more than 0 kg. Look at plate at hole 1 again.",
        "boom at hole 2: met 0 mm; expected more than 0 mm. Look at boom at hole 2 again.",
        "hole 2: met 0 mm for 1 kg; expected a longer boom for less mass than the hole before. Read the plate again.",
        "ram: met 0 to 0 mm; expected between 600 and 600 mm, or it cannot close its triangle. Measure foot, pin and pivot again.",
        "load: met -1 kg; expected 0 kg or more. Look at load again.");

    // By hand: pivot 600 over the foot of the ram, pin 400 out: the ram must be longer than 200 and shorter than 1000.
    [Theory]
    [InlineData(200, 950, false)]
    [InlineData(200.1, 950, true)]
    [InlineData(550, 1000, false)]
    [InlineData(550, 999.9, true)]
    public void Ram_must_close_its_triangle(double closed, double open, bool good) => Assert.Equal(good, CraneBoom.Stroke(Crane with { RamShortest = Mm(closed), RamLongest = Mm(open) }, 0, 2).Ok);

    [Fact]
    public void Hole_as_far_as_the_one_before_is_refused_and_one_as_strong_is_taken()
    {
        Says.One("hole 2: met 900 mm for 900 kg; expected a longer boom for less mass than the hole before. Read the plate again.",
            CraneBoom.OnPlate(Crane with { Holes = [new(Mm(900), Kg(1000)), new(Mm(900), Kg(900))] }, 0, Kg(1)));
        Assert.Equal(0.5, CraneBoom.OnPlate(Crane with { Holes = [new(Mm(900), Kg(1000)), new(Mm(901), Kg(1000))] }, 1, Kg(500)).Value);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(201)]
    public void Stroke_of_one_picture_or_too_many_is_refused(int poses) => Says.One(
        $"poses: met {poses}; expected 2 to 200. Give how many pictures of the stroke are wanted.", CraneBoom.Stroke(Crane, 0, poses));

    [Theory]
    [InlineData(2)]
    [InlineData(200)]
    public void Stroke_of_two_to_two_hundred_pictures_is_taken(int poses) => Assert.Equal(poses, CraneBoom.Stroke(Crane, 0, poses).Value.Count);

    [Fact]
    public void Ram_at_either_end_of_its_stroke_is_taken_and_a_step_below_is_refused()
    {
        Assert.True(CraneBoom.PoseAt(Crane, 0, Mm(550)).Ok);
        Assert.True(CraneBoom.PoseAt(Crane, 0, Mm(950)).Ok);
        Says.One("ram: met 549 mm; expected 550 to 950 mm. Look at ram again.", CraneBoom.PoseAt(Crane, 0, Mm(549)));
    }

    [Fact]
    public void Load_is_sent_to_the_farthest_hole_that_carries_it()
    {
        Says.One("boom: met 857 kg at hole 3; expected 750 kg at most by the plate. Draw the boom in to hole 2.", CraneBoom.OnPlate(Crane, 2, Kg(857)));
        Says.One("boom: met 1000 kg at hole 3; expected 750 kg at most by the plate. Draw the boom in to hole 1.", CraneBoom.OnPlate(Crane, 2, Kg(1000)));
        Says.One("load: met 0 kg; expected more than 0 kg. Look at load again.", CraneBoom.OnPlate(Crane, 2, Mass.Zero));
        Says.One("hole of the boom: met 4; expected 1 to 3. Count the holes from the post.", CraneBoom.OnPlate(Crane, 3, Kg(1)));
    }

    // By hand, with pivot and foot moved together by 100 mm forward: everything the ram sees is as before, the hook 100 mm farther out.
    [Fact]
    public void Crane_moved_forward_takes_its_hook_along()
    {
        var (here, there) = (CraneBoom.PoseAt(Crane, 1, Mm(800)).Value, CraneBoom.PoseAt(Crane with { PivotForward = Mm(100), RamFootForward = Mm(100) }, 1, Mm(800)).Value);
        Assert.Equal(here.Reach.Millimetres + 100, there.Reach.Millimetres, 1e-9);
        Assert.Equal(CraneBoom.RamForce(Crane, 1, Mm(800), Kg(200)).Value.Newtons,
            CraneBoom.RamForce(Crane with { PivotForward = Mm(100), RamFootForward = Mm(100) }, 1, Mm(800), Kg(200)).Value.Newtons, 1e-6);
    }

    [Fact]
    public void Bar_says_all_that_is_wrong() => Says.All(
        BarRig.HangUnderBar(new(Kg(0), Kg(-1), new(0, 0, double.NaN), new(0, -1, 0)), new(0, 0, double.NaN), new(-50, 0, 0), Bar with { RearDrop = Mm(0), HookForward = Mm(-300) }),
        "mass: met 0 kg; expected more than 0 kg. Look at mass again.",
        "spread of the mass: met -1 kg; expected 0 kg or more. Look at spread of the mass again.",
        "centre of mass: met no number; expected x, y and z in mm. Give the centre from the same datum as the lifting points.",
        "spread of the centre: met 0, -1, 0 mm; expected 0 mm or more each way. Give how far off the centre may be.",
        "rear drop: met 0 mm; expected more than 0 mm. Look at rear drop again.",
        "carrier: met -300 mm forward; expected within the bar, 300 mm either way. Measure from the middle of the bar.",
        "lifting points: met 50 mm from rear to front; expected 50 mm or more. Give the front point and the rear point, x to the front.");

    [Fact]
    public void Centre_on_a_lifting_point_is_refused()
    {
        foreach (var x in new[] { -300, 300 })
        {
            Says.One($"centre of mass: met {x} mm, outside -300 to 300 mm; expected a centre between the lifting points. Move a lifting point so that the centre lies between them.",
                BarRig.HangUnderBar(Load(150, new(x, 0, -100)), new(300, 0, 0), new(-300, 0, 0), Bar));
        }
    }

    [Fact]
    public void Drops_that_just_span_the_points_are_refused() => Says.One(
        "drops: met 300 mm of drops on a bar of 300 mm; expected more together than the 600 mm between the lifting points. Take longer drops or a longer bar.",
        BarRig.HangUnderBar(Load(150, new(0, 0, -100)), new(300, 0, 0), new(-300, 0, 0), Bar with { Span = Mm(300), FrontDrop = Mm(100), RearDrop = Mm(200) }));

    // Statics by hand, drops parallel: the whole hangs as one piece turned by atan(x/(400 + 150)), x from −20 to 60; the lever shares 150 kg; between the corners 1 + (40/750)² more.
    [Fact]
    public void Pulls_count_with_the_spread_of_the_centre()
    {
        var hanging = BarRig.HangUnderBar(new(Kg(150), Mass.Zero, new(20, 0, -150), new(40, 0, 0)), new(300, 0, 0), new(-300, 0, 0), Bar).Value;
        Assert.Equal(844.877, hanging.FrontPull.Newtons, 0.1);
        Assert.Equal(773.353, hanging.RearPull.Newtons, 0.1);
        Assert.Equal(6.2258, hanging.MostTilt.Degrees, 1e-3);
        Assert.Equal(0, hanging.FrontToVertical.Degrees, 1e-3);
        Assert.Equal(0, hanging.RearToVertical.Degrees, 1e-3);
    }

    // By hand: 150 and 15 kg and a bar of 10: 175 kg on the hook, 82.5 kg on each drop, 300 mm from the carrier; the bar in balance leans nowhere.
    [Fact]
    public void Level_bar_carries_as_by_hand()
    {
        var hanging = BarRig.HangUnderBar(new(Kg(150), Kg(15), new(0, 0, -150), default), new(300, 0, 0), new(-300, 0, 0), Bar with { Mass = Kg(10) }).Value;
        Assert.Equal(175 * 9.80665, hanging.OnHook.Newtons, 1e-6);
        Assert.Equal(82.5 * 9.80665, hanging.FrontPull.Newtons, 1e-3);
        Assert.Equal(82.5 * 9.80665, hanging.RearPull.Newtons, 1e-3);
        Assert.Equal(82.5 * 9.80665 * 0.3, hanging.Bending.NewtonMetres, 1e-3);
        Assert.Equal(0, hanging.BarFrontUp.Degrees, 1e-4);
        Assert.Empty(hanging.Warnings);
    }

    [Fact]
    public void Top_heavy_engine_under_a_bar_is_refused() => Says.One(
        "bar: met no rest with both drops taut; expected a centre of mass that hangs between and under its lifting points. Shift the carrier towards the heavy end, or lift from higher points.",
        BarRig.HangUnderBar(Load(150, new(20, 0, 700)), new(300, 0, 0), new(-300, 0, 0), Bar));

    [Fact]
    public void Carrier_without_travel_is_refused() => Says.One(
        "travel of the carrier: met 0 mm; expected more than 0, less than half the bar, 300 mm. Measure how far the carrier goes from the middle.",
        BarRig.LevelCarrier(Load(180, new(0, 0, -100)), new(300, 0, 0), new(-300, 0, 0), Bar, Mm(0)));

    [Fact]
    public void Stand_says_all_that_is_wrong() => Says.All(
        EngineStand.Mount(Engine with
        {
            FaceToPost = Mm(-1),
            FreeArm = Mm(-1),
            Load = Engine.Load with { Centre = new(10, 0, 0), CentreSpread = new(10, 0, 0) },
            Arm = new(Mm(0), Mm(-1), Mm(0), Mm(0), Mm(-1)),
            Bolt = new(Mm(0), Mm(-1), Mm(-1)),
        }, Torque.FromNewtonMetres(1500)),
        "face to post: met -1 mm; expected 0 mm or more. Look at face to post again.",
        "free arm of the bolts: met -1 mm; expected 0 mm or more. Look at free arm of the bolts again.",
        "centre of mass: met 10 mm from the face; expected a place out from the face. Measure from the bell-housing face forward.",
        "reach of the arm: met 0 mm; expected more than 0 mm. Look at reach of the arm again.",
        "face to arm: met -1 mm; expected 0 mm or more. Look at face to arm again.",
        "width of the arm: met 0 mm; expected more than 0 mm. Look at width of the arm again.",
        "thickness of the arm: met 0 mm; expected more than 0 mm. Look at thickness of the arm again.",
        "wall of the arm: met -1 mm; expected 0 mm or more. Look at wall of the arm again.",
        "bolt under its head: met 0 mm; expected more than 0 mm. Look at bolt under its head again.",
        "between head and engine: met -1 mm; expected 0 mm or more. Look at between head and engine again.",
        "depth of the hole: met -1 mm; expected 0 mm or more. Look at depth of the hole again.",
        "engagement: met 20 mm told; expected 1 mm at most: 0 mm of bolt less -1 mm before the engine. Count the turns that hold, times the pitch, or take longer bolts.",
        "bolt under its head: met 1 mm into a hole of -1 mm; expected a bolt that clamps before it meets the end of its hole. Take shorter bolts or more washers: a bolt that bottoms holds nothing.");

    [Fact]
    public void Arm_says_all_that_is_wrong_with_its_forces() => Says.All(StandArms.ArmStress(N(-1), N(-2), new(Mm(100), Mm(0), Mm(40), Mm(30), Mm(15))),
        "wall of the arm: met 15 mm; expected less than half of its thickness, 15 mm; 0 for a solid bar. Measure the wall at an open end.",
        "force along the bolt: met -1 N; expected 0 N or more. Look at force along the bolt again.",
        "force across the bolt: met -2 N; expected 0 N or more. Look at force across the bolt again.");

    [Fact]
    public void Stand_just_up_to_its_plate_is_taken()
    {
        var stand = EngineStand.Mount(Engine, Torque.FromNewtonMetres(1500)).Value;
        Assert.True(EngineStand.Mount(Engine, stand.PostMoment).Ok);
    }

    // Common practice, no source: 1.3 diameters of 12 mm are 15.6 mm.
    [Theory]
    [InlineData(15.6, 0)]
    [InlineData(15.59, 1)]
    public void Engagement_just_long_enough_is_not_warned_of(double mm, int warnings) =>
        Assert.Equal(warnings, EngineStand.Mount(Engine with { Engagement = Mm(mm) }, Torque.FromNewtonMetres(1500)).Value.Warnings.Count(w => w.Where == "engagement"));

    [Fact]
    public void Pattern_of_bolts_too_small_to_hold_is_refused()
    {
        PlateBolt[] Pattern(double wide) => [new("a", 0, 0), new("b", wide, 0), new("c", wide / 2, 20)];
        var light = Engine with { Load = Engine.Load with { Mass = Kg(1), Centre = new(20, 0, 0) } };
        Assert.True(EngineStand.Mount(light with { Bolts = Pattern(50) }, Torque.FromNewtonMetres(1500)).Ok);
        Says.One("bolts: met all in one line or at one place; expected a pattern round the crank. Give each bolt left of and over the turning axis.",
            EngineStand.Mount(light with { Bolts = Pattern(49.9) }, Torque.FromNewtonMetres(1500)));
    }

    [Fact]
    public void Headroom_says_all_that_is_wrong() => Says.All(
        Headroom.Spare(new(Mm(0), Mm(-1), Mm(1), Mm(0), Mm(-1), Mm(-1), 100_001, Mm(-1), Mm(-1), [new("sump", 100_001, -100_001, true, 0)])),
        "highest hook: met 0 mm; expected more than 0 mm. Look at highest hook again.",
        "boom over the hook: met -1 mm; expected 0 mm or more. Look at boom over the hook again.",
        "space under the car: met -1 mm; expected 0 mm or more. Look at space under the car again.",
        "legs of the crane: met -1 mm; expected 0 mm or more. Look at legs of the crane again.",
        "drop by tilt: met -1 mm; expected 0 mm or more. Look at drop by tilt again.",
        "clearance: met -1 mm; expected 0 mm or more. Look at clearance again.",
        "hook over the engine's datum: met 100001 mm; expected -100000 to 100000 mm. Look at hook over the engine's datum again.",
        "top of sump: met 100001 mm; expected -100000 to 100000 mm. Look at top of sump again.",
        "bottom of sump: met -100001 mm; expected -100000 to 100000 mm. Look at bottom of sump again.");

    // By hand: hook 900 over a plate that is as high as it is low, 100: over it 900 − 100 − 0 = 800 are free; 2000 − 800 − 1200 = 0 at the sill, which passes.
    [Fact]
    public void Lift_with_nothing_to_spare_passes()
    {
        var answer = Headroom.Spare(new(Mm(2000), Mm(0), Mm(5000), Mm(1200), Mm(500), Mm(100), 900, Mm(0), Mm(0), [new("plate", 100, 100, true, 0)])).Value;
        Assert.Equal(["over the sill 0", "crane legs under the car 400", "hook over the engine 800", "under the roof 3000"], answer.Points.Select(p => $"{p.Name} {p.Spare.Millimetres}"));
        Assert.Equal("over the sill", answer.Tightest.Name);
        Assert.True(answer.Passes);
        Assert.All(answer.Points, point => Assert.Empty(point.Gains));
    }

    // Statics by hand, slope 5°, swing 10°, 100 kg on the hook: own 75·g·(1.05·cos 5° − 0.5·sin 5°) = 737.283 N·m; load 100·g/cos 10°·(0.15·cos 15° + 1.5·sin 15°) = 530.875 N·m.
    [Fact]
    public void Crane_on_a_slope_with_a_swinging_load_stands_as_by_hand()
    {
        var line = CraneTipping.Stands(OnWheels with { Load = Kg(100), Swing = Deg(10), Slope = Deg(5) }).Value.Worst;
        Assert.Equal("front right to front left", line.Line);
        Assert.Equal(737.283, line.Holding.NewtonMetres, 1e-3);
        Assert.Equal(530.875, line.Tipping.NewtonMetres, 1e-3);
        Assert.Equal(737.283 / 530.875, line.Factor, 1e-5);
        Assert.Equal(38.8809, line.SpareLoad!.Value.Kilograms, 1e-3);
    }

    // By hand: 525 kg tips it, so 350 kg leaves a factor of 1.5.
    [Theory]
    [InlineData(349.9999, 0)]
    [InlineData(350.0001, 1)]
    public void Factor_of_one_and_a_half_is_where_the_warning_starts(double kg, int warnings) => Assert.Equal(warnings, CraneTipping.Stands(OnWheels with { Load = Kg(kg) }).Value.Warnings.Count);

    [Fact]
    public void Empty_crane_holds_without_end() => Assert.Equal(double.PositiveInfinity, CraneTipping.Stands(OnWheels with { Tip = new(800, 0, 1500) }).Value.Worst.Factor);

    [Fact]
    public void Crane_is_taken_at_the_edge_of_swing_and_slope() =>
        Assert.True(CraneTipping.Stands(OnWheels with { CraneCentre = new(800, 0, 0), Tip = new(800, 0, 0.1), Load = Kg(1), Swing = Deg(30), Slope = Deg(10) }).Ok);

    [Fact]
    public void Wheel_without_a_place_is_refused() => Assert.Contains(
        "wheels: met 4, one without a number; expected three or more round the crane. Give each wheel forward and left of the foot of the post.",
        CraneTipping.Stands(OnWheels with { Wheels = [new("a", 1600, 450), new("b", double.PositiveInfinity, -450), new("c", 0, -350), new("d", 0, 350)] }).Refusals.Select(r => r.ToString()));

    [Fact]
    public void Two_scales_say_all_that_is_wrong() => Says.All(CentreOfMass.FromTwoScales(Kg(0), new(double.NaN, 0, 0), Kg(-1), default, Kg(-1), Mm(0), Mm(-1)),
        "front scale: met 0 kg; expected more than 0 kg. Look at front scale again.",
        "rear scale: met -1 kg; expected more than 0 kg. Look at rear scale again.",
        "tolerance of the scales: met -1 kg; expected 0 kg or more. Look at tolerance of the scales again.",
        "spread of the height: met -1 mm; expected 0 mm or more. Look at spread of the height again.",
        "hooks: met NaN mm apart; expected 50 mm apart or more. Hang the engine from two places well apart.");

    [Fact]
    public void Hooks_just_far_enough_apart_are_taken() => Assert.True(CentreOfMass.FromTwoScales(Kg(90), new(50, 0, 0), Kg(60), default, Mass.Zero, Mm(0), Mm(0)).Ok);

    [Fact]
    public void Part_says_all_that_is_wrong_with_it() => Says.All(CentreOfMass.AsItIsNow(Load(100, default), [new("head", Kg(-1), Kg(-1), new(0, double.NaN, 0), Mm(-1))], [new("pump", Kg(0), Kg(0), default, Mm(0))]),
        "mass of head: met -1 kg; expected more than 0 kg. Look at mass of head again.",
        "spread of head: met -1 kg; expected 0 kg or more. Look at spread of head again.",
        "spread of the centre of head: met -1 mm; expected 0 mm or more. Look at spread of the centre of head again.",
        "centre of head: met no number; expected x, y and z in mm. Measure it from the same datum as the others.",
        "mass of pump: met 0 kg; expected more than 0 kg. Look at mass of pump again.");

    // A mass as large as its own spread may be nothing at all.
    [Fact]
    public void What_is_left_at_its_spread_is_refused() =>
        Assert.False(CentreOfMass.AsItIsNow(new(Kg(100), Kg(10), default, default), [new("head", Kg(90), Mass.Zero, default, Length.Zero)], []).Ok);

    // By hand from JCGM 100, 5.1.2: 100 kg less 20 kg and 10 kg more leave 90 kg; the spreads of the parts are rectangular, 2/√3 of their half-width, that of the whole is already twofold.
    [Fact]
    public void Spread_of_what_is_left_is_as_by_hand()
    {
        var left = CentreOfMass.AsItIsNow(new(Kg(100), Kg(10), new(100, 0, 50), new(20, 10, 30)),
            [new("head", Kg(20), Kg(2), new(300, 40, -10), Mm(15))], [new("pump", Kg(10), Kg(1), new(-200, 0, 0), Mm(5))]).Value;
        Assert.Equal(90, left.Mass.Kilograms, 1e-12);
        Assert.Equal(10.327956, left.MassSpread.Kilograms, 1e-5);
        Assert.Equal(22.222222, left.Centre.X, 1e-5);
        Assert.Equal(-8.888889, left.Centre.Y, 1e-5);
        Assert.Equal(57.777778, left.Centre.Z, 1e-5);
        Assert.Equal(25.350963, left.CentreSpread.X, 1e-4);
        Assert.Equal(11.884668, left.CentreSpread.Y, 1e-4);
        Assert.Equal(33.625263, left.CentreSpread.Z, 1e-4);
    }

    // By hand: 90 and 60 kg, 400 mm apart along and 50 across, scales good to 1 kg: u 1/√3; along 2·u·√(90² + 60²)/150² for each millimetre; the sum of both scales is good to 2·√2·u.
    [Fact]
    public void Two_scales_carry_their_tolerance_both_ways()
    {
        var whole = CentreOfMass.FromTwoScales(Kg(90), new(400, 30, 0), Kg(60), new(0, -20, 0), Kg(1), Mm(250), Mm(40)).Value;
        Assert.Equal(2.22045, whole.CentreSpread.X, 1e-4);
        Assert.Equal(0.277556, whole.CentreSpread.Y, 1e-5);
        Assert.Equal(40, whole.CentreSpread.Z);
        Assert.Equal(1.632993, whole.MassSpread.Kilograms, 1e-5);
        Assert.Equal(240, whole.Centre.X, 1e-9);
        Assert.Equal(10, whole.Centre.Y, 1e-9);
        Assert.Equal(250, whole.Centre.Z);
    }

    [Theory]
    [InlineData(4, true)]
    [InlineData(5, false)]
    public void Four_legs_are_the_most(int count, bool good)
    {
        var legs = Enumerable.Range(0, count).Select(k => 2 * Math.PI * k / count).Select((a, k) => new Leg($"{k}", new(300 * Math.Cos(a), 300 * Math.Sin(a), 0), Mm(600))).ToList();
        var hanging = Slinging.Hang(Load(150, new(0, 0, -200)), legs);
        Assert.Equal(good, hanging.Ok);
        if (!good)
            Says.One("legs: met 5; expected one to four. Give each leg from the hook to the engine.", hanging);
    }

    [Fact]
    public void Legs_just_as_long_as_the_span_and_points_a_millimetre_apart_are_refused()
    {
        Says.One("front and rear: met 600 mm of legs over a span of 600 mm; expected legs longer together than the span. Take longer legs.", Two(300, 300, 300));
        Says.One("front and rear: met 600 mm of difference over a span of 600 mm; expected a difference below the span. Shorten the longer one: it never comes tight.", Two(300, 400, 1000));
        Says.One("lifting points of front and rear: met one place; expected two places. Measure both again.", Two(0.5, 600, 600));
        Assert.True(Two(0.6, 600, 600).Ok);

        static Outcome<Hanging> Two(double half, double front, double rear) =>
            Slinging.Hang(Load(150, new(0, 0, -100)), [new("front", new(half, 0, 0), Mm(front)), new("rear", new(-half, 0, 0), Mm(rear))]);
    }

    // One leg straight over the centre carries all, whatever hangs.
    [Fact]
    public void One_leg_carries_all()
    {
        var hanging = Slinging.Hang(new(Kg(150), Kg(15), new(0, 0, -200), default), [new("only", new(0, 0, 0), Mm(700))]).Value;
        Assert.Equal(150 * 9.80665, hanging.Legs[0].Likely.Newtons, 1e-6);
        Assert.Equal(165 * 9.80665, hanging.Legs[0].Most.Newtons, 1e-6);
        Assert.Equal(700, hanging.Hook.Z, 1e-6);
        Assert.Equal(0, hanging.Legs[0].Slack.Millimetres);
    }
}
