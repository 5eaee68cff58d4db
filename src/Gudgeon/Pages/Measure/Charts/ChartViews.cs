using System.Globalization;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Sums.Shapes;

namespace Gudgeon.Pages.Measure.Charts;

/// <summary>One row of a band chart.</summary>
/// <param name="Low">Smallest figure of the place.</param>
/// <param name="High">Largest figure.</param>
/// <param name="U">Expanded uncertainty; 0 where none is known.</param>
public sealed record BandRow(string Name, double Low, double High, double U, string Shown, Call Call)
{
    public double Middle => (Low + High) / 2;

    /// <summary>Rows of one characteristic, place by place.</summary>
    public static IReadOnlyList<BandRow> Of(IEnumerable<Assessment> places) =>
    [
        .. places.Where(a => a.IsStarted).Select(a => new BandRow(
            a.Place.Name,
            a.Figures.Min(f => f.Value),
            a.Figures.Max(f => f.Value),
            a.Figures.Max(f => f.Expanded ?? 0),
            a.Figures.Count == 1 ? a.Figures[0].Shown : $"{Units.Plain(a.Figures.Min(f => f.Value))} to {Units.Plain(a.Figures.Max(f => f.Value))}",
            a.Call)),
    ];
}

/// <summary>A point of a time line.</summary>
public sealed record TimePoint(string Day, double Value, double U)
{
    /// <summary>Every reading that counts at a place, in order.</summary>
    public static IReadOnlyList<TimePoint> Of(Bench bench, Assessment place) =>
    [
        .. bench.Readings.Values
            .Where(r => r.Counts && r.Taken.Part == place.Place.Part && r.Taken.Characteristic == place.Characteristic.Id && r.Taken.Place == place.Place.Number)
            .OrderBy(r => r.At)
            .Select(r => new TimePoint(r.At.ToString("d MMM yyyy", CultureInfo.InvariantCulture), r.Taken.Value, r.Taken.Instrument is { } id && bench.Instruments.TryGetValue(id, out var i) ? i.Expanded : 0)),
    ];
}

/// <summary>A bore as a map: micrometres over its smallest reading.</summary>
public sealed record BoreView(string Title, IReadOnlyList<string> Rows, IReadOnlyList<string> Columns, double?[][] Cells, bool TwoPoint)
{
    private const double WidestInPicture = 26;

    public static BoreView? Of(Bench bench, Assessment bore)
    {
        var grid = bore.Characteristic.Spots.Where(s => s.Column.Length > 0).ToArray();
        var rows = grid.Select(s => s.Row).Distinct().ToArray();
        var columns = grid.Select(s => s.Column).Distinct().ToArray();
        var values = bore.Figures.ToDictionary(f => f.Spot, f => f.Value);
        if (columns.Length != 2 || rows.Length < 2 || values.Count < 2)
            return null;
        var least = grid.Where(s => values.ContainsKey(s.Id)).Min(s => values[s.Id]);
        double? Over(string row, string column) => values.TryGetValue($"{row}.{column}", out var v) ? Math.Round((v - least) * 1000, 1) : null;
        var sees = bore.Characteristic.Tool is "bg" or "sg";
        return new BoreView(bore.Place.Name.Sentence(), rows, columns, [.. rows.Select(r => columns.Select(c => Over(r, c)).ToArray())], sees);
    }

    private double Most => Cells.SelectMany(r => r).Max(c => c ?? 0);

    /// <summary>Hatching from 0 (as the smallest) to 4 (as the largest).</summary>
    public int Level(double over) => Most > 0 ? (int)Math.Round(over / Most * 4) : 0;

    /// <summary>Units of the picture for a micrometre on radius.</summary>
    public double PerMicrometre => Most > 0 ? WidestInPicture / Most : 0;

    /// <summary>How many times as large the section shows the wear, told roundly: a bore of 68 units stands for its diameter.</summary>
    public string Times => Most > 0 ? Math.Pow(10, Math.Round(Math.Log10(PerMicrometre * 1000 / 0.8))).ToString("0", CultureInfo.InvariantCulture) : "1";

