using System.Globalization;
using Gudgeon.Engine.Building;

namespace Gudgeon.Engine;

/// <summary>All the questions, in the order in which they are asked.</summary>
public static class Questions
{
    private static readonly ILookup<string, Row> Defaults = Table.Read("defaults.psv", Table.Own("defaults.psv")).ToLookup(r => r["id"]);

    public static IReadOnlyList<Question> All { get; } = Read();

    public static IReadOnlyList<Question> Basic { get; } = [.. All.Where(q => q.IsBasic)];

    public static Question? Find(string id) => All.FirstOrDefault(q => q.Id == id);

    /// <summary>Whether the question makes sense after the answers so far.</summary>
    public static bool IsAsked(Question question, IReadOnlyDictionary<string, string> answers) =>
        Condition.Holds(question.When, Filled(answers).GetValueOrDefault);

    /// <summary>What the question is answered with if nobody answers it, after the answers so far.</summary>
    public static string DefaultOf(Question question, IReadOnlyDictionary<string, string> answers) =>
        Filled(answers.Where(a => a.Key != question.Id).ToDictionary())[question.Id];

    /// <summary>An answer to every question: the one given where it can be taken, else the default.</summary>
    internal static Dictionary<string, string> Filled(IReadOnlyDictionary<string, string> answers)
    {
        var filled = new Dictionary<string, string>();
        foreach (var question in All)
        {
            filled[question.Id] = answers.TryGetValue(question.Id, out var given) && question.Takes(given, out var answer)
                ? answer
                : Default(question, filled);
        }

        return filled;
    }

    private static string Default(Question question, Dictionary<string, string> sofar)
    {
        var row = Defaults[question.Id].FirstOrDefault(r => Condition.Holds(r["if"], sofar.GetValueOrDefault));
        var value = row?["value"] ?? question.FixedDefault;
        return question.Kind is QuestionKind.Count or QuestionKind.Figure
            ? Formula.Value(value, Figures.OfRows(sofar)).ToString(CultureInfo.InvariantCulture)
            : value;
    }

    private static IReadOnlyList<Question> Read()
    {
        var options = Table.Read("options.psv", Table.Own("options.psv")).ToLookup(r => r["question"], r => new Option(r["id"], r["label"]));
        return [.. Table.Read("questions.psv", Table.Own("questions.psv")).Select(r => new Question(
            r["id"], r["name"], Enum.Parse<QuestionKind>(r["kind"], ignoreCase: true), r["ask"], r["help"], r["group"] == "basic", [.. options[r["id"]]])
        {
            Range = r["from"] == "-" ? (0, 0) : (Figures.Number(r["from"]), Figures.Number(r["to"])),
            When = r["when"],
            FixedDefault = r.Text("default"),
        })];
    }
}
