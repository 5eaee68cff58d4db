namespace Gudgeon.Capture;

/// <summary>Rows of readings: what is measured and of which, then the figures: "mains, one is 60.73, two and three are 60.72".</summary>
internal sealed partial class MeasureReader
{
    private static readonly Characteristic Lash = new("valve clearance", "", Quantity.Length, 0.01m, 1.2m);
    private static readonly Characteristic Stands = new("protrusion", "liner", Quantity.Length, -0.5m, 2);

    /// <summary>Rows of the note by the token they begin at.</summary>
    private readonly Dictionary<int, RowRead> rows = [];

    private sealed record RowRead(Head Head, IReadOnlyList<Cell> Cells, int To);

    /// <summary>Finds the rows of a note: from the first to one past the last token of each. A full stop in a row is a pause.</summary>
    public IEnumerable<(int From, int To)> FindRows()
    {
        for (int at = 0; at < tokens.Count; at++)
        {
            if (!tokens[at].IsWord && tokens[at].Sort != TokenSort.Number)
                continue;
            foreach (var head in Heads(at))
            {
                if (RowAt(head with { From = at }) is not { } row)
                    continue;
                rows[at] = row;
                yield return (at, row.To);
                at = row.To - 1;
                break;
            }
        }
    }

    private RowRead? RowAt(Head head)
    {
        int figures = 0;
        for (int k = head.Body; k < tokens.Count && k < head.Body + 14 && figures == 0; k++)
            figures += NumberWords.At(tokens, k) is not null ? 1 : 0;
        if (figures == 0 || (head.Which.Count > 0 && head.What is { Kind: "crank", Name: not ("main journal" or "big-end journal") }))
            return null;
        // "wet on four one forty": a second row of its own, read elsewhere.
        if (head.What.Kind == "cylinder" && Enumerable.Range(head.From, tokens.Count - head.From).TakeWhile(k => !tokens[k].IsEnd).Any(k => Word(k) is "wet" or "dry"))
            return null;
        var grammar = new RowGrammar(tokens, index, head, CountOf(head.What.Kind, head.What.Name), (value, unit) => Fits(head.What, value, unit), cells => Oddities(head, cells));
        grammar.Walk();
        var cells = grammar.Best;
        if (grammar.Torn || cells.Count == 0)
            return null;
        int after = cells.Max(c => c.To);
        while (after < tokens.Count && (tokens[after].IsBreak || Word(after) is "and"))
            after++;
        if (NumberWords.At(tokens, after) is { Sort: NumSort.Decimal })
            return null;

        // One figure alone is read by other ways, unless it says of several, of a side, or after a full stop.
        bool alone = cells is [{ Which.Count: < 2, Gas: "" } one] && !Enumerable.Range(head.From, one.Figure.From - head.From).Any(k => tokens[k].IsEnd);
        bool told = head.What.Quantity != Quantity.Pressure || cells.All(c => c.Which.Count > 0);
        return alone || !told ? null : new RowRead(head, cells, cells.Max(c => c.To));
    }

    /// <summary>What may stand before the figures, from the words at the token.</summary>
    private IEnumerable<Head> Heads(int at)
    {
        var which = new List<int>();
        string gas = "", spot = "", kind = "";
        int to = at;
        for (bool led = false; to < tokens.Count && to < at + 12;)
        {
            string word = Word(to);
            foreach (var head in Named(to, which, gas, spot, kind))
                yield return head;
            if (word is "inlet" or "intake" or "inlets" or "intakes" or "exhaust" or "exhausts" && gas.Length == 0)
                gas = word[0] == 'e' ? "ex" : "in";
            else if (word is "front" or "rear" && spot.Length == 0)
                spot = word;
            else if (word is "on" or "for" or "number" or "cylinder" or "bore" or "no")
                led = true;
            else if (NumberWords.At([tokens[to]], 0) is { Value: > 0 and <= 28 } n && (n.IsCount || n.Sort == NumSort.Ordinal) && (led || kind.Length > 0 || n.Sort == NumSort.Ordinal) && (which.Count == 0 || n.Int > which[^1]))
                which.Add(n.Int);
            else if (index.Book.Longest(tokens, to) is { Values: [{ IsLine: false } part, ..] } noun && kind.Length == 0)
            {
                (kind, to) = (part.Kind, noun.To);
                continue;
            }
            else if (!(word is "the" or "'s" or "and" or "of" or "both" or "all" || (tokens[to].IsBreak && to > at)))
                yield break;
            to++;
        }
    }

