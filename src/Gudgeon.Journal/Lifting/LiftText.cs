using System.Globalization;

namespace Gudgeon.Journal;

/// <summary>Figures of a lift as they are shown: whole millimetres, kilograms and newtons; a rig is not measured finer.</summary>
public static class LiftText
{
    public static string Show(double value, string unit) => $"{Number(value)}\u00a0{unit}";

    public static string Spread(double value, double spread, string unit) => $"{Number(value)} ± {Number(spread)}\u00a0{unit}";

    public static string Degrees(double value) => string.Create(CultureInfo.InvariantCulture, $"{Minus(value.ToString("0.#", CultureInfo.InvariantCulture))}°");

    public static string Percent(double part) => string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(100 * part - 1e-9):0}\u00a0%");

    private static string Number(double value) => Minus((Math.Abs(value) < 10 ? Math.Round(value, 1) : Math.Round(value)).ToString("0.#", CultureInfo.InvariantCulture));

    private static string Minus(string number) => number == "-0" ? "0" : number.Replace('-', '−');
}
