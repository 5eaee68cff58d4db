using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>
/// Clauses told by a predicate of the table of frames, whatever the order of their words: the roles are told apart first (the
/// thing, in its own words or by "it", "the right one", "three and five"), and the predicate says what becomes of it.
/// </summary>
internal sealed partial class Listener
{
    private int Cued(Stretch clause)
    {
        if (Recovered(clause) is var found and >= 0)
            return found;
        if (Closed(clause) is var closed and >= 0)
            return closed;
        if (Held(clause) is var held and >= 0)
            return held;
        for (int k = clause.From; k < clause.To; k++)
        {
            if (Lexicon.Frames.Longest(tokens, k) is not { Values: [var frame, ..] } cue || cue.To > clause.To)
                continue;
            int end = frame switch
            {
                "stays" => Stayed(clause),
                "lacking" => Lacking(clause, k, cue.To),
                "fitted" => Fitted(clause, k),
                _ => -1,
            };
            if (end >= 0)
                return end;
        }

        return -1;
    }

    /// <summary>"the machinist's got the crank till the tenth", "the neighbour took it to braze": somebody has it, for a time.</summary>
    private int Held(Stretch clause)
    {
        int who = Range(clause.From, Math.Min(clause.To, clause.From + 4)).FirstOrDefault(k => Lexicon.Persons.Contains(Word(k)) && Word(k).Length > 3, -1);
        if (who < 0 || In(clause.From, who).Any(p => p is not WordPhrase))
            return -1;
        int verb = Word(who + 1) is "'s" or "has" or "have" ? who + 2 : who + 1;
        if (Word(verb) is not ("got" or "took" or "taken" or "has" or "borrowed") || Subjects(new Stretch(tokens, verb + 1, clause.To)) is not [{ Sort: ThingSort.Part, Ids.Count: > 0 } held])
            return -1;
        int end = clause.To;
        var due = DueIn(verb, end);
        if (due is null && end + 1 < tokens.Count && tokens[end].Sort == TokenSort.Comma && NextDue(end + 1) is { } late)
            (due, end) = late;
        if (due is null && verb + 1 < clause.To && Word(verb) == "got")
            return -1;
        Flush();
        About(held, Range(clause.From, end).Where(k => !tokens[k].IsBreak), t => new Sent(t, Word(who), "", due, ""));
        Speak(held, clause.From);
        return end;
    }

    /// <summary>"three and five I'm not touching", "the others are still in there": what is told of stays on.</summary>
    private int Stayed(Stretch clause)
    {
        if (In(clause.From, clause.To).Any(p => p is PlacePhrase { Place.Sort: PlaceSort.Container } or AmountPhrase or MeasurePhrase || p is LotPhrase { Share: "" } lot && (!lot.Lot.Size.IsEmpty || lot.Lot.Fastener.Length > 0)))
            return -1;
        var told = Subjects(clause);
        if (told.Count == 0 || told.Any(t => t.Sort is ThingSort.Unknown or ThingSort.Outside))
            return -1;
        Flush();
        foreach (var thing in told)
            About(thing.Sort == ThingSort.Fasteners ? thing with { Sort = ThingSort.Part } : thing, Whole(clause), t => new LeftOn(t, ""));
        pending.Clear();
        Speak(told[^1], clause.From);
        return clause.To;
    }

