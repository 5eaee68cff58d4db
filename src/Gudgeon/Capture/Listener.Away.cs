using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>Sent away and back, said again, unknown things, what is to be done.</summary>
internal sealed partial class Listener
{
    private const string Shop = "(?:(?:the |a |my |his |her |our |your )?(?:machine shop|machinists?|shop|engineers?|engineering works|engine shop|grinders?|crank grinders?|welders?|blasters?|platers?|balancers?|reconditioners?|engine reconditioners?|pump (?:shop|man|specialist)|head (?:shop|man|specialist)|injector (?:shop|man|specialist)|specialists?|turbo (?:shop|man|specialist)|works|mate|mates|friend|pal|neighbour|brother|dad|painters?(?! 's? ?tape)|powder coaters?|heat treaters?|anodisers?|chap|bloke|man|guy))";

    [GeneratedRegex("^(?<x>.+?) (?:is|'s|are|was|has|have)? ?(?:at|in|gone to|gone off to|went to|off to|off at|away at|away to|sent to|taken to|dropped off at|dropped at|with|sent off to|posted to|been sent to|over at|down at|up at) (?<s>" + Shop + ")\\b(?<w>.*)$|^(?:\\w+ )?(?:sent|took|dropped|posted|delivered|handed|gave|shipped) (?<x>.+?) (?:off |over |in )?(?:to|at|in at|off at|in to|with|for) (?<s>" + Shop + ")\\b(?<w>.*)$|^(?<x>.+?) (?:is|'s|are|has|have)? ?(?:gone|away|off|out|sent|sent off|sent away|been sent|been sent off|sent out)(?: off| away| separately| out)?(?: (?:on|in) the (?:van|post|lorry|truck)| by courier)? (?:for|to be|to get|to the (?:fellow|man|chap|bloke|guy|lad|woman|lady|firm|place|people)\\b[a-z ]*? (?:for|to)) (?<w>.+)$|^(?<x>[a-z' ]+?) (?:i|we) (?:'ve |have |had )?(?:gave|given|give|sent|took|taken|dropped|handed|posted|left) (?:off |in )?(?:to|at|with) (?:the |a |my )?(?<w>.+)$|^(?:i |we |i 've |have |just )*(?:lent|loaned|gave) (?<x>.+?) to (?<s>(?:a |the |my |his |her )?[a-z]+(?: (?:up|down|next|over|across|from|at|in) [a-z ]+?)?)(?: (?<w>(?:for|till|until|and) .+))?$|^(?<x>.+?) (?:is|'s|are) (?:away |out |gone )?on loan (?:to|with) (?<w>.+)$|^(?<x>.+?) (?:is|'s|are) (?:still |now )?(?:at|with|in at) (?<s>(?:the |a |my |his |her )[a-z]+(?: [a-z]+){0,2}?) (?<w>(?:till|until|for a|for an|for its|for the|to be|to get|getting|being|having) .+)$|^(?:sent|took) (?<x>.+?) (?:off|away|out) (?:for|to be|to get) (?<w>.+)$|^(?:i |we |'ve |just |and )*(?:dropped|sent|took|posted|handed) (?<x>it|them) (?:off|in|away|over)(?: (?:this|yesterday|today|at|on|in) .*)?$")]
    private static partial Regex SentTo();

