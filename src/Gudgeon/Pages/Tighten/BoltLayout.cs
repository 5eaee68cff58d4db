using Gudgeon.Journal;
using Gudgeon.Sums.Fasteners;

namespace Gudgeon.Pages.Tighten;

/// <summary>Where the fasteners of a joint are drawn, so that a thumb meets each of them.</summary>
/// <param name="Height">Of the picture; its width is <see cref="Width"/>.</param>
/// <param name="Places">Middle of each hole, hole 1 first.</param>
/// <param name="IsTurned">True when a long row is drawn upright.</param>
/// <param name="CanTap">True when holes lie far enough apart to be buttons.</param>
public sealed record BoltLayout(double Height, IReadOnlyList<(double X, double Y)> Places, bool IsTurned, bool CanTap)
{
    /// <summary>The text column of a phone.</summary>
    public const double Width = 350;

    public const double Hit = 50;
    private const double Margin = 30;
    private const double Widest = 76;
    private const double Tallest = 1400;

    public static BoltLayout Of(TighteningPlan plan)
    {
        var lying = Scaled(plan.Places);
        if (lying.Spacing >= Widest)
            return Made(lying, false);
        var standing = Scaled([.. plan.Places.Select(p => new PlanePoint(-p.Y, p.X))]);
        return standing.Spacing > lying.Spacing + 1 ? Made(standing, true) : Made(lying, false);
    }

    private static BoltLayout Made((IReadOnlyList<(double X, double Y)> Places, double Spacing) drawn, bool turned) =>
        new(drawn.Places.Max(p => p.Y) + Margin, drawn.Places, turned, drawn.Spacing >= Hit + 2);

    private static (IReadOnlyList<(double X, double Y)> Places, double Spacing) Scaled(IReadOnlyList<PlanePoint> places)
    {
        var (left, top) = (places.Min(p => p.X), places.Min(p => p.Y));
        var (wide, high) = (places.Max(p => p.X) - left, places.Max(p => p.Y) - top);
        var nearest = (from a in Enumerable.Range(0, places.Count) from b in Enumerable.Range(0, a) select Math.Max(Math.Abs(places[a].X - places[b].X), Math.Abs(places[a].Y - places[b].Y))).DefaultIfEmpty(1).Min();
        var scale = new[] { wide > 0 ? (Width - 2 * Margin) / wide : double.MaxValue, high > 0 ? Tallest / high : double.MaxValue, Widest / nearest }.Min();
        var shift = (Width - wide * scale) / 2;
        return ([.. places.Select(p => (shift + (p.X - left) * scale, Margin + (p.Y - top) * scale))], nearest * scale);
    }
}
