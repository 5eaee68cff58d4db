using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Quantities;

/// <summary>Every word, sign and unit that the reader knows, one by one. Figures follow from the exact definitions of inch, pound and standard gravity.</summary>
public class WordsAndSignsTests
{
    [Theory]
    [InlineData("zero", 0)]
    [InlineData("nought", 0)]
    [InlineData("naught", 0)]
    [InlineData("one", 1)]
    [InlineData("two", 2)]
    [InlineData("three", 3)]
    [InlineData("four", 4)]
    [InlineData("five", 5)]
    [InlineData("six", 6)]
    [InlineData("seven", 7)]
    [InlineData("eight", 8)]
    [InlineData("nine", 9)]
    [InlineData("ten", 10)]
    [InlineData("eleven", 11)]
    [InlineData("twelve", 12)]
    [InlineData("thirteen", 13)]
    [InlineData("fourteen", 14)]
    [InlineData("fifteen", 15)]
    [InlineData("sixteen", 16)]
    [InlineData("seventeen", 17)]
    [InlineData("eighteen", 18)]
    [InlineData("nineteen", 19)]
    [InlineData("twenty", 20)]
    [InlineData("twenty one", 21)]
    [InlineData("twenty-nine", 29)]
    [InlineData("thirty", 30)]
    [InlineData("forty", 40)]
    [InlineData("fifty", 50)]
    [InlineData("sixty", 60)]
    [InlineData("seventy", 70)]
    [InlineData("eighty", 80)]
    [InlineData("ninety nine", 99)]
    [InlineData("hundred", 100)]
    [InlineData("a hundred", 100)]
    [InlineData("one hundred", 100)]
    [InlineData("a hundred and one", 101)]
    [InlineData("a hundred twenty", 120)]
    [InlineData("nine hundred and ninety nine", 999)]
    [InlineData("a hundred and a half", 100.5)]
    [InlineData("couple", 2)]
    [InlineData("couple of", 2)]
    [InlineData("a couple", 2)]
    [InlineData("a couple of", 2)]
    [InlineData("a", 1)]
    [InlineData("an", 1)]
    [InlineData("plus four", 4)]
    [InlineData("minus four", -4)]
    [InlineData("+ 4", 4)]
    [InlineData("- 4", -4)]
    [InlineData("point five", 0.5)]
    [InlineData("point oh five", 0.05)]
    [InlineData("point o five", 0.05)]
    [InlineData("point nought five", 0.05)]
    [InlineData("nought point naught five", 0.05)]
    [InlineData("point one two three four five six seven eight nine", 0.123456789)]
    public void Number_word_is_read(string words, double millimetres)
    {
        Assert.True(QuantityText.Length($"{words} mm", BookUnits.Metric).TryGet(out var length));
        Assert.Equal(millimetres, length.Millimetres, 1e-12);
    }

    [Theory]
    [InlineData("half an inch", 12.7)]
    [InlineData("half of an inch", 12.7)]
    [InlineData("half a inch", 12.7)]
    [InlineData("half inch", 12.7)]
    [InlineData("three halves of an inch", 38.1)]
    [InlineData("a third of an inch", 25.4 / 3)]
    [InlineData("two thirds of an inch", 50.8 / 3)]
    [InlineData("a quarter of an inch", 6.35)]
    [InlineData("three quarters inch", 19.05)]
    [InlineData("an eighth of an inch", 3.175)]
    [InlineData("seven eighths of an inch", 22.225)]
    [InlineData("a sixteenth of an inch", 1.5875)]
    [InlineData("three sixteenths of an inch", 4.7625)]
    [InlineData("a thirty-second of an inch", 0.79375)]
    [InlineData("a thirty second of an inch", 0.79375)]
    [InlineData("five thirty-seconds of an inch", 3.96875)]
    [InlineData("one sixty-fourth of an inch", 0.396875)]
    [InlineData("five sixty-fourths of an inch", 1.984375)]
    [InlineData("two and three eighths inches", 60.325)]
    [InlineData("2 and 3/8 in", 60.325)]
    [InlineData("two inches and 3/8", 60.325)]
    [InlineData("inch and a half", 38.1)]
    public void Fraction_word_is_read(string words, double millimetres) =>
        Assert.Equal(millimetres, Assert.IsType<Understood<Length>>(QuantityText.Length(words, BookUnits.Metric)).Value.Millimetres, 1e-12);

