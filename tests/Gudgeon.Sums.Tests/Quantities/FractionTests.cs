using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Quantities;

/// <summary>Hand sums.</summary>
public class FractionTests
{
    [Theory]
    [InlineData(1, 2, 1, 3, 5, 6)]
    [InlineData(3, 8, 2, 5, 31, 40)]
    [InlineData(1, 64, 2, 64, 3, 64)]
    public void Sum_keeps_the_fraction(int top, int under, int otherTop, int otherUnder, int sumTop, int sumUnder) =>
        Assert.Equal(new Fraction(sumTop, sumUnder), new Fraction(top, under).Plus(new(otherTop, otherUnder)));

    [Theory]
    [InlineData(1_000_000_000, 1, false)]
    [InlineData(-1_000_000_001, 1, true)]
    [InlineData(1, 1_000_000_000, false)]
    [InlineData(1, 1_000_000_001, true)]
    public void Too_large_is_more_than_a_thousand_million_over_or_under(int top, int under, bool large) => Assert.Equal(large, new Fraction(top, under).IsTooLarge);
}
