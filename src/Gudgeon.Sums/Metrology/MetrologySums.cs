using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Metrology;

/// <summary>Temperature, budget, verdict and study sums for the catalogue.</summary>
public static class MetrologySums
{
    /// <summary>The list.</summary>
    public static IReadOnlyList<SumEntry> List { get; } =
    [
        new("metrology.at-20", "Size at 20 °C from a warm part and a warm gauge", "L₂₀ = R(1 + α_g(t_g − 20)) / (1 + α_p(t_p − 20))",
            [
                new("R", "reading", "mm"), new("α_p", "expansion of the part", "1/K"), new("t_p", "temperature of the part", "°C"),
                new("α_g", "expansion of the gauge", "1/K"), new("t_g", "temperature of the gauge", "°C"),
            ], "mm", "coefficients 0 to 0.0001 per kelvin, others are refused; some tens of kelvins about 20 °C", "ISO 1, reference temperature",
            new("R 85.0123, 21.5e-6 at 31 °C, 11.5e-6 at 24 °C", 84.996108986025, 1e-9, "recomputed with mpmath; coefficients seen in Callister Table B.6",
                () => ThermalExpansion.At20(Mm(85.0123), Temperature.FromCelsius(31), 21.5e-6, Temperature.FromCelsius(24), 11.5e-6).Millimetres)),
        new("metrology.at-temperature", "Size at a temperature", "L = L₂₀(1 + α(t − 20))",
            [new("L₂₀", "size at 20 °C", "mm"), new("α", "expansion", "1/K"), new("t", "temperature", "°C")], "mm",
            "coefficients 0 to 0.0001 per kelvin, others are refused", "ISO 1, reference temperature",
            new("100 mm of gauge steel at 25 °C", 100.00575, 1e-9, "GUM H.1.3.3 coefficient; recomputed with mpmath",
                () => ThermalExpansion.At(Mm(100), Temperature.FromCelsius(25), 11.5e-6).Millimetres)),
        new("metrology.rectangular", "Standard uncertainty of anything between two bounds", "u = a/√3", [new("a", "half-width", "any")], "as a", "a not below zero", "GUM 4.3.7",
            new("a = 2e-6", 1.1547e-6, 5e-11, "GUM H.1.3.3 (prints 1.2e-6), recomputed", () => BudgetLine.Rectangular("x", 2e-6).StandardUncertainty)),
        new("metrology.arcsine", "Standard uncertainty of something that swings between two bounds", "u = a/√2", [new("a", "half-width", "any")], "as a",
            "a not below zero", "GUM H.1.3.4", new("a = 0.5", 0.353553, 5e-7, "GUM H.1.3.4 (prints 0.35), seen", () => BudgetLine.Arcsine("x", 0.5).StandardUncertainty)),
        new("metrology.triangular", "Standard uncertainty of something likelier in the middle", "u = a/√6", [new("a", "half-width", "any")], "as a",
            "a not below zero", "GUM 4.3.9", new("a = 1", 0.4082483, 5e-8, "closed form", () => BudgetLine.Triangular("x", 1).StandardUncertainty)),
        new("metrology.resolution", "Standard uncertainty of the last step of a display", "u = r/√12", [new("r", "resolution", "any")], "as r",
            "r not below zero", "GUM F.2.2.1", new("r = 0.01", 0.00288675, 5e-9, "GUM F.2.2.1 (0.29r), recomputed", () => BudgetLine.Resolution("x", 0.01).StandardUncertainty)),
        new("metrology.combined", "Combined standard uncertainty", "u_c = √(Σ(cᵢuᵢ)² + 2Σ r·cᵢuᵢ·cⱼuⱼ)",
            [new("cᵢ", "sensitivity", "result per input"), new("uᵢ", "standard uncertainty", "of the input"), new("r", "correlation", "1")], "of the result",
            "first order: where the sum is nearly straight within ±u; the Monte Carlo run says whether", "GUM 5.1.2 and 5.2.2",
            new("0.25, 0.57, 0.82 %", 1.029466, 5e-7, "GUM G.4.1 (prints 1.03), recomputed", () => Example.StandardUncertainty)),
        new("metrology.effective-freedom", "Effective degrees of freedom", "ν = u_c⁴ / Σ((cᵢuᵢ)⁴/νᵢ)",
            [new("cᵢuᵢ", "contributions", "of the result"), new("νᵢ", "degrees of freedom", "1")], "1", "independent lines; a guide only with correlations", "GUM G.4.1",
            new("0.25 (9), 0.57 (4), 0.82 % (14)", 18.998742, 5e-7, "GUM G.4.1 (prints 19.0), recomputed", () => Example.EffectiveDegreesOfFreedom)),
        new("metrology.freedom-of-estimate", "Degrees of freedom of an estimated uncertainty", "ν = 1/(2r²)", [new("r", "relative doubt of u", "1")], "1", "r above zero; others are refused", "GUM G.4.2",
            new("r = 0.25", 8, 1e-12, "GUM G.4.2, seen", () => BudgetLine.FreedomOfEstimate(0.25))),
        new("metrology.warm-error", "Error of a reading when part and gauge are warm, first order", "R(α_p(t_p − 20) − α_g(t_g − 20))",
            [new("R", "reading", "mm"), new("α_p, t_p", "of the part", "1/K, °C"), new("α_g, t_g", "of the gauge", "1/K, °C")], "mm", "coefficients 0 to 0.0001 per kelvin", "ISO 1, reference temperature",
            new("85 mm aluminium and steel gauge, both 27 °C", 0.00595, 1e-9, "recomputed; coefficients seen in Callister Table B.6",
                () => ThermalExpansion.FirstOrderError(Mm(85), Temperature.FromCelsius(27), 21.5e-6, Temperature.FromCelsius(27), 11.5e-6).Millimetres)),
        new("metrology.conformance", "Probability that a thing lies within its limits", "p = Φ((U − y)/u) − Φ((L − y)/u)",
            [new("y", "value", "any"), new("u", "standard uncertainty", "as y"), new("L", "lower limit", "as y"), new("U", "upper limit", "as y")], "1",
            "normal distribution, u above zero; a counted thing has 0 or 1", "JCGM 106:2012, 7.4 (from memory)",
            new("12.5 ≤ Y ≤ 16.3, y 13.6, u 1.8", 0.6626298, 1e-7, "JCGM 106 7.4 (from memory, prints 0.66); recomputed with SciPy and R",
                () => Conformance.Probability(13.6, 1.8, Limits.Between(12.5, 16.3)))),
        new("metrology.guard", "Guard inside the limits for 95 % probability, in standard uncertainties", "Φ(g) − Φ(g − T/u) = 0.95",
            [new("T", "width of the band", "any"), new("u", "standard uncertainty", "as T")], "1", "T/u of 3.92 and above; below, nothing can be proven within",
            "ISO 14253-1:2017 (from memory)", new("T/u = 4", 1.796213, 1e-6, "recomputed with SciPy brentq", () => DecisionRule.Probability95.InsideFactor(4))),
        new("metrology.false-pass", "Chance that a bad part is passed", "∫ outside T of f(η)·P(pass | η) dη",
            [new("f", "distribution of the process", "1"), new("u", "standard uncertainty", "any"), new("T", "limits", "any")], "1", "normal process and measurement",
            "JCGM 106:2012, 9.5 (from memory)", new("limit 2σ, u = σ/4, no guard", 0.008006, 5e-7, "Deaver 1994, seen (0.8 %); recomputed with SciPy",
                () => Conformance.Risks(0, 1, 0.25, Limits.Between(-2, 2), Limits.Between(-2, 2)).FalsePass)),
        new("metrology.monte-carlo", "Interval by Monte Carlo", "draw each input, work out the sum, sort, take the share",
            [new("x", "distributions of the inputs", "any"), new("M", "trials", "1"), new("seed", "seed", "1")], "of the sum", "1000 trials or more; independent inputs",
            "JCGM 101:2008, clause 7", new("four rectangles of u 1, upper end of 95 %", 3.87929, 0.015, "numerical convolution with SciPy; JCGM 101 9.2.3 prints 3.88",
                () => MonteCarlo.RunSum(Enumerable.Repeat(Distribution.Rectangular(-Math.Sqrt(3), Math.Sqrt(3)), 4).ToArray(), [1, 1, 1, 1], 1_000_000, 2).Symmetric(0.95).High)),
        new("metrology.gauge-study", "Measuring as a share of all variation, by average and range", "√(EV² + AV²) / √(EV² + AV² + PV²)",
            [new("readings", "by part, operator, trial", "any")], "1", "2 to 10 parts, 2 or 3 operators, 2 or 3 trials; more are refused",
            "AIAG, Measurement Systems Analysis, 4th ed. 2010, chapter III", new("two parts 1 and 3, two operators alike, no scatter", 0, 1e-12, "by definition: without scatter the gauge adds nothing",
                () => GaugeStudy.ByRange(new double[,,] { { { 1, 1 }, { 1, 1 } }, { { 3, 3 }, { 3, 3 } } }).GaugeShare)),
    ];

    private static Budget Example => new(100, "%", [new("a", 0.25, "", 1, 9), new("b", 0.57, "", 1, 4), new("c", 0.82, "", 1, 14)]);

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
