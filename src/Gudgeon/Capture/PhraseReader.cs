namespace Gudgeon.Capture;

/// <summary>Walks the tokens once and groups them into phrases; what belongs to no phrase stays a word.</summary>
internal sealed class PhraseReader(IReadOnlyList<Token> tokens, ThingReader things, LotReader lots, PlaceReader places, DueReader dues)
{
    private string Word(int at) => at >= 0 && at < tokens.Count && tokens[at].IsWord ? tokens[at].Text : "";

    /// <summary>The phrase that starts at the token, cut to a word when it would run past the end.</summary>
    public Phrase ReadOne(int at, int to)
    {
        var phrase = Next(at);
        return phrase.To > to ? new WordPhrase(at, at + 1, tokens[at].Text, Lexicon.Fillers.Contains(tokens[at].Text)) : phrase;
    }

    private Phrase Next(int at)
    {
        var token = tokens[at];
        if (token.IsBreak)
            return new BreakPhrase(at, at + 1, token.IsEnd, token.Sort == TokenSort.Question);
        if (Word(at) == "stood" && Word(at + 1) is "the" or "it" or "them" or "my" or "all" && Listed(at) is { } stood)
            return stood;
        if (Idiom(at))
            return new WordPhrase(at, at + (Word(at) == "stood" ? 1 : 2), $"{Word(at)} {Word(at + 1)}", true);
        if (places.OutOf(at) is var source && source > at)
            return new WordPhrase(at, source, "out of", true);
        if (places.TagAt(at) is { } tag)
            return new TagPhrase(at, tag.To, tag.Tag);
        if (dues.At(at) is { } due)
            return new DuePhrase(at, due.To, due.Due);
        // "back on the shelf" is a place; "back on" alone is a deed.
        if (Word(at) is "back" && places.At(at + 1) is { Place.Sort: PlaceSort.Container } shelved)
            return new PlacePhrase(at, shelved.To, shelved.Place);
        // "the carbs are staying in their box": a place, not on the engine.
        if (Word(at) is "stays" or "stay" or "staying" or "stayed" && places.At(at + 1) is { Place.Sort: PlaceSort.Container } kept && Enumerable.Range(at + 2, kept.To - at - 2).Any(k => Lexicon.Containers.Longest(tokens, k).Values.Count > 0))
            return new PlacePhrase(at, kept.To, kept.Place);
        // "the alternator's up in the loft", "away in the spare room"
        if (Word(at) is "over" or "up" or "down" or "away" && Lexicon.Copulas.Contains(Word(at - 1)) && places.At(at + 1) is { Place.Sort: PlaceSort.Container } far)
            return new PlacePhrase(at, far.To, far.Place);
        // "put it out in the shed"
        if (Word(at) is "out" or "over" or "up" or "down" or "away" && places.At(at + 1) is { Place.Sort: PlaceSort.Container } aside && Enumerable.Range(Math.Max(0, at - 6), Math.Min(6, at)).Any(k => Word(k) is "put" or "left" or "stuck" or "laid" or "placed" or "shoved" or "chucked" or "stashed" or "stored" && tokens.Skip(k).Take(at - k).All(t => !t.IsBreak)))
            return new PlacePhrase(at, aside.To, aside.Place);
        if (places.At(at) is { } place)
            return new PlacePhrase(at, place.To, place.Place);
        if (Place(at) is { } where && !(Word(at) == "the" && things.At(at)?.To > where.To))
            return where;
        if (Amount(at) is { Amount.Unit: "finger" } fingers && Word(fingers.To) is "below" or "above" or "down" or "deep" or "wide" or "from" or "up")
            return fingers;
        if (Word(at) == "pick" && Word(at + 1) == "up" && Word(at + 2) is "a" or "an" or "some" or "new" && Listed(at) is ActPhrase picked)
            return picked;
        var thing = things.At(at);
        var lot = lots.At(at);
        if (thing is not null && (lot is null || thing.To >= lot.To || thing.Thing.Sort == ThingSort.Fasteners))
            return thing;
        if (lot is not null)
            return lot;
        if (Amount(at) is { } amount)
            return amount;
        if (NumberWords.At(tokens, at) is { } num)
            return new NumPhrase(at, num.To, num);
        return Listed(at) ?? new WordPhrase(at, at + 1, token.Text, Lexicon.Fillers.Contains(token.Text));
    }

