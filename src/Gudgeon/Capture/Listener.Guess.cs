using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>What sounds like a plan and is none, and plans said without a verb of planning.</summary>
internal sealed partial class Listener
{
    [GeneratedRegex("^(?:and |but |so |,)*(?:that|it|this|they|which)(?: 'll| will| must| might| could| may| 'd| would| has to| have to|'ll) (?:just |only |probably |surely |likely )*(?:be|have been)(?: just| only| down to| from| because of| due to)* (?:the|a|an|my|your|some|all|old|that|water|heat|rust|age|damp|dirt|wear|why|what)\\b(?!.*\\b(?:cleaned|done|checked|replaced|changed|fitted|bought|skimmed|honed|tomorrow|later|next (?:job|thing|one)|job)\\b)")]
    private static partial Regex Infers();

    [GeneratedRegex("^(?:and |but |so |,)*(?:i|you|we)(?: could| can|'d| would)(?: even| nearly| almost| just| easily| really)* (?:shake|rock|wobble|wiggle|waggle|feel|see|hear|smell|spin|turn|push|catch|slide|move|poke) (?:it|them|that|the|a|my|your|one)\\b|^you (?:feel|hear|see|notice|smell) (?:it|them|that)\\b")]
    private static partial Regex Feels();

    /// <summary>"that'll be the damp", "I could shake it with my hand": how it came or how bad it is, said beside what was told.</summary>
    private int Guess(Stretch clause)
    {
        // "that could be the turbo": a guess at another part; kept as said, never planned.
        if (Infers().IsMatch(clause.Line) && !Ahead().IsMatch(clause.Line) && pending.Count == 0 && In(clause.From, clause.To).Any(p => p is ThingPhrase) && In(clause.From, clause.To).All(p => p is ThingPhrase or WordPhrase))
        {
            Ask(DoubtSort.NotUnderstood, $"Kept as said: “{Said(clause.From, clause.To)}”", Range(clause.From, clause.To));
            return clause.To;
        }

        if (!Infers().IsMatch(clause.Line) && !Feels().IsMatch(clause.Line) || Ahead().IsMatch(clause.Line) || In(clause.From, clause.To).Any(p => p is MeasurePhrase or ThingPhrase) || pending.Count > 0 || facts.Count == 0)
            return -1;
        facts[^1] = facts[^1] with { Spans = [.. facts[^1].Spans, .. Spans(Range(clause.From, clause.To).Where(k => !tokens[k].IsBreak))] };
        return clause.To;
    }

    private const string Day = "(?:tomorrow|tonight|later|monday|tuesday|wednesday|thursday|friday|saturday|sunday|the weekend|next week|another (?:day|night|time)|the morning|after (?:tea|lunch|dinner))";

    [GeneratedRegex("^(?:and |so |but |,)*(?<x>.+?) (?:is|'s|are|'re|can be|will be|'ll be) (?:(?:a|an|another|one|the next|next|my next|just|all|strictly) )*(?:job|jobs|task|one|work|fun|pleasure)? ?for " + Day + "\\b|^(?:and |so |but |,)*(?<x>.+?) (?:is|'s|are) (?:a )?" + Day + "(?: 's)? (?:job|work|problem|task|fun)\\b")]
    private static partial Regex JobFor();

    [GeneratedRegex("^(?:and |so |but |then |,)*(?:(?:this|that|these|those)(?: one| ones| two)? )?(?:i|we)(?: 'll| will| shall)? (?<v>[a-z]+) (?<o>it |them |this |that |these |those |em |that one |this one )?(?<r>.*)$")]
    private static partial Regex DoesLater();

    [GeneratedRegex("^(?:and |so |but |then |,)*(?:i|we)(?: 'll| will| shall|'m going to) (?:do|get|tackle|fit|pull|finish|tighten|torque|start|check|measure|clean|strip) (?<n>(?:number |numbers )?[a-z0-9]+(?: and (?:number )?[a-z0-9]+| [a-z0-9]+)*?) (?:on |in |at |after )?" + Day + "\\b")]
    private static partial Regex DoesSome();

    /// <summary>"timing cover's a job for Friday", "I scrape them later", "that one I bring tomorrow to the welder", "I'll do two and three tomorrow".</summary>
    private int PlanOfIt(Stretch clause)
    {
        string line = clause.Line;
        if (Past().IsMatch(line) || In(clause.From, clause.To).Any(p => p is MeasurePhrase or LotPhrase { Lot.Fastener.Length: > 0 } or ActPhrase { Act: Act.Buy or Act.Miss }))
            return -1;
        Thing? thing = null;
        if (JobFor().Match(line) is { Success: true } job)
        {
            var (from, to) = clause.Tokens(job.Groups["x"]);
            thing = ThingIn(from, to) ?? (Regex.IsMatch(job.Groups["x"].Value, "^(?:that|this|it|they|those|these)(?: one| ones)?$") ? Kin() : null);
        }
        else if (DoesSome().Match(line) is { Success: true } some && Kin() is { } row)
        {
            var (from, to) = clause.Tokens(some.Groups["n"]);
            var numbers = Picked(from, to);
            thing = numbers.Count == 1 && Word(from) == "number" ? Select(row with { Others = [] }, numbers[0], "") : numbers.Count > 1 ? SelectAll(row, numbers) : null;
        }
        else if (DoesLater().Match(line) is { Success: true } later && (Ahead().IsMatch(line) || In(clause.From, clause.To).Any(p => p is DuePhrase)) && (later.Groups["o"].Length > 0 || pending is [.., { To: var named }] && named == clause.From || Regex.IsMatch(line, "^(?:and |so |but )*(?:this|that|these|those)(?: one| ones| two)? (?:i|we)\\b")) && !later.Groups["v"].Value.EndsWith("ed", StringComparison.Ordinal) && ThingsIn(clause.Tokens(later.Groups["r"]).From, clause.To).Count == 0)
            thing = later.Groups["o"].Value is "them " or "these " or "those " or "em " && pending.Count == 0 && topic is null && LastThing() is { } one ? context.Last.Select(About).LastOrDefault(t => t is { Ids.Count: > 1 } && t.Ids.Contains(one.Ids[0])) ?? one : Kin();
        if (thing is null or { Sort: not (ThingSort.Part or ThingSort.Line) } || thing.Ids.Count == 0)
            return -1;
        Flush();
        Add(new Planned(Whole(thing), Said(clause.From, clause.To)), Whole(clause));
        pending.Clear();
        Speak(thing, clause.From);
        return clause.To;
    }

    [GeneratedRegex("^(?:now |so |right |hmm |and |but |wait |,)*(?:is|are|was) (?:that|this|the|it|those|there) ?.*\\b(?:coming|leaking|dripping|weeping|running|getting|seeping|leaked|come)(?: out)? (?:from|of|past|by|through) (?<x>.+)$")]
    private static partial Regex ComesFrom();

    /// <summary>"is that oil on the flywheel coming from the rear seal": asked of the seal, not of what is wet.</summary>
    private int Whence(Stretch clause)
    {
        if (ComesFrom().Match(clause.Line) is not { Success: true } match)
            return -1;
        var (from, to) = clause.Tokens(match.Groups["x"]);
        if (ThingIn(from, to) is not { } source)
            return -1;
        Flush();
        Self(source, Whole(clause), Said(clause.From, clause.To));
        return Spoken(source, clause);
    }
}
