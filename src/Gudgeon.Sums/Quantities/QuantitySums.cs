namespace Gudgeon.Sums.Quantities;

/// <summary>The sums of units for the catalogue.</summary>
public static class QuantitySums
{
    /// <summary>The list.</summary>
    public static IReadOnlyList<SumEntry> List { get; } =
    [
        new("quantities.torque-lbf-ft", "Pound-force feet to newton metres", "T = t × 0.45359237 × 9.80665 × 0.3048",
            [new("t", "torque", "lbf·ft")], "N·m", "any finite torque",
            "International yard and pound of 1959; standard gravity of the 3rd CGPM 1901",
            new("t = 75 lbf·ft", 101.68634612485499, 1e-12, "recomputed with UnitsNet 5.75.1", () => Torque.FromPoundForceFeet(75).NewtonMetres)),
        new("quantities.temperature-f", "Degrees Fahrenheit to degrees Celsius", "C = (F − 32) × 5 / 9",
            [new("F", "temperature", "°F")], "°C", "-459.67 °F and above; below is refused",
            "BIPM, The International System of Units, 9th edition, 2.3.1 with the exact ratio 5/9",
            new("F = 68 °F", 20, 1e-12, "the definition: 68 °F is 20 °C exactly", () => Temperature.FromFahrenheit(68).Celsius)),
    ];
}