    [Theory]
    [InlineData('−')]
    [InlineData('–')]
    [InlineData('—')]
    [InlineData('‐')]
    [InlineData('‑')]
    [InlineData('‒')]
    [InlineData('﹣')]
    [InlineData('-')]
    public void Every_dash_before_a_figure_is_a_minus(char dash)
    {
        Assert.True(QuantityText.Length($"{dash}0.02", BookUnits.Metric).TryGet(out var length));
        Assert.Equal(-0.02, length.Millimetres);
    }

    [Theory]
    [InlineData('\u00A0')]
    [InlineData('\u2007')]
    [InlineData('\u2009')]
    [InlineData('\u200A')]
    [InlineData('\u202F')]
    [InlineData('\t')]
    [InlineData('\r')]
    [InlineData('\n')]
    public void Every_blank_parts_words(char blank)
    {
        Assert.True(QuantityText.Length($"1{blank}1/2{blank}in", BookUnits.Metric).TryGet(out var length));
        Assert.Equal(38.1, length.Millimetres, 1e-12);
    }

    [Theory]
    [InlineData("2″", 50.8)]
    [InlineData("2”", 50.8)]
    [InlineData("2“", 50.8)]
    [InlineData("2„", 50.8)]
    [InlineData("2\"", 50.8)]
    [InlineData("2′", 609.6)]
    [InlineData("2’", 609.6)]
    [InlineData("2‘", 609.6)]
    [InlineData("2'", 609.6)]
    [InlineData("3⁄8 in", 9.525)]
    [InlineData("3∕8 in", 9.525)]
    [InlineData("1½ in", 38.1)]
    [InlineData("1¼ in", 31.75)]
    [InlineData("1¾ in", 44.45)]
    [InlineData("1⅓ in", 25.4 * 4 / 3)]
    [InlineData("1⅔ in", 25.4 * 5 / 3)]
    [InlineData("1⅛ in", 28.575)]
    [InlineData("1⅜ in", 34.925)]
    [InlineData("1⅝ in", 41.275)]
    [InlineData("1⅞ in", 47.625)]
    [InlineData("86㎜", 86)]
    [InlineData("86 MM", 86)]
    [InlineData("38 µm", 0.038)]
    [InlineData("38 μm", 0.038)]
    [InlineData("5 ft 3 inches", 1600.2)]
    [InlineData("5 feet 3 inch", 1600.2)]
    [InlineData("5 foot", 1524)]
    [InlineData("1000000000", 1e9)]
    [InlineData("1.123456789012345678", 1.123456789012345678)]
    public void Sign_is_read(string text, double millimetres)
    {
        Assert.True(QuantityText.Length(text, BookUnits.Metric).TryGet(out var length));
        Assert.Equal(millimetres, length.Millimetres, 1e-12 * millimetres);
    }

    [Theory]
    [InlineData("90 deg", 90, "°")]
    [InlineData("90º", 90, "°")]
    [InlineData("90˚", 90, "°")]
    [InlineData("2 rad", 2 * 180 / Math.PI, "rad")]
    [InlineData("2 turns", 720, "turn")]
    [InlineData("2 revs", 720, "turn")]
    [InlineData("three quarters of a turn", 270, "turn")]
    public void Angle_unit_is_read(string text, double degrees, string sign) => Read(QuantityText.Angle(text, BookUnits.Metric), a => a.Degrees, degrees, sign);

    [Theory]
    [InlineData("2 mm", 2, "mm")]
    [InlineData("2 cm", 20, "cm")]
    [InlineData("2 m", 2000, "m")]
    [InlineData("2 microns", 0.002, "µm")]
    [InlineData("2 in", 50.8, "in")]
    [InlineData("2 ft", 609.6, "ft")]
    [InlineData("2 thou", 0.0508, "thou")]
    [InlineData("2 thousandths of an inch", 0.0508, "thou")]
    [InlineData("2 tenths of a thou", 0.00508, "0.0001 in")]
    [InlineData("2 tenths of a mm", 0.2, "0.1 mm")]
    [InlineData("2 hundredths of a millimetre", 0.02, "0.01 mm")]
    public void Length_unit_is_read(string text, double millimetres, string sign) => Read(QuantityText.Length(text, BookUnits.Metric), l => l.Millimetres, millimetres, sign);

    [Theory]
    [InlineData("2 N m", 2, "N·m")]
    [InlineData("2 newtons", 2, "N·m")]
    [InlineData("2 N⋅m", 2, "N·m")]
    [InlineData("2 N∙m", 2, "N·m")]
    [InlineData("2 N•m", 2, "N·m")]
    [InlineData("2 N*m", 2, "N·m")]
    [InlineData("2 lb ft", 2.7116358966628008, "lbf·ft")]
    [InlineData("24 lb in", 2.7116358966628008, "lbf·in")]
    [InlineData("2 kgf m", 19.6133, "kgf·m")]
    [InlineData("200 kgf cm", 19.6133, "kgf·cm")]
    [InlineData("200 N cm", 2, "N·cm")]
    [InlineData("2 kN m", 2000, "kN·m")]
    public void Torque_unit_is_read(string text, double newtonMetres, string sign) => Read(QuantityText.Torque(text, BookUnits.Metric), t => t.NewtonMetres, newtonMetres, sign);

