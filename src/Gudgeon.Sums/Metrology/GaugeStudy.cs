using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Metrology;

/// <summary>How much of what is read comes from the part, and how much from the measuring.</summary>
/// <param name="Repeatability">Variance of one person with one part: equipment variation.</param>
/// <param name="Reproducibility">Variance between persons, interaction included.</param>
/// <param name="Part">Variance between parts.</param>
public sealed record GaugeStudy(double Repeatability, double Reproducibility, double Part)
{
    /// <summary>Variance of the measuring.</summary>
    public double Gauge => Repeatability + Reproducibility;

    /// <summary>All variance.</summary>
    public double Total => Gauge + Part;

    /// <summary>Measuring as a share of all, in deviations: multiply by 100 for % study variation.</summary>
    public double GaugeShare => Total > 0 ? Math.Sqrt(Gauge / Total) : 0;

    /// <summary>How many sizes the measuring can tell apart: 1.41·σ_part/σ_gauge, cut to a whole number, at least 1; without any gauge variance there is no end to them, and the largest number stands for it.</summary>
    /// <remarks>Source: AIAG, Measurement Systems Analysis, 4th ed. 2010, chapter III (from memory).</remarks>
    public int DistinctCategories => Gauge > 0 ? (int)Math.Clamp(1.41 * Math.Sqrt(Part / Gauge), 1, int.MaxValue) : int.MaxValue;

    /// <summary>Measuring as a share of a tolerance: 6·σ_gauge / width.</summary>
    /// <param name="width">Width of the tolerance, above zero.</param>
    /// <returns>A share.</returns>
    public double ShareOfTolerance(double width)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(width);
        return 6 * Math.Sqrt(Gauge) / width;
    }

    /// <summary>By average and range.</summary>
    /// <param name="readings">By part, operator, trial: 2 to 10 parts, 2 or 3 operators, 2 or 3 trials.</param>
    /// <returns>The study.</returns>
    /// <remarks>Source: AIAG, Measurement Systems Analysis, 4th ed. 2010, chapter III (factors from memory).</remarks>
    public static GaugeStudy ByRange(double[,,] readings)
    {
        var (parts, operators, trials) = Shape(readings);
        if (parts > 10 || operators > 3 || trials > 3)
            throw new ArgumentException($"The range method has factors for 10 parts, 3 operators and 3 trials at most; there are {parts}, {operators} and {trials}.", nameof(readings));
        var range = 0.0;
        for (var p = 0; p < parts; p++)
            for (var o = 0; o < operators; o++)
                range += Samples.Range(Cell(readings, p, o)) / (parts * operators);
        var equipment = range * ByTrials[trials - 2];
        var between = Samples.Range(Means(readings, (operators, (p, o) => o))) * ByCount[operators - 2];
        var appraiser = Math.Max(0, between * between - equipment * equipment / (parts * trials));
        var part = Samples.Range(Means(readings, (parts, (p, o) => p))) * ByCount[parts - 2];
        return new(equipment * equipment, appraiser, part * part);
    }

    /// <summary>By analysis of variance, which also sees whether some person reads some part differently.</summary>
    /// <param name="readings">By part, operator, trial: two or more of each.</param>
    /// <param name="pooledAbove">The interaction is pooled with repeatability when its chance exceeds this.</param>
    /// <returns>The study and its table.</returns>
    /// <remarks>Source: AIAG, Measurement Systems Analysis, 4th ed. 2010, appendix A (from memory).</remarks>
    public static (GaugeStudy Study, GaugeAnova Table) ByAnova(double[,,] readings, double pooledAbove = 0.05)
    {
        var (parts, operators, trials) = Shape(readings);
        var table = GaugeAnova.Of(readings);
        var pooled = table.InteractionChance > pooledAbove;
        var error = pooled
            ? (table.InteractionSquares + table.RepeatSquares) / (table.InteractionFreedom + table.RepeatFreedom)
            : table.RepeatSquares / table.RepeatFreedom;
        var interactionMean = pooled ? error : table.InteractionSquares / table.InteractionFreedom;
        var interaction = pooled ? 0 : Math.Max(0, (interactionMean - error) / trials);
        var between = Math.Max(0, (table.OperatorSquares / table.OperatorFreedom - interactionMean) / (parts * trials));
        var part = Math.Max(0, (table.PartSquares / table.PartFreedom - interactionMean) / (operators * trials));
        return (new(error, between + interaction, part), table);
    }

    // 1/d₂* for 2 and 3 trials, and for 2 to 10 operators or parts in one group.
    private static ReadOnlySpan<double> ByTrials => [0.8862, 0.5908];

    private static ReadOnlySpan<double> ByCount => [0.7071, 0.5231, 0.4467, 0.4030, 0.3742, 0.3534, 0.3375, 0.3249, 0.3146];

    internal static (int Parts, int Operators, int Trials) Shape(double[,,] readings)
    {
        var shape = (Parts: readings.GetLength(0), Operators: readings.GetLength(1), Trials: readings.GetLength(2));
        return shape is { Parts: >= 2, Operators: >= 2, Trials: >= 2 }
            ? shape
            : throw new ArgumentException($"A gauge study needs two parts, two operators and two trials; there are {shape.Parts}, {shape.Operators} and {shape.Trials}.", nameof(readings));
    }

    internal static double[] Cell(double[,,] readings, int part, int operatorIndex) =>
        [.. Enumerable.Range(0, readings.GetLength(2)).Select(trial => readings[part, operatorIndex, trial])];

    internal static double[] Means(double[,,] readings, (int Count, Func<int, int, int> Of) grouping)
    {
        var groups = new List<double>[grouping.Count];
        for (var p = 0; p < readings.GetLength(0); p++)
            for (var o = 0; o < readings.GetLength(1); o++)
                (groups[grouping.Of(p, o)] ??= []).AddRange(Cell(readings, p, o));
        return Array.ConvertAll(groups, group => Samples.Mean(group.ToArray()));
    }
}
