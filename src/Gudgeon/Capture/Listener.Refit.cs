namespace Gudgeon.Capture;

/// <summary>
/// Building up, told in one breath: what went on, what went on with it and how it was tightened ("base gasket down, barrel on over
/// the top, four nuts at ten then twenty five"). Every word up to a pause must have its place in this grammar; else nothing of it is
/// taken, and the other ways of hearing have their turn.
/// </summary>
internal sealed partial class Listener
{
    /// <summary>What one breath has told so far.</summary>
    private sealed class Breath
    {
        /// <summary>What to record, each with the token that it ends before.</summary>
        public List<(int To, Action Do)> Steps { get; } = [];

        public List<Thing> On { get; } = [];

        /// <summary>Something was said that only parts going back on are said to do.</summary>
        public bool Sure { get; set; }
    }

    private int Refit(Stretch clause, Stretch rest)
    {
        if (pending.Count > 0)
            return -1;
        var breath = new Breath();
        int done = -1;
        int steps = 0;
        bool sure = false;
        for (int at = Past("lead", clause.From, rest.To); at < rest.To;)
        {
            int next = Item(breath, at, rest.To);
            if (next <= at)
                break;
            if (Rests(next, rest.To))
                (done, steps, sure) = (next, breath.Steps.Count, breath.Sure);
            at = next;
            while (at < rest.To && tokens[at].Sort == TokenSort.Comma)
                at++;
            at = Past("lead", at, rest.To);
        }

        if (done <= clause.From || steps == 0 || !(sure || Refitting()))
            return -1;
        Unsaid();
        int before = facts.Count;
        foreach (var (_, step) in breath.Steps.Take(steps))
            step();
        // How it went belongs to what went.
        if (facts.Count > before)
            facts[^1] = facts[^1] with { Spans = [.. facts[^1].Spans.Concat(Spans(Range(clause.From, done).Where(k => !tokens[k].IsBreak && !used[k]))).Distinct()] };
        return done;
    }

    private int Past(string sort, int at, int to)
    {
        while (at < to && !(sort == "lead" && phrases.Any(p => p is ThingPhrase && p.From == at)) && RefitWords.To(sort, tokens, at) is var next && next > at && next <= to)
            at = next;
        return at;
    }

    /// <summary>A pause, or a word that ties the next thought on.</summary>
    private bool Rests(int at, int to) => at >= to || tokens[at].IsBreak || Word(at) is "and" or "but" or "so" or "because" or "cos" or "then" or "while" or "till" or "until" or "as" or "which";

    /// <summary>One thing told: the token after it, or -1.</summary>
    private int Item(Breath breath, int at, int to)
    {
        if (Torque(breath, at, to, null) is var alone and >= 0)
            return alone;
        if (PutBack(breath, at, to) is var verb and >= 0)
            return verb;
        if (Told(breath, to) is { } told && NotYet(breath, [], at, to, told) is var undone and >= 0)
            return undone;
        bool so = Word(at - 1) == "so" && Word(at) is "is" or "are" && breath.On.Count > 0;
        bool but = Word(at) == "not" && breath.Sure;
        var (named, end) = Nouns(breath, so || but ? at + 1 : at, to);
        if (named.Count == 0)
            return Lining(breath, at, to, false) is var lining and >= 0 ? lining : Gasket(breath, at, to);
        if (but)
            return Rests(end, to) ? Plans(breath, named.Select(n => n.Thing), at, end) : -1;
        if (NotYet(breath, named, end, to, named[0].Thing) is var not and >= 0)
            return not;
        int done = Past("aux", end, to);
        if ((RefitWords.To("verb", tokens, done) > done || RefitWords.To("does", tokens, done) > done) && Went(end, to) is not { Sure: true } && Torque(breath, end, to, named) is var tightened and >= 0)
            return tightened;
        if (named.All(n => n.Thing.Sort == ThingSort.Part))
        {
            bool too = breath.On.Count > 0 && Word(end) is "too" or "also" && Rests(end + 1, to);
            breath.Sure |= named.Count > 1 && Word(at) == "new" && named[0].Thing.Kind is "barrel-seal" or "head-gasket";
            if (too || (so && Rests(end, to)) || (named.Count > 1 && (Refitting() || breath.Sure) && Rests(end, to) && Range(named[0].To, named[^1].From).Any(k => Word(k) == "then")))
                return Tails(breath, Goes(breath, named, at, end), too ? end + 1 : end, to, named);
            if (Went(end, to) is var (on, sure))
            {
                bool gasket = named.Any(n => Range(n.From, n.To).Any(k => Word(k) == "new") && n.Thing.Kind.EndsWith("-gasket", StringComparison.Ordinal));
                bool rods = named.All(n => n.Thing.Kind == "piston") && tokens[on - 1].Stem == "rod";
                breath.Sure |= sure || gasket || rods || named.All(n => n.Thing.Kind == "case-half");
                return Tails(breath, Goes(breath, named, at, on), on, to, named);
            }
        }

        return Torque(breath, end, to, named);
    }

