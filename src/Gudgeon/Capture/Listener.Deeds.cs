namespace Gudgeon.Capture;

/// <summary>Verbs: what was done, to what, and what follows from it.</summary>
internal sealed partial class Listener
{
    private static readonly string[] Fluids = ["oil", "coolant", "water", "fuel", "petrol", "diesel", "antifreeze", "gearbox oil", "paraffin"];

    private int Do(ActPhrase phrase, List<Phrase> clause, int i, Phrase? next, int end)
    {
        var all = Range(phrase.From, phrase.To);
        if (forward is { Act: Act.Find } && phrase.Act == Act.Miss)
            return i;
        if (Failed(phrase, clause, end) is var told and >= 0)
            return told;
        // "taped to the flywheel" stops no opening; "gone rusty" is not missing; "run off with my cloth" drains nothing.
        if ((phrase.Act == Act.Cap && Word(phrase.To) == "to") || (phrase.Act == Act.Miss && Word(phrase.To - 1) == "gone" && clause.ElementAtOrDefault(i + 1) is FaultPhrase) || (phrase.Act == Act.Drain && Word(phrase.To) == "with" && !Range(clause[0].From, end).Any(k => Fluids.Contains(Word(k)))))
            return i;

        // "came right off"
        if (phrase is { Act: Act.Undo, Word: "came" or "come" } && Range(phrase.To, Math.Min(end, phrase.To + 3)).FirstOrDefault(k => Word(k) is "off" or "out" or "away" or "apart", -1) is var apart and >= 0 && Range(phrase.To, apart).All(k => Word(k) is "right" or "straight" or "clean" or "cleanly" or "easily" or "easy" or "nicely" or "sweetly" or "fine" or "good" or "well" or "all" or "just" or "quite"))
        {
            clause.RemoveAll(p => p.From >= phrase.To && p.From <= apart);
            phrase = new ActPhrase(phrase.From, apart + 1, Act.Off, Word(apart));
            clause[i] = phrase;
            all = Range(phrase.From, phrase.To);
            next = clause.Skip(i + 1).FirstOrDefault(p => p is not WordPhrase { Filler: true });
        }

        // "rings came": they may have come out or have come by post.
        if (phrase is { Act: Act.Undo, Word: "came" } && phrase.To == phrase.From + 1 && Word(phrase.To) != "with" && pending is [.., { Thing: { Sort: ThingSort.Part, Detail.Length: 0 } }] && (next is null or BreakPhrase) && draft is null)
        {
            Ask(DoubtSort.NotUnderstood, $"“{Said(clause[0].From, end)}”: out of the engine, or from the supplier?", Range(clause[0].From, end).Concat(pending.SelectMany(p => Range(p.From, p.To))));
            pending.Clear();
            return clause.Count;
        }

        switch (phrase.Act)
        {
            case Act.Mark when phrase.Word is "lined" or "line" && !Range(clause[0].From, end).Any(k => tokens[k].Stem is "mark" or "dot" or "arrow" or "paint" or "timing" or "notch" or "stamp"):
                return i;
            case Act.Mark:
                Mark(phrase, clause, end);
                return clause.Count;
            case Act.Drain:
                Drain(phrase, clause, end);
                return clause.Count;
            case Act.Off when phrase.Word is "out" or "off" && clause.ElementAtOrDefault(i + 1) is WordPhrase { Word: "of" } && Amounted(clause, i) is { } amount:
                return DrainOut(amount, phrase, clause, i, end);
            case Act.Send or Act.Return or Act.Stay:
                return i;
        }

        // What is told after "until" or "if" has not happened.
        if (phrase.Act is Act.Off or Act.On or Act.Undo or Act.Part or Act.Cap or Act.Tighten or Act.Drain && Range(clause[0].From, phrase.From).Any(k => Word(k) is "until" or "till" or "til" or "unless" or "if" or "once"))
        {
            Ask(DoubtSort.NotUnderstood, $"Kept as said: “{Said(clause[0].From, end)}”", Range(clause[0].From, end));
            pending.RemoveAll(p => p.From >= clause[0].From);
            return clause.Count;
        }

        // "glow plugs, one two and four came out": which of those just named.
        if (phrase.Act is Act.Off or Act.Undo or Act.On && pending is [.., { Thing: { Ids.Count: > 1, Kind.Length: > 0 } } row] && row.To < phrase.From && phrase.From > clause[0].From && Picked(Math.Max(row.To, clause[0].From), phrase.From) is { Count: > 0 } picked && SelectAll(row.Thing, picked) is { } those)
            pending[^1] = (those, row.From, phrase.From);

        // "comes off first", "going on tonight": how it goes, not that it went.
        if (phrase.Act is Act.Off or Act.On or Act.Undo && Word(phrase.From - 1) is "comes" or "coming" or "goes" or "going" or "gets" or "getting" && Remark(new Stretch(tokens, clause[0].From, end)) > 0)
            return clause.Count;
        if (phrase is { Act: Act.Off, Word: "dropped" } && next is LotPhrase or ThingPhrase { Thing.Sort: ThingSort.Fasteners } && Range(phrase.To, end).Any(k => Word(k) is "down" or "in" or "into" or "behind" or "through" or "inside"))
        {
            Ask(DoubtSort.NotUnderstood, $"Kept as said: “{Said(clause[0].From, end)}”", Range(clause[0].From, end));
            return clause.Count;
        }

        // "head off number one", "injectors out on the left": which one is told after the deed.
        if (phrase.Act is Act.Off or Act.On or Act.Undo or Act.Tighten && pending is [.., { Thing: { Kind.Length: > 0, Sort: ThingSort.Part or ThingSort.Fasteners } row1 }] && (row1.Others.Count > 0 || row1.Ids.Count > 1) && Chosen(row1, phrase.To, end) is { } chosen)
        {
            pending[^1] = (chosen.Thing, pending[^1].From, pending[^1].To);
            all = Range(phrase.From, chosen.To);
        }

        // "rocker arms off the left head": only those of that bank.
        if (phrase.Act == Act.Off && pending.Count > 0 && next is ThingPhrase { Thing.Ids: [var onto] } from1 && from1.From <= phrase.To + 1 && index.Engine.Parts.TryGetValue(onto, out var carrier) && carrier.Bank is { } bank && carrier.Kind is "head" or "cam-cover")
        {
            for (int k = 0; k < pending.Count; k++)
                pending[k] = (OnBank(pending[k].Thing, bank), pending[k].From, pending[k].To);
            all = Range(phrase.From, from1.To);
        }

        // "pickup came with it"
        if (phrase.Act is Act.Undo or Act.Off && pending.Count > 0 && Word(phrase.To) == "with" && Word(phrase.To + 1) is "it" or "them" && facts.FindLastIndex(f => f is Off) is var last and >= 0)
        {
            var off = (Off)facts[last];
            facts[last] = off with { With = [.. off.With, .. pending.Select(p => p.Thing with { Others = [] })], Spans = [.. off.Spans, .. Spans(pending.SelectMany(p => Range(p.From, p.To)).Concat(Range(phrase.From, phrase.To + 2)))] };
            pending.Clear();
            return i;
        }

        if (pending.Count > 1 && phrase.Act is Act.Off or Act.Undo && pending.Select(p => p.Thing.Kind).Distinct().Count() > 1 && pending.All(p => p.Thing.Sort == ThingSort.Part && !p.Thing.Kind.EndsWith("-manifold", StringComparison.Ordinal)) && System.Text.RegularExpressions.Regex.IsMatch(new Stretch(tokens, clause[0].From, end).Line, "\\b(?:together|as one|in one|lump|one piece|as a unit|as an assembly|all in one)\\b"))
        {
            // "dynamo and fan came off together"
            var (first, firstFrom, _) = pending[0];
            IReadOnlyList<Thing> others = [.. pending.Skip(1).Select(p => p.Thing with { Others = [] })];
            About(first, Range(firstFrom, end).Where(k => !tokens[k].IsBreak), t => new Off(t, others));
            offNow.UnionWith(pending.Select(p => p.Thing.Code));
            (topic, seen, seenAt, fasteners) = (first, first, firstFrom, false);
            pending.Clear();
            return clause.Count;
        }

        if (pending.Count > 0)
        {
            foreach (var (thing, from, to) in pending)
                Apply(phrase.Act, thing, Range(from, to).Concat(all));
            if (phrase.Act is Act.Put)
                return i;
            topic = pending[^1].Thing;
            (seen, seenAt) = (topic, pending[^1].From);
            pending.Clear();
            fasteners = false;
            if (phrase.Act == Act.Cap)
                return CapWith(clause, i, end);
            return i;
        }

        if (seen is { Detail.Length: > 0, Sort: not ThingSort.Unknown } left && phrase.Act == Act.Off && seenAt >= clause[0].From && left.Detail is not ("bracket" or "union" or "connector"))
        {
            // A gasket that came away is no part of the account: what was seen of it is enough.
            if (FaultNext(clause, i) is null)
                About(left, all.Append(seenAt), t => new Seen(t, "came away", Said(seenAt, phrase.To)));
            else
                _ = Spans(all);
            return i;
        }

        if (seen is { Sort: ThingSort.Part or ThingSort.Line, Detail.Length: > 0 } piece && phrase.Act is Act.Off or Act.Miss or Act.Find or Act.Buy && seenAt >= clause[0].From)
        {
            Apply(phrase.Act, piece, all.Append(seenAt));
            seen = null;
            return i;
        }

        // "radiator's out and the fan with it": what no list knows, told before its deed.
        if (phrase.Act == Act.Off && Lexicon.Copulas.Contains(Word(phrase.From - 1)) && draft is null && phrase.From - 1 > clause[0].From && clause.Take(i).All(p => p is WordPhrase) && Nameless(clause[0].From, phrase.From - 1) is { } plain && plain.Name.Split(' ').Length <= 2 && plain.Name.Split(' ').All(w => w.Length > 3 && !Lexicon.Fillers.Contains(w) && !Lexicon.Passing.Contains(w) && !Lexicon.Vague.Contains(w) && Lexicon.Containers.Longest(Tokeniser.Cut(w), 0).Values.Count == 0))
        {
            Apply(Act.Off, plain, Range(clause[0].From, phrase.To));
            (seen, seenAt, fasteners) = (plain, clause[0].From, false);
            return i;
        }

        bool object1 = next is ThingPhrase or DetailPhrase || (next is LotPhrase && phrase.Act is Act.Find or Act.Miss or Act.Buy or Act.Undo or Act.Off);
        if (draft is not null && fasteners && phrase.Act is Act.Off or Act.Undo && !(next is ThingPhrase && Word(next.From - 1) is not ("of" or "from" or "the") && draft.Lots.Count == 0))
        {
            (draft.Undone, draft.Held) = (true, HeldYet(end));
            draft.Tokens.AddRange(all);
            if (draft.FromPart && !draft.Held && phrase.Act == Act.Off && phrase.Word is "off" or "out" && draft.Of.Sort == ThingSort.Part && !(phrase.Word == "out"))
                Apply(Act.Off, draft.Of, all.Concat(draft.Tokens));
            return i;
        }

        if (draft is not null && phrase.Act is Act.On or Act.Tighten)
        {
            draft.Fitting = true;
            draft.Tokens.AddRange(all);
            return i;
        }

        if (phrase.Act is Act.Miss && draft is { Lots: [.., { Lot.Count: null } single] } && single.From >= clause[0].From && !tokens[single.To - 1].Plural)
        {
            draft.Lots.RemoveAt(draft.Lots.Count - 1);
            var one = single.Lot with { Count = 1 };
            About(draft.Of with { Sort = ThingSort.Fasteners, Fastener = one.Fastener }, all.Concat(Range(single.From, single.To)), t => new Missing(t, [one]));
            return i;
        }

        if (phrase.Act is Act.Miss && NeverThere(phrase, clause, end))
            return clause.Count;
        if (phrase.Act is Act.Miss && draft is { Lots.Count: > 0 } && draft.Lots[^1].Lot.Count is not null && (draft.Lots.Count > 1 || draft.Lots[^1].From == draft.Tokens[0]))
        {
            var lot = draft.Lots[^1];
            draft.Lots.RemoveAt(draft.Lots.Count - 1);
            About(draft.Of, all.Concat(Range(lot.From, lot.To)), t => new Missing(t with { Sort = ThingSort.Fasteners }, [lot.Lot]));
            return i;
        }

        if (object1)
        {
            forward = (phrase.Act, phrase.From, phrase.To);
            return i;
        }

        if (phrase.Act is Act.Cap or Act.Part or Act.Tighten && topic is not null)
        {
            if (phrase.Act != Act.Tighten)
                Apply(phrase.Act, topic, all);
            else
                StartTight(topic, all);
            return phrase.Act == Act.Cap ? CapWith(clause, i, end) : i;
        }

        // "drained five litres and it came out like treacle": the oil.
        if (phrase.Act is Act.Off or Act.Undo && facts.LastOrDefault() is Drained && clause.Take(i).Any(p => p is WordPhrase { Word: "it" or "that" }))
            return i;
        if (phrase.Act is Act.Off or Act.On && (topic ?? LastThing()) is { } it && clause.Take(i).Any(p => p is WordPhrase { Word: "it" or "they" or "them" or "that" }))
        {
            Apply(phrase.Act, it, all);
            return i;
        }

        forward = (phrase.Act, phrase.From, phrase.To);
        return i;
    }

