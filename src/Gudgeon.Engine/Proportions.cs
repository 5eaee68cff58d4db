using Gudgeon.Engine.Building;

namespace Gudgeon.Engine;

/// <summary>
/// Sizes for drawing an engine whose parts nobody has measured, in mm: the middle of what is usual for its bore and stroke.
/// For pictures only, never a limit, never shown as a figure. Common practice, no source.
/// </summary>
public sealed class Proportions
{
    internal static IReadOnlyList<Row> Rows { get; } = Table.Read("proportions.psv", Table.Own("proportions.psv"));

    private readonly Dictionary<string, double> mm;

    private Proportions(Dictionary<string, double> mm) => this.mm = mm;

    /// <summary>A feature by the name of the table: <c>bore-spacing</c>, <c>rod-centres</c>, <c>main-journal</c>, <c>D</c>, <c>S</c>...</summary>
    public double this[string feature] => mm[feature];

    public IReadOnlyCollection<string> Features => mm.Keys;

    /// <summary>From crank centre to the deck, with the piston level with it at the top: S/2 + rod centres + compression height.</summary>
    public double DeckHeight => (mm["S"] / 2) + mm["rod-centres"] + mm["compression-height"];

    public static Proportions Of(EngineAnswers answers)
    {
        var mm = new Dictionary<string, double> { ["D"] = answers.Figure("D"), ["S"] = answers.Figure("S") };
        foreach (var row in Rows.Where(r => answers.Holds(r["if"])))
            mm.TryAdd(row["feature"], (Figures.Number(row["low"]) + Figures.Number(row["high"])) / 2 * mm[row["of"]]);
        return new Proportions(mm);
    }
}
