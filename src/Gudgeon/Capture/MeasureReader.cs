namespace Gudgeon.Capture;

/// <summary>What a measured stretch of words gave: a reading, or a reading with several meanings.</summary>
internal sealed record MeasureRead(int From, int To, IReadOnlyList<Measured> Readings, Thing? Thing, int? Cylinder)
{
    /// <summary>The other readings of a row.</summary>
    public IReadOnlyList<MeasureRead> More { get; init; } = [];
    public bool IsRow { get; init; }

    /// <summary>The figure is unlike those beside it: it is asked for.</summary>
    public bool Asks { get; init; }
}

/// <summary>Reads what was read off an instrument: characteristic, place, one value or a row of them.</summary>
internal sealed partial class MeasureReader(IReadOnlyList<Token> tokens, string text, PartIndex index, ThingResolver resolver, EarContext context)
{
    private static readonly HashSet<string> Positions =
        ["top", "middle", "bottom", "upper", "lower", "across", "along", "thrust", "front", "rear", "cold", "hot", "wet", "dry", "inlet", "exhaust", "max", "min", "maximum", "minimum", "in", "out", "left", "right", "before", "after", "vertical", "horizontal", "first", "second", "third", "both", "each", "idle", "standard", "upright", "level", "throw", "square", "mid", "halfway", "lengthways", "sideways", "fore", "aft", "centre", "center", "crosswise", "crossways", "lengthwise"];

    private static readonly HashSet<string> Links =
        ["is", "'s", "are", "was", "were", "about", "at", "of", "the", "reads", "reading", "came", "comes", "measured", "measures", "from", "to", "a", "and", "then", "now", "on", "in", "good", "only", "still", "it", "for", "all", "way", "axis", "end", "round", "just", "nearly", "over", "under", "a", "got", "gave", "cranking", "with", "ways", "has", "have", "i", "make", "makes", "get", "gets", "before", "strip", "stripping", "checked", "dismantling", "plastic", "gauge", "feeler", "by", "now", "cylinder", "clocked", "new", "mike", "mikes", "miked", "measure", "clock", "dial", "dti", "micrometer", "calipers", "vernier", "strip", "squashed", "squished", "maybe", "say", "roughly", "read", "showing", "shows", "weigh", "weighed", "er", "um", "uh", "erm", "straight", "edge", "edges", "between", "side", "stand", "proud", "going", "also", "likewise"];

    private string Word(int at) => at >= 0 && at < tokens.Count && tokens[at].IsWord ? tokens[at].Text : "";

