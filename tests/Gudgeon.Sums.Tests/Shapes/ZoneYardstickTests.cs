using CsCheck;
using Gudgeon.Sums.Quantities;
using Gudgeon.Sums.Shapes;

namespace Gudgeon.Sums.Tests.Shapes;

/// <summary>
/// Zones against slow ways that know nothing of the sums. The narrowest zone of a line lies along a line through two of its points, that of a plane
/// along a plane through three points or along two lines through two points each: every such one is tried (M. Berg et al., Computational Geometry, width of a point set).
/// </summary>
public class ZoneYardstickTests
{
    // Whole numbers, so that many points touch the zone at once and ties must be broken.
    [Fact]
    public void Narrowest_line_is_that_of_all_pairs_tried() =>
        Gen.Int[-3, 3].Array[3, 12].Sample(heights =>
        {
            var x = heights.Select((_, i) => 10.0 * i).ToArray();
            var z = heights.Select(h => (double)h).ToArray();
            double ZoneAt(double slope) => Range(x.Select((at, i) => z[i] - slope * at));
            var best = (from i in Enumerable.Range(0, z.Length) from j in Enumerable.Range(0, i) select ZoneAt((z[i] - z[j]) / (x[i] - x[j]))).Min();
            var line = Straightness.MinimumZone(x, z);
            Assert.Equal(best, line.Zone, 1e-9);
            // The slow exchange that cannot go in circles ends there too.
            Assert.Equal(best, 2 * Chebyshev.Fit([Array.ConvertAll(x, _ => 1.0), x], z, 0).HalfWidth, 1e-9);
            Assert.Equal(line.Zone, ZoneAt(line.Slope), 1e-9);
            // The line runs down the middle of its zone.
            Assert.Equal(line.Zone / 2, x.Select((at, i) => z[i] - line.Intercept - line.Slope * at).Max(), 1e-9);
        }, iter: 500);

    [Fact]
    public void Narrowest_plane_is_that_of_all_triples_and_pairs_tried() =>
        Gen.Select(Gen.Int[-3, 3].Array[4, 9], Gen.Int[0, 3]).Sample((heights, kind) =>
        {
            var points = heights.Select((h, i) => kind < 2
                ? new Point3(20 * (i % 3) + kind * (i / 3), 30 * (i / 3), h)
                : new Point3(100 * Math.Cos(i) + kind, 70 * Math.Sin(i), h)).ToArray();
            Assert.Equal(Narrowest(points), Flatness.MinimumZone(points).Zone, 1e-7);
        }, iter: 400);

    // The same with the slow exchange, on a lattice where four points lie in many a plane.
    [Fact]
    public void Narrowest_plane_is_found_by_the_slow_exchange_too() =>
        Gen.Int[-2, 2].Array[4, 12].Sample(heights =>
        {
            var points = heights.Select((h, i) => new Point3(i % 4 - 1.5, i / 4 + i % 2, h)).ToArray();
            double[][] columns = [[.. points.Select(_ => 1.0)], [.. points.Select(p => p.X)], [.. points.Select(p => p.Y)]];
            Assert.Equal(Narrowest(points), 2 * Chebyshev.Fit(columns, [.. points.Select(p => p.Z)], 0).HalfWidth, 1e-7);
        }, iter: 200);

    // One axis in thousandths of the other: the columns of the programme differ by a million.
    [Fact]
    public void Narrowest_plane_does_not_depend_on_the_size_of_the_face() =>
        Gen.Int[-3, 3].Array[9].Sample(heights =>
        {
            var small = heights.Select((h, i) => new Point3(i % 3, i / 3, h)).ToArray();
            var large = heights.Select((h, i) => new Point3(1000 * (i % 3), 0.001 * (i / 3), h)).ToArray();
            Assert.Equal(Flatness.MinimumZone(small).Zone, Flatness.MinimumZone(large).Zone, 1e-6);
        }, iter: 200);

