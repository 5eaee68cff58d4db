namespace Gudgeon.Capture;

/// <summary>Rows of readings, each with the position it was taken at: "mains, one is 60.73, two and three are 60.72".</summary>
internal sealed partial class MeasureReader
{
    private static readonly HashSet<string> RowLinks = ["is", "'s", "are", "was", "were", "at", "reads", "read", "measures", "measured", "mikes", "miked", "comes", "came", "out", "makes", "gives", "gave", "shows", "about", "on", "in", "to", "got", "has", "a", "just", "only", "up", "both", "each", "also", "again", "too", "stands", "sits"];

    /// <summary>One figure of a row: where it was taken, which tokens tell it, and what it came to.</summary>
    private sealed record RowItem(IReadOnlyList<int> Positions, int From, int To, decimal Value, string Unit, int FigureFrom, int FigureTo, bool Copied = false, bool Linked = false);

    /// <summary>Readings of a row that stand further on, by the token they start at.</summary>
    private readonly Dictionary<int, MeasureRead> ahead = [];

    /// <summary>The first reading of a row; the others wait until the words come to them.</summary>
    private MeasureRead? Row(int at, int end)
    {
        int start = at;
        var (spots, to) = Spot(at, end, "");
        int noun = spots.Count > 0 ? to : Word(at) is "the" ? at + 1 : at;
        if (Characteristic.Book.Longest(tokens, noun) is not { Values: [var what, ..] } found || (spots.Count > 0 && noun == at))
            return null;
        (what, to) = Qualify(at, what, found.To, end);
        if (spots.Count > 0 && Spot(at, end, what.Kind, what.Name) is { Spots.Count: > 0 } again)
            spots = again.Spots;
        // "big end clearance": of which bearing, so that the positions have a name.
        if (what.Kind.Length == 0 && what.Name == "clearance")
            what = what with { Kind = Enumerable.Range(noun, to - noun).Any(i => Word(i) is "big" or "rod") ? "rod-shell" : Enumerable.Range(noun, to - noun).Any(i => Word(i) is "main" or "mains") ? "main-shell" : "" };
        while (to < end && (tokens[to].Sort == TokenSort.Comma || Word(to) is "now" or "are" or "in" or "order" or "on" or "then" or "for" or "the" or "readings" or "journals" && Spot(to, end, what.Kind, what.Name).Spots.Count == 0))
            to++;
        var items = new List<RowItem>();
        string unit = "";
        for (int next = to; next < end;)
        {
            if (Item(next, end, what, items, items.Count == 0 ? spots : []) is not { } item)
                break;
            items.Add(item);
            unit = item.Unit.Length > 0 ? item.Unit : unit;
            next = item.To;
            while (next < end && (tokens[next].Sort == TokenSort.Comma || Word(next) is "and" or "then" or "while"))
                next++;
        }

        if (items.Count < 2 || !Rising(items) || items.Sum(i => i.Positions.Count) < (items.Any(i => i.Positions.Count > 1) ? 3 : 2))
            return null;
        if (InOrder(items, start, what, unit) is { } inOrder)
            return inOrder;
        var reads = new List<MeasureRead>();
        foreach (var (number, item) in items.Index())
        {
            // The pause before the next one belongs to the row: it opens nothing new.
            int past = number + 1 < items.Count && items[number + 1] is { Copied: false } next ? next.From : item.To;
            var ways = UnitSettler.Settle(item.Value, item.Unit.Length > 0 ? item.Unit : item.Value >= 1 || unit is "mm" or "in" ? unit : "", Said(item.FigureFrom, item.FigureTo), what, context, Inches());
            if (ways[0].Unit.Length == 0)
                return null;
            for (int i = 0; i < item.Positions.Count; i++)
            {
                // Several positions of one figure share its words: the first has all but one token for each of the others.
                int rest = item.To - (item.Positions.Count - 1);
                int from = reads.Count == 0 ? start : i == 0 ? item.From : rest + i - 1;
                int stop = i == item.Positions.Count - 1 ? past : rest + i;
                if (from >= stop || stop > past)
                    return null;
                if (ThingOf(what, [item.Positions[i]], at) is not { } thing)
                    return null;
                var measured = new Measured(what.Name, thing, [ways[0]], "", Said(item.From, item.To));
                reads.Add(new MeasureRead(from, stop, [.. ways.Select(w => measured with { Values = [w] })], thing, null));
            }
        }

        foreach (var read in reads.Skip(1))
            ahead[read.From] = read;
        (previous, previousTo, previousUnit) = (what, items[^1].To, unit);
        return reads[0];
    }