    /// <summary>A measured stretch that starts at the token, or null.</summary>
    public MeasureRead? At(int at, int end)
    {
        if (tokens[at].Stem is "inlet" or "intake" or "exhaust" && Spoilt(tokens.ElementAtOrDefault(at + 1).Stem is "tappet" or "valve" ? at + 2 : at + 1, end))
            return null;
        if (Row(at) is { } row)
            return row;
        if (Continued(at, end) is { } more)
            return more;
        if (Resize(at, end) is { } resized)
            return resized;
        if (Out(at, end) is { } flat)
            return flat;
        if (Warmth(at, end) is { } warm)
            return warm;
        if (Loosening(at, end) is { } loosening)
            return loosening;
        if (Reversed(at, end) is { } reversed)
            return reversed;
        if (Held(at, end) is { } held)
            return held;
        if (Side(at, end) is { } side)
            return side;
        if (IsRough(at) && Reversed(at + 1, end) is { } roughly)
            return roughly with { From = at };
        if (Feeler(at, end) is { } feeler)
            return feeler;
        if (Gassed(at, end) is { } gassed)
            return gassed;
        if (Word(at) is "inlet" or "inlets" or "intake" or "exhaust" or "exhausts" && NumberWords.At(tokens, at + 1) is { Sort: NumSort.Decimal, Value: < 1.5m } && tokens.Any(t => t.Stem is "clearance" or "lash" or "tappet" or "gap" || (t.Stem is "inlet" or "intake" or "exhaust" && t.Start != tokens[at].Start)))
            return Read(at, at + 1, end, new Characteristic("valve clearance", Word(at).StartsWith('e') ? "valve-ex" : "valve-in", Quantity.Length, 0.01m, 1.5m) { Series = true }, true);
        if (NumberWords.At(tokens, at) is { Sort: NumSort.Decimal, Value: < 1.5m and > 0 } gap && Word(gap.To) is "inlet" or "inlets" or "intake" or "exhaust" or "exhausts" && (gap.To + 1 >= tokens.Count || tokens[gap.To + 1].IsBreak || Word(gap.To + 1) is "and") && tokens.Any(t => t.Stem is "clearance" or "lash" or "tappet" or "gap"))
            return ValveGap(at, gap.Value, gap.To, gap.To + 1, Word(gap.To).StartsWith('e') ? "valve-ex" : "valve-in", "");
        if (Gap(at) is { } led)
            return led;
        if (NumberWords.At(tokens, at) is { IsCount: true, Value: >= 2 and <= 40 } thou && Units.At(tokens, thou.To) is { Unit: "thou" } thouUnit && Word(thouUnit.To) == "on" && Valves(thouUnit.To + 1) is { } valves)
            return ValveGap(at, thou.Value, thouUnit.To, valves.To, valves.Kind, "thou");
        if (Word(at) is "cylinder" or "cyl" && NumberWords.At(tokens, at + 1) is { IsCount: true } cylinder && (Word(cylinder.To) is "mikes" or "measures" or "measured" or "miked" or "reads" || (Word(cylinder.To) is "at" or "top" or "bottom" or "middle" && FollowedByNumber(cylinder.To, end))))
            return Read(at, at + 1, end, Characteristic.Bore);
        if (Numbered(at, end) is { } numbered)
            return numbered;
        if (Word(at) is "for" or "on" && Word(at + 1) is "cylinder" or "number" or "no" or "cyl" && NumberWords.At(tokens, at + 2) is { IsCount: true, Value: > 0 and <= 28 } ledBy && ledBy.To < end && tokens[ledBy.To].Sort == TokenSort.Comma)
            forCylinder = ledBy.Int;
        var (found, to) = Characteristic.Book.Longest(tokens, at);
        // "pistons one two three four": which ones, no figure.
        bool counted = tokens[at].Stem == "piston" && to == at + 1 && Enumerable.Range(to, 3).All(k => k < end && tokens[k].IsWord && NumberWords.At([tokens[k]], 0) is { IsCount: true, Value: < 10 });
        return found.Count == 0 || Word(at) == "point" || counted || Spoilt(to, end) ? null : Read(at, to, end, found[0]);
    }

    /// <summary>"exhaust tappet on six is chipped": which one, and how it is; no figure.</summary>
    private bool Spoilt(int at, int end)
    {
        int from = at;
        while (at < end && (Word(at) is "on" or "of" or "for" or "number" or "cylinder" or "and" or "the" || NumberWords.At(tokens, at) is { IsCount: true, Value: <= 28 }))
            at++;
        return at > from && at < end && Word(at) is "is" or "are" or "'s" or "was" or "were" or "has" or "have" && Lexicon.Faults.Longest(tokens, Word(at + 1) is "a" or "badly" or "all" or "both" or "also" or "been" ? at + 2 : at + 1).Values.Count > 0;
    }

    /// <summary>"for cylinder one, inlet gap is…": of which one all that follows is told.</summary>
    private int? forCylinder;

    /// <summary>Which one was told before the characteristic by its place: the third main.</summary>
    private int? told;

    /// <summary>"number two main 54.98", "number one's piston skirt", "third main": the number before.</summary>
    private MeasureRead? Numbered(int at, int end)
    {
        int to = Word(at) is "the" or "on" ? at + 1 : at;
        if (Word(to) is "number" or "cylinder" or "bore" or "no" && NumberWords.At(tokens, to + 1) is { IsCount: true, Value: > 0 and <= 28 } n)
            to = n.To;
        else if (NumberWords.At(tokens, to) is { Sort: NumSort.Ordinal, Value: > 0 and <= 28 } nth && Word(nth.To) is not ("ring" or "gap"))
            to = nth.To;
        else
            return null;
        told = NumberWords.At(tokens, to - 1) is { Sort: NumSort.Ordinal } which ? which.Int : null;
        if (Word(to) == "'s")
            to++;
        var read = Characteristic.Book.Longest(tokens, to) is { Values: [var what, ..] } found && FollowedByNumber(found.To, end) ? Read(to, found.To, end, what) : null;
        told = null;
        return read is null ? null : read with { From = at };
    }

