using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Lifting;

/// <summary>What lies between places, seen from above.</summary>
internal static class Footprint
{
    /// <summary>True when a place lies strictly between the given ones, seen from above; along the line only, where they stand in one line.</summary>
    public static bool Holds(IReadOnlyList<Point3> points, Point3 place)
    {
        var hull = Hull([.. points.Select(p => (p.X, p.Y))]);
        if (hull.Count < 3)
        {
            var (a, b) = (hull[0], hull[^1]);
            var (dx, dy) = (b.X - a.X, b.Y - a.Y);
            var along = ((place.X - a.X) * dx + (place.Y - a.Y) * dy) / (dx * dx + dy * dy);
            return along is > 0 and < 1;
        }

        for (var i = 0; i < hull.Count; i++)
        {
            if (Turn(hull[i], hull[(i + 1) % hull.Count], (place.X, place.Y)) <= 0)
                return false;
        }

        return true;
    }

    /// <summary>Outline of places, anticlockwise; two places when all stand in one line.</summary>
    public static IReadOnlyList<(double X, double Y)> Hull(IReadOnlyList<(double X, double Y)> places)
    {
        var sorted = places.Distinct().OrderBy(p => p.X).ThenBy(p => p.Y).ToList();
        if (sorted.Count < 3)
            return sorted;
        var scale = Math.Max(sorted.Max(p => p.X) - sorted.Min(p => p.X), sorted.Max(p => p.Y) - sorted.Min(p => p.Y));
        List<(double X, double Y)> Half(IEnumerable<(double X, double Y)> way)
        {
            var chain = new List<(double X, double Y)>();
            foreach (var p in way)
            {
                while (chain.Count >= 2 && Turn(chain[^2], chain[^1], p) <= 1e-9 * scale * scale)
                    chain.RemoveAt(chain.Count - 1);
                chain.Add(p);
            }

            chain.RemoveAt(chain.Count - 1);
            return chain;
        }

        return [.. Half(sorted), .. Half(Enumerable.Reverse(sorted))];
    }

    private static double Turn((double X, double Y) a, (double X, double Y) b, (double X, double Y) p) => (b.X - a.X) * (p.Y - a.Y) - (b.Y - a.Y) * (p.X - a.X);
}
