namespace Gudgeon.Capture;

/// <summary>What was seen, and the closing of what was left open.</summary>
internal sealed partial class Listener
{
    private int Find(FaultPhrase fault, List<Phrase> clause, int i, int end)
    {
        if (fault.Damage && SpoiltSome(fault, clause, i) is var (joint, some, past))
        {
            var bolts = things.Joint(joint with { Sort = ThingSort.Part }, "bolt");
            var of1 = Range(clause[0].From, past).Concat(pending.SelectMany(p => Range(p.From, p.To))).Where(k => !tokens[k].IsBreak);
            pending.Clear();
            Add(new Damaged(bolts with { Others = [] }, fault.Fault, Said(clause[0].From, past), some), of1);
            (seen, seenAt) = (bolts, fault.From);
            topic = joint with { Sort = ThingSort.Part };
            while (i + 1 < clause.Count && clause[i + 1].From < past)
                i++;
            return i;
        }

        // "half blocked with silicone", "caked in carbon": what it is full of says more.
        if (Word(fault.To) is "with" or "of" or "in" && clause.Skip(i + 1).OfType<FaultPhrase>().FirstOrDefault(f => f.From <= fault.To + 3) is { } stuff && Range(fault.To, stuff.From).All(k => Lexicon.Fillers.Contains(Word(k)) || Word(k) is "old" or "black"))
        {
            clause[i] = fault = stuff with { From = fault.From };
            clause.Remove(stuff);
        }

        int start = clause[0].From;
        // "eight litres, this is clean", "six pints and black as your hat": of what ran out, kept with it.
        if (pending.Count == 0 && facts.LastOrDefault() is Drained && fault.Fault is "clean" or "dirty" or "discoloured" or "fine" && clause.Take(i).All(p => p is WordPhrase))
        {
            facts[^1] = facts[^1] with { Spans = [.. facts[^1].Spans, .. Spans(Range(start, fault.To).Where(k => !tokens[k].IsBreak))] };
            return i;
        }

        // "new seals on the list, the old ones have had it": why they are to be bought.
        if (pending.Count == 0 && facts.LastOrDefault() is ToBuy && fault.Fault == "damaged" && Range(start, fault.From).Any(k => Word(k) == "old" && Word(k + 1) is "one" or "ones"))
        {
            facts[^1] = facts[^1] with { Spans = [.. facts[^1].Spans, .. Spans(Range(start, fault.To).Where(k => !tokens[k].IsBreak))] };
            return i;
        }

        var inClause = pending.Count > 0 ? pending[^1].Thing : null;
        var thing = seenAt >= start && seen is not null ? seen : inClause ?? seen ?? topic ?? (facts.Count == 0 ? LastThing() : null);
        int? count = seenAt >= start ? seenCount : null;
        bool of = Range(start, fault.From).Any(k => Word(k) is "they" or "all" or "them" or "those" or "these" or "both");
        if (thing is { Sort: ThingSort.Fasteners } && seenAt < start && !of && draft is not null)
            thing = draft.Of.Sort == ThingSort.Fasteners ? draft.Of with { Sort = ThingSort.Part } : draft.Of;
        else if (thing is { Sort: ThingSort.Fasteners } && of && seenAt < start && draft is { Lots: [.., { Lot.Count: { } whole }] })
            count = whole;
        // "two nuts off, the last one is seized"
        if (draft is { Held: true, Lots: [.., var loosened] } && inClause is null && thing is { Sort: ThingSort.Part } && seenAt < start && fault.Fault is "seized" or "stuck" or "rounded")
            (thing, count) = (draft.Of with { Sort = ThingSort.Fasteners, Fastener = loosened.Lot.Fastener is { Length: > 0 } kind0 ? kind0 : "bolt" }, null);
        // "gasket on dry" is how it went on; "only hand tight" on the way back is a stage.
        if (fault.Fault == "dry" && Word(fault.From - 1) is "on" or "in" && Refitting())
        {
            _ = Spans(Range(fault.From, fault.To));
            return i;
        }

        if (Refitting() && fault.Fault is "loose" or "tight" && Range(fault.From - 1, fault.To).Any(k => Word(k) is "hand" or "finger") && (pending.Count > 0 ? pending[^1].Thing : draft?.Of ?? topic) is { } held)
        {
            var said1 = Range(fault.From - 1, fault.To).Concat(pending.SelectMany(p => Range(p.From, p.To))).ToList();
            if (pending.Count > 0 && held is { Sort: ThingSort.Part, Ids.Count: > 0, Others.Count: 0 })
                Apply(Act.On, held, said1);
            pending.Clear();
            StartTight(held.Sort == ThingSort.Fasteners ? held with { Sort = ThingSort.Part } : held, said1);
            draft!.Stages.Add($"{Range(fault.From - 1, fault.To).Select(Word).First(w => w is "hand" or "finger")} tight");
            return i;
        }

        // "oil pump on, three bolts, tight": how they were done up.
        if (Refitting() && fault.Fault == "tight" && draft is { Fitting: true, Lots.Count: > 0 } done && clause.All(p => p is FaultPhrase or BreakPhrase or WordPhrase { Filler: true }))
        {
            done.Tokens.AddRange(Range(start, fault.To));
            return i;
        }

        if (Word(fault.From) == "flat" && fault.To == fault.From + 1 && thing?.Kind is "head" or "block" or "inlet-manifold" or "exhaust-manifold" or "case-half" or "sump" or "timing-cover" or "cam-cover")
            clause[i] = fault = fault with { Fault = "flat", Damage = false };

        // "got the rounded one off": which one, not what happened to it.
        if (Word(fault.From - 1) == "the" && fault.Damage && Word(fault.To) is "one" or "ones" or "bolt" or "bolts" or "nut" or "nuts" or "stud" or "studs" or "stub" or "bit" or "end")
            return i;
        if (thing is { Name: "not said" })
        {
            Ask(DoubtSort.NotTold, $"What is {fault.Fault}: “{Said(start, end)}”?", Range(start, end).Where(k => !tokens[k].IsBreak));
            return clause.Count;
        }

        // "it's scored" after several: of one, and nobody said which.
        if (thing is { Sort: ThingSort.Part, Ids.Count: > 1, Detail: "" } several && inClause is null && seenAt < start && topic is null && (Word(start) is "it" || Word(start) is "that" or "this" && Word(start + 1) is "one" or "'s" or "is" || Word(start) is "one" && Word(start + 1) is "of" && Word(start + 2) is "them" or "em"))
        {
            Ask(DoubtSort.Which, $"Which of the {several.Name} is {fault.Fault}?", Range(start, end).Where(k => !tokens[k].IsBreak));
            return clause.Count;
        }

        // "tested for cracks, none found"
        if (Range(start, fault.From).Any(k => Word(k) is "for" && Word(k - 1) is "tested" or "checked" or "looked" or "inspected" or "it" or "them" or "dye" or "testing" or "looking" or "checking"))
        {
            int next = end < tokens.Count && tokens[end].IsBreak ? ClauseEnd(end + 1, tokens.Count) : end;
            if (Range(end, next).Any(k => Word(k) is "none" or "nothing" or "clear" or "no" or "not") && (topic ?? LastThing()) is { } tested)
            {
                About(tested with { Detail = "" }, Range(start, next).Where(k => !tokens[k].IsBreak), t => new Seen(t, $"no {Word(fault.From)}", Said(start, next)));
                skipTo = next;
            }
            else
                Ask(DoubtSort.NotUnderstood, $"Kept as said: “{Said(start, end)}”", Range(start, end));
            return clause.Count;
        }

        if (Word(start) is "something" or "number" && inClause is null && seenAt < start || Word(start) is "something" or "someone" or "somebody" or "anything" && inClause is null)
        {
            Ask(DoubtSort.NotUnderstood, $"Kept as said: “{Said(start, end)}”", Range(start, end));
            return clause.Count;
        }

        if (inClause is null && (seen is null || seenAt < start) && Range(start, fault.From).Any(k => Word(k) == "oil") && fault.Fault is "sludge" or "metal in oil" or "dirty" or "clean" or "full" or "discoloured" or "fine" && !clause.Take(i).Any(p => p is ThingPhrase) && Vessel() is { } vessel)
            thing = vessel;

        // "valley's full of sludge": what is named here, not what was spoken of before.
        if (topic is null && inClause is null && (seen is null || seenAt < start) && clause.Take(i).All(p => p is WordPhrase or NumPhrase) && clause.Take(i).Any(p => p is WordPhrase { Filler: false }) && Nameless(start, fault.From) is { } fresh && !fresh.Name.Split(' ').All(Lexicon.Fillers.Contains))
            thing = fresh;

        // "cracked between the seats", "oily on five": the noun may come after.
        if (thing is null)
        {
            var after = clause.Skip(i + 1).OfType<ThingPhrase>().FirstOrDefault();
            if (after is null)
            {
                var nameless = Nameless(start, fault.From);
                if (nameless is null)
                {
                    Ask(DoubtSort.NotTold, $"What is {fault.Fault}?", Range(start, end));
                    return clause.Count;
                }

                thing = nameless;
            }
            else
                thing = after.Thing;
        }
        else if (thing == seen && seenAt < start && Nameless(start, fault.From) is { } subject && clause.Take(i).All(p => p is WordPhrase) && !subject.Name.Split(' ').All(Lexicon.Fillers.Contains) && clause.Take(i).Count(p => p is WordPhrase { Filler: false }) > 0)
        {
            thing = topic is null ? subject : topic with { Others = [] };
            if (topic is not null && PieceAt(subject, start) is var pieceAt and >= 0)
                (thing, seenAt) = (thing with { Detail = subject.Name, Sort = topic.Sort == ThingSort.Fasteners ? ThingSort.Part : topic.Sort }, pieceAt);
        }

        // "two's got a busted top ring": what it is that is broken follows at once.
        if (clause.ElementAtOrDefault(i + 1) is ThingPhrase { Thing.Sort: ThingSort.Part } struck && struck.From == fault.To && Word(fault.From - 1) is "a" or "an" or "the" or "got" or "has" or "had" or "some" or "with" or "found" or "two" or "three" && (pending.Count == 0 || pending[^1].From > fault.From || NumberedHere(start, fault.From)))
            thing = struck.Thing;
        else if (fault.Damage && clause.Skip(i + 1).FirstOrDefault(p => p is not WordPhrase { Word: "the" or "my" or "a" or "one" or "of" or "off" }) is ThingPhrase { Thing.Sort: ThingSort.Part or ThingSort.Fasteners } did && Range(fault.To, did.From).All(k => Word(k) is "the" or "my" or "a" or "one" or "of" or "off") && Word(fault.From - 1) is "i" or "'ve" or "just" or "we" or "he" or "and" or "have" or "managed" or "someone" or "somebody" or "genius" or "idiot" or "has" && clause.Take(i).All(p => p is WordPhrase))
            thing = did.Thing;
        if (clause.ElementAtOrDefault(i + 1) is DetailPhrase piece && piece.From == fault.To && thing.Detail.Length == 0 && thing.Sort is ThingSort.Part or ThingSort.Line)
            thing = thing with { Detail = piece.Detail };
        int stop = StopOf(clause, i, end);
        int from = Math.Min(seenAt >= start ? seenAt : fault.From, fault.From);
        if (inClause is not null && ReferenceEquals(inClause, thing))
            from = Math.Min(from, pending[^1].From);
        bool denied = Range(start, fault.From).Any(k => Word(k) is "no" or "not" or "without" or "never" or "isnt" or "arent" or "wasnt" or "nothing" or "none");
        if (denied && Range(start, fault.From).LastOrDefault(k => Word(k) is "no" or "not" or "without" or "never" or "isnt" or "arent" or "wasnt" or "nothing" or "none", from) is var no && no < from)
            from = no;
        string words = Said(from, stop);
        var all = Range(from, stop).Where(k => !tokens[k].IsBreak);
        if (fault.Fault == "hissing" && resolver.Cylinder is { } cylinder)
            thing = Hissing(start, stop, cylinder) ?? thing;
        if (thing is { Sort: ThingSort.Unknown } && !(Word(start) is "the" or "a" or "an" or "that" or "this" or "my" or "some" or "little" or "both") && !tokens[start].Glued && topic is null && !denied && thing.Name.Split(' ').Length < 2)
        {
            Ask(DoubtSort.NotTold, $"What is {fault.Fault}: “{Said(start, stop)}”?", all);
            return clause.Count;
        }

        // "three studs broke off on the left", "broke on number four": which of the parts they hold.
        if (thing.Ids.Count > 1 && thing.Sort is ThingSort.Fasteners or ThingSort.Part && thing.Kind.Length > 0 && WhichAfter(thing, fault.To, stop) is { } which1)
            thing = which1;
        if (denied && facts.Count > 0 && (seenAt < start || seen is null) && inClause is null && facts[^1] is not Seen and not Damaged)
        {
            // "oil filter's off, no metal in it": nothing was found; it stays with what was told.
            facts[^1] = facts[^1] with { Spans = [.. facts[^1].Spans, .. Spans(all)] };
            return clause.Count;
        }

        // "a smear of grease and no goo": how it was fitted, of no part.
        if (denied && Refitting() && thing.Sort == ThingSort.Unknown)
            return clause.Count;
        if (denied)
            About(thing, all, t => new Seen(t, Denied(start, fault), words));
        else if (fault.Damage)
        {
            int? broken = thing.Sort == ThingSort.Fasteners ? count ?? 1 : count;
            About(thing, all, t => new Damaged(t, fault.Fault, words, broken));
        }
        else
            About(thing, all, t => new Seen(t, fault.Fault, words));
        // "sump has one bolt stripped": the joint was named for it, and nothing else is open of it.
        if (thing.Sort == ThingSort.Fasteners && draft is { Lots.Count: 0, Undone: false, Fitting: false, Place: null, Of.Sort: ThingSort.Part } opened && opened.Of.Ids.SequenceEqual(thing.Ids) && facts.Count > 0)
        {
            facts[^1] = facts[^1] with { Spans = [.. facts[^1].Spans, .. Spans(opened.Tokens)] };
            draft = null;
        }

        foreach (var second in clause.Skip(i + 1).OfType<FaultPhrase>().Where(f => f.To <= stop && f.Fault != fault.Fault && Range(fault.To, f.From).All(k => Word(k) is "and" or "or" or "it" or "'s" or "is" or "has" or "also" or "was" or "a" || tokens[k].Sort == TokenSort.Comma)))
            About(thing, all, t => second.Damage && !denied ? new Damaged(t, second.Fault, words, t.Sort == ThingSort.Fasteners ? count ?? 1 : count) : new Seen(t, denied ? Denied(start, second) : second.Fault, words));
        pending.RemoveAll(p => ReferenceEquals(p.Thing, thing) || p.Thing.Code == thing.Code || ReferenceEquals(p.Thing, inClause) || (thing.Detail.Length > 0 && p.Thing.Ids.SequenceEqual(thing.Ids)));
        if (thing.Sort != ThingSort.Unknown && thing.Sort != ThingSort.Fasteners)
            topic = thing with { Detail = "" };
        (seen, seenAt) = (thing, from);
        while (i + 1 < clause.Count && clause[i + 1].From < stop)
            i++;
        return i;
    }

