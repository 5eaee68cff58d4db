namespace Gudgeon.Capture;

/// <summary>How tight, in any order: fasteners, figures, stages, who did it ("eight nuts, first ten newton metres and then twenty five", "sixty foot pounds on the middle bolt").</summary>
internal sealed partial class Listener
{
    /// <summary>A figure of tightening. <paramref name="More"/>: said as a turn further.</summary>
    private readonly record struct Pull(decimal Value, string Unit, bool More);

    /// <summary>What a telling of torque has said so far.</summary>
    private sealed record Tight
    {
        public List<LotPhrase> Lots { get; init; } = [];
        public List<Pull> Pulls { get; init; } = [];
        public List<string> Marks { get; init; } = [];
        public Thing? Of { get; set; }

        /// <summary>A word of doing up was said.</summary>
        public bool Verb { get; set; }

        /// <summary>A verb was said that tells of doing up only with a figure: took, did, gave.</summary>
        public bool Does { get; set; }

        /// <summary>A word that opens a stage was said.</summary>
        public bool Stage { get; set; }

        /// <summary>"theirs too": the stage told before.</summary>
        public bool Theirs { get; set; }

        /// <summary>"done as well": the rest of them had it.</summary>
        public bool Done { get; set; }

        /// <summary>Bolts or nuts were spoken of.</summary>
        public bool Bolts { get; set; }

        public Tight Copy() => this with { Lots = [.. Lots], Pulls = [.. Pulls], Marks = [.. Marks] };
    }

    private static bool IsTorque(string unit) => unit is "N m" or "lbf ft" or "lbf in";

    private static bool IsAngle(decimal value) => value is 30 or 45 or 60 or 75 or 90 or 105 or 120 or 135 or 150 or 180 or 240 or 270;

