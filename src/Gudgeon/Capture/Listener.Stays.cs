using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>What stays on or in while the rest comes off: told of a part, of some of a kind, or of a piece left behind.</summary>
internal sealed partial class Listener
{
    /// <summary>Where it stays: on, in, there, where it is.</summary>
    private const string StaysWhere = "(?:on|in|put|be|alone|there|here|in place|in position|(?:right )?where (?:it|they|she|he|that) (?:is|are|'s|'re|was|were|belongs?|sits?|stands?|lies?)|as (?:it is|is|they are)|bolted|attached|fixed|fitted|mounted|down|up)";

    /// <summary>Nothing more, or how long or why.</summary>
    private const string ThenWhy = "(?=$| ?,| till| until| til| for| as| because| cos| tonight| today| now| this| too| then)";

    private const string Openers = "(?:and |so |but |then |just |i |we |he |she |they |i 'm |i am |we 're |'ll |'ve |have |says? |said |reckons |gonna |going to |better |best |might |can |please |with |only )*";

    [GeneratedRegex("^" + Openers + "(?:leaving|leave|left(?= the| my| it| that| her| him| them| both| all| [a-z]+s )|keeping|keep) (?<x>.+?) (?:well |right |just |all )*(?:" + StaysWhere + "|till|until)\\b(?: for now)?(?<w>.*)$"
        + "|^" + Openers + "(?<x>.+?) (?:(?:is|are|'s|'re|was|were|am|to|will|'ll|can|could|may|might|as|well|gonna|going to|has|have|just|also|both|all|still|been|gets?) )*(?:stays?|stayed|staying|stopping(?= (?:in|on|there|put|where)\\b)|remains?|remained|remaining|bides?|biding|(?<=\\bgets? )left|(?<=\\b(?:can|could|may|might|will|'ll|well|gonna|going to) )(?:stop|rest|sit(?! till| until))|left|(?:i|we|he|she|they) (?:(?:am|'m|are|'re|have|'ve|just) )*(?:leave|leaving|left)) ?(?:(?:right|just|well|all|firmly|bolted) )*(?:" + StaysWhere + "\\b|(?<!(?<!gets? )left ?)" + ThenWhy + ")(?<w>.*)$"
        + "|^(?:just |so |and |we |i |'ll )*(?:leave|leaving) (?<x>it|them|that|her|him)$|^" + Openers + "(?<x>.+?) stops (?:in|on|put|there)$"
        + "|^" + Openers + "(?<x>.+?) (?:sits?|stops?) (?:right |just )*where (?:it|they|she|he) (?:is|are|'s)\\b(?<w>.*)$"
        + "|^(?:and |but |with |only )*(?<x>[a-z][a-z' ]*?) (?:(?:is|are|was|were|'s|'re|has been|have been|all|has|have|still|left|just) )*(?:still|left|stayed|remained) (?:all )?(?:in|on|down|attached|hanging|fitted|bolted|sitting|stuck(?= (?:to|on|in|down|up)\\b))(?: (?:to|on|in|off|onto|up|down|there))?(?: (?:it|them|there|place|position|the (?:block|head|engine|crank|case|car|bike|rod|rods|motor|holes?|bores?|recess|pocket|seat)|its? [a-z]+|their [a-z]+))?(?: for now| yet| too)?(?<w>)$"
        + "|^(?:i 'm |i am |we 're |and |but )*(?:leaving|not (?:removing|touching|taking off|pulling|taking|dropping|lifting|disturbing|shifting|undoing)) (?<x>.+?)(?: off| out)?(?: for now| alone)?(?<w>)$")]
    private static partial Regex Stays();

