using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Tests.Statistics;

/// <summary>NIST StRD linear regression, certified to 15 digits (seen; recomputed with mpmath), held to ten digits here.</summary>
public class LeastSquaresTests
{
    [Fact]
    public void Line_norris_agreesToTenDigits() => Check(
        LeastSquares.Line(Nist.NorrisX, Nist.NorrisY), [-0.262323073774029, 1.00211681802045],
        [0.232818234301152, 0.429796848199937e-3], 0.884796396144373);

    [Fact]
    public void ThroughZero_noInt1_agreesToTenDigits() => Check(
        LeastSquares.Fit([[60, 61, 62, 63, 64, 65, 66, 67, 68, 69, 70]], [130, 131, 132, 133, 134, 135, 136, 137, 138, 139, 140]),
        [2.07438016528926], [0.0165289256198347], 3.56753034006338);

    [Fact]
    public void ThroughZero_noInt2_agreesToTenDigits() => Check(
        LeastSquares.Fit([[4, 5, 6]], [3, 4, 4]), [0.727272727272727], [0.0420827318078432], 0.369274472937998);

    [Fact]
    public void Quadratic_pontius_agreesToTenDigits()
    {
        var x = Enumerable.Range(0, 40).Select(i => 150_000.0 * (i % 20 + 1)).ToArray();
        Check(LeastSquares.Polynomial(x, Nist.PontiusY, 2), [0.673565789473684e-3, 0.732059160401003e-6, -0.316081871345029e-14],
            [0.107938612033077e-3, 0.157817399981659e-9, 0.486652849992036e-16], 0.205177424076185e-3);
    }

    [Fact]
    public void Quintic_wampler1_findsAllOnes()
    {
        var x = Enumerable.Range(0, 21).Select(i => (double)i).ToArray();
        var fit = LeastSquares.Polynomial(x, Array.ConvertAll(x, v => 1 + v * (1 + v * (1 + v * (1 + v * (1 + v))))), 5);
        Assert.All(fit.Coefficients, b => Assert.Equal(1, b, 1e-10));
        Assert.Equal(0, fit.ResidualDeviation, 1e-9);
    }

    [Fact]
    public void Quintic_wampler4_agreesToTenDigits()
    {
        var x = Enumerable.Range(0, 21).Select(i => (double)i).ToArray();
        Check(LeastSquares.Polynomial(x, Nist.Wampler4Y, 5), [1, 1, 1, 1, 1, 1],
            [215232.624678170, 236355.173469681, 77934.3524331583, 10147.5507550350, 564.566512170752, 11.2324854679312], 236014.502379268);
    }

    // GUM H.3: thermometer calibration. Published figures from memory; recomputed with NumPy.
    [Fact]
    public void Line_gumH3_agrees()
    {
        double[] t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511];
        double[] b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160];
        var fit = LeastSquares.Line(Array.ConvertAll(t, v => v - 20), b);
        Assert.Equal(-0.17120379, fit.Coefficients[0], 1e-8);
        Assert.Equal(0.00287760, fit.StandardError(0), 1e-8);
        Assert.Equal(0.00218270, fit.Coefficients[1], 1e-8);
        Assert.Equal(0.00066794, fit.StandardError(1), 1e-8);
        Assert.Equal(-0.93043, fit.Covariance[0, 1] / fit.StandardError(0) / fit.StandardError(1), 1e-5);
        Assert.Equal(0.00349756, fit.ResidualDeviation, 1e-8);
        var (value, u) = fit.At(1, 10);
        Assert.Equal(-0.14937681, value, 1e-8);
        Assert.Equal(0.00413860, u, 1e-8);
    }

    [Fact]
    public void Fit_badShape_throws()
    {
        Assert.Equal("2 coefficients need more than 2 observations; there are 2. (Parameter 'y')",
            Assert.Throws<ArgumentException>(() => LeastSquares.Line([1, 2], [1, 2])).Message);
        Assert.Equal("Each column must be as long as the observations. (Parameter 'columns')",
            Assert.Throws<ArgumentException>(() => LeastSquares.Fit([[1, 2]], [1, 2, 3])).Message);
        Assert.Equal("Column 1 adds nothing that the columns before it do not have. (Parameter 'columns')",
            Assert.Throws<ArgumentException>(() => LeastSquares.Line([2, 2, 2], [1, 2, 3])).Message);
    }

    private static void Check(LeastSquaresFit fit, double[] estimates, double[] errors, double residual)
    {
        for (var i = 0; i < estimates.Length; i++)
        {
            Assert.Equal(estimates[i], fit.Coefficients[i], Math.Abs(estimates[i]) * 1e-10);
            Assert.Equal(errors[i], fit.StandardError(i), errors[i] * 1e-10);
        }
        Assert.Equal(residual, fit.ResidualDeviation, residual * 1e-10);
    }
}
