namespace Gudgeon.Sums.Quantities;

/// <summary>
/// Reads what people write or say at the bench. One reading is a value, several are asked about, none is a message; nothing is guessed in silence.
/// </summary>
/// <remarks>
/// Factors are exact decimals. Point and comma are both decimal marks; thousands are never parted, and two marks are refused.
/// Figures without a unit take the book's: mm or in, N·m or lbf·ft, bar or psi, °C or °F, N or lbf, cm³ or in³, degrees.
/// </remarks>
public static class QuantityText
{
    /// <summary>Reads a length: <c>86.012</c>, <c>105,019</c>, <c>0.0015 in</c>, <c>1½ thou</c>, <c>7/16 in</c>, <c>38 µm</c>, <c>inch and a quarter</c>.</summary>
    /// <param name="text">The text as typed.</param>
    /// <param name="book">The units that the book speaks.</param>
    /// <param name="where">The place, for messages.</param>
    /// <returns>The value, the readings to ask about, or the message.</returns>
    public static Parsed<Length> Length(string text, BookUnits book, string where = "length") =>
        QuantityReader.Read(text, Units.Length, book, where, Quantities.Length.FromMillimetres);

    /// <summary>Reads a torque: <c>25 lb ft</c>, <c>30 N m</c>, <c>12 in lb</c>, <c>3 kgf·m</c>.</summary>
    /// <inheritdoc cref="Length"/>
    public static Parsed<Torque> Torque(string text, BookUnits book, string where = "torque") =>
        QuantityReader.Read(text, Units.Torque, book, where, Quantities.Torque.FromNewtonMetres);

    /// <summary>Reads a pressure: <c>12.1 bar</c>, <c>175 psi</c>, <c>300 kPa</c>.</summary>
    /// <inheritdoc cref="Length"/>
    public static Parsed<Pressure> Pressure(string text, BookUnits book, string where = "pressure") =>
        QuantityReader.Read(text, Units.Pressure, book, where, Quantities.Pressure.FromBar);

    /// <summary>Reads a temperature: <c>20 C</c>, <c>68 °F</c>, <c>eight degrees</c> in the book's scale.</summary>
    /// <inheritdoc cref="Length"/>
    public static Parsed<Temperature> Temperature(string text, BookUnits book, string where = "temperature")
    {
        ArgumentNullException.ThrowIfNull(text);
        // "degrees" alone leaves the scale to the book, as no unit does.
        var bare = text.TrimEnd();
        string[] degrees = ["degrees", "degree", "deg", "°", "º", "˚"];
        var scale = degrees.FirstOrDefault(d => bare.EndsWith(d, StringComparison.OrdinalIgnoreCase));
        var read = QuantityReader.Read(scale is null ? text : bare[..^scale.Length], Units.Temperature, book, where, Quantities.Temperature.FromCelsius);
        return read with { Text = text };
    }

    /// <summary>Reads an angle: <c>90°</c>, <c>1.2 rad</c>, <c>quarter turn</c>.</summary>
    /// <inheritdoc cref="Length"/>
    public static Parsed<Angle> Angle(string text, BookUnits book, string where = "angle") =>
        QuantityReader.Read(text, Units.Angle, book, where, Quantities.Angle.FromRadians);

    /// <summary>Reads a mass: <c>412.5 g</c>, <c>12 kg</c>, <c>3 lb</c>. A bare figure is asked about: a piston and a block are both weighed.</summary>
    /// <inheritdoc cref="Length"/>
    public static Parsed<Mass> Mass(string text, BookUnits book, string where = "mass") =>
        QuantityReader.Read(text, Units.Mass, book, where, Quantities.Mass.FromKilograms);

    /// <summary>Reads a force: <c>310 N</c>, <c>70 lb</c>, <c>32 kg</c> as a spring tester shows it.</summary>
    /// <inheritdoc cref="Length"/>
    public static Parsed<Force> Force(string text, BookUnits book, string where = "force") =>
        QuantityReader.Read(text, Units.Force, book, where, Quantities.Force.FromNewtons);

    /// <summary>Reads a volume: <c>47.2 cc</c>, <c>40 ml</c>, <c>4 l</c>. Pints and gallons are asked about: there are two of each.</summary>
    /// <inheritdoc cref="Length"/>
    public static Parsed<Volume> Volume(string text, BookUnits book, string where = "volume") =>
        QuantityReader.Read(text, Units.Volume, book, where, Quantities.Volume.FromCubicCentimetres);
}
