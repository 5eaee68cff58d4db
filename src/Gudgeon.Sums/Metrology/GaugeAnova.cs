using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Metrology;

/// <summary>Two-way table of variance of a gauge study: parts, operators, their interaction, repeats.</summary>
/// <param name="PartSquares">Sum of squares between parts.</param>
/// <param name="PartFreedom">Parts less one.</param>
/// <param name="OperatorSquares">Sum of squares between operators.</param>
/// <param name="OperatorFreedom">Operators less one.</param>
/// <param name="InteractionSquares">Sum of squares of operators differing from part to part.</param>
/// <param name="InteractionFreedom">Product of the two before.</param>
/// <param name="RepeatSquares">Sum of squares within cells.</param>
/// <param name="RepeatFreedom">Cells times trials less one.</param>
public sealed record GaugeAnova(
    double PartSquares, int PartFreedom, double OperatorSquares, int OperatorFreedom,
    double InteractionSquares, int InteractionFreedom, double RepeatSquares, int RepeatFreedom)
{
    /// <summary>Sum of all squares.</summary>
    public double TotalSquares => PartSquares + OperatorSquares + InteractionSquares + RepeatSquares;

    /// <summary>F of the interaction against repeats.</summary>
    public double InteractionF => Ratio(InteractionSquares / InteractionFreedom, RepeatSquares / RepeatFreedom);

    /// <summary>Chance of so large an F where there is no interaction.</summary>
    public double InteractionChance => Quantiles.FisherShareAbove(InteractionF, InteractionFreedom, RepeatFreedom);

    /// <summary>F of the parts against the interaction.</summary>
    public double PartF => Ratio(PartSquares / PartFreedom, InteractionSquares / InteractionFreedom);

    /// <summary>F of the operators against the interaction.</summary>
    public double OperatorF => Ratio(OperatorSquares / OperatorFreedom, InteractionSquares / InteractionFreedom);

    /// <summary>Works out the table.</summary>
    /// <param name="readings">By part, operator, trial: two or more of each.</param>
    /// <returns>The table.</returns>
    public static GaugeAnova Of(double[,,] readings)
    {
        var (parts, operators, trials) = GaugeStudy.Shape(readings);
        var grand = Samples.Mean(readings.Cast<double>().ToArray());
        var byPart = GaugeStudy.Means(readings, (parts, (p, _) => p));
        var byOperator = GaugeStudy.Means(readings, (operators, (_, o) => o));
        double interaction = 0, repeat = 0;
        for (var p = 0; p < parts; p++)
            for (var o = 0; o < operators; o++)
            {
                var cell = GaugeStudy.Cell(readings, p, o);
                interaction += trials * Square(Samples.Mean(cell) - byPart[p] - byOperator[o] + grand);
                repeat += Samples.SumOfSquares(cell);
            }
        return new(
            operators * trials * byPart.Sum(mean => Square(mean - grand)), parts - 1,
            parts * trials * byOperator.Sum(mean => Square(mean - grand)), operators - 1,
            interaction, (parts - 1) * (operators - 1), repeat, parts * operators * (trials - 1));
    }

    // Readings that are all alike have no scatter to compare with: nothing against nothing is no effect.
    private static double Ratio(double of, double against) => of == 0 ? 0 : of / against;

    private static double Square(double x) => x * x;
}
