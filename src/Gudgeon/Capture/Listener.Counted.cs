namespace Gudgeon.Capture;

/// <summary>What a number beside a joint tells of: its fasteners, some of them, none of them, or something else altogether.</summary>
internal sealed partial class Listener
{
    /// <summary>"with the two points together", "that's one job less", "one more ring pings off": the number counts what follows it, or nothing here.</summary>
    private bool CountsElse(Num num)
    {
        // "one and two I make after supper", "coils one to five", "in on one": which ones, not how many.
        if (Word(num.To) is "and" or "to" or "through" && NumberWords.At(tokens, num.To + 1) is { IsCount: true } next && Lexicon.Fasteners.Longest(tokens, next.To).Values.Count == 0 && SizeReader.At(tokens, next.From, inchBook) is null
            || Word(num.From - 1) is "on" && Word(num.From - 2) is "in" or "on" or "one" or "ones" or "down" or "up")
            return true;
        // "injector pipes off, all six", "rocker covers, three of them": so many parts as were named, where these are several.
        if (phrases.OfType<ThingPhrase>().LastOrDefault(p => p.To <= num.From) is { Plural: true, Thing: { Sort: ThingSort.Part or ThingSort.Line, Ids: var ids } } && (Word(num.From - 1) is "all" || ids.Count > 1 && ids.Count == num.Value && draft is not { Fitting: true, Stages.Count: > 0 }))
            return true;
        if (Range(num.To, num.To + 2).Any(k => Word(k) is "less" or "more" or "fewer" or "together" && (k + 1 >= tokens.Count || tokens[k + 1].IsBreak || Word(k + 1) is "to" or "for" or "and" or "on")))
            return true;
        int noun = num.To;
        while (Word(noun) is "more" or "other" or "last" or "new" or "old" or "little" or "big" or "wee" or "good" or "bad")
            noun++;
        if (noun >= tokens.Count || tokens[noun].IsBreak || Lexicon.Fasteners.Longest(tokens, noun).Values.Count > 0)
            return false;
        return phrases.FirstOrDefault(p => p.From <= noun && p.To > noun) switch
        {
            ThingPhrase { Thing.Sort: not ThingSort.Fasteners } named => named.From >= num.To,
            DetailPhrase => true,
            WordPhrase { Filler: false, Word: var word } => tokens[noun].Plural == num.Value > 1 && !Lexicon.Passing.Contains(word),
            _ => false,
        };
    }

    /// <summary>"no studs this time", "none of the nuts", "not one stud": told that there were none.</summary>
    private int? NoneOf(LotPhrase phrase)
    {
        int k = phrase.From - 1;
        while (Word(k) is "the" or "of" or "them" or "my" or "those" or "a" or "single" or "bloody")
            k--;
        bool none = Word(k) is "no" && NumberWords.At(tokens, k - 1) is null || Word(k) is "none" or "neither" or "without" || (Word(k) is "not" && phrase.Lot.Count is null or 1) || (Word(k) is "one" && Word(k - 1) is "not");
        return none ? k : null;
    }

    /// <summary>"one stud came out with its nut", "with one nut came also the stud": the nut was counted, the stud is one more.</summary>
    private LotPhrase? CameAlong(LotPhrase phrase, List<Phrase> clause)
    {
        if (phrase.Lot.Fastener is not ("nut" or "stud") || !clause.Any(p => p is LotPhrase { Lot.Fastener: "stud" }) || !Range(clause[0].From, clause[^1].To).Any(k => Word(k) is "came" or "come" or "comes" or "brought") || draft is not { Lots: [.., { Lot.Count: not null }] })
            return phrase;
        if (phrase.Lot.Fastener == "stud")
            return phrase.Lot is { Count: null, Uncounted: false } && !tokens[phrase.To - 1].Plural ? phrase with { Lot = phrase.Lot with { Count = 1 } } : phrase;
        if (phrase.Lot.Count is null && tokens[phrase.To - 1].Plural)
            return phrase;
        int k = phrase.From;
        while (Word(k - 1) is "its" or "his" or "her" or "their" or "the" or "that")
            k--;
        return Word(k - 1) == "with" && draft.Lots.Any(l => l.Lot.Fastener == "nut") ? null : phrase;
    }

