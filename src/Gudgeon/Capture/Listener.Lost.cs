using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>Small things that fell, rolled or flew out of sight, and that turn up.</summary>
internal sealed partial class Listener
{
    private static readonly HashSet<string> Flying = ["dropped", "drop", "fell", "fall", "fallen", "rolled", "pinged", "flew", "shot", "jumped", "sprang", "bounced", "slipped", "popped", "went", "'s", "skittered", "disappeared", "vanished", "flicked", "kicked"];

    private static readonly HashSet<string> SmallKinds = ["key", "circlip", "collet", "shim", "dowel", "gudgeon", "thrust", "core-plug", "retainer", "spring-seat"];

    /// <summary>"dropped one of the cover bolts behind the dryer", "one circlip flew off somewhere", "I'm a nut short".</summary>
    private int Fallen(Stretch clause)
    {
        var said = In(clause.From, clause.To).ToList();
        if (said.Any(p => p is MeasurePhrase or AmountPhrase or TagPhrase or FaultPhrase or LotPhrase { Lot.Size.IsEmpty: false } or ActPhrase { Act: Act.On or Act.Find or Act.Buy or Act.Tighten or Act.Mark }) || said.OfType<ThingPhrase>().FirstOrDefault(t => Preposition(t.From) is "" or "of") is not { } named || named.Thing.Sort != ThingSort.Fasteners && !(named.Thing.Sort == ThingSort.Part && SmallKinds.Contains(named.Thing.Kind)))
            return -1;
        var words = Range(clause.From, clause.To).Select(Word).ToList();
        bool shy = words is ["i" or "we" or "that" or "it", "'m" or "am" or "are" or "'re" or "'s" or "is", "a" or "an" or "one", .., "short"] || Regex.IsMatch(clause.Line, "\\b(?:is|are|was) not found$|\\b(?:i|we) (?:cannot|cant) find$|\\bgone (?:astray|awol)$|\\b(?:i|we) miss (?:a|an|one|two|three)\\b");
        int verb = Range(clause.From, clause.To).FirstOrDefault(k => Flying.Contains(Word(k)), -1);
        bool out1 = verb >= 0 && Range(verb, clause.To).Any(k => Word(k) is "behind" or "under" or "underneath" or "down" or "somewhere" or "between" or "beneath" or "find" or "gone" || Word(k) is "in" or "into" or "off" && Lost(k, clause.To));
        // "one bolt is down the side of the box" lies there; it fell, rolled or is away.
        out1 &= Word(verb) is not "'s" || Range(verb, clause.To).Any(k => Word(k) == "away" && Word(k + 1) is "under" or "down" or "behind" or "in");
        if (!shy && !out1 || Word(verb) == "went" && Range(verb, clause.To).All(k => Word(k) is not ("down" or "behind" or "under")))
            return -1;
        int end = clause.To;
        while (end < tokens.Count && (Word(end) is "and" or "but" or "so" || tokens[end].Sort == TokenSort.Comma) && ClauseEnd(end + 1, tokens.Count) is var next && Regex.IsMatch(new Stretch(tokens, end + 1, next).Line, "^(?:and |so |but |it |that |i |we |one )*(?:'s |is |cant |cannot |couldnt )*(?:gone|lost|find (?:it|the thing)|vanished)"))
            end = next;
        int count = named.Told ?? CountBefore(named.From, clause.From) ?? 1;
        var all = Range(clause.From, end).Where(k => !tokens[k].IsBreak).ToList();
        pending.RemoveAll(p => p.From >= clause.From);
        Flush();
        if (named.Thing.Sort == ThingSort.Part)
            About(named.Thing.Ids.Count == 1 && named.Thing.Others.Count == 0 || named.Thing.Others.Count > 0 && named.Thing.Others.Count + 1 < index.Parts(named.Thing.Kind).Count ? named.Thing : named.Thing with { Ids = [], Others = [], Where = "one of them", Name = index.NameOf(named.Thing.Kind) }, all, t => new Missing(t, []));
        else
            About(things.Joint(named.Thing, named.Thing.Fastener.Length > 0 ? named.Thing.Fastener : "bolt"), all, t => new Missing(t, [new Lot { Count = count, Fastener = named.Thing.Fastener.Length > 0 ? named.Thing.Fastener : "bolt" }]));
        Speak(named.Thing, clause.From);
        return end;
    }

    /// <summary>Into what nobody lays things in: the grass, the sump, a hedge.</summary>
    private bool Lost(int at, int to)
    {
        int noun = Word(at + 1) is "the" or "my" or "a" ? at + 2 : at + 1;
        return noun < to && tokens[noun].IsWord && Word(noun) is not ("my" or "one" or "two" or "order") && Range(noun, Math.Min(to, noun + 3)).All(k => Lexicon.Containers.Longest(tokens, k).Values.Count == 0 || Word(k) is "grass" or "gravel" or "sump" or "floor" or "drain" or "sink") && NumberWords.At(tokens, noun) is null;
    }