    /// <summary>Two words that mean something else together than their parts do.</summary>
    private bool Idiom(int at) => (Word(at), Word(at + 1)) switch
    {
        ("turns" or "turned" or "find" or "figure" or "work" or "sort" or "worked" or "sorted" or "figured" or "check" or "rule" or "ran" or "missed" or "pointed" or "sussed", "out") => Word(at + 2) is not ("of" or "the") || Word(at) is "turns" or "turned" or "ran" or "figure" or "figured",
        ("straight" or "right" or "head", "off") => things.At(at)?.To != at + 1 && Word(at) != "head",
        ("stood", "on" or "in" or "up" or "against" or "by" or "at" or "upright") => true,
        ("hands", "on") or ("tooth", "out") or ("teeth", "out") or ("degrees", "out") or ("way", "out") or ("day", "off") or ("night", "off") => true,
        ("facing" or "pointing" or "looking", "out" or "in" or "up" or "down") => false,
        ("good" or "first" or "bit", "go" or "off") => Word(at) == "good",
        _ => false,
    };

    private Phrase? Listed(int at)
    {
        var (faults, faultTo) = Lexicon.Faults.Longest(tokens, at);
        var (acts, actTo) = Lexicon.Acts.Longest(tokens, at);
        var (details, detailTo) = Lexicon.Details.Longest(tokens, at);
        // "white paint" and "split the case" are no faults.
        if (Word(at) is "wont" or "wouldnt" || (Word(at) is "refuses" or "refused" or "refusing" && Word(at + 1) == "to") || (Word(at) is "will" or "would" && Word(at + 1) == "not"))
        {
            int verb = Word(at) is "wont" or "wouldnt" ? at + 1 : at + 2;
            if (Word(verb) is "come" or "lift" or "pull" or "move" or "shift" or "budge" or "turn" or "undo" or "slide" or "drop" or "go" or "release" or "free" or "unscrew" or "part" or "separate" or "split" or "tap" or "drive" or "wind" or "unwind" or "play" or "press" or "knock" or "crack" && !tokens.Skip(verb).TakeWhile(t => !t.IsBreak).Any(t => t.Text is "till" or "until" or "unless" or "without" or "before" or "on" or "in"))
            {
                int stop = verb + 1;
                while (Word(stop) is "off" or "out" or "up" or "down" or "free" or "loose" or "undone" or "at" or "all" or "away" or "apart")
                    stop++;
                return new FaultPhrase(at, stop, "stuck", false);
            }
        }

        // "stuck through a bit of cardboard": put there.
        if (Word(at) == "stuck" && Word(at + 1) is "in" or "into" or "on" or "through" or "under" or "behind" && places.At(at + 1) is { Place.Sort: PlaceSort.Container })
            return new ActPhrase(at, at + 1, Act.Put, "stuck");
        if (Sights.At(tokens, at) is { } sight && sight.To > faultTo)
            return new FaultPhrase(at, sight.To, sight.Fault, sight.Damage);
        if (Word(at) == "full" && Word(at + 1) == "of" && faultTo <= at + 2)
        {
            int stuff = at + 2;
            while (Word(stuff) is "green" or "black" or "thick" or "nasty" or "old" or "white" or "brown" or "horrible" or "hard" or "dried" or "wet" or "the" or "some" or "fine" or "loose")
                stuff++;
            if (Word(stuff).Length > 0 && things.At(stuff) is null && NumberWords.At(tokens, stuff) is null && Lexicon.Fasteners.Longest(tokens, stuff).Values.Count == 0)
                return new FaultPhrase(at, stuff + 1, "dirty", false);
        }

        // "has gone all brittle": it is here, and this is how it is.
        if (acts.Count > 0 && acts[0] == Act.Miss && Word(actTo - 1) == "gone")
        {
            int state = actTo;
            while (Word(state) is "all" or "a" or "bit" or "very" or "really" or "quite" or "completely" or "totally" or "rather" or "so" or "as")
                state++;
            if (Lexicon.Faults.Longest(tokens, state) is { Values: [var become, ..] } became && Word(state) is not ("missing" or "in" or "out"))
                return new FaultPhrase(at, became.To, become.Fault, become.Damage);
        }

        // "came off fine", "lifted out clean": how it came, not how it is.
        if (faults.Count > 0 && faults[0].Fault is "fine" or "clean" or "smooth" && (Word(at - 1) != "away" || Word(at) != "clean") && Word(at - 1) is "off" or "out" or "away" or "undone" or "apart" or "free" or "on" or "in" or "back" or "together" && Enumerable.Range(at - 4, 3).Any(k => Word(k) is "came" or "come" or "comes" or "went" or "go" or "goes" or "gone" or "lifted" or "slid" or "pulled" or "dropped" or "popped"))
            return new WordPhrase(at, faultTo, Word(at), true);
        // "hung up on the wall"
        if (faults.Count > 0 && Word(at) == "hung" && Word(at + 1) == "up" && places.At(faultTo) is not null)
            return new ActPhrase(at, faultTo, Act.Put, "hung");
        // "cracked the big end nuts": undone; fasteners that are cracked are told as such after their name.
        if (Word(at) == "cracked" && (at == 0 || tokens[at - 1].IsBreak || Word(at - 1) is "i" or "we" or "and" or "just" or "then" or "'ve") && (things.At(at + 1) is { Thing.Sort: ThingSort.Fasteners } || Word(at + 1) is "the" or "all" or "both" && lots.At(at + 1) is { Lot.Fastener.Length: > 0 }))
            return new ActPhrase(at, at + 1, Act.Undo, "cracked");
        // "sixteen bolts nipped": done up.
        if (acts.Count > 0 && acts[0] == Act.Tighten && faultTo == actTo && (tokens.ElementAtOrDefault(at - 1).Stem is "bolt" or "nut" or "stud" or "screw"))
            return new ActPhrase(at, actTo, Act.Tighten, Word(at));
        // "broke the starter loose": undone, and "loose" tells how.
        bool opens = at == 0 || tokens[at - 1].IsBreak || Word(at - 1) is "and" or "then" or "i" or "we" or "'ve" or "have" or "just" or "finally";
        if (Word(at) is "broke" or "shook" or "knocked" && opens && Enumerable.Range(at + 1, 5).TakeWhile(k => k < tokens.Count && !tokens[k].IsBreak).Any(k => Word(k) is "loose" or "free" && Word(k + 1) is not ("nut" or "bolt")))
            return new ActPhrase(at, at + 1, Act.Undo, Word(at));
        if (faults.Count > 0 && Word(at) is "loose" or "free" && faultTo == at + 1 && Enumerable.Range(at - 6, 5).Any(k => Word(k) is "broke" or "cracked" or "shook" or "knocked" && tokens.Skip(k).Take(at - k).All(t => !t.IsBreak)))
            return new WordPhrase(at, at + 1, Word(at), true);
        // "got the starter free": it is off.
        if (Word(at) == "free" && (at + 1 >= tokens.Count || tokens[at + 1].IsBreak || Word(at + 1) is "and" or "at" or "now") && Enumerable.Range(at - 6, 5).Any(k => Word(k) is "got" or "worked" or "wiggled" or "prised" or "pried" or "pulled" or "tapped" && tokens.Skip(Math.Max(k, 0)).Take(at - k).All(t => !t.IsBreak)))
            return new ActPhrase(at, at + 1, Act.Off, "free");
        // "eased the starter out", "dropped it back in", "cut the hose off": the particle tells the deed, the verb how.
        if (Word(at) is "eased" or "worked" or "twisted" or "stripped" or "cut" or "slid" or "lifted" or "popped" or "dropped" or "bunged" or "stuck" or "screwed" or "tapped" or "knocked" or "wound" or "sawed" or "burnt" && opens && (Word(at + 1) is "it" or "them" or "the" or "my" or "both" or "all" or "that" or "those" || things.At(at + 1) is not null) && Particle(at + 2))
            return new WordPhrase(at, at + 1, Word(at), true);
        // "put the starter back", "bolted it up": on again.
        if (Word(at) is "back" or "up" && (at + 1 >= tokens.Count || tokens[at + 1].IsBreak || Word(at + 1) is "now" or "again" or "and" or "today" or "tonight") && Enumerable.Range(at - 6, 5).Any(k => (Word(at) == "back" ? Word(k) is "put" or "fitted" or "mounted" or "bolted" or "screwed" or "slotted" or "slid" or "dropped" or "hung" or "popped" : Word(k) is "bolted" or "hooked" or "plumbed") && (k == 0 || tokens[k - 1].IsBreak || Word(k - 1) is "and" or "then" or "i" or "we" or "'ve" or "have" or "just") && tokens.Skip(k).Take(at - k).All(t => !t.IsBreak)))
            return new ActPhrase(at, at + 1, Act.On, Word(at));
        if (opens && Word(at) is "replace" or "renew" or "get" or "source" or "purchase" && Word(at + 1) is "a" or "an" or "new" or "another" && Bought(at + 1))
            return new ActPhrase(at, at + 1, Act.Buy, Word(at));
        if (opens && Word(at) == "pick" && Word(at + 1) == "up" && Word(at + 2) is "a" or "an" or "some" or "new" && Bought(at + 2))
            return new ActPhrase(at, at + 2, Act.Buy, "pick");
        // "polished the journals": done to them, not seen on them.
        if (faults.Count > 0 && opens && Word(at) is "polished" or "cleaned" or "blued" or "scraped" or "oiled" or "greased" && faultTo == at + 1 && Word(faultTo) is "the" or "my" or "all" or "it" or "them" or "both" or "each" or "that" or "those")
            return new WordPhrase(at, at + 1, Word(at), false);
        // "a fine crack", "sheared clean through": the crack is told of, not that something is fine or clean.
        if (faults.Count > 0 && faultTo == at + 1 && ((Word(at) == "fine" && (Lexicon.Faults.Longest(tokens, at + 1).Values.Count > 0 || Word(at + 1) is "line" or "lines" or "metal" or "swarf" or "thread" or "mesh" or "adjustment" or "feeler" or "wire" or "grit" or "emery" or "oil")) || (Word(at) == "clean" && Word(at + 1) is "through" or "off" or "away" or "across" or "out" or "in" && Word(at + 2) is not ("and" or "condition"))))
            return new WordPhrase(at, at + 1, Word(at), true);
        if (Word(at) == "cracked" && (at == 0 || tokens[at - 1].IsBreak || Word(at - 1) is "and" or "then" or "i" or "we" or "'ve" or "have") && Enumerable.Range(at + 1, 5).Any(k => Word(k) is "loose" or "off" or "free"))
            return new ActPhrase(at, at + 1, Act.Undo, "cracked");
        if (Word(at) == "pulled" && Word(at - 1) is "'s" or "is" or "has" && tokens.ElementAtOrDefault(at - 2).Stem is "stud" or "thread" or "insert" or "hole")
            return new FaultPhrase(at, at + 1, "pulled", true);
        // "stuck the starter in tray three", "bunged them in a bag", "stood the head on end"
        if (Word(at) is "stuck" or "bunged" or "stuffed" or "plugged" or "stood" or "dropped" or "popped" && (at == 0 || tokens[at - 1].IsBreak || Word(at - 1) is "and" or "then" or "i" or "we" or "'ve" or "have" or "just") && (Word(at + 1) is "it" or "them" or "the" or "my" or "both" or "all" or "everything" or "that" or "those" || things.At(at + 1) is not null) && Laid(at + 1))
            return new ActPhrase(at, at + 1, Act.Put, Word(at));
        if (faults.Count > 0 && ((Word(at) is "picked" && things.At(faultTo) is not null) || Word(faultTo) is "paint" or "tape" or "tag" or "spirit" || NoState.At(tokens, at, faultTo)))
            faults.Clear();
        if (Word(at) is "get" or "need" or "needs" or "want" or "wants" && NumberWords.At(tokens, at + 1) is { IsCount: true } wanted && Word(wanted.To) is "new" or "more" or "of")
            return new ActPhrase(at, at + 1, Act.Buy, Word(at));
        if (Word(at) is "need" or "needs" or "want" or "wants" or "needed" or "order" or "ordered" or "buy" or "bought" or "buying" && Bought(at + 1))
            return new ActPhrase(at, at + 1, Act.Buy, Word(at));
        if (Word(at) == "order" && (at == 0 || tokens[at - 1].IsBreak || Word(at - 1) is "and" or "then" or "must"))
            return new ActPhrase(at, at + 1, Act.Buy, "order");
        // "'s gone" is missing only where nothing says where to.
        if (acts.Count > 0 && acts[0] == Act.Miss && Word(actTo - 1) == "gone" && actTo < tokens.Count && !tokens[actTo].IsBreak && Word(actTo) is "on" or "to" or "off" or "for" or "with" or "in" or "away" or "into" or "out" or "back" or "over" or "round" or "separately" or "hard" or "soft" or "down" or "up")
            acts.Clear();
        if (acts.Count > 0 && acts[0] == Act.On && Word(actTo - 1) is "in" or "on" && places.At(actTo - 1) is { Place.Sort: PlaceSort.Container })
            return new ActPhrase(at, actTo - 1, Act.Put, Word(at));
        if (acts.Count > 0 && Word(at) is "'s" or "has" && Lexicon.Faults.Longest(tokens, at + 1) is { Values.Count: > 0 } later && later.To > actTo)
            acts.Clear();
        if (faults.Count > 0 && faultTo >= actTo && faultTo >= detailTo)
            return new FaultPhrase(at, faultTo, faults[0].Fault, faults[0].Damage);
        if (acts.Count > 0 && actTo >= detailTo)
            return new ActPhrase(at, actTo, acts[0], Word(at));
        return details.Count > 0 ? new DetailPhrase(at, detailTo, details[0], "") : null;
    }