    [Theory]
    [InlineData("2 bar", 2, "bar")]
    [InlineData("2000 mbar", 2, "mbar")]
    [InlineData("2 psi", 0.1378951458633672, "psi")]
    [InlineData("200 kPa", 2, "kPa")]
    [InlineData("2 MPa", 20, "MPa")]
    [InlineData("200000 Pa", 2, "Pa")]
    [InlineData("2 kgf/cm²", 1.96133, "kgf/cm²")]
    [InlineData("2 at", 1.96133, "kgf/cm²")]
    public void Pressure_unit_is_read(string text, double bar, string sign) => Read(QuantityText.Pressure(text, BookUnits.Metric), p => p.Bar, bar, sign);

    [Theory]
    [InlineData("20 C", 20, "°C")]
    [InlineData("20 ℃", 20, "°C")]
    [InlineData("68 ℉", 20, "°F")]
    [InlineData("293.15 kelvin", 20, "K")]
    [InlineData("20 degree", 20, "°C")]
    [InlineData("20 DEG ", 20, "°C")]
    [InlineData("20˚", 20, "°C")]
    [InlineData("20º", 20, "°C")]
    public void Temperature_unit_is_read(string text, double celsius, string sign)
    {
        var read = QuantityText.Temperature(text, BookUnits.Metric);
        Assert.Equal(text, read.Text);
        Read(read, t => t.Celsius, celsius, sign);
    }

    [Theory]
    [InlineData("2 kg", 2, "kg")]
    [InlineData("2000 g", 2, "g")]
    [InlineData("2 lb", 0.90718474, "lb")]
    [InlineData("32 oz", 0.90718474, "oz")]
    public void Mass_unit_is_read(string text, double kilograms, string sign) => Read(QuantityText.Mass(text, BookUnits.Metric), m => m.Kilograms, kilograms, sign);

    [Theory]
    [InlineData("2", 2, "N")]
    [InlineData("2 N", 2, "N")]
    [InlineData("2 kN", 2000, "kN")]
    [InlineData("2 lb", 8.896443230521, "lbf")]
    [InlineData("2 kg", 19.6133, "kgf")]
    public void Force_unit_is_read(string text, double newtons, string sign) => Read(QuantityText.Force(text, BookUnits.Metric), f => f.Newtons, newtons, sign);

    [Theory]
    [InlineData("2 cc", 2, "cm³")]
    [InlineData("2000 mm³", 2, "mm³")]
    [InlineData("2 l", 2000, "l")]
    [InlineData("2 cu in", 32.774128, "in³")]
    public void Volume_unit_is_read(string text, double cubicCentimetres, string sign) => Read(QuantityText.Volume(text, BookUnits.Metric), v => v.CubicCentimetres, cubicCentimetres, sign);

    [Fact]
    public void Bare_figure_takes_the_unit_of_the_inch_book()
    {
        Read(QuantityText.Length("2", BookUnits.Inch), l => l.Millimetres, 50.8, "in");
        Read(QuantityText.Torque("2", BookUnits.Inch), t => t.NewtonMetres, 2.7116358966628008, "lbf·ft");
        Read(QuantityText.Pressure("2", BookUnits.Inch), p => p.Bar, 0.1378951458633672, "psi");
        Read(QuantityText.Temperature("68", BookUnits.Inch), t => t.Celsius, 20, "°F");
        Read(QuantityText.Angle("2", BookUnits.Inch), a => a.Degrees, 2, "°");
        Read(QuantityText.Force("2", BookUnits.Inch), f => f.Newtons, 8.896443230521, "lbf");
        Read(QuantityText.Volume("2", BookUnits.Inch), v => v.CubicCentimetres, 32.774128, "in³");
        Assert.Equal(["2 oz", "2 lb"], Assert.IsType<Ambiguous<Mass>>(QuantityText.Mass("2", BookUnits.Inch)).Readings.Select(r => r.Words));
    }

