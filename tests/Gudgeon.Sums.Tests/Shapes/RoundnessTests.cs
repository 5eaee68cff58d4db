using Gudgeon.Sums.Quantities;
using Gudgeon.Sums.Shapes;

namespace Gudgeon.Sums.Tests.Shapes;

public class RoundnessTests
{
    // Gander, Golub and Strebel, BIT 34 (1994): points seen; print to four digits from memory; recomputed with NumPy SVD and SciPy least_squares.
    [Fact]
    public void Circle_gander_threeFitsDiffer()
    {
        Point2[] points = [new(1, 7), new(2, 6), new(5, 8), new(7, 7), new(9, 5), new(3, 7)];
        Circle(Roundness.Algebraic(points), 5.3794133, 7.2531985, 3.0370415, 1e-6);
        Circle(Roundness.Linear(points), 4.7423313, 3.8351227, 4.1087615, 1e-6);
        var geometric = Roundness.LeastSquaresCircle(points);
        Circle(geometric, 4.7397824, 2.9835328, 4.7142260, 1e-6);
        Assert.Equal(1.2275990781836559, 6 * geometric.RootMeanSquare * geometric.RootMeanSquare, 1e-9);
    }

    // SciPy Cookbook, Least squares circle (seen, recomputed): residual sum 7.711852; the linear fit with the mean distance as its radius gives 23.33482.
    [Fact]
    public void Circle_scipyCookbook_agrees()
    {
        double[] x = [9, 35, -13, 10, 23, 0], y = [34, 10, 6, -14, 27, -10];
        var points = x.Select((at, i) => new Point2(at, y[i])).ToArray();
        var geometric = Roundness.LeastSquaresCircle(points);
        Circle(geometric, 10.5000862, 9.6599495, 23.3335277, 1e-6);
        Assert.Equal(7.7118522, 6 * geometric.RootMeanSquare * geometric.RootMeanSquare, 1e-6);
        var linear = Roundness.Linear(points);
        Assert.Equal(10.5523129, linear.X, 1e-6);
        Assert.Equal(9.7059001, linear.Y, 1e-6);
    }

    // Analytic: r = 40 + 0.005·cos nθ, centre (0.012, −0.007): RONt 2a, RONq a/√2 (recomputed with SciPy).
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    public void Circle_pureLobes_findsTheCentre(int lobes)
    {
        var points = Enumerable.Range(0, 72).Select(i => Math.PI * i / 36).Select(t =>
        {
            var r = 40 + 0.005 * Math.Cos(lobes * t);
            return new Point2(0.012 + r * Math.Cos(t), -0.007 + r * Math.Sin(t));
        }).ToArray();
        var circle = Roundness.LeastSquaresCircle(points);
        Assert.Equal(0.0120, circle.X, 1e-8);
        Assert.Equal(-0.0070, circle.Y, 1e-8);
        Assert.Equal(0.0100, circle.Total, 1e-8);
        Assert.Equal(0.00353553, circle.RootMeanSquare, 1e-8);
        Assert.Equal(0.0100, Roundness.MinimumZone(points).Total, 1e-8);

        // The two-point trap, from the same points: opposite distances.
        var diameters = Enumerable.Range(0, 36).Select(i => Math.Sqrt(Math.Pow(points[i].X - points[i + 36].X, 2) + Math.Pow(points[i].Y - points[i + 36].Y, 2))).ToArray();
        Assert.Equal(Lobes.DiameterVariation(lobes, Length.FromMillimetres(0.005)).Millimetres, diameters.Max() - diameters.Min(), 1e-6);
    }

    // Invented profile; recomputed with SciPy least_squares and successive HiGHS programmes.
    [Fact]
    public void Circle_twelvePoints_bothReferences()
    {
        double[] dev = [0, 3, 5, 2, -1, -4, -2, 1, 4, 2, -3, -5];
        var points = dev.Select((d, i) => (R: 43 + d / 1000, T: Math.PI * i / 6)).Select(p => new Point2(p.R * Math.Cos(p.T), p.R * Math.Sin(p.T))).ToArray();
        var least = Roundness.LeastSquaresCircle(points);
        Circle(least, 0.000394359, 0.000683045, 43.00016668, 1e-8);
        Assert.Equal(9.788709e-3, least.Total, 1e-8);
        Assert.Equal(3.026748e-3, least.RootMeanSquare, 1e-8);
        var zone = Roundness.MinimumZone(points);
        Assert.Equal(-0.000183013, zone.X, 1e-6);
        Assert.Equal(0.000683013, zone.Y, 1e-6);
        Assert.Equal(9.000000e-3, zone.Total, 1e-8);
    }

