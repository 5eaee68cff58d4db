using Gudgeon.Engine;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

/// <summary>
/// Guesses of mass and centre where nobody weighed: usual ranges and usual proportions, with a wide spread.
/// Common practice, no source; always shown as guesses.
/// </summary>
internal sealed class LiftGuess
{
    private readonly EngineAnswers answers;
    private readonly double length, deck, radius;

    private LiftGuess(EngineAnswers answers)
    {
        this.answers = answers;
        var usual = Proportions.Of(answers);
        var rows = answers["layout"] == "radial" ? 1 : Math.Max(1, answers.Cylinders / answers.Banks);
        (length, deck, radius) = (rows * usual["bore-spacing"] + usual["D"], usual.DeckHeight, usual["S"] / 2 + usual["D"] / 2);
    }

    /// <summary>Null for an engine of which nothing was answered.</summary>
    public static LiftGuess? Of(Bench bench) => bench.Answers.Count > 0 ? new LiftGuess(EngineAnswers.Read(bench.Answers).Value) : null;

    /// <summary>The dressed engine without its gearbox.</summary>
    public HangingLoad Whole
    {
        get
        {
            var mass = Guides.MassOfEngine(answers);
            return new(Kg((mass.LowKg + mass.HighKg) / 2), Kg((mass.HighKg - mass.LowKg) / 2), Centre, CentreSpread);
        }
    }

    public Point3 Centre => answers["layout"] == "radial" ? new(length / 2, 0, 0) : new(length / 2, 0, 0.3 * deck);

    public Point3 CentreSpread => new(0.15 * length, 0.3 * radius, 0.3 * deck);

    public MassPart? Part(Part part)
    {
        var range = Guides.MassOf(part.Kind, answers) is { } usual ? (Low: usual.LowKg, High: usual.HighKg) : part.Lift switch
        {
            LiftClass.OnePerson => (3, 15),
            LiftClass.Heavy => (15, 25),
            _ => (0, 0),
        };
        return range.High > 0 ? new MassPart(part.Name, Kg((range.Low + range.High) / 2), Kg((range.High - range.Low) / 2), Place(part), Length.FromMillimetres(length / 4)) : null;
    }

    /// <summary>Where a part of its zone usually sits.</summary>
    public Point3 Place(Part part) => part.Kind == "gearbox" ? new(-0.7 * length, 0, 0) : part.Zone switch
    {
        Zone.FreeEnd => new(length, 0, 0.3 * deck),
        Zone.DriveEnd => default,
        Zone.Top or Zone.Valley => new(length / 2, 0, deck),
        Zone.Bottom => new(length / 2, 0, -radius),
        _ => new(length / 2, 0, 0.3 * deck),
    };

    public Length PlaceSpread => Length.FromMillimetres(length / 4);

    private static Mass Kg(double value) => Mass.FromKilograms(value);
}