    // Words at the very end of the text, with no unit after them.
    [Theory]
    [InlineData("a hundred", 100)]
    [InlineData("couple", 2)]
    [InlineData("a couple", 2)]
    [InlineData("a couple of", 2)]
    [InlineData("twenty", 20)]
    [InlineData("twenty one", 21)]
    [InlineData("two hundred and", double.NaN)]
    [InlineData("couple thou", 0.0508)]
    [InlineData("a couple thou", 0.0508)]
    [InlineData("couple of thou", 0.0508)]
    public void Number_word_may_stand_at_the_end(string words, double millimetres)
    {
        var read = QuantityText.Length(words, BookUnits.Metric);
        if (double.IsNaN(millimetres))
            Assert.IsType<Refused<Length>>(read);
        else
            Assert.Equal(millimetres, Assert.IsType<Understood<Length>>(read).Value.Millimetres, 1e-12);
    }

    [Fact]
    public void Unit_in_one_sign_holds_in_either_book()
    {
        Read(QuantityText.Temperature("20℃", BookUnits.Inch), t => t.Celsius, 20, "°C");
        Read(QuantityText.Temperature("68℉", BookUnits.Inch), t => t.Celsius, 20, "°F");
        Read(QuantityText.Length("86㎜", BookUnits.Inch), l => l.Millimetres, 86, "mm");
    }

    [Theory]
    [InlineData("86.012", true)]
    [InlineData("86.012 mm", false)]
    [InlineData("3/8", true)]
    public void Unit_that_was_not_typed_is_said_to_be_assumed(string text, bool assumed) => Assert.Equal(assumed, Assert.IsType<Understood<Length>>(QuantityText.Length(text, BookUnits.Metric)).UnitAssumed);

    // Weights and Measures Act 1985, schedule 1 (imperial gallon 4.54609 l); NIST Handbook 44, appendix C (US gallon 231 in³).
    [Theory]
    [InlineData("2 pints", "2 imperial pint = 1136.5225", "2 US pint = 946.352946")]
    [InlineData("1 quart", "1 imperial quart = 1136.5225", "1 US quart = 946.352946")]
    [InlineData("1 gal", "1 imperial gallon = 4546.09", "1 US gallon = 3785.411784")]
    public void Volume_of_two_countries_is_asked(string text, params string[] readings) => Assert.Equal(readings,
        Assert.IsType<Ambiguous<Volume>>(QuantityText.Volume(text, BookUnits.Metric)).Readings.Select(r => FormattableString.Invariant($"{r.Words} = {Math.Round(r.Value.CubicCentimetres, 9)}")));

    [Theory]
    [InlineData("two tenths", "2 × 0.1 mm", "2 × 0.0001 in")]
    [InlineData("two hundredths", "2 × 0.01 mm", "2 × 0.01 in")]
    [InlineData("2 thousandths", "2 thou", "2 µm")]
    [InlineData("ten thousand", "10 thou", "10 thousand mm")]
    [InlineData("six mil", "6 mm", "6 thou")]
    [InlineData("1/4", "0.25 in", "0.25 mm")]
    [InlineData("half", "0.5 in", "0.5 mm")]
    [InlineData("1/3", "0.333333333333 in", "0.333333333333 mm")]
    [InlineData("twenty zero thou", "20 thou", "200 thou")]
    public void Length_of_two_meanings_is_asked(string text, params string[] readings)
    {
        var read = QuantityText.Length(text, BookUnits.Metric);
        Assert.Equal(readings, Assert.IsType<Ambiguous<Length>>(read).Readings.Select(r => r.Words));
        Assert.False(read.TryGet(out var none));
        Assert.Equal(default, none);
    }

    // Eighths and finer are drill and bolt sizes in inches: common practice, no source.
    [Theory]
    [InlineData("1/8", 3.175)]
    [InlineData("1/16", 1.5875)]
    [InlineData("1/32", 0.79375)]
    [InlineData("1/64", 0.396875)]
    public void Fine_fraction_alone_is_an_inch_size(string text, double millimetres) => Read(QuantityText.Length(text, BookUnits.Metric), l => l.Millimetres, millimetres, "in");

