namespace Gudgeon.Capture;

/// <summary>
/// Makes facts of one note. Sentences are cut into clauses; ways of speaking that have a shape of their own
/// (questions, corrections, access) are tried first, and what is left is told as work: parts, fasteners, places.
/// </summary>
internal sealed partial class Listener
{
    private readonly string text;
    private readonly List<Token> tokens;
    private readonly PartIndex index;
    private readonly EarContext context;
    private readonly ThingResolver resolver;
    private readonly ThingReader things;
    private readonly MeasureReader measures;
    private readonly PhraseReader phraseReader;
    private readonly DueReader dues;
    private readonly PlaceReader places;
    private readonly bool inchBook;
    private readonly List<Fact> facts = [];
    private readonly List<Doubt> doubts = [];
    private readonly bool[] used;
    private readonly List<(Phrase Phrase, TextSpan Span)> said = [];
    private readonly List<TextSpan> clauses = [];
    private List<Phrase> phrases = [];

    public Listener(string text, PartIndex index, EarContext context)
    {
        (this.text, this.index, this.context) = (text, index, context);
        tokens = Tokeniser.Cut(text);
        used = new bool[tokens.Count];
        inchBook = context.Unit == BookUnit.Inch;
        resolver = new ThingResolver(index, context);
        things = new ThingReader(tokens, index, resolver);
        measures = new MeasureReader(tokens, text, index, resolver, context);
        dues = new DueReader(tokens, text, context.Now);
        places = new PlaceReader(tokens, index);
        phraseReader = new PhraseReader(tokens, things, new LotReader(tokens, inchBook), places, dues);
    }

    public Heard Hear()
    {
        foreach (var (first, past) in measures.FindRows().ToList())
        {
            for (int k = first; k < past; k++)
                tokens[k] = tokens[k].IsEnd ? tokens[k] with { Sort = TokenSort.Comma } : tokens[k];
        }

        for (int from = 0; from < tokens.Count;)
        {
            int to = from;
            while (to < tokens.Count && !tokens[to].IsEnd)
                to++;
            Sentence(from, to, to < tokens.Count && tokens[to].Sort == TokenSort.Question);
            from = to + 1;
        }

        Flush();
        LeftOver();
        Settle();
        var unused = Unused();
        var spoken = facts.Select(f => f with { Way = WayOfSaying.Of(f, said, clauses) }).ToList();
        facts.Clear();
        foreach (var fact in spoken)
        {
            // A question stays one in whatever way it was put, and a word is only taught in so many words.
            bool plain = fact is Asked or QuestionToSelf or Taught || context.AnyWay || WayOfSaying.Known(fact.Way, context.Ways);
            if (Turned(fact, unused) || Vague(fact))
                Offer(fact with { Way = "" });
            else if (plain)
                facts.Add(fact);
            else
                Offer(fact);
        }

        return new Heard(text, facts, doubts, unused) { Spoken = spoken };
    }

    /// <summary>Understood, but by words or a way of saying that leave it open: one tap records it. Where it was the words, their way is nothing to go by.</summary>
    private void Offer(Fact fact)
    {
        string words = fact.Spans.Count == 0 ? text : text[fact.Spans.Min(s => s.Start)..fact.Spans.Max(s => s.End)];
        doubts.Add(new Doubt(DoubtSort.Unproven, $"Is this what was meant: {fact.Echo}?", words, [new Reading(fact.Echo, [fact])], fact.Spans));
    }

    /// <summary>
    /// A word of weight left over before a deed or in the midst of it may turn what it says. What follows a deed mostly
    /// tells how it went.
    /// </summary>
    private bool Turned(Fact fact, List<TextSpan> unused) =>
        fact is not (Asked or QuestionToSelf or Planned or Noted or Corrected or StruckOut or Named or Did or GoesBack or ToBuy or LeftOn or AccessLearned or WaitingFor)
        && unused.Any(u => Tokeniser.Cut(u.Of(text)) is var left && Range(0, left.Count).Any(k => Strange(left, k))
            && !(fact is Put && left.All(w => Lexicon.Persons.Contains(w.Text) || Lexicon.Passing.Contains(w.Text) || Lexicon.Fillers.Contains(w.Text)))
            && fact.Spans.Any(s => u.Start < fact.Spans.Max(e => e.End) && Beside(u, s)));

