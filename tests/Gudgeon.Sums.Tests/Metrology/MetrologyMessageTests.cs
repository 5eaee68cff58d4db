using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Metrology;

/// <summary>What the kernels of metrology say when the program gives them what cannot be, and what they take at the very edge. Readings are invented.</summary>
public class MetrologyMessageTests
{
    [Fact]
    public void Derived_figures_say_what_they_need()
    {
        Throws<ArgumentException>("A clearance needs a reading of each part.", () => Clearances.Range([], [Mm(1)]));
        Throws<ArgumentException>("A spread needs at least two of a set. (Parameter 'set')", () => Clearances.SetSpread([Mm(1)]));
        Throws<ArgumentException>("A run-out needs at least two readings of the dial. (Parameter 'dial')", () => Runout.Total([Mm(1)]));
        Throws<ArgumentException>("An end float needs a reading. (Parameter 'readings')", () => Runout.EndFloat([]));
        Throws<ArgumentException>("A flatness needs at least one line. (Parameter 'feelers')", () => Faces.Flatness([]));
        Throws<ArgumentException>("A protrusion needs a reading. (Parameter 'places')", () => Faces.Protrusion([]));
        Throws<ArgumentException>("A step needs two neighbours. (Parameter 'inOrder')", () => Faces.StepToNeighbour([Mm(1)]));
        Throws<ArgumentException>("A spread needs two values or more, the largest above zero. (Parameter 'set')", () => Wear.SetDrop([1]));
        Throws<ArgumentOutOfRangeException>("The pitch must be above zero; it was 0 mm.", () => Wear.ChainElongation(Mm(953.5), 100, Mm(0)));
        Throws<ArgumentOutOfRangeException>("The supplied pressure must be above zero; it was 0 bar.", () => Wear.LeakDown(Pressure.FromBar(0), Pressure.FromBar(0)));
        Throws<ArgumentOutOfRangeException>("The held pressure must not be below zero; it was -1 bar.", () => Wear.LeakDown(Pressure.FromBar(7), Pressure.FromBar(-1)));
        Throws<ArgumentOutOfRangeException>("The supplied pressure less the held must not be below zero; it was -1 bar.", () => Wear.LeakDown(Pressure.FromBar(7), Pressure.FromBar(8)));
    }

    // By hand: two are enough; nothing held is a loss of all; a set whose lowest is nothing has dropped all.
    [Fact]
    public void Derived_figures_are_taken_at_the_edge()
    {
        Assert.Equal(1, Runout.Total([Mm(1), Mm(2)]).Millimetres);
        Assert.Equal(1, Faces.StepToNeighbour([Mm(1), Mm(2)]).Step.Millimetres);
        Assert.Equal((Mm(1), 0.5), Clearances.SetSpread([Mm(1), Mm(2)]));
        Assert.Equal(1, Wear.LeakDown(Pressure.FromBar(7), Pressure.FromBar(0)));
        Assert.Equal(1, Wear.SetDrop([0, 1]));
        Assert.Equal((Mm(0.05), Mm(0)), Faces.Crush(Mm(0.05), Mm(0.05)));
        Assert.Equal(0, Clearances.GuideByRock(Mm(0), Mm(0), Mm(1)).Millimetres);
        Assert.Equal(0, Wear.ChainElongation(Mm(9.525), 1, Mm(9.525)));
        Assert.Equal(12.3, ValveGear.ValveLift(Mm(8.2), 1.5, Mm(0)).Millimetres, 1e-12);
    }