    [Theory]
    [InlineData("5 ft 3", "\"3\" after the length; expected one length and nothing more. Type each figure in its own place.")]
    [InlineData("5 ft 3 mm", "\"3 mm\" after the length; expected one length and nothing more. Type each figure in its own place.")]
    [InlineData("5 cm 3 in", "\"3 in\" after the length; expected one length and nothing more. Type each figure in its own place.")]
    [InlineData("ten hundred thou", "the unit \"hundredthou\"; expected a length such as 86.012, 0.0015 in or 1½ thou. Use one of mm, cm, m, µm, in, ft, thou.")]
    [InlineData("zero hundred thou", "the unit \"hundredthou\"; expected a length such as 86.012, 0.0015 in or 1½ thou. Use one of mm, cm, m, µm, in, ft, thou.")]
    [InlineData("twenty ten thou", "the unit \"tenthou\"; expected a length such as 86.012, 0.0015 in or 1½ thou. Use one of mm, cm, m, µm, in, ft, thou.")]
    [InlineData("-", "\"-\", which has no figure; expected a length such as 86.012, 0.0015 in or 1½ thou. Type the figure first, then its unit.")]
    [InlineData("  ", "nothing; expected a length such as 86.012, 0.0015 in or 1½ thou. Type the figure, or leave this place for later.")]
    [InlineData("1000000001", "\"1000000001\"; expected a figure below 1000000000. Check the figure and its unit.")]
    [InlineData("1 ft 1000000001 in", "\"1 ft 1000000001 in\"; expected a figure below 1000000000. Check the figure and its unit.")]
    [InlineData("1.5 1/2 in", "\"1 / 2 in\" after the length; expected one length and nothing more. Type each figure in its own place.")]
    [InlineData("1,5 1/2 in", "\"1 / 2 in\" after the length; expected one length and nothing more. Type each figure in its own place.")]
    [InlineData("oh five", "\"oh five\", which has no figure; expected a length such as 86.012, 0.0015 in or 1½ thou. Type the figure first, then its unit.")]
    [InlineData("point one two three four five six seven eight nine one mm", "the unit \"onemm\"; expected a length such as 86.012, 0.0015 in or 1½ thou. Use one of mm, cm, m, µm, in, ft, thou.")]
    [InlineData("nine hundred and ninety nine one two three four five six seven", "\"nine hundred and ninety nine one two three four five six seven\"; expected a figure below 1000000000. Check the figure and its unit.")]
    [InlineData("1.1234567890123456789", "\"1.1234567890123456789\", which has more than 20 places; expected a figure that can be measured. Check the figure for keys held down.")]
    public void Length_that_is_none_is_refused(string text, string message) => Refused(QuantityText.Length(text, BookUnits.Metric), $"length: met {message}");

    [Fact]
    public void Text_of_eighty_signs_is_still_read() => Assert.True(QuantityText.Length(new string(' ', 76) + "1 mm", BookUnits.Metric).TryGet(out _));

    [Fact]
    public void Each_kind_is_asked_for_by_its_name_and_its_units()
    {
        Refused(QuantityText.Torque("5 x", BookUnits.Metric), "torque: met the unit \"x\"; expected a torque such as 25 N m or 18 lb ft. Use one of N·m, lbf·ft, lbf·in, kgf·m, kgf·cm, N·cm, kN·m.");
        Refused(QuantityText.Pressure("5 x", BookUnits.Metric), "pressure: met the unit \"x\"; expected a pressure such as 12.1 bar or 175 psi. Use one of bar, mbar, psi, kPa, MPa, Pa, kgf/cm².");
        Refused(QuantityText.Temperature("5 x", BookUnits.Metric), "temperature: met the unit \"x\"; expected a temperature such as 20 °C or 68 °F. Use one of °C, °F, K.");
        Refused(QuantityText.Angle("5 x", BookUnits.Metric), "angle: met the unit \"x\"; expected an angle such as 90° or a quarter turn. Use one of °, rad, turn.");
        Refused(QuantityText.Mass("5 x", BookUnits.Metric), "mass: met the unit \"x\"; expected a mass such as 412.5 g or 12 kg. Use one of kg, g, lb, oz.");
        Refused(QuantityText.Force("5 x", BookUnits.Metric), "force: met the unit \"x\"; expected a force such as 310 N or 70 lb. Use one of N, kN, lbf, kgf.");
        Refused(QuantityText.Volume("5 x", BookUnits.Metric), "volume: met the unit \"x\"; expected a volume such as 47.2 cc or 4 l. Use one of cm³, mm³, l, in³.");
    }

    [Fact]
    public void Text_that_is_none_is_a_bug()
    {
        Assert.Throws<ArgumentNullException>(() => QuantityText.Length(null!, BookUnits.Metric));
        Assert.Throws<ArgumentNullException>(() => QuantityText.Temperature(null!, BookUnits.Metric));
    }

    private static void Read<T>(Parsed<T> read, Func<T, double> amount, double expected, string sign)
    {
        var understood = Assert.IsType<Understood<T>>(read);
        Assert.Equal(expected, amount(understood.Value), 1e-12 * expected);
        Assert.Equal(sign, understood.Unit);
    }

    private static void Refused<T>(Parsed<T> read, string message) => Assert.Equal(message, Assert.IsType<Refused<T>>(read).Reason.ToString());
}