    private bool Vague(Fact fact) => fact switch
    {
        Asked or QuestionToSelf or Planned or Noted or Corrected or StruckOut or Named or Did or GoesBack => false,
        AccessLearned { Ways: [var way] } access => way.Append(access.Target).Any(t => Doubtful(t, fact)),
        WaitingFor waiting => waiting.For.Split(' ') is var words && (words.Any(Lexicon.Persons.Contains) || words is ["one" or "left", ..] || char.IsUpper(waiting.For[0])),
        _ => About(fact) is { } thing && Doubtful(thing, fact),
    };

    /// <summary>What it is told of was hardly understood: a name made of words that are no name, or a kind that this engine lacks.</summary>
    private bool Doubtful(Thing thing, Fact fact)
    {
        if (thing.Sort == ThingSort.Lacking)
            return fact is On or Undone or Seen;
        if (thing.Sort != ThingSort.Unknown || fact is Sent or Tagged or Capped or Found or Missing or ToBuy)
            return false;
        var words = Tokeniser.Cut(thing.Name);
        return !words.Any(w => w.Stem == "thing") && (words.Count == 0 || words.Any(w => w.IsBreak || NumberWords.At([w], 0) is not null || Lexicon.Fillers.Contains(w.Text) && w.Text is not ("back" or "up" or "off" or "of" or "and" or "for") || w.Text == "gone")
            && !(fact is LeftOn && words[0].Stem == "bracket") || (words.Count == 1 && Lexicon.Vague.Contains(words[^1].Stem)) || (words.Count == 2 && words[^1].Stem is "end" or "bit" or "piece" or "one"));
    }

    /// <summary>A word that is in no list: no part, fastener, place, number or word in passing.</summary>
    private bool Strange(List<Token> words, int at)
    {
        string word = words[at].Text;
        return words[at].IsWord && word != "no" && Characteristic.Book.Longest(words, at).Values.Count == 0 && !Lexicon.Passing.Contains(word) && !Lexicon.Fillers.Contains(word) && NumberWords.At(words, at) is null
            && index.Book.Longest(words, at).Values.Count == 0 && Lexicon.Fasteners.Longest(words, at).Values.Count == 0 && Lexicon.Details.Longest(words, at).Values.Count == 0
            && Lexicon.Containers.Longest(words, at).Values.Count == 0 && !Range(0, at).Any(k => index.Book.Longest(words, k).To > at || Lexicon.Fasteners.Longest(words, k).To > at);
    }

    /// <summary>No pause lies between the two.</summary>
    private bool Beside(TextSpan left, TextSpan right)
    {
        int from = Math.Min(left.End, right.End);
        int to = Math.Max(left.Start, right.Start);
        return from >= to || (text.AsSpan(from, to - from).IndexOfAny(',', '.', ';') < 0 && !Tokeniser.Cut(text[from..to]).Any(t => t.Text is "and" or "but" or "so" or "because" or "cos" or "then"));
    }

    private void Sentence(int from, int to, bool asked)
    {
        if (to <= from)
            return;
        if (asked && Question(from, to, true) is { } all)
        {
            if (all >= to)
                return;
            from = all;
        }

        phrases = Joined(Anywhere(Phrases(from, to), from, to));
        said.AddRange(phrases.Select(p => (p, Span(p.From, p.To))));
        if (MoreShopping(from, to) == to)
            return;
        for (int at = Math.Max(from, skipTo); at < to;)
        {
            if (tokens[at].IsBreak || Joins(at))
            {
                at++;
                continue;
            }

            int end = ClauseEnd(at, to);
            clauses.Add(Span(at, end));
            int next = phrases.Any(p => p is MeasurePhrase { Read.IsRow: true } && p.From >= at && p.From < end) ? at : Shaped(at, end, to);
            if (next > at)
            {
                at = next;
                continue;
            }

            Narrate(at, end);
            at = end;
        }
    }

