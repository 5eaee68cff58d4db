using Gudgeon.Sums;
using Gudgeon.Sums.Fasteners;

namespace Gudgeon.Journal;

/// <summary>How the fasteners of a joint sit, where no photo shows it.</summary>
public enum PatternSort
{
    /// <summary>Rows and columns, numbered row by row from the top left.</summary>
    Grid,

    /// <summary>Evenly on a circle, number 1 at the top, clockwise.</summary>
    Circle,

    /// <summary>One row.</summary>
    Line,

    /// <summary>Round a rectangle, as a sump or a cover has them; clockwise, number 1 at the top left.</summary>
    Rim,
}

/// <summary>Where a joint's fasteners sit and in which order they are tightened.</summary>
/// <param name="Places">Place of each hole, in any one unit; hole 1 first.</param>
/// <param name="Order">Holes, from 1, first to tighten first.</param>
/// <param name="From">Where the order comes from, in words.</param>
/// <param name="IsFromManual">True when the manual's own order was typed.</param>
public sealed record TighteningPlan(IReadOnlyList<PlanePoint> Places, IReadOnlyList<int> Order, string From, bool IsFromManual)
{
    /// <summary>Fasteners whose distances from the middle differ by less than this part sit round a circle.</summary>
    private const double Roundness = 0.1;

    /// <summary>Holes first to loosen first: from the outside in.</summary>
    public IReadOnlyList<int> Loosening => [.. Order.Reverse()];

    /// <summary>The place of a hole in the order, from 1.</summary>
    public int PlaceInOrder(int hole) => Order.ToList().IndexOf(hole) + 1;

    /// <summary>The plan of a joint: places from a photo's pins or the pattern that was chosen, order from the manual or from the places. Null while neither is known.</summary>
    public static TighteningPlan? Of(Bench bench, string joint)
    {
        var state = bench.Joint(joint);
        if (state.Required is not { } count)
            return null;
        var pins = bench.PinPattern(joint);
        var pinned = pins.Count == count && pins.Select(p => p.Number).SequenceEqual(Enumerable.Range(1, count));
        var pattern = state.Tightening.Pattern;
        var places = pinned ? [.. pins.Select(p => p.Place)] : pattern?.Count == count ? pattern.Places() : null;
        var manual = state.Tightening.Procedure?.Order is { Count: > 0 } typed && typed.Count == count ? typed : null;
        if (places is null)
            return manual is null ? null : Made([.. PlanePoint.Grid(count, 1, 1, 1)], ByNumber(manual), true, "the manual's own order");
        if (manual is not null)
            return Made(places, ByNumber(manual), true, "the manual's own order");
        var where = pinned ? "the pins of a photo" : pattern!.Words();
        var found = Worked(places, out var kind);
        return found.TryGet(out var order) ? Made(places, [.. order.Select(i => i + 1)], false, $"{kind}, worked out from {where}; not from your book") : null;
    }

    private static TighteningPlan Made(IReadOnlyList<PlanePoint> places, IReadOnlyList<int> order, bool manual, string from) => new(places, order, from, manual);

    /// <summary>Across and across on a circle, else the spiral from the middle.</summary>
    private static Outcome<IReadOnlyList<int>> Worked(IReadOnlyList<PlanePoint> places, out string kind)
    {
        var (x, y) = (places.Average(p => p.X), places.Average(p => p.Y));
        var reach = places.Select(p => Math.Sqrt((p.X - x) * (p.X - x) + (p.Y - y) * (p.Y - y))).ToArray();
        var isRound = places.Count > 2 && reach.Min() > (1 - Roundness) * reach.Max();
        kind = isRound ? "across and across" : "from the middle outwards";
        return isRound ? TighteningOrder.Cross(places) : TighteningOrder.SpiralFromCentre(places);
    }

    /// <summary>Holes in the order of the numbers that the manual's picture gives them.</summary>
    private static IReadOnlyList<int> ByNumber(IReadOnlyList<int> numbers) =>
        [.. Enumerable.Range(1, numbers.Count).OrderBy(hole => numbers[hole - 1])];
}
