using CsCheck;
using Gudgeon.Sums.Metrology;
using static Gudgeon.Sums.Metrology.SuspicionKind;

namespace Gudgeon.Sums.Tests.Metrology;

/// <summary>Invented readings. Signs of a slip: common practice, no source.</summary>
public class ReadingCheckTests
{
    private static readonly Plausible s_bore = new(86, 0.15, "mm");

    [Theory]
    [InlineData(860.12, DecimalSlip, 86.012, "860.12 mm: the decimal mark may have slipped. Was it 86.012 mm?")]
    [InlineData(8.6012, DecimalSlip, 86.012, "8.6012 mm: the decimal mark may have slipped. Was it 86.012 mm?")]
    [InlineData(86012, DecimalSlip, 86.012, "86012 mm: the decimal mark may have slipped. Was it 86.012 mm?")]
    [InlineData(3.3863, UnitSlip, 86.01202, "3.3863 mm: it may be in inches. Was it 86.01202 mm?")]
    [InlineData(86.512, ThimbleTurn, 86.012, "86.512 mm: a turn of the thimble may have been misread. Was it 86.012 mm?")]
    [InlineData(85.012, ThimbleTurn, 86.012, "85.012 mm: a turn of the thimble may have been misread. Was it 86.012 mm?")]
    [InlineData(68.012, SwappedDigits, 86.012, "68.012 mm: two digits may have changed places. Was it 86.012 mm?")]
    [InlineData(80.612, SwappedDigits, 86.012, "80.612 mm: two digits may have changed places. Was it 86.012 mm?")]
    [InlineData(83.012, WrongDigit, 86.012, "83.012 mm: one digit may be wrong. Was it 86.012 mm?")]
    [InlineData(61.012, WrongFrame, 86.012, "61.012 mm: another frame or rod may have been used. Was it 86.012 mm?")]
    public void Of_slip_isAskedWithASuggestion(double reading, SuspicionKind kind, double suggested, string question)
    {
        var suspicion = ReadingCheck.Of(reading, s_bore)!;
        Assert.Equal(kind, suspicion.Kind);
        Assert.Equal(suggested, suspicion.Suggested!.Value, 1e-6);
        Assert.Equal(question, suspicion.Question);
    }

    [Theory]
    [InlineData(86.15)]
    [InlineData(85.85)]
    [InlineData(86.012)]
    public void Of_plausible_isNotAsked(double reading) => Assert.Null(ReadingCheck.Of(reading, s_bore));

    [Fact]
    public void Of_unexplained_isFarOff()
    {
        var suspicion = ReadingCheck.Of(70.7, s_bore)!;
        Assert.Equal(FarOff, suspicion.Kind);
        Assert.Null(suspicion.Suggested);
        Assert.Equal("70.7 mm lies far from 86 mm. Is it this place, and this part?", suspicion.Question);
    }

    [Theory]
    [InlineData(54.0512, UnitSlip)]
    [InlineData(2.1527, ThimbleTurn)]
    [InlineData(3.1277, ThimbleTurn)]
    public void Of_inchBook_knowsItsOwnSlips(double reading, SuspicionKind kind) =>
        Assert.Equal(kind, ReadingCheck.Of(reading, new(reading == 3.1277 ? 3.1527 : 2.128, 0.004, "in", true))!.Kind);

    [Fact]
    public void Of_anyPlausibleReading_staysUnasked() =>
        Gen.Double[85.85, 86.15].Sample(reading => Assert.Null(ReadingCheck.Of(Math.Clamp(reading, 85.8501, 86.1499), s_bore)));

    [Fact]
    public void Neighbours_oneUnlike_isNamed()
    {
        var found = ReadingCheck.Neighbours([86.012, 86.013, 86.112, 86.011, 86.012], 0.005);
        var only = Assert.Single(found);
        Assert.Equal(2, only.Index);
        Assert.Equal(UnlikeNeighbours, only.Kind);
        Assert.Equal("86.112 is unlike its neighbours near 86.012. The right place, and typed right?", only.Question);
    }

