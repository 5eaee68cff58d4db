using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Motion;

/// <summary>True top dead centre as the piston stop gives it.</summary>
/// <param name="DiscAtTop">What the disc shows at true top, 0 to 360°.</param>
/// <param name="TurnPointerBy">How far the disc reads past its zero at top, −180 to 180°: turn disc or pointer by as much.</param>
/// <param name="HalfTravel">Half of the turn between the two stops.</param>
/// <param name="StandardUncertainty">Standard uncertainty of the disc reading at top.</param>
public sealed record TrueTop(Angle DiscAtTop, Angle TurnPointerBy, Angle HalfTravel, Angle StandardUncertainty);

/// <summary>The piston stop: turn up to it from either side, read the disc, halve.</summary>
public static class PositiveStop
{
    /// <summary>True top dead centre from the two disc readings at the stop.</summary>
    /// <remarks>
    /// Formula: top = mean of the two readings, on the side that the stop does not bar; u = u_reading/√2;
    /// with an offset cylinder top lies asin(e/(l + r)) − atan(e/y) from the mean, which is added when the gear is known.
    /// Units: degrees; the disc counts up in the running direction. Range: the stop within 5 to 120° of top on either side.
    /// Errors: exact for rigid parts; play between stop and crown cancels when both sides are felt alike.
    /// Source: symmetry of the crank about top; common practice, no standard.
    /// </remarks>
    /// <param name="stoppedBeforeTop">Disc reading at the stop, turned in the running direction.</param>
    /// <param name="stoppedAfterTop">Disc reading at the stop, turned backwards.</param>
    /// <param name="readingUncertainty">Standard uncertainty of one reading.</param>
    /// <param name="gear">Crank and rod where the cylinder is offset; none when it is in line.</param>
    public static Outcome<TrueTop> FindTop(Angle stoppedBeforeTop, Angle stoppedAfterTop, Angle readingUncertainty, CrankSlider? gear = null)
    {
        var travel = Round(stoppedAfterTop.Degrees - stoppedBeforeTop.Degrees, 0);
        return new InputCheck()
            .Within("uncertainty of a reading", readingUncertainty, 0, 10)
            .That(travel is >= 10 and <= 240, "turn between the stops", $"{Show(travel)}°", "10 to 240°",
                "Read again: first against the stop in the running direction, then backwards")
            .Then(() =>
            {
                var half = Angle.FromDegrees(travel / 2);
                var top = stoppedBeforeTop.Degrees + travel / 2 + Lean(gear, half);
                return new TrueTop(Angle.FromDegrees(Round(top, 0)), Angle.FromDegrees(Round(top, -180)), half, readingUncertainty / Math.Sqrt(2));
            });
    }

    /// <summary>How far top lies from the middle of the two stops when the cylinder is offset, degrees.</summary>
    private static double Lean(CrankSlider? gear, Angle half)
    {
        if (gear is null)
            return 0;
        // The stops lie symmetrically about the pin's own line, whose lean depends on where the stop is; found by halving.
        var (low, high) = (0.0, gear.Stroke.Millimetres);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            var (before, after) = gear.AnglesAt(Length.FromMillimetres(middle)).Value;
            (low, high) = (after - before) / 2 < half ? (middle, high) : (low, middle);
        }

        var (first, last) = gear.AnglesAt(Length.FromMillimetres((low + high) / 2)).Value;
        return gear.Top.Degrees - (first.Degrees + last.Degrees) / 2;
    }

    /// <summary>An angle brought into the turn that starts at <paramref name="fromDeg"/>.</summary>
    internal static double Round(double angleDeg, double fromDeg)
    {
        var turned = (angleDeg - fromDeg) % 360;
        return (turned < 0 ? turned + 360 : turned) + fromDeg;
    }
}
