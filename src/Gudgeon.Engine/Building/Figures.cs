using System.Globalization;

namespace Gudgeon.Engine.Building;

/// <summary>The numbers that the count formulas stand on, worked out from a full set of answers.</summary>
internal static class Figures
{
    private static readonly ILookup<string, Row> Rules = Table.Read("figures.psv", Table.Own("figures.psv")).ToLookup(r => r["id"]);

    public static Dictionary<string, double> Of(IReadOnlyDictionary<string, string> answers)
    {
        var figures = Numbers(answers);
        foreach (var rows in Rules)
            Add(figures, rows, answers);
        return figures;
    }

    /// <summary>Only rows and cylinders, for the defaults that are worked out while the rest is still open.</summary>
    public static Dictionary<string, double> OfRows(IReadOnlyDictionary<string, string> answers)
    {
        var figures = Numbers(answers);
        if (figures.ContainsKey("n"))
        {
            Add(figures, Rules["b"], answers);
            Add(figures, Rules["k"], answers);
        }

        return figures;
    }

    public static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static void Add(Dictionary<string, double> figures, IEnumerable<Row> rows, IReadOnlyDictionary<string, string> answers)
    {
        var row = rows.First(r => Condition.Holds(r["if"], key => answers.GetValueOrDefault(key) ?? Shown(figures, key)));
        figures[row["id"]] = Formula.Value(row["rule"], figures);
    }

    private static string? Shown(Dictionary<string, double> figures, string key) =>
        figures.TryGetValue(key, out var figure) ? figure.ToString(CultureInfo.InvariantCulture) : null;

    private static Dictionary<string, double> Numbers(IReadOnlyDictionary<string, string> answers) =>
        answers.Where(a => double.TryParse(a.Value, CultureInfo.InvariantCulture, out _)).ToDictionary(a => a.Key, a => Number(a.Value));
}
