using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>
/// Some of a kind, told by number, by side or as the one spoken of: "three and four are still on", "left one's oily",
/// "number two fought but it's down", "all six are rusty". Which ones is settled first, then what is told of every one of them.
/// </summary>
internal sealed partial class Listener
{
    [GeneratedRegex("^(?:(?:is|are|'s|was|were|looks?) )?(?:also |both |all |much |exactly |just )*(?:the )?(?:very )?(?:same(?: too| as well| story| again| thing| way)?|ditto|likewise|also|too|as well)$")]
    private static partial Regex TheSame();

    [GeneratedRegex("^(?:(?:is|are|'s|was|were|both|all) )*still (?:on|in|there|fitted|in there|on there|bolted (?:on|down)|in place|to come (?:off|out))\\b|^(?:(?:is|are|'s|both|all) )*(?:on|in|there|in place) (?:yet|still)\\b")]
    private static partial Regex StillOn();

    [GeneratedRegex("\\bnot (?:having it|having any of it|playing(?: ball)?|for (?:moving|shifting|coming|budging)|giving(?: up)?|interested)\\b")]
    private static partial Regex Refuses();

    [GeneratedRegex("^(?:(?:is|are|'s|'re|went|goes|has gone|have gone|slid|slipped|dropped|both|all|also|straight|right) )*(?:back )?(?:on|in|down|home)(?: too| as well| now| again| also| at last| both| nicely| sweet| sweetly| fine| easy| ok| okay| no bother| no trouble)*$")]
    private static partial Regex Fits();

    [GeneratedRegex("^(?:(?:is|are|'s|'re|came|come|popped|slid|dropped|pulled|both|all|just|straight|right|has come|have come) )*(?:off|out|away)(?: too| as well| now| also| at last| nicely| sweet| sweetly| fine| easy| easily| clean| ok| okay| no bother| no trouble)*$")]
    private static partial Regex ComesOff();

    /// <summary>What picking words choose from: the kind just named or spoken of.</summary>
    private Thing? Kin() => (pending.Count > 0 ? pending[^1].Thing : draft is { Of.Sort: ThingSort.Fasteners } ? null : topic ?? LastThing()) is { Kind.Length: > 0, Sort: ThingSort.Part or ThingSort.Line } kin ? kin : null;

    /// <summary>"three and four", "number two", "the left one" at the head of a clause, and where its words end.</summary>
    private (Thing Thing, int To, bool Side)? Some(int from, int to)
    {
        int at = from;
        while (at < to && Word(at) is "and" or "the" or "so" or "but" or "then" or "also" or "now")
            at++;
        if (In(from, to).FirstOrDefault(p => p is ThingPhrase) is ThingPhrase { Unnamed: true } told && told.From == at)
            return (told.Thing, told.To, true);
        if (Kin() is not { } kin)
            return null;
        if (Word(at) is "left" or "right" && Word(at + 1) is "one" or "ones")
            return Select(kin with { Others = [] }, null, Word(at)) is { Ids.Count: > 0 } side && side.Ids.Count < index.Parts(kin.Kind).Count ? (side, at + 2, true) : null;
        if (Word(at) is "upper" or "lower" or "top" or "bottom" && Word(at + 1) is "one" or "ones")
            return Partner(kin with { Others = [] }, Word(at)) is { } other ? (other, at + 2, true) : null;
        bool named = Word(at) is "number" or "numbers" or "cylinder" or "cylinders";
        if (named)
            at++;
        int last = at;
        while (last < to)
        {
            int next = Word(last) is "and" or "plus" or "to" or "through" && last > at ? last + 1 : last;
            if (Word(next) is "number" or "cylinder")
                next++;
            if (NumberWords.At(tokens, next) is not { IsCount: true, Value: > 0 and <= 28 } n)
                break;
            last = n.To;
        }

        var numbers = Picked(at, last);
        // "number three's on too" after a note that told of a barrel, its gasket and its pin: the barrel.
        if (topic is null && pending.Count == 0 && context.Last.Count(IsWork) > 1 && context.Last.Select(About).OfType<Thing>().FirstOrDefault() is { Sort: ThingSort.Part } head && index.Parts(head.Kind).Count > 1 && Lexicon.Copulas.Contains(Word(last)) && Word(last + 1) is "on" or "off" or "in" or "out" or "back")
            kin = head;
        if (numbers.Count == 0 || numbers.Distinct().Count() < numbers.Count || (numbers.Count == 1 && !named && !Lexicon.Copulas.Contains(Word(last))))
            return null;
        var found = numbers.Count == 1 ? Select(kin with { Others = [] }, numbers[0], "") : SelectAll(kin, numbers);
        return found is { Ids.Count: > 0 } && found.Ids.Count < (kin.Sort == ThingSort.Line ? index.Lines(kin.Kind).Count : index.Parts(kin.Kind).Count) ? (found with { Others = [] }, last, false) : null;
    }

