using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>
/// What was not done: meant, forgotten, tried, wished, still to do. Such words are told apart before any deed is read, so that
/// "main three has to come off again" never takes the cap off.
/// </summary>
internal sealed partial class Listener
{
    private const string Lead = "^(?:(?:and|but|so|right|ok|okay|also|still|just|then|oh|well|hmm|damn|bugger|now|anyway|really|i think|i reckon|reckon|think|note|,) ?)*";

    private const string Who = "(?:i|we|you|he|she|they|it|that|this|someone|somebody)?(?: ?(?:'ve|'ll|'d|'m|'re|am|are|have|still|just|really|had|also|do|is|'s))* ?";

    [GeneratedRegex(Lead + Who + "(?:must |need to |got to |gotta |have to |should |mustnt |to |please )?(?:remember(?! where| which| what| if)|dont forget|do not forget|dont let me forget|make sure|note to self|reminder|mental note|remind me to|remind me about|mustnt forget|must not forget|never forget)\\b.*$")]
    private static partial Regex Reminds();

    [GeneratedRegex(Lead + Who + "(?:should have|shouldve|should 've|should of|ought to have|wish i|wish we|wish i 'd|could have|couldve|would have|wouldve|might have|nearly|almost|very nearly)(?! (?:a|the|all|two|three|four|five|six|seven|eight|nine|ten|full|empty|half|done))\\b.*$")]
    private static partial Regex Regrets();

    [GeneratedRegex(Lead + Who + "(?:forgot|forgotten|forgot to|was going to|were going to|was gonna|meant to|didnt get round to|havent got round to|hadnt got round to|never got round to|didnt get time to|ran out of time to|no time to|yet to|still to|still need to|still have to|still got to|not got round to|stopped short of|about to|ready to|planning to|plan to|hoping to|hope to|want to|thinking of|thinking about|thinking i 'll|might|may|could|will|'ll|shall|going to|gonna|must|need to|have to|has to|got to|gotta|ought to|should|supposed to|intend to|aim to|let me)(?<r> .*)$")]
    private static partial Regex Means();

    [GeneratedRegex("\\b(?:(?:has|have|needs?|wants?|got|'s got|'ve got|ought|is|are|'s|'re|am|still|yet|due|supposed|ready|waiting|going) (?:still |also |just |now |probably |maybe |only )?to|gonna|must|should|will|'ll|shall|might|may|could|can|cannot|to be|coming|going|comes|goes|needs|want|wants|need) (?:also |then |now |probably |maybe |still |all |just |both )*(?<v>come|be|get|go|going|coming|off|out|have|take|taken|do|done|pull|drop|lift|remove|undo|fit|refit|put|strip|mark|tag|cap|plug|drain|measure|check|clean|split|coming)\\b(?<r>.*)$")]
    private static partial Regex Obliges();

    [GeneratedRegex(Lead + "(?:where (?:was|were|had|am) (?:i|we)(?: got to| up to)?|is this (?:thing )?on|(?:(?:my |the |me )|(?=[a-z]+ 's ))(?:back|hands?|knees?|fingers?|feet|eyes|dinner|tea|kettle|phone|dog|cat|kids|wife|missus|light|lights|rain|weather|radio|heater|torch|beer|coffee|lunch|neighbours?|neighbor|boss|garage door)(?:'s| 's| is| are| was| were)? (?:wrecked|killing|frozen|cold|dead|ready|on|off|out|gone|black|filthy|done|knackered|shot|tired|sore|fading|going|calling|barking|wet|rang|ringing|bad)\\b.*|(?:lost|wasted|spent) (?:a|the|half|all|most of) .*(?:day|morning|evening|night|hour|afternoon|weekend)s?\\b.*|(?:i |we |'ll |have |had |to |must |better |going |just )*(?:leave|call|stop|pack|knock|finish) (?:it |this |that |things |in |off |up )?(?:there|here|at that|a night|a day|quits|in|off|up)(?: for (?:now|tonight|today|the night|the day))?)$")]
    private static partial Regex SmallTalk();

    [GeneratedRegex("\\b(?:tomorrow|tonight|later|later on|next|next week|next time|at the weekend|this weekend|on (?:monday|tuesday|wednesday|thursday|friday|saturday|sunday)|in the morning|first thing|after (?:tea|lunch|dinner|work))\\b")]
    private static partial Regex Ahead();

