namespace Gudgeon.Capture;

/// <summary>Where things were laid, and what was tagged.</summary>
internal sealed partial class Listener
{
    private int Lay(PlacePhrase phrase, List<Phrase> clause, int i)
    {
        // "mantelpiece for the magneto": the place first, then what lies there.
        if (Word(phrase.To) == "for" && clause.Skip(i + 1).FirstOrDefault(p => p is not WordPhrase { Filler: true }) is ThingPhrase { Thing.Sort: ThingSort.Part or ThingSort.Fasteners } named && Range(phrase.To + 1, named.From).All(k => Lexicon.Fillers.Contains(Word(k))))
        {
            if (named.Thing.Sort == ThingSort.Fasteners && draft?.Of.Code != named.Thing.Code)
            {
                Flush();
                draft = new Draft(named.Thing);
            }

            if (named.Thing.Sort == ThingSort.Fasteners)
                (draft!.Place, fasteners) = (phrase.Place, true);
            else
                Stow(named.Thing, phrase.Place, Range(phrase.From, named.To));
            draft?.Tokens.AddRange(Range(phrase.From, named.Thing.Sort == ThingSort.Fasteners ? named.To : phrase.From));
            return clause.IndexOf(named);
        }

        if (phrase.Place.Sort == PlaceSort.Container && NotThere(phrase))
        {
            pending.RemoveAll(p => p.From >= clauseFrom);
            Untold(Range(clauseFrom, phrase.To));
        }
        else
            Lay(phrase);
        return i;
    }

    /// <summary>"it was in a saucer this morning", "it's not in the box", "half of it in my boot": where a thing was, is not, or was spilt is nowhere to look for it.</summary>
    private bool NotThere(PlacePhrase phrase)
    {
        if (Range(clauseFrom, phrase.From).Any(k => Word(k) is "want" or "wanted") || Range(clauseFrom, phrase.From).Any(k => Word(k) == "of" && Word(k - 1) is "half" or "most" or "some" or "lot" or "rest" or "bit" or "quarter" && Word(k + 1) == "it"))
            return true;
        // "there's metal all through the pleats", "dog's got into the rags": nothing was laid there.
        if (pending.Count == 0 && draft is null && In(clauseFrom, phrase.From).All(p => p is WordPhrase) && !Range(clauseFrom, phrase.From).Any(k => Word(k) is "it" or "they" or "them" or "i" or "we") && (Word(clauseFrom) == "there" || Range(clauseFrom, phrase.From).Any(k => Word(k) is "got" || Fluids.Contains(Word(k)))))
            return true;
        int verb = phrase.From - 1;
        while (verb > clauseFrom && Word(verb) is "all" or "both" or "still" or "just" or "there" or "up" or "over")
            verb--;
        if (Word(verb) is "not" or "no" or "isnt" or "arent" or "aint" or "never" or "wasnt" or "werent")
            return Lexicon.Copulas.Contains(Word(verb - 1)) || Word(verb) is not ("not" or "no" or "never");
        return Word(verb) is "was" or "were" && draft is not { Lots.Count: > 0 } && !In(phrase.To, tokens.Count).TakeWhile(p => p is not BreakPhrase).Any(p => p is ActPhrase or FaultPhrase);
    }

