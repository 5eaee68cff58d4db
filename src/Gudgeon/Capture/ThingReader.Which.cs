namespace Gudgeon.Capture;

/// <summary>Which ones: numbers, sides and "all" beside a part, and how candidates are narrowed by them.</summary>
internal sealed partial class ThingReader
{
    private int After(int from, int end, Selectors selectors, List<PartWord> values, ref bool plural, bool fastener, int count, bool boltsPlural)
    {
        // "injectors bagged one to six": in order, all of them.
        if (plural && Word(end) is "bagged" or "boxed" or "numbered" or "laid" or "racked" or "marked" && Numbers(end + 1, false, false, count) is { Numbers: [1, .., var to] } order && to == count)
        {
            selectors.All = true;
            end = order.To;
        }

        for (bool more = true; more;)
        {
            more = false;
            int at = Word(end) is "on" or "of" or "in" or "from" or "for" ? end + 1 : end;
            bool linked = at > end;
            if (Word(at) is "the" && Word(at + 1) is "left" or "right" or "far" or "near" or "other" or "offside" or "nearside")
                at++;
            if (!fastener && Belongs(end, values, selectors) is { } belongs)
            {
                end = belongs;
                more = true;
            }
            else if (!(linked && Spot(at)) && (linked || Word(at + 1) is "bank" or "side" or "hand") && Word(at) is "left" or "right" or "far" or "near" or "other" && (Word(at + 1) is "bank" or "side" or "hand" or "one" or "" or "'s" or "is" or "are" or "was" or "were" or "has" or "off" or "out" or "had" || (Word(at + 1) == "head" && Word(from - 1) != "and")))
            {
                selectors.Side = Word(at);
                end = Word(at + 1) is "hand" && Word(at + 2) is "side" or "bank" ? at + 3 : Word(at + 1) is "bank" or "side" or "hand" or "one" or "head" ? at + 2 : at + 1;
                more = true;
            }
            else if (linked && selectors.Side.Length == 0 && Word(at) is "that" or "this" && Word(at + 1) is "side" or "bank" && !Spot(at) && resolver.SpokenBank is { } spoken)
            {
                selectors.Side = $"bank:{spoken}";
                end = at + 2;
                more = true;
            }
            else if (!linked && count == 2 && selectors.Side.Length == 0 && Word(at) is "left" or "right" && at + 1 < tokens.Count && tokens[at + 1].Sort == TokenSort.Comma)
            {
                // "rocker shaft left, two nuts"
                selectors.Side = Word(at);
                end = at + 1;
                more = true;
            }
            else if (Word(at) == "bank" && Bank(at + 1) is { } bank)
            {
                selectors.Side = $"bank:{bank.Bank}";
                end = bank.To;
                more = true;
            }
            else if (selectors.Numbers.Count == 0 && Numbers(at, linked, fastener && boltsPlural, count) is { } list)
            {
                selectors.Numbers.AddRange(list.Numbers);
                plural |= list.Numbers.Count > 1;
                end = list.To;
                more = true;
            }
            else if (Sides(Word(end) is "on" or "at" or "from" ? end + 1 : end < tokens.Count && tokens[end].Sort == TokenSort.Comma ? end + 1 : end) is { } sides && count > 1)
            {
                selectors.All = true;
                end = sides;
                more = true;
            }
            else if (count > 2 && values.All(v => index.Parts(v.Kind) is [{ Index.Count: 1 } one, ..] && (one.Cylinder is not null || one.Kind is "main-cap" or "carrier" or "main-bush")) && Near(end) is { } near)
            {
                selectors.Where.Add(near.Where);
                end = near.To;
                more = true;
            }
            else if (count > 1 && selectors.Except.Count == 0 && But(end, selectors, count) is { } but)
            {
                selectors.All = true;
                end = but;
                more = true;
            }
            else if (All(end, count, values) is { } all)
            {
                selectors.All = true;
                end = all;
                more = true;
            }
            else if (Word(end) is "upper" or "lower" or "uppers" or "lowers" && tokens[end].Sort == TokenSort.Word && values.Any(v => v.Kind is "rod-shell" or "main-shell" or "belt-cover"))
            {
                plural |= tokens[end].Plural;
                selectors.Where.Add(tokens[end].Stem);
                end++;
                more = true;
            }
        }

        return end;
    }

