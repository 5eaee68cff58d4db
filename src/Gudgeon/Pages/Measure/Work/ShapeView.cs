using System.Globalization;
using Gudgeon.Journal;
using Gudgeon.Pages.Measure.Charts;
using Gudgeon.Sums.Quantities;
using Gudgeon.Sums.Shapes;

namespace Gudgeon.Pages.Measure.Work;

/// <summary>A line of what came out.</summary>
public sealed record ShapeLine(string Name, string Hint, string Figure);

/// <summary>A shape worked out: figures, picture, source.</summary>
/// <param name="Short">One sentence to keep in the book.</param>
public sealed record ShapeView(IReadOnlyList<ShapeLine> Lines, string Short, string Source, RoundView? Round = null, FaceView? Face = null, JackView? Jack = null)
{
    private const string Circles = "ISO 12181-1 for the circles, from memory; the least-squares circle is the geometric one";

    /// <summary>A section by least squares and by the narrowest ring.</summary>
    public static ShapeView Section(IReadOnlyList<Point2> points)
    {
        var (least, zone) = (Roundness.LeastSquaresCircle(points), Roundness.MinimumZone(points));
        return new ShapeView(
            [
                new("Roundness, narrowest ring", "what ISO 1101 means: farthest less nearest, as radii", Um(zone.Total)),
                new("Roundness, least-squares circle", "what most instruments show", Um(least.Total)),
                new("Root mean square", "by the least-squares circle", Um(least.RootMeanSquare)),
                new("Mean diameter", "of the least-squares circle", Units.Show(Math.Round(2 * least.Radius, 5), "mm")),
                new("Centre off the middle of the readings", "by the least-squares circle", $"{Um(least.X)} and {Um(least.Y)}"),
            ],
            $"roundness {Um(zone.Total)} by the narrowest ring, {Um(least.Total)} by the least-squares circle, {points.Count} places, mean diameter {Units.Show(Math.Round(2 * least.Radius, 5), "mm")}",
            Circles,
            Round: RoundView.Of(points, zone));
    }

    /// <summary>Several sections as one cylinder.</summary>
    public static ShapeView Cylinder(IReadOnlyList<Point3> points)
    {
        var (least, zone) = (Cylindricity.LeastSquaresCylinder(points), Cylindricity.MinimumZone(points));
        return new ShapeView(
            [
                new("Cylindricity, narrowest shell", "what ISO 1101 means: farthest less nearest to one axis", Um(zone.Total)),
                new("Cylindricity, least-squares cylinder", "farthest less nearest", Um(least.Total)),
                new("Root mean square", "by the least-squares cylinder", Um(least.RootMeanSquare)),
                new("Mean diameter", "of the least-squares cylinder", Units.Show(Math.Round(2 * least.Radius, 5), "mm")),
                new("Lean of the axis", "how the part stood, not what it is", $"{Um(least.SlopeX * 100)} and {Um(least.SlopeY * 100)} in 100 mm"),
            ],
            $"cylindricity {Um(zone.Total)} by the narrowest shell, {Um(least.Total)} by least squares, {points.Count} places, mean diameter {Units.Show(Math.Round(2 * least.Radius, 5), "mm")}",
            "ISO 12180-1 for the cylinders, from memory");
    }

    /// <summary>Heights on a grid by least squares and by the narrowest pair of planes.</summary>
    public static ShapeView Grid(double[][] rows, double unit)
    {
        var columns = rows[0].Length;
        var heights = rows.SelectMany(r => r).Select(h => h * unit).ToArray();
        var points = heights.Select((h, i) => new Point3(i % columns, i / columns, h)).ToArray();
        var (least, zone) = (Flatness.LeastSquaresPlane(points), Flatness.MinimumZone(points));
        string At(int i) => $"row {i / columns + 1}, place {i % columns + 1}";
        return new ShapeView(
            [
                new("Flatness, narrowest pair of planes", "what ISO 1101 means; exact", Um(zone.Zone)),
                new("Flatness, least-squares plane", "highest less lowest", Um(least.Zone)),
                new("Highest", "over the plane of the narrowest pair", At(zone.Highest)),
                new("Lowest", "under it", At(zone.Lowest)),
            ],
            $"flatness {Um(zone.Zone)} by the narrowest pair of planes, {Um(least.Zone)} by least squares, {rows.Length} by {columns} places, highest at {At(zone.Highest)}, lowest at {At(zone.Lowest)}",
            "ISO 12781-1 for the planes, from memory",
            Face: FaceView.Of("face", heights, columns, [.. heights.Select((_, i) => At(i))]));
    }