    [GeneratedRegex("\\b(?:took|got|had|came|went|pulled|whipped|whipped|dropped|removed|undid|unbolted|found|put|fitted|lifted|was|were|did|drained|been|finished|managed|split|broke|cracked|snapped|sheared|got|refitted|stripped|cleaned|measured|made|taken|moved|left|lost|bought|brought|started|finally|already|done|tapped|drilled|capped|plugged|marked|tagged|'s off|'s out|is off|is out|are off|are out|off now|out now)\\b")]
    private static partial Regex Past();

    [GeneratedRegex(Lead + Who + "(?:tried|trying|tried to|been trying to|attempted|had a go at|fought|struggled|struggling|spent|battled)\\b.*$")]
    private static partial Regex Tries();

    [GeneratedRegex(Lead + Who + "(?:didnt|did not|dont|do not|havent|have not|hasnt|has not|not|never|wont be|will not be|not going to|isnt going to|no need to|not bothering|decided not to|decided against|wasnt going to|neednt|no point|not had to|didnt need to|didnt have to|without) (?<r>.*)$|^(?<x>.+?) (?:hasnt|havent|isnt|arent|wasnt|werent|doesnt|didnt|has not|have not|is not|are not|was never|were never|am not|i am not|i 'm not|is still not|'s not|'s still not|still isnt|not|never|neednt|need not|wont need to|doesnt need to|doesnt have to|dont need to|dont have to) (?:been |yet |even |really |going to |to )*(?<v>come|be|been|off|out|taken|removed|undone|done|moved|fitted|on|back|in|drained|capped|plugged|tagged|marked|tight|tightened|torqued|started|touched|lifted|pulled|coming|measured|checked|cleaned|apart|split|touched|touching|disturbed|bothered|bothering)\\b.*$")]
    private static partial Regex Denies();

    /// <summary>Said as meant, missed or tried: recorded as a plan or a remark, never as done.</summary>
    private int Unreal(Stretch clause)
    {
        string line = clause.Line;
        if (Regex.IsMatch(line, "\\b(?:remember|note to self|reminder|remind me|dont forget|make sure|mental note)\\b.*\\b(?:buy|order|get (?:a |some |the |new |more )|pick up)"))
            return -1;
        if (Reminds().IsMatch(line) || (Means().Match(line) is { Success: true } forgot && Regex.IsMatch(line, "\\b(?:forgot|forgotten|was going to|were going to|meant to|got round to|get round to|ran out of time|no time)\\b") && forgot.Groups["r"].Length > 0 && !Regex.IsMatch(forgot.Groups["r"].Value, "^ (?:about )?(?:that|it|this|already|now|again)$")))
            return Intend(clause);
        if (Regrets().IsMatch(line))
            return Remark(clause);
        if (Regex.IsMatch(line, "^(?:or |but |it |they |there |that )*(?:might|may|could|must)(?: have|'ve| 've) (?:been|had)\\b|^or (?:was|is) it\\b|^(?:or )?(?:maybe|perhaps|possibly|could be|might be) (?:it was |there were |it 's )?[a-z0-9]+$"))
        {
            Ask(DoubtSort.NotTold, $"“{Said(clause.From, clause.To)}”: which is it?", Range(clause.From, clause.To));
            return clause.To;
        }

        if (SmallTalk().IsMatch(line))
        {
            Ask(DoubtSort.NotUnderstood, $"Kept as said: “{Said(clause.From, clause.To)}”", Range(clause.From, clause.To));
            return clause.To;
        }

        return -1;
    }

