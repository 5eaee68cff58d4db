using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>"when I say whatsit I mean the thermostat": a word of the owner's own, kept in the book and used from then on.</summary>
internal sealed partial class Listener
{
    [GeneratedRegex("^(?:(?:when|if|where) i say |by |from now on )(?:the |a |an )?(?<w>[a-z' -]+?),? (?:i mean|means|is) (?:the |a |an )?(?<t>[a-z -]+)$|^(?:the |a |an )?(?<w>[a-z' -]+?) means (?:the |a |an )?(?<t>[a-z -]+)$|^i (?:call|name) (?:the |a )(?<t>[a-z -]+?) (?:the|a|an) (?<w>[a-z' -]+)$")]
    private static partial Regex Teaches();

    private int Teach(Stretch clause)
    {
        if (Teaches().Match(clause.Line) is not { Success: true } match)
            return -1;
        var (wFrom, wTo) = clause.Tokens(match.Groups["w"]);
        var (tFrom, tTo) = clause.Tokens(match.Groups["t"]);
        string word = match.Groups["w"].Value.Trim();
        string term = match.Groups["t"].Value.Trim();
        bool mil = word is "mil" or "mils" or "a mil" or "mill" && term is "millimetre" or "millimetres" or "millimeter" or "mm" or "thou" or "thousandth";
        if (mil)
            (word, term) = ("mil", term is "thou" or "thousandth" ? "thou" : "mm");
        else if (index.Book.Longest(tokens, tFrom) is not { Values.Count: > 0 } known || known.To != tTo || index.Book.Longest(tokens, wFrom).Values.Any(v => v.Rank == 0) || wTo - wFrom > 4)
            return -1;
        Add(new Taught(word, term), Range(clause.From, clause.To));
        return clause.To;
    }

    [GeneratedRegex("^(?:(?<old>what (?:i|we) (?:called|thought was|said was|wrote down as|put down as|had down as|have been calling) (?:the |a |an )?(?<a>.+?) (?:is|'s|was|turns out to be|turned out to be) (?:really |actually |in fact )*(?:the |a |an )?(?<b>.+))|(?:the )?(?<a>.+?) (?:is|'s|was) (?:really|actually|in fact) (?:the |a |an )(?<b>.+)|(?:the )?(?<a>.+?) (?:turns out to be|turned out to be|turns out it 's|turned out it was) (?:the |a |an )?(?<b>.+)|turns out (?:that )?(?:the )?(?<a>.+?) (?:is|'s|was) (?:the |a |an )(?<b>.+)|(?:the )?(?<a>.+?) (?:i|we) (?:called|thought was|said was) (?:the |a |an )?(?<c>.+?) (?:is|'s|was) (?:really |actually )?(?:the |a |an )?(?<b>.+))$")]
    private static partial Regex Names();

    private int Naming(Stretch clause)
    {
        var match = Names().Match(clause.Line);
        if (!match.Success)
            return -1;
        var (aFrom, aTo) = clause.Tokens(match.Groups["c"].Success ? match.Groups["c"] : match.Groups["a"]);
        var (bFrom, bTo) = clause.Tokens(match.Groups["b"]);
        if (ThingIn(aFrom, aTo, true) is not { } was || ThingIn(bFrom, bTo, true) is not { } now || (now.Sort == ThingSort.Unknown && was.Sort != ThingSort.Unknown && !match.Groups["old"].Success) || Lexicon.Faults.Longest(tokens, bFrom).Values.Count > 0)
            return -1;
        About(now, Range(clause.From, clause.To), n => new Named(was with { Others = [] }, n));
        return clause.To;
    }
}
