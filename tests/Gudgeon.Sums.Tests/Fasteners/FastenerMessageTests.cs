using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Fasteners;

/// <summary>What the sums of fasteners refuse, word for word and all at once, and what they take at the very edge.</summary>
public class FastenerMessageTests
{
    private static readonly ThreadLimits M10 = new(Mm(9.732), Mm(8.862), Mm(8.676), Mm(9.206));
    private static readonly ScrewThread Thread = ThreadTable.Find("M10").Value;
    private static readonly JointFriction Dry = new(new(0.10, 0.16), new(0.08, 0.14), Mm(13));

    [Fact]
    public void Stiffness_says_all_that_is_missing() => Says.All(BoltStretch.StiffnessNPerMm([], 0),
        "Young's modulus: met 0 MPa; expected more than 0 MPa. Look at Young's modulus again.",
        "bolt sections: met none; expected one or more. Give the shank and the thread under load.");

    [Fact]
    public void Stretch_says_all_that_is_wrong() => Says.All(BoltStretch.Stretch(N(-1), 0),
        "load: met -1 N; expected 0 N or more. Look at load again.",
        "bolt stiffness: met 0 N/mm; expected more than 0 N/mm. Look at bolt stiffness again.");

    [Fact]
    public void Load_from_lengths_says_all_that_is_wrong() => Says.All(BoltStretch.LoadFromLengths(Mm(0), Mm(-2), Mm(-1), 0),
        "free length: met 0 mm; expected more than 0 mm. Look at free length again.",
        "tightened length: met -2 mm; expected more than 0 mm. Look at tightened length again.",
        "uncertainty of a length: met -1 mm; expected 0 mm or more. Look at uncertainty of a length again.",
        "bolt stiffness: met 0 N/mm; expected more than 0 N/mm. Look at bolt stiffness again.",
        "tightened length: met -2 mm; expected 0 mm or more. Check that the two readings are in the right order and taken cold.");

    [Fact]
    public void Bolt_that_was_not_stretched_carries_nothing() =>
        Assert.Equal((Force.Zero, Force.Zero), BoltStretch.LoadFromLengths(Mm(80), Mm(80), Mm(0), 240_000).Value);

    [Fact]
    public void Load_from_angle_says_all_that_is_wrong() => Says.All(BoltStretch.LoadFromAngle(Angle.FromDegrees(-1), Mm(0), 0, 0),
        "thread pitch: met 0 mm; expected more than 0 mm. Look at thread pitch again.",
        "bolt stiffness: met 0 N/mm; expected more than 0 N/mm. Look at bolt stiffness again.",
        "joint stiffness: met 0 N/mm; expected more than 0 N/mm. Look at joint stiffness again.",
        "angle: met -1°; expected 0 to 720°. Look at angle again.");

    // By hand: two turns of 1.5 mm are 3 mm; two springs of 200 000 N/mm in series give 100 000 N/mm.
    [Fact]
    public void Two_whole_turns_are_taken() =>
        Assert.Equal(300_000, BoltStretch.LoadFromAngle(Angle.FromTurns(2), Mm(1.5), 200_000, 200_000).Value.Newtons, 1e-6);

    [Fact]
    public void Angle_for_a_load_says_what_is_wrong_with_the_load() => Says.One(
        "load: met -1 N; expected 0 N or more. Look at load again.", BoltStretch.AngleForLoad(N(-1), Mm(1.5), 2e5, 2e5));

    [Fact]
    public void Share_says_all_that_is_wrong() => Says.All(BoltStretch.BoltShare(0, -1),
        "bolt stiffness: met 0 N/mm; expected more than 0 N/mm. Look at bolt stiffness again.",
        "joint stiffness: met -1 N/mm; expected more than 0 N/mm. Look at joint stiffness again.");