    /// <summary>What was told on last: in this breath, or right before it.</summary>
    private Thing? Told(Breath breath, int to) => breath.On.LastOrDefault() ?? (facts.LastOrDefault() is On or Tightened && In(0, to).Any() ? About(facts[^1]) : null);

    /// <summary>"main shells, crank and caps": parts in a row, with what picks some of them.</summary>
    private (List<ThingPhrase> Named, int To) Nouns(Breath breath, int at, int to)
    {
        var named = new List<ThingPhrase>();
        for (int k = at; k < to;)
        {
            while (Word(k) is "fresh" or "clean" or "just" or "then" or "now")
                k++;
            if ((Pin(breath, named, k) ?? Case(phrases.FirstOrDefault(p => p.From == k))) is not ThingPhrase { Thing: { Sort: ThingSort.Part or ThingSort.Fasteners } thing } phrase || phrase.To > to || thing.Where is "left" or "right" || (thing.Ids.Count == 0 && Bolted(thing).Ids.Count == 0) || thing.Detail.Length > 0)
                break;
            thing = Own(breath, named, thing);
            at = phrase.To;
            if (OfThose(thing, at, to) is var (some, picked))
                (thing, at) = (some, picked);
            named.Add(phrase with { Thing = thing, To = at });
            k = at;
            while (k < to && (Word(k) is "and" or "plus" or "then" || tokens[k].Sort == TokenSort.Comma))
                k++;
            if (k == at)
                break;
        }

        return (named, at);
    }

    /// <summary>The case of an engine whose case is split: both halves.</summary>
    private Phrase? Case(Phrase? phrase) =>
        phrase is ThingPhrase { Thing: { Kind: "crankcase" or "block" or "case-half", Ids.Count: < 2 } half } named && (half.Ids.Count == 0 || half.Others.Count > 0) && index.Parts("case-half") is { Count: 2 } halves ? named with { Thing = new Thing(ThingSort.Part, "case-half", [.. halves.Select(h => h.Id)], "case halves") } : phrase;

    /// <summary>"pin in" after its piston.</summary>
    private ThingPhrase? Pin(Breath breath, List<ThingPhrase> named, int at)
    {
        int noun = Word(at) is "the" or "its" or "wrist" or "his" ? at + 1 : at;
        return tokens.ElementAtOrDefault(noun).Stem == "pin" && (named.Count > 0 ? named[^1].Thing : breath.On.LastOrDefault()) is { Kind: "piston" or "gudgeon" } piston && OfSame("gudgeon", piston) is { } pins ? new ThingPhrase(at, noun + 1, pins, pins.Ids.Count > 1, false) : null;
    }

    /// <summary>Of a kind, those that have the same numbers as the parts told.</summary>
    private Thing? OfSame(string kind, Thing told)
    {
        var parts = index.Parts(kind).Where(p => told.Ids.Any(i => $"{p.Id[p.Id.IndexOf('.', StringComparison.Ordinal)..]}.".StartsWith($"{i[i.IndexOf('.', StringComparison.Ordinal)..]}.", StringComparison.Ordinal))).ToList();
        return parts.Count == 0 ? null : new Thing(ThingSort.Part, kind, [.. parts.Select(p => p.Id)], parts.Count == 1 ? parts[0].Name : index.NameOf(kind) + "s");
    }

    private static readonly HashSet<string> Belong = ["rod", "rod-cap", "gudgeon", "circlip", "ring-comp", "ring-oil", "barrel-seal", "barrel", "head", "head-gasket", "rod-shell"];

    /// <summary>"pistons one to three in with their rods, caps on": what belongs to the ones told, where it was not said of which.</summary>
    private Thing Own(Breath breath, List<ThingPhrase> named, Thing thing)
    {
        if (!Belong.Contains(thing.Kind) || thing.Sort != ThingSort.Part || (thing.Others.Count == 0 && thing.Ids.Count < index.Parts(thing.Kind).Count) || thing.Ids.Count + thing.Others.Count < 2)
            return thing;
        var owners = named.Select(n => n.Thing).Concat(Enumerable.Reverse(breath.On)).Where(t => t.Kind != thing.Kind && t.Others.Count == 0 && t.Detail.Length == 0 && t.Kind is "piston" or "barrel" or "head" or "rod" or "head-gasket" or "barrel-seal" && t.Ids.Count < index.Parts(t.Kind).Count).ToList();
        owners.RemoveAll(t => t.Kind != owners[0].Kind);
        if (owners.Count == 0 || owners[0] with { Ids = [.. owners.SelectMany(o => o.Ids).Distinct().Order(StringComparer.Ordinal)] } is not { } owner || owner.Ids.Count == index.Parts(owner.Kind).Count)
            return thing;
        return OfSame(thing.Kind, owner) ?? Companions(owner, thing);
    }

