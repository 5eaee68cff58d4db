using System.Globalization;
using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>Readings told in a row: the first names what is measured, the rest only which one and the figure.</summary>
internal sealed partial class Listener
{
    private static readonly HashSet<string> BeforeFigure = ["'s", "is", "was", "are", "were", "at", "reads", "read", "measures", "measured", "comes", "came", "out", "only", "just", "a", "mere", "about", "around", "exactly", "nearer", "more", "like", "gives", "gave", "has", "got", "shows", "showed", "around", "bang", "on"];

    /// <summary>"two is three and a half thou", "number two the same", "the right one a mere two": goes on from the reading before.</summary>
    private int Series(Stretch clause)
    {
        if (facts.Count > 0 ? facts[^1] is not Measured : context.Last.LastOrDefault() is not Measured || phrases.Any(p => p.To <= clause.From && p is not (WordPhrase or BreakPhrase)))
            return -1;
        var last = (Measured)(facts.Count > 0 ? facts[^1] : context.Last[^1]);
        if (last.Thing is not { } thing || last.Values.Count == 0)
            return -1;
        int at = clause.From;
        while (Word(at) is "and" or "then" or "number" or "cylinder" or "the" or "but" or "while" or "on" || (Word(at) is "main" or "mains" or "journal" or "bore" && last.What.Contains(tokens[at].Stem, StringComparison.Ordinal)))
            at++;
        string side = "";
        int? number = null;
        if (Word(at) is "left" or "right" or "inlet" or "exhaust" or "front" or "rear" or "upper" or "lower")
            side = Word(at++);
        else if (NumberWords.At(tokens, at) is { } n && (n.IsCount || n.Sort == NumSort.Ordinal) && n.Int is > 0 and <= 28)
            (number, at) = (n.Int, n.To);
        else
            return -1;
        var also = new List<int>();
        while (number is not null && Word(at) == "and" && NumberWords.At(tokens, at + 1) is { IsCount: true, Value: > 0 and <= 28 } next && (Word(next.To) is "i" or "are" or "both" or "were" or "is" or "the"))
        {
            also.Add(next.Int);
            at = next.To;
        }

        if (Word(at) is "one" or "main" or "journal" or "cylinder" or "bore")
            at++;
        int gap = at;
        while (BeforeFigure.Contains(Word(at)) && Word(at) is not "a" || Word(at) == "a" && Word(at + 1) == "mere")
            at++;
        if (Another(thing, number, side) is not { } other)
            return -1;
        if (Word(at) is "the" && Word(at + 1) is "same" or "identical" || Word(at) is "same" or "ditto" or "likewise" or "identical")
        {
            var source = last;
            int mark = Word(at) == "the" ? at + 2 : at + 1;
            if (Word(mark) is "as" && NumberWords.At(tokens, Word(mark + 1) is "the" or "number" ? mark + 2 : mark + 1) is { } like && (like.IsCount || like.Sort == NumSort.Ordinal) && Another(thing, like.Int, "") is { } model)
                source = facts.Concat(context.Last).OfType<Measured>().LastOrDefault(m => m.What == last.What && m.Thing is { } t && t.Code == model.Code) ?? last;
            Add(source with { Thing = other, Words = Said(clause.From, clause.To) }, Range(clause.From, clause.To).Where(k => !tokens[k].IsBreak));
            return clause.To;
        }

        if (at == gap && number is not null && !(tokens.ElementAtOrDefault(at).Sort == TokenSort.Comma) && Word(at - 1) is not ("one" or "main" or "journal" or "cylinder" or "bore") && Word(clause.From) is not ("number" or "cylinder" or "main"))
            return -1;
        int stop = clause.To;
        if (Figure(at, last.Values[^1]) is not { } figure)
        {
            // "number two is the worst of the four, two point five oh seven": what it is like first, then the figure.
            if (In(clause.From, clause.To).Any(p => p is ThingPhrase or ActPhrase or LotPhrase or PlacePhrase or MeasurePhrase) || clause.To >= tokens.Count || tokens[clause.To].Sort != TokenSort.Comma)
                return -1;
            stop = ClauseEnd(clause.To + 1, tokens.Count);
            if (Figure(clause.To + 1, last.Values[^1]) is not { } late || late.Amount.Value == decimal.Truncate(late.Amount.Value) || late.To > stop)
                return -1;
            figure = late;
        }

        if (figure.To > stop)
            return -1;
        Add(last with { Thing = other, Values = [figure.Amount], At = "", Words = Said(clause.From, figure.To) }, Range(clause.From, figure.To).Where(k => !tokens[k].IsBreak));
        foreach (int more in also)
        {
            if (Another(thing, more, "") is { } same)
                Add(last with { Thing = same, Values = [figure.Amount], At = "", Words = Said(clause.From, figure.To) }, Range(clause.From, figure.To).Where(k => !tokens[k].IsBreak));
        }

        return figure.To < stop && In(figure.To, stop).Any(p => p is FaultPhrase or ThingPhrase) ? figure.To : stop;
    }

