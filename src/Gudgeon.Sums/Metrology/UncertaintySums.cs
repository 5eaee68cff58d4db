using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Metrology;

/// <summary>What goes into a budget and what comes out of it, for the catalogue.</summary>
public static class UncertaintySums
{
    // GUM H.2: V, mA and rad, five times together.
    private static readonly double[][] s_impedance =
        [[5.007, 4.994, 5.005, 4.990, 4.999], [19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3], [1.0456, 1.0438, 1.0468, 1.0428, 1.0433]];

    // Cano, Moguerza and Redchuk, Six Sigma with R (2012), data set of a battery study: part, operator, run.
    private static readonly double[,,] s_study =
    {
        { { 1.27, 0.90, 1.09 }, { 1.34, 1.32, 1.27 }, { 1.09, 1.26, 1.09 } },
        { { 1.12, 1.09, 1.15 }, { 1.24, 1.00, 1.14 }, { 1.48, 1.15, 1.15 } },
        { { 1.73, 1.28, 1.77 }, { 1.64, 1.65, 1.77 }, { 1.64, 1.44, 1.68 } },
    };

    /// <summary>The list.</summary>
    public static IReadOnlyList<SumEntry> List { get; } =
    [
        new("metrology.repeats", "Standard uncertainty of the mean of repeats", "u = s/√n", [new("s", "their standard deviation", "any"), new("n", "their number", "1")], "as s", "two readings or more; fewer are refused", "GUM 4.2.3",
            new("the 20 temperatures of GUM Table 1", 0.332916, 1e-6, "GUM 4.4.3 prints 0.333; recomputed with NumPy", () => BudgetLine.Repeats("t", Example.GumTemperatures).StandardUncertainty)),
        new("metrology.pooled", "Standard uncertainty of a mean by a pooled deviation", "u = s_p/√n", [new("s_p", "pooled deviation of one reading", "any"), new("n", "readings averaged", "1")], "as s_p", "one reading or more", "GUM 4.2.4",
            new("s_p 13 nm, five readings", 5.8, 0.05, "GUM H.1.3.2, seen", () => BudgetLine.Pooled("d", 13, 24, 5).StandardUncertainty)),
        new("metrology.certificate", "Standard uncertainty out of a certificate", "u = U/k", [new("U", "expanded uncertainty", "any"), new("k", "coverage factor", "1")], "as U", "k above zero; others are refused", "GUM 4.3.3",
            new("U 0.075 µm with k 3", 0.025, 1e-15, "GUM H.1.3.1, seen", () => BudgetLine.Certificate("l", 0.075, 3).StandardUncertainty)),
        new("metrology.expanded", "Expanded uncertainty", "U = k·u_c", [new("u_c", "combined standard uncertainty", "any"), new("k", "coverage factor", "1")], "as u_c", "any budget", "GUM 6.2.1",
            new("22.5, 8.66, 14.4, 5.77, 5.77 mg, k 2", 58.5, 0.05, "EA-4/02 M:2022, S2, seen (prints 58 from 29.2)", () => Example.Weight.Expanded())),
        new("metrology.expanded-for", "Expanded uncertainty for a coverage", "U = t((1 + p)/2; ν)·u_c", [new("u_c", "combined standard uncertainty", "any"), new("p", "coverage", "1"), new("ν", "effective degrees of freedom, cut to a whole number", "1")], "as u_c",
            "p between 0 and 1", "GUM G.4.1 and G.6.4", new("0.25 (9), 0.57 (4), 0.82 % (14), p 0.95", 2.2, 0.05, "GUM G.4.1, seen", () => Example.Gum.ExpandedFor(0.95).Expanded)),
        new("metrology.share", "Share of a line in the variance", "(cᵢuᵢ)²/u_c²", [new("cᵢuᵢ", "contribution", "any"), new("u_c", "combined standard uncertainty", "as cᵢuᵢ")], "1", "independent lines", "GUM 5.1.2",
            new("0.25 of 0.25, 0.57, 0.82", 0.0589734, 5e-7, "by hand: 0.0625/1.0598", () => Example.Gum.ShareOf(0))),
        new("metrology.first-order", "Combined standard uncertainty of any formula", "u² = Σ(∂f/∂xᵢ·uᵢ)²", [new("f", "the formula", "any"), new("uᵢ", "standard uncertainties", "of the inputs")], "of the formula", "first order: smooth near the inputs", "GUM 5.1.2",
            new("ln x, x between 0.1 and 1.1", 0.4811252, 5e-7, "NPL DEM-ES-011 (2006), 9.2, seen (prints 0.481); recomputed", () => Example.Logarithm.StandardUncertainty)),
        new("metrology.covariance", "Uncertainties of results that share inputs", "J·V·Jᵀ", [new("J", "slopes", "any"), new("V", "covariances of the inputs", "any")], "of the results, squared", "first order", "GUM H.2.3",
            new("resistance of GUM H.2, deviation", 0.07107, 5e-5, "GUM H.2 prints 0.071, seen; recomputed with python3-uncertainties", () => Math.Sqrt(FirstOrder.Propagate([x => x[0] / x[1] * Math.Cos(x[2])], Example.ImpedanceMeans(s_impedance), Example.ImpedanceCovariance(s_impedance))[0, 0]))),
        new("metrology.second-order", "What bending adds to the variance", "Σᵢⱼ (½f_ij² + f_i·f_ijj)·uᵢ²uⱼ²", [new("f", "the formula", "any"), new("u", "standard uncertainties", "of the inputs")], "of the formula, squared", "independent normal inputs", "GUM 5.1.2, note",
            new("gauge block of GUM H.1, deviation of the added terms, nm", 12.02, 0.01, "GUM H.1.7 prints 11.7 and 1.7 (from memory); 11.89 and 1.74 recomputed", () => 1e6 * Math.Sqrt(FirstOrder.SecondOrderVariance(Example.GaugeBlock, Example.GaugeBlockInputs)))),
        new("metrology.normal", "Deviation of a normal input", "u", [new("u", "standard uncertainty", "any")], "as u", "u not below zero", "JCGM 101:2008, 6.4.7", new("0.020 mg", 0.020, 1e-15, "by definition", () => Distribution.Normal(1.234, 0.020).StandardDeviation)),
        new("metrology.student", "Deviation of an input known from few readings", "s·√(ν/(ν − 2))", [new("s", "scale", "any"), new("ν", "degrees of freedom", "1")], "as s", "ν above 2", "JCGM 101:2008, 6.4.9",
            new("25 nm, ν 18", 26.516504, 5e-7, "closed form 25·√(18/16)", () => Distribution.Student(0, 25, 18).StandardDeviation)),
        new("metrology.trapezoid", "Deviation of the sum of two rectangles", "a·√((1 + β²)/6)", [new("a", "half-width", "any"), new("β", "flat share of it", "1")], "as a", "β between 0 and 1", "JCGM 101:2008, 6.4.4; EA-4/02 S10 (from memory)",
            new("rectangles of 25 and 50 µm", 32.274861, 5e-7, "closed form √((25² + 50²)/3)", () => Distribution.Trapezoid(-75, 75, 1.0 / 3).StandardDeviation)),
        new("metrology.triangle", "Deviation of the sum of two equal rectangles", "a/√6", [new("a", "half-width", "any")], "as a", "a not below zero", "JCGM 101:2008, 6.4.5", new("a = 1", 0.4082483, 5e-8, "closed form", () => Distribution.Triangular(-1, 1).StandardDeviation)),
        new("metrology.swing", "Deviation of an input that swings", "a/√2", [new("a", "half-width", "any")], "as a", "a not below zero", "JCGM 101:2008, 6.4.6", new("a = 0.5", 0.353553, 5e-7, "GUM H.1.3.4 (prints 0.35), seen", () => Distribution.Arcsine(-0.5, 0.5).StandardDeviation)),
        new("metrology.curved-trapezoid", "Deviation of a rectangle with doubtful bounds", "√((b − a)²/12 + d²/9)", [new("a, b", "bounds", "any"), new("d", "their doubt", "as a")], "as a", "d below half the width", "JCGM 101:2008, 6.4.3",
            new("±1e-6 with bounds to 0.1e-6", 0.578312e-6, 5e-13, "closed form; GUM H.1.3.5 prints 0.58e-6", () => Distribution.CurvedTrapezoid(-1e-6, 1e-6, 0.1e-6).StandardDeviation)),
        new("metrology.draws", "Mean of a formula by draws", "Σ f(drawn inputs)/M", [new("f", "the formula", "any"), new("M", "draws", "1")], "of the formula", "1000 draws or more; same seed, same result", "JCGM 101:2008, clause 7",
            new("ln x, x between 0.1 and 1.1, 200,000 draws", -0.6649003, 0.005, "NPL DEM-ES-011 (2006), 9.2, seen (prints −0.665); recomputed analytically", () => Example.LogarithmRun.Mean)),
        new("metrology.shortest", "Shortest interval by draws", "the narrowest window that holds the share", [new("p", "share", "1")], "of the formula", "p between 0 and 1", "JCGM 101:2008, 7.7",
            new("ln x, x between 0.1 and 1.1, lower end of 95 %", -1.895, 0.03, "NPL DEM-ES-011 (2006), Table 9.2, seen", () => Example.LogarithmRun.Shortest(0.95).Low)),
        new("metrology.share-within", "Share of draws within limits", "draws within / all draws", [new("L, U", "limits", "any")], "1", "any run", "JCGM 106:2012, 7 (from memory)",
            new("gap 0.005 ± 0.003 ± 0.001 ± 0.005 ± 0.001, rectangles, below 0", 0.0806, 0.003, "Shigley, Example 1-7 (from memory), uniform inputs; 10,000,000 draws with NumPy", () => 1 - Example.Gap.ShareWithin(Limits.AtLeast(0)))),
        new("metrology.validation", "How near first order must come to the draws", "δ = ½·10^l, u = c·10^l with c of two figures", [new("u", "standard uncertainty", "any")], "as u", "two figures, or one where that is enough", "JCGM 101:2008, 7.9.2",
            new("u 0.0539", 0.0005, 1e-15, "JCGM 101 7.9.2 by its definition", () => Validation.Of(new Budget(0, "mg", [new("x", 0.0539, "")]), Example.LogarithmRun).Tolerance)),
        new("metrology.anova-parts", "Sum of squares between parts of a gauge study", "o·t·Σ(mean of the part − mean)²", [new("o", "operators", "1"), new("t", "trials", "1")], "squared", "two or more of parts, operators and trials", "AIAG, Measurement Systems Analysis, 4th ed. 2010, appendix A (from memory)",
            new("three prototypes by three operators, thrice", 1.2007, 5e-5, "Cano, Moguerza and Redchuk, Six Sigma with R (2012), seen; recomputed with R", () => GaugeAnova.Of(s_study).PartSquares)),
        new("metrology.gauge-anova", "Deviation of the measuring by analysis of variance", "√(repeatability + between operators)", [new("readings", "by part, operator, trial", "any")], "as the readings", "two or more of each; interaction pooled when its chance is above 0.05", "AIAG, Measurement Systems Analysis, 4th ed. 2010, appendix A (from memory)",
            new("the same study", 0.14792656, 5e-8, "Cano, Moguerza and Redchuk, Six Sigma with R (2012), seen", () => Math.Sqrt(GaugeStudy.ByAnova(s_study).Study.Gauge))),
        new("metrology.tolerance-share", "Measuring as a share of a tolerance", "6·σ/width", [new("σ", "deviation of the measuring", "any"), new("width", "of the tolerance", "as σ")], "1", "width above zero; others are refused", "AIAG, Measurement Systems Analysis, 4th ed. 2010, chapter III (from memory)",
            new("the same study, width 0.1", 8.8756, 5e-5, "Cano, Moguerza and Redchuk, Six Sigma with R (2012), seen (887.56 %)", () => GaugeStudy.ByAnova(s_study).Study.ShareOfTolerance(0.1))),
        new("metrology.verdict-guard", "Guard that a verdict keeps inside a limit", "g·u", [new("u", "standard uncertainty", "any"), new("g", "factor of the rule", "1")], "as u", "infinite where the band is too narrow for any proof", "ISO 14253-1:2017 (from memory)",
            new("band 0.025, u 0.0020, 95 % probability", 0.0032897, 5e-7, "1.644854 by SciPy brentq at T/u = 12.5", () => Verdict.Judge(49.99, 0.0020, Limits.Between(49.975, 50.000), DecisionRule.Probability95).Guard)),
        new("metrology.margin", "Distance to the nearest limit", "min(y − L, U − y)", [new("y", "value", "any"), new("L, U", "limits", "as y")], "as y", "below zero outside", "definition", new("1.25 between 1 and 2", 0.25, 1e-15, "by hand", () => Limits.Between(1, 2).Margin(1.25))),
        new("metrology.more-readings", "Readings that would settle a verdict", "smallest n with factor·√(s²/n + u²) ≤ margin", [new("s", "deviation of one reading", "any"), new("u", "all else", "as s"), new("margin", "distance to the limit", "as s")], "1", "20 at most; else another instrument is named", "ISO 14253-1 (from memory), solved for n",
            new("s 1, u 0, margin 0.9 with k 2", 4, 1e-12, "by hand: (2·1/0.9)² = 4.94, five in all, one is there", () => NextStep.After(Verdict.Judge(10.9, 1, Limits.AtLeast(10)), new UncertaintyParts(1, 1, 0, 0), [], "mm").MoreReadings!.Value)),
    ];