    /// <summary>A deed that was denied or failed: told as the state that it leaves, never as done.</summary>
    private int Failed(ActPhrase phrase, List<Phrase> clause, int end)
    {
        if (phrase.Act is not (Act.Off or Act.On or Act.Undo or Act.Part or Act.Cap or Act.Drain or Act.Tighten or Act.Mark))
            return -1;
        var before = Range(clause[0].From, phrase.From).Select(Word).ToList();
        bool unable = before.Any(w => w is "cant" or "cannot" or "couldnt" or "unable" or "wont" or "wouldnt" or "tried" or "trying" or "try" or "failed" or "struggling" or "struggled");
        if (!unable && !before.Any(w => w is "not" or "isnt" or "arent" or "never" or "hasnt" or "wasnt" or "werent" or "havent" or "hadnt" or "didnt" or "doesnt" or "aint") && !before.Contains("dont"))
            return -1;
        var thing = pending.Count > 0 ? pending[^1].Thing : clause.OfType<ThingPhrase>().FirstOrDefault(t => t.From >= phrase.From || t.From >= clause[0].From)?.Thing ?? topic ?? LastThing();
        if (thing is null)
        {
            Untold(Range(clause[0].From, end));
            return clause.Count;
        }

        NotDone(thing, phrase.Act, unable, Range(clause[0].From, end).Concat(pending.SelectMany(p => Range(p.From, p.To))).Where(k => !tokens[k].IsBreak), Said(clause[0].From, end));
        (topic, seen, seenAt) = (thing, thing, clause[0].From);
        pending.Clear();
        return clause.Count;
    }

