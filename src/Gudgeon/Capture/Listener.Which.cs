using System.Text.RegularExpressions;
using Gudgeon.Engine;

namespace Gudgeon.Capture;

/// <summary>
/// A noun left unsaid: "left one", "right's dry", "the even ones", "the other two", "seven to twelve still in", "two's thread".
/// It is read as if the name of the kind spoken of stood there, so that whatever is told of it is heard as of any part.
/// </summary>
internal sealed partial class Listener
{
    private static readonly HashSet<string> Levels = ["upper", "lower", "top", "bottom", "front", "rear", "back", "middle", "centre", "center", "inner", "outer", "end", "last", "first"];

    private ThingPhrase? Unnamed(List<Phrase> before, int at, int to)
    {
        if (RestOf(before, at, to) is { } rest)
            return rest;
        if (!(tokens[at].IsWord || tokens[at].Sort == TokenSort.Number) || KinBefore(before) is not { Sort: ThingSort.Part, Kind.Length: > 0, Others.Count: 0 } kin || index.Parts(kin.Kind).Count < 2 && Sibling(kin.Kind).Length == 0)
            return null;
        int from = Word(at) is "the" && at + 1 < to ? at + 1 : at;
        var told = OnSide(kin, before, from) ?? OfGas(kin, from) ?? OnLevel(kin, from) ?? Odd(kin, from) ?? Remaining(kin, before, from) ?? Numbered(kin, from);
        if (told is not { Thing.Ids.Count: > 0 } read || read.To > to || !Opens(before, at) || !Predicated(read.To, to))
            return null;
        // "two's thread": a piece of that one.
        var piece = Word(read.To) == "'s" && Lexicon.Details.Longest(tokens, read.To + 1) is { Values: [var detail, ..] } found && found.To < to && index.Parts($"{kin.Kind}-{detail}").Count == 0 ? (detail, found.To) : ("", read.To);
        return new ThingPhrase(at, piece.Item2, read.Thing with { Others = [], Detail = piece.Item1, Where = "" }, read.Thing.Ids.Count > 1, false) { Unnamed = true };
    }

    /// <summary>The kind that the words before speak of; of parts that only tell a place none.</summary>
    private Thing? KinBefore(List<Phrase> before)
    {
        if (before.OfType<ThingPhrase>().LastOrDefault(t => t.Thing.Kind.Length > 0 && Preposition(t.From) is "" or "with") is { } named)
            return named.Thing.Sort == ThingSort.Fasteners ? named.Thing with { Sort = ThingSort.Part } : named.Thing;
        return pending.Count > 0 ? pending[^1].Thing : topic ?? LastThing();
    }

    /// <summary>What is left unsaid stands where a subject may: after a pause, a deed, a place or a fault.</summary>
    private bool Opens(List<Phrase> before, int at) =>
        at == 0 || tokens[at - 1].IsBreak || Word(at - 1) is "and" or "but" or "so" or "then" or "while" or "though" or "now" or "because" or "cos" or "with" or "except" or "only" or "or" or "also" or "plus" or "aye" or "well" or "just" || before.LastOrDefault() is ActPhrase or PlacePhrase or FaultPhrase;

    /// <summary>Something is said of it: how it is, where it lies, what was done, or that it is the same.</summary>
    private bool Predicated(int at, int to)
    {
        if (at >= to || tokens[at].IsBreak)
            return false;
        return Word(at) is "'s" or "is" or "are" or "was" or "were" or "has" or "have" or "had" or "looks" or "look" or "feels" or "feel" or "needs" or "need" or "still" or "stay" or "stays" or "staying" or "stayed" or "came" or "come" or "went" or "wont" or "too" or "also" or "likewise" or "ditto" or "same" or "not" or "isnt" or "arent" or "in" or "on" or "out" or "off" or "as" or "all" or "both" or "fought" or "goes" or "go" or "just" or "only" or "left"
            || Lexicon.Faults.Longest(tokens, at).Values.Count > 0 || Sights.At(tokens, at) is not null;
    }