    /// <summary>"the plunger's stuck in": a noun of its own right behind its article, a piece of what is spoken of.</summary>
    private int PieceAt(Thing subject, int from)
    {
        var words = subject.Name.Split(' ');
        int at = Range(from, from + 6).FirstOrDefault(k => Word(k) == words[0], -1);
        bool piece = words.Length <= 2 && at > 0 && Word(at - 1) is "the" or "its" && words.All(w => w.Length > 2 && !Lexicon.Fillers.Contains(w) && !Lexicon.Passing.Contains(w) && !w.EndsWith("ed", StringComparison.Ordinal) && !w.EndsWith("ing", StringComparison.Ordinal))
            && Word(at + words.Length) is "'s" or "is" or "are" or "was" or "were" or "has" or "looks" or "look" or "feels" or "seems" or "had" or "have";
        return piece ? at : -1;
    }

    /// <summary>A bare number before the fault says which cylinder it is about.</summary>
    private bool NumberedHere(int from, int to) => In(from, to).Any(p => p is NumPhrase { Num.IsCount: true });

    /// <summary>The part of a row that is named after the fault, by side or number.</summary>
    private Thing? WhichAfter(Thing thing, int from, int to)
    {
        for (int k = from; k < to; k++)
        {
            if (Word(k) is not "on")
                continue;
            int at = Word(k + 1) is "the" or "number" or "cylinder" ? k + 2 : k + 1;
            if (Word(at) is "left" or "right" && Select(thing, null, Word(at)) is { Ids.Count: > 0 } side && side.Ids.Count < thing.Ids.Count)
                return side;
            int last = at;
            while (last < to && (NumberWords.At(tokens, last) is { IsCount: true } || Word(last) is "and" || tokens[last].Sort == TokenSort.Comma))
                last++;
            if (Picked(at, last) is { Count: > 1 } list && SelectAll(thing, list) is { } several)
                return several with { Ids = several.Ids.Intersect(thing.Ids).ToList() is { Count: > 0 } own ? own : several.Ids, Sort = thing.Sort, Fastener = thing.Fastener, Detail = thing.Detail };
        }

        return null;
    }

