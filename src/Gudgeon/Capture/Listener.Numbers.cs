namespace Gudgeon.Capture;

/// <summary>Bare numbers, amounts and where-words: what they count, pick or size.</summary>
internal sealed partial class Listener
{
    private void Number(NumPhrase phrase, List<Phrase> clause, int i)
    {
        var num = phrase.Num;

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

        // "caps at ten" on the way back together.
        if (num.IsCount && Word(num.From - 1) is "at" or "to" && pending.Count > 0 && lastDeed is { Act: Act.On } && num.Value is >= 4 and <= 400 && Units.At(tokens, num.To, num) is null && (num.To >= tokens.Count || tokens[num.To].IsBreak || Word(num.To) is "then" or "and" or "plus"))
        {
            var (thing, from, to) = pending[^1];
            pending.RemoveAt(pending.Count - 1);
            Flush();
            StartTight(CapOf(thing), Range(from, num.To));
            draft!.Stages.Add($"{num.Int} {(inchBook ? "lbf ft" : "N m")}");
            return;
        }

        var fault = FaultNext(clause, i) ?? FaultPast(clause, i) ?? ((Word(num.From - 1) == "number" || num.From == clause[0].From) && Word(num.To) is "'s" or "has" or "had" or "is" ? clause.Skip(i + 1).OfType<FaultPhrase>().FirstOrDefault() : null);
        bool of = Word(num.To) is "of" && Word(num.To + 1) is "them" or "em";

        if (num.Sort == NumSort.Whole && fault is not null)
        {
            bool picks = Word(num.To) is "'s" or "has" or "had" || Word(num.To) == "is" && num.From == clause[0].From && draft is null || Word(num.From - 1) is "number" or "cylinder" or "on";
            if (draft is not null && (fasteners || of && draft is { Lots.Count: > 0, Of.Detail: "" }) && !picks && OfBolts(fault.Fault))
            {
                (seen, seenCount, seenAt) = (draft.Of with { Sort = ThingSort.Fasteners, Fastener = "bolt" }, num.Int, num.From);
                return;
            }

            if (NumbersBefore(fault, num) is { Count: > 1 } several && (pending.Count > 0 ? pending[^1].Thing : topic) is { Kind.Length: > 0 } each && SelectAll(each, several) is { } them)
            {
                (seen, seenCount, seenAt, fasteners) = (them, null, num.From, false);
                return;
            }

            if (seenAt >= num.From - 4 && seenAt < num.From && Word(num.From - 1) is "and" && seen?.Ids.Count > 1)
                return;
            // "number two's scored" after a journal: the next of them.
            if (picks && pending.Count == 0 && (topic ?? LastThing()) is { Kind: "crank", Where: var spot } crank && spot.Split(' ') is [.., var last] && int.TryParse(last, out int _) && spot[..^last.Length] is var row1 && num.Int <= index.Parts(row1 == "main " ? "main-cap" : "rod-cap").Count)
            {
                (seen, seenCount, seenAt, fasteners) = (crank with { Where = $"{row1}{num.Int}" }, null, num.From, false);
                return;
            }

            if ((pending.Count > 0 ? pending[^1].Thing : topic ?? (picks && draft is not { Of.Sort: ThingSort.Fasteners } ? LastThing() : null)) is { Kind.Length: > 0 } kind && Select(kind with { Sort = ThingSort.Part }, num.Int, "") is { Ids.Count: > 0 } one && one.Ids.Count < index.Parts(kind.Kind).Count)
            {
                // Number four of eight tappets may be the fourth in the row or cylinder four's.
                var row = index.Parts(kind.Kind);
                if (one.Ids.Count > 1 && kind.Kind is "follower" or "pushrod" or "rocker" or "finger" or "shim" or "spring" && num.Int <= row.Count)
                    one = one with { Others = [one with { Ids = [row[num.Int - 1].Id], Name = row[num.Int - 1].Name }] };
                (seen, seenCount, seenAt, fasteners) = (one, null, num.From, false);
                return;
            }

            if (draft is not null && OfBolts(fault.Fault))
                (seen, seenCount, seenAt) = (draft.Of with { Sort = ThingSort.Fasteners, Fastener = "bolt" }, num.Int, num.From);
            return;
        }

        if (num.IsCount && Word(num.From - 1) is "under" or "on" or "behind" && Word(num.To) is "of" && draft is { Lots: [.., { Lot: { Count: null, Fastener: "washer" or "nut" } } washers] })
        {
            draft.Lots[^1] = washers with { Lot = washers.Lot with { Count = num.Int } };
            draft.Tokens.AddRange(Range(num.From, num.To + 2));
            return;
        }

        // "twenty five then forty five then sixty five foot pounds": the unit of the last holds for all.
        if (num.IsCount && num.Value is >= 5 and <= 400 && ChainUnit(num.To) is { } chained && (draft?.Of ?? (pending.Count > 0 ? pending[^1].Thing : topic ?? LastThing())) is { } chain)
        {
            if (draft is null)
            {
                StartTight(CapOf(chain), pending.SelectMany(p => Range(p.From, p.To)));
                pending.Clear();
            }

            draft!.Fitting = true;
            draft.Stages.Add($"{num.Int} {chained}");
            draft.Tokens.AddRange(Range(num.From, num.To));
            return;
        }

        if (num.IsCount && draft is { Fitting: true, Stages.Count: > 0 } && Word(num.From - 1) is "plus" or "then" or "and" && num.Value is >= 15 and <= 360)
        {
            // "twenty five newton metres then fifty": fifty is no angle that anybody turns through.
            bool angle = num.Int is 30 or 45 or 60 or 75 or 90 or 105 or 120 or 135 or 150 or 180 or 270;
            string unit = draft.Stages[^1].EndsWith(" N m", StringComparison.Ordinal) ? "N m" : draft.Stages[^1].EndsWith(" lbf ft", StringComparison.Ordinal) ? "lbf ft" : "deg";
            draft.Stages.Add($"{num.Int} {(angle ? "deg" : unit)}");
            draft.Tokens.AddRange(Range(num.From, num.To));
            return;
        }

        if (num.IsCount && draft is { Fitting: true } && (Word(num.From - 1) is "to" or "at" || tokens.ElementAtOrDefault(num.From - 1).Sort == TokenSort.Comma) && num.Value is >= 5 and <= 400 && (Word(num.To) is "then" or "and" or "plus" or "" || num.To >= tokens.Count || tokens[num.To].IsBreak))
        {
            draft.Stages.Add($"{num.Int} {(inchBook ? "lbf ft" : "N m")}");
            draft.Tokens.AddRange(Range(num.From, num.To));
            return;
        }

        if (Word(num.From - 1) is "at" or "stage" or "step" or "to" or "mark" or "position" or "notch" or "line" or "under" or "about" or "between" || Word(num.To) is "turn" or "turns" or "stage" or "stages" or "steps" or "passes" or "times" or "days" or "hours" or "people" or "goes" or "places" or "sides" or "ends" or "marks" or "clicks" or "teeth" || (Word(num.To) == "of" && Word(num.To + 1) == "us"))
            return;
        // "two bolts, three eighths": the size after a pause.
        if (num.Sort == NumSort.Fraction && SizeReader.IsInchThread(num.Value) && draft is { Lots: [.., { Lot: { Count: not null, Size.IsEmpty: true } } bolts] } && clause.All(p => p is NumPhrase or BreakPhrase or WordPhrase { Filler: true }))
        {
            draft.Lots[^1] = bolts with { Lot = bolts.Lot with { Size = new ThreadSize { Inch = true, Diameter = num.Value } } };
            draft.Tokens.AddRange(Range(num.From, num.To));
            return;
        }

        if (draft is null && pending.Count == 0 && topic is { Sort: ThingSort.Part } just && offNow.Contains(just.Code) && HoldsFasteners(just) && num.IsCount && clause.All(p => p is NumPhrase or WordPhrase { Filler: true } or BreakPhrase or PlacePhrase))
        {
            Fasten(new LotPhrase(num.From, num.To, new Lot { Count = num.Int }, ""), clause, i, num.To);
            return;
        }

        if (CountsElse(num) || clause.Skip(i + 1).OfType<LotPhrase>().FirstOrDefault() is { } sized && Sized(clause, clause.IndexOf(sized)) == phrase)
            return;
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

    /// <summary>"two and three stuck": the fault after more numbers.</summary>
    private static FaultPhrase? FaultPast(List<Phrase> clause, int i)
    {
        foreach (var phrase in clause.Skip(i + 1))
        {
            if (phrase is FaultPhrase fault)
                return fault;
            if (phrase is not (WordPhrase { Filler: true } or NumPhrase or BreakPhrase))
                return null;
        }

        return null;
    }

    /// <summary>The torque that ends a row of numbers joined by "then".</summary>
    private string? ChainUnit(int at)
    {
        for (int steps = 0; steps < 5; steps++)
        {
            int next = at;
            while (Word(next) is "then" or "and" or "up" or "to" || (next < tokens.Count && tokens[next].Sort == TokenSort.Comma))
                next++;
            if (next == at || !Range(at, next).Any(k => Word(k) == "then" || tokens[k].Sort == TokenSort.Comma) || NumberWords.At(tokens, next) is not { IsCount: true } n)
                return null;
            if (Units.At(tokens, n.To, n) is { } unit)
                return unit.Unit is "N m" or "lbf ft" or "lbf in" ? unit.Unit : null;
            at = n.To;
        }

        return null;
    }

    private List<int> NumbersBefore(FaultPhrase fault, Num first)
    {
        var list = new List<int>();
        for (int k = first.From; k < fault.From;)
        {
            if (NumberWords.At(tokens, k) is { IsCount: true } n)
            {
                list.Add(n.Int);
                k = n.To;
            }
            else if (Word(k) is "and" or "'s" or "are" or "is" or "were" or "number" || tokens[k].Sort == TokenSort.Comma)
                k++;
            else
                return [];
        }

        return list;
    }

    private Thing? SelectAll(Thing kind, List<int> numbers)
    {
        var selectors = new Selectors { All = true };
        selectors.Numbers.AddRange(numbers);
        var found = resolver.Resolve([new PartWord(kind.Kind, kind.Sort == ThingSort.Line, null, 0)], selectors, true, kind.Name);
        return found.Ids.Count > 0 && found.Ids.Count < index.Parts(kind.Kind).Count ? found with { Others = [] } : null;
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

        // On the way apart a torque tells what it took to undo.
        if (unit is "N m" or "lbf ft" && !Refitting() && context.Off.Count > 0 && draft is null && (pending.Count > 0 ? pending[^1].Thing : null) is { Sort: ThingSort.Fasteners } held && !clause.Any(p => p is ActPhrase))
        {
            About(held with { Sort = ThingSort.Part }, Range(pending[^1].From, phrase.To), t => new Measured("loosening torque", t, [phrase.Amount], "", Said(pending.Count > 0 ? pending[^1].From : phrase.From, phrase.To)));
            pending.Clear();
            return;
        }

        // "cams in, all the caps ten newton metres": what has a torque went on.
        if (pending is [.., { Thing: { Sort: ThingSort.Part, Ids.Count: > 0, Others.Count: 0 } tight } last1] && unit is "N m" or "lbf ft" or "lbf in" && Refitting())
        {
            pending.RemoveAt(pending.Count - 1);
            Apply(Act.On, tight, Range(last1.From, last1.To));
            draft!.Stages.Add($"{ThreadSize.Plain(phrase.Amount.Value)} {unit}");
            draft.Tokens.AddRange(Range(phrase.From, phrase.To));
            return;
        }

        // "two fingers below the rings", "about six mil": more of the fault just told.
        if (unit is "l" or "ml" or "pint" or "quart" or "gallon" or "cc" && facts.LastOrDefault() is Drained { Amount: null } drained)
        {
            facts[^1] = drained with { Amount = phrase.Amount, Spans = [.. drained.Spans, .. Spans(Range(phrase.From, phrase.To))] };
            return;
        }

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
        if (about is not null && unit is "mm" or "mil" or "in" or "cm" or "kg" or "g")
        {
            int end = phrase.To;
            while (Word(end) is "bore" or "long" or "wide" or "thick" or "deep" or "diameter" or "across" or "high" or "inside" or "outside")
                end++;
            notes.Add((about, phrase.From, end));
        }
    }

    private void Locate(WherePhrase phrase, List<Phrase> clause, int i, int end)
    {
        if (clause.Skip(i + 1).OfType<LotPhrase>().FirstOrDefault() is { } told && Sized(clause, clause.IndexOf(told)) is { } those && those.From < phrase.From)
            return;
        if (draft is { Lots.Count: > 0 } && pending.Count == 0)
        {
            var last = draft.Lots[^1];
            if (draft.Lots.Count > 1 && Word(last.From) == "the" && last.Lot is { Count: 1, Size.IsEmpty: true, Note.Length: > 0 })
            {
                // "the long one top right" says where it belongs, not that there is one more.
                draft.Lots.RemoveAt(draft.Lots.Count - 1);
                var joint = draft.Of with { Sort = ThingSort.Fasteners, Fastener = "bolt" };
                About(joint, Range(last.From, phrase.To), t => new Marked(t, Said(last.From, phrase.To)));
                return;
            }

            draft.Lots[^1] = last with { Lot = last.Lot with { Where = last.Lot.Where.Length > 0 ? $"{last.Lot.Where} {phrase.Where}" : phrase.Where } };
            draft.Tokens.AddRange(Range(phrase.From, phrase.To));
        }
        else if (foundAt >= 0 && foundAt < facts.Count && facts[foundAt] is Found found)
        {
            facts[foundAt] = found with { Where = phrase.Where, Spans = [.. found.Spans, .. Spans(Range(phrase.From, phrase.To))] };
        }
    }

    /// <summary>"the lower one" of a pair of hoses.</summary>
    private Thing? OtherHose(Thing hose, string word)
    {
        string kind = (hose.Kind, word) switch
        {
            ("l-rad-out", "lower" or "bottom") => "l-rad-in",
            ("l-rad-in", "upper" or "top") => "l-rad-out",
            _ => "",
        };
        return index.Lines(kind) is [var line] ? new Thing(ThingSort.Line, kind, [line.Id], line.Name) : null;
    }

    private Thing? Partner(Thing first, string word)
    {
        if (word == "other")
            return index.Parts(first.Kind) is { Count: 2 } two && first.Ids is [var told] && two.FirstOrDefault(p => p.Id != told) is { } rest ? new Thing(ThingSort.Part, first.Kind, [rest.Id], rest.Name) : null;
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
        bool stops = i + 1 >= clause.Count || (Word(word.To) == "in" && Word(word.To + 1) is "order" or "sequence" or "pairs") || (Word(word.To) == "by" && Word(word.To + 1) == "hand") || clause[i + 1] is BreakPhrase or AmountPhrase or LotPhrase || clause[i + 1] is WordPhrase { Word: "and" or "again" or "with" or "now" or "finger" or "hand" or "loosely" or "but" };
        if (word.Word is "on" or "in" && (stops || (word.Word == "on" && Word(word.From - 1) is "'s" or "is" or "are" or "went" && Word(word.To) is "over" or "at" or "first" or "dry" or "loosely" or "temporarily" or "just" or "using" or "without" or "hand" or "properly" or "nice" or "already")) && pending.Count > 0 && (word.Word == "on" || Word(word.From - 1) is "'s" or "is" or "are" or "went" or "back" || i + 1 >= clause.Count || pending[^1].Thing.Kind is "piston" or "crank" or "cam" or "plug" or "thrust" or "main-shell" or "rod-shell" or "circlip" or "gudgeon" or "valve-in" or "valve-ex" or "spring" or "collet" or "rod" or "follower" or "pushrod" or "injector" or "glow-plug" or "core-plug" or "ring-comp" or "starter" or "liner"))
        {
            foreach (var (thing, from, to) in pending.ToList())
                Apply(Act.On, thing, Range(from, to).Append(word.From));
            topic = CapOf(pending[^1].Thing);
            seen = topic;
            pending.Clear();
            return i;
        }

        if (word.Word == "both" && draft is { Lots: [.., { Lot.Count: null }] } pair)
        {
            pair.Lots[^1] = pair.Lots[^1] with { Lot = pair.Lots[^1].Lot with { Count = 2 } };
            pair.Tokens.Add(word.From);
            return i;
        }

        // "lower one, six bolts": another of the kind just told.
        if (word.Word is "upper" or "lower" or "left" or "right" or "front" or "rear" or "inner" or "outer" or "top" or "bottom" && Word(word.To) is "one" or "ones" && topic is { Sort: ThingSort.Line } hose && OtherHose(hose, word.Word) is { } otherHose)
        {
            Flush();
            Unsaid();
            pending.Add((otherHose, word.From, word.To + 1));
            (seen, seenAt, fasteners) = (otherHose, word.From, false);
            clause.RemoveAll(p => p.From == word.To && p is WordPhrase or NumPhrase or LotPhrase);
            return i;
        }

        if (word.Word is "upper" or "lower" or "left" or "right" or "front" or "rear" or "inner" or "outer" or "top" or "bottom" && Word(word.To) is "one" or "ones" && (topic ?? LastThing()) is { Kind.Length: > 0 } alike && phrases.All(p => p.From > word.To || p.To <= word.To || p is WordPhrase))
        {
            Flush();
            var another = Partner(alike, word.Word) ?? alike with { Ids = [], Where = word.Word, Name = index.NameOf(alike.Kind), Sort = ThingSort.Part, Detail = "" };
            Unsaid();
            pending.Add((another, word.From, word.To + 1));
            (seen, seenAt, fasteners) = (another, word.From, false);
            return i;
        }

        // "lower's fine" after the upper one: its partner.
        if (word.Word is "upper" or "lower" or "left" or "right" or "front" or "rear" or "inner" or "outer" or "inlet" or "exhaust" or "other" && FaultNext(clause, i) is not null && (topic ?? LastThing()) is { Kind.Length: > 0, Sort: ThingSort.Part } first && Partner(first, word.Word) is { } partner)
            (seen, seenAt, seenCount, fasteners) = (partner, word.From, null, false);
        if ((word.Word is "each" or "apiece" || (word.Word is "a" or "per" && Word(word.To) is "side" or "bank" or "head" or "end")) && draft is { Lots.Count: > 0, Of.Ids.Count: > 1 and <= 6 } sides)
        {
            sides.PerSide = true;
            sides.Tokens.Add(word.From);
            if (Word(word.To) is "side" or "bank")
                sides.Tokens.Add(word.To);
        }

        if (word.Word == "by" && Word(word.To) == "hand" && draft is { Fitting: true } run && !run.Stages.Contains("hand tight") && (word.From == clause[0].From || Word(word.From - 1) is "on" or "in" || Range(clause[0].From, word.From).Any(k => Lexicon.Fasteners.Longest(tokens, k).Values.Count > 0 || Word(k) is "tightened" or "run" or "nipped" or "done" or "screwed" or "spun")))
        {
            run.Stages.Add("hand tight");
            run.Tokens.AddRange([word.From, word.To]);
        }

        // "the left's a no go": its partner is spoken of from here.
        if (word.Word is "left" or "right" or "other" or "upper" or "lower" or "front" or "rear" && Word(word.To) is "'s" or "is" or "hasnt" or "isnt" or "wont" or "has" && FaultNext(clause, i) is null && topic is { Kind.Length: > 0, Sort: ThingSort.Part } first0 && Partner(first0, word.Word) is { } side0)
            (topic, seen, seenAt, fasteners) = (side0, side0, word.From, false);

        if (word.Word is "each" or "apiece" && toldNumber is > 1 and var parts && draft is { Lots: [.., { Lot.Count: { } per } last], Of.Ids.Count: 1 })
        {
            draft.Lots[^1] = last with { Lot = last.Lot with { Count = per * parts } };
            draft.Tokens.Add(word.From);
        }

        // "and the lower one too": the same was done to it.
        if (word.Word is "too" or "likewise" or "also" && pending.Count > 0 && lastDeed is { } also && (next is null or BreakPhrase or WordPhrase { Word: "and" or "as" }))
        {
            foreach (var (thing, from, to) in pending.ToList())
            {
                if (facts.LastOrDefault() is Damaged or Seen && lastDeed?.From < clauseFrom)
                    Add(With(facts[^1], thing with { Others = [] }), Range(from, to).Append(word.From));
                else
                    Apply(also.Act, thing, Range(from, to).Append(word.From));
            }

            (seen, topic) = (pending[^1].Thing, pending[^1].Thing);
            pending.Clear();
            return i;
        }

        if (word.Word is "loosely" or "loose" && draft is { Fitting: true })
        {
            draft.Stages.Add("hand tight");
            draft.Tokens.Add(word.From);
        }

        if (word.Word is "oiled" or "lubed" or "greased" or "threadlocked" or "threadlock" or "lightly" && draft is { Fitting: true })
        {
            draft.Stages.Add(word.Word == "threadlock" ? "threadlocked" : word.Word);
            draft.Tokens.Add(word.From);
        }

        return i;
    }
}
