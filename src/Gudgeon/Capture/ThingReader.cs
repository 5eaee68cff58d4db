namespace Gudgeon.Capture;

/// <summary>Reads a part with the words that say which: "number three exhaust", "left head", "plugs, all six", "rod caps one to four".</summary>
internal sealed partial class ThingReader(IReadOnlyList<Token> tokens, PartIndex index, ThingResolver resolver)
{
    private static readonly HashSet<string> GasKinds = ["follower", "cam", "shim", "finger", "rocker", "spring", "guide", "seat", "stem-seal", "collet", "retainer", "pushrod", "pushrod-tube", "phaser", "cam-cap", "cam-sprocket", "pivot", "cam-seal", "spring-seat"];

    private static readonly HashSet<string> Level = ["upper", "lower", "front", "rear", "top", "bottom", "middle", "centre", "center", "inner", "outer", "back", "side", "last", "end", "rearmost", "hindmost", "foremost", "frontmost", "backmost"];

    /// <summary>Words before a part that tell no two of a kind apart.</summary>
    private static readonly HashSet<string> Kindly = ["engine", "petrol", "diesel", "gasoline", "overhead", "mechanical", "mech", "electric", "ignition", "duplex", "simplex", "ribbed", "radiator", "spark", "motor", "brake", "pressure", "main"];

    private static readonly HashSet<string> Loose = ["the", "my", "its", "their", "that", "this", "these", "those", "old", "new", "whole", "complete", "both", "a", "an", "poor", "bloody", "damn", "stupid", "original", "missing", "same", "big", "little", "long", "short", "dirty", "other", "actual", "wee", "tiny", "thick", "thin", "fat", "daft", "flipping", "rotten"];

    private static readonly HashSet<string> CapKinds = ["rod", "rod-cap", "rod-shell", "main-cap", "main-shell", "crank", "cam", "cam-cap", "piston", "sump", "bedplate"];

    /// <summary>The kind read last: a cap after a distributor is the distributor's.</summary>
    private string lastKind = "";

    /// <summary>Whether a "one" before the part was said as its number.</summary>
    private bool oneNamed;

    /// <summary>"inlet buckets and shims": what was said of the first holds for the second.</summary>
    private string gas = "";
    private int gasTo = -1;

    private string Word(int at) => at >= 0 && at < tokens.Count && tokens[at].IsWord ? tokens[at].Text : "";

    private string Stem(int at) => at >= 0 && at < tokens.Count && tokens[at].IsWord ? tokens[at].Stem : "";

