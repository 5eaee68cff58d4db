using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>Ways of speaking with a shape of their own, tried before a clause is told as plain work.</summary>
internal sealed partial class Listener
{
    /// <summary>The token after what was understood, or -1.</summary>
    private int Shaped(int at, int end, int to)
    {
        var clause = new Stretch(tokens, at, end);
        var rest = new Stretch(tokens, at, to);
        return First(
            () => Chatter(clause),
            () => HereFound(clause, rest),
            () => PutOff(clause),
            () => Drenched(clause, rest),
            () => Except(clause),
            () => WhichAfterwards(clause),
            () => Refit(clause, rest),
            () => Shopping(at, to),
            () => Series(clause),
            () => Operation(clause),
            () => Teach(clause),
            () => Recount(clause, rest),
            () => Guess(clause),
            () => PlanOfIt(clause),
            () => IntendedOf(clause),
            () => Unreal(clause),
            () => LeftOverBolt(clause),
            () => RestIsMissing(clause),
            () => SameToBuy(clause),
            () => AlsoDrained(clause),
            () => Staged(clause, rest),
            () => StageNamed(clause),
            () => NextGo(clause, rest),
            () => Correction(clause, rest),
            () => Whence(clause),
            () => Wherever(clause),
            () => Question(at, end, false) ?? -1,
            () => Naming(clause),
            () => Access(clause, rest),
            () => Owned(clause, rest),
            () => HeldBy(clause, rest),
            () => HandBack(clause, rest),
            () => GoBack(clause),
            () => Lent(clause, rest),
            () => StaysTill(clause),
            () => Journey(clause),
            () => Awaited(clause),
            () => Waiting(clause),
            () => BuyOfOne(clause, rest),
            () => NewOnes(clause),
            () => WantSome(clause),
            () => LostAndFound(clause, rest),
            () => TurnedUp(clause),
            () => Fallen(clause),
            () => CameAlong(clause),
            () => SpoiltOfThose(clause),
            () => ToldOfSome(clause),
            () => Belonging(clause),
            () => Cued(clause),
            () => TagOn(clause),
            () => NotThat(clause),
            () => LikeThat(clause),
            () => Staying(clause, rest),
            () => Meant(clause),
            () => Away(clause, rest),
            () => Returned(clause),
            () => SameFasteners(clause, rest),
            () => SameWay(clause),
            () => Repeat(clause, rest),
            () => Unknown(clause, rest),
            () => Plan(clause),
            () => Lifted(clause),
            () => Framed(clause));
    }

    [GeneratedRegex("^(?:and |so |ok |okay |right |first |then )*(?:the )?(?:(?<b>battery ?(?:'s |is |was )?(?:off|disconnected|out|unhooked))|(?<la>(?:engine )?(?:loom|harness|wiring) ?(?:'s|is)? ?(?:now )?(?:laid|moved|folded|pushed|swung) (?:aside|over|out of the way|to one side)(?: over the [a-z]+)?)|(?<h>(?:engine|motor|it) ?(?:'s|is|now)? ?(?:now )?(?:hanging|hung|swinging|dangling|hooked up|slung)(?: up)? (?:off|on|from|in) the (?:hoist|crane|chain|gantry|block|sling|slings))|(?<e>(?:engine|motor) ?(?:'s|is|'s come|came|has come|'s finally|is finally) out(?: of the (?:car|van|bike|boat|truck))?)|(?<s>(?:engine|motor|block) ?(?:'s|is) (?:now |up )?on the (?:engine )?stand)|(?<l>(?:crank|flywheel) ?(?:'s|is) locked|locked the (?:crank|flywheel))|(?<b2>(?:i |we |'ve |just |first )*(?:disconnected|took off|unhooked|isolated|pulled|whipped off|undid|have disconnected) (?:the |my )?battery(?! lead| cable| strap| tray| clamp| earth)(?: off| first)?)|(?<p>(?:(?:fuel pressure|pressure) ?(?:'s|is|was)? ?(?:let down|released|off|bled off|bled|relieved|dumped))|(?:i |we |'ve |just )*(?:let|released|relieved|bled|dropped|dumped|bled off) (?:the |off the )?fuel (?:rail )?pressure(?: down| off)?)|(?<cm>(?:i |we |stuffed |put |a |some |clean |stuck |'ve |old )*(?:rags?|cloths?|towels?)(?: stuffed| packed)? (?:in|into|over|round|across) the (?:crank ?)?(?:case mouths?|crankcase mouths?|crank ?case)))\\b(?: now| at last| already)?")]
    private static partial Regex Operations();

