using System.Globalization;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Shapes;

/// <summary>Readings of a shape as people write them down: rows of figures, parted by blanks, tabs or semicolons. Every reader says all that is wrong.</summary>
public static class ShapeText
{
    private static readonly char[] s_gaps = [' ', '\t', ';', '\r'];

    /// <summary>Rows of figures, either decimal mark.</summary>
    /// <param name="text">The text.</param>
    /// <param name="where">The place, for messages.</param>
    /// <returns>The rows that are not empty, or every figure that is none.</returns>
    public static Outcome<double[][]> Rows(string text, string where)
    {
        ArgumentNullException.ThrowIfNull(text);
        var faults = new List<Refusal>();
        var rows = text.Split('\n').Select((line, i) => (Cells: line.Split(s_gaps, StringSplitOptions.RemoveEmptyEntries), Number: i + 1)).Where(r => r.Cells.Length > 0)
            .Select(r => r.Cells.Select(cell => Number(cell, $"{where}, line {r.Number}", faults)).ToArray())
            .ToArray();
        return faults.Count > 0 ? Outcome.Refused<double[][]>(faults) : Outcome.Of(rows);
    }

    /// <summary>A section: readings of a dial at equal steps all round, each over the same circle.</summary>
    /// <param name="text">Four readings or more, in the unit of <paramref name="unitMillimetres"/>.</param>
    /// <param name="radius">Radius of the circle that they are read from, mm.</param>
    /// <param name="unitMillimetres">What one unit of a reading is, mm.</param>
    /// <returns>The points, or why there are none.</returns>
    public static Outcome<IReadOnlyList<Point2>> Section(string text, double radius, double unitMillimetres) => Rows(text, "readings").Then(rows =>
    {
        var readings = rows.SelectMany(r => r).ToArray();
        if (readings.Length < 4)
            return Outcome.Refused<IReadOnlyList<Point2>>(new Refusal("readings", $"{readings.Length} figures", "four or more, at equal steps all round", "Read more places: twelve show up to six lobes"));
        return !(radius > 0) || readings.Any(r => radius + r * unitMillimetres <= 0)
            ? Outcome.Refused<IReadOnlyList<Point2>>(new Refusal("radius", FormattableString.Invariant($"{radius} mm"), "above zero, and larger than what is read from it", "Type half of the diameter"))
            : Outcome.Of<IReadOnlyList<Point2>>([.. readings.Select((r, i) => At(i, readings.Length, radius + r * unitMillimetres))]);
    });

    /// <summary>A cylinder: a line for each section, its height first, then readings at equal steps all round.</summary>
    /// <param name="text">Two sections or more of three readings or more.</param>
    /// <param name="radius">Radius of the circle that they are read from, mm.</param>
    /// <param name="unitMillimetres">What one unit of a reading is, mm; heights are in mm.</param>
    /// <returns>The points, or why there are none.</returns>
    public static Outcome<IReadOnlyList<Point3>> Cylinder(string text, double radius, double unitMillimetres) => Rows(text, "sections").Then(rows =>
    {
        var faults = rows.Where(r => r.Length < 4).Select(r => new Refusal("sections", $"a line of {r.Length} figures", "a height, then three readings or more", "Type the height of the section first, in mm")).ToList();
        if (faults.Count == 0 && rows.Select(r => r[0]).Distinct().Count() < 2)
            faults.Add(new Refusal("sections", rows.Length == 1 ? "one section" : $"{rows.Length} sections at one height", "two heights or more", "Read another height"));
        if (!(radius > 0) || rows.Any(r => r.Skip(1).Any(v => radius + v * unitMillimetres <= 0)))
            faults.Add(new Refusal("radius", FormattableString.Invariant($"{radius} mm"), "above zero, and larger than what is read from it", "Type half of the diameter"));
        return faults.Count > 0
            ? Outcome.Refused<IReadOnlyList<Point3>>(faults)
            : Outcome.Of<IReadOnlyList<Point3>>([.. rows.SelectMany(r => r.Skip(1).Select((v, i) => At(i, r.Length - 1, radius + v * unitMillimetres)).Select(p => new Point3(p.X, p.Y, r[0])))]);
    });

    /// <summary>A face: rows of heights on an even grid.</summary>
    /// <param name="text">Two rows or more of two heights or more, all alike long.</param>
    /// <returns>The rows, or why there are none.</returns>
    public static Outcome<double[][]> Face(string text) => Rows(text, "heights").Then(rows =>
        rows.Length < 2 || rows.Any(r => r.Length < 2)
            ? Outcome.Refused<double[][]>(new Refusal("heights", rows.Length == 0 ? "nothing" : $"{rows.Length} rows, the shortest of {rows.Min(r => r.Length)}", "two rows or more of two heights or more", "Type a row of the grid on each line"))
            : rows.Any(r => r.Length != rows[0].Length)
                ? Outcome.Refused<double[][]>(new Refusal("heights", $"rows of {string.Join(", ", rows.Select(r => r.Length))} heights", "as many in each row", "Read the missing places"))
                : Outcome.Of(rows));

    /// <summary>One line of a Union Jack.</summary>
    /// <param name="text">An even number of readings, two or more, in the order of the foot's stations.</param>
    /// <param name="where">Which line, for messages.</param>
    /// <returns>The readings, or why there are none.</returns>
    public static Outcome<double[]> Line(string text, string where) => Rows(text, where).Then(rows =>
        rows.SelectMany(r => r).ToArray() is { Length: >= 2 } readings && readings.Length % 2 == 0
            ? Outcome.Of(readings)
            : Outcome.Refused<double[]>(new Refusal(where, rows.Length == 0 ? "nothing" : $"{rows.Sum(r => r.Length)} readings", "an even number of readings, so that the line has a middle", "Read the line again with a foot that fits it an even number of times")));

    private static Point2 At(int index, int count, double radius)
    {
        var angle = 2 * Math.PI * index / count;
        return new Point2(radius * Math.Cos(angle), radius * Math.Sin(angle));
    }

    private static double Number(string cell, string where, List<Refusal> faults)
    {
        if (double.TryParse(cell.Replace(',', '.').Replace('−', '-'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value))
            return value;
        faults.Add(new Refusal(where, $"\"{cell}\"", "a plain figure", "Type figures only, with gaps between them"));
        return 0;
    }
}
