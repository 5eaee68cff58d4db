using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Tests.Metrology;

public class GaugeStudyTests
{
    // AIAG, Measurement Systems Analysis, 4th ed. 2010, chapter III: 10 parts × 3 appraisers × 3 trials. Data seen in a public test suite.
    private static readonly double[,,] s_aiag = Cube(10, 3, 3,
        0.29, 0.41, 0.64, 0.08, 0.25, 0.07, 0.04, -0.11, -0.15, -0.56, -0.68, -0.58, -0.47, -1.22, -0.68, -1.38, -1.13, -0.96,
        1.34, 1.17, 1.27, 1.19, 0.94, 1.34, 0.88, 1.09, 0.67, 0.47, 0.50, 0.64, 0.01, 1.03, 0.20, 0.14, 0.20, 0.11,
        -0.80, -0.92, -0.84, -0.56, -1.20, -1.28, -1.46, -1.07, -1.45, 0.02, -0.11, -0.21, -0.20, 0.22, 0.06, -0.29, -0.67, -0.49,
        0.59, 0.75, 0.66, 0.47, 0.55, 0.83, 0.02, 0.01, 0.21, -0.31, -0.20, -0.17, -0.63, 0.08, -0.34, -0.46, -0.56, -0.49,
        2.26, 1.99, 2.01, 1.80, 2.12, 2.19, 1.77, 1.45, 1.87, -1.36, -1.25, -1.31, -1.68, -1.62, -1.50, -1.49, -1.77, -2.16);

    // Cano, Moguerza and Redchuk, Six Sigma with R (2012): 3 prototypes × 3 operators × 3 runs. Data and results seen in the package.
    private static readonly double[,,] s_thickness = Cube(3, 3, 3,
        1.27, 0.90, 1.09, 1.34, 1.32, 1.27, 1.09, 1.26, 1.09, 1.12, 1.09, 1.15, 1.24, 1.00, 1.14, 1.48, 1.15, 1.15,
        1.73, 1.28, 1.77, 1.64, 1.65, 1.77, 1.64, 1.44, 1.68);

    // EV 0.20188, AV 0.22963, GRR 0.30575, PV 1.10456, TV 1.14610, ndc 5 (print from memory, rounded inputs: 1e-4); recomputed with NumPy to six places.
    [Fact]
    public void ByRange_aiag_agrees()
    {
        var study = GaugeStudy.ByRange(s_aiag);
        Assert.Equal(0.201857, Math.Sqrt(study.Repeatability), 1e-6);
        Assert.Equal(0.229667, Math.Sqrt(study.Reproducibility), 1e-6);
        Assert.Equal(0.305766, Math.Sqrt(study.Gauge), 1e-6);
        Assert.Equal(1.104596, Math.Sqrt(study.Part), 1e-6);
        Assert.Equal(1.146135, Math.Sqrt(study.Total), 1e-6);
        Assert.Equal(0.2668, study.GaugeShare, 5e-5);
        Assert.Equal(5, study.DistinctCategories);
    }

    // Asserted in the same public suite (3.1673, 88.3619, 0.3590, 2.7589, 94.6471, 0.434, 492.291, 79.406); recomputed with NumPy.
    [Fact]
    public void Anova_aiag_tableAgrees()
    {
        var table = GaugeAnova.Of(s_aiag);
        Assert.Equal(3.167262, table.OperatorSquares, 1e-6);
        Assert.Equal(88.361934, table.PartSquares, 1e-6);
        Assert.Equal(0.358982, table.InteractionSquares, 1e-6);
        Assert.Equal(2.758933, table.RepeatSquares, 1e-6);
        Assert.Equal(94.647112, table.TotalSquares, 1e-6);
        Assert.Equal((9, 2, 18, 60), (table.PartFreedom, table.OperatorFreedom, table.InteractionFreedom, table.RepeatFreedom));
        Assert.Equal(0.433721, table.InteractionF, 1e-6);
        Assert.Equal(0.9741, table.InteractionChance, 1e-4);
        Assert.Equal(492.2914, table.PartF, 1e-4);
        Assert.Equal(79.4060, table.OperatorF, 1e-4);
    }

    // Interaction pooled (seen and recomputed): 0.0399733, 0.0514553, 0.0914285, 1.0864466; print EV 0.199933, AV 0.226838, GRR 0.302373; ndc 4.
    [Fact]
    public void ByAnova_aiag_pooled()
    {
        var (study, _) = GaugeStudy.ByAnova(s_aiag);
        Assert.Equal(0.0399733, study.Repeatability, 1e-7);
        Assert.Equal(0.0514553, study.Reproducibility, 1e-7);
        Assert.Equal(0.0914285, study.Gauge, 1e-7);
        Assert.Equal(1.0864466, study.Part, 1e-7);
        Assert.Equal(0.2786, study.GaugeShare, 5e-5);
        Assert.Equal(4, study.DistinctCategories);
    }