    /// <summary>"on the left", "that's one three and five", "all sixteen": which of those named, or that they are all of them.</summary>
    private (Thing Thing, int To)? OfThose(Thing thing, int from, int to)
    {
        int at = from;
        if (at < to && tokens[at].Sort == TokenSort.Comma)
            at++;
        int words = at;
        while (Word(at) is "on" or "for" or "of" or "the" or "that" or "'s" or "is" or "number" or "numbers" or "cylinder")
            at++;
        if (Word(at) is "left" or "right" && (at == words ? Word(at + 1) is "hand" or "side" or "bank" or "one" : Word(words) is "on" or "for" or "of"))
        {
            int side = at + 1;
            while (Word(side) is "hand" or "side" or "bank" or "one" or "ones")
                side++;
            string both = Word(side) == "and" && Word(side + 1) is "left" or "right" ? Word(side + 1) : "";
            if (both.Length > 0)
                return (thing, side + 2);
            return thing.Ids.Count + thing.Others.Count > 1 && Select(thing with { Others = [], Ids = [.. index.Parts(thing.Kind).Select(p => p.Id)] }, null, Word(at)) is { Ids.Count: > 0 } some && some.Ids.Count < index.Parts(thing.Kind).Count ? (some, side) : thing.Ids.Count > 0 && thing.Others.Count == 0 && Select(thing with { Ids = [.. index.Parts(thing.Kind).Select(p => p.Id)] }, null, Word(at)) is { } same && same.Ids.SequenceEqual(thing.Ids) ? (thing, side) : null;
        }

        int last = at;
        while (last < to && (NumberAt(last) is not null || (last > at && Word(last) == "and" && NumberAt(last + 1) is not null)))
            last = NumberAt(last) ?? last + 1;
        if (Picked(at, last) is { Count: > 0 } numbers && (numbers.Count > 1 || at > words) && Rests(last, to) | Went(last, to) is not null && SelectAll(thing with { Others = [] }, numbers) is { } those && those.Ids.All(i => thing.Ids.Contains(i) || thing.Others.Any(o => o.Ids.Contains(i))))
            return (those, last);
        at = words;
        if (phrases.FirstOrDefault(p => p.From == at) is LotPhrase { Share: "all" or "both", Lot: { Fastener: "", Size.IsEmpty: true } lot } whole && thing.Others.Count == 0)
            return (lot.Count ?? 2) == thing.Ids.Count ? (thing, whole.To) : null;
        if (Word(at) is not ("all" or "both" or "every" or "each"))
            return null;
        at++;
        while (Word(at) is "of" or "the" or "them" or "one" or "sides")
            at++;
        if (NumberAt(at) is { } told)
        {
            if (NumberWords.At(tokens, at)!.Value.Int != thing.Ids.Count)
                return null;
            at = told;
        }

        while (Word(at) is "of" or "them")
            at++;
        return thing.Others.Count == 0 && (at > words + 1 || Rests(at, to) || Went(at, to) is not null) ? (thing, at) : null;
    }

    /// <summary>One past a bare number that counts or picks.</summary>
    private int? NumberAt(int at) => phrases.FirstOrDefault(p => p.From == at) is NumPhrase { Num: { IsCount: true } num } ? num.To : null;