    [GeneratedRegex("^(?:oh |and |so |but )*(?:that|the|those|this) (?<x>.*?)\\b ?(?:that )?(?:i|we)(?: 've|'ve| had| have| was| were)? (?:missing|lost|dropped|mislaid|short of|looking for|couldnt find)\\b")]
    private static partial Regex WasLost();

    /// <summary>"that washer I was missing off the oil cooler, found it in my cuff": told as lost only to say that it is found.</summary>
    private int LostAndFound(Stretch clause, Stretch rest)
    {
        if (facts.Count > 0 || WasLost().Match(rest.Line) is not { Success: true } || !Regex.IsMatch(rest.Line, "\\b(?:found|turned up|got it|was (?:in|under|on|behind|stuck|down)|it 's (?:in|under|here))\\b"))
            return -1;
        var named = In(clause.From, rest.To).OfType<ThingPhrase>().FirstOrDefault(t => t.Thing is { Sort: ThingSort.Fasteners or ThingSort.Part, Kind.Length: > 0 } && Preposition(t.From) is "" or "off" or "of" or "from");
        var lot = In(clause.From, clause.To).OfType<LotPhrase>().FirstOrDefault(l => l.Lot.Fastener.Length > 0);
        var before = context.Short.LastOrDefault(m => named is null || m.Thing.Kind == named.Thing.Kind);
        if (before is null && named is null)
            return -1;
        string fastener = named is { Thing.Sort: ThingSort.Fasteners } ? named.Thing.Fastener : lot?.Lot.Fastener ?? "";
        var of = before?.Thing ?? (fastener.Length > 0 ? things.Joint(named!.Thing, fastener) : named!.Thing);
        About(of, Range(clause.From, rest.To).Where(k => !tokens[k].IsBreak), t => new Found(t, before?.Lots ?? (fastener.Length > 0 ? [new Lot { Count = lot?.Lot.Count ?? named!.Told ?? 1, Fastener = fastener }] : []), ""));
        Speak(of, clause.From);
        return rest.To;
    }

    /// <summary>"found it. drip tray": where it was, told after a pause; nothing is put there.</summary>
    private int Whereabouts(int end)
    {
        while (end < tokens.Count && tokens[end].IsBreak)
        {
            int next = end + 1;
            while (next < tokens.Count && !tokens[next].IsBreak)
                next++;
            bool place = Range(end + 1, next).Any(k => places.At(k) is not null || Lexicon.Containers.Longest(tokens, k).Values.Count > 0 || PlaceWords.Contains(Word(k)));
            if (next == end + 1 || next - end > 10 || Range(end + 1, next).Any(k => things.At(k) is not null || Lexicon.Faults.Longest(tokens, k).Values.Count > 0 || NumberWords.At(tokens, k) is not null) || !place && !Range(end + 1, next).All(k => Lexicon.Fillers.Contains(Word(k)) || Lexicon.Persons.Contains(Word(k)) || Lexicon.Passing.Contains(Word(k))))
                break;
            end = next;
        }

        return end;
    }

    /// <summary>"head off, and the gasket came with it": what came along with the last part taken off.</summary>
    private int CameAlong(Stretch clause)
    {
        if (facts.LastOrDefault() is not Off { Thing: { Sort: ThingSort.Part, Others.Count: 0 } part } off || draft is not null && draft.Lots.Count > 0 || pending.Count > 0 || !Regex.IsMatch(clause.Line, "\\bwith it$|\\bwith them$|\\b(?:came|come|comes) (?:away |off |out )?(?:too|as well)$|\\bbrought\\b|\\bcame stuck to it$"))
            return -1;
        var along = In(clause.From, clause.To).Where(p => p is ThingPhrase { Thing: { Sort: ThingSort.Part, Ids.Count: > 0 } } or DetailPhrase { Detail: "gasket" or "seal" }).ToList();
        if (along is not [var one] || In(clause.From, clause.To).Any(p => p is FaultPhrase { Fault: not "stuck" } or LotPhrase or PlacePhrase))
            return -1;
        var thing = one is ThingPhrase named ? Companions(part, named.Thing) : Gasketed(part, ((DetailPhrase)one).Detail);
        if (thing.Ids.Count == 0 || thing.Ids.SequenceEqual(part.Ids) && thing.Detail.Length == 0)
            return -1;
        facts[^1] = off with { With = [.. off.With, thing], Spans = [.. off.Spans, .. Spans(Range(clause.From, clause.To))] };
        return clause.To;
    }
}
