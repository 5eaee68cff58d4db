using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>On the way back together: a part is told on by where it sits, not by a verb of fitting.</summary>
internal sealed partial class Listener
{
    [GeneratedRegex("^(?:and |so |then |now |next |,)*(?<x>.+?) (?:(?:is|'s|are|'re|has|have|went|gone|goes|came|laid|lies|clicked|lowered|set|squeezed|nipped|dropped|slid|slipped|sat|sits|sitting|seated|pressed|pushed|tapped|clicked|eased|popped|drawn|screwed|wound|threaded|fell|now|all|both|straight|right|nicely|finally|already|lovely|sweetly|safely) )+(?:in|inside|down|home|on|over|into place|in place|onto|into|on top|underneath)(?: of)?(?: (?:it|them|that))?(?: (?:the|its|their|it|his) (?:dowels|studs|stud|block|head|manifold|case|tubes|grooves|seats|guides|journals|pins|crank|nose|rod|rods|barrel|bore|bores|taper|key|spigot|shaft|flange|gearbox|bellhousing))?(?: (?:sweet as a nut|lovely|nicely|fine|now|easy|again|at last|with (?:a|the|much|plenty|lots|some|good|new|fresh)(?: of)?(?: [a-z]+)+|canny|proper|a treat|like butter|first time|by hand))*$")]
    private static partial Regex Seats();

    /// <summary>"left barrel went down canny", "head is sitting on the dowels now".</summary>
    private int Seated(Stretch clause)
    {
        if (!Refitting() || Seats().Match(clause.Line) is not { Success: true } match)
            return -1;
        var (xFrom, xTo) = clause.Tokens(match.Groups["x"]);
        if (In(clause.From, clause.To).Any(p => p is PlacePhrase { Place.Sort: PlaceSort.Container } or LotPhrase or FaultPhrase { Damage: true } or MeasurePhrase or AmountPhrase or ActPhrase { Act: not (Act.On or Act.Put) }) || Regex.IsMatch(match.Groups["x"].Value, "\\b(?:not|never|no|with|if|when|until|till)\\b"))
            return -1;
        var fitted = ThingsIn(xFrom, xTo).Where(t => t is { Sort: ThingSort.Part, Ids.Count: > 0, Detail.Length: 0 }).ToList();
        if (fitted.Count == 0)
            return -1;
        Flush();
        Unsaid();
        foreach (var thing in fitted)
            Apply(Act.On, thing, Range(clause.From, clause.To).Where(k => !tokens[k].IsBreak));
        (topic, seen, seenAt) = (CapOf(fitted[^1]), fitted[^1], clause.From);
        return clause.To;
    }

    [GeneratedRegex("^(?:and |so |then |now |next |right |,)*(?<x>.+?) (?:(?:is|'s|are|'re|came|comes|has come|have come) )(?:now |all |both |finally |well )*(?:up|down|away|free|clear)(?: (?:at last|now|then|easy|lovely|no bother))?$")]
    private static partial Regex Lifts();

    /// <summary>"head's up", "sump's down": off, while things are coming apart.</summary>
    private int Lifted(Stretch clause)
    {
        if (Refitting() || Lifts().Match(clause.Line) is not { Success: true } match || Regex.IsMatch(match.Groups["x"].Value, "\\b(?:not|never|no|wont|cant|nearly|oil|coolant|pressure|level)\\b"))
            return -1;
        var (xFrom, xTo) = clause.Tokens(match.Groups["x"]);
        if (ThingsIn(xFrom, xTo) is not [{ Sort: ThingSort.Part, Ids.Count: > 0, Others.Count: 0, Detail.Length: 0 } thing] || thing.Ids.Any(context.Off.Contains) || In(clause.From, clause.To).Any(p => p is LotPhrase or FaultPhrase or MeasurePhrase or PlacePhrase))
            return -1;
        Flush();
        Unsaid();
        Apply(Act.Off, thing, Range(clause.From, clause.To).Where(k => !tokens[k].IsBreak));
        (topic, seen, seenAt) = (thing, thing, clause.From);
        return clause.To;
    }

    /// <summary>Parts are going back on: told so in this note or the one before.</summary>
    private bool Refitting() => facts.LastOrDefault(f => f is On or Tightened or Off or Undone or Parted) is { } deed ? deed is On or Tightened : draft?.Fitting ?? context.Fitting;
}
