using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>The thing named first and what somebody will do with it after: "the right head we'll do Monday", "oil cooler I do not mount today".</summary>
internal sealed partial class Listener
{
    [GeneratedRegex("^(?:and |but |so |then |now |also |,)*(?<x>.+?) ,? ?(?:i|we|he|she|they) (?:(?<not>do not|dont|am not|'m not|are not|'re not|is not|will not|wont|shall not)|will|'ll|shall|must|need to|have to|has to|still have to|am going to|'m going to|gonna|would like to|want to|intend to) (?:also |just |then |only |all |first |still )*(?<v>[a-z]+)\\b(?<r>.*)$")]
    private static partial Regex Intends();

    private static readonly HashSet<string> Wanting = ["buy", "order", "leave", "keep", "remember", "know", "see", "find", "be", "have", "admit", "say", "think", "wait"];

    /// <summary>What is not done yet of putting back is still to do; what is not taken off stays on, which is told elsewhere.</summary>
    private static readonly HashSet<string> Building = ["mount", "fit", "put", "install", "connect", "connecting", "mounting", "fitting", "putting", "installing", "refit", "refitting", "tighten", "torque", "do", "doing", "close", "bolt", "assemble", "set", "join", "seal"];

    /// <summary>Only a thing, by name or as one of those spoken of, stands before the one who acts.</summary>
    private bool ThingFirst(int from, int at)
    {
        if (Word(at) is not ("i" or "we" or "he" or "she" or "they") || Intends().Match(new Stretch(tokens, from, Math.Min(tokens.Count, at + 8)).Line) is not { Success: true } match || Wanting.Contains(match.Groups["v"].Value))
            return false;
        var before = In(from, at).ToList();
        return before.Count > 0 && before.All(p => p is ThingPhrase or NumPhrase or WordPhrase { Filler: true } || (p is WordPhrase word && Ones.Contains(word.Word))) && before.Any(p => p is ThingPhrase { Thing.Sort: ThingSort.Part or ThingSort.Line } or NumPhrase || (p is WordPhrase word && Ones.Contains(word.Word)));
    }

    private static readonly HashSet<string> Ones = ["number", "left", "right", "other", "others", "rest", "front", "rear", "inlet", "exhaust", "one", "ones", "upper", "lower", "middle"];

    private int IntendedOf(Stretch clause)
    {
        if (Intends().Match(clause.Line) is not { Success: true } match || Wanting.Contains(match.Groups["v"].Value) || (match.Groups["not"].Success && !Building.Contains(match.Groups["v"].Value)) || In(clause.From, clause.To).Any(p => p is MeasurePhrase or AmountPhrase or FaultPhrase))
            return -1;
        var (from, to) = clause.Tokens(match.Groups["x"]);
        if (!ThingFirst(from, to))
            return -1;
        var thing = ThingIn(from, to) ?? (Kin() is { } kin ? Alike(kin, new Stretch(tokens, from, to)) : null);
        if (thing is not { Ids.Count: > 0, Sort: ThingSort.Part or ThingSort.Line, Others.Count: 0 })
            return -1;
        Flush();
        Add(new Planned(Whole(thing), Said(clause.From, clause.To)), Range(clause.From, clause.To).Where(k => !tokens[k].IsBreak));
        Speak(thing, clause.From);
        return clause.To;
    }
}