    private int ToldOfSome(Stretch clause)
    {
        if (In(clause.From, clause.To).Any(p => p is ThingPhrase { Unnamed: false } or MeasurePhrase or AmountPhrase or PlacePhrase or TagPhrase || p is LotPhrase { Lot: var lot } && (lot.Fastener.Length > 0 || !lot.Size.IsEmpty)))
            return -1;
        if (AllOfThem(clause) is var all and >= 0)
            return all;
        if (PieceOfOne(clause) is var piece and >= 0)
            return piece;
        if (Some(clause.From, clause.To) is not var (thing, to, side) || to >= clause.To)
            return -1;
        string tail = new Stretch(tokens, to, clause.To).Line;
        var fault = In(to, clause.To).OfType<FaultPhrase>().FirstOrDefault();
        Func<Thing, Fact>? make = null;
        if (TheSame().IsMatch(tail))
        {
            // All that was done to its fellow in the note before.
            if (facts.Count == 0 && context.Last.Count(IsWork) > 1)
                return -1;
            var like = facts.Concat(facts.Count > 0 ? [] : context.Last).LastOrDefault(f => About(f)?.Kind == thing.Kind);
            if (like is not (Damaged or Seen or On or LeftOn))
                return -1;
            make = t => With(like, t);
        }
        else if (StillOn().IsMatch(tail))
            make = t => new LeftOn(t, "");
        else if (Refuses().IsMatch(tail))
            make = t => new Seen(t, "stuck", Said(clause.From, clause.To));
        else if (Fits().IsMatch(tail) && Refitting())
            make = t => new On(t);
        else if (ComesOff().IsMatch(tail) && !Refitting())
        {
            Flush();
            Apply(Act.Off, thing, Whole(clause));
            return Spoken(thing, clause);
        }
        else if ((side || (topic is null && pending.Count == 0 && Range(clause.From, to).Any(k => Word(k) == "and"))) && fault is not null && In(to, clause.To).All(p => p is FaultPhrase or WordPhrase) && !Range(to, fault.From).Any(k => Word(k) is "no" or "not" or "never" or "isnt"))
            make = t => fault.Damage ? new Damaged(t, fault.Fault, Said(clause.From, clause.To), null) : new Seen(t, fault.Fault, Said(clause.From, clause.To));
        else if (fault is null && Ahead().IsMatch(tail) && !Past().IsMatch(tail))
            make = t => new Planned(t, Said(clause.From, clause.To));
        else if (fault is null && Word(clause.To) is "but" && Word(clause.To + 1) is "it" or "they" && In(to, clause.To).All(p => p is WordPhrase))
        {
            return Spoken(thing, clause);
        }

        if (make is null)
            return -1;
        Flush();
        About(thing, Whole(clause), make);
        return Spoken(thing, clause);
    }

    [GeneratedRegex("^(?:and |but |the |a )*(?<d>gasket|seal|o ring|thread|plug|clip|boot|collar) (?:on|of|for|from) (?:number |cylinder )?(?<n>[a-z]+|\\d+) ?(?:is|was|'s|has|looks|had)\\b")]
    private static partial Regex OfOne();

