using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Fasteners;

/// <summary>
/// The order in which the fasteners of a joint are tightened, worked out from where they sit. The manual's own order goes before it.
/// </summary>
public static class TighteningOrder
{
    /// <summary>Fasteners nearer to one middle than this part of their spacing belong to the same round of the spiral.</summary>
    private const double RingWidth = 0.25;

    /// <summary>Pins are put on a photo by hand: angles closer than this count as the same direction.</summary>
    private const double SameDirectionDeg = 10;

    /// <summary>From the middle outwards, clockwise round after round: heads, main caps, long rows.</summary>
    /// <remarks>
    /// Formula: fasteners grouped by distance from the middle of the pattern; each group walked clockwise, going on from the last one.
    /// Units: any one unit for all. Range: one fastener or more, no two at one place. Errors: pins up to a tenth of the spacing off give the same order.
    /// Source: common practice, no source.
    /// </remarks>
    /// <returns>Places in the given list, first to tighten first.</returns>
    public static Outcome<IReadOnlyList<int>> SpiralFromCentre(IReadOnlyList<PlanePoint> points) => Check(points).Then(() => Spiral(points));

    /// <summary>From the ends inwards: the spiral backwards, for loosening.</summary>
    /// <remarks>
    /// Formula: reverse of <see cref="SpiralFromCentre"/>. Units, range, errors as there. Source: common practice, no source.
    /// </remarks>
    /// <returns>Places in the given list, first to loosen first.</returns>
    public static Outcome<IReadOnlyList<int>> LoosenFromTheEndsIn(IReadOnlyList<PlanePoint> points) =>
        Check(points).Then<IReadOnlyList<int>>(() => [.. Spiral(points).Reverse()]);

    /// <summary>Across and across again: round flanges and covers.</summary>
    /// <remarks>
    /// Formula: numbered clockwise from the top; with n divisible by 4, groups k, k + n/2, k + n/4, k + 3n/4; other even n, pairs k, k + n/2;
    /// odd n, every (n − 1)/2-th. Groups follow each other with a gap between neighbours.
    /// Units: any one unit. Range: one fastener or more, no two at one place, none at the middle when there are several. Errors: none.
    /// Source: legacy cross pattern of ASME PCC-1 (12 bolts read in a general page; 4, 8, 16, 20, 24 from memory); others common practice, no source.
    /// </remarks>
    /// <returns>Places in the given list, first to tighten first.</returns>
    public static Outcome<IReadOnlyList<int>> Cross(IReadOnlyList<PlanePoint> points) => Check(points).Go(() =>
    {
        if (points.Count == 1)
            return Outcome.Of<IReadOnlyList<int>>([0]);
        var round = Clockwise(points);
        return Middle(points).Then<IReadOnlyList<int>>(() => [.. CrossNumbers(points.Count).Select(number => round[number - 1])]);
    });

    /// <summary>One after the other round the joint: the last pass of a flange, until none moves.</summary>
    /// <remarks>
    /// Formula: by angle about the middle of the pattern, clockwise from the top. Units: any one unit. Range: as <see cref="Cross"/>. Errors: none.
    /// Source: ASME PCC-1 legacy method, last rounds (three flange guides that cite it).
    /// </remarks>
    /// <returns>Places in the given list, first to tighten first.</returns>
    public static Outcome<IReadOnlyList<int>> InCircles(IReadOnlyList<PlanePoint> points) =>
        Check(points).Go(() => points.Count == 1 ? Outcome.Of<IReadOnlyList<int>>([0]) : Middle(points).Then<IReadOnlyList<int>>(() => Clockwise(points)));

    /// <summary>Cross order of bolts that are numbered 1 to n round a circle.</summary>
    internal static IReadOnlyList<int> CrossNumbers(int count)
    {
        if (count % 4 == 0)
        {
            var quarter = count / 4;
            return [.. Spread(quarter).SelectMany(k => new[] { k, k + 2 * quarter, k + quarter, k + 3 * quarter })];
        }

        if (count % 2 == 0)
        {
            var half = count / 2;
            return [.. Star(half).SelectMany(k => new[] { k, k + half })];
        }

        return Star(count);
    }

