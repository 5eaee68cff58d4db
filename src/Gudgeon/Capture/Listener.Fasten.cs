namespace Gudgeon.Capture;

/// <summary>Fasteners told: of which joint, how many, or what is wrong with some of them.</summary>
internal sealed partial class Listener
{
    private void Fasten(LotPhrase phrase, List<Phrase> clause, int i, int end)
    {
        if (forward is { Act: Act.Find or Act.Miss or Act.Buy } verb)
        {
            ApplyLots(verb.Act, phrase, Range(verb.From, phrase.To));
            forward = null;
            return;
        }

        if (NoneOf(phrase) is { } none && (draft is { Lots.Count: > 0 } || facts.Count > 0) && FaultNext(clause, i) is null)
        {
            (draft?.Tokens ?? []).AddRange(Range(none, phrase.To));
            return;
        }

        if (CameAlong(phrase, clause) is not { } along)
        {
            draft!.Tokens.AddRange(Range(phrase.From, phrase.To));
            return;
        }

        phrase = SomeOf(along.From, clause[0].From) is { } some0 ? along with { From = some0.From, Lot = along.Lot with { Count = some0.Count } } : along;
        if (SpoiltOf(phrase, clause, i, end))
            return;
        if (Sized(clause, i) is { } those)
            phrase = phrase with { From = those.From, Lot = phrase.Lot with { Count = those.Num.Int } };
        if (phrase.Share == "others" && phrase.Lot is { Size.IsEmpty: true, Fastener: "" } && (draft is null || phrase.Lot.Count is null) && FaultNext(clause, i) is not null && Rest(clause[0].From, end) is { } others)
        {
            (seen, seenAt, seenCount, fasteners) = (others, phrase.From, null, false);
            return;
        }

        // "two are cracked", "third one snapped", "two of its bolts snapped": told as a fault, not as a lot.
        bool its = Range(phrase.From, phrase.To).Any(k => Word(k) is "its" or "their");
        bool stage = FaultNext(clause, i) is { Fault: "tight" or "loose" } hand && Refitting() && Range(hand.From - 1, hand.To).Any(k => Word(k) is "hand" or "finger");
        if (!stage && FaultNext(clause, i) is not null && (draft is not null || topic is not null || pending.Count > 0 || (its && LastThing() is not null)))
        {
            var of = draft?.Of ?? (pending.Count > 0 ? pending[^1].Thing : topic ?? LastThing())!;
            StartDraft(of);
            seen = of with { Sort = of.Sort == ThingSort.Part ? ThingSort.Fasteners : of.Sort, Fastener = phrase.Lot.Fastener.Length > 0 ? phrase.Lot.Fastener : "bolt", Detail = "" };
            (seenAt, seenCount, fasteners) = (phrase.From, phrase.Lot.Count ?? 1, true);
            if (phrase.Lot.Fastener is "washer" or "clip")
                seen = seen with { Detail = phrase.Lot.Fastener };
            return;
        }

        // "need new starter bolts, that's two M12 by 45"
        if (draft is null && pending.Count == 0 && facts.LastOrDefault() is ToBuy { Lots.Count: 0, Thing.Sort: ThingSort.Fasteners } wanted && phrase.Lot.Count is not null)
        {
            facts[^1] = wanted with { Lots = [phrase.Lot], Spans = [.. wanted.Spans, .. Spans(Range(phrase.From, phrase.To))] };
            return;
        }

        // A size alone after a fault is the size of what is spoilt.
        if (draft is null && pending.Count == 0 && phrase.Lot is { Count: null, Fastener: "", Note: "" } && facts.LastOrDefault() is Damaged { Thing.Detail.Length: > 0 } spoilt && phrase.Share.Length == 0)
        {
            facts[^1] = spoilt with { Words = $"{spoilt.Words}, {phrase.Lot.Size}", Spans = [.. spoilt.Spans, .. Spans(Range(phrase.From, phrase.To))] };
            return;
        }

        if (phrase.Lot is { Count: null, Uncounted: false, Size.IsEmpty: true, Fastener.Length: > 0 } && phrase.Share.Length == 0 && !tokens[phrase.To - 1].Plural && (phrase.From == 0 || tokens[phrase.From - 1].IsBreak || Word(phrase.From) is "one" or "big" || i == 0 || Word(phrase.From - 1) is "and") && (phrase.To >= tokens.Count || tokens[phrase.To].IsBreak || Word(phrase.To) is "and" or "in" or "on"))
            phrase = phrase with { Lot = phrase.Lot with { Count = 1 } };

        if (phrase.Lot is { Count: null, Uncounted: false, Size.Diameter: not null, Fastener.Length: > 0 } && phrase.Share.Length == 0 && Range(phrase.From, phrase.To).All(k => !tokens[k].Plural && Word(k) is not ("s" or "'s")))
            phrase = phrase with { Lot = phrase.Lot with { Count = 1 } };

        // "seventeen bolts, seven sixteenths fourteen": the size of what was just counted.
        if (draft is { Lots: [.., var counted] } && pending.Count == 0 && phrase.Lot is { Count: null, Uncounted: false, Where: "", Size.IsEmpty: false } && phrase.Share.Length == 0 && counted.Lot.Size.Diameter is null && counted.Lot.Size.Length is null && (phrase.Lot.Fastener.Length == 0 || phrase.Lot.Fastener == counted.Lot.Fastener) && phrase.Lot.Note.Length == 0)
        {
            draft.Lots[^1] = counted with { Lot = counted.Lot with { Size = phrase.Lot.Size.Or(counted.Lot.Size) }, Other = phrase.Other };
            draft.Tokens.AddRange(Range(phrase.From, phrase.To));
            return;
        }

        // "eight M8 by 60, bolts left in their holes": those just counted.
        if (draft is { Lots: [.., { Lot.Count: not null }] } && pending.Count == 0 && phrase.Lot is { Count: null, Uncounted: false, Size.IsEmpty: true, Note: "", Where: "", Fastener.Length: > 0 } && phrase.Share.Length == 0 && (draft.Lots[^1].Lot.Fastener is "" || draft.Lots[^1].Lot.Fastener == phrase.Lot.Fastener) && tokens[phrase.To - 1].Plural)
        {
            draft.Tokens.AddRange(Range(phrase.From, phrase.To));
            return;
        }

        // "with the nuts", "with big washers": what came along is no count.
        if (phrase.Lot is { Size.IsEmpty: true, Fastener: "clip" } && Word(phrase.From - 1) == "with" && (draft is null || draft.Lots.Count == 0))
            return;
        if (phrase.Lot is { Count: null, Uncounted: false, Size.IsEmpty: true } && phrase.Share.Length == 0 && phrase.Lot.Fastener.Length > 0 && (Word(phrase.From - 1) == "with" || Word(phrase.From) == "the") && (Word(phrase.From) == "the" || draft is null or { Lots.Count: 0 }))
            return;
        bool takesPart = pending.Count > 0 && pending[^1].Thing.Sort is ThingSort.Part or ThingSort.Line or ThingSort.Lacking;
        if (pending.Count > 0)
        {
            var (thing, from, to) = pending[^1];
            pending.RemoveAt(pending.Count - 1);
            Unsaid();
            Flush();
            if (takesPart && Refitting() && thing is { Sort: ThingSort.Part, Ids.Count: > 0, Others.Count: 0, Detail.Length: 0 } && !clause.Any(p => p is ActPhrase { Act: Act.Off or Act.Undo } or FaultPhrase))
                Apply(Act.On, thing, Range(from, to));
            else
                draft = new Draft(thing) { FromPart = takesPart && !Has(to, phrase.From), Lies = takesPart && Has(to, phrase.From) };
            draft!.Tokens.AddRange(Range(from, to));
            topic = thing;
        }
        else if (draft is null)
        {
            var of = topic ?? (LastJoint() is { } joint && phrase.Share.Length > 0 ? joint : null);
            // "turbo's up on the cart, four M10 nuts": what lies there and is told with its fasteners came off.
            draft = of is null ? new Draft(new Thing(ThingSort.Unknown, "", [], "not said")) { Loose = true } : new Draft(of) { FromPart = facts.LastOrDefault() is Put lying && lying.Thing.Equals(of) };
        }
        else if (draft.Place is not null && draft.Lots.Count > 0 && phrase.Share.Length == 0 && phrase.Lot.Count is not null)
        {
            // A second heap with a place of its own.
            var of = draft.Of;
            bool part = draft.FromPart;
            Flush();
            draft = new Draft(of) { Undone = true, FromPart = part };
        }

        if (phrase.Lot.Fastener.Length == 0 && draft.Of is { Sort: ThingSort.Fasteners, Fastener: not "bolt" } named)
            phrase = phrase with { Lot = phrase.Lot with { Fastener = named.Fastener } };
        draft.Lots.Add(phrase);
        draft.Tokens.AddRange(Counting(phrase.From).Concat(Range(phrase.From, phrase.To)));
        (fasteners, seenCount) = (true, phrase.Lot.Count);
        seen = draft.Of with { Sort = draft.Of.Sort == ThingSort.Part ? ThingSort.Fasteners : draft.Of.Sort, Fastener = phrase.Lot.Fastener.Length > 0 ? phrase.Lot.Fastener : "bolt" };
        seenAt = phrase.From;
    }

    private void StartDraft(Thing of)
    {
        if (pending.Count == 0)
            return;
        var (thing, from, to) = pending[^1];
        pending.RemoveAt(pending.Count - 1);
        draft ??= new Draft(thing) { FromPart = false };
        draft.Tokens.AddRange(Range(from, to));
        topic = of;
    }

    private static FaultPhrase? FaultNext(List<Phrase> clause, int i)
    {
        foreach (var phrase in clause.Skip(i + 1))
        {
            if (phrase is FaultPhrase fault)
                return fault;
            if (phrase is not WordPhrase { Word: not ("it" or "there") } word || !(word.Filler || Lexicon.Passing.Contains(word.Word)))
                return null;
        }

        return null;
    }
}
