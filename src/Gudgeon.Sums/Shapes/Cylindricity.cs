using Gudgeon.Sums.Quantities;
using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Shapes;

/// <summary>A cylinder through points of a bore or journal, its axis near z.</summary>
/// <param name="X">Where the axis passes at <paramref name="AtZ"/>.</param>
/// <param name="Y">The same across.</param>
/// <param name="AtZ">The height at which X and Y hold.</param>
/// <param name="SlopeX">Lean of the axis: x per z.</param>
/// <param name="SlopeY">Lean of the axis: y per z.</param>
/// <param name="Radius">Radius.</param>
/// <param name="Total">Farthest less nearest to the axis: CYLt by this cylinder.</param>
/// <param name="RootMeanSquare">Root mean square of the radial deviations.</param>
public sealed record CylinderZone(double X, double Y, double AtZ, double SlopeX, double SlopeY, double Radius, double Total, double RootMeanSquare);

/// <summary>Cylindricity from points at several heights. The lean of the axis must be small, as of a bore set up square.</summary>
/// <remarks>Source: ISO 12180-1 for the reference cylinders (from memory).</remarks>
public static class Cylindricity
{
    private const int MostSteps = 100;

    /// <summary>Least-squares cylinder: squared distances from the surface are least.</summary>
    /// <param name="points">Six or more, at two heights or more, round the axis.</param>
    /// <returns>The cylinder.</returns>
    public static CylinderZone LeastSquaresCylinder(IReadOnlyList<Point3> points) =>
        Walk(points, Start(points), (columns, d) => LeastSquares.Fit(columns, d).Coefficients, cylinder => cylinder.RootMeanSquare);

    /// <summary>Minimum-zone cylinders: the two coaxial cylinders closest together that hold the points.</summary>
    /// <param name="points">Six or more, at two heights or more, round the axis.</param>
    /// <returns>The mean cylinder; <see cref="CylinderZone.Total"/> is the zone.</returns>
    /// <remarks>
    /// The zone has more than one hollow: one start can end in the shallower. Nine are tried, from the least-squares cylinder and
    /// from its axis moved and leant by half its own zone either way, and the narrowest is taken.
    /// </remarks>
    public static CylinderZone MinimumZone(IReadOnlyList<Point3> points)
    {
        var least = LeastSquaresCylinder(points);
        var (move, lean) = (least.Total / 2, least.Total / (points.Max(p => p.Z) - points.Min(p => p.Z)));
        (double X, double Y, double SlopeX, double SlopeY)[] starts =
            [default, (move, 0, 0, 0), (-move, 0, 0, 0), (0, move, 0, 0), (0, -move, 0, 0), (0, 0, lean, 0), (0, 0, -lean, 0), (0, 0, 0, lean), (0, 0, 0, -lean)];
        return starts
            .Select(s => Walk(points, Of(points, least.X + s.X, least.Y + s.Y, least.AtZ, least.SlopeX + s.SlopeX, least.SlopeY + s.SlopeY), (columns, d) => Chebyshev.Fit(columns, d).Coefficients, c => c.Total))
            .MinBy(c => c.Total)!;
    }

    private static CylinderZone Start(IReadOnlyList<Point3> points)
    {
        if (points.Count < 6)
            throw new ArgumentException($"A cylindricity needs six points or more; there are {points.Count}.", nameof(points));
        var start = Roundness.Linear([.. points.Select(p => new Point2(p.X, p.Y))]);
        return Of(points, start.X, start.Y, points.Average(p => p.Z), 0, 0);
    }

    private static CylinderZone Walk(
        IReadOnlyList<Point3> points, CylinderZone start, Func<double[][], double[], IReadOnlyList<double>> solve, Func<CylinderZone, double> worth)
    {
        var cylinder = start;
        for (var step = 0; step < MostSteps; step++)
        {
            var seen = points.Select(p => Seen(p, cylinder)).ToArray();
            var b = solve(
                [
                    [.. seen.Select(s => s.NormalX)], [.. seen.Select(s => s.NormalY)],
                    [.. seen.Select(s => s.NormalX * s.Along)], [.. seen.Select(s => s.NormalY * s.Along)], [.. seen.Select(_ => 1.0)],
                ],
                [.. seen.Select(s => s.Distance)]);
            var share = 1.0;
            var next = Moved(points, cylinder, b, share);
            while (worth(next) > worth(cylinder) && share > 1e-6)
                next = Moved(points, cylinder, b, share /= 2);
            if (worth(next) >= worth(cylinder) - 1e-15 * cylinder.Radius)
                return worth(next) < worth(cylinder) ? next : cylinder;
            cylinder = next;
        }
        return cylinder;
    }

    // Distance from the axis, the outward direction there, and the place along the axis over the length of its direction.
    private static (double Distance, double NormalX, double NormalY, double Along) Seen(Point3 p, CylinderZone c)
    {
        var length = Math.Sqrt(c.SlopeX * c.SlopeX + c.SlopeY * c.SlopeY + 1);
        double ux = c.SlopeX / length, uy = c.SlopeY / length, uz = 1 / length;
        double vx = p.X - c.X, vy = p.Y - c.Y, vz = p.Z - c.AtZ;
        var along = vx * ux + vy * uy + vz * uz;
        double wx = vx - along * ux, wy = vy - along * uy, wz = vz - along * uz;
        var distance = Math.Sqrt(wx * wx + wy * wy + wz * wz);
        return (distance, wx / distance, wy / distance, along / length);
    }

    private static CylinderZone Moved(IReadOnlyList<Point3> points, CylinderZone c, IReadOnlyList<double> b, double share) =>
        Of(points, c.X + share * b[0], c.Y + share * b[1], c.AtZ, c.SlopeX + share * b[2], c.SlopeY + share * b[3]);

    private static CylinderZone Of(IReadOnlyList<Point3> points, double x, double y, double atZ, double slopeX, double slopeY)
    {
        var bare = new CylinderZone(x, y, atZ, slopeX, slopeY, 0, 0, 0);
        var d = points.Select(p => Seen(p, bare).Distance).ToArray();
        var radius = Samples.Mean(d);
        return bare with { Radius = radius, Total = Samples.Range(d), RootMeanSquare = Math.Sqrt(Samples.SumOfSquares(d) / d.Length) };
    }
}