    /// <summary>"barrel slid on nicely", "the cases are together", "base gasket on dry", "then the head on top of it": on the way back together it is on.</summary>
    private int Fitted(Stretch clause, int cue)
    {
        if (In(clause.From, clause.To).Any(p => p is LotPhrase or MeasurePhrase or AmountPhrase or TagPhrase or PlacePhrase { Place.Sort: PlaceSort.Container } || p is FaultPhrase { Fault: not "dry" } || p is ActPhrase { Act: not (Act.On or Act.Part) }) || Range(clause.From, clause.To).Any(k => Word(k) is "not" or "isnt" or "arent" or "cant" or "wont" or "never" or "if" or "until" or "till" or "when" or "once" or "still" or "came"))
            return -1;
        bool top = Regex.IsMatch(clause.Line, "\\bon top of\\b");
        var named = In(clause.From, top ? cue : clause.To).OfType<ThingPhrase>().Where(t => Preposition(t.From) is "" or "after").ToList();
        var own = top ? named.LastOrDefault() : named.FirstOrDefault();
        bool halves = own?.Thing.Kind is "case-half" or "block" or "crankcase" && Word(own.To) is "are" or "is" or "'s" or "'re" or "joined";
        if (!Refitting() && !(halves && context.Off.Count == 0))
            return -1;
        var told = own is not null ? [own.Thing] : In(clause.From, clause.To).Any(p => p is ThingPhrase) ? [] : Subjects(clause);
        if (told is not [{ Sort: ThingSort.Part or ThingSort.Line, Ids.Count: > 0 } on])
            return -1;
        var before = pending.Where(p => p.Thing is { Sort: ThingSort.Part, Ids.Count: > 0, Others.Count: 0 } && p.To <= clause.From).ToList();
        if (!top && before.Any(p => !p.Thing.Equals(on)))
            Unsaid();
        foreach (var (thing, from, to) in before.Where(_ => top))
            Apply(Act.On, thing, Range(from, to));
        foreach (var under in named.Where(t => top && t != own && t.Thing is { Sort: ThingSort.Part, Ids.Count: > 0, Others.Count: 0 }))
            Apply(Act.On, under.Thing, Range(under.From, under.To));
        pending.Clear();
        if (on.Others.Count > 0)
            About(on, Range(clause.From, clause.To), t => new On(t));
        else
            Apply(Act.On, on, Range(clause.From, clause.To));
        Speak(on, clause.From);
        return clause.To;
    }

    /// <summary>"can't see the lift pump": it is not where it should be.</summary>
    private int Lacking(Stretch clause, int from, int to)
    {
        if (In(clause.From, clause.To).Any(p => p is LotPhrase or MeasurePhrase or AmountPhrase or FaultPhrase) || Range(clause.From, clause.To).Any(k => Lexicon.Times.Contains(tokens[k].Stem)))
            return -1;
        var things = In(clause.From, clause.To).OfType<ThingPhrase>().ToList();
        if (things.Count > 1 || things.Count == 1 && things[0].Thing.Sort is not (ThingSort.Part or ThingSort.Line) || Subjects(clause) is not [{ Sort: ThingSort.Part or ThingSort.Line } lost] || lost.Others.Count > 0)
            return -1;
        Flush();
        About(lost, Whole(clause), t => new Missing(t, []));
        pending.Clear();
        Speak(lost, clause.From);
        return clause.To;
    }

    /// <summary>"that nut was in her coat pocket", "got that with the magnet": what was short has turned up.</summary>
    private int Recovered(Stretch clause)
    {
        if (facts.Count > 0 || pending.Count > 0 || context.Short.LastOrDefault() is not { } lacking)
            return -1;
        var things = In(clause.From, clause.To).OfType<ThingPhrase>().Where(t => Preposition(t.From).Length == 0).ToList();
        if (things.Any(t => t.Thing.Kind != lacking.Thing.Kind) || In(clause.From, clause.To).Any(p => p is FaultPhrase or MeasurePhrase or AmountPhrase or ActPhrase { Act: Act.Off or Act.On or Act.Miss or Act.Buy or Act.Undo or Act.Tighten }))
            return -1;
        var said = Range(clause.From, clause.To).Select(Word).ToList();
        bool place = In(clause.From, clause.To).Any(p => p is PlacePhrase) || said.Any(w => PlaceWords.Contains(w) || w is "with" or "to");
        bool shown = said is [.., "here" or "there", "it" or "he" or "they", "is" or "are"] || (said is ["here" or "there", "'s" or "is", ..] && things.Count > 0) || Regex.IsMatch(clause.Line, "\\b(?:turned|showed) up\\b|\\bfished (?:it|him|them) out\\b|^(?:the )?[a-z]+ (?:had|got) (?:it|him|them)$");
        bool told = shown || said.Any(w => w is "found" or "got" or "spotted") || (said.Any(w => w is "was" or "were") && place);
        bool it = things.Count > 0 || said.Any(w => w is "it" or "that" or "he" or "them" or "they" or "her" or "him" or "one") || shown || In(clause.From, clause.To).OfType<LotPhrase>().Any(l => l.Lot.Fastener == lacking.Thing.Fastener || lacking.Lots.Any(x => x.Fastener == l.Lot.Fastener));
        if (!told || !it || !place && !shown && !said.Contains("found") || In(clause.From, clause.To).Any(p => p is LotPhrase { Lot.Size.IsEmpty: false }))
            return -1;
        int end = skipTo = Whereabouts(clause.To);
        Add(new Found(lacking.Thing, lacking.Lots, ""), Range(clause.From, end).Where(k => !tokens[k].IsBreak));
        foundAt = facts.Count - 1;
        Speak(lacking.Thing, clause.From);
        return end;
    }

