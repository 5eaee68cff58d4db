using Gudgeon.Engine.Building;

namespace Gudgeon.Engine;

/// <summary>What a word of the trade is about.</summary>
public enum WordSort
{
    Part,
    Fastener,
    Tool,
    Place,
    Stuff,
    Measure,
    Fault,
    Doing,
}

/// <summary>One word of the trade and everything that people say, or dictation writes, for it.</summary>
/// <param name="Kind">The part kind that it names, or empty.</param>
public sealed record Word(WordSort Sort, string Kind, string British, string American)
{
    public IReadOnlyList<string> AlsoSaid { get; init; } = [];

    /// <summary>What dictation often writes instead. Weaker evidence than a spoken word: it may be a plain word meant as such.</summary>
    public IReadOnlyList<string> Misheard { get; init; } = [];

    /// <summary>Every spoken form, without the misheard ones.</summary>
    public IEnumerable<string> Spoken => AlsoSaid.Prepend(American).Prepend(British).Distinct(StringComparer.OrdinalIgnoreCase);
}

/// <summary>The words of the trade, for the ear and for the page.</summary>
public static class Vocabulary
{
    public static IReadOnlyList<Word> Words { get; } = [.. Parts(), .. General()];

    private static readonly ILookup<string, Word> ByKind = Words.Where(w => w.Kind.Length > 0).ToLookup(w => w.Kind);

    /// <summary>The words for a part kind: more than one where it comes in variants (timing chain, timing belt).</summary>
    public static IReadOnlyList<Word> Of(string kind) => [.. ByKind[kind]];

    /// <summary>More than one of it: rod caps, bushes, case halves, assemblies.</summary>
    public static string Plural(string term) => term switch
    {
        _ when term.EndsWith("half", StringComparison.OrdinalIgnoreCase) => term[..^1] + "ves",
        _ when EndsIn(term, "s", "sh", "ch", "x") => term + "es",
        _ when term.Length > 1 && EndsIn(term, "y") && !"aeiou".Contains(char.ToLowerInvariant(term[^2])) => term[..^1] + "ies",
        _ => term + "s",
    };

    private static bool EndsIn(string term, params string[] endings) =>
        endings.Any(e => term.EndsWith(e, StringComparison.OrdinalIgnoreCase));

    private static IEnumerable<Word> Parts() =>
        Table.Read("words-parts.psv", Table.Own("words-parts.psv")).Select(r => Of(r, WordSort.Part, r["kind"]));

    private static IEnumerable<Word> General() =>
        Table.Read("words-general.psv", Table.Own("words-general.psv")).Select(r => Of(r, Enum.Parse<WordSort>(r["sort"], ignoreCase: true), ""));

    private static Word Of(Row row, WordSort sort, string kind) => new(sort, kind, row["british"], row["american"])
    {
        AlsoSaid = row.List("also"),
        Misheard = row.List("misheard"),
    };
}