    /// <summary>"the gasket on two was blown", "seal on number two's torn": a piece of the one picked, of a row that came along when what was named is single.</summary>
    private int PieceOfOne(Stretch clause)
    {
        if (OfOne().Match(clause.Line) is not { Success: true } match || In(clause.From, clause.To).OfType<FaultPhrase>().FirstOrDefault() is not { } fault || Range(clause.From, fault.From).Any(k => Word(k) is "no" or "not" or "never") || NumberWords.At(tokens, clause.Tokens(match.Groups["n"]).From) is not { IsCount: true } n || Kin() is not { Sort: ThingSort.Part } kin)
            return -1;
        if (index.Parts(kin.Kind).Count == 1 && facts.Concat(facts.Count > 0 ? [] : context.Last).OfType<Off>().SelectMany(o => o.With).LastOrDefault(w => index.Parts(w.Kind).Count > 1) is { } along)
            kin = along;
        if (index.Parts(kin.Kind).Count < 2 || Select(kin with { Others = [] }, n.Int, "") is not { Ids.Count: > 0 } one || one.Ids.Count == index.Parts(kin.Kind).Count)
            return -1;
        string detail = match.Groups["d"].Value == "o ring" ? "O-ring" : match.Groups["d"].Value;
        var own = detail == "gasket" ? index.Parts(kin.Kind + "-gasket").Where(g => one.Ids.Any(i => i[i.IndexOf('.', StringComparison.Ordinal)..] == g.Id[g.Id.IndexOf('.', StringComparison.Ordinal)..])).ToList() : [];
        var thing = own.Count > 0 ? new Thing(ThingSort.Part, own[0].Kind, [.. own.Select(g => g.Id)], own[0].Name) : one with { Detail = detail };
        string words = Said(clause.From, clause.To);
        Flush();
        About(thing, Whole(clause), t => fault.Damage ? new Damaged(t, fault.Fault, words, null) : new Seen(t, fault.Fault, words));
        return Spoken(one, clause);
    }

    /// <summary>"shells on rod one are grand, rod two's are pitted": those that belong to the next one.</summary>
    private int Belonging(Stretch clause)
    {
        if (In(clause.From, clause.To).FirstOrDefault(p => p is not WordPhrase { Filler: true }) is not ThingPhrase { Thing: { Sort: ThingSort.Part, Ids: [var owner] } } named || Word(named.To) != "'s" || Word(named.To + 1) is not ("are" or "were" or "look" or "is" or "was") || (pending.Count > 0 ? pending[^1].Thing : topic) is not { Sort: ThingSort.Part, Kind: "rod-shell" or "main-shell" } row || row.Kind == named.Thing.Kind)
            return -1;
        if (NumberWords.At(tokens, named.To - 1) is not { IsCount: true } n || Select(row with { Others = [] }, n.Int, "") is not { Ids.Count: > 0 } theirs || In(named.To, clause.To).OfType<FaultPhrase>().FirstOrDefault() is not { } fault || owner.Split('.')[0] is not ("rod" or "main-cap" or "rod-cap"))
            return -1;
        string words = Said(clause.From, clause.To);
        Flush();
        About(theirs, Whole(clause), t => fault.Damage ? new Damaged(t, fault.Fault, words, null) : new Seen(t, fault.Fault, words));
        return Spoken(theirs, clause);
    }

    private int Spoken(Thing thing, Stretch clause)
    {
        pending.Clear();
        Speak(thing, clause.From);
        return clause.To;
    }

    [GeneratedRegex("^(?:and |but )*(?:all|both|every one|each)(?: of (?:them|em|those|these))?(?: (?<n>[a-z]+|\\d+))? (?:is|are|'s|were|was|look|looks|have|has)\\b")]
    private static partial Regex All();

    /// <summary>"the pushrod tubes on the right side, all six are rusty": the ones just named, a side passed over by the reader told apart.</summary>
    private int AllOfThem(Stretch clause)
    {
        if (!All().IsMatch(clause.Line) || pending is not [.., { Thing: { Ids.Count: > 1, Sort: ThingSort.Part } row, To: var to }] || In(clause.From, clause.To).OfType<FaultPhrase>().FirstOrDefault() is not { } fault || Range(clause.From, fault.From).Any(k => Word(k) is "no" or "not" or "never"))
            return -1;
        var thing = row with { Others = [] };
        if (Word(to) is "on" or "of" && (Word(to + 1) is "the" ? to + 2 : to + 1) is var at && Word(at) is "left" or "right" && Select(All(row), null, Word(at)) is { Ids.Count: > 0 } side)
            thing = side with { Others = [] };
        int? told = Range(clause.From, fault.From).Select(k => NumberWords.At(tokens, k)).FirstOrDefault(n => n is { IsCount: true })?.Int;
        if (told is { } n && n != thing.Ids.Count)
            return -1;
        string words = Said(clause.From, clause.To);
        Flush();
        About(thing, Range(pending[^1].From, clause.To).Where(k => !tokens[k].IsBreak), t => fault.Damage ? new Damaged(t, fault.Fault, words, null) : new Seen(t, fault.Fault, words));
        return Spoken(thing, clause);
    }

