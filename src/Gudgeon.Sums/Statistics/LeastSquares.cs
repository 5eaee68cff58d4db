using MathNet.Numerics.LinearAlgebra;

namespace Gudgeon.Sums.Statistics;

/// <summary>A linear least-squares fit: y ≈ Σ bⱼ·columnⱼ.</summary>
/// <param name="Coefficients">The b, in the order of the columns.</param>
/// <param name="Covariance">Their covariances, from the scatter of the residuals.</param>
/// <param name="ResidualDeviation">s = √(residual sum of squares / (n − m)).</param>
/// <param name="ResidualSumOfSquares">Σ of squared residuals.</param>
/// <param name="DegreesOfFreedom">n − m.</param>
public sealed record LeastSquaresFit(
    IReadOnlyList<double> Coefficients, double[,] Covariance, double ResidualDeviation, double ResidualSumOfSquares, int DegreesOfFreedom)
{
    /// <summary>Standard uncertainty of one coefficient.</summary>
    /// <param name="index">Which.</param>
    /// <returns>The uncertainty.</returns>
    public double StandardError(int index) => Math.Sqrt(Covariance[index, index]);

    /// <summary>Value of the fit at a row of the columns.</summary>
    /// <param name="row">One entry per column.</param>
    /// <returns>The fitted value and its standard uncertainty.</returns>
    public (double Value, double StandardUncertainty) At(params ReadOnlySpan<double> row)
    {
        double value = 0, variance = 0;
        for (var i = 0; i < row.Length; i++)
        {
            value += Coefficients[i] * row[i];
            for (var j = 0; j < row.Length; j++)
                variance += row[i] * Covariance[i, j] * row[j];
        }
        return (value, Math.Sqrt(variance));
    }
}

/// <summary>Linear least squares by QR, refined with residuals of twice the digits (Björck), so that ill-conditioned polynomials keep ten digits.</summary>
public static class LeastSquares
{
    private const int Refinements = 4;

    /// <summary>Fits y by columns.</summary>
    /// <param name="columns">The columns, each as long as <paramref name="y"/>; independent of each other.</param>
    /// <param name="y">The observed values; more than there are columns.</param>
    /// <returns>The fit.</returns>
    /// <remarks>Source: Björck, Numerical Methods for Least Squares Problems (1996), 2.9.3; standard errors as in GUM H.3.</remarks>
    public static LeastSquaresFit Fit(IReadOnlyList<double[]> columns, double[] y)
    {
        int n = y.Length, m = columns.Count;
        if (n <= m)
            throw new ArgumentException($"{m} coefficients need more than {m} observations; there are {n}.", nameof(y));
        if (columns.Any(column => column.Length != n))
            throw new ArgumentException("Each column must be as long as the observations.", nameof(columns));

        // Columns scaled by powers of two: no rounding, and the condition falls.
        var scales = columns.Select(column => Math.ScaleB(1, -Math.ILogB(Math.Max(column.Max(Math.Abs), double.Epsilon)))).ToArray();
        var a = Matrix<double>.Build.Dense(n, m, (i, j) => columns[j][i] * scales[j]);
        var qr = a.QR(MathNet.Numerics.LinearAlgebra.Factorization.QRMethod.Thin);
        for (var j = 0; j < m; j++)
            if (Math.Abs(qr.R[j, j]) < 1e-13 * Math.Sqrt(n))
                throw new ArgumentException($"Column {j} adds nothing that the columns before it do not have.", nameof(columns));

        var transposed = qr.R.Transpose();
        var b = Vector<double>.Build.Dense(y);
        var x = Vector<double>.Build.Dense(m);
        var r = Vector<double>.Build.Dense(n);
        for (var pass = 0; pass <= Refinements; pass++)
        {
            var f = Vector<double>.Build.Dense(n, i => RowResidual(a, b, x, r, i));
            var g = Vector<double>.Build.Dense(m, j => -ColumnDot(a, r, j));
            var h = transposed.Solve(g);
            var d = qr.Q.TransposeThisAndMultiply(f);
            x += qr.R.Solve(d - h);
            r += f - qr.Q * (d - h);
        }

        var squares = new Compensated();
        foreach (var e in r)
            squares.AddProduct(e, e);
        var variance = squares.Value / (n - m);
        var inverse = qr.R.Inverse();
        var covariance = inverse.TransposeAndMultiply(inverse) * variance;
        var unscaled = new double[m, m];
        for (var i = 0; i < m; i++)
            for (var j = 0; j < m; j++)
                unscaled[i, j] = covariance[i, j] * scales[i] * scales[j];
        return new([.. x.Select((value, j) => value * scales[j])], unscaled, Math.Sqrt(variance), squares.Value, n - m);
    }

    /// <summary>Fits a straight line y = b₀ + b₁x.</summary>
    /// <param name="x">Where.</param>
    /// <param name="y">The observed values.</param>
    /// <returns>The fit; coefficient 0 is the value at x = 0, 1 the slope.</returns>
    public static LeastSquaresFit Line(double[] x, double[] y) => Polynomial(x, y, 1);

    /// <summary>Fits a polynomial y = b₀ + b₁x + b₂x² …</summary>
    /// <param name="x">Where.</param>
    /// <param name="y">The observed values.</param>
    /// <param name="degree">1 or more.</param>
    /// <returns>The fit, coefficients from b₀ upwards.</returns>
    public static LeastSquaresFit Polynomial(double[] x, double[] y, int degree) =>
        Fit([.. Enumerable.Range(0, degree + 1).Select(power => Array.ConvertAll(x, v => Power(v, power)))], y);

    private static double Power(double x, int power)
    {
        var result = 1.0;
        for (var i = 0; i < power; i++)
            result *= x;
        return result;
    }

    private static double RowResidual(Matrix<double> a, Vector<double> b, Vector<double> x, Vector<double> r, int row)
    {
        var sum = new Compensated();
        sum.Add(b[row]);
        sum.Add(-r[row]);
        for (var j = 0; j < x.Count; j++)
            sum.AddProduct(-a[row, j], x[j]);
        return sum.Value;
    }

    private static double ColumnDot(Matrix<double> a, Vector<double> r, int column)
    {
        var sum = new Compensated();
        for (var i = 0; i < r.Count; i++)
            sum.AddProduct(a[i, column], r[i]);
        return sum.Value;
    }
}