    public ThingPhrase? At(int from)
    {
        if (Bore(from) is { } bore)
            return bore;
        if (TheOne(from) is { } pronoun)
            return pronoun;
        if (Stranger(from) is { } stranger)
            return stranger;
        if (Between(from) is { } run)
            return run;
        if (Piped(from) is { } pipe)
            return pipe;
        if (PieceOf(from) is { } piece)
            return piece;
        if (OwnPiece(from))
            return null;
        var selectors = new Selectors();
        if (Word(from - 1) == "and" && gasTo == from - 1)
            selectors.Gas = gas;
        bool lobe = false;
        bool sharedPlural = false;
        int at = Before(from, selectors, out bool other, out bool counted);
        if (at < 0)
            return null;
        var (values, end) = Named(at, selectors);
        // "thermostat housing cracked": a piece, though the two words name the whole.
        if (end > at + 1 && Word(end - 1) == "housing" && Spoilt(end) && index.Book.Longest(tokens.Take(end - 1).ToList(), at) is { Values.Count: > 0 } bare && bare.To == end - 1 && bare.Values.Any(b => values.Any(v => v.Kind == b.Kind)))
            (values, end) = ([.. bare.Values.Where(b => values.Any(v => v.Kind == b.Kind))], end - 1);
        // "its cover": that of the part spoken of.
        if (values.Count > 0 && end == at + 1 && Word(at - 1) == "its" && (lastKind.Length > 0 ? lastKind : resolver.LastKind) is { Length: > 0 } owner && values.All(v => v.Kind != owner) && index.OwnedBy(owner).Where(k => index.NameOf(k).Split(' ')[^1] == Stem(at)).ToList() is [var its])
            values = [new PartWord(its, false, null, 0)];
        // "bottom cover" of an engine that has no such part may be the lower of its covers.
        if (end - at > 1 && Level.Contains(Word(at)) && values.All(v => v.IsLine ? index.Lines(v.Kind).Count == 0 : index.Parts(v.Kind).Count == 0) && Longest(at + 1) is { Values.Count: > 0 } shorter && shorter.Values.Any(v => index.Parts(v.Kind).Count > 0))
        {
            selectors.Where.Add(Word(at));
            (values, end, at) = (shorter.Values, shorter.To, at + 1);
            if (resolver.LastKind.Length > 0 && values.Any(v => v.Kind == resolver.LastKind))
                values = [.. values.Where(v => v.Kind == resolver.LastKind)];
        }

        if (values.Count > 0 && Word(end) == "and" && Longest(end + 1) is { Values.Count: > 0 } second && second.To - end > 2 && tokens[second.To - 1].Plural && index.Book.Longest([.. Enumerable.Range(at, end - at).Select(i => tokens[i]), tokens[second.To - 1]], 0) is { Values: [{ Rank: < 2 } shared, ..] } joined && joined.To == end - at + 1 && shared.Kind != values[0].Kind)
            (values, sharedPlural) = (joined.Values, true);
        if (values.Count == 0 || Word(end) is "tool" or "puller" or "compressor" or "extractor" or "socket" or "spanner" or "drift" or "jig" or "installer" or "remover" or "tools" && !values.Any(v => v.Kind == "ac-compressor"))
            return null;
        // "spring washers", "cap nuts": fasteners named after a part.
        if (Lexicon.Fasteners.Longest(tokens, at) is { Values: [var own, ..] } named && named.To > end && (own is "washer" or "spacer" or "split pin" || Word(at) is "cap" or "spring"))
            return null;
        if (values.All(v => v.Rank == 2) && MoreWords.PlainMisheard.Contains(tokens[end - 1].Stem) && !Misheard(from, at, end))
            return null;
        if (end == at + 1 && ((Word(at) is "finger" or "fingers" && Word(end) is "tight" or "loose") || (Word(at) == "cap" && (Word(at - 1) == "to" || (lastKind.Length > 0 && !CapKinds.Contains(lastKind))))))
            return null;
        if (end - at > 1 && Word(at) is "upper" or "lower" && index.Parts(values[0].Kind).Count > 1)
            selectors.Where.Add(Word(at));
        // "top ring on two": its place in the stack belongs to its name.
        if (end - at > 1 && values.All(v => v.Kind == "ring-comp") && Word(at) is "top" or "first" or "second" or "middle")
            selectors.Where.Add(Word(at) is "top" or "first" ? "top" : "second");
        if (end == at + 1 && Word(at) is "cap" or "caps" && Word(end) == "on" && Word(end + 1) is "both" or "it" or "them" or "the" && Word(end + 1) != "the" | Word(end + 2) is "ends" or "end")
            return null;
        if (end == at + 1 && Word(at) is "inlet" or "exhaust" or "intake" && ((Word(end) == "and" && Word(end + 1) is "exhaust" or "inlet" && Longest(end + 1).To == end + 2) || (Word(at - 1) == "and" && Word(at - 2) is "inlet" or "exhaust" or "intake")))
            return null;
        if (end == at + 1 && Word(at) is "inlet" or "exhaust" or "intake" && Word(end) is "lobe" or "lobes" && index.Parts("cam").Count > 0)
        {
            selectors.Gas = Word(at) == "exhaust" ? "ex" : "in";
            values = [new PartWord("cam", false, null, 0)];
            lobe = counted && selectors.Numbers is [1] && !oneNamed;
            if (lobe)
                selectors.Numbers.Clear();
        }

        if (end == at + 1 && Stem(at) is "inlet" or "exhaust" or "intake" && Word(at - 1) == "the" && Word(end) is "one" or "ones" && Word(end + 1) is "is" or "are" or "'s" or "was" or "were" or "has" or "have")
            return null;
        if (end - at > 1 && Word(at) is "inlet" or "exhaust" or "intake" && values.Any(v => GasKinds.Contains(v.Kind)))
            selectors.Gas = Word(at) == "exhaust" ? "ex" : "in";
        bool plural = sharedPlural || tokens[end - 1].Plural || tokens[end - 1].Text is "halves" or "both" or "wiring";
        // "inlets" of an engine with one inlet manifold are its valves.
        if (plural && end == at + 1 && Stem(at) is "inlet" or "intake" or "exhaust" && Word(end) is not ("manifold" or "cam") && index.Parts(Stem(at) == "exhaust" ? "exhaust-manifold" : "inlet-manifold").Count < 2 && values.Any(v => v.Kind is "valve-in" or "valve-ex" && index.Parts(v.Kind).Count > 0) && Lexicon.Fasteners.Longest(tokens, end).Values.Count == 0)
            values = [.. values.Where(v => v.Kind is "valve-in" or "valve-ex")];
        if (selectors.Numbers.Count > 0 && plural && counted)
        {
            // "six plugs": all of them when that is how many there are.
            selectors.AllOf = selectors.Numbers[0];
            selectors.Numbers.Clear();
        }

        int? told = null;

        if (other && selectors.Side.Length == 0)
            selectors.Side = "other";
        int partEnd = end;
        end = Tail(end);
        plural |= end > partEnd && (tokens[end - 1].Plural || Word(end - 1) == "set");
        string fastener = Fastener(ref end, out bool boltsPlural);
        if (counted && fastener.Length > 0 && (selectors.Numbers is [_] || selectors.AllOf is not null))
        {
            // "four thermostat bolts", "one case nut": the bolts are counted, not the thermostats.
            told = selectors.AllOf ?? selectors.Numbers[0];
            selectors.Numbers.Clear();
            selectors.AllOf = null;
        }
        else if (counted && selectors.Numbers is [1] && Word(partEnd) != "'s" && !oneNamed)
            selectors.Numbers.Clear();
        string detail = fastener.Length == 0 ? Detail(ref end) : "";
        int count = index.Parts(values[0].Kind).Count;
        // "exhaust two is burnt": a valve, for there is one pipe.
        if (count <= 1 && partEnd - at == 1 && end == partEnd && fastener.Length == 0 && values.Where(v => v.Kind is "valve-in" or "valve-ex").ToList() is [var numbered, ..] && Picked(end))
            count = index.Parts(numbered.Kind).Count;
        end = After(from, end, selectors, values, ref plural, fastener.Length > 0, count, boltsPlural);
        string said = string.Join(" ", Enumerable.Range(at, partEnd - at).Select(i => tokens[i].Text));
        if (selectors.Gas.Length > 0 && !values.Any(v => GasKinds.Contains(v.Kind)))
            selectors.Gas = "";
        (gas, gasTo) = (selectors.Gas, end);
        if (detail.StartsWith("hole", StringComparison.Ordinal) && selectors.Numbers is [var hole] && count <= 1)
        {
            detail = $"hole {hole}";
            selectors.Numbers.Clear();
        }

        // "number six intake" among pushrods is a pushrod.
        string spoken = lastKind.Length > 0 ? lastKind : resolver.LastKind;
        if (Word(partEnd - 1) is "intake" or "inlet" or "exhaust" && partEnd - at == 1 && GasKinds.Contains(spoken) && spoken is not "cam" && selectors.Numbers.Count > 0)
        {
            selectors.Gas = Word(partEnd - 1) == "exhaust" ? "ex" : "in";
            values = [new PartWord(spoken, false, null, 0)];
        }

        values = Narrow(values, selectors, fastener, partEnd);
        if (values.Count == 0)
            return null;
        if (values.Any(v => v.Kind is "main-shell" or "rod-shell") && (selectors.Numbers.Count > 0 || selectors.Where.Any(w => w is "front" or "rear" or "middle" or "centre" or "center")) && Stem(partEnd - 1) is "bearing" or "end" or "main")
            plural = true;
        if (values.Count > 1 && Stem(partEnd - 1) == "shell" && lastKind is "rod-cap" or "rod" or "main-cap" or "bedplate")
            values = [.. values.Where(v => v.Kind == (lastKind is "rod-cap" or "rod" ? "rod-shell" : "main-shell"))];
        bool whole = selectors.All || plural;
        var thing = resolver.Resolve(values, selectors, whole || fastener.Length > 0 || selectors.AllOf > 1, said);
        int? number = plural && counted ? selectors.AllOf : null;
        if (selectors.AllOf is { } n && thing.Ids.Count > 0 && n < thing.Ids.Count && thing.Others.Count == 0)
            thing = thing with { Ids = [], Where = $"{n} of {thing.Ids.Count}" };
        if (fastener.Length > 0)
            thing = Joint(thing, fastener);
        if (detail.Length > 0)
            thing = thing with { Detail = detail, Others = [.. thing.Others.Select(o => o with { Detail = detail })] };
        // "rod journal five": a place of the crank.
        if (detail == "journal" && thing.Kind is "rod" or "rod-shell" or "main-shell" && selectors.Numbers is [var journal] && index.Parts("crank") is [var crank])
            thing = new Thing(ThingSort.Part, "crank", [crank.Id], crank.Name) { Where = $"{(thing.Kind == "main-shell" ? "main" : "big end")} {journal}" };
        // "one exhaust lobe": one of them, or cylinder one's.
        if (lobe && thing.Others.Count == 0)
            thing = thing with { Others = [thing with { Detail = $"{detail} of cylinder 1" }] };
        lastKind = thing.Kind;
        return new ThingPhrase(from, end, thing, plural || boltsPlural, selectors.All) { Told = told, Number = number };
    }

