using System.Globalization;

namespace Gudgeon.Capture;

/// <summary>Tags, labels and tape by colour, number or words.</summary>
internal sealed partial class PlaceReader
{
    /// <summary>"green tag three", "tag 7", "tagged blue A", "label four".</summary>
    public (string Tag, int To)? TagAt(int at)
    {
        int to = at;
        string colour = "";
        if (Determiners.Contains(Word(to)) && (Colours.Contains(Word(to + 1)) || Word(to + 1) is "tag" or "label"))
            to++;
        if (Colours.Contains(Word(to)) && Word(to + 1) is "tag" or "tags" or "label" or "tape" or "tie" or "flag" or "sticker" or "ziptie" or "cable" or "zip")
            colour = Word(to++);
        if (colour.Length == 0 && Word(to) is "cable" or "zip" && Word(to + 1) == "tie" && Colours.Contains(Word(to + 2)))
        {
            colour = Word(to + 2);
            to++;
        }

        if (Word(to) is not ("tag" or "tags" or "label" or "tagged" or "labelled" or "labeled" or "tape" or "flag" or "sticker" or "tie" or "cable" or "zip" or "ziptie" or "marked") || (colour.Length == 0 && Word(to) is "tape" or "tie" or "cable" or "flag" or "zip" or "ziptie"))
            return null;
        bool verb = Word(to) is "tagged" or "labelled" or "labeled" or "marked";
        bool plainMark = Word(to) == "marked";
        to++;
        if (Word(to) is "tie" or "on" or "it" or "them" or "both" or "as" or "with" or "round" && colour.Length > 0)
            to++;
        while (verb && !(Word(to) == "a" && Word(to + 1) is "and" or "to" && Word(to + 2).Length == 1) && Word(to) is "as" or "it" or "them" or "with" or "a" or "both" or "ends" or "number" or "all")
            to++;
        if (Colours.Contains(Word(to)) && (colour.Length == 0 || colour == Word(to)))
            colour = Word(to++);
        if (Word(to) is "tag" or "label" or "tape" or "tie")
            to++;
        if (Word(to) is "number" or "no")
            to++;
        string id = "";
        if (NumberWords.At(tokens, to) is { IsCount: true } n && !IsLot(n))
        {
            (id, to) = (n.Int.ToString(CultureInfo.InvariantCulture), n.To);
            if (Word(to) is "to" && NumberWords.At(tokens, to + 1) is { IsCount: true } last && last.Int > n.Int)
                (id, to) = ($"{id} to {last.Int.ToString(CultureInfo.InvariantCulture)}", last.To);
        }
        else if (Word(to).Length == 1 && Word(to) is not ("i" or "s") && Word(to + 1) is "and" or "to" && Word(to + 2).Length == 1)
            (id, to) = ($"{Word(to).ToUpperInvariant()} {Word(to + 1)} {Word(to + 2).ToUpperInvariant()}", to + 3);
        else if (Word(to).Length == 1 && Word(to) is not ("a" or "i" or "s"))
            (id, to) = (Word(to).ToUpperInvariant(), to + 1);
        else if (Word(to) == "a" && (to + 1 >= tokens.Count || tokens[to + 1].IsBreak))
            (id, to) = ("A", to + 1);
        else if (verb && colour.Length == 0 && !plainMark && Quoted(to) is { } words)
            (id, to) = ($"“{words.Label}”", words.To);
        if (plainMark && (id.Length == 0 || colour.Length == 0))
            return null;
        string tag = string.Join(" ", new[] { colour, id }.Where(s => s.Length > 0));
        return tag.Length > 0 ? (tag, to) : null;
    }
}
