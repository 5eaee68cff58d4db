using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Lifting;

/// <summary>Where a body on legs comes to rest under one hook.</summary>
/// <param name="Hook">The hook's place in the body's own axes, mm.</param>
/// <param name="Up">True upright in the body's own axes.</param>
/// <param name="Carrying">The legs that carry.</param>
internal sealed record Rest(Point3 Hook, Point3 Up, IReadOnlyList<int> Carrying);

/// <summary>
/// Rest of a rigid body that hangs from one hook on legs that can pull and not push. Seen from the body the hook may be anywhere within
/// reach of every leg; the body hangs lowest where the hook is farthest from the centre of mass. That place lies where one, two or three legs are taut.
/// </summary>
internal static class Settling
{
    private const double Close = 1e-7;

    /// <summary>The rest with the body upright, or null where it has none and would turn over.</summary>
    public static Rest? Find(IReadOnlyList<Point3> points, IReadOnlyList<double> lengths, Point3 centre)
    {
        Rest? best = null;
        foreach (var legs in Subsets(points.Count))
        {
            foreach (var hook in Places(points, lengths, centre, legs))
            {
                var up = (hook - centre).Unit;
                var reached = Enumerable.Range(0, points.Count).All(j => legs.Contains(j) || (hook - points[j]).Norm <= lengths[j] * (1 + Close));
                if (reached && up.Z > 0 && Pulls(points, hook, up, legs) is not null && (best is null || (hook - centre).Norm > (best.Hook - centre).Norm * (1 + Close)))
                    best = new Rest(hook, up, legs);
            }
        }

        return best;
    }

    /// <summary>Pulls of the legs, as parts of the weight, that hold the body at rest with no others carrying; null where a leg would have to push.</summary>
    public static double[]? Pulls(IReadOnlyList<Point3> points, Point3 hook, Point3 up, IReadOnlyList<int> legs)
    {
        var units = legs.Select(j => (hook - points[j]).Unit).ToArray();
        var pulls = units.Length switch
        {
            1 => [units[0].Dot(up)],
            2 => Two(units[0], units[1], up),
            _ => Three(units[0], units[1], units[2], up),
        };
        if (pulls is null || pulls.Any(pull => pull < -Close))
            return null;
        var held = units.Zip(pulls, (unit, pull) => pull * unit).Aggregate((a, b) => a + b);
        return (held - up).Norm < 1e-6 ? pulls : null;
    }

    /// <summary>Every choice of one to three legs, three first: the more legs carry, the better the rest is held.</summary>
    public static IEnumerable<int[]> Subsets(int count)
    {
        for (var size = Math.Min(3, count); size >= 1; size--)
        {
            for (var mask = 1; mask < 1 << count; mask++)
            {
                var legs = Enumerable.Range(0, count).Where(j => (mask >> j & 1) == 1).ToArray();
                if (legs.Length == size)
                    yield return legs;
            }
        }
    }

    private static IEnumerable<Point3> Places(IReadOnlyList<Point3> points, IReadOnlyList<double> lengths, Point3 centre, int[] legs) => legs.Length switch
    {
        1 => (points[legs[0]] - centre).Norm > Close
            ? [points[legs[0]] + lengths[legs[0]] * (points[legs[0]] - centre).Unit]
            : [points[legs[0]] + lengths[legs[0]] * new Point3(0, 0, 1)],
        2 => OnCircle(points[legs[0]], lengths[legs[0]], points[legs[1]], lengths[legs[1]], centre),
        _ => OnThree(points[legs[0]], lengths[legs[0]], points[legs[1]], lengths[legs[1]], points[legs[2]], lengths[legs[2]]),
    };

    /// <summary>Where both legs are taut and the hook is farthest from the centre.</summary>
    private static IEnumerable<Point3> OnCircle(Point3 a, double la, Point3 b, double lb, Point3 centre)
    {
        var span = (b - a).Norm;
        if (span < Close)
            yield break;
        var axis = (b - a).Unit;
        var along = (la * la - lb * lb + span * span) / (2 * span);
        var square = la * la - along * along;
        if (square < 0)
            yield break;
        var middle = a + along * axis;
        var away = middle - centre;
        away -= away.Dot(axis) * axis;
        if (away.Norm < Close)
        {
            var up = new Point3(0, 0, 1);
            away = up - up.Dot(axis) * axis;
        }

        if (away.Norm >= Close)
            yield return middle + Math.Sqrt(square) * away.Unit;
    }

    /// <summary>Where three legs are taut: up to two places.</summary>
    private static IEnumerable<Point3> OnThree(Point3 a, double la, Point3 b, double lb, Point3 c, double lc)
    {
        var d = (b - a).Norm;
        if (d < Close)
            yield break;
        var ex = (b - a).Unit;
        var i = ex.Dot(c - a);
        var sideways = c - a - i * ex;
        var j = sideways.Norm;
        if (j < 1e-6 * d)
            yield break;
        var ey = sideways.Unit;
        var x = (la * la - lb * lb + d * d) / (2 * d);
        var y = (la * la - lc * lc + i * i + j * j - 2 * i * x) / (2 * j);
        var square = la * la - x * x - y * y;
        if (square < 0)
            yield break;
        var flat = a + x * ex + y * ey;
        var high = Math.Sqrt(square) * ex.Cross(ey);
        yield return flat + high;
        yield return flat - high;
    }

    private static double[]? Two(Point3 a, Point3 b, Point3 up)
    {
        // The three arrows lie in one plane; solved by least squares, and the rest is looked at afterwards.
        var ab = a.Dot(b);
        var det = 1 - ab * ab;
        return det < 1e-12 ? null : [(a.Dot(up) - ab * b.Dot(up)) / det, (b.Dot(up) - ab * a.Dot(up)) / det];
    }

    private static double[]? Three(Point3 a, Point3 b, Point3 c, Point3 up)
    {
        var det = a.Dot(b.Cross(c));
        return Math.Abs(det) < 1e-9 ? null : [up.Dot(b.Cross(c)) / det, a.Dot(up.Cross(c)) / det, a.Dot(b.Cross(up)) / det];
    }
}
