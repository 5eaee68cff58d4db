using CsCheck;
using Gudgeon.Sums.Fluids;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Fluids;

public class LeakDownTests
{
    // Isentropic air on invented inputs, recomputed: supply 80 psi, ambient 14.696 psi absolute, orifice 0.040 in.
    [Theory]
    [InlineData(78, 0.303141, 0.0220)]
    [InlineData(75, 0.486662, 0.0279)]
    [InlineData(70, 0.706690, 0.0336)]
    [InlineData(65, 0.890020, 0.0377)]
    [InlineData(60, 1.058556, 0.0412)]
    [InlineData(40, 1.722015, 0.0525)]
    public void Leak_is_the_reckoned_one(double psi, double ratio, double inches)
    {
        var leak = At(psi).Value;
        Assert.Equal(ratio, leak.AreaRatio, 1e-5);
        Assert.Equal(inches, leak.EquivalentDiameter.Inches, 5e-5);
        Assert.Equal((80 - psi) / 0.8, leak.LossPercent, 1e-9);
    }

    // FAA AC 43.13-1B change 1 (2001), 8-14, quoted in an FAA safety notice (seen): the edge is a bore of 5.00 in.
    [Theory]
    [InlineData(4.99, 0.040)]
    [InlineData(5.00, 0.060)]
    public void Orifice_changes_at_five_inches(double bore, double orifice) => Assert.Equal(orifice, LeakDown.OrificeFor(Length.FromInches(bore)).Value.Inches, 1e-12);

    [Fact]
    public void Lower_cylinder_pressure_is_a_larger_leak() => Gen.Select(Gen.Double[1, 79], Gen.Double[0.01, 0.99]).Sample((psi, part) =>
        Assert.True(At(psi * part).Value.AreaRatio > At(psi).Value.AreaRatio));

    [Fact]
    public void Cylinder_at_supply_pressure_is_refused() => Says.One(
        "cylinder pressure: met 5.51581 bar; expected more than 0, less than the supply's 5.51581 bar. Read both gauges with the flow steady.", At(80));

    [Fact]
    public void Bad_pressures_are_refused_all_at_once() => Says.All(
        LeakDown.FromReading(Pressure.FromBar(13), Pressure.FromBar(-1), Pressure.FromBar(0), Length.Zero),
        "supply pressure: met 13 bar; expected 0.5 to 12 bar. Look at supply pressure again.",
        "ambient pressure: met 0 bar; expected 0.5 to 1.1 bar. Look at ambient pressure again.",
        "orifice: met 0 mm; expected more than 0 mm. Look at orifice again.",
        "cylinder pressure: met -1 bar; expected more than 0, less than the supply's 13 bar. Read both gauges with the flow steady.");

    private static Outcome<LeakSize> At(double psi) => LeakDown.FromReading(
        Pressure.FromPoundsPerSquareInch(80), Pressure.FromPoundsPerSquareInch(psi), Pressure.FromPoundsPerSquareInch(14.696), Length.FromInches(0.040));
}
