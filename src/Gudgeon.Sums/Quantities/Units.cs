namespace Gudgeon.Sums.Quantities;

/// <summary>One meaning of a unit as typed: the base unit is <c>(value + Offset) × Factor</c>.</summary>
internal sealed record UnitMeaning(string Sign, decimal Factor, decimal Offset = 0);

/// <summary>The units that one kind of quantity understands.</summary>
/// <param name="Kind">The name of the kind, for messages.</param>
/// <param name="Metric">What a bare figure means in a metric book.</param>
/// <param name="Inch">What a bare figure means in an inch book.</param>
/// <param name="Aliases">Every spelling, without blanks, dots and hyphens, in lower case.</param>
/// <param name="Example">What is shown as an example in a refusal.</param>
internal sealed record UnitTable(
    string Kind, UnitMeaning[] Metric, UnitMeaning[] Inch, Dictionary<string, UnitMeaning[]> Aliases, string Example)
{
    internal UnitMeaning[] Default(BookUnits book) => book == BookUnits.Metric ? Metric : Inch;

    internal static Dictionary<string, UnitMeaning[]> Spellings(params (string Spellings, UnitMeaning[] Meanings)[] rows) =>
        rows.SelectMany(row => row.Spellings.Split(' ').Select(spelling => (spelling, row.Meanings)))
            .ToDictionary(pair => pair.spelling, pair => pair.Meanings);
}

/// <summary>The tables. Factors are the exact definitions of 1959 (yard, pound), standard gravity 9.80665 m/s².</summary>
internal static class Units
{
    private const decimal PoundForce = 4.4482216152605m;
    private const decimal Gravity = 9.80665m;
    private const decimal FootPound = 1.3558179483314004m;

    private static readonly UnitMeaning Millimetre = new("mm", 1);
    private static readonly UnitMeaning Inch = new("in", 25.4m);
    private static readonly UnitMeaning Thou = new("thou", 0.0254m);
    private static readonly UnitMeaning Micrometre = new("µm", 0.001m);
    private static readonly UnitMeaning NewtonMetre = new("N·m", 1);
    private static readonly UnitMeaning PoundFoot = new("lbf·ft", FootPound);
    private static readonly UnitMeaning Bar = new("bar", 1);
    private static readonly UnitMeaning Psi = new("psi", PoundForce / 64.516m);
    private static readonly UnitMeaning Celsius = new("°C", 1);
    private static readonly UnitMeaning Fahrenheit = new("°F", 5m / 9m, -32);
    private static readonly UnitMeaning Degree = new("°", (decimal)(Math.PI / 180));
    private static readonly UnitMeaning Kilogram = new("kg", 1);
    private static readonly UnitMeaning Gram = new("g", 0.001m);
    private static readonly UnitMeaning Pound = new("lb", 0.45359237m);
    private static readonly UnitMeaning Ounce = new("oz", 0.45359237m / 16);
    private static readonly UnitMeaning Newton = new("N", 1);
    private static readonly UnitMeaning PoundOfForce = new("lbf", PoundForce);
    private static readonly UnitMeaning KilogramOfForce = new("kgf", Gravity);
    private static readonly UnitMeaning CubicCentimetre = new("cm³", 1);
    private static readonly UnitMeaning CubicInch = new("in³", 16.387064m);

    internal static UnitTable Length { get; } = new("length", [Millimetre], [Inch], UnitTable.Spellings(
        ("mm millimetre millimetres millimeter millimeters", [Millimetre]),
        ("cm centimetre centimetres centimeter centimeters", [new("cm", 10)]),
        ("m metre metres meter meters", [new("m", 1000)]),
        ("um micron microns micrometre micrometres", [Micrometre]),
        ("in inch inches \"", [Inch]),
        ("ft foot feet '", [new("ft", 304.8m)]),
        ("thou thous though thousandthsofaninch thousandthofaninch", [Thou]),
        ("tenthsofathou tenthofathou", [new("0.0001 in", 0.00254m)]),
        ("tenthsofamm tenthofamm tenthsofamillimetre tenthofamillimetre", [new("0.1 mm", 0.1m)]),
        ("hundredthsofamm hundredthofamm hundredthsofamillimetre hundredthofamillimetre", [new("0.01 mm", 0.01m)]),
        ("tenth tenths", [new("0.1 mm", 0.1m), new("0.0001 in", 0.00254m)]),
        ("hundredth hundredths", [new("0.01 mm", 0.01m), new("0.01 in", 0.254m)]),
        ("thousandth thousandths", [Thou, Micrometre]),
        ("thousand", [Thou, new("thousand mm", 1000)]),
        ("mil mils", [Millimetre, Thou])), "86.012, 0.0015 in or 1½ thou");

