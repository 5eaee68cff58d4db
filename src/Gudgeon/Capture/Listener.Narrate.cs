namespace Gudgeon.Capture;

/// <summary>Plain work told in order: parts, what was done to them, fasteners, places, what was seen.</summary>
internal sealed partial class Listener
{
    private static readonly HashSet<string> Where =
        ["to", "in", "into", "on", "onto", "under", "behind", "from", "by", "near", "off", "of", "at", "inside", "against", "between", "round", "around", "above", "below", "over", "through", "past", "beside", "for", "underneath", "next", "opposite", "alongside"];

    private Draft? draft;

    /// <summary>The part that the note is about.</summary>
    private Thing? topic;

    /// <summary>The last noun: what a fault is told of.</summary>
    private Thing? seen;
    private int seenAt;
    private int? seenCount;
    private bool fasteners;

    /// <summary>Parts named and nothing said of them yet.</summary>
    private readonly List<(Thing Thing, int From, int To)> pending = [];
    private (Act Act, int From, int To)? forward;

    private void Narrate(int from, int end)
    {
        var clause = phrases.Where(p => p.From >= from && p.From < end).ToList();
        forward = null;
        clauseFrom = from;
        if (from < skipTo)
            return;

        if (buying && clause.Count > 0 && clause.All(p => p is WordPhrase { Filler: true } or ThingPhrase or DetailPhrase or NumPhrase or LotPhrase or BreakPhrase or AmountPhrase || p is WordPhrase { Word: "set" or "kit" }) && clause.Any(p => p is ThingPhrase or DetailPhrase))
            forward = (Act.Buy, from, from);

        if (Poured(clause, from, end))
            return;
        for (int i = 0; i < clause.Count; i++)
        {
            var next = clause.Skip(i + 1).FirstOrDefault(p => p is not WordPhrase { Filler: true });
            switch (clause[i])
            {
                case MeasurePhrase measure:
                    Measure(measure);
                    break;
                case ThingPhrase thing:
                    Name(thing, clause, i);
                    break;
                case LotPhrase lot:
                    Fasten(lot, clause, i, end);
                    break;
                case PlacePhrase place:
                    i = Lay(place, clause, i);
                    break;
                case TagPhrase tag:
                    Tag(tag);
                    break;
                case DetailPhrase detail:
                    Piece(detail, clause, i);
                    break;
                case ActPhrase act:
                    i = Do(act, clause, i, next, end);
                    break;
                case FaultPhrase fault:
                    i = Find(fault, clause, i, end);
                    break;
                case NumPhrase num:
                    Number(num, clause, i);
                    break;
                case AmountPhrase amount:
                    Tell(amount, clause, i);
                    break;
                case WherePhrase where:
                    Locate(where, clause, i, end);
                    break;
                case WordPhrase word:
                    i = Plain(word, clause, i, next, end);
                    break;
            }
        }

        if (forward is { Act: Act.Buy } wanted && facts.LastOrDefault() is not ToBuy && (draft?.Of ?? seen ?? topic ?? LastThing()) is { } lacking && Range(wanted.From, end).All(k => !used[k]))
            Apply(Act.Buy, draft is { } joint && lacking.Sort != ThingSort.Fasteners ? topic ?? lacking : lacking with { Detail = lacking.Sort == ThingSort.Part && lacking.Detail is "gasket" or "seal" or "O-ring" ? lacking.Detail : "" }, Range(wanted.From, end));
        buying = forward is { Act: Act.Buy };
        if (forward is { Act: Act.Off } off && pending.Count == 0)
            OffUnknown(off.From, off.To, from, end);
        forward = null;
    }