    private void Lay(PlacePhrase phrase)
    {
        var all = Range(phrase.From, phrase.To);
        // "I've put the egr ones in with them": the bolts of it, where bolts are spoken of.
        if (phrase.Place.Label == "same place" && pending is [{ Thing.Sort: ThingSort.Part } bolted] && Range(bolted.From, phrase.From).Any(k => Word(k) is "ones"))
            pending[0] = (things.Joint(bolted.Thing with { Others = [] }, "bolt"), bolted.From, bolted.To);
        // "same jar": where the ones before went.
        if (phrase.Place.Label.StartsWith("same ", StringComparison.Ordinal) && draft is not { Place.Sort: PlaceSort.Container } && facts.Select(f => f switch { Undone u => u.Place, Put p when phrase.Place.Label == "same place" => p.Place, _ => null }).LastOrDefault(p => p is { Sort: PlaceSort.Container }) is var put && (put ?? context.LastPlace) is { } before)
            phrase = phrase with { Place = before };
        else if (phrase.Place.Label == "same place" && context.Last.OfType<Put>().LastOrDefault() is { } last)
            phrase = phrase with { Place = last.Place };
        if (phrase.Place.Label == "same place")
        {
            Ask(DoubtSort.NotTold, $"Which place is meant: “{Said(phrase.From, phrase.To)}”?", all);
            return;
        }

        if (facts.LastOrDefault() is Found { Where.Length: 0 } found && pending.Count == 0 && draft is null)
        {
            facts[^1] = found with { Where = Said(phrase.From, phrase.To), Spans = [.. found.Spans, .. Spans(all)] };
            return;
        }

        if (Word(phrase.From - 1) == "all" || Word(phrase.From) == "all")
        {
            for (int k = 0; k < facts.Count; k++)
            {
                if (facts[k] is Undone { Place: null } open)
                    facts[k] = open with { Place = phrase.Place };
            }
        }

        if (draft is { Of.Ids.Count: 2 } both && Range(clauseFrom, phrase.From).LastOrDefault(k => Word(k) is "left" or "right", -1) is >= 0 and var sided && sided >= phrase.From - 3 && Select(both.Of, null, Word(sided)) is { Ids: [var sideId] })
        {
            both.PerSide = true;
            both.Sides[sideId] = phrase.Place;
            both.Tokens.AddRange(all.Prepend(sided));
            return;
        }

        // "the whole lot's on the windowsill": the part and what held it.
        if (draft is { Of: { Sort: ThingSort.Part, Others.Count: 0 }, Lots.Count: > 0 } laid && (laid.FromPart || offNow.Contains(laid.Of.Code)) && pending.Count == 0 && phrase.Place.Sort == PlaceSort.Container && Word(phrase.From) is "on" or "under" && Range(clauseFrom, phrase.From).Any(k => Word(k) is "everything" || Word(k) is "lot" or "it" && Word(k - 1) is "the" or "whole" or "of" or "," || Word(k) == "all" && Word(k - 1) is "'s" or "is" && Word(k - 2) == "it"))
        {
            laid.Place = phrase.Place;
            Stow(laid.Of, phrase.Place, Range(clauseFrom, phrase.From).Where(k => Word(k) is "everything" or "lot" or "whole").Concat(all));
            return;
        }

        if (draft is { Loose: true } && phrase.Place.PartAt >= 0 && things.At(phrase.Place.PartAt) is { } holder)
            Adopt(draft, holder);
        if (draft is not null && (draft.FromPart || offNow.Contains(draft.Of.Code)) && pending.Count == 0 && phrase.Place.Sort == PlaceSort.Container && draft.Of.Sort is ThingSort.Part && (IsRoomy(phrase.Place) && !(draft.Of.Ids.Count == 1 && draft.Lots.Count > 0 && !tokens.Any(t => t.Text == "each") && Range(clauseFrom, phrase.From).Any(k => Word(k) is "they" or "them" or "those" or "these")) || Range(clauseFrom, phrase.From).Any(k => Word(k) is "it" or "itself" or "goes" or "lives") && !Range(clauseFrom, phrase.From).Any(k => Lexicon.Fasteners.Longest(tokens, k).Values.Count > 0)))
        {
            // Bolts go in bags and tins; what lies on a bench or a shelf is the part.
            Stow(draft.Of, phrase.Place, all);
            return;
        }

        if (draft is not null && (draft.Lots.Count > 0 || draft.Of.Sort == ThingSort.Fasteners) && !(pending.Count > 0))
        {
            if (phrase.Place.Sort == PlaceSort.Container && draft is { Place.Sort: PlaceSort.OwnHoles, Of.Sort: ThingSort.Part, FromPart: true } && draft.Of.Others.Count == 0)
                Add(new Put(draft.Of, phrase.Place), all.Concat(draft.Tokens));
            else
                (draft.Place, draft.Lies) = (phrase.Place, (draft.Lies && !draft.Undone) || draft.Of.Sort == ThingSort.Fasteners && phrase.Place.Sort == PlaceSort.Container && Lies(phrase.Place, all) && !Inventory(phrase));
            draft.Tokens.AddRange(all);
            return;
        }

        if (pending.Count > 0)
        {
            // "starter and alternator are both on the shelf": one place told once for all that were named.
            var named = pending.SelectMany(p => Range(p.From, p.To)).Concat(all).ToList();
            if (Together([.. pending.Select(p => p.Thing)]) is { } together && (Lies(phrase.Place, named) || pending.All(p => offNow.Contains(p.Thing.Code))))
                Stow(together, phrase.Place, named);
            else
            {
                foreach (var (thing, from, to) in pending)
                    Stow(thing, phrase.Place, Range(from, to).Concat(all));
            }

            topic = facts.LastOrDefault() is LeftOn ? Behind(pending[^1].Thing) : pending[^1].Thing;
            pending.Clear();
        }
        else if (seen is { Detail.Length: > 0 } piece && topic is not null)
            Stow(piece, phrase.Place, all.Append(seenAt));
        else if (UnknownBefore(phrase, clauseFrom) is { } unknown)
        {
            Stow(unknown, phrase.Place, Range(clauseFrom, phrase.To));
            topic = unknown;
        }
        else if (topic is null && context.Sought is { } sought && SaysIt())
            Stow(sought, phrase.Place, all);
        else if ((topic ?? (SaysIt() ? LastThing() : null)) is { } about)
        {
            // "rail and injectors came off in one lump and they're in the cool box": all that one deed took off.
            bool they = Range(clauseFrom, phrase.From).Any(k => Word(k) is "they" or "them" or "both" or "all");
            var deed = facts.OfType<Off>().LastOrDefault(o => offNow.Contains(o.Thing.Code));
            var several = facts.OfType<Off>().Where(o => deed is not null && o.Spans.Any(a => deed.Spans.Any(b => a.Start < b.End && b.Start < a.End))).SelectMany(o => they ? o.With.Prepend(o.Thing) : [o.Thing]).ToList();
            if (several.Count > 1)
            {
                foreach (var one in Together(several) is { } whole ? [whole] : several)
                    Stow(one, phrase.Place, all);
            }
            else
                Stow(about, phrase.Place, all);
        }
        else
            Ask(DoubtSort.NotTold, $"What is in {phrase.Place.Label}?", all);
    }