    /// <summary>A place to lay things follows in the same breath.</summary>
    private bool Laid(int at)
    {
        for (int k = at; k < at + 7 && k < tokens.Count && !tokens[k].IsBreak; k++)
        {
            if (Word(k) is "in" or "into" or "on" or "onto" or "under" or "behind" or "back" or "to" && places.At(k) is { Place.Sort: PlaceSort.Container or PlaceSort.OwnHoles })
                return true;
        }

        return false;
    }

    /// <summary>"off", "out" or "back on" comes later in the same breath.</summary>
    private bool Particle(int at)
    {
        for (int k = at; k < at + 6 && k < tokens.Count && !tokens[k].IsBreak; k++)
        {
            if (Word(k) is "off" or "out" or "away" && Word(k + 1) is not ("of" or "the") || (Word(k) == "back" && Word(k + 1) is "on" or "in"))
                return true;
        }

        return false;
    }

    /// <summary>What is wanted follows at once, and nothing is to be done with it.</summary>
    private bool Bought(int at)
    {
        int k = at;
        if (Word(at - 2) is "man" or "guy" or "bloke" or "chap" or "he" or "she" or "they" or "shop" or "fellow" or "machinist" or "it" or "book" && Word(at - 1) is "wants" or "want" or "needs")
            return false;
        while (Word(k) is "a" or "an" or "some" or "the" or "new" or "another" or "set" or "of" or "more" or "full" or "complete" or "replacement" || NumberWords.At(tokens, k) is { IsCount: true })
            k++;
        int to = things.At(k)?.To ?? lots.At(k)?.To ?? (Lexicon.Details.Longest(tokens, k) is { Values.Count: > 0 } piece ? piece.To : k);
        if (to == k)
            return false;
        for (int i = to; i < tokens.Count && !tokens[i].IsBreak && i < to + 5; i++)
        {
            if (Word(i) is "and" or "plus" or "for" or "from" or "while" or "too" or "as" or "before" or "anyway" or "really" or "now" or "then")
                return true;
            if (Word(i) is "off" or "out" or "done" or "doing" or "on" or "in" or "away" || Word(i).EndsWith("ing", StringComparison.Ordinal) && Word(i).Length > 4 || (Word(i).EndsWith("ed", StringComparison.Ordinal) && Word(i).Length > 4))
                return false;
        }

        return true;
    }

