using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests;

public class WorkingsTests
{
    private const string Deferral = "Defer to local codes and licensed practice.";

    [Fact]
    public void Working_of_a_lift_carries_formula_source_figures_and_caution()
    {
        var load = new HangingLoad(Mass.FromKilograms(150), Mass.FromKilograms(10), new(0, 0, -100), new(20, 10, 20));
        Leg[] legs = [new("front", new(300, 0, 0), Length.FromMillimetres(700)), new("rear", new(-300, 0, 0), Length.FromMillimetres(700))];
        var hanging = Slinging.Hang(load, legs).Value;
        var workings = LiftWorkings.Legs(load, legs, hanging);
        Assert.Equal(2, workings.Count);
        Assert.Equal("largest pull of front", workings[0].What);
        Assert.Equal(160, workings[0].Inputs[0].Value);
        Assert.Equal(hanging.Legs[0].Most.Newtons, workings[0].Result.Value);
        Assert.EndsWith(Deferral, workings[0].Caution);
        Assert.Contains("ΣT·u = W", workings[0].Formula);
    }

    [Fact]
    public void Working_of_gear_crane_and_stand_carries_its_caution()
    {
        var gear = Gear.Use([new("hook", Force.FromNewtons(4903.325), Outcome.Of(Mass.FromKilograms(1000)))]).Value;
        Assert.Equal(0.5, Assert.Single(LiftWorkings.Pieces(gear)).Result.Value, 1e-12);
        Assert.EndsWith(Deferral, LiftWorkings.Pieces(gear)[0].Caution);

        var crane = new StandingCrane([new("fl", 1600, 450), new("fr", 1600, -450), new("rr", 0, -350), new("rl", 0, 350)], Mass.FromKilograms(75), new(550, 0, 500),
            Mass.FromKilograms(300), new(1750, 0, 1500), Angle.Zero, Angle.Zero);
        var lines = LiftWorkings.WheelLines(crane, CraneTipping.Stands(crane).Value);
        Assert.Equal(4, lines.Count);
        Assert.Equal(525.0 / 300, lines[0].Result.Value, 1e-9); // by hand: 525 kg would tip it
        Assert.EndsWith(Deferral, lines[0].Caution);

        var engine = new MountedEngine(new(Mass.FromKilograms(180), Mass.Zero, new(280, 0, 18), default), Length.FromMillimetres(150),
            [new("1", 130, 100), new("2", -130, 100), new("3", 130, -100), new("4", -130, -100)], ThreadTable.Find("M12").Value,
            PropertyClass.Of("8.8", Length.FromMillimetres(12)).Value, Length.Zero, Length.FromMillimetres(20), HoleMaterial.CastIron);
        var stand = LiftWorkings.Stand(engine, EngineStand.Mount(engine, Torque.FromNewtonMetres(1500)).Value);
        Assert.Equal(759.0347, stand.Result.Value, 1e-4); // statics, recomputed
        Assert.EndsWith(Deferral, stand.Caution);
    }

    // The figures of a working must do the sum again by hand.
    [Fact]
    public void Working_of_a_preload_can_be_done_again()
    {
        var thread = ThreadTable.Find("M10").Value;
        var friction = new JointFriction(new(0.10, 0.16), new(0.08, 0.14), Length.FromMillimetres(13));
        var torque = Torque.FromNewtonMetres(50);
        var working = TighteningWorkings.Preload(torque, 0.04, thread, friction, Tightening.PreloadByFriction(torque, 0.04, thread, friction).Value);
        double Of(string symbol) => working.Inputs.Single(input => input.Symbol == symbol).Value;
        var again = Of("T") * 1000 / (Of("P") / (2 * Math.PI) + Of("μG") * Of("d2") / (2 * Math.Cos(Math.PI / 6)) + Of("μK") * Of("Db") / 2);
        Assert.Equal(again, working.Result.Value, 1e-6 * again);
        Assert.NotNull(working.Result.StandardUncertainty);
    }

    [Fact]
    public void Working_of_an_unknown_sum_is_a_bug() => Assert.Throws<KeyNotFoundException>(() => Workings.Of("no.sum", "", [], new("x", "", 0, "1")));
}