    /// <summary>Worked cases that several entries share.</summary>
    private static class Example
    {
        public static double[] GumTemperatures =>
            [96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72];

        public static Budget Gum => new(100, "%", [new("a", 0.25, "", 1, 9), new("b", 0.57, "", 1, 4), new("c", 0.82, "", 1, 14)]);

        public static Budget Weight => new(10000.025, "g", [new("a", 22.5, ""), new("b", 8.66, ""), new("c", 14.4, ""), new("d", 5.77, ""), new("e", 5.77, "")]);

        public static Budget Logarithm => FirstOrder.Of(x => Math.Log(x[0]), "1", [new ModelInput(0.6, BudgetLine.Rectangular("x", 0.5))]);

        public static MonteCarloResult LogarithmRun => MonteCarlo.Run([Distribution.Rectangular(0.1, 1.1)], x => Math.Log(x[0]), 200_000, 7);

        public static MonteCarloResult Gap => MonteCarlo.RunSum(
            [Distribution.Rectangular(1.747, 1.753), Distribution.Rectangular(0.749, 0.751), Distribution.Rectangular(0.115, 0.125), Distribution.Rectangular(0.874, 0.876)], [1, -1, -1, -1], 200_000, 11);

        // l = l_S + d − l_S(δα·θ + α_S·δθ), mm.
        public static double GaugeBlock(ReadOnlySpan<double> x) => x[0] + x[1] - x[0] * (x[2] * x[3] + x[4] * x[5]);

        public static IReadOnlyList<ModelInput> GaugeBlockInputs =>
        [
            new(50.000623, new("l_S", 25e-6, "")), new(215e-6, new("d", 9.7e-6, "")), new(0, new("δα", 0.58e-6, "")), new(-0.1, new("θ", 0.41, "")), new(11.5e-6, new("α_S", 1.2e-6, "")), new(0, new("δθ", 0.029, "")),
        ];

        public static double[] ImpedanceMeans(double[][] read) => [.. read.Select(r => r.Average())];

        public static double[,] ImpedanceCovariance(double[][] read)
        {
            var means = ImpedanceMeans(read);
            var covariance = new double[3, 3];
            for (var i = 0; i < 3; i++)
                for (var j = 0; j < 3; j++)
                    covariance[i, j] = read[i].Zip(read[j], (a, b) => (a - means[i]) * (b - means[j])).Sum() / (5 * 4);
            return covariance;
        }
    }
}
