namespace Gudgeon.Capture;

/// <summary>
/// Clauses that name their own subject, in whatever order: fasteners with the part they hold ("ten nuts off the inlet
/// manifold into bag nine", "in bag three there's eight M6 off the rocker cover"), and what is wrong in a part ("a crack in the
/// head by three"). The roles are told apart first and put together then, so that nothing leans on what was spoken of before.
/// </summary>
internal sealed partial class Listener
{
    private static readonly HashSet<string> OfWords = ["of", "from", "off", "for", "on", "in", "holding", "securing", "to", "out"];

    private static readonly HashSet<string> AtWords = ["by", "near", "behind", "under", "between", "beside", "above", "below", "round", "around", "next", "against", "underneath", "inside", "opposite", "over", "along", "through", "down", "across"];

    /// <summary>One clause, its phrases sorted by the part they play.</summary>
    private sealed record Frame(int From, int To, List<Phrase> All)
    {
        public List<ThingPhrase> Core { get; } = [];
        public List<ThingPhrase> Bolts { get; } = [];
        public List<(string Prep, ThingPhrase Thing)> Beside { get; } = [];
        public IEnumerable<LotPhrase> Lots => All.OfType<LotPhrase>();
        public List<ActPhrase> Acts { get; } = [];
        public IEnumerable<FaultPhrase> Faults => All.OfType<FaultPhrase>();
        public IEnumerable<PlacePhrase> Places => All.OfType<PlacePhrase>();
    }

    private Frame Sort(int from, int to)
    {
        var all = phrases.Where(p => p.From >= from && p.To <= to).ToList();
        var frame = new Frame(from, to, all);
        string last = "";
        for (int i = 0; i < all.Count; i++)
        {
            switch (all[i])
            {
                case ThingPhrase thing:
                    string before = Preposition(thing.From);
                    if (before.Length == 0 && Word(thing.From - 1) == "and" && i > 0)
                        before = last;
                    if (before.Length > 0)
                        frame.Beside.Add((before, thing));
                    else if (thing.Thing.Sort == ThingSort.Fasteners)
                        frame.Bolts.Add(thing);
                    else
                        frame.Core.Add(thing);
                    last = before;
                    break;
                case ActPhrase { Act: Act.Off, Word: "off" or "out" } off when off.To == off.From + 1 && (Preposition(off.To) is not "" || all.ElementAtOrDefault(i + 1) is ThingPhrase) && all.Take(i).Any(p => p is LotPhrase or DetailPhrase) && !all.Take(i).Any(p => p is ActPhrase) && !all.Take(i).Any(p => p is WordPhrase { Word: "took" or "got" or "had" or "take" or "is" or "are" or "'s" or "came" }):
                    break;
                case ActPhrase act:
                    frame.Acts.Add(act);
                    break;
            }
        }

        return frame;
    }

    /// <summary>The preposition that a part hangs on, articles passed over; empty when it stands for itself.</summary>
    private string Preposition(int at)
    {
        int k = at - 1;
        while (k >= 0 && Word(k) is "the" or "my" or "its" or "that" or "this" or "a" or "each" or "both")
            k--;
        string word = Word(k);
        if (word == "off" && phrases.Any(p => p is ActPhrase && p.From < k && p.To > k))
            return "";
        // "took off the alternator": a particle of the verb.
        if (word is "off" or "out" or "on" or "in" && Word(k - 1) is "took" or "take" or "taken" or "taking" or "pulled" or "got" or "whipped" or "lifted" or "put" or "knocked" or "pressed" or "drove" or "popped" or "cut" or "levered" or "prised" or "wound" or "screwed" or "bolted" or "slid" or "had" or "taking" or "whip" or "pull" or "get" or "getting" or "pushed" or "tapped" or "eased" or "wiggled" or "brought" or "back" or "dragged" or "hauled")
            return "";
        if (word == "of" && (NumberWords.At(tokens, k - 1) is { IsCount: true } || Word(k - 1) is "one" or "all" or "both" or "some" or "most" or "rest" or "none" or "each" or "any" or "lot"))
            return "";
        if (word == "of" && Word(k - 1) is "out" or "off" or "inside")
            return Word(k - 1) == "inside" ? "in" : "off";
        return OfWords.Contains(word) || AtWords.Contains(word) || word is "with" or "without" ? word : "";
    }

    private int Framed(Stretch clause)
    {
        var frame = Sort(clause.From, Cut(clause.From, clause.To));
        if (Stages(frame) is var tight and >= 0)
            return tight;
        if (frame.All.Any(p => p is MeasurePhrase or DuePhrase or TagPhrase or AmountPhrase) || frame.Beside.Any(b => b.Prep is "with" or "without"))
            return -1;
        if (pending.Count > 0 && facts.Count + doubts.Count == 0)
            return -1;
        return Held(frame) is var bolts and >= 0 ? bolts : Wrong(frame);
    }

