using Gudgeon.Sums.Quantities;
using Gudgeon.Sums.Springs;

namespace Gudgeon.Sums.Tests.Springs;

/// <summary>What is refused and warned of, word for word, at the edge and one step either side. Springs are invented.</summary>
public class ValveSpringMessageTests
{
    private static readonly ValveSpring spring = new(Length.FromMillimetres(4), Length.FromMillimetres(28), 6, 8, Length.FromMillimetres(50), true, 80_000);

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static Outcome<SpringAtWork> Work(ValveSpring of, double fitted = 45, double lift = 5) => ValveSprings.AtWork(of, Mm(fitted), Mm(lift));

    [Fact]
    public void Coils_and_diameter_out_of_range_are_told()
    {
        Says.One("total coils: met 5; expected 6 or more, 110 at most. Count the coils end to end.", Work(spring with { TotalCoils = 5 }));
        Says.One("total coils: met 111; expected 6 or more, 110 at most. Count the coils end to end.", Work(spring with { TotalCoils = 111 }));
        Says.One("mean diameter: met 9.9 mm on 4 mm wire; expected 2.5 to 50 wires. Measure the outside and take one wire off.", Work(spring with { MeanDiameter = Mm(9.9) }));
        Says.One("mean diameter: met 201 mm on 4 mm wire; expected 2.5 to 50 wires. Measure the outside and take one wire off.", Work(spring with { MeanDiameter = Mm(201) }));
    }

    [Fact]
    public void Steel_out_of_range_is_told()
    {
        Says.One("shear modulus: met 999 MPa; expected 1000 to 200000 MPa. Look at shear modulus again.", Work(spring with { ShearModulusMpa = 999 }));
        Says.One("density: met 999 kg/m³; expected 1000 to 20000 kg/m³. Look at density again.", Work(spring with { DensityKgPerM3 = 999 }));
        Says.One("active coils: met 0.9; expected 1 to 100. Look at active coils again.", Work(spring with { ActiveCoils = 0.9 }));
    }

    [Fact]
    public void Coils_and_diameter_on_the_edge_are_taken()
    {
        Assert.True(Work(spring with { TotalCoils = 6 }).Ok);
        Assert.True(Work(spring with { TotalCoils = 110, FreeLength = Mm(600) }, 550).Ok);
        Assert.True(Work(spring with { MeanDiameter = spring.Wire * 2.5 }).Ok);
        Assert.True(Work(spring with { MeanDiameter = spring.Wire * 50 }).Ok);
    }

    [Fact]
    public void Fitted_length_and_bind_are_told()
    {
        Says.One("fitted length: met 50 mm; expected less than the free length, 50 mm. Measure from seat to retainer with the valve shut.", Work(spring, 50));
        Says.One("length at full lift: met 32 mm; expected more than solid, 32 mm. The coils bind: take a spring of fewer coils or thinner wire, or fit it longer.", Work(spring, 45, 13));
        Says.One("length at full lift: met 31.9 mm; expected more than solid, 32 mm. The coils bind: take a spring of fewer coils or thinner wire, or fit it longer.", Work(spring, 45, 13.1));
    }

    // 0.8 mm: common practice, no source. Solid is 8 coils of 4 mm, 32 mm.
    [Theory]
    [InlineData(12.25, "coil bind: met 0.75 mm left at full lift; expected 0.8 mm or more (common practice, no source). Measure fitted length and lift again, then the spring.")]
    [InlineData(12.2001, "coil bind: met 0.7999 mm left at full lift; expected 0.8 mm or more (common practice, no source). Measure fitted length and lift again, then the spring.")]
    [InlineData(12.2, "")]
    [InlineData(12.0, "")]
    public void Bind_margin_is_warned_of(double lift, string message) =>
        Assert.Equal(message, string.Join(' ', Work(spring, 45, lift).Value.Warnings));

    [Theory]
    [InlineData(250, 38, 600, 38)]
    [InlineData(250, 38, 600, 39)]
    [InlineData(250, 38, 250, 28)]
    [InlineData(250, 38, 240, 28)]
    public void Loads_in_the_wrong_order_are_told(double first, double atFirst, double second, double atSecond) =>
        Says.One(
            FormattableString.Invariant($"second reading: met {second} N at {atSecond} mm; expected more than {first} N at less than {atFirst} mm. Read the longer length first, then the shorter."),
            ValveSprings.RateFromLoads(Force.FromNewtons(first), Mm(atFirst), Force.FromNewtons(second), Mm(atSecond), Force.FromNewtons(1)));

    [Fact]
    public void Force_that_is_none_is_told_by_its_name()
    {
        var refusals = ValveSprings.RateFromLoads(Force.FromNewtons(0), Mm(0), Force.FromNewtons(0), Mm(0), Force.FromNewtons(-1)).Refusals;
        Assert.Equal(["first force", "first length", "second force", "second length", "uncertainty of a force"], refusals.Select(r => r.Where).Take(5));
        Assert.Equal(["wire", "mean diameter", "free length", "active coils", "shear modulus", "density"], Work(new ValveSpring(Mm(0), Mm(0), 0, 0, Mm(0), true, 0, 0)).Refusals.Select(r => r.Where).Take(6));
        Assert.Contains(Work(spring with { FreeLength = Mm(50) }, 0, -1).Refusals, r => r.Where == "fitted length");
        Assert.Contains(Work(spring with { FreeLength = Mm(50) }, 40, -1).Refusals, r => r.Where == "lift");
    }
}
