using CsCheck;
using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Lifting;

public class EngineStandTests
{
    private static readonly Torque Plate = Torque.FromNewtonMetres(1500);

    // Invented engine: 180 kg, 0.28 m out, plate 0.15 m from the post, 18 mm off the axis; two bolts on the lower edge, two 0.2 m over it.
    private static readonly MountedEngine Engine = new(
        new(Mass.FromKilograms(180), Mass.Zero, new(280, 0, 18), default), Mm(150),
        [new("top left", 130, 100), new("top right", -130, 100), new("bottom left", 130, -100), new("bottom right", -130, -100)],
        ThreadTable.Find("M12").Value, PropertyClass.Of("8.8", Mm(12)).Value, Length.Zero, Mm(20), HoleMaterial.CastIron);

    // Statics, recomputed: 759.0347 N·m at the post, 31.77355 N·m to turn it, 79.4339 N on a handle of 0.4 m.
    [Fact]
    public void Moments_are_the_reckoned_ones()
    {
        var stand = EngineStand.Mount(Engine, Plate).Value;
        Assert.Equal(759.0347, stand.PostMoment.NewtonMetres, 1e-4);
        Assert.Equal(31.77355, stand.TurningTorque.NewtonMetres, 1e-5);
        Assert.Equal(79.4339, stand.TurningTorque.NewtonMetres / 0.4, 1e-4);
    }

    // Statics, recomputed: upright each top bolt carries 180·9.80665·0.28/(2·0.2) = 1235.638 N. Over a whole turn no bolt of this pattern is used less than that one.
    [Fact]
    public void Bolt_pull_is_never_below_the_upright_one()
    {
        var stand = EngineStand.Mount(Engine with { Load = Engine.Load with { Centre = new(280, 0, 0) } }, Plate).Value;
        Assert.True(stand.BoltPull.Newtons >= 1235.638 - 0.01);
        // By hand, the pull alone: 1235.638 N over 84.2665 mm² is 14.66 MPa, so the stress is at least that.
        Assert.True(stand.BoltStressMpa >= 14.66);
    }

    // By hand: where all bolts give alike, turned by θ the bolt at (130, 100) is pulled by M·(cos θ·100/Σz² + sin θ·130/Σy²), Σz² 40000, Σy² 67600: at most
    // M·√(0.0025² + 0.00192308²) = 180·9.80665·280·0.00315409 = 1558.92 N, more than about the tipping edge.
    [Fact]
    public void Bolt_pull_is_never_below_that_of_arms_that_give_alike() =>
        Assert.InRange(EngineStand.Mount(Engine with { Load = Engine.Load with { Centre = new(280, 0, 0) } }, Plate).Value.BoltPull.Newtons, 1558.92 * 0.9999, 1558.92 * 1.0001);

    // A second way for any pattern: the pull of a bolt over a stiff plate on like springs, by the plane that balances the moment, found with Cramer's rule on all three sums.
    [Fact]
    public void No_pattern_of_bolts_is_pulled_more_than_told() =>
        Gen.Select(Gen.Double[-150, 150], Gen.Double[-150, 150]).Array[4].Where(p => Area(p) > 4000).Sample(places =>
        {
            var bolts = places.Select((p, i) => new PlateBolt($"{i}", p.Item1, p.Item2)).ToList();
            if (!EngineStand.Mount(Engine with { Bolts = bolts, Strength = PropertyClass.Of("12.9", Mm(12)).Value, Load = Engine.Load with { Mass = Mass.FromKilograms(60), Centre = new(100, 0, 0) } }, Plate).TryGet(out var stand))
                return;
            var moment = 60 * 9.80665 * 100;
            var (n, y, z) = (4.0, bolts.Sum(b => b.Y), bolts.Sum(b => b.Z));
            var (yy, yz, zz) = (bolts.Sum(b => b.Y * b.Y), bolts.Sum(b => b.Y * b.Z), bolts.Sum(b => b.Z * b.Z));
            double Det(double a, double b, double c, double d, double e, double f, double g, double h, double i) => a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
            var whole = Det(n, y, z, y, yy, yz, z, yz, zz);
            // Upright: no pull in all, no moment to the side, all of it upwards.
            var (k, l, m) = (Det(0, y, z, 0, yy, yz, moment, yz, zz) / whole, Det(n, 0, z, y, 0, yz, z, moment, zz) / whole, Det(n, y, 0, y, yy, 0, z, yz, moment) / whole);
            Assert.All(bolts, bolt => Assert.True((k + l * bolt.Y + m * bolt.Z) / Engine.Thread.StressAreaMm2 <= stand.BoltStressMpa * (1 + 1e-9)));
        }, iter: 300);

