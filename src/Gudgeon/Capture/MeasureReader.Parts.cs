using System.Globalization;

namespace Gudgeon.Capture;

/// <summary>Which one was measured, and the ways of speaking that name no characteristic.</summary>
internal sealed partial class MeasureReader
{
    private static readonly Characteristic Undersize = new("undersize", "crank", Quantity.Length, 0.05m, 3);
    private static readonly Characteristic Oversize = new("oversize", "bore", Quantity.Length, 0.05m, 4);
    private static readonly Characteristic Flat = new("flatness", "head", Quantity.Length, 0.001m, 2);
    private static readonly Characteristic Temperature = new("temperature", "block", Quantity.Temperature, -30, 60);
    private static readonly Characteristic LooseningTorque = new("loosening torque", "", Quantity.Torque, 1, 2000);

    /// <summary>"bore one", "main three": the number that picks, told from a first value by what follows.</summary>
    private int Index(int at, int end, Characteristic what, List<int> numbers)
    {
        int to = at;
        bool named = false;
        while (Word(to) is "number" or "going" or "from" or "on" or "in" or "for" or "of" or "cylinder" or "cylinders" or "no" or "bore" or "the" or "journal" or "rod" or "piston")
        {
            named |= Word(to) is "number" or "cylinder" or "cylinders" or "no" or "bore" or "rod" or "piston";
            to++;
        }

        if (named && what.Most < 10 && Word(to + 1) == "point" && NumberWords.At(tokens, to + 1) is not null && NumberWords.At([tokens[to]], 0) is { IsCount: true } alone)
        {
            // "in bore one point four five": bore 1, and then the figure.
            numbers.Add(alone.Int);
            return to + 1;
        }

        if (NumberWords.At(tokens, to) is not { IsCount: true } n || n.Int is < 1 or > 28 || Units.At(tokens, n.To, n) is not null)
            return at;
        if (Word(n.To) is "to" && NumberWords.At(tokens, n.To + 1) is { IsCount: true } last && last.Int > n.Int && last.Int <= 28)
        {
            for (int i = n.Int; i <= last.Int; i++)
                numbers.Add(i);
            return last.To;
        }

        // "one to four point two": up to which one, unless the figure is too big to be its own.
        if (Word(n.To) is "to" or "through" && NumberWords.At(tokens, n.To + 1) is { Sort: NumSort.Decimal } run && tokens[run.From].IsWord && Word(run.From + 1) == "point" && decimal.Truncate(run.Value) is var upto && upto > n.Value && upto <= 28 && UnitSettler.Settle(run.Value - upto, "", "", what, context, Inches())[0].Unit.Length > 0)
        {
            numbers.AddRange(Enumerable.Range(n.Int, (int)upto - n.Int + 1));
            return run.From + 1;
        }

        if (Word(n.To) is "to" or "through" && NumberWords.At(tokens, n.To + 1) is { Sort: NumSort.Decimal } fused && tokens[fused.From].IsWord && fused.Value > n.Value && fused.Value < 10)
            return -1;
        if (!named && what.Least >= 50 && what.Quantity == Quantity.Pressure && NumberWords.At(tokens, n.To) is { Value: >= 10 })
            return at;
        if (!named && what.Series && NumberWords.At(tokens, n.To) is { Value: >= 10 })
            return at;
        if (what.Series && !named && what.Name == "valve clearance" && !(n.To < end && tokens[n.To].Sort == TokenSort.Comma))
            return at;
        if (!named && what.Name == "mass")
            return at;
        if (!named && what.Name == "compression" && !(Word(n.To) is "is" or "'s" or "was" or ""))
            return at;
        if (!(named || FollowedByNumber(n.To, end)))
            return at;
        if (!named && what.Name == "compression")
            return at;
        numbers.Add(n.Int);
        return n.To;
    }

    /// <summary>"on main four", "of big end three" inside a reading.</summary>
    private (string Kind, int Number, int To)? BearingNumber(int at)
    {
        var (found, to) = Characteristic.Book.Longest(tokens, at);
        if (found.Count > 0 && found[0].Name is "main journal" or "big-end journal" && NumberWords.At(tokens, to) is { Sort: NumSort.Decimal, Value: < 12 } && Word(to + 1) == "point" && NumberWords.At([tokens[to]], 0) is { IsCount: true } alone)
            return (found[0].Name == "main journal" ? "main-shell" : "rod-shell", alone.Int, to + 1);
        if (found.Count == 0 || found[0].Name is not ("main journal" or "big-end journal") || NumberWords.At(tokens, to) is not { IsCount: true } n || n.Int is < 1 or > 28)
            return null;
        return (found[0].Name == "main journal" ? "main-shell" : "rod-shell", n.Int, n.To);
    }

