namespace Gudgeon.Capture;

/// <summary>What a number beside a joint tells of: its fasteners, some of them, none of them, or something else altogether.</summary>
internal sealed partial class Listener
{
    /// <summary>"with the two points together", "that's one job less", "one more ring pings off": the number counts what follows it, or nothing here.</summary>
    private bool CountsElse(Num num)
    {
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

    /// <summary>"I've rounded one of them", "stripped two", "got a rounded bolt": some of the fasteners of the joint told of, and how many.</summary>
    private (Thing Of, int Count, int To)? SpoiltSome(FaultPhrase fault, List<Phrase> clause, int i)
    {
        if (fault.Fault is not ("rounded" or "stripped" or "snapped" or "broken" or "sheared" or "seized" or "crossthreaded" or "bent" or "stretched" or "stuck"))
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
}
