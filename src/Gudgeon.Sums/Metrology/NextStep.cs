using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Metrology;

/// <summary>What could settle a reading that is too close to call.</summary>
public enum NextStepKind
{
    /// <summary>The verdict stands; nothing is needed.</summary>
    Settled,

    /// <summary>More readings with the same instrument.</summary>
    MoreReadings,

    /// <summary>An instrument that the owner has.</summary>
    OtherInstrument,

    /// <summary>An instrument finer than any the owner has.</summary>
    FinerInstrument,

    /// <summary>No instrument: the value lies too near the limit, or something else rules.</summary>
    NothingWill,
}

/// <summary>An instrument that the owner has.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Resolution">Its resolution, in the unit of the characteristic.</param>
/// <param name="StandardUncertainty">Its standard uncertainty, resolution and setting included.</param>
public sealed record Instrument(string Name, double Resolution, double StandardUncertainty);

/// <summary>What stands behind a value, parted by what could change it.</summary>
/// <param name="RepeatDeviation">Standard deviation of one reading, from repeats.</param>
/// <param name="Count">How many readings were averaged.</param>
/// <param name="InstrumentUncertainty">Standard uncertainty that the instrument brings.</param>
/// <param name="OtherUncertainty">Everything else: temperature, the part itself.</param>
public sealed record UncertaintyParts(double RepeatDeviation, int Count, double InstrumentUncertainty, double OtherUncertainty)
{
    /// <summary>Combined standard uncertainty.</summary>
    public double Combined => Root(RepeatDeviation * RepeatDeviation / Count + Square(InstrumentUncertainty) + Square(OtherUncertainty));

    internal double WithoutRepeats => Root(Square(InstrumentUncertainty) + Square(OtherUncertainty));

    internal double WithoutInstrument => Root(RepeatDeviation * RepeatDeviation / Count + Square(OtherUncertainty));

    private static double Square(double x) => x * x;

    private static double Root(double x) => Math.Sqrt(x);
}

/// <summary>The cheapest step that would settle a verdict, if the value stays where it is.</summary>
/// <param name="Kind">Which step.</param>
/// <param name="Advice">The step as a sentence.</param>
/// <param name="MoreReadings">How many more readings, for that kind.</param>
/// <param name="Instrument">Which instrument, for that kind.</param>
/// <param name="UncertaintyNeeded">The largest standard uncertainty of an instrument that would settle it; null when none would.</param>
public sealed record NextStep(NextStepKind Kind, string Advice, int? MoreReadings = null, Instrument? Instrument = null, double? UncertaintyNeeded = null)
{
    /// <summary>More readings than this are not worth a person's evening; a better instrument is named instead.</summary>
    public const int MostReadings = 20;

    /// <summary>Looks for the step.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <param name="parts">What stands behind its uncertainty.</param>
    /// <param name="owned">The owner's instruments that can reach this place.</param>
    /// <param name="unit">Unit of the characteristic, to show.</param>
    /// <param name="rule">The rule that the verdict was made by, or null for the guard of U.</param>
    /// <returns>The step.</returns>
    /// <remarks>Settling needs factor·u ≤ distance to the limit. Source: the rule itself (ISO 14253-1), solved for u.</remarks>
    public static NextStep After(Verdict verdict, UncertaintyParts parts, IReadOnlyCollection<Instrument> owned, string unit, DecisionRule? rule = null)
    {
        if (verdict.Word != VerdictWord.TooCloseToCall)
            return new(NextStepKind.Settled, "Nothing more is needed.");
        var wanted = UncertaintyWanted(verdict, rule ?? DecisionRule.ExpandedUncertainty);
        if (wanted <= 0)
            return new(NextStepKind.NothingWill, "The value lies on the limit itself: no instrument will settle it. Decide by what the part must do.");

        if (parts.RepeatDeviation > 0 && ReadingsFor(wanted, parts) is { } total && total <= MostReadings)
        {
            var more = Math.Max(total - parts.Count, 1);
            return new(NextStepKind.MoreReadings, more == 1 ? "One more reading would settle it, if the mean stays where it is."
                : $"{more} more readings would settle it, if the mean stays where it is.", more);
        }

        var spare = wanted * wanted - parts.WithoutInstrument * parts.WithoutInstrument;
        if (spare <= 0)
            return new(NextStepKind.NothingWill,
                $"No instrument will settle it: repeats, temperature and the part itself bring {Show(parts.WithoutInstrument)} {unit}, and {Show(wanted)} {unit} is needed. Let it lie at one temperature, clean it, and read again.");
        var needed = Math.Sqrt(spare);
        var settles = owned.Where(i => i.StandardUncertainty <= needed).MaxBy(i => i.StandardUncertainty);
        if (settles is not null)
            return new(NextStepKind.OtherInstrument, $"The {settles.Name} that reads to {Show(settles.Resolution)} {unit} would settle it.", null, settles, needed);
        return new(NextStepKind.FinerInstrument,
            $"No instrument you have will; one with a standard uncertainty of {Show(needed)} {unit} or less would (U = {Show(2 * needed)} {unit}).", null, null, needed);
    }

    private static double UncertaintyWanted(Verdict verdict, DecisionRule rule)
    {
        var margin = verdict.Margin;
        if (margin < 0)
            return -margin / rule.OutsideFactor;
        // Inside a narrow band the factor grows as the band shrinks beside u; halving u step by step finds the edge from above.
        double low = 0, high = margin / rule.OutsideFactor;
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (rule.InsideFactor(verdict.Limits.Width / middle) * middle <= margin)
                low = middle;
            else
                high = middle;
        }
        return low;
    }

    private static int? ReadingsFor(double wanted, UncertaintyParts parts)
    {
        var spare = wanted * wanted - parts.WithoutRepeats * parts.WithoutRepeats;
        return spare > 0 && parts.RepeatDeviation * parts.RepeatDeviation / spare is var n && n < int.MaxValue ? (int)Math.Ceiling(n - 1e-9) : null;
    }

    private static string Show(double value) => Figures.Fixed(value, Figures.PlacesFor(value));
}
