using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>What stands in the way of what.</summary>
internal sealed partial class Listener
{
    private const string Gone = "(?:off|out|undone|away|clear|loose|removed|drained|moved|parted|disconnected|apart|done)";
    private const string Blocked = "(?:cant|cannot|couldnt|could not|wont|would not|wouldnt|can not|will not|not possible to|no way to|doesnt|does not|didnt|'ll not|'ll no|willnae|cannae|'d not|is not going to|isnt going to)";

    [GeneratedRegex("^(?:i |you |we )?(?:" + Blocked + ") (?:get |reach |undo |take |shift |remove |turn |move |see |come |budge |fit |swing |clear |lift |get at |get to )*(?:at |to )?(?<x>.*?) ?(?:off |out |undone |away |on |down |up )*(?:till|until|before|unless|without) (?:you 've |i 've |you |i |we |taking |pulling |removing |undoing |moving |dropping |the |having )*(?<y>.+?)(?: (?:is|'s|are|has been|came|comes|come|being))?(?: " + Gone + "| out of (?:the|my) (?:way|road)| to one side)*(?: first)?$")]
    private static partial Regex CannotTill();

    [GeneratedRegex("^(?<x>.+?) (?:" + Blocked + ") (?:come |move |turn |budge |lift |go |shift |clear |get |undo |slide |pull |drop |be |removed |taken |lifted )*(?:off |out |undone |away |past |on |up |down |back )*(?:till|until|before|unless|without|with) (?:you 've |i 've |you |i |we |taking |pulling |removing |undoing |moving |dropping |the )*(?<y>.+?)(?: (?:is|'s|are|has been|came|comes|come|being))?(?: (?:on|in place|there|in the way|fitted|still on|out of (?:the|my) (?:way|road)|" + Gone + "))*(?: first)?$")]
    private static partial Regex WillNotTill();

    [GeneratedRegex("^(?:so |and |then )?(?:i |you |we )?(?:'ve )?(?:had to|have to|got to|gotta|needed to|need to|must|having to|had|ended up having to) (?:take |remove|pull|drop|undo|move|unbolt|slacken|loosen|get|lift|shift|whip|disconnect|part|drain|split|swing|unclip)(?: off| out| up| back)? ?(?<y>.+?)(?: off| out| away| loose| aside| first| clear| down| apart| up| back)* (?:to get (?:at|to|on|off|out|room for|access to|past|behind)?|to reach|to clear|to undo|to remove|to free|before(?: i| you| we)?(?: could| can)?(?: get)?(?: at)?|to see|so (?:that )?(?:i|we|you) (?:could|can) (?:get|reach|undo)(?: at| to)?|to make room for|for) (?<x>.+)$")]
    private static partial Regex HadTo();

    [GeneratedRegex("^(?<y>.+?) (?:had to|has to|have to|needs to|need to|must|wants to|got to) (?:come |be |go |get )*(?<how>off |out |undone |moved |away |removed |drained |loosened |slackened |dropped |pulled |parted |disconnected |first )*(?:first )?(?:before|to get (?:at|to|off|out)?|to reach|to clear|so (?:that )?(?:i|we|you) (?:could|can) (?:get|reach)(?: at| to)?|to let|to free|for|to undo|to make room for) (?:the |i |we |you |could |can |get |at |to )*(?<x>.+)$")]
    private static partial Regex HadToCome();

    [GeneratedRegex("^(?<x>.+?) (?:comes?|came|will come|goes|can come|lifts?|slides?|drops?|pulls?) (?:off|out|away|up|clear) (?:with (?<keep>.+?) (?:on|in|in place|still on|still in|fitted) )?(?:if|once|when|after|as long as|provided) (?:you |i |we )?(?:'ve )?(?:first )?(?:pull|pulled|take|took|taken|remove|removed|undo|undone|move|moved|drop|dropped|get|slacken|loosen|unbolt|whip)? ?(?:off |out )?(?<y>.+?)(?: (?:is|'s|are))?(?: (?:off|out|away|aside|first|up|undone|loose|clear))*$")]
    private static partial Regex ComesIf();

