using Gudgeon.Engine;

namespace Gudgeon.Pictures;

/// <summary>
/// What a picture of the whole engine is drawn from, in millimetres: the usual proportions of its bore and stroke, and how
/// its cylinders stand. For pictures only, never a limit.
/// </summary>
public sealed record DrawnSizes(
    string Layout, int Banks, int PerBank, double BankAngle, double Bore, double Stroke, double Pitch, double Deck, double Damper, double Flywheel, bool FrontIsFreeEnd)
{
    public double Length => (PerBank * Pitch) + (0.25 * Bore);
    public double CaseRadius => (Stroke / 2) + (0.45 * Bore);
    public double HeadHeight => 0.75 * Bore;
    public double CoverHeight => 0.5 * Bore;

    /// <summary>How far each bank leans, radians clockwise seen from the free end; bank 1 first.</summary>
    public IReadOnlyList<double> Leans => Layout == "radial"
        ? [.. Enumerable.Range(0, Banks).Select(i => 2 * Math.PI * i / Banks)]
        : Banks == 1 ? [0]
        : [-BankAngle / 2 * Math.PI / 180, BankAngle / 2 * Math.PI / 180];

    /// <summary>Sizes from the owner's answers; an engine that grew from nothing is drawn as the usual one, as far as it goes.</summary>
    public static DrawnSizes From(IReadOnlyDictionary<string, string> given)
    {
        var answers = EngineAnswers.Read(given).Value;
        var usual = Proportions.Of(answers);
        var layout = answers["layout"] ?? "inline";
        var banks = layout == "radial" ? answers.Cylinders : answers.Banks;
        return new DrawnSizes(
            layout, banks, Math.Max(1, answers.Cylinders / banks), layout == "flat" ? 180 : answers.Figure("angle"),
            usual["D"], usual["S"], usual["bore-spacing"], usual.DeckHeight, usual["damper"] / 2, usual["flywheel"] / 2, answers["numberingFrom"] != "drive-end");
    }
}