    /// <summary>"cam cover had twelve bolts", "the pump takes seven": what it has, and no word of undoing them.</summary>
    private bool Has(int thing, int lot) =>
        Range(thing, lot) is var words && words.Any(k => Word(k) is "count" or "counted" or "has" or "had" or "have" or "takes" or "having" or "should") && words.All(k => Word(k) is "has" or "had" or "have" or "got" or "takes" or "is" or "are" or "having" or "should" or "only" or "just" or "about" or "all" or "in" or "total" or "the" or "its" or "there" or "always" or "me" or "on" or "also" or "i" or "we" or "count" or "counted" || tokens[k].IsBreak);

    /// <summary>What befalls a bolt or a nut: none of them leaks, tears or perishes.</summary>
    private static bool OfBolts(string fault) => fault is "rounded" or "stripped" or "snapped" or "broken" or "bent" or "stretched" or "pulled" or "corroded" or "rusty" or "seized" or "stuck" or "loose" or "tight" or "cracked" or "worn" or "nicked" or "damaged" or "dirty" or "clean" or "fine" or "wet" or "dry" or "oily" or "galled";

    /// <summary>"I've rounded one of them", "stripped two", "got a rounded bolt": some of the fasteners of the joint told of, and how many.</summary>
    private (Thing Of, int Count, int To)? SpoiltSome(FaultPhrase fault, List<Phrase> clause, int i)
    {
        if (!OfBolts(fault.Fault))
            return null;
        var joint = pending.Count > 0 ? pending[^1].Thing : draft?.Of ?? topic;
        if (joint is not { Sort: ThingSort.Part or ThingSort.Fasteners, Detail: "" })
            return null;
        // "a rounded bolt", "two snapped studs"
        if (clause.ElementAtOrDefault(i + 1) is LotPhrase { Lot: { Count: null, Uncounted: false, Size.IsEmpty: true, Fastener: "bolt" or "nut" or "stud" or "screw" }, Share: "" } named && named.From == fault.To)
        {
            int? some = Word(fault.From - 1) is "a" or "one" ? 1 : In(0, fault.From).OfType<NumPhrase>().LastOrDefault() is { Num.IsCount: true } n && n.To == fault.From ? n.Num.Int : null;
            return some is { } told && Range(clause[0].From, fault.From).Any(k => Word(k) is "has" or "got" or "with" or "had" or "found") ? (joint, told, named.To) : null;
        }

        if (draft is { Lots.Count: > 0 } && HeadOf(fault, clause) is var (many, end) && end > 0)
            return (joint, many, end);
        bool does = Word(fault.From - 1) is "i" or "we" or "he" or "she" or "'ve" or "have" or "and" or "just" or "managed" || fault.From == clause[0].From;
        if (!does || draft is not { Lots.Count: > 0 } || (Word(fault.To) == "one" ? new Num(1, NumSort.Whole, fault.To, fault.To + 1) : NumberWords.At(tokens, fault.To)) is not { IsCount: true, Value: >= 1 and <= 12 } count)
            return null;
        int to = count.To;
        if (Word(to) == "of" && Word(to + 1) is "them" or "em" or "those" or "the" or "these")
            to += 2;
        if (Lexicon.Fasteners.Longest(tokens, to) is { Values.Count: > 0 } noun)
            to = noun.To;
        if (Word(to) is "off" or "though" or "too" or "up" or "again")
            to++;
        return to >= tokens.Count || tokens[to].IsBreak || Word(to) is "and" or "so" or "but" or "getting" or "taking" or "doing" or "on" ? (joint, count.Int, to) : null;
    }