    private bool IsRough(int at) => Word(at) is "about" or "around" or "roughly" or "nearly" or "maybe" or "say";

    /// <summary>"thirty thou of wobble", "six thou end float": the figure before what it measures.</summary>
    private MeasureRead? Reversed(int at, int end)
    {
        if (NumberWords.At(tokens, at) is not { Sort: NumSort.Whole or NumSort.Decimal or NumSort.Fraction } n || Units.At(tokens, n.To, n) is not { Unit: "thou" or "mm" or "hundredth" or "tenth" or "um" or "in" or "tenth mm" or "hundredth mm" } unit)
            return null;
        int noun = Word(unit.To) is "of" or "'s" ? unit.To + 1 : unit.To;
        while (Word(noun) is "side" or "the" or "up" or "radial" or "axial" && Characteristic.Loose.Longest(tokens, noun).Values.Count == 0)
            noun++;
        if (Characteristic.Loose.Longest(tokens, noun) is not { Values: [var what, ..] } read || read.To > end || NumberWords.At(tokens, read.To) is not null)
            return null;
        bool rough = IsRough(at - 1);
        var ways = UnitSettler.Settle(n.Value, unit.Unit, Said(at, unit.To), what, context, Inches());
        var thing = what.Kind.Length > 0 ? ThingOf(what, [], at) : null;
        int to = read.To;
        // "two thou run out on the flywheel"
        if (Word(to) is "on" or "in" or "of" && new ThingReader(tokens, index, resolver).At(to + 1) is { Thing: { Sort: ThingSort.Part, Ids.Count: > 0, Others.Count: 0, Detail: "" } } whose && whose.To <= end && (what.Kind.Length == 0 || what.Kind == whose.Thing.Kind))
            (thing, to) = (whose.Thing, whose.To);
        var measured = new Measured(what.Name, thing, [ways[0] with { Rough = rough }], "", Said(at, to));
        return new MeasureRead(at, to, [.. ways.Select(w => measured with { Values = [w with { Rough = rough }] })], thing, null);
    }

    private Characteristic? previous;
    private int previousTo = -1;
    private string previousUnit = "";

    /// <summary>"..., exhaust point four", "..., second forty five": the same characteristic of the next one.</summary>
    private MeasureRead? Continued(int at, int end)
    {
        if (previous is not { } what || at - previousTo is < 0 or > 2 || (at > previousTo && !(tokens[previousTo].Sort == TokenSort.Comma || Word(previousTo) == "and")))
            return null;
        if (what.Name == "valve clearance" && Word(at) is "exhaust" or "exhausts" or "inlet" or "inlets" && FollowedByNumber(at + 1, end))
            return Read(at, at + 1, end, what with { Kind = Word(at).StartsWith('e') ? "valve-ex" : "valve-in" }, true);
        if (what.Name == "clearance" && BearingNumber(at) is { } bearing && FollowedByNumber(bearing.To, end))
            return Read(at, at, end, what, true);
        if (what.Name.EndsWith("ring gap", StringComparison.Ordinal) && Word(at) is "second" or "top" or "oil" && FollowedByNumber(at + 1, end))
            return Read(at, at + 1, end, what with { Name = $"{Word(at)} ring gap", Kind = Word(at) == "oil" ? "ring-oil" : "ring-comp" }, true);
        return null;
    }