    /// <summary>What is still to come: an obligation or a wish with a deed in it.</summary>
    private int Meant(Stretch clause)
    {
        string line = clause.Line;
        if (Buys(clause))
            return -1;
        if (Denies().Match(line) is { Success: true } no && Denied(clause, no) is var denied and >= 0)
            return denied;
        if (Tries().IsMatch(line) && In(clause.From, clause.To).All(p => p is not FaultPhrase))
            return Remark(clause);
        if (Means().Match(line) is { Success: true } means && (In(clause.From, clause.To).Any(p => p is ThingPhrase or ActPhrase or LotPhrase) || topic is not null) && !Regex.IsMatch(means.Groups["r"].Value, "^ (?:be |have been )?(?:(?:fine|ok|alright|all right)\\b|(?:something|someone|somebody|a|an|that|there|one) )"))
            return Intend(clause);
        if (Regex.Match(line, "\\bmust (?:be|have been|'ve been) ") is { Success: true } guess && In(clause.Tokens(guess).To, clause.To).FirstOrDefault() is FaultPhrase)
            return -1;
        if (Obliges().Match(line) is { Success: true } must && !Regex.IsMatch(line[..must.Index], "\\b(?:had|until|till|before|unless|once|when|if)\\b") && Obliged(clause, must))
            return Intend(clause);
        if (Regex.IsMatch(line, "^(?:just |now |then |only |i 'm |we 're |so )*(?!bearing|casing|mounting|ring|spring|timing|housing|casting|bushing|wiring|fixing|thing|nothing|everything|something|missing|leaking|weeping|king)[a-z]{2,}ing (?:the|my|it|that|them|on|off|out|a) ") && Ahead().IsMatch(line))
            return Intend(clause);
        if (Regex.IsMatch(line, "(?:'s|is|are|'re) going (?:to|off to|in to|over to|away to|up to|down to) " + Shop + "\\b"))
            return Intend(clause);

        // "two and three tomorrow", "one and four to go": those of the kind spoken of are still to come.
        if (Regex.IsMatch(line, "\\b(?:to go|to do|still to come)$") | Ahead().IsMatch(line) && In(clause.From, clause.To).All(p => p is NumPhrase { Num.IsCount: true } or DuePhrase or BreakPhrase or WordPhrase) && In(clause.From, clause.To).Any(p => p is NumPhrase) && Picked(clause.From, In(clause.From, clause.To).OfType<NumPhrase>().Last().To) is { Count: > 0 } left && (topic ?? LastThing()) is { Kind.Length: > 0 } kin && SelectAll(kin with { Others = [] }, left) is { } those)
        {
            Add(new Planned(those, Said(clause.From, clause.To)), Whole(clause));
            return clause.To;
        }

        // "glow plugs next, one two and four came out", "injector next, two nuts and it's out": the head of what is told, no plan.
        if (Heads().IsMatch(line) && In(clause.From, clause.To).OfType<ThingPhrase>().ToList() is [{ Thing: { Ids.Count: > 0, Sort: ThingSort.Part or ThingSort.Line } } head] && pending.Count == 0 && !In(clause.From, clause.To).Any(p => p is ActPhrase or FaultPhrase) && clause.To + 1 < tokens.Count && IsDone(clause.To + 1, head.Thing.Ids.Count > 1))
        {
            Flush();
            pending.Add((head.Thing, head.From, head.To));
            (seen, seenAt, fasteners) = (head.Thing, head.From, false);
            return clause.To;
        }

        // "mains next weekend", "sump's next": a part and a time, no deed.
        var said = In(clause.From, clause.To).Where(p => p is not WordPhrase { Filler: true }).ToList();
        if (said.Count > 0 && said.OfType<ThingPhrase>().Any() && (said.All(p => p is ThingPhrase or DuePhrase or WordPhrase { Word: "weekend" or "next" or "tomorrow" }) && Ahead().IsMatch(line) && !Regex.IsMatch(line, "\\b(?:on|off|out|in)\\b") || (said.All(p => p is ThingPhrase) && Regex.IsMatch(line, "(?:'s|is|are) next$"))) && !(clause.To + 1 < tokens.Count && phrases.FirstOrDefault(p => p.From == clause.To + 1) is LotPhrase { Lot.Count: not null }))
            return Intend(clause);
        if (Ahead().IsMatch(line) && !Past().IsMatch(line) && In(clause.From, clause.To).OfType<ThingPhrase>().Any(t => t.Thing.Sort == ThingSort.Part && t.From <= clause.From + 2) && In(clause.From, clause.To).All(p => p is ThingPhrase or DuePhrase or WordPhrase or BreakPhrase or NumPhrase) && !Regex.IsMatch(line, "\\b(?:on|off|out|in|next to)\\b"))
            return Intend(clause);
        if (Regex.IsMatch(line, "\\b(?:goes|go|going) (?:back )?(?:in|on) (?:last|later|after|when|once|as soon as|tomorrow|at the end|only)\\b") && ThingIn(clause.From, clause.To) is not null)
            return Intend(clause);
        // "magneto out next": what came next, not what is to come.
        if (Regex.IsMatch(line, "\\b(?:off|out|on|in|away|undone|apart) (?:next|after that|second|third)$"))
            return -1;
        return Ahead().IsMatch(line) && !Past().IsMatch(line) && In(clause.From, clause.To).Any(p => p is ActPhrase { Act: not (Act.Buy or Act.Find or Act.Miss) }) && ThingIn(clause.From, clause.To) is not null && !Regex.IsMatch(line, "next to|next (?:one|bolt|stud|nut)") ? Intend(clause) : -1;
    }