    [Fact]
    public void Warming_says_all_that_is_wrong() => Says.All(BoltStretch.WarmingForStretch(Mm(-1), Mm(0), 0),
        "stretch: met -1 mm; expected 0 mm or more. Look at stretch again.",
        "length: met 0 mm; expected more than 0 mm. Look at length again.",
        "expansion: met 0 1/K; expected more than 0 1/K. Look at expansion again.");

    [Fact]
    public void Shear_areas_say_all_that_is_wrong() => Says.All(Engagement.ShearAreas(Mm(0), Mm(0), new(Mm(9), Mm(0), Mm(0), Mm(9))),
        "thread pitch: met 0 mm; expected more than 0 mm. Look at thread pitch again.",
        "nut minor diameter: met 0 mm; expected more than 0 mm. Look at nut minor diameter again.",
        "nut minor diameter: met 0 mm; expected less than the bolt's pitch diameter 0 mm. Measure again: a bore this wide holds no thread.",
        "nut pitch diameter: met 9 mm; expected less than the bolt's major diameter 9 mm. Measure again: a thread this wide holds nothing.",
        "engagement: met 0 mm; expected more than 0 mm. Look at engagement again.");

    [Fact]
    public void No_strip_length_says_all_that_is_wrong() => Says.All(Engagement.NoStripLength(0, Mm(1.5), M10, 0, -1),
        "stress area: met 0 mm²; expected more than 0 mm². Look at stress area again.",
        "strength of the bolt: met 0 MPa; expected more than 0 MPa. Look at strength of the bolt again.",
        "strength of the nut: met -1 MPa; expected more than 0 MPa. Look at strength of the nut again.");

    [Fact]
    public void Stripping_load_says_all_that_is_wrong() => Says.All(Engagement.StrippingLoad(Mm(10), Mm(1.5), M10, 0, -1),
        "strength of the bolt: met 0 MPa; expected more than 0 MPa. Look at strength of the bolt again.",
        "strength of the nut: met -1 MPa; expected more than 0 MPa. Look at strength of the nut again.");

    // By hand from the shear areas 155.80 and 214.77 mm² of FED-STD-H28/2B (see EngagementTests): ½·800·155.80 = 62 320 N; ½·200·214.77 = 21 477 N.
    [Theory]
    [InlineData(800, 62_320)]
    [InlineData(200, 21_477)]
    public void Stripping_load_is_half_the_strength_over_the_weaker_area(double nutMpa, double newtons) =>
        Assert.Equal(newtons, Engagement.StrippingLoad(Mm(10), Mm(1.5), M10, 800, nutMpa).Value.Load.Newtons, 3.0);

    // Nut and bolt shear at one load where Rm nut is Rm bolt·155.80/214.77; a nut that is no weaker is not the first to strip.
    [Fact]
    public void Nut_as_strong_as_the_bolt_does_not_strip_first()
    {
        var (bolt, nut) = Engagement.ShearAreas(Mm(10), Mm(1.5), M10).Value;
        Assert.False(Engagement.StrippingLoad(Mm(10), Mm(1.5), M10, nut, bolt).Value.NutStripsFirst);
        Assert.True(Engagement.StrippingLoad(Mm(10), Mm(1.5), M10, nut, 0.999 * bolt).Value.NutStripsFirst);
    }

    [Fact]
    public void Usual_engagement_of_no_thread_is_refused() => Says.One(
        "thread diameter: met 0 mm; expected more than 0 mm. Look at thread diameter again.", Engagement.UsualLeast(Mm(0), HoleMaterial.Steel));

    [Fact]
    public void Nut_factor_sums_say_all_that_is_wrong()
    {
        Says.All(Tightening.TorqueByNutFactor(N(0), Mm(0), 0.04),
            "preload: met 0 N; expected more than 0 N. Look at preload again.",
            "thread diameter: met 0 mm; expected more than 0 mm. Look at thread diameter again.",
            "nut factor: met 0.04; expected 0.05 to 0.5. Look at nut factor again.");
        Says.All(Tightening.PreloadByNutFactor(Torque.Zero, Mm(0), 0.51),
            "torque: met 0 N·m; expected more than 0 N·m. Look at torque again.",
            "thread diameter: met 0 mm; expected more than 0 mm. Look at thread diameter again.",
            "nut factor: met 0.51; expected 0.05 to 0.5. Look at nut factor again.");
    }