    private MeasureRead? Read(int from, int to, int end, Characteristic what, bool more = false)
    {
        var where = new List<string>();
        var numbers = new List<int>();
        int at = to;
        if (!more && from >= 2 && Units.At(tokens, from - 1, NumberWords.At(tokens, from - 2)) is not null && NumberWords.At(tokens, from - 2) is not null)
            return null;
        (what, at) = Qualify(from, what, at, end);
        at = Index(at, end, what, numbers);
        if (at < 0)
            return null;
        var values = new List<Amount>();
        var ambiguous = new List<IReadOnlyList<Amount>>();
        decimal? before = null;
        string pending = "";
        string of = "";
        Thing? owner = null;
        string saidUnit = "";
        int last = at;
        bool whole = what.Quantity is Quantity.Pressure or Quantity.Mass or Quantity.Percent;
        if (Word(at) == "in" && Word(at + 1) == "order")
            at += 2;
        while (at < end)
        {
            if (tokens[at].IsEnd)
                break;
            if (tokens[at].Sort == TokenSort.Comma)
            {
                if (!GoesOn(at + 1, end))
                    break;
                at++;
                continue;
            }

            // "one fifty five on all six": the same for every one.
            if (values.Count > 0 && Word(at) is "on" or "all" && NumberWords.At(tokens, Word(at) == "on" && Word(at + 1) == "all" ? at + 2 : at + 1) is { IsCount: true } every && (Word(at) == "all" || Word(at + 1) == "all"))
            {
                last = at = every.To;
                continue;
            }

            if (values.Count == 0 && Times(at) is { } times)
            {
                at = times;
                continue;
            }

            if (values.Count > 0 && Characteristic.Book.Longest(tokens, at).Values is [{ Name: "taper" or "out-of-round" or "run-out" }, ..])
                break;
            if (values.Count > 0 && Word(at) is "at" or "in" && Positions.Contains(Word(Word(at + 1) == "the" ? at + 2 : at + 1)) && NumberWords.At(tokens, Word(at + 1) == "the" ? at + 3 : at + 2) is null)
            {
                int position = Word(at + 1) == "the" ? at + 2 : at + 1;
                values[^1] = values[^1] with { At = Join(values[^1].At, Word(position)) };
                last = at = position + 1;
                continue;
            }

            if (what.Name == "valve clearance" && values.Count > 0 && Word(at) is "exhaust" or "exhausts" or "inlet" or "inlets" && FollowedByNumber(at + 1, end))
                break;
            if (what.Name.EndsWith("ring gap", StringComparison.Ordinal) && values.Count > 0 && Word(at) is "second" or "top" or "oil" && FollowedByNumber(at + 1, end))
                break;
            if (values.Count == 0 && numbers.Count == 0 && BearingNumber(at) is { } bearing)
            {
                (of, numbers) = (bearing.Kind, [bearing.Number]);
                at = bearing.To;
                continue;
            }

            if (values.Count == 0 && owner is null && Word(at - 1) is "the" or "on" or "of" && index.Book.Longest(tokens, at).Values.Any(v => v.Rank < 2) && !Positions.Contains(Word(at)) && new ThingReader(tokens, index, resolver).At(at) is { } held && held.To < end)
            {
                owner = held.Thing;
                at = held.To;
                continue;
            }

            if (values.Count == 0 && owner is null && what.Kind.Length == 0 && Word(at) is "on" or "of" or "for" && BearingNumber(at + 1) is null && new ThingReader(tokens, index, resolver).At(at + 1) is { Thing.Ids.Count: > 0 } whose && whose.To < end && whose.Thing.Sort == ThingSort.Part)
            {
                owner = whose.Thing;
                at = whose.To;
                continue;
            }

            // "crankpin taper half a thou", "bore wear two thou": what of it was measured.
            if (values.Count == 0 && Characteristic.Book.Longest(tokens, at) is { Values: [{ Name: "taper" or "out-of-round" or "run-out" or "wear" or "flatness" or "end float" } finely, ..] } finest && finely.Name != what.Name)
            {
                what = finely with { Kind = what.Kind };
                at = finest.To;
                continue;
            }

            // "compression on all four 180": how many, not how much.
            if (values.Count == 0 && Word(at) == "all" && NumberWords.At(tokens, at + 1) is { IsCount: true, Value: >= 2 and <= 16 } each && FollowedByNumber(each.To, end))
            {
                at = each.To;
                continue;
            }

            if (OnCylinder(at, end) is { } on)
            {
                pending = on.Label;
                at = on.To;
                continue;
            }

            if (Angle(at) is { } angle)
            {
                if (values.Count > 0 && values[^1].At.Length == 0)
                    values[^1] = values[^1] with { At = angle.Label };
                else
                    pending = Join(pending, angle.Label);
                last = at = angle.To;
                continue;
            }

            if (Figures.At(tokens, Sign(at), whole, before) is { } figure && NumberWords.At(tokens, Sign(at)) is not { Sort: NumSort.Ordinal })
            {
                bool minus = Sign(at) > at && Word(at) is "minus";
                if (Counts(figure.To) || Word(figure.To) is "oversize" or "undersize")
                    break;
                int next = figure.To;
                string unit = "";
                if (Units.At(tokens, next, new Num(figure.Value, figure.Value == decimal.Truncate(figure.Value) ? NumSort.Whole : NumSort.Decimal, at, next)) is { } read)
                    (unit, next) = read;
                else if (Word(next) == "of" && Word(next + 1) is "a" or "an" && Units.At(tokens, next + 2) is { Unit: "mm" or "in" } whole1)
                    (unit, next) = whole1;
                // "a thou and a half"
                decimal part = unit.Length > 0 && NumberWords.AndPart(tokens, next) is { } andPart && (next = andPart.To) > 0 ? andPart.Value : 0;
                if (Word(next) is "under" or "undersize" or "oversize" || (Word(next) == "over" && (next + 1 >= end || tokens[next + 1].IsBreak)))
                    break;
                string said = Said(at, next);
                if (unit.Length > 0)
                    saidUnit = unit;
                else if (what.Quantity == Quantity.Length && saidUnit.Length == 0 && values.Count == 0 && from >= previousTo && from - previousTo <= 2 && previousTo > 0 && previousUnit is "thou" or "hundredth" && figure.Value >= 1)
                    unit = previousUnit;
                else if (what.Quantity == Quantity.Length && saidUnit is "thou" or "hundredth" or "tenth" or "um" && figure.Value >= 1)
                    unit = saidUnit;
                var ways = UnitSettler.Settle(minus ? -(figure.Value + part) : figure.Value + part, unit, said, what, context, Inches());
                before = figure.Value;
                values.Add(ways[0] with { At = pending });
                ambiguous.Add(ways);
                pending = "";
                last = at = next;
                if (Word(at) is "in" or "out" && (at + 1 >= end || tokens[at + 1].IsBreak))
                {
                    values[^1] = values[^1] with { At = Word(at) };
                    last = ++at;
                }

                continue;
            }

            if (Positions.Contains(Word(at)) && !Fact(at))
            {
                if (values.Count == 0)
                    where.Add(Word(at));
                else if (!GoesOn(at + 1, end) || (at + 1 < end && tokens[at + 1].IsBreak))
                {
                    values[^1] = values[^1] with { At = Join(values[^1].At, Word(at)) };
                    last = at + 1;
                }
                else
                    pending = Join(pending, Word(at));
                at++;
                continue;
            }

            if (Links.Contains(Word(at)) && (values.Count == 0 || GoesOn(at + 1, end)))
            {
                at++;
                continue;
            }

            if (values.Count == 0 && numbers.Count == 0 && Bore(at, end) is { } bore)
            {
                numbers.Add(bore.Number);
                at = bore.To;
                continue;
            }

            break;
        }

        if (values.Count > 0 && what.Shy && values.All(v => v.UnitTaken && v.Said.All(c => c != '.') && !v.Said.Contains("point", StringComparison.OrdinalIgnoreCase) && v.Said.Split(' ').Length == 1))
            return null;
        if (values.Count == 0 || !Plausible(values, what) || (what is { Quantity: Quantity.Length, Least: >= 10 } && values.All(v => v.UnitTaken && v.Value <= 28 && v.Value == decimal.Truncate(v.Value) && v.Said.Split(' ').Length == 1)))
            return null;
        Share(values, ambiguous, what);
        if (what.Quantity == Quantity.Length && saidUnit is "thou" or "hundredth" or "um" && values.Count > 1)
        {
            // The unit said at the end of a row holds for all of it.
            for (int i = 0; i < values.Count; i++)
            {
                if (values[i] is { UnitTaken: true } or { Unit: "" } && decimal.TryParse(Raw(values[i]), System.Globalization.CultureInfo.InvariantCulture, out decimal raw) && raw >= 1)
                {
                    ambiguous[i] = UnitSettler.Settle(raw, saidUnit, values[i].Said, what, context, Inches());
                    values[i] = ambiguous[i][0] with { At = values[i].At };
                }
            }
        }

        // "bore one three thou taper": what was told of the bore is its taper.
        if (Characteristic.Book.Longest(tokens, last) is { Values: [{ Name: "taper" or "out-of-round" or "run-out" } finer, ..] } ending && values.All(v => v.Said.Length > 0) && NumberWords.At(tokens, ending.To) is null)
        {
            previous = finer with { Kind = what.Kind };
            (previousTo, previousUnit) = (ending.To, saidUnit);
            var of1 = ThingOf(what, numbers, from);
            var fine = new Measured(finer.Name, of1, values, string.Join(" ", where), Said(from, ending.To));
            return new MeasureRead(from, ending.To, Ways(fine, ambiguous), of1, numbers.Count == 1 ? numbers[0] : null);
        }

        // "two thou on number three": which one, told last.
        if (numbers.Count == 0 && values.Count == 1 && Word(last) is "on" or "in" or "for" && (Word(last + 1) is "number" or "cylinder" or "bore" or "no") && NumberWords.At(tokens, last + 2) is { IsCount: true, Value: > 0 and <= 28 } which && !FollowedByNumber(which.To, end))
        {
            numbers.Add(which.Int);
            last = which.To;
        }

        last = Tail(last, end, where);
        (previous, previousTo, previousUnit) = (what, last, saidUnit);
        if (of.Length > 0 && what.Kind is "" or "crank")
            what = what with { Kind = what.Name == "clearance" ? of : "crank", Name = what.Name };
        var thing = owner ?? (of.Length > 0 && what.Kind == "crank" ? ThingOf(what with { Name = of == "rod-shell" ? "big-end journal" : "main journal" }, numbers, from) : ThingOf(what, numbers, from));
        if (owner is { Others.Count: > 0 } vague)
            thing = vague with { Others = [], Ids = [.. vague.Others.SelectMany(o => o.Ids).Concat(vague.Ids).Distinct()] };
        var measured = new Measured(what.Name, thing, values, string.Join(" ", where), Said(from, last));
        return new MeasureRead(from, last, Ways(measured, ambiguous), thing, what.Kind is "cylinder" or "bore" or "piston" or "ring-comp" && numbers.Count == 1 ? numbers[0] : null);
    }

