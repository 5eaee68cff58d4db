using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Quantities;

/// <summary>Expected figures follow from the exact definitions: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, g = 9.80665 m/s².</summary>
public class QuantityTextTests
{
    [Theory]
    [InlineData("86.012", 86.012)]
    [InlineData("105,019", 105.019)]
    [InlineData("105.06", 105.06)]
    [InlineData(" 86.012 mm ", 86.012)]
    [InlineData("86.012mm", 86.012)]
    [InlineData("0.0015 in", 0.0381)]
    [InlineData("0.0015\"", 0.0381)]
    [InlineData("0,0015″", 0.0381)]
    [InlineData(".0015 in.", 0.0381)]
    [InlineData("1½ thou", 0.0381)]
    [InlineData("1 ½ thou", 0.0381)]
    [InlineData("1 1/2 thou", 0.0381)]
    [InlineData("1-1/2 thou", 0.0381)]
    [InlineData("one and a half thou", 0.0381)]
    [InlineData("1 and a half thou", 0.0381)]
    [InlineData("11 thou", 0.2794)]
    [InlineData("eleven thou", 0.2794)]
    [InlineData("ten though", 0.254)]
    [InlineData("a couple of thou", 0.0508)]
    [InlineData("a thou", 0.0254)]
    [InlineData("half a thou", 0.0127)]
    [InlineData("a hundred thou", 2.54)]
    [InlineData("two hundred and three thou", 5.1562)]
    [InlineData("3/8", 9.525)]
    [InlineData("3/8\"", 9.525)]
    [InlineData("7/16 in", 11.1125)]
    [InlineData("7⁄16 in", 11.1125)]
    [InlineData("⅜ inch", 9.525)]
    [InlineData("seven sixteenths", 11.1125)]
    [InlineData("three thirty-seconds of an inch", 2.38125)]
    [InlineData("quarter inch", 6.35)]
    [InlineData("quarter of an inch", 6.35)]
    [InlineData("three quarters of an inch", 19.05)]
    [InlineData("inch and a quarter", 31.75)]
    [InlineData("an inch and a quarter", 31.75)]
    [InlineData("two inches and three eighths", 60.325)]
    [InlineData("5 ft 3 in", 1600.2)]
    [InlineData("5' 3\"", 1600.2)]
    [InlineData("5 ft 3 1/2 in", 1612.9)]
    [InlineData("38 µm", 0.038)]
    [InlineData("38 μm", 0.038)]
    [InlineData("38 um", 0.038)]
    [InlineData("38 micron", 0.038)]
    [InlineData("38 microns", 0.038)]
    [InlineData("-0.02", -0.02)]
    [InlineData("−0.02", -0.02)]
    [InlineData("–0,02 mm", -0.02)]
    [InlineData("minus 0.02", -0.02)]
    [InlineData("+0.02", 0.02)]
    [InlineData("-5 ft 3 in", -1600.2)]
    [InlineData("8.6 cm", 86)]
    [InlineData("point two two", 0.22)]
    [InlineData("eighty six point oh one two", 86.012)]
    [InlineData("two tenths of a millimetre", 0.2)]
    [InlineData("two tenths of a thou", 0.00508)]
    [InlineData("two hundredths of a mm", 0.02)]
    [InlineData("86.0\u00A0mm", 86.0)]
    public void Length_readOneWay_isUnderstood(string text, double millimetres)
    {
        var read = Assert.IsType<Understood<Length>>(QuantityText.Length(text, BookUnits.Metric));
        Assert.Equal(text, read.Text);
        Assert.Equal(millimetres, read.Value.Millimetres, 1e-12);
    }

    [Theory]
    [InlineData("1.5", 38.1)]
    [InlineData("1 1/2", 38.1)]
    [InlineData("½", 12.7)]
    [InlineData("86 mm", 86)]
    public void Length_inInchBook_takesInches(string text, double millimetres) =>
        Assert.Equal(millimetres, Assert.IsType<Understood<Length>>(QuantityText.Length(text, BookUnits.Inch)).Value.Millimetres, 1e-12);

