namespace Gudgeon.Sums.Fasteners;

/// <summary>Where a fastener sits on a picture of the joint: x to the right, y down, in any one unit.</summary>
public readonly record struct PlanePoint(double X, double Y)
{
    internal double DistanceTo(PlanePoint other) => Math.Sqrt((X - other.X) * (X - other.X) + (Y - other.Y) * (Y - other.Y));

    /// <summary>Degrees clockwise from the right, as seen on the picture.</summary>
    internal double AngleFrom(PlanePoint centre) => Math.Atan2(Y - centre.Y, X - centre.X) * 180 / Math.PI;

    internal static PlanePoint MiddleOf(IReadOnlyList<PlanePoint> points) => new(points.Average(p => p.X), points.Average(p => p.Y));

    /// <summary>The points of a bolt circle, number 1 at the top, clockwise.</summary>
    public static IReadOnlyList<PlanePoint> Circle(int count, double radius) =>
        [.. Enumerable.Range(0, count).Select(k => 2 * Math.PI * k / count).Select(a => new PlanePoint(radius * Math.Sin(a), -radius * Math.Cos(a)))];

    /// <summary>The points of a grid, row by row from the top left.</summary>
    public static IReadOnlyList<PlanePoint> Grid(int columns, int rows, double columnPitch, double rowPitch) =>
        [.. from row in Enumerable.Range(0, rows) from column in Enumerable.Range(0, columns) select new PlanePoint(column * columnPitch, row * rowPitch)];
}