    private static string Raw(Amount amount) => (amount is { UnitTaken: true, Unit: "in" } && amount.Value < 1 ? amount.Value * 1000 : amount.Value).ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static string Join(string left, string right) => left.Length == 0 ? right : right.Length == 0 ? left : $"{left} {right}";

    /// <summary>A row of values has one unit: a unit said once holds for those told without.</summary>
    private static void Share(List<Amount> values, List<IReadOnlyList<Amount>> ambiguous, Characteristic what)
    {
        int said = values.FindIndex(v => !v.UnitTaken && v.Unit.Length > 0);
        if (said < 0)
            return;
        for (int i = 0; i < values.Count; i++)
        {
            if (values[i].UnitTaken && values[i].Unit != values[said].Unit && what.Quantity == Quantity.Pressure)
            {
                values[i] = values[i] with { Unit = values[said].Unit };
                ambiguous[i] = [values[i]];
            }
        }
    }

    private static IReadOnlyList<Measured> Ways(Measured measured, List<IReadOnlyList<Amount>> ambiguous)
    {
        int most = ambiguous.Max(a => a.Count);
        var ways = new List<Measured>();
        for (int way = 0; way < most; way++)
        {
            int pick = way;
            ways.Add(measured with { Values = [.. measured.Values.Select((v, i) => (pick < ambiguous[i].Count ? ambiguous[i][pick] : ambiguous[i][0]) with { At = v.At })] });
        }

        return ways;
    }