    /// <summary>"that's maybe nine quarts of coolant in the bucket": so much of a fluid came out, whatever the verb.</summary>
    private bool Poured(List<Phrase> clause, int from, int end)
    {
        if (clause.OfType<AmountPhrase>().FirstOrDefault(a => a.Amount.Unit is "l" or "ml" or "pint" or "quart" or "gallon" or "cc") is not { } amount || clause.OfType<ActPhrase>().Any(a => a.Act is Act.Drain or Act.Buy or Act.On) || Range(from, end).Any(k => Word(k) is "need" or "fill" or "filled" or "takes" or "holds" or "refilled" or "added" or "new" or "fresh" or "poured"))
            return false;
        int fluid = Range(from, end).FirstOrDefault(k => Fluids.Contains(Word(k)) && Word(k + 1) is not ("pump" or "filter" or "tank" or "cooler" or "line" or "pipe" or "hose" or "seal"), -1);
        // "eleven litres came out" of the hoses just parted.
        if (fluid < 0 && Range(from, end).Any(k => Word(k) is "came" or "ran" or "poured") && Range(from, end).Any(k => Word(k) == "out") && facts.OfType<Parted>().LastOrDefault() is { Line.Ids: [var opened, ..] } && index.Engine.Lines.TryGetValue(opened, out var line) && line.Circuit is Gudgeon.Engine.Circuit.Coolant or Gudgeon.Engine.Circuit.Fuel)
        {
            Flush();
            Add(new Drained(line.Circuit.ToString().ToLowerInvariant(), amount.Amount, null), Range(from, end).Where(k => !tokens[k].IsBreak));
            return true;
        }

        if (fluid < 0 || !(Word(amount.To) == "of" || Range(from, end).Any(k => Word(k) is "out" or "in" or "into" or "came" or "ran")))
            return false;
        Flush();
        var vessel = clause.OfType<ThingPhrase>().FirstOrDefault()?.Thing;
        Add(new Drained(Word(fluid) is "water" or "antifreeze" ? "coolant" : Word(fluid), amount.Amount, vessel is null ? null : vessel with { Others = [] }), Range(from, end).Where(k => !tokens[k].IsBreak));
        topic = vessel ?? (Word(fluid) == "oil" ? Vessel() : null) ?? topic;
        (seen, seenAt) = (topic, from);
        return true;
    }

    private void Measure(MeasurePhrase phrase)
    {
        foreach (var read in phrase.Read.More.Prepend(phrase.Read))
            Measure(read);
    }

    private void Measure(MeasureRead read)
    {
        if (read.Thing is null && read.Readings is [{ What: "loosening torque" } torque] && (pending.Count > 0 ? pending[^1].Thing : draft?.Of ?? topic) is { } held)
        {
            read = read with { Readings = [torque with { Thing = held.Sort == ThingSort.Fasteners ? held with { Sort = ThingSort.Part } : held }] };
            pending.RemoveAll(p => ReferenceEquals(p.Thing, held));
        }

        if (read.Thing is null && read.Readings[0] is { Thing: null, What: "play" or "run-out" or "backlash" or "taper" } && (pending.Count > 0 ? pending[^1].Thing : topic) is { } wobbly)
        {
            read = read with { Readings = [.. read.Readings.Select(r => r with { Thing = wobbly with { Others = [] } })] };
            pending.Clear();
        }

        var all = Range(read.From, read.To).Where(i => !tokens[i].IsBreak);
        if (read.Asks)
            doubts.Add(new Doubt(DoubtSort.Figure, $"{read.Readings[0].What}: {string.Join(" ", read.Readings[0].Values.Select(v => v.Code))}? It is unlike the others.", Words(all), [.. read.Readings.Select(r => new Reading(r.Echo, [r with { Spans = Spans(all) }]))], Spans(all)));
        else if (read.Readings.Count == 1)
            About(read.Readings[0].Thing ?? new Thing(ThingSort.Part, "", [], ""), all, t => read.Readings[0] with { Thing = read.Readings[0].Thing is null ? null : t });
        else
        {
            var spans = Spans(all);
            doubts.Add(new Doubt(DoubtSort.Figure, $"{read.Readings[0].What}: {string.Join(" or ", read.Readings.Select(r => string.Join(" ", r.Values.Select(v => v.Code))))}?", Words(all), [.. read.Readings.Select(r => new Reading(r.Echo, [r with { Spans = spans }]))], spans));
        }

        if (read.Readings[0] is { What: "journal" or "main journal" or "big-end journal", Thing: { Where: "" or "main" or "big end" } } which)
            Ask(DoubtSort.NotTold, $"Which {which.What} was {string.Join(" ", which.Values.Select(v => v.Code))}?", all);
        if (read.Cylinder is { } cylinder)
            resolver.Cylinder = cylinder;
        if (read.Thing is { Kind.Length: > 0 } thing)
            (topic, seen, seenAt) = (thing, thing, read.From);
        fasteners = false;
    }