    /// <summary>A word that only ties clauses together.</summary>
    private bool Joins(int at) =>
        !(tokens[at].Text == "well" && NumberWords.At(tokens, at + 1) is { IsCount: true } n && (n.To >= tokens.Count || tokens[n.To].IsBreak)) &&
        (tokens[at].Text is "but" or "so" or "because" or "cos" or "meanwhile" or "while" or "whilst" or "although" or "except" or "then" or "also" or "anyway" or "ok" or "okay" or "well" or "um" or "uh" or "er" or "alright" or "righto" or "aye" or "ah" or "oh" or "ach" or "och" or "hmm" or "yep" or "yeah" or "yes" or "crikey" or "blimey" or "kindly" or "please" || (tokens[at].Text is "right" && at + 1 < tokens.Count && tokens[at + 1].IsBreak) || (tokens[at].Text is "and" && (at == 0 || tokens[at - 1].IsBreak || used[at - 1])));

    private int ClauseEnd(int from, int to)
    {
        // "now where in the name of all that's holy did I leave it": one question from its first word on.
        int opens = from;
        while (opens < to - 1 && Word(opens) is "now" or "so" or "right" or "hmm" or "wait")
            opens++;
        bool asks = Word(opens) is "where" || Word(from) is "what" or "which" or "how" or "who" || (Word(from) is "cant" or "cannot" or "dont" && Word(from + 1) is "remember");
        for (int i = from + 1; i < to; i++)
        {
            if (!asks && Word(i) is "and" or "then" && Anew(i + 1, to) && !Inside(i))
                return i;
            if ((tokens[i].IsBreak || tokens[i].Text is "but" or "so" or "because" or "cos" or "meanwhile" or "whilst" or "although" or "except" || (!asks && Cue(i) && !ThingFirst(from, i))) && !Inside(i))
                return i;
        }

        return to;
    }

    /// <summary>After "and" somebody else is spoken of, or something new is said: "and I stuck a bung in it", "and the gasket's torn".</summary>
    private bool Anew(int at, int to)
    {
        if (Word(at) is "i" or "we" or "he" or "she" or "there" || (Word(at) is "it" or "they" or "that" && Word(at + 1) is "'s" or "is" or "are" or "'re" or "was" or "were" or "has" or "had" or "looks" or "look" or "feels" or "needs" or "took" or "came" or "went"))
            return true;
        // "one to three in the red tub and four to six in the white one"
        if (phrases.Any(p => p is PlacePhrase && p.To == at - 1) && (phrases.FirstOrDefault(p => p.From == at) is NumPhrase || Word(at) == "the" && Word(at + 1) is "even" or "odd" or "rest" or "others") && In(at, to).TakeWhile(p => p is not BreakPhrase).Any(p => p is PlacePhrase))
            return true;
        if (phrases.FirstOrDefault(p => p.From == at) is ActPhrase { Word: not ("off" or "out" or "on" or "in" or "back" or "apart" or "away"), Act: not (Act.Buy or Act.Tighten) } verb && verb.To < to && phrases.Any(p => p.To <= at - 1 && p is ActPhrase && !phrases.Any(b => b is BreakPhrase && b.From > p.From && b.From < at)))
            return true;
        return phrases.FirstOrDefault(p => p.From == at) is ThingPhrase thing && thing.To < to && Word(thing.To) is "'s" or "is" or "are" or "was" or "were" or "has" or "had" or "looks" or "look" or "feels" or "needs" or "still" or "stays" or "stay" && Word(at - 2) is not ("both" or "between") && phrases.LastOrDefault(p => p.To == at - 1) is not ThingPhrase;
    }

    private bool Inside(int at) => phrases.Any(p => p.From < at && p.To > at);