    /// <summary>A figure whose unit nobody said and that fits no unit at all is no reading of this.</summary>
    private static bool Plausible(List<Amount> values, Characteristic what) =>
        values.Any(v => v.Unit.Length > 0 || what.Quantity == Quantity.Percent);

    private int Sign(int at) => Word(at) is "minus" or "plus" ? at + 1 : at;

    private bool Counts(int at) => Lexicon.Fasteners.Longest(tokens, at).Values.Count > 0 || Word(at) is "by" or "x";

    /// <summary>Somebody who speaks inches in one figure speaks them in the next.</summary>
    private bool Inches()
    {
        for (int i = 0; i < tokens.Count; i++)
        {
            if (Word(i) is "thou" or "though" or "inch" or "inches" || (NumberWords.At(tokens, i) is { Sort: NumSort.Decimal, Value: > 0.4m and < 6 } n && DecimalPlaces(n.Value) == 4))
                return true;
        }

        return false;
    }

    private static int DecimalPlaces(decimal value)
    {
        int places = 0;
        while (value != decimal.Truncate(value) && places < 8)
            (value, places) = (value * 10, places + 1);
        return places;
    }

    /// <summary>After a comma or a link the row goes on when a number comes before anything else of weight.</summary>
    private bool GoesOn(int at, int end)
    {
        for (int i = at; i < end && i < at + 5; i++)
        {
            if (tokens[i].IsBreak)
                return false;
            if (NumberWords.At(tokens, i) is { IsCount: true } whose && Word(whose.To) is "'s" or "is" && Word(whose.To + 1) is "the" or "same" or "a" or "not" or "just")
                return false;
            if (NumberWords.At(tokens, i) is { Sort: not NumSort.Ordinal } n)
                return !Counts(n.To) && Word(n.To) is not ("of" or "weeks" or "days" or "bolt" or "bolts" or "litres") && !(index.Book.Longest(tokens, n.To) is { Values.Count: > 0 } part && tokens[part.To - 1].Plural) && Lexicon.Faults.Longest(tokens, n.To).Values.Count == 0 && !(Word(n.To) is "'s" or "is" && Lexicon.Faults.Longest(tokens, n.To + 1).Values.Count > 0);
            if (Characteristic.Book.Longest(tokens, i).Values.Count > 0 && !Positions.Contains(Word(i)))
                return false;
            if (!Links.Contains(Word(i)) && !Positions.Contains(Word(i)) && Word(i) is not ("number" or "cylinder" or "bore" or "point"))
                return false;
        }

        return false;
    }