    [Fact]
    public void Points_on_one_line_determine_no_plane() => Assert.Throws<ArgumentException>(() =>
        Flatness.MinimumZone([new(0, 0, 0), new(1, 1, 1), new(2, 2, 0), new(3, 3, 1), new(4, 4, 0)]));

    // By hand: through (2, 1) and (7, 11) the slope is 2 and the height at 0 is −3; the points between lie 0 and 4 over it, 1 under it.
    [Fact]
    public void Line_through_both_ends_is_as_by_hand()
    {
        var line = Straightness.EndPoints([2, 3, 5, 7], [1, 7, 6, 11]);
        Assert.Equal((-3, 2, 5), (line.Intercept, line.Slope, line.Zone));
    }

    [Fact]
    public void Straightness_of_three_places_is_taken() => Assert.Equal(1, Straightness.MinimumZone([0, 1, 2], [0, 1, 0]).Zone, 1e-9);

    // A face with z 0 in the middle and alike at opposite corners is already level by the plane of its diagonals, so that its heights must come back
    // whatever the level was set to: z = x² + 2y² + 3xy + 0.7·x(1 − x²) + 0.3·y(1 − y²), x and y from −1 to 1.
    [Fact]
    public void Union_jack_gives_back_the_face_that_was_read()
    {
        static double Z(double x, double y) => x * x + 2 * y * y + 3 * x * y + 0.7 * x * (1 - x * x) + 0.3 * y * (1 - y * y);
        double[] Line(int readings, double x1, double y1, double x2, double y2, double level)
        {
            double At(int i) => Z(x1 + (x2 - x1) * i / readings, y1 + (y2 - y1) * i / readings);
            return [.. Enumerable.Range(0, readings).Select(i => level + At(i + 1) - At(i))];
        }

        var face = new UnionJack(new(Line(8, -1, 1, 1, -1, 100), Line(6, 1, 1, -1, -1, 90), Line(6, 1, 1, -1, 1, 80), Line(4, 1, 1, 1, -1, 70),
            Line(8, 1, -1, -1, -1, 60), Line(2, -1, 1, -1, -1, 50), Line(4, 1, 0, -1, 0, 40), Line(6, 0, 1, 0, -1, 30)));
        Assert.Equal(0, face.ClosureAcross, 1e-9);
        Assert.Equal(0, face.ClosureDown, 1e-9);
        var points = face.Points(400, 250, 0.002);
        Assert.Equal(9 + 7 + 7 + 5 + 9 + 3 + 5 + 7, points.Count);
        Assert.All(points, p => Assert.Equal(0.002 * Z(p.X / 400, p.Y / 250), p.Z, 1e-9));
        Assert.Equal(points.Select(p => p.Z / 0.002), face.All, (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal(Range(points.Select(p => p.Z / 0.002)), face.Total, 1e-9);

        // First and last station of each line, east +x and north +y.
        (double, double)[] Ends(int skip, int count) => [(points[skip].X, points[skip].Y), (points[skip + count - 1].X, points[skip + count - 1].Y)];
        Assert.Equal([(-400, 250), (400, -250)], Ends(0, 9));
        Assert.Equal([(400, 250), (-400, -250)], Ends(9, 7));
        Assert.Equal([(400, 250), (-400, 250)], Ends(16, 7));
        Assert.Equal([(400, 250), (400, -250)], Ends(23, 5));
        Assert.Equal([(400, -250), (-400, -250)], Ends(28, 9));
        Assert.Equal([(-400, 250), (-400, -250)], Ends(37, 3));
        Assert.Equal([(400, 0), (-400, 0)], Ends(40, 5));
        Assert.Equal([(0, 250), (0, -250)], Ends(45, 7));
    }

    // Points laid exactly on a leaning cylinder: the axis and the radius must come back, and nothing is left over.
    [Theory]
    [InlineData(0.0, 0.0)]
    [InlineData(0.02, 0.0)]
    [InlineData(0.0, -0.02)]
    [InlineData(0.01, 0.015)]
    public void Cylinder_that_leans_is_found(double slopeX, double slopeY)
    {
        var points = Leaning(slopeX, slopeY, (_, _) => 0);
        var (found, zone) = (Cylindricity.LeastSquaresCylinder(points), Cylindricity.MinimumZone(points));
        foreach (var cylinder in new[] { found, zone })
        {
            var along = cylinder.AtZ - 50;
            Assert.Equal(slopeX, cylinder.SlopeX, 1e-9);
            Assert.Equal(slopeY, cylinder.SlopeY, 1e-9);
            Assert.Equal(3 + along * slopeX, cylinder.X, 1e-8);
            Assert.Equal(-2 + along * slopeY, cylinder.Y, 1e-8);
            Assert.Equal(43, cylinder.Radius, 1e-8);
            Assert.Equal(0, cylinder.Total, 1e-8);
            Assert.Equal(0, cylinder.RootMeanSquare, 1e-8);
        }
    }

    // Neither cylinder can be bettered by moving or leaning it a little: squares for the one, the zone for the other, reckoned here from the cross product.
    [Fact]
    public void Cylinders_are_the_best_near_them() =>
        Gen.Double[-0.01, 0.01].Array[24].Sample(off =>
        {
            var points = Leaning(0.004, -0.003, (section, i) => off[8 * section + i]);
            var (least, zone) = (Cylindricity.LeastSquaresCylinder(points), Cylindricity.MinimumZone(points));
            var (squares, _) = Off(points, least);
            var (_, total) = Off(points, zone);
            Assert.Equal(least.RootMeanSquare, Math.Sqrt(squares / 24), 1e-9);
            Assert.Equal(zone.Total, total, 1e-9);
            foreach (var step in new[] { 1e-4, -1e-4 })
            {
                foreach (var moved in new (double X, double Y, double SlopeX, double SlopeY)[] { (step, 0, 0, 0), (0, step, 0, 0), (0, 0, step / 50, 0), (0, 0, 0, step / 50), (step, step, 0, 0), (0, 0, step / 50, step / 50) })
                {
                    CylinderZone To(CylinderZone c) => c with { X = c.X + moved.X, Y = c.Y + moved.Y, SlopeX = c.SlopeX + moved.SlopeX, SlopeY = c.SlopeY + moved.SlopeY };
                    Assert.True(Off(points, To(least)).Squares >= squares - 1e-12);
                    Assert.True(Off(points, To(zone)).Total >= total - 1e-9);
                }
            }
        }, iter: 20);

    // Six points at two heights are enough.
    [Fact]
    public void Cylinder_of_six_points_is_taken()
    {
        Point3[] points = [.. Enumerable.Range(0, 6).Select(i => 2 * Math.PI * (i % 3) / 3 + i / 3).Select((t, i) => new Point3(10 * Math.Cos(t), 10 * Math.Sin(t), 20 * (i / 3)))];
        Assert.Equal(10, Cylindricity.LeastSquaresCylinder(points).Radius, 1e-9);
        Assert.StartsWith("A cylindricity needs six points or more; there are 5.", Assert.Throws<ArgumentException>(() => Cylindricity.LeastSquaresCylinder(points[..5])).Message);
    }

    // The same for circles: the square of the distances and the ring, near the circle that was found.
    [Fact]
    public void Circles_are_the_best_near_them() =>
        Gen.Double[-0.01, 0.01].Array[12].Sample(off =>
        {
            var points = off.Select((d, i) => (R: 30 + d, T: Math.PI * i / 6)).Select(p => new Point2(5 + p.R * Math.Cos(p.T), -4 + p.R * Math.Sin(p.T))).ToArray();
            var (least, zone) = (Roundness.LeastSquaresCircle(points), Roundness.MinimumZone(points));
            double[] From(double x, double y) => [.. points.Select(p => double.Hypot(p.X - x, p.Y - y))];
            double Squares(double x, double y) => From(x, y).Sum(d => Math.Pow(d - From(x, y).Average(), 2));
            Assert.Equal(From(least.X, least.Y).Average(), least.Radius, 1e-9);
            Assert.Equal(Math.Sqrt(Squares(least.X, least.Y) / 12), least.RootMeanSquare, 1e-9);
            Assert.Equal(Range(From(zone.X, zone.Y)), zone.Total, 1e-9);
            foreach (var t in Enumerable.Range(0, 16).Select(i => Math.PI * i / 8))
            {
                var (dx, dy) = (1e-4 * Math.Cos(t), 1e-4 * Math.Sin(t));
                Assert.True(Squares(least.X + dx, least.Y + dy) >= Squares(least.X, least.Y));
                Assert.True(Range(From(zone.X + dx, zone.Y + dy)) >= zone.Total - 1e-9);
            }
        }, iter: 60);

    // By hand: four points of the circle about (3, −2) with radius 5 give it back by every fit.
    [Fact]
    public void Points_of_a_true_circle_give_it_back_by_every_fit()
    {
        Point2[] points = [new(8, -2), new(6, 2), new(3, 3), new(-1, -5)];
        foreach (var circle in new[] { Roundness.Algebraic(points), Roundness.Linear(points), Roundness.LeastSquaresCircle(points), Roundness.MinimumZone(points) })
        {
            Assert.Equal(3, circle.X, 1e-9);
            Assert.Equal(-2, circle.Y, 1e-9);
            Assert.Equal(5, circle.Radius, 1e-9);
            Assert.Equal(0, circle.Total, 1e-9);
            Assert.Equal(0, circle.RootMeanSquare, 1e-9);
        }
    }

    private static double Narrowest(Point3[] points)
    {
        double ZoneAt(double b, double c) => Range(points.Select(p => p.Z - b * p.X - c * p.Y));
        var chords = (from i in Enumerable.Range(0, points.Length) from j in Enumerable.Range(0, i) select points[i] - points[j]).ToArray();
        var best = double.PositiveInfinity;
        foreach (var p in chords)
        {
            foreach (var q in chords)
            {
                var det = p.X * q.Y - p.Y * q.X;
                if (Math.Abs(det) > 1e-9)
                    best = Math.Min(best, ZoneAt((p.Z * q.Y - q.Z * p.Y) / det, (p.X * q.Z - q.X * p.Z) / det));
            }
        }

        return best;
    }

    private static double Range(IEnumerable<double> values)
    {
        var all = values.ToList();
        return all.Max() - all.Min();
    }

    /// <summary>Three rings of eight points on a cylinder of radius 43 whose axis passes (3, −2) at height 50.</summary>
    private static Point3[] Leaning(double slopeX, double slopeY, Func<int, int, double> off)
    {
        var axis = new Point3(slopeX, slopeY, 1).Unit;
        var across = axis.Cross(new(0, 1, 0)).Unit;
        var other = axis.Cross(across);
        return
        [
            .. from section in Enumerable.Range(0, 3)
               from i in Enumerable.Range(0, 8)
               let t = Math.PI * i / 4 + 0.1 * section
               select new Point3(3, -2, 50) + (50 * section - 40) * axis + (43 + off(section, i)) * (Math.Cos(t) * across + Math.Sin(t) * other),
        ];
    }

    private static (double Squares, double Total) Off(Point3[] points, CylinderZone c)
    {
        var axis = new Point3(c.SlopeX, c.SlopeY, 1).Unit;
        var distances = points.Select(p => (p - new Point3(c.X, c.Y, c.AtZ)).Cross(axis).Norm).ToList();
        var mean = distances.Average();
        return (distances.Sum(d => (d - mean) * (d - mean)), distances.Max() - distances.Min());
    }
}