    private (Thing Thing, int To)? OnSide(Thing kin, List<Phrase> before, int at)
    {
        if (Word(at) is not ("left" or "right") || Word(at - 1) is "'s" or "is" or "are" or "was" or "were" or "been" or "what" or "nothing" or "have" or "has" or "i" or "we" or "to" || before.LastOrDefault() is FaultPhrase && !tokens[at - 1].IsBreak && Word(at - 1) != "and")
            return null;
        int to = at + 1;
        if (Word(to) is "hand")
            to++;
        if (Word(to) is "one" or "ones")
            to++;
        else if (to == at + 1 && Word(to) is not ("'s" or "is" or "are" or "was" or "has" or "isnt" or "too") || to > at + 1)
            return null;
        return Across(kin, Word(at)) is { } side ? (side, to) : null;
    }

    /// <summary>Those of the kind on that side: the fellow of one, all there when several were spoken of.</summary>
    private Thing? Across(Thing kin, string side)
    {
        if (kin.Ids.Count == 1 && Fellow(kin, side) is { } fellow)
            return fellow;
        var found = Select(kin with { Others = [], Detail = "", Where = "" }, null, side);
        return found is { Ids.Count: > 0 } && found.Ids.Count < index.Parts(kin.Kind).Count ? found : null;
    }

    private static readonly string[][] Pairs2 = [["left", "right"], ["upper", "lower"], ["inlet", "exhaust"], ["front", "rear"], ["inner", "outer"]];

    private static string Sibling(string kind) => kind switch { "valve-in" => "valve-ex", "valve-ex" => "valve-in", _ => "" };