    /// <summary>"on the left side of the bench" says where it lies, not which it is.</summary>
    private bool Spot(int at)
    {
        int to = Word(at) == "the" ? at + 1 : at;
        to += Word(to + 1) is "side" or "end" or "half" or "corner" ? 2 : Word(to + 1) == "hand" && Word(to + 2) is "side" or "end" ? 3 : 1;
        return Word(to) == "of" && Lexicon.Containers.Longest(tokens, Word(to + 1) is "the" or "my" or "a" ? to + 2 : to + 1).Values.Count > 0;
    }

    private int? All(int at, int count, List<PartWord> values)
    {
        if (at < tokens.Count && tokens[at].Sort == TokenSort.Comma)
            at++;
        if (Word(at) == "both" && count == 2 && values.Count == 1)
            return at + 1;
        if (Word(at) != "all")
            return null;
        int of = Word(at + 1) is "the" ? at + 2 : at + 1;
        if (NumberWords.At(tokens, of) is { IsCount: true } n && n.Int == count && !Sized(n.To))
            return n.To;
        return Word(at + 1) == "of" && Word(at + 2) is "them" or "em" && !Sized(at + 3) ? at + 3 : null;
    }

    /// <summary>Numbers after a part that say which ones: "three", "one to four", "two three and four", "1, 2 and 4".</summary>
    private (List<int> Numbers, int To)? Numbers(int at, bool linked, bool bolts, int count)
    {
        int led = linked && Word(at) == "the" ? at + 1 : at;
        if (linked && count > 1 && NumberWords.At(tokens, led) is { Sort: NumSort.Ordinal } nth && nth.Int <= 28 && Word(nth.To) is "cylinder" or "bore" or "pot" or "hole")
            return ([nth.Int], nth.To + 1);
        bool named = Word(at) is "number" or "numbers" or "cylinder" or "cylinders" or "no" or "nos" or "bore" or "cyl";
        if (named)
            at++;
        if (bolts && !named && !linked)
            return null;
        if (!named && count <= 1)
            return null;
        var numbers = new List<int>();
        int to = at;
        while (NumberWords.At(tokens, to) is { IsCount: true } n && n.Int is > 0 and <= 40)
        {
            if (Sized(n.To) || (!named && n.Int > Math.Max(count, 1)) || (numbers.Count > 0 && Longest(n.To).Values.Count > 0 && tokens[Longest(n.To).To - 1].Plural))
                break;
            numbers.Add(n.Int);
            to = n.To;
            string link = Word(to);
            if ((link is "to" or "through" or "thru" || (to < tokens.Count && tokens[to].Text == "-")) && NumberWords.At(tokens, to + 1) is { IsCount: true } last && last.Int > n.Int && last.Int <= 40 && !Sized(last.To))
            {
                for (int i = n.Int + 1; i <= last.Int; i++)
                    numbers.Add(i);
                to = last.To;
            }

            int next = Word(to) is "and" or "plus" ? to + 1 : to < tokens.Count && tokens[to].Sort == TokenSort.Comma && List(to + 1) ? to + 1 : to;
            if (NumberWords.At(tokens, next) is not { IsCount: true } follow || Sized(follow.To) || follow.Int <= numbers[^1])
                break;
            to = next;
        }

        return numbers.Count == 0 ? null : (numbers, to);
    }

    /// <summary>After a comma only a number that goes on as a list: "1, 2 and 4".</summary>
    private bool List(int at) => NumberWords.At(tokens, at) is { IsCount: true } n && (Word(n.To) is "and" || (n.To < tokens.Count && tokens[n.To].Sort == TokenSort.Comma)) && NumberWords.At(tokens, n.To + 1) is { IsCount: true };

