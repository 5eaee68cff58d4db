using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Quantities;

public class FiguresTests
{
    // GUM 7.2.6 examples: 10.05762 with u 27e-3 gives 10.058; u = 28.05 gives 28. Seen in public test suites that cite the clause.
    [Theory]
    [InlineData(10.05762, 0.027, "10.058 ± 0.027")]
    [InlineData(1234.56, 28.05, "1235 ± 28")]
    [InlineData(1.99834, 0.012, "1.998 ± 0.012")]
    [InlineData(86.01249, 0.0053, "86.0125 ± 0.0053")]
    [InlineData(-0.02149, 0.0053, "−0.0215 ± 0.0053")]
    [InlineData(1, 0.00996, "1.000 ± 0.010")]
    [InlineData(1, 0.0999, "1.00 ± 0.10")]
    public void WithUncertainty_roundsBothToOnePlace(double value, double u, string shown) =>
        Assert.Equal(shown, Figures.WithUncertainty(value, u));

    [Theory]
    [InlineData(1.0005, 3, "1.001")]
    [InlineData(1.0004999, 3, "1.000")]
    [InlineData(-1.0005, 3, "−1.001")]
    [InlineData(-0.0001, 3, "0.000")]
    [InlineData(2.675, 2, "2.68")]
    [InlineData(1e20, 2, "1.000000E+020")]
    public void Fixed_roundsHalfAwayFromZero(double value, int places, string shown) =>
        Assert.Equal(shown, Figures.Fixed(value, places));

    [Fact]
    public void Length_followsTheBook()
    {
        Assert.Equal("86.012\u00A0mm", Figures.Length(Length.FromMillimetres(86.0124), BookUnits.Metric));
        Assert.Equal("3.3863\u00A0in", Figures.Length(Length.FromMillimetres(86.0124), BookUnits.Inch));
        Assert.Equal("86.01\u00A0mm", Figures.Length(Length.FromMillimetres(86.0124), BookUnits.Metric, Length.FromMillimetres(0.12)));
        Assert.Equal("3.386\u00A0in", Figures.Length(Length.FromMillimetres(86.0124), BookUnits.Inch, Length.FromInches(0.012)));
    }

    [Theory]
    [InlineData(999_999_999_999_999.0, 0, "999999999999999")]
    [InlineData(1e15, 0, "1.000000E+015")]
    [InlineData(-1e15, 0, "−1.000000E+015")]
    [InlineData(-999_999_999_999_999.0, 0, "−999999999999999")]
    [InlineData(0.1234567894, 9, "0.123456789")]
    [InlineData(-0.1, 1, "−0.1")]
    [InlineData(-0.9, 1, "−0.9")]
    [InlineData(-0.04, 1, "0.0")]
    public void Fixed_keeps_its_digits_to_the_edge(double value, int places, string shown) => Assert.Equal(shown, Figures.Fixed(value, places));

    [Theory]
    [InlineData(-1)]
    [InlineData(10)]
    public void Fixed_withPlacesThatCannotBe_throws(int places) => Assert.Throws<ArgumentOutOfRangeException>(() => Figures.Fixed(1, places));

    // GUM 7.2.6, two significant digits: 1 and 10 keep one place and none, whatever is below 10⁻⁸ keeps the nine places that there are.
    [Theory]
    [InlineData(1, 1)]
    [InlineData(9.94, 1)]
    [InlineData(9.96, 0)]
    [InlineData(10, 0)]
    [InlineData(2500, 0)]
    [InlineData(1e-8, 9)]
    [InlineData(1e-12, 9)]
    public void PlacesFor_keepsTwoFigures(double u, int places) => Assert.Equal(places, Figures.PlacesFor(u));

    [Fact]
    public void Length_withNoUncertaintyToSpeakOf_goesToAMicrometre() =>
        Assert.Equal("86.012\u00A0mm", Figures.Length(Length.FromMillimetres(86.0124), BookUnits.Metric, Length.Zero));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void PlacesFor_noUncertainty_throws(double u) => Assert.Throws<ArgumentOutOfRangeException>(() => Figures.PlacesFor(u));
}
