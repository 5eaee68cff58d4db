using System.Globalization;
using Gudgeon.Engine.Building;
using Gudgeon.Sums;

namespace Gudgeon.Engine;

/// <summary>
/// A full set of answers: what was given, and the default of every question that was left open. Only <see cref="Read"/>
/// makes one, so whoever holds one holds answers that go together.
/// </summary>
public sealed class EngineAnswers
{
    private static readonly IReadOnlyList<Row> Rules = Table.Read("rules.psv", Table.Own("rules.psv"));

    private readonly Dictionary<string, string> values;
    private readonly Dictionary<string, double> figures;

    private EngineAnswers(IReadOnlyDictionary<string, string> given, Dictionary<string, string> values, IReadOnlyDictionary<string, int> counts)
    {
        Given = given;
        this.values = values;
        figures = Figures.Of(values);
        Counts = counts;
    }

    /// <summary>What the owner answered, without the defaults, in plain form. Reading it again gives the same engine.</summary>
    public IReadOnlyDictionary<string, string> Given { get; }

    /// <summary>How many there are of a part kind, where the owner counted: <c>count.core-plug</c> in the answers.</summary>
    internal IReadOnlyDictionary<string, int> Counts { get; }

    internal IReadOnlyDictionary<string, double> AllFigures => figures;

    /// <summary>The answer to a question, or null for a question that does not exist.</summary>
    public string? this[string question] => values.GetValueOrDefault(question);

    /// <summary>A figure of the engine: <c>n</c> cylinders, <c>b</c> banks, <c>k</c> cylinders in a bank, <c>m</c> mains, <c>h</c> heads, <c>cams</c>, <c>D</c> and <c>S</c> in mm.</summary>
    public double Figure(string id) => figures[id];

    public int Cylinders => (int)figures["n"];

    public int Banks => (int)figures["b"];

    /// <summary>Whether an ancillary is there.</summary>
    public bool Has(string ancillary) => values["opt"].Split(',').Contains(ancillary);

    /// <summary>n * pi/4 * D * D * S: what the pistons sweep, in cubic centimetres.</summary>
    public double SweptVolumeCm3 => Cylinders * Math.PI / 4 * figures["D"] * figures["D"] * figures["S"] / 1000;

    internal string? Value(string key) =>
        values.GetValueOrDefault(key) ?? (figures.TryGetValue(key, out var figure) ? figure.ToString(CultureInfo.InvariantCulture) : null);

    internal bool Holds(string condition) => Condition.Holds(condition, Value);

    /// <summary>The answers, or everything that is wrong with them at once.</summary>
    public static Outcome<EngineAnswers> Read(IReadOnlyDictionary<string, string> given)
    {
        var refusals = new List<Refusal>();
        var plain = new SortedDictionary<string, string>(StringComparer.Ordinal);
        var counts = new Dictionary<string, int>();
        foreach (var (key, text) in given)
        {
            if (key.StartsWith(CountPrefix, StringComparison.Ordinal))
                ReadCount(key, text, plain, counts, refusals);
            else if (Questions.Find(key) is not { } question)
                refusals.Add(new Refusal(key, "a question that is not asked", $"one of {string.Join(", ", Questions.All.Select(q => q.Id))}", "Leave it out or correct its name"));
            else if (question.Takes(text, out var answer))
                plain[key] = answer;
            else
                refusals.Add(new Refusal(question.Name, $"'{text}'", question.Expects, "Answer it again, or leave it out to take what is usual"));
        }

        var filled = Questions.Filled(plain);
        refusals.AddRange(Rules.Where(r => Condition.Holds(r["if"], filled.GetValueOrDefault)).Select(r => new Refusal(r["where"], r["met"], r["expected"], r["do"])));
        refusals.AddRange(CylinderFaults(filled));
        return refusals.Count > 0 ? Outcome.Refused<EngineAnswers>(refusals) : Outcome.Of(new EngineAnswers(plain, filled, counts));
    }

    private const string CountPrefix = "count.";

    private static void ReadCount(string key, string text, SortedDictionary<string, string> plain, Dictionary<string, int> counts, List<Refusal> refusals)
    {
        var kind = key[CountPrefix.Length..];
        if (!AnatomyTables.Own.PartKinds.Contains(kind))
            refusals.Add(new Refusal(key, $"no such part kind as '{kind}'", "the id of a part kind, as in count.core-plug", "Correct the name or leave it out"));
        else if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count <= 200)
            (plain[key], counts[kind]) = (count.ToString(CultureInfo.InvariantCulture), count);
        else
            refusals.Add(new Refusal(key, $"'{text}'", "a whole number from 0 to 200", "Count them, or leave it out to take what is usual"));
    }

    private static IEnumerable<Refusal> CylinderFaults(Dictionary<string, string> filled)
    {
        var n = (int)Figures.Number(filled["n"]);
        var layout = filled["layout"];
        if (layout == "single" && n != 1)
            yield return new Refusal("cylinders", $"{n} in a single", "1", "Answer 1, or in line for more");
        if (layout == "inline" && n < 2)
            yield return new Refusal("cylinders", $"{n} in line", "2 or more", "Answer single for one cylinder");
        if (layout is "vee" or "flat" && n % 2 != 0)
            yield return new Refusal("cylinders", $"{n} in two banks", "an even number", "Count them again");
        if (layout is "single" && filled["heads"] == "pair" || filled["heads"] == "pair" && n % (layout is "vee" or "flat" ? 4 : 2) != 0)
            yield return new Refusal("heads", $"pairs of cylinders out of {n}", "an even number of cylinders in each row", "Answer one head for a row or for each cylinder");
        if (filled["pinshare"] == "shared" && n % 2 != 0)
            yield return new Refusal("rods on a crankpin", $"two rods to a pin with {n} cylinders", "an even number of cylinders", "Answer that each rod has its own");
    }
}