    private int Staying(Stretch clause, Stretch rest)
    {
        var match = Stays().Match(clause.Line);
        if (!match.Success || Regex.IsMatch(clause.Line, "\\bleft (?:in|on) (?:the )?(?:bag|tray|box|shelf|bench|tin|tub)"))
            return -1;
        var (xFrom, xTo) = clause.Tokens(match.Groups["x"]);
        if (match.Groups["x"].Length == 0 || Range(xFrom, xTo).Any(k => Word(k) is "where" or "what" or "which" or "if" or "when" or "who"))
            return -1;
        // "it gets penetrating oil and it can sit till Friday"
        for (int k = xTo - 1; k > xFrom; k--)
        {
            if (Word(k - 1) is "and" or "so" or "but" && Word(k) is "it" or "that" or "they" or "she" or "he" or "those" or "these")
                (xFrom, k) = (k, xFrom);
        }

        bool piece = PieceLeft(xFrom, xTo) is not null;
        if (!piece && (Regex.IsMatch(clause.Line, "\\b(?:holes?|finger tight|hand tight|their positions?|positions)\\b") || In(clause.From, clause.To).Any(p => p is PlacePhrase { Place: var at } && !IsHost(at)) || In(xFrom, xTo).Any(p => p is LotPhrase || (p is ActPhrase && match.Groups["w"].Length == 0))))
            return -1;
        if (In(clause.From, clause.To).Any(p => p is PlacePhrase { Place.Sort: PlaceSort.Container } place && !IsHost(place.Place) || p is MeasurePhrase))
            return -1;
        var told = Staying(xFrom, xTo, clause);
        bool bare = told.Any(t => t.Sort == ThingSort.Unknown && !t.Name.Contains("bracket", StringComparison.Ordinal)) && Regex.IsMatch(match.Value, "\\b(?:stays?|remains?|left)$");
        if (told.Count == 0 || bare)
            return -1;
        int end = clause.To;
        int why = clause.Tokens(match.Groups["w"]) is var (f, t) && t > f && match.Groups["w"].Length > 1 ? f : -1;
        int stop = end;

        // The reason may follow after a pause, up to what is waited for.
        while (stop < rest.To && (tokens[stop].Sort == TokenSort.Comma || Word(stop) is "because" or "cos" or "since" or "as"))
        {
            int next = ClauseEnd(stop + 1, rest.To);
            var line = new Stretch(tokens, stop + 1, next);
            if (Waits().IsMatch(line.Line) || DueIn(stop + 1, next) is not null || In(stop + 1, next).Any(p => p is LotPhrase { Lot.Count: not null }) || (things.At(stop + 1) is not null && In(stop + 1, next).Any(p => p is ActPhrase { Act: Act.Off }) && Word(stop) is not ("because" or "cos")))
                break;
            if (why < 0)
                why = stop + 1;
            end = stop = next;
            if (tokens.ElementAtOrDefault(stop).Sort == TokenSort.Comma)
                break;
        }

        // "inlet manifold came off, throttle body still on it": on what came off.
        if (facts.LastOrDefault() is Off off && Regex.IsMatch(clause.Line, "\\bstill (?:in|on|bolted to|attached to) it$") && told is [{ Sort: ThingSort.Part } along])
        {
            facts[^1] = off with { With = [.. off.With, along with { Others = [] }], Spans = [.. off.Spans, .. Spans(Range(clause.From, clause.To))] };
            return clause.To;
        }

        var from = Range(clause.From, end).Concat(pending.Where(p => told.Any(x => x.Code == p.Thing.Code)).SelectMany(p => Range(p.From, p.To))).ToList();
        foreach (var thing in told)
            About(thing, from, x => new LeftOn(x, why < 0 ? "" : Regex.Replace(Said(why, end).Trim(), "^(?:because|cos|since|as) ", "")));
        pending.RemoveAll(p => told.Any(x => x.Code == p.Thing.Code));
        (seen, seenAt) = (told[^1], clause.From);
        topic = Behind(told[^1]);
        return end;
    }

    /// <summary>"that stays till your dad comes on Saturday": it stays, and what is waited for is told after.</summary>
    private int StaysTill(Stretch clause)
    {
        int till = Range(clause.From + 1, clause.To).FirstOrDefault(k => Word(k) is "till" or "until", -1);
        if (till < 0 || !Waits().IsMatch(new Stretch(tokens, till + 1, clause.To).Line) || Waits().Match(clause.Line) is { Success: true } waits && waits.Groups["soak"].Success)
            return -1;
        var head = new Stretch(tokens, clause.From, till);
        return Staying(head, head) >= 0 ? till + 1 : -1;
    }

    /// <summary>What carries the engine: what stays in the car stays where it is.</summary>
    private static bool IsHost(Place place) => place.Label is "car" or "van" or "truck" or "bike" or "boat" or "frame" or "chassis" or "tractor" or "engine bay" or "hull";

