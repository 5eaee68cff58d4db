namespace Gudgeon.Sums;

/// <summary>Every public sum, with all that is needed to trust it. Each subject contributes its own list.</summary>
public static class SumCatalogue
{
    /// <summary>All sums, subject by subject.</summary>
    public static IReadOnlyList<SumEntry> All { get; } =
    [
        .. Fasteners.FastenerSums.List,
        .. Fluids.FluidSums.List,
        .. Fits.FitSums.List,
        .. Lifting.LiftingSums.List,
        .. Springs.SpringSums.List,
        .. Metrology.DerivedSums.List,
        .. Metrology.MetrologySums.List,
        .. Metrology.SetAndWearSums.List,
        .. Metrology.UncertaintySums.List,
        .. Motion.MotionSums.List,
        .. Quantities.QuantitySums.List,
        .. Shapes.ShapeSums.List,
        .. Statistics.StatisticsSums.List,
    ];
}

/// <summary>One sum of the catalogue.</summary>
/// <param name="Id">Stable name, lower case with dots: subject.sum.</param>
/// <param name="Title">What it works out, in the words of the trade.</param>
/// <param name="Formula">The formula in the symbols of <paramref name="Inputs"/>.</param>
/// <param name="Inputs">What goes in, each with its unit.</param>
/// <param name="ResultUnit">The unit of the result; "1" for a plain number.</param>
/// <param name="ValidRange">Where it holds, and what happens outside.</param>
/// <param name="Source">Standard with clause, book with page, or "common practice, no source".</param>
/// <param name="Worked">One number worked out elsewhere.</param>
public sealed record SumEntry(
    string Id, string Title, string Formula, IReadOnlyList<SumInput> Inputs, string ResultUnit, string ValidRange, string Source, WorkedNumber Worked);

/// <summary>One input of a sum.</summary>
/// <param name="Symbol">Its symbol in the formula.</param>
/// <param name="Meaning">What it stands for.</param>
/// <param name="Unit">Its unit; "1" for a plain number.</param>
public sealed record SumInput(string Symbol, string Meaning, string Unit);

/// <summary>A number worked out elsewhere, and the sum that must reproduce it.</summary>
/// <param name="Given">The inputs, in words and figures.</param>
/// <param name="Expected">The result as published or as reckoned with another tool.</param>
/// <param name="Tolerance">Largest difference allowed.</param>
/// <param name="Origin">Where the expected number comes from, and how it was seen.</param>
/// <param name="Compute">The sum at the given inputs.</param>
public sealed record WorkedNumber(string Given, double Expected, double Tolerance, string Origin, Func<double> Compute);
