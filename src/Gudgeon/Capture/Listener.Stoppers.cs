using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>Tags tied on: the thing may come last.</summary>
internal sealed partial class Listener
{
    [GeneratedRegex("^(?:and |then |so |i |'ve |we |also |just |,)*(?:tagged|labelled|labeled|label|numbered|tied|put|stuck|hung|taped) (?<x>.+)$")]
    private static partial Regex Tags();

    /// <summary>"put a blue tag on the heater hose", "labelled the injector plugs one to four": the tag and its line in any order.</summary>
    private int TagOn(Stretch clause)
    {
        if (Tags().Match(clause.Line) is not { Success: true } match)
            return -1;
        var (xFrom, xTo) = clause.Tokens(match.Groups["x"]);
        string verb = clause.Line[..match.Groups["x"].Index].Trim().Split(' ')[^1];
        bool names = verb is "tagged" or "labelled" or "labeled" or "label";
        for (int i = clause.From; i < xTo; i++)
        {
            if (places.TagAt(i) is not { } tag || tag.To > xTo || !names && Word(i) is "put" or "tied")
                continue;
            if (things.At(AfterPreposition(tag.To)) is { } after && after.To <= xTo && AfterPreposition(tag.To) > tag.To)
                return Tie(after.Thing, tag.Tag, clause.From, clause.To);
            if (!names)
                return -1;
            break;
        }

        if (!names || things.At(xFrom) is not { } named)
            return -1;
        int at = named.To;
        string id = "";
        if (named.Thing.Ids.Count > 1 && NumberWords.At(tokens, at - 1) is { } last && Numbered(xFrom, named.To) is { } span)
            id = span;
        while (Word(at) is "as" or "with" or "a" or "number" or "the" or "in" or "to")
            at++;
        if (id.Length == 0)
            id = Label(at, xTo);
        return id.Length == 0 ? -1 : Tie(named.Thing, id, clause.From, clause.To);
    }

    private int AfterPreposition(int at) => Word(at) is "on" or "to" or "round" or "onto" or "around" ? at + 1 : at;

    private int Tie(Thing thing, string tag, int from, int to)
    {
        Unsaid();
        About(thing, Range(from, to).Where(i => !tokens[i].IsBreak), t => new Tagged(t, tag));
        (topic, seen, seenAt) = (thing, thing, from);
        return to;
    }

    /// <summary>"one to four" within a thing's own words.</summary>
    private string? Numbered(int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            if (NumberWords.At(tokens, i) is { IsCount: true } first && Word(first.To) is "to" && NumberWords.At(tokens, first.To + 1) is { IsCount: true } last)
                return $"{first.Int} to {last.Int}";
        }

        return null;
    }

    /// <summary>A letter, a number, a colour, or letters joined by "and".</summary>
    private string Label(int from, int to)
    {
        var words = new List<string>();
        for (int i = from; i < to && words.Count < 4; i++)
        {
            if (NumberWords.At(tokens, i) is { IsCount: true } n)
            {
                words.Add(n.Int.ToString(System.Globalization.CultureInfo.InvariantCulture));
                i = n.To - 1;
            }
            else if (Word(i).Length == 1)
                words.Add(Word(i).ToUpperInvariant());
            else if (words.Count > 0 && Word(i) is "and" or "to")
                words.Add(Word(i));
            else if (PlaceReader.IsColour(Word(i)))
                words.Add(Word(i));
            else
                break;
        }

        return string.Join(" ", words).Trim();
    }

    private int CapWith(List<Phrase> clause, int i, int end)
    {
        int with = Enumerable.Range(clause[i].To, Math.Max(0, end - clause[i].To)).FirstOrDefault(k => Word(k) is "with", -1);
        if (with < 0 || facts.Count == 0)
            return i;
        int stop = with + 1;
        while (stop < end && !tokens[stop].IsBreak && Word(stop) is not ("and" or "so"))
            stop++;
        if (facts[^1] is Capped capped)
            facts[^1] = capped with { With = Said(with + 1, stop), Spans = [.. capped.Spans, .. Spans(Range(with, stop))] };
        while (i + 1 < clause.Count && clause[i + 1].To <= stop)
            i++;
        return i;
    }
}
