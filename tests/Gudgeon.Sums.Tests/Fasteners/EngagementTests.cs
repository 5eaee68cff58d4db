using CsCheck;
using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Fasteners;

public class EngagementTests
{
    private static readonly ThreadLimits M10 = new(Mm(9.732), Mm(8.862), Mm(8.676), Mm(9.206));

    // FED-STD-H28/2B (1991) by way of Machinery's Handbook 24: formula seen; Ds min from memory, Kn and En max seen in a B1.13M reproduction; recomputed.
    [Fact]
    public void Shear_areas_of_an_m10_are_the_reckoned_ones()
    {
        var (bolt, nut) = Engagement.ShearAreas(Mm(10), Mm(1.5), M10).Value;
        Assert.Equal(155.80, bolt, 0.01);
        Assert.Equal(214.77, nut, 0.01);
    }

    // Same formula; limits of 1/2-13 UNC from memory; recomputed: 0.3643 in.
    [Fact]
    public void No_strip_length_of_a_half_inch_is_the_reckoned_one() => Assert.Equal(0.3643, Engagement.NoStripLength(
        0.1419 * 645.16, Length.FromInches(1) / 13, new(In(0.4876), In(0.4435), In(0.434), In(0.4565)), 800, 800).Value.Inches, 1e-4);

    [Fact]
    public void Weak_nut_needs_more_engagement_and_strips_first()
    {
        var strong = Engagement.NoStripLength(58, Mm(1.5), M10, 800, 800).Value;
        var weak = Engagement.NoStripLength(58, Mm(1.5), M10, 800, 200).Value;
        // By hand: J = 155.80·800/(214.77·200) = 2.9017.
        Assert.Equal(2.9017, weak / strong, 0.001);
        Assert.True(Engagement.StrippingLoad(Mm(10), Mm(1.5), M10, 800, 200).Value.NutStripsFirst);
        Assert.False(Engagement.StrippingLoad(Mm(10), Mm(1.5), M10, 800, 800).Value.NutStripsFirst);
    }

    // The whole point of the length: at it, the thread holds at least the bolt's own breaking load.
    [Fact]
    public void At_the_no_strip_length_the_bolt_breaks_first() =>
        Gen.Select(Gen.Double[400, 1300], Gen.Double[100, 1300]).Sample((bolt, nut) =>
        {
            var length = Engagement.NoStripLength(58, Mm(1.5), M10, bolt, nut).Value;
            Assert.True(Engagement.StrippingLoad(length, Mm(1.5), M10, bolt, nut).Value.Load.Newtons >= 58 * bolt * (1 - 1e-9));
        });

    // Common practice, no source.
    [Theory]
    [InlineData(HoleMaterial.Steel, 10)]
    [InlineData(HoleMaterial.CastIron, 13)]
    [InlineData(HoleMaterial.LightAlloy, 20)]
    public void Usual_engagement_follows_the_material(HoleMaterial material, double mm) => Assert.Equal(mm, Engagement.UsualLeast(Mm(10), material).Value.Millimetres, 1e-12);

    [Fact]
    public void Bore_too_wide_is_refused() => Says.All(
        Engagement.ShearAreas(Mm(10), Mm(1.5), new(Mm(9.732), Mm(8.862), Mm(9), Mm(9.8))),
        "nut minor diameter: met 9 mm; expected less than the bolt's pitch diameter 8.862 mm. Measure again: a bore this wide holds no thread.",
        "nut pitch diameter: met 9.8 mm; expected less than the bolt's major diameter 9.732 mm. Measure again: a thread this wide holds nothing.");

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static Length In(double value) => Length.FromInches(value);
}
