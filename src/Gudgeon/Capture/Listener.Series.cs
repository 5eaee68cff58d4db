using System.Globalization;
using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>
/// Readings told in a row: what is measured is said once, at the head of the row or with the reading before it; the rest is
/// which one and how much, in either order.
/// </summary>
internal sealed partial class Listener
{
    /// <summary>What a row of readings is of.</summary>
    /// <param name="Before">The reading before, which lends its unit.</param>
    /// <param name="Head">The words that head the row.</param>
    private sealed record Row(Characteristic What, Thing? Of, Amount? Before, IReadOnlyList<int> Head);

    /// <summary>One of a row: number, side or gas, and where its words end.</summary>
    private readonly record struct Pick(IReadOnlyList<int> Numbers, string Side, int To);

    private static readonly Characteristic Lash = new("valve clearance", "valve-in", Quantity.Length, 0.01m, 1.5m) { Series = true };

    private Row? row;

    /// <summary>"two is three and a half thou", "number two the same", "mains, number one two point three": readings by which one and figure.</summary>
    private int Series(Stretch clause)
    {
        if (Heading(clause) is { } head)
        {
            row = head;
            return clause.To;
        }

        var of = row;
        row = null;
        if (of is null && Inline(clause) is { } own)
            of = own;
        of ??= Carried(clause);
        if (of is null)
            return -1;
        if (Same(clause, of) is var same and >= 0)
            return same;
        var (pairs, end) = Pairs(clause, of);
        if (pairs.Count == 0)
            return Late(clause, of);
        foreach (var (thing, values, from, to) in pairs)
            Add(new Measured(of.What.Name, thing, values, "", Said(from, to)), Range(from, to).Concat(of.Head).Where(k => !tokens[k].IsBreak));
        if (end < clause.To && !In(end, clause.To).Any(p => p is FaultPhrase or ThingPhrase or LotPhrase or ActPhrase))
        {
            facts[^1] = facts[^1] with { Spans = [.. facts[^1].Spans, .. Spans(Range(end, clause.To).Where(k => !tokens[k].IsBreak))] };
            end = clause.To;
        }

        row = new Row(of.What, of.Of, pairs[^1].Values[^1], []);
        topic = pairs[^1].Thing;
        (seen, seenAt) = (topic, clause.From);
        return end;
    }

    /// <summary>"mains,", "compression before the strip,": what is measured, and the row begins after the pause.</summary>
    private Row? Heading(Stretch clause)
    {
        int next = clause.To + 1;
        if (next >= tokens.Count || tokens[clause.To].Sort != TokenSort.Comma || In(clause.From, clause.To).Any(p => p is MeasurePhrase or AmountPhrase or LotPhrase or PlacePhrase or NumPhrase { Num.Sort: NumSort.Decimal }))
            return null;
        var words = In(clause.From, clause.To).ToList();
        int before = Range(clause.From, clause.To).FirstOrDefault(k => Word(k) == "before", clause.To);
        if (words.Any(p => p.From < before && p is ActPhrase or FaultPhrase))
            return null;
        Characteristic? what = null;
        for (int k = clause.From; k < before && what is null; k++)
            what = Characteristic.Book.Longest(tokens, k) is { Values: [var read, ..] } ? read : null;
        var named = words.OfType<ThingPhrase>().FirstOrDefault()?.Thing;
        if (named?.Kind is "valve-in" or "valve-ex" or "follower" or "shim" or "rocker" && named.Detail.Length == 0 && Gas(Skipped(next)) is not null)
            what = Lash;
        if (what is null)
            return null;
        var row = new Row(what, what.Name == Lash.Name ? named : null, null, [.. Range(clause.From, clause.To)]);
        return Pairs(new Stretch(tokens, next, ClauseEnd(next, tokens.Count)), row).Pairs.Count > 0 ? row : null;
    }