    /// <summary>Reads on from the token as far as every word tells of tightening, and stops at the last pause before another does not.</summary>
    /// <param name="named">Parts named right before, of which nothing was said yet.</param>
    /// <param name="fitted">The part told on right before.</param>
    private int Torque(Breath breath, int at, int to, List<ThingPhrase>? named, Thing? fitted = null)
    {
        var tight = new Tight { Of = fitted is null ? named?[^1].Thing : Joined(breath, fitted), Bolts = named?[^1].Thing.Sort == ThingSort.Fasteners };
        if (named is [.., { Told: null, Thing.Sort: ThingSort.Fasteners } pair] && Range(pair.From, pair.To).Any(k => Word(k) == "both"))
            tight.Lots.Add(new LotPhrase(pair.From, pair.To, new Lot { Count = 2, Fastener = pair.Thing.Fastener }, ""));
        if (named is [.., { Told: { } told } counted])
            tight.Lots.Add(new LotPhrase(counted.From, counted.To, new Lot { Count = told, Fastener = counted.Thing.Fastener }, ""));
        tight.Stage = named is null && fitted is null && Word(at - 1) is "then" or "plus" or "that";
        var (kept, end) = (tight.Copy(), -1);
        for (int k = at; k <= to;)
        {
            if (Rests(k, to) && Says(tight, fitted))
                (kept, end) = (tight.Copy(), k);
            if (k >= to || tokens[k].IsEnd || TightWord(tight, k, to, at, named is not null || fitted is not null) is not { } next)
                break;
            k = next;
        }

        if (end < 0)
            return -1;
        tight = kept;
        Tightened? before = facts.Concat(facts.Count > 0 ? [] : context.Last).OfType<Tightened>().LastOrDefault();
        if (tight.Of is null)
        {
            // "it was fifty, not forty" puts right what was told, and "no, fifty" does so.
            if ((Word(at) is "it" or "that" or "they" or "those" && Word(at + 1) is "was" or "were" or "is" or "'s" or "are") || Word(end + 1) == "not" || Word(at - 1) is "no" or "sorry" or "not" || Word(at - 2) is "no" or "sorry")
                return -1;
            tight.Theirs |= tight.Pulls.Count + tight.Marks.Count == 0 && tight.Lots.Count > 0 && tight.Done;
            if (!(tight.Stage || tight.Verb || tight.Does || tight.Theirs || tight.Pulls.Any(p => p.Unit.Length > 0)) || !tight.Theirs && tight.Pulls.Count + tight.Marks.Count == 0)
                return -1;
            tight.Of = (breath.Steps.Count > 0 ? null : draft is { Fitting: true } open ? open.Of : null) ?? before?.Of ?? (facts.Count == 0 && context.Fitting ? context.Last.OfType<On>().LastOrDefault()?.Thing : null);
            if (tight.Of is null || breath.Steps.Count > 0)
                return -1;
        }

        if (draft is { Fitting: true, Stages.Count: > 0 } open0 && (before is null || !facts.Contains(before)))
            before = new Tightened(open0.Of, [], open0.Stages);
        if (tight.Theirs && tight.Pulls.Count == 0 && before is null)
            return -1;
        var of = Bolted(tight.Of!);
        int from = named?[0].From ?? at;
        bool first = tight.Pulls.Any(p => p.Unit != "deg") || tight.Marks.Contains("hand tight") || (tight.Theirs && tight.Pulls.Count == 0);
        if (named is not null && fitted is null && first && named.All(n => n.Thing.Sort == ThingSort.Part) && (!tight.Verb && !tight.Does && Refitting() || breath.On.Count > 0) && !facts.Concat(context.Last).OfType<On>().Any(o => o.Thing.Ids.Intersect(of.Ids).Any()) && !breath.On.Any(o => o.Ids.Intersect(of.Ids).Any()))
        {
            Goes(breath, named, from, named[^1].To);
            of = Joined(breath, Bolted(breath.On[^1]));
        }

        var stages = Stages(tight, of, before);
        breath.Sure |= tight.Pulls.Count > 0 || (tight.Verb && named is not null) || (tight.Bolts && tight.Marks.Any(m => m is "snug" or "nipped up" or "spec")) || tight.Marks.Contains("spec") || (tight.Marks.Contains("hand tight") && tight.Lots.Count > 0 && breath.On.Count > 0);
        breath.Steps.Add((end, () =>
        {
            if (draft is not { Fitting: true } || !draft.Of.Ids.SequenceEqual(of.Ids))
            {
                Flush();
                draft = new Draft(of) { Fitting = true };
            }

            draft.Lots.AddRange(tight.Lots.Where(l => draft.Lots.Count == 0 || l.From > draft.Lots[^1].From).Select(l => l.Lot.Fastener.Length > 0 || of.Fastener.Length == 0 ? l : l with { Lot = l.Lot with { Fastener = of.Fastener } }));
            draft.Stages.AddRange(stages);
            draft.Tokens.AddRange(Range(from, end).Where(k => !tokens[k].IsBreak));
            (topic, seen, seenAt, fasteners) = (of with { Sort = ThingSort.Part, Others = [] }, of, from, false);
        }
        ));
        return end;
    }

    private static bool Says(Tight tight, Thing? fitted) =>
        tight.Pulls.Count > 0 || tight.Marks.Any(m => m is not ("oiled" or "threadlocked")) || (tight.Lots.Count > 0 && (fitted is not null || tight.Done)) || (tight.Theirs && (tight.Lots.Count > 0 || fitted is not null)) || (tight.Verb && tight.Of is not null && fitted is null);