    private int Away(Stretch clause, Stretch rest)
    {
        var match = SentTo().Match(clause.Line);
        if (!match.Success || Regex.IsMatch(clause.Line, "\\b(?:covered|tape|cleaned|borrowed|asked|rang|phoned|called|bought)\\b"))
            return -1;
        var (xFrom, xTo) = clause.Tokens(match.Groups["x"]);
        var sent = ThingsIn(xFrom, xTo);
        if (sent.Count == 0 && (Nameless(xFrom, xTo) ?? topic ?? LastThing()) is { } other)
            sent = [Word(xFrom) is "it" or "they" or "them" && topic is not null ? topic : other];
        if (sent.Count == 0)
            return -1;
        if (sent.All(t => t.Sort == ThingSort.Unknown && (t.Name.Split(' ').Length > 4 || NumberWords.At(tokens, xFrom) is not null)))
            return -1;
        int end = SentEnd(clause, rest);
        Due? due = null;
        string paid = "";
        int workFrom = match.Groups["w"].Length > 1 ? clause.Tokens(match.Groups["w"]).From : clause.To;
        int workTo = workFrom;
        for (int i = workFrom; i < end; i++)
        {
            if (due is null && dues.At(i) is { } read && !(Word(i) is "for" && read.Due.Day is null))
            {
                due = read.Due;
                i = read.To - 1;
            }
            else if (NumberWords.At(tokens, i) is { } n && (Word(n.To) is "paid" or "quid" or "pounds" or "euros" or "dollars" or "deposit" or "bucks" || Word(i - 1) is "paid" or "cost" or "costs"))
            {
                int to = n.To;
                while (Word(to) is "quid" or "pounds" or "euros" or "dollars" or "deposit" or "paid" or "up" or "front" or "bucks")
                    to++;
                paid = Said(i, to);
                i = to - 1;
            }
            else if (due is null && paid.Length == 0)
                workTo = i + 1;
        }

        string work = Regex.Replace(Said(workFrom, workTo), "^[ ,]*(?:for (?:a )?|to be |to get |getting |being |having (?:a |it )?)", "").Trim(' ', ',');
        string shop = match.Groups["s"].Success ? Regex.Replace(match.Groups["s"].Value, "^(?:the|a|my|his|her|our|your) ", "") : "shop";
        foreach (var thing in sent)
            About(thing, Range(clause.From, end), t => new Sent(t, shop, work, due, paid));
        topic = sent[0];
        return end;
    }

    /// <summary>What follows belongs to the sending until another part is spoken of.</summary>
    private int SentEnd(Stretch clause, Stretch rest)
    {
        int end = clause.To;
        while (end < rest.To && tokens[end].Sort == TokenSort.Comma)
        {
            int next = ClauseEnd(end + 1, rest.To);
            if (ThingsIn(end + 1, next).Any(t => t.Ids.Count > 0) && !In(end + 1, next).Any(p => p is DuePhrase))
                break;
            if (Asks().IsMatch(new Stretch(tokens, end + 1, next).Line))
                break;
            end = next;
        }

        return end;
    }

    [GeneratedRegex("^(?:got |picked up |collected |fetched )?(?<x>.+?) (?:(?:is|'s|are|came|come|have come|has come|got) )?(?:back|home(?= from))(?: (?:from|today|now|already|at last|home|again|this|last|yesterday|and|with)\\b(?<w>.*))?$|^(?:picked up|collected|fetched) (?<x>.+?) (?:from|at) (?<w>.+)$")]
    private static partial Regex CameBack();

    private int Returned(Stretch clause)
    {
        var match = CameBack().Match(clause.Line);
        if (!match.Success || Regex.IsMatch(match.Groups["x"].Value, "\\b(?:put|go|goes|going|get|gets|wants|front to|at the|the|in the|to)$|\\bput\\b|\\bto go\\b"))
            return -1;
        if (Refitting() && match.Groups["w"].Length == 0 && !clause.Line.Contains(" from ", StringComparison.Ordinal))
            return -1;
        if (In(clause.From, clause.To).Any(p => p is FaultPhrase) || Regex.IsMatch(match.Groups["x"].Value, "\\b(?:tied|folded|pulled|held|bent|pushed|laid|cut|hung|front and)$"))
            return -1;
        var (xFrom, xTo) = clause.Tokens(match.Groups["x"]);
        var came = ThingsIn(xFrom, xTo);
        if (came.Count == 0)
            return -1;
        int end = match.Groups["w"].Length > 0 && !match.Groups["w"].Value.Contains(" from ", StringComparison.Ordinal) && Regex.IsMatch(clause.Line, "back (?:and|with)\\b") ? xTo : clause.To;
        while (end < clause.To && Word(end) is "is" or "'s" or "are" or "came" or "back" or "home" or "have" or "has" or "come")
            end++;
        foreach (var thing in came)
            About(thing, Range(clause.From, end), t => new Back(t));
        topic = came[0];
        return end;
    }