    /// <summary>"turbo oil return", "pipe to the filter head": a line told by what flows in it and what it joins.</summary>
    private ThingPhrase? Piped(int from)
    {
        if (index.Pipes.At(tokens, from, resolver.Near, PartAt) is not { } read)
            return null;
        int start = from;
        while (Loose.Contains(Word(start)))
            start++;
        var listed = Longest(start);
        bool near = read.Lines.All(l => l.From.Part == resolver.Near || l.To.Part == resolver.Near);
        bool oneListed = listed.Values.Any(v => v.IsLine && index.Lines(v.Kind).Count > 0);
        if (listed.To >= read.To && listed.Values.Count > 0 && (oneListed || !near || read.Words < 2 || listed.Values.Any(v => v.Rank == 0 && index.Parts(v.Kind).Count > 0)))
            return null;
        if (read.Lines.Count > 1 && oneListed && listed.To >= start + 2)
            return null;
        int end = read.To;
        var things = read.Lines.Select(l => new Thing(ThingSort.Line, l.Kind, [l.Id], l.Name)).ToList();
        string said = string.Join(" ", Enumerable.Range(start, end - start).Select(i => tokens[i].Text));
        var thing = things.Count == 1 || !read.Plural ? things[0] with { Others = [.. things.Skip(1)] } : new Thing(ThingSort.Line, things[0].Kind, [.. read.Lines.Select(l => l.Id)], said);
        if (NumberWords.At(tokens, end) is { IsCount: true } && read.Lines.Count > 1)
            return null;
        string fastener = Fastener(ref end, out bool boltsPlural);
        if (fastener.Length > 0)
            thing = thing with { Detail = fastener, Others = [.. thing.Others.Select(o => o with { Detail = fastener })] };
        return new ThingPhrase(from, end, thing, read.Plural || boltsPlural, false);
    }

