using Gudgeon.Sums.Metrology;

namespace Gudgeon.Sums.Tests.Metrology;

/// <summary>
/// Tolerances are written for a million trials, five standard errors or wider. Fewer are drawn, so that the tests stay quick: a standard error grows as one over
/// the root of the number of trials (that of the shortest interval's ends more slowly), and the tolerances with it. The seeds are fixed, so nothing here is a matter of luck.
/// </summary>
public class MonteCarloTests
{
    private const int Trials = 100_000;
    private static readonly double s_wider = Math.Sqrt(1_000_000.0 / Trials);
    private static readonly double[] s_ones = [1, 1, 1, 1];

    // JCGM 101 9.2.2 (seen): u 2.00, 95 % ±3.92.
    [Fact]
    public void Additive_fourNormals_jcgm101()
    {
        var run = MonteCarlo.RunSum(Enumerable.Repeat(Distribution.Normal(0, 1), 4).ToArray(), s_ones, Trials, 1);
        Assert.Equal(0, run.Mean, s_wider * 0.01);
        Assert.Equal(2, run.StandardUncertainty, s_wider * 0.007);
        Near(-3.92, 3.92, run.Symmetric(0.95), 0.03);
        Near(-3.92, 3.92, run.Shortest(0.95), 0.06);
    }

    // JCGM 101 9.2.3 (seen): exact ±3.87929 by numerical convolution (recomputed with SciPy), where first order says ±3.92.
    [Fact]
    public void Additive_fourRectangles_jcgm101()
    {
        var rectangle = Distribution.Rectangular(-Math.Sqrt(3), Math.Sqrt(3));
        var run = MonteCarlo.RunSum([rectangle, rectangle, rectangle, rectangle], s_ones, Trials, 2);
        Assert.Equal(2, run.StandardUncertainty, s_wider * 0.007);
        Near(-3.87929, 3.87929, run.Symmetric(0.95), 0.015);
    }

    // JCGM 101 9.2.4 (from memory; recomputed by convolution): ±17.016, u 10.1489; first order ±19.892.
    [Fact]
    public void Additive_oneWideRectangle_firstOrderDoesNotServe()
    {
        var one = Distribution.Rectangular(-Math.Sqrt(3), Math.Sqrt(3));
        var run = MonteCarlo.RunSum([one, one, one, Distribution.Rectangular(-10 * Math.Sqrt(3), 10 * Math.Sqrt(3))], s_ones, Trials, 3);
        Assert.Equal(10.1489, run.StandardUncertainty, s_wider * 0.03);
        Near(-17.016, 17.016, run.Symmetric(0.95), 0.03);
        var budget = new Budget(0, "", [new("1", 1, ""), new("2", 1, ""), new("3", 1, ""), new("4", 10, "")]);
        Assert.Equal(19.892, budget.ExpandedFor(0.95).Expanded, 0.001);
        var validation = Validation.Of(budget, run);
        Assert.False(validation.FirstOrderServes);
        Assert.Equal(0.5, validation.Tolerance, 1e-12);
    }

    [Fact]
    public void Validation_normalSum_firstOrderServes()
    {
        var run = MonteCarlo.RunSum(Enumerable.Repeat(Distribution.Normal(0, 1), 4).ToArray(), s_ones, Trials, 4);
        Assert.True(Validation.Of(new Budget(0, "", [new("all", 2, "")]), run).FirstOrderServes);
    }