    // The ladder is searched, whatever its order; a nanometre short of what is needed still serves.
    [Fact]
    public void Smallest_step_that_serves_is_taken_from_any_ladder()
    {
        Assert.Equal(0.5, Wear.Oversize(Mm(0.2), Mm(0.05), [Mm(1), Mm(0.25), Mm(0.5), Mm(0.75)])!.Value.Millimetres);
        Assert.Equal(0.25, Wear.Oversize(Mm(0.1), Mm(0.05), [Mm(1), Mm(0.25)])!.Value.Millimetres);
        Assert.Equal(0.25, Wear.Oversize(Mm(0.1000004), Mm(0.05), [Mm(1), Mm(0.25)])!.Value.Millimetres);
        Assert.Equal(1, Wear.Oversize(Mm(0.100001), Mm(0.05), [Mm(1), Mm(0.25)])!.Value.Millimetres);
        Assert.Equal(0.5, Wear.Undersize(Mm(54), Mm(53.6), Mm(0.1), [Mm(0.5), Mm(0.25)])!.Value.Millimetres);
    }

    [Fact]
    public void Lines_of_a_budget_name_their_basis()
    {
        Assert.Equal("coefficient: rectangular, a/√3", Told(BudgetLine.Rectangular("coefficient", 1)));
        Assert.Equal("setting: triangular, a/√6", Told(BudgetLine.Triangular("setting", 1)));
        Assert.Equal("room: swinging, a/√2", Told(BudgetLine.Arcsine("room", 1)));
        Assert.Equal("display: resolution, r/√12", Told(BudgetLine.Resolution("display", 1)));
        Assert.Equal("ring: certificate, U/k with k = 2", Told(BudgetLine.Certificate("ring", 1)));
        Assert.Equal("operator: pooled s, 4 reading(s), s/√n", Told(BudgetLine.Pooled("operator", 0.004, 24, 4)));
        Assert.Equal("repeats: 3 readings, s/√n", Told(BudgetLine.Repeats("repeats", [1, 2, 3])));
        Assert.Equal(0.004, BudgetLine.Pooled("operator", 0.004, 24, 1).StandardUncertainty);
        Assert.Equal(0, new BudgetLine("counted", 0, "").StandardUncertainty);
        Throws<ArgumentOutOfRangeException>("a: an uncertainty is finite and not below zero. (Parameter 'StandardUncertainty')\nActual value was Infinity.", () => _ = new BudgetLine("a", double.PositiveInfinity, ""));

        static string Told(BudgetLine line) => $"{line.Name}: {line.Basis}";
    }

    [Fact]
    public void Correlations_are_taken_to_the_edge()
    {
        BudgetLine[] two = [new("a", 1, ""), new("b", 1, "")];
        Assert.Equal(2, new Budget(0, "mm", two, [new(0, 1, 1)]).StandardUncertainty);
        Assert.Equal(0, new Budget(0, "mm", two, [new(1, 0, -1)]).StandardUncertainty);
        Throws<ArgumentException>("A budget without a line has no uncertainty to state. (Parameter 'lines')", () => _ = new Budget(0, "", []));
        Throws<ArgumentException>("A correlation joins two different lines of the budget; it named -1 and 0. (Parameter 'correlations')", () => _ = new Budget(0, "", two, [new(-1, 0, 1)]));
        Throws<ArgumentException>("A correlation joins two different lines of the budget; it named 0 and -1. (Parameter 'correlations')", () => _ = new Budget(0, "", two, [new(0, -1, 1)]));
        Throws<ArgumentException>("A correlation joins two different lines of the budget; it named 2 and 0. (Parameter 'correlations')", () => _ = new Budget(0, "", two, [new(2, 0, 1)]));
        Throws<ArgumentException>("A correlation lies between -1 and 1; it was NaN. (Parameter 'correlations')", () => _ = new Budget(0, "", two, [new(0, 1, double.NaN)]));
        BudgetLine[] three = [.. two, new("c", 1, "")];
        Throws<ArgumentException>("These correlations cannot hold together: the variance falls below zero. (Parameter 'correlations')", () => _ = new Budget(0, "", three, [new(0, 1, -1), new(0, 2, -1), new(1, 2, -1)]));
    }

    // GUM G.4: the effective freedom is never below 1.
    [Fact]
    public void Freedom_is_never_below_one() => Assert.Equal(1, new Budget(0, "", [new("a", 1, "", 1, 0.5)]).EffectiveDegreesOfFreedom);