    // Beam theory on invented inputs, reckoned apart with python: tube 40×40×4, reach 150, 60 off the face, 1200 N along and 450 N across: 44.7865 MPa; bar 50×12: 188.0721 MPa.
    [Theory]
    [InlineData(40, 40, 4, 44.78646)]
    [InlineData(50, 12, 0, 188.07212)]
    public void Arm_is_stressed_as_reckoned(double wide, double thick, double wall, double stress) =>
        Assert.Equal(stress, StandArms.ArmStress(Force.FromNewtons(1200), Force.FromNewtons(450), new(Mm(150), Mm(60), Mm(wide), Mm(thick), Mm(wall))).Value, 1e-4);

    // By hand: with no stand-off and no force across, bending and shear alone: F·r/(w·t²/6) = 1000·100/(40·20²/6) = 37.5 MPa; 1.5·1000/800 = 1.875, so √(37.5² + 3·1.875²) = 37.6404.
    [Fact]
    public void Arm_without_stand_off_only_bends() =>
        Assert.Equal(37.6404, StandArms.ArmStress(Force.FromNewtons(1000), Force.FromNewtons(0), new(Mm(100), Mm(0), Mm(40), Mm(20), Mm(0))).Value, 1e-4);

    [Fact]
    public void Arm_that_is_told_is_judged_and_one_too_weak_is_refused()
    {
        var stout = EngineStand.Mount(Engine with { Arm = new(Mm(150), Mm(60), Mm(50), Mm(50), Mm(5)) }, Plate).Value;
        Assert.NotNull(stout.Arm);
        // What the worst arm carries goes through the one sum of arms.
        Assert.Equal(StandArms.ArmStress(stout.Arm.Along, stout.Arm.Across, new(Mm(150), Mm(60), Mm(50), Mm(50), Mm(5))).Value, stout.Arm.StressMpa, 1e-9);
        Assert.Matches(@"^arm of (top|bottom) (left|right): met \d+(\.\d+)? MPa at its root; expected 117\.5 MPa at most, half of the yield of plain steel \(common practice, no source\)\. Draw the arms in, bring the face nearer, or take a stand with stouter arms\.$",
            Assert.Single(EngineStand.Mount(Engine with { Arm = new(Mm(150), Mm(60), Mm(40), Mm(10), Mm(0)) }, Plate).Refusals).ToString());
    }

    [Fact]
    public void Arm_of_too_thick_a_wall_is_refused() => Says.One(
        "wall of the arm: met 20 mm; expected less than half of its thickness, 20 mm; 0 for a solid bar. Measure the wall at an open end.",
        StandArms.ArmStress(Force.FromNewtons(1), Force.FromNewtons(1), new(Mm(100), Mm(0), Mm(40), Mm(40), Mm(20))));

    [Fact]
    public void Bolt_too_short_for_what_is_told_and_one_that_bottoms_are_refused()
    {
        Says.One("engagement: met 20 mm told; expected 15 mm at most: 60 mm of bolt less 45 mm before the engine. Count the turns that hold, times the pitch, or take longer bolts.",
            EngineStand.Mount(Engine with { Bolt = new(Mm(60), Mm(45), Mm(0)) }, Plate));
        Says.One("bolt under its head: met 25 mm into a hole of 24 mm; expected a bolt that clamps before it meets the end of its hole. Take shorter bolts or more washers: a bolt that bottoms holds nothing.",
            EngineStand.Mount(Engine with { Bolt = new(Mm(70), Mm(45), Mm(24)) }, Plate));
        Assert.True(EngineStand.Mount(Engine with { Bolt = new(Mm(65), Mm(45), Mm(20)) }, Plate).Ok);
    }

    [Fact]
    public void What_was_not_measured_on_the_stand_is_said() => Assert.Equal(
        ["bolt and hole: met not measured; expected the bolt's length, what it goes through and the depth of its hole. Measure them: too short tears out, too long bottoms and holds nothing.",
         "arms of the stand: met not measured, so not judged; expected their reach, width, thickness and wall. Measure the longest arm."],
        EngineStand.Mount(Engine, Plate).Value.Warnings.Select(w => w.ToString()));