    [GeneratedRegex("^(?:and |so |right |ok |okay |now |then |,)*(?:(?:next up|next|after that|now|then)(?: 's| is|,)? (?:the |my )?[a-z -]+|(?:the |my )?[a-z -]+? (?:is |'s |comes |was )?(?:next|next up|now|then|after that))$")]
    private static partial Regex Heads();

    /// <summary>What follows tells fasteners or a deed of what was just named: some of it by number, or it by a pronoun.</summary>
    private bool IsDone(int from, bool several)
    {
        int end = from;
        bool lots = false;
        bool done = false;
        bool picked = several && NumberWords.At(tokens, Word(from) == "number" ? from + 1 : from) is { IsCount: true } && ClauseEnd(from, tokens.Count) is var after && In(from, after).Any(p => p is ActPhrase or FaultPhrase);
        while (end < tokens.Count && In(end, tokens.Count).FirstOrDefault(p => p.From >= end) is { } phrase && phrase is not ThingPhrase { Thing.Ids.Count: > 0 })
        {
            lots |= phrase is LotPhrase { Lot.Count: not null };
            done |= phrase is ActPhrase { Act: Act.Off or Act.Part or Act.On } act && Range(Math.Max(from, act.From - 4), Math.Min(tokens.Count, act.To + 3)).Any(k => Word(k) is "it" or "they" or "she" or "he") || phrase is ActPhrase { Act: Act.Off } && lots;
            end = phrase.To;
        }

        return picked || done;
    }

    private bool Obliged(Stretch clause, Match must)
    {
        string cue = must.Value;
        if (Regex.IsMatch(cue, "^(?:can|could|will|'ll|shall|might|may|must|should|cannot|gonna) (?:off|out|coming|going)"))
            return false;
        if (Regex.IsMatch(cue, "^(?:comes|goes|coming|going|can|could|'s|is|are|'re|am|need|needs|want|wants|got|have|has|still|due) ?(?!.*\\bto\\b)") && !Regex.IsMatch(cue, "\\b(?:coming|going|could|can) (?:off|out|to|come|be)\\b"))
            return false;
        return In(clause.From, clause.To).Any(p => p is ThingPhrase) || topic is not null || draft is not null;
    }

    private bool Buys(Stretch clause) => In(clause.From, clause.To).Any(p => p is ActPhrase { Act: Act.Buy }) || Regex.IsMatch(clause.Line, "\\b(?:buy|order|new|need another|want another|replacing|renewing|replacement)\\b");

    private int Denied(Stretch clause, Match no)
    {
        var acts = In(clause.From, clause.To).OfType<ActPhrase>().ToList();
        acts.RemoveAll(a => a is { Act: Act.Put, Word: "left" });
        if (acts.Any(a => a.Act is Act.Find or Act.Miss or Act.Buy or Act.Stay) || In(clause.From, clause.To).Any(p => p is PlacePhrase or LotPhrase { Lot.Size.IsEmpty: false } or MeasurePhrase))
            return -1;
        var things = ThingsIn(clause.From, clause.To);
        if (no.Groups["r"].Success && acts.Count == 0 && !Regex.IsMatch(no.Groups["r"].Value, "^(?:touch|bother|start|do|take|pull|get|undo|measure|check|mark|tag|been|need|look)"))
            return -1;
        if (Regex.IsMatch(clause.Line, "^(?:dont|do not) (?:let|lose|know|think|like|want|mix|drop)\\b"))
            return -1;
        var thing = things.Count > 0 ? things[0] : pending.Count > 0 ? pending[^1].Thing : draft?.Of ?? topic ?? LastThing();
        if (thing is null || In(clause.From, clause.To).Any(p => p is FaultPhrase { Damage: true }))
            return -1;
        if (thing.Sort == ThingSort.Part && Regex.IsMatch(clause.Line, "\\b(?:touch|touched|touching|bother|bothered|bothering|disturb|disturbed|disturbing)\\b"))
        {
            foreach (var one in things.Count > 1 && Regex.IsMatch(clause.Line, " (?:and|or) ") ? things : [thing])
                About(one, Range(clause.From, clause.To).Concat(pending.SelectMany(p => Range(p.From, p.To))).Where(k => !tokens[k].IsBreak), t => new LeftOn(t, ""));
            pending.Clear();
            (topic, seen, seenAt) = (thing, thing, clause.From);
            return clause.To;
        }

        int stop = clause.To;
        foreach (var one in things.Count > 1 && Regex.IsMatch(clause.Line, " (?:and|or) ") ? things : [thing])
            NotDone(one, acts.FirstOrDefault()?.Act, false, Range(clause.From, stop), Said(clause.From, stop));
        pending.Clear();
        (topic, seen, seenAt) = (thing, thing, clause.From);
        return stop;
    }

