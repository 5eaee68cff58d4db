namespace Gudgeon.Engine.Tests;

/// <summary>What holds what, and what comes away with it.</summary>
public class JointTests
{
    private static EngineModel Build(string line) => Anatomy.Build(NamedEngines.FromLine(line));

    [Theory]
    [InlineData("n=4", "piston.3", "block.1")]
    [InlineData("n=4", "rod.3", "piston.3")]
    [InlineData("n=4", "ring-comp.3.2", "piston.3")]
    [InlineData("n=4", "rod-shell.3.2", "rod-cap.3")]
    [InlineData("n=4", "main-shell.2.1", "block.1")]
    [InlineData("n=4", "main-shell.2.2", "main-cap.2")]
    [InlineData("n=4 case=bedplate", "main-shell.2.2", "bedplate.1")]
    [InlineData("layout=flat n=4 case=split", "main-shell.2.2", "case-half.2")]
    [InlineData("n=4", "valve-ex.3.2", "guide.3.4")]
    [InlineData("n=4", "collet.3.4.1", "valve-ex.3.2")]
    [InlineData("n=4 vt=sv valves=1+1", "guide.3.2", "block.1")]
    [InlineData("n=4", "injector.2", "fuel-rail.1")]
    [InlineData("n=4 fuel=direct", "injector.2", "head.1")]
    [InlineData("layout=vee n=6", "head.2", "block.1")]
    [InlineData("layout=vee n=6", "valve-in.5.1", "guide.5.1")]
    [InlineData("layout=vee n=6", "exhaust-manifold.2", "head.2")]
    [InlineData("layout=flat n=6 cyl=barrel case=split", "piston.5", "rod.5")]
    [InlineData("layout=flat n=6 cyl=barrel case=split", "barrel.5", "case-half.2")]
    [InlineData("layout=flat n=6 cyl=barrel case=split", "head.5", "barrel.5")]
    [InlineData("fuel=carb", "air-filter.1", "carb.1")]
    [InlineData("n=4", "thermostat.1", "head.1")]
    public void Part_is_carried_by_what_it_comes_away_with(string line, string part, string carrier) =>
        Assert.Equal(carrier, Build(line).CarrierOf(part));

    [Fact]
    public void Head_over_barrels_is_fixed_to_all_of_its_row()
    {
        var model = Build("n=2 cyl=barrel heads=bank");
        Assert.Equal(["barrel.1", "barrel.2"], model.Joints["j-head.1"].FixedTo);
    }

    [Theory]
    [InlineData("n=4", "j-head.1", 10, 15)]
    [InlineData("layout=vee n=8", "j-head.2", 10, 15)]
    [InlineData("n=4", "j-rodcap.1", 2, 2)]
    [InlineData("n=4", "j-inlet.1", 5, 12)]
    [InlineData("layout=vee n=6", "j-inlet.1", 8, 18)]
    [InlineData("layout=vee n=6 count.inlet-manifold=2", "j-inlet.1", 4, 9)]
    [InlineData("layout=flat n=4 case=split", "j-case.2", 10, 10)]
    public void Joint_guesses_fewest_and_most_for_one_part(string line, string joint, int fewest, int most) =>
        Assert.Equal((fewest, most), Build(line).Joints[joint].Guess);

    [Theory]
    [InlineData("j-plug.1", "self")]
    [InlineData("j-circlip.1.1", "circlip")]
    [InlineData("j-fseal.1", "press")]
    [InlineData("j-rod.1", "loose")]
    public void Part_that_holds_by_itself_has_no_fastener_to_count(string joint, string fit)
    {
        var found = Build("").Joints[joint];
        Assert.False(found.IsCounted);
        Assert.Equal(fit, found.Fit);
    }

    [Fact]
    public void Case_halves_share_one_joint()
    {
        var model = Build("layout=flat n=4 case=split");
        Assert.Empty(model.JointsOf("case-half.1"));
        Assert.Equal(["j-case.2", "j-case-rim.2"], model.JointsOf("case-half.2"));
    }

    [Fact]
    public void Belt_is_renewed_and_chain_is_not()
    {
        Assert.Equal(OneUse.Yes, Build("drive=belt").Joints["j-loop.1"].OneUse);
        Assert.Equal(OneUse.No, Build("drive=chain").Joints["j-loop.1"].OneUse);
        Assert.Equal(OneUse.Ask, Build("").Joints["j-head.1"].OneUse);
    }
}
