namespace Gudgeon.Sums.Statistics;

/// <summary>The statistical sums for the catalogue.</summary>
public static class StatisticsSums
{
    private static readonly double[] GumTemperatures =
    [
        96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72,
    ];

    private static readonly double[] Uranium = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];

    /// <summary>The list.</summary>
    public static IReadOnlyList<SumEntry> List { get; } =
    [
        new("statistics.mean", "Mean of repeated readings", "m = Σx / n", [new("x", "readings", "any"), new("n", "their number", "1")], "as x",
            "one reading or more", "GUM 4.2.1",
            new("the 20 temperatures of GUM Table 1", 100.145, 1e-9, "GUM 4.4.3, seen in a public test suite", () => Samples.Mean(GumTemperatures))),
        new("statistics.deviation", "Standard deviation of repeated readings", "s = √(Σ(x − m)² / (n − 1))",
            [new("x", "readings", "any"), new("m", "their mean", "as x"), new("n", "their number", "1")], "as x", "two readings or more; fewer are refused", "GUM 4.2.2",
            new("the 20 temperatures of GUM Table 1", 1.488844, 1e-6, "GUM 4.4.3 prints 1.489; recomputed with NumPy", () => Samples.StandardDeviation(GumTemperatures))),
        new("statistics.pooled", "Standard deviation pooled from several runs", "s = √(Σ(nᵢ − 1)sᵢ² / Σ(nᵢ − 1))",
            [new("nᵢ", "readings in a run", "1"), new("sᵢ", "deviation of a run", "any")], "as sᵢ", "each run two readings or more", "GUM 4.2.4",
            new("(n 5, s 2) and (n 5, s 4)", 3.16227766, 1e-8, "√10, seen in a public test suite", () => Samples.Pooled([(5, 2), (5, 4)]).Deviation)),
        new("statistics.from-range", "Standard deviation from the range of a few readings", "s = R / d₂(n)",
            [new("R", "range", "any"), new("n", "number of readings", "1")], "as R", "2 to 10 readings; more are refused", "ASTM E2587 (from memory, recomputed)",
            new("1, 2.693, 1.5: range 1.693, n = 3", 1, 1e-12, "d₂(3) = 1.693", () => Samples.StandardDeviationFromRange([1, 2.693, 1.5]))),
        new("statistics.coverage-factor", "Coverage factor from degrees of freedom", "k = t((1 + p)/2; ν)",
            [new("p", "coverage", "1"), new("ν", "degrees of freedom", "1")], "1", "p between 0 and 1, ν above 0", "GUM Table G.2",
            new("p = 0.99, ν = 16", 2.92078, 5e-6, "recomputed with SciPy; GUM prints 2.92", () => Quantiles.CoverageFactor(0.99, 16))),
        new("statistics.grubbs", "Grubbs' statistic of the farthest reading", "G = max|x − m| / s", [new("x", "readings", "any")], "1",
            "three readings or more, not all alike", "NIST/SEMATECH e-Handbook 1.3.5.17.1",
            new("eight uranium readings of the handbook", 2.4687646112, 1e-9, "NIST e-Handbook, seen in a public test suite", () => Outliers.Grubbs(Uranium).Statistic)),
        new("statistics.autocorrelation", "Drift of readings in their order, lag 1", "Σ(xᵢ − m)(xᵢ₊₁ − m) / Σ(xᵢ − m)²", [new("x", "readings in order", "any"), new("m", "their mean", "as x")], "1",
            "two readings or more, not all alike", "NIST/SEMATECH e-Handbook 1.3.5.12",
            new("10000001, 10000003, 10000002", -0.5, 1e-12, "NIST StRD NumAcc1, certified", () => Samples.LagOneAutocorrelation([10000001, 10000003, 10000002]))),
        new("statistics.anova", "F of a one-way analysis of variance", "mean square between / mean square within", [new("x", "readings by group", "any")], "1",
            "two groups or more, one of them repeated", "GUM H.5",
            new("groups 1 2 3 and 2 3 4", 1.5, 1e-12, "by hand: 1.5 / (4/4)", () => OneWayAnova.Of([[1, 2, 3], [2, 3, 4]]).F)),
        new("statistics.line", "Slope of the best straight line", "b₁ of y = b₀ + b₁x, least squares", [new("x", "where", "any"), new("y", "readings", "any")], "y per x",
            "three points or more, not all at one x", "GUM H.3",
            new("x = 0…5, y = 0 2 3 1 4 2", 0.4, 1e-12, "exact rational arithmetic", () => LeastSquares.Line([0, 1, 2, 3, 4, 5], [0, 2, 3, 1, 4, 2]).Coefficients[1])),
    ];
}
