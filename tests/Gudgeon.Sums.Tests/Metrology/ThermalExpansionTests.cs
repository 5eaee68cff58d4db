using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Metrology;

/// <summary>Recomputed with mpmath; coefficients of aluminium 356 and gauge steel seen in Callister Table B.6 and GUM H.1.3.3.</summary>
public class ThermalExpansionTests
{
    [Fact]
    public void GaugeBlock_fiveKelvinsWarm_isLonger() =>
        Assert.Equal(5.75e-3, (ThermalExpansion.At(Mm(100), C(25), 11.5e-6) - Mm(100)).Millimetres, 1e-9);

    [Fact]
    public void Bore_readWarmWithColdGauge_comesDown() =>
        Assert.Equal(83.981943882066, ThermalExpansion.At20(Mm(84), C(30), 21.5e-6).Millimetres, 1e-9);

    [Fact]
    public void Bore_firstOrderError_isWhatTheReadingIsTooLarge() =>
        Assert.Equal(83.98194, 84 - ThermalExpansion.FirstOrderError(Mm(84), C(30), 21.5e-6, C(20), 11.5e-6).Millimetres, 1e-9);

    [Fact]
    public void Bore_bothWarmAlike_errsByTheDifferenceOfCoefficients() =>
        Assert.Equal(5.95e-3, ThermalExpansion.FirstOrderError(Mm(85), C(27), 21.5e-6, C(27), 11.5e-6).Millimetres, 1e-9);

    [Fact]
    public void Bore_unequalTemperatures_exactAndFirstOrder()
    {
        Assert.Equal(84.996108986025, ThermalExpansion.At20(Mm(85.0123), C(31), 21.5e-6, C(24), 11.5e-6).Millimetres, 1e-9);
        Assert.Equal(84.996105156850, 85.0123 - ThermalExpansion.FirstOrderError(Mm(85.0123), C(31), 21.5e-6, C(24), 11.5e-6).Millimetres, 1e-9);
    }

    // Iron bore 86.000 and piston 85.950, both 20 to 90 °C: 0.050 becomes -0.010727.
    [Fact]
    public void Clearance_warmed_mayTurnNegative() =>
        Assert.Equal(-0.010727, (ThermalExpansion.At(Mm(86), C(90), 11.4e-6) - ThermalExpansion.At(Mm(85.95), C(90), 21.5e-6)).Millimetres, 5e-7);

    [Theory]
    [InlineData(-1e-9)]
    [InlineData(1.1e-4)]
    [InlineData(double.NaN)]
    public void Coefficient_outOfRange_throws(double coefficient) =>
        Assert.StartsWith("A coefficient of expansion lies between 0 and 0.0001 per kelvin.",
            Assert.Throws<ArgumentOutOfRangeException>(() => ThermalExpansion.At20(Mm(84), C(30), coefficient)).Message);

    [Fact]
    public void Coefficient_atTheEdges_isTaken()
    {
        Assert.Equal(84, ThermalExpansion.At20(Mm(84), C(30), 0).Millimetres, 1e-12);
        Assert.Equal(84.084, ThermalExpansion.At(Mm(84), C(30), 1e-4).Millimetres, 1e-9);
    }

    [Fact]
    public void Table_everyMaterial_hasDoubtAndSource()
    {
        Assert.Equal(ExpansionTable.All.Count, ExpansionTable.All.Select(material => material.Id).Distinct().Count());
        Assert.All(ExpansionTable.All, material =>
        {
            Assert.InRange(material.PerKelvin, 5e-6, 30e-6);
            Assert.InRange(material.HalfWidth, 1e-6, 2e-6);
            Assert.NotEmpty(material.Source);
        });
        // Half-width 2e-6 as a rectangle: 1.1547e-6 (GUM H.1.3.3 prints 1.2e-6).
        Assert.Equal(1.1547e-6, ExpansionTable.Find("steel-gauge")!.StandardUncertainty, 5e-11);
        Assert.Equal(21.5e-6, ExpansionTable.Find("aluminium-cast")!.PerKelvin);
        Assert.Null(ExpansionTable.Find("unobtainium"));
    }

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static Temperature C(double value) => Temperature.FromCelsius(value);
}