    private string Word(int at) => at >= 0 && at < tokens.Count && tokens[at].IsWord ? tokens[at].Text : "";

    /// <summary>Words that open a shape of their own even where nobody paused.</summary>
    private bool Cue(int at) => (Word(at), Word(at + 1)) switch
    {
        ("cant" or "cannot" or "couldnt", "get" or "reach" or "undo" or "find" or "remember" or "shift") => Word(at - 1) is not ("i" or "you" or "we" or "they" or "he" or "she") && !Range(Math.Max(0, at - 2), at).Any(Somebody),
        ("i" or "you" or "we", "cant" or "cannot" or "couldnt" or "need" or "must" or "'ll" or "had") => true,
        ("scrap" or "strike" or "ignore" or "delete" or "forget", "that") => true,
        ("make", "that" or "it") => true,
        ("no" or "sorry", "make" or "wait" or "hang") => true,
        ("waiting", "for" or "on") => true,
        ("stuck", "till" or "until") => true,
        ("had", "to") => Word(at - 1) is not ("i" or "we" or "you") && things.At(at - 1) is null && phrases.All(p => p is not ThingPhrase t || t.To != at),
        ("it" or "they" or "there" or "that", "'s" or "is" or "are" or "was" or "were" or "'re" or "has" or "had" or "looks" or "looked" or "feels" or "felt" or "needs" or "leaked" or "leaks" or "came" or "went" or "took") => at > 0 && phrases.Any(p => p.To == at && p is LotPhrase or PlacePhrase or FaultPhrase or ActPhrase { Act: Act.Off or Act.On or Act.Part or Act.Tighten } or TagPhrase),
        ("did", "i") or ("have", "i") or ("where", "did" or "is" or "'s" or "are" or "does") => true,
        ("leaving" or "remember" or "dont", "the" or "to" or "forget") => true,
        ("need" or "needs" or "wants", "to" or "a" or "an" or "new") => phrases.All(p => p is not ThingPhrase t || (t.To != at && t.To != at - 1)) && Word(at - 1) is not ("i" or "and" or "we" or "it" or "they"),
        _ => false,
    };

    private List<Phrase> Phrases(int from, int to)
    {
        var list = new List<Phrase>();
        for (int at = from; at < to;)
        {
            // "pistons one three five seven in the crate": numbers before a place are no reading.
            if (measures.At(at, to) is { } read && read.From >= from && !Range(read.To - 1, read.To + 1).Any(k => PlaceReader.IsPreposition(Word(k)) && places.At(k) is { Place.Sort: PlaceSort.Container }))
            {
                list.RemoveAll(p => p.From >= read.From);
                if (!read.IsRow && list.LastOrDefault(p => p is not WordPhrase { Filler: true }) is ThingPhrase named && named.To >= read.From - 2 && named.Thing.Sort == ThingSort.Part && (read.Thing is null || read.Thing.Kind == named.Thing.Kind || named.Thing.Kind == "crank" || (read.Thing.Kind == "crank" && named.Thing.Kind is "rod-shell" or "main-shell")))
                {
                    // "crank run-out", "valve spring free length": the part belongs to the reading.
                    var whole = read.Thing ?? (named.Thing with { Others = [], Ids = [.. named.Thing.Ids.Concat(named.Thing.Others.SelectMany(o => o.Ids))], Name = named.Thing.Others.Count > 0 ? index.NameOf(named.Thing.Kind) + "s" : named.Thing.Name });
                    list.RemoveAll(p => p.From >= named.From);
                    read = read with { From = named.From, Thing = whole, Readings = [.. read.Readings.Select(r => r with { Thing = whole })] };
                }

                list.Add(new MeasurePhrase(read.From, read.To, read));
                at = read.To;
                continue;
            }

            if (Word(at) == "its" && resolver.Cylinder is null && context.LastThing is { } owned && index.Engine.Parts.TryGetValue(owned, out var ownedPart))
                resolver.Cylinder = ownedPart.Cylinder;
            if (Half(list, at) is { } half)
            {
                list.Add(half);
                at = half.To;
                continue;
            }

            if (Unnamed(list, at, to) is { } unsaid)
            {
                list.Add(unsaid);
                at = unsaid.To;
                continue;
            }

            if (ShellsOf(at, to) is { } shells)
            {
                list.Add(shells);
                at = shells.To;
                continue;
            }

            var one = Narrowed(SpokenOf(Theirs(phraseReader.ReadOne(at, to), list, to), to), to);
            if (one is ThingPhrase { Thing: { Ids: [var id], Others.Count: 0 } } && index.Engine.Parts.TryGetValue(id, out var part))
            {
                resolver.Cylinder = part.Cylinder ?? resolver.Cylinder;
                (resolver.Near, resolver.Same) = (id, id);
            }

            if (one is NumPhrase { Num: { IsCount: true, Value: > 0 and <= 28 } owner } && Word(one.To) is "'s" or "has" && Word(one.To + 1) is "got" or "a" or "an" or "had" or "your" or "my")
                resolver.Cylinder = owner.Int;
            // "the teeth on its pinion": of the pinion.
            if (one is DetailPhrase outer && list is [.., DetailPhrase inner, WordPhrase { Word: "on" or "of" or "in" }, WordPhrase { Word: "its" or "the" or "that" }])
            {
                list.RemoveRange(list.Count - 3, 3);
                one = outer with { From = inner.From };
            }

            list.Add(one);
            at = one.To;
        }

        return list;
    }

