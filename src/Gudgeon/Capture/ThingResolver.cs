using Gudgeon.Engine;

namespace Gudgeon.Capture;

/// <summary>Turns a kind and its selectors into parts of this engine, or says that it cannot tell which.</summary>
internal sealed class ThingResolver(PartIndex index, EarContext context)
{
    /// <summary>What stands one to a valve.</summary>
    private static readonly HashSet<string> OfValve = ["seat", "guide", "spring", "stem-seal", "retainer", "collet"];

    /// <summary>The cylinder or bank that the sentence is about, for parts named after it without a number.</summary>
    public int? Cylinder { get; set; }
    public int? Bank { get; set; }

    /// <summary>The part named last, whose hoses and wires are meant first.</summary>
    public string Near { get; set; } = context.LastThing ?? "";

    /// <summary>The one part spoken of last: its kind without a number means it again.</summary>
    public string Same { get; set; } = context.LastAlone ? context.LastThing ?? "" : "";

    public Thing Resolve(IReadOnlyList<PartWord> words, Selectors selectors, bool plural, string said)
    {
        int rank = words.Min(w => w.Rank);
        var here = words.Where(w => w.IsLine ? index.Lines(w.Kind).Count > 0 : index.Parts(w.Kind).Count > 0).Distinct().ToList();
        if (here.Count == 0)
        {
            var first = words.OrderBy(w => w.Rank).ThenBy(w => w.IsLine).First();
            string name = first.IsLine ? said : index.NameOf(first.Kind);
            return new Thing(ThingSort.Lacking, first.Kind, [], Numbered(name, selectors)) { Where = Where(selectors, true) };
        }

        var best = here.Where(w => w.Rank == here.Min(h => h.Rank)).DistinctBy(w => (w.Kind, w.Id)).ToList();
        if (best.Count > 1 && best.Any(w => !w.IsLine && w.Kind == KindOf(context.LastThing)) && selectors.Numbers.Count == 0)
            best = [.. best.Where(w => !w.IsLine && w.Kind == KindOf(context.LastThing))];
        if (best.Count > 1 && best.Any(w => !w.IsLine && w.Kind == KindOf(Same)) && selectors.Numbers.Count == 0 && !plural)
            best = [.. best.Where(w => !w.IsLine && w.Kind == KindOf(Same))];
        if (best.Count > 1 && KindOf(Same) is "valve-in" or "valve-ex" && !plural && selectors.Numbers.Count == 0 && best.Any(w => OfValve.Contains(w.Kind)))
            best = [.. best.Where(w => OfValve.Contains(w.Kind))];
        if (best.Count > 1 && selectors.Numbers.Count > 0 && best.Any(w => !w.IsLine && index.Parts(w.Kind).Count > 1))
            best = [.. best.Where(w => !w.IsLine && index.Parts(w.Kind).Count > 1)];
        if (best.Count > 1 && selectors.Numbers.Count > 1 && best.Where(w => !w.IsLine && selectors.Numbers.All(n => index.Parts(w.Kind).Any(p => (p.Cylinder ?? p.Index.FirstOrDefault()) == n))).ToList() is { Count: > 0 } there)
            best = there;
        if (best.Any(w => w.IsLine) && best.Any(w => !w.IsLine))
            best = [.. best.Where(w => !w.IsLine)];
        if (best.Count == 2 && best.All(w => w.Kind is "valve-in" or "valve-ex") && (plural || selectors.All))
        {
            // "valves": inlet and exhaust.
            var sorts = best.Select(w => PartOf(w, selectors, true)).ToList();
            return sorts[0] with { Ids = [.. sorts[0].Ids, .. sorts[1].Ids], Name = selectors.Numbers.Count > 0 ? $"valves of {string.Join(", ", selectors.Numbers)}" : "valves" };
        }

        if (plural && best.Count == 2 && best.All(w => w.Kind.EndsWith("-manifold", StringComparison.Ordinal)))
        {
            // "manifolds": both of them.
            var both = best.Select(w => PartOf(w, selectors, true)).ToList();
            return both[0] with { Ids = [.. both[0].Ids, .. both[1].Ids], Name = "manifolds, inlet and exhaust" };
        }

        var things = best.Select(w => w.IsLine ? LineOf(w, selectors, said, plural) : PartOf(w, selectors, plural)).ToList();
        return things.Count == 1 ? things[0] : things[0] with { Others = [.. things.Skip(1)] };
    }

