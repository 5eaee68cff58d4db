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
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void PlacesFor_noUncertainty_throws(double u) => Assert.Throws<ArgumentOutOfRangeException>(() => Figures.PlacesFor(u));
}