    /// <summary>The eight lines of a Union Jack.</summary>
    public static ShapeView EightLines(UnionJack jack, double length, double width, double unit)
    {
        var points = jack.Points(length / 2, width / 2, unit);
        var (least, zone) = (Flatness.LeastSquaresPlane(points), Flatness.MinimumZone(points));
        return new ShapeView(
            [
                new("Flatness, narrowest pair of planes", "what ISO 1101 means; exact", Um(zone.Zone)),
                new("Flatness, least-squares plane", "highest less lowest", Um(least.Zone)),
                new("Flatness, plane of the diagonals", "as it is reckoned by hand", Um(jack.Total * unit)),
                new("Centre lines missed the centre by", "a measure of the work, not of the face: read again when it is much", $"{Um(jack.ClosureAcross * unit)} across, {Um(jack.ClosureDown * unit)} down"),
                new("Face", "the foot's steps times its length", $"{Units.Plain(Math.Round(length, 1))} by {Units.Show(Math.Round(width, 1), "mm")}"),
            ],
            $"flatness {Um(zone.Zone)} by the narrowest pair of planes, {Um(jack.Total * unit)} by the plane of the diagonals, Union Jack of {jack.All.Count()} stations, closing errors {Um(jack.ClosureAcross * unit)} and {Um(jack.ClosureDown * unit)}",
            "J. C. Moody, The Tool Engineer, October 1955, for the method; ISO 12781-1 for the planes, from memory",
            Jack: JackView.Of(jack, unit));
    }

    /// <summary>A length in micrometres, to a hundredth of one.</summary>
    private static string Um(double mm) => Units.Joined(Figures.Fixed(mm * 1000, 2).Replace('-', '−'), "um");
}

/// <summary>A section with its deviations drawn many times as large.</summary>
/// <param name="Path">The profile.</param>
public sealed record RoundView(string Path, double Inner, double Outer, string Times, IReadOnlyList<(double X, double Y, string Text)> Labels)
{
    private const double Middle = 100, Band = 34;

    public static RoundView Of(IReadOnlyList<Point2> points, CircleZone zone)
    {
        var over = points.Select(p => Math.Sqrt((p.X - zone.X) * (p.X - zone.X) + (p.Y - zone.Y) * (p.Y - zone.Y)) - zone.Radius).ToArray();
        var (least, most) = (over.Min(), over.Max());
        var scale = most > least ? Band / (most - least) : 0;
        double Drawn(double o) => Middle + (o - (least + most) / 2) * scale;
        (double X, double Y) At(int i, double r) => (180 + r * Math.Cos(2 * Math.PI * i / points.Count), 150 - r * Math.Sin(2 * Math.PI * i / points.Count));
        var places = over.Select((o, i) => At(i, Drawn(o))).ToArray();
        return new RoundView(
            $"M{string.Join('L', places.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.X:0.#} {p.Y:0.#}")))}Z",
            Drawn(least), Drawn(most),
            scale > 0 ? (scale * zone.Radius / Middle).ToString("0", CultureInfo.InvariantCulture) : "1",
            [.. over.Select((o, i) => (At(i, 136).X, At(i, 136).Y + 4, FitView.Signed(o * 1000)))]);
    }
}

/// <summary>A Union Jack with the heights of its nine chief stations, µm.</summary>
public sealed record JackView(IReadOnlyList<(double X, double Y, string Text, string Anchor)> Stations)
{
    public static JackView Of(UnionJack jack, double unit)
    {
        string Um(double z) => FitView.Signed(z * unit * 1000);
        double Mid(double[] line) => line[line.Length / 2];
        return new JackView(
        [
            (30, 20, Um(jack.DiagonalNorthWest[0]), "start"), (180, 20, Um(Mid(jack.North)), "middle"), (330, 20, Um(jack.DiagonalNorthEast[0]), "end"),
            (30, 120, Um(Mid(jack.West)), "start"), (180, 120, Um(Mid(jack.DiagonalNorthWest)), "middle"), (330, 120, Um(Mid(jack.East)), "end"),
            (30, 220, Um(jack.DiagonalNorthEast[^1]), "start"), (180, 220, Um(Mid(jack.South)), "middle"), (330, 220, Um(jack.DiagonalNorthWest[^1]), "end"),
        ]);
    }
}