    /// <summary>"in the exhaust": a place where something is heard, not where a value was read.</summary>
    private bool Fact(int at) => Word(at - 1) is "the" && Word(at) is "exhaust" or "inlet";

    private int Tail(int last, int end, List<string> where)
    {
        // "pushed both ways, dial on the nose", "over the pin": how it was read belongs to the reading.
        int at = last < end && tokens[last].Sort == TokenSort.Comma ? last + 1 : last;
        if (Word(at) is "pushed" or "dial" or "over" or "below" or "above" or "down" or "proud" or "corner" or "measured" or "with" or "using" or "clock" or "straight" or "straightedge" or "feelers" or "feeler" or "dti" or "mike" or "gauge" or "cranking" or "warm" or "cold" or "hot" || (Word(at) is "on" && Word(at + 1) is "the" && Word(at + 2) is "dial" or "clock" or "mike" or "feeler" or "feelers" or "nose"))
        {
            int stop = at;
            while (stop < end && !tokens[stop].IsBreak && Word(stop) is not ("and" or "but"))
                stop++;
            where.Add(Said(at, stop));
            return Tail(stop, end, where);
        }

        if (at == last && Word(at) is "at" or "on" && Word(at + 1) == "the")
        {
            int stop = at;
            while (stop < end && !tokens[stop].IsBreak && Word(stop) is not ("and" or "but") && NumberWords.At(tokens, stop) is null && Lexicon.Faults.Longest(tokens, stop).Values.Count == 0)
                stop++;
            if (stop >= end || tokens[stop].IsBreak)
            {
                where.Add(Said(at, stop));
                return stop;
            }
        }

        return last;
    }

    private string Said(int from, int to) => to <= from ? "" : text[tokens[from].Start..(tokens[to - 1].Start + tokens[to - 1].Length)];
}
