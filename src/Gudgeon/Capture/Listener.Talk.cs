using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>Talk beside the work, which tells of no deed: warnings, grazes, meals, home, a word to whoever helps.</summary>
internal sealed partial class Listener
{
    private const string Body = "(?:knuckles?|thumbs?|elbows?|shins?|(?:my|your|yer|his|her|two|three) (?:fingers?|hands?|toes?|nails?|backs?|foot|feet))";

    [GeneratedRegex("^(?:and |but |so |now |right |well |mind |oh |god |okay |ok |alright |no |yeah |,)*(?:"
        + "(?:watch|mind|careful (?:of|with)|keep) (?:out|(?:your|yer|his|her|those|them|the) (?:fingers?|hands?|toes?|foot|feet|thumbs?|eyes?|step|back))(?: there| now| out| clear| back)*"
        + "|(?:i |we |'ve |have |got |just |only |another )*(?:(?:one|two|three|a|my|some|both) )?(?:busted|bust|skinned|skun|barked|bruised|bloody|grazed|cut|scraped|burnt|burned|nipped|trapped|jammed|sore|split|bleeding|skint) (?:(?:my|a|his|some|two|three|one|both|another|the) )*" + Body + "\\b.*"
        + "|up (?:she|it|he) (?:comes?|goes)(?: now| at last)*"
        + "|(?:where|what) (?:was|were|am|are|did) (?:i|we)(?: (?:at|up to|now|all|again|then|get to|got to|saying))*"
        + "|(?:i |we |'ve |have |just |time for |off for |stopping for |stopped for |going for |had |having )+(?:my |our |a |some |the |me )*(?:lunch|dinner|tea|supper|breakfast|brew|coffee|smoke|pint|bite|cuppa|sandwich|beer)(?: now| first| after| break)*"
        + "|(?:the |my |his )?(?:tea|dinner|lunch|supper|kettle|radio|telly|missus|wife|husband) (?:is|'s|has|being|wants|calls|calling)\\b.*"
        + "|(?:i 'm |i am |we 're |we are )?(?:going|away|off) (?:home|to bed|indoors|inside)\\b.*|(?:that 's |that is )me (?:done|finished|beat)\\b.*"
        + "|(?:please |can you |could you )*(?:hold|shine|pass|hand|give|grab|fetch) (?:me |us |that |this |the |my |a )*(?:phone|torch|light|lamp|\\w* ?\\w* ?spanner|socket|hammer|towel|mug)\\b.*"
        + "|(?:come|go) (?:and |on |here |over )*(?:look|see|hold|help|have|watch)\\b.*|(?:dont|do not|never) (?:let go|laugh|tell|worry|ask|panic|look|cry|you)\\b.*|nobody (?:tell|look|laugh|ask)\\b.*|you can (?:do the|hold|help|watch|have)\\b.*"
        + "|that (?:'ll|will) (?:do|have to do)(?: me| us)?(?: for (?:now|tonight|today|the day))?|(?:i )?forgot to (?:say|mention|tell you)(?: that| before)?"
        + "|(?:(?:it|that|which|only|just|this) )*(?:took|lost|spent|wasted) (?:(?:me|us|only|about|all|the|best|part|of|over|nearly) )*(?:an|a|one|two|three|four|five|six|half|twenty|thirty|\\d+) (?:an |a )?(?:hours?|days?|minutes?|evenings?|weekends?|weeks?)\\b.*"
        + "|(?:it 's |that 's |been |nearly |about |over |must be |a )*(?:\\w+ )+(?:years|months|weeks|years ago|a while) since\\b.*"
        + "|(?:i |we )(?:'m|'re|am|are) (?:doing|working|writing|saying|talking)\\b.*|(?:scared|frightened) (?:me|the)\\b.*"
        + "|(?:that 's |there 's |she 's |finally |at last )*(?:the |my |our |this )*(?:wee |old |little |whole |poor |big )*(?:engine|motor) (?:is |'s |now |finally |back |up |sat |sitting |standing |stood )*(?:on|in|under) (?:the |my |our )*(?!stand|hoist|crane|engine)\\w+(?: at last| now| finally)*"
        + ")(?: darling| love| pet| son| sweetheart| mate)?$")]
    private static partial Regex Chats();