    [Theory]
    [InlineData("two tenths", "\"tenths\" is said for more than one unit.", 0.2, 0.00508)]
    [InlineData("3 tenths", "\"tenths\" is said for more than one unit.", 0.3, 0.00762)]
    [InlineData("two hundredths", "\"hundredths\" is said for more than one unit.", 0.02, 0.508)]
    [InlineData("six mil", "\"mil\" is said for more than one unit.", 6, 0.1524)]
    [InlineData("ten thousand", "\"thousand\" is said for more than one unit.", 0.254, 10000)]
    [InlineData("5 thousandths", "\"thousandths\" is said for more than one unit.", 0.127, 0.005)]
    [InlineData("1 1/2", "A fraction without a unit is an inch size more often than not, and this book speaks millimetres.", 38.1, 1.5)]
    [InlineData("eighty-six oh one two", "The digits were said in a row, without a point.", 86.012, 86012)]
    public void Length_readTwoWays_isAsked(string text, string why, double first, double second)
    {
        var read = Assert.IsType<Ambiguous<Length>>(QuantityText.Length(text, BookUnits.Metric));
        Assert.Equal(why, read.Why);
        Assert.Equal(text, read.Text);
        Assert.Equal([first, second], read.Readings.Select(r => Math.Round(r.Value.Millimetres, 12)));
    }

    [Fact]
    public void Length_tenths_readingsSayTheUnit() =>
        Assert.Equal(["2 × 0.1 mm", "2 × 0.0001 in"],
            Assert.IsType<Ambiguous<Length>>(QuantityText.Length("two tenths", BookUnits.Metric)).Readings.Select(r => r.Words));

    [Theory]
    [InlineData("", "bore 1: met nothing; expected a length such as 86.012, 0.0015 in or 1½ thou. Type the figure, or leave this place for later.")]
    [InlineData("1,234.5", "bore 1: met \"1,234.5\", which has more than one decimal mark; expected one mark, point or comma; thousands are never parted. Type the figure again with one mark.")]
    [InlineData("1.234.567", "bore 1: met \"1.234.567\", which has more than one decimal mark; expected one mark, point or comma; thousands are never parted. Type the figure again with one mark.")]
    [InlineData("thick", "bore 1: met \"thick\", which has no figure; expected a length such as 86.012, 0.0015 in or 1½ thou. Type the figure first, then its unit.")]
    [InlineData("mm", "bore 1: met \"mm\", which has no figure; expected a length such as 86.012, 0.0015 in or 1½ thou. Type the figure first, then its unit.")]
    [InlineData("86 furlong", "bore 1: met the unit \"furlong\"; expected a length such as 86.012, 0.0015 in or 1½ thou. Use one of mm, cm, m, µm, in, ft, thou.")]
    [InlineData("a few thou", "bore 1: met the unit \"fewthou\"; expected a length such as 86.012, 0.0015 in or 1½ thou. Use one of mm, cm, m, µm, in, ft, thou.")]
    [InlineData("86 012", "bore 1: met \"012\" after the length; expected one length and nothing more. Type each figure in its own place.")]
    [InlineData("86 mm 85 mm", "bore 1: met \"85 mm\" after the length; expected one length and nothing more. Type each figure in its own place.")]
    [InlineData("86-87", "bore 1: met \"- 87\" after the length; expected one length and nothing more. Type each figure in its own place.")]
    [InlineData("86 <b>", "bore 1: met \"< b >\" after the length; expected one length and nothing more. Type each figure in its own place.")]
    [InlineData("3/0 in", "bore 1: met \"3/0\"; expected a fraction of whole numbers such as 3/8. Type the fraction again, or type it as a decimal.")]
    [InlineData("1 1.5/2 in", "bore 1: met \"1.5/2\"; expected a fraction of whole numbers such as 3/8. Type the fraction again, or type it as a decimal.")]
    [InlineData("9999999999", "bore 1: met \"9999999999\"; expected a figure below 1000000000. Check the figure and its unit.")]
    [InlineData("888888888888888888888", "bore 1: met \"888888888888888888888\", which has more than 20 places; expected a figure that can be measured. Check the figure for keys held down.")]
    public void Length_unreadable_isRefusedInFourParts(string text, string message)
    {
        var read = Assert.IsType<Refused<Length>>(QuantityText.Length(text, BookUnits.Metric, "bore 1"));
        Assert.Equal(message, read.Reason.ToString());
        Assert.Equal(text, read.Text);
    }

