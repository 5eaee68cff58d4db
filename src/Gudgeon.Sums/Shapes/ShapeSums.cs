using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Shapes;

/// <summary>The sums of form for the catalogue.</summary>
public static class ShapeSums
{
    private static readonly double[] s_places = [0, 1, 2, 3, 4, 5];
    private static readonly double[] s_heights = [0, 2, 3, 1, 4, 2];
    private static readonly Point2[] s_gander = [new(1, 7), new(2, 6), new(5, 8), new(7, 7), new(9, 5), new(3, 7)];

    // Invented: three sections of eight places, µm over a radius of 43 mm, their centres moving by 20 and −10 µm in 1000 mm.
    private static readonly Point3[] s_cylinder =
    [
        .. new (double Z, double[] Over)[] { (10, [0, 2, 4, 3, 0, -1, -3, -2]), (60, [1, 4, 8, 5, 1, 3, 6, 4]), (110, [-2, -1, 1, 0, -2, 0, 2, 1]) }.SelectMany(s => s.Over.Select((over, i) =>
            new Point3(2e-5 * s.Z + (43 + over / 1000) * Math.Cos(i * Math.PI / 4), -1e-5 * s.Z + (43 + over / 1000) * Math.Sin(i * Math.PI / 4), s.Z))),
    ];

    private static readonly Point3[] s_grid =
        [new(0, 0, 0), new(1, 0, 3), new(2, 0, 1), new(0, 1, 2), new(1, 1, 6), new(2, 1, 4), new(0, 2, 1), new(1, 2, 2), new(2, 2, -1)];

