using CsCheck;
using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Fasteners;

public class WrenchTests
{
    private static readonly WrenchRange Large = new("large wrench", Nm(40), Nm(210));

    // 30 lbf·ft, 12 and 6: a torque-tool guide; 50, 16 and 2: a tool's manual (both seen). The angles: recomputed; that 90° needs no correction: seen.
    [Theory]
    [InlineData(30, 12, 6, 0, 20, 1e-9)]
    [InlineData(50, 16, 2, 0, 44.44, 0.01)]
    [InlineData(100, 300, 50, 0, 85.714, 0.001)]
    [InlineData(100, 300, 50, 30, 87.387, 0.001)]
    [InlineData(100, 300, 50, 45, 89.457, 0.001)]
    [InlineData(100, 300, 50, 90, 100, 1e-9)]
    [InlineData(100, 300, 50, 135, 113.360, 0.001)]
    [InlineData(100, 300, 50, 180, 120, 1e-9)]
    public void Setting_with_an_extension_is_the_published_one(double torque, double lever, double extension, double angle, double setting, double tolerance) =>
        Assert.Equal(setting, Wrench.SettingWithExtension(Nm(torque), Mm(lever), Mm(extension), Angle.FromDegrees(angle)).Value.NewtonMetres, tolerance);

    // US Army TM 9-254, paragraph d, figure 4-5: 60 lbf·in at 12 in with a 2 in adapter gives 70. Seen.
    [Fact]
    public void Torque_through_an_adapter_is_the_manuals() =>
        Assert.Equal(70, Wrench.TorqueThroughExtension(Torque.FromPoundForceInches(60), Length.FromInches(12), Length.FromInches(2), Angle.Zero).Value.PoundForceInches, 1e-9);

    // The same manual's line for angled adapters prints the lever as a product; the sum is meant: 12 in and 2 in at 60° make 13 in, not 12·2·cos 60°.
    [Fact]
    public void Angled_lever_is_a_sum_not_a_product() =>
        Assert.Equal(65, Wrench.TorqueThroughExtension(Nm(60), Mm(12), Mm(2), Angle.FromDegrees(60)).Value.NewtonMetres, 1e-9);

    [Fact]
    public void Torque_through_an_extension_undoes_the_setting() =>
        Gen.Select(Gen.Double[1, 500], Gen.Double[150, 1000], Gen.Double[0, 74], Gen.Double[0, 180]).Sample((torque, lever, extension, angle) =>
        {
            var setting = Wrench.SettingWithExtension(Nm(torque), Mm(lever), Mm(extension), Angle.FromDegrees(angle)).Value;
            Assert.Equal(torque, Wrench.TorqueThroughExtension(setting, Mm(lever), Mm(extension), Angle.FromDegrees(angle)).Value.NewtonMetres, 1e-9 * torque);
        });

    [Fact]
    public void Extension_folded_back_too_far_is_refused() => Says.One(
        "extension folded back: met 100 mm of lever left; expected 150 mm or more. Turn the extension outwards or take another tool.",
        Wrench.SettingWithExtension(Nm(10), Mm(300), Mm(200), Angle.FromDegrees(180)));

    [Fact]
    public void Extension_at_an_odd_angle_is_refused() => Says.One(
        "angle of the extension: met -10°; expected 0 to 180°. Look at angle of the extension again.",
        Wrench.SettingWithExtension(Nm(10), Mm(300), Mm(50), Angle.FromDegrees(-10)));

    // A fifth of 210 is 42: at it, one step below it; the top of the scale, one step above it.
    [Theory]
    [InlineData(42)]
    [InlineData(210)]
    public void Wrench_at_the_edge_of_its_range_is_at_home(double setting) => Assert.Equal(setting, Wrench.Question(Large, Nm(setting)).Value.NewtonMetres);

    [Theory]
    [InlineData(41.9, "large wrench: met 41.9 N·m; expected 42 N·m or more. Take a smaller wrench.")]
    [InlineData(210.1, "large wrench: met 210.1 N·m; expected 210 N·m at most. Take a larger wrench.")]
    public void Wrench_out_of_its_range_is_questioned(double setting, string message) => Says.One(message, Wrench.Question(Large, Nm(setting)));

    [Fact]
    public void Scale_above_a_fifth_rules_where_it_starts_higher() => Says.One(
        "click wrench: met 30 N·m; expected 40 N·m or more. Take a smaller wrench.", Wrench.Question(new("click wrench", Nm(40), Nm(100)), Nm(30)));

    [Fact]
    public void Scale_upside_down_is_refused() => Assert.Equal(
        "scale: met 210 to 40 N·m; expected lowest before highest. Read the scale again.", Wrench.Question(new("w", Nm(210), Nm(40)), Nm(300)).Refusals[0].ToString());

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static Torque Nm(double value) => Torque.FromNewtonMetres(value);
}
