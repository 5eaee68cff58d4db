using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Metrology;

/// <summary>Invented readings; the sizes follow from 1 in = 25.4 mm.</summary>
public class ReadingTextTests
{
    private static readonly ReadingPlace s_bore = new(BookUnits.Metric, Length.FromMillimetres(86), Length.FromMillimetres(86), "bore 1, top, across");

    [Theory]
    [InlineData("+43", 86.043)]
    [InlineData("-7", 85.993)]
    [InlineData("−7", 85.993)]
    [InlineData("+ 43", 86.043)]
    [InlineData("+0", 86)]
    [InlineData("86.012", 86.012)]
    [InlineData("86,012", 86.012)]
    [InlineData("3.3863 in", 86.01202)]
    [InlineData("two thou over", 86.0508)]
    [InlineData("0.02 under", 85.98)]
    [InlineData("1½ thou under", 85.9619)]
    [InlineData("three hundredths of a mm up", 86.03)]
    [InlineData("eighty-six oh one two", 86.012)]
    [InlineData("eighty six point oh one two", 86.012)]
    public void Read_keyedOrSaid_isASize(string text, double millimetres)
    {
        var read = Assert.IsType<Understood<Length>>(ReadingText.Read(text, s_bore));
        Assert.Equal(millimetres, read.Value.Millimetres, 1e-9);
        Assert.Equal(text, read.Text);
    }

    [Theory]
    [InlineData("+0.02", 0.02)]
    [InlineData("+43 µm", 0.043)]
    public void Read_signedFigureWithPointOrUnit_isNoDialDivision(string text, double millimetres) =>
        Assert.Equal(millimetres, Assert.IsType<Understood<Length>>(ReadingText.Read(text, s_bore)).Value.Millimetres, 1e-9);

    [Fact]
    public void Read_inchGauge_countsTenthsOfAThou() =>
        Assert.Equal(3.3863, Assert.IsType<Understood<Length>>(
            ReadingText.Read("+13", new(BookUnits.Inch, Length.FromInches(3.385), null, "bore 1"))).Value.Inches, 1e-9);

    [Fact]
    public void Read_tenUnder_isAsked()
    {
        var metric = Assert.IsType<Ambiguous<Length>>(ReadingText.Read("ten under", s_bore));
        Assert.Equal(["10 hundredths of a millimetre under", "10 thou under"], metric.Readings.Select(r => r.Words));
        Assert.Equal([85.9, 85.746], metric.Readings.Select(r => Math.Round(r.Value.Millimetres, 9)));
        var inch = Assert.IsType<Ambiguous<Length>>(ReadingText.Read("10 over", s_bore with { Book = BookUnits.Inch }));
        Assert.Equal(["10 thou over", "10 hundredths of a millimetre over"], inch.Readings.Select(r => r.Words));
        Assert.Equal([86.254, 86.1], inch.Readings.Select(r => Math.Round(r.Value.Millimetres, 9)));
    }

    [Fact]
    public void Read_tenthsUnder_keepsBothReadings() =>
        Assert.Equal([85.7, 85.99238], Assert.IsType<Ambiguous<Length>>(ReadingText.Read("three tenths under", s_bore)).Readings.Select(r => Math.Round(r.Value.Millimetres, 9)));

    [Fact]
    public void Read_digitsInARow_withoutNominal_areAsked() =>
        Assert.IsType<Ambiguous<Length>>(ReadingText.Read("eighty-six oh one two", s_bore with { Nominal = null }));

    [Fact]
    public void Read_overWithoutNominal_isRefused() =>
        Assert.Equal("bore 1, top, across: met \"two thou over\" where no nominal size is known; expected a size, or a nominal to stand over or under. Type the size itself, or give the part its nominal first.",
            Assert.IsType<Refused<Length>>(ReadingText.Read("two thou over", s_bore with { Nominal = null })).Reason.ToString());

    [Fact]
    public void Read_signedDigitsWithoutGauge_areASize() =>
        Assert.Equal(43, Assert.IsType<Understood<Length>>(ReadingText.Read("+43", s_bore with { GaugeZero = null })).Value.Millimetres);

    [Theory]
    [InlineData("loads over")]
    [InlineData("over")]
    [InlineData("")]
    public void Read_unreadable_keepsTheText(string text) => Assert.Equal(text, Assert.IsType<Refused<Length>>(ReadingText.Read(text, s_bore)).Text);
}
