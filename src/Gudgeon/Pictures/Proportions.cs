using System.Globalization;
using Gudgeon.Engine;

namespace Gudgeon.Pictures;

/// <summary>
/// Sizes for drawing, in millimetres, from bore and stroke. Common practice, no source: good for a picture, never for a limit.
/// </summary>
/// <param name="Bore">Bore as the owner gave it.</param>
/// <param name="Stroke">Stroke as the owner gave it.</param>
public sealed record Proportions(string Layout, int Banks, int PerBank, double BankAngle, double Bore, double Stroke, bool Barrels, bool FrontIsFreeEnd)
{
    private const double UsualBore = 86;

    public double Pitch => Bore * (Barrels ? 1.4 : 1.2);
    public double Length => (PerBank * Pitch) + (0.25 * Bore);

    /// <summary>Crank centre to the face of the head.</summary>
    public double Deck => (Stroke / 2) + (1.75 * Stroke) + (0.45 * Bore);
    public double CaseRadius => (Stroke / 2) + (0.45 * Bore);
    public double HeadHeight => 0.75 * Bore;
    public double CoverHeight => 0.5 * Bore;
    public double Damper => 0.85 * Bore;
    public double Flywheel => 1.5 * Bore;

    /// <summary>How far each bank leans, radians clockwise seen from the free end; bank 1 first.</summary>
    public IReadOnlyList<double> Leans => Layout == "radial"
        ? [.. Enumerable.Range(0, Banks).Select(i => 2 * Math.PI * i / Banks)]
        : Banks == 1 ? [0]
        : [-BankAngle / 2 * Math.PI / 180, BankAngle / 2 * Math.PI / 180];

    /// <summary>Sizes from the owner's answers; what was not answered is drawn as the usual thing.</summary>
    public static Proportions From(EngineModel engine, IReadOnlyDictionary<string, string> answers)
    {
        var layout = answers.GetValueOrDefault("layout", "inline");
        var cylinders = Math.Max(1, engine.Parts.Values.Count(p => p.Kind == "piston"));
        var banks = layout switch { "radial" => cylinders, "vee" or "flat" => 2, _ => 1 };
        var bore = Figure("D", UsualBore);
        return new Proportions(
            layout, banks, Math.Max(1, cylinders / banks), layout == "flat" ? 180 : Figure("angle", 90), bore, Figure("S", bore),
            answers.GetValueOrDefault("cyl") == "barrel", answers.GetValueOrDefault("numberingFrom") != "drive-end");

        double Figure(string name, double usual) =>
            double.TryParse(answers.GetValueOrDefault(name), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && value > 0 ? value : usual;
    }
}