    private string Denied(int start, FaultPhrase fault)
    {
        string no = Range(start, fault.From).Select(Word).LastOrDefault(w => w is "no" or "nothing" or "none" or "without") ?? "not";
        return $"{(no == "without" ? "no" : no)} {string.Join(" ", Range(fault.From, fault.To).Select(Word))}";
    }

    private Thing? Hissing(int from, int to, int cylinder)
    {
        string kind = Range(from, to).Select(Word).FirstOrDefault(w => w is "exhaust" or "inlet" or "carb" or "throttle" or "intake" or "dipstick" or "breather" or "filler" or "crankcase" or "radiator") switch
        {
            "exhaust" => "valve-ex",
            "inlet" or "carb" or "throttle" or "intake" => "valve-in",
            "dipstick" or "breather" or "filler" or "crankcase" => "piston",
            "radiator" => "head-gasket",
            _ => "",
        };
        if (kind.Length == 0 || index.Parts(kind).Count == 0)
            return null;
        var selectors = new Selectors();
        selectors.Numbers.Add(cylinder);
        return resolver.Resolve([new PartWord(kind, false, null, 0)], selectors, true, kind);
    }

    /// <summary>Where the words about a fault end: the next part with something said of it, lot or deed.</summary>
    private int StopOf(List<Phrase> clause, int i, int end)
    {
        for (int k = i + 1; k < clause.Count; k++)
        {
            if (clause[k] is PlacePhrase or TagPhrase)
                return clause[k].From;
            if (clause[k] is ActPhrase { Act: Act.Buy or Act.Miss or Act.Cap or Act.Part })
                return clause[k].From;
            if (clause[k] is ThingPhrase next && !Where.Contains(Word(next.From - 1)) && clause.Skip(k + 1).Any(p => p is ActPhrase or FaultPhrase or LotPhrase))
                return Word(next.From - 1) == "and" ? next.From - 1 : next.From;
            if (clause[k] is NumPhrase n && FaultNext(clause, k) is not null && Word(n.To) is "'s" or "is" or "are" or "of")
                return Word(n.From - 1) is "and" ? n.From - 1 : n.From;
        }

        return end;
    }