    /// <summary>What holds main or big end three comes off, not its shells.</summary>
    private Thing Held(Thing thing, int from, int to)
    {
        if (thing.Kind is not ("main-shell" or "rod-shell") || !Range(from, to).Any(k => Word(k) is "main" or "mains" || (Word(k) == "big" && Word(k + 1) is "end" or "ends")) || Range(from, to).Any(k => tokens[k].Stem is "shell" or "bearing") || !In(from, to).Any(p => p is ActPhrase { Act: Act.Off or Act.On or Act.Tighten or Act.Undo }))
            return thing;
        string kind = thing.Kind == "main-shell" ? "main-cap" : "rod-cap";
        var caps = index.Parts(kind).Where(c => thing.Ids.Any(i => i.Split('.')[1] == c.Id.Split('.')[^1])).ToList();
        return caps.Count == 0 ? thing : new Thing(ThingSort.Part, kind, [.. caps.Select(c => c.Id)], caps.Count == 1 ? caps[0].Name : index.NameOf(kind) + "s");
    }

    private int Intend(Stretch clause)
    {
        int stop = clause.To;
        var thing = ThingIn(clause.From, stop) ?? (Regex.IsMatch(clause.Line, "\\b(?:it|they|them|that|those|these|this)\\b") ? pending.Count > 0 ? pending[^1].Thing : topic ?? LastThing() : null) ?? (clause.Line.StartsWith("needs", StringComparison.Ordinal) || clause.Line.StartsWith("wants", StringComparison.Ordinal) || clause.Line.StartsWith("has to", StringComparison.Ordinal) ? topic : null);
        int from = clause.From;
        if (pending.Count > 0)
        {
            thing ??= pending[^1].Thing;
            from = Math.Min(from, pending[0].From);
            pending.Clear();
        }

        if (thing is not null)
            thing = Held(thing, clause.From, stop) is { Detail: "face" } whole ? whole with { Detail = "" } : Held(thing, clause.From, stop);
        var all = Range(from, stop).Where(i => !tokens[i].IsBreak && (i >= clause.From || !used[i])).ToList();
        if (thing is null && !In(clause.From, stop).Any(p => p is DetailPhrase or LotPhrase or MeasurePhrase))
        {
            Ask(DoubtSort.NotUnderstood, $"Kept as said: “{Said(from, stop)}”", all);
            return stop;
        }

        Add(new Planned(thing is null ? null : Whole(thing), Said(from, stop)), all);
        topic = thing ?? topic;
        return Likewise(stop);
    }

    [GeneratedRegex("^(?:and |plus )+(?:the |its |their |my )*[a-z' ]+? (?:with it|with them|too|as well|likewise|an all|and all)$")]
    private static partial Regex Too();

    /// <summary>"oil pump has to come out yet, and the strainer with it": what was just said holds for this as well.</summary>
    private int Likewise(int stop)
    {
        int from = stop < tokens.Count && tokens[stop].Sort == TokenSort.Comma ? stop + 1 : stop;
        int end = from < tokens.Count && !tokens[from].IsBreak ? ClauseEnd(from, tokens.Count) : from;
        if (end <= from || !Too().IsMatch(new Stretch(tokens, from, end).Line) || ThingIn(from, end) is not { Sort: ThingSort.Part } also)
            return stop;
        Add(new Planned(Whole(also), Said(from, end)), Range(from, end));
        topic = also;
        return end;
    }

    /// <summary>Tells of no deed: kept as said, and of what is spoken from here.</summary>
    private int Remark(Stretch clause)
    {
        if ((ThingIn(clause.From, clause.To) ?? (pending.Count > 0 ? pending[^1].Thing : topic)) is not { } thing)
            return -1;
        Ask(DoubtSort.NotUnderstood, $"Kept as said: “{Said(clause.From, clause.To)}”", Whole(clause));
        pending.Clear();
        (topic, seen, seenAt) = (thing, thing, clause.From);
        return clause.To;
    }

    /// <summary>Where the words leave several, a remark or plan holds for the kind.</summary>
    private static Thing Whole(Thing thing) => thing.Others.Count == 0 ? thing : thing with { Others = [] };
}
