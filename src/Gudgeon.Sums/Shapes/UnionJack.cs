using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Shapes;

/// <summary>The eight lines of a face, each read from one end to the other with a level or an autocollimator on a foot.</summary>
/// <param name="DiagonalNorthWest">North-west to south-east.</param>
/// <param name="DiagonalNorthEast">North-east to south-west.</param>
/// <param name="North">East to west along the north edge.</param>
/// <param name="East">North to south along the east edge.</param>
/// <param name="South">East to west along the south edge.</param>
/// <param name="West">North to south along the west edge.</param>
/// <param name="CentreAcross">East to west through the centre.</param>
/// <param name="CentreDown">North to south through the centre.</param>
public sealed record UnionJackReadings(
    double[] DiagonalNorthWest, double[] DiagonalNorthEast, double[] North, double[] East, double[] South, double[] West,
    double[] CentreAcross, double[] CentreDown);

/// <summary>Heights of a face worked out from the eight lines, in units of one reading times one foot.</summary>
/// <remarks>Source: J. C. Moody, How to calibrate surface plates in the plant, The Tool Engineer, October 1955.</remarks>
public sealed class UnionJack
{
    /// <summary>Works out the heights.</summary>
    /// <param name="readings">The eight lines; each an even number of readings, two or more, so that it has a mid-station.</param>
    public UnionJack(UnionJackReadings readings)
    {
        DiagonalNorthWest = Levelled(Heights(readings.DiagonalNorthWest));
        DiagonalNorthEast = Levelled(Heights(readings.DiagonalNorthEast));
        double northWest = DiagonalNorthWest[0], southEast = DiagonalNorthWest[^1], northEast = DiagonalNorthEast[0], southWest = DiagonalNorthEast[^1];
        North = Through(Heights(readings.North), northEast, northWest);
        East = Through(Heights(readings.East), northEast, southEast);
        South = Through(Heights(readings.South), southEast, southWest);
        West = Through(Heights(readings.West), northWest, southWest);
        var across = Through(Heights(readings.CentreAcross), Middle(East), Middle(West));
        var down = Through(Heights(readings.CentreDown), Middle(North), Middle(South));
        (ClosureAcross, ClosureDown) = (Middle(across), Middle(down));
        CentreAcross = Array.ConvertAll(across, z => z - ClosureAcross);
        CentreDown = Array.ConvertAll(down, z => z - ClosureDown);
    }

    /// <summary>Heights from north-west to south-east; zero in the middle, alike at both ends.</summary>
    public double[] DiagonalNorthWest { get; }

    /// <summary>Heights from north-east to south-west; zero in the middle, alike at both ends.</summary>
    public double[] DiagonalNorthEast { get; }

    /// <summary>Heights along the north edge, east to west.</summary>
    public double[] North { get; }

    /// <summary>Heights along the east edge, north to south.</summary>
    public double[] East { get; }

    /// <summary>Heights along the south edge, east to west.</summary>
    public double[] South { get; }

    /// <summary>Heights along the west edge, north to south.</summary>
    public double[] West { get; }

    /// <summary>Heights through the centre, east to west, its closing error shifted out.</summary>
    public double[] CentreAcross { get; }

    /// <summary>Heights through the centre, north to south, its closing error shifted out.</summary>
    public double[] CentreDown { get; }

    /// <summary>By how much the centre line across missed the centre: a measure of the work, not of the face.</summary>
    public double ClosureAcross { get; }

    /// <summary>By how much the centre line down missed the centre.</summary>
    public double ClosureDown { get; }

    /// <summary>Highest less lowest of all stations, by the plane of the diagonals.</summary>
    public double Total => All.Max() - All.Min();

    /// <summary>All heights, line by line.</summary>
    public IEnumerable<double> All =>
        new[] { DiagonalNorthWest, DiagonalNorthEast, North, East, South, West, CentreAcross, CentreDown }.SelectMany(line => line);

    /// <summary>All stations as points, for a least-squares or minimum-zone plane. East is +x, north is +y, the centre is the origin.</summary>
    /// <param name="halfLength">Half the distance between the east and west edges.</param>
    /// <param name="halfWidth">Half the distance between the north and south edges.</param>
    /// <param name="unit">What one unit of height is, in the unit wanted: reading unit in radians times foot.</param>
    /// <returns>The points.</returns>
    public IReadOnlyList<Point3> Points(double halfLength, double halfWidth, double unit)
    {
        double e = halfLength, n = halfWidth;
        return
        [
            .. Line(DiagonalNorthWest, -e, n, e, -n, unit), .. Line(DiagonalNorthEast, e, n, -e, -n, unit), .. Line(North, e, n, -e, n, unit),
            .. Line(East, e, n, e, -n, unit), .. Line(South, e, -n, -e, -n, unit), .. Line(West, -e, n, -e, -n, unit),
            .. Line(CentreAcross, e, 0, -e, 0, unit), .. Line(CentreDown, 0, n, 0, -n, unit),
        ];
    }

    private static IEnumerable<Point3> Line(double[] z, double x1, double y1, double x2, double y2, double unit) =>
        z.Select((height, i) => new Point3(x1 + (x2 - x1) * i / (z.Length - 1), y1 + (y2 - y1) * i / (z.Length - 1), height * unit));

    // The foot at station k reads the slope from k − 1 to k; the first reading only sets the level.
    private static double[] Heights(double[] readings)
    {
        if (readings.Length < 2 || readings.Length % 2 != 0)
            throw new ArgumentException($"A line needs an even number of readings, so that it has a mid-station; there are {readings.Length}.", nameof(readings));
        var heights = new double[readings.Length + 1];
        for (var i = 0; i < readings.Length; i++)
            heights[i + 1] = heights[i] + readings[i] - readings[0];
        return heights;
    }

    private static double[] Levelled(double[] heights)
    {
        var level = Through(heights, 0, 0);
        var middle = Middle(level);
        return Array.ConvertAll(level, z => z - middle);
    }

    private static double[] Through(double[] heights, double first, double last)
    {
        var slope = (last - heights[^1] - first + heights[0]) / (heights.Length - 1);
        return [.. heights.Select((z, i) => z - heights[0] + first + slope * i)];
    }

    private static double Middle(double[] line) => line[line.Length / 2];
}
