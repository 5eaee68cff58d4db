using Gudgeon.Engine.Building;

namespace Gudgeon.Engine.Tests;

/// <summary>Figures here are habits of the trade, typed from its common practice; no source.</summary>
public class GuideTests
{
    [Fact]
    public void Every_kind_that_a_guide_speaks_of_is_in_the_tables()
    {
        var kinds = AnatomyTables.Own.PartKinds;
        Assert.Empty(Guides.Turns.SelectMany(r => r.List("work")).Except(kinds));
        Assert.Empty(Guides.Times.SelectMany(r => r.List("kinds")).Except(kinds));
        Assert.Empty(Guides.Masses.SelectMany(r => r.List("kind")).Except(kinds));
        Assert.Empty(Flows.Rows.SelectMany(r => r.List("kinds")).SelectMany(AnatomyTables.Own.Kinds).Except(kinds).Except(["ext"]));
        Assert.Empty(Flows.Rows.SelectMany(r => r.List("lines")).Except(AnatomyTables.Own.LineKinds));
    }

    [Fact]
    public void Every_range_runs_upwards() =>
        Assert.All(Guides.Times.Concat(Guides.Masses).Concat(Proportions.Rows), r => Assert.True(Figures.Number(r["low"]) <= Figures.Number(r["high"]), r.Where));

    [Fact]
    public void Crank_of_a_tunnel_comes_out_endwise()
    {
        Assert.Equal(Turned.Down, Guides.TurnFor("crank", NamedEngines.FromLine(""))!.Position);
        var turn = Guides.TurnFor("crank", NamedEngines.FromLine("case=tunnel"))!;
        Assert.Equal((Turned.End, true), (turn.Position, turn.ClutchEndFree));
    }

    [Theory]
    [InlineData("layout=single", 20, 60)]
    [InlineData("n=4", 110, 180)]
    [InlineData("n=4 fuel=diesel", 110, 250)]
    [InlineData("n=6", 150, 300)]
    [InlineData("layout=vee n=6", 150, 300)]
    [InlineData("layout=vee n=8", 200, 400)]
    [InlineData("layout=flat n=4", 90, 220)]
    public void Engine_weighs_what_its_kind_usually_does(string line, double low, double high)
    {
        var mass = Guides.MassOfEngine(NamedEngines.FromLine(line));
        Assert.Equal((low, high), (mass.LowKg, mass.HighKg));
    }

    [Fact]
    public void Head_takes_forty_to_ninety_minutes()
    {
        var time = Guides.MinutesFor("head")!;
        Assert.Equal((40, 90), (time.Low, time.High));
        Assert.Null(Guides.MinutesFor("collet"));
        Assert.Equal(240, Guides.Minutes("engine-out")!.Low);
    }

    /// <summary>D = S = 100 mm: 50 + 1.75 * 100 + 0.45 * 100 = 270 mm, reckoned by hand.</summary>
    [Fact]
    public void Deck_of_a_drawn_engine_stands_on_stroke_rod_and_piston() =>
        Assert.Equal(270, Proportions.Of(NamedEngines.FromLine("D=100 S=100")).DeckHeight, 1e-9);

    [Fact]
    public void Two_large_valves_are_drawn_larger_than_four() =>
        Assert.True(Proportions.Of(NamedEngines.FromLine("valves=1+1"))["inlet-valve"] > Proportions.Of(NamedEngines.FromLine("valves=2+2"))["inlet-valve"]);

    [Fact]
    public void Oil_of_a_wet_sump_goes_from_sump_to_block()
    {
        var answers = NamedEngines.FromLine("");
        var flow = Flows.Of(answers, Anatomy.Build(answers)).Single(f => f.Id == "wet-feed");
        Assert.Equal(["sump", "pickup", "oil-pump", "filter-head", "oil-filter", "block"], flow.Kinds);
        Assert.Equal(["g-suction", "g-filter-in", "g-gallery"], flow.Lines);
    }

    [Theory]
    [MemberData(nameof(NamedEngines.Names), MemberType = typeof(NamedEngines))]
    public void Every_engine_breathes_and_burns(string name)
    {
        var flows = Flows.Of(NamedEngines.Answers(name), NamedEngines.Build(name)).Select(f => f.Id).ToHashSet();
        Assert.Contains("air", flows);
        Assert.Contains("exhaust", flows);
        Assert.Single(flows, f => f is "rail" or "direct" or "diesel" or "carb");
        Assert.Single(flows, f => f is "wet-feed" or "dry-feed" or "splash");
    }
}