    /// <summary>"sump bolts, eighteen M6 by twenty, bag marked sump": sizes and then a bare place are told of what came out.</summary>
    private bool Inventory(PlacePhrase phrase) =>
        draft!.Lots.Any(l => !l.Lot.Size.IsEmpty) && phrase.From > 0 && tokens[phrase.From - 1].IsBreak && !PlaceReader.IsPreposition(Word(phrase.From));

    private static bool IsRoomy(Place place) =>
        place.Label.Split(' ') is var words && words.Any(w => w is "shelf" or "bench" or "workbench" or "floor" or "corner" or "pallet" or "wall" or "table" or "trestle" or "boot" or "shed" or "rack" or "trolley" or "dolly" or "loft" or "garage" or "desk" or "carpet" or "attic" or "cellar" or "towel" or "newspaper" or "dryer" or "stairs" or "tyre" or "tire" or "van" or "blanket" or "sheet" or "cloth" or "freezer" or "wall" or "hook" or "stand" or "vice");

    /// <summary>"ticket's in the folder": a thing that no list knows, told only by where it is.</summary>
    private Thing? UnknownBefore(PlacePhrase phrase, int from)
    {
        if (phrases.Any(p => p.From >= from && p.To <= phrase.From && p is not WordPhrase) || phrases.All(p => p is not WordPhrase { Filler: false } || p.From < from || p.To > phrase.From))
            return null;
        return Nameless(from, phrase.From) is { } thing && !thing.Name.Split(' ').Any(w => w.EndsWith("ed", StringComparison.Ordinal) || PlaceReader.IsLaying(w) || w is "something" or "anything" or "everything" or "nothing") && !thing.Name.Split(' ').All(Lexicon.Fillers.Contains) && thing.Name.Split(' ').Length <= 4 ? thing with { Sort = ThingSort.Unknown } : null;
    }

    private bool SaysIt() => tokens.Any(t => t.Text is "it" or "them" or "they" or "that" or "this");