    /// <summary>"ninety degrees on all the rod bolts": the figure first, then what it was put on.</summary>
    private int Stages(Frame frame)
    {
        var figures = frame.All.OfType<AmountPhrase>().ToList();
        if (figures.Count == 0 || figures.Any(a => a.Amount.Unit is not ("N m" or "lbf ft" or "lbf in" or "deg")) || frame.Core.Count + frame.Bolts.Count > 0 || frame.Beside is not [{ Prep: "on" or "to", Thing: var held }] || held.From < figures[^1].To || frame.Faults.Any())
            return -1;
        Flush();
        var joint = CapOf(held.Thing.Sort == ThingSort.Fasteners ? held.Thing with { Sort = ThingSort.Part } : held.Thing);
        About(things.Joint(joint, "bolt"), Range(frame.From, frame.To), t => new Tightened(t, [], [.. figures.Select(a => $"{ThreadSize.Plain(a.Amount.Value)} {a.Amount.Unit}")]));
        Speak(joint, frame.From);
        return frame.To;
    }

    /// <summary>The end of the first thought of a clause: "and" before a new subject with something said of it.</summary>
    private int Cut(int from, int to)
    {
        for (int k = from + 1; k < to; k++)
        {
            if (Word(k) is not ("and" or "then" or "plus" or "which") || Inside(k) || !In(from, k).Any(p => p is ActPhrase or FaultPhrase or PlacePhrase))
                continue;
            int next = k + 1;
            while (next < to && Word(next) is "then" or "also" or "the" or "i" or "we" or "'ve" or "it" or "they" or "'s" or "are" or "is" or "there" or "have" or "has" or "was" or "were" or "that" or "both" or "a" && !phrases.Any(p => p.From == next && p is not WordPhrase))
                next++;
            if (Word(k + 1) is "it" or "they" or "there" or "i" or "we" || phrases.Any(p => p.From == next && p is ActPhrase or FaultPhrase) || (phrases.Any(p => p.From >= k + 1 && p.From <= next && p is ThingPhrase) && In(k + 1, to).Any(p => p is ActPhrase or FaultPhrase or PlacePhrase)))
                return k;
        }

        return to;
    }

    /// <summary>Fasteners told together with what they hold.</summary>
    private int Held(Frame frame)
    {
        if (frame.Core.Count > 0 || (frame.Bolts.Count > 1 && frame.Bolts.Select(b => b.Thing.Code).Distinct().Count() > 1))
            return -1;
        var lots = frame.Lots.Select(l => SomeOf(l.From, frame.From) is { } part ? l with { Lot = l.Lot with { Count = part.Count } } : l).ToList();
        bool loose = frame.Bolts.Count == 0;
        if (loose && (lots.Count == 0 || lots.All(l => l.Lot.Fastener.Length == 0 && l.Lot.Size.IsEmpty && l.Share.Length == 0 && l.Lot.Note.Length == 0)))
            return -1;
        ThingPhrase? named = loose ? null : frame.Bolts[0];
        if (loose)
        {
            var of = frame.Beside.Where(b => OfWords.Contains(b.Prep) && b.Thing.Thing.Sort is ThingSort.Part or ThingSort.Line && b.Thing.Thing.Detail.Length == 0).ToList();
            if (of.Count != 1)
                return -1;
            named = of[0].Thing;
        }
        else if (frame.Beside.Any(b => OfWords.Contains(b.Prep) && b.Prep is not ("on" or "in") && !b.Thing.Thing.Ids.SequenceEqual(named!.Thing.Ids)))
            return -1;
        var owner = named!.Thing;
        string fastener = lots.Select(l => l.Lot.Fastener).FirstOrDefault(f => f.Length > 0) ?? (owner.Fastener.Length > 0 ? owner.Fastener : "bolt");
        var acts = frame.Acts.Where(a => a.Act is not Act.Stay).ToList();
        if (acts.Any(a => a.Act is Act.Mark or Act.Drain or Act.Send or Act.Return or Act.Cap or Act.Part) || frame.All.Any(p => p is DetailPhrase))
            return -1;
        int? told = named.Told ?? lots.Select(l => l.Lot.Count).FirstOrDefault(c => c is not null) ?? CountBefore(named.From, frame.From);
        var tokensOf = Range(frame.From, frame.To).Where(i => !tokens[i].IsBreak).ToList();
        var joint = owner.Sort == ThingSort.Part ? things.Joint(owner, fastener) : owner;
        if (acts.FirstOrDefault(a => a.Act is Act.Miss or Act.Find or Act.Buy) is { } got)
        {
            bool several = Range(frame.From, frame.To).Any(k => tokens[k].Plural && Lexicon.Fasteners.Longest(tokens, k).Values.Count > 0);
            var size = lots.Select(l => l.Lot).FirstOrDefault() ?? new Lot { Fastener = fastener };
            IReadOnlyList<Lot> one = told is null && (several || got.Act == Act.Buy) && size.Size.IsEmpty ? [] : [size with { Count = told ?? 1, Fastener = fastener }];
            Flush();
            About(joint, tokensOf, t => got.Act switch { Act.Miss => new Missing(t, one), Act.Find => new Found(t, one, ""), _ => new ToBuy(t, one) });
            if (got.Act == Act.Find)
                foundAt = facts.Count - 1;
            Speak(owner, frame.From);
            return frame.To;
        }

        if (frame.Faults.Any() && lots.Count <= 1)
            return SpoiltBolts(frame, joint, told, tokensOf);
        if (!frame.Places.Any() || frame.Places.Count() > 1 || acts.Any(a => a.Act is Act.On or Act.Tighten) || draft is { Lots.Count: > 0 } && draft.Of.Ids.SequenceEqual(joint.Ids))
            return -1;
        Flush();
        bool lies = !loose && frame.Places.First().Place is { Sort: PlaceSort.Container } place && !acts.Any(a => a.Act is Act.Off or Act.Undo) && Lies(place, tokensOf);
        draft = new Draft(joint) { Place = frame.Places.First().Place, Undone = !lies, Lies = lies };
        draft.Tokens.AddRange(tokensOf);
        if (lots.Count > 0)
            draft.Lots.AddRange(lots.Select(l => l.Lot.Fastener.Length > 0 ? l : l with { Lot = l.Lot with { Fastener = fastener } }).Where(l => l.Lot.Count is not null || l.Lot.Uncounted || !l.Lot.Size.IsEmpty));
        else if (told is not null)
            draft.Lots.Add(new LotPhrase(named.From, named.To, new Lot { Count = told, Fastener = fastener }, ""));
        fasteners = true;
        (topic, seen, seenAt) = (joint with { Sort = ThingSort.Part, Others = [] }, joint, frame.From);
        return frame.To;
    }