    private bool FollowedByNumber(int at, int end)
    {
        for (int i = at; i < end && i < at + 7; i++)
        {
            if (tokens[i].IsEnd)
                return false;
            if (NumberWords.At(tokens, i) is { Sort: not NumSort.Ordinal })
                return true;
            if (tokens[i].Sort != TokenSort.Comma && !Links.Contains(Word(i)) && !Positions.Contains(Word(i)))
                return false;
        }

        return false;
    }

    /// <summary>"in bore three", "on number four" in the middle of a reading.</summary>
    private (int Number, int To)? Bore(int at, int end)
    {
        int to = at;
        while (Word(to) is "in" or "on" or "number" or "bore" or "cylinder" or "the" or "for" or "of")
            to++;
        return to > at && Word(to - 1) is "number" or "bore" or "cylinder" or "on" && NumberWords.At(tokens, to) is { IsCount: true } n && n.Int is > 0 and <= 28 && FollowedByNumber(n.To, end) ? (n.Int, n.To) : null;
    }

    /// <summary>"wet on four one forty": the value belongs to one cylinder of the row.</summary>
    private (string Label, int To)? OnCylinder(int at, int end)
    {
        int to = at;
        string state = "";
        if (Word(to) is "wet" or "dry" or "cold" or "hot")
            state = Word(to++);
        if (Word(to) is not ("on" or "cylinder" or "number") || (Word(to) is "on" && state.Length == 0))
            return null;
        while (Word(to) is "on" or "cylinder" or "number")
            to++;
        return NumberWords.At(tokens, to) is { IsCount: true } n && n.Int is > 0 and <= 28 && FollowedByNumber(n.To, end)
            ? ($"cylinder {n.Int.ToString(CultureInfo.InvariantCulture)}{(state.Length > 0 ? " " + state : "")}", n.To)
            : null;
    }

    /// <summary>"at ninety", "at zero": the axis of a reading.</summary>
    private (string Label, int To)? Angle(int at)
    {
        if (Word(at) != "at" || NumberWords.At(tokens, at + 1) is not { Sort: NumSort.Whole } n || n.Value is not (0 or 30 or 45 or 60 or 90 or 120 or 180))
            return null;
        int to = Units.At(tokens, n.To) is { Unit: "deg" } unit ? unit.To : n.To;
        return NumberWords.At(tokens, to) is null ? ($"at {n.Int}°", to) : null;
    }

    /// <summary>Words before the characteristic that say whose it is: "top ring gap", "number two bore", "cam end float".</summary>
    private (Characteristic What, int At) Qualify(int from, Characteristic what, int at, int end)
    {
        if (what.Kind == "crank" && Word(at) is "journal" or "pin" or "journals" && at < end)
            at++;
        if (what.Name is "bore" or "piston diameter" or "deck height" && Word(at) is "diameter" or "size" or "skirt" or "height")
            at++;
        if (what is { Name: "valve clearance", Kind: "" } && Word(at) is "inlet" or "inlets" or "exhaust" or "exhausts" or "intake")
            return (what with { Kind = Word(at).StartsWith('e') ? "valve-ex" : "valve-in" }, at + 1);
        if (what.Name == "ring gap" && Word(at) is "top" or "second")
            return (what with { Name = $"{Word(at)} ring gap" }, at + 1);
        if (what.Name == "clearance" && from > 0)
        {
            string before = Word(from - 1);
            string kind = before switch { "piston" => "piston", "main" or "mains" => "main-shell", "end" when Word(from - 2) == "big" => "rod-shell", "rod" => "rod-shell", "guide" => "guide", _ => "" };
            what = what with { Kind = kind };
        }

        return (what, at);
    }

    /// <summary>What a characteristic is measured on, by its number in the row.</summary>
    internal Thing? Of(Characteristic what, IReadOnlyList<int> numbers) => ThingOf(what, [.. numbers], 0);

