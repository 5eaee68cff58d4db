using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Motion;

/// <summary>The four valve events of a cylinder as a cam card gives them, crank degrees.</summary>
/// <param name="InletOpens">Before top dead centre.</param>
/// <param name="InletCloses">After bottom dead centre.</param>
/// <param name="ExhaustOpens">Before bottom dead centre.</param>
/// <param name="ExhaustCloses">After top dead centre.</param>
public readonly record struct ValveEvents(Angle InletOpens, Angle InletCloses, Angle ExhaustOpens, Angle ExhaustCloses);

/// <summary>What follows from the events.</summary>
/// <param name="InletDuration">Crank degrees that the inlet is open.</param>
/// <param name="ExhaustDuration">Crank degrees that the exhaust is open.</param>
/// <param name="InletCentre">Inlet lobe centre, crank degrees after top.</param>
/// <param name="ExhaustCentre">Exhaust lobe centre, crank degrees before top.</param>
/// <param name="Separation">Angle between the lobes, cam degrees.</param>
/// <param name="Overlap">Crank degrees that both are open.</param>
public sealed record CamFigures(Angle InletDuration, Angle ExhaustDuration, Angle InletCentre, Angle ExhaustCentre, Angle Separation, Angle Overlap);

/// <summary>A cam against its card.</summary>
/// <param name="Late">How much later than the card the cam stands, crank degrees; early counts negative.</param>
/// <param name="WholeTeeth">Nearest whole number of teeth that explains it; late counts positive.</param>
/// <param name="Left">What is left after those teeth, crank degrees.</param>
/// <param name="Sure">True when the tooth count stands beyond twice the uncertainty of the centre.</param>
public sealed record CamAgainstCard(Angle Late, int WholeTeeth, Angle Left, bool Sure);

/// <summary>Cam timing.</summary>
public static class CamTiming
{
    private const double HalfTurn = 180;

    /// <summary>Durations, centres, separation and overlap from the events.</summary>
    /// <remarks>
    /// Formula: duration = opening + 180 + closing; inlet centre = duration/2 − opening; exhaust centre = duration/2 − closing;
    /// separation = (inlet centre + exhaust centre)/2; overlap = inlet opening + exhaust closing. Units: crank degrees, separation in cam degrees.
    /// Range: each event −90 to 120°. Errors: exact; centres assume symmetric lobes. Source: common practice, no standard found.
    /// </remarks>
    public static Outcome<CamFigures> FromEvents(ValveEvents events) => new InputCheck()
        .Within("inlet opens", events.InletOpens, -90, 120).Within("inlet closes", events.InletCloses, -90, 120)
        .Within("exhaust opens", events.ExhaustOpens, -90, 120).Within("exhaust closes", events.ExhaustCloses, -90, 120)
        .Then(() =>
        {
            var half = Angle.FromDegrees(HalfTurn);
            var inlet = events.InletOpens + half + events.InletCloses;
            var exhaust = events.ExhaustOpens + half + events.ExhaustCloses;
            var (inletCentre, exhaustCentre) = (inlet / 2 - events.InletOpens, exhaust / 2 - events.ExhaustCloses);
            return new CamFigures(inlet, exhaust, inletCentre, exhaustCentre, (inletCentre + exhaustCentre) / 2, events.InletOpens + events.ExhaustCloses);
        });

    /// <summary>The events after one shaft with both lobes is turned on: advance opens and closes everything earlier.</summary>
    /// <remarks>
    /// Formula: inlet opens + a, closes − a; exhaust opens + a, closes − a. Units: crank degrees. Range: −60 to 60°. Errors: exact. Source: definition.
    /// </remarks>
    public static Outcome<ValveEvents> Advanced(ValveEvents events, Angle advance) => new InputCheck().Within("advance", advance, -60, 60)
        .Then(() => new ValveEvents(events.InletOpens + advance, events.InletCloses - advance, events.ExhaustOpens + advance, events.ExhaustCloses - advance));

    /// <summary>What one tooth does, crank degrees.</summary>
    /// <remarks>
    /// Formula: 360/z of the crank wheel, the same on either wheel of a two-to-one drive. Units: crank degrees. Range: 6 teeth or more. Errors: exact. Source: geometry.
    /// </remarks>
    public static Outcome<Angle> OneTooth(int crankTeeth) => new InputCheck()
        .That(crankTeeth >= 6, "teeth of the crank wheel", Show(crankTeeth), "6 or more", "Count the teeth of the wheel on the crank")
        .Then(() => Angle.FromTurns(1.0 / crankTeeth));

    /// <summary>The measured lobe centre against the card's: how late, and by how many teeth.</summary>
    /// <remarks>
    /// Formula: late = measured − card (centre after top); teeth = late/(360/z), rounded; sure when |late − half a tooth away| stands beyond 2·u.
    /// Units: crank degrees. Range: centres within one turn of each other. Errors: u of the centre. Source: geometry; expanded uncertainty with k = 2 as JCGM 100.
    /// </remarks>
    public static Outcome<CamAgainstCard> AgainstCard(Angle measuredCentre, Angle standardUncertainty, Angle cardCentre, int crankTeeth) => new InputCheck()
        .Within("uncertainty of the centre", standardUncertainty, 0, 10)
        .That(Math.Abs(measuredCentre.Degrees - cardCentre.Degrees) < 180, "lobe centre", $"{Show(measuredCentre.Degrees)}°",
            $"within half a turn of the card's {Show(cardCentre.Degrees)}°", "Check that both count from the same top dead centre")
        .Go(() => OneTooth(crankTeeth)).Then(tooth =>
        {
            var late = measuredCentre - cardCentre;
            var teeth = (int)Math.Round(late / tooth, MidpointRounding.AwayFromZero);
            var left = late - tooth * teeth;
            return Outcome.Of(new CamAgainstCard(late, teeth, left, (tooth / 2).Degrees - Math.Abs(left.Degrees) > 2 * standardUncertainty.Degrees));
        });
}
