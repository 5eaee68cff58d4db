using CsCheck;
using Gudgeon.Sums.Metrology;
using static Gudgeon.Sums.Metrology.VerdictWord;

namespace Gudgeon.Sums.Tests.Metrology;

public class VerdictTests
{
    // Invented journal 49.975…50.000, u 0.002; bounds by ISO 14253-1 (rule from memory, arithmetic redone): k = 2 accepts 49.979…49.996.
    [Theory]
    [InlineData(49.979, Within)]
    [InlineData(49.9791, Within)]
    [InlineData(49.9789, TooCloseToCall)]
    [InlineData(49.996, Within)]
    [InlineData(49.9961, TooCloseToCall)]
    [InlineData(49.9959, Within)]
    [InlineData(49.975, TooCloseToCall)]
    [InlineData(50.000, TooCloseToCall)]
    [InlineData(49.971, TooCloseToCall)]
    [InlineData(49.9709, Outside)]
    [InlineData(50.004, TooCloseToCall)]
    [InlineData(50.0041, Outside)]
    [InlineData(50.1, Outside)]
    [InlineData(49.9875, Within)]
    public void Judge_guardOfU_atTheEdgesAndOneStepEitherSide(double value, VerdictWord word)
    {
        var verdict = Verdict.Judge(value, 0.002, Limits.Between(49.975, 50.000));
        Assert.Equal(word, verdict.Word);
        Assert.Equal(0.004, verdict.Guard, 1e-12);
        Assert.Equal("guard of U (k = 2)", verdict.Rule);
        Assert.True(verdict.CanProveWithin);
    }

    // The same with 95 %: g = 0.0033; accept 49.9783…49.9967, reject below 49.9717 or above 50.0033 (ISO 14253-1:2017, from memory).
    [Theory]
    [InlineData(49.9783, Within)]
    [InlineData(49.9782, TooCloseToCall)]
    [InlineData(49.9967, Within)]
    [InlineData(49.9968, TooCloseToCall)]
    [InlineData(49.9718, TooCloseToCall)]
    [InlineData(49.9717, Outside)]
    [InlineData(50.0032, TooCloseToCall)]
    [InlineData(50.0033, Outside)]
    public void Judge_95Percent_atTheEdges(double value, VerdictWord word)
    {
        var verdict = Verdict.Judge(value, 0.002, Limits.Between(49.975, 50.000), DecisionRule.Probability95);
        Assert.Equal(word, verdict.Word);
        Assert.Equal("95 % probability", verdict.Rule);
    }

    [Theory]
    [InlineData(0.054, Within)]
    [InlineData(0.0541, TooCloseToCall)]
    [InlineData(0.060, TooCloseToCall)]
    [InlineData(0.066, TooCloseToCall)]
    [InlineData(0.0661, Outside)]
    [InlineData(-1.0, Within)]
    public void Judge_upperLimitOnly(double value, VerdictWord word) =>
        Assert.Equal(word, Verdict.Judge(value, 0.003, Limits.AtMost(0.06)).Word);

    [Theory]
    [InlineData(3.206, Within)]
    [InlineData(3.2059, TooCloseToCall)]
    [InlineData(3.194, TooCloseToCall)]
    [InlineData(3.1939, Outside)]
    [InlineData(99, Within)]
    public void Judge_lowerLimitOnly(double value, VerdictWord word) =>
        Assert.Equal(word, Verdict.Judge(value, 0.003, Limits.AtLeast(3.2)).Word);

    [Theory]
    [InlineData(10, Within, 1)]
    [InlineData(9.999999, Outside, 0)]
    [InlineData(11, Within, 1)]
    [InlineData(11.000001, Outside, 0)]
    public void Judge_countedThing_hasNoGuard(double value, VerdictWord word, double probability)
    {
        var verdict = Verdict.Judge(value, 0, Limits.Between(10, 11));
        Assert.Equal(word, verdict.Word);
        Assert.Equal(probability, verdict.ProbabilityWithin);
    }