    /// <summary>Something done to the whole engine: battery off, engine out.</summary>
    private int Operation(Stretch clause)
    {
        if (facts.LastOrDefault() is Did { Operation: "op:engine-out" } && OnStand().Match(clause.Line) is { Success: true } stand)
        {
            var (standFrom, standTo) = clause.Tokens(stand.Groups[0]);
            Add(new Did("op:on-stand", index.Engine.Operations.TryGetValue("op:on-stand", out var set) ? set.Name : "engine on the stand"), Range(standFrom, standTo));
            return standTo;
        }

        if (Operations().Match(clause.Line) is not { Success: true } match)
            return -1;
        var (from, to) = clause.Tokens(match.Groups[0]);
        string id = match.Groups["la"].Success ? "op:loom-aside" : match.Groups["h"].Success ? "op:hang" : match.Groups["cm"].Success ? "op:cover-case-mouth" : match.Groups["b"].Success || match.Groups["b2"].Success ? "op:battery-off" : match.Groups["e"].Success ? "op:engine-out" : match.Groups["s"].Success ? "op:on-stand" : match.Groups["l"].Success ? "op:lock-crank" : "op:fuel-safe";
        Add(new Did(id, index.Engine.Operations.TryGetValue(id, out var known) ? known.Name : id[3..].Replace('-', ' ')), Range(from, to));
        return to;
    }

    [GeneratedRegex("^(?:and |now |it 's |is |also )*(?:up |sat |sitting |bolted |mounted )?(?:on|to) (?:the|its|my) (?:engine )?stand\\b")]
    private static partial Regex OnStand();

    [GeneratedRegex("^(?:all )?(?:except|bar|apart from|but not|not)(?: for)? (?:number |cylinder )?(?<n>.+)$")]
    private static partial Regex Excepts();

    /// <summary>"glow plugs out except number two": taken back from what was just told.</summary>
    private int Except(Stretch clause)
    {
        if (Word(clause.From) is not ("except" or "bar" or "apart") && !(clause.From > 0 && Word(clause.From - 1) is "except" or "bar"))
            return -1;
        int at = clause.From;
        while (Word(at) is "except" or "bar" or "apart" or "from" or "for" or "number" or "cylinder" or "the")
            at++;
        if (NumberWords.At(tokens, at) is not { IsCount: true } n || facts.LastOrDefault() is not Off { Thing: { Ids.Count: > 1 } many } off || Select(many, n.Int, "") is not { Ids.Count: > 0 } one)
            return -1;
        IReadOnlyList<string> left = [.. many.Ids.Except(one.Ids)];
        facts[^1] = off with { Thing = many with { Ids = left, Name = $"{index.NameOf(many.Kind)}s, all but {n.Int}" }, Spans = [.. off.Spans, .. Spans(Range(clause.From - (Word(clause.From - 1) is "except" or "bar" ? 1 : 0), n.To))] };
        (topic, seen, seenAt, fasteners) = (one, one, at, false);
        return n.To;
    }

    [GeneratedRegex("\\b(?:left over|leftover|too many|spare (?:bolt|nut|screw|stud|washer|one))\\b|\\b(?:bolt|nut|screw|stud|washer|clip)s? (?:left |spare )?over$")]
    private static partial Regex Spare();