    private (IReadOnlyList<string> Ids, int To)? PartAt(int at) =>
        Longest(at) is { Values.Count: > 0 } found && found.Values.SelectMany(v => index.Parts(v.Kind)).Select(p => p.Id).Distinct().ToList() is { Count: > 0 and < 12 } ids ? (ids, found.To) : null;

    /// <summary>"the one on the far bank": of the kind spoken of last.</summary>
    private ThingPhrase? TheOne(int from)
    {
        string kind = lastKind.Length > 0 ? lastKind : resolver.LastKind;
        int which = Word(from) is "the" ? from + 1 : from;
        if (Stem(which) is "inlet" or "exhaust" or "intake" && OfGas(from, which, kind) is { } ofGas)
            return ofGas;

        if (Word(from) is not "the" || Word(from + 1) is not ("one" or "ones") || Word(from + 2) is not ("on" or "at" or "in") || index.Parts(kind).Count < 2)
            return null;
        var selectors = new Selectors();
        bool plural = Word(from + 1) == "ones";
        List<PartWord> values = [new PartWord(kind, false, null, 0)];
        int end = After(from, from + 2, selectors, values, ref plural, false, index.Parts(kind).Count, false);
        return selectors.Side.Length + selectors.Numbers.Count > 0 ? new ThingPhrase(from, end, resolver.Resolve(values, selectors, plural, "one"), plural, false) : null;
    }