    [GeneratedRegex("^(?:i |you |we )?(?:need|have to have|'ll need|will need|want) (?<y>.+?) (?:off|out|away|undone|clear) (?:first )?(?:to get (?:at |to |off |out )?|to (?:reach|undo|remove|drop|lower|lift) |before |for )(?<x>.+?)(?: off| out| down| away)?$|^(?:i |you |we )?(?:cant|cannot|could not|couldnt) (?:get|drop|lower|lift|shift|move|remove) (?<x>.+?) (?:off |out |down |up |away )?for (?<y>(?!now|today|tonight|a |the (?:moment|time|life|love)|love|toffee|some).+)$|^(?<x>.+?) (?:comes?|goes|lifts?|drops?) (?:off|out|down|away|up) only (?:after|when|once|with) (?<y>.+?)(?: (?:is|'s|are|off|out|away|removed))*$|^(?<x>.+?) needs (?<y>.+?) (?:off|out|undone|away)(?: first)?$|^(?<x>.+?) (?:is |'s |are )?(?:hidden|tucked|buried|trapped|right) (?:away )?(?:behind|under|underneath|beneath) (?<y>.+?)(?: so .*)?$|^(?<x>.+?) (?:is |'s |are )?(?:hidden|trapped|blocked|covered|stuck|buried|out of reach|not reachable|unreachable|inaccessible|caught) (?:until|till|unless|before) (?<y>.+?)(?: (?:is|'s|are|comes|has been|have been))?(?: off| out| out of the (?:way|road)| moved| gone| clear| away| undone)+$|^(?<x>.+?) (?:is|'s|are|sits|lives) (?:behind|under|underneath|beneath) (?<y>.+?) so (?:that|it|this|they|those) (?:comes?|has to come|must come|needs to come|had to come|goes) (?:off|out) (?:first|before)$|^(?<y>.+?) (?:is|'s|are) (?:in the way of|blocking|fouling|stopping) (?<x>.+)$|^to get (?<x>.+?)(?: off| out| down)? (?:you |i |we )?(?:need|have to|must|had to) (?:take |remove |pull |undo |drop )?(?<y>.+?)(?: off| out| away)?(?: first)?$|^to (?:get|drop|lower) (?<x>.+?)(?: off| out| down) (?<y>.+?) (?:must|has to|have to|needs to) (?:be|come|go) (?:off|out|away|removed|undone)$|^(?:take |pull |get )?(?<y>.+?)(?: off| out| comes off| comes out| goes)? (?:first|before|and then|then) (?:then )?(?:the )?(?<x>.+?)(?: off| out| comes off| comes out| comes| can come off)$")]
    private static partial Regex NeedsOff();

    [GeneratedRegex("^(?<x>.+?) (?:goes|runs|sits|fits|routes|passes|tucks) (?:under|behind|underneath|beneath|below|inside) (?<y>.+?) ?,? (?:so|which means) (?:it |they )?(?:'s|is|has to be|must be|goes|go|needs to be|has to go|must go)? ?(?:on |in |fitted |back )*(?:before|first|ahead of)(?: it| that| them)?$|^(?<x>.+?) (?:must|has to|have to|needs to|need to|got to|wants to) (?:go|be) (?:on|in|back on|back in|fitted) (?:before|ahead of) (?<y>.+)$|^(?:fit|refit|put) (?<x>.+?)(?: on| in| back)? before (?<y>.+?)(?: goes on| goes in| goes back)?$")]
    private static partial Regex OnBefore();

    [GeneratedRegex("^(?<t>.*?\\b(?:one piece|joined|linked|connected)\\b.*?)?,? ?(?:so |and )?(?:it 's |its )?(?:(?<a>both (?:sides|rails|halves|banks|ends)|the lot|the pair|all of it) (?:come |comes )?(?:off|out) together|(?<a2>.+?) and (?<b2>.+?) (?:come |comes )?(?:off|out) together),? or (?:else )?(?:undo|split|part|break|disconnect|crack|separate) (?<y>.+?)$")]
    private static partial Regex TogetherOr();

