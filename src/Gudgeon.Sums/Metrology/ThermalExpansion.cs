using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Metrology;

/// <summary>Brings sizes read warm or cold to 20 °C, where sizes are stated.</summary>
public static class ThermalExpansion
{
    /// <summary>Size at 20 °C of a body read at another temperature with a gauge at 20 °C: L₂₀ = L / (1 + α(t − 20)).</summary>
    /// <param name="read">What was read; any length.</param>
    /// <param name="part">Temperature of the part.</param>
    /// <param name="partPerKelvin">Its coefficient of expansion, 1/K, between 0 and 1e-4.</param>
    /// <returns>The size at 20 °C.</returns>
    /// <remarks>Source: ISO 1 for the reference temperature. Holds where the coefficient is constant: within some tens of kelvins of 20 °C.</remarks>
    public static Length At20(Length read, Temperature part, double partPerKelvin) =>
        read / Growth(part, partPerKelvin);

    /// <summary>Size at 20 °C of a body read with a gauge that is warm or cold too: L₂₀ = R(1 + α_g(t_g − 20)) / (1 + α_p(t_p − 20)).</summary>
    /// <param name="read">What the gauge showed.</param>
    /// <param name="part">Temperature of the part.</param>
    /// <param name="partPerKelvin">Its coefficient, 1/K.</param>
    /// <param name="gauge">Temperature of the gauge.</param>
    /// <param name="gaugePerKelvin">The coefficient of the gauge, 1/K.</param>
    /// <returns>The size at 20 °C.</returns>
    /// <remarks>Source: ISO 1 for the reference temperature.</remarks>
    public static Length At20(Length read, Temperature part, double partPerKelvin, Temperature gauge, double gaugePerKelvin) =>
        read * (Growth(gauge, gaugePerKelvin) / Growth(part, partPerKelvin));

    /// <summary>Size at a temperature of a body whose size at 20 °C is known: L = L₂₀(1 + α(t − 20)).</summary>
    /// <param name="at20">Size at 20 °C.</param>
    /// <param name="at">The temperature.</param>
    /// <param name="perKelvin">Coefficient, 1/K.</param>
    /// <returns>The size at the temperature.</returns>
    public static Length At(Length at20, Temperature at, double perKelvin) => at20 * Growth(at, perKelvin);

    /// <summary>How much a reading is too large, to first order: R(α_p(t_p − 20) − α_g(t_g − 20)).</summary>
    /// <inheritdoc cref="At20(Length, Temperature, double, Temperature, double)"/>
    /// <returns>The error; take it off the reading.</returns>
    public static Length FirstOrderError(Length read, Temperature part, double partPerKelvin, Temperature gauge, double gaugePerKelvin) =>
        read * (Strain(part, partPerKelvin) - Strain(gauge, gaugePerKelvin));

    private static double Growth(Temperature at, double perKelvin) => 1 + Strain(at, perKelvin);

    private static double Strain(Temperature at, double perKelvin) => perKelvin is >= 0 and <= 1e-4
        ? perKelvin * (at - Temperature.Reference).Kelvins
        : throw new ArgumentOutOfRangeException(nameof(perKelvin), perKelvin, "A coefficient of expansion lies between 0 and 0.0001 per kelvin.");
}
