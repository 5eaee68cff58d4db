namespace Gudgeon.Capture;

/// <summary>Parts named after other parts, both sides at once, and all but one.</summary>
internal sealed partial class ThingReader
{
    /// <summary>The listed words at the token, with those named after them: timing chain tensioner, inlet valve guides.</summary>
    private (List<PartWord> Values, int To) Named(int at, Selectors selectors)
    {
        var (values, end) = Longest(at);
        for (int round = 0; round < 2 && values.Count > 0 && !(tokens[end - 1].Plural && Word(end - 1) is not "mains"); round++)
        {
            var (heads, to) = Longest(end);
            if (to <= end || NumberWords.At(tokens, end) is not null || Lexicon.Fasteners.Longest(tokens, end) is { Values.Count: > 0 } fastener && fastener.To >= to)
                break;
            var owned = heads.Where(h => h is { IsLine: false, Rank: < 2 } && index.Parts(h.Kind).Count > 0 && values.Any(v => PartIndex.Owns(h.Kind, v.Kind))).ToList();
            if (owned.Count == 0)
                break;
            if (values.All(v => v.Kind is "valve-in") || Word(at) is "inlet" or "intake")
                selectors.Gas = "in";
            else if (values.All(v => v.Kind is "valve-ex") || Word(at) is "exhaust")
                selectors.Gas = "ex";
            (values, end) = (owned, to);
        }

        return (values, end);
    }

    /// <summary>"valves" alone: both sorts, when several are meant.</summary>
    private (List<PartWord> Values, int To)? Valves(int at) =>
        (Word(at) == "valves" || (Word(at) == "valve" && Word(at - 1) is "every" or "each" or "single")) && index.Parts("valve-in").Count > 0 && index.Parts("valve-ex").Count > 0 && Word(at - 1) is not ("in" or "relief" or "check" or "control")
            ? ([new PartWord("valve-in", false, null, 0), new PartWord("valve-ex", false, null, 0)], at + 1)
            : null;

    /// <summary>"left and right", "both sides", "each bank": one past it.</summary>
    private int? Sides(int at)
    {
        if (Word(at) is "left" or "right" && Word(at + 1) == "and" && Word(at + 2) is "right" or "left" && Word(at + 2) != Word(at))
            return Word(at + 3) is "hand" or "side" or "sides" or "banks" && Word(at + 3) != "hand" ? at + 4 : at + 3;
        return Word(at) is "both" or "each" or "either" && Word(at + 1) is "side" or "sides" or "bank" or "banks" ? at + 2 : null;
    }

    /// <summary>"lh", "righthand", "r h": a side as it is written.</summary>
    private (string Side, int To)? Hand(int at) => (Word(at), Word(at + 1)) switch
    {
        ("lh" or "lefthand" or "lhs", _) => ("left", at + 1),
        ("rh" or "righthand" or "rhs", _) => ("right", at + 1),
        ("l", "h") => ("left", at + 2),
        ("r", "h") => ("right", at + 2),
        _ => null,
    };

    /// <summary>"at the back", "nearest the flywheel": which end of the row.</summary>
    private (string Where, int To)? Near(int at)
    {
        int to = at;
        bool nearest = Word(to) is "nearest" or "closest" or "next";
        if (!nearest && Word(to) is not ("at" or "on"))
            return null;
        to++;
        if (Word(to) == "to")
            to++;
        if (Word(to) != "the")
            return null;
        to++;
        if (Word(to) == "very")
            to++;
        string where = Word(to) switch
        {
            "front" => "front",
            "back" or "rear" => "rear",
            "flywheel" or "gearbox" or "clutch" or "bulkhead" or "firewall" when nearest => "rear",
            "pulley" or "pulleys" or "radiator" or "rad" or "timing" or "fan" or "belt" when nearest => "front",
            _ => "",
        };
        if (where.Length == 0 || Lexicon.Fasteners.Longest(tokens, to + 1).Values.Count > 0 || Word(to + 1) is "of" or "edge" or "corner" or "face")
            return null;
        int end = Word(to) == "timing" && Word(to + 1) is "cover" or "chain" or "belt" or "end" ? to + 2 : to + 1;
        return (where, Word(end) == "end" ? end + 1 : end);
    }

