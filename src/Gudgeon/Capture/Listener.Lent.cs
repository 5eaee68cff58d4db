using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>What was borrowed and must go back.</summary>
internal sealed partial class Listener
{
    [GeneratedRegex("^(?<x>.*?)(?:has|have|needs|need|must|got) (?:to )?(?:go|be|get) back\\b(?<when>.*)$|^(?:must |need to |have to |got to |gotta )?(?:return|take|give|hand) (?<x>.+?) back\\b(?<when>.*)$|^(?<x>.+?) (?:(?:is|'s) )?(?:only )?(?:borrowed|on loan|hired|mine|ours|due back|on hire)\\b(?<when>.*)$|^(?<x>(?:the |that |his |her )?[a-z]+(?: [a-z]+)?) (?:goes|go|going) back(?: to [a-z' ]+?)? (?<when>(?:on |by )?(?:tomorrow|tonight|monday|tuesday|wednesday|thursday|friday|saturday|sunday|next|the ).*)$|^(?:i |we |'ve |have |need |must |got |gotta |to )*(?:have|get) (?<x>.+?) back(?: to (?:the |a |my )?[a-z' ]+?)? (?<when>(?:by|before|on) .*)$|^.*?\\b(?:wants?|needs?|needing|wanting|after|asking for|expects?) (?:his|her|their|the|its|my|that) (?<x>[a-z -]+?) back\\b(?<when>.*)$|^(?:borrowed|hired) (?<x>.+?) (?<when>(?:till|until|due back|for).*)$|^(?:must |need to |have to )?return (?<x>.+?) (?<when>by .*|on .*|before .*)$|^(?<x>.+?) (?:has|have|needs?|must|got|wants?) (?:to )?(?:be )?(?:returned|returning|taken back|given back|handed back)\\b(?<when>.*)$")]
    private static partial Regex GoesBackBy();

    private int GoBack(Stretch clause)
    {
        var match = GoesBackBy().Match(clause.Line);
        if (!match.Success || Regex.IsMatch(clause.Line, "\\bback (?:on|in|together|up)\\b(?! (?:monday|tuesday|wednesday|thursday|friday|saturday|sunday|the \\w+$))"))
            return -1;
        var (wFrom, wTo) = clause.Tokens(match.Groups["when"]);
        if (match.Groups["when"].Length == 0 || DueIn(wFrom, wTo) is not { } due)
            return -1;
        var (xFrom, xTo) = clause.Tokens(match.Groups["x"]);
        var thing = match.Groups["x"].Length > 0 ? ThingIn(xFrom, xTo) ?? Nameless(xFrom, xTo) : null;
        if (lastOutside is null && Regex.IsMatch(match.Groups["x"].Value, "(?:^|\\b(?:and|but|so) )(?:it|they|them|that) ?$") && Loaned(clause.To) is { } loan)
            thing = loan;
        thing ??= lastOutside ?? (topic is { } t ? t : new Thing(ThingSort.Outside, "", [], "it"));
        if (thing.Sort == ThingSort.Unknown)
            thing = thing with { Sort = ThingSort.Outside };
        lastOutside = thing;
        Add(new GoesBack(thing with { Others = [] }, due), Range(clause.From, clause.To));
        return clause.To;
    }

    private Thing? lastOutside;

    /// <summary>"one of my roommates borrowed the torque wrench from the lab and it has to be back": what was lent, said before.</summary>
    private Thing? Loaned(int to)
    {
        int from = to;
        while (from > 0 && !tokens[from - 1].IsEnd)
            from--;
        int verb = Range(from, to).LastOrDefault(k => Word(k) is "borrowed" or "lent" or "loaned" or "hired" or "rented", -1);
        int end = verb + 1;
        while (verb >= 0 && end < to && !tokens[end].IsBreak && Word(end) is not ("from" or "off" or "of" or "and" or "but" or "so" or "for"))
            end++;
        return verb < 0 ? null : Nameless(verb + 1, end);
    }

    [GeneratedRegex("^(?:and |so |i |we |'ve |have |,)*(?:borrowed|borrow|borrowing|hired|hire|rented|been lent|got a loan of|have on loan) (?<x>(?:the |a |an |my |his |her )?[a-z -]+?)(?: (?:off|from|of) (?<who>.+?))?$|^.+? (?:lent|loaned) (?:me|us) (?<x>(?:the |a |an |his |her |their |its )?[a-z -]+?)$")]
    private static partial Regex Borrows();

    /// <summary>"borrowed the hoist off Pete, wants it back by Sunday": what is lent and when it must go back.</summary>
    private int Lent(Stretch clause, Stretch rest)
    {
        if (Borrows().Match(clause.Line) is not { Success: true } match || In(clause.From, clause.To).Any(p => p is PlacePhrase or LotPhrase))
            return -1;
        var (xFrom, xTo) = clause.Tokens(match.Groups["x"]);
        if (Nameless(xFrom, xTo) is not { } thing)
            return -1;
        lastOutside = thing with { Sort = ThingSort.Outside };
        int next = clause.To + 1;
        if (next < rest.To && tokens[clause.To].IsBreak && ClauseEnd(next, rest.To) is var end && DueIn(next, end) is { } due && Regex.IsMatch(new Stretch(tokens, next, end).Line, "\\b(?:back|return\\w*|till|until)\\b"))
        {
            Add(new GoesBack(lastOutside, due), Range(clause.From, end).Where(i => !tokens[i].IsBreak));
            return end;
        }

        if (DueIn(clause.From, clause.To) is { } by)
            Add(new GoesBack(lastOutside, by), Range(clause.From, clause.To));
        else
            Ask(DoubtSort.NotTold, $"By when must the {thing.Name} go back?", Range(clause.From, clause.To));
        return clause.To;
    }
}