    /// <summary>"oil jet, for cylinder two", "the phaser of the intake", "rocker shaft left": which of several is told after the name.</summary>
    private Phrase Narrowed(Phrase phrase, int to)
    {
        if (phrase is ThingPhrase { Thing: { Sort: ThingSort.Line, Others: [{ Ids.Count: 1 } second], Ids.Count: 1 } pair } both1 && (Range(phrase.From - 1, phrase.To + 1).Any(k => Word(k) == "both") || NumberWords.At(tokens, phrase.From - 1) is { Int: 2 }))
            return both1 with { Thing = pair with { Ids = [.. pair.Ids, .. second.Ids], Others = [] }, Plural = true };
        if (phrase is not ThingPhrase { Thing: { Others.Count: > 0, Kind.Length: > 0 } several } named || several.Others.Any(o => o.Kind != several.Kind))
            return phrase;
        int at = phrase.To < to && tokens[phrase.To].Sort == TokenSort.Comma ? phrase.To + 1 : phrase.To;
        bool linked = false;
        while (at < to && Word(at) is "for" or "of" or "on" or "from" or "the" or "number" or "cylinder")
            linked |= Word(at++) is not "the";
        Thing? one = null;
        if (linked && NumberWords.At(tokens, at) is { IsCount: true } n && Units.At(tokens, n.To, n) is null && Lexicon.Fasteners.Longest(tokens, n.To).Values.Count == 0)
            (one, at) = (Select(several with { Others = [] }, n.Int, ""), n.To);
        else if (Word(at) is "left" or "right" && (at + 1 >= to || tokens[at + 1].IsBreak || Word(at + 1) is "side" or "hand" or "bank" or "is" or "'s" or "one"))
            (one, at) = (Select(several with { Others = [] }, null, Word(at)), at + 1);
        else if (linked && Gas(at) is { } gas && several.Others.Prepend(several).Where(o => o.Name.Contains(gas.Side, StringComparison.OrdinalIgnoreCase)).ToList() is [var ofGas])
            (one, at) = (ofGas with { Others = [] }, gas.To);
        return one is { Ids.Count: > 0 } && one.Ids.Count <= several.Others.Count ? named with { To = at, Thing = one with { Sort = several.Sort, Fastener = several.Fastener, Detail = several.Detail } } : phrase;
    }

