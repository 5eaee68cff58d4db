using Gudgeon.Sums;
using Gudgeon.Sums.Motion;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

/// <summary>One lobe's centre against the card.</summary>
/// <param name="WantedDeg">Centre of the cam's card, or null.</param>
/// <param name="Card">How late, and by how many teeth; null without a card, a tooth count, or where the two cannot be of one top.</param>
public sealed record LobeLine(string Lobe, CentreByEqualLift Centre, int Readings, double? WantedDeg, Outcome<CamAgainstCard>? Card)
{
    /// <summary>What the tooth count says: <c>1 tooth late, 0.4° left over</c>; empty where there is nothing to say.</summary>
    public string ToothWords
    {
        get
        {
            if (Card is not { Ok: true } card)
                return Card is { Ok: false } refused ? refused.Refusals[0].ToString() : "";
            var (teeth, left) = (card.Value.WholeTeeth, Units.Show(Math.Round(card.Value.Left.Degrees, 2), "deg"));
            var words = teeth == 0 ? "no tooth out" : $"{Math.Abs(teeth)} {(Math.Abs(teeth) == 1 ? "tooth" : "teeth")} {(teeth > 0 ? "late" : "early")}, {left} left over";
            return card.Value.Sure ? words : $"{words}; too close to call, read it again";
        }
    }
}

/// <summary>Lobe centres from what was read.</summary>
public static class TimingSheet
{
    public static IReadOnlyList<LobeLine> Of(Bench bench) => [.. bench.Lobes.GroupBy(l => Whereabouts.PlaceName(l.Lobe)).Select(g => Line(bench, [.. g]))];

    /// <summary>A crank angle from top in words: <c>109° before top</c>.</summary>
    public static string FromTop(double degrees) => $"{Units.Show(Math.Abs(Math.Round(degrees, 2)), "deg")} {(degrees < 0 ? "before" : "after")} top";

    private static LobeLine Line(Bench bench, LobeRead[] readings)
    {
        var centre = LobeRead.Centre(readings).Value;
        var wanted = readings.LastOrDefault(l => l.WantedDeg is not null)?.WantedDeg;
        var card = wanted is { } card0 && bench.CamDrive is { } drive
            ? CamTiming.AgainstCard(centre.Centre, centre.StandardUncertainty, Angle.FromDegrees(card0), drive.CrankTeeth)
            : null;
        return new LobeLine(readings[0].Lobe, centre, readings.Length, wanted, card);
    }
}