    private AmountPhrase? Amount(int at)
    {
        int from = at;
        bool rough = Word(at) is "about" or "around" or "roughly" or "nearly" or "say" or "approx" or "maybe" or "over" or "under" or "almost" || (Word(at) == "just" && Word(at + 1) is "under" or "over");
        if (rough)
            at += Word(at) == "just" ? 2 : 1;
        if (Word(at) is "a" && Word(at + 1) is "good")
        {
            rough = true;
            at += 2;
        }

        if (Word(at) is "half" && Word(at + 1) is "a" && Units.At(tokens, at + 2) is { Unit: "l" or "pint" or "gallon" } half)
            return new AmountPhrase(from, half.To, new Amount(0.5m, half.Unit, "half a") { Rough = rough });
        if (Figures.At(tokens, at, true, null) is { } bare && Word(bare.To) is "long" or "bore" or "wide" or "thick" or "deep" && NumberWords.At(tokens, at) is { Sort: NumSort.Whole or NumSort.Decimal } && (bare.Value >= 10 || bare.Value != decimal.Truncate(bare.Value)))
            return new AmountPhrase(from, bare.To, new Amount(bare.Value, "mm", string.Join(" ", Enumerable.Range(at, bare.To - at).Select(i => tokens[i].Text))) { Rough = rough });
        if (NumberWords.At(tokens, at) is not { } n || n.Sort is NumSort.Ordinal or NumSort.Vague || Units.At(tokens, n.To, n) is not { } unit)
            return null;
        int to = unit.To;
        decimal value = n.Value;
        if (NumberWords.AndPart(tokens, to) is { } and)
            (value, to) = (value + and.Value, and.To);
        return new AmountPhrase(from, to, new Amount(value, unit.Unit, string.Join(" ", Enumerable.Range(n.From, to - n.From).Select(i => tokens[i].Text))) { Rough = rough });
    }