    private void Flush()
    {
        if (draft is not { } told)
            return;
        draft = null;
        var lots = told.Settled();
        var of = told.Of;
        if (told.Loose && of.Sort == ThingSort.Unknown)
        {
            FlushLoose(told, lots);
            return;
        }

        var joint = of.Sort == ThingSort.Part ? of with { Sort = ThingSort.Fasteners, Fastener = "bolt", Others = [.. of.Others.Select(o => o with { Sort = ThingSort.Fasteners, Fastener = "bolt" })] } : of;
        if (told.Fitting)
        {
            lots = [.. lots.Where(l => l.Count is not null || l.Uncounted || !l.Size.IsEmpty)];
            if (told.Stages.Count > 0 || lots.Count > 0)
                About(joint, told.Tokens, t => new Tightened(t, lots, told.Stages));
            return;
        }

        bool off = offNow.Contains(of.Code) || of.Ids.Count > 0 && of.Ids.All(context.Off.Contains);
        if (told.Place is { } rest && told.Lots.Count > 0 && told.Lots.All(l => l is { Share: "others", Lot.Count: null }))
        {
            // "rest of the bolts in tray four": what is still without a place.
            About(joint, told.Tokens, t => new Put(t, rest with { Manner = "the rest" }));
            return;
        }

        if (lots.Count == 0)
        {
            if (told.Place is { } place)
                About(joint, told.Tokens, t => new Put(t, place));
            else if (told.Undone)
                About(joint, told.Tokens, t => new Undone(t, [], null));
            else if (told.Tokens.Any(k => !used[k]))
                Ask(DoubtSort.NotUnderstood, $"What of the {joint.Full}?", told.Tokens);
            return;
        }

        // "the long ones were on the bottom row": where they belong, not that there are more.
        foreach (var long1 in told.Lots.Where(l => l.Lot is { Count: null, Uncounted: false, Size.IsEmpty: true, Fastener: "", Note.Length: > 0 } && l.Share.Length == 0).ToList())
        {
            lots.RemoveAll(l => l is { Count: null, Uncounted: false, Size.IsEmpty: true, Fastener: "" } && l.Note == long1.Lot.Note);
            int stop = long1.To;
            while (stop < tokens.Count && !tokens[stop].IsBreak)
                stop++;
            About(joint, Range(long1.From, stop), t => new Marked(t, Said(long1.From, stop)));
            told.Tokens.RemoveAll(k => k >= long1.From && k < long1.To);
        }

        if (lots.Count == 0 && !told.Undone && told.Place is null)
            return;
        if (!told.Undone && told.Place is null && !off && lots.All(l => l is { Size.IsEmpty: true, Count: 1 } && l.Where.EndsWith(" one", StringComparison.Ordinal)))
            return;
        if (Choice(told, lots, joint, off))
            return;
        if (told.PerSide && joint.Ids.Count is > 1 and <= 6 && joint.Others.Count == 0)
        {
            if (told.FromPart && !off)
                About(of, told.Tokens, t => new Off(t, []));
            foreach (string id in joint.Ids)
            {
                var one = joint with { Ids = [id], Name = index.Engine.Parts.TryGetValue(id, out var part) ? part.Name : joint.Name };
                Add(told.Undone || told.FromPart || off || told.Place is not null ? new Undone(one, lots, told.Sides.GetValueOrDefault(id) ?? told.Place) : new Count(one, lots), told.Tokens);
            }

            return;
        }

        bool line = of.Sort == ThingSort.Line;
        if (lots.All(l => l.Count is null && !l.Uncounted && l.Size.IsEmpty))
        {
            if (!off)
                Ask(DoubtSort.NotUnderstood, $"What of the {of.Full}?", told.Tokens);
            return;
        }

        if (!told.FromPart || off || told.Held)
        {
        }
        else if (!told.Undone && !(told.Place is not null && line))
            About(of, told.Tokens, t => line ? new Parted(t) : new Off(t, []));
        else if (told.Undone && told.Place is null && lots.All(l => l.Where.Length == 0) && !facts.Any(f => f is Damaged))
            About(of, told.Tokens, t => line ? new Parted(t) : new Off(t, []));
        else if (told.Undone && facts.Any(f => f is Damaged { Thing.Sort: ThingSort.Fasteners }))
            About(of, told.Tokens, t => new Off(t, []));
        // A size alone is no count, nor is a bare number of what was spoken of before.
        if (!told.Undone && told.Place is null && !off && !told.FromPart && (lots.All(l => l is { Count: null, Uncounted: false, Fastener: "" }) || (of.Sort != ThingSort.Fasteners && lots.All(l => l is { Size.IsEmpty: true, Fastener: "" }))))
        {
            Ask(DoubtSort.NotTold, $"How many are there on the {joint.Name}?", told.Tokens);
            return;
        }

        // "left head bolts in bag one, seventeen": where they lie and how many, not that they were undone just now.
        if (told is { Lies: true, Undone: false, Place: { } lying } && (told.Of.Sort == ThingSort.Fasteners || !off))
        {
            About(joint, told.Tokens, t => new Put(t, lying));
            About(joint, told.Tokens, t => new Count(t, lots));
            return;
        }

        Fact Make(Thing t) => told.Undone || told.Place is not null || off || told.FromPart ? new Undone(t, lots, told.Place) : new Count(t, lots);
        About(joint, told.Tokens, Make);
        if (lots.All(l => l is { Count: null, Uncounted: false, Size.Diameter: not null }) && lots.Count > 0)
            Ask(DoubtSort.NotTold, $"How many are there on the {joint.Name}?", told.Tokens);
        foreach (var lot in lots.Where(l => l.Uncounted))
            Ask(DoubtSort.NotTold, $"How many {lot.Text.Replace("some ", "", StringComparison.Ordinal)} of the {joint.Name}?", told.Tokens);
        foreach (var lot in lots.Where(l => l.Note.Contains("longer", StringComparison.Ordinal) && l.Size.Length is null))
            Ask(DoubtSort.NotTold, $"How long are the longer ones of the {joint.Name}?", told.Tokens);
    }