    private int Access(Stretch clause, Stretch rest)
    {
        // Two clauses can be one thought: "rail's one piece, so both sides off together or undo the union in the middle".
        foreach (var stretch in Together(clause, rest))
        {
            if (TogetherOr().Match(stretch.Line) is { Success: true } both)
                return Both(stretch, both);
            if (OnBefore().Match(stretch.Line) is { Success: true } before)
                return Learn(stretch, before, "x", "y", false);
        }

        if (Regex.IsMatch(clause.Line, "^(?:i |we |'ve |have |and |also )*(?:marked|measured|checked|photographed|took (?:a |some )?(?:photos?|pictures?|pics?)|labelled|tagged|numbered|cleaned|wrote|drew|scribed|noted)\\b"))
            return -1;
        foreach (var (shape, off) in new (Regex, bool)[] { (HadTo(), true), (HadToCome(), true), (CannotTill(), false), (WillNotTill(), false), (ComesIf(), false), (NeedsOff(), false) })
        {
            if (shape.Match(clause.Line) is not { Success: true } match)
                continue;
            bool happened = off && Regex.IsMatch(clause.Line, "\\bhad\\b|needed to|ended up");
            if (Learn(clause, match, "x", "y", happened) is var to && to >= 0)
                return to;
        }

        return -1;
    }

    private IEnumerable<Stretch> Together(Stretch clause, Stretch rest)
    {
        yield return clause;
        for (int i = clause.To; i < rest.To; i++)
        {
            if (tokens[i].IsBreak && i > clause.To)
            {
                yield return new Stretch(tokens, clause.From, i);
            }
        }

        if (rest.To > clause.To)
            yield return rest;
    }

    private int Learn(Stretch stretch, Match match, string x, string y, bool happened)
    {
        var (xFrom, xTo) = stretch.Tokens(match.Groups[x]);
        var (yFrom, yTo) = stretch.Tokens(match.Groups[y]);
        while (yTo > yFrom + 1 && Word(yTo - 1) is "does" or "do" or "has" or "have")
            yTo--;
        if (DueIn(yFrom, yTo) is not null || DueIn(xFrom, xTo) is not null || Regex.IsMatch(match.Groups[x].Value, "\\b(?:weekend|tea|dinner|lunch|bed|dark|morning|night|winter)\\b"))
            return -1;
        var needs = ThingsIn(yFrom, yTo);
        if (yTo < tokens.Count && needs.Count == 0)
            needs = Nameless(yFrom, yTo) is { } unknown ? [unknown] : [];
        else if (needs is [{ Sort: not ThingSort.Fasteners }] && Word(yTo - 1) is "bracket" or "brackets" or "stay" or "strut")
            needs = [Nameless(yFrom, yTo)!];
        var target = TargetIn(xFrom, xTo);
        if (target is null && (Regex.IsMatch(match.Groups[x].Value, "\\b(?:it|them|that|this)\\b") || match.Groups[x].Length == 0 || match.Groups[x].Value is "probably" or "maybe" or "apparently" or "also" or "this one"))
            target = topic ?? LastThing();
        if (target is null || needs.Count == 0 || needs[0].Code == target.Code)
            return -1;
        needs = [.. needs.Select(Unsure)];
        bool pairs = match.Groups["keep"].Success;
        About(target, Range(stretch.From, stretch.To), t => new AccessLearned(t, [[.. needs.Select(n => n with { Others = [] })]], Said(stretch.From, stretch.To)));
        if (happened && !pairs)
        {
            foreach (var need in needs.Where(n => n.Sort is ThingSort.Part or ThingSort.Unknown or ThingSort.Lacking && !n.Ids.Any(context.Off.Contains)))
            {
                if (Regex.IsMatch(stretch.Line, "\\b(?:off|out|remove|pull|drop|removed|dropped|pulled)\\b"))
                    About(need, Range(stretch.From, stretch.To), n => new Off(n, []));
            }

            foreach (var need in needs.Where(n => n.Sort == ThingSort.Line))
                About(need, Range(stretch.From, stretch.To), n => new Parted(n));
        }

        topic = target;
        return stretch.To;
    }

