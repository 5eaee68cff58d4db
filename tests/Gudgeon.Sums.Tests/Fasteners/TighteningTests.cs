using CsCheck;
using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Fasteners;

public class TighteningTests
{
    // VDI 2230 (2001/2003) assembly preloads and torques at 0.9 of yield, fine thread: read in a supplier's reproduction.
    // Torques are printed to whole newton metres from M10 up; dw and medium clearance hole dh as recomputed beside the table.
    [Theory]
    [InlineData("M8x1", 11.63, 9, 0.10, new[] { 20.7, 30.4, 35.6 }, new[] { 22.8, 33.5, 39.2 })]
    [InlineData("M8x1", 11.63, 9, 0.12, new[] { 20.2, 29.7, 34.7 }, new[] { 26.1, 38.3, 44.9 })]
    [InlineData("M8x1", 11.63, 9, 0.14, new[] { 19.7, 28.9, 33.9 }, new[] { 29.2, 42.8, 50.1 })]
    [InlineData("M10x1.25", 14.63, 11, 0.10, new[] { 32.4, 47.5, 55.6 }, new[] { 44.0, 65, 76 })]
    [InlineData("M10x1.25", 14.63, 11, 0.12, new[] { 31.6, 46.4, 54.3 }, new[] { 51.0, 75, 87 })]
    [InlineData("M10x1.25", 14.63, 11, 0.14, new[] { 30.8, 45.2, 52.9 }, new[] { 57.0, 83, 98 })]
    [InlineData("M12x1.25", 16.63, 13.5, 0.10, new[] { 49.1, 72.1, 84.4 }, new[] { 79.0, 116, 135 })]
    [InlineData("M12x1.25", 16.63, 13.5, 0.12, new[] { 48.0, 70.5, 82.5 }, new[] { 90.0, 133, 155 })]
    [InlineData("M12x1.25", 16.63, 13.5, 0.14, new[] { 46.8, 68.7, 80.4 }, new[] { 101.0, 149, 174 })]
    [InlineData("M14x1.5", 19.64, 15.5, 0.10, new[] { 66.4, 97.5, 114.1 }, new[] { 124.0, 182, 213 })]
    [InlineData("M14x1.5", 19.64, 15.5, 0.12, new[] { 64.8, 95.2, 111.4 }, new[] { 142.0, 209, 244 })]
    [InlineData("M14x1.5", 19.64, 15.5, 0.14, new[] { 63.2, 92.9, 108.7 }, new[] { 159.0, 234, 274 })]
    public void Preload_and_torque_at_nine_tenths_of_yield_are_the_printed_ones(string size, double dw, double dh, double mu, double[] kilonewtons, double[] newtonMetres)
    {
        var thread = ThreadTable.Find(size).Value;
        foreach (var (mark, i) in new[] { "8.8", "10.9", "12.9" }.Select((mark, i) => (mark, i)))
        {
            var preload = Tightening.PreloadAtUtilisation(0.9, thread, PropertyClass.Of(mark, Mm(thread.NominalMm)).Value, mu).Value;
            Assert.Equal(kilonewtons[i], preload.Kilonewtons, 0.007 * kilonewtons[i]);
            var torque = Tightening.TorqueByFriction(preload, thread, new(FrictionBand.Exactly(mu), FrictionBand.Exactly(mu), Mm((dw + dh) / 2))).Value;
            Assert.Equal(newtonMetres[i], torque.NewtonMetres, Math.Max(0.007 * newtonMetres[i], newtonMetres[i] < 43 && size == "M8x1" ? 0.05 : 0.5));
        }
    }

    // A bolt supplier's guide to VDI 2230 (2021), worked M12×40: FM 41.9 kN, tightening factor 1.8 leaves 23.3 kN. Seen.
    [Fact]
    public void Preload_of_a_coarse_m12_is_the_worked_one()
    {
        var preload = Tightening.PreloadAtUtilisation(0.9, ThreadTable.Find("M12").Value, PropertyClass.Of("8.8", Mm(12)).Value, 0.14).Value;
        Assert.Equal(41.9, preload.Kilonewtons, 0.003 * 41.9);
        Assert.Equal(23.3, preload.Kilonewtons / 1.8, 0.003 * 23.3);
    }

