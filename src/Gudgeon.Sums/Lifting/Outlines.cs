namespace Gudgeon.Sums.Lifting;

/// <summary>Distances between outlines on the floor.</summary>
internal static class Outlines
{
    /// <summary>Least distance between two outlines; 0 where they touch, cross, or one holds the other.</summary>
    public static double Distance(IReadOnlyList<FloorPoint> a, IReadOnlyList<FloorPoint> b) =>
        Holds(a, b[0]) || Holds(b, a[0]) ? 0 : BetweenEdges(a, b);

    /// <summary>Least distance from an outline to the walls round it; 0 where it touches or is outside.</summary>
    public static double DistanceWithin(IReadOnlyList<FloorPoint> inner, IReadOnlyList<FloorPoint> walls) =>
        inner.All(corner => Holds(walls, corner)) ? BetweenEdges(inner, walls) : 0;

    /// <summary>True when an outline holds a place: a ray to the right crosses its edges an odd number of times.</summary>
    public static bool Holds(IReadOnlyList<FloorPoint> outline, FloorPoint p)
    {
        var inside = false;
        for (int i = 0, j = outline.Count - 1; i < outline.Count; j = i++)
        {
            var (a, b) = (outline[i], outline[j]);
            if (a.Y > p.Y != b.Y > p.Y && p.X < (b.X - a.X) * (p.Y - a.Y) / (b.Y - a.Y) + a.X)
                inside = !inside;
        }

        return inside;
    }

    private static double BetweenEdges(IReadOnlyList<FloorPoint> a, IReadOnlyList<FloorPoint> b)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < a.Count; i++)
        {
            var (p, q) = (a[i], a[(i + 1) % a.Count]);
            for (var j = 0; j < b.Count; j++)
            {
                var (r, s) = (b[j], b[(j + 1) % b.Count]);
                if (Cross(p, q, r, s))
                    return 0;
                least = Math.Min(least, Math.Min(Math.Min(ToEdge(p, r, s), ToEdge(q, r, s)), Math.Min(ToEdge(r, p, q), ToEdge(s, p, q))));
            }
        }

        return least;
    }

    private static bool Cross(FloorPoint p, FloorPoint q, FloorPoint r, FloorPoint s) =>
        Side(p, q, r) * Side(p, q, s) < 0 && Side(r, s, p) * Side(r, s, q) < 0;

    private static double Side(FloorPoint a, FloorPoint b, FloorPoint p) => (b.X - a.X) * (p.Y - a.Y) - (b.Y - a.Y) * (p.X - a.X);

    private static double ToEdge(FloorPoint p, FloorPoint a, FloorPoint b)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var square = dx * dx + dy * dy;
        var along = square > 0 ? Math.Clamp(((p.X - a.X) * dx + (p.Y - a.Y) * dy) / square, 0, 1) : 0;
        return double.Hypot(p.X - a.X - along * dx, p.Y - a.Y - along * dy);
    }
}