    [GeneratedRegex("^(?:and |but |oh |also )*(?<n>one|two|three|four|a couple) of (?:those|these|the|its|their|them) (?:(?:bolt|nut|stud|screw)s?)\\b")]
    private static partial Regex SomeBolts();

    /// <summary>"one of those bolts is bent": of the joint spoken of; a damage, never a count.</summary>
    private int SpoiltOfThose(Stretch clause)
    {
        if (SomeBolts().Match(clause.Line) is not { Success: true } match || In(clause.From, clause.To).OfType<FaultPhrase>().FirstOrDefault() is not { Damage: true } fault || In(clause.From, clause.To).Any(p => p is ThingPhrase { Thing.Sort: not ThingSort.Fasteners } or PlacePhrase or ActPhrase) || (draft?.Of ?? topic ?? LastThing()) is not { Sort: ThingSort.Part or ThingSort.Fasteners } of)
            return -1;
        if (In(clause.From, clause.To).OfType<ThingPhrase>().Any(t => t.Thing.Kind != of.Kind))
            return -1;
        var (_, nTo) = clause.Tokens(match.Groups[0]);
        int count = match.Groups["n"].Value == "a couple" ? 2 : NumberWords.At(tokens, clause.Tokens(match.Groups["n"]).From) is { } n ? n.Int : 1;
        string fastener = Lexicon.Fasteners.Longest(tokens, nTo - 1) is { Values: [var kind, ..] } ? kind : "bolt";
        var joint = things.Joint(of, fastener);
        Flush();
        About(joint, Whole(clause), t => new Damaged(t, fault.Fault, Said(clause.From, clause.To), count));
        Speak(of, clause.From);
        return clause.To;
    }

    [GeneratedRegex("^(?:and |so |but |then )*(?:number |cylinder )(?<n>[a-z]+|\\d+) (?:i |we )?(?:(?:must|need to|needs to|have to|has to|got to|gotta|should|shall|will|'ll) )?(?:buy|order|replace|get|purchase)(?: new| again)*$")]
    private static partial Regex BuysOne();

    /// <summary>"number three I must buy new, barrel and piston": the parts of that number are named after.</summary>
    private int BuyOfOne(Stretch clause, Stretch rest)
    {
        int stop = clause.From;
        while (stop < rest.To && !tokens[stop].IsBreak)
            stop++;
        var whole = new Stretch(tokens, clause.From, stop);
        if (BuysOne().Match(whole.Line) is not { Success: true } match || NumberWords.At(tokens, whole.Tokens(match.Groups["n"]).From) is not { IsCount: true } n || stop + 1 >= rest.To || tokens[stop].Sort != TokenSort.Comma)
            return -1;
        int end = stop + 1;
        while (end < rest.To && In(end, rest.To).FirstOrDefault(p => p.From == end) is { } next && next is ThingPhrase or BreakPhrase { End: false } or WordPhrase { Word: "and" or "the" or "a" or "plus" or "both" })
            end = next.To;
        var bought = In(stop, end).OfType<ThingPhrase>().Where(t => t.Thing is { Sort: ThingSort.Part, Kind.Length: > 0 }).Select(t => Select(t.Thing with { Others = [] }, n.Int, "")).ToList();
        if (bought.Count == 0 || bought.Any(b => b is not { Ids.Count: > 0 }))
            return -1;
        Flush();
        foreach (var one in bought)
            Add(new ToBuy(one! with { Others = [] }, []), Range(clause.From, end).Where(k => !tokens[k].IsBreak));
        pending.Clear();
        Speak(bought[^1]!, clause.From);
        return end;
    }

    [GeneratedRegex("^(?:and |then |please |so |better )*(?:put|stick|add|pop|get|bung) (?<n>one|two|three|four|five|six|seven|eight|nine|ten|twelve|sixteen|\\d+) new(?: ones)? (?:on|to|onto) (?:the|my) (?:shopping |buying |order )?list$")]
    private static partial Regex NewOnList();