    /// <summary>"the inlet ones on one and four", "only the exhaust one of cylinder three", "the inlet on number two": of the kind spoken of last, that side of the gas.</summary>
    private ThingPhrase? OfGas(int from, int which, string kind)
    {
        bool valve = kind is "valve-in" or "valve-ex";
        bool named = Word(which + 1) is "ones" or "one";
        if (!valve && !(GasKinds.Contains(kind) && kind is not "cam"))
            valve = named && Picked(which + 2);
        else if (!named && !Picked(which + 1))
            return null;
        if (!valve && (kind == "cam" || !GasKinds.Contains(kind)))
            return null;
        var selectors = new Selectors { Gas = Stem(which) == "exhaust" ? "ex" : "in" };
        string own = valve ? selectors.Gas == "ex" ? "valve-ex" : "valve-in" : kind;
        int count = index.Parts(own).Count;
        if (count < 2)
            return null;
        List<PartWord> values = [new PartWord(own, false, null, 0)];
        bool plural = Word(which + 1) == "ones" || tokens[which].Plural;
        int end = After(from, named ? which + 2 : which + 1, selectors, values, ref plural, false, count, false);
        var read = resolver.Resolve(values, selectors, plural, index.NameOf(own));
        lastKind = own;
        return new ThingPhrase(from, end, read, plural, selectors.All);
    }

    /// <summary>"on number two", "of cylinder three": by its number, and something is said of it or no more.</summary>
    private bool Picked(int at)
    {
        bool linked = Word(at) is "on" or "of" or "for";
        int number = linked ? at + 1 : at;
        bool named = Word(number) is "number" or "cylinder" or "cyl";
        if (!(NumberWords.At(tokens, named ? number + 1 : number) is { IsCount: true, Value: > 0 and <= 28 } n) || Sized(n.To))
            return false;
        // "the exhaust one is bent" tells no number.
        if (!linked && !named && Word(number) == "one")
            return false;
        int last = n.To;
        while (Word(last) is "and" or "to" or "through" && NumberWords.At(tokens, last + 1) is { IsCount: true } next && !Sized(next.To))
            last = next.To;
        return linked && named || (Word(last) is "'s" or "is" or "are" or "was" or "were" or "has" or "have" or "looks" or "look" || Lexicon.Faults.Longest(tokens, last).Values.Count > 0 || linked && (last >= tokens.Count || tokens[last].IsBreak));
    }

