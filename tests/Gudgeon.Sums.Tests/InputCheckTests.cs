using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests;

/// <summary>A thousand million and a thousand millionth of a unit: taken at the edge, refused a step beyond.</summary>
public class InputCheckTests
{
    [Theory]
    [InlineData(1e-9, true)]
    [InlineData(0.9e-9, false)]
    [InlineData(1e9, true)]
    [InlineData(1.1e9, false)]
    [InlineData(0, false)]
    [InlineData(double.NaN, false)]
    public void Positive_holds_to_its_edges(double value, bool good) => Assert.Equal(good, new InputCheck().Positive("size", value, "mm").Clean);

    [Theory]
    [InlineData(0, true)]
    [InlineData(-1e-9, false)]
    [InlineData(1e9, true)]
    [InlineData(1.1e9, false)]
    public void Not_negative_holds_to_its_edges(double value, bool good) => Assert.Equal(good, new InputCheck().NotNegative("size", value, "mm").Clean);

    [Fact]
    public void What_is_too_small_and_too_large_is_told_with_its_range() => Says.All(
        new InputCheck().Positive("size", 1e-10, "mm").Positive("size", 2e9, "mm").NotNegative("size", 2e9, "mm").Positive("mass", Mass.FromKilograms(-1)).NotNegative("mass", Mass.FromKilograms(-1)).Then(() => 0),
        "size: met 1E-10 mm; expected 1E-09 to 1E+09 mm. Look at size again.",
        "size: met 2E+09 mm; expected 1E-09 to 1E+09 mm. Look at size again.",
        "size: met 2E+09 mm; expected 0 to 1E+09 mm. Look at size again.",
        "mass: met -1 kg; expected more than 0 kg. Look at mass again.",
        "mass: met -1 kg; expected 0 kg or more. Look at mass again.");

    [Fact]
    public void Value_that_was_refused_is_a_bug_with_every_reason()
    {
        var refused = Outcome.Refused<int>(new Refusal("a", "b", "c", "d"), new Refusal("e", "f", "g", "h"));
        Assert.Equal("a: met b; expected c. d. e: met f; expected g. h.", Assert.Throws<InvalidOperationException>(() => refused.Value).Message);
        Assert.StartsWith("a refusal needs a reason", Assert.Throws<ArgumentException>(() => Outcome.Refused<int>()).Message);
        Assert.False(refused.TryGet(out _));
    }
}