    /// <summary>"put six new on the list": as many of what was just told.</summary>
    private int NewOnes(Stretch clause)
    {
        if (NewOnList().Match(clause.Line) is not { Success: true } match || NumberWords.At(tokens, clause.Tokens(match.Groups["n"]).From) is not { } n || (pending.Count > 0 ? pending[^1].Thing : seen ?? topic ?? LastThing()) is not { } thing)
            return -1;
        Flush();
        pending.Clear();
        About(thing with { Others = [] }, Range(clause.From, clause.To), t => new ToBuy(t, n.Int == Math.Max(1, t.Ids.Count) ? [] : [new Lot { Count = n.Int, Fastener = t.Sort == ThingSort.Fasteners ? t.Fastener : "part" }]));
        return clause.To;
    }

    [GeneratedRegex("^(?:(?:and|but|no|nah|naw|wait|hang on|hold on|sorry|actually|scratch that|i lie|i tell a lie|tell a lie|oops|make that|hmm|er|um|,) ?)+")]
    private static partial Regex TakesBack();

    /// <summary>"seven bolts, nah hang on there's one hiding underneath, eight": the last count holds, the size told stays.</summary>
    private int Recount(Stretch clause, Stretch rest)
    {
        if (draft is not { Lots: [.., { Lot: { Count: { } before } lot, Share: "" } told] } || TakesBack().Match(clause.Line) is not { Success: true, Length: > 0 } taken)
            return -1;
        int at = clause.From;
        for (int k = 0; k < 3 && at < rest.To; k++)
        {
            int end = at;
            while (end < rest.To && !tokens[end].IsBreak)
                end++;
            int from = at;
            if (k == 0)
                from = Math.Min(end, clause.Tokens(taken.Groups[0]).To);
            while (Word(from) is "it" or "'s" or "there" or "are" or "make" or "that" or "no" or "so" or "is" or "only")
                from++;
            if (from < end && NumberWords.At(tokens, from) is { IsCount: true } n && n.Int != before && n.Int <= 60 && (n.To == end || (n.To + 1 == end && Lexicon.Fasteners.Longest(tokens, n.To).Values.Count > 0) || (n.To + 2 == end && Word(n.To) == "of" && Word(n.To + 1) is "them" or "em")))
            {
                draft.Lots[^1] = told with { Lot = lot with { Count = n.Int } };
                draft.Tokens.AddRange(Range(clause.From, end).Where(i => !tokens[i].IsBreak));
                return end;
            }

            if (In(at, end).Any(p => p is ThingPhrase or PlacePhrase or MeasurePhrase || p is ActPhrase { Act: not Act.Find } || p is LotPhrase { Lot.Size.IsEmpty: false }))
                return -1;
            at = end + 1;
        }

        return -1;
    }

    /// <summary>"injector two and injector six are leaking": named one by one, told of together.</summary>
    private List<Phrase> Joined(List<Phrase> list)
    {
        for (int i = 0; i + 2 < list.Count; i++)
        {
            if (list[i] is ThingPhrase { Thing: { Sort: ThingSort.Part, Ids.Count: > 0, Others.Count: 0, Detail: "", Where: "" } first } one && list[i + 1] is WordPhrase { Word: "and" } && list[i + 2] is ThingPhrase { Thing: { Sort: ThingSort.Part, Ids.Count: > 0, Others.Count: 0, Detail: "", Where: "" } second } two
                && first.Kind == second.Kind && first.Kind.Length > 0 && !first.Ids.Intersect(second.Ids).Any() && NumberWords.At(tokens, two.To - 1) is { IsCount: true })
            {
                IReadOnlyList<string> ids = [.. index.Parts(first.Kind).Select(p => p.Id).Where(id => first.Ids.Contains(id) || second.Ids.Contains(id))];
                if (ids.Count != first.Ids.Count + second.Ids.Count)
                    continue;
                list[i] = new ThingPhrase(one.From, two.To, first with { Ids = ids, Name = $"{index.NameOf(first.Kind)}s {string.Join(", ", ids.Select(id => id[(id.IndexOf('.', StringComparison.Ordinal) + 1)..]))}" }, true, false);
                list.RemoveRange(i + 1, 2);
                i--;
            }
        }

        return list;
    }

