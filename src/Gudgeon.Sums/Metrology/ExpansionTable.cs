namespace Gudgeon.Sums.Metrology;

/// <summary>A material's mean coefficient of expansion near room temperature.</summary>
/// <param name="Id">Stable name.</param>
/// <param name="Name">The name to show.</param>
/// <param name="PerKelvin">Mean coefficient, 1/K.</param>
/// <param name="HalfWidth">Half-width of the rectangle that the true value is taken to lie in, 1/K.</param>
/// <param name="Source">Where it comes from, and whether from memory.</param>
public sealed record Expansion(string Id, string Name, double PerKelvin, double HalfWidth, string Source)
{
    /// <summary>Standard uncertainty of the coefficient, 1/K.</summary>
    public double StandardUncertainty => HalfWidth / Math.Sqrt(3);
}

/// <summary>Handbook coefficients. Published values for one material differ by about 1e-6/K, so each carries that much doubt; the part's own data rule.</summary>
public static class ExpansionTable
{
    private const string Handbook = "Callister and Rethwisch, Fundamentals of Materials Science and Engineering, 3rd ed., Table B.6";
    private const string Memory = "handbook value, from memory";

    /// <summary>The table.</summary>
    public static IReadOnlyList<Expansion> All { get; } =
    [
        new("steel", "steel, plain carbon", 11.7e-6, 1e-6, Handbook),
        new("steel-alloy", "steel, chromium-molybdenum", 12.3e-6, 1e-6, Handbook),
        new("steel-gauge", "steel of gauges and setting rings", 11.5e-6, 2e-6, "GUM H.1.3.3"),
        new("stainless", "stainless steel, 18/8", 17.2e-6, 1e-6, Handbook),
        new("iron-grey", "grey cast iron", 11.4e-6, 1e-6, Handbook),
        new("iron-ductile", "ductile cast iron", 11.2e-6, 1e-6, Handbook),
        new("aluminium-cast", "aluminium casting alloy, 7 % silicon", 21.5e-6, 1e-6, Handbook),
        new("aluminium-wrought", "aluminium, wrought", 23.6e-6, 1e-6, Handbook),
        new("aluminium-piston", "aluminium piston alloy, 12 % silicon", 19.4e-6, 1e-6, Memory),
        new("aluminium-high-silicon", "aluminium, 17 % silicon", 18e-6, 1e-6, Memory),
        new("bronze", "bearing bronze", 18.0e-6, 1e-6, Handbook),
        new("magnesium", "magnesium casting alloy", 26e-6, 1e-6, Memory),
    ];

    /// <summary>Finds a material.</summary>
    /// <param name="id">Its stable name.</param>
    /// <returns>The material, or null.</returns>
    public static Expansion? Find(string id) => All.FirstOrDefault(material => material.Id == id);
}
