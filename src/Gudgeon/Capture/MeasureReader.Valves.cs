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

    /// <summary>Words between the side of the gas and what its gap was set to.</summary>
    private static readonly HashSet<string> Setting =
        ["i", "we", "'ve", "'s", "is", "was", "are", "were", "have", "has", "had", "set", "at", "to", "now", "adjusted", "done", "gapped", "it", "them", "both", "all", "up", "back", "comes", "came", "out", "just", "reset", "again", "then", "off", "she", "he", "also"];

    private static bool Sets(string word) => word is "set" or "adjusted" or "gapped" or "reset";

    /// <summary>Which one the side told last belongs to.</summary>
    private int? gapOf;

    /// <summary>"inlet set at point zero eight and the exhaust at point one", "set the inlet on number one at four thou": clearances by the side of the gas.</summary>
    private MeasureRead? Side(int at, int end)
    {
        int to = Sets(Word(at)) && Word(at + 1) is "the" or "both" or "all" or "number" ? at + 1 : at;
        while (Word(to) is "the" or "both" or "all")
            to++;
        int? which = null;
        if (Word(to) is "number" or "cylinder" && NumberWords.At(tokens, to + 1) is { IsCount: true, Value: > 0 and <= 28 } before)
            (which, to) = (before.Int, Word(before.To) == "'s" ? before.To + 1 : before.To);
        string kind = Word(to) is "inlet" or "inlets" or "intake" or "intakes" ? "valve-in" : Word(to) is "exhaust" or "exhausts" ? "valve-ex" : "";
        if (kind.Length == 0)
            return null;
        to++;
        if (Word(to) is "valve" or "valves" or "tappet" or "tappets" or "side")
            to++;
        if (which is null && NumberedOne(to) is { } led)
            (which, to) = led;
        int figure = to;
        while (figure < end && Setting.Contains(Word(figure)))
            figure++;
        bool set = Sets(Word(at)) || Enumerable.Range(to, figure - to).Any(k => Sets(Word(k))) || Enumerable.Range(1, 4).Select(k => at - k).TakeWhile(k => k >= 0 && !tokens[k].IsBreak).Any(k => Sets(Word(k)));
        bool goesOn = previous is { Name: "valve clearance" } && at - previousTo is >= 0 and <= 2;
        if ((!set && !goesOn) || NumberWords.At(tokens, figure) is not { Sort: NumSort.Whole or NumSort.Decimal, Value: > 0 } gap || gap.To > end)
            return null;
        string unit = "";
        to = gap.To;
        if (Units.At(tokens, gap.To, gap) is { } read)
            (unit, to) = read;
        else if (gap.Sort == NumSort.Whole && goesOn && previousUnit is "thou" or "hundredth")
            unit = previousUnit;
        if (unit.Length == 0 ? gap.Value >= 1.5m : unit is not ("thou" or "mm" or "in" or "hundredth" or "tenth" or "um" or "mil" or "hundredth mm" or "tenth mm"))
            return null;
        if (which is null && NumberedOne(to) is { } last && !FollowedByNumber(last.To, end))
            (which, to) = last;
        gapOf = which ?? (goesOn ? gapOf : NumberBefore(at));
        var clearance = ValveGap(at, gap.Value, gap.To, to, kind, unit, gapOf);
        previousUnit = unit;
        return clearance;
    }

    /// <summary>"on number one", "of cylinder two".</summary>
    private (int? Number, int To)? NumberedOne(int at) =>
        Word(at) is "on" or "of" or "for" && NumberWords.At(tokens, Word(at + 1) is "number" or "cylinder" or "no" ? at + 2 : at + 1) is { IsCount: true, Value: > 0 and <= 28 } n && Units.At(tokens, n.To) is null ? (n.Int, n.To) : null;

    private MeasureRead ValveGap(int at, decimal value, int figureTo, int to, string kind, string unit, int? number = null)
    {
        List<int> numbers = number is { } one ? [one] : [];
        var lash = new Characteristic("valve clearance", kind, Quantity.Length, 0.01m, 1.5m);
        var ways = UnitSettler.Settle(value, unit, Said(at, figureTo), lash, context, Inches());
        var all = kind.Length > 0 ? One(kind, [.. numbers]) : null;
        if (all is null)
        {
            var inlet = One("valve-in", [.. numbers]);
            all = inlet with { Ids = [.. inlet.Ids, .. One("valve-ex", [.. numbers]).Ids], Name = "valves" };
        }

        previous = lash;
        previousTo = to;
        var measured = new Measured(lash.Name, all, [ways[0]], "", Said(at, to));
        return new MeasureRead(at, to, [.. ways.Select(w => measured with { Values = [w] })], all, null);
    }
}