    [Fact]
    public void Draws_say_what_they_need()
    {
        Throws<ArgumentOutOfRangeException>("A distribution needs a finite centre and a width not below zero. (Parameter 'scale')\nActual value was -0.5.", () => Distribution.Rectangular(2, 1));
        Throws<ArgumentOutOfRangeException>("A distribution needs a finite centre and a width not below zero. (Parameter 'scale')\nActual value was Infinity.", () => Distribution.Normal(0, double.PositiveInfinity));
        Throws<ArgumentOutOfRangeException>("The flat share lies between 0 and 1. (Parameter 'top')\nActual value was -0.1.", () => Distribution.Trapezoid(0, 1, -0.1));
        Throws<ArgumentOutOfRangeException>("The doubt of the bounds lies between 0 and half their distance. (Parameter 'doubt')\nActual value was 0.5.", () => Distribution.CurvedTrapezoid(0, 1, 0.5));
        Throws<ArgumentOutOfRangeException>("The doubt of the bounds lies between 0 and half their distance. (Parameter 'doubt')\nActual value was -0.1.", () => Distribution.CurvedTrapezoid(0, 1, -0.1));
        Throws<ArgumentOutOfRangeException>("Fewer than 1000 trials say nothing of the ends of an interval. (Parameter 'trials')\nActual value was 999.", () => MonteCarlo.RunSum([Distribution.Normal(0, 1)], [1], 999, 1));
        Throws<ArgumentException>("1 inputs need as many weights; there are 2. (Parameter 'weights')", () => MonteCarlo.RunSum([Distribution.Normal(0, 1)], [1, 1], 1000, 1));
        Throws<ArgumentException>("The sum gave no number for some draws: its inputs reach where it does not hold. (Parameter 'results')", () => MonteCarlo.Run([Distribution.Normal(0, 1)], x => Math.Log(x[0]), 1000, 1));
        Throws<ArgumentOutOfRangeException>("A coverage lies between 0 and 1. (Parameter 'coverage')\nActual value was 1.", () => MonteCarlo.RunSum([Distribution.Normal(0, 1)], [1], 1000, 1).Shortest(1));
        Throws<ArgumentOutOfRangeException>("Process deviation and uncertainty must be above zero. (Parameter 'processDeviation')", () => Conformance.Risks(0, 0, 1, Limits.AtMost(1), Limits.AtMost(1)));
    }

    [Fact]
    public void Draws_are_taken_at_the_edge()
    {
        Assert.Equal(0, Distribution.Rectangular(2, 2).StandardDeviation);
        Assert.Equal(Math.Sqrt(1.0 / 12), Distribution.CurvedTrapezoid(0, 1, 0).StandardDeviation, 1e-12);
        // A single value drawn a thousand times, a block and a bit: every draw is it.
        var run = MonteCarlo.RunSum([Distribution.Rectangular(2, 2), Distribution.Normal(1, 0)], [1, 3], 1025, 1);
        Assert.Equal((5, 5), run.Symmetric(0.95));
        Assert.Equal((5, 5), run.Shortest(0.95));
        Assert.Equal(5, MonteCarlo.Run([Distribution.Rectangular(2, 2), Distribution.Normal(1, 0)], x => x[0] + 3 * x[1], 1025, 1).Mean);
    }

    // JCGM 101, 7.7: of the results 1 to 1000 in order, 95 % are 950 of them; symmetric from the 26th to the 976th by 7.7.2 with q = 950.
    [Fact]
    public void Interval_counts_its_results()
    {
        var run = new MonteCarloResult([.. Enumerable.Range(1, 1000).Reverse().Select(i => (double)i)]);
        Assert.Equal(500.5, run.Mean, 1e-9);
        Assert.Equal((26, 976), run.Symmetric(0.95));
        Assert.Equal(950, run.Shortest(0.95).High - run.Shortest(0.95).Low);
        Assert.Equal((1, 1000), run.Symmetric(0.9999));
        Assert.Equal(0.5, run.ShareWithin(Limits.Between(501, 2000)));
        // Crowded at the upper end: the shortest interval lies there.
        var lopsided = new MonteCarloResult([.. Enumerable.Range(1, 1000).Select(i => Math.Sqrt(i))]);
        Assert.Equal((Math.Sqrt(50), Math.Sqrt(1000)), lopsided.Shortest(0.95));
    }