    /// <summary>What was tried in vain is stuck, what was not taken off stays on; of anything else that was not done nothing is recorded.</summary>
    private void NotDone(Thing thing, Act? act, bool unable, IEnumerable<int> from, string words)
    {
        if (unable && act is Act.Off or Act.Undo or Act.Part)
            About(thing, from, t => new Seen(t, "stuck", words));
        else if (act == Act.Off && thing.Sort is ThingSort.Part or ThingSort.Line)
            About(thing, from, t => new LeftOn(t, ""));
        else if (act is Act.On or Act.Put)
            Untold(from);
        else
            Ask(DoubtSort.NotUnderstood, $"Kept as said: “{words}”", from);
    }

    /// <summary>"number one", "on the left side", "two and three" right behind a deed.</summary>
    private (Thing Thing, int To)? Chosen(Thing row, int from, int end)
    {
        int at = from;
        while (Word(at) is "on" or "from" or "off" or "of" or "for" or "at" or "the")
            at++;
        var whole = row with { Others = [] };
        if (Word(at) is "left" or "right" && (at > from || Word(at + 1) is "side" or "bank" or "hand") && Select(whole, null, Word(at)) is { Ids.Count: > 0 } side && side.Ids.Count < index.Parts(row.Kind).Count)
        {
            int to = at + 1;
            while (to < end && Word(to) is "side" or "bank" or "hand" or "one" or "ones" or "end")
                to++;
            return to >= end || tokens[to].IsBreak ? (side, to) : null;
        }

        bool named = Word(at) is "number" or "numbers" or "cylinder" or "cylinders";
        if (!named && at == from)
            return null;
        int first = named ? at + 1 : at;
        int last = first;
        while (last < end && (NumberWords.At(tokens, last) is { IsCount: true } || (last > first && Word(last) is "and" && NumberWords.At(tokens, last + 1) is { IsCount: true })))
            last = Word(last) == "and" ? last + 1 : NumberWords.At(tokens, last)!.Value.To;
        var numbers = Picked(first, last);
        if (numbers.Count == 0 || (last < end && !tokens[last].IsBreak && Word(last) is not ("and" or "in" or "on" or "with")))
            return null;
        var found = numbers.Count == 1 ? Select(whole, numbers[0], "") : SelectAll(whole, numbers);
        return found is { Ids.Count: > 0 } && found.Ids.Count < index.Parts(row.Kind).Count ? (found with { Sort = row.Sort, Fastener = row.Fastener }, last) : null;
    }