    /// <summary>Selectors before the part; -1 when what stands here can be none.</summary>
    private int Before(int at, Selectors selectors, out bool other, out bool counted)
    {
        other = false;
        counted = false;
        oneNamed = false;
        for (int start = at; at < tokens.Count; at++)
        {
            string word = Word(at);
            if (Sides(at) is { } both)
            {
                selectors.All = true;
                at = both - 1;
                continue;
            }

            if (word is "left" or "right" or "far" or "near" or "offside" or "nearside" && Word(at + 1) is not ("in" or "on" or "out" or "the" or "to" or "back"))
            {
                selectors.Side = word is "offside" or "nearside" ? "" : word;
                if (word is "offside" or "nearside")
                    selectors.Where.Add(word);
                if (Word(at + 1) is "hand" && Word(at + 2) is not "tight")
                    at++;
                if (Word(at + 1) is "bank" or "side" && Longest(at + 2).Values.Count > 0)
                    at++;
                continue;
            }

            if (word is "passenger" or "driver" or "drivers" or "passengers" && Word(Word(at + 1) == "'s" ? at + 2 : at + 1) is "side")
            {
                selectors.Side = $"{word.TrimEnd('s')} side";
                at += Word(at + 1) == "'s" ? 2 : 1;
                continue;
            }

            if (word == "bank" && Bank(at + 1) is { } bank && Longest(bank.To).Values.Count > 0)
            {
                selectors.Side = $"bank:{bank.Bank}";
                at = bank.To - 1;
                continue;
            }

            if (Hand(at) is { } hand && (Longest(hand.To).Values.Count > 0 || Word(hand.To) is "side" or "bank" or "inlet" or "exhaust" or "intake" or "cylinder"))
            {
                selectors.Side = hand.Side;
                at = hand.To - 1;
                if (Word(at + 1) is "bank" or "side" && Longest(at + 2).Values.Count > 0)
                    at++;
                continue;
            }

            if (word is "odd" or "even" && Leads(Word(at + 1) == "numbered" ? at + 2 : at + 1))
            {
                selectors.Parity = word == "odd" ? 1 : 0;
                if (Word(at + 1) == "numbered")
                    at++;
                continue;
            }

            if (word is "every" or "each" && Leads(Word(at + 1) == "single" ? at + 2 : at + 1))
            {
                selectors.All = true;
                if (Word(at + 1) == "single")
                    at++;
                continue;
            }

            bool part = Longest(at).Values.Count > 0;
            if (!part && Kindly.Contains(word) && Longest(at + 1).Values.Count > 0)
                continue;
            if (word is "inlet" or "intake" or "exhaust" && !LongPart(at) && Longest(Word(at + 1) == "side" ? at + 2 : at + 1) is { Values.Count: > 0 } next && next.Values.Any(v => GasKinds.Contains(v.Kind)))
            {
                selectors.Gas = word == "exhaust" ? "ex" : "in";
                if (Word(at + 1) == "side")
                    at++;
                continue;
            }

            if (part && !(Level.Contains(word) && (!LongPart(at) || Longest(at + 1).To > Longest(at).To)))
                return at;
            if (word is "number" or "numbers" or "cylinder" or "cylinders" or "nos" or "no" && NumberWords.At(tokens, at + 1) is { IsCount: true } n && n.Int is > 0 and <= 40)
            {
                selectors.Numbers.Add(n.Int);
                at = n.To - 1;
                while ((Word(at + 1) is "and" || tokens.ElementAtOrDefault(at + 1).Sort == TokenSort.Comma) && (Word(at + 2) is "number" or "cylinder" or "no" ? at + 3 : at + 2) is var follow && NumberWords.At(tokens, follow) is { IsCount: true } next1 && next1.Int > selectors.Numbers[^1] && next1.Int <= 40)
                {
                    selectors.Numbers.Add(next1.Int);
                    at = next1.To - 1;
                }

                if (Word(at + 1) == "'s")
                    at++;
                else if (Word(at + 1) is "cylinder" && Longest(at + 2).Values.Count > 0 && word is not ("cylinder" or "cylinders"))
                    at++;
                continue;
            }

            if (word is "all" && (at == start || Word(at + 1) is "the" or "of"))
            {
                selectors.All = true;
                continue;
            }

            if (word == "both")
            {
                selectors.All = true;
                continue;
            }

            // "all but number three plug"
            if (selectors.All && selectors.Except.Count == 0 && But(at, selectors, 0) is { } but && Longest(but).Values.Count > 0)
            {
                at = but - 1;
                continue;
            }

            if (Level.Contains(word))
            {
                selectors.Where.Add(word is "back" or "rearmost" or "hindmost" or "backmost" ? "rear" : word is "foremost" or "frontmost" ? "front" : word);
                continue;
            }

            // "first and last plugs": the outer two.
            if (word == "first" && Word(at + 1) == "and" && Word(at + 2) is "last" && Longest(at + 3).Values.Count > 0)
            {
                selectors.Where.Add("outer");
                at += 2;
                continue;
            }

            // "first three plugs": from the front.
            if (word == "first" && NumberWords.At(tokens, at + 1) is { Sort: NumSort.Whole, Value: > 1 and < 20 } fromFront && Leads(fromFront.To))
            {
                selectors.Where.Add("front");
                continue;
            }

            // "one and two pistons", "one, two and four"
            if (Listed(at) is { } listed)
            {
                selectors.Numbers.AddRange(listed.Numbers);
                at = Word(listed.To) == "'s" ? listed.To : listed.To - 1;
                continue;
            }

            if (NumberWords.At(tokens, at) is { } num && num.Sort is NumSort.Whole or NumSort.Ordinal && num.Int is > 0 and <= 99 && Leads(num.To))
            {
                if (num.Sort == NumSort.Ordinal && Longest(num.To) is var (_, e) && Word(e - 1) is "ring" or "rings")
                    return -1;
                selectors.Numbers.Add(num.Int);
                counted = num.Sort == NumSort.Whole;
                at = num.To - 1;
                if (Word(at + 1) == "'s")
                {
                    oneNamed = true;
                    counted = false;
                    at++;
                }
                continue;
            }

            if (!Loose.Contains(word) || word.Length == 0)
                return -1;
            other |= word == "other";
        }

        return -1;
    }