    /// <summary>A size with two meanings makes two whole records to choose from.</summary>
    private bool Choice(Draft told, List<Lot> lots, Thing joint, bool off)
    {
        if (told.Lots.FirstOrDefault(l => l.Other is not null) is not { Other: { } other } double1)
            return false;
        var second = lots.Select(l => l.Size == double1.Lot.Size ? l with { Size = other } : l).ToList();
        if (told.FromPart && !off)
            About(told.Of, told.Tokens, t => new Off(t, []));
        Ask(DoubtSort.Figure, $"{double1.Lot.Size} or {other}?", told.Tokens, new Reading(new Undone(joint, lots, told.Place).Echo, [new Undone(joint, lots, told.Place)]), new Reading(new Undone(joint, second, told.Place).Echo, [new Undone(joint, second, told.Place)]));
        return true;
    }

    private void FlushLoose(Draft told, List<Lot> lots)
    {
        // "them bolts are all stuck in a bit of cardboard": those of the joint spoken of, moved or told where they lie.
        if (told is { Place: { Sort: PlaceSort.Container } lies, Undone: false } && lots.All(l => l is { Count: null, Size.IsEmpty: true }) && LastJoint() is { } held)
        {
            About(things.Joint(held with { Sort = ThingSort.Part, Others = [] }, lots.Select(l => l.Fastener).FirstOrDefault(f => f.Length > 0) ?? "bolt"), told.Tokens, t => new Put(t, lies));
            return;
        }

        bool clueless = tokens.Any(t => t.Text is "idea" or "dunno" or "mystery" or "unknown" or "clue" or "somewhere") || new Stretch(tokens, 0, tokens.Count).Line.Contains("dont know", StringComparison.Ordinal);
        // "a new one is eight weeks" counts nothing.
        bool nothing = !told.Undone && told.Place is null && lots.All(l => l is { Fastener: "", Size.IsEmpty: true, Note.Length: > 0 });
        if (!clueless && !nothing && LastJoint() is { } joint && (told.Undone || told.Place is not null || lots.Any(l => l.Count is not null || l.Size.AcrossFlats is not null)))
        {
            About(joint, told.Tokens, t => told.Undone || told.Place is not null || (t.Ids.Count > 0 && t.Ids.All(context.Off.Contains) && lots.Any(l => l.Count is not null)) ? new Undone(t, lots, told.Place) : new Count(t, lots));
            return;
        }

        Ask(DoubtSort.NotTold, $"{Fact.LotsText(lots)}{(told.Place is null ? "" : $" in {told.Place.Label}")}: of what?", told.Tokens);
    }