    // JCGM 101 9.3 mass calibration (print from memory; recomputed with NumPy, 2e7 trials): 1.23399, 0.07549, shortest 95 % [1.0839, 1.3831]; first order 0.053852.
    [Fact]
    public void Mass_jcgm101_shortestInterval()
    {
        Model mass = x => (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000;
        var run = MonteCarlo.Run(
            [Distribution.Normal(100_000, 0.050), Distribution.Normal(1.234, 0.020), Distribution.Rectangular(1.10, 1.30), Distribution.Rectangular(7000, 9000), Distribution.Rectangular(7950, 8050)],
            mass, Trials, 5);
        Assert.Equal(1.23399, run.Mean, s_wider * 5e-4);
        Assert.Equal(0.07549, run.StandardUncertainty, s_wider * 3e-4);
        Near(1.0839, 1.3831, run.Shortest(0.95), 0.003);
        var first = FirstOrder.Of(mass, "mg",
            [
                new(100_000, new("weight", 0.050, "")), new(1.234, new("added", 0.020, "")), new(1.2, BudgetLine.Rectangular("air", 0.1)),
                new(8000, BudgetLine.Rectangular("density W", 1000)), new(8000, BudgetLine.Rectangular("density R", 50)),
            ]);
        Assert.Equal(0.053852, first.StandardUncertainty, 1e-6);
        Assert.False(Validation.Of(first, run).FirstOrderServes);
    }

    // JCGM 101 9.5 gauge block (print 838, 36, [745, 932] from memory; recomputed with NumPy 1e7 trials: 838.0, 35.82, [744.6, 931.8], 95 % [767.9, 908.6]).
    [Fact]
    public void GaugeBlock_jcgm101_allShapesOfDistribution()
    {
        var run = MonteCarlo.Run(
            [
                Distribution.Student(50_000_623, 25, 18), Distribution.Student(215, 6, 24), Distribution.Student(0, 4, 5), Distribution.Student(0, 7, 8),
                Distribution.Rectangular(9.5e-6, 13.5e-6), Distribution.Normal(-0.1, 0.2), Distribution.Arcsine(-0.5, 0.5),
                Distribution.CurvedTrapezoid(-1.0e-6, 1.0e-6, 0.1e-6), Distribution.CurvedTrapezoid(-0.050, 0.050, 0.025),
            ],
            x => x[0] + x[1] + x[2] + x[3] - x[0] * (x[7] * (x[5] + x[6]) + x[4] * x[8]) - 50_000_000, Trials, 6);
        Assert.Equal(838.0, run.Mean, s_wider * 0.2);
        Assert.Equal(35.82, run.StandardUncertainty, s_wider * 0.15);
        Near(744.6, 931.8, run.Shortest(0.99), 1);
        Near(767.9, 908.6, run.Shortest(0.95), 1);
    }

    // NPL Report DEM-ES-011 9.2 (seen; recomputed analytically): mean −0.6649003, sd 0.6062267, shortest 95 % [−1.895, 0.095].
    [Fact]
    public void Logarithm_nplReport_shortestIsLopsided()
    {
        var run = MonteCarlo.Run([Distribution.Rectangular(0.1, 1.1)], x => Math.Log(x[0]), Trials, 7);
        Assert.Equal(-0.6649003, run.Mean, s_wider * 0.003);
        Assert.Equal(0.6062267, run.StandardUncertainty, s_wider * 0.003);
        Near(-1.895, 0.095, run.Shortest(0.95), 0.005);
    }

    // Tolerance stack of a gap: normal, σ = t/3: P(w<0) = Φ(−2.5) = 0.00620967, P(w<0.003) = 0.15865525; rectangular 0.0806 and 0.3028 (recomputed).
    [Theory]
    [InlineData(true, 0.00620967, 0.15865525)]
    [InlineData(false, 0.0806, 0.3028)]
    public void Stack_shigleyGap_sharesBelow(bool normal, double belowZero, double belowThree)
    {
        (double Size, double Tolerance)[] parts = [(1.750, 0.003), (0.750, 0.001), (0.120, 0.005), (0.875, 0.001)];
        var inputs = parts.Select(p => normal ? Distribution.Normal(p.Size, p.Tolerance / 3) : Distribution.Rectangular(p.Size - p.Tolerance, p.Size + p.Tolerance)).ToArray();
        var run = MonteCarlo.RunSum(inputs, [1, -1, -1, -1], Trials, 8);
        Assert.Equal(belowZero, 1 - run.ShareWithin(Limits.AtLeast(0)), s_wider * 0.002);
        Assert.Equal(belowThree, 1 - run.ShareWithin(Limits.AtLeast(0.003)), s_wider * 0.003);
    }

    // Clutch of Chase, Gao and Magleby: published mean 7.014953°, σ 0.219668° (from memory); recomputed with NumPy 1e8 trials: 7.014925, 0.219682.
    [Fact]
    public void Clutch_chase_meanAndSpread()
    {
        var run = MonteCarlo.Run(
            [Distribution.Normal(27.645, 0.0166667), Distribution.Normal(11.430, 0.0033333), Distribution.Normal(50.800, 0.0041667)],
            x => 180 / Math.PI * Math.Acos((x[0] + x[1]) / (x[2] - x[1])), Trials, 9);
        Assert.Equal(7.014925, run.Mean, s_wider * 1.2e-3);
        Assert.Equal(0.219682, run.StandardUncertainty, s_wider * 1e-3);
    }

    /// <summary>Each shape against its own closed forms of mean and deviation (JCGM 101, 6.4).</summary>
    public static TheoryData<Distribution, double, double> Shapes => new()
    {
        { Distribution.Normal(5, 2), 5, 2 },
        { Distribution.Student(5, 2, 6), 5, 2 * Math.Sqrt(1.5) },
        { Distribution.Rectangular(2, 8), 5, Math.Sqrt(3) },
        { Distribution.Triangular(2, 8), 5, 3 / Math.Sqrt(6) },
        { Distribution.Trapezoid(2, 8, 0.5), 5, 3 * Math.Sqrt(1.25 / 6) },
        { Distribution.Trapezoid(2, 8, 1), 5, Math.Sqrt(3) },
        { Distribution.Arcsine(2, 8), 5, 3 / Math.Sqrt(2) },
        { Distribution.CurvedTrapezoid(2, 8, 1), 5, Math.Sqrt(9 / 3.0 + 1 / 9.0) },
    };

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Distribution_drawsAgreeWithItsMoments(Distribution shape, double mean, double deviation)
    {
        Assert.Equal(mean, shape.Mean, 1e-12);
        Assert.Equal(deviation, shape.StandardDeviation, 1e-12);
        var run = MonteCarlo.RunSum([shape], [1], Trials, 10);
        Assert.Equal(mean, run.Mean, s_wider * 6 * deviation / 1000);
        Assert.Equal(deviation, run.StandardUncertainty, s_wider * 0.005 * deviation);
    }

    // Shares beyond 1, 2, 3 and 4 deviations (both sides): 0.3173105, 0.0455003, 0.0026998, 6.334e-5; the last lies in the tail of the ziggurat.
    [Fact]
    public void Normal_draws_haveTheRightTails()
    {
        const int Many = 2_000_000;
        var run = MonteCarlo.RunSum([Distribution.Normal(0, 1)], [1], Many, 11);
        foreach (var (z, share) in ((double, double)[])[(1, 0.3173105), (2, 0.0455003), (3, 0.0026998), (4, 6.334e-5)])
        {
            Assert.Equal(share, 1 - run.ShareWithin(Limits.Between(-z, z)), 5 * Math.Sqrt(share / Many));
            Assert.Equal(share / 2, 1 - run.ShareWithin(Limits.AtMost(z)), 5 * Math.Sqrt(share / 2 / Many));
        }
    }

    [Fact]
    public void Student_fewDegrees_hasNoFiniteDeviation() =>
        Assert.Equal(double.PositiveInfinity, Distribution.Student(0, 1, 2).StandardDeviation);

    [Fact]
    public void Run_sameSeed_repeatsToTheBit()
    {
        Distribution[] inputs = [Distribution.Student(0, 1, 0.8), Distribution.Arcsine(-1, 1)];
        var first = MonteCarlo.RunSum(inputs, [1, 2], 5000, 42);
        var again = MonteCarlo.RunSum(inputs, [1, 2], 5000, 42);
        var other = MonteCarlo.RunSum(inputs, [1, 2], 5000, 43);
        Assert.Equal(first.Symmetric(0.9), again.Symmetric(0.9));
        Assert.NotEqual(first.Symmetric(0.9), other.Symmetric(0.9));
    }

    [Fact]
    public void Run_badInput_throws()
    {
        Distribution[] one = [Distribution.Normal(0, 1)];
        Assert.StartsWith("Fewer than 1000 trials say nothing", Assert.Throws<ArgumentOutOfRangeException>(() => MonteCarlo.RunSum(one, [1], 999, 1)).Message);
        Assert.StartsWith("1 inputs need as many weights; there are 2.", Assert.Throws<ArgumentException>(() => MonteCarlo.RunSum(one, [1, 1], 1000, 1)).Message);
        Assert.StartsWith("The sum gave no number for some draws", Assert.Throws<ArgumentException>(() => MonteCarlo.Run(one, x => Math.Log(x[0]), 1000, 1)).Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => Distribution.Rectangular(2, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Distribution.Normal(double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Distribution.Trapezoid(0, 1, 1.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Distribution.CurvedTrapezoid(0, 1, 0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Distribution.Student(0, 1, 0));
        var run = MonteCarlo.RunSum(one, [1], 1000, 1);
        Assert.Throws<ArgumentOutOfRangeException>(() => run.Shortest(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => run.Symmetric(0));
    }

    // By hand, eight results: mean 40/8, squares 32, u √(32/7); half of them lie within four steps of the sorted row: from the third to the seventh, and closest together from the second to the sixth.
    [Fact]
    public void Result_ofEightDraws_byHand()
    {
        var run = new MonteCarloResult([9, 2, 4, 7, 4, 5, 4, 5]);
        Assert.Equal(5, run.Mean, 1e-12);
        Assert.Equal(Math.Sqrt(32.0 / 7), run.StandardUncertainty, 1e-12);
        Assert.Equal((4.0, 7.0), run.Symmetric(0.5));
        Assert.Equal((4.0, 5.0), run.Shortest(0.5));
        Assert.Equal(6.0 / 8, run.ShareWithin(Limits.Between(4, 7)));
    }

    // By hand: 12 ± 1.959964 of first order against 0.25 and 9.76, the ends of the middle 951 steps of a thousand; half a step in the second figure of u = 1.0 is 0.05.
    [Fact]
    public void Validation_ofAValue_comparesEndWithEnd()
    {
        var validation = Validation.Of(new Budget(12, "mm", [new("all", 1, "")]), new MonteCarloResult([.. Enumerable.Range(0, 1001).Select(i => i / 100.0)]));
        Assert.Equal(12 - 1.959964 - 0.25, validation.LowDifference, 1e-5);
        Assert.Equal(12 + 1.959964 - 9.76, validation.HighDifference, 1e-5);
        Assert.Equal(0.05, validation.Tolerance, 1e-12);
        Assert.False(validation.FirstOrderServes);
    }

    private static void Near(double low, double high, (double Low, double High) actual, double tolerance)
    {
        Assert.Equal(low, actual.Low, s_wider * tolerance);
        Assert.Equal(high, actual.High, s_wider * tolerance);
    }
}
