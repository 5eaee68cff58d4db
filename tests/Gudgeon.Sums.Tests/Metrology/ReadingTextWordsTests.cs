using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Metrology;

/// <summary>Readings from zero and beside a nominal, in either book, word by word. By hand: 1 thou is 0.0254 mm.</summary>
public class ReadingTextWordsTests
{
    private static readonly ReadingPlace Metric = new(BookUnits.Metric, Mm(86), Mm(86), "bore 1");
    private static readonly ReadingPlace Inch = new(BookUnits.Inch, Mm(50.8), Mm(50.8), "bore 1");

    [Fact]
    public void Divisions_from_zero_are_counted_in_the_dial_of_the_book()
    {
        Assert.Equal(new Understood<Length>("+12", Mm(86.012), "µm from zero", true), Rounded(ReadingText.Read("+12", Metric)));
        Assert.Equal(new Understood<Length>("- 12", Mm(85.988), "µm from zero", true), Rounded(ReadingText.Read("- 12", Metric)));
        Assert.Equal(new Understood<Length>("−10", Mm(50.7746), "0.0001 in from zero", true), Rounded(ReadingText.Read("−10", Inch)));
    }

    [Theory]
    [InlineData("0.25 mm over", 86.25)]
    [InlineData("0.25 mm oversize", 86.25)]
    [InlineData("0.25 mm up", 86.25)]
    [InlineData("0.25 mm under", 85.75)]
    [InlineData("0.25 mm undersize", 85.75)]
    [InlineData("0.25 mm down", 85.75)]
    [InlineData("10 thou over", 86.254)]
    [InlineData("10 thou down", 85.746)]
    public void Words_beside_a_nominal_are_added_or_taken_off(string text, double millimetres)
    {
        var read = Assert.IsType<Understood<Length>>(ReadingText.Read(text, Metric));
        Assert.Equal(text, read.Text);
        Assert.Equal(millimetres, read.Value.Millimetres, 1e-9);
    }

    [Theory]
    [InlineData("20 under", "20 hundredths of a millimetre under = 85.8", "20 thou under = 85.492")]
    [InlineData("20 over", "20 hundredths of a millimetre over = 86.2", "20 thou over = 86.508")]
    [InlineData("two tenths under", "2 × 0.1 mm = 85.8", "2 × 0.0001 in = 85.99492")]
    public void Whole_figure_beside_a_nominal_is_asked_about(string text, params string[] readings)
    {
        var read = Assert.IsType<Ambiguous<Length>>(ReadingText.Read(text, Metric));
        Assert.Equal(text, read.Text);
        Assert.Equal(readings, read.Readings.Select(r => FormattableString.Invariant($"{r.Words} = {Math.Round(r.Value.Millimetres, 9)}")));
    }

    [Fact]
    public void Whole_figure_in_an_inch_book_is_thou_first()
    {
        var read = Assert.IsType<Ambiguous<Length>>(ReadingText.Read("20 under", Inch));
        Assert.Equal("No unit was given.", read.Why);
        Assert.Equal(["20 thou under = 50.292", "20 hundredths of a millimetre under = 50.6"], read.Readings.Select(r => FormattableString.Invariant($"{r.Words} = {Math.Round(r.Value.Millimetres, 9)}")));
    }

    // Of two ways to say a figure the one that lies within a twentieth of the nominal is meant: common practice, no source.
    [Fact]
    public void Nearest_to_the_nominal_is_taken()
    {
        Assert.Equal(new Understood<Length>("eighty-six oh one two", Mm(86.012), "mm", true), Rounded(ReadingText.Read("eighty-six oh one two", Metric)));
        Assert.Equal(new Understood<Length>("two oh one", Mm(51.054), "in", true), Rounded(ReadingText.Read("two oh one", Inch)));
        Assert.IsType<Ambiguous<Length>>(ReadingText.Read("ninety-six oh one two", Metric));
        Assert.IsType<Ambiguous<Length>>(ReadingText.Read("eighty-six oh one two", Metric with { Nominal = null }));
    }

    [Fact]
    public void Word_without_a_gap_is_no_word_beside() => Assert.IsType<Refused<Length>>(ReadingText.Read("0.25over", Metric));

    [Fact]
    public void Reading_beside_no_nominal_is_refused() => Assert.Equal(
        "bore 1: met \"10 under\" where no nominal size is known; expected a size, or a nominal to stand over or under. Type the size itself, or give the part its nominal first.",
        Assert.IsType<Refused<Length>>(ReadingText.Read("10 under", Metric with { Nominal = null })).Reason.ToString());

    [Fact]
    public void Text_that_is_none_is_a_bug() => Assert.Throws<ArgumentNullException>(() => ReadingText.Read(null!, Metric));

    private static Parsed<Length> Rounded(Parsed<Length> read) => read is Understood<Length> one ? one with { Value = Mm(Math.Round(one.Value.Millimetres, 9)) } : read;

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