    /// <summary>One past the words understood, or null.</summary>
    private int? TightWord(Tight tight, int k, int to, int start, bool subject)
    {
        if (tokens[k].Sort == TokenSort.Comma)
            return k + 1;
        if (SameFigures(k, to) is { } same0)
        {
            tight.Theirs = true;
            return same0;
        }

        if (RefitWords.At("mark", tokens, k) is var (mark, marked) && (subject || tight.Of is not null || tight.Lots.Count > 0 || mark is not "hand tight"))
        {
            if (!tight.Marks.Contains(mark))
                tight.Marks.Add(mark);
            return marked;
        }

        if (QuarterTurns(k) is var (degrees, turned))
        {
            tight.Pulls.Add(new Pull(degrees, "deg", true));
            return turned;
        }

        switch (phrases.FirstOrDefault(p => p.From == k && p.To <= to))
        {
            case LotPhrase { Lot: { Fastener: "" or "bolt" or "nut" or "stud" or "screw", Where: "", Uncounted: false } lot } phrase when lot.Count is not null || !lot.Size.IsEmpty || phrase.Lot.Fastener.Length > 0:
                if (lot.Count is { } many && lot.Fastener.Length == 0 && lot.Size.IsEmpty && phrase.Share.Length == 0 && Figured(tight, k, phrase.To, to, start, subject))
                    tight.Pulls.Add(new Pull(many, "", More(k)));
                else if (Alone(phrase) is { Lot: var few } alone && (few.Count is not null || !few.Size.IsEmpty))
                    tight.Lots.Add(alone);
                tight.Bolts |= lot.Fastener.Length > 0;
                tight.Stage |= phrase.Share is "others" or "rest";
                return phrase.To;
            case LotPhrase { Lot: { Fastener: "washer", Size.IsEmpty: true } } washer when Range(k - 1, washer.To).Any(w => Word(w) is "with" or "new"):
                return washer.To;
            case AmountPhrase { Amount: var amount } figure when IsTorque(amount.Unit) || amount.Unit == "deg":
                tight.Pulls.Add(new Pull(amount.Value, amount.Unit, More(k)));
                return figure.To;
            case NumPhrase { Num: { IsCount: true } num } bare:
                // "three forty newton metres" is 340.
                if (num.Int is >= 1 and <= 9 && Word(k - 1) is not ("all" or "both") && phrases.FirstOrDefault(p => p.From == bare.To) is AmountPhrase { Amount: { Value: >= 10 and < 100 } rest } tens && IsTorque(rest.Unit) && rest.Value == decimal.Truncate(rest.Value))
                {
                    tight.Pulls.Add(new Pull((num.Int * 100) + rest.Value, rest.Unit, false));
                    return tens.To;
                }

                if (num.Int is 2 && Word(bare.To) is "lots" or "goes" or "times" && Word(bare.To + 1) == "of" && NumberWords.At(tokens, bare.To + 2) is { IsCount: true } turn && IsAngle(turn.Value) && Rests(turn.To, to) && tight.Pulls.Count > 0)
                {
                    tight.Pulls.AddRange([new Pull(turn.Value, "deg", true), new Pull(turn.Value, "deg", true)]);
                    return turn.To;
                }

                if (num.Int is 2 && Word(bare.To) is "lots" or "goes" or "times" && Word(bare.To + 1) == "of" && phrases.FirstOrDefault(p => p.From == bare.To + 2) is AmountPhrase { Amount.Unit: "deg" } twice)
                {
                    tight.Pulls.AddRange([new Pull(twice.Amount.Value, "deg", true), new Pull(twice.Amount.Value, "deg", true)]);
                    return twice.To;
                }

                if (Word(bare.To) == "off" && phrases.FirstOrDefault(p => p.From == bare.To + 1) is LotPhrase { Lot: { Count: null, Fastener.Length: > 0 } off } offs)
                {
                    tight.Lots.Add(offs with { Lot = off with { Count = num.Int } });
                    return offs.To;
                }

                if (Figured(tight, k, bare.To, to, start, subject))
                    tight.Pulls.Add(new Pull(num.Int, "", More(k)));
                else if (tight.Bolts && tight.Lots.Count + tight.Pulls.Count == 0 && tokens.ElementAtOrDefault(k - 1).Sort == TokenSort.Comma || Word(k - 1) is "all" or "both" or "other" or "last" or "remaining" or "of" or "only" or "did" or "got" || Word(k - 1) == "on" && tight.Pulls.Count > 0 || Word(bare.To) is "of" or "at" or "got" or "have" or "has" or "done" or "up" or "turned")
                    tight.Lots.Add(new LotPhrase(k, bare.To, new Lot { Count = num.Int }, ""));
                else
                    return null;
                return bare.To;
            case ThingPhrase { Thing: { Sort: ThingSort.Fasteners or ThingSort.Part, Detail: "" } thing } part when tight.Of is null && (tight.Verb || tight.Does || (tight.Pulls.Count > 0 && Word(k - 1) is "on" or "to" or "of")) && (thing.Ids.Count > 0 || Bolted(thing).Ids.Count > 0):
                tight.Of = thing;
                if (part.Told is { } told)
                    tight.Lots.Add(new LotPhrase(part.From, part.To, new Lot { Count = told, Fastener = thing.Fastener }, ""));
                return part.To;
            case ThingPhrase { Thing: { Sort: ThingSort.Fasteners } again } same when tight.Of is { } of && Bolted(again).Kind == Bolted(of).Kind:
                return same.To;
            case PlacePhrase or MeasurePhrase or DuePhrase or TagPhrase or ThingPhrase or DetailPhrase or LotPhrase or AmountPhrase:
                return null;
        }

        if (Word(k) == "both" && tight.Bolts && tight.Lots.Count == 0 && phrases.All(p => p.From != k || p is WordPhrase))
        {
            tight.Lots.Add(new LotPhrase(k, k + 1, new Lot { Count = 2, Fastener = tight.Of?.Fastener ?? "" }, ""));
            return k + 1;
        }

        tight.Done |= Word(k) is "done" or "did" or "too" or "also" or "got" || (Word(k) == "as" && Word(k + 1) == "well");
        if (Word(k) is "theirs" or "its" or "his" && (Rests(k + 1, to) || Word(k + 1) is "too" or "also" or "now" or "as"))
        {
            tight.Theirs = true;
            return k + 1;
        }

        if (Word(k) is "twice" && tight.Pulls.Count > 0)
        {
            tight.Pulls.Add(tight.Pulls[^1] with { More = true });
            return k + 1;
        }

        if (Word(k) is "another" or "further")
            return k + 1;
        // "rod caps on, two nuts each"
        if (Word(k) is "each" or "apiece" && tight.Lots is [.., { Lot.Count: > 0 and <= 4 and var every } last0] && last0.To == k && tight.Of is { Ids.Count: > 1 and var parts, Others.Count: 0 })
            tight.Lots[^1] = last0 with { Lot = last0.Lot with { Count = every * parts } };
        int pass = RefitWords.To("pass", tokens, k);
        int verb = RefitWords.To("verb", tokens, k);
        int fill = RefitWords.To("tight", tokens, k);
        if (verb > k && verb >= fill && verb >= pass)
        {
            tight.Verb = true;
            return verb;
        }

        if (RefitWords.To("does", tokens, k) is var does && does > k && does >= fill)
        {
            tight.Does = true;
            return does;
        }

        if (pass > k && pass >= fill)
        {
            tight.Stage = true;
            return pass;
        }

        if (fill > k)
            return fill;
        bool who = (k == start || tokens[k - 1].IsBreak || Word(k - 1) is "the" or "my" or "our" or "and") && (RefitWords.To("verb", tokens, k + 1) > k + 1 || RefitWords.To("does", tokens, k + 1) > k + 1) && tokens[k].IsWord && (Lexicon.Persons.Contains(Word(k)) || char.IsUpper(text[tokens[k].Start]));
        return who ? k + 1 : null;
    }

