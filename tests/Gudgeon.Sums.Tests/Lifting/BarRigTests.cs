using CsCheck;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Lifting;

public class BarRigTests
{
    private static readonly HangingBar Spreader = new(Mm(600), Mm(400), Length.Zero, Mass.Zero, Mm(350), Mm(350));

    // By hand, drops parallel: bar and engine tilt alike, tan φ = x/(hook over bar + centre under the points); the lever shares the weight.
    [Fact]
    public void Parallel_drops_tilt_and_share_as_by_hand() =>
        Gen.Select(Gen.Double[-80, 80], Gen.Double[50, 300], Gen.Double[200, 700]).Sample((x, depth, over) =>
        {
            var hanging = BarRig.HangUnderBar(Load(150, new(x, 0, -depth)), new(300, 0, 0), new(-300, 0, 0), Spreader with { HookOver = Mm(over) }).Value;
            var tilt = Math.Atan(x / (over + depth));
            Assert.Equal(-tilt * 180 / Math.PI, hanging.FrontUp.Degrees, 1e-4);
            Assert.Equal(hanging.FrontUp.Degrees, hanging.BarFrontUp.Degrees, 1e-4);
            // Arms about the centre of mass, level: 300 − x and 300 + x turned by the tilt, the depth turned with them.
            double Arm(double along) => along * Math.Cos(tilt) + depth * Math.Sin(tilt);
            var (front, rear) = (Arm(300 - x), -Arm(-300 - x));
            Assert.Equal(150 * 9.80665 * rear / (front + rear), hanging.FrontPull.Newtons, 0.2);
            Assert.Equal(150 * 9.80665, hanging.FrontPull.Newtons + hanging.RearPull.Newtons, 1e-3);
        });

    // A second way: pulls, weight and moments balance on the engine, and the common centre hangs straight under the hook.
    [Fact]
    public void Every_rest_is_one_of_statics() =>
        Gen.Select(Gen.Double[0.7, 1.3], Gen.Double[-100, 100], Gen.Double[-0.5, 0.5], Gen.Double[60, 250], Gen.Double[-60, 60], Gen.Double[0, 20]).Sample((ratio, x, carrier, depth, longer, barKg) =>
        {
            var bar = new HangingBar(Mm(600 * ratio), Mm(120), Mm(carrier * 200), Mass.FromKilograms(barKg), Mm(500 + longer), Mm(500));
            var centre = new Point3(x, 0, -depth);
            if (BarRest.Find(150, centre, new(300, 0, 10), new(-300, 0, -10), bar) is not { } rest)
                return;
            Assert.Equal(0, rest.FrontPull * Math.Sin(rest.FrontLean) + rest.RearPull * Math.Sin(rest.RearLean), 2e-3 * 150);
            Assert.Equal(150, rest.FrontPull * Math.Cos(rest.FrontLean) + rest.RearPull * Math.Cos(rest.RearLean), 2e-3 * 150);
            (double X, double Z) Turned(double px, double pz, double by) => (px * Math.Cos(by) - pz * Math.Sin(by), px * Math.Sin(by) + pz * Math.Cos(by));
            var hole = Turned(bar.Span.Millimetres / 2 - bar.HookForward.Millimetres, -120, rest.BarTilt);
            var point = (X: hole.X + (500 + longer) * Math.Sin(rest.FrontLean), Z: hole.Z - (500 + longer) * Math.Cos(rest.FrontLean));
            var toCentre = Turned(x - 300, -depth - 10, rest.Tilt);
            var engine = point.X + toCentre.X;
            var middle = Turned(-bar.HookForward.Millimetres, -120, rest.BarTilt).X;
            Assert.Equal(0, (150 * engine + barKg * middle) / (150 + barKg), 0.05);
        });

    [Fact]
    public void Rigs_of_that_sweep_come_to_rest()
    {
        var grid = from ratio in new[] { 0.7, 1, 1.3 } from x in new[] { -90, 0, 90 } from carrier in new[] { -100, 0, 100 } from longer in new[] { -60, 0, 60 } select (ratio, x, carrier, longer);
        Assert.All(grid, rig => Assert.NotNull(BarRest.Find(150, new(rig.x, 0, -150), new(300, 0, 10), new(-300, 0, -10),
            new(Mm(600 * rig.ratio), Mm(120), Mm(rig.carrier), Mass.FromKilograms(10), Mm(500 + rig.longer), Mm(500)))));
    }

