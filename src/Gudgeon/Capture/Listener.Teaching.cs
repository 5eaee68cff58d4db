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
}