    /// <summary>"the centre nut": a fastener alone is one; both are two.</summary>
    private LotPhrase Alone(LotPhrase phrase)
    {
        if (phrase.Lot.Count is not null || (phrase.Lot.Fastener.Length == 0 && (phrase.Lot.Size.IsEmpty || !Range(phrase.From - 1, phrase.To).Any(k => Word(k) is "the" or "long" or "short" or "longer" or "shorter"))))
            return phrase;
        bool one = (!phrase.Lot.Size.IsEmpty || phrase.To > phrase.From + 1 || Word(phrase.From - 1) is "the" or "its" or "his" or "one" or "center" or "centre" or "middle" or "big") && Range(phrase.From, phrase.To).All(k => !tokens[k].Plural && Word(k) is not "s");
        return one || phrase.Share == "both" ? phrase with { Lot = phrase.Lot with { Count = one ? 1 : 2 } } : phrase;
    }

    private bool More(int at) => Word(at - 1) is "plus" or "another" or "further" || (Word(at - 1) is "a" or "an" && Word(at - 2) is "plus");

    /// <summary>Whether a bare number is a figure of torque or turn, not a count.</summary>
    private bool Figured(Tight tight, int at, int end, int to, int start, bool subject)
    {
        string before = Word(at - 1) is "the" or "another" or "a" ? Word(at - 2) : Word(at - 1);
        // "bolts, seven, fifteen newton metres": how many, then how tight.
        if (tight.Bolts && tight.Lots.Count + tight.Pulls.Count == 0 && tokens.ElementAtOrDefault(at - 1).Sort == TokenSort.Comma && tokens.ElementAtOrDefault(end).Sort == TokenSort.Comma)
            return false;
        bool stops = Rests(end, to) || (Word(end) is "to" && Word(end + 1) is "start" or "begin") || Word(end) is "next" or "too" or "also" or "plus" or "on" or "all" or "going" or "newton" or "crossways" or "each" or "degrees";
        if (Word(end) is "of" && Word(end + 1) is "them" or "em" or "those" || !stops || NumberWords.At(tokens, at) is not { Value: >= 4 and <= 700 })
            return false;
        if (Word(end) == "on" && tight.Pulls.Count > 0 || Word(at - 1) is "all" or "both" or "other" or "only")
            return false;
        if (before is "at" or "to" or "then" or "after" or "before" or "plus" or "round" or "pass" or "stage" or "go" or "again" or "next" or "another" or "is" or "was" or "first" or "second" or "their" or "its" or "his" || Word(at - 1) is "another")
            return true;
        // "spark plugs in, twenty five each": no plug has bolts.
        if (Word(end) == "each" && NumberWords.At(tokens, at) is { Value: >= 8 } && (tight.Lots.Count > 0 || tight.Of is { Kind: "plug" or "glow-plug" or "drain-plug" }))
            return true;
        bool chained = Chained(end, to);
        if (before is "and")
            return tight.Pulls.Count > 0;
        bool opens = at == start || tokens[at - 1].IsBreak;
        return opens && (chained || tight.Stage && Rests(end, to) || (tight.Pulls.Count > 0 || tight.Lots.Count > 0) && Rests(end, to)) || (subject && at == start && chained) || ((tight.Verb || tight.Does) && (chained || before is "them" or "it"));
    }