    /// <summary>The number before counts or sizes something and so picks no part.</summary>
    private bool Sized(int at) =>
        Word(at) is "by" or "x" or "at" or "of" or "point" or "mm" or "bolts" or "longer" or "short" or "shorter" or "long" or "little" or "big" or "m" or "or" or "hundred" or "more" or "fixings" or "hex"
        || (Word(at) is "'s" && Lexicon.Fasteners.Longest(tokens, at + 1).Values.Count > 0)
        || Lexicon.Fasteners.Longest(tokens, at).Values.Count > 0
        || Units.At(tokens, at) is not null;

    private (int Bank, int To)? Bank(int at)
    {
        if (NumberWords.At(tokens, at) is { IsCount: true } n && n.Int is 1 or 2)
            return (n.Int, n.To);
        return Word(at) switch
        {
            "a" when Word(at + 1) is "" or "off" or "head" or "'s" or "is" => (1, at + 1),
            "b" => (2, at + 1),
            _ => null,
        };
    }

    private List<PartWord> Narrow(List<PartWord> values, Selectors selectors, string fastener, int partEnd)
    {
        if (values.Count == 1)
            return values;
        string word = Stem(partEnd - 1);
        // A cap is that of what was spoken of.
        if (word == "cap" && (lastKind.Length > 0 ? lastKind : resolver.LastKind) switch { "crank" or "main-shell" or "main-cap" or "block" or "thrust" => "main-cap", "rod" or "piston" or "rod-shell" or "rod-cap" => "rod-cap", "cam" or "cam-cap" or "cam-sprocket" => "cam-cap", _ => "" } is { Length: > 0 } cap && values.Any(v => v.Kind == cap))
            return [.. values.Where(v => v.Kind == cap)];
        if (word == "exhaust" && fastener.Length > 0 && selectors.Numbers.Count == 0 && index.Parts("exhaust-manifold").Count > 0)
            return [new PartWord("exhaust-manifold", false, null, 0)];
        if (word is "exhaust" or "inlet" or "intake")
        {
            string valve = word == "exhaust" ? "valve-ex" : "valve-in";
            bool numbered = selectors.Numbers.Count > 0;
            values = [.. values.Where(v => v.Kind == valve == numbered)];
        }

        if (fastener is "stud" or "nut" && values.Count > 1)
        {
            var studs = values.Where(v => index.Parts(v.Kind) is [var p, ..] && index.Engine.JointsOf(p.Id) is [var j, ..] && index.Engine.Joints[j].Fasteners is ["stud", ..]).ToList();
            if (studs.Count > 0)
                return studs;
        }

        return selectors.Gas.Length > 0 && values.Any(v => GasKinds.Contains(v.Kind)) ? [.. values.Where(v => GasKinds.Contains(v.Kind))] : values;
    }

    public Thing Joint(Thing thing, string fastener)
    {
        Thing Turn(Thing t)
        {
            if (MoreWords.BoltsOf.TryGetValue(t.Kind, out string? holds) && index.Parts(holds) is { Count: > 0 } held && fastener is not "clip")
            {
                var ids = t.Ids.Count > 0 && held.Count > 1 ? [.. held.Where(h => t.Ids.Any(i => $"{i[i.IndexOf('.', StringComparison.Ordinal)..]}.".StartsWith($".{string.Join('.', h.Index)}.", StringComparison.Ordinal))).Select(h => h.Id)] : (IReadOnlyList<string>)[.. held.Select(h => h.Id)];
                t = t with { Kind = holds, Ids = ids.Count > 0 ? ids : [.. held.Select(h => h.Id)], Name = ids.Count == 1 ? index.Engine.Parts[ids[0]].Name : index.NameOf(holds) };
            }

            return t with { Sort = t.Sort is ThingSort.Lacking or ThingSort.Unknown ? t.Sort : ThingSort.Fasteners, Fastener = fastener };
        }

        return Turn(thing) with { Others = [.. thing.Others.Select(Turn)] };
    }
}