    /// <summary>"one 81.93, two 81.94, three 81.93, four 81.91": every one of them, just counted off, is one row in order.</summary>
    private MeasureRead? InOrder(List<RowItem> items, int start, Characteristic what, string unit)
    {
        if (items.Any(i => i.Linked || i.Copied || i.Positions.Count > 1) || items.Count < 3 || items[^1].Positions[^1] != items.Count || items.Count != CountOf(what.Kind, what.Name) || what.Kind is "crank" or "cylinder")
            return null;
        var ways = items.ConvertAll(i => UnitSettler.Settle(i.Value, i.Unit.Length > 0 ? i.Unit : i.Value >= 1 ? unit : "", Said(i.FigureFrom, i.FigureTo), what, context, Inches()));
        if (ways.Any(w => w[0].Unit.Length == 0))
            return null;
        var thing = ThingOf(what, [], start);
        (previous, previousTo, previousUnit) = (what, items[^1].To, unit);
        return new MeasureRead(start, items[^1].To, Ways(new Measured(what.Name, thing, [.. ways.Select(w => w[0])], "", Said(start, items[^1].To)), ways), thing, null);
    }

    /// <summary>Positions run upwards, so a figure cannot be one by mistake.</summary>
    private static bool Rising(List<RowItem> items)
    {
        var all = items.SelectMany(i => i.Positions).ToList();
        return all.Zip(all.Skip(1)).All(p => p.First < p.Second);
    }

    private RowItem? Item(int from, int end, Characteristic what, List<RowItem> before, IReadOnlyList<int> told)
    {
        int at = from;
        var spots = told;
        if (told.Count == 0 && Figured(from, end, what) is { } led)
            return led;
        if (told.Count == 0)
            (spots, at) = Split(from, what) is { } split ? ([split.Number], split.To) : Spot(from, end, what.Kind, what.Name);
        if (spots.Count == 0)
            return null;
        // "second one 54.98"
        if (Word(at) == "one" && Word(at + 1) != "point" && NumberWords.At(tokens, at + 1) is not null && NumberWords.At(tokens, at - 1) is { Sort: NumSort.Ordinal })
            at++;
        int bare = at;
        while (at < end && ((RowLinks.Contains(Word(at)) && !(Word(at) is "in" or "a" && NumberWords.At(tokens, at + 1) is null)) || (Word(at) is "likewise" or "same" && NumberWords.At(tokens, at + 1) is not null)))
            at++;
        if (before.Count > 0 && Same(at, before) is { } same)
            return new RowItem(spots, from, same.To, same.Of.Value, same.Of.Unit, same.Of.FigureFrom, same.Of.FigureTo, true);
        bool whole = what.Quantity is Quantity.Pressure or Quantity.Mass or Quantity.Percent;
        if (NumberWords.At(tokens, at) is { Sort: NumSort.Ordinal } || Figures.At(tokens, at, whole, before.Count > 0 ? before[^1].Value : null) is not { } figure || figure.To > end)
            return null;
        int to = figure.To;
        string unit = "";
        if (Units.At(tokens, to, new Num(figure.Value, figure.Value == decimal.Truncate(figure.Value) ? NumSort.Whole : NumSort.Decimal, at, to)) is { } read)
            (unit, to) = read;
        if (Word(to) is "each" or "both")
            to++;
        return to >= end || tokens[to].IsBreak || Word(to) is "and" or "but" or "while" or "so" ? new RowItem(spots, from, to, figure.Value, unit, at, figure.To, Linked: at > bare) : null;
    }

    /// <summary>"cylinder one point four": which one, and then a figure below one, where one and four tenths is no more likely.</summary>
    private (int Number, int To)? Split(int from, Characteristic what)
    {
        int at = from;
        while (Word(at) is "number" or "no" or "cylinder" or "bore" or "rod" or "piston" or "the" or "on" or "in" or "ring" or "liner")
            at++;
        if (what is not { Quantity: Quantity.Length, Most: < 10 } || at == from || Word(at - 1) is "the" or "on" or "in" || Word(at + 1) != "point" || NumberWords.At(tokens, at + 1) is null || NumberWords.At([tokens[at]], 0) is not { IsCount: true, Value: > 0 and <= 28 } lone)
            return null;
        int count = CountOf(what.Kind, what.Name);
        return count == 0 || lone.Int <= count ? (lone.Int, at + 1) : null;
    }

