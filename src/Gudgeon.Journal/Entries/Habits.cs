using System.Text.Json.Serialization;
using Gudgeon.Engine;
using Gudgeon.Sums;
using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(UnitsChosen), "units-chosen")]
[JsonDerivedType(typeof(RuleChosen), "rule-chosen")]
[JsonDerivedType(typeof(MaterialTold), "material-told")]
[JsonDerivedType(typeof(WordTaught), "word-taught")]
[JsonDerivedType(typeof(WaysTaken), "ways-taken")]
public abstract partial record Entry;

/// <summary>The book speaks millimetres or inches; either is understood.</summary>
public sealed record UnitsChosen(BookUnits Units) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) => null;

    public override string Words(Bench bench) => Units == BookUnits.Inch ? "A bare figure is in inches from now on" : "A bare figure is in millimetres from now on";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Units = Units;
}

/// <summary>How wide a guard a verdict keeps from its limits.</summary>
/// <param name="Rule">One of <see cref="Rules"/>.</param>
public sealed record RuleChosen(string Rule) : Entry
{
    public static readonly IReadOnlyDictionary<string, DecisionRule> Rules = new Dictionary<string, DecisionRule>
    {
        ["expanded"] = DecisionRule.ExpandedUncertainty,
        ["probability-95"] = DecisionRule.Probability95,
    };

    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) => Rules.ContainsKey(Rule)
        ? null
        : new Refusal("decision rule", $"\"{Rule}\"", string.Join(" or ", Rules.Keys), "Choose one of these");

    public override string Words(Bench bench) => $"Verdicts keep a {Rules[Rule].Name} from now on";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Rule = Rules[Rule];
}

/// <summary>A word of the owner's own, used from now on in what is said: the whatsit is the thermostat, a mil is a millimetre.</summary>
/// <param name="Term">A name that the book knows, or a unit for "mil".</param>
public sealed record WordTaught(string Word, string Term) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        string.IsNullOrWhiteSpace(Word) ? new Refusal("word", "nothing", "the word that you use", "Say the word")
        : string.IsNullOrWhiteSpace(Term) ? new Refusal($"word \"{Word.Trim()}\"", "no meaning", "a name that the book knows", "Say what it stands for")
        : null;

    public override string Words(Bench bench) => $"\"{Word.Trim()}\" means {Term.Trim()} from now on";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Taught[Word.Trim().ToLowerInvariant()] = Term.Trim();
}

/// <summary>What was said so was understood rightly: from now on it is recorded at once when it is said so.</summary>
/// <param name="Ways">The sorts of the words, as the ear tells them.</param>
/// <param name="Examples">The words they were said in.</param>
public sealed record WaysTaken(IReadOnlyList<string> Ways, IReadOnlyList<string> Examples) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        Ways.Count == 0 || Ways.Any(string.IsNullOrWhiteSpace) ? new Refusal("way of saying", "nothing", "how it was said", "Choose it where it is offered") : null;

    public override string Words(Bench bench) => $"What is said like {string.Join(" or ", Examples.Select(e => $"\"{e.Trim()}\""))} is recorded at once from now on";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Ways.UnionWith(Ways);
}

/// <summary>What a part is made of, for bringing readings to 20 °C.</summary>
/// <param name="Material">Id of the table of expansions.</param>
public sealed record MaterialTold(string Part, string Material) : Entry
{
    public override IEnumerable<string> About() => [Part];

    public override Refusal? Check(Bench bench) => bench.NoSuchPart(Part)
        ?? (ExpansionTable.Find(Material) is null ? new Refusal(bench.NameOf(Part), $"\"{Material}\"", string.Join(", ", ExpansionTable.All.Select(m => m.Id)), "Choose one of these") : null);

    public override string Words(Bench bench) => $"{bench.NameOf(Part)} is {ExpansionTable.Find(Material)?.Name ?? Material}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Materials[Part] = Material;
}