    [GeneratedRegex("^(?:and |but |so )*(?:i |we )?(?:'ve )?(?:dont know|do not know|cant think|no idea|got no idea|have no idea|god knows|who knows|not sure) (?:what|where|which|from where)\\b.*$")]
    private static partial Regex Unplaced();

    /// <summary>Fasteners left over on the way back: somebody must say where they belong.</summary>
    private int LeftOverBolt(Stretch clause)
    {
        if (!Spare().IsMatch(clause.Line) || !In(clause.From, clause.To).Any(p => p is LotPhrase or ThingPhrase { Thing.Sort: ThingSort.Fasteners }))
            return -1;
        int end = clause.To;
        while (end < tokens.Count && (tokens[end].Sort == TokenSort.Comma || Word(end) == "and") && ClauseEnd(end + 1, tokens.Count) is var next && Unplaced().IsMatch(new Stretch(tokens, end + 1, next).Line))
            end = next;
        Ask(DoubtSort.NotTold, $"“{Said(clause.From, end)}”: where does it belong?", Range(clause.From, end).Where(k => !tokens[k].IsBreak));
        return end;
    }

    private static int First(params Func<int>[] shapes)
    {
        foreach (var shape in shapes)
        {
            if (shape() is var to && to >= 0)
                return to;
        }

        return -1;
    }

    /// <summary>What was read there with an eye to the words around, else what the words say by themselves.</summary>
    private ThingPhrase? ThingAt(int at) => phrases.FirstOrDefault(p => p.From == at) as ThingPhrase ?? things.At(at);

    private Thing? ThingIn(int from, int to, bool unknownToo = false)
    {
        for (int i = from; i < to; i++)
        {
            if (ThingAt(i) is { } read && read.To <= to)
                return read.Thing;
        }

        return unknownToo ? Nameless(from, to) : null;
    }

    private List<Thing> ThingsIn(int from, int to)
    {
        var list = new List<Thing>();
        for (int i = from; i < to;)
        {
            if (ThingAt(i) is { } read && read.To <= to)
            {
                list.Add(read.Thing);
                i = read.To;
            }
            else
                i++;
        }

        return list;
    }

    private static readonly HashSet<string> NoName =
        ["sat", "sitting", "stood", "lying", "says", "ah", "oh", "aye", "och", "ach", "eh", "well", "right", "ok", "okay", "here", "i", "we", "you", "it", "they", "them", "him", "her", "the", "a", "an", "to", "had", "have", "has", "get", "got", "is", "'s", "are", "was", "were", "be", "been", "would", "will", "could", "can", "cant", "wont", "wouldnt", "couldnt", "of", "and", "off", "out", "on", "in", "at", "come", "came", "take", "took", "taken", "first", "so", "turn", "move", "undo", "my", "that", "this", "any", "even", "just", "till", "until", "before", "comes", "goes", "go", "reach", "remove", "pull", "drop", "also", "only", "need", "needs", "did", "do", "does", "been", "yet", "there", "with", "for", "from", "by", "if", "now", "then", "again", "shift", "budge", "unless", "without", "'ve", "'d", "'ll", "'re", "as", "at", "up", "down", "over", "round", "away", "clear", "fit", "start", "access", "removed", "undone", "moved", "loosen", "loosened", "slack", "slackened", "no", "not", "nothing", "none", "looks", "look", "feels", "seems", "looked", "felt", "seemed", "probably", "maybe", "apparently", "all", "both"];

    /// <summary>A thing that no list knows, under the words it was given; null when there are none.</summary>
    private Thing? Nameless(int from, int to)
    {
        int a = from;
        int b = to;
        while (a < b && (tokens[a].IsBreak || NoName.Contains(tokens[a].Text)))
            a++;
        while (b > a && (tokens[b - 1].IsBreak || NoName.Contains(tokens[b - 1].Text)))
            b--;
        int stop = a;
        while (stop < b && !tokens[stop].IsBreak && stop - a < 7)
            stop++;
        while (stop > a && NoName.Contains(tokens[stop - 1].Text))
            stop--;
        return stop > a && !Range(a, stop).Any(k => Lexicon.Persons.Contains(Word(k)) && Word(k + 1) != "'s") ? new Thing(ThingSort.Unknown, "", [], string.Join(" ", Enumerable.Range(a, stop - a).Select(i => tokens[i].Text)).Replace(" '", "'", StringComparison.Ordinal)) : null;
    }

