using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Tests.Statistics;

public class SamplesTests
{
    private static double[] Alternating(double first, double low, double high) =>
        [first, .. Enumerable.Repeat(new[] { low, high }, 500).SelectMany(pair => pair)];

    /// <summary>NIST StRD, univariate summary statistics, certified to 15 digits (seen; recomputed with mpmath).</summary>
    public static TheoryData<string, double[], double, double, double> Certified => new()
    {
        { "Lew", Nist.Lew, -177.435000000000, 277.332168044316, -0.307304800605679 },
        { "Lottery", Nist.Lottery, 518.958715596330, 291.699727470969, -0.120948622967393 },
        { "Mavro", Nist.Mavro, 2.00185600000000, 0.000429123454003053, 0.937989183438248 },
        { "Michelso", Nist.Michelso, 299.852400000000, 0.0790105478190518, 0.535199668621283 },
        { "NumAcc1", [10000001, 10000003, 10000002], 10000002, 1, -0.5 },
        { "NumAcc2", Alternating(1.2, 1.1, 1.3), 1.2, 0.1, -0.999 },
    };

    [Theory]
    [MemberData(nameof(Certified))]
    public void Samples_nistSets_agreeToTenDigits(string set, double[] y, double mean, double deviation, double autocorrelation)
    {
        Assert.NotEmpty(set);
        Relative(mean, Samples.Mean(y), 1e-14);
        Relative(deviation, Samples.StandardDeviation(y), 1e-11);
        Relative(autocorrelation, Samples.LagOneAutocorrelation(y), 1e-10);
    }

    // The decimal inputs cannot be held exactly in binary: NIST asks for what the format can give.
    // NumAcc3 and NumAcc4, recomputed with NumPy in two passes: 0.10000000003492461 and 0.10000000055879354.
    [Theory]
    [InlineData(1000000.2, 1000000.1, 1000000.3, 1e-9)]
    [InlineData(10000000.2, 10000000.1, 10000000.3, 1e-8)]
    public void Samples_nistHardSets_agreeToTheFormat(double first, double low, double high, double tolerance)
    {
        var y = Alternating(first, low, high);
        Relative(first, Samples.Mean(y), 1e-15);
        Assert.Equal(0.1, Samples.StandardDeviation(y), tolerance);
        Assert.Equal(-0.999, Samples.LagOneAutocorrelation(y), 10 * tolerance);
    }

    // GUM 4.4.3 Table 1: seen in a public test suite; recomputed with NumPy.
    [Fact]
    public void Samples_gumTemperatures_agree()
    {
        double[] t =
        [
            96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07,
            100.33, 100.42, 100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72,
        ];
        Assert.Equal(100.145, Samples.Mean(t), 1e-9);
        Assert.Equal(1.488844, Samples.StandardDeviation(t), 1e-6);
        Assert.Equal(0.332916, Samples.StandardUncertaintyOfMean(t), 1e-6);
    }

    // d₂ by integrating the distribution of the range (recomputed with SciPy): 1.128 … 3.078.
    [Theory]
    [InlineData(2, 1.128)]
    [InlineData(3, 1.693)]
    [InlineData(4, 2.059)]
    [InlineData(5, 2.326)]
    [InlineData(6, 2.534)]
    [InlineData(7, 2.704)]
    [InlineData(8, 2.847)]
    [InlineData(9, 2.970)]
    [InlineData(10, 3.078)]
    public void FromRange_dividesByTheFactorOfItsNumber(int count, double factor)
    {
        var readings = new double[count];
        readings[^1] = factor;
        Assert.Equal(1, Samples.StandardDeviationFromRange(readings), 1e-12);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(11)]
    public void FromRange_otherNumbers_throw(int count) =>
        Assert.Equal($"The range serves for 2 to 10 readings, not for {count}. (Parameter 'readings')",
            Assert.Throws<ArgumentException>(() => Samples.StandardDeviationFromRange(new double[count])).Message);

    // (n 5, s 2) and (n 5, s 4): √10. Seen in a public test suite.
    [Fact]
    public void Pooled_twoGroups_agree()
    {
        var (deviation, freedom) = Samples.Pooled([(5, 2), (5, 4)]);
        Assert.Equal(3.16227766, deviation, 1e-8);
        Assert.Equal(8, freedom);
    }

    [Fact]
    public void Samples_tooFewReadings_throw()
    {
        Assert.Equal("At least 1 reading(s) are needed; there are 0.", Assert.Throws<ArgumentException>(() => Samples.Mean([])).Message);
        Assert.Equal("At least 2 reading(s) are needed; there are 1.", Assert.Throws<ArgumentException>(() => Samples.StandardDeviation([1])).Message);
        Assert.Throws<ArgumentException>(() => Samples.Range([]));
        Assert.Throws<ArgumentException>(() => Samples.Pooled([]));
        Assert.Throws<ArgumentException>(() => Samples.Pooled([(1, 0.1)]));
        Assert.Throws<ArgumentException>(() => Samples.LagOneAutocorrelation([2, 2, 2]));
    }

    private static void Relative(double expected, double actual, double tolerance) =>
        Assert.Equal(expected, actual, Math.Abs(expected) * tolerance);
}