    /// <summary>1 to n by steps of just under half, which meets every number when n is odd.</summary>
    private static IReadOnlyList<int> Star(int odd)
    {
        var step = Math.Max(1, odd / 2);
        return [.. Enumerable.Range(0, odd).Select(i => i * step % odd + 1)];
    }

    /// <summary>1 to n so that neighbours do not follow each other where that can be had; the first six as the legacy pattern has them.</summary>
    private static IReadOnlyList<int> Spread(int count) => count switch
    {
        1 => [1],
        2 => [1, 2],
        3 => [1, 2, 3],
        _ when count % 2 == 1 => [.. Enumerable.Range(0, count).Select(i => i * 2 % count + 1)],
        _ => [.. Enumerable.Range(0, count).Select(i => i / 2 + i % 2 * (count / 2) + 1)],
    };

    private static IReadOnlyList<int> Clockwise(IReadOnlyList<PlanePoint> points)
    {
        var middle = PlanePoint.MiddleOf(points);
        return [.. Enumerable.Range(0, points.Count).OrderBy(i => Turn(points[i].AngleFrom(middle), -90 - 1e-6)).ThenBy(i => points[i].DistanceTo(middle))];
    }

    private static IReadOnlyList<int> Spiral(IReadOnlyList<PlanePoint> points)
    {
        var middle = PlanePoint.MiddleOf(points);
        var width = RingWidth * Spacing(points);
        var left = Enumerable.Range(0, points.Count).OrderBy(i => points[i].DistanceTo(middle)).ToList();
        var order = new List<int>(points.Count);
        var from = -90 - SameDirectionDeg;
        while (left.Count > 0)
        {
            var inner = points[left[0]].DistanceTo(middle);
            var ring = left.TakeWhile(i => points[i].DistanceTo(middle) <= inner + width).ToList();
            left.RemoveRange(0, ring.Count);
            if (inner <= width)
            {
                // Nearer to the middle than a quarter of the spacing there is room for one alone.
                order.Add(ring[0]);
                continue;
            }

            order.AddRange(ring.OrderBy(i => Turn(points[i].AngleFrom(middle), from)));
            from = points[order[^1]].AngleFrom(middle) + SameDirectionDeg;
        }

        return order;
    }

    /// <summary>How far clockwise one must turn from a direction to an angle, 0 to 360°.</summary>
    private static double Turn(double angleDeg, double fromDeg)
    {
        var turn = (angleDeg - fromDeg) % 360;
        return turn < 0 ? turn + 360 : turn;
    }

    private static double Spacing(IReadOnlyList<PlanePoint> points)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < points.Count; i++)
        {
            for (var j = 0; j < i; j++)
                least = Math.Min(least, points[i].DistanceTo(points[j]));
        }

        return least;
    }

    private static InputCheck Check(IReadOnlyList<PlanePoint> points)
    {
        var check = new InputCheck().That(points.Count > 0, "fasteners", "none", "one or more", "Put a pin on each fastener");
        for (var i = 0; i < points.Count; i++)
        {
            check.That(double.IsFinite(points[i].X) && double.IsFinite(points[i].Y), $"fastener {i + 1}", $"{Show(points[i].X)}, {Show(points[i].Y)}",
                "a place on the picture", "Put its pin again");
        }

        if (!check.Clean)
            return check;
        var size = points.Max(p => p.DistanceTo(points[0]));
        for (var i = 0; i < points.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                check.That(points[i].DistanceTo(points[j]) > 1e-6 * size, $"fastener {i + 1}", $"the place of fastener {j + 1}",
                    "a place of its own", "Move or take away one of the two pins");
            }
        }

        return check;
    }

    private static InputCheck Middle(IReadOnlyList<PlanePoint> points)
    {
        var middle = PlanePoint.MiddleOf(points);
        var check = new InputCheck();
        var reach = points.Max(p => p.DistanceTo(middle));
        for (var i = 0; i < points.Count; i++)
        {
            check.That(points[i].DistanceTo(middle) > 0.05 * reach, $"fastener {i + 1}", "a place at the middle of the pattern",
                "fasteners round an open middle", "Use the spiral from the centre for this joint");
        }

        return check;
    }
}