    /// <summary>"one of the heads is rounded", "two have rounded heads": of the fasteners just told.</summary>
    private (int Count, int To) HeadOf(FaultPhrase fault, List<Phrase> clause)
    {
        int k = clause[0].From;
        while (Word(k) is "and" or "but" or "though" or "only" or "with")
            k++;
        int to = Word(k) == "one" ? k + 1 : NumberWords.At(tokens, k) is { IsCount: true, Value: <= 12 } n ? n.To : -1;
        if (to < 0 || fault.Fault is not ("rounded" or "stripped" or "snapped" or "broken"))
            return (0, -1);
        int count = Word(k) == "one" ? 1 : NumberWords.At(tokens, k)!.Value.Int;
        bool before = Range(to, fault.From).Any(j => Word(j) is "head" or "heads") && Range(to, fault.From).All(j => Word(j) is "of" or "the" or "them" or "head" or "heads" or "is" or "'s" or "are" or "has" or "been" or "got" or "its");
        bool after = Word(fault.To) is "head" or "heads" && Range(to, fault.From).All(j => Word(j) is "of" or "them" or "has" or "have" or "had" or "with" or "got" or "a" or "'s" or "is");
        return before ? (count, fault.To) : after ? (count, fault.To + 1) : (0, -1);
    }

    /// <summary>"same figures", "to the same torque", "done the same again": tightened as what was told before; one past it.</summary>
    private int? SameFigures(int at, int to)
    {
        int k = at;
        while (k < to && Word(k) is "to" or "at" or "with" or "the" or "done" or "all" or "just")
            k++;
        if (Word(k) != "same")
            return null;
        k++;
        int noun = k;
        while (Word(noun) is "newton" or "foot" or "torque" or "tightening")
            noun++;
        if (tokens.ElementAtOrDefault(noun).Stem is "figure" or "torque" or "number" or "setting" or "tightness" or "metre" or "meter" or "pound" or "value" or "stage" or "again" || noun > k)
            k = Math.Max(noun, k) + (tokens.ElementAtOrDefault(noun).Stem is "figure" or "torque" or "number" or "setting" or "tightness" or "metre" or "meter" or "pound" or "value" or "stage" or "again" ? 1 : 0);
        while (Word(k) is "as" && Word(k + 1) is "before" or "last" or "above")
            k += 2;
        return Rests(k, to) ? k : null;
    }

    /// <summary>"I count", "there's", "I counted" right before a lot: the words of counting, told with it.</summary>
    private IEnumerable<int> Counting(int at)
    {
        int k = at;
        while (Word(k - 1) is "count" or "counted" or "counting" or "i" or "we" or "'ve" or "'m" or "takes" || k < at && Word(k - 1) is "have" or "am")
            k--;
        return Range(k, at);
    }

    /// <summary>"four bolts, one was never fitted": of those told, so many.</summary>
    private bool NeverThere(ActPhrase miss, List<Phrase> clause, int end)
    {
        if (draft is not { Lots: [.., var last] } whole || last.From >= clause[0].From || clause[0] is not NumPhrase { Num: { IsCount: true } lost })
            return false;
        if (Range(lost.To, miss.From).Any(k => Word(k) is "on" or "from" or "of" && Word(k + 1) is not ("them" or "em" or "those")))
            Ask(DoubtSort.NotTold, $"Kept as said: “{Said(clause[0].From, end)}”", Range(clause[0].From, end));
        else
            About(whole.Of with { Sort = ThingSort.Fasteners, Fastener = "bolt" }, Range(clause[0].From, miss.To), t => new Missing(t, [new Lot { Count = lost.Int, Fastener = last.Lot.Fastener is { Length: > 0 } kind ? kind : "bolt" }]));
        return true;
    }

