using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Tests.Statistics;

public class AnovaAndOutliersTests
{
    /// <summary>NIST StRD, analysis of variance, certified (seen; recomputed with mpmath). SmLs07 has 13 constant leading digits: a double holds about three more.</summary>
    public static TheoryData<string, double[][], double, double, double, double, double> Certified => new()
    {
        { "SiRstv", Nist.SiRstv, 5.11462616000000e-2, 2.16636560000000e-1, 1.18046237440255, 0.104076068334656, 1e-10 },
        { "AtmWtAg", Nist.AtmWtAg, 3.63834187500000e-9, 1.04951729166667e-8, 15.9467335677930, 1.51048314446410e-5, 1e-9 },
        { "SmLs01", Nist.SmLs01, 1.68, 1.80, 21.0, 0.1, 1e-12 },
        { "SmLs07", Nist.SmLs07, 1.68, 1.80, 21.0, 0.1, 1e-2 },
    };

    [Theory]
    [MemberData(nameof(Certified))]
    public void Anova_nistSets_agree(string set, double[][] groups, double between, double within, double f, double residual, double tolerance)
    {
        Assert.NotEmpty(set);
        var anova = OneWayAnova.Of(groups);
        Assert.Equal(between, anova.BetweenSquares, between * tolerance);
        Assert.Equal(within, anova.WithinSquares, within * tolerance);
        Assert.Equal(f, anova.F, f * tolerance);
        Assert.Equal(residual, anova.ResidualDeviation, residual * tolerance);
        Assert.Equal(between / (between + within), anova.RSquared, tolerance);
    }

    [Fact]
    public void Anova_singleGroup_throws()
    {
        Assert.Throws<ArgumentException>(() => OneWayAnova.Of([[1, 2]]));
        Assert.Throws<ArgumentException>(() => OneWayAnova.Of([[1], [2]]));
        Assert.Throws<ArgumentException>(() => OneWayAnova.Of([[1, 2], []]));
    }

    // NIST/SEMATECH e-Handbook 1.3.5.17.1: G 2.4687646112, critical 2.0316520 one-sided (seen); two-sided 2.1266451 (recomputed with SciPy).
    [Fact]
    public void Grubbs_uranium_findsTheLast()
    {
        var result = Outliers.Grubbs([199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57]);
        Assert.Equal(7, result.Index);
        Assert.Equal(2.4687646112124519, result.Statistic, 1e-9);
        Assert.Equal(2.1266451, result.Critical, 1e-7);
        Assert.True(result.IsOutlier);
        Assert.Equal(2.031652001549944, Outliers.GrubbsCritical(8, 0.05), 1e-9);
    }

    // Recomputed with SciPy stats.t.isf; agrees with ISO 5725-2 Table 5 as far as remembered.
    [Theory]
    [InlineData(3, 0.05, 1.1531)]
    [InlineData(4, 0.05, 1.4625)]
    [InlineData(5, 0.05, 1.6714)]
    [InlineData(10, 0.05, 2.1761)]
    [InlineData(30, 0.05, 2.7451)]
    [InlineData(3, 0.025, 1.1543)]
    [InlineData(8, 0.025, 2.1266)]
    [InlineData(30, 0.025, 2.9085)]
    [InlineData(3, 0.01, 1.1546)]
    [InlineData(10, 0.01, 2.4097)]
    [InlineData(10, 0.005, 2.4821)]
    public void GrubbsCritical_table_agrees(int count, double risk, double critical) =>
        Assert.Equal(critical, Outliers.GrubbsCritical(count, risk), 5e-5);

    // Rosner 1983, NIST/SEMATECH e-Handbook 1.3.5.17.3. Table from memory; recomputed with NumPy and SciPy.
    [Fact]
    public void Rosner_handbookData_findsThree()
    {
        double[] x =
        [
            -0.25, 0.68, 0.94, 1.15, 1.20, 1.26, 1.26, 1.34, 1.38, 1.43, 1.49, 1.49, 1.55, 1.56, 1.58, 1.65, 1.69, 1.70, 1.76, 1.77, 1.81, 1.91, 1.94,
            1.96, 1.99, 2.06, 2.09, 2.10, 2.14, 2.15, 2.23, 2.24, 2.26, 2.35, 2.37, 2.40, 2.47, 2.54, 2.62, 2.64, 2.90, 2.92, 2.92, 2.93, 3.21, 3.26,
            3.30, 3.59, 3.68, 4.30, 4.64, 5.34, 5.42, 6.01,
        ];
        var steps = Outliers.Rosner(x, 10);
        double[] r = [3.119, 2.943, 3.179, 2.810, 2.816, 2.848, 2.279, 2.310, 2.102, 2.067];
        double[] lambda = [3.159, 3.151, 3.144, 3.136, 3.128, 3.120, 3.112, 3.103, 3.094, 3.085];
        for (var i = 0; i < 10; i++)
        {
            Assert.Equal(r[i], steps[i].Statistic, 1e-3);
            Assert.Equal(lambda[i], steps[i].Critical, 1e-3);
        }
        Assert.Equal(3, Outliers.CountOf(steps));
        Assert.Equal([53, 52, 51], steps.Take(3).Select(step => step.Index));
        Assert.Equal(0, Outliers.CountOf(steps.Skip(3).ToList()));
    }

    [Fact]
    public void Grubbs_badInput_throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Outliers.Grubbs([1, 2]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Outliers.GrubbsCritical(5, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Outliers.GrubbsCritical(5, 0.6));
        Assert.Equal("All readings are alike; none is farthest. (Parameter 'readings')", Assert.Throws<ArgumentException>(() => Outliers.Grubbs([2, 2, 2])).Message);
    }
}