    private void LeftOver()
    {
        foreach (var (thing, from, to) in notes)
        {
            if (Range(from, to).All(k => !used[k]))
                About(thing, Range(from, to), t => new Noted(t, Said(from, to)));
        }

        foreach (var p in pending.ToList())
        {
            if (p.Thing.Sort == ThingSort.Line && notes.Any(n => n.Thing.Code == p.Thing.Code))
                Apply(Act.Part, p.Thing, Range(p.From, p.To));
        }

        Unsaid();
        for (int from = 0; from < tokens.Count;)
        {
            int to = from;
            while (to < tokens.Count && !tokens[to].IsBreak)
                to++;
            if (to > from && Range(from, to).All(k => !used[k]) && Range(from, to).Count(k => Weighs(k)) > 0 && (facts.Count + doubts.Count == 0 || Matters(from, to)))
                Ask(DoubtSort.NotUnderstood, $"Kept as said: “{Said(from, to)}”", Range(from, to));
            from = to + 1;
        }
    }

    /// <summary>Whether a stretch that nothing was made of speaks of the work at all: an aside beside a fact stays in the note as it is.</summary>
    private bool Matters(int from, int to) => Range(from, to).Any(k => tokens[k].Sort == TokenSort.Number
        || index.Book.Longest(tokens, k) is { Values.Count: > 0 } part && part.To <= to || Lexicon.Fasteners.Longest(tokens, k).Values.Count > 0 || Lexicon.Details.Longest(tokens, k).Values.Count > 0
        || Lexicon.Faults.Longest(tokens, k).Values.Count > 0 || (Lexicon.Acts.Longest(tokens, k) is { Values.Count: > 0 } deed && !Lexicon.Fillers.Contains(tokens[k].Text) && deed.To <= to)
        || SizeReader.At(tokens, k, inchBook) is not null || (k > 0 && Units.At(tokens, k) is not null && NumberWords.At(tokens, k - 1) is not null) || places.At(k) is not null || dues.At(k) is not null);

