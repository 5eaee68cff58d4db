using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Tests.Statistics;

public class QuantilesTests
{
    // GUM Table G.2 to two decimals: some rows seen in public test suites, the rest recomputed with scipy.stats.t.ppf.
    [Theory]
    [InlineData(1, 1.84, 6.31, 12.71, 13.97, 63.66, 235.78)]
    [InlineData(2, 1.32, 2.92, 4.30, 4.53, 9.92, 19.21)]
    [InlineData(3, 1.20, 2.35, 3.18, 3.31, 5.84, 9.22)]
    [InlineData(4, 1.14, 2.13, 2.78, 2.87, 4.60, 6.62)]
    [InlineData(5, 1.11, 2.02, 2.57, 2.65, 4.03, 5.51)]
    [InlineData(10, 1.05, 1.81, 2.23, 2.28, 3.17, 3.96)]
    [InlineData(16, 1.03, 1.75, 2.12, 2.17, 2.92, 3.54)]
    [InlineData(19, 1.03, 1.73, 2.09, 2.14, 2.86, 3.45)]
    [InlineData(20, 1.03, 1.72, 2.09, 2.13, 2.85, 3.42)]
    [InlineData(30, 1.02, 1.70, 2.04, 2.09, 2.75, 3.27)]
    [InlineData(50, 1.01, 1.68, 2.01, 2.05, 2.68, 3.16)]
    [InlineData(100, 1.005, 1.660, 1.984, 2.025, 2.626, 3.077)]
    [InlineData(double.PositiveInfinity, 1.000, 1.645, 1.960, 2.000, 2.576, 3.000)]
    public void CoverageFactor_gumTableG2_agrees(double freedom, double p68, double p90, double p95, double p9545, double p99, double p9973)
    {
        double[] shares = [0.6827, 0.90, 0.95, 0.9545, 0.99, 0.9973];
        double[] printed = [p68, p90, p95, p9545, p99, p9973];
        for (var i = 0; i < shares.Length; i++)
            Assert.Equal(printed[i], Quantiles.CoverageFactor(shares[i], freedom), 0.005);
    }

    // JCGM 106 Table 1 (from memory), recomputed with SciPy to seven places.
    [Theory]
    [InlineData(0.80, 0.8416212)]
    [InlineData(0.90, 1.2815516)]
    [InlineData(0.95, 1.6448536)]
    [InlineData(0.99, 2.3263479)]
    [InlineData(0.999, 3.0902323)]
    public void NormalPoint_jcgm106Table1_agrees(double share, double z)
    {
        Assert.Equal(z, Quantiles.NormalPoint(share), 5e-8);
        Assert.Equal(share, Quantiles.NormalShareBelow(z), 1e-7);
    }

    // R: qt(.975, 16) = 2.119905; scipy.stats.t.ppf(.995, 16) = 2.920782.
    [Fact]
    public void StudentPoint_spotValues_agreeToSixDigits()
    {
        Assert.Equal(2.119905, Quantiles.StudentPoint(0.975, 16), 5e-7);
        Assert.Equal(2.920782, Quantiles.StudentPoint(0.995, 16), 5e-7);
        Assert.Equal(-2.119905, Quantiles.StudentPoint(0.025, 16), 5e-7);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    public void Points_shareOutsideZeroToOne_throw(double share)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Quantiles.NormalPoint(share));
        Assert.Throws<ArgumentOutOfRangeException>(() => Quantiles.StudentPoint(share, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Quantiles.CoverageFactor(share, 5));
    }

    [Fact]
    public void StudentPoint_noFreedom_throws() => Assert.Throws<ArgumentOutOfRangeException>(() => Quantiles.StudentPoint(0.9, 0));
}
