using Gudgeon.Sums.Statistics;
using MathNet.Numerics.LinearAlgebra;

namespace Gudgeon.Sums.Shapes;

/// <summary>A point in a section, mm.</summary>
/// <param name="X">One axis.</param>
/// <param name="Y">The other.</param>
public readonly record struct Point2(double X, double Y);

/// <summary>A circle through a section, and what lies off it.</summary>
/// <param name="X">Centre.</param>
/// <param name="Y">Centre.</param>
/// <param name="Radius">Radius.</param>
/// <param name="Total">Farthest less nearest to the centre: RONt by this circle.</param>
/// <param name="RootMeanSquare">Root mean square of the radial deviations: RONq by this circle.</param>
public sealed record CircleZone(double X, double Y, double Radius, double Total, double RootMeanSquare);

/// <summary>Roundness of a section. The least-squares circle is the geometric one; the quick ones that solve a linear system are kept for starting it.</summary>
/// <remarks>Source: ISO 12181-1 (LSCI, MZCI; from memory); Gander, Golub and Strebel, BIT 34 (1994).</remarks>
public static class Roundness
{
    private const int MostSteps = 200;

    /// <summary>Algebraic fit: least of a(x² + y²) + bx + cy + d with |(a, b, c, d)| = 1. Not what a standard means by least squares.</summary>
    /// <param name="points">Four or more.</param>
    /// <returns>The circle.</returns>
    public static CircleZone Algebraic(IReadOnlyList<Point2> points)
    {
        Enough(points);
        var rows = Matrix<double>.Build.Dense(points.Count, 4, (i, j) => j switch
        {
            0 => points[i].X * points[i].X + points[i].Y * points[i].Y,
            1 => points[i].X,
            2 => points[i].Y,
            _ => 1,
        });
        var v = rows.Svd().VT.Row(3);
        double x = -v[1] / (2 * v[0]), y = -v[2] / (2 * v[0]);
        return Of(points, x, y, Math.Sqrt(x * x + y * y - v[3] / v[0]));
    }

    /// <summary>Linear fit of x² + y² (Kåsa). Not what a standard means by least squares.</summary>
    /// <param name="points">Four or more, not on one line.</param>
    /// <returns>The circle.</returns>
    public static CircleZone Linear(IReadOnlyList<Point2> points)
    {
        Enough(points);
        var b = LeastSquares.Fit([[.. points.Select(p => 2 * p.X)], [.. points.Select(p => 2 * p.Y)], [.. points.Select(_ => 1.0)]],
            [.. points.Select(p => p.X * p.X + p.Y * p.Y)]).Coefficients;
        return Of(points, b[0], b[1], Math.Sqrt(b[2] + b[0] * b[0] + b[1] * b[1]));
    }

    /// <summary>Least-squares circle, LSCI: the sum of squared distances from the circle is least.</summary>
    /// <param name="points">Four or more, not on one line.</param>
    /// <returns>The circle.</returns>
    public static CircleZone LeastSquaresCircle(IReadOnlyList<Point2> points) =>
        Walk(points, (columns, d) => LeastSquares.Fit(columns, d).Coefficients, circle => circle.RootMeanSquare);

    /// <summary>Minimum-zone circles, MZCI: the two concentric circles closest together that hold the section.</summary>
    /// <param name="points">Four or more, well round the circle and near it, as readings of a bore are.</param>
    /// <returns>The mean circle; <see cref="CircleZone.Total"/> is the zone.</returns>
    public static CircleZone MinimumZone(IReadOnlyList<Point2> points) =>
        Walk(points, (columns, d) => Chebyshev.Fit(columns, d).Coefficients, circle => circle.Total);

    // Each step solves the problem made linear at the present centre; a step that does not better the circle is halved.
    private static CircleZone Walk(
        IReadOnlyList<Point2> points, Func<double[][], double[], IReadOnlyList<double>> solve, Func<CircleZone, double> worth)
    {
        var circle = Linear(points);
        for (var step = 0; step < MostSteps; step++)
        {
            var d = points.Select(p => Math.Sqrt(Square(p.X - circle.X) + Square(p.Y - circle.Y))).ToArray();
            var b = solve([[.. points.Select((p, i) => (p.X - circle.X) / d[i])], [.. points.Select((p, i) => (p.Y - circle.Y) / d[i])], [.. points.Select(_ => 1.0)]], d);
            var share = 1.0;
            var next = Moved(points, circle, b, share);
            while (worth(next) > worth(circle) && share > 1e-6)
                next = Moved(points, circle, b, share /= 2);
            if (worth(next) > worth(circle))
                return circle;
            var moved = Math.Sqrt(Square(next.X - circle.X) + Square(next.Y - circle.Y));
            circle = next;
            if (moved <= 1e-13 * circle.Radius)
                return circle;
        }
        return circle;
    }

    private static CircleZone Moved(IReadOnlyList<Point2> points, CircleZone from, IReadOnlyList<double> b, double share) =>
        Of(points, from.X + share * b[0], from.Y + share * b[1], null);

    private static CircleZone Of(IReadOnlyList<Point2> points, double x, double y, double? radius)
    {
        var d = points.Select(p => Math.Sqrt(Square(p.X - x) + Square(p.Y - y))).ToArray();
        var r = radius ?? Samples.Mean(d);
        return new(x, y, r, Samples.Range(d), Math.Sqrt(d.Sum(at => Square(at - r)) / d.Length));
    }

    private static void Enough(IReadOnlyList<Point2> points)
    {
        if (points.Count < 4)
            throw new ArgumentException($"A roundness needs four points or more; there are {points.Count}.", nameof(points));
    }

    private static double Square(double x) => x * x;
}
