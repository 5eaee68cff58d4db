using CsCheck;
using Gudgeon.Sums.Motion;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Motion;

public class CrankSliderTests
{
    // Khurmi and Gupta, Theory of Machines (2005), ex. 15.5 and 15.4 (transcriptions; two-term 6.8868, 124.912 and 4.19, 85.36). Exact values recomputed with numpy 1.24.2.
    [Theory]
    [InlineData(150, 600, 60, 450, 6.905360, 124.949344, 6.8868, 124.912)]
    [InlineData(300, 1500, 40, 180, 4.196434, 85.598856, 4.19, 85.36)]
    public void Speed_and_acceleration_are_exact_and_near_the_two_term_book_values(
        double r, double l, double theta, double rpm, double speed, double acceleration, double bookSpeed, double bookAcceleration)
    {
        var gear = Gear(r, l, 0);
        Assert.Equal(speed, gear.SpeedMetresPerSecond(Deg(theta), rpm), 1e-6);
        Assert.Equal(acceleration, gear.AccelerationMetresPerSecondSquared(Deg(theta), rpm), 1e-5);
        Assert.Equal(bookSpeed, gear.SpeedMetresPerSecond(Deg(theta), rpm), 0.003 * bookSpeed);
        Assert.Equal(bookAcceleration, gear.AccelerationMetresPerSecondSquared(Deg(theta), rpm), 0.003 * bookAcceleration);
    }

    // Khurmi ex. 15.3 and 15.4: fastest at 74.5289°, 6.561732 m/s; at 79.1001°, 5.767020 m/s (exact, recomputed; two-term 74.955° and 79.27°).
    [Theory]
    [InlineData(300, 1000, 200, 74.5289, 6.561732)]
    [InlineData(300, 1500, 180, 79.1001, 5.767020)]
    public void Piston_is_fastest_where_it_does_not_accelerate(double r, double l, double rpm, double theta, double speed)
    {
        var gear = Gear(r, l, 0);
        Assert.Equal(0, gear.AccelerationMetresPerSecondSquared(Deg(theta), rpm), 1e-3);
        Assert.Equal(speed, gear.SpeedMetresPerSecond(Deg(theta), rpm), 1e-6);
    }

    // Khurmi ex. 15.9: 10 mm down at 33.1229° (exact, recomputed; the book has 33°). Invented: 45/150 at 20°. Recomputed.
    [Theory]
    [InlineData(50, 200, 10, 33.1229, 1e-4)]
    [InlineData(45, 150, 3.505521, 20, 1e-5)]
    public void Distance_and_angle_go_both_ways(double r, double l, double down, double theta, double tolerance)
    {
        var gear = Gear(r, l, 0);
        var (before, after) = gear.AnglesAt(Mm(down)).Value;
        Assert.Equal(theta, after.Degrees, tolerance);
        Assert.Equal(-theta, before.Degrees, tolerance);
        Assert.Equal(down, gear.Down(Deg(theta)).Millimetres, 1e-4);
    }

    // Invented inputs, recomputed with numpy 1.24.2.
    [Theory]
    [InlineData(10, 2.939534, 185.465024, 90.220696)]
    [InlineData(1, 0.293826, 180.545682, 90.002198)]
    public void Offset_cylinder_has_its_own_dead_centres(double e, double top, double bottom, double stroke)
    {
        var gear = Gear(45, 150, e);
        Assert.Equal(top, gear.Top.Degrees, 1e-6);
        Assert.Equal(bottom, gear.Bottom.Degrees, 1e-6);
        Assert.Equal(stroke, gear.Stroke.Millimetres, 1e-6);
    }

    [Fact]
    public void Offset_cylinder_differs_on_its_two_sides()
    {
        var gear = Gear(45, 150, 1);
        Assert.Equal(143.40153, gear.PinHeight(Deg(90)).Millimetres, 1e-5);
        Assert.Equal(142.77255, gear.PinHeight(Deg(270)).Millimetres, 1e-5);
        Assert.Equal(194.743421, Gear(45, 150, 10).PinHeight(Gear(45, 150, 10).Top).Millimetres, 1e-6);
    }