    internal static UnitTable Torque { get; } = new("torque", [NewtonMetre], [PoundFoot], UnitTable.Spellings(
        ("nm newtonmetre newtonmetres newtonmeter newtonmeters newtons", [NewtonMetre]),
        ("lbft lbsft ftlb ftlbs lbfft ftlbf poundfeet poundsfeet poundfoot footpound footpounds footlb footlbs lbffeet poundforcefeet", [PoundFoot]),
        ("lbin lbsin inlb inlbs lbfin inlbf inchpound inchpounds poundinch poundinches", [new("lbf·in", FootPound / 12)]),
        ("kgfm kgm mkg mkgf mkp kpm", [new("kgf·m", Gravity)]),
        ("kgfcm kgcm cmkg", [new("kgf·cm", Gravity / 100)]),
        ("ncm", [new("N·cm", 0.01m)]),
        ("knm", [new("kN·m", 1000)])), "25 N m or 18 lb ft");

    internal static UnitTable Pressure { get; } = new("pressure", [Bar], [Psi], UnitTable.Spellings(
        ("bar bars barg", [Bar]),
        ("mbar millibar millibars", [new("mbar", 0.001m)]),
        ("psi psig lb/in2 lbf/in2 lbs/in2 lbin2 poundspersquareinch lbpersquareinch pounds lb lbs", [Psi]),
        ("kpa", [new("kPa", 0.01m)]),
        ("mpa n/mm2", [new("MPa", 10)]),
        ("pa", [new("Pa", 0.00001m)]),
        ("kgf/cm2 kg/cm2 at", [new("kgf/cm²", 0.980665m)])), "12.1 bar or 175 psi");

    internal static UnitTable Temperature { get; } = new("temperature", [Celsius], [Fahrenheit], UnitTable.Spellings(
        ("c °c degc degreesc centigrade celsius degreescelsius degreescentigrade", [Celsius]),
        ("f °f degf degreesf fahrenheit degreesfahrenheit", [Fahrenheit]),
        ("k kelvin kelvins", [new("K", 1, -273.15m)])), "20 °C or 68 °F");

    internal static UnitTable Angle { get; } = new("angle", [Degree], [Degree], UnitTable.Spellings(
        ("° deg degs degree degrees", [Degree]),
        ("rad radian radians", [new("rad", 1)]),
        ("turn turns rev revs revolution revolutions ofaturn", [new("turn", (decimal)(2 * Math.PI))])), "90° or a quarter turn");

    internal static UnitTable Mass { get; } = new("mass", [Gram, Kilogram], [Ounce, Pound], UnitTable.Spellings(
        ("kg kilo kilos kilogram kilograms kilogramme kilogrammes", [Kilogram]),
        ("g gram grams gramme grammes", [Gram]),
        ("lb lbs pound pounds", [Pound]),
        ("oz ounce ounces", [Ounce])), "412.5 g or 12 kg");

    internal static UnitTable Force { get; } = new("force", [Newton], [PoundOfForce], UnitTable.Spellings(
        ("n newton newtons", [Newton]),
        ("kn kilonewton kilonewtons", [new("kN", 1000)]),
        ("lb lbs lbf pound pounds", [PoundOfForce]),
        ("kgf kg kp kilo kilos", [KilogramOfForce])), "310 N or 70 lb");

    internal static UnitTable Volume { get; } = new("volume", [CubicCentimetre], [CubicInch], UnitTable.Spellings(
        ("cc ccs ccm cm3 ml millilitre millilitres milliliter milliliters cubiccentimetre cubiccentimetres", [CubicCentimetre]),
        ("mm3", [new("mm³", 0.001m)]),
        ("l litre litres liter liters", [new("l", 1000)]),
        ("in3 cuin cuins cubicinch cubicinches ci cid", [CubicInch]),
        ("pt pint pints", [new("imperial pint", 568.26125m), new("US pint", 473.176473m)]),
        ("qt quart quarts", [new("imperial quart", 1136.5225m), new("US quart", 946.352946m)]),
        ("gal gallon gallons", [new("imperial gallon", 4546.09m), new("US gallon", 3785.411784m)])), "47.2 cc or 4 l");
}