    private void Name(ThingPhrase phrase, List<Phrase> clause, int i)
    {
        if (!phrase.Plural && clause.ElementAtOrDefault(i + 1) is ThingPhrase head && head.From == phrase.To && Word(head.From) is not ("the" or "my" or "a" or "both" or "all") && phrase.Thing.Sort == ThingSort.Part && phrase.Thing.Kind != head.Thing.Kind && phrase.Thing.Detail.Length == 0 && head.Thing.Sort != ThingSort.Line && (head.Thing.Ids.Count != 1 || (phrase.To == phrase.From + 1 && head.To == head.From + 1) || head.Thing.Kind is "timing-loop" or "aux-belt" or "fan"))
        {
            // "tappet block": two listed words that together name something no list knows.
            clause[i + 1] = new ThingPhrase(phrase.From, head.To, Nameless(phrase.From, head.To) ?? head.Thing, head.Plural, false);
            return;
        }

        // "tensioner pin pulled", "air filter lid's off": a thing of its own, named after its part.
        if (clause.ElementAtOrDefault(i + 1) is WordPhrase { Filler: false } noun && noun.From == phrase.To && Headed(noun, clause, i))
        {
            clause[i + 1] = new ThingPhrase(phrase.From, noun.To, Nameless(phrase.From, noun.To) ?? phrase.Thing, false, false);
            return;
        }

        // "the other three pistons are good": all but those just told.
        if (phrase.Thing is { Sort: ThingSort.Part, Kind.Length: > 0 } && Range(phrase.From - 1, phrase.To).Any(k => Word(k) is "other" or "remaining" or "others") && (topic ?? LastThing()) is { Ids.Count: > 0 } toldOf && toldOf.Kind == phrase.Thing.Kind && phrase.Plural && index.Parts(toldOf.Kind).Select(p => p.Id).Except(toldOf.Ids).ToList() is { Count: > 0 } remaining)
            phrase = phrase with { Thing = new Thing(ThingSort.Part, toldOf.Kind, remaining, $"{index.NameOf(toldOf.Kind)}s, the rest") };
        // "two of the injectors": some of them, and nobody said which.
        if (phrase.Thing is { Sort: ThingSort.Part, Ids.Count: > 1 } && Word(phrase.From - 1) == "of" && CountBefore(phrase.From, clause[0].From) is { } some1 && some1 < phrase.Thing.Ids.Count)
            phrase = phrase with { Thing = phrase.Thing with { Where = $"{some1} of {phrase.Thing.Ids.Count}", Ids = [], Others = [] } };

        // "glow plugs, one two and four came out", "mind that lead, the cap on it's cracked": which of those just named, or what of it.
        if ((phrase.Unnamed || phrase.Thing.Detail.Length > 0) && pending is [.., { Thing: { Sort: ThingSort.Part, Detail: "" } row } kin] && row.Kind == phrase.Thing.Kind && phrase.Thing.Ids.All(row.Ids.Contains))
        {
            _ = Spans(Range(kin.From, kin.To));
            pending.RemoveAt(pending.Count - 1);
        }

        string before = Word(phrase.From - 1);
        if (before == "of" && phrase.Thing.Ids.Count == 0 && phrase.Thing.Where.Contains(" of ", StringComparison.Ordinal))
            before = "";
        bool first = i == 0 || clause.Take(i).All(p => p is WordPhrase { Filler: true } or BreakPhrase);
        if (forward is { Act: Act.Put } laid)
        {
            // "moved the crank": where to comes later.
            _ = Spans(Range(laid.From, laid.To));
            forward = null;
        }

        if (forward is { } verb)
        {
            int? ofThem = Word(phrase.From - 1) == "of" && NumberWords.At(tokens, phrase.From - 2) is { IsCount: true } some && phrase.Thing.Sort == ThingSort.Fasteners ? some.Int : null;
            if ((phrase.Told ?? ofThem) is { } number && verb.Act is Act.Find or Act.Miss or Act.Buy)
                About(phrase.Thing, Range(verb.From, phrase.To), t => verb.Act switch { Act.Find => new Found(t, [Of(number, t)], ""), Act.Miss => new Missing(t, [Of(number, t)]), _ => new ToBuy(t, [Of(number, t)]) });
            else if (verb.Act == Act.Buy && phrase.Number is { } several)
                About(phrase.Thing with { Others = [] }, Range(verb.From, phrase.To), t => new ToBuy(t.Ids.Count > 0 ? t : All(t), [new Lot { Count = several, Fastener = "part" }]));
            else
                Apply(verb.Act, phrase.Thing, Range(verb.From, phrase.To));
            (seen, seenAt, fasteners) = (phrase.Thing, phrase.From, phrase.Thing.Sort == ThingSort.Fasteners);
            if (clause.ElementAtOrDefault(i + 1) is not WordPhrase { Word: "and" } && verb.Act != Act.Buy)
                forward = null;
            return;
        }

        if (before == "with" || (before is "and" && facts.LastOrDefault() is Off { With.Count: > 0 }) && pending.Count == 0)
        {
            if (facts.Count > 0 && facts[^1] is Off off && off.Thing.Code != phrase.Thing.Code && !off.Thing.Ids.SequenceEqual(phrase.Thing.Ids) && phrase.Thing.Sort is ThingSort.Part or ThingSort.Lacking)
            {
                facts[^1] = off with { With = [.. off.With, Companions(off.Thing, phrase.Thing)], Spans = [.. off.Spans, .. Spans(Range(phrase.From - 1, phrase.To))] };
                return;
            }
        }

        // "pistons in with their rods": these went on too.
        if (before is "with" or "and" && facts.LastOrDefault() is On fitted && pending.Count == 0 && phrase.Thing is { Sort: ThingSort.Part, Others.Count: 0, Ids.Count: > 0 } && Range(clause[0].From, phrase.From).Any(k => Word(k) == "with") && lastDeed is { Act: Act.On } on && on.From >= clause[0].From && PartIndex.Owns(phrase.Thing.Kind, fitted.Thing.Kind))
        {
            About(phrase.Thing, Range(phrase.From - 1, phrase.To), t => new On(t));
            return;
        }

        if (before == "with" && clause.Skip(i + 1).FirstOrDefault(p => p is not WordPhrase { Word: "still" or "all" }) is WordPhrase { Word: "on" or "in" } or ActPhrase { Act: Act.Stay } or WordPhrase { Word: "attached" or "connected" or "fitted" or "hanging" or "joined" } && facts.LastOrDefault() is not Off)
        {
            // "tied aside with the hoses on": they stay as they are.
            _ = Spans(Range(phrase.From - 1, phrase.To + 1));
            clause.RemoveAll(p => p.From >= phrase.To && p.From <= phrase.To + 1 && p is WordPhrase { Word: "on" or "in" or "still" or "attached" or "connected" });
            return;
        }

        if (before == "and" && pending.Count == 0 && lastDeed is { } deed && deed.From >= clause[0].From && phrase.Thing.Sort != ThingSort.Fasteners && clause.Skip(i + 1).All(p => p is WordPhrase { Filler: true } or BreakPhrase))
        {
            Apply(deed.Act, phrase.Thing, Range(phrase.From, phrase.To));
            return;
        }

        bool orphan = draft is null && (clause.Take(i).Any(p => p is LotPhrase or DetailPhrase) || fasteners && topic is null);
        if (Where.Contains(before) && !first && before is "of" or "from" or "for" or "off" or "on" or "in" && draft is { Loose: true } loose)
        {
            Adopt(loose, phrase);
            return;
        }

        bool particle = before is "off" or "out" or "on" && clause.Take(i).LastOrDefault() is ActPhrase done && done.To == phrase.From && used[done.From] && clause.ElementAtOrDefault(i + 1) is ActPhrase or FaultPhrase;
        if (Where.Contains(before) && !particle && !(first && before is "on" or "off") && !orphan)
        {
            // A place beside something else: part of what is told, not a thing told of.
            if (facts.LastOrDefault() is Found { Where.Length: 0 } found)
            {
                facts[^1] = found with { Where = Said(phrase.From - 1, phrase.To), Spans = [.. found.Spans, .. Spans(Range(phrase.From - 1, phrase.To))] };
                return;
            }

            if (before is "from" or "on" or "of" or "in" && pending.Count > 0 && phrase.Thing.Ids is [var headId] && index.Engine.Parts.TryGetValue(headId, out var carrier) && carrier.Bank is { } bank && carrier.Kind is "head" or "cam-cover" or "exhaust-manifold" && pending.Any(p => p.Thing.Ids.Count > 1))
            {
                for (int k = 0; k < pending.Count; k++)
                    pending[k] = (OnBank(pending[k].Thing, bank), pending[k].From, k == pending.Count - 1 ? phrase.To : pending[k].To);
                return;
            }

            if (pending.Count > 0 || facts.Count > 0 || draft is not null)
                return;
        }

        // "three bolts and the oil pump's off"
        if (draft is { Loose: true, Place: null, Lots.Count: > 0 } before0 && phrase.Thing is { Sort: ThingSort.Part or ThingSort.Line, Others.Count: 0 } && before is "and" or "the" or "that" && clause.Skip(i + 1).FirstOrDefault(p => p is not WordPhrase { Filler: true }) is ActPhrase { Act: Act.Off })
        {
            Adopt(before0, phrase);
            draft.Undone = true;
        }

        if (draft is not null && draft.Of.Code != phrase.Thing.Code && !ReferenceEquals(seen, phrase.Thing))
            Flush();
        if (phrase.Thing.Sort == ThingSort.Fasteners)
        {
            Unsaid();
            draft = new Draft(phrase.Thing);
            var some = SomeOf(phrase.From, clause[0].From);
            draft.Tokens.AddRange(Counting(phrase.From).Concat(Range(some?.From ?? phrase.From, phrase.To)));
            // "manifold bolts are counted, nine"
            if (Word(Lexicon.Copulas.Contains(Word(phrase.To)) ? phrase.To + 1 : phrase.To) == "counted")
                draft.Tokens.AddRange(Range(phrase.To, phrase.To + 2).Where(k => Word(k) == "counted" || Lexicon.Copulas.Contains(Word(k))));
            if ((some?.Count ?? phrase.Told) is { } told)
                draft.Lots.Add(new LotPhrase(phrase.From, phrase.To, new Lot { Count = told, Fastener = phrase.Thing.Fastener }, ""));
            fasteners = true;
        }
        else
        {
            if (!(before is "and" or "plus" || (phrase.From > 0 && tokens[phrase.From - 1].Sort == TokenSort.Comma && pending.Count > 0 && pending[^1].To >= phrase.From - 1 && ListGoesOn(phrase))))
                Unsaid();
            pending.Add((phrase.Thing, phrase.From, phrase.To));
            (fasteners, toldNumber) = (false, phrase.Number);
        }

        (seen, seenAt, seenCount) = (phrase.Thing, phrase.From, null);
        if (phrase.Thing.Ids is [var one] && index.Engine.Parts.TryGetValue(one, out var part))
        {
            resolver.Cylinder = part.Cylinder ?? resolver.Cylinder;
            resolver.Bank = part.Bank ?? resolver.Bank;
        }
    }