    // Stroke 86, rod 143, inlet closes 60° after bottom: 69.433893 mm of stroke left (recomputed; inputs invented).
    [Fact]
    public void Stroke_left_when_the_inlet_closes() => Assert.Equal(69.433893, Gear(43, 143, 0).Down(Deg(240)).Millimetres, 1e-6);

    // Series of the exact motion at r/l 0.25: orders 1, 2, 4, 6 over r·ω² are 1, 0.25402504, −0.00409811, 0.00007438 (FFT, recomputed with numpy 1.24.2).
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 0.25402504)]
    [InlineData(4, -0.00409811)]
    [InlineData(6, 0.00007438)]
    public void Acceleration_has_the_known_orders(int order, double part)
    {
        var gear = Gear(100, 400, 0);
        var rpm = 60 / (2 * Math.PI) * Math.Sqrt(10); // r·ω² = 1 m/s²
        var sum = Enumerable.Range(0, 720).Sum(i => gear.AccelerationMetresPerSecondSquared(Deg(i / 2.0), rpm) * Math.Cos(order * i / 2.0 * Math.PI / 180));
        Assert.Equal(part, sum / 360, 1e-7);
    }

    // Kates, Diesel and High-Compression Gas Engines, ch. 4: 9 in × 1600 strokes/min is 1200 ft/min = 6.096 m/s (transcription).
    [Fact]
    public void Mean_speed_is_the_textbooks() => Assert.Equal(6.096, CrankSlider.MeanSpeedMetresPerSecond(Length.FromInches(9), 800).Value, 1e-9);

    // A second method over the range: slopes by small differences.
    [Fact]
    public void Speed_and_acceleration_are_the_slopes_of_the_way() =>
        Gen.Select(Gen.Double[20, 80], Gen.Double[2.5, 5], Gen.Double[-0.1, 0.1], Gen.Double[0, 360]).Sample((r, ratio, offset, theta) =>
        {
            var gear = Gear(r, r * ratio, r * offset);
            const double step = 0.01;
            var omega = 1000 * 2 * Math.PI / 60;
            var dt = step * Math.PI / 180 / omega;
            double Way(double angle) => gear.Down(Deg(angle)).Metres;
            Assert.Equal((Way(theta + step) - Way(theta - step)) / (2 * dt), gear.SpeedMetresPerSecond(Deg(theta), 1000), 1e-4);
            Assert.Equal((Way(theta + step) - 2 * Way(theta) + Way(theta - step)) / (dt * dt), gear.AccelerationMetresPerSecondSquared(Deg(theta), 1000), 0.5);
        });

    [Fact]
    public void Angles_give_their_distance_back() =>
        Gen.Select(Gen.Double[20, 80], Gen.Double[2.5, 5], Gen.Double[-0.3, 0.3], Gen.Double[0.001, 0.999]).Sample((r, ratio, offset, part) =>
        {
            var gear = Gear(r, r * ratio, r * offset);
            var down = gear.Stroke * part;
            var (before, after) = gear.AnglesAt(down).Value;
            Assert.Equal(down.Millimetres, gear.Down(before).Millimetres, 1e-6 * r);
            Assert.Equal(down.Millimetres, gear.Down(after).Millimetres, 1e-6 * r);
            Assert.True(before < gear.Top && gear.Top < after);
        });

    [Fact]
    public void Rod_shorter_than_the_throw_is_refused() => Says.One(
        "rod: met 45 mm; expected more than throw and offset together, 46 mm. Measure the rod between its centres, and take half the stroke as throw.",
        CrankSlider.Of(Mm(45), Mm(45), Mm(-1)));

    [Fact]
    public void Distance_beyond_the_stroke_is_refused() => Says.One(
        "distance down: met 91 mm; expected 0 to 90 mm. Look at distance down again.", Gear(45, 150, 0).AnglesAt(Mm(91)));

    private static CrankSlider Gear(double r, double l, double e) => CrankSlider.Of(Mm(r), Mm(l), Mm(e)).Value;

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static Angle Deg(double value) => Angle.FromDegrees(value);
}