    [Fact]
    public void Carrier_that_is_found_levels_the_engine() =>
        Gen.Select(Gen.Double[-90, 90], Gen.Double[50, 250], Gen.Double[0.6, 1]).Sample((x, depth, ratio) =>
        {
            var bar = Spreader with { Span = Mm(600 * ratio), HookOver = Mm(60), FrontDrop = Mm(500), RearDrop = Mm(500) };
            var load = Load(180, new(x, 0, -depth));
            if (BarRig.LevelCarrier(load, new(300, 0, 0), new(-300, 0, 0), bar, Mm(160)).TryGet(out var carrier))
                Assert.Equal(0, BarRig.HangUnderBar(load, new(300, 0, 0), new(-300, 0, 0), bar with { HookForward = carrier }).Value.FrontUp.Degrees, 0.01);
        });

    // By hand: bar as long as the points are apart, drops upright: the carrier stands straight over the centre.
    [Fact]
    public void Carrier_of_an_even_bar_stands_over_the_centre() =>
        Assert.Equal(55, BarRig.LevelCarrier(Load(180, new(55, 0, -100)), new(300, 0, 0), new(-300, 0, 0), Spreader, Mm(200)).Value.Millimetres, 0.05);

    // Beam theory on invented inputs, recomputed: 4000 N in all, 0.8 m, 40×40×3 tube: 800 N·m, 156.91 MPa, ends down 1.9925 mm.
    [Fact]
    public void Bar_bends_as_reckoned()
    {
        var bent = BarBending.SquareTube(Force.FromNewtons(2000), Mm(400), Mm(40), Mm(3)).Value;
        Assert.Equal(156.91, bent.StressMpa, 0.01);
        Assert.Equal(1.9925, bent.EndDeflection.Millimetres, 1e-4);
        var hanging = BarRig.HangUnderBar(Load(4000 / 9.80665, new(0, 0, -100)), new(400, 0, 0), new(-400, 0, 0), Spreader with { Span = Mm(800) }).Value;
        Assert.Equal(800, hanging.Bending.NewtonMetres, 0.05);
    }

    [Fact]
    public void Most_pull_is_never_below_the_true_one_within_the_spread() =>
        Gen.Select(Gen.Double[-60, 60], Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[0.8, 1.2]).Sample((x, dx, dz, dm, ratio) =>
        {
            var bar = Spreader with { Span = Mm(600 * ratio) };
            var load = new HangingLoad(Mass.FromKilograms(150), Mass.FromKilograms(15), new(x, 0, -150), new(40, 0, 40));
            if (!BarRig.HangUnderBar(load, new(300, 0, 0), new(-300, 0, 0), bar).TryGet(out var hanging))
                return;
            var rest = BarRest.Find(150 + 15 * dm, new(x + 40 * dx, 0, -150 + 40 * dz), new(300, 0, 0), new(-300, 0, 0), bar)!;
            Assert.True(hanging.MostTilt.Radians >= Math.Abs(rest.Tilt) - 1e-3);
            Assert.True(hanging.FrontPull.KilogramsForce >= rest.FrontPull * (1 - 1e-3) && hanging.RearPull.KilogramsForce >= rest.RearPull * (1 - 1e-3));
        });

    // By hand, drops parallel and the bar as long as the points are apart: tan φ = x/(hook over bar + centre under the points), at most where x is 20 + 40 and the centre 110 under: 60/(400 + 110).
    [Fact]
    public void Tilt_counts_with_the_spread_of_the_centre() => Assert.Equal(Math.Atan(60.0 / 510) * 180 / Math.PI,
        BarRig.HangUnderBar(new(Mass.FromKilograms(150), Mass.Zero, new(20, 0, -150), new(40, 0, 40)), new(300, 0, 0), new(-300, 0, 0), Spreader).Value.MostTilt.Degrees, 1e-3);

