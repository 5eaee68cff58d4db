using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>What is put off, what turns up after it was asked for, and what soaks.</summary>
internal sealed partial class Listener
{
    private const string DoneTo = "(?:painted|cleaned|welded|machined|honed|skimmed|dried|cured|measured|tapped|repaired|straightened|done|fixed|ground|lapped|washed|dry|clean|ready)";

    [GeneratedRegex("^(?:and |so |but |well |no |,)*(?<x>.+?) (?:(?:has|have|will have|'ll have|must|needs?|gonna have|going to have) (?:to )?|can |'ll |will )(?:just )?wait (?:till|until|for|on) (?<y>.+)$"
        + "|^(?:and |so |but |,)*(?<x>.+?) (?:wont|cant|cannot|will not|can not|'ll not|isnt going to|is not going to) (?:be |go )(?:back )?(?:on|in|fitted)(?: again)? (?:till|until|before) (?<d>.+? (?:'s |is |are |been |has |have |was )+" + DoneTo + ")$"
        + "|^(?:and |so |but |,)*(?:i |we )?(?:'m |am |are |'re )?not (?:putting|fitting|mounting|bolting|tightening|torquing|installing|refitting) (?<x>.+?)(?: in| on| back| up| down)*(?: yet| tonight| today| (?:till|until|before) .+)+$"
        + "|^(?:and |so |but |,)*(?<x>.+?) (?:i|we) (?:'ll |will )?(?:put|fit|do|mount)(?: back)?(?: in| on)? (?:at the end|last|last of all|at the very end)$")]
    private static partial Regex PutsOff();

    [GeneratedRegex("^(?:and |so |but |because )*(?:that|it|they|those|this one|that one) (?:goes|go|'ll go|will go|can go) (?:back )?(?:in|on) (?:after|before|when|once|later|last|at)\\b.*$")]
    private static partial Regex GoesLater();

    /// <summary>"the head has to wait until my daughter's here", "not putting the starter in yet", "it won't go on till the bracket's painted".</summary>
    private int PutOff(Stretch clause)
    {
        // "that goes in after the right head": when, of what was just put off.
        if (facts.LastOrDefault() is Planned { Thing: not null } before && pending.Count == 0 && GoesLater().IsMatch(clause.Line))
        {
            facts[^1] = before with { Spans = [.. before.Spans, .. Spans(Range(clause.From, clause.To))] };
            return clause.To;
        }

        if (PutsOff().Match(clause.Line) is not { Success: true } match || In(clause.From, clause.To).Any(p => p is MeasurePhrase or LotPhrase { Lot.Size.IsEmpty: false }))
            return -1;
        var (from, to) = clause.Tokens(match.Groups["x"]);
        if (ThingIn(from, to) is not { Ids.Count: > 0, Sort: ThingSort.Part or ThingSort.Line or ThingSort.Fasteners, Others.Count: 0 } thing || match.Groups["y"].Success && clause.Tokens(match.Groups["y"]) is var (yFrom, yTo) && (DueIn(yFrom, yTo) is not null || ThingIn(yFrom, yTo) is { Ids.Count: > 0 }))
            return -1;
        Flush();
        pending.Clear();
        Add(new Planned(thing with { Sort = thing.Sort == ThingSort.Fasteners ? ThingSort.Part : thing.Sort, Fastener = "" }, Said(clause.From, clause.To)), Whole(clause));
        Speak(thing, clause.From);
        return clause.To;
    }

    [GeneratedRegex("^(?:oh |ah |and |so |right |well |hey |,)*(?:here (?:you go|you are|they are|it is|we go|we are|'s|is|are)|there (?:we go|they are|it is|you go)|aha|found|got|(?:i |we )(?:'ve |have )?found) ?,? ?(?:the |those |my |em |them )*(?=one\\b|two\\b|three\\b|four\\b|five\\b|six\\b|seven\\b|eight\\b|a\\b|an\\b|\\d|m ?\\d)")]
    private static partial Regex HereTheyAre();

    /// <summary>"where are the starter bolts", "oh here you go, two M10s, they were under the vice": what was asked for or short is found.</summary>
    private int HereFound(Stretch clause, Stretch rest)
    {
        if (facts.Count > 0 || pending.Count > 0 || (context.Short.LastOrDefault()?.Thing ?? context.Sought) is not { Ids.Count: > 0, Kind.Length: > 0 } thing)
            return -1;
        int stop = rest.To;
        bool opened = HereTheyAre().IsMatch(rest.Line);
        var lots = In(clause.From, stop).OfType<LotPhrase>().Where(l => l.Lot.Count is not null).ToList();
        bool turned = lots.Count > 0 && Regex.IsMatch(rest.Line, "\\b(?:turned up|(?:they|it) (?:was|were|'d)|they were)\\b");
        if (!opened && !turned || lots.Count == 0 || In(clause.From, stop).Any(p => p is ThingPhrase { Thing: { Sort: ThingSort.Part or ThingSort.Fasteners, Ids.Count: > 0 } } named && named.Thing.Kind != thing.Kind || p is FaultPhrase or MeasurePhrase or AmountPhrase or TagPhrase or ActPhrase { Act: Act.Off or Act.On or Act.Tighten or Act.Miss or Act.Buy }))
            return -1;
        var joint = things.Joint(thing with { Others = [] }, lots[0].Lot.Fastener.Length > 0 ? lots[0].Lot.Fastener : "bolt");
        Add(new Found(joint, [.. lots.Select(l => l.Lot with { Fastener = l.Lot.Fastener.Length > 0 ? l.Lot.Fastener : "bolt" })], ""), Range(clause.From, stop).Where(k => !tokens[k].IsBreak));
        foundAt = facts.Count - 1;
        Speak(joint, clause.From);
        return stop;
    }

    [GeneratedRegex("^(?:(?:i|we|'ve|have|just|and|so|then|well|now) )*(?:give|gave|given|drowned|doused|sprayed|soaked|drenched|hit|flooded) (?:(?:it|them|those|that|these|all|both|of|the|a|an|some|plenty|with|in|good|dose|drink|squirt|soaking|more|another|drop|lots) )*(?<x>penetrating oil|releasing oil|penetrant|freeing oil|easing oil|release oil)\\b")]
    private static partial Regex Drenches();

    /// <summary>"I give them penetrating oil and we wait until Friday": left to soak.</summary>
    private int Drenched(Stretch clause, Stretch rest)
    {
        if (Drenches().Match(rest.Line) is not { Success: true } match || Regex.Match(rest.Line, "\\b(?:wait|waiting|leave|leaving|left|sit|soak)\\b") is not { Success: true } || DueIn(clause.From, rest.To) is not { } due)
            return -1;
        var (from, to) = rest.Tokens(match.Groups["x"]);
        Flush();
        pending.Clear();
        Add(new WaitingFor(Said(from, to), (topic ?? LastThing()) is { Others.Count: 0 } soaked ? soaked : null, due), Range(clause.From, rest.To).Where(k => !tokens[k].IsBreak));
        return rest.To;
    }
}