    /// <summary>Kind of the part that the note before spoke of.</summary>
    public string LastKind => KindOf(context.LastThing);

    public string KindOf(string? id) => id is not null && index.Engine.Parts.TryGetValue(id, out var part) ? part.Kind : "";

    private Thing LineOf(PartWord word, Selectors selectors, string said, bool plural)
    {
        var all = index.Lines(word.Kind).Where(l => word.Id is null || l.Id == word.Id).ToList();
        if (selectors.Numbers.Count > 0)
        {
            var numbered = all.Where(l => selectors.Numbers.Any(n => l.Id.EndsWith($".{n}", StringComparison.Ordinal))).ToList();
            all = numbered.Count > 0 ? numbered : all;
        }

        if (all.Count > 1 && !plural && !selectors.All && selectors.Numbers.Count == 0)
        {
            var each = all.Select(l => Line([l], said, selectors)).ToList();
            return each.Count <= 8 ? each[0] with { Others = [.. each.Skip(1)] } : new Thing(ThingSort.Line, word.Kind, [], said) { Where = Where(selectors, true) };
        }

        return Line(all, said, selectors);
    }

    private static Thing Line(IReadOnlyList<Line> lines, string said, Selectors selectors) =>
        new(ThingSort.Line, lines[0].Kind, [.. lines.Select(l => l.Id)], lines.Count == 1 && lines[0].Name.Length > 0 ? lines[0].Name : said) { Where = Where(selectors, false) };