    [Fact]
    public void Length_longText_isRefusedWithItsLength() =>
        Assert.Equal("length: met 81 characters; expected a length such as 86.012, 0.0015 in or 1½ thou. Type the figure alone and put the rest in a note.",
            Assert.IsType<Refused<Length>>(QuantityText.Length(new string('x', 81), BookUnits.Metric)).Reason.ToString());

    // 1 lbf·ft = 0.45359237 × 9.80665 × 0.3048 N·m = 1.3558179483314004 N·m, by definition.
    [Theory]
    [InlineData("25 lb ft", 33.89544870828501)]
    [InlineData("25 ft lb", 33.89544870828501)]
    [InlineData("25 ft-lb", 33.89544870828501)]
    [InlineData("25 ft·lbs", 33.89544870828501)]
    [InlineData("25 lbf·ft", 33.89544870828501)]
    [InlineData("25 foot pounds", 33.89544870828501)]
    [InlineData("twenty five foot pound", 33.89544870828501)]
    [InlineData("300 in lb", 33.89544870828501)]
    [InlineData("100 N m", 100)]
    [InlineData("100 Nm", 100)]
    [InlineData("100 N·m", 100)]
    [InlineData("100 N.m", 100)]
    [InlineData("100", 100)]
    [InlineData("thirty newton metres", 30)]
    [InlineData("3 kgf·m", 29.41995)]
    [InlineData("3 kgm", 29.41995)]
    [InlineData("250 N cm", 2.5)]
    public void Torque_benchSpellings_areUnderstood(string text, double newtonMetres) =>
        Assert.Equal(newtonMetres, Assert.IsType<Understood<Torque>>(QuantityText.Torque(text, BookUnits.Metric)).Value.NewtonMetres, 1e-12);

    // 1 psi = 4.4482216152605 N / (25.4 mm)² = 0.0689475729316836 bar.
    [Theory]
    [InlineData("12.1 bar", 12.1)]
    [InlineData("12,1", 12.1)]
    [InlineData("175 psi", 12.0658252630446)]
    [InlineData("175 lb/in²", 12.0658252630446)]
    [InlineData("one hundred and seventy-five pounds", 12.0658252630446)]
    [InlineData("300 kPa", 3)]
    [InlineData("1.2 MPa", 12)]
    [InlineData("1.2 N/mm²", 12)]
    [InlineData("-0.6 bar", -0.6)]
    public void Pressure_benchSpellings_areUnderstood(string text, double bar) =>
        Assert.Equal(bar, Assert.IsType<Understood<Pressure>>(QuantityText.Pressure(text, BookUnits.Metric)).Value.Bar, 1e-12);

    [Theory]
    [InlineData("20 C", 20)]
    [InlineData("20 °C", 20)]
    [InlineData("20 ºC", 20)]
    [InlineData("20℃", 20)]
    [InlineData("20", 20)]
    [InlineData("8 degrees", 8)]
    [InlineData("eight degrees", 8)]
    [InlineData("20°", 20)]
    [InlineData("68 F", 20)]
    [InlineData("68 degrees F", 20)]
    [InlineData("-40 °F", -40)]
    [InlineData("293.15 K", 20)]
    public void Temperature_benchSpellings_areUnderstood(string text, double celsius) =>
        Assert.Equal(celsius, Assert.IsType<Understood<Temperature>>(QuantityText.Temperature(text, BookUnits.Metric)).Value.Celsius, 1e-12);

