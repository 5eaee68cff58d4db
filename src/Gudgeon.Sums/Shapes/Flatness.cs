using Gudgeon.Sums.Quantities;
using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Shapes;

/// <summary>A plane z = A + B·x + C·y, and the zone that holds all points.</summary>
/// <param name="A">Height at the origin.</param>
/// <param name="B">Rise along x.</param>
/// <param name="C">Rise along y.</param>
/// <param name="Zone">Highest less lowest above the plane: the flatness by that plane.</param>
/// <param name="Highest">Index of the highest point.</param>
/// <param name="Lowest">Index of the lowest point.</param>
public sealed record PlaneZone(double A, double B, double C, double Zone, int Highest, int Lowest)
{
    /// <summary>Height of a point above the plane.</summary>
    /// <param name="point">The point.</param>
    /// <returns>Above zero when over the plane.</returns>
    public double Over(Point3 point) => point.Z - A - B * point.X - C * point.Y;
}

/// <summary>Flatness of a face from heights at known places. Heights small beside the face, so that up is square to it.</summary>
/// <remarks>Source: ISO 12781-1 for the reference planes (from memory).</remarks>
public static class Flatness
{
    /// <summary>By the least-squares plane.</summary>
    /// <param name="points">Four or more, not on one line.</param>
    /// <returns>The plane and its zone.</returns>
    public static PlaneZone LeastSquaresPlane(IReadOnlyList<Point3> points)
    {
        var (columns, z) = Columns(points);
        return Of(points, LeastSquares.Fit(columns, z).Coefficients);
    }

    /// <summary>By the plane with the smallest zone: what ISO 1101 means. Exact, as a linear programme.</summary>
    /// <param name="points">Four or more, not on one line.</param>
    /// <returns>The plane and its zone.</returns>
    public static PlaneZone MinimumZone(IReadOnlyList<Point3> points)
    {
        var (columns, z) = Columns(points);
        return Of(points, Chebyshev.Fit(columns, z).Coefficients);
    }

    private static PlaneZone Of(IReadOnlyList<Point3> points, IReadOnlyList<double> b)
    {
        var plane = new PlaneZone(b[0], b[1], b[2], 0, 0, 0);
        var highest = Enumerable.Range(0, points.Count).MaxBy(i => plane.Over(points[i]));
        var lowest = Enumerable.Range(0, points.Count).MinBy(i => plane.Over(points[i]));
        return plane with { Zone = plane.Over(points[highest]) - plane.Over(points[lowest]), Highest = highest, Lowest = lowest };
    }

    private static (double[][] Columns, double[] Z) Columns(IReadOnlyList<Point3> points) => points.Count >= 4
        ? ([[.. points.Select(_ => 1.0)], [.. points.Select(p => p.X)], [.. points.Select(p => p.Y)]], [.. points.Select(p => p.Z)])
        : throw new ArgumentException($"A flatness needs four points or more; there are {points.Count}.", nameof(points));
}