    /// <summary>"is back on", "slid down", "'s sat on the dowels": that it went on, and whether the words leave no other reading.</summary>
    private (int To, bool Sure)? Went(int at, int to)
    {
        int k = Past("aux", at, to);
        if (phrases.FirstOrDefault(p => p.From == k) is PlacePhrase { Place.Sort: PlaceSort.OwnHoles } own0 && Word(k) is "back" or "in" or "into" or "where")
            return (own0.To, true);
        if (!Refitting() && phrases.Any(p => p is FaultPhrase { Fault: not "loose" } fault && p.From >= at && p.From <= k && (k > at || fault.Fault == "stuck")))
            return null;
        bool moved = false;
        while (RefitWords.To("motion", tokens, k) is var next && next > k)
            (k, moved) = (Past("aux", next, to), true);
        bool full = RefitWords.To("full", tokens, at == k ? k : moved ? k - 1 : k) is var whole && whole > k - 1 && whole >= k && (whole > k || moved);
        int end = full ? whole : k;
        bool sure = full;
        for (bool more = true, said = false; more; said = sure)
        {
            int certain = said ? end : RefitWords.To("sure", tokens, end);
            int vague = RefitWords.To("unsure", tokens, end);
            more = certain > end || vague > end;
            sure |= certain > end && certain >= vague;
            sure |= moved && vague > end && Word(vague - 1) == "over";
            (full, end) = (full || more, Math.Max(certain, vague));
        }

        if (!full || end > to)
            return null;
        if (Seat(end, to) is { } seat)
            (end, sure) = (seat.To, sure && (moved || !seat.Part));
        return phrases.Any(p => p is PlacePhrase { Place.Sort: not PlaceSort.OwnHoles } && p.From < end && p.To > end) || phrases.Any(p => p is PlacePhrase { Place.Sort: PlaceSort.OwnHoles } own && own.From >= at && own.From < end && own.To > end) && end < to && !Rests(end, to) ? null : (end, sure);
    }

    /// <summary>"over the dowels", "their rods", "in its own bore": what it sits on.</summary>
    private (int To, bool Part)? Seat(int at, int to)
    {
        int k = at;
        while (Word(k) is "over" or "on" or "onto" or "in" or "into" or "to" or "of" or "down")
            k++;
        int noun = k;
        while (Word(noun) is "the" or "its" or "their" or "his" or "her" or "each" or "own" or "right" or "same" or "proper" or "my" or "new")
            noun++;
        if (k == noun && noun < to && Word(noun) is "it" or "them" or "that" && Rests(noun + 1, to))
            return (noun + 1, true);
        if (noun >= to || noun == at)
            return null;
        if (RefitWords.To("seat", tokens, noun) is var end && end > noun)
            return (end, phrases.Any(p => p is ThingPhrase { Thing: { Sort: ThingSort.Part, Kind: not ("dowel" or "key" or "spigot") } } && p.From <= noun && p.To >= end && p.From >= at));
        return null;
    }

    /// <summary>Records what went on; the same kind told one by one is told once.</summary>
    private List<Thing> Goes(Breath breath, List<ThingPhrase> named, int from, int to)
    {
        var things = named.Select(n => n.Thing.Kind == "rod" && named.Count == 1 ? CapOf(n.Thing) : from < named[0].From ? n.Thing : Caps(n, to)).ToList();
        for (int i = 0; i < things.Count; i++)
            Goes(breath, things[i], i == 0 ? from : named[i].From, to);
        return things;
    }

    /// <summary>"mains on": their caps, where no shell was spoken of.</summary>
    private Thing Caps(ThingPhrase named, int to) =>
        named.Thing.Kind is "main-shell" or "rod-shell" && Range(named.To, to).Any(k => Word(k) == "on") && Range(named.From, named.To).All(k => tokens[k].Stem is not ("shell" or "bearing" or "half" or "upper" or "lower" or "top" or "bottom")) ? Bolted(named.Thing) : named.Thing;

    /// <param name="under">It went under what was told before it.</param>
    private void Goes(Breath breath, Thing told, int from, int to, bool under = false)
    {
        under &= breath.Steps.Count > 0;
        breath.On.Insert(breath.On.Count - (under ? 1 : 0), told);
        breath.Steps.Insert(breath.Steps.Count - (under ? 1 : 0), (to, () =>
        {
            Flush();
            var thing = Own(breath, [], told);
            var all = Range(from, to).Where(k => !tokens[k].IsBreak).ToList();
            foreach (var kind in thing.Ids.GroupBy(i => i.Split('.')[0]).ToList() is { Count: > 1 } kinds && thing.Others.Count == 0 ? kinds.Select(k => thing with { Kind = k.Key, Ids = [.. k], Name = index.NameOf(k.Key) + "s" }) : [thing])
            {
                if (breath.On.Count > 1 && facts.LastOrDefault() is On { Thing: { Others.Count: 0, Detail: "" } before } last && before.Kind == kind.Kind && kind is { Others.Count: 0, Detail: "" } && !before.Ids.Intersect(kind.Ids).Any())
                    facts[^1] = last with { Thing = before with { Ids = [.. before.Ids, .. kind.Ids], Name = index.NameOf(kind.Kind) + "s" }, Spans = [.. last.Spans, .. Spans(all)] };
                else
                    About(kind, all, t => new On(t));
            }

            if (!under)
                Speak(thing, from);
            draft = new Draft(Joined(breath, thing)) { Fitting = true };
        }
        ));
    }