    /// <summary>After "then", "and" or a pause another figure follows.</summary>
    private bool Chained(int at, int to)
    {
        int k = at;
        while (k < to && (Word(k) is "then" or "and" or "plus" or "another" or "the" or "a" or "to" or "up" or "next" || tokens[k].Sort == TokenSort.Comma))
            k++;
        if (k > at && Word(k) == "two" && Word(k + 1) is "lots" or "goes" or "times" && Word(k + 2) == "of")
            k += 3;
        return k > at && (QuarterTurns(k) is not null || phrases.FirstOrDefault(p => p.From == k) is AmountPhrase { Amount: var amount } && (IsTorque(amount.Unit) || amount.Unit == "deg") || (NumberAt(k) is { } next && (Chained(next, to) || Rests(next, to))));
    }

    private (decimal Degrees, int To)? QuarterTurns(int at)
    {
        int k = Word(at) is "a" or "an" or "another" or "one" ? at + 1 : at;
        decimal part = (Word(k), Word(k + 1)) switch
        {
            ("quarter" or "quarters", _) => Word(at) is "three" ? 270 : 90,
            ("half", _) => 180,
            ("full", "turn") => 360,
            ("three", "quarter" or "quarters") => 270,
            _ => 0,
        };
        if (part == 0)
            return null;
        k += Word(k) is "three" ? 2 : 1;
        while (Word(k) is "of" or "a")
            k++;
        return tokens.ElementAtOrDefault(k).Stem == "turn" ? (part, k + 1) : null;
    }