    [GeneratedRegex("^(?:and |so |now |right ,? ?|ok ,? ?|okay ,? ?|hang on ,? ?|wait ,? ?|hmm ,? ?)*(?<q>before (?:i|we|the) .+ what|(?:i |we )?(?:'ve |have |got )*(?:no|any) (?:idea|notion|clue) where|(?:can|could|will) (?:somebody|someone|anybody|anyone|you) (?:please )?tell (?:me|us)|is it normal|is that normal|is this normal|is it ok|where'?s?|which|what|when|how|who|whose|why|did i|did we|have i|have we|has the|has it|was the|was it|is the|is there|is it|are the|are there|does|do i|do we|should i|should we|can i|can we|cant remember|cannot remember|dont remember|i cant remember|i dont remember|i forget|forgotten|i have forgotten|no idea where|i wonder|wonder|wondering|not sure|i am not sure|i 'm not sure|need to find out|must find out|find out|check whether|check if|need to check|must check|ask|must ask|need to ask|is it normal|is that normal|is it ok|is this normal|is|whats|wheres|how many|remind me|tell me|dont know|i dont know|anyone know|could i|would it|will it)\\b")]
    private static partial Regex Asks();

    private int? Question(int from, int to, bool marked)
    {
        var line = new Stretch(tokens, from, to);
        var match = Asks().Match(line.Line);
        if (!marked && (!match.Success || In(from, to).FirstOrDefault() is ThingPhrase { Unnamed: true }))
            return null;
        string said = line.Line;
        string cue = match.Success ? match.Groups["q"].Value : "";
        if (cue == "ask" && !Regex.IsMatch(said, "^(?:must |need to )?ask (?:the|my|at|him|her|them|about|if|whether|bloke|someone|around)"))
            return null;
        if (cue == "what" && Regex.IsMatch(said, "what (?:i|we) (?:said|called|thought|have|had|got|did)|^what a "))
            return null;
        // "seven thou, which will not do": no question.
        if (cue == "which" && !marked && from > 0 && tokens[from - 1].Sort == TokenSort.Comma && Regex.IsMatch(said, "^which (?:is|was|will|'s|means|makes|would|has|wont|isnt|are|were)\\b"))
            return null;
        if (cue is "is" or "when" or "how" && !marked && said.Split(' ').Length < 3)
            return null;
        if (cue == "when" && !marked)
            return null;
        string sort = Sort(said, cue);
        int end = to;
        if (!marked)
        {
            // A question without its mark ends where the clause does, unless it goes on in the next.
            end = to;
        }

        if (cue == "remind me" && Regex.IsMatch(said, "remind me (?:about|to)\\b"))
            return null;
        var thing = sort is "where" && Regex.IsMatch(said, "\\bbag|tray|box\\b") && ThingIn(from, end) is null ? null : AskedOf(from, end);
        if (thing is null && pending.Count > 0 && sort is "how many" or "where" or "size" or "done" && Regex.IsMatch(said, "\\b(?:it|them|they|there)\\b"))
        {
            thing = pending[^1].Thing;
            pending.Clear();
        }

        if (!marked && thing is not null && sort is "done" or "how many" or "where" or "size")
            end = skipTo = Musing(end);
        var all = Range(from, end).Where(i => !tokens[i].IsBreak);
        topic = thing is { Others.Count: 0 } ? thing : topic;
        if (thing is null && sort is "what" or "done" && !In(from, end).Any(p => p is ActPhrase) && !Regex.IsMatch(said, "\\b(?:bag|tray|box|tin|drawer|shelf)\\b"))
        {
            Ask(DoubtSort.NotUnderstood, $"Kept as said: “{Said(from, end)}”", all);
            return end;
        }

        if (sort.Length == 0)
            Self(thing, all, Said(from, end));
        else if (thing is { Others.Count: > 0 })
            Add(new Asked(sort, thing with { Others = [], Ids = [.. thing.Others.SelectMany(o => o.Ids).Concat(thing.Ids).Distinct()] }, Said(from, end)), all);
        else
            Add(new Asked(sort, thing, Said(from, end)), all);
        return sort == "how many" && thing is { Others.Count: 0, Kind.Length: > 0 } ? FoundSoMany(thing, end) : end;
    }