    [Fact]
    public void Friction_says_all_that_is_wrong() => Says.All(Tightening.TorqueByFriction(N(0), Thread, new(new(-0.1, 0.7), new(0.7, -0.1), Mm(10))),
        "preload: met 0 N; expected more than 0 N. Look at preload again.",
        "thread friction, low: met -0.1; expected 0 to 0.6. Look at thread friction, low again.",
        "thread friction, high: met 0.7; expected 0 to 0.6. Look at thread friction, high again.",
        "head friction, low: met 0.7; expected 0 to 0.6. Look at head friction, low again.",
        "head friction, high: met -0.1; expected 0 to 0.6. Look at head friction, high again.",
        "head friction: met 0.7 to -0.1; expected low before high. Swap the two.",
        "bearing diameter: met 10 mm; expected more than the thread's 10 mm. Measure across the face under the head and across the hole, and take the mean.");

    [Theory]
    [InlineData(0, 0.1)]
    [InlineData(0.1, 0)]
    public void Friction_in_one_of_the_two_places_is_enough(double thread, double head) => Assert.True(
        Tightening.PreloadByFriction(Torque.FromNewtonMetres(5), 0, Thread, new(FrictionBand.Exactly(thread), FrictionBand.Exactly(head), Mm(13))).Ok);

    // By hand, ISO 16047 form, M10: P/2π 0.238732, d2/(2·cos 30°) 5.21100, Db/2 6.5. 50 N·m over 1.631162 mm; 48 over 1.982493; 52 over 1.279832.
    // Spread (JCGM 100): 4 %/√3 of it; 5.21100/1.631162 and 6.5/1.631162 of it, each times 0.06/(2·√3).
    [Fact]
    public void Preload_and_its_corners_are_those_by_hand()
    {
        var preload = Tightening.PreloadByFriction(Torque.FromNewtonMetres(50), 0.04, Thread, Dry).Value;
        Assert.Equal(30_652.98, preload.Likely.Newtons, 0.01);
        Assert.Equal(24_211.94, preload.Least.Newtons, 0.01);
        Assert.Equal(40_630.31, preload.Most.Newtons, 0.01);
        Assert.Equal(2_802.51, preload.StandardUncertainty.Newtons, 0.01);
        Assert.Equal(1.678110, preload.TighteningFactor, 1e-6);
    }

    [Fact]
    public void Whole_yield_is_the_most_that_may_be_used() => Assert.True(
        Tightening.PreloadAtUtilisation(1, Thread, PropertyClass.Of("8.8", Mm(10)).Value, 0.12).Ok);

    [Fact]
    public void Utilisation_says_all_that_is_wrong()
    {
        var strength = PropertyClass.Of("8.8", Mm(10)).Value;
        Says.All(Tightening.PreloadAtUtilisation(-1, Thread, strength, 0.7),
            "utilisation: met -1; expected more than 0, at most 1. Give 0.9 for nine tenths of yield.",
            "thread friction: met 0.7; expected 0 to 0.6. Look at thread friction again.");
        Says.All(Tightening.Utilisation(N(-1), Thread, strength, 0.7),
            "preload: met -1 N; expected 0 N or more. Look at preload again.",
            "thread friction: met 0.7; expected 0 to 0.6. Look at thread friction again.");
    }

