namespace Gudgeon.Capture;

/// <summary>Valve clearances told by the side of the gas, and on which valves.</summary>
internal sealed partial class MeasureReader
{
    /// <summary>"gaps are 0.15 on the inlets and 0.2 on the exhausts".</summary>
    private MeasureRead? Gap(int at)
    {
        int from = at;
        if (tokens[at].Stem is "gap" or "clearance" && Word(at + 1) is "are" or "is" or "were" or "was" or "at")
            at += 2;
        else if (previous is not { Name: "valve clearance" } || at - previousTo is < 0 or > 1)
            return null;
        if (NumberWords.At(tokens, at) is not { Sort: NumSort.Decimal, Value: < 1.5m and > 0 } gap || Word(gap.To) is not ("on" or "for") || Valves(gap.To + 1) is not { Kind.Length: > 0 } of)
            return null;
        return ValveGap(from, gap.Value, gap.To, of.To, of.Kind, "");
    }

    private (string Kind, int To)? Valves(int at)
    {
        while (Word(at) is "both" or "all" or "the" or "every" or "four" or "of" or "eight")
            at++;
        string kind = Word(at) is "inlet" or "inlets" or "intake" or "intakes" ? "valve-in" : Word(at) is "exhaust" or "exhausts" ? "valve-ex" : "";
        int to = kind.Length > 0 ? at + 1 : at;
        if (tokens.ElementAtOrDefault(to).Stem is "valve")
            return (kind, to + 1);
        return kind.Length > 0 && (to >= tokens.Count || tokens[to].IsBreak || Word(to) is "and" or "all") ? (kind, to) : null;
    }

    private MeasureRead ValveGap(int at, decimal value, int figureTo, int to, string kind, string unit)
    {
        var lash = new Characteristic("valve clearance", kind, Quantity.Length, 0.01m, 1.5m);
        var ways = UnitSettler.Settle(value, unit, Said(at, figureTo), lash, context, Inches());
        var all = kind.Length > 0 ? One(kind, []) : null;
        if (all is null)
        {
            var inlet = One("valve-in", []);
            all = inlet with { Ids = [.. inlet.Ids, .. One("valve-ex", []).Ids], Name = "valves" };
        }

        previous = lash;
        previousTo = to;
        var measured = new Measured(lash.Name, all, [ways[0]], "", Said(at, to));
        return new MeasureRead(at, to, [.. ways.Select(w => measured with { Values = [w] })], all, null);
    }
}
