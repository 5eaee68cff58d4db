using CsCheck;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Lifting;

public class CentreOfMassTests
{
    // Invented inputs, recomputed with numpy 1.24.2: 173.5 kg at (0.0442075, 0.0122190, 0.2494236) m.
    [Fact]
    public void Parts_add_up_to_the_reckoned_centre()
    {
        var whole = CentreOfMass.FromParts([Part("block", 120, new(0, 0, 250)), Part("head", 35, new(420, 50, 300)), Part("flywheel", 18.5, new(-380, 20, 150))]).Value;
        Assert.Equal(173.5, whole.Mass.Kilograms, 1e-9);
        Assert.Equal(44.2075, whole.Centre.X, 1e-4);
        Assert.Equal(12.2190, whole.Centre.Y, 1e-4);
        Assert.Equal(249.4236, whole.Centre.Z, 1e-4);
        Assert.Equal(new Point3(0, 0, 0), whole.CentreSpread);
    }

    // A second way: an engine without a part is the engine of the other parts; spread of the whole none.
    [Fact]
    public void What_is_left_is_the_engine_of_the_other_parts() =>
        Gen.Select(Gen.Double[50, 200], Gen.Double[1, 40], Gen.Double[-400, 400], Gen.Double[-400, 400]).Sample((block, part, x, z) =>
        {
            MassPart[] both = [Part("block", block, new(x, 10, 0)), Part("part", part, new(120, -30, z))];
            var left = CentreOfMass.AsItIsNow(CentreOfMass.FromParts(both).Value, [both[1]], []).Value;
            var back = CentreOfMass.AsItIsNow(left, [], [both[1]]).Value;
            Assert.Equal(block, left.Mass.Kilograms, 1e-9);
            Assert.Equal(x, left.Centre.X, 1e-6);
            Assert.Equal(CentreOfMass.FromParts(both).Value.Centre.Z, back.Centre.Z, 1e-6);
        });

    [Fact]
    public void What_is_left_below_its_spread_is_refused() => Assert.Equal(
        "what is left: met 10 kg, give or take 20 kg; expected a mass above its own spread. Weigh what hangs, or tell its mass as it is now.",
        CentreOfMass.AsItIsNow(new(Mass.FromKilograms(100), Mass.FromKilograms(20), default, default), [Part("head", 90, default)], []).Refusals.Single().ToString());

    // A second way: masses and places drawn at random within their spreads, against the propagated figure (k = 2).
    [Fact]
    public void Spread_is_that_of_random_engines()
    {
        MassPart[] parts = [Part("block", 120, new(0, 0, 250), 15, 30), Part("head", 35, new(420, 50, 300), 5, 10), Part("flywheel", 18.5, new(-380, 20, 150), 1, 5)];
        var whole = CentreOfMass.FromParts(parts).Value;
        var random = new Random(7);
        double Off(double spread) => spread * (2 * random.NextDouble() - 1);
        var drawn = Enumerable.Range(0, 40000).Select(_ => CentreOfMass.FromParts([.. parts.Select(part => Part(part.Name,
            part.Mass.Kilograms + Off(part.MassSpread.Kilograms),
            part.Centre + new Point3(Off(part.CentreSpread.Millimetres), Off(part.CentreSpread.Millimetres), Off(part.CentreSpread.Millimetres))))]).Value).ToList();
        Assert.Equal(2 * Deviation(drawn.Select(w => w.Centre.X)), whole.CentreSpread.X, 0.03 * whole.CentreSpread.X);
        Assert.Equal(2 * Deviation(drawn.Select(w => w.Centre.Z)), whole.CentreSpread.Z, 0.03 * whole.CentreSpread.Z);
        Assert.Equal(2 * Deviation(drawn.Select(w => w.Mass.Kilograms)), whole.MassSpread.Kilograms, 0.03 * whole.MassSpread.Kilograms);
    }

    [Fact]
    public void Two_scales_give_back_the_engine_that_hangs() =>
        Gen.Select(Gen.Double[50, 400], Gen.Double[0.05, 0.95], Gen.Double[200, 900]).Sample((mass, part, span) =>
        {
            var (front, rear) = (new Point3(span, 30, 0), new Point3(0, -20, 0));
            var whole = CentreOfMass.FromTwoScales(Mass.FromKilograms(mass * part), front, Mass.FromKilograms(mass * (1 - part)), rear,
                Mass.FromKilograms(1), Length.FromMillimetres(300), Length.FromMillimetres(40)).Value;
            Assert.Equal(mass, whole.Mass.Kilograms, 1e-9);
            Assert.Equal(part * span, whole.Centre.X, 1e-9);
            Assert.Equal(300, whole.Centre.Z);
            Assert.Equal(40, whole.CentreSpread.Z);
        });

    // Beer and Johnston, ex. 4.2 (transcription): 70 kN at 0.9 m, 27 kN each at 3.3 and 3.9 m rest on A at 0 with 28.67 kN and on B at 2.7 m with 95.33 kN.
    // Backwards: scales that read these find the centre of the three loads, (70·0.9 + 27·3.3 + 27·3.9)/124 = 2.0758 m, beyond the front hook or not is no matter.
    [Fact]
    public void Two_scales_find_the_centre_of_the_textbooks_beam()
    {
        var whole = CentreOfMass.FromTwoScales(Mass.FromKilograms(95.33), new(2700, 0, 0), Mass.FromKilograms(28.67), default, Mass.Zero, Length.Zero, Length.Zero).Value;
        Assert.Equal(124, whole.Mass.Kilograms, 1e-9);
        Assert.Equal(2075.8, whole.Centre.X, 0.2);
    }

    // By hand: 90 and 60 kg, 400 mm apart, scales good to 1 kg: u 0.57735, 2·400·0.57735·√(90² + 60²)/150² = 2.2204 mm.
    [Fact]
    public void Two_scales_carry_their_tolerance() => Assert.Equal(2.2204, CentreOfMass.FromTwoScales(Mass.FromKilograms(90), new(400, 0, 0), Mass.FromKilograms(60), default,
        Mass.FromKilograms(1), Length.Zero, Length.Zero).Value.CentreSpread.X, 1e-4);

    [Fact]
    public void Part_of_negative_mass_is_refused_by_name() => Says.All(
        CentreOfMass.FromParts([Part("block", 120, default), Part("head", -3, new(double.NaN, 0, 0), -1)]),
        "mass of head: met -3 kg; expected more than 0 kg. Look at mass of head again.",
        "spread of head: met -1 kg; expected 0 kg or more. Look at spread of head again.",
        "centre of head: met no number; expected x, y and z in mm. Measure it from the same datum as the others.");

    [Fact]
    public void Engine_without_parts_is_refused() => Says.One("parts: met none; expected one or more. List what is still on the engine.", CentreOfMass.FromParts([]));

    [Fact]
    public void Hooks_too_close_are_refused() => Says.One(
        "hooks: met 40 mm apart; expected 50 mm apart or more. Hang the engine from two places well apart.",
        CentreOfMass.FromTwoScales(Mass.FromKilograms(90), new(40, 0, 0), Mass.FromKilograms(60), default, Mass.Zero, Length.Zero, Length.Zero));

    private static double Deviation(IEnumerable<double> values)
    {
        var all = values.ToList();
        var mean = all.Average();
        return Math.Sqrt(all.Average(v => (v - mean) * (v - mean)));
    }

    private static MassPart Part(string name, double kg, Point3 centre, double kgSpread = 0, double mmSpread = 0) =>
        new(name, Mass.FromKilograms(kg), Mass.FromKilograms(kgSpread), centre, Length.FromMillimetres(mmSpread));
}