    /// <summary>Numbers and nothing else between a name and a deed.</summary>
    private List<int> Picked(int from, int to)
    {
        var list = new List<int>();
        for (int k = from; k < to;)
        {
            if (NumberWords.At(tokens, k) is { IsCount: true } n && n.To <= to)
            {
                list.Add(n.Int);
                k = n.To;
            }
            else if (Word(k) is "to" or "through" && list.Count > 0 && NumberWords.At(tokens, k + 1) is { IsCount: true, Value: <= 28 } last && last.To <= to && last.Int > list[^1])
            {
                list.AddRange(Range(list[^1] + 1, last.Int + 1));
                k = last.To;
            }
            else if (Word(k) is "and" or "number" or "numbers" or "only" or "just" or "all" || tokens[k].Sort == TokenSort.Comma)
                k++;
            else
                return [];
        }

        return list;
    }

    private void StartTight(Thing thing, IEnumerable<int> from)
    {
        draft ??= new Draft(thing);
        draft.Fitting = true;
        draft.Tokens.AddRange(from);
    }

    /// <summary>What was done last, for "alternator plug off and the battery cable".</summary>
    private (Act Act, int From)? lastDeed;

    private void Apply(Act act, Thing thing, IEnumerable<int> from)
    {
        var all = from.ToList();
        if (act is Act.Off or Act.Part or Act.Cap or Act.On or Act.Buy && all.Count > 0)
            lastDeed = (act, all[0]);
        switch (act)
        {
            case Act.Part or Act.Off or Act.Undo or Act.Cap when thing.Sort == ThingSort.Line && thing.Ids.Select(i => i.Split('.')[0]).Distinct().Count() > 1 && (all.Any(k => Word(k) is "both" || Word(k - 1) is "both" || Word(k + 1) is "both") || thing.Ids.All(i => facts.Any(f => f is Parted { Line.Ids: [var parted] } && parted == i))):
                // "both oil cooler lines": there and back are two.
                foreach (var line in thing.Ids.GroupBy(i => i.Split('.')[0]))
                    Apply(act, thing with { Ids = [.. line], Name = index.Engine.Lines[line.First()].Name }, all);
                topic = thing;
                return;
            case Act.Part when thing is { Sort: ThingSort.Part, Ids.Count: > 0, Others.Count: 0 } && Wires(thing) is { } wires:
                thing = wires;
                offNow.Add(thing.Code);
                About(thing, all, t => new Parted(t));
                break;
            case Act.Off or Act.Undo when thing.Sort == ThingSort.Line:
            case Act.Part:
                offNow.Add(thing.Code);
                About(thing, all, t => new Parted(t));
                break;
            case Act.Off or Act.Undo when thing.Sort == ThingSort.Fasteners:
                if (draft is null || draft.Of.Code != thing.Code)
                {
                    Flush();
                    draft = new Draft(thing);
                }

                draft.Undone = true;
                draft.Tokens.AddRange(all);
                break;
            case Act.Undo:
                draft ??= new Draft(thing with { Sort = thing.Sort == ThingSort.Part ? ThingSort.Fasteners : thing.Sort });
                draft.Undone = true;
                draft.Tokens.AddRange(all);
                break;
            case Act.Off when thing.Kind != "ring-comp" && thing.Ids.Select(i => i.Split('.')[0]).Distinct().Count() > 1:
                // Parts of two kinds named by one word come off as two.
                foreach (var kind in thing.Ids.GroupBy(i => i.Split('.')[0]))
                    Apply(act, thing with { Kind = kind.Key, Ids = [.. kind], Name = kind.Count() == 1 ? index.Engine.Parts[kind.First()].Name : index.NameOf(kind.Key) + "s" }, all);
                return;
            case Act.Off:
                offNow.Add(thing.Code);
                About(thing, all, t => new Off(t, []));
                break;
            case Act.On when thing.Sort == ThingSort.Fasteners:
                draft ??= new Draft(thing);
                draft.Fitting = true;
                draft.Tokens.AddRange(all);
                break;
            case Act.On:
                thing = CapOf(thing);
                About(thing, all, t => new On(t));
                // "heads on with new head gaskets, eight nuts": a gasket is held by what it seals.
                var over = thing.Kind.EndsWith("-gasket", StringComparison.Ordinal) ? facts.OfType<On>().Select(o => o.Thing).LastOrDefault(t => t.Kind == thing.Kind[..^7]) : null;
                draft = new Draft(over ?? thing) { Fitting = true };
                break;
            case Act.Tighten when MoreWords.BoltsOf.TryGetValue(thing.Kind, out string? holds) && index.Parts(holds).Count > 0 && thing.Ids.Count != 1:
                StartTight(new Thing(ThingSort.Part, holds, [.. index.Parts(holds).Select(p => p.Id)], index.NameOf(holds) + "s"), all);
                break;
            case Act.Tighten:
                StartTight(thing, all);
                break;
            case Act.Cap:
                About(thing, all, t => new Capped(t, ""));
                break;
            case Act.Find:
                // "found that pushrod": the one that was told as missing.
                if (context.Short.LastOrDefault(m => m.Thing.Kind == thing.Kind && m.Thing.Kind.Length > 0 && (thing.Ids.Count == 0 || thing.Others.Count > 0 || thing.Ids.Count > 1)) is { } lost)
                {
                    thing = lost.Thing;
                    Add(new Found(lost.Thing, lost.Lots, ""), all);
                    break;
                }

                About(thing, all, t => new Found(t, [], ""));
                break;
            case Act.Miss:
                About(thing, all, t => new Missing(t, []));
                break;
            case Act.Buy:
                About(thing, all, t => new ToBuy(t, []));
                break;
        }

        topic = thing;
    }