    // Reduced model (seen): repeatability 0.0213, reproducibility 0.0006, part 0.0643; deviations to eight places; F interaction 0.974, p 0.44619.
    [Fact]
    public void ByAnova_secondSet_agrees()
    {
        var (study, table) = GaugeStudy.ByAnova(s_thickness);
        Assert.Equal(1.2007, table.PartSquares, 5e-5);
        Assert.Equal(0.0529, table.OperatorSquares, 5e-5);
        Assert.Equal(0.0834, table.InteractionSquares, 5e-5);
        Assert.Equal(0.3854, table.RepeatSquares, 5e-5);
        Assert.Equal(28.797, table.PartF, 5e-4);
        Assert.Equal(1.270, table.OperatorF, 5e-4);
        Assert.Equal(0.974, table.InteractionF, 5e-4);
        Assert.Equal(0.44619, table.InteractionChance, 5e-6);
        Assert.Equal(0.14792656, Math.Sqrt(study.Gauge), 5e-9);
        Assert.Equal(0.14597518, Math.Sqrt(study.Repeatability), 5e-9);
        Assert.Equal(0.02394813, Math.Sqrt(study.Reproducibility), 5e-9);
        Assert.Equal(0.25365123, Math.Sqrt(study.Part), 5e-9);
        Assert.Equal(2, study.DistinctCategories);
        Assert.Equal(8.8756, study.ShareOfTolerance(0.1), 5e-5);
    }

    // Two operators who disagree by part beyond doubt: interaction is kept. Worked by hand: MS interaction 0.5, repeats 0.0005.
    [Fact]
    public void ByAnova_strongInteraction_isKept()
    {
        var crossed = Cube(2, 2, 2, 1.00, 1.03, 2.00, 2.03, 2.00, 2.03, 1.00, 1.03);
        var (study, table) = GaugeStudy.ByAnova(crossed);
        Assert.Equal(2.0, table.InteractionSquares, 1e-9);
        Assert.Equal(0.0018, table.RepeatSquares, 1e-9);
        Assert.Equal(0.00045, study.Repeatability, 1e-9);
        Assert.Equal((2.0 - 0.00045) / 2, study.Reproducibility, 1e-9);
        Assert.Equal(0, study.Part);
    }

    // GUM H.5: daily means and deviations give F = 2.25 against F(0.95; 9, 40) = 2.12 (seen in a public test suite, tolerance 0.02).
    [Fact]
    public void OneWay_gumH5_betweenDays()
    {
        double[] means = [172, 116, 13, 144, 106, 31, 60, 125, 163, 41];
        double[] s = [60, 77, 111, 101, 67, 93, 80, 73, 88, 86];
        var between = 5 * Samples.SumOfSquares(means) / 9;
        var within = Samples.Pooled([.. s.Select(d => (5, d))]).Deviation;
        Assert.Equal(57, Samples.StandardDeviation(means), 0.5);
        Assert.Equal(85, within, 0.5);
        Assert.Equal(2.25, between / (within * within), 0.02);
        Assert.Equal(0.05, Quantiles.FisherShareAbove(2.12, 9, 40), 0.001);
    }

    [Fact]
    public void Study_badShape_saysWhatWasMet()
    {
        Assert.StartsWith("A gauge study needs two parts, two operators and two trials; there are 1, 2 and 2.",
            Assert.Throws<ArgumentException>(() => GaugeStudy.ByAnova(new double[1, 2, 2])).Message);
        Assert.StartsWith("The range method has factors for 10 parts, 3 operators and 3 trials at most; there are 11, 2 and 2.",
            Assert.Throws<ArgumentException>(() => GaugeStudy.ByRange(new double[11, 2, 2])).Message);
        Assert.Throws<ArgumentException>(() => GaugeStudy.ByRange(new double[2, 4, 2]));
        Assert.Throws<ArgumentException>(() => GaugeStudy.ByRange(new double[2, 2, 4]));
        Assert.Throws<ArgumentOutOfRangeException>(() => GaugeStudy.ByRange(s_aiag).ShareOfTolerance(0));
    }

    private static double[,,] Cube(int parts, int operators, int trials, params double[] flat)
    {
        var cube = new double[parts, operators, trials];
        for (var i = 0; i < flat.Length; i++)
            cube[i / (operators * trials), i / trials % operators, i % trials] = flat[i];
        return cube;
    }
}