    [Fact]
    public void Wrench_sums_say_all_that_is_wrong()
    {
        Says.All(Wrench.SettingWithExtension(Torque.Zero, Mm(0), Mm(-1), Angle.FromDegrees(181)),
            "wrench length: met 0 mm; expected more than 0 mm. Look at wrench length again.",
            "extension: met -1 mm; expected 0 mm or more. Look at extension again.",
            "angle of the extension: met 181°; expected 0 to 180°. Look at angle of the extension again.",
            "torque: met 0 N·m; expected more than 0 N·m. Look at torque again.");
        Says.One("setting: met 0 N·m; expected more than 0 N·m. Look at setting again.", Wrench.TorqueThroughExtension(Torque.Zero, Mm(300), Mm(50), Angle.Zero));
        Says.All(Wrench.Question(new("w", Torque.Zero, Torque.Zero), Torque.Zero),
            "lowest mark: met 0 N·m; expected more than 0 N·m. Look at lowest mark again.",
            "scale: met 0 to 0 N·m; expected lowest before highest. Read the scale again.",
            "setting: met 0 N·m; expected more than 0 N·m. Look at setting again.");
    }

    // By hand: 150 mm folded straight back over 300 mm leaves 150 mm, just half.
    [Fact]
    public void Half_of_the_lever_may_be_lost() =>
        Assert.Equal(20, Wrench.SettingWithExtension(Torque.FromNewtonMetres(10), Mm(300), Mm(150), Angle.FromDegrees(180)).Value.NewtonMetres, 1e-9);

    [Theory]
    [InlineData(new double[] { })]
    [InlineData(new[] { 0, 1.0 })]
    [InlineData(new[] { 0.5, 0.5, 1 })]
    [InlineData(new[] { 0.6, 0.3, 1 })]
    [InlineData(new[] { 0.5, 1.1 })]
    public void Stages_that_do_not_rise_to_the_whole_are_refused(double[] parts)
    {
        var message = $"stages: met {string.Join(", ", parts)}; expected rising parts of the final torque, the last one 1. Give the stages again, for instance 0.3, 0.6, 1.";
        Says.One(message, TighteningPasses.Head(PlanePoint.Grid(3, 2, 90, 100), parts));
        Says.One(message, TighteningPasses.Flange(PlanePoint.Circle(4, 100), parts));
    }

    [Fact]
    public void Head_is_tightened_by_the_spiral_at_each_stage()
    {
        var points = PlanePoint.Grid(5, 2, 90, 100);
        var passes = TighteningPasses.Head(points, [0.5, 1]).Value;
        Assert.Equal([0.5, 1], passes.Select(p => p.PartOfFinal));
        Assert.All(passes, pass => Assert.False(pass.UntilNoneMoves));
        Assert.All(passes, pass => Assert.Equal(TighteningOrder.SpiralFromCentre(points).Value, pass.Order));
    }

    [Fact]
    public void One_stage_alone_is_taken() => Assert.Single(TighteningPasses.Head(PlanePoint.Grid(3, 1, 90, 100), [1]).Value);

    [Fact]
    public void Working_of_a_preload_names_every_figure()
    {
        var working = TighteningWorkings.Preload(Torque.FromNewtonMetres(50), 0.04, Thread, Dry, Tightening.PreloadByFriction(Torque.FromNewtonMetres(50), 0.04, Thread, Dry).Value);
        Assert.Equal("preload of M10", working.What);
        Assert.Equal(["T torque N·m", "P thread pitch mm", "d2 pitch diameter mm", "μG friction in the thread 1", "μK friction under the head 1", "Db mean bearing diameter mm"],
            working.Inputs.Select(input => $"{input.Symbol} {input.Meaning} {input.Unit}"));
        Assert.Equal("F preload N", $"{working.Result.Symbol} {working.Result.Meaning} {working.Result.Unit}");
        Assert.Equal(50 * 0.04 / Math.Sqrt(3), working.Inputs[0].StandardUncertainty!.Value, 1e-12); // rectangular, JCGM 100
    }

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static Force N(double value) => Force.FromNewtons(value);
}
