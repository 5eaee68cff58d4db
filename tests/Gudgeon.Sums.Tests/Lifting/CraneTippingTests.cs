using CsCheck;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Lifting;

public class CraneTippingTests
{
    private static readonly Wheel[] Wheels = [new("front left", 1600, 450), new("front right", 1600, -450), new("rear right", 0, -350), new("rear left", 0, 350)];

    private static readonly StandingCrane Empty = new(Wheels, Kg(75), new(550, 0, 500), Mass.Zero, new(1750, 0, 1500), Angle.Zero, Angle.Zero);

    // Statics on invented inputs, recomputed: m = 75·(1.60 − 0.55)/(1.75 − 1.60) = 525 kg tips it; with the tip at 1.45 m nothing does.
    [Fact]
    public void Load_that_tips_is_the_reckoned_one()
    {
        var line = CraneTipping.Stands(Empty).Value.Lines.Single(line => line.Line == "front right to front left");
        Assert.Equal(525, line.SpareLoad!.Value.Kilograms, 1e-9);
        Assert.Equal(125, CraneTipping.Stands(Empty with { Load = Kg(400) }).Value.Worst.SpareLoad!.Value.Kilograms, 1e-9);
        Assert.Null(CraneTipping.Stands(Empty with { Tip = new(1450, 0, 1500) }).Value.Lines.Single(other => other.Line == line.Line).SpareLoad);
    }

    [Fact]
    public void Load_a_step_below_the_tipping_one_stands_and_at_it_is_refused()
    {
        Assert.True(CraneTipping.Stands(Empty with { Load = Kg(524.9) }).Ok);
        Says.One("front right to front left: met 772.274 N·m tipping, 772.274 N·m holding; expected more holding than tipping. "
            + "Draw the boom in, take mass off, or set the legs wider; do not hold it down by hand.", CraneTipping.Stands(Empty with { Load = Kg(525.0000001) }));
    }

    // A second way: the resultant of all forces, leaned straight across the line, meets the floor inside that line or beyond it.
    [Fact]
    public void Crane_stands_as_long_as_its_resultant_meets_the_floor_inside() =>
        Gen.Select(Gen.Double[0, 600], Gen.Double[500, 2200], Gen.Double[-200, 200], Gen.Double[0, 15], Gen.Double[0, 5]).Sample((load, x, y, swing, slope) =>
        {
            var crane = Empty with { Load = Kg(load), Tip = new(x, y, 1500), Swing = Angle.FromDegrees(swing), Slope = Angle.FromDegrees(slope) };
            var margin = double.PositiveInfinity;
            for (var i = 0; i < 4; i++)
            {
                var (a, b) = (Wheels[i], Wheels[(i + 1) % 4]);
                var length = double.Hypot(b.X - a.X, b.Y - a.Y);
                var (ox, oy) = ((a.Y - b.Y) / length, (b.X - a.X) / length); // outwards: the wheels go clockwise
                var lean = slope * Math.PI / 180;
                var rope = lean + swing * Math.PI / 180;
                var pull = load / Math.Cos(swing * Math.PI / 180);
                var down = 75 * Math.Cos(lean) + pull * Math.Cos(rope);
                double Moment(double px, double py, double pz, double mass, double angle) =>
                    mass * (Math.Cos(angle) * (px * ox + py * oy) + Math.Sin(angle) * pz);
                var meets = (Moment(550, 0, 500, 75, lean) + Moment(x, y, 1500, pull, rope)) / down;
                margin = Math.Min(margin, a.X * ox + a.Y * oy - meets);
            }

            if (Math.Abs(margin) > 1e-6)
                Assert.Equal(margin > 0, CraneTipping.Stands(crane).Ok);
        });

    [Fact]
    public void Swing_and_slope_only_ever_take_away() =>
        Gen.Select(Gen.Double[0, 300], Gen.Double[0, 10], Gen.Double[0, 3]).Sample((load, swing, slope) =>
        {
            var still = CraneTipping.Stands(Empty with { Load = Kg(load) }).Value.Worst.Factor;
            if (CraneTipping.Stands(Empty with { Load = Kg(load), Swing = Angle.FromDegrees(swing), Slope = Angle.FromDegrees(slope) }).TryGet(out var moved))
                Assert.True(moved.Worst.Factor <= still * (1 + 1e-9));
        });

    [Fact]
    public void Little_to_spare_is_warned_of() => Assert.Equal(
        "front right to front left: met 1.3125 times as much holding as tipping; expected 1.5 or more (common practice, no source). Draw the boom in if there is room.",
        Assert.Single(CraneTipping.Stands(Empty with { Load = Kg(400) }).Value.Warnings).ToString());

    [Fact]
    public void Bad_crane_is_refused_all_at_once() => Says.All(
        CraneTipping.Stands(new([Wheels[0], Wheels[1]], Kg(-75), new(550, 0, -5), Kg(-1), new(1750, 0, 0), Angle.FromDegrees(31), Angle.FromDegrees(-1))),
        "mass of the crane: met -75 kg; expected more than 0 kg. Look at mass of the crane again.",
        "load: met -1 kg; expected 0 kg or more. Look at load again.",
        "swing: met 31°; expected 0 to 30°. Look at swing again.",
        "slope: met -1°; expected 0 to 10°. Look at slope again.",
        "centre of the crane: met 550, 0, -5 mm; expected a place over the floor. Measure it forward, left and up from the foot of the post.",
        "end of the boom: met 1750, 0, 0 mm; expected a place over the floor. Take it from the crane's pose.",
        "wheels: met 2, all in one line; expected three or more round the crane. Give each wheel forward and left of the foot of the post.");

    [Fact]
    public void Crane_that_falls_empty_is_refused() => Says.One(
        "centre of the crane: met 1700, 0, 500 mm; expected a place between the wheels. Measure again: an empty crane stands.", CraneTipping.Stands(Empty with { CraneCentre = new(1700, 0, 500) }));

    private static Mass Kg(double value) => Mass.FromKilograms(value);
}
