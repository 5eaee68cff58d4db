using CsCheck;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Lifting;

public class CraneTests
{
    // Invented crane: pivot 1.5 m up, ram foot 0.9 m up under it, pin 0.4 m along, boom 1.2 m.
    private static readonly CraneGeometry Crane = new(Length.Zero, Mm(1500), Length.Zero, Mm(900), Mm(400), Mm(550), Mm(950), Mm(120),
        [new(Mm(900), Kg(1000)), new(Mm(1050), Kg(857)), new(Mm(1200), Kg(750))]);

    // Statics on invented inputs, recomputed: 200 kg at 1.2 m: 7071.68, 8549.24, 5849.82 N in the ram at 0, 30 and −20°.
    [Theory]
    [InlineData(0, 7071.68)]
    [InlineData(30, 8549.24)]
    [InlineData(-20, 5849.82)]
    public void Ram_force_is_the_reckoned_one(double boom, double newtons)
    {
        var ram = Mm(Math.Sqrt(520_000 - 480_000 * Math.Cos((90 + boom) * Math.PI / 180)));
        Assert.Equal(boom, CraneBoom.PoseAt(Crane, 2, ram).Value.BoomAngle.Degrees, 1e-6);
        Assert.Equal(newtons, CraneBoom.RamForce(Crane, 2, ram, Kg(200)).Value.Newtons, 0.01);
    }

    [Fact]
    public void Hook_of_a_level_boom_is_where_it_is_by_hand()
    {
        var pose = CraneBoom.PoseAt(Crane, 0, Mm(Math.Sqrt(520_000))).Value;
        Assert.Equal(900, pose.Reach.Millimetres, 1e-9);
        Assert.Equal(1380, pose.HookHeight.Millimetres, 1e-9);
        Assert.Equal(1500, pose.TipHeight.Millimetres, 1e-9);
    }

    // A second way: the pin of the ram, put where the boom angle says, is a ram's length from the ram's foot.
    [Fact]
    public void Every_pose_closes_the_triangle_of_the_ram() =>
        Gen.Select(Gen.Double[-300, 300], Gen.Double[300, 1200], Gen.Double[200, 500], Gen.Double[0.05, 0.95]).Sample((forward, foot, pin, part) =>
        {
            var side = double.Hypot(forward, foot - 1500);
            var (low, high) = (Math.Abs(side - pin) + 1, side + pin - 1);
            var crane = Crane with { RamFootForward = Mm(forward), RamFootHeight = Mm(foot), RamPinAlong = Mm(pin), RamShortest = Mm(low), RamLongest = Mm(high) };
            var ram = low + part * (high - low);
            var angle = CraneBoom.PoseAt(crane, 1, Mm(ram)).Value.BoomAngle.Radians;
            Assert.Equal(ram, double.Hypot(pin * Math.Cos(angle) - forward, 1500 + pin * Math.Sin(angle) - foot), 1e-6);
        });

    [Fact]
    public void Stroke_goes_from_closed_to_open_and_up()
    {
        var stroke = CraneBoom.Stroke(Crane, 1, 9).Value;
        Assert.Equal((550, 950), (Math.Round(stroke[0].Ram.Millimetres, 6), Math.Round(stroke[^1].Ram.Millimetres, 6)));
        Assert.All(stroke.Zip(stroke.Skip(1)), step => Assert.True(step.Second.HookHeight > step.First.HookHeight));
    }

    // The plate of the invented crane follows moment = constant: 1000 kg at 0.90 m is 857.14 at 1.05 and 750.00 at 1.20 (recomputed).
    [Fact]
    public void Plate_follows_the_moment() => Assert.All(Crane.Holes, hole => Assert.InRange(hole.Rating.Kilograms, 0.999 * 900_000 / hole.BoomLength.Millimetres, 900_000 / hole.BoomLength.Millimetres));

    [Fact]
    public void Load_on_the_plate_passes_and_a_kilogram_more_is_refused()
    {
        Assert.Equal(1, CraneBoom.OnPlate(Crane, 2, Kg(750)).Value);
        Says.One("boom: met 751 kg at hole 3; expected 750 kg at most by the plate. Draw the boom in to hole 2.", CraneBoom.OnPlate(Crane, 2, Kg(751)));
        Says.One("boom: met 1001 kg at hole 3; expected 750 kg at most by the plate. Take a larger crane, or parts off the engine.", CraneBoom.OnPlate(Crane, 2, Kg(1001)));
    }

    [Fact]
    public void Crane_that_cannot_be_is_refused_all_at_once() => Says.All(
        CraneBoom.PoseAt(Crane with { PivotHeight = Mm(-1), RamLongest = Mm(500), Holes = [new(Mm(900), Kg(500)), new(Mm(800), Kg(600))] }, 2, Mm(600)),
        "height of the pivot: met -1 mm; expected more than 0 mm. Look at height of the pivot again.",
        "open ram: met 500 mm; expected more than closed, 550 mm. Measure the ram between its pins, closed and open.",
        "hole of the boom: met 3; expected 1 to 2. Count the holes from the post.",
        "hole 2: met 800 mm for 600 kg; expected a longer boom for less mass than the hole before. Read the plate again.",
        "ram: met 600 mm; expected 550 to 500 mm. Look at ram again.");

    [Fact]
    public void Ram_that_cannot_close_its_triangle_is_refused() => Says.One(
        "ram: met 550 to 1001 mm; expected between 200 and 1000 mm, or it cannot close its triangle. Measure foot, pin and pivot again.",
        CraneBoom.PoseAt(Crane with { RamLongest = Mm(1001) }, 0, Mm(600)));

    [Fact]
    public void Ram_beyond_its_stroke_is_refused() => Says.One("ram: met 951 mm; expected 550 to 950 mm. Look at ram again.", CraneBoom.PoseAt(Crane, 0, Mm(951)));

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static Mass Kg(double value) => Mass.FromKilograms(value);
}