    /// <summary>"inlet gap is six thou and the exhaust twelve": both gases with their figures; "front main journal two point five": which one and how much, in one breath.</summary>
    private Row? Inline(Stretch clause)
    {
        var gases = Range(clause.From, clause.To).Where(k => Gas(k) is not null && Word(k) is not ("in" or "ex")).Select(k => Gas(k)!.Value.Side).Distinct().Count();
        int named = clause.From - 1;
        while (named > 0 && !tokens[named - 1].IsBreak)
            named--;
        // "for cylinder one, inlet gap is ..."
        int said = Range(named, clause.To).FirstOrDefault(k => Word(k) is "cylinder" or "number" && NumberWords.At(tokens, k + 1) is { IsCount: true }, -1);
        var own = said < 0 || index.Parts("valve-in").Count == 0 ? null : Select(new Thing(ThingSort.Part, "valve-in", [.. index.Parts("valve-in").Select(p => p.Id)], "inlet valves"), NumberWords.At(tokens, said + 1)!.Value.Int, "");
        if (gases == 2 && !In(clause.From, clause.To).Any(p => p is ActPhrase or FaultPhrase or LotPhrase or PlacePhrase) && Pairs(clause, new Row(Lash, own, null, [])).Pairs is { Count: 2 })
            return new Row(Lash, own, null, []);
        if (In(clause.From, clause.To).Any(p => p is MeasurePhrase))
            return null;
        for (int k = clause.From; k < Math.Min(clause.To, clause.From + 4); k++)
        {
            if (Characteristic.Book.Longest(tokens, k) is { Values: [{ Quantity: Quantity.Length, Kind: "crank" } what, ..] } && Word(clause.From) is "front" or "rear" or "centre" or "center" or "middle")
                return new Row(what, null, null, []);
        }

        return null;
    }

    /// <summary>Goes on from the last reading, when nothing else was spoken of since.</summary>
    private Row? Carried(Stretch clause)
    {
        if (facts.Count > 0 ? facts[^1] is not Measured : context.Last.LastOrDefault() is not Measured || phrases.Any(p => p.To <= clause.From && p is not (WordPhrase or BreakPhrase)))
            return null;
        var last = (Measured)(facts.Count > 0 ? facts[^1] : context.Last[^1]);
        if (last.Thing is not { } thing || last.Values.Count == 0)
            return null;
        var what = Characteristic.Book.Longest(Tokeniser.Cut(last.What), 0) is { Values: [var read, ..] } ? read with { Name = last.What } : new Characteristic(last.What, "", Quantity.Length, 0, 300);
        return new Row(what, thing, last.Values[^1], []);
    }

    private int Skipped(int at)
    {
        while (Lexicon.RowLinks.Contains(Word(at)) && Gas(at) is null)
            at++;
        return at;
    }

    private Pick? Gas(int at) => Word(at) switch
    {
        "inlet" or "inlets" or "intake" or "intakes" => new Pick([], "inlet", at + 1),
        "exhaust" or "exhausts" or "ex" => new Pick([], "exhaust", at + 1),
        "in" when at + 1 >= tokens.Count || tokens[at + 1].IsBreak || Word(at + 1) is "and" => new Pick([], "inlet", at + 1),
        _ => null,
    };

    /// <summary>"inlet on number one": the cylinder behind the gas.</summary>
    private int OnCylinder(int at) => Word(at) is "on" or "of" or "for" && Word(at + 1) is "number" or "cylinder" && NumberWords.At(tokens, at + 2) is { IsCount: true } n ? n.To : at;

    /// <summary>Which one of the row: "number two", "the third one", "three and four", "left", "inlet".</summary>
    private Pick? Which(int at, Row of)
    {
        if (Gas(at) is { } gas && of.What.Name == Lash.Name)
            return gas;
        if (Word(at) is "left" or "right" or "front" or "rear" or "upper" or "lower" && of is { Of: not null } or { What.Kind: "crank" })
        {
            int end = at + 1;
            while (Word(end) is "one" or "hand" or "side" or "end" || Lexicon.RowLinks.Contains(Word(end)) || of.What.Kind == "crank" && Word(end) is "main" or "journal")
                end++;
            return new Pick([], Word(at), end);
        }

        bool named = Word(at) is "number" or "numbers" or "cylinder" or "cylinders" or "main" or "bore" or "pot";
        if (named && Word(at) is "main" or "bore" && !of.What.Name.Contains(Word(at), StringComparison.Ordinal))
            return null;
        int to = named ? at + 1 : at;
        var numbers = new List<int>();
        while (NumberWords.At(tokens, to) is { } n && (n.IsCount || n.Sort == NumSort.Ordinal) && n.Int is > 0 and <= 28)
        {
            numbers.Add(n.Int);
            to = n.To;
            if (n.Sort == NumSort.Ordinal && Word(to) is "one" or "main" or "journal" && FigureOf(to, of) is not { } direct)
                to++;
            else if (n.Sort == NumSort.Ordinal && Word(to) is "one" && NumberWords.At(tokens, to + 1) is { Sort: NumSort.Decimal or NumSort.Whole })
                to++;
            if (Word(to) != "and" || NumberWords.At(tokens, to + 1) is not { IsCount: true, Value: <= 28 } next || next.Int <= n.Int || Units.At(tokens, next.To) is not null)
                break;
            to++;
        }

        if (numbers.Count == 0)
            return null;
        if (!named && Word(to) is "main" or "journal" or "cylinder" or "bore")
            to++;
        return new Pick(numbers, "", to);
    }

