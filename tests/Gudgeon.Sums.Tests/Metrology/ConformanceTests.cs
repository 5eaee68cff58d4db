using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Tests.Metrology;

public class ConformanceTests
{
    // JCGM 106:2012, 7.2.2 example 1 (from memory), recomputed with SciPy and R: Φ(1.4).
    [Fact]
    public void Probability_upperLimit_jcgm106Diode() =>
        Assert.Equal(0.9192433, Conformance.Probability(-5.47, 0.05, Limits.AtMost(-5.40)), 1e-7);

    // JCGM 106:2012, 7.4 (from memory), recomputed: Φ(1.5) − Φ(−0.6111).
    [Fact]
    public void Probability_bothLimits_jcgm106Oil() =>
        Assert.Equal(0.6626298, Conformance.Probability(13.6, 1.8, Limits.Between(12.5, 16.3)), 1e-7);

    // JCGM 106:2012, 8.3.3 (from memory), recomputed: 0.99946 that 107 km/h with 2 % exceeds 100.
    [Fact]
    public void Probability_provenOutside_jcgm106Speed() =>
        Assert.Equal(0.99946, 1 - Conformance.Probability(107, 107 * 0.02, Limits.AtMost(100)), 5e-6);

    // Guard r·U, k = 2, worst chance to pass a bad part (ILAC-G8:09/2019 Table 1 from memory; recomputed).
    [Theory]
    [InlineData(1.5, 0.00135)]
    [InlineData(1, 0.02275)]
    [InlineData(0.83, 0.0485)]
    [InlineData(0, 0.5)]
    public void Probability_atTheGuard_isTheRisk(double r, double risk) =>
        Assert.Equal(risk, 1 - Conformance.Probability(10 - r * 2, 1, Limits.AtMost(10)), 5e-5);

    // Process capability (seen in a public test suite, recomputed): limits 9, 11, s 0.4.
    [Theory]
    [InlineData(10, 0.012419)]
    [InlineData(10.5, 0.105738)]
    [InlineData(12, 0.99379)]
    public void Probability_process_shareOut(double mean, double shareOut) =>
        Assert.Equal(shareOut, 1 - Conformance.Probability(mean, 0.4, Limits.Between(9, 11)), 1e-6);

    // Draft RP-19 table as seen in a public test suite; recomputed with SciPy quad. Tolerance 2e-6 of the share: the print for 0.95 differs in its 7th place.
    [Theory]
    [InlineData(0.60, 0.0483860326, 0.0826008199, 0.06260453)]
    [InlineData(0.70, 0.0392234109, 0.0572322042, 0.05388530)]
    [InlineData(0.80, 0.0285583037, 0.0363227145, 0.04232016)]
    [InlineData(0.90, 0.0159995312, 0.0179880430, 0.02654585)]
    [InlineData(0.95, 0.0087100925, 0.0092389664, 0.01595394)]
    [InlineData(0.99, 0.0019991684, 0.0020243866, 0.00445636)]
    public void Risks_quarterUncertainty_agreeWithTable(double inside, double falsePass, double badAmongPassed, double falseFail)
    {
        var sigma = 1 / Quantiles.NormalPoint((1 + inside) / 2);
        var limits = Limits.Between(-1, 1);
        var risks = Conformance.Risks(0, sigma, sigma / 4, limits, limits);
        Assert.Equal(falsePass, risks.FalsePass, 2e-8);
        Assert.Equal(badAmongPassed, risks.BadAmongPassed, 2e-8);
        Assert.Equal(falseFail, risks.FalseFail, 1e-8);
    }

    // Deaver 1994 (seen in a public test suite, recomputed): process sigma 1, u = 1/TUR.
    [Theory]
    [InlineData(2, 4, 1, 0.008006, 0.014851)]
    [InlineData(2, 2, 0.91, 0.008052, 0.066106)]
    [InlineData(2.5, 4, 1, 0.002445, null)]
    [InlineData(2.5, 1, 1, 0.004724, null)]
    public void Risks_deaver_agree(double limit, double ratio, double guard, double falsePass, double? falseFail)
    {
        var risks = Conformance.Risks(0, 1, 1 / ratio, Limits.Between(-limit, limit), Limits.Between(-limit * guard, limit * guard));
        Assert.Equal(falsePass, risks.FalsePass, 5e-7);
        if (falseFail is { } expected)
            Assert.Equal(expected, risks.FalseFail, 5e-7);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0)]
    [InlineData(double.NaN, 1)]
    public void Risks_noSpread_throws(double process, double u) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Conformance.Risks(0, process, u, Limits.AtMost(1), Limits.AtMost(1)));

    [Theory]
    [InlineData(54.005, ConditionWord.AsNew)]
    [InlineData(53.98, ConditionWord.Serviceable)]
    [InlineData(54.0, ConditionWord.Serviceable)]
    [InlineData(53.951, ConditionWord.TooCloseToCall)]
    [InlineData(53.94, ConditionWord.Out)]
    public void Condition_newAndWearLimits_areTwoQuestions(double value, ConditionWord word) =>
        Assert.Equal(word, Condition.Judge(value, 0.001, Limits.Between(54.0, 54.02), Limits.AtLeast(53.95)).Word);

    [Theory]
    [InlineData(0.03, ThumbWord.Likely)]
    [InlineData(0.027, ThumbWord.Likely)]
    [InlineData(0.0269, ThumbWord.LookItUp)]
    [InlineData(0.0972, ThumbWord.LookItUp)]
    [InlineData(0.0973, ThumbWord.Unlikely)]
    public void RuleOfThumb_neverGivesAVerdict(double clearance, ThumbWord word) =>
        Assert.Equal(word, new RuleOfThumb(Limits.Between(0.027, 0.0648), Limits.AtMost(0.0972)).Of(clearance));

    [Fact]
    public void RuleOfThumb_withoutReject_sendsToTheBook() =>
        Assert.Equal(ThumbWord.LookItUp, new RuleOfThumb(Limits.AtMost(0.25), null).Of(9));
}
