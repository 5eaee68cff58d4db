using System.Globalization;
using Gudgeon.Journal;
using Gudgeon.Sums.Quantities;
using Gudgeon.Sums.Shapes;

namespace Gudgeon.Pages.Measure.Charts;

/// <summary>A line of equal height.</summary>
public sealed record Contour(double Level, string Path)
{
    public bool IsZero => Math.Abs(Level) < 1e-9;
}

/// <summary>A spot of a face in the picture.</summary>
/// <param name="Anchor">The end of its label that stays within the picture.</param>
public sealed record FaceSpot(double X, double Y, string Text, string Word, string Anchor)
{
    public double LabelX => Anchor switch
    {
        "start" => X - 14,
        "end" => X + 14,
        _ => X,
    };
}

/// <summary>A face as contours of its heights over the middle plane of the minimum zone.</summary>
public sealed record FaceView(string Title, int Rows, int Columns, IReadOnlyList<FaceSpot> Spots, IReadOnlyList<Contour> Contours, double Every, string Aloud)
{
    /// <summary>Width of every face in its picture: however many columns it has, it fits the phone.</summary>
    public const int Across = 320;

    public const int StepY = 70;

    private const int Fine = 8;

    public static FaceView? Of(Bench bench, Assessment face)
    {
        var spots = face.Characteristic.Spots;
        var read = spots.Select(s => bench.ReadingsAt(new Slot(face.Place.Part, face.Characteristic.Id, face.Place.Number, s.Id)).Where(r => r.Counts).Select(r => r.Taken.Value).ToArray()).ToArray();
        if (read.Any(r => r.Length == 0))
            return null;
        return Of(face.Place.Name, [.. read.Select(r => r.Average())], spots.Select(s => s.Column).Distinct().Count(), [.. spots.Select(s => s.Name)]);
    }

    /// <summary>A face from heights in mm, row by row.</summary>
    public static FaceView Of(string title, double[] heights, int columns, IReadOnlyList<string> names)
    {
        var rows = heights.Length / columns;
        var stepX = (double)Across / (columns - 1);
        var points = heights.Select((h, i) => new Point3(i % columns, i / columns, h)).ToArray();
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
            title.Sentence(), rows, columns,
            [.. points.Select((p, i) => new FaceSpot(20 + p.X * stepX, 20 + p.Y * StepY, Units.Plain(Math.Round(over[i])), i == high ? "high" : i == low ? "low" : "", p.X == 0 ? "start" : p.X == columns - 1 ? "end" : "middle"))],
            contours, every,
            $"Heights of {title}: highest at {names[high]}, lowest at {names[low]}, {Units.Plain(Math.Round(over.Max() - over.Min(), 1))} micrometres apart");
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
        var stepX = (double)Across / (columns - 1);
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
                    path.Append(CultureInfo.InvariantCulture, $"M{20 + cuts[k].X * stepX / Fine:0.#} {20 + cuts[k].Y * StepY / Fine:0.#}L{20 + cuts[k + 1].X * stepX / Fine:0.#} {20 + cuts[k + 1].Y * StepY / Fine:0.#}");
            }
        }

        return path.ToString();
    }
}