    /// <summary>Each figure in its unit: that said, that of the figures beside it, a turn where a torque would go back down, else the book's.</summary>
    private List<string> Stages(Tight tight, Thing of, Tightened? before)
    {
        var earlier = draft is { Fitting: true, Stages.Count: > 0 } open && open.Of.Ids.SequenceEqual(of.Ids) ? open.Stages : before is not null && before.Of.Ids.SequenceEqual(of.Ids) ? before.Stages : [];
        var spoken = before?.Stages ?? [];
        string unit = tight.Pulls.Select(p => p.Unit).Concat(Enumerable.Reverse(earlier.Concat(spoken)).Select(s => s[(s.IndexOf(' ', StringComparison.Ordinal) + 1)..])).FirstOrDefault(IsTorque) ?? (inchBook ? "lbf ft" : "N m");
        var told = new List<string>();
        decimal last = earlier.Count > 0 && tight.Stage && decimal.TryParse(earlier[^1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture, out decimal figure) && IsTorque(earlier[^1][(earlier[^1].IndexOf(' ', StringComparison.Ordinal) + 1)..]) ? figure : 0;
        bool turning = earlier.Count > 0 && tight.Stage && earlier[^1].EndsWith(" deg", StringComparison.Ordinal);
        for (int i = 0; i < tight.Pulls.Count; i++)
        {
            var pull = tight.Pulls[i];
            bool later = tight.Pulls.Skip(i + 1).FirstOrDefault(p => p.Unit.Length > 0) is { Unit: { Length: > 0 } next } && IsTorque(next);
            bool twice = tight.Pulls.Index().Any(p => p.Index != i && p.Item.Value == pull.Value && (p.Item.Unit is "deg" || p.Item.More));
            string own = pull.Unit.Length > 0 ? pull.Unit : later ? unit : IsAngle(pull.Value) && (pull.More || twice || turning || (last > 0 && (pull.Value <= last || pull.Value is 90 or 120 or 180 or 270))) ? "deg" : unit;
            turning |= own == "deg";
            last = IsTorque(own) ? pull.Value : last;
            told.Add($"{ThreadSize.Plain(pull.Value)} {own}");
        }

        if (tight.Theirs && told.Count == 0 && before is not null)
            told.AddRange(before.Stages);
        if (told.Count == 0 && tight.Verb && tight.Lots.Count + tight.Marks.Count == 0)
            told.Add("torqued");
        return [.. tight.Marks.Where(m => m is "oiled" or "threadlocked"), .. told, .. tight.Marks.Where(m => m is not ("oiled" or "threadlocked"))];
    }

    /// <summary>What is bolted: the cap of a rod, the caps of the mains.</summary>
    private Thing Bolted(Thing thing)
    {
        thing = CapOf(thing);
        if (thing.Kind is not ("main-shell" or "rod-shell" or "rod") || !MoreWords.BoltsOf.TryGetValue(thing.Kind, out string? holds))
            return thing;
        var caps = index.Parts(holds).Where(c => thing.Ids.Count == 0 ? thing.Where.StartsWith($"{index.Parts(holds).Count} of", StringComparison.Ordinal) : thing.Ids.Any(i => i.Split('.')[1] == c.Id.Split('.')[^1])).ToList();
        return caps.Count == 0 ? thing : new Thing(ThingSort.Part, holds, [.. caps.Select(c => c.Id)], caps.Count == 1 ? caps[0].Name : index.NameOf(holds) + "s");
    }
}
