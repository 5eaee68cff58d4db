using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Quantities;

public class QuantityTests
{
    [Fact]
    public void Length_arithmetic_keepsTheUnit()
    {
        var bore = Length.FromMillimetres(86.012);
        var piston = Length.FromMillimetres(85.97);
        Assert.Equal(0.042, (bore - piston).Millimetres, 1e-12);
        Assert.Equal(-0.042, (-(bore - piston)).Millimetres, 1e-12);
        Assert.Equal(171.982, (bore + piston).Millimetres, 1e-12);
        Assert.Equal(172.024, (2 * bore).Millimetres, 1e-12);
        Assert.Equal(43.006, (bore / 2).Millimetres, 1e-12);
        Assert.Equal(2, Length.FromMillimetres(50.8) / Length.FromInches(1), 1e-12);
        Assert.Equal(0.042, (piston - bore).Abs().Millimetres, 1e-12);
        Assert.True(piston < bore && bore > piston && piston <= bore && bore >= piston);
        Assert.True(piston.CompareTo(bore) < 0);
    }

    [Theory]
    [InlineData(0.25, true)]
    [InlineData(0.5, true)]
    [InlineData(0.75, false)]
    public void Length_isWithin_includesTheEdge(double difference, bool agrees) =>
        Assert.Equal(agrees, Length.FromMillimetres(10 + difference).IsWithin(Length.FromMillimetres(10), Length.FromMillimetres(0.5)));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Length_notANumber_throws(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Length.FromMillimetres(value));

    [Fact]
    public void Temperature_step_isNoTemperature()
    {
        TemperatureDifference step = Temperature.FromCelsius(31) - Temperature.Reference;
        Assert.Equal(11, step.Kelvins);
        Assert.Equal(31, (Temperature.Reference + step).Celsius);
        Assert.Equal(9, (Temperature.Reference - step).Celsius);
        Assert.Equal(293.15, Temperature.Reference.Kelvins);
        Assert.Equal(68, Temperature.Reference.Fahrenheit);
    }

    [Fact]
    public void Temperature_absoluteZero_isTheLowest()
    {
        Assert.Equal(0, Temperature.FromCelsius(-273.15).Kelvins);
        Assert.Throws<ArgumentOutOfRangeException>(() => Temperature.FromCelsius(-273.1501));
    }

    [Fact]
    public void ToString_showsFigureAndUnit()
    {
        Assert.Equal("86.012 mm", Length.FromMillimetres(86.012).ToString());
        Assert.Equal("25 N·m", Torque.FromNewtonMetres(25).ToString());
        Assert.Equal("20 °C", Temperature.Reference.ToString());
    }
}