    /// <summary>"nine nuts off, the rest seized", "two left": said after that not all are undone.</summary>
    private bool HeldYet(int at)
    {
        int end = at;
        while (end < tokens.Count && !tokens[end].IsEnd)
            end++;
        return In(at, end).Any(p => p is FaultPhrase { Fault: "stuck" or "seized" or "rounded" } stuck && Range(at, stuck.From).Any(k => Word(k) is "rest" or "others" or "other" or "last" or "third" or "fourth" or "remaining" or "one" or "two" or "three"))
            || Range(at, end).Any(k => Word(k) is "left" or "remaining" && (k + 1 >= end || tokens[k + 1].IsBreak) && NumberWords.At(tokens, k - 1) is { IsCount: true }) || Range(at, end).Any(k => Word(k) is "to" && Word(k + 1) == "go" && NumberWords.At(tokens, k - 1) is { IsCount: true });
    }

    /// <summary>"four of the six nuts", "six of the manifold nuts": how many of those named.</summary>
    private (int Count, int From)? SomeOf(int named, int from)
    {
        int k = named - 1;
        while (Word(k) is "the" or "my" or "its" or "those")
            k--;
        return Word(k) == "of" && Range(from, k).LastOrDefault(s => NumberWords.At(tokens, s) is { IsCount: true } n && n.To == k, -1) is >= 0 and var at ? (NumberWords.At(tokens, at)!.Value.Int, at) : null;
    }

    /// <summary>"one bolt of the middle one is stripped": of one in the row just told.</summary>
    private bool SpoiltOf(LotPhrase phrase, List<Phrase> clause, int i, int end)
    {
        if (Word(phrase.To) is not ("of" or "on" or "from") || phrase.Lot.Fastener.Length == 0 || clause.Skip(i + 1).OfType<FaultPhrase>().FirstOrDefault() is not { Damage: true } fault || !OfBolts(fault.Fault) || (draft?.Of ?? topic) is not { Kind.Length: > 0, Ids.Count: > 1, Detail: "" } told)
            return false;
        var between = In(phrase.To, fault.From).Where(p => p is not (WordPhrase or NumPhrase or WherePhrase or ActPhrase { Word: "left" })).ToList();
        if (between.Any(p => p is not ThingPhrase { Thing: { Sort: ThingSort.Part, Detail: "", Others.Count: 0, Ids.Count: 1 } of } || of.Kind != told.Kind))
            return false;
        var row = All(told with { Sort = ThingSort.Part, Others = [] });
        int stop = Range(phrase.To, fault.From).FirstOrDefault(k => Lexicon.Copulas.Contains(Word(k)) || Word(k) is "has" or "got", fault.From);
        var one = between.OfType<ThingPhrase>().FirstOrDefault()?.Thing ?? Chosen(row, phrase.To, stop)?.Thing ?? (Range(phrase.To, stop).Any(k => Word(k) is "middle" or "centre" or "center") && row.Ids.Count % 2 == 1 && index.Parts(row.Kind)[row.Ids.Count / 2] is var part ? row with { Ids = [part.Id], Name = part.Name } : null);
        var words = Range(clause[0].From, fault.To).Where(k => !tokens[k].IsBreak);
        if (one is null)
            Ask(DoubtSort.Which, $"Which of the {told.Name} is it: “{Said(phrase.From, end)}”?", words);
        else
            Add(new Damaged(things.Joint(one, "bolt"), fault.Fault, Said(phrase.From, end), phrase.Lot.Count ?? 1), words);
        clause.RemoveAll(p => p.From > phrase.From && p.To <= fault.To);
        return true;
    }

    /// <summary>"the two at the back are M6 by 45": the number of what is sized after it.</summary>
    private static NumPhrase? Sized(List<Phrase> clause, int i) =>
        clause[i] is LotPhrase { Lot: { Count: null, Uncounted: false, Size.IsEmpty: false }, Share: "" } && clause.Take(i).OfType<NumPhrase>().LastOrDefault(n => n.Num.IsCount) is { } number
        && clause.Where(p => p.From >= number.To && p.To <= clause[i].From).ToList() is var between && between.OfType<WordPhrase>().Any(w => Lexicon.Copulas.Contains(w.Word)) && between.All(p => p is WordPhrase or WherePhrase or ThingPhrase) && between.Any(p => p is WherePhrase or ThingPhrase or WordPhrase { Word: "at" or "on" or "in" }) ? number : null;
}