    [Fact]
    public void Temperature_bareInInchBook_isFahrenheit() =>
        Assert.Equal(20, Assert.IsType<Understood<Temperature>>(QuantityText.Temperature("68 degrees", BookUnits.Inch)).Value.Celsius, 1e-12);

    [Theory]
    [InlineData("-273.16", "room: met \"-273.16\"; expected a temperature that can exist. Check the figure and its unit.")]
    [InlineData("20 bar", "room: met the unit \"bar\"; expected a temperature such as 20 °C or 68 °F. Use one of °C, °F, K.")]
    public void Temperature_impossible_isRefused(string text, string message) =>
        Assert.Equal(message, Assert.IsType<Refused<Temperature>>(QuantityText.Temperature(text, BookUnits.Metric, "room")).Reason.ToString());

    [Theory]
    [InlineData("90", 90)]
    [InlineData("90°", 90)]
    [InlineData("ninety degrees", 90)]
    [InlineData("quarter turn", 90)]
    [InlineData("a quarter turn", 90)]
    [InlineData("half a turn", 180)]
    [InlineData("quarter of a turn", 90)]
    [InlineData("1 turn", 360)]
    [InlineData("a turn and a half", 540)]
    public void Angle_benchSpellings_areUnderstood(string text, double degrees) =>
        Assert.Equal(degrees, Assert.IsType<Understood<Angle>>(QuantityText.Angle(text, BookUnits.Metric)).Value.Degrees, 1e-11);

    [Theory]
    [InlineData("412.5 g", 0.4125)]
    [InlineData("12 kg", 12)]
    [InlineData("2 lb", 0.90718474)]
    [InlineData("8 oz", 0.226796185)]
    public void Mass_benchSpellings_areUnderstood(string text, double kilograms) =>
        Assert.Equal(kilograms, Assert.IsType<Understood<Mass>>(QuantityText.Mass(text, BookUnits.Metric)).Value.Kilograms, 1e-14);

    [Fact]
    public void Mass_bareFigure_isAsked()
    {
        var read = Assert.IsType<Ambiguous<Mass>>(QuantityText.Mass("412", BookUnits.Metric));
        Assert.Equal("No unit was given.", read.Why);
        Assert.Equal(["412 g", "412 kg"], read.Readings.Select(r => r.Words));
    }

    [Theory]
    [InlineData("310 N", 310)]
    [InlineData("31 kg", 304.00615)]
    [InlineData("70 lb", 311.375513068235)]
    [InlineData("1.2 kN", 1200)]
    public void Force_benchSpellings_areUnderstood(string text, double newtons) =>
        Assert.Equal(newtons, Assert.IsType<Understood<Force>>(QuantityText.Force(text, BookUnits.Metric)).Value.Newtons, 1e-11);

    [Theory]
    [InlineData("47.2 cc", 47.2)]
    [InlineData("47,2 cm³", 47.2)]
    [InlineData("47.2 cm3", 47.2)]
    [InlineData("40 ml", 40)]
    [InlineData("4 l", 4000)]
    [InlineData("four litres", 4000)]
    [InlineData("122 cu in", 1999.221808)]
    public void Volume_benchSpellings_areUnderstood(string text, double cubicCentimetres) =>
        Assert.Equal(cubicCentimetres, Assert.IsType<Understood<Volume>>(QuantityText.Volume(text, BookUnits.Metric)).Value.CubicCentimetres, 1e-9);

    [Fact]
    public void Volume_pint_isAsked() =>
        Assert.Equal(["2 imperial pint", "2 US pint"],
            Assert.IsType<Ambiguous<Volume>>(QuantityText.Volume("2 pints", BookUnits.Metric)).Readings.Select(r => r.Words));
}