    [Theory]
    [InlineData(0.004, 0)]
    [InlineData(0.0061, 1)]
    public void Neighbours_withinUncertainty_areNoNews(double off, int found) =>
        Assert.Equal(found, ReadingCheck.Neighbours([10, 10, 10, 10 + off], 0.006).Count);

    // Five spreads of 0.002 are 0.010.
    [Theory]
    [InlineData(10.0105, 0)]
    [InlineData(10.0115, 1)]
    public void Neighbours_fiveSpreads_areTheLimit(double reading, int found) =>
        Assert.Equal(found, ReadingCheck.Neighbours([10.000, 10.001, 10.002, reading], 0).Count);

    [Fact]
    public void Neighbours_fewerThanFour_areNotJudged() => Assert.Empty(ReadingCheck.Neighbours([1, 1, 99], 0));

    // NIST e-Handbook 1.3.5.17.1 data: G 2.4687646, two-sided critical 2.1266451.
    [Fact]
    public void Repeats_outlier_isAskedByGrubbs()
    {
        var suspicion = ReadingCheck.Repeats([199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57])!;
        Assert.Equal(Outlier, suspicion.Kind);
        Assert.Equal(7, suspicion.Index);
        Assert.Equal("245.57 stands apart from its repeats (Grubbs 2.47, allowed 2.13). Read it again?", suspicion.Question);
        Assert.Null(ReadingCheck.Repeats([199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18]));
        Assert.Null(ReadingCheck.Repeats([1, 1, 1, 1, 99]));
        Assert.Null(ReadingCheck.Repeats([1, 1, 1, 1, 1, 1]));
    }

    [Fact]
    public void Copied_allAlike_isAsked()
    {
        Assert.Equal("All 4 places read 86.01. Was each one measured?", ReadingCheck.Copied([86.01, 86.01, 86.01, 86.01])!.Question);
        Assert.Null(ReadingCheck.Copied([86.01, 86.01, 86.01]));
        Assert.Null(ReadingCheck.Copied([86.01, 86.01, 86.01, 86.02]));
    }

    [Fact]
    public void AllShifted_byOneAmount_isAsked()
    {
        Assert.Equal("Everything moved by 0.05 since then. Was the zero set, and is the part at the same temperature?",
            ReadingCheck.AllShifted([10, 11, 12], [10.05, 11.05, 12.05], 0.01)!.Question);
        Assert.Null(ReadingCheck.AllShifted([10, 11, 12], [10.009, 11.009, 12.009], 0.01));
        Assert.Null(ReadingCheck.AllShifted([10, 11, 12], [10.05, 11.08, 12.02], 0.01));
        Assert.Null(ReadingCheck.AllShifted([10, 11], [10.05, 11.05], 0.01));
        Assert.Null(ReadingCheck.AllShifted([10, 11, 12], [10.05, 11.05], 0.01));
    }

    [Theory]
    [InlineData(85.99, 86, true, true)]
    [InlineData(85.996, 86, true, false)]
    [InlineData(86.2, 86, true, false)]
    [InlineData(54.01, 54, false, true)]
    [InlineData(54.004, 54, false, false)]
    [InlineData(53.9, 54, false, false)]
    public void AgainstWear_beyondUncertainty_isAsked(double reading, double unworn, bool hole, bool asked)
    {
        var suspicion = ReadingCheck.AgainstWear(reading, unworn, hole, 0.005);
        Assert.Equal(asked, suspicion is not null);
        if (asked)
            Assert.Equal(hole ? "85.99 is smaller than when new (86). Another grade, dirt, or a wrong zero?" : "54.01 is larger than when new (54). Another grade, dirt, or a wrong zero?", suspicion!.Question);
    }

    [Theory]
    [InlineData(-0.001, true)]
    [InlineData(0, false)]
    [InlineData(0.3, false)]
    [InlineData(0.301, true)]
    public void OilClearance_impossible_isAsked(double clearance, bool asked) => Assert.Equal(asked, ReadingCheck.OilClearance(clearance) is not null);
}