    /// <summary>Several parts as one thing to be laid down: every part by its id, named in the order in which they were said.</summary>
    private static Thing? Together(List<Thing> things) =>
        things.Count > 1 && things.All(t => t is { Sort: ThingSort.Part, Ids.Count: > 0, Others.Count: 0, Detail.Length: 0 })
            ? new Thing(ThingSort.Part, things[0].Kind, [.. things.SelectMany(t => t.Ids).Distinct()], string.Join(", ", things.Select(t => t.Name)))
            : null;

    private void Stow(Thing thing, Place place, IEnumerable<int> from)
    {
        // "the chain's hanging on a bit of wire": held out of the way where it is, not laid down anywhere.
        if (thing.Sort == ThingSort.Part && Lexicon.Ties.Contains(place.Label.Split(' ')[^1]) && !offNow.Contains(thing.Code) && !thing.Ids.All(context.Off.Contains))
            _ = Spans(from);
        else if (place.Sort == PlaceSort.OwnHoles && thing.Sort == ThingSort.Part)
        {
            bool back = Range(clauseFrom, from.Max() + 1).Any(k => Word(k) == "back");
            if (facts.FindIndex(f => f is On on && on.Thing.Equals(thing)) is var on and >= 0)
                facts[on] = facts[on] with { Spans = [.. facts[on].Spans, .. Spans(from)] };
            else
                About(thing, from, t => back ? new On(t) : new LeftOn(t, place.Manner));
        }
        else
        {
            // What was laid in a tray came off the engine; of what is said to be there nobody said when.
            if (!Lies(place, from) && thing is { Sort: ThingSort.Part, Detail.Length: 0 } && place.Sort == PlaceSort.Container && thing.Ids.Count > 0 && !thing.Ids.Any(i => context.Off.Contains(i)) && !offNow.Contains(thing.Code) && !facts.Any(f => f is Back or Off && About(f)!.Ids.Intersect(thing.Ids).Any()))
                Apply(Act.Off, thing, from);
            if (facts.FindLastIndex(f => f is Put p && p.Thing.Equals(thing)) is var earlier and >= 0)
            {
                // "in the shed on the shelf": one place told in two steps.
                var put = (Put)facts[earlier];
                facts[earlier] = put with { Place = place with { Manner = put.Place.Label }, Spans = [.. put.Spans, .. Spans(from)] };
                return;
            }

            About(thing, from, t => new Put(t, place));
        }
    }

    /// <summary>
    /// "the head is in the shed", "both heads on the pallet": told where it is, not that it was taken off and laid there. A verb of
    /// laying, an order or where it came from tell of work: "main caps in order on the bench", "collets from the left head in the pill box".
    /// </summary>
    private bool Lies(Place place, IEnumerable<int> from)
    {
        int last = from.Max();
        int first = last;
        while (first > 0 && !tokens[first - 1].IsEnd)
            first--;
        if (In(first, last).Any(p => p is ActPhrase { Act: Act.Off or Act.Undo or Act.Part }) || Range(first, last).Any(k => Word(k) == "from" && (In(first, last).Any(p => p is ThingPhrase && p.To > k + 1 && p.From <= k + 2) || Range(k, last).Any(j => Word(j) is "side" or "end" && Word(j - 1) is "left" or "right" or "that" or "this"))))
            return false;
        if (Range(first, last).Any(k => Lexicon.Copulas.Contains(Word(k))))
            return true;
        // "the sump bolts have gone in a jam jar"
        if (In(first, last).Any(p => p is ThingPhrase { Thing.Sort: ThingSort.Fasteners } bolts && Range(bolts.To, last).FirstOrDefault(k => Word(k) is not ("have" or "'ve" or "all" or "both" or "just" or "has"), -1) is var verb and > 0 && Word(verb) is "gone" or "went" or "go"))
            return true;
        int next = last + 1 < tokens.Count && tokens[last + 1].Sort == TokenSort.Comma ? last + 2 : last + 1;
        return place.Manner.Length == 0 && !Range(first, last).Any(k => (PlaceReader.IsLaying(Word(k)) || Word(k) is "through") && !In(first, last).Any(p => p is ThingPhrase && p.From <= k && p.To > k)) && !In(first, last).Any(p => p is ActPhrase { Act: Act.Put }) && !In(next, tokens.Count).Any(p => p.From == next && p is ActPhrase { Act: Act.Mark });
    }

