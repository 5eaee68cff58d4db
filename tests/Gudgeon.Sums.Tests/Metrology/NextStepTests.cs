using Gudgeon.Sums.Metrology;

namespace Gudgeon.Sums.Tests.Metrology;

/// <summary>Invented figures; the expected steps follow from factor·u ≤ distance to the limit, worked by hand.</summary>
public class NextStepTests
{
    private static readonly Instrument[] s_shelf = [new("calliper", 0.02, 0.02), new("bore gauge", 0.002, 0.0015), new("air gauge", 0.001, 0.0008)];

    [Fact]
    public void Settled_verdict_needsNothing()
    {
        var step = After(86.0, new(0.001, 2, 0.001, 0), 86.02);
        Assert.Equal(new(NextStepKind.Settled, "Nothing more is needed."), step);
    }

    // Distance 0.004, so u must fall to 0.002: 0.004²/n + 0.001² ≤ 0.002² gives n ≥ 5.33, six in all, four more.
    [Fact]
    public void MoreReadings_settleIt()
    {
        var step = After(86.016, new(0.004, 2, 0.001, 0), 86.02);
        Assert.Equal(NextStepKind.MoreReadings, step.Kind);
        Assert.Equal(4, step.MoreReadings);
        Assert.Equal("4 more readings would settle it, if the mean stays where it is.", step.Advice);
    }

    // 0.003²/n + 0.001² ≤ 0.002²: n ≥ 3; two were taken.
    [Fact]
    public void OneMoreReading_saysOne() =>
        Assert.Equal("One more reading would settle it, if the mean stays where it is.", After(86.016, new(0.003, 2, 0.001, 0), 86.02).Advice);

    // Beyond the limit the same distance must be reached from outside.
    [Fact]
    public void MoreReadings_outsideTheLimit_settleItToo() =>
        Assert.Equal(4, After(86.024, new(0.004, 2, 0.001, 0), 86.02).MoreReadings);

    // 20 in all is allowed, 21 is not: 0.0089442719 /√20 = 0.002.
    [Theory]
    [InlineData(0.0089442719, NextStepKind.MoreReadings)]
    [InlineData(0.0090, NextStepKind.NothingWill)]
    public void MoreReadings_haveALimit(double repeat, NextStepKind kind) =>
        Assert.Equal(kind, After(86.016, new(repeat, 1, 0, 0), 86.02).Kind);

    // Calliper u 0.02 now; 0.002 needed with 0.001 from elsewhere: √(4 − 1) = 1.732 µm. The bore gauge (1.5) is the coarsest that does.
    [Fact]
    public void OtherInstrument_coarsestThatSettles_isNamed()
    {
        var step = After(86.016, new(0, 1, 0.02, 0.001), 86.02);
        Assert.Equal(NextStepKind.OtherInstrument, step.Kind);
        Assert.Equal("bore gauge", step.Instrument!.Name);
        Assert.Equal("The bore gauge that reads to 0.0020 mm would settle it.", step.Advice);
        Assert.Equal(0.0017320508, step.UncertaintyNeeded!.Value, 1e-9);
    }

    [Fact]
    public void FinerInstrument_thanAnyOwned_isDescribed()
    {
        var step = After(86.0195, new(0, 1, 0.02, 0), 86.02);
        Assert.Equal(NextStepKind.FinerInstrument, step.Kind);
        Assert.Equal("No instrument you have will; one with a standard uncertainty of 0.00025 mm or less would (U = 0.00050 mm).", step.Advice);
    }

    [Fact]
    public void SomethingElseRules_noInstrumentWill()
    {
        var step = After(86.0195, new(0, 1, 0.02, 0.003), 86.02);
        Assert.Equal(NextStepKind.NothingWill, step.Kind);
        Assert.Equal("No instrument will settle it: repeats, temperature and the part itself bring 0.0030 mm, and 0.00025 mm is needed. Let it lie at one temperature, clean it, and read again.", step.Advice);
    }

    [Fact]
    public void OnTheLimit_nothingSettlesIt() =>
        Assert.Equal("The value lies on the limit itself: no instrument will settle it. Decide by what the part must do.", After(10, new(0, 1, 0.02, 0), 10).Advice);

    // With the 95 % rule the factor is 1.645: 0.004/1.645 = 0.002432; 0.004²/n ≤ 0.002432² − 0.001²: n ≥ 3.26, four in all.
    [Fact]
    public void Probability95_needsFewerReadings()
    {
        var parts = new UncertaintyParts(0.004, 2, 0.001, 0);
        var verdict = Verdict.Judge(86.016, parts.Combined, Limits.AtMost(86.02), DecisionRule.Probability95);
        Assert.Equal(2, NextStep.After(verdict, parts, s_shelf, "mm", DecisionRule.Probability95).MoreReadings);
    }

    [Fact]
    public void NarrowBand_stepReallySettlesIt()
    {
        var parts = new UncertaintyParts(0.004, 1, 0.0005, 0);
        var limits = Limits.Between(10, 10.01);
        var verdict = Verdict.Judge(10.005, parts.Combined, limits, DecisionRule.Probability95);
        var step = NextStep.After(verdict, parts, s_shelf, "mm", DecisionRule.Probability95);
        Assert.Equal(NextStepKind.MoreReadings, step.Kind);
        Assert.Equal(VerdictWord.Within, Verdict.Judge(10.005, (parts with { Count = 1 + step.MoreReadings!.Value }).Combined, limits, DecisionRule.Probability95).Word);
        Assert.Equal(VerdictWord.TooCloseToCall, Verdict.Judge(10.005, (parts with { Count = step.MoreReadings!.Value }).Combined, limits, DecisionRule.Probability95).Word);
    }

    // Hand sums: 6²/4 + 4² + 12² = 13². With 0.003²/n + 0.001² + 0.0005² ≤ 0.002²: n ≥ 3.27, four in all, two more.
    [Fact]
    public void Uncertainty_fromElsewhere_countsWithTheInstruments()
    {
        Assert.Equal(13, new UncertaintyParts(6, 4, 4, 12).Combined, 1e-12);
        Assert.Equal(2, After(86.016, new(0.003, 2, 0.001, 0.0005), 86.02).MoreReadings);
    }

    // Distance 0.006, so u must fall to 0.003; repeats bring 0.006/√9 = 0.002 and elsewhere 0.001: √(9 − 4 − 1) = 2 µm is left for the instrument.
    [Fact]
    public void OtherInstrument_afterRepeatsAndElsewhere()
    {
        var step = After(86.014, new(0.006, 9, 0.02, 0.001), 86.02);
        Assert.Equal("bore gauge", step.Instrument!.Name);
        Assert.Equal(0.002, step.UncertaintyNeeded!.Value, 1e-9);
    }

    // Distance 2, so u must fall to 1, and an instrument of exactly that settles it.
    [Fact]
    public void OtherInstrument_thatJustSettles_isNamed()
    {
        var parts = new UncertaintyParts(0, 1, 20, 0);
        var step = NextStep.After(Verdict.Judge(8, parts.Combined, Limits.AtMost(10)), parts, [new("rule", 1, 1)], "mm");
        Assert.Equal(NextStepKind.OtherInstrument, step.Kind);
        Assert.Equal(1, step.UncertaintyNeeded);
    }

    private static NextStep After(double value, UncertaintyParts parts, double upper) =>
        NextStep.After(Verdict.Judge(value, parts.Combined, Limits.AtMost(upper)), parts, s_shelf, "mm");
}