    /// <summary>"pistons one and two are out with their rods": what came along belongs to the ones named.</summary>
    private Thing Companions(Thing named, Thing with)
    {
        var cylinders = named.Ids.Select(i => index.Engine.Parts.TryGetValue(i, out var p) ? p.Cylinder : null).ToHashSet();
        var own = with.Ids.Concat(with.Others.SelectMany(o => o.Ids)).Distinct().Where(i => index.Engine.Parts.TryGetValue(i, out var p) && p.Cylinder is { } c && cylinders.Contains(c)).ToList();
        return own.Count == 0 || own.Count == with.Ids.Count || cylinders.Contains(null) ? with with { Others = [] } : with with { Others = [], Ids = own, Name = own.Count == 1 ? index.Engine.Parts[own[0]].Name : index.NameOf(with.Kind) + "s" };
    }

    private static readonly HashSet<string> NoHead = ["came", "went", "fell", "slid", "swung", "hung", "sat", "sits", "stays", "goes", "moved", "parted", "comes", "wobbles", "needed", "looked", "smelt", "stinks", "tonight", "yesterday", "tomorrow", "together", "altogether", "completely", "first", "both", "number", "bottom", "finished", "eventually", "side", "half", "straight", "plus", "not", "isnt", "arent", "hasnt", "wont", "cant", "managed", "started", "gives", "gave", "see", "thats", "who", "somehow", "everywhere", "anyway", "meantime", "sounds", "spins", "turns", "felt", "seemed", "dropped", "cracked", "took", "tapped", "ones", "way", "lot", "pair", "trio", "loads", "tons", "heads", "head", "front", "rear", "end", "ends", "top", "left", "right", "inner", "outer", "upper", "lower", "complete", "itself", "assembly", "m", "by"];