    /// <summary>A figure of the row, in the unit said, lent by the reading before, or settled by what is measured.</summary>
    private (Amount Amount, int To)? FigureOf(int at, Row of)
    {
        bool rough = Word(at) is "about" or "around" or "roughly" or "maybe";
        if (rough)
            at++;
        if (of.Before is { } before && of.What.Quantity != Quantity.Pressure)
            return Figure(at, before) is { } more ? (more.Amount with { Rough = rough }, more.To) : null;
        if (Figures.At(tokens, at, of.What.Quantity == Quantity.Pressure, null) is not { } read)
            return null;
        var (value, to, _) = read;
        if (NumberWords.AndPart(tokens, to) is { } and)
            (value, to) = (value + and.Value, and.To);
        var unit = Units.At(tokens, to);
        to = unit?.To ?? to;
        if (unit is null && of.Before is { } lent)
            return (new Amount(value, lent.Unit, Said(at, to)) { UnitTaken = true, Rough = rough }, to);
        var ways = UnitSettler.Settle(value, unit?.Unit ?? "", Said(at, to), of.What, context, inchBook);
        decimal size = ways[0].Unit == "in" ? ways[0].Value * 25.4m : ways[0].Value;
        return of.What.Quantity == Quantity.Length && (size < of.What.Least || size > of.What.Most) ? null : (ways[0] with { Rough = rough }, to);
    }

    /// <summary>Each one of the row with its figures, and where the row stops.</summary>
    private (List<(Thing Thing, IReadOnlyList<Amount> Values, int From, int To)> Pairs, int To) Pairs(Stretch clause, Row of)
    {
        var pairs = new List<(Thing, IReadOnlyList<Amount>, int, int)>();
        int at = clause.From;
        while (at < clause.To)
        {
            int start = at;
            at = Skipped(at);
            if (Which(at, of) is { } pick && pick.To < clause.To)
            {
                int figureAt = Skipped(Gas(at) is null ? pick.To : OnCylinder(pick.To));
                bool linked = figureAt > pick.To || pick.Side.Length > 0 || pick.To > at + 1 || tokens[figureAt - 1].IsBreak;
                if (FigureOf(figureAt, of) is { } figure && figure.To <= clause.To && (linked || Near(figure.Amount, of)))
                {
                    var values = new List<Amount> { figure.Amount };
                    at = figure.To;
                    var lent = of with { Before = figure.Amount };
                    while (Word(at) == "and" && Which(at + 1, of) is not { Side.Length: > 0 } && FigureOf(at + 1, lent) is { } second && second.To <= clause.To && Near(second.Amount, lent) && !(Which(at + 1, of) is { } other && FigureOf(Skipped(other.To), lent) is not null))
                    {
                        values.Add(second.Amount);
                        at = second.To;
                    }

                    if (!Told(pick, of, values, start, at, pairs))
                        break;
                    of = of with { Before = figure.Amount };
                    continue;
                }
            }

            // "four thou in and six thou ex": the figure first.
            if (FigureOf(at, of) is { } first && Which(Skipped(first.To), of) is { Side.Length: > 0 } after && after.To <= clause.To && after.Side is "inlet" or "exhaust")
            {
                if (!Told(after, of, [first.Amount], start, after.To, pairs))
                    break;
                of = of with { Before = first.Amount };
                at = after.To;
                continue;
            }

            at = start;
            break;
        }

        return (pairs, at);
    }

    /// <summary>A bare number picks one of the row only when the figure after it is like the ones before.</summary>
    private static bool Near(Amount amount, Row of) => of.Before is { } before && before.Unit == amount.Unit && amount.Value > before.Value / 2 && amount.Value < before.Value * 2;

    private bool Told(Pick pick, Row of, IReadOnlyList<Amount> values, int from, int to, List<(Thing, IReadOnlyList<Amount>, int, int)> pairs)
    {
        var things = OneOf(pick, of).ToList();
        foreach (var thing in things)
            pairs.Add((thing, values, from, to));
        return things.Count > 0;
    }