    private Thing? ThingOf(Characteristic what, List<int> numbers, int from)
    {
        int? before = told ?? NumberBefore(from);
        if (numbers.Count == 0 && before is { } n)
            numbers.Add(n);
        if (numbers.Count == 0 && resolver.Cylinder is { } cylinder && what.Kind is "bore" or "cylinder" or "piston" or "ring-comp")
            numbers.Add(cylinder);
        if (numbers.Count == 0 && forCylinder is { } every && what.Kind is "valve-in" or "valve-ex" or "bore" or "cylinder" or "piston" or "ring-comp" or "plug")
            numbers.Add(every);
        string place = string.Join(",", numbers);
        switch (what.Kind)
        {
            case "bore":
                foreach (string kind in new[] { "liner", "barrel" })
                {
                    if (index.Parts(kind).Count > 0)
                        return One(kind, numbers);
                }

                return new Thing(ThingSort.Part, "block", [.. index.Parts("block").Concat(index.Parts("crankcase")).Take(1).Select(p => p.Id)], place.Length > 0 ? $"bore {place}" : "bores") { Where = place.Length > 0 ? $"bore {place}" : "" };
            case "cylinder":
                return new Thing(ThingSort.Part, "", [], place.Length > 0 ? $"cylinder {place}" : "cylinders in order");
            case "crank":
                string what1 = what.Name switch { "main journal" => "main", "big-end journal" => "big end", _ => "" };
                return new Thing(ThingSort.Part, "crank", [.. index.Parts("crank").Take(1).Select(p => p.Id)], "crank") { Where = Join(what1, place) };
            case "" when CylinderBefore(from) is { } bore:
                return ThingOf(what with { Kind = "bore" }, [bore], from);
            case "":
                return null;
            case "ring-comp" when what.Name is "top ring gap" or "second ring gap":
                int ring = what.Name[0] == 't' ? 1 : 2;
                var all = One(what.Kind, numbers);
                var picked = all.Ids.Where(i => i.EndsWith($".{ring}", StringComparison.Ordinal) && i.Count(c => c == '.') == 2).ToList();
                return picked.Count > 0 ? all with { Ids = picked, Name = picked.Count == 1 ? index.Engine.Parts[picked[0]].Name : all.Name } : all;
            default:
                return index.Parts(what.Kind).Count > 0 ? One(what.Kind, numbers) : null;
        }
    }

    private int? CylinderBefore(int from)
    {
        int at = from - 1;
        while (at > 0 && Word(at) is "'s" or "the")
            at--;
        return at > 0 && Word(at - 1) is "bore" or "cylinder" && NumberWords.At(tokens, at) is { IsCount: true } n ? n.Int : null;
    }

    private Thing One(string kind, List<int> numbers)
    {
        var selectors = new Selectors { Gas = gas };
        selectors.Numbers.AddRange(numbers);
        return resolver.Resolve([new PartWord(kind, false, null, 0)], selectors, true, kind);
    }

    /// <summary>in or ex, while a reading is told of the inlet or the exhaust side.</summary>
    private string gas = "";

    /// <summary>"intake cam end play six thou", and after it "exhaust cam eight": of which side it is told.</summary>
    private MeasureRead? Gassed(int at, int end)
    {
        if (Word(at) is not ("inlet" or "intake" or "exhaust"))
            return null;
        gas = Word(at) == "exhaust" ? "ex" : "in";
        MeasureRead? read = null;
        if (Characteristic.Book.Longest(tokens, at + 1) is { Values: [var what, ..] } found && what.Kind is "cam" or "guide" or "follower" or "spring" && found.To > Characteristic.Book.Longest(tokens, at).To)
            read = Read(at, found.To, end, what, true);
        else if (previous is { Kind: "cam" } same && at - previousTo is 1 or 2 && Word(at + 1) == "cam" && FollowedByNumber(at + 2, end))
            read = Read(at, at + 2, end, same, true);
        gas = "";
        return read;
    }