    // Shigley 9th ed. ex. 8-3: 3/4-16, 25 kip, f 0.15 both, collar 0.9375 in. 3542.4 lbf·in in this form (recomputed); the trigonometric form gives 3551 (from memory).
    [Fact]
    public void Torque_by_friction_is_near_the_trigonometric_form()
    {
        var torque = Tightening.TorqueByFriction(Force.FromPoundsForce(25000), ThreadTable.Find("3/4-16").Value,
            new(FrictionBand.Exactly(0.15), FrictionBand.Exactly(0.15), Length.FromInches(0.9375))).Value;
        Assert.Equal(3542.4, torque.PoundForceInches, 0.5);
        Assert.Equal(3551, torque.PoundForceInches, 0.003 * 3551);
    }

    // Nut factor: Shigley ex. 8-3 (question seen, answer from memory); Wentzell ex. 6.1 and 6.4, Jindal ex. 9-5 (transcriptions); M10 8.8 from its proof load.
    [Theory]
    [InlineData(25000 * 4.4482216152605, 19.05, 0.2, 3750 * 0.1129848290276167, 1e-6)]
    [InlineData(24131.5 * 4.4482216152605, 19.05, 0.2, 3619.7 * 0.1129848290276167, 0.01)]
    [InlineData(0.9 * 1.073 * 120000 * 4.4482216152605, 31.75, 0.15, 21728.25 * 0.1129848290276167, 1e-6)]
    [InlineData(0.75 * 650 * 115, 14, 0.2, 156.98, 0.02)]
    [InlineData(0.75 * 33700, 10, 0.2, 50.55, 1e-9)]
    public void Torque_by_nut_factor_is_the_textbooks(double newtons, double d, double k, double newtonMetres, double tolerance)
    {
        var torque = Tightening.TorqueByNutFactor(Force.FromNewtons(newtons), Mm(d), k).Value;
        Assert.Equal(newtonMetres, torque.NewtonMetres, tolerance);
        Assert.Equal(newtons, Tightening.PreloadByNutFactor(torque, Mm(d), k).Value.Newtons, 1e-6 * newtons);
    }

    // Wentzell ex. 6.4, ten studs: 0.9 of proof each 115 884 lbf, joint share of the rest: total 1 186 593 lbf is checked in the share test.
    // Shigley 9th ed. ex. 8-3: seen.
    [Fact]
    public void Stress_under_load_is_the_textbooks()
    {
        var share = BoltStretch.BoltShare(6.5, 13.8).Value;
        Assert.Equal(0.320, share, 0.0005);
        Assert.Equal(67.02, 25 / 0.373, 0.01);
        Assert.Equal(72.17, (25 + share * 6) / 0.373, 0.01);
    }

    [Fact]
    public void Preload_by_friction_undoes_the_torque() =>
        Gen.Select(Gen.Double[1, 200], Gen.Double[0.05, 0.3], Gen.Double[0.05, 0.3], Gen.Int[0, ThreadTable.All.Count - 1].Select(i => ThreadTable.All[i])).Sample((kn, thread, head, size) =>
        {
            var friction = new JointFriction(FrictionBand.Exactly(thread), FrictionBand.Exactly(head), Mm(1.4 * size.NominalMm));
            var torque = Tightening.TorqueByFriction(Force.FromKilonewtons(kn), size, friction).Value;
            var preload = Tightening.PreloadByFriction(torque, 0, size, friction).Value;
            Assert.Equal(kn, preload.Likely.Kilonewtons, 1e-9 * kn);
            Assert.Equal(0, preload.StandardUncertainty.Newtons, 1e-9);
            Assert.Equal(1, preload.TighteningFactor, 1e-12);
        });

