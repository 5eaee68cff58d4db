using System.Globalization;

namespace Gudgeon.Journal;

/// <summary>The units that readings and limits are kept in, and how they are shown.</summary>
public static class Units
{
    /// <summary>Passes or fails.</summary>
    public const string Look = "look";

    public static readonly IReadOnlyList<string> All = ["mm", "um", "g", "cm3", "N", "Nm", "bar", "mbar", "deg", "C", "%", "HB", "HRC", "1", Look];

    /// <summary>The unit as people write it.</summary>
    public static string Sign(string unit) => unit switch
    {
        "um" => "µm",
        "cm3" => "cm³",
        "Nm" => "N·m",
        "deg" => "°",
        "C" => "°C",
        "1" => "",
        _ => unit,
    };

    /// <summary>A figure with its unit; a no-break space keeps the two together. Digits as they are, at most nine places.</summary>
    public static string Show(double value, string unit) => Joined(Plain(value), unit);

    /// <summary>A figure already rounded, with its unit.</summary>
    public static string Joined(string figure, string unit) => Sign(unit) switch
    {
        "" => figure,
        "°" => $"{figure}°",
        var sign => $"{figure}\u00A0{sign}",
    };

    public static string Plain(double value) =>
        Math.Abs(value) < 1e15 ? Math.Round((decimal)value, 9).ToString("0.#########", CultureInfo.InvariantCulture).Replace('-', '−') : value.ToString("G6", CultureInfo.InvariantCulture);

    /// <summary>A band in words: <c>85.99 to 86.03 mm</c>, <c>at most 0.1 mm</c>.</summary>
    public static string Band(double? low, double? high, string unit) => (low, high) switch
    {
        ({ } l, { } h) => $"{Plain(l)} to {Show(h, unit)}",
        ({ } l, null) => $"at least {Show(l, unit)}",
        (null, { } h) => $"at most {Show(h, unit)}",
        _ => "",
    };
}