    /// <summary>One past what is said behind a question and tells of nothing: "I must have", "blowed if I can remember", "or did I not".</summary>
    private int Musing(int end)
    {
        while (end < tokens.Count && (tokens[end].Sort == TokenSort.Comma || Word(end) is "or" or "but" or "and"))
        {
            int next = end + 1;
            while (next < tokens.Count && !tokens[next].IsBreak)
                next++;
            if (In(end, next).Any(p => p is not (WordPhrase or BreakPhrase) && !(p is ActPhrase act && Lexicon.Fillers.Contains(act.Word))) || !Range(end, next).Any(k => Word(k) is "i" or "we" or "me" or "must" or "surely" or "he" or "she" or "they"))
                break;
            end = next;
        }

        return end;
    }

    /// <summary>What a question is about: a part or line named in it, its fasteners, else what was spoken of last for "it".</summary>
    private Thing? AskedOf(int from, int to)
    {
        Thing? last = null;
        foreach (var thing in ThingsIn(from, to))
        {
            if (last is null || thing.Sort != ThingSort.Lacking)
                last ??= thing;
        }

        return last;
    }

    private void Self(Thing? thing, IEnumerable<int> from, string words) =>
        Add(new QuestionToSelf(thing is { Others.Count: > 0 } ? thing with { Others = [] } : thing, words), from);