    private Thing PartOf(PartWord word, Selectors said, bool plural)
    {
        var selectors = said.Copy();
        var all = index.Parts(word.Kind);
        IReadOnlyList<Part> left = word.Id is null ? all : [.. all.Where(p => p.Id == word.Id)];
        bool numberUsed = false;
        string side = "";
        if (selectors.Side.Length > 0)
        {
            int? bank = BankOf(selectors.Side);
            var named = left.Where(p => p.Name.StartsWith(selectors.Side + " ", StringComparison.OrdinalIgnoreCase)).ToList();
            var onBank = named.Count > 0 ? named : left.Any(p => p.Cylinder is not null && SideOf(p) == selectors.Side) ? [.. left.Where(p => SideOf(p) == selectors.Side)] : bank is { } b ? left.Where(p => p.Bank == b || (p.Bank is null && p.Cylinder is null && left.Count == 2 && p.Index.Count == 1 && p.Index[0] == b)).ToList() : [];
            if (onBank.Count > 0)
            {
                left = onBank;
                selectors.Side = "";
            }
            else if (bank is null && !selectors.Side.StartsWith("bank:", StringComparison.Ordinal) && left.Count == 2)
                return TwoSides(left, selectors);
            else
                side = selectors.Side.StartsWith("bank:", StringComparison.Ordinal) ? "bank " + selectors.Side[5..] : selectors.Side;
        }
        else if (Bank is { } spoken && left.Count > 1 && selectors.Numbers.Count == 0 && left.Any(p => p.Bank == spoken && p.Cylinder is null))
            left = [.. left.Where(p => p.Bank == spoken)];

        if (selectors.Numbers.Count > 0 && left.Count > 1)
        {
            var numbered = left.Where(p => selectors.Numbers.Contains(p.Cylinder ?? (p.Index.Count > 0 ? p.Index[0] : 0))).ToList();
            if (numbered.Count > 0)
            {
                left = numbered;
                numberUsed = true;
            }
        }
        else if (selectors.Numbers.Count == 0 && !plural && !selectors.All && Cylinder is { } cylinder && left.Count > 1 && left.Any(p => p.Cylinder == cylinder))
            left = [.. left.Where(p => p.Cylinder == cylinder)];

        // "its seat's pitted": of the one valve spoken of, that of its own side.
        if (left.Count > 1 && !plural && selectors is { All: false, Numbers.Count: 0, Side.Length: 0, Where.Count: 0, Gas.Length: 0 } && KindOf(Same) is "valve-in" or "valve-ex" && OfValve.Contains(word.Kind) && index.Engine.Parts[Same].Cylinder is { } its && left.Any(p => p.Cylinder == its))
        {
            left = [.. left.Where(p => p.Cylinder == its)];
            selectors.Gas = KindOf(Same) == "valve-ex" ? "ex" : "in";
        }

        if (selectors.Except.Count > 0 || selectors.ExceptLast)
            return AllBut(word.Kind, left, selectors);
        if (selectors.Parity is { } parity && left.All(p => p.Index.Count > 0) && left.Where(p => (p.Cylinder ?? p.Index[0]) % 2 == parity).ToList() is { Count: > 0 } even)
            left = even;
        foreach (string picked in selectors.Where.ToList())
        {
            // The top shells are the upper ones.
            string level = word.Kind is not ("main-shell" or "rod-shell") ? picked : picked switch { "top" => "upper", "bottom" => "lower", _ => picked };
            var byName = left.Where(p => p.Name.Split(' ').Contains(level, StringComparer.OrdinalIgnoreCase)).ToList();
            if (byName.Count > 0 && byName.Count < left.Count)
            {
                left = byName;
                selectors.Where.Remove(picked);
            }
        }

        if (word.Kind == "main-shell")
            left = InMain(left, selectors);
        left = ByGas(word.Kind, left, selectors);
        left = InRow(left, selectors, plural || selectors.All);
        if (left.Count > 1 && !plural && !selectors.All && selectors is { Numbers.Count: 0, Side.Length: 0, Where.Count: 0, Gas.Length: 0 } && left.FirstOrDefault(p => p.Id == Same) is { } again)
            left = [again];
        string where = Where(selectors, !numberUsed);
        if (side.Length > 0)
            where = where.Length > 0 ? $"{side} {where}" : side;
        if (left.Count > 1 && !plural && !selectors.All && !(numberUsed && selectors.Numbers.Count > 1))
            return Open(word.Kind, left, where);
        return Known(word.Kind, left, all, where);
    }

    /// <summary>"middle main shells", "the front and rear mains": both shells of a main by its place.</summary>
    private static IReadOnlyList<Part> InMain(IReadOnlyList<Part> shells, Selectors selectors)
    {
        var mains = shells.Where(s => s.Index.Count > 0).Select(s => s.Index[0]).Distinct().Order().ToList();
        if (mains.Count < 3 || selectors.Numbers.Count > 0)
            return shells;
        var picked = new HashSet<int>();
        foreach (string word in selectors.Where.ToList())
        {
            int? main = word switch
            {
                "front" => mains[0],
                "rear" or "back" or "last" or "end" => mains[^1],
                "middle" or "centre" or "center" when mains.Count % 2 == 1 => mains[mains.Count / 2],
                _ => null,
            };
            if (main is { } one)
            {
                picked.Add(one);
                selectors.Where.Remove(word);
            }
        }

        return picked.Count == 0 ? shells : [.. shells.Where(s => picked.Contains(s.Index[0]))];
    }