    /// <summary>A noun that no list knows, right behind a part and before what is said of it.</summary>
    private bool Headed(WordPhrase noun, List<Phrase> clause, int i)
    {
        if (noun.To != noun.From + 1 || noun.Word.Length < 3 || NoHead.Contains(noun.Word) || noun.Word.EndsWith("ly", StringComparison.Ordinal) || noun.Word.EndsWith("ed", StringComparison.Ordinal) || noun.Word.EndsWith("ing", StringComparison.Ordinal) || Lexicon.Fillers.Contains(noun.Word) || noun.Word is "hose" or "hoses" or "pipe" or "pipes")
            return false;
        int next = noun.To;
        if (Word(next) is "'s" or "is" or "are" or "was" or "were" or "has")
            next++;
        return clause.ElementAtOrDefault(next > noun.To ? i + 3 : i + 2) is ActPhrase { Act: Act.Off or Act.Undo or Act.Part or Act.Put } or FaultPhrase { Damage: true };
    }

    /// <summary>Of a kind, all that there are: some of them are to be bought, whichever.</summary>
    private Thing All(Thing thing) =>
        index.Parts(thing.Kind) is { Count: > 0 } all ? new Thing(ThingSort.Part, thing.Kind, [.. all.Select(p => p.Id)], index.NameOf(thing.Kind) + "s") : thing;