    // A second way: with no free arm and one pull, the stress of the worst bolt is found again by a finer turn of the pattern.
    [Fact]
    public void No_turn_of_the_engine_uses_a_bolt_more() =>
        Gen.Select(Gen.Double[0, 360], Gen.Int[0, 3]).Sample((degrees, bolt) =>
        {
            var stand = EngineStand.Mount(Engine, Plate).Value;
            var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
            var heights = Engine.Bolts.Select(b => b.Y * sin + b.Z * cos).ToList();
            var pull = 180 * 9.80665 * 280 * (heights[bolt] - heights.Min()) / heights.Sum(h => Math.Pow(h - heights.Min(), 2));
            Assert.True(pull / Engine.Thread.StressAreaMm2 <= stand.BoltStressMpa * 1.001);
        });

    [Fact]
    public void Free_arm_bends_the_bolts()
    {
        Assert.True(EngineStand.Mount(Engine with { FreeArm = Mm(20) }, Plate).Value.YieldPart > EngineStand.Mount(Engine, Plate).Value.YieldPart);
        Assert.Matches(@"^(top|bottom) (left|right): met \d+(\.\d+)? MPa; expected 320 MPa at most, half of yield \(common practice, no source\)\. Bring the fingers closer to the face, or use more or thicker bolts\.$",
            Assert.Single(EngineStand.Mount(Engine with { FreeArm = Mm(120) }, Plate).Refusals).ToString());
    }

    [Fact]
    public void Engine_too_heavy_for_the_plate_is_refused() => Says.One(
        "stand: met 759.035 N·m at the post; expected 759 N·m at most by its plate. Strip the engine further before it goes on, or take a stronger stand.",
        EngineStand.Mount(Engine, Torque.FromNewtonMetres(759)));

    [Fact]
    public void Spread_of_mass_and_centre_counts_against_the_stand()
    {
        var unsure = Engine with { Load = Engine.Load with { MassSpread = Mass.FromKilograms(20), CentreSpread = new(30, 5, 10) } };
        // By hand: 200 kg at 310 + 150 mm is 902.21 N·m; off the axis √(5² + 28²) = 28.443 mm, 55.786 N·m.
        var stand = EngineStand.Mount(unsure, Plate).Value;
        Assert.Equal(902.21, stand.PostMoment.NewtonMetres, 0.01);
        Assert.Equal(55.786, stand.TurningTorque.NewtonMetres, 0.001);
    }

    // Common practice, no source: 1.3 diameters in iron.
    [Fact]
    public void Short_engagement_is_warned_of() => Assert.Equal(
        "engagement: met 15 mm; expected 15.6 mm or more (common practice, no source). Take longer bolts, if the hole is deep enough.",
        EngineStand.Mount(Engine with { Engagement = Mm(15) }, Plate).Value.Warnings[0].ToString());

    [Fact]
    public void Bad_mounting_is_refused_all_at_once() => Says.All(
        EngineStand.Mount(Engine with { Load = Engine.Load with { Centre = new(-10, 0, 0) }, Bolts = [new("a", 0, 0), new("b", 100, 0)], Engagement = Length.Zero }, Torque.Zero),
        "engagement: met 0 mm; expected more than 0 mm. Look at engagement again.",
        "moment on the stand's plate: met 0 N·m; expected more than 0 N·m. Look at moment on the stand's plate again.",
        "bolts: met 2; expected three or more. Use every hole of the bell-housing that a finger reaches.",
        "centre of mass: met -10 mm from the face; expected a place out from the face. Measure from the bell-housing face forward.");

    [Fact]
    public void Bolts_in_one_line_are_refused() => Says.One(
        "bolts: met all in one line or at one place; expected a pattern round the crank. Give each bolt left of and over the turning axis.",
        EngineStand.Mount(Engine with { Bolts = [new("a", 0, 0), new("b", 100, 0), new("c", 200, 0)] }, Plate));

    private static double Area((double Y, double Z)[] p)
    {
        // Twice the largest triangle of the pattern: one that is nearly a line is no pattern.
        var all = from a in p from b in p from c in p select Math.Abs((b.Y - a.Y) * (c.Z - a.Z) - (c.Y - a.Y) * (b.Z - a.Z));
        return all.Max();
    }

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