    /// <summary>"front", "last two", "middle", "outer": picked by the place in a single row, numbered from the front.</summary>
    private static IReadOnlyList<Part> InRow(IReadOnlyList<Part> parts, Selectors selectors, bool plural)
    {
        if (parts.Count < 3 || selectors.Numbers.Count > 0 || parts.Any(p => p.Index.Count != 1 || (p.Cylinder is null && p.Kind is not ("main-cap" or "carrier" or "main-bush"))) || parts.Select(p => p.Bank).Distinct().Count() > 1)
            return parts;
        int all = parts.Count;
        int some = selectors.AllOf ?? 0;
        var row = parts.OrderBy(p => p.Cylinder ?? p.Index[0]).ToList();
        string? word = selectors.Where.FirstOrDefault(w => w is "front" or "rear" or "last" or "middle" or "centre" or "center" or "outer" or "inner" or "end");
        IReadOnlyList<Part> picked = word switch
        {
            "front" when !plural || some > 0 => [.. row.Take(Math.Max(1, some))],
            "rear" or "last" when !plural || some > 0 => [.. row.TakeLast(Math.Max(1, some))],
            "middle" or "centre" or "center" or "inner" when plural && all % 2 == 0 && all > 3 && some is 0 or 2 => [.. row.Skip((all / 2) - 1).Take(2)],
            "middle" or "centre" or "center" when !plural && all % 2 == 1 => [row[all / 2]],
            "outer" or "end" when plural && some is 0 or 2 => [row[0], row[^1]],
            _ => [],
        };
        if (word is null || picked.Count == 0)
            return parts;
        selectors.Where.Remove(word);
        return picked;
    }

    /// <summary>"all but number three", "all but the last"; a bare figure may say how many are left out, and then it is asked.</summary>
    private Thing AllBut(string kind, IReadOnlyList<Part> parts, Selectors selectors)
    {
        var row = parts.OrderBy(p => p.Cylinder ?? p.Index[0]).ToList();
        IReadOnlyList<Part> kept = selectors.ExceptLast ? [.. row.Take(row.Count - 1)] : [.. parts.Where(p => !selectors.Except.Contains(p.Cylinder ?? (p.Index.Count > 0 ? p.Index[0] : 0)))];
        var named = Known(kind, kept, parts, "");
        return selectors.ExceptCounts
            ? named with { Others = [new Thing(ThingSort.Part, kind, [], index.NameOf(kind)) { Where = $"{parts.Count - selectors.Except[0]} of {parts.Count}" }] }
            : named;
    }

    /// <summary>One is meant and the words do not say which.</summary>
    private Thing Open(string kind, IReadOnlyList<Part> left, string where)
    {
        var still = left.Where(p => !context.Off.Contains(p.Id)).ToList();
        if (still.Count == 1)
            return Known(kind, still, left, where);
        if (where.Length > 0 || left.Count > 8)
            return new Thing(ThingSort.Part, kind, [], index.NameOf(kind)) { Where = where.Length > 0 ? where : "one of them" };
        var each = left.Select(p => Known(kind, [p], left, where)).ToList();
        return each[0] with { Others = [.. each.Skip(1)] };
    }

    private Thing TwoSides(IReadOnlyList<Part> two, Selectors selectors)
    {
        string where = Where(selectors, true);
        var first = Known(two[0].Kind, [two[0]], two, where);
        return first with { Others = [Known(two[0].Kind, [two[1]], two, where)] };
    }

    /// <summary>What the owner calls the bank of a part, told from the names of the heads.</summary>
    private string SideOf(Part part) =>
        part.Bank is { } bank && index.Parts("head").FirstOrDefault(h => h.Bank == bank) is { } head && head.Name.Split(' ')[0] is "left" or "right" && head.Name.Split(' ')[0] is { } side ? side : "";

    private int? BankOf(string side) => side switch
    {
        "left" => context.LeftBank,
        "right" => context.LeftBank is { } left ? 3 - left : null,
        "far" => context.FarBank ?? OtherBank(),
        "near" => context.FarBank is { } far ? 3 - far : null,
        "other" => OtherBank(),
        _ when !side.StartsWith("bank:", StringComparison.Ordinal) => null,
        _ => int.Parse(side[5..], System.Globalization.CultureInfo.InvariantCulture),
    };