    /// <summary>"watch your fingers", "where was I", "two busted knuckles": asked about only where the note tells of nothing else.</summary>
    private int Chatter(Stretch clause)
    {
        if (!Chats().IsMatch(clause.Line) || In(clause.From, clause.To).Any(p => p is MeasurePhrase or AmountPhrase or TagPhrase or LotPhrase { Lot.Fastener.Length: > 0 }) || facts.Count == 0 && context.Sought is not null && Word(clause.From) == "where")
            return -1;
        int end = clause.To;
        // "and one busted socket": of the same breath.
        if (In(clause.From, end).OfType<ThingPhrase>().Any(t => t.Thing is { Sort: ThingSort.Part or ThingSort.Line } && t.Thing.Kind is not ("finger" or "cam" or "timing-loop") && Preposition(t.From) is ""))
            return -1;
        Untold(Range(clause.From, end));
        return end;
    }

    private static readonly HashSet<string> CountWords = ["i", "we", "'ve", "have", "found", "find", "got", "count", "counted", "make", "it", "that", "there", "'s", "is", "are", "only", "here", "see", "can", "of", "them", "so", "far", "but", "and", "just", "in", "my", "hand", "bolts", "nuts", "screws", "studs", "up", "say", "then", "now"];

    /// <summary>"how many should there be in the sump, I've found nine": how many there are.</summary>
    private int FoundSoMany(Thing thing, int end)
    {
        int from = end;
        while (from < tokens.Count && (tokens[from].Sort is TokenSort.Comma || Word(from) is "but" or "and" or "cos" or "because"))
            from++;
        int to = from;
        Num? count = null;
        while (to < tokens.Count && !tokens[to].IsBreak)
        {
            if (count is null && NumberWords.At(tokens, to) is { IsCount: true } n)
                (count, to) = (n, n.To);
            else if (CountWords.Contains(Word(to)))
                to++;
            else
                return end;
        }

        if (count is not { } many || from == end || to == from || to - from < 2)
            return end;
        var joint = things.Joint(thing, thing.Fastener.Length > 0 ? thing.Fastener : "bolt");
        Add(new Count(joint, [new Lot { Count = many.Int, Fastener = thing.Fastener.Length > 0 ? thing.Fastener : "bolt" }]), Range(from, to));
        skipTo = to;
        return to;
    }

    [GeneratedRegex("^(?:(?:so|and|but|that|which|leaves|leaving|only|just|there|'s|is|are|still|now|the|i|we|'m|'re|me|us) )*(?<n>one|two|three|four|five|\\d+)(?: (?:more|of them|'s|is|are|bolt|bolts|nut|nuts|screw|screws))* (?:(?:still|now|yet|'s|is|are) )*(?:missing|short|gone|lost|astray|to find|gone astray|gone missing|unaccounted for)(?: (?:now|still|yet|then))*$")]
    private static partial Regex StillMissing();

    /// <summary>"found two of the oil pump bolts, that leaves just the one missing": as many of the same are short yet.</summary>
    private int RestIsMissing(Stretch clause)
    {
        if (StillMissing().Match(clause.Line) is not { Success: true } match || (match.Groups["n"].Value == "one" ? 1 : NumberWords.At(tokens, clause.Tokens(match.Groups["n"]).From) is { IsCount: true } told ? told.Int : 0) is not (> 0 and var n) || ThingsIn(clause.From, clause.To).Count > 0 || pending.Count > 0)
            return -1;
        Flush();
        if (facts.LastOrDefault() is not (Found or Count or Put { Thing.Sort: ThingSort.Fasteners }) || About(facts[^1]) is not { Ids.Count: > 0, Others.Count: 0 } joint)
            return -1;
        string fastener = joint.Fastener.Length > 0 ? joint.Fastener : "bolt";
        Add(new Missing(joint, [new Lot { Count = n, Fastener = fastener }]), Range(clause.From, clause.To));
        return clause.To;
    }