    [Fact]
    public void Judge_bandNarrowerThanTwoGuards_neverProvesWithin()
    {
        var narrow = Verdict.Judge(10.005, 0.0026, Limits.Between(10, 10.01));
        Assert.Equal(TooCloseToCall, narrow.Word);
        Assert.False(narrow.CanProveWithin);
        var just = Verdict.Judge(10.005, 0.0025, Limits.Between(10, 10.01));
        Assert.Equal(Within, just.Word);
        Assert.True(just.CanProveWithin);
        Assert.Equal(0.005, just.Margin, 1e-12);
    }

    // Guard factor in a two-sided band so that 95 % lie inside at its edge: recomputed with SciPy brentq.
    [Theory]
    [InlineData(4, 1.796213)]
    [InlineData(5, 1.648767)]
    [InlineData(6, 1.644918)]
    [InlineData(8, 1.644854)]
    [InlineData(10, 1.644854)]
    [InlineData(double.PositiveInfinity, 1.644854)]
    [InlineData(3.91, double.PositiveInfinity)]
    public void Probability95_insideFactor_byWidthOfBand(double width, double factor) =>
        Assert.Equal(factor, DecisionRule.Probability95.InsideFactor(width), 1e-6);

    // Two guards of 2u fill a band of 4u; a narrower one has no room for a proven value.
    [Theory]
    [InlineData(4, 2)]
    [InlineData(3.999, double.PositiveInfinity)]
    public void ExpandedUncertainty_insideFactor_byWidthOfBand(double width, double factor) =>
        Assert.Equal(factor, DecisionRule.ExpandedUncertainty.InsideFactor(width));

    [Fact]
    public void Judge_anyValue_wordsStandInOrderAndAgreeWithProbability() =>
        Gen.Select(Gen.Double[9, 11], Gen.Double[0.001, 0.2]).Sample((value, u) =>
        {
            var limits = Limits.Between(9.8, 10.2);
            var strict = Verdict.Judge(value, u, limits);
            var loose = Verdict.Judge(value, u, limits, DecisionRule.Probability95);
            if (strict.Word == Within)
                Assert.Equal(Within, loose.Word);
            if (strict.Word == Outside)
                Assert.Equal(Outside, loose.Word);
            if (loose.Word == Within)
                Assert.True(loose.ProbabilityWithin > 0.95 - 1e-9);
            if (loose.Word == Outside)
                Assert.True(loose.ProbabilityWithin < 0.05 + 1e-9);
        });

    [Fact]
    public void Judge_badInput_throwsWithTheRange()
    {
        var limits = Limits.AtMost(1);
        Assert.StartsWith("A verdict needs a finite value.", Assert.Throws<ArgumentOutOfRangeException>(() => Verdict.Judge(double.NaN, 1, limits)).Message);
        Assert.StartsWith("An uncertainty is finite and not below zero.", Assert.Throws<ArgumentOutOfRangeException>(() => Verdict.Judge(1, -1, limits)).Message);
        Assert.StartsWith("An uncertainty is finite and not below zero.", Assert.Throws<ArgumentOutOfRangeException>(() => Verdict.Judge(1, double.PositiveInfinity, limits)).Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => Verdict.Judge(1, double.NaN, limits));
    }

    [Fact]
    public void Limits_badInput_throwsWithWhatWasMet()
    {
        Assert.Equal("A limit needs a lower or an upper value.", Assert.Throws<ArgumentException>(() => Limits.Of(null, null)).Message);
        Assert.Equal("The lower limit 86.1 lies above the upper limit 86.", Assert.Throws<ArgumentException>(() => Limits.Between(86.1, 86)).Message);
        Assert.Equal("A limit must be a finite number; leave an open side out.", Assert.Throws<ArgumentException>(() => Limits.AtMost(double.PositiveInfinity)).Message);
        Assert.Equal("A limit must be a finite number; leave an open side out.", Assert.Throws<ArgumentException>(() => Limits.AtLeast(double.NaN)).Message);
        Assert.Equal(0, Limits.Between(5, 5).Width);
        Assert.Equal(double.PositiveInfinity, Limits.AtLeast(5).Width);
    }
}
