using System.Collections.Frozen;

namespace Gudgeon.Capture;

/// <summary>
/// How a fact was said, without what it was said of: the sorts of the phrases in its clause, those that the fact used
/// marked with a star. "starter's off" and "the left head is away" are both <c>off = part* Off*</c>. What is said in a way
/// that was never proven is offered, not recorded.
/// </summary>
internal static class WayOfSaying
{
    private const char Used = '*';

    /// <summary>Words that turn what is said wherever they stand; before the fact's own words and behind them as well.</summary>
    private static readonly FrozenSet<string> Turning =
        FrozenSet.Create("no", "if", "when", "will", "'ll", "can", "should", "must", "would", "could", "going", "till", "until", "before", "after", "need", "needs", "want", "wants");

    /// <summary>Small words that bear on what is said and stand for themselves.</summary>
    private static readonly FrozenSet<string> Plain = FrozenSet.Create(
        "on", "in", "back", "up", "down", "of", "with", "to", "from", "at", "for", "by", "so", "but", "because", "where", "what", "how", "which", "who", "one", "ones", "side",
        "number", "new", "old", "same", "other", "left", "right", "top", "bottom", "as", "or", "than", "off", "out");

    /// <summary>Small words that stand within the fact's own words and count there.</summary>
    private static readonly FrozenSet<string> Between = FrozenSet.Create("off", "on", "in", "out", "back");

    /// <summary>Sorts that name what a fact is about.</summary>
    private static readonly FrozenSet<string> Naming = FrozenSet.Create("part", "part?", "part-piece", "part-where", "part-of-more", "stranger", "lacking", "fasteners", "piece", "piece-which", "reading");

    private static readonly FrozenSet<string> Denials = FrozenSet.Create("not", "no", "dont", "didnt", "havent", "hasnt", "isnt", "wont", "cant", "never", "neither", "nor", "none", "nothing", "aint", "couldnt", "without");

    private static readonly FrozenSet<string> Pronouns = FrozenSet.Create("it", "they", "them", "that", "this", "those", "these", "she", "he");

    /// <summary>Words that are no filler and yet change nothing.</summary>
    private static readonly FrozenSet<string> Idle = FrozenSet.Create(
        "again", "tonight", "yesterday", "nice", "sweet", "together", "clean", "yet", "myself", "fine", "morning", "evening", "lunch", "god", "thank", "eventually",
        "is", "are", "was", "were", "be", "been", "'s", "'re", "has", "have", "had", "got", "'ve", "'d", "i", "we", "all", "both", "each", "every");

    private const string Unlisted = "word";

    /// <summary>The ways that were heard rightly in the files of stories and of ways of saying, and seldom wrongly.</summary>
    private static readonly FrozenSet<string> Proven = Lexicon.Rows("ways").Select(r => $"{r[0]} = {r[1]}").ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether what is said so may be recorded: proven, or taken by the owner before.</summary>
    public static bool Known(string way, IReadOnlySet<string> taken) => Proven.Contains(way) || taken.Contains(way);

    /// <param name="said">All phrases of the note, in order.</param>
    /// <param name="clauses">Where its clauses stand in the text.</param>
    public static string Of(Fact fact, IReadOnlyList<(Phrase Phrase, TextSpan Span)> said, IReadOnlyList<TextSpan> clauses)
    {
        string kind = fact.Code.Split(' ')[0];
        if (fact.Spans.Count == 0)
            return kind;
        int from = fact.Spans.Min(s => s.Start);
        int to = fact.Spans.Max(s => s.End);
        var around = clauses.Where(c => c.Start < to && c.End > from).ToList();
        if (around.Count > 0)
            (from, to) = (Math.Min(from, around[0].Start), Math.Max(to, around[^1].End));
        var all = said.Where(p => p.Span.Start >= from && p.Span.End <= to)
            .Select(p => (Sort: SortOf(p.Phrase), Own: fact.Spans.Any(s => s.Start < p.Span.End && s.End > p.Span.Start)))
            .Where(p => p.Sort.Length > 0).ToList();
        int first = all.FindIndex(p => p.Own);
        int last = all.FindLastIndex(p => p.Own);
        var kept = new List<string>();
        foreach (var (at, (sort, own)) in all.Index())
        {
            bool counts = own || first < 0 || at < first || Turning.Contains(sort) || (at < last && (char.IsUpper(sort[0]) || sort == Unlisted || Between.Contains(sort)));
            string word = own ? sort + Used : sort;
            if (counts && (kept.Count == 0 || kept[^1] != word))
                kept.Add(word);
        }

        // What names nothing leans on what was named before it: how many parts, and how far back.
        if (!all.Any(p => p.Own && Naming.Contains(p.Sort)))
            kept.Insert(0, Leaning(said.Where(p => p.Span.End <= fact.Spans.Min(s => s.Start)).Select(p => p.Phrase).Reverse()));
        return $"{kind} = {string.Join(' ', kept)}";
    }

    private static string Leaning(IEnumerable<Phrase> before)
    {
        int named = 0;
        bool past = false;
        foreach (var phrase in before)
        {
            if (phrase is BreakPhrase { End: true } && named == 0)
                past = true;
            if (phrase is ThingPhrase)
                named++;
        }

        return $"<{(named == 0 ? "none" : past ? "past" : named == 1 ? "one" : "some")}>";
    }

    /// <summary>One word for the sort of a phrase; deeds have a capital; empty for what changes nothing.</summary>
    private static string SortOf(Phrase phrase) => phrase switch
    {
        ThingPhrase { Thing: var thing } named => thing.Sort switch
        {
            ThingSort.Unknown => "stranger",
            ThingSort.Lacking => "lacking",
            ThingSort.Fasteners => "fasteners",
            _ when thing.Others.Count > 0 => "part?",
            _ when thing.Detail.Length > 0 => "part-piece",
            _ when thing.Where.Length > 0 => "part-where",
            _ when thing.Ids.Count == 1 && (named.Plural || named.Number > 1) => "part-of-more",
            _ => "part",
        },
        LotPhrase => "lot",
        PlacePhrase { Place.Sort: var sort } => sort == PlaceSort.Container ? "place" : $"place-{sort}".ToLowerInvariant(),
        ActPhrase { Act: var act } => act.ToString(),
        FaultPhrase { Damage: var damage } => damage ? "damage" : "sight",
        AmountPhrase => "amount",
        NumPhrase => "figure",
        DuePhrase => "day",
        TagPhrase => "tag",
        DetailPhrase { Which: var which } => which.Length > 0 ? "piece-which" : "piece",
        WherePhrase => "where-on",
        MeasurePhrase => "reading",
        WordPhrase { Word: var word, Filler: var filler } =>
            Denials.Contains(word) ? "no"
            : Pronouns.Contains(word) ? "it"
            : Idle.Contains(word) ? ""
            : Turning.Contains(word) || Plain.Contains(word) ? word
            : filler ? "" : Unlisted,
        _ => "",
    };
}