    /// <summary>The same place of another journal, bore or part of the row.</summary>
    private Thing? Another(Thing thing, int? number, string side)
    {
        if (number is { } n && Regex.Match(thing.Where, "^(?<k>main|big end|bore|crankpin)(?: \\d+)?$") is { Success: true } place)
        {
            string where = $"{place.Groups["k"].Value} {n.ToString(CultureInfo.InvariantCulture)}";
            return thing with { Where = where, Others = [], Name = thing.Name.Contains(thing.Where, StringComparison.Ordinal) ? thing.Name.Replace(thing.Where, where, StringComparison.Ordinal) : thing.Name };
        }

        if (thing.Sort != ThingSort.Part || thing.Kind.Length == 0)
            return null;
        if (side is "inlet" or "exhaust")
            return thing.Kind is "valve-in" or "valve-ex" && index.Parts(side == "inlet" ? "valve-in" : "valve-ex") is { Count: > 0 } && thing.Ids is [var id] && id.IndexOf('.', StringComparison.Ordinal) is var dot && index.Engine.Parts.TryGetValue((side == "inlet" ? "valve-in" : "valve-ex") + id[dot..], out var valve)
                ? new Thing(ThingSort.Part, valve.Kind, [valve.Id], valve.Name)
                : null;
        var found = side.Length > 0 ? Partner(thing, side) : Select(thing with { Others = [], Ids = thing.Ids.Count > 1 ? [thing.Ids[0]] : thing.Ids }, number, "");
        return found is { Ids.Count: > 0 } && (side.Length > 0 || found.Ids.Count < index.Parts(thing.Kind).Count) ? found with { Others = [] } : null;
    }

    /// <summary>A figure in the unit that was said, else in that of the reading before.</summary>
    private (Amount Amount, int To)? Figure(int at, Amount before)
    {
        if (Figures.At(tokens, at, false, before.Value) is not { } read)
            return null;
        var (value, to, _) = read;
        if (NumberWords.AndPart(tokens, to) is { } and)
            (value, to) = (value + and.Value, and.To);
        string unit = Units.At(tokens, to)?.Unit ?? "";
        to = Units.At(tokens, to)?.To ?? to;
        if (unit.Length == 0 && before.Unit is "in" or "mm" && before.Value is > 0 and < 1 && value >= 1 && value == decimal.Truncate(value * 4) / 4)
            unit = before.Unit == "in" ? "thou" : "hundredth mm";
        (value, string of) = unit switch
        {
            "thou" => (value / 1000, "in"),
            "tenth thou" => (value / 10000, "in"),
            "hundredth mm" => (value / 100, "mm"),
            "tenth mm" => (value / 10, "mm"),
            "" => (value, before.Unit),
            _ => (value, unit),
        };
        return (new Amount(value, of, Said(at, to)) { UnitTaken = unit.Length == 0 }, to);
    }
}
