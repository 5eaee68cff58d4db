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

    // The definitions: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, standard gravity 9.80665 m/s²; a quantity given in a unit is read back in it.
    [Fact]
    public void Every_unit_is_given_back_as_it_was_taken()
    {
        Assert.Equal([3, 3, 3, 3, 3], new[] { Length.FromMillimetres(3).Millimetres, Length.FromMicrometres(3).Micrometres, Length.FromMetres(3).Metres, Length.FromInches(3).Inches, Length.FromThou(3).Thou }.Select(Rounded));
        Assert.Equal([3, 3, 3, 3], new[] { Force.FromNewtons(3).Newtons, Force.FromKilonewtons(3).Kilonewtons, Force.FromPoundsForce(3).PoundsForce, Force.FromKilogramsForce(3).KilogramsForce }.Select(Rounded));
        Assert.Equal([3, 3, 3, 3], new[] { Mass.FromKilograms(3).Kilograms, Mass.FromGrams(3).Grams, Mass.FromPounds(3).Pounds, Mass.FromOunces(3).Ounces }.Select(Rounded));
        Assert.Equal([3, 3, 3, 3], new[] { Torque.FromNewtonMetres(3).NewtonMetres, Torque.FromPoundForceFeet(3).PoundForceFeet, Torque.FromPoundForceInches(3).PoundForceInches, Torque.FromKilogramForceMetres(3).KilogramForceMetres }.Select(Rounded));
        Assert.Equal([3, 3, 3, 3], new[] { Pressure.FromBar(3).Bar, Pressure.FromKilopascals(3).Kilopascals, Pressure.FromMegapascals(3).Megapascals, Pressure.FromPoundsPerSquareInch(3).PoundsPerSquareInch }.Select(Rounded));
        Assert.Equal([3, 3, 3, 3], new[] { Volume.FromCubicCentimetres(3).CubicCentimetres, Volume.FromCubicMillimetres(3).CubicMillimetres, Volume.FromLitres(3).Litres, Volume.FromCubicInches(3).CubicInches }.Select(Rounded));
        Assert.Equal([3, 3, 3], new[] { Angle.FromRadians(3).Radians, Angle.FromDegrees(3).Degrees, Angle.FromTurns(3).Turns }.Select(Rounded));
        Assert.Equal([3, 3], new[] { TemperatureDifference.FromKelvins(3).Kelvins, TemperatureDifference.FromFahrenheitDegrees(3).FahrenheitDegrees }.Select(Rounded));
    }

    // Prefixes of the SI brochure, 9th edition, table 7; 1 bar = 100 kPa.
    [Fact]
    public void Prefixes_are_powers_of_ten()
    {
        Assert.Equal([0.003, 3000, 3000, 0.003, 3000, 0.003, 0.03, 3000],
            new[] { Length.FromMicrometres(3).Millimetres, Length.FromMetres(3).Millimetres, Force.FromKilonewtons(3).Newtons, Mass.FromGrams(3).Kilograms, Volume.FromLitres(3).CubicCentimetres, Volume.FromCubicMillimetres(3).CubicCentimetres, Pressure.FromKilopascals(3).Bar, Length.FromMetres(3).Millimetres }.Select(Rounded));
    }

    [Fact]
    public void Quantities_are_put_in_order_by_their_amount()
    {
        Assert.Equal([-1, 0, 1], Compared(Length.FromMillimetres));
        Assert.Equal([-1, 0, 1], Compared(Force.FromNewtons));
        Assert.Equal([-1, 0, 1], Compared(Mass.FromKilograms));
        Assert.Equal([-1, 0, 1], Compared(Torque.FromNewtonMetres));
        Assert.Equal([-1, 0, 1], Compared(Pressure.FromBar));
        Assert.Equal([-1, 0, 1], Compared(Volume.FromCubicCentimetres));
        Assert.Equal([-1, 0, 1], Compared(Angle.FromRadians));
        Assert.Equal([-1, 0, 1], Compared(TemperatureDifference.FromKelvins));
        Assert.Equal([-1, 0, 1], Compared(Temperature.FromCelsius));

        static int[] Compared<T>(Func<double, T> make) where T : IComparable<T> => [make(1).CompareTo(make(2)), make(2).CompareTo(make(2)), make(3).CompareTo(make(2))];
    }

    [Fact]
    public void Alike_quantities_are_neither_less_nor_more()
    {
        var (less, more, alike) = (Length.FromMillimetres(1), Length.FromMillimetres(2), Length.FromMillimetres(2));
        Assert.Equal([true, false, false], new[] { less < more, more < less, more < alike });
        Assert.Equal([false, true, false], new[] { less > more, more > less, more > alike });
        Assert.Equal([true, false, true], new[] { less <= more, more <= less, more <= alike });
        Assert.Equal([false, true, true], new[] { less >= more, more >= less, more >= alike });
        var (cold, warm, same) = (Temperature.FromCelsius(1), Temperature.FromCelsius(2), Temperature.FromCelsius(2));
        Assert.Equal([true, false, false], new[] { cold < warm, warm < cold, warm < same });
        Assert.Equal([false, true, false], new[] { cold > warm, warm > cold, warm > same });
        Assert.Equal([true, false, true], new[] { cold <= warm, warm <= cold, warm <= same });
        Assert.Equal([false, true, true], new[] { cold >= warm, warm >= cold, warm >= same });
    }

    [Theory]
    [InlineData(20.25, true)]
    [InlineData(20.5, true)]
    [InlineData(19.5, true)]
    [InlineData(20.75, false)]
    [InlineData(19.25, false)]
    public void Temperature_isWithin_includesTheEdge(double celsius, bool agrees) =>
        Assert.Equal(agrees, Temperature.FromCelsius(celsius).IsWithin(Temperature.Reference, TemperatureDifference.FromKelvins(0.5)));

    [Fact]
    public void Multiple_is_the_same_from_either_side()
    {
        Assert.Equal(6, (Length.FromMillimetres(2) * 3).Millimetres);
        Assert.Equal(6, (3 * Length.FromMillimetres(2)).Millimetres);
    }

    [Fact]
    public void Fault_of_the_program_says_what_it_is()
    {
        Assert.StartsWith("A quantity must be a finite number.", Assert.Throws<ArgumentOutOfRangeException>(() => Length.FromMillimetres(double.NaN)).Message);
        Assert.StartsWith("A temperature cannot lie below -273.15 °C.", Assert.Throws<ArgumentOutOfRangeException>(() => Temperature.FromCelsius(-274)).Message);
        Assert.StartsWith("An uncertainty must be above zero.", Assert.Throws<ArgumentOutOfRangeException>(() => Figures.PlacesFor(0)).Message);
    }

    // The definition, SI brochure 2.3.1: −459.67 °F is absolute zero.
    [Fact]
    public void Fahrenheit_is_read_both_ways()
    {
        Assert.Equal(-273.15, Temperature.FromFahrenheit(-459.67).Celsius, 1e-12);
        Assert.Equal(212, Temperature.FromCelsius(100).Fahrenheit, 1e-12);
        Assert.Equal(100, Temperature.FromFahrenheit(212).Celsius, 1e-12);
    }

    // By hand: (1, 2, 3) × (4, −5, 6) = (2·6 + 3·5, 3·4 − 1·6, −1·5 − 2·4) = (27, 6, −13); (1, 2, 3)·(4, −5, 6) = 12; |(2, 3, 6)| = 7.
    [Fact]
    public void Arrows_add_and_multiply_as_by_hand()
    {
        Point3 a = new(1, 2, 3), b = new(4, -5, 6);
        Assert.Equal(new Point3(5, -3, 9), a + b);
        Assert.Equal(new Point3(-3, 7, -3), a - b);
        Assert.Equal(new Point3(2, 4, 6), 2 * a);
        Assert.Equal(new Point3(27, 6, -13), a.Cross(b));
        Assert.Equal(12, a.Dot(b));
        Assert.Equal(7, new Point3(2, 3, 6).Norm, 1e-12);
        Assert.Equal(2.0 / 7, new Point3(2, 3, 6).Unit.X, 1e-12);
        Assert.Equal(Math.PI / 4, new Point3(1, 0, 0).AngleTo(new(1, 1, 0)), 1e-12);
    }

    [Theory]
    [InlineData(1e6, true)]
    [InlineData(1.000001e6, false)]
    [InlineData(double.NaN, false)]
    public void Place_farther_than_a_kilometre_is_none(double far, bool good)
    {
        Assert.Equal(good, new Point3(far, 0, 0).IsFinite);
        Assert.Equal(good, new Point3(0, -far, 0).IsFinite);
        Assert.Equal(good, new Point3(0, 0, far).IsFinite);
    }

    [Fact]
    public void ToString_showsFigureAndUnit()
    {
        Assert.Equal("86.012 mm", Length.FromMillimetres(86.012).ToString());
        Assert.Equal("25 N·m", Torque.FromNewtonMetres(25).ToString());
        Assert.Equal("20 °C", Temperature.Reference.ToString());
        Assert.Equal("20 K", TemperatureDifference.FromKelvins(20).ToString());
        Assert.Equal("0.5 rad", Angle.FromRadians(0.5).ToString());
        Assert.Equal("2.5 N", Force.FromNewtons(2.5).ToString());
        Assert.Equal("2.5 kg", Mass.FromKilograms(2.5).ToString());
        Assert.Equal("2.5 bar", Pressure.FromBar(2.5).ToString());
        Assert.Equal("2.5 cm³", Volume.FromCubicCentimetres(2.5).ToString());
    }

    private static double Rounded(double value) => Math.Round(value, 12);
}