    /// <summary>A need that the words leave open stays open: no part is picked for it.</summary>
    private static Thing Unsure(Thing need)
    {
        if (need.Others.Count == 0)
            return need;
        bool alike = need.Others.All(o => o.Kind == need.Kind);
        return alike
            ? need with { Ids = [], Others = [], Where = "one of them" }
            : new Thing(ThingSort.Unknown, "", [], need.Others.Prepend(need).Select(o => o.Name.Split(' ')[^1]).Distinct().Count() == 1 ? need.Name.Split(' ')[^1] : need.Name);
    }

    /// <summary>What could not be got at: fasteners or a part; "lower starter bolt" and "union nut" keep their words.</summary>
    private Thing? TargetIn(int from, int to)
    {
        var thing = ThingIn(from, to);
        if (thing is null && Nameless(from, to) is { } plain && Loosely(plain.Name) is { } which && (topic ?? LastThing()) is { Ids.Count: > 0 } joint)
            return joint with { Sort = ThingSort.Fasteners, Fastener = "bolt", Where = which, Others = [], Detail = "" };
        if (thing is not null && Nameless(from, to) is { } words && words.Name.EndsWith("nut", StringComparison.Ordinal) && thing.Sort != ThingSort.Fasteners)
            return words;
        return thing ?? Nameless(from, to);
    }

    /// <summary>"back nut", "last bolt", "one bolt": a fastener of the part spoken of. Its which, or null for other words.</summary>
    private static string? Loosely(string name)
    {
        string[] words = name.Split(' ');
        return words[^1] is "one" or "ones" or "bolt" or "nut" or "stud" or "bolts" or "nuts" or "studs" or "screw" && words.Length > 1 | words[^1] is not "one" && words[..^1].All(w => w is "a" or "back" or "front" or "top" or "bottom" or "last" or "lower" or "upper" or "inner" or "rear" or "far" or "other" or "left" or "right" or "second" or "third" or "one" or "two" or "hidden" or "long" or "outer") ? string.Join(" ", words[..^1].Where(w => w is not ("one" or "a"))) : null;
    }

    private Thing? LastThing() =>
        context.LastOf is { Ids.Count: > 0, Kind.Length: > 0 } whole && whole.Ids.All(index.Engine.Parts.ContainsKey) ? whole with { Sort = ThingSort.Part, Detail = "", Fastener = "", Others = [] } :
        context.LastThing is { } id && index.Engine.Parts.TryGetValue(id, out var part) ? new Thing(ThingSort.Part, part.Kind, [id], part.Name) : null;

    private int Both(Stretch stretch, Match match)
    {
        var (tFrom, tTo) = stretch.Tokens(match.Groups["t"]);
        var target = match.Groups["t"].Length > 0 ? ThingIn(tFrom, tTo) : null;
        target ??= topic ?? LastThing();
        var (yFrom, yTo) = stretch.Tokens(match.Groups["y"]);
        var split = Nameless(yFrom, yTo);
        if (target is null || split is null)
            return -1;
        var (aFrom, aTo) = stretch.Tokens(match.Groups["a"].Success ? match.Groups["a"] : match.Groups["a2"]);
        IReadOnlyList<Thing> together = match.Groups["a"].Success
            ? [new Thing(ThingSort.Unknown, "", [], string.Join(" ", Enumerable.Range(aFrom, aTo - aFrom).Select(i => tokens[i].Text)) + " together")]
            : [.. ThingsIn(aFrom, stretch.Tokens(match.Groups["b2"]).To)];
        target = target with { Others = [], Ids = [.. target.Others.SelectMany(o => o.Ids).Prepend(target.Ids.FirstOrDefault() ?? "").Where(i => i.Length > 0)] };
        Add(new AccessLearned(target, [together, [split with { Name = "split at the " + split.Name }]], Said(stretch.From, stretch.To)), Range(stretch.From, stretch.To));
        topic = target;
        return stretch.To;
    }
}