    [GeneratedRegex("^(?:(?:so|and|then|well|i|we|'ll|'d|will|want|wants|need|needs|must|have|get|buy|order|better|please|going|to|that|'s|is|it|they|those|could|do|with|put|write|add) )*(?:(?:a |one |the )?(?:new |full |whole |complete |fresh |another )+(?:set|one|lot)|a set|a new one|one of (?:them|those|these)|that 's one)(?: (?:please|too|also|then|needed|wanted|required|of (?:them|those)|to (?:order|buy|get)|(?:on|to|for) (?:the|my) (?:shopping |same |order )?list|as well))*$"
        + "|^(?:(?:so|and|please|kindly|just|then|i|we|'ll) )*(?:put|stick|add|write|note|pop|goes|going|go)(?: (?:it|that|them|those|this|one|a new one|down|also))* (?:on|to|in) (?:the |my )?(?:same |shopping |buying |order )?list(?: (?:please|too|also|then|as well))*$"
        + "|^(?:(?:so|and|but) )*(?:that|it|this|they|those)(?: 's| is| are| 'll)? (?:also |too )?(?:go|goes|going|to go) (?:on|to) (?:the |my )?(?:same |shopping )?list(?: too| also| as well)*$|^(?:the )?same list$|^(?:so |and )*(?:this|that|it|these|those) (?:one )?(?:i|we) (?:must |will |'ll |have to )*(?:buy|order|get)(?: new)?$")]
    private static partial Regex SameBought();

    /// <summary>"so one of those please", "need a full set", "that goes on the list": what was just told is wanted.</summary>
    private int SameToBuy(Stretch clause)
    {
        if (!SameBought().IsMatch(clause.Line) || !Regex.IsMatch(clause.Line, "\\b(?:list|set|please|want|need|order|buy|get|needed|wanted|required|those|them)\\b") || ThingsIn(clause.From, clause.To).Count > 0)
            return -1;
        if ((pending.Count > 0 ? pending[^1].Thing : seen ?? topic) is not { } thing || thing.Sort is not (ThingSort.Part or ThingSort.Line or ThingSort.Fasteners) || thing is { Ids.Count: 0 } || facts.Count == 0 && pending.Count == 0 && context.Last.Count == 0)
            return -1;
        Flush();
        pending.Clear();
        About(thing.Detail is "" or "gasket" or "seal" or "O-ring" ? thing : thing with { Detail = "" }, Range(clause.From, clause.To), t => new ToBuy(t, []));
        return clause.To;
    }

    /// <summary>The day on which a lender wants it back, told after a pause.</summary>
    private (Due Due, int To)? WantedBack(int end, int to)
    {
        if (end >= to || !(tokens[end].IsBreak || Word(end) == "and"))
            return null;
        int next = end + 1;
        while (next < to && !tokens[next].IsBreak)
            next++;
        var line = new Stretch(tokens, end + 1, next);
        return DueIn(end + 1, next) is { } due && Regex.IsMatch(line.Line, "\\b(?:back|return\\w*|wants? (?:it|them)|needs? (?:it|them)|(?:must|has to|have to|to) (?:get|have|return|give) (?:it|them))\\b") && !In(end + 1, next).Any(p => p is ThingPhrase { Thing.Ids.Count: > 0 }) ? (due, next) : null;
    }