    /// <summary>"a two thou feeler goes in and a three doesn't": as much as goes in.</summary>
    private MeasureRead? Feeler(int at, int end)
    {
        int from = Word(at) is "a" or "the" ? at + 1 : at;
        if (NumberWords.At(tokens, from) is not { Sort: NumSort.Whole or NumSort.Decimal or NumSort.Fraction } n || Units.At(tokens, n.To, n) is not { Unit: "thou" or "mm" or "hundredth" or "mil" } unit)
            return null;
        int to = unit.To;
        while (Word(to) is "feeler" or "gauge" or "blade" or "leaf" or "shim")
            to++;
        if (Word(to) is not ("goes" or "slides" or "fits" or "passes" or "slips" or "went" or "slid") || (to == unit.To && Word(to) is "went" or "slid"))
            return null;
        int and = to;
        while (and < end && !tokens[and].IsBreak && Word(and) is not ("and" or "but"))
            and++;
        if (and < end && tokens[and].Sort == TokenSort.Comma)
            and++;
        if (Word(and) is "and" or "but")
            and++;
        int other = Word(and) is "a" or "the" ? and + 1 : and;
        if (NumberWords.At(tokens, other) is not { Sort: not NumSort.Ordinal } more || more.Value <= n.Value)
            return null;
        int no = Units.At(tokens, more.To, more) is { } again ? again.To : more.To;
        if (Word(no) is not ("doesnt" or "wont" or "wouldnt" or "didnt" or "cant") && !(Word(no) is "does" or "will" or "would" or "did" && Word(no + 1) == "not"))
            return null;
        no = Word(no) is "does" or "will" or "would" or "did" ? no + 2 : no + 1;
        if (Word(no) is "go" or "fit" or "pass" or "slide")
            no++;
        Thing? thing = null;
        for (int k = 0; k < at && thing is null; k++)
        {
            if (new ThingReader(tokens, index, resolver).At(k) is { Thing: { Sort: ThingSort.Part, Ids.Count: > 0 } named })
                thing = named;
        }

        var what = Enumerable.Range(0, at).Select(k => Characteristic.Book.Longest(tokens, k).Values.FirstOrDefault()).LastOrDefault(c => c is { Quantity: Quantity.Length, Most: < 5 })
            ?? (thing?.Kind is "head" or "block" or "inlet-manifold" or "exhaust-manifold" or "sump" or "cam-cover" or "flywheel" ? Flat with { Kind = thing.Kind } : null);
        if (what is null)
            return null;
        var ways = UnitSettler.Settle(n.Value, unit.Unit, Said(from, unit.To), what, context, Inches());
        var measured = new Measured(what.Name, thing ?? ThingOf(what, [], at), [ways[0]], "", Said(at, no));
        return new MeasureRead(at, no, [.. ways.Select(w => measured with { Values = [w] })], measured.Thing, null);
    }

    private int? NumberBefore(int from)
    {
        if (from < 1)
            return null;
        int at = from - 1;
        while (at > 0 && Word(at) is "'s" or "the" or "ring" or "top" or "second" or "inlet" or "exhaust")
            at--;
        return NumberWords.At(tokens, at) is { IsCount: true } n && n.To <= from && n.Int is > 0 and <= 28 && (at > 0 && Word(at - 1) is "number" or "cylinder" or "bore" or "no" || at + 1 == from) ? n.Int : null;
    }

    /// <summary>"ten under", "0.25 oversize", "plus point five".</summary>
    private MeasureRead? Resize(int at, int end)
    {
        if (NumberWords.At(tokens, at) is not { Sort: not (NumSort.Ordinal or NumSort.Vague) } n)
            return null;
        int to = n.To;
        string unit = "";
        if (Units.At(tokens, to, n) is { Unit: "thou" or "mm" or "mil" or "in" } read)
            (unit, to) = read;
        if (Word(to) is "on" or "for" && Sized(at) is { } sized && Word(to + 1) is "the" && Characteristic.Book.Longest(tokens, to + 2).Values.Count > 0)
            return Sized(at, to, n, sized, unit);
        string nounName = "";
        bool under = Word(to) is "under" or "undersize" or "undersized";
        bool over = Word(to) is "over" or "oversize" or "oversized";
        if (!(under || over) || (Word(to) is "over" or "under" && Word(to + 1) is "a" or "the" or "there" or "it" && Word(to + 2) is not ("mains" or "big" or "bores" or "main")))
            return null;
        to++;
        if (Word(to) is "size")
            to++;
        var what = under ? Undersize : Oversize;
        int start = at;
        for (int k = Math.Max(0, at - 4); k < at; k++)
        {
            if (Characteristic.Book.Longest(tokens, k) is { Values.Count: > 0 } noun && noun.To <= at && Enumerable.Range(noun.To, at - noun.To).All(i => Word(i) is "are" or "is" or "'s" or "were" or "already" or "all" or "at"))
            {
                start = k;
                what = what with { Kind = noun.Values[0].Kind };
                nounName = noun.Values[0].Name;
                break;
            }
        }

        if (unit.Length == 0)
            unit = n.Value >= 3 ? "thou" : n.Value < 0.1m && context.Unit == BookUnit.Inch ? "in" : "mm";
        var amount = UnitSettler.Settle(under ? -n.Value : n.Value, unit, Said(at, to), what, context, false)[0];
        int which = to;
        string where = nounName switch { "main journal" => "mains", "big-end journal" => "big ends", _ => "" };
        while (Word(which) is "on" or "the" or "all" or "for")
            which++;
        if (Characteristic.Book.Longest(tokens, which) is { Values.Count: > 0 } of && which < end)
        {
            where = of.Values[0].Name switch { "main journal" => "mains", "big-end journal" => "big ends", "bore" => "bores", _ => of.Values[0].Name };
            what = what with { Kind = of.Values[0].Kind };
            to = of.To;
        }

        var thing = what.Kind == "crank" && index.Parts("crank").Count > 0
            ? new Thing(ThingSort.Part, "crank", [index.Parts("crank")[0].Id], "crank") { Where = where }
            : ThingOf(what, [], at);
        while (Word(to) is "already" or "now")
            to++;
        return new MeasureRead(start, to, [new Measured(what.Name, thing, [amount], "", Said(start, to))], thing, null);
    }