    /// <summary>"top right", "at the ends", "underneath", "seen from the front", "by the timing chest".</summary>
    private WherePhrase? Place(int at)
    {
        int to = at;
        if (Word(to) is "at" or "on" or "from" or "in" or "by" or "along" or "near" or "round" or "around" or "to")
            to++;
        while (Word(to) is "the" or "its" or "very")
            to++;
        string first = Word(to);
        string next = Word(to + 1);
        string? where = (first, next) switch
        {
            ("top" or "bottom" or "upper" or "lower", "left" or "right") when Ends(to + 2) => $"{first} {next}",
            ("ends" or "end" or "corners" or "outside" or "underside" or "middle" or "centre", _) when to > at => $"{first switch { "end" => "end", _ => first }}",
            ("underneath" or "inside" or "outside", _) when Ends(to + 1) => first,
            ("front" or "back" or "rear" or "top" or "bottom" or "side", _) when to > at && Ends(to + 1) && Word(to - 1) is "the" or "at" => $"at the {first}",
            ("left" or "right", "hand") when Word(to + 2) is "side" or "end" && to > at => $"{first} hand {Word(to + 2)}",
            _ => null,
        };
        if (where is null)
            return null;
        to += (first, next) is ("top" or "bottom" or "upper" or "lower", "left" or "right") ? 2 : where.EndsWith("side", StringComparison.Ordinal) && next == "hand" || where.Contains(" hand ", StringComparison.Ordinal) ? 3 : 1;
        while (View(to) is { } view)
        {
            where += " " + view.Text;
            to = view.To;
        }

        return new WherePhrase(at, to, where);
    }

    private (string Text, int To)? View(int at)
    {
        int to = Word(at) is "seen" or "viewed" or "looking" or "looked" or "as" ? at + 1 : at;
        if (to > at && Word(to) is "seen" or "looking" or "you" or "viewed")
            to++;
        if (to > at && Word(to) is "looking" or "look")
            to++;
        if (to > at && Word(to) is "from" or "at" && Word(to + 1) is "the" or "it")
        {
            int end = Word(to + 1) == "the" ? to + 3 : to + 2;
            return (Word(to) == "at" ? "looking at it" : $"seen from the {Word(to + 2)}", end);
        }

        return null;
    }

    private bool Ends(int at) =>
        at >= tokens.Count || tokens[at].IsBreak || Lexicon.Containers.Longest(tokens, at).Values.Count > 0 || Word(at) is "and" or "is" or "looking" or "seen" or "as" or "but" or "the" or "has" or "viewed" or "one" or "was" or "'s" or "are" or "with" or "goes" or "i" or "corner" or "hole" or "position" or "in" or "all";
}