    private static string Sort(string said, string cue)
    {
        if (cue == "is" && Regex.IsMatch(said, "^(?:now |so )*is (?:that|this|there|it|the other)\\b") && !said.Contains(" off", StringComparison.Ordinal) && !said.Contains(" on", StringComparison.Ordinal))
            return "";
        if (Regex.IsMatch(cue, "normal|is it ok") || cue is "should i" or "should we" or "i wonder" or "wonder" or "wondering" or "check whether" or "check if" or "need to check" or "must check" or "ask" or "must ask" or "need to ask" or "not sure" or "i 'm not sure" or "i am not sure" or "find out" or "need to find out" or "must find out" or "do i" or "do we" or "can i" or "can we" or "could i" or "would it" or "will it" or "why" or "who" or "whose" or "dont know" or "i dont know" or "anyone know")
        {
            return Regex.IsMatch(said, "(?:what|which) (?:comes|came|goes|has to|must)|take off|come off|have to (?:take|remove|undo)|dont know where|not sure where") ? (said.Contains("where", StringComparison.Ordinal) ? "where" : "before") : "";
        }

        if (Regex.IsMatch(said, "what (?:else |all )?(?:have|do|must|should) (?:i|we) (?:still |yet |left |got |have |need |else )*(?:to )?(?:take|get|pull|undo|remove|strip)\\b.*\\b(?:before|afore|till|until|so|to get|first)\\b"))
            return "before";
        if (Regex.IsMatch(said, "(?:left|remains|to do|to come off|has to come off|have to come off|must come off|in the way|stopping|to remove|needs to come off|comes off) (?:before|of|first|to get|me)|left before|before (?:the|i|we|it).* (?:can|could|comes|will)|what.*have to (?:take|remove|undo)|what.*holding|what.*in the way|what (?:else )?(?:has|needs) to come"))
            return "before";
        if (Regex.IsMatch(said, "\\bwhat\\b.*\\b(?:fit|on|in|go|goes|put|refit|fitted)\\b.*\\bbefore\\b|^(?:\\w+ )?before .*\\bwhat\\b"))
            return "before";
        if (Regex.IsMatch(said, "what (?:did|have) (?:i|we) (?:do|done|go and do|gone and done) with"))
            return "where";
        if (Regex.IsMatch(said, "which way|what way|way round|which direction"))
            return "way";
        if (Regex.IsMatch(said, "^(?:.*)(?:cant|cannot|dont|i forget|forgotten).*(?:if|whether) (?:i|we)|\\bdid (?:i|we)\\b.*|\\bhave (?:i|we)\\b") && !Regex.IsMatch(said, "where\\b.*\\b(?:did|have|had)\\b|which .*did|what did|how many|when did|have i put"))
            return "done";
        if (Regex.IsMatch(said, "how many"))
            return "how many";
        if (Regex.IsMatch(said, "what (?:size|length|thread|torque|pitch)|how (?:long|big|tight|much|thick|deep)|what 's the (?:size|torque|clearance)"))
            return "size";
        if (Regex.IsMatch(said, "where (?:do|does|should|would).*(?:go|belong|fit|live)|what (?:is|was|'s) (?:this|that|it)|what goes (?:in|there)|what bag|which bag|what 's in|what is in|whats in") && !Regex.IsMatch(said, "did (?:i|we) put"))
            return Regex.IsMatch(said, "(?:what|which) bag|which tray|what tray") ? "where" : "goes";
        if (Regex.IsMatch(said, "where|which (?:bag|tray|box|tin|shelf|drawer)|no idea where"))
            return "where";
        if (Regex.IsMatch(said, "(?:is|was|are|were|has|have) (?:the|it|they|my|all)"))
            return "done";
        return cue.Length > 0 || said.Length > 0 ? "what" : "";
    }

    private Due? DueIn(int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            if (dues.At(i) is { } due && due.To <= to)
                return due.Due;
        }