    /// <summary>"sixteen thou on one through four": the figure before where it was taken.</summary>
    private RowItem? Figured(int from, int end, Characteristic what)
    {
        if (NumberWords.At(tokens, from) is { Sort: NumSort.Ordinal } || Figures.At(tokens, from, what.Quantity is Quantity.Pressure, null) is not { } figure)
            return null;
        int to = figure.To;
        string unit = "";
        if (Units.At(tokens, to) is { } read)
            (unit, to) = read;
        return Word(to) == "on" && Spot(to + 1, end, what.Kind, what.Name) is { Spots.Count: > 0 } spot && (spot.To >= end || tokens[spot.To].IsBreak || Word(spot.To) == "and")
            ? new RowItem(spot.Spots, from, spot.To, figure.Value, unit, from, figure.To, Linked: true)
            : null;
    }

    /// <summary>"the same", "the same as the first", "ditto": the figure that is meant, and one past it.</summary>
    private (RowItem Of, int To)? Same(int at, List<RowItem> before)
    {
        int to = Word(at) == "the" ? at + 1 : at;
        if (Word(to) is not ("same" or "ditto" or "likewise" or "identical"))
            return null;
        to++;
        if (Word(to) is not ("as" or "like"))
            return (before[^1], to);
        int which = Word(to + 1) is "the" or "number" ? to + 2 : to + 1;
        return NumberWords.At(tokens, which) is { } n && (n.IsCount || n.Sort == NumSort.Ordinal) && before.LastOrDefault(b => b.Positions.Contains(n.Int)) is { } model ? (model, Word(n.To) == "one" ? n.To + 1 : n.To) : null;
    }

    /// <summary>"one", "number two", "the second", "two and three", "one to four", "front": positions told before a figure.</summary>
    private (IReadOnlyList<int> Spots, int To) Spot(int from, int end, string kind, string name = "")
    {
        int at = from;
        while (Word(at) is "number" or "no" or "cylinder" or "bore" or "main" or "rod" or "journal" or "the" or "on" or "piston" or "numbers")
            at++;
        int count = CountOf(kind, name);
        if (Word(at) is "front" or "rear" or "back" or "centre" or "center" or "middle")
            return count == 0 ? ([1], at + 1) : Word(at) switch { "front" => ([1], at + 1), "rear" or "back" => ([count], at + 1), _ when count % 2 == 1 => ([(count + 1) / 2], at + 1), _ => ([], from) };
        var spots = new List<int>();
        while (at < end && NumberWords.At(tokens, at) is { } n && (n.IsCount || n.Sort == NumSort.Ordinal) && n.Int is > 0 and <= 28 && n.To - n.From == 1 && (spots.Count == 0 || n.Int > spots[^1]))
        {
            spots.Add(n.Int);
            at = n.To;
            if (Word(at) is "to" or "through" or "thru" && NumberWords.At(tokens, at + 1) is { IsCount: true } last && last.Int > n.Int && last.Int <= 28)
            {
                spots.AddRange(Enumerable.Range(n.Int + 1, last.Int - n.Int));
                at = last.To;
            }

            bool listed = at < end && tokens[at].Sort == TokenSort.Comma && NumberWords.At(tokens, at + 1) is { IsCount: true } next && Word(next.To) == "and" && NumberWords.At(tokens, next.To + 1) is { IsCount: true };
            if (!((listed || Word(at) is "and") && NumberWords.At(tokens, at + 1) is { } more && (more.IsCount || more.Sort == NumSort.Ordinal) && more.Int > spots[^1] && Units.At(tokens, more.To) is null))
                break;
            at++;
        }

        return spots.Count > 0 && (count == 0 || spots[^1] <= count) ? (spots, at) : ([], from);
    }

    /// <summary>How many there are to measure; 0 where it is not known.</summary>
    private int CountOf(string kind, string name) => kind switch
    {
        "" => 0,
        "crank" when name == "main journal" => index.Parts("main-shell").Select(p => p.Index.FirstOrDefault()).Distinct().Count(),
        "crank" when name == "big-end journal" => index.Parts("rod").Count,
        "bore" or "cylinder" => index.Parts("piston").Count,
        _ => index.Parts(kind).Select(p => p.Cylinder ?? p.Index.FirstOrDefault()).Distinct().Count(),
    };
}