    private static Lot Of(int count, Thing thing) => new() { Count = count, Fastener = thing.Fastener };

    private Thing OnBank(Thing thing, int bank)
    {
        var ids = thing.Ids.Where(i => index.Engine.Parts.TryGetValue(i, out var part) && part.Bank == bank).ToList();
        return ids.Count is 0 ? thing : thing with { Ids = ids, Others = [], Name = ids.Count == 1 ? index.Engine.Parts[ids[0]].Name : $"{index.NameOf(thing.Kind)}s {string.Join(", ", ids.Select(i => i[(i.IndexOf('.', StringComparison.Ordinal) + 1)..]))}" };
    }

    /// <summary>"manifold, rail and injectors off": a list that ends in a deed.</summary>
    private bool ListGoesOn(ThingPhrase phrase)
    {
        for (int i = phrase.To; i < tokens.Count && i < phrase.To + 8; i++)
        {
            if (Word(i) == "and")
                return true;
            if (tokens[i].IsEnd)
                return false;
            if (phrases.FirstOrDefault(p => p.From == i) is ActPhrase or PlacePhrase)
                return true;
            if (phrases.FirstOrDefault(p => p.From == i) is LotPhrase or FaultPhrase)
                return false;
        }

        return false;
    }

    private void Adopt(Draft loose, ThingPhrase phrase)
    {
        var thing = phrase.Thing.Sort == ThingSort.Part ? phrase.Thing with { Sort = ThingSort.Fasteners, Fastener = "bolt" } : phrase.Thing;
        draft = new Draft(thing) { Place = loose.Place, Undone = loose.Undone, FromPart = false };
        draft.Lots.AddRange(loose.Lots);
        draft.Tokens.AddRange(loose.Tokens);
        draft.Tokens.AddRange(Range(phrase.From - 1, phrase.To));
        (topic, seen) = (phrase.Thing, phrase.Thing);
    }

    /// <summary>A part named with nothing but small words to the next pause: on the way back together it went on.</summary>
    private bool Bare(int from, int to)
    {
        int start = from;
        while (start > 0 && !tokens[start - 1].IsBreak && Word(start - 1) is not ("then" or "and"))
            start--;
        int end = to;
        while (end < tokens.Count && !tokens[end].IsBreak && Word(end) is not ("then" or "and"))
            end++;
        if (Word(to) is "on" or "in" or "into" or "onto" or "over" or "down" or "home" && In(to, end).All(p => p is WordPhrase or ThingPhrase))
            end = to;
        return Range(start, from).Concat(Range(to, end)).All(k => Word(k) is "new" or "the" or "a" or "then" or "now" or "next" or "on" or "both" or "sides" or "my" or "first" or "in" or "too" or "all" or "fresh" or "clean" or "same" or "back");
    }

    /// <summary>A part that was named and then dropped: asked, not lost.</summary>
    private void Unsaid()
    {
        foreach (var (thing, from, to) in pending.ToList())
        {
            if (Refitting() && thing is { Sort: ThingSort.Part, Ids.Count: > 0, Others.Count: 0, Detail.Length: 0 } && Bare(from, to))
                Add(new On(thing), Range(from, to));
            else if (facts.All(f => About(f)?.Code != thing.Code))
                Ask(DoubtSort.NotUnderstood, $"What of the {thing.Full}?", Range(from, to));
        }

        pending.Clear();
    }

    private int clauseFrom;

    /// <summary>What follows was told already.</summary>
    private int skipTo;

    /// <summary>A shopping list goes on after a pause.</summary>
    private bool buying;

    /// <summary>"the six coils": how many parts were said, for what each of them has.</summary>
    private int? toldNumber;

    private readonly HashSet<string> offNow = [];
}