    [GeneratedRegex("^(?:and )?(?:the )?(?<x>left|right|other|lower|upper|rear|front) (?:one|ones|side|bank)(?: is| are| 's)? (?:an all|and all|likewise|the very same|exactly the same)$|^(?:and )?(?:same again|same|ditto|likewise|same thing|same story|same deal|repeat|as before|same for|same with)\\b(?<w>.*)$|^(?<x>.+?) (?:(?:is|are|was|were|'s|on|on the|done) )*(?:the |the very |very |much the |exactly the )?(?:same as|same again|ditto|as per|exactly like|just like|like|identical to|the same|same|likewise) ?(?<w>.*)$")]
    private static partial Regex Again();

    private int Repeat(Stretch clause, Stretch rest)
    {
        var match = Again().Match(clause.Line);
        if (!match.Success || Regex.IsMatch(clause.Line, "\\b(?:all|both|each) (?:of them |be |are )?(?:the )?same$") || (match.Groups["x"].Success && !Regex.IsMatch(clause.Line, "same|ditto|identical|likewise|an all|and all|(?:exactly|just) like (?:the )?(?:left|right|other|first|last)")))
            return -1;
        if (Regex.IsMatch(clause.Line, "\\bsame (?:size|length|bag|place|side|order|colour|bolts?|nuts?|studs?|screws?|lengths?|day|time|shape|gasket)\\b") || Lexicon.Containers.Longest(tokens, clause.Tokens(match.Groups[0]).From + 1).Values.Count > 0)
            return -1;
        int end = clause.To;
        while (end < rest.To && tokens[end].Sort == TokenSort.Comma)
        {
            int next = ClauseEnd(end + 1, rest.To);
            var line = new Stretch(tokens, end + 1, next);
            bool detail = Regex.IsMatch(line.Line, "^(?:same |as before|again)") || In(end + 1, next).All(p => p is PlacePhrase or WordPhrase { Filler: true } or TagPhrase);
            if (!detail)
                break;
            end = next;
        }

        var numbers = Cylinders(clause);
        string side = Regex.Match(clause.Line, "\\b(left|right|far|near|other)\\b (?:hand )?(?:bank|side|head|one|hand)|on the (left|right|other)$|\\b(?:bank) (one|two|1|2|a|b)\\b").Groups is var g && g[1].Success ? g[1].Value : g[2].Success ? g[2].Value : g[3].Success ? "bank:" + (g[3].Value is "two" or "2" or "b" ? 2 : 1) : "";
        var place = In(clause.From, end).OfType<PlacePhrase>().LastOrDefault()?.Place;
        var thing = ThingIn(clause.From, clause.To);
        Flush();
        var source = facts.Where(IsWork).ToList();
        var pattern = source.Count > 0 ? source : [.. context.Last.Where(IsWork)];
        if (pattern.Count == 0 && facts.Count == 0 && numbers.Count > 0)
            pattern = [.. context.Last.Where(f => f is Measured)];
        if (numbers.Count == 0 && side.Length == 0 && thing is null && source.Count > 0 && topic is not null && clause.Line.Length < 12)
        {
            // "rear head off, same": as the note before, for what is told now.
            thing = topic;
            pattern = [.. context.Last.Where(f => IsWork(f) && f is not Off)];
        }

        var copies = new List<Fact>();
        // "the pinion's chipped. ring gear's the same": how it is, of another kind than what the work was done to.
        if (numbers.Count == 0 && side.Length == 0 && thing is { Sort: ThingSort.Part } and && (facts.Count > 0 ? facts : context.Last).LastOrDefault() is Damaged or Seen && pattern.All(f => About(f)?.Kind != and.Kind))
        {
            pending.Clear();
            copies.Add(With((facts.Count > 0 ? facts : context.Last)[^1], and with { Others = [] }));
            pattern = [];
        }

        foreach (var fact in pattern)
        {
            foreach (var moved in Moved(fact, numbers, side, thing))
                copies.Add(Placed(moved, place));
        }

        // "oil pump gears scored, and the cover likewise"
        if (copies.Count == 0 && source.Count == 0 && thing is not null && facts.LastOrDefault() is Damaged or Seen && numbers.Count == 0 && side.Length == 0)
        {
            pending.Clear();
            copies.Add(With(facts[^1], thing with { Others = [] }));
        }

        if (copies.Count == 0)
        {
            if (pattern.Count == 0 || numbers.Count + side.Length > 0 || thing is not null)
            {
                Ask(DoubtSort.NotTold, "The same as what?", Range(clause.From, end));
                return end;
            }

            return -1;
        }

        foreach (var copy in copies)
            Add(copy, Range(clause.From, end));
        return end;
    }