    /// <summary>"ten under on the mains, twenty on the big ends": the second leans on the first.</summary>
    private bool? Sized(int at)
    {
        for (int i = at - 1; i >= 0 && i > at - 9 && !tokens[i].IsEnd; i--)
        {
            if (Word(i) is "under" or "undersize")
                return true;
            if (Word(i) is "oversize")
                return false;
        }

        return null;
    }

    private MeasureRead Sized(int at, int to, Num n, bool under, string unit)
    {
        var of = Characteristic.Book.Longest(tokens, to + 2);
        string where = of.Values[0].Name switch { "main journal" => "mains", "big-end journal" => "big ends", "bore" => "bores", _ => of.Values[0].Name };
        var what = under ? Undersize : Oversize;
        unit = unit.Length > 0 ? unit : n.Value >= 3 ? "thou" : "mm";
        var amount = UnitSettler.Settle(under ? -n.Value : n.Value, unit, Said(at, to), what, context, false)[0];
        var thing = of.Values[0].Kind == "crank" && index.Parts("crank").Count > 0
            ? new Thing(ThingSort.Part, "crank", [index.Parts("crank")[0].Id], "crank") { Where = where }
            : ThingOf(what with { Kind = of.Values[0].Kind }, [], at);
        return new MeasureRead(at, of.To, [new Measured(what.Name, thing, [amount], "", Said(at, of.To))], thing, null);
    }

    /// <summary>"head's out six hundredths corner to corner": flatness, not a part that came out.</summary>
    private MeasureRead? Out(int at, int end)
    {
        if (Word(at) is not ("out" or "warped" or "bowed" or "hollow" or "high" or "low" or "flat") || NumberWords.At(tokens, Word(at + 1) is "by" or "about" or "within" or "to" or "at" ? at + 2 : at + 1) is not { Sort: not NumSort.Ordinal } n)
            return null;
        if (Units.At(tokens, n.To, n) is not { Unit: "hundredth" or "tenth" or "thou" or "mm" or "um" or "hundredth mm" or "tenth mm" } unit)
            return null;
        int start = at - 1;
        while (start > 0 && Word(start) is "'s" or "is" or "was")
            start--;
        Thing? thing = null;
        int back = start;
        for (int k = start; k >= 0 && k > start - 4 && !tokens[k].IsBreak; k--)
        {
            if (new ThingReader(tokens, index, resolver).At(k) is { } read && read.To == start + 1)
                (thing, back) = (read.Thing, k);
        }

        // "straightedge on the left head, it's out five thou": of what was named before the pause.
        start = thing is null ? at : back;
        for (int k = at - 1; thing is null && k >= 0 && !tokens[k].IsEnd; k--)
        {
            if (new ThingReader(tokens, index, resolver).At(k) is { Thing: { Sort: ThingSort.Part, Ids.Count: 1, Others.Count: 0, Detail: "" } laid })
                thing = laid;
        }

        var where = new List<string>();
        int last = Tail(unit.To, end, where);
        var ways = UnitSettler.Settle(n.Value, unit.Unit, Said(n.From, unit.To), Flat, context, false);
        var measured = new Measured("flatness", thing, [ways[0]], string.Join(" ", where), Said(start, last));
        return new MeasureRead(start, last, [.. ways.Select(w => measured with { Values = [w] })], thing, null);
    }