    [Fact]
    public void Bad_bar_is_refused_all_at_once() => Says.All(
        BarRig.HangUnderBar(Load(150, new(0, 0, -100)), new(10, 0, 0), new(-10, 0, 0), new(Mm(-1), Mm(0), Mm(5), Mass.FromKilograms(-1), Mm(0), Mm(350))),
        "span of the bar: met -1 mm; expected more than 0 mm. Look at span of the bar again.",
        "hook over the bar: met 0 mm; expected more than 0 mm. Look at hook over the bar again.",
        "mass of the bar: met -1 kg; expected 0 kg or more. Look at mass of the bar again.",
        "front drop: met 0 mm; expected more than 0 mm. Look at front drop again.",
        "carrier: met 5 mm forward; expected within the bar, -0.5 mm either way. Measure from the middle of the bar.",
        "lifting points: met 20 mm from rear to front; expected 50 mm or more. Give the front point and the rear point, x to the front.");

    [Fact]
    public void Centre_outside_the_points_is_refused() => Says.One(
        "centre of mass: met 301 mm, outside -300 to 300 mm; expected a centre between the lifting points. Move a lifting point so that the centre lies between them.",
        BarRig.HangUnderBar(Load(150, new(301, 0, -100)), new(300, 0, 0), new(-300, 0, 0), Spreader));

    [Fact]
    public void Drops_too_short_are_refused() => Says.One(
        "drops: met 100 mm of drops on a bar of 300 mm; expected more together than the 600 mm between the lifting points. Take longer drops or a longer bar.",
        BarRig.HangUnderBar(Load(150, new(0, 0, -100)), new(300, 0, 0), new(-300, 0, 0), Spreader with { Span = Mm(300), FrontDrop = Mm(50), RearDrop = Mm(50) }));

    [Fact]
    public void Drop_beyond_60_is_refused_and_beyond_45_warned_of()
    {
        // By hand: a bar 100 mm, points 600 mm apart, drops d: lean asin(250/d): 61.04° at 285.714 mm, 50.0° at 326.35 mm.
        var bar = Spreader with { Span = Mm(100) };
        Assert.All(BarRig.HangUnderBar(Load(150, new(0, 0, -100)), new(300, 0, 0), new(-300, 0, 0), bar with { FrontDrop = Mm(285.714), RearDrop = Mm(285.714) }).Refusals,
            refusal => Assert.Matches(@"^(front|rear) drop: met 61\.1° to the vertical; expected 60° at most\. Take longer drops or a bar nearer to the span of the lifting points\.$", refusal.ToString()));
        Assert.All(BarRig.HangUnderBar(Load(150, new(0, 0, -100)), new(300, 0, 0), new(-300, 0, 0), bar with { FrontDrop = Mm(326.35), RearDrop = Mm(326.35) }).Value.Warnings,
            warning => Assert.Matches(@"^(front|rear) drop: met (50|50\.1)° to the vertical; expected 45° or less\. ", warning.ToString()));
    }

    [Fact]
    public void Carrier_without_a_level_place_is_refused() => Says.One(
        "carrier: met no level engine within 20 mm of the middle; expected a place of the carrier that levels it. Change the length of one drop, or lift from other points.",
        BarRig.LevelCarrier(Load(180, new(55, 0, -100)), new(300, 0, 0), new(-300, 0, 0), Spreader, Mm(20)));

    [Fact]
    public void Travel_beyond_the_bar_is_refused() => Says.One(
        "travel of the carrier: met 300 mm; expected more than 0, less than half the bar, 300 mm. Measure how far the carrier goes from the middle.",
        BarRig.LevelCarrier(Load(180, new(55, 0, -100)), new(300, 0, 0), new(-300, 0, 0), Spreader, Mm(300)));

    [Fact]
    public void Tube_with_too_thick_a_wall_is_refused() => Says.One(
        "wall of the tube: met 20 mm; expected less than half the side, 20 mm. Measure the wall at an open end.", BarBending.SquareTube(Force.FromNewtons(1), Mm(400), Mm(40), Mm(20)));

    private static HangingLoad Load(double kg, Point3 centre) => new(Mass.FromKilograms(kg), Mass.Zero, centre, default);

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