    // A second way: the spread of many preloads with friction and torque drawn at random, against the propagated figure and the corners.
    [Fact]
    public void Preload_spread_is_that_of_random_tightenings()
    {
        var size = ThreadTable.Find("M10").Value;
        var friction = new JointFriction(new(0.10, 0.16), new(0.08, 0.14), Mm(13));
        var preload = Tightening.PreloadByFriction(Torque.FromNewtonMetres(50), 0.04, size, friction).Value;
        var random = new Random(20261125);
        var drawn = Enumerable.Range(0, 40000).Select(_ => Tightening.PreloadByFriction(
            Torque.FromNewtonMetres(50 * (0.96 + 0.08 * random.NextDouble())), 0, size,
            new(FrictionBand.Exactly(0.10 + 0.06 * random.NextDouble()), FrictionBand.Exactly(0.08 + 0.06 * random.NextDouble()), Mm(13))).Value.Likely.Newtons).ToList();
        var mean = drawn.Average();
        Assert.Equal(Math.Sqrt(drawn.Average(f => (f - mean) * (f - mean))), preload.StandardUncertainty.Newtons, 0.05 * preload.StandardUncertainty.Newtons);
        Assert.True(drawn.Min() >= preload.Least.Newtons && drawn.Max() <= preload.Most.Newtons);
        Assert.True(preload.Least < preload.Likely && preload.Likely < preload.Most);
    }

    [Fact]
    public void Utilisation_undoes_the_preload() =>
        Gen.Select(Gen.Double[0.05, 1], Gen.Double[0, 0.4], Gen.Int[0, 2].Select(i => new[] { "8.8", "10.9", "12.9" }[i])).Sample((part, mu, mark) =>
        {
            var size = ThreadTable.Find("M12x1.25").Value;
            var strength = PropertyClass.Of(mark, Mm(12)).Value;
            var preload = Tightening.PreloadAtUtilisation(part, size, strength, mu).Value;
            Assert.Equal(part, Tightening.Utilisation(preload, size, strength, mu).Value, 1e-12);
            Assert.True(preload.Newtons < part * strength.YieldMpa * size.StressAreaMm2);
        });

    [Fact]
    public void Bad_friction_is_refused_all_at_once() => Says.All(
        Tightening.PreloadByFriction(Torque.FromNewtonMetres(-5), 0.6, ThreadTable.Find("M10").Value, new(new(0.2, 0.1), new(0.1, 0.7), Mm(9))),
        "torque: met -5 N·m; expected more than 0 N·m. Look at torque again.",
        "wrench tolerance: met 0.6; expected 0 to 0.5. Look at wrench tolerance again.",
        "thread friction: met 0.2 to 0.1; expected low before high. Swap the two.",
        "head friction, high: met 0.7; expected 0 to 0.6. Look at head friction, high again.",
        "bearing diameter: met 9 mm; expected more than the thread's 10 mm. Measure across the face under the head and across the hole, and take the mean.");

    [Fact]
    public void No_friction_at_all_is_refused() => Says.One(
        "friction: met 0 in thread and under head; expected more than 0 in one of the two. Give the lubricant's band; nothing runs without friction.",
        Tightening.PreloadByFriction(Torque.FromNewtonMetres(5), 0, ThreadTable.Find("M10").Value, new(new(0, 0), new(0, 0), Mm(13))));

    [Theory]
    [InlineData(0, "utilisation: met 0; expected more than 0, at most 1. Give 0.9 for nine tenths of yield.")]
    [InlineData(1.01, "utilisation: met 1.01; expected more than 0, at most 1. Give 0.9 for nine tenths of yield.")]
    public void Utilisation_out_of_range_is_refused(double part, string message) => Says.One(
        message, Tightening.PreloadAtUtilisation(part, ThreadTable.Find("M10").Value, PropertyClass.Of("8.8", Mm(10)).Value, 0.12));

    [Fact]
    public void Nut_factor_out_of_range_is_refused() => Says.One(
        "nut factor: met 20; expected 0.05 to 0.5. Look at nut factor again.", Tightening.TorqueByNutFactor(Force.FromNewtons(1), Mm(10), 20));

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