    /// <summary>"both shells from the middle main", "the shells out of number two main": those of one bearing.</summary>
    private ThingPhrase? ShellsOf(int at, int to)
    {
        int noun = Range(at, Math.Min(to, at + 4)).FirstOrDefault(k => tokens[k].Stem is "shell" or "half", -1);
        if (noun < 0 || !tokens[noun].Plural && Word(noun) != "halves" || Range(at, noun).Any(k => Word(k) is not ("both" or "the" or "all" or "of" or "two")))
            return null;
        int link = noun + 1;
        while (link < to && Word(link) is "of" or "from" or "in" or "on" or "out" or "the" or "off" or "number" or "at")
            link++;
        int after = NumberWords.At(tokens, link) is { IsCount: true, Value: > 0 and <= 28 } n ? n.To : link + 1;
        if (link == noun + 1 || !(tokens.ElementAtOrDefault(after).Stem == "main"))
            return null;
        var selectors = new Selectors { All = true };
        if (after > link && NumberWords.At(tokens, link) is { IsCount: true } which)
            selectors.Numbers.Add(which.Int);
        else if (Levels.Contains(Word(link)))
            selectors.Where.Add(Word(link) == "back" ? "rear" : Word(link));
        else
            return null;
        int end = Word(after + 1) is "bearing" or "cap" ? after + 2 : after + 1;
        var found = resolver.Resolve([new PartWord("main-shell", false, null, 0)], selectors, true, "shells");
        return found is { Ids.Count: > 0, Others.Count: 0, Where: "" } && found.Ids.Count < index.Parts("main-shell").Count ? new ThingPhrase(at, end, found, true, true) : null;
    }

    /// <summary>"the bottom halves", "the tops": of the shells just named.</summary>
    private ThingPhrase? Half(List<Phrase> before, int at)
    {
        int word = Word(at) is "the" ? at + 1 : at;
        bool alone = Word(word) is "tops" or "bottoms" or "uppers" or "lowers";
        if ((!alone && !(Word(word) is "top" or "bottom" or "upper" or "lower" && tokens.ElementAtOrDefault(word + 1).Stem is "half" or "one")) || before.OfType<ThingPhrase>().LastOrDefault()?.Thing is not { Kind: "main-shell" or "rod-shell", Ids.Count: > 0 } shells)
            return null;
        string level = Word(word)[0] is 't' or 'u' ? "upper" : "lower";
        IReadOnlyList<string> ids = [.. shells.Ids.Concat(shells.Others.SelectMany(o => o.Ids)).Select(i => $"{i[..i.LastIndexOf('.')]}.{(level == "upper" ? 1 : 2)}").Distinct().Where(index.Engine.Parts.ContainsKey)];
        return ids.Count == 0 ? null : new ThingPhrase(at, alone ? word + 1 : word + 2, new Thing(ThingSort.Part, shells.Kind, ids, ids.Count == 1 ? index.Engine.Parts[ids[0]].Name : $"{level} {index.NameOf(shells.Kind)}s"), ids.Count > 1, false);
    }

    private IEnumerable<Phrase> In(int from, int to) => phrases.Where(p => p.From >= from && p.To <= to);

    // ---- facts, doubts and the words they used ----

    private IReadOnlyList<TextSpan> Spans(IEnumerable<int> from)
    {
        var spans = new List<TextSpan>();
        foreach (int i in from.Distinct().Order())
        {
            used[i] = true;
            var token = tokens[i];
            if (spans.Count > 0 && text.AsSpan(spans[^1].End, token.Start - spans[^1].End).IndexOfAnyExcept(" -'’") < 0)
                spans[^1] = new TextSpan(spans[^1].Start, token.Start + token.Length - spans[^1].Start);
            else
                spans.Add(new TextSpan(token.Start, token.Length));
        }

        return spans;
    }

    private TextSpan Span(int from, int to) => new(tokens[from].Start, tokens[to - 1].Start + tokens[to - 1].Length - tokens[from].Start);

    private static IEnumerable<int> Range(int from, int to) => Enumerable.Range(from, Math.Max(0, to - from));

