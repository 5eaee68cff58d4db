namespace Gudgeon.Engine.Tests;

/// <summary>What the parts of an engine are called, and where they belong. The expected names are how the trade speaks.</summary>
public class PartTests
{
    private static EngineModel Build(string line) => Anatomy.Build(NamedEngines.FromLine(line));

    [Theory]
    [InlineData("n=4", "piston.3", "piston 3")]
    [InlineData("n=4", "valve-ex.3.1", "exhaust valve 3.1")]
    [InlineData("n=4 valves=1+1", "valve-ex.3.1", "exhaust valve 3")]
    [InlineData("n=4 valves=2+1", "guide.3.3", "exhaust valve guide 3")]
    [InlineData("layout=single", "piston.1", "piston")]
    [InlineData("n=4", "head.1", "head")]
    [InlineData("n=4", "cam.1", "inlet cam")]
    [InlineData("n=4", "cam.2", "exhaust cam")]
    [InlineData("n=4 vt=sohc", "cam.1", "cam")]
    [InlineData("n=4 vt=sohc", "cam-cap.2", "cam cap 2")]
    [InlineData("n=4", "cam-cap.2.5", "exhaust cam cap 5")]
    [InlineData("n=4", "main-shell.3.1", "upper main shell 3")]
    [InlineData("n=4", "ring-comp.2.1", "top ring 2")]
    [InlineData("n=4", "circlip.2.2", "circlip 2b")]
    [InlineData("n=4 s=2", "spring.1.3.2", "exhaust inner valve spring 1.1")]
    [InlineData("layout=vee n=6", "head.1", "left head")]
    [InlineData("layout=vee n=6 banks=right-left", "head.1", "right head")]
    [InlineData("layout=vee n=6 banks=numbers", "head.2", "head 2")]
    [InlineData("layout=vee n=6", "cam.4", "right exhaust cam")]
    [InlineData("layout=flat n=6 cyl=barrel", "head.5", "head 5")]
    [InlineData("layout=flat n=4 case=split", "case-half.2", "right case half")]
    [InlineData("n=4 vt=ohv", "cam-cover.1", "rocker cover")]
    [InlineData("layout=vee n=6 ind=turbo nt=2", "turbo.2", "right turbocharger")]
    [InlineData("n=6 ind=turbo nt=2", "turbo.2", "turbocharger 2")]
    public void Part_is_called_as_people_say(string line, string id, string name) => Assert.Equal(name, Build(line).Parts[id].Name);

    [Theory]
    [InlineData("row-by-row", 2, 1)]
    [InlineData("row-by-row", 4, 2)]
    [InlineData("alternating", 2, 2)]
    [InlineData("alternating", 3, 1)]
    public void Cylinder_belongs_to_its_bank(string numbering, int cylinder, int bank) =>
        Assert.Equal(bank, Build($"layout=vee n=6 numbering={numbering}").Parts[$"piston.{cylinder}"].Bank);

    [Fact]
    public void Kind_with_one_part_has_no_number_but_in_its_id()
    {
        var sump = Build("").Parts["sump.1"];
        Assert.Empty(sump.Index);
        Assert.Null(sump.Cylinder);
    }

    [Fact]
    public void Count_of_the_owner_beats_the_guess()
    {
        var model = Build("count.core-plug=11 count.coil=4 count.baffle=0");
        Assert.Equal(11, model.Parts.Values.Count(p => p.Kind == "core-plug"));
        Assert.Equal(Standing.Counted, model.Parts["core-plug.11"].Standing);
        Assert.Equal("coil 4", model.Parts["coil.4"].Name);
        Assert.Equal(4, model.Parts["coil.4"].Cylinder);
        Assert.False(model.Parts.ContainsKey("baffle.1"));
        Assert.Equal(Standing.Guess, model.Parts["piston.1"].Standing);
    }

    [Theory]
    [InlineData("n=4", 16)]
    [InlineData("n=4 valves=1+1", 8)]
    [InlineData("layout=vee n=8 vt=ohv valves=1+1", 16)]
    [InlineData("n=5 valves=3+2", 25)]
    public void Valves_add_up(string line, int valves) =>
        Assert.Equal(valves, Build(line).Parts.Values.Count(p => p.Kind is "valve-in" or "valve-ex"));
}