    /// <summary>What "same again" repeats: work, not what was found.</summary>
    private static bool IsWork(Fact fact) => fact is Off or Undone or Count or Marked or Put or Parted or On or Tightened;

    private List<int> Cylinders(Stretch clause)
    {
        var numbers = new List<int>();
        string line = clause.Line;
        int same = Math.Max(line.IndexOf("same", StringComparison.Ordinal), Math.Max(line.IndexOf("likewise", StringComparison.Ordinal), line.IndexOf("ditto", StringComparison.Ordinal)));
        for (int i = clause.From; i < clause.To; i++)
        {
            if (Word(i) is "as" or "like" or "only" or "but" or "except" && numbers.Count > 0)
                break;
            if (NumberWords.At(tokens, i) is { IsCount: true } n && n.Int is > 0 and <= 28 && !(Word(i) == "one" && Word(i - 1) is "hand" or "left" or "right" or "other" or "lower" or "upper" or "that" or "this") && !(Word(i - 1) is "bag" or "tray" or "box" or "bank" or "tin" or "tub"))
            {
                numbers.Add(n.Int);
                if (Word(n.To) is "to" && NumberWords.At(tokens, n.To + 1) is { IsCount: true } last)
                {
                    for (int k = n.Int + 1; k <= last.Int; k++)
                        numbers.Add(k);
                    i = last.To - 1;
                }
                else
                    i = n.To - 1;
            }
        }

        return same < 0 ? [] : numbers;
    }

    private IEnumerable<Fact> Moved(Fact fact, List<int> numbers, string side, Thing? named)
    {
        if (About(fact) is not { } thing)
            yield break;
        if (numbers.Count > 0)
        {
            foreach (int n in numbers)
            {
                if (Select(thing, n, "") is { } other)
                    yield return With(fact, other);
            }
        }
        else if (side.Length > 0 && Select(thing, null, side) is { } across)
            yield return With(fact, across);
        else if (named is not null && fact is On && named.Kind != thing.Kind && numbers.Count == 0 && index.Parts(named.Kind).Count > 1 && OfSame(thing.Kind, named) is { } own)
            yield return With(fact, own);
        else if (named is not null && (named.Kind == thing.Kind || numbers.Count == 0) && side.Length == 0)
            yield return With(fact, named with { Sort = thing.Sort == ThingSort.Fasteners ? ThingSort.Fasteners : named.Sort, Others = [] });
    }

