using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Fasteners;

/// <summary>One time round a joint.</summary>
/// <param name="PartOfFinal">Part of the final torque, 0 to 1.</param>
/// <param name="Order">Places in the list of fasteners, first to tighten first.</param>
/// <param name="UntilNoneMoves">True when the round is repeated until no fastener turns any more.</param>
public sealed record TighteningPass(double PartOfFinal, IReadOnlyList<int> Order, bool UntilNoneMoves);

/// <summary>The rounds of a joint.</summary>
public static class TighteningPasses
{
    /// <summary>The parts of the final torque that are usual when the book gives none.</summary>
    public static IReadOnlyList<double> UsualParts { get; } = [0.3, 0.6, 1.0];

    /// <summary>A flange: cross at each part of the torque, then round in a circle until none moves.</summary>
    /// <remarks>
    /// Formula: 30, 60, 100 % across, then 100 % in circles. Units: parts of one. Range: parts rising, last one 1. Errors: none.
    /// Source: ASME PCC-1 legacy method (three flange guides that cite it); the percentages differ between guides.
    /// </remarks>
    public static Outcome<IReadOnlyList<TighteningPass>> Flange(IReadOnlyList<PlanePoint> points, IReadOnlyList<double> parts) =>
        Check(parts).Go(() => TighteningOrder.Cross(points)).Then(cross => TighteningOrder.InCircles(points).Then(circle =>
            Outcome.Of<IReadOnlyList<TighteningPass>>([.. parts.Select(part => new TighteningPass(part, cross, false)), new TighteningPass(1, circle, true)])));

    /// <summary>A head or a set of caps: the spiral at each part of the torque.</summary>
    /// <remarks>
    /// Formula: 30, 60, 100 % in the spiral. Units: parts of one. Range: parts rising, last one 1. Errors: none. Source: common practice, no source.
    /// </remarks>
    public static Outcome<IReadOnlyList<TighteningPass>> Head(IReadOnlyList<PlanePoint> points, IReadOnlyList<double> parts) =>
        Check(parts).Go(() => TighteningOrder.SpiralFromCentre(points)).Then(spiral =>
            Outcome.Of<IReadOnlyList<TighteningPass>>([.. parts.Select(part => new TighteningPass(part, spiral, false))]));

    private static InputCheck Check(IReadOnlyList<double> parts)
    {
        var rising = parts.Count > 0 && parts[0] > 0 && parts[^1] == 1 && parts.Zip(parts.Skip(1)).All(pair => pair.First < pair.Second);
        return new InputCheck().That(rising, "stages", string.Join(", ", parts.Select(Show)), "rising parts of the final torque, the last one 1",
            "Give the stages again, for instance 0.3, 0.6, 1");
    }
}