    private IEnumerable<Head> Named(int at, List<int> which, string gas, string spot, string kind)
    {
        var (found, to) = Characteristic.Book.Longest(tokens, at);
        if (found is [var what, ..] && Word(at) != "point")
        {
            int named = to;
            // "intake cam end play": of the part named before, where such a reading is known of it.
            if (kind.Length > 0 && kind != what.Kind && Characteristic.Known(what.Name, kind) is { } own)
                what = own;
            (what, to) = Qualify(at, what, to, tokens.Count);
            if (what.Kind.Length == 0 && what.Name == "clearance")
                what = what with { Kind = Enumerable.Range(at, named - at).Any(i => Word(i) is "big" or "rod") ? "rod-shell" : Enumerable.Range(at, named - at).Any(i => Word(i) is "main" or "mains") ? "main-shell" : gas.Length > 0 || kind is "valve-in" or "valve-ex" ? "valve" : "" };
            if (what.Kind == "valve" || what.Name == Lash.Name)
                (what, gas) = (Lash, what.Kind switch { "valve-in" => "in", "valve-ex" => "ex", _ => gas });
            if (what.Kind.Length == 0 && what.Name != Lash.Name && kind.Length > 0)
                what = what with { Kind = kind };
            yield return Body(what, to, which, gas, spot);
        }

        int valves = at;
        string side = gas;
        if (Word(valves) is "inlet" or "inlets" or "intake" or "intakes" or "exhaust" or "exhausts" && gas.Length == 0)
            side = Word(valves++)[0] == 'e' ? "ex" : "in";
        if (tokens.ElementAtOrDefault(valves).Stem is "valve" or "tappet" || (tokens.ElementAtOrDefault(valves).Stem is "clearance" or "gap" && (side.Length > 0 || at == 0 || tokens[at - 1].IsBreak)))
            yield return Body(Lash, valves + 1, which, side, spot) with { Bare = true };
        else if (valves > at)
            yield return Body(Lash, valves, which, side, spot) with { Bare = true };
        if (tokens[at].Stem is "liner" or "sleeve" && index.Parts("liner").Count > 0)
        {
            yield return Body(Characteristic.Bore, at + 1, which, "", "");
            yield return Body(Stands, at + 1, which, "", "") with { Bare = true };
        }
    }

    /// <summary>Past the words between what is measured and the first that tells which one or how much.</summary>
    private Head Body(Characteristic what, int at, List<int> which, string gas, string spot)
    {
        string ring = what.Name.EndsWith(" ring gap", StringComparison.Ordinal) ? what.Name[..^9] : "";
        int to = at;
        for (int k = at; k < tokens.Count && k < at + 9 && NumberWords.At(tokens, k) is null or { Sort: NumSort.Ordinal }; k++)
        {
            if (tokens[k].IsBreak)
            {
                to = k + 1;
                break;
            }
        }

        return new Head(what, to > at && !Enumerable.Range(at, to - at).Any(k => Gas(Word(k)) || RowGrammar.IsSpot(Word(k))) ? to : at, which, gas, ring, spot);
    }

    private static bool Gas(string word) => word is "inlet" or "inlets" or "intake" or "intakes" or "exhaust" or "exhausts";

    /// <summary>Whether a figure can be of it, in the unit said or in one that its neighbours may lend.</summary>
    private static bool Fits(Characteristic what, decimal value, string unit)
    {
        bool Size(decimal mm) => mm >= what.Least && mm <= what.Most;
        if (unit.Length == 0 && (what.Least >= 10 ? value <= 28 && value == decimal.Truncate(value) : what.Shy && (value >= what.Most || value == decimal.Truncate(value))))
            return false;
        return what.Quantity != Quantity.Length || (Units.Millimetres(unit) is { } one ? Size(value * one) : Size(value) || Size(value * 25.4m) || (what.Least < 10 && (Size(value * 0.0254m) || Size(value * 0.01m))));
    }