    /// <summary>The list.</summary>
    public static IReadOnlyList<SumEntry> List { get; } =
    [
        new("shapes.straightness", "Straightness, minimum zone", "min over lines of (max − min of z − a − bx)", [new("x", "places", "mm"), new("z", "heights", "mm")], "mm",
            "three places or more; heights small beside the length", "ISO 12780-1 (from memory); exact linear programme",
            new("x 0…5, z 0 2 3 1 4 2", 2.5, 1e-9, "exact rational arithmetic; recomputed with SciPy HiGHS", () => Straightness.MinimumZone(s_places, s_heights).Zone)),
        new("shapes.flatness", "Flatness, minimum zone", "min over planes of (max − min of z − a − bx − cy)", [new("x, y", "places", "mm"), new("z", "heights", "mm")], "mm",
            "four points or more, not on one line", "ISO 12781-1 (from memory); exact linear programme",
            new("rows 0 3 1; 2 6 4; 1 2 −1", 6.5, 1e-9, "exact rational arithmetic; recomputed with SciPy HiGHS", () => Flatness.MinimumZone(s_grid).Zone)),
        new("shapes.flatness-ls", "Flatness by the least-squares plane", "max − min of z − a − bx − cy, a b c least squares", [new("x, y", "places", "mm"), new("z", "heights", "mm")], "mm",
            "four points or more, not on one line; never below the minimum zone", "ISO 12781-1 (from memory)",
            new("the same grid", 41.0 / 6, 1e-9, "exact rational arithmetic", () => Flatness.LeastSquaresPlane(s_grid).Zone)),
        new("shapes.circle", "Least-squares circle, radius", "min Σ(√((x − a)² + (y − b)²) − r)²", [new("x, y", "points of a section", "mm")], "mm", "four points or more, not on one line",
            "Gander, Golub and Strebel, BIT 34 (1994)", new("their six points", 4.7142260, 1e-6, "published 4.7142 (from memory); recomputed with SciPy", () => Roundness.LeastSquaresCircle(s_gander).Radius)),
        new("shapes.straightness-ends", "Straightness by the line through both ends", "max − min of z − line through the ends", [new("x", "places", "mm"), new("z", "heights", "mm")], "mm", "three places or more", "ISO 12780-1 (from memory)",
            new("x 0…5, z 0 2 3 1 4 2", 2.6, 1e-9, "exact rational arithmetic", () => Straightness.EndPoints(s_places, s_heights).Zone)),
        new("shapes.straightness-ls", "Straightness by the least-squares line", "max − min of z − a − bx, a b least squares", [new("x", "places", "mm"), new("z", "heights", "mm")], "mm", "three places or more; never below the minimum zone", "ISO 12780-1 (from memory)",
            new("the same edge", 2.6, 1e-9, "exact rational arithmetic", () => Straightness.LeastSquaresLine(s_places, s_heights).Zone)),
        new("shapes.over-plane", "Height over a plane", "z − a − bx − cy", [new("a, b, c", "the plane", "mm, 1, 1"), new("x, y, z", "the point", "mm")], "mm", "any point", "definition",
            new("middle of the grid over its least-squares plane", 4, 1e-9, "exact rational arithmetic: 6 − 13/6 − 1/6 + 1/3", () => Flatness.LeastSquaresPlane(s_grid).Over(s_grid[4]))),
        new("shapes.circle-algebraic", "Circle by the algebraic fit, radius", "min |a(x² + y²) + bx + cy + d|, |(a, b, c, d)| = 1", [new("x, y", "points of a section", "mm")], "mm", "four points or more; not what a standard means", "Gander, Golub and Strebel, BIT 34 (1994)",
            new("their six points", 3.0370415, 5e-8, "published 3.0370 (from memory); recomputed with NumPy", () => Roundness.Algebraic(s_gander).Radius)),
        new("shapes.circle-linear", "Circle by the linear fit, radius", "min Σ(x² + y² − 2ax − 2by − c)²", [new("x, y", "points of a section", "mm")], "mm", "four points or more; only to start from", "Kåsa's fit; recomputed",
            new("the same six points", 4.1087615, 5e-8, "recomputed with NumPy", () => Roundness.Linear(s_gander).Radius)),
        new("shapes.cylinder", "Least-squares cylinder, farthest less nearest", "min Σ(distance from the axis − r)²", [new("x, y, z", "points at several heights", "mm")], "mm", "six points or more at two heights or more", "ISO 12180-1 (from memory)",
            new("three sections of eight places", 0.009196949, 5e-9, "recomputed with SciPy least_squares", () => Cylindricity.LeastSquaresCylinder(s_cylinder).Total)),
        new("shapes.cylinder-zone", "Cylindricity, minimum zone", "min over axes of (farthest − nearest)", [new("x, y, z", "points at several heights", "mm")], "mm", "six points or more at two heights or more", "ISO 12180-1 (from memory)",
            new("the same sections", 0.008999751, 5e-9, "recomputed: successive linear programmes with SciPy HiGHS from 40 starts", () => Cylindricity.MinimumZone(s_cylinder).Total)),
        new("shapes.union-jack-points", "Stations of a Union Jack as points", "places along the eight lines, heights times the unit", [new("unit", "reading in radians times foot", "mm")], "mm", "any Union Jack", "J. C. Moody, The Tool Engineer, October 1955",
            new("two readings a line, each diagonal turning by 2, unit 0.5: a corner", -0.5, 1e-12, "by hand: the end lies one unit below the middle", () => new UnionJack(new([2, 0], [2, 0], [0, 0], [0, 0], [0, 0], [0, 0], [0, 0], [0, 0])).Points(1, 1, 0.5)[0].Z)),
        new("shapes.circle-zone", "Roundness, minimum zone", "min over centres of (farthest − nearest)", [new("x, y", "points of a section", "mm")], "mm", "four points or more, well round the circle",
            "ISO 12181-1 (from memory)", new("square of side 2 with mid-sides 1.1 off centre", 0.314213562, 1e-9, "by symmetry: √2 − 1.1",
                () => Roundness.MinimumZone([new(1, 1), new(-1, 1), new(-1, -1), new(1, -1), new(1.1, 0), new(-1.1, 0), new(0, 1.1), new(0, -1.1)]).Total)),
        new("shapes.two-point", "What a two-point gauge sees of lobes", "4a when n is even, 0 when odd", [new("n", "lobes", "1"), new("a", "amplitude", "mm")], "mm", "two lobes or more",
            "ISO 4292 (from memory); geometry", new("n 3, a 0.005", 0, 1e-15, "analytic", () => Lobes.DiameterVariation(3, Length.FromMillimetres(0.005)).Millimetres)),
        new("shapes.union-jack", "Height of a face from eight lines of slopes", "running sums, levelled by the diagonals", [new("r", "readings along eight lines", "any angle")], "reading × foot",
            "an even number of readings on each line", "J. C. Moody, The Tool Engineer, October 1955",
            new("two readings a line, each diagonal turning by 2 at its middle", -1, 1e-12, "by hand: ends lie half the turn below the middle",
                () => new UnionJack(new([2, 0], [2, 0], [0, 0], [0, 0], [0, 0], [0, 0], [0, 0], [0, 0])).North[0])),
        new("shapes.vee", "What a V-block magnifies of lobes", "F = 1 + cos(n(90° + α/2))/sin(α/2)", [new("n", "lobes", "1"), new("α", "angle of the V", "°")], "1",
            "two lobes or more; α between 0° and 180°", "ISO 4292 (from memory); geometry", new("n 5, α 90°", 2, 1e-12, "recomputed; agrees with the table of ISO 4292 as remembered", () => Lobes.VeeBlockFactor(5, Angle.FromDegrees(90)))),
    ];
}