    // JCGM 101, 7.9.2: two figures of 2.0 are tenths, so half a tenth is allowed; of 0.99, hundredths.
    [Theory]
    [InlineData(2.0, 2, 0.05)]
    [InlineData(0.99, 2, 0.005)]
    [InlineData(10.0, 2, 0.5)]
    [InlineData(2.0, 1, 0.5)]
    public void Tolerance_of_a_validation_is_half_the_last_figure(double u, int figures, double tolerance)
    {
        var run = new MonteCarloResult([.. Enumerable.Range(1, 1000).Select(i => (double)i)]);
        Assert.Equal(tolerance, Validation.Of(new Budget(0, "", [new("all", u, "")]), run, 0.95, figures).Tolerance, 1e-12);
    }

    [Theory]
    [InlineData(0.05, 0.05, true)]
    [InlineData(0.051, 0.05, false)]
    [InlineData(0.05, 0.051, false)]
    public void First_order_serves_up_to_the_tolerance(double low, double high, bool serves) => Assert.Equal(serves, new Validation(low, high, 0.05).FirstOrderServes);

    // xoshiro256++ seeded by SplitMix64 (Blackman and Vigna): SplitMix64 from 0 gives these four words (from memory); the step is the published one, written out again.
    [Fact]
    public void Generator_is_the_published_one()
    {
        var chance = new Xoshiro(0);
        ulong a = 0xe220a8397b1dcdaf, b = 0x6e789e6aa1b965f4, c = 0x06c45d188009454f, d = 0xf88bb8a8724c81ec;
        for (var i = 0; i < 5; i++)
        {
            unchecked
            {
                Assert.Equal(((a + d) << 23 | (a + d) >> 41) + a, chance.Next());
                var t = b << 17;
                (c, d) = (c ^ a, d ^ b);
                (b, a) = (b ^ c, a ^ d);
                c ^= t;
                d = d << 45 | d >> 19;
            }
        }
    }

    [Fact]
    public void Materials_are_named_with_their_source()
    {
        const string handbook = "Callister and Rethwisch, Fundamentals of Materials Science and Engineering, 3rd ed., Table B.6";
        const string memory = "handbook value, from memory";
        Assert.Equal(
            [
                ("steel", "steel, plain carbon", 11.7, 1, handbook), ("steel-alloy", "steel, chromium-molybdenum", 12.3, 1, handbook), ("steel-gauge", "steel of gauges and setting rings", 11.5, 2, "GUM H.1.3.3"),
                ("stainless", "stainless steel, 18/8", 17.2, 1, handbook), ("iron-grey", "grey cast iron", 11.4, 1, handbook), ("iron-ductile", "ductile cast iron", 11.2, 1, handbook),
                ("aluminium-cast", "aluminium casting alloy, 7 % silicon", 21.5, 1, handbook), ("aluminium-wrought", "aluminium, wrought", 23.6, 1, handbook), ("aluminium-piston", "aluminium piston alloy, 12 % silicon", 19.4, 1, memory),
                ("aluminium-high-silicon", "aluminium, 17 % silicon", 18, 1, memory), ("bronze", "bearing bronze", 18, 1, handbook), ("magnesium", "magnesium casting alloy", 26, 1, memory),
            ],
            ExpansionTable.All.Select(m => (m.Id, m.Name, Math.Round(m.PerKelvin * 1e6, 6), Math.Round(m.HalfWidth * 1e6, 6), m.Source)));
    }

