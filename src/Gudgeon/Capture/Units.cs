namespace Gudgeon.Capture;

/// <summary>Units as said at the bench. <c>mil</c>, <c>tenth</c> and <c>hundredth</c> mean different things to different people and are settled later.</summary>
internal static class Units
{
    private static readonly (string[] Said, string Unit)[] Table =
    [
        (["newton", "metre"], "N m"), (["newton", "meter"], "N m"), (["nm"], "N m"), (["newtonmetre"], "N m"), (["n", "m"], "N m"),
        (["foot", "pound"], "lbf ft"), (["pound", "foot"], "lbf ft"), (["ft", "lb"], "lbf ft"), (["lb", "ft"], "lbf ft"), (["lbf", "ft"], "lbf ft"), (["ftlb"], "lbf ft"), (["pound", "feet"], "lbf ft"), (["inch", "pound"], "lbf in"), (["in", "lb"], "lbf in"),
        (["tenth", "of", "a", "thou"], "tenth thou"), (["tenth", "of", "a", "mil"], "tenth mm"), (["tenth", "of", "a", "mill"], "tenth mm"), (["tenth", "of", "a", "millimetre"], "tenth mm"), (["hundredth", "of", "a", "mil"], "hundredth mm"), (["hundredth", "of", "a", "mill"], "hundredth mm"), (["hundredth", "of", "a", "millimetre"], "hundredth mm"),
        (["millimetre"], "mm"), (["millimeter"], "mm"), (["mm"], "mm"), (["mil"], "mil"), (["mill"], "mil"), (["centimetre"], "cm"), (["centimeter"], "cm"), (["cm"], "cm"), (["metre"], "m"), (["meter"], "m"),
        (["ten", "thousandth"], "tenth thou"), (["inch"], "in"), (["thou"], "thou"), (["though"], "thou"), (["thousandth"], "thou"), (["thousand"], "thou"), (["thousandth", "of", "an", "inch"], "thou"), (["foul"], "thou"),
        (["tenth"], "tenth"), (["hundredth"], "hundredth"), (["micron"], "um"), (["um"], "um"), (["micrometre"], "um"),
        (["psi"], "psi"), (["p", "s", "i"], "psi"), (["bar"], "bar"), (["mbar"], "mbar"), (["millibar"], "mbar"), (["inch", "of", "mercury"], "inHg"), (["inhg"], "inHg"), (["pound", "per", "square", "inch"], "psi"), (["newton"], "N"), (["pound"], "lb"), (["thou", "of", "an", "inch"], "thou"), (["hundredth", "of", "a", "mm"], "hundredth mm"), (["tenth", "of", "a", "mm"], "tenth mm"),  (["kpa"], "kPa"),
        (["degree", "celsius"], "°C"), (["degree", "centigrade"], "°C"), (["celsius"], "°C"), (["degree", "fahrenheit"], "°F"), (["fahrenheit"], "°F"), (["degree", "c"], "°C"), (["degree"], "deg"), (["deg"], "deg"),
        (["litre"], "l"), (["liter"], "l"), (["ml"], "ml"), (["millilitre"], "ml"), (["pint"], "pint"), (["quart"], "quart"), (["gallon"], "gallon"), (["cc"], "cc"),
        (["kilo"], "kg"), (["kg"], "kg"), (["kilogram"], "kg"), (["gram"], "g"), (["gramme"], "g"), (["g"], "g"), (["lb"], "lb"),
        (["percent"], "%"), (["per", "cent"], "%"), (["rpm"], "rpm"), (["hour"], "h"), (["finger"], "finger"),
    ];

    private static readonly ILookup<string, (string[] Said, string Unit)> ByFirst = Table.ToLookup(t => t.Said[0]);

    public static (string Unit, int To)? At(IReadOnlyList<Token> tokens, int at, Num? before = null)
    {
        if (at >= tokens.Count || !tokens[at].IsWord)
            return null;
        (string Unit, int To)? best = null;
        foreach (var (said, unit) in ByFirst[tokens[at].Stem])
        {
            int to = at + said.Length;
            if (to <= tokens.Count && said.Index().All(w => tokens[at + w.Index].Stem == w.Item) && to > (best?.To ?? 0))
                best = (unit, to);
        }

        if (best is { Unit: "g" } && tokens[at].Text == "g" && !tokens[at].Glued)
            best = null;
        if (best is null && tokens[at].Text is "in" && before is { } n && (tokens[at].Glued || (n.Sort is NumSort.Decimal or NumSort.Fraction && Ends(tokens, at + 1))))
            return ("in", at + 1);
        if (best is null && tokens[at].Text is "m" or "l" or "c" or "f" && tokens[at].Glued && before is not null)
            return tokens[at].Text switch { "l" => ("l", at + 1), "c" => ("°C", at + 1), "f" => ("°F", at + 1), _ => null };
        return best;
    }

    private static bool Ends(IReadOnlyList<Token> tokens, int at) =>
        at >= tokens.Count || tokens[at].IsBreak || tokens[at].Text is "long" or "and" or "wide" or "thick" or "deep";

    /// <summary>Millimetres in one of the unit, or null where the unit is no length or not settled.</summary>
    public static decimal? Millimetres(string unit) => unit switch
    {
        "mm" => 1m,
        "cm" => 10m,
        "in" => 25.4m,
        "thou" => 0.0254m,
        "tenth thou" => 0.00254m,
        "tenth mm" => 0.1m,
        "hundredth mm" => 0.01m,
        "um" => 0.001m,
        _ => null,
    };
}