    private void Tag(TagPhrase phrase)
    {
        var all = Range(phrase.From, phrase.To);
        if (pending.Count > 0)
        {
            foreach (var (thing, from, to) in pending)
                About(thing, Range(from, to).Concat(all), t => new Tagged(t, phrase.Tag));
            topic = pending[^1].Thing;
            pending.Clear();
        }
        else if (((seen is { Detail.Length: > 0 } ? seen : topic) ?? LastThing()) is { } about)
            About(about, all, t => new Tagged(t, phrase.Tag));
        else
            Ask(DoubtSort.NotTold, $"What is tagged {phrase.Tag}?", all);
    }

    private void Piece(DetailPhrase phrase, List<Phrase> clause, int i)
    {
        int from = phrase.From;
        while (from > 0 && !tokens[from - 1].IsBreak && Word(from - 1) is "old" or "rear" or "front" or "upper" or "lower" or "left" or "right" or "inner" or "outer" or "top" or "bottom" or "second" or "first" or "third")
            from--;
        var owner = pending.Count > 0 ? pending[^1].Thing : draft?.Of ?? topic;
        if (forward is { Act: Act.Buy } buy)
        {
            int stop = phrase.To;
            Apply(Act.Buy, owner is { Sort: ThingSort.Part } && from == phrase.From && !tokens[phrase.To - 1].Plural ? owner with { Detail = phrase.Detail, Others = [] } : new Thing(ThingSort.Unknown, "", [], string.Join(" ", Enumerable.Range(from, stop - from).Select(k => tokens[k].Text))), Range(buy.From, stop));
            return;
        }

        string which = from < phrase.From && Word(from) is "second" or "first" or "third" ? Word(from) + " " : "";
        if (phrase.Detail is "bracket" or "connector" or "union" or "bearing" or "brush" && !(owner is not null && FaultNext(clause, i) is not null))
        {
            if (pending.Count == 0 && clause.Skip(i + 1).FirstOrDefault(p => p is not WordPhrase { Filler: true }) is ActPhrase or PlacePhrase or LotPhrase or TagPhrase or null)
            {
                int start = from;
                while (start > 0 && !tokens[start - 1].IsBreak && tokens[start - 1].IsWord && !Lexicon.Fillers.Contains(Word(start - 1)) && !used[start - 1] && phrases.Any(p => p is WordPhrase && p.From == start - 1))
                    start--;
                var bracket = Nameless(start, phrase.To);
                if (bracket is not null)
                {
                    Flush();
                    if (forward is { } verb)
                    {
                        Apply(verb.Act, bracket, Range(verb.From, phrase.To));
                        forward = null;
                    }
                    else
                        pending.Add((bracket, start, phrase.To));
                    (seen, seenAt, fasteners) = (bracket, start, false);
                    return;
                }
            }
        }

        if (owner is null && LastThing() is { } last)
            owner = last;
        // A lobe is the cam's, whoever follows it.
        if (phrase.Detail == "lobe" && owner?.Kind is "follower" or "shim" or "finger" or "rocker" or "pushrod" or "valve-in" or "valve-ex" && index.Parts("cam") is { Count: > 0 } cams)
            owner = cams.Count == 1 ? new Thing(ThingSort.Part, "cam", [cams[0].Id], cams[0].Name) : new Thing(ThingSort.Part, "cam", [], index.NameOf("cam"));
        seen = owner is null
            ? new Thing(ThingSort.Unknown, "", [], which + phrase.Detail)
            : owner with { Sort = owner.Sort == ThingSort.Fasteners ? ThingSort.Part : owner.Sort, Detail = which + phrase.Detail, Others = [] };
        if (seen is { Kind: "head", Detail: "gasket", Ids.Count: > 0 } blown && index.Parts("head-gasket") is { Count: > 0 } gaskets)
        {
            // The head gasket is a part in its own right.
            var own = gaskets.Where(g => blown.Ids.Any(h => h[(h.IndexOf('.', StringComparison.Ordinal) + 1)..] == g.Id[(g.Id.IndexOf('.', StringComparison.Ordinal) + 1)..])).ToList();
            if (own.Count > 0)
                seen = new Thing(ThingSort.Part, "head-gasket", [.. own.Select(g => g.Id)], own[0].Name);
        }

        (seenAt, seenCount, fasteners) = (from, null, false);
    }
}