    /// <summary>Who unplugs an injector parts its wire.</summary>
    private Thing? Wires(Thing thing)
    {
        var wires = thing.Ids.SelectMany(index.Engine.LinesOf).Distinct().Select(l => index.Engine.Lines[l]).Where(l => l.Circuit == Gudgeon.Engine.Circuit.Electrical && !l.IsPassage).ToList();
        return wires.Count == 0 || thing.Kind is "loom" or "block" or "starter" ? null : new Thing(ThingSort.Line, wires[0].Kind, [.. wires.Select(w => w.Id)], wires.Count == 1 ? wires[0].Name : $"plugs of the {thing.Name}");
    }

    /// <summary>A rod goes on with its cap: the cap is what is bolted.</summary>
    private Thing CapOf(Thing thing)
    {
        if (thing.Kind != "rod" || index.Parts("rod-cap").Count == 0 || thing.Ids.Count == 0)
            return thing;
        var caps = index.Parts("rod-cap").Where(c => thing.Ids.Any(r => r[(r.IndexOf('.', StringComparison.Ordinal) + 1)..] == c.Id[(c.Id.IndexOf('.', StringComparison.Ordinal) + 1)..])).ToList();
        return caps.Count == thing.Ids.Count ? thing with { Kind = "rod-cap", Ids = [.. caps.Select(c => c.Id)], Name = caps.Count == 1 ? caps[0].Name : "rod caps" } : thing;
    }