    /// <summary>The part that is named as this one is but for the one word: right inlet cam for left inlet cam.</summary>
    private Thing? Fellow(Thing kin, string word)
    {
        if (kin.Ids is not [var id] || !index.Engine.Parts.TryGetValue(id, out var part) || Pairs2.FirstOrDefault(p => p.Contains(word)) is not { } pair)
            return null;
        string[] words = part.Name.Split(' ');
        int place = Array.FindIndex(words, w => pair.Contains(w, StringComparer.OrdinalIgnoreCase));
        if (place < 0)
            return null;
        words[place] = word;
        string name = string.Join(' ', words);
        var like = index.Parts(kin.Kind).Concat(index.Parts(Sibling(kin.Kind))).FirstOrDefault(p => p.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
        return like is null ? null : new Thing(ThingSort.Part, like.Kind, [like.Id], like.Name);
    }

    private (Thing Thing, int To)? OfGas(Thing kin, int at)
    {
        if (Word(at) is not ("inlet" or "inlets" or "intake" or "intakes" or "exhaust" or "exhausts"))
            return null;
        int to = Word(at + 1) is "one" or "ones" ? at + 2 : at + 1;
        if (to == at + 1 && Word(to) is not ("'s" or "is" or "are" or "was" or "were" or "too" or "likewise") && !(tokens[at].Plural && Lexicon.Faults.Longest(tokens, to).Values.Count > 0))
            return null;
        if (kin.Kind != "cam" && (Word(at + 1) is "one" or "ones" or "on" or "of" or "for" or "number" or "cylinder" || NumberWords.At(tokens, at + 1) is not null) && things.At(at) is { Thing: { Sort: ThingSort.Part, Others.Count: 0, Ids.Count: > 0 } numbered } picked && picked.To > to && (numbered.Kind == kin.Kind || numbered.Kind == Sibling(kin.Kind)))
            return (numbered, picked.To);
        string gas = Word(at).StartsWith("ex", StringComparison.Ordinal) ? "exhaust" : "inlet";
        if (Sibling(kin.Kind).Length > 0)
        {
            string kind = gas == "exhaust" ? "valve-ex" : "valve-in";
            if (kin.Ids.Count == 1 && kin.Kind != kind && Fellow(kin, gas) is { } one)
                return (one, to);
            var cylinders = kin.Ids.Select(i => index.Engine.Parts.TryGetValue(i, out var p) ? p.Cylinder : null).Distinct().ToList();
            var row = index.Parts(kind).Where(p => cylinders is not [{ } only] || p.Cylinder == only).ToList();
            return row.Count == 0 ? null : (new Thing(ThingSort.Part, kind, [.. row.Select(p => p.Id)], row.Count == 1 ? row[0].Name : index.NameOf(kind) + "s"), to);
        }

        if (kin.Ids.Count == 1 && Fellow(kin, gas) is { } fellow)
            return (fellow, to);
        var named = index.Parts(kin.Kind).Where(p => p.Name.Contains(gas, StringComparison.OrdinalIgnoreCase)).ToList();
        return named.Count > 0 && named.Count < index.Parts(kin.Kind).Count ? (new Thing(ThingSort.Part, kin.Kind, [.. named.Select(p => p.Id)], named.Count == 1 ? named[0].Name : $"{gas} {index.NameOf(kin.Kind)}s"), to) : null;
    }

    /// <summary>"lower one", "the upper", "the last two", "second one", "the middle one": by level, or by its place in the row.</summary>
    private (Thing Thing, int To)? OnLevel(Thing kin, int at)
    {
        var count = Word(at) is "last" or "first" or "front" or "rear" or "back" or "end" or "outer" or "middle" or "inner" && NumberWords.At(tokens, at + 1) is { Sort: NumSort.Whole, Value: > 1 and < 20 } some ? some : (Num?)null;
        if (NumberWords.At(tokens, at) is { Sort: NumSort.Ordinal, Int: > 0 and <= 28 } nth && (Word(nth.To) is "one" || Word(nth.To) is "'s"))
            return ByNumber(kin, [nth.Int]) is { } ordinal ? (ordinal, Word(nth.To) == "one" ? nth.To + 1 : nth.To) : null;
        if (!Levels.Contains(Word(at)))
            return null;
        int to = count?.To ?? (Word(at + 1) is "one" or "ones" ? at + 2 : at + 1);
        if (to == at + 1 && !(Word(at) is "upper" or "lower" or "front" or "rear" && Word(to) is "'s" or "is" or "has" or "was" or "likewise" or "too" or "ditto"))
            return null;
        string level = Word(at) switch { "top" => "upper", "bottom" => "lower", "back" => "rear", var w => w };
        if (kin.Ids.Count == 1 && Fellow(kin, level) is { } fellow)
            return (fellow, to);
        var row = RowOf(kin);
        if (row.Count > 2)
        {
            int n = count?.Int ?? 1;
            IEnumerable<Part> picked = level switch
            {
                "front" or "first" => row.Take(n),
                "rear" or "last" => row.TakeLast(n),
                "middle" or "centre" or "center" when count is null && row.Count % 2 == 1 => [row[row.Count / 2]],
                _ => [],
            };
            return n < row.Count && picked.ToList() is { Count: > 0 } some1 ? (OfKin(kin, some1), to) : null;
        }

        var named = index.Parts(kin.Kind).Where(p => p.Name.StartsWith(level + " ", StringComparison.OrdinalIgnoreCase) && (kin.Ids.Count == 1 || SameNumber(p, kin))).ToList();
        return count is null && named.Count > 0 && named.Count < index.Parts(kin.Kind).Count && (named.Count == 1 || Word(at + 1) == "ones" || kin.Ids.Count > 1) ? (OfKin(kin, named), to) : null;
    }

    private bool SameNumber(Part part, Thing kin) => kin.Ids.Any(i => index.Engine.Parts.TryGetValue(i, out var p) && p.Index.Count > 0 && part.Index.Count > 0 && p.Index[0] == part.Index[0]);

    /// <summary>Parts that stand in one row, one to a number; empty when there are more to a number.</summary>
    private List<Part> RowOf(Thing kin)
    {
        var row = index.Parts(kin.Kind).Where(p => p.Index.Count == 1).OrderBy(p => p.Cylinder ?? p.Index[0]).ToList();
        return row.Count == index.Parts(kin.Kind).Count ? row : [];
    }

    private Thing OfKin(Thing kin, List<Part> parts) =>
        new(ThingSort.Part, kin.Kind, [.. index.Parts(kin.Kind).Where(parts.Contains).Select(p => p.Id)], parts.Count == 1 ? parts[0].Name : $"{index.NameOf(kin.Kind)}s {string.Join(", ", parts.Select(p => string.Join('.', p.Index)))}");

    /// <summary>Those with the numbers, all of which there must be.</summary>
    private Thing? ByNumber(Thing kin, List<int> numbers)
    {
        var parts = index.Parts(kin.Kind).Where(p => p.Index.Count > 0 && numbers.Contains(p.Cylinder ?? p.Index[0])).ToList();
        return numbers.Count > 0 && parts.Select(p => p.Cylinder ?? p.Index[0]).Distinct().Count() == numbers.Distinct().Count() && parts.Count < index.Parts(kin.Kind).Count ? OfKin(kin, parts) : null;
    }

    private (Thing Thing, int To)? Odd(Thing kin, int at)
    {
        if (Word(at) is not ("odd" or "even"))
            return null;
        int to = Word(at + 1) is "numbered" ? at + 2 : at + 1;
        if (Word(to) is not ("ones" or "numbers" or "cylinders"))
            return null;
        int parity = Word(at) == "odd" ? 1 : 0;
        return ByNumber(kin, [.. index.Parts(kin.Kind).Where(p => p.Index.Count > 0).Select(p => p.Cylinder ?? p.Index[0]).Distinct().Where(n => n % 2 == parity)]) is { } half ? (half, to + 1) : null;
    }

    /// <summary>"the others", "the other two", "the rest", "remaining four": all of the kind but those told of.</summary>
    private (Thing Thing, int To)? Remaining(Thing kin, List<Phrase> before, int at)
    {
        int to = at + 1;
        int? number = null;
        if (Word(at) is "other" or "remaining")
        {
            if (NumberWords.At(tokens, to) is { IsCount: true } n)
                (number, to) = (n.Int, n.To);
            else if (Word(to) is "ones")
                to++;
            else if (Word(to) is "one")
                (number, to) = (1, to + 1);
            else
                return null;
        }
        else if (Word(at) is not ("rest" or "others"))
            return null;
        // After fasteners the others are fasteners.
        if (before.LastOrDefault(p => p is ThingPhrase or LotPhrase) is LotPhrase || draft is { Lots.Count: > 0 })
            return null;
        if (Word(to) == "of" && Word(to + 1) is "them" or "em")
            to += 2;
        var all = index.Parts(kin.Kind);
        var told = before.OfType<ThingPhrase>().Select(t => t.Thing).Concat(facts.Concat(facts.Count > 0 ? [] : context.Last).Select(About)).Append(kin).Where(t => t?.Kind == kin.Kind && t.Ids.Count < all.Count).SelectMany(t => t!.Ids).ToHashSet();
        var left = all.Where(p => !told.Contains(p.Id)).ToList();
        return left.Count > 0 && left.Count < all.Count && (number is null || number == left.Count) ? (OfKin(kin, left), to) : null;
    }

    /// <summary>"all the other rod bearings", "the rest of the pistons", "the remaining plugs": of a kind that is named, all but those told of; which these are is open when none were.</summary>
    private ThingPhrase? RestOf(List<Phrase> before, int at, int to)
    {
        int from = at;
        while (from < to && Word(from) is "all" or "of" or "the" or "my")
            from++;
        bool rest = Word(from) == "rest" && Word(from + 1) == "of" && Word(from + 2) is "the" or "my" or "those" or "these";
        int noun = rest ? from + 3 : from + 1;
        if (!rest && Word(from) is not ("other" or "remaining") || noun >= to || at > 0 && Word(at - 1) is "the" or "of" or "every")
            return null;
        int? number = null;
        if (!rest && NumberWords.At(tokens, noun) is { IsCount: true, Value: > 1 } n)
            (number, noun) = (n.Int, n.To);
        if (noun >= to || things.At(noun) is not { Plural: true, Thing: { Sort: ThingSort.Part, Detail: "", Fastener: "", Where: "", Others.Count: 0, Kind: { Length: > 0 } kind } } named || named.Thing.Ids.Count != index.Parts(kind).Count || named.Thing.Ids.Count < 3)
            return null;
        var all = index.Parts(kind);
        var told = before.OfType<ThingPhrase>().Select(t => t.Thing).Concat(facts.Concat(context.Last).Select(About)).Append(LastThing()).Where(t => t?.Kind == kind && t.Others.Count == 0 && t.Ids.Count < all.Count).SelectMany(t => t!.Ids).ToHashSet();
        var left = all.Where(p => !told.Contains(p.Id)).ToList();
        bool known = told.Count > 0 && left.Count > 0 && (number is null || left.Count == number);
        var those = known ? OfKin(named.Thing, left) : new Thing(ThingSort.Part, kind, [], index.NameOf(kind)) { Where = "the others" };
        return new ThingPhrase(at, named.To, those, true, false);
    }

    /// <summary>"seven to twelve", "two four and six", "number three", "two's thread".</summary>
    private (Thing Thing, int To)? Numbered(Thing kin, int at)
    {
        bool named = Word(at) is "number" or "numbers" or "cylinder" or "cylinders";
        int to = named ? at + 1 : at;
        var numbers = new List<int>();
        while (NumberWords.At(tokens, to) is { IsCount: true, Value: > 0 and <= 28 } n && Units.At(tokens, n.To) is null && Word(n.To) is not ("by" or "point" or "and a" or "of" or "x" or "hundred") && (numbers.Count == 0 || n.Int > numbers[^1]))
        {
            numbers.Add(n.Int);
            to = n.To;
            if (Word(to) is "to" or "through" or "thru" && NumberWords.At(tokens, to + 1) is { IsCount: true } last && last.Int > n.Int && last.Int <= 28)
            {
                numbers.AddRange(Range(n.Int + 1, last.Int + 1));
                to = last.To;
            }

            int next = Word(to) is "and" or "plus" || to < tokens.Count && tokens[to].Sort == TokenSort.Comma ? to + 1 : to;
            if (Word(next) is "number" or "cylinder")
                next++;
            if (NumberWords.At(tokens, next) is not { IsCount: true } follow || follow.Int <= numbers[^1] || Lexicon.Fasteners.Longest(tokens, follow.To).Values.Count > 0)
                break;
            to = next;
        }

        bool owns = numbers.Count == 1 && Word(to) == "'s" && Lexicon.Details.Longest(tokens, to + 1).Values.Count > 0;
        if (numbers.Count == 0 || numbers.Count == 1 && !owns || ByNumber(kin, numbers) is not { } those)
            return null;
        return (those, to);
    }

    /// <summary>"injectors out, one to three", "valve covers on, left and right", "plugs out. all six": which of those just told, after a pause.</summary>
    private int WhichAfterwards(Stretch clause)
    {
        if (facts.Count == 0 || pending.Count > 0 || draft is { Lots.Count: > 0 } || About(facts[^1]) is not { Sort: ThingSort.Part, Kind.Length: > 0, Detail: "", Others.Count: 0 } told || told.Ids.Count == 1 || (Narrower(told, clause) ?? (told.Ids.Count > 1 ? Picks(told, clause.From, clause.To) : null)) is not { } chosen)
            return -1;
        var those = chosen with { Detail = "", Where = "", Others = [] };
        for (int k = 0; k < facts.Count; k++)
        {
            if (About(facts[k])?.Code == told.Code)
                facts[k] = With(facts[k], those) with { Spans = [.. facts[k].Spans, .. Spans(Range(clause.From, clause.To))] };
        }

        if (draft is { Of: var of } && of.Code == told.Code)
            draft = new Draft(those) { Fitting = draft.Fitting };
        offNow.Add(those.Code);
        return Spoken(those, clause);
    }

    /// <summary>"one of the pushrods is bent, the inlet on number two", "guides are loose on five and six, exhaust side only": a clause that names some of those told and nothing more.</summary>
    private Thing? Narrower(Thing told, Stretch clause)
    {
        if (facts[^1] is not (Damaged or Seen))
            return null;
        int at = clause.From;
        while (at < clause.To && Word(at) is "and" or "the" or "on" or "just" or "only" or "but" or "that" or "'s" or "is" or "it" or "its" or "all")
            at++;
        if (In(clause.From, clause.To).Where(p => p is not WordPhrase { Filler: true }).ToList() is [ThingPhrase { Thing: { Sort: ThingSort.Part, Others.Count: 0, Detail: "", Ids.Count: > 0 } named }] && named.Kind == told.Kind && (told.Ids.Count == 0 ? named.Ids.Count == 1 : named.Ids.Count < told.Ids.Count && named.Ids.All(told.Ids.Contains)))
            return named;
        if (told.Ids.Count < 2 || at >= clause.To || tokens[at].Stem is not ("inlet" or "intake" or "exhaust"))
            return null;
        int to = Word(at + 1) is "side" or "sides" or "one" or "ones" or "valve" or "valves" ? at + 2 : at + 1;
        if (Word(to) is "only" or "though" or "mind")
            to++;
        if (to != clause.To)
            return null;
        var side = resolver.Resolve([new PartWord(told.Kind, false, null, 0)], new Selectors { Gas = tokens[at].Stem == "exhaust" ? "ex" : "in", All = true }, true, told.Name);
        var left = index.Parts(told.Kind).Where(p => side.Ids.Contains(p.Id) && told.Ids.Contains(p.Id)).ToList();
        return left.Count > 0 && left.Count < told.Ids.Count ? OfKin(told, left) : null;
    }

    /// <summary>A clause that only says which: by number, side or place in the row, or that it is all of them.</summary>
    private Thing? Picks(Thing kin, int from, int to)
    {
        int at = from;
        while (at < to && Word(at) is "and" or "the" or "on" or "just" or "that" or "'s" or "so" or "only")
            at++;
        var side = Word(at) is "left" or "right" && Word(at + 1) is "side" or "bank" or "hand" or "" && Across(kin, Word(at)) is { } across
            ? (across, Word(at + 1) is "" ? at + 1 : at + 2)
            : ((Thing Thing, int To)?)null;
        if ((side ?? Odd(kin, at) ?? OnLevel(kin, at) ?? Numbered(kin, at)) is { } read && read.To == to && read.Thing.Ids.All(kin.Ids.Contains))
            return read.Thing;
        return AllTo(kin, at) == to ? kin : null;
    }

    /// <summary>"all six", "both of them", "the lot", "both sides", "left and right", "one each side": all that were told, and where the words end.</summary>
    private int AllTo(Thing kin, int at)
    {
        int to = at;
        if (NumberWords.At(tokens, to) is { IsCount: true, Value: 1 } one && Word(one.To) is "each" or "per" or "a" or "to")
            to = one.To;
        bool each = to > at;
        if (Word(to) is "both" or "each" or "either" or "per" or "a" && Word(to + 1) is "side" or "sides" or "bank" or "banks" or "end" or "ends" && (each || Word(to) is not "a"))
            return to + 2;
        if (Word(to) is "left" or "right" && Word(to + 1) == "and" && Word(to + 2) is "left" or "right")
            return Word(to + 3) is "side" or "bank" or "hand" or "banks" or "sides" ? to + 4 : to + 3;
        if (Word(to) is "lot" && Word(to - 1) is "the" or "whole")
            return to + 1;
        int all = Word(to) is "all" or "every" ? to + 1 : to;
        if (Word(all) is "the" or "of")
            all++;
        if (Word(to) is "both" && kin.Ids.Count == 2)
            all = to + 1;
        else if (NumberWords.At(tokens, all) is { IsCount: true } n && all > to && n.Int == kin.Ids.Count)
            all = n.To;
        else if (!(all > to && (Word(to) == "every" && Word(all) is "one" && all++ > 0 || Word(all) is "them" or "em")))
            return -1;
        return Word(all) == "of" && Word(all + 1) is "them" or "em" or "those" ? all + 2 : Word(all) is "them" or "em" ? all + 1 : all;
    }

    /// <summary>"rod caps three and four off, shells worn in both", "both shells off that one": those of the parts spoken of, when only some of these were.</summary>
    private Phrase Theirs(Phrase phrase, List<Phrase> before, int to)
    {
        if (phrase is not ThingPhrase { Thing: { Sort: ThingSort.Part, Kind.Length: > 0, Fastener: "", Where: "" or "upper" or "lower" } several } named || KinBefore(before) is not { Sort: ThingSort.Part, Ids.Count: > 0, Others.Count: 0 } kin)
            return phrase;
        int end = named.To;
        bool points = false;
        if (Word(end) is "on" or "off" or "of" or "from" or "in" or "for")
        {
            int it = Word(end + 1) is "both" or "all" && Word(end + 2) == "of" ? end + 3 : end + 1;
            if (Word(it) is "that" or "this" && Word(it + 1) is "one" || Word(it) is "those" or "these" && Word(it + 1) is "two" or "ones")
                (points, end) = (true, it + 2);
            else if (Word(it) is "it" or "them" or "him" or "her" && !(it + 1 < to && Lexicon.Fasteners.Longest(tokens, it + 1).Values.Count > 0))
                (points, end) = (true, it + 1);
        }

        bool theirs = points || Range(named.From - 1, named.To).Any(k => Word(k) is "its" or "their" or "his");
        bool here = before.OfType<ThingPhrase>().Any() || topic is not null || pending.Count > 0;
        var ways = several.Others.Prepend(several).Where(t => t.Sort == ThingSort.Part && t.Kind != kin.Kind && Belongs(t.Kind, kin)).ToList();
        if (ways.Count == 0 || !theirs && !here && !Range(named.From, named.To).Any(k => Word(k) == "both") || Range(named.From, named.To).Any(k => Word(k) is "all" or "every" or "number" or "new" || NumberWords.At(tokens, k) is { IsCount: true, Value: > 2 } n && n.Int == several.Ids.Count))
            return phrase;
        string kind = ways[0].Kind;
        var all = index.Parts(kind);
        var fellows = before.OfType<ThingPhrase>().Select(t => t.Thing).Concat(facts.Select(About).OfType<Thing>()).Where(t => t.Kind == kin.Kind && t.Others.Count == 0);
        var numbers = kin.Where.Length > 0 ? NumbersOf(kin) : [.. fellows.Append(kin).SelectMany(NumbersOf)];
        var own = all.Where(p => numbers.Contains(p.Cylinder ?? (p.Index.Count > 0 ? p.Index[0] : 0)) && ways.Any(w => w.Ids.Count == 0 || w.Ids.Contains(p.Id) || named.Plural)).ToList();
        string level = several.Where.Length > 0 ? several.Where : new[] { "upper", "lower" }.FirstOrDefault(l => ways.All(w => w.Name.StartsWith(l, StringComparison.OrdinalIgnoreCase))) ?? "";
        if (level.Length > 0)
            own = [.. own.Where(p => p.Name.StartsWith(level, StringComparison.OrdinalIgnoreCase))];
        bool whole = several.Others.Count > 0 || several.Ids.Count == all.Count || several.Where.Length > 0 || several.Ids.Count > own.Count && own.All(p => several.Ids.Contains(p.Id));
        // "all three rings": two and the oil ring.
        var oil = kind != "ring-comp" ? [] : index.Parts("ring-oil").Where(p => p.Cylinder is { } c && numbers.Contains(c)).ToList();
        if (oil.Count > 0 && Range(named.From, Math.Min(tokens.Count, end + 12)).Any(k => Word(k) == "all" && NumberWords.At(tokens, k + 1) is { IsCount: true } n && n.Int == (own.Count + oil.Count) / numbers.Count))
            return named with { To = end, Thing = new Thing(ThingSort.Part, kind, [.. own.Concat(oil).Select(p => p.Id)], "rings of the " + kin.Name) };
        return own.Count > 0 && own.Count < all.Count && whole && (named.Plural || own.Count == 1)
            ? named with { To = end, Thing = OfKin(new Thing(ThingSort.Part, kind, [], ""), own) with { Detail = several.Detail } }
            : phrase;
    }

    /// <summary>A part of the kind is one of each that is spoken of, by its number.</summary>
    private static bool Belongs(string kind, Thing kin) =>
        kin.Where.StartsWith("big end", StringComparison.Ordinal) ? kind is "rod-shell" or "rod-cap" or "rod" : kin.Where.StartsWith("main", StringComparison.Ordinal) ? kind is "main-shell" or "main-cap" : PartIndex.Owns(kind, kin.Kind);

    /// <summary>The cylinders or bearings of what is spoken of.</summary>
    private HashSet<int> NumbersOf(Thing kin)
    {
        if (kin.Kind == "crank" && kin.Where.Split(' ') is [.., var last] && int.TryParse(last, out int journal))
            return [journal];
        return [.. kin.Ids.Select(i => index.Engine.Parts.TryGetValue(i, out var p) ? p.Cylinder ?? (p.Index.Count > 0 ? p.Index[0] : 0) : 0)];
    }

    [GeneratedRegex("^(?:and |all |done |in |went |the |very |exact |exactly |just |much )*(?:(?:same|identical)(?: thing| way| again| story| deal| drill| procedure| routine| carry on)?|likewise|ditto)(?: again| exactly| too| as well| as before| as the (?:other|first)(?: one)?)*$")]
    private static partial Regex AsItsFellow();

    /// <summary>"right one's off too, same thing", "number three's on as well, same way": what else was done to its fellow was done to this one.</summary>
    private int SameWay(Stretch clause)
    {
        if (!AsItsFellow().IsMatch(clause.Line) || pending.Count > 0)
            return -1;
        Flush();
        if (facts.LastOrDefault() is not (On or Off or LeftOn or Parted) || About(facts[^1]) is not { Kind.Length: > 0, Ids.Count: > 0 } now)
            return -1;
        var told = facts.SkipLast(1).Any(f => About(f) is { } t && t.Kind == now.Kind && !t.Ids.SequenceEqual(now.Ids)) ? facts.SkipLast(1) : context.Last;
        var fellow = told.Select(About).FirstOrDefault(t => t is { Sort: ThingSort.Part } && t.Kind == now.Kind && t.Ids.Count == now.Ids.Count && !t.Ids.SequenceEqual(now.Ids));
        if (fellow is null)
            return -1;
        var copies = told.Where(f => IsWork(f) && f is not Put && f.GetType() != facts[^1].GetType() || f is On && About(f)!.Kind != now.Kind).Select(f => About(f) is { } of && Theirs(of, fellow, now) is { } theirs ? With(f, theirs) : null).OfType<Fact>().ToList();
        foreach (var copy in copies)
            Add(copy, Range(clause.From, clause.To));
        return copies.Count > 0 ? Spoken(now, clause) : -1;
    }

    /// <summary>What belongs to this one as the other does to its fellow.</summary>
    private Thing? Theirs(Thing other, Thing fellow, Thing now)
    {
        if (other.Kind == now.Kind)
            return other.Ids.SequenceEqual(fellow.Ids) ? now with { Sort = other.Sort, Fastener = other.Fastener, Detail = other.Detail } : null;
        var numbers = NumbersOf(now);
        var own = index.Parts(other.Kind).Where(p => numbers.Contains(p.Cylinder ?? (p.Index.Count > 0 ? p.Index[0] : 0))).ToList();
        return other.Sort == ThingSort.Part && NumbersOf(other).SetEquals(NumbersOf(fellow)) && own.Count == other.Ids.Count ? OfKin(other, own) with { Detail = other.Detail } : null;
    }
}