    /// <summary>What is spoken of after it was told what stays behind: what came off, else what stays.</summary>
    private Thing Behind(Thing left) => facts.OfType<Off>().LastOrDefault()?.Thing ?? left;

    /// <summary>The things that stay: named, meant by "it" or "that", or picked from the kind spoken of.</summary>
    private List<Thing> Staying(int from, int to, Stretch clause)
    {
        if (PieceLeft(from, to) is { } piece && (ThingsIn(from, to).FirstOrDefault(t => t is { Sort: ThingSort.Part or ThingSort.Fasteners, Kind.Length: > 0 }) is { } host ? host with { Sort = ThingSort.Part, Fastener = "" } : Kin()) is { Sort: ThingSort.Part, Ids.Count: > 0 } whole)
        {
            var of = WhichAfter(All(whole), to, clause.To) ?? (Chosen(All(whole), Range(to, clause.To).LastOrDefault(k => Word(k) == "on", to), clause.To) is { } one ? one.Thing : null) ?? Alike(whole, new Stretch(tokens, from, to)) ?? whole;
            return [of with { Detail = piece, Others = [] }];
        }

        if (to - from == 1 && Word(from) is "it" or "that" or "them" or "they" or "these" or "those" or "her" or "him" or "she" or "he" or "this")
            return (ThingsIn(clause.From, from).LastOrDefault() ?? (pending.Count > 0 ? pending[^1].Thing : topic ?? LastThing())) is { } meant ? [meant with { Detail = "", Where = meant.Ids.Count > 0 ? "" : meant.Where, Sort = meant.Sort == ThingSort.Fasteners ? ThingSort.Part : meant.Sort }] : [];
        // "that horrid bracket behind the alternator"
        if (Range(from, to).FirstOrDefault(k => Word(k) is "bracket" or "brackets", -1) is var held and >= 0)
            return Nameless(held == to - 1 ? from : held, to) is { } bracket ? [bracket] : [];
        var named = ThingsIn(from, to);
        // "plug three and plug four"
        if (named.Count > 1 && named.All(t => t.Kind == named[0].Kind && t is { Sort: ThingSort.Part, Others.Count: 0, Detail.Length: 0 }))
            return [named[0] with { Ids = [.. named.SelectMany(t => t.Ids).Distinct()], Name = string.Join(", ", named.Select(t => t.Name)) }];
        if (named.Count > 1 && Range(from, to).Any(k => Word(k) is "and"))
            return named;
        if (named.Count > 0)
            return [named[0]];
        if (Kin() is { } kin && (NumberWords.At(tokens, from) is not null || Word(from) is "the" or "number" or "numbers" or "left" or "right" or "other" or "others") && Alike(kin, new Stretch(tokens, from, to)) is { } some)
            return [some];
        return Nameless(from, to) is { } thing && NumberWords.At(tokens, from) is null ? [thing] : [];
    }

    /// <summary>"washers", "number two's washer", "the seals": a small piece of what is spoken of.</summary>
    private string? PieceLeft(int from, int to) =>
        to > from && tokens[to - 1].Stem is "washer" or "seal" or "clip" or "shim" && In(from, to).All(p => p is WordPhrase or NumPhrase or LotPhrase { Lot: { Count: null, Size.IsEmpty: true } } or DetailPhrase or ThingPhrase { Thing.Fastener: "washer" } || p is ThingPhrase { Thing: { Sort: ThingSort.Part, Detail: "" } } host && Word(host.To) == "'s" && tokens[to - 1].Stem == "washer") ? tokens[to - 1].Stem
        : (Word(from) is "the" or "a" or "that" ? from + 1 : from) is var noun && noun + 2 < to && tokens[noun].Stem == "washer" && Word(noun + 1) is "of" or "from" or "off" && In(noun + 2, to).All(p => p is WordPhrase or ThingPhrase { Thing.Sort: ThingSort.Part }) ? "washer"
        : null;

    [GeneratedRegex("^(?:but |and |only |,)*(?<x>.+?) (?:isnt|arent|hasnt|havent|wasnt|didnt|not|(?:is|are|has|have|'s|'re|'ve) not)(?: yet| though| just| so far)*$")]
    private static partial Regex Neither();

