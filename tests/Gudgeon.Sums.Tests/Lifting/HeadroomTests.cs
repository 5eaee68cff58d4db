using CsCheck;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Lifting;

public class HeadroomTests
{
    // Invented engine: hook 900 over the datum, sump to −250, gearbox case to −150, block to −100; inlet to 500, cam cover to 360.
    private static readonly HeadroomCase Lift = new(Mm(2100), Mm(150), Mm(2250), Mm(850), Mm(180), Mm(150), 900, Mm(20), Mm(30),
        [new("block", 300, -100, false, 0), new("sump", -80, -250, true, 40), new("gearbox", 100, -150, true, 90), new("inlet manifold", 500, 250, true, 60), new("cam cover", 360, 280, true, 20)]);

    // By hand: hook to lowest 900 + 250 + 20 = 1170. Sill 2100 − 1170 − 850 − 30 = 50. Roof 2250 − (850 + 30 + 1170) − 150 − 30 = 20. Hook 900 − 500 − 30 = 370. Legs 180 − 150 − 30 = 0.
    [Fact]
    public void Every_point_is_as_by_hand_and_the_tightest_comes_first()
    {
        var answer = Headroom.Spare(Lift).Value;
        Assert.Equal(["crane legs under the car 0", "under the roof 20", "over the sill 50", "hook over the engine 370"],
            answer.Points.Select(point => $"{point.Name} {Math.Round(point.Spare.Millimetres, 6)}"));
        Assert.True(answer.Passes);
        Assert.False(Headroom.Spare(Lift with { CraneLegs = Mm(151) }).Value.Passes);
    }

    // By hand: sump off brings 100 at the bottom, then the gearbox 50, then the block stays; at the top the inlet manifold 140, then the cam cover 60.
    [Fact]
    public void Gains_are_as_by_hand()
    {
        var answer = Headroom.Spare(Lift).Value;
        Assert.Equal(["sump 100 in 40", "gearbox 50 in 90"], Gains(answer, "under the roof"));
        Assert.Equal(["inlet manifold 140 in 60", "cam cover 60 in 20"], Gains(answer, "hook over the engine"));
        Assert.Empty(Gains(answer, "crane legs under the car"));
    }

    // Taking the first part off must bring just what was promised.
    [Fact]
    public void Promised_gain_is_what_taking_off_brings() =>
        Gen.Select(Gen.Int[-300, 0], Gen.Int[1, 500], Gen.Bool).Array[2, 6].Sample(raw =>
        {
            var items = raw.Select((r, i) => new HeightItem($"{i}", r.Item2, r.Item1, r.Item3 || i == 0, 10)).ToList();
            var before = Headroom.Spare(Lift with { Items = items }).Value.Points.Single(point => point.Name == "over the sill");
            if (before.Gains.Count == 0)
                return;
            var after = Headroom.Spare(Lift with { Items = [.. items.Where(item => item.Name != before.Gains[0].Item)] }).Value.Points.Single(point => point.Name == "over the sill");
            Assert.Equal((before.Spare + before.Gains[0].Gain).Millimetres, after.Spare.Millimetres, 1e-9);
        });

    [Fact]
    public void Bad_heights_are_refused_all_at_once() => Says.All(
        Headroom.Spare(Lift with { Roof = Length.Zero, Sill = Mm(-1), HookZ = double.NaN, Items = [new("sump", -250, -80, true, -5)] }),
        "roof: met 0 mm; expected more than 0 mm. Look at roof again.",
        "sill: met -1 mm; expected 0 mm or more. Look at sill again.",
        "hook over the engine's datum: met NaN mm; expected -100000 to 100000 mm. Look at hook over the engine's datum again.",
        "sump: met top -250 mm, bottom -80 mm; expected the top over the bottom. Measure both from the engine's datum, up counts positive.",
        "minutes for sump: met -5 min; expected 0 min or more. Look at minutes for sump again.");

    [Fact]
    public void Lift_without_parts_is_refused() => Says.One(
        "parts: met none; expected one or more. Give the engine's highest and lowest parts.", Headroom.Spare(Lift with { Items = [] }));

    private static IEnumerable<string> Gains(HeadroomAnswer answer, string point) =>
        answer.Points.Single(p => p.Name == point).Gains.Select(gain => $"{gain.Item} {gain.Gain.Millimetres} in {gain.Minutes}");

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
