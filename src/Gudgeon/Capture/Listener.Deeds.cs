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
        switch (phrase.Act)
        {
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
                CapWith(clause, i, end);
            return i;
        }

        if (seen is { Sort: ThingSort.Part, Detail.Length: > 0 } piece && phrase.Act is Act.Off or Act.Miss or Act.Find or Act.Buy && seenAt >= clause[0].From)
        {
            Apply(phrase.Act, piece, all.Append(seenAt));
            seen = null;
            return i;
        }

        bool object1 = next is ThingPhrase or DetailPhrase || (next is LotPhrase && phrase.Act is Act.Find or Act.Miss or Act.Buy or Act.Undo or Act.Off);
        if (draft is not null && fasteners && phrase.Act is Act.Off or Act.Undo && !(next is ThingPhrase && Word(next.From - 1) is not ("of" or "from" or "the") && draft.Lots.Count == 0))
        {
            draft.Undone = true;
            draft.Tokens.AddRange(all);
            if (draft.FromPart && phrase.Act == Act.Off && phrase.Word is "off" or "out" && draft.Of.Sort == ThingSort.Part && !(phrase.Word == "out"))
                Apply(Act.Off, draft.Of, all.Concat(draft.Tokens));
            return i;
        }

        if (draft is not null && phrase.Act is Act.On or Act.Tighten)
        {
            draft.Fitting = true;
            draft.Tokens.AddRange(all);
            return i;
        }

        if (phrase.Act is Act.Miss && draft is { Lots.Count: > 0 } && draft.Lots[^1].Lot.Count is not null && draft.Lots.Count > 1)
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
            if (phrase.Act == Act.Cap)
                CapWith(clause, i, end);
            return i;
        }

        if (phrase.Act is Act.Off or Act.On && (topic ?? LastThing()) is { } it && clause.Take(i).Any(p => p is WordPhrase { Word: "it" or "they" or "them" or "that" }))
        {
            Apply(phrase.Act, it, all);
            return i;
        }

        forward = (phrase.Act, phrase.From, phrase.To);
        return i;
    }

    private void StartTight(Thing thing, IEnumerable<int> from)
    {
        draft ??= new Draft(thing);
        draft.Fitting = true;
        draft.Tokens.AddRange(from);
    }

    private void Apply(Act act, Thing thing, IEnumerable<int> from)
    {
        var all = from.ToList();
        switch (act)
        {
            case Act.Off when thing.Sort == ThingSort.Line:
            case Act.Part:
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
                draft = new Draft(thing) { Fitting = true };
                break;
            case Act.Tighten:
                StartTight(thing, all);
                break;
            case Act.Cap:
                About(thing, all, t => new Capped(t, ""));
                break;
            case Act.Find:
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

    private AmountPhrase? Amounted(List<Phrase> clause, int i) =>
        clause.Take(i).OfType<AmountPhrase>().LastOrDefault(a => a.Amount.Unit is "l" or "ml" or "pint" or "quart" or "gallon" or "cc");

    private int DrainOut(AmountPhrase amount, ActPhrase phrase, List<Phrase> clause, int i, int end)
    {
        var from = clause.Skip(i).OfType<ThingPhrase>().FirstOrDefault();
        int fluidAt = Enumerable.Range(clause[0].From, end - clause[0].From).FirstOrDefault(k => Fluids.Contains(Word(k)), -1);
        string fluid = fluidAt >= 0 ? Word(fluidAt) : from?.Thing.Kind is "sump" or "oil-filter" or "oil-tank" or "oil-cooler" ? "oil" : "fluid";
        int to = from?.To ?? phrase.To + 1;
        Add(new Drained(fluid, amount.Amount, from is null ? null : from.Thing with { Others = [] }), Range(amount.From, Math.Max(to, fluidAt + 1)));
        if (from is not null)
            (topic, seen) = (from.Thing, from.Thing);
        else
            topic ??= null;
        return from is null ? i : clause.IndexOf(from);
    }

    private void Drain(ActPhrase phrase, List<Phrase> clause, int end)
    {
        int start = clause[0].From;
        var fluids = Range(start, end).Where(k => Fluids.Contains(Word(k))).ToList();
        var amount = clause.OfType<AmountPhrase>().FirstOrDefault(a => a.Amount.Unit is "l" or "ml" or "pint" or "quart" or "gallon" or "cc");
        var from = clause.OfType<ThingPhrase>().FirstOrDefault();
        pending.RemoveAll(p => p.From >= start);
        if (fluids.Count == 0)
        {
            string fluid = from?.Thing.Kind switch { "sump" or "oil-tank" or "oil-cooler" or "oil-filter" => "oil", "block" or "water-pump" or "jacket-drain" => "coolant", "carb" or "fuel-rail" => "fuel", _ => "" };
            if (fluid.Length == 0)
                fluid = topic?.Kind is "sump" ? "oil" : "fluid";
            Add(new Drained(fluid, amount?.Amount, from is null ? null : from.Thing with { Others = [] }), Range(start, end));
            return;
        }

        foreach (int at in fluids)
            Add(new Drained(Word(at) is "water" or "antifreeze" ? "coolant" : Word(at), fluids.Count == 1 ? amount?.Amount : null, from is null ? null : from.Thing with { Others = [] }), Range(start, end));
        topic = from?.Thing ?? topic;
    }

    private void CapWith(List<Phrase> clause, int i, int end)
    {
        int with = Enumerable.Range(clause[i].To, Math.Max(0, end - clause[i].To)).FirstOrDefault(k => Word(k) is "with", -1);
        if (with < 0 || facts.Count == 0)
            return;
        int stop = with + 1;
        while (stop < end && !tokens[stop].IsBreak && Word(stop) is not ("and" or "so"))
            stop++;
        if (facts[^1] is Capped capped)
            facts[^1] = capped with { With = Said(with + 1, stop), Spans = [.. capped.Spans, .. Spans(Range(with, stop))] };
        phrases.RemoveAll(p => p is ThingPhrase && p.From > with && p.To <= stop);
    }

    private void Mark(ActPhrase phrase, List<Phrase> clause, int end)
    {
        int start = clause[0].From;
        var named = clause.OfType<ThingPhrase>().FirstOrDefault(t => t.From < phrase.From || (t.From <= phrase.To + 2 && Word(t.To) is not ("side" or "end" or "face")));
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
        if (taken.Name.Split(' ').All(w => Lexicon.Fillers.Contains(w) || w is "again" or "later" or "everything" or "all" or "lot"))
            return;
        Apply(Act.Off, taken, before ? Range(a, to) : Range(from, end));
        (seen, seenAt) = (taken, a);
    }

    private void Number(NumPhrase phrase, List<Phrase> clause, int i)
    {
        var num = phrase.Num;
        if (Word(num.From - 1) is "all" && topic is { Ids.Count: > 1 } whole && num.IsCount && whole.Ids.Count == num.Int && facts.Count > 0)
        {
            facts[^1] = facts[^1] with { Spans = [.. facts[^1].Spans, .. Spans(Range(num.From - 1, num.To))] };
            return;
        }

        if (num.IsCount && Word(num.To) is "on" or "at" && Word(num.To + 1) == "the" && Word(num.To + 2) == "nut" && draft is { Lots: [.., { Lot.Size: { Inch: true, Diameter: not null } } stud] })
        {
            draft.Lots.Add(new LotPhrase(num.From, num.To + 4, new Lot { Fastener = "nut end", Size = new ThreadSize { Inch = true, Diameter = stud.Lot.Size.Diameter, ThreadsPerInch = num.Int } }, ""));
            draft.Tokens.AddRange(Range(num.From, num.To + 4));
            phrases.RemoveAll(p => p.From >= num.To && p.To <= num.To + 4);
            clause.RemoveAll(p => p.From >= num.To && p.To <= num.To + 4);
            return;
        }

        if (num.IsCount && Word(num.From - 1) is "cylinder" or "number" or "bore" && clause.All(p => p is WordPhrase or NumPhrase) && facts.LastOrDefault() is Damaged or Seen && About(facts[^1]) is { Ids.Count: > 1 } many && Select(many with { Sort = ThingSort.Part }, num.Int, "") is { Ids.Count: > 0 } one1)
        {
            facts[^1] = With(facts[^1], one1) with { Spans = [.. facts[^1].Spans, .. Spans(Range(num.From - 1, num.To))] };
            (topic, seen, resolver.Cylinder) = (one1, one1, num.Int);
            return;
        }

        var fault = FaultNext(clause, i);
        bool of = Word(num.To) is "of" && Word(num.To + 1) is "them" or "em";
        if (num.Sort == NumSort.Whole && fault is not null)
        {
            bool picks = Word(num.To) is "'s" || Word(num.From - 1) is "number" or "cylinder" or "on";
            if (fasteners && draft is not null && !picks)
            {
                (seen, seenCount, seenAt) = (draft.Of with { Sort = ThingSort.Fasteners, Fastener = "bolt" }, num.Int, num.From);
                return;
            }

            if ((pending.Count > 0 ? pending[^1].Thing : topic) is { Kind.Length: > 0 } kind && Select(kind with { Sort = ThingSort.Part }, num.Int, "") is { Ids.Count: > 0 } one && one.Ids.Count < index.Parts(kind.Kind).Count)
            {
                (seen, seenCount, seenAt, fasteners) = (one, null, num.From, false);
                return;
            }

            if (draft is not null)
                (seen, seenCount, seenAt) = (draft.Of with { Sort = ThingSort.Fasteners, Fastener = "bolt" }, num.Int, num.From);
            return;
        }

        var subject = pending.Count > 0 ? pending[^1].Thing : null;
        bool counts = num.IsCount || num.Sort == NumSort.Vague;
        if (counts && (draft is { Lots.Count: 0 } || (draft is { Lots.Count: > 0 } && draft.Lots[^1].Lot.Count is null) || (subject is not null && subject.Sort == ThingSort.Part && HoldsFasteners(subject))) && !(Word(num.From - 1) is "number" or "cylinder"))
        {
            var lot = new LotPhrase(num.From, of ? num.To + 2 : num.To, new Lot { Count = num.IsCount ? num.Int : null, Uncounted = !num.IsCount, Fastener = draft?.Of.Fastener ?? "" }, "");
            if (draft is { Lots.Count: > 0 } && draft.Lots[^1].Lot.Count is null && num.IsCount && clause[0].From <= num.From && subject is null)
            {
                draft.Lots[^1] = draft.Lots[^1] with { Lot = draft.Lots[^1].Lot with { Count = num.Int, Uncounted = false } };
                draft.Tokens.AddRange(Range(num.From, num.To));
            }
            else
                Fasten(lot, clause, i, num.To);
        }
    }

    private bool HoldsFasteners(Thing thing) =>
        thing.Ids.Count > 0 && index.Engine.JointsOf(thing.Ids[0]).Any(j => index.Engine.Joints[j].IsCounted) && thing.Ids.Count == 1;

    private void Tell(AmountPhrase phrase, List<Phrase> clause, int i)
    {
        string unit = phrase.Amount.Unit;
        if ((draft is { Fitting: true } || clause.OfType<ActPhrase>().Any(a => a.Act == Act.Tighten) || draft is not null && unit is "N m" or "lbf ft" or "lbf in") && unit is "N m" or "lbf ft" or "lbf in" or "deg")
        {
            var of = draft?.Of ?? (pending.Count > 0 ? pending[^1].Thing : topic ?? LastThing());
            if (of is null)
                return;
            if (draft is null)
            {
                draft = new Draft(CapOf(of));
                foreach (var p in pending)
                    draft.Tokens.AddRange(Range(p.From, p.To));
                pending.Clear();
            }

            draft.Fitting = true;
            draft.Stages.Add($"{ThreadSize.Plain(phrase.Amount.Value)} {unit}");
            draft.Tokens.AddRange(Range(phrase.From, phrase.To));
            return;
        }

        // "two fingers below the rings", "about six mil": more of the fault just told.
        if (pending.Count == 0 && draft is null && facts.LastOrDefault() is Damaged or Seen && unit is "finger" or "mm" or "mil" or "in" or "cm" or "thou" or "tenth" or "hundredth")
        {
            int stop = phrase.To;
            while (stop < tokens.Count && !tokens[stop].IsBreak && Word(stop) is not "and")
                stop++;
            var spans = Spans(Range(phrase.From, stop));
            string more = Said(phrase.From, stop);
            facts[^1] = facts[^1] switch
            {
                Damaged d => d with { Words = $"{d.Words}, {more}", Spans = [.. d.Spans, .. spans] },
                Seen s => s with { Words = $"{s.Words}, {more}", Spans = [.. s.Spans, .. spans] },
                var other => other,
            };
            clause.RemoveAll(p => p.From >= phrase.To && p.To <= stop);
            if (unit == "mil" && context.MilIsMillimetre is null)
            {
                var of = About(facts[^1]);
                Ask(DoubtSort.Figure, $"{more}: {ThreadSize.Plain(phrase.Amount.Value)} mm or {ThreadSize.Plain(phrase.Amount.Value / 1000)} in?", Range(phrase.From, stop), [.. new[] { new Amount(phrase.Amount.Value, "mm", more), new Amount(phrase.Amount.Value / 1000, "in", more) }.Select(a => new Measured("size of the damage", of, [a], "", more)).Select(m => new Reading(m.Echo, [m]))]);
            }

            return;
        }

        // A size told of a hose or part: kept with it, as said.
        var about = pending.Count > 0 ? pending[^1].Thing : draft?.Of ?? topic;
        if (about is not null && unit is "mm" or "mil" or "in" or "cm" or "thou" or "kg" or "g")
        {
            int end = phrase.To;
            while (Word(end) is "bore" or "long" or "wide" or "thick" or "deep" or "diameter" or "across" or "high" or "inside" or "outside")
                end++;
            notes.Add((about, phrase.From, end));
        }
    }

    /// <summary>Sizes of parts told in passing; recorded with the part at the end.</summary>
    private readonly List<(Thing Thing, int From, int To)> notes = [];

    private void Locate(WherePhrase phrase, List<Phrase> clause, int i, int end)
    {
        if (draft is { Lots.Count: > 0 } && pending.Count == 0)
        {
            var last = draft.Lots[^1];
            draft.Lots[^1] = last with { Lot = last.Lot with { Where = last.Lot.Where.Length > 0 ? $"{last.Lot.Where} {phrase.Where}" : phrase.Where } };
            draft.Tokens.AddRange(Range(phrase.From, phrase.To));
        }
        else if (foundAt >= 0 && foundAt < facts.Count && facts[foundAt] is Found found)
        {
            facts[foundAt] = found with { Where = phrase.Where, Spans = [.. found.Spans, .. Spans(Range(phrase.From, phrase.To))] };
        }
    }

    private Thing? Partner(Thing first, string word)
    {
        var selectors = new Selectors();
        if (word is "left" or "right")
            selectors.Side = word;
        else
            selectors.Where.Add(word);
        if (first.Ids is [var id] && index.Engine.Parts.TryGetValue(id, out var part) && part.Cylinder is { } cylinder)
            selectors.Numbers.Add(cylinder);
        var found = resolver.Resolve([new PartWord(first.Kind, false, null, 0)], selectors, false, first.Name);
        return found is { Ids.Count: > 0, Others.Count: 0 } && !found.Ids.SequenceEqual(first.Ids) ? found : null;
    }

    private int Plain(WordPhrase word, List<Phrase> clause, int i, Phrase? next, int end)
    {
        bool stops = i + 1 >= clause.Count || clause[i + 1] is BreakPhrase or AmountPhrase or LotPhrase || clause[i + 1] is WordPhrase { Word: "and" or "again" or "with" or "now" };
        if (word.Word is "on" or "in" && stops && pending.Count > 0 && (word.Word == "on" || Word(word.From - 1) is "'s" or "is" or "are" or "went" or "back" || pending[^1].Thing.Kind is "piston" or "crank" or "cam" or "plug"))
        {
            foreach (var (thing, from, to) in pending.ToList())
                Apply(Act.On, thing, Range(from, to).Append(word.From));
            topic = CapOf(pending[^1].Thing);
            seen = topic;
            pending.Clear();
            return i;
        }

        if (word.Word is "goes" or "belongs" or "went" or "go" or "lives" && (draft is { Lots.Count: > 0 } || (seen?.Sort == ThingSort.Fasteners)) && clause.Skip(i).Any(p => p is WherePhrase))
        {
            int from = clause[0].From;
            var of = draft?.Of ?? seen!;
            string words = Said(from, end);
            if (draft is { Lots.Count: > 0 } && draft.Lots[^1].Lot.Count is null or 1 && draft.Lots[^1].From >= from && draft.Lots.Count > 1)
                draft.Lots.RemoveAt(draft.Lots.Count - 1);
            About(of with { Sort = ThingSort.Fasteners, Fastener = of.Fastener.Length > 0 ? of.Fastener : "bolt" }, Range(from, end), t => new Marked(t, words));
            return clause.Count;
        }

        if (word.Word == "both" && draft is { Lots: [.., { Lot.Count: null }] } pair)
        {
            pair.Lots[^1] = pair.Lots[^1] with { Lot = pair.Lots[^1].Lot with { Count = 2 } };
            pair.Tokens.Add(word.From);
            return i;
        }

        // "lower's fine" after the upper one: its partner.
        if (word.Word is "upper" or "lower" or "left" or "right" or "front" or "rear" or "inner" or "outer" or "inlet" or "exhaust" && FaultNext(clause, i) is not null && topic is { Kind.Length: > 0, Sort: ThingSort.Part } first && Partner(first, word.Word) is { } partner)
            (seen, seenAt, seenCount, fasteners) = (partner, word.From, null, false);
        if (word.Word is "oiled" or "lubed" or "greased" or "loctited" or "threadlocked" or "lightly" && draft is { Fitting: true })
        {
            draft.Stages.Add(word.Word);
            draft.Tokens.Add(word.From);
        }

        return i;
    }
}