    private bool Weighs(int at) => tokens[at].Sort == TokenSort.Number || (tokens[at].Sort == TokenSort.Word && !Lexicon.Fillers.Contains(tokens[at].Text)) || (tokens[at].Sort == TokenSort.Other && tokens[at].Text != "-");

    /// <summary>Words in no fact and no doubt. Small words beside used ones belong to these; alone they are listed like any other.</summary>
    private List<TextSpan> Unused()
    {
        // Counted from the facts and doubts themselves, so that no word can slip between reading and recording.
        var covered = new bool[text.Length + 1];
        foreach (var span in facts.SelectMany(f => f.Spans).Concat(doubts.SelectMany(d => d.Spans)))
            Array.Fill(covered, true, span.Start, span.Length);
        for (int k = 0; k < tokens.Count; k++)
            used[k] = covered[tokens[k].Start];
        var spans = new List<TextSpan>();
        for (int from = 0; from < tokens.Count;)
        {
            int to = from;
            while (to < tokens.Count && !tokens[to].IsBreak)
                to++;
            bool any = Range(from, to).Any(k => used[k]);
            foreach (int k in Range(from, to))
            {
                if (used[k] || (any && !Weighs(k)))
                    continue;
                var token = tokens[k];
                if (spans.Count > 0 && text.AsSpan(spans[^1].End, token.Start - spans[^1].End).IndexOfAnyExcept(" -'’") < 0)
                    spans[^1] = new TextSpan(spans[^1].Start, token.Start + token.Length - spans[^1].Start);
                else
                    spans.Add(new TextSpan(token.Start, token.Length));
            }

            from = to + 1;
        }

        return spans;
    }
}