    /// <summary>"starter's off but the alternator isn't": of the other one the last deed is denied. What did not come off stays on; what did not go on is told of no deed.</summary>
    private int NotThat(Stretch clause)
    {
        if (facts.LastOrDefault(f => f is Off or Parted or On or Tightened) is not { } deed || Neither().Match(clause.Line) is not { Success: true } match || In(clause.From, clause.To).Any(p => p is PlacePhrase or FaultPhrase or MeasurePhrase or AmountPhrase or ActPhrase { Act: not Act.On }))
            return -1;
        var (xFrom, xTo) = clause.Tokens(match.Groups["x"]);
        var told = Staying(xFrom, xTo, clause);
        if (told.Count == 0 || told.Any(t => t.Sort is not (ThingSort.Part or ThingSort.Line)))
            return -1;
        Flush();
        foreach (var thing in told)
        {
            if (deed is Off or Parted)
                About(thing, Range(clause.From, clause.To), t => new LeftOn(t, ""));
        }

        if (deed is On or Tightened)
            Untold(Range(clause.From, clause.To));
        topic = Behind(told[^1]);
        return clause.To;
    }

    [GeneratedRegex("^(?:is|are|was|were|has|have|'s|'ve|'re|did) (?<x>.+)$")]
    private static partial Regex So();

    /// <summary>"starter's on the trolley and so's the alternator": of the other one the same is told.</summary>
    private int LikeThat(Stretch clause)
    {
        if (Word(clause.From - 1) != "so" || facts.LastOrDefault() is not (Put or Off or On or LeftOn or Seen or Parted) || So().Match(clause.Line) is not { Success: true } match || In(clause.From, clause.To).Any(p => p is LotPhrase or FaultPhrase or PlacePhrase or MeasurePhrase or ActPhrase))
            return -1;
        var (xFrom, xTo) = clause.Tokens(match.Groups["x"]);
        var like = facts[^1];
        if (Staying(xFrom, xTo, clause) is not [{ Sort: ThingSort.Part or ThingSort.Line } other] || other.Sort != About(like)!.Sort)
            return -1;
        About(other, Range(clause.From, clause.To), t => With(like is Off off ? off with { With = [] } : like, t));
        topic = other;
        return clause.To;
    }

    /// <summary>Words that tell of no deed: asked about only where the note holds nothing else.</summary>
    private readonly List<IReadOnlyList<int>> untold = [];

    private void Untold(IEnumerable<int> from)
    {
        var words = from.Where(k => !tokens[k].IsBreak).ToList();
        untold.Add(words);
        _ = Spans(words);
    }

    [GeneratedRegex("^(?:and |very |pretty |quite |all |it |is |was |'s )*black(?: (?:as|like) .*)?$", RegexOptions.IgnoreCase)]
    private static partial Regex Black();

    /// <summary>What was denied stays with what else was told; where nothing else was, it is kept as said.</summary>
    private void Settle()
    {
        var aside = untold.SelectMany(w => w).Order().ToList();
        if (aside.Count > 0 && facts.Count > 0)
            facts[^1] = facts[^1] with { Spans = [.. facts[^1].Spans, .. Spans(aside)] };
        else if (aside.Count > 0)
            Ask(DoubtSort.NotUnderstood, $"Kept as said: “{Words(aside)}”", aside);

        // "let the oil out, six litres, very black": how the oil looked, and no finding of the sump.
        for (int k = facts.Count - 1; k > 0; k--)
        {
            if (facts[k] is Seen { Condition: "dirty" } colour && facts[k - 1] is Drained drained && Black().IsMatch(colour.Words))
            {
                facts[k - 1] = drained with { Spans = [.. drained.Spans, .. colour.Spans] };
                facts.RemoveAt(k);
            }
        }

        // "no play in the turbo so it stays bolted on": why, and no finding of its own.
        foreach (var none in facts.OfType<Seen>().Where(s => s.Condition == "no play").ToList())
        {
            if (facts.FindIndex(f => f is LeftOn or Seen { Condition: "fine" } && About(f)!.Ids.SequenceEqual(none.Thing.Ids) && About(f)!.Detail == none.Thing.Detail) is var why and >= 0)
            {
                facts[why] = facts[why] with { Spans = [.. facts[why].Spans, .. none.Spans] };
                facts.Remove(none);
            }
        }
    }
}