    /// <summary>"the piston from this one", "that piston", "its cover": of the one spoken of last.</summary>
    private Phrase SpokenOf(Phrase phrase, int to)
    {
        if (phrase is not ThingPhrase { Thing: { Sort: ThingSort.Part, Others.Count: > 0, Kind.Length: > 0, Detail: "" } several } named)
            return phrase;
        if (Range(phrase.From - 1, phrase.To).Any(k => Word(k) == "its") && LastThing() is { } owner && Tokeniser.Cut($"{owner.Name} {tokens[named.To - 1].Text}") is var words && index.Book.Longest(words, 0) is { Values: [var part, ..] } whole && whole.To == words.Count && resolver.Resolve([part], new Selectors(), false, Said(named.From, named.To)) is { Ids.Count: > 0, Others.Count: 0 } own)
            return named with { Thing = own };
        int end = named.To;
        if (Word(end) is "from" or "of" or "in" or "on" or "for" && Word(end + 1) is "this" or "that" && Word(end + 2) is "one" or "cylinder" or "pot" or "hole" or "barrel" or "bore" && end + 3 <= to)
            end += 3;
        else if (!(Range(phrase.From - 1, phrase.To).Any(k => Word(k) is "that" or "this") && !named.Plural))
            return phrase;
        int? cylinder = (topic ?? LastThing()) is { Ids: [var id] } && index.Engine.Parts.TryGetValue(id, out var last) ? last.Cylinder : null;
        cylinder ??= (topic ?? LastThing()) is { Ids: [var like] } && index.Engine.Parts.TryGetValue(like, out var fellow) && fellow.Index.Count == 1 && index.Parts(fellow.Kind).Count > 1 && index.Parts(fellow.Kind).Count == index.Parts(several.Kind).Count ? fellow.Index[0] : null;
        cylinder ??= end > named.To ? resolver.Cylinder : null;
        var ids = several.Ids.Concat(several.Others.SelectMany(o => o.Ids)).Distinct().Where(i => index.Engine.Parts.TryGetValue(i, out var p) && p.Kind == several.Kind && p.Cylinder is { } c && c == cylinder).ToList();
        return ids.Count == 1 ? named with { To = end, Thing = several with { Ids = ids, Others = [], Name = index.Engine.Parts[ids[0]].Name } } : phrase;
    }

    [GeneratedRegex("^(?:now |so |right |and |but |well |,)*where (?:on earth|the hell|the heck|the devil|in hell|in the world|in (?:the )?(?:name of )?[a-z]+(?: 's name)?|in blazes|the blazes) (?:did|have|has|had|are|is|do|would|could)\\b")]
    private static partial Regex WhereOnEarth();

    /// <summary>"where in the name of god did I leave the rocker cover bolts": asked where, whatever was sworn by.</summary>
    private int Wherever(Stretch clause)
    {
        if (!WhereOnEarth().IsMatch(clause.Line) || AskedOf(clause.From, clause.To) is not { Others.Count: 0 } thing)
            return -1;
        Flush();
        Add(new Asked("where", thing, Said(clause.From, clause.To)), Whole(clause));
        return Spoken(thing, clause);
    }

    [GeneratedRegex("^(?:and |with |the )*same (?:nuts|bolts|screws|studs|nuts and washers|bolts and washers|fasteners|fixings|hardware)(?: again| as before| as the other)?$")]
    private static partial Regex SameBolts();

    /// <summary>"it's off now, same nuts, same tin": fasteners as those of its fellow, told before.</summary>
    private int SameFasteners(Stretch clause, Stretch rest)
    {
        if (!SameBolts().IsMatch(clause.Line) || context.LastUndone is not { Lots.Count: > 0 } like || (draft?.Of ?? topic) is not { Ids.Count: > 0 } of || of.Kind != like.Of.Kind || like.Of.Ids.SequenceEqual(of.Ids) || of.Ids.Count != like.Of.Ids.Count)
            return -1;
        int end = clause.To;
        Place? place = null;
        if (end < rest.To && tokens[end].Sort == TokenSort.Comma && Word(end + 1) is "same" && ClauseEnd(end + 1, rest.To) is var next && next == end + 3 && Lexicon.Containers.Longest(tokens, end + 2).Values.Count > 0)
            (place, end) = (like.Place, next);
        Flush();
        Add(like with { Of = things.Joint(of with { Others = [] }, like.Lots[0].Fastener.Length > 0 ? like.Lots[0].Fastener : "bolt"), Place = place }, Range(clause.From, end).Where(k => !tokens[k].IsBreak));
        return end;
    }
}