    /// <summary>"sandwich bags over both ends", "closed the end with tape", "stuck a bung in the top hose": an opening was stopped.</summary>
    private int Closed(Stretch clause)
    {
        var said = In(clause.From, clause.To).ToList();
        bool verb = Range(clause.From, clause.To).Any(k => Lexicon.Frames.Longest(tokens, k) is { Values: ["closed", ..] } || (said.Any(p => p is ActPhrase { Act: Act.Cap } && p.From == k) || Word(k) == "covered") && Ends(k + 1, clause.To))
            || Ends(clause.From, clause.To) && Range(clause.From, Math.Min(clause.To, clause.From + 4)).Any(k => tokens[k].Stem is "end" or "hole" or "port") && Range(clause.From, clause.To).Any(k => Word(k) is "wrapped" or "covered" or "plugged" or "bagged" or "sealed" or "capped" or "taped" or "tied" or "stuffed" or "closed");
        int stuff = Range(clause.From, clause.To).FirstOrDefault(k => Lexicon.Stoppers.Contains(tokens[k].Stem), -1);
        int prep = Range(stuff + 1, clause.To).FirstOrDefault(k => Lexicon.Openings.Contains(Word(k)) && (Ends(k + 1, clause.To) || said.FirstOrDefault(p => p.From > k && p is not WordPhrase { Filler: true }) is ThingPhrase { Thing.Sort: ThingSort.Line or ThingSort.Part }), -1);
        bool stopped = stuff >= 0 && prep >= 0 && Word(stuff - 1) != "the" && (Ends(prep + 1, clause.To) || !said.Any(p => p is ActPhrase { Act: Act.Off or Act.Part }));
        if (!verb && !stopped || said.Any(p => p is PlacePhrase { Place.Sort: PlaceSort.Container } or TagPhrase or MeasurePhrase or LotPhrase { Lot.Size.IsEmpty: false } or ActPhrase { Act: not (Act.Cap or Act.Put or Act.Part or Act.Off) } || p is FaultPhrase fault && Word(fault.From) != "covered" && (fault.Fault != "stuck" || stuff < fault.From)))
            return -1;
        var told = said.OfType<ThingPhrase>().Where(t => t.Thing.Sort is ThingSort.Line or ThingSort.Part && (t.From > stuff || t.To <= stuff)).ToList();
        var lines = facts.OfType<Parted>().Select(p => p.Line).ToList();
        bool all = Range(clause.From, clause.To).Any(k => Word(k) is "both" or "all" or "them" or "each");
        List<Thing> open = told.Count > 0 ? [told[0].Thing] : all && lines.Count > 1 ? lines : (pending.Count > 0 ? pending[^1].Thing : topic ?? LastThing()) is { } one ? [one] : [];
        bool pushed = said.FirstOrDefault(p => p is not WordPhrase { Filler: true }) is FaultPhrase or ActPhrase || Range(clause.From, clause.To).Any(k => Lexicon.Pushing.Contains(Word(k)) && k < Math.Max(prep, stuff));
        if (open.Count == 0 || open.Any(t => t.Sort is not (ThingSort.Line or ThingSort.Part)) || (told.Count == 0 && open.Any(t => t.Sort == ThingSort.Part) && !verb && !pushed))
            return -1;
        foreach (var line in open)
        {
            if (line.Sort == ThingSort.Line && said.Any(p => p is ActPhrase { Act: Act.Off or Act.Part }))
                About(line, Whole(clause), t => new Parted(t));
            else if (told.Any(t => t.Thing.Code == line.Code) && said.FirstOrDefault(p => p is ActPhrase { Act: Act.Off }) is { } off && off.From < Math.Max(prep, stuff))
                About(line, Whole(clause), t => new Off(t, []));
            About(line, Whole(clause), t => new Capped(t, stuff < 0 ? "" : Said(stuff, stuff + 1)));
        }

        pending.RemoveAll(p => open.Any(o => o.Code == p.Thing.Code));
        Speak(open[^1], clause.From);
        return clause.To;
    }