    private bool LongPart(int at) => Longest(at) is var (values, end) && values.Count > 0 && end - at > 1;

    /// <summary>A part follows here, perhaps after more selectors.</summary>
    private bool Leads(int at)
    {
        for (int i = 0; i < 4 && at + i < tokens.Count; i++)
        {
            if (Longest(at + i).Values.Count > 0 && Word(at + i) is not ("top" or "black"))
                return true;
            if (!(Word(at + i) is "inlet" or "exhaust" or "intake" or "left" or "right" or "'s" or "other" or "old" or "new" or "pair" or "of" or "cylinder" || Level.Contains(Word(at + i)) || Kindly.Contains(Word(at + i)) || NumberWords.At(tokens, at + i) is { Sort: NumSort.Whole, Value: < 20 }))
                return false;
        }

        return false;
    }

    private (List<PartWord> Values, int To) Longest(int at) =>
        index.Book.Longest(tokens, at) is { Values.Count: > 0 } found ? found : Valves(at) ?? ([], at);

    /// <summary>A plain word stands for a part only in a part's company.</summary>
    private bool Misheard(int from, int at, int end) =>
        (from == 0 || tokens[from - 1].IsBreak || Word(at - 1) is "the" or "left" or "right" or "my")
        && Word(end) is "off" or "out" or "'s" or "bolts" or "bolt" or "plug" or "gasket" or "cap" or "caps" or "came" or "cover" or "lobe" or "lobes";

    private int Tail(int end)
    {
        while (!(Word(end) == "housing" && Spoilt(end + 1)) && Word(end) is "housing" or "nose" or "screen" or "gauze" or "assembly" or "unit" or "complete" or "body" or "itself" or "casting" or "motor" or "rubbers" or "rubber" or "kit" or "set" && Lexicon.Fasteners.Longest(tokens, end).Values.Count == 0 && Longest(end).Values.Count == 0)
            end++;
        return end;
    }

    private string Fastener(ref int end, out bool plural)
    {
        plural = false;
        // "the left head's bolts"
        bool owned = Word(end) == "'s" && Lexicon.Fasteners.Longest(tokens, end + 1) is { Values.Count: > 0 } theirs && tokens[theirs.To - 1].Plural;
        int at = owned || Word(end) is "securing" or "fixing" or "retaining" or "mounting" or "holding" ? end + 1 : end;
        if (Word(at) is "drain" or "banjo" || Lexicon.Fasteners.Longest(tokens, at) is not { Values.Count: > 0 } found)
            return "";
        plural = tokens[found.To - 1].Plural;
        end = found.To;
        return found.Values[0];
    }

    private string Detail(ref int end)
    {
        int at = end;
        string which = "";
        if (NumberWords.At(tokens, at) is { Sort: NumSort.Ordinal } nth && Lexicon.Details.Longest(tokens, nth.To).Values.Count > 0)
            (which, at) = ($"{nth.Int}", nth.To);
        if (Lexicon.Details.Longest(tokens, at) is not { Values.Count: > 0 } found || Longest(at).To > found.To)
            return "";
        end = found.To;
        return which.Length > 0 ? $"{found.Values[0]} {which}" : found.Values[0];
    }
}