    private Thing? Select(Thing thing, int? number, string side)
    {
        if (thing.Kind.Length == 0 || thing.Sort is ThingSort.Unknown or ThingSort.Outside)
            return null;
        var selectors = new Selectors { Side = side };
        if (number is { } n)
            selectors.Numbers.Add(n);
        var found = resolver.Resolve([new PartWord(thing.Kind, thing.Sort == ThingSort.Line, null, 0)], selectors, thing.Ids.Count > 1, thing.Name);
        if (side.Length > 0 && found.Others.Count > 0)
            found = resolver.Resolve([new PartWord(thing.Kind, thing.Sort == ThingSort.Line, null, 0)], selectors, true, thing.Name);
        // Cam cap four of the exhaust cam: the row spoken of has its own numbers.
        if (number is { } place && thing.Ids.Count > 1 && (found.Ids.Count == 0 || found.Ids.Intersect(thing.Ids).Count() != 1) && thing.Ids.Where(i => index.Engine.Parts.TryGetValue(i, out var p) && p.Cylinder is null && p.Index.Count > 1 && p.Index[^1] == place).ToList() is [var own])
            found = found with { Ids = [own], Name = index.Engine.Parts[own].Name, Where = "" };
        return found with { Sort = thing.Sort, Detail = thing.Detail, Fastener = thing.Fastener, Others = [] };
    }

    private static Fact With(Fact fact, Thing thing) => fact switch
    {
        Off f => f with { Thing = thing },
        On f => f with { Thing = thing },
        Undone f => f with { Of = thing with { Sort = ThingSort.Fasteners } },
        Count f => f with { Of = thing },
        Tightened f => f with { Of = thing },
        Damaged f => f with { Thing = thing },
        Seen f => f with { Thing = thing },
        Marked f => f with { Thing = thing },
        Put f => f with { Thing = thing },
        LeftOn f => f with { Thing = thing },
        Parted f => f with { Line = thing },
        Capped f => f with { Thing = thing },
        Tagged f => f with { Thing = thing },
        Measured f => f with { Thing = thing },
        _ => fact,
    };

    private static Fact Placed(Fact fact, Place? place) => place is null or { Label: "same place" } ? fact : fact switch
    {
        Undone f => f with { Place = place },
        Put f => f with { Place = place },
        _ => fact,
    };

    [GeneratedRegex("^(?<x>(?:(?=thing)|a |the |some |this |that |one |little |small |big |long |odd |weird |funny |strange |unknown |mystery |brass |black |round |flat |plastic |metal |steel |copper |rubber |alloy |another )+(?:thing|thingy|thingumajig|doodah|doofer|gadget|gizmo|widget|whatsit|(?<! a |^a )bit|piece|lump|object|contraption|gubbins|doobry|part|valve thing|canister|cylinder thing|box thing|what ever it is)s?\\b.*)$")]
    private static partial Regex Things();

    [GeneratedRegex("^(?:(?:no idea|not sure|dont know|god knows|goodness knows|havent a clue|no clue|who knows) (?:what|where).*|(?:took|taken|take|got) (?:a |some )?(?:photos?|pictures?|snaps?|pics?).*|(?:photo|picture) taken.*)$")]
    private static partial Regex NoIdea();

    private int Unknown(Stretch clause, Stretch rest)
    {
        var match = Things().Match(clause.Line);
        if (!match.Success)
            return -1;
        var (xFrom, xTo) = clause.Tokens(match.Groups["x"]);
        int name = xFrom;
        while (name < xTo && !(Word(name) is "under" or "behind" or "off" or "out" or "fell" or "dropped" or "on" or "in" or "near" or "by" or "from" or "is" or "'s" or "came" or "next"))
            name++;
        var thing = Nameless(xFrom, name);
        if (thing is null)
            return -1;
        int end = clause.To;
        string where = name < clause.To ? Regex.Replace(Said(name, clause.To), "^(?:is|came|'s)? ?(?:off|out)? ?(?:from )?", "") : "";
        while (end < rest.To && tokens[end].Sort == TokenSort.Comma)
        {
            int next = ClauseEnd(end + 1, rest.To);
            if (!NoIdea().IsMatch(new Stretch(tokens, end + 1, next).Line))
                break;
            end = next;
        }

        var place = In(name, clause.To).OfType<PlacePhrase>().FirstOrDefault();
        bool off = !Regex.IsMatch(clause.Line, "\\b(?:found|missing|still|broken|sitting|stuck|is in|was in|left)\\b");
        if (!off)
            return -1;
        Add(new Off(thing with { Where = place is null ? where : "" }, []), Range(clause.From, end).Where(i => !tokens[i].IsBreak && (place is null || i < place.From || i >= place.To)));
        if (place is not null)
            Add(new Put(thing, place.Place), Range(place.From, place.To));
        topic = thing;
        return end;
    }