    /// <summary>"garage is eight degrees": the air stands for what has lain in it, and so does its reading.</summary>
    private MeasureRead? Warmth(int at, int end)
    {
        if (Word(at) is not ("garage" or "shed" or "workshop" or "shop" or "block" or "room" or "temperature" or "air" or "head" or "crank"))
            return null;
        int to = at + 1;
        while (to < end && Word(to) is "is" or "'s" or "was" or "at" or "about" or "only" or "here" or "in" or "temperature" or "reads" or "of" or "minus")
            to++;
        if (NumberWords.At(tokens, to) is not { Sort: NumSort.Whole or NumSort.Decimal } n || Units.At(tokens, n.To, n) is not { Unit: "deg" or "°C" or "°F" } unit)
            return null;
        decimal sign = Word(to - 1) == "minus" ? -1 : 1;
        int last = unit.To;
        while (last < end && !tokens[last].IsBreak)
            last++;
        bool part = index.Book.Longest(tokens, at).Values.Count > 0 || Said(at, last).Contains("block", StringComparison.OrdinalIgnoreCase);
        var block = part ? new Thing(ThingSort.Part, "block", [.. index.Parts("block").Concat(index.Parts("crankcase")).Take(1).Select(p => p.Id)], "block") : null;
        var amount = UnitSettler.Settle(sign * n.Value, unit.Unit == "deg" ? "deg" : unit.Unit, Said(n.From, unit.To), Temperature, context, false)[0];
        return new MeasureRead(at, last, [new Measured("temperature", block, [amount], "", Said(at, last))], block, null);
    }

    /// <summary>"took a good two hundred foot pound to crack", "broke loose at eighty", "ninety foot pounds to shift it": what it took to undo, never a setting.</summary>
    private MeasureRead? Loosening(int at, int end)
    {
        int to = at;
        if (Word(at) is "took" or "needed" or "wanted")
            to++;
        else if (Word(at) is "broke" or "cracked" or "came" or "let" or "gave" or "shifted" or "popped")
        {
            to++;
            while (Word(to) is "loose" or "free" or "off" or "go" or "up" or "in" or "away" or "undone" or "way" or "finally")
                to++;
            if (Word(to) is not ("at" or "around" or "about" or "with"))
                return null;
            to += Word(to) is "at" or "with" ? 1 : 0;
        }
        else if (NumberWords.At(tokens, at) is null || Figures.At(tokens, at, true, null) is not { } force || Units.At(tokens, force.To) is not { Unit: "lbf ft" or "N m" } pull || Word(pull.To) != "to" || Word(pull.To + 1) is not ("shift" or "undo" or "crack" or "break" or "budge" or "move" or "loosen" or "free"))
            return null;
        bool rough = false;
        while (Word(to) is "a" or "good" or "about" or "nearly" or "over" or "around" or "well")
        {
            rough |= Word(to) is not "a";
            if (Word(to) == "a" && Word(to + 1) == "hundred")
                break;
            to++;
        }

        if (Figures.At(tokens, to, true, null) is not { } n || Units.At(tokens, n.To) is not { Unit: "lbf ft" or "N m" } unit)
            return null;
        int last = unit.To;
        if (Word(last) is "to")
        {
            while (last < end && !tokens[last].IsBreak && Word(last) is not "and")
                last++;
        }

        int start = at;
        Thing? thing = null;
        for (int i = at - 1; i >= 0 && !tokens[i].IsBreak; i--)
        {
            if (index.Book.Longest(tokens, i) is { Values.Count: > 0 } found && found.To <= at && new ThingReader(tokens, index, resolver).At(i) is { } read)
            {
                thing = read.Thing;
                start = i;
            }
        }

        var measured = new Measured(LooseningTorque.Name, thing, [new Amount(n.Value, unit.Unit, Said(to, unit.To)) { Rough = rough }], "", Said(start, last));
        return new MeasureRead(start, last, [measured], thing, null);
    }
}
