using Gudgeon.Sums.Statistics;
using MathNet.Numerics.LinearAlgebra;

namespace Gudgeon.Sums.Shapes;

/// <summary>
/// The exact minimum zone of a linear model: coefficients b and half-width e with |y − Σ bⱼ·columnⱼ| ≤ e and e as small as can be.
/// Solved as a linear programme by the simplex method on its dual, whose basis is the few points that touch the zone.
/// </summary>
internal static class Chebyshev
{
    // Price of the points that do not exist, with which the first basis is filled; columns and residuals are scaled to 1.
    private const double Artificial = 1e6;
    private const double Tolerance = 1e-11;

    // Far more steps than any shape was seen to need.
    private const int Patience = 500;

    /// <summary>Fits the model.</summary>
    /// <param name="columns">The model's columns, each as long as <paramref name="y"/>.</param>
    /// <param name="y">The heights.</param>
    /// <param name="patience">Steps after which the exchange follows Bland's rule, which is slow and cannot go in circles.</param>
    internal static (double[] Coefficients, double HalfWidth) Fit(IReadOnlyList<double[]> columns, double[] y, int patience = Patience)
    {
        var start = LeastSquares.Fit(columns, y).Coefficients;
        int n = y.Length, m = columns.Count;
        var scales = columns.Select(column => column.Max(Math.Abs)).ToArray();
        var residuals = new double[n];
        for (var i = 0; i < n; i++)
        {
            residuals[i] = y[i];
            for (var j = 0; j < m; j++)
                residuals[i] -= start[j] * columns[j][i];
        }
        var size = residuals.Max(Math.Abs);
        if (size <= 1e-15 * y.Max(Math.Abs))
            return ([.. start], size);
        var rows = Enumerable.Range(0, n).Select(i => Enumerable.Range(0, m).Select(j => columns[j][i] / scales[j]).ToArray()).ToArray();
        var prices = Simplex(rows, Array.ConvertAll(residuals, r => r / size), patience);
        return ([.. start.Select((b, j) => b + prices[j] * size / scales[j])], prices[m] * size);
    }

    // Basis entries: a point's index with its side, or -1 - k for the artificial of constraint k.
    private static double[] Simplex(double[][] rows, double[] y, int patience)
    {
        int n = rows.Length, m = rows[0].Length;
        var basis = Enumerable.Range(0, m + 1).Select(k => (Index: -1 - k, Side: 1)).ToArray();
        var right = Vector<double>.Build.Dense(m + 1);
        right[m] = 1;
        for (var step = 0; ; step++)
        {
            // Not while points that do not exist are in the basis: the prices are large then, and rounding alone would let the first point in for ever.
            var first = step >= patience && Array.TrueForAll(basis, b => b.Index >= 0);
            var matrix = Matrix<double>.Build.Dense(m + 1, m + 1, (row, at) => Entry(rows, basis[at], row, m));
            var costs = Vector<double>.Build.Dense(m + 1, at => basis[at].Index < 0 ? -Artificial : basis[at].Side * y[basis[at].Index]);
            var prices = matrix.Transpose().LU().Solve(costs);
            var lu = matrix.LU();
            var weights = lu.Solve(right);

            // The farthest point enters; by Bland's rule the first that may.
            var entering = Entering(rows, y, prices, first);
            if (entering.Side == 0)
                return Array.Exists(basis, b => b.Index < 0)
                    ? throw new ArgumentException("The points do not determine the shape: too many lie on one line or in one place.")
                    : prices.ToArray();
            var direction = lu.Solve(Vector<double>.Build.Dense(m + 1, row => Entry(rows, entering, row, m)));
            basis[Leaving(basis, weights, direction, first)] = entering;
        }
    }

    private static double Entry(double[][] rows, (int Index, int Side) point, int row, int m) =>
        point.Index < 0 ? (row == -1 - point.Index ? 1 : 0) : row == m ? 1 : point.Side * rows[point.Index][row];

    private static (int Index, int Side) Entering(double[][] rows, double[] y, Vector<double> prices, bool first)
    {
        var m = rows[0].Length;
        var most = Tolerance;
        var found = (Index: 0, Side: 0);
        for (var i = 0; i < rows.Length; i++)
        {
            var residual = y[i];
            for (var j = 0; j < m; j++)
                residual -= prices[j] * rows[i][j];
            if (Math.Abs(residual) - prices[m] <= most)
                continue;
            most = Math.Abs(residual) - prices[m];
            found = (i, Math.Sign(residual));
            if (first)
                break;
        }
        return found;
    }

    private static int Leaving((int Index, int Side)[] basis, Vector<double> weights, Vector<double> direction, bool first)
    {
        var leaving = -1;
        var least = double.PositiveInfinity;
        for (var at = 0; at < basis.Length; at++)
        {
            if (direction[at] <= 1e-12)
                continue;
            var ratio = Math.Max(weights[at], 0) / direction[at];
            var tie = leaving >= 0 && Math.Abs(ratio - least) <= 1e-13;
            // Among alike, artificials go first; under Bland's rule the lowest index, which artificials have as well.
            if (ratio < least - 1e-13 || tie && (basis[at].Index < 0 || first && basis[at].Index < basis[leaving].Index))
                (leaving, least) = (at, ratio);
        }
        return leaving >= 0 ? leaving : throw new InvalidOperationException("The minimum zone has no bound: a fault in the sum.");
    }
}