    [Fact]
    public void Readings_apart_are_asked_about()
    {
        Assert.Equal("The 2 readings of this place lie 0.04 apart, more than the instrument explains. Read it again?", ReadingCheck.Apart([86, 86.04], 0.01)!.Question);
        Assert.Equal(1, ReadingCheck.Apart([86, 86.04], 0.01)!.Index);
        Assert.Null(ReadingCheck.Apart([86, 86.03], 0.01));
        Assert.Null(ReadingCheck.Apart([86, 86.04], 0));
        Assert.Null(ReadingCheck.Apart([86], 0.01));
        Assert.Equal("A clearance of -0.01 mm: the wrong shell, or the wrong cap?", ReadingCheck.OilClearance(-0.01)!.Question);
    }

    // By hand, each slip one step of ten further than the last; a reading in millimetres in an inch book; two turns, and the frame of an inch micrometer.
    [Theory]
    [InlineData(0.86012, 86, "mm", "0.86012 mm: the decimal mark may have slipped. Was it 86.012 mm?")]
    [InlineData(0.086012, 86, "mm", "0.086012 mm: the decimal mark may have slipped. Was it 86.012 mm?")]
    [InlineData(8601.2, 86, "mm", "8601.2 mm: the decimal mark may have slipped. Was it 86.012 mm?")]
    [InlineData(87.012, 86, "mm", "87.012 mm: a turn of the thimble may have been misread. Was it 86.012 mm?")]
    [InlineData(111.012, 86, "mm", "111.012 mm: another frame or rod may have been used. Was it 86.012 mm?")]
    [InlineData(136.012, 86, "mm", "136.012 mm: another frame or rod may have been used. Was it 86.012 mm?")]
    [InlineData(36.012, 86, "mm", "36.012 mm: one digit may be wrong. Was it 86.012 mm?")]
    [InlineData(54.0512, 2.128, "in", "54.0512 in: it may be in millimetres. Was it 2.128 in?")]
    [InlineData(2.178, 2.128, "in", "2.178 in: a turn of the thimble may have been misread. Was it 2.128 in?")]
    [InlineData(3.1277, 2.128, "in", "3.1277 in: one digit may be wrong. Was it 2.1277 in?")]
    public void Slip_of_any_kind_is_asked_about(double reading, double expected, string unit, string question) =>
        Assert.Equal(question, ReadingCheck.Of(reading, new(expected, unit == "mm" ? 0.15 : 0.004, unit, unit == "in"))!.Question);

    // By hand: four heights have no middle one, one height no taper; a column with one reading has no spread.
    [Fact]
    public void Barrel_needs_a_middle()
    {
        Assert.Null(new SizeTable(new Length?[,] { { Mm(1) }, { Mm(2) }, { Mm(3) }, { Mm(4) } }).BarrelOn(0));
        Assert.Equal(1.5, new SizeTable(new Length?[,] { { Mm(1) }, { Mm(9) }, { Mm(3) }, { Mm(9) }, { Mm(2) } }).BarrelOn(0)!.Value.Millimetres);
        Assert.Null(new SizeTable(new Length?[,] { { Mm(1) }, { null }, { Mm(3) } }).BarrelOn(0));
        Assert.Null(new SizeTable(new Length?[,] { { Mm(1) }, { Mm(2) }, { null } }).BarrelOn(0));
        Assert.Null(new SizeTable(new Length?[,] { { null }, { Mm(2) }, { Mm(3) } }).BarrelOn(0));
        Assert.Equal(-2, new SizeTable(new Length?[,] { { Mm(1) }, { Mm(3) } }).EndTaperOn(0)!.Value.Millimetres);
        Assert.Null(new SizeTable(new Length?[,] { { Mm(1) }, { null } }).TaperOn(0));
    }

    private static void Throws<T>(string message, Action act) where T : Exception => Assert.Equal(message, Assert.Throws<T>(act).Message);

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