        return null;
    }

    [GeneratedRegex("^(?<pre>.*?)\\b(?:waiting (?:for|on)|wait for|held up (?:by|for)|stuck (?:till|until|waiting for)|(?:cant|cannot|wont|couldnt) (?:go on|carry on|do (?:any ?|anything |much )?(?:more|anything|else|further|much)|get (?:any )?(?:further|on)|finish|continue|start|proceed|progress) (?:till|until|before|without)|on hold (?:till|until|for)|parked (?:till|until)|nothing (?:more|doing) (?:till|until)|(?:never|still not|hasnt|havent|not) (?:turned up|arrived|come yet|shown up|landed|been delivered)(?: yet)?|(?:not|isnt|arent|wont be|wont|doesnt|dont|hasnt|havent) (?:be )?(?:bring|bringing|come|coming|here|arriving|arrive|sending|turn up|turning up|back|landing|due|with us|with me)(?= .*\\b(?:till|until|before)\\b))\\b(?<x>.*)$|^(?:and |but |well |still )*no sign of (?<x>(?!wear|any|metal|damage|cracks?|leaks?|a |scoring).+)$|^(?:and )?(?:i |we |'ve |have |already )*(?:ordered|sent off for|sent for|bought|paid for) (?<x>.+)$|^(?<soak>.*?\\b(?:soaking|soak|curing|cure|drying|dry|setting|cooling|penetrating|stew|stewing|leave it|leaving it|left it|left to soak|marinating))(?: (?:it|them|that|those|in|with|the|some|a|plenty|of|penetrating|releasing|oil|fluid|diesel|paraffin|easing|release)){0,7} (?<u>(?:till|until|overnight|for|over).*)$")]
    private static partial Regex Waits();

    private int Waiting(Stretch clause)
    {
        var match = Waits().Match(clause.Line);
        if (!match.Success)
            return -1;
        int end = clause.To;
        var due = DueIn(clause.From, clause.To);
        if (due is null && DueAfter(end) is { } after)
            (due, end, skipTo) = (after.Due, after.To, after.To);
        else if (due is null && end < tokens.Count && tokens[end].Sort == TokenSort.Comma && NextDue(end + 1) is { } late)
            (due, end) = late;
        if (due is null && Regex.IsMatch(clause.Line, "\\b(?:ordered|bought|sent off for|sent for|paid for|sending|posting|shipping|bringing|delivering)\\b"))
            return -1;
        if (match.Groups["soak"].Success)
        {
            if (due is null && !match.Groups["u"].Value.StartsWith("overnight", StringComparison.Ordinal))
                return -1;
            due ??= new Due(DateOnly.FromDateTime(context.Now.DateTime).AddDays(1), "overnight", false);
            string how = Regex.Match(match.Groups["soak"].Value, "soak\\w*|cur\\w+|dry\\w*|setting|cooling|penetrating|marinating").Value;
            var soaked = ThingIn(clause.From, clause.To) ?? topic;
            Add(new WaitingFor(how.Length > 0 ? how : "left", soaked is null ? null : soaked with { Others = [] }, due), Range(clause.From, end));
            return end;
        }

        var (xFrom, xTo) = clause.Tokens(match.Groups["x"]);
        var thing = ThingIn(xFrom, xTo);
        string what = Trimmed(xFrom, xTo, due);
        if (what is "it" or "that" or "them" && due is null && facts.LastOrDefault() is WaitingFor { Until: not null } told)
        {
            // "cousin brings the gun on Saturday, I wait for it"
            facts[^1] = told with { Spans = [.. told.Spans, .. Spans(Range(clause.From, end))] };
            return end;
        }

        if ((what is "it" or "they" or "them" or "that" || Regex.IsMatch(what, "^(?:right|new|other|same|proper|correct)? ?ones?$")) && (pending.Count > 0 ? pending[^1].Thing : seen ?? topic) is { } meant)
        {
            (what, thing) = (meant.Full, meant);
            pending.Clear();
        }

        if (what.Length == 0)
            what = due?.Said ?? "not said";
        Add(new WaitingFor(what, thing is null ? null : thing with { Others = [] }, due), Range(clause.From, end));
        return end;
    }

    /// <summary>"should be here Thursday", "Tuesday hopefully": when, told after a pause.</summary>
    private (Due Due, int To)? NextDue(int at)
    {
        while (Word(at) is "should" or "be" or "here" or "due" or "coming" or "hopefully" or "they" or "said" or "say" or "it" or "'s" or "probably" or "maybe" or "is" or "on" or "arrives" or "arriving" or "supposed" or "to" or "land" or "meant" or "says" or "tracking" or "now" or "reckons" or "come" or "comes" or "turn" or "up" or "in" or "arrive" or "get" or "they're" or "'re" or "he" or "she" or "expected" or "delivery" or "eta" or "the")
        {
            if (dues.At(at) is { } early)
                return (early.Due, early.To);
            at++;
        }

        return dues.At(at) is { } due ? (due.Due, Word(due.To) is "hopefully" or "maybe" ? due.To + 1 : due.To) : null;
    }

    /// <summary>What is waited for, without the verb and the day.</summary>
    private string Trimmed(int from, int to, Due? due)
    {
        int a = from;
        while (a < to && Word(a) is "the" or "a" or "an" or "my" or "some" or "till" or "until")
            a++;
        int b = a;
        while (b < to && !tokens[b].IsBreak && Word(b) is not ("to" or "comes" or "come" or "arrives" or "arrive" or "is" or "'s" or "are" or "gets" or "turns" or "till" or "until" or "on" or "due" or "by" or "coming" or "has" or "from" or "for") && (due is null || dues.At(b) is null))
            b++;
        return string.Join(" ", Enumerable.Range(a, Math.Max(0, b - a)).Select(i => tokens[i].Text));
    }
}