    public string Aloud => $"{Title}: {string.Join("; ", Rows.Select((r, i) => $"{r} {string.Join(", ", Columns.Select((c, j) => Cells[i][j] is { } v ? $"{c} {v.ToString("0.#", CultureInfo.InvariantCulture)}" : $"{c} not read"))}"))} micrometres over the smallest";
}

/// <summary>A line of equal height.</summary>
public sealed record Contour(double Level, string Path)
{
    public bool IsZero => Math.Abs(Level) < 1e-9;
}

/// <summary>A spot of a face in the picture.</summary>
public sealed record FaceSpot(double X, double Y, string Text, string Word);

/// <summary>A face as contours of its heights over the middle plane of the minimum zone.</summary>
public sealed record FaceView(string Title, int Rows, int Columns, IReadOnlyList<FaceSpot> Spots, IReadOnlyList<Contour> Contours, double Every, string Aloud)
{
    private const int Fine = 8;

    public static FaceView? Of(Bench bench, Assessment face)
    {
        var spots = face.Characteristic.Spots;
        var read = spots.Select(s => bench.ReadingsAt(new Slot(face.Place.Part, face.Characteristic.Id, face.Place.Number, s.Id)).Where(r => r.Counts).Select(r => r.Taken.Value).ToArray()).ToArray();
        if (read.Any(r => r.Length == 0))
            return null;
        var (rows, columns) = (spots.Select(s => s.Row).Distinct().Count(), spots.Select(s => s.Column).Distinct().Count());
        var points = read.Select((r, i) => new Point3(i % columns, i / columns, r.Average())).ToArray();
        var plane = Flatness.MinimumZone(points);
        var over = points.Select(p => plane.Over(p) * 1000).ToArray();
        var every = Step(over.Max() - over.Min());
        double At(double x, double y)
        {
            var (c, r) = (Math.Min((int)x, columns - 2), Math.Min((int)y, rows - 2));
            var (u, v) = (x - c, y - r);
            double Z(int dc, int dr) => over[(r + dr) * columns + c + dc];
            return Z(0, 0) * (1 - u) * (1 - v) + Z(1, 0) * u * (1 - v) + Z(0, 1) * (1 - u) * v + Z(1, 1) * u * v;
        }

        var contours = Enumerable.Range((int)Math.Ceiling(over.Min() / every), Math.Max(0, (int)Math.Floor(over.Max() / every) - (int)Math.Ceiling(over.Min() / every) + 1))
            .Select(k => new Contour(k * every, Line(At, k * every, columns, rows))).ToArray();
        var (high, low) = (Array.IndexOf(over, over.Max()), Array.IndexOf(over, over.Min()));
        return new FaceView(
            face.Place.Name.Sentence(), rows, columns,
            [.. points.Select((p, i) => new FaceSpot(20 + p.X * 80, 20 + p.Y * 70, Units.Plain(Math.Round(over[i])), i == high ? "high" : i == low ? "low" : ""))],
            contours, every,
            $"Heights of {face.Place.Name}: highest at {spots[high].Name}, lowest at {spots[low].Name}, {Units.Plain(Math.Round(over.Max() - over.Min(), 1))} micrometres apart");
    }

    /// <summary>1, 2 or 5 times a power of ten, so that five to ten lines are drawn.</summary>
    private static double Step(double range)
    {
        if (!(range > 1e-9))
            return 1;
        var rough = range / 6;
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        return power * (rough / power < 1.5 ? 1 : rough / power < 3.5 ? 2 : 5);
    }

    /// <summary>Marching squares over a grid finer than the spots.</summary>
    private static string Line(Func<double, double, double> at, double level, int columns, int rows)
    {
        var path = new System.Text.StringBuilder();
        for (var j = 0; j < (rows - 1) * Fine; j++)
        {
            for (var i = 0; i < (columns - 1) * Fine; i++)
            {
                (double X, double Y)[] corners = [(i, j), (i + 1, j), (i + 1, j + 1), (i, j + 1)];
                var heights = corners.Select(c => at(c.X / Fine, c.Y / Fine) - level).ToArray();
                var cuts = new List<(double X, double Y)>();
                for (var k = 0; k < 4; k++)
                {
                    var (a, b) = (heights[k], heights[(k + 1) % 4]);
                    if ((a < 0) == (b < 0))
                        continue;
                    var (from, to) = (corners[k], corners[(k + 1) % 4]);
                    cuts.Add((from.X + a / (a - b) * (to.X - from.X), from.Y + a / (a - b) * (to.Y - from.Y)));
                }

                for (var k = 0; k + 1 < cuts.Count; k += 2)
                    path.Append(CultureInfo.InvariantCulture, $"M{20 + cuts[k].X * 80 / Fine:0.#} {20 + cuts[k].Y * 70 / Fine:0.#}L{20 + cuts[k + 1].X * 80 / Fine:0.#} {20 + cuts[k + 1].Y * 70 / Fine:0.#}");
            }
        }

        return path.ToString();
    }
}