    [GeneratedRegex("^(?:and |so |then )?(?:(?:i |we )?(?:'ll|will|must|should|ought to|gonna|going to|'m going to|am going to|plan to|want to|need to|have to|'ve got to|intend to) (?!be off|be out|come off|come out).+|(?:remember|dont forget|got to|gotta|next job|next up|to do|todo|later|tomorrow|tonight|must|need to|have to) (?:to |is |the |: )?.+|(?:.+ )?(?:wants?|needs?|will need|could do with|to be|has to be|needs to be|must be|ought to be|should be|is going to be|'s going to be|going to) (?:an? |some |to be |be |the |doing |another )*(?:cleaned|cleaning|clean|honed?|honing|insert|inserts|skim\\w*|(?:re)?bor\\w+|(?:re)?grind\\w*|(?:re)?ground|lapp\\w+|weld\\w*|machin\\w+|polish\\w*|paint\\w*|blast\\w*|measur\\w+|check\\w*|deglaz\\w+|chas\\w+|tapp\\w+|tap|drill\\w*|extract\\w*|heat\\w*|replac\\w+|look\\w*|straighten\\w*|wash\\w*|flush\\w*|decok\\w+|balanc\\w+|test\\w*|rebuild\\w*|reseal\\w*|crack test\\w*|dress\\w*|fil\\w+|repair\\w*|fix\\w*|attention|work|soak\\w*|retapp\\w*|new thread|sort\\w*|thread\\w*|doing|ream\\w*|bush\\w*|rebush\\w*|strip\\w*|another go|good clean|\\w+ing\\b).*)$")]
    private static partial Regex Plans();

    private int Plan(Stretch clause)
    {
        if (!(Past().IsMatch(clause.Line) && !Regex.IsMatch(clause.Line, "\\b(?:tomorrow|next week)\\b")) && Regex.IsMatch(clause.Line, "\\b(?:tonight|tomorrow|later|next week|at the weekend)\\b.* if |^.+ (?:back )?(?:on|in|off|out) (?:tonight|tomorrow|next week|at the weekend)\\b") && ThingIn(clause.From, clause.To) is { } later)
        {
            Add(new Planned(later with { Others = [] }, Said(clause.From, clause.To)), Range(clause.From, clause.To));
            return clause.To;
        }

        if (Regex.IsMatch(clause.Line, "^(?:right |so |and |ok |well |then )*(?:tonight|later|today|this morning|this evening)\\b") && Past().IsMatch(clause.Line))
            return -1;
        if (!Plans().IsMatch(clause.Line) || Regex.IsMatch(clause.Line, "\\b(?:buy|order|replacing|renewing)\\b") && Regex.IsMatch(clause.Line, "need|want|must|to (?:buy|order)"))
            return -1;
        if (Regex.IsMatch(clause.Line, "need(?:s)? (?:a |some )?new\\b|want(?:s)? (?:a |some )?new\\b"))
            return -1;
        int from = clause.From;

        var thing = ThingIn(from, clause.To) ?? (from > clause.From || Regex.IsMatch(clause.Line, "^(?:wants?|needs?|it|they|will need|to be|must be)\\b") ? seen ?? topic : null);
        if (thing is null && !In(from, clause.To).Any(p => p is DetailPhrase or LotPhrase or MeasurePhrase))
            Ask(DoubtSort.NotUnderstood, $"Kept as said: “{Said(from, clause.To)}”", Range(from, clause.To));
        else
            Add(new Planned(thing is null ? null : thing with { Others = [] }, Said(from, clause.To)), Range(from, clause.To));
        return clause.To;
    }
}