    /// <summary>What is tightened after the part went on: a gasket or circlip is held by what it went under.</summary>
    private static Thing Joined(Breath breath, Thing thing) =>
        thing.Detail.Length == 0 && !thing.Kind.EndsWith("-gasket", StringComparison.Ordinal) && !thing.Kind.EndsWith("-seal", StringComparison.Ordinal) && thing.Kind is not ("circlip" or "gudgeon" or "rod") ? thing : breath.On.LastOrDefault(t => t.Detail.Length == 0 && t.Kind is "head" or "barrel" or "sump" or "cam-cover" or "timing-cover" or "inlet-manifold" or "exhaust-manifold" or "water-pump") ?? thing;

    /// <summary>What is told beside a part that went on: which, how, into what, with what, and how tight.</summary>
    private int Tails(Breath breath, List<Thing> things, int at, int to, List<ThingPhrase> named)
    {
        while (at < to)
        {
            int k = tokens[at].Sort == TokenSort.Comma ? at + 1 : at;
            int from = named[0].From;
            if (things is [var row] && OfThose(row, at, to) is var (some, picked))
            {
                if (!some.Ids.SequenceEqual(row.Ids) || row.Others.Count > 0)
                {
                    breath.Steps.RemoveAt(breath.Steps.Count - 1);
                    breath.On.RemoveAt(breath.On.Count - 1);
                    Goes(breath, some, from, picked);
                    things = [some];
                }

                at = picked;
                continue;
            }

            int manner = RefitWords.To("manner", tokens, k);
            int own = Word(k) is "every" && Word(k + 1) is "one" or "single" ? k + 2 : Word(k) is "each" or "all" ? k + 1 : k;
            if (phrases.FirstOrDefault(p => p.From == own) is PlacePhrase { Place.Sort: PlaceSort.OwnHoles } place)
                (own, breath.Sure) = (place.To, true);
            else if (Word(own) is "in" or "into" or "to" && Seat(own, to) is { } seat && Range(own, seat.To).Any(w => Word(w) is "own" or "its" or "their"))
                (own, breath.Sure) = (seat.To, true);
            else if (own > k && RefitWords.To("manner", tokens, own) is var same && Word(own) is "where" or "back" && same > own)
                own = same;
            else
                own = -1;
            if (own < 0 && Word(k) == "where" && manner > k)
                (own, breath.Sure) = (manner, true);
            if (own > k)
            {
                at = own;
                continue;
            }

            if (manner > k && (k == at || Rests(manner, to)))
            {
                at = manner;
                continue;
            }

            // "to keep the dust out", "just so I can turn it over": what for.
            int purpose = Word(at) == "just" ? at + 1 : at;
            if ((Word(purpose) == "to" && Word(purpose + 1) is "keep" or "stop" or "see" or "check" or "hold" or "save" or "let") || (Word(purpose) == "so" && Word(purpose + 1) is "i" or "we" or "you" or "it" or "that" && Word(purpose + 2) is "can" or "could" or "'ll" or "wont" or "doesnt"))
            {
                while (at < to && !tokens[at].IsBreak)
                    at++;
                continue;
            }

            if (k == at && Word(k) is "dry")
            {
                at++;
                continue;
            }

            int next = Torque(breath, at, to, null, things[^1]);
            if (next < 0)
                next = With(breath, k, to, things[^1]);
            if (next < 0)
                next = Lining(breath, k, to, k > at);
            if (next <= at)
                return at;
            at = next;
        }

        return at;
    }

    /// <summary>"dropped the head back on", "I have put in the crank", "fitted the main caps".</summary>
    private int PutBack(Breath breath, int at, int to)
    {
        int k = Past("aux", at, to);
        int verb = Word(k) is "got" or "have" ? k + 1 : RefitWords.To("motion", tokens, k);
        bool full = RefitWords.To("full", tokens, k) is var whole && whole > k;
        if (verb == k && !full && !(Word(k - 1) == "got" && k > at))
            return -1;
        verb = Math.Max(verb, whole);
        int particle = verb;
        if (Word(particle) is "back" or "on" or "in" or "up" or "down")
            particle++;
        var (named, end) = Nouns(breath, particle, to);
        if (named.Count == 0 || named.Any(n => n.Thing.Sort != ThingSort.Part))
            return -1;
        if (!Lexicon.Copulas.Contains(Word(end)) && Went(end, to) is var (on, sure))
            (end, full) = (on, full || sure);
        else if (!full)
            return -1;
        breath.Sure |= full;
        return Tails(breath, Goes(breath, named, at, end), end, to, named);
    }
}
