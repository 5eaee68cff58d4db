using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>Half sentences that lean on what was just said: "want a pair", "that one's gone", "found it", "the rest are fine".</summary>
internal sealed partial class Listener
{
    [GeneratedRegex("^(?:and |so |then |better |'ll |i |we |just |also |must |should |will |have |to |gonna |going |probably |they |it |they 'll |there |'s |need to |have to )*(?:want|need|get|buy|order|wants|needs|get me|pick up|ordered|gotta get|gotta buy|gotta order|got to buy|must buy|must get|put me down for)(?: to get| to order| to buy)? (?<n>(?:a |another |some |about )*(?:new )?(?:pair|couple|set|one|ones|lot|more|new|few|[a-z]+|\\d+))(?: new)?(?: ones?)?(?: of (?:them|those|each))?(?: new)?(?: ones)?(?: anyway| too| then| really| now| please)*$")]
    private static partial Regex Wants();

    [GeneratedRegex("^(?:and |plus |also |,)*(?:one|another|another one|some|a couple) (?:of (?:those|them|these) ?)?(?:as well|too|also|likewise)$")]
    private static partial Regex OneMore();

    /// <summary>"I'll want a pair", "need four new": of what was just told.</summary>
    private int WantSome(Stretch clause)
    {
        // "and one of those as well": onto the list too.
        if (OneMore().IsMatch(clause.Line) && (facts.Any(f => f is ToBuy) || context.Last.Any(f => f is ToBuy)) && (pending.Count > 0 ? pending[^1].Thing : seen ?? topic) is { Sort: not ThingSort.Fasteners } more && !facts.Any(f => f is ToBuy b && b.Thing.Equals(more)))
        {
            pending.Clear();
            Flush();
            About(more, Range(clause.From, clause.To), t => new ToBuy(t, []));
            return clause.To;
        }

        if (Listed().IsMatch(clause.Line) && (pending.Count > 0 ? pending[^1].Thing : seen ?? topic ?? LastThing()) is { } listed)
        {
            pending.Clear();
            Flush();
            About(listed with { Detail = listed.Detail is "seal" or "gasket" or "O-ring" ? listed.Detail : "" }, Range(clause.From, clause.To), t => new ToBuy(t, []));
            return clause.To;
        }

        if (Wants().Match(clause.Line) is not { Success: true } match || (seen ?? topic ?? LastThing()) is not { } thing || ThingsIn(clause.From, clause.To).Count > 0 || In(clause.From, clause.To).Any(p => p is DetailPhrase or FaultPhrase or PlacePhrase or LotPhrase { Lot.Size.IsEmpty: false } or LotPhrase { Lot.Fastener.Length: > 0 }))
            return -1;
        var (nFrom, nTo) = clause.Tokens(match.Groups["n"]);
        int? count = null;
        bool counted = false;
        for (int i = nFrom; i < nTo; i++)
        {
            if (NumberWords.At(tokens, i) is { IsCount: true } n)
                (count, counted) = (n.Int, true);
        }

        if (!counted && !Regex.IsMatch(match.Groups["n"].Value, "\\b(?:new|one|ones|another|some|set|more|pair|couple)\\b"))
            return -1;
        if (Regex.IsMatch(match.Groups["n"].Value, "\\b(?:pair|couple)\\b"))
            count = 2;
        if (count == 1)
            count = null;
        if (pending.Count > 0)
            thing = pending[^1].Thing;
        pending.Clear();
        Flush();
        var whole = thing with { Others = [] };
        About(whole, Range(clause.From, clause.To), t => new ToBuy(t, count is { } n ? [new Lot { Count = n, Fastener = t.Sort == ThingSort.Fasteners ? t.Fastener : "part" }] : []));
        return clause.To;
    }

    [GeneratedRegex("^(?:and |so |then |i 'll |i 've |,)*(?:put|stick|add|pop|stuck|get|put me down|put us down) (?:down |in )?(?:for )?(?:one|some|a new one|another|another one|it|them|that|new ones|one of (?:those|them)|a pair)(?: (?:on|to|for) (?:the|my) (?:shopping |order |buying )?list|$)\\b.*$")]
    private static partial Regex Listed();

    [GeneratedRegex("^(?:and |so |but |then |now )*(?:i |we )?(?:'ve |have )?(?:dropped one|lost one|one (?:rolled|pinged|flew|fell|dropped|went|got lost)|(?:that|one|it) one?(?: 's|'s| is| has)? ?gone)\\b.*$")]
    private static partial Regex OneGone();

