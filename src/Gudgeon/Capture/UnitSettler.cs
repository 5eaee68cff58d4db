namespace Gudgeon.Capture;

/// <summary>Says what a figure can mean when its unit was left out or means different things to different people.</summary>
internal static class UnitSettler
{
    /// <summary>Every way to take the figure, the likeliest first; several ways mean: ask.</summary>
    public static IReadOnlyList<Amount> Settle(decimal value, string unit, string said, Characteristic what, EarContext context, bool inchLine)
    {
        bool inch = context.Unit == BookUnit.Inch || inchLine;
        switch (unit)
        {
            case "mil":
                return Mil(value, said, what, context);
            case "tenth":
                var thou = new Amount(value / 10000, "in", said);
                var tenth = new Amount(value / 10, "mm", said);
                return inch ? [thou] : [tenth, thou];
            case "hundredth":
                return inch ? [new Amount(value / 100, "mm", said), new Amount(value / 100, "in", said)] : [new Amount(value / 100, "mm", said)];
            case "thou":
                return [new Amount(value / 1000, "in", said)];
            case "tenth thou":
                return [new Amount(value / 10000, "in", said)];
            case "tenth mm":
                return [new Amount(value / 10, "mm", said)];
            case "hundredth mm":
                return [new Amount(value / 100, "mm", said)];
            case "um":
                return [new Amount(value / 1000, "mm", said)];
            case "finger":
                return [new Amount(value, "fingers", said) { Rough = true }];
            case "deg" when what.Quantity == Quantity.Temperature:
                return [new Amount(value, "°C", said)];
            case "lb" when what.Quantity == Quantity.Pressure:
                return [new Amount(value, "psi", said)];
            case "":
                return Unsaid(value, said, what, inch);
            default:
                return [new Amount(value, unit, said)];
        }
    }

    private static IReadOnlyList<Amount> Mil(decimal value, string said, Characteristic what, EarContext context)
    {
        var metric = new Amount(value, "mm", said);
        var american = new Amount(value / 1000, "in", said);
        if (context.MilIsMillimetre is { } habit)
            return [habit ? metric : american];
        bool fits = value >= what.Least && value <= what.Most;
        bool small = value * 0.0254m >= what.Least && value * 0.0254m <= what.Most;
        return (fits, small) switch
        {
            (true, false) => [metric],
            (false, true) => [american],
            _ => [metric, american],
        };
    }

    private static IReadOnlyList<Amount> Unsaid(decimal value, string said, Characteristic what, bool inch)
    {
        string[] units = what.Quantity switch
        {
            Quantity.Pressure => ["psi", "bar"],
            Quantity.Length => inch ? ["in", "mm", "thou"] : ["mm", "in", "thou"],
            Quantity.Mass => ["g", "kg"],
            Quantity.Temperature => ["°C"],
            Quantity.Volume => ["cc"],
            Quantity.Percent => ["%"],
            Quantity.Torque => ["N m", "lbf ft"],
            _ => [""],
        };
        var fit = units.Where(u => Fits(value, u, what)).ToList();
        if (fit.Count == 0)
            return [new Amount(value, "", said)];
        string first = fit[0];
        if (what.Quantity is Quantity.Mass or Quantity.Torque or Quantity.Pressure && fit.Count > 1)
            return [.. fit.Select(u => new Amount(value, u, said))];
        return [(first == "thou" ? new Amount(value / 1000, "in", said) : new Amount(value, first, said)) with { UnitTaken = true }];
    }

    private static bool Fits(decimal value, string unit, Characteristic what) => unit switch
    {
        "mm" => value >= what.Least && value <= what.Most,
        "in" => value * 25.4m >= what.Least && value * 25.4m <= what.Most && value < 12,
        "thou" => value == decimal.Truncate(value) && value >= 1 && value * 0.0254m >= what.Least && value * 0.0254m <= what.Most,
        "psi" => value >= 20 || (what.Name == "oil pressure" && value >= 8),
        "bar" => value is > 0 and < 20 && (what.Name != "oil pressure" || value <= 12),
        "kg" => value < 100,
        _ => true,
    };
}