    /// <summary>How odd the figures are for what is measured; null where they cannot be it.</summary>
    private int? Oddities(Head head, IReadOnlyList<Cell> cells)
    {
        if (head.Bare && !cells.Any(c => c.Figure.Unit.Length > 0) && !cells.All(c => c.Figure.Value < 1.5m && c.Figure.Value != decimal.Truncate(c.Figure.Value)))
            return null;
        var unlike = Unlike(head, cells);
        if (unlike is null || unlike.Exists(c => !c.Own && c.Which.Count == 0))
            return null;
        if (cells.Any(c => RowThing(head, c) is null))
            return null;
        foreach (var group in Groups(cells))
        {
            int places = Places(head, group[0]);
            if (group.Count > 1 && group[0].Spot.Length == 0 && group.Count != places && !(places == 1 && head.What.Least >= 10 && group.Count == 2))
                return null;
        }

        return 4 * unlike.Count;
    }

    /// <summary>The figures that are unlike their sisters or unlike what such a thing can be; null where nothing is like it.</summary>
    private List<Cell>? Unlike(Head head, IReadOnlyList<Cell> cells)
    {
        decimal? Size(Cell cell) => Settled(head, cells, cell)[0] is { Unit.Length: > 0 } amount ? head.What.Quantity == Quantity.Length && Units.Millimetres(amount.Unit) is { } mm ? amount.Value * mm : amount.Value : null;
        bool Can(decimal? size) => size is { } s && (head.What.Quantity != Quantity.Length || (s >= head.What.Least && s <= head.What.Most));
        var can = cells.Where(c => !c.Figure.Odd && Can(Size(c))).ToList();
        if (can.Count == 0 || can.Count * 2 < cells.Count)
            return null;
        decimal middle = can.Count == 2 ? Size(can[0])!.Value : can.Select(c => Size(c)!.Value).Order().ElementAt(can.Count / 2);
        decimal most = head.What switch { { Quantity: Quantity.Length, Least: >= 10 } => 1.25m, { Quantity: Quantity.Mass } => 1.5m, _ => 6 };
        return [.. cells.Where(c => !can.Contains(c) || Size(c) > middle * most || Size(c) * most < middle)];
    }

    private static List<List<Cell>> Groups(IReadOnlyList<Cell> cells)
    {
        var groups = new List<List<Cell>>();
        foreach (var cell in cells)
        {
            if (groups.Count > 0 && groups[^1][0].IsBeside(cell) && (groups[^1][0].Which.Count > 0 || cell.Spot.Length == 0 || cell.Gas.Length == 0))
                groups[^1].Add(cell);
            else
                groups.Add([cell]);
        }

        return groups;
    }

    /// <summary>A figure in the unit said with it, else in that of its neighbours, else by what is measured.</summary>
    private IReadOnlyList<Amount> Settled(Head head, IReadOnlyList<Cell> cells, Cell cell)
    {
        var figure = cell.Figure;
        string unit = figure.Unit;
        if (unit.Length == 0)
        {
            string lent = cells.LastOrDefault(c => c.Figure.From < figure.From && c.Figure.Unit.Length > 0)?.Figure.Unit ?? cells.FirstOrDefault(c => c.Figure.From > figure.From && c.Figure.Unit.Length > 0)?.Figure.Unit ?? "";
            if (figure.Value >= 1 || lent is "mm" or "in")
                unit = lent;
        }

        string said = Said(figure.From, figure.To);
        return [.. UnitSettler.Settle(figure.Value, unit, said, head.What, context, Inches()).Select(a => a with { Rough = figure.Rough, At = cell.Spot })];
    }

    private int Places(Head head, Cell cell) => head.What.Name == Lash.Name && cell.Gas.Length > 0
        ? RowThing(head, cell)?.Ids.Count ?? 0
        : cell.Which.Count > 0 ? cell.Which.Count : CountOf(head.What.Kind, head.What.Name);

    /// <summary>What a figure was read on.</summary>
    private Thing? RowThing(Head head, Cell cell)
    {
        var what = head.What;
        if (cell.Ring.Length > 0)
            what = what with { Name = $"{cell.Ring} ring gap", Kind = cell.Ring == "oil" ? "ring-oil" : "ring-comp" };
        List<int> numbers = CountOf(what.Kind, what.Name) == 1 && what.Kind is not ("bore" or "cylinder" or "crank") ? [] : [.. cell.Which];
        if (what.Name != Lash.Name)
        {
            gas = cell.Gas;
            var thing = ThingOf(what, numbers, 0);
            gas = "";
            return thing;
        }

        if (cell.Gas.Length == 0)
        {
            var inlet = One("valve-in", numbers);
            return inlet with { Ids = [.. inlet.Ids, .. One("valve-ex", numbers).Ids], Name = "valves" };
        }

        var valves = ThingOf(what with { Kind = "valve-" + cell.Gas }, numbers, 0);
        string spot = cell.Spot.Length > 0 ? cell.Spot : head.Spot;
        if (valves is null || spot.Length == 0)
            return valves;
        var ids = valves.Ids.GroupBy(i => index.Engine.Parts[i].Cylinder).Select(g => spot == "front" ? g.First() : g.Last()).ToList();
        return valves with { Ids = ids, Name = ids.Count == 1 ? index.Engine.Parts[ids[0]].Name : valves.Name };
    }

