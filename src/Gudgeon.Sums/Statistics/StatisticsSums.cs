namespace Gudgeon.Sums.Statistics;

/// <summary>The statistical sums for the catalogue.</summary>
public static class StatisticsSums
{
    private static readonly double[] GumTemperatures =
    [
        96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72,
    ];

    // GUM H.3: readings of a thermometer, °C, and the corrections observed.
    private static readonly double[] Thermometer = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511];
    private static readonly double[] Corrections = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160];

    // Rosner (1983), as in the NIST/SEMATECH e-Handbook 1.3.5.17.3.
    private static readonly double[] RosnerData =
    [
        -0.25, 0.68, 0.94, 1.15, 1.20, 1.26, 1.26, 1.34, 1.38, 1.43, 1.49, 1.49, 1.55, 1.56, 1.58, 1.65, 1.69, 1.70, 1.76, 1.77, 1.81, 1.91, 1.94, 1.96, 1.99, 2.06, 2.09,
        2.10, 2.14, 2.15, 2.23, 2.24, 2.26, 2.35, 2.37, 2.40, 2.47, 2.54, 2.62, 2.64, 2.90, 2.92, 2.92, 2.93, 3.21, 3.26, 3.30, 3.59, 3.68, 4.30, 4.64, 5.34, 5.42, 6.01,
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
        new("statistics.range", "Range of readings", "largest − smallest", [new("x", "readings", "any")], "as x", "one reading or more", "definition", new("1, 2.693, 1.5", 1.693, 1e-12, "by hand", () => Samples.Range([1, 2.693, 1.5]))),
        new("statistics.squares", "Sum of squared deviations", "Σ(x − m)²", [new("x", "readings", "any"), new("m", "their mean", "as x")], "as x, squared", "one reading or more", "GUM 4.2.2", new("1, 2, 3", 2, 1e-12, "by hand", () => Samples.SumOfSquares([1, 2, 3]))),
        new("statistics.of-mean", "Standard uncertainty of a mean", "s/√n", [new("s", "standard deviation", "any"), new("n", "number of readings", "1")], "as s", "two readings or more", "GUM 4.2.3",
            new("the 20 temperatures of GUM Table 1", 0.332916, 1e-6, "GUM 4.4.3 prints 0.333; recomputed with NumPy", () => Samples.StandardUncertaintyOfMean(GumTemperatures))),
        new("statistics.grubbs-critical", "Critical value of Grubbs' statistic, one side", "(n − 1)/√n·√(t²/(n − 2 + t²))", [new("n", "readings", "1"), new("t", "Student's t at α/n with n − 2 degrees of freedom", "1")], "1", "three readings or more", "NIST/SEMATECH e-Handbook 1.3.5.17.1",
            new("n 8, risk 0.05", 2.0316520, 5e-8, "printed 2.032; seen to 16 digits in a public test suite; recomputed with SciPy", () => Outliers.GrubbsCritical(8, 0.05))),
        new("statistics.rosner", "Outliers by Rosner's test", "the last step with R above λ", [new("x", "readings", "any"), new("most", "the most to look for", "1")], "1", "about 25 readings or more", "NIST/SEMATECH e-Handbook 1.3.5.17.3",
            new("54 data of the handbook, up to ten", 3, 1e-12, "printed (from memory); recomputed with SciPy", () => Outliers.CountOf(Outliers.Rosner(RosnerData, 10)))),
        new("statistics.normal-share", "Share of a normal distribution below a point", "Φ(z)", [new("z", "distance from the mean in deviations", "1")], "1", "any z", "JCGM 106:2012, 7.2 (from memory)", new("z 1.4", 0.9192433, 5e-8, "recomputed with SciPy; printed 0.92", () => Quantiles.NormalShareBelow(1.4))),
        new("statistics.normal-point", "Point below which a share of a normal distribution lies", "Φ⁻¹(p)", [new("p", "share", "1")], "1", "p between 0 and 1", "JCGM 106:2012, Table 1 (from memory)", new("p 0.95", 1.6448536, 5e-8, "recomputed with SciPy", () => Quantiles.NormalPoint(0.95))),
        new("statistics.student-point", "Point of Student's distribution", "t(p; ν)", [new("p", "share below", "1"), new("ν", "degrees of freedom", "1")], "1", "ν above 0", "GUM Table G.2", new("p 0.975, ν 16", 2.119905, 5e-7, "recomputed with SciPy and R", () => Quantiles.StudentPoint(0.975, 16))),
        new("statistics.fisher", "Chance of an F as large", "1 − F(f; ν₁, ν₂)", [new("f", "ratio of mean squares", "1"), new("ν", "degrees of freedom of both", "1")], "1", "f not below 0", "GUM H.5.2.2",
            new("f 0.433721 with 18 and 60", 0.9741, 5e-5, "AIAG data set, seen in a public test suite; recomputed", () => Quantiles.FisherShareAbove(0.433721, 18, 60))),
        new("statistics.fit", "Best multiple of given columns", "b of y = Σbⱼxⱼ, least squares", [new("xⱼ", "columns", "any"), new("y", "readings", "any")], "y per x", "more readings than columns, columns that differ", "NIST StRD, Linear Regression",
            new("NoInt1: x 60 to 70, y 130 to 140", 2.07438016528926, 1e-13, "NIST StRD NoInt1, certified, seen", () => LeastSquares.Fit([[60, 61, 62, 63, 64, 65, 66, 67, 68, 69, 70]], [130, 131, 132, 133, 134, 135, 136, 137, 138, 139, 140]).Coefficients[0])),
        new("statistics.polynomial", "Best polynomial", "bⱼ of y = Σbⱼxʲ, least squares", [new("x", "where", "any"), new("y", "readings", "any")], "y per xʲ", "more readings than coefficients", "NIST StRD, Linear Regression",
            new("1 + x + x² at x 0 to 4, the last coefficient", 1, 1e-10, "exact rational arithmetic", () => LeastSquares.Polynomial([0, 1, 2, 3, 4], [1, 3, 7, 13, 21], 2).Coefficients[2])),
        new("statistics.standard-error", "Standard deviation of a fitted coefficient", "√(s²(XᵀX)⁻¹ⱼⱼ)", [new("X", "columns", "any"), new("s", "residual deviation", "as y")], "as the coefficient", "more readings than coefficients", "GUM H.3.3",
            new("thermometer of GUM H.3, at 20 °C", 0.00287760, 5e-9, "GUM H.3.4 prints 0.0029 (from memory); recomputed with NumPy", () => LeastSquares.Line([.. Thermometer.Select(t => t - 20)], Corrections).StandardError(0))),
        new("statistics.predicted", "Value of a fitted line at a place", "b₀ + b₁x", [new("b", "coefficients", "any"), new("x", "where", "any")], "as y", "near the readings", "GUM H.3.4",
            new("thermometer of GUM H.3, correction at 30 °C", -0.14937681, 5e-9, "GUM H.3.4 prints −0.1494 (from memory); recomputed with NumPy", () => LeastSquares.Line([.. Thermometer.Select(t => t - 20)], Corrections).At(1, 10).Value)),
        new("statistics.line", "Slope of the best straight line", "b₁ of y = b₀ + b₁x, least squares", [new("x", "where", "any"), new("y", "readings", "any")], "y per x",
            "three points or more, not all at one x", "GUM H.3",
            new("x = 0…5, y = 0 2 3 1 4 2", 0.4, 1e-12, "exact rational arithmetic", () => LeastSquares.Line([0, 1, 2, 3, 4, 5], [0, 2, 3, 1, 4, 2]).Coefficients[1])),
    ];
}