    /// <summary>The bank spoken of last, for "that side".</summary>
    public int? SpokenBank => Bank ?? (context.LastThing is { } last && index.Engine.Parts.TryGetValue(last, out var part) ? part.Bank : null);

    /// <summary>The one with the number among what the note before told of in a row: "the seal on number two" after a rail with its injectors.</summary>
    public Thing? Numbered(int number)
    {
        foreach (var row in context.Last.Reverse().SelectMany(f => f is Off off ? off.With.Append(off.Thing) : Listener.About(f) is { } about ? [about] : []))
        {
            if (row is { Sort: ThingSort.Part, Ids.Count: > 1 } && row.Ids.Where(i => index.Engine.Parts.TryGetValue(i, out var p) && (p.Cylinder ?? (p.Index is [var n] ? n : 0)) == number).ToList() is [var id])
                return Known(row.Kind, [index.Engine.Parts[id]], [], "");
        }

        return null;
    }

    private int? OtherBank() =>
        Bank is { } bank ? 3 - bank : context.LastThing is { } last && index.Engine.Parts.TryGetValue(last, out var part) && part.Bank is { } b ? 3 - b : null;

    /// <summary>Inlet before exhaust in the order of places, for parts of the valve train that stand one per valve.</summary>
    private IReadOnlyList<Part> ByGas(string kind, IReadOnlyList<Part> parts, Selectors selectors)
    {
        if (selectors.Gas.Length == 0 || kind is "valve-in" or "valve-ex")
            return parts;
        string word = selectors.Gas == "in" ? "inlet" : "exhaust";
        var named = parts.Where(p => p.Name.Contains(word, StringComparison.OrdinalIgnoreCase)).ToList();
        if (named.Count > 0)
            return named;
        int inlets = index.Parts("valve-in").Count(p => p.Cylinder == 1 || (p.Index.Count > 0 && p.Index[0] == 1));
        int outlets = index.Parts("valve-ex").Count(p => p.Cylinder == 1 || (p.Index.Count > 0 && p.Index[0] == 1));
        if (inlets > 0 && parts.Count > 0 && parts.All(p => p.Index.Count == 2) && index.Parts(kind).Count(p => p.Index.Count == 2 && p.Index[0] == 1) == inlets + outlets)
        {
            selectors.Where.Remove(word);
            return [.. parts.Where(p => selectors.Gas == "in" ? p.Index[1] <= inlets : p.Index[1] > inlets)];
        }

        if (!selectors.Where.Contains(word))
            selectors.Where.Add(word);
        return parts;
    }

    private Thing Known(string kind, IReadOnlyList<Part> parts, IReadOnlyList<Part> all, string where) =>
        new(ThingSort.Part, kind, [.. parts.Select(p => p.Id)], NameOf(parts, all)) { Where = where };

    private string NameOf(IReadOnlyList<Part> parts, IReadOnlyList<Part> all)
    {
        if (parts.Count == 1)
            return parts[0].Name;
        string name = index.NameOf(parts[0].Kind);
        if (parts.Count == all.Count && parts.Count > 1)
            return $"{name}s, all {parts.Count}";
        return $"{name}s {string.Join(", ", parts.Select(p => string.Join(".", p.Index)))}";
    }

    private static string Where(Selectors selectors, bool numbers)
    {
        var words = selectors.Where.ToList();
        if (numbers && selectors.Numbers.Count > 0)
            words.Add(string.Join(" ", selectors.Numbers));
        if (selectors.Side.Length > 0 && numbers && selectors.Side.StartsWith("bank:", StringComparison.Ordinal))
            words.Add("bank " + selectors.Side[5..]);
        return string.Join(" ", words);
    }

    private static string Numbered(string name, Selectors selectors) =>
        selectors.Numbers.Count > 0 ? $"{name} {string.Join(", ", selectors.Numbers)}" : name;
}
