using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Motion;

/// <summary>The two disc readings at which a valve stands at one lift, opening and closing.</summary>
/// <param name="Lift">The lift at which both were read.</param>
/// <param name="Opening">Crank angle after the reference top while the valve opens; before it counts negative.</param>
/// <param name="Closing">Crank angle after the same top while the valve closes.</param>
public readonly record struct EqualLift(Length Lift, Angle Opening, Angle Closing);

/// <summary>Lobe centre from equal lifts.</summary>
/// <param name="Centre">Mean of the middles, crank degrees after the reference top.</param>
/// <param name="Spread">Largest less smallest middle: reading scatter, or a lobe that is not symmetric.</param>
/// <param name="StandardUncertainty">Standard uncertainty of the centre from the readings alone.</param>
public sealed record CentreByEqualLift(Angle Centre, Angle Spread, Angle StandardUncertainty);

/// <summary>Where a lobe's centre stands.</summary>
public static class LobeCentre
{
    /// <summary>Lobe centre by equal lift, one or several lifts.</summary>
    /// <remarks>
    /// Formula: centre = mean of (opening + closing)/2; u = u_reading/√(2·n). Units: crank degrees. Range: closing after opening by less than 720°, lifts above 0.
    /// Errors: exact for a symmetric lobe; the spread over several lifts shows one that is not. Source: symmetry; common practice, no standard.
    /// </remarks>
    public static Outcome<CentreByEqualLift> ByEqualLift(IReadOnlyList<EqualLift> readings, Angle readingUncertainty)
    {
        var check = new InputCheck().Within("uncertainty of a reading", readingUncertainty, 0, 10)
            .That(readings.Count > 0, "readings", "none", "one pair or more", "Read the disc at one lift, opening and closing");
        for (var i = 0; i < readings.Count; i++)
        {
            var open = readings[i].Closing.Degrees - readings[i].Opening.Degrees;
            check.Positive($"lift of pair {i + 1}", readings[i].Lift)
                .That(open is > 0 and < 720, $"closing of pair {i + 1}", $"{Show(readings[i].Closing.Degrees)}° after opening at {Show(readings[i].Opening.Degrees)}°",
                    "a later angle, less than two turns on", "Count degrees on through the turn: 250° and not −110°");
        }

        return check.Then(() =>
        {
            var middles = readings.Select(pair => (pair.Opening.Degrees + pair.Closing.Degrees) / 2).ToList();
            return new CentreByEqualLift(Angle.FromDegrees(middles.Average()), Angle.FromDegrees(middles.Max() - middles.Min()),
                readingUncertainty / Math.Sqrt(2.0 * middles.Count));
        });
    }
}