    private void Add(Fact fact, IEnumerable<int> from)
    {
        var made = WithGasket(fact) with { Spans = Spans(from) };
        int same = facts.FindIndex(f => f.Code == made.Code && f is not Noted);
        if (same < 0)
        {
            facts.Add(made);
            return;
        }

        // Said twice, or more of the same: one fact with all its words.
        IReadOnlyList<TextSpan> spans = [.. facts[same].Spans.Concat(made.Spans).Distinct()];
        facts[same] = (facts[same], made) switch
        {
            (Marked old, Marked more) when old.Mark != more.Mark => old with { Mark = $"{old.Mark}; {more.Mark}", Spans = spans },
            (Damaged old, Damaged more) when old.Words != more.Words => old with { Words = $"{old.Words}; {more.Words}", Spans = spans },
            (Seen old, Seen more) when old.Words != more.Words => old with { Words = $"{old.Words}; {more.Words}", Spans = spans },
            var (old, _) => old with { Spans = spans },
        };
    }

    /// <summary>Adds a fact about a thing, or the question which thing it is when the words leave several.</summary>
    private void About(Thing thing, IEnumerable<int> from, Func<Thing, Fact> make)
    {
        var list = from.ToList();
        if (thing.Others.Count == 0)
        {
            Add(make(thing), list);
            return;
        }

        var spans = Spans(list);
        var ways = thing.Others.Prepend(thing with { Others = [] }).Select(t => WithGasket(make(t)) with { Spans = spans }).ToList();
        int same = doubts.FindIndex(d => d.Sort == DoubtSort.Which && d.Readings.Count == ways.Count && d.Readings.Zip(ways).All(z => About(z.First.Facts[0]) is { } a && About(z.Second) is { } b && a.Ids.SequenceEqual(b.Ids)));
        if (same >= 0)
        {
            var old = doubts[same];
            doubts[same] = old with
            {
                Readings = [.. old.Readings.Zip(ways, (r, f) => r.Facts.Any(x => x.Code == f.Code) ? r : new Reading($"{r.Echo}; {f.Echo}", [.. r.Facts, f]))],
                Spans = [.. old.Spans.Concat(spans).Distinct()],
            };
            return;
        }

        doubts.Add(new Doubt(DoubtSort.Which, $"Which is meant: {string.Join(" or ", ways.Select(w => About(w)?.Full).Distinct())}?", Words(list), [.. ways.Select(w => new Reading(w.Echo, [w]))], spans));
    }

    internal static Thing? About(Fact fact) => fact switch
    {
        Off f => f.Thing,
        On f => f.Thing,
        Undone f => f.Of,
        Count f => f.Of,
        Tightened f => f.Of,
        Put f => f.Thing,
        Parted f => f.Line,
        Tagged f => f.Thing,
        Capped f => f.Thing,
        Found f => f.Thing,
        Damaged f => f.Thing,
        Seen f => f.Thing,
        Missing f => f.Thing,
        ToBuy f => f.Thing,
        Measured f => f.Thing,
        LeftOn f => f.Thing,
        Marked f => f.Thing,
        Sent f => f.Thing,
        Back f => f.Thing,
        Asked f => f.Thing,
        Planned f => f.Thing,
        QuestionToSelf f => f.Thing,
        Noted f => f.Thing,
        AccessLearned f => f.Target,
        Corrected f => f.Of,
        GoesBack f => f.Thing,
        WaitingFor f => f.Thing,
        _ => null,
    };

    private string Words(IEnumerable<int> from)
    {
        var list = from.Order().ToList();
        return list.Count == 0 ? "" : text[tokens[list[0]].Start..(tokens[list[^1]].Start + tokens[list[^1]].Length)];
    }

    private string Said(int from, int to) => to <= from ? "" : Words(Range(from, to));

    private void Ask(DoubtSort sort, string question, IEnumerable<int> from, params Reading[] readings)
    {
        var list = from.ToList();
        doubts.Add(new Doubt(sort, question, Words(list), readings, Spans(list)));
    }
}