    private void ApplyLots(Act act, LotPhrase phrase, IEnumerable<int> from)
    {
        var of = draft?.Of ?? topic ?? (LastJoint() is { } joint ? joint : null) ?? new Thing(ThingSort.Unknown, "", [], "not said which joint");
        if (act == Act.Find)
        {
            of = draft?.Of ?? topic ?? new Thing(ThingSort.Unknown, "", [], "not said which joint");
            foundAt = facts.Count;
        }

        bool several = Range(phrase.From, phrase.To).Any(k => tokens[k].Plural || Word(k) == "s");
        IReadOnlyList<Lot> lots = [phrase.Lot.Count is null && !phrase.Lot.Uncounted && !several ? phrase.Lot with { Count = 1 } : phrase.Lot];
        About(of, from, t => act switch
        {
            Act.Find => new Found(t, lots, ""),
            Act.Miss => new Missing(t, lots),
            _ => new ToBuy(t, lots),
        });
        if (of.Sort == ThingSort.Unknown && act == Act.Find)
            Ask(DoubtSort.NotTold, $"Which joint was short of {Fact.LotsText(lots)}?", from);
    }

    private int foundAt = -1;

    private void Mark(ActPhrase phrase, List<Phrase> clause, int end)
    {
        int start = clause[0].From;
        // "arrow facing the exhaust": where it points is not what is marked.
        var named = clause.OfType<ThingPhrase>().FirstOrDefault(t => t.From < phrase.From || (t.From <= phrase.To + 2 && Word(t.To) is not ("side" or "end" or "face") && !Range(phrase.From, t.From).Any(k => Word(k) is "facing" or "towards" or "toward" or "pointing")));
        if (pending is [.., { Thing.Sort: ThingSort.Unknown }] && topic is { Sort: ThingSort.Part })
            pending.Clear();
        var thing = pending.Count > 0 ? pending[^1].Thing : named?.Thing ?? draft?.Of ?? topic ?? LastThing();
        if (thing is null)
        {
            Ask(DoubtSort.NotTold, "What is marked?", Range(start, end));
            return;
        }

        var all = Range(start, end).Concat(pending.SelectMany(p => Range(p.From, p.To)));
        string words = Said(start, end);
        var whole = pending.Select(p => p.Thing).DefaultIfEmpty(thing).ToList();
        pending.Clear();
        foreach (var one in whole)
            About(one.Sort == ThingSort.Fasteners && draft is null ? one : one, all, t => new Marked(t, words));
        topic = whole[^1];
    }

