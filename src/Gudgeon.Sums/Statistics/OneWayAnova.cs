namespace Gudgeon.Sums.Statistics;

/// <summary>One-way analysis of variance: does what lies between groups exceed what lies within them?</summary>
/// <param name="BetweenSquares">Sum of squares between groups.</param>
/// <param name="BetweenFreedom">Groups less one.</param>
/// <param name="WithinSquares">Sum of squares within groups.</param>
/// <param name="WithinFreedom">Readings less groups.</param>
public sealed record OneWayAnova(double BetweenSquares, int BetweenFreedom, double WithinSquares, int WithinFreedom)
{
    /// <summary>Mean square between over mean square within.</summary>
    public double F => BetweenSquares / BetweenFreedom / (WithinSquares / WithinFreedom);

    /// <summary>Standard deviation within groups.</summary>
    public double ResidualDeviation => Math.Sqrt(WithinSquares / WithinFreedom);

    /// <summary>Share of the total squares that lies between groups.</summary>
    public double RSquared => BetweenSquares / (BetweenSquares + WithinSquares);

    /// <summary>Analyses groups of readings; every reading is centred first, so a large constant part costs no digits.</summary>
    /// <param name="groups">Two or more groups, one of them with two or more readings.</param>
    /// <returns>The analysis.</returns>
    /// <remarks>Source: GUM H.5; NIST/SEMATECH e-Handbook 7.4.3.</remarks>
    public static OneWayAnova Of(IReadOnlyList<double[]> groups)
    {
        var count = groups.Sum(group => group.Length);
        if (groups.Count < 2 || groups.Any(group => group.Length == 0) || count <= groups.Count)
            throw new ArgumentException("At least two groups with readings are needed, and one of them repeated.", nameof(groups));
        var centre = groups[0][0];
        var shifted = groups.Select(group => Array.ConvertAll(group, x => x - centre)).ToArray();
        var grand = Samples.Mean(shifted.SelectMany(group => group).ToArray());
        var between = shifted.Sum(group => group.Length * Square(Samples.Mean(group) - grand));
        var within = shifted.Sum(group => Samples.SumOfSquares(group));
        return new(between, groups.Count - 1, within, count - groups.Count);
    }

    private static double Square(double x) => x * x;
}