    [GeneratedRegex("^(?:and |so |but |,)*(?<x>.+?) (?:(?:is |'s |are )(?:short|lacking|missing|down)(?: of| by)?|misses|miss|lacks) (?<n>a|an|one|its|two|three|four|\\d+) (?:of its )?(?<f>bolt|nut|stud|screw|washer|clip|dowel|circlip)s?$|^(?:and |so |but |,)*(?:(?:(?:i|we|that|it|they|there)(?: 'm| 're| 's| am| are| is| was| were| 've| have)*|(?<x>.+?) (?:is|'s|are|was|were|came up|comes up|has|have))(?: got| still| now)* )?(?<n>a|an|one|two|three|four|five|six|\\d+) (?:(?<f>bolt|nut|stud|screw|washer|clip|dowel|circlip)s? )?(?:is |'s |are |of them )*(?:short|missing|light|too few)(?: (?:for|on|of|from|in) (?:it|them|that|the lot|(?<y>(?:the |my )?[a-z][a-z ]+)))?$")]
    private static partial Regex Lacks();

    [GeneratedRegex("^(?:and |so |but |oh |ah |aha |ha |wait |then |good news |finally |eventually |at last |,)*(?:i |we |'ve |have |just |finally )*(?:found|got) (?:it|them|him|the bugger|the little bugger|the sod|that one|the missing one|the lost one|the other one|it again)(?: back| again)?\\b(?<w>.*)$|^(?:it|they)(?: 's|'s| has| have)? ?(?:turned up|come to light)\\b(?<w>.*)$")]
    private static partial Regex FoundIt();

    /// <summary>One of the fasteners just told has gone, or the one that was short has turned up.</summary>
    private int TurnedUp(Stretch clause)
    {
        if (Lacks().Match(clause.Line) is { Success: true } lack && ((clause.Tokens(lack.Groups[lack.Groups["y"].Success ? "y" : "x"]) is var (lFrom, lTo) && lTo > lFrom ? ThingIn(lFrom, lTo) : null) ?? (pending.Count > 0 ? pending[^1].Thing : draft?.Of ?? topic ?? LastThing())) is { Kind.Length: > 0 } holder)
        {
            int howMany = NumberWords.At(tokens, clause.Tokens(lack.Groups["n"]).From) is { IsCount: true } n ? n.Int : 1;
            string what = lack.Groups["f"].Success && Lexicon.Fasteners.Longest(tokens, clause.Tokens(lack.Groups["f"]).From) is { Values: [var kind, ..] } ? kind : "bolt";
            pending.RemoveAll(p => p.From >= clause.From || p.Thing.Code == holder.Code);
            Flush();
            About(things.Joint(holder, what), Range(clause.From, clause.To), t => new Missing(t, [new Lot { Count = howMany, Fastener = what }]));
            return clause.To;
        }

        if (FoundIt().Match(clause.Line) is { Success: true } found && (facts.OfType<Missing>().LastOrDefault() ?? context.Short.LastOrDefault()) is { } lacking)
        {
            string where = found.Groups["w"].Value.Trim(' ', ',');
            int end = skipTo = Whereabouts(clause.To);
            Add(new Found(lacking.Thing, lacking.Lots, where), Range(clause.From, end).Where(k => !tokens[k].IsBreak));
            foundAt = facts.Count - 1;
            Speak(lacking.Thing, clause.From);
            return end;
        }

        if (OneGone().IsMatch(clause.Line) && (draft?.Of ?? topic) is { } of && Regex.IsMatch(clause.Line, "gone|rolled|somewhere|lost|find|vanish|down|never|behind|pinged|flew|dark"))
        {
            if (of.Sort == ThingSort.Unknown && LastJoint() is { } joint)
                of = joint;
            string fastener = draft?.Lots.LastOrDefault()?.Lot.Fastener is { Length: > 0 } said ? said : "bolt";
            Flush();
            About(things.Joint(of, fastener), Range(clause.From, clause.To), t => new Missing(t, [new Lot { Count = 1, Fastener = fastener }]));
            return clause.To;
        }

        return -1;
    }

    [GeneratedRegex("^(?:but |and |,)*(?:the |all the |all of the )?(?:rest|others|other (?:two|three|four|five|six|seven|one|ones)|remaining (?:ones|two|three|four|five|six|seven))\\b(?! of)")]
    private static partial Regex TheRest();

    /// <summary>"number two's bent, the rest are fine": all of the kind but those just told.</summary>
    private Thing? Rest(int from, int to)
    {
        if (!TheRest().IsMatch(new Stretch(tokens, from, to).Line) || (topic ?? LastThing()) is not { Sort: ThingSort.Part, Kind.Length: > 0, Ids.Count: > 0 } told)
            return null;
        var all = index.Parts(told.Kind);
        IReadOnlyList<string> left = [.. all.Select(p => p.Id).Except(told.Ids)];
        return left.Count == 0 || left.Count == all.Count ? null : new Thing(ThingSort.Part, told.Kind, left, $"{index.NameOf(told.Kind)}s, the rest");
    }
}