    /// <summary>"but one", "except number three", "bar the last": what is left out, and one past it.</summary>
    private int? But(int at, Selectors selectors, int count)
    {
        int to = at;
        if (Word(to) is "but" or "bar" or "except" or "excepting" or "barring" or "minus" or "save")
            to++;
        else if (Word(to) is "apart" or "aside" && Word(to + 1) == "from")
            to += 2;
        else
            return null;
        if (Word(to) == "for")
            to++;
        if (Word(to) == "the")
            to++;
        bool named = Word(to) is "number" or "no" or "cylinder";
        if (named)
            to++;
        if (Word(to) is "last" or "rear" or "back" or "end")
            (selectors.ExceptLast, to) = (true, to + 1);
        else if (Word(to) is "front")
        {
            selectors.Except.Add(1);
            to++;
        }
        else if (NumberWords.At(tokens, to) is { Sort: NumSort.Whole or NumSort.Ordinal, Value: > 0 and <= 40 } n)
        {
            selectors.Except.Add(n.Int);
            selectors.ExceptCounts = !named && n.Sort == NumSort.Whole && (count == 0 || n.Int < count);
            to = n.To;
        }
        else
            return null;
        return Word(to) == "one" && to > at + 1 && NumberWords.At(tokens, to - 1)?.Sort != NumSort.Whole ? to + 1 : to;
    }

    /// <summary>"one and two pistons", "one, two and four": the numbers, when such a part has so many; one past them.</summary>
    private (List<int> Numbers, int To)? Listed(int at)
    {
        var numbers = new List<int>();
        int to = at;
        while (NumberWords.At(tokens, to) is { IsCount: true } n && n.Int > 0 && (numbers.Count == 0 || n.Int > numbers[^1]))
        {
            numbers.Add(n.Int);
            to = n.To;
            int next = Word(to) is "and" or "plus" || (to < tokens.Count && tokens[to].Sort == TokenSort.Comma) ? to + 1 : to;
            if (Longest(to).Values.Count > 0 || NumberWords.At(tokens, next) is not { IsCount: true })
                break;
            to = next;
        }

        if (numbers.Count < 2 || !Leads(to))
            return null;
        int part = to;
        while (part < to + 4 && Longest(part).Values.Count == 0)
            part++;
        return Longest(part) is { Values.Count: > 0 } found && (tokens[found.To - 1].Plural || Word(to) == "'s") && found.Values.Any(v => index.Parts(v.Kind).Count >= numbers[^1]) ? (numbers, to) : null;
    }

    /// <summary>"the cap on number two rod", "cover of the left head": the part it belongs to says which one it is.</summary>
    private int? Belongs(int at, List<PartWord> values, Selectors selectors)
    {
        if (Word(at) is not ("on" or "of" or "for" or "in") || selectors.Numbers.Count > 0 || selectors.Side.Length > 0)
            return null;
        var owner = new Selectors();
        int to = Before(at + 1, owner, out _, out bool counted);
        if (to < 0 || counted || Longest(to) is not { Values.Count: > 0 } found)
            return null;
        var owned = values.Where(v => index.Parts(v.Kind).Count > 0 && found.Values.Any(f => PartIndex.Owns(v.Kind, f.Kind))).ToList();
        int end = found.To;
        if (owner.Numbers.Count == 0 && Numbers(end, false, false, index.Parts(found.Values[0].Kind).Count) is { } list)
        {
            owner.Numbers.AddRange(list.Numbers);
            end = list.To;
        }

        if (owned.Count == 0 || (owned.Count == values.Count && owner.Numbers.Count == 0 && owner.Side.Length == 0 && owner.Gas.Length == 0))
            return null;
        values.Clear();
        values.AddRange(owned);
        selectors.Numbers.AddRange(owner.Numbers);
        selectors.Side = owner.Side;
        if (owner.Gas.Length > 0)
            selectors.Gas = owner.Gas;
        return end;
    }
}