    /// <summary>The readings of a row that begins here.</summary>
    private MeasureRead? Row(int at)
    {
        if (!rows.TryGetValue(at, out var row))
            return null;
        var reads = new List<MeasureRead>();
        var unlike = Unlike(row.Head, row.Cells) ?? [];
        foreach (var group in Whole(row).ToList())
        {
            var ways = group.ConvertAll(c => Settled(row.Head, row.Cells, c));
            int from = reads.Count == 0 ? at : group[0].From;
            int to = group[^1].To;
            bool apart = row.Head.What.Kind is "crank" or "cylinder" or "main-shell" or "rod-shell" || (row.Head.What.Kind == "bore" && index.Parts("liner").Count + index.Parts("barrel").Count == 0);
            bool each = apart && group[0].Which.Count > 1 && group[0].Which.Count < CountOf(row.Head.What.Kind, row.Head.What.Name);
            string name = group[0].Ring.Length > 0 ? $"{group[0].Ring} ring gap" : row.Head.What.Name;
            for (int i = 0; i < (each ? group[0].Which.Count : 1); i++)
            {
                var thing = RowThing(row.Head, each ? group[0] with { Which = [group[0].Which[i]] } : group[0]);
                var own = each && ways.Count > 1 ? [ways[i]] : ways;
                var measured = new Measured(name, thing, [.. own.Select(w => w[0])], "", Said(from, to)) { InOrder = group.Count > 1 };
                reads.Add(new MeasureRead(from, to, Ways(measured, own), thing, null) { Asks = group.Exists(c => unlike.Exists(u => u.Figure == c.Figure && (c.Which.Count == 0 || u.Which.SequenceEqual(c.Which)))) });
            }
        }

        (previous, previousTo, previousUnit) = (row.Head.What, row.To, row.Cells.LastOrDefault(c => c.Figure.Unit.Length > 0)?.Figure.Unit ?? "");
        return reads[0] with { To = row.To, More = reads[1..], IsRow = true };
    }

    /// <summary>Groups of figures for one place each; "one 81.93, two 81.94, three 81.93", every one just counted off, is one row in order.</summary>
    private IEnumerable<List<Cell>> Whole(RowRead row)
    {
        var cells = row.Cells;
        int count = CountOf(row.Head.What.Kind, row.Head.What.Name);
        bool counted = row.Head.What.Kind is not ("crank" or "cylinder" or "bore" or "") && cells.Count >= 3 && cells.Count == count && cells.Index().All(c => c.Item.Which is [var n] && n == c.Index + 1 && c.Item is { Linked: false, Copied: false, Spot: "" } && c.Item.Gas == cells[0].Gas && c.Item.Ring == cells[0].Ring);
        return counted ? [[.. cells.Select(c => c with { Which = [] })]] : Groups(cells).SelectMany(Alone);

        // The front one and the rear one of the valves are two parts.
        IEnumerable<List<Cell>> Alone(List<Cell> group) => row.Head.What.Name == Lash.Name && group.Any(c => c.Spot.Length > 0) ? group.Select(c => new List<Cell> { c }) : [group];
    }

    /// <summary>How many there are to measure; 0 where it is not known.</summary>
    private int CountOf(string kind, string name) => kind switch
    {
        _ when name == Lash.Name => index.Parts("piston").Count,
        "" => 0,
        "crank" when name == "main journal" => index.Parts("main-shell").Select(p => p.Index.FirstOrDefault()).Distinct().Count(),
        "crank" when name == "big-end journal" => index.Parts("rod").Count,
        "bore" or "cylinder" => index.Parts("piston").Count,
        _ => index.Parts(kind).Select(p => p.Cylinder ?? p.Index.FirstOrDefault()).Distinct().Count(),
    };
}