    private IEnumerable<Thing> OneOf(Pick pick, Row of)
    {
        if (of.What.Name == Lash.Name && pick.Side is "inlet" or "exhaust")
        {
            string kind = pick.Side == "inlet" ? "valve-in" : "valve-ex";
            int? cylinder = of.Of is { Ids: [var first, ..] } && index.Engine.Parts.TryGetValue(first, out var part) && of.Of.Ids.Select(i => index.Engine.Parts.TryGetValue(i, out var p) ? p.Cylinder : null).Distinct().Count() == 1 ? part.Cylinder : null;
            cylinder ??= of.Of is null ? resolver.Cylinder : null;
            var row = index.Parts(kind).Where(p => cylinder is not { } c || (p.Cylinder ?? p.Index[0]) == c).ToList();
            if (row.Count > 0)
                yield return new Thing(ThingSort.Part, kind, [.. row.Select(p => p.Id)], row.Count == 1 ? row[0].Name : index.NameOf(kind) + "s");
            yield break;
        }

        if (pick.Side is "front" or "rear" && of.What.Kind == "crank")
        {
            int last = index.Parts("main-cap").Count;
            if (measures.Of(of.What, [pick.Side == "front" ? 1 : last]) is { } end)
                yield return end;
        }
        else if (pick.Numbers.Count == 0)
        {
            if (of.Of is { } first && Another(first, null, pick.Side) is { } other)
                yield return other;
        }
        else
        {
            foreach (int n in pick.Numbers)
            {
                var one = of.Of is { } first ? Another(first, n, "") : null;
                if (one is null && of.Of is null or { Kind: "" })
                    one = measures.Of(of.What, [n]);
                if (one is not null)
                    yield return one;
            }
        }
    }

    /// <summary>"number two the same", "third the same as the second".</summary>
    private int Same(Stretch clause, Row of)
    {
        int at = Skipped(clause.From);
        if (Which(at, of) is not { } pick)
            return -1;
        at = pick.To;
        while (Lexicon.RowLinks.Contains(Word(at)) || Word(at) is "very" or "exactly" or "much")
            at++;
        if (Word(at) == "identical" && clause.To + 1 < tokens.Count && FigureOf(clause.To + 1, of) is not null)
            return -1;
        if (Word(at) is not ("same" or "ditto" or "likewise" or "identical" or "similar"))
            return -1;
        var told = facts.Concat(context.Last).OfType<Measured>().Where(m => m.What == of.What.Name).ToList();
        var source = told.Count > 0 ? facts.OfType<Measured>().LastOrDefault(m => m.What == of.What.Name) ?? told[^1] : null;
        if (Word(at + 1) is "as" or "like" && Which(Word(at + 2) is "the" ? at + 3 : at + 2, of) is { } like && OneOf(like, of).FirstOrDefault() is { } model)
            source = told.LastOrDefault(m => m.Thing is { } t && t.Code == model.Code) ?? source;
        if (source is null)
            return -1;
        var things = OneOf(pick, of).ToList();
        foreach (var thing in things)
            Add(source with { Thing = thing, Words = Said(clause.From, clause.To) }, Range(clause.From, clause.To).Where(k => !tokens[k].IsBreak));
        return things.Count > 0 ? clause.To : -1;
    }

    /// <summary>"number two is the worst of the four, two point five oh seven": what it is like first, then the figure.</summary>
    private int Late(Stretch clause, Row of)
    {
        int next = clause.To + 1;
        if (of.Before is null || Which(Skipped(clause.From), of) is not { } pick || In(clause.From, clause.To).Any(p => p is ThingPhrase or ActPhrase or LotPhrase or PlacePhrase or MeasurePhrase or FaultPhrase) || next >= tokens.Count || tokens[clause.To].Sort != TokenSort.Comma)
            return -1;
        int stop = ClauseEnd(next, tokens.Count);
        if (FigureOf(next, of) is not { } late || late.Amount.Value == decimal.Truncate(late.Amount.Value) || late.To > stop || !Near(late.Amount, of))
            return -1;
        var things = OneOf(pick, of).ToList();
        foreach (var thing in things)
            Add(new Measured(of.What.Name, thing, [late.Amount], "", Said(clause.From, stop)), Range(clause.From, stop).Where(k => !tokens[k].IsBreak));
        return things.Count > 0 ? stop : -1;
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
