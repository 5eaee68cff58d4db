using CsCheck;
using Gudgeon.Sums.Quantities;
using Gudgeon.Sums.Shapes;

namespace Gudgeon.Sums.Tests.Shapes;

public class FlatnessTests
{
    private static readonly double[] s_x = [0, 1, 2, 3, 4, 5];
    private static readonly double[] s_z = [0, 2, 3, 1, 4, 2];

    // Invented, exact rationals; recomputed with SciPy HiGHS: LS 1.0 + 0.4x, 2.6; MZ 2.5 with slope 0.5 and mid-line 0.75; ends 2.6.
    [Fact]
    public void Straightness_smallEdge_threeLines()
    {
        var least = Straightness.LeastSquaresLine(s_x, s_z);
        Assert.Equal(1.0, least.Intercept, 1e-12);
        Assert.Equal(0.4, least.Slope, 1e-12);
        Assert.Equal(2.6, least.Zone, 1e-12);
        var zone = Straightness.MinimumZone(s_x, s_z);
        Assert.Equal(0.75, zone.Intercept, 1e-9);
        Assert.Equal(0.5, zone.Slope, 1e-9);
        Assert.Equal(2.5, zone.Zone, 1e-9);
        Assert.Equal(2.6, Straightness.EndPoints(s_x, s_z).Zone, 1e-12);
    }

    [Fact]
    public void Straightness_badShape_saysWhatWasMet()
    {
        Assert.Equal("A straightness needs three places or more with a height each; there are 2 places and 2 heights.",
            Assert.Throws<ArgumentException>(() => Straightness.MinimumZone([0, 1], [0, 1])).Message);
        Assert.Equal("A straightness needs three places or more with a height each; there are 3 places and 2 heights.",
            Assert.Throws<ArgumentException>(() => Straightness.LeastSquaresLine([0, 1, 2], [0, 1])).Message);
        Assert.Equal("A straightness needs three places or more with a height each; there are 2 places and 3 heights.",
            Assert.Throws<ArgumentException>(() => Straightness.EndPoints([0, 1], [0, 1, 2])).Message);
        Assert.StartsWith("The two ends lie in one place.", Assert.Throws<ArgumentException>(() => Straightness.EndPoints([0, 1, 0], [0, 1, 2])).Message);
    }

    private static Point3[] Grid(double[,] rows)
    {
        var points = new List<Point3>();
        for (var y = 0; y < rows.GetLength(0); y++)
            for (var x = 0; x < rows.GetLength(1); x++)
                points.Add(new(x, y, rows[y, x]));
        return [.. points];
    }

    // Invented, exact rationals; recomputed with SciPy: LS 13/6 + x/6 − y/3, 41/6; MZ 6.5, plane 3.25 − 0.5x.
    [Fact]
    public void Flatness_smallGrid_bothPlanes()
    {
        var points = Grid(new double[,] { { 0, 3, 1 }, { 2, 6, 4 }, { 1, 2, -1 } });
        var least = Flatness.LeastSquaresPlane(points);
        Assert.Equal(13.0 / 6, least.A, 1e-12);
        Assert.Equal(1.0 / 6, least.B, 1e-12);
        Assert.Equal(-1.0 / 3, least.C, 1e-12);
        Assert.Equal(41.0 / 6, least.Zone, 1e-12);
        Assert.Equal(4, least.Highest);
        Assert.Equal(8, least.Lowest);
        Assert.Equal(6 - 13.0 / 6 - 1.0 / 6 + 1.0 / 3, least.Over(points[4]), 1e-12);
        Assert.Equal(6.5, Flatness.MinimumZone(points).Zone, 1e-9);
    }

    // Invented formula over 20 × 20 places; minimum zone by SciPy 1.10.1 linprog(method='highs'), least squares by NumPy lstsq.
    [Fact]
    public void Flatness_fourHundredPoints_agreesWithAGeneralSolver()
    {
        var points = new List<Point3>();
        for (var i = 0; i < 20; i++)
            for (var j = 0; j < 20; j++)
                points.Add(new(15.0 * i, 12.0 * j, 0.02 * Math.Sin(0.9 * i) * Math.Cos(0.7 * j) + 0.01 * Math.Sin(2.3 * i + 1.7 * j) + 0.0005 * i - 0.0003 * j));
        Assert.Equal(0.05717843873850508, Flatness.MinimumZone(points).Zone, 1e-10);
        Assert.Equal(0.058545594092236926, Flatness.LeastSquaresPlane(points).Zone, 1e-12);
    }

    [Fact]
    public void Flatness_planeAndOffset_changeNothing() =>
        Gen.Select(Gen.Double[-0.05, 0.05].Array[12], Gen.Double[-0.01, 0.01], Gen.Double[-0.01, 0.01], Gen.Double[-5, 5]).Sample((z, b, c, a) =>
        {
            var flat = z.Select((h, i) => new Point3(i % 4 * 30, i / 4 * 40, h)).ToArray();
            var leaning = flat.Select(p => p with { Z = p.Z + a + b * p.X + c * p.Y }).ToArray();
            var zone = Flatness.MinimumZone(flat).Zone;
            Assert.Equal(zone, Flatness.MinimumZone(leaning).Zone, 1e-9);
            Assert.True(zone <= Flatness.LeastSquaresPlane(flat).Zone + 1e-12);
        }, iter: 300);

    // The zone cannot be beaten: no plane of a thousand near it has a smaller one.
    [Fact]
    public void MinimumZone_anyOtherPlane_isNoBetter() =>
        Gen.Select(Gen.Double[-1, 1].Array[9], Gen.Double[-1, 1], Gen.Double[-1, 1]).Sample((z, db, dc) =>
        {
            var points = z.Select((h, i) => new Point3(i % 3, i / 3, h)).ToArray();
            var best = Flatness.MinimumZone(points);
            var other = points.Select(p => best.Over(p) - db * p.X - dc * p.Y).ToArray();
            Assert.True(other.Max() - other.Min() >= best.Zone - 1e-9);
        });

    [Fact]
    public void Flatness_trulyFlat_isZero() =>
        Assert.Equal(0, Flatness.MinimumZone([new(0, 0, 1), new(1, 0, 2), new(0, 1, 3), new(1, 1, 4)]).Zone, 1e-12);

    [Fact]
    public void Flatness_badPoints_throw()
    {
        Assert.StartsWith("A flatness needs four points or more; there are 3.",
            Assert.Throws<ArgumentException>(() => Flatness.MinimumZone([new(0, 0, 0), new(1, 0, 0), new(0, 1, 0)])).Message);
        Assert.Throws<ArgumentException>(() => Flatness.MinimumZone([new(0, 0, 0), new(1, 1, 0), new(2, 2, 1), new(3, 3, 0)]));
    }
}
