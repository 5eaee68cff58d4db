using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>Whether parts go on or come off, where the verb does not say so.</summary>
internal sealed partial class Listener
{
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