    private int SpoiltBolts(Frame frame, Thing joint, int? told, List<int> from)
    {
        var fault = frame.Faults.First();
        if (frame.Acts.Any(a => a.Act is Act.Off or Act.On or Act.Undo or Act.Tighten) && frame.Acts.Any(a => a.From > fault.To || a.To < fault.From - 3))
            return -1;
        bool denied = Range(frame.From, fault.From).Any(k => Word(k) is "no" or "not" or "never" or "isnt" or "arent" or "none" or "nothing");
        bool several = Range(frame.From, fault.From).Any(k => tokens[k].Plural);
        Flush();
        string words = Said(frame.From, frame.To);
        foreach (var one in frame.Faults.DistinctBy(f => f.Fault))
        {
            if (denied)
                About(joint, from, t => new Seen(t, Denied(frame.From, one), words));
            else if (one.Damage)
                About(joint, from, t => new Damaged(t, one.Fault, words, told ?? (several ? null : 1)));
            else
                About(joint, from, t => new Seen(t, one.Fault, words));
        }

        Speak(joint, frame.From);
        return frame.To;
    }

    /// <summary>"two of the exhaust studs": a number that counts what follows.</summary>
    private int? CountBefore(int at, int from)
    {
        int k = at - 1;
        while (k >= from && Word(k) is "the" or "of" or "them" or "those" or "my")
            k--;
        for (int s = Math.Max(from, k - 1); s <= k; s++)
        {
            if (NumberWords.At(tokens, s) is { IsCount: true } n && n.To == k + 1)
                return n.Int;
        }

        return null;
    }

    private void Speak(Thing thing, int at)
    {
        topic = thing with { Sort = thing.Sort == ThingSort.Fasteners ? ThingSort.Part : thing.Sort, Others = [], Detail = "" };
        (seen, seenAt, seenCount, fasteners) = (thing, at, null, false);
    }

    /// <summary>"a crack in the head by three": the fault first, the part after its preposition.</summary>
    private int Wrong(Frame frame)
    {
        if (frame.Core.Count > 0 || frame.Bolts.Count > 0 || frame.Lots.Any() || frame.Acts.Any(a => a.Act is not Act.Find) || frame.Faults.FirstOrDefault() is not { } fault || fault.Fault == "hissing" || frame.Places.Any())
            return -1;
        var of = frame.Beside.FirstOrDefault(b => b.Prep is "in" or "on" or "of" or "from" or "inside" or "over" or "round" or "around" or "along" or "through" or "down" && b.Thing.From >= fault.To);
        if (of.Thing is null || frame.All.Any(p => p is NumPhrase && p.To <= fault.From) || Word(fault.From - 1) is "'s" or "is" or "are" && Word(fault.From - 2) is "it" or "they")
            return -1;
        bool denied = Range(frame.From, fault.From).Any(k => Word(k) is "no" or "not" or "never" or "none" or "nothing" or "without" or "cant");
        Flush();
        Unsaid();
        var all = Range(frame.From, frame.To).Where(i => !tokens[i].IsBreak).ToList();
        string words = Said(frame.From, frame.To);
        var thing = of.Thing.Thing is { Detail: "shaft" } shaft ? shaft with { Detail = "" } : of.Thing.Thing;
        foreach (var one in frame.Faults.DistinctBy(f => f.Fault))
        {
            if (denied)
                About(thing, all, t => new Seen(t, Denied(frame.From, one), words));
            else
                About(thing, all, t => one.Damage ? new Damaged(t, one.Fault, words, null) : new Seen(t, one.Fault, words));
        }

        Speak(thing, frame.From);
        return frame.To;
    }
}
