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
        Assert.Single(EngineStand.Mount(Engine with { Engagement = Mm(15) }, Plate).Value.Warnings).ToString());

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

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