    /// <summary>Something came off that no list knows: it is added under the words it was given.</summary>
    private void OffUnknown(int from, int to, int start, int end)
    {
        int a = start;
        var taken = Nameless(a, from) ?? Nameless(to, end);
        if (taken is null || Range(a, from).Any(k => used[k]))
        {
            forward = null;
            return;
        }

        bool before = Nameless(a, from) is not null;
        // A name is a few nouns: verbs, numbers and the like mean that something else was told.
        if (topic is not null && !before || taken.Name.Split(' ') is var said && (said.Length > 4 || said.Any(w => w.EndsWith("ed", StringComparison.Ordinal) || w is "one" or "two" or "three" or "four" or "five" or "six" or "seven" or "eight" or "nine" or "ten" or "eleven" or "twelve" or "something" or "someone" or "anything" or "everything" or "day" or "light" or "time" or "um" or "backed" or "wrench" or "hat" or "radio" or "photo")))
        {
            forward = null;
            Ask(DoubtSort.NotUnderstood, $"Kept as said: “{Said(start, end)}”", Range(start, end).Where(k => !tokens[k].IsBreak));
            return;
        }

        if (taken.Name.Split(' ').All(w => Lexicon.Fillers.Contains(w) || w is "again" or "later" or "everything" or "all" or "lot"))
            return;
        Apply(Act.Off, taken, before ? Range(a, to) : Range(from, end));
        (seen, seenAt) = (taken, a);
    }

    /// <summary>Sizes of parts told in passing; recorded with the part at the end.</summary>
    private readonly List<(Thing Thing, int From, int To)> notes = [];
}