    // Invented sections; recomputed with SciPy least_squares.
    [Fact]
    public void Cylinder_threeSections_leastSquares()
    {
        var points = new List<Point3>();
        foreach (var (z, dev) in (ReadOnlySpan<(double, double[])>)[(10, [0, 2, 4, 3, 0, -1, -3, -2]), (60, [1, 4, 8, 5, 1, 3, 6, 4]), (110, [-2, -1, 1, 0, -2, 0, 2, 1])])
            for (var i = 0; i < 8; i++)
            {
                var (r, t) = (43 + dev[i] / 1000, Math.PI * i / 4);
                points.Add(new(0.002 * z / 100 + r * Math.Cos(t), -0.001 * z / 100 + r * Math.Sin(t), z));
            }
        var cylinder = Cylindricity.LeastSquaresCylinder(points);
        Assert.Equal(60, cylinder.AtZ, 1e-12);
        Assert.Equal(0.00108215, cylinder.X, 1e-6);
        Assert.Equal(0.00053807, cylinder.Y, 1e-6);
        Assert.Equal(2.3535348e-5, cylinder.SlopeX, 1e-9);
        Assert.Equal(-4.7680039e-5, cylinder.SlopeY, 1e-9);
        Assert.Equal(43.0014167, cylinder.Radius, 1e-6);
        Assert.Equal(2.358320e-3, cylinder.RootMeanSquare, 1e-8);
        Assert.Equal(9.196949e-3, cylinder.Total, 1e-7);
        Assert.True(Cylindricity.MinimumZone(points).Total <= cylinder.Total);
    }

    // Geometry; agrees with ISO 4292:1985 as remembered; recomputed.
    [Theory]
    [InlineData(60, 3, 3.000)]
    [InlineData(60, 2, 0)]
    [InlineData(60, 5, 0)]
    [InlineData(60, 6, 3)]
    [InlineData(90, 2, 1.000)]
    [InlineData(90, 3, 2.000)]
    [InlineData(90, 4, -0.414)]
    [InlineData(90, 5, 2.000)]
    [InlineData(90, 7, 0.000)]
    [InlineData(90, 8, 2.414)]
    [InlineData(90, 11, 2)]
    [InlineData(120, 2, 1.577)]
    [InlineData(120, 4, 0.423)]
    [InlineData(120, 6, -0.155)]
    [InlineData(120, 9, 1.000)]
    [InlineData(120, 12, 2.155)]
    public void VeeBlock_factor(double vee, int lobes, double factor) =>
        Assert.Equal(factor, Lobes.VeeBlockFactor(lobes, Angle.FromDegrees(vee)), 5e-4);

    [Fact]
    public void Lobes_badInput_throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Lobes.DiameterVariation(1, Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Lobes.VeeBlockFactor(1, Angle.FromDegrees(90)));
        Assert.StartsWith("The angle of a V lies between 0° and 180°.", Assert.Throws<ArgumentOutOfRangeException>(() => Lobes.VeeBlockFactor(3, Angle.FromDegrees(180))).Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => Lobes.VeeBlockFactor(3, Angle.FromDegrees(0)));
        Assert.Equal("A two-point gauge cannot see three, five or seven lobes: the diameter is alike all round while the bore is not. Half the difference of two diameters is only the least that the roundness can be.", Lobes.TwoPointCaution);
        Assert.StartsWith("A roundness needs four points or more; there are 3.",
            Assert.Throws<ArgumentException>(() => Roundness.LeastSquaresCircle([new(0, 0), new(1, 0), new(0, 1)])).Message);
        Assert.Throws<ArgumentException>(() => Roundness.Algebraic([new(0, 0)]));
        Assert.StartsWith("A cylindricity needs six points or more; there are 1.", Assert.Throws<ArgumentException>(() => Cylindricity.MinimumZone([new(0, 0, 0)])).Message);
    }

    private static void Circle(CircleZone circle, double x, double y, double radius, double tolerance)
    {
        Assert.Equal(x, circle.X, tolerance);
        Assert.Equal(y, circle.Y, tolerance);
        Assert.Equal(radius, circle.Radius, tolerance);
    }
}