    /// <summary>"it", "both ends", "the open end", "the hole": an opening of what is spoken of.</summary>
    private bool Ends(int at, int to)
    {
        while (at < to && (Word(at) is "the" or "its" or "both" or "each" or "all" or "open" or "other" or "their" || NumberWords.At(tokens, at) is { IsCount: true }))
            at++;
        return at < to && (tokens[at].Stem is "end" or "hole" or "port" or "union" or "stub" or "mouth" || Word(at) is "it" or "them" or "that" || Word(at - 1) is "both" or "each");
    }

    /// <summary>What a clause is told of: its own things, else those that its picking words choose of the kind spoken of, else that itself.</summary>
    private List<Thing> Subjects(Stretch clause)
    {
        var own = In(clause.From, clause.To).OfType<ThingPhrase>().Where(t => t.Thing.Sort is ThingSort.Part or ThingSort.Line or ThingSort.Fasteners or ThingSort.Lacking && Preposition(t.From) is "" or "on").Select(t => (t.Thing, Named: Preposition(t.From).Length == 0)).ToList();
        if (own.Any(t => t.Named))
            return [.. own.Where(t => t.Named).Select(t => t.Thing)];
        if (own.Count > 0)
            return [.. own.Select(t => t.Thing)];
        if (In(clause.From, clause.To).Any(p => p is ThingPhrase))
            return [];
        if ((pending.Count > 0 ? pending[^1].Thing : draft is { Of: { Sort: ThingSort.Fasteners } held } ? held : topic ?? LastThing()) is not { } kin)
            return [];
        return Alike(kin, clause) is { } picked ? [picked] : [kin with { Others = [], Detail = "" }];
    }

    /// <summary>Others of the kind, picked by number, side or as the rest.</summary>
    private Thing? Alike(Thing kin, Stretch clause)
    {
        if (kin.Kind.Length == 0)
            return null;
        var figures = In(clause.From, clause.To).OfType<NumPhrase>().Where(n => n.Num.IsCount && n.Num.Int is > 0 and <= 28 && !(Word(n.From) == "one" && Word(n.From - 1) is "top" or "bottom" or "inlet" or "intake" or "exhaust" or "the" or "that" or "this" or "other")).ToList();
        var numbers = figures.Count > 1 && Picked(figures[0].From, figures[^1].To) is { Count: > 1 } row ? row : [.. figures.Select(n => n.Num.Int)];
        if (numbers.Count > 0)
            return numbers.Count == 1 ? Select(kin with { Others = [] }, numbers[0], "") : SelectAll(kin, numbers);
        if (Range(clause.From, clause.To).FirstOrDefault(k => Word(k) is "even" or "odd" && Word(k + 1) is "one" or "ones" or "numbers" or "numbered" or "cylinders", -1) is var parity and >= 0)
            return SelectAll(kin, [.. Range(1, index.Parts(kin.Kind).Count + 1).Where(n => n % 2 == (Word(parity) == "odd" ? 1 : 0))]);
        foreach (int k in Range(clause.From, clause.To))
        {
            if (Word(k) is "left" or "right" or "upper" or "lower" or "top" or "bottom" or "front" or "rear" or "other" or "inlet" or "exhaust" && Word(k + 1) is not ("on" or "off" or "in"))
                return kin.Sort == ThingSort.Line ? OtherHose(kin, Word(k)) : Word(k) is "left" or "right" && Word(k + 1) is "bank" or "side" && Select(kin with { Others = [] }, null, Word(k)) is { Ids.Count: > 0 } side ? side : Partner(kin, Word(k));
        }

        return Rest(clause.From, clause.To);
    }

    private IEnumerable<int> Whole(Stretch clause) =>
        Range(clause.From, clause.To).Concat(pending.Where(p => p.To <= clause.From).SelectMany(p => Range(p.From, p.To))).Where(k => !tokens[k].IsBreak);
}