    /// <summary>"bore gauge is off my neighbour, he wants it Sunday": a tool with its owner, and when it goes back.</summary>
    private int Owned(Stretch clause, Stretch rest)
    {
        int whose = Range(clause.From, clause.To).FirstOrDefault(k => Lexicon.Persons.Contains(Word(k)) && Word(k) is not ("i" or "we" or "he" or "she" or "they" or "me" or "him" or "her") && Word(k - 1) is "the" or "my" or "his" or "her" or "our" or "a", -1);
        if (whose < 0 || In(clause.From, clause.To).Any(p => p is LotPhrase or MeasurePhrase or ActPhrase { Act: Act.On or Act.Undo }))
            return -1;
        int link = Range(clause.From + 1, whose).LastOrDefault(k => Word(k) is "from" or "off" or "to", -1);
        bool linked = link >= whose - 2 && (Word(link) != "to" || Word(link - 1) is "belongs" or "belong") && Range(clause.From, link).Any(k => Word(k) is "is" or "'s" or "are" or "have" or "got" or "belongs" or "belong" or "has");
        bool plain = Word(whose + 1) == "'s" && whose + 2 == clause.To && Range(clause.From, whose).Any(k => Word(k) is "is" or "'s" or "are");
        bool first = Word(whose + 1) == "'s" && whose + 2 < clause.To && Range(clause.From, whose).Any(k => Word(k) is "have" or "'ve" or "got" or "had");
        var what = first ? Tool(whose + 2, clause.To) : linked || plain ? Tool(clause.From, clause.To) is { } leading && Word(clause.From) is not ("i" or "we") ? leading : Range(clause.From, whose).FirstOrDefault(k => Word(k) is "have" or "got", -1) is var got and >= 0 ? Tool(got + 1, link < 0 ? whose : link) : null : null;
        if (what is null)
            return -1;
        int end = clause.To;
        var due = DueIn(clause.From, clause.To);
        if (due is null && WantedBack(end, rest.To) is { } told)
            (due, end) = told;
        if (due is null)
            return -1;
        Flush();
        lastOutside = new Thing(ThingSort.Outside, "", [], what);
        pending.RemoveAll(p => p.From >= clause.From);
        if (end > clause.To)
            skipTo = end;
        Add(new GoesBack(lastOutside, due), Range(clause.From, end).Where(k => !tokens[k].IsBreak));
        return end;
    }

    /// <summary>"the nephew has the carburettor on loan and he's to give it back Sunday": a part of the engine that somebody has.</summary>
    private int HeldBy(Stretch clause, Stretch rest)
    {
        int who = Range(clause.From, Math.Min(clause.To, clause.From + 3)).FirstOrDefault(k => Lexicon.Persons.Contains(Word(k)) && Word(k) is not ("i" or "we" or "you" or "it"), -1);
        var part = In(clause.From, clause.To).OfType<ThingPhrase>().FirstOrDefault(p => p.Thing is { Sort: ThingSort.Part, Ids.Count: > 0, Others.Count: 0, Detail: "" });
        if (part is null || In(clause.From, clause.To).Any(p => p is LotPhrase or MeasurePhrase or FaultPhrase or PlacePhrase))
            return -1;
        bool lent = Range(clause.From, clause.To).Any(k => Word(k) == "loan" && Word(k - 1) is "on" or "a" || Word(k) is "borrowed" or "lent");
        bool holds = who >= clause.From && part.From > who && Range(who + 1, part.From).Any(k => Word(k) is "has" or "have" or "'s" or "got" or "borrowed") && Range(who + 1, part.From).All(k => Word(k) is "has" or "have" or "'s" or "got" or "borrowed" or "the" or "my" or "still" or "now" or "a");
        bool given = lent && Word(part.To) is "is" or "'s" or "are" && Range(part.To, clause.To).Any(k => Word(k) == "loan" && Word(k + 1) is "to" or "with");
        if (!holds && !given)
            return -1;
        int end = clause.To;
        var due = DueIn(part.To, clause.To);
        if (due is null && WantedBack(end, rest.To) is { } told)
            (due, end) = told;
        if (due is null)
            return -1;
        Flush();
        pending.RemoveAll(p => p.From >= clause.From);
        if (end > clause.To)
            skipTo = end;
        string to = holds ? Word(who) : "on loan";
        About(part.Thing, Range(clause.From, end).Where(k => !tokens[k].IsBreak), t => new Sent(t, to, "", due, ""));
        Speak(part.Thing, clause.From);
        return end;
    }
}
