using Gudgeon.Engine.Building;

namespace Gudgeon.Engine.Tests;

public class GateTests
{
    [Fact]
    public void Every_id_of_a_gate_is_in_the_tables()
    {
        var joints = AnatomyTables.Own.Joints.Select(r => r["id"]).ToHashSet();
        Assert.Empty(Gates.Rows.SelectMany(r => r.List("back")).Except(AnatomyTables.Own.PartKinds));
        Assert.Empty(Gates.Rows.SelectMany(r => r.List("final").Concat(r.List("firm"))).Except(joints));
        Assert.DoesNotContain(Gates.Rows.SelectMany(r => r.List("readings")), id => Characteristics.Find(id.Split('!')[0]) is null);
        Assert.Empty(Gates.Looks.Select(g => g.Key).Except(Gates.Rows.Select(r => r["id"])));
    }

    [Fact]
    public void In_line_four_has_all_seven_in_order() =>
        Assert.Equal(["GA1", "GA2", "GA3", "GA4", "GA5", "GA6", "GA7"], Gates.Of(NamedEngines.Build("in-line four, twin cam")).Select(g => g.Id));

    [Fact]
    public void Long_block_of_a_block_is_closed_by_its_sump()
    {
        var gate = Gates.Of(NamedEngines.Build("in-line four, twin cam")).Single(g => g.Id == "GA2");
        Assert.Equal(["sump"], gate.ClosedBy);
        Assert.Contains("main-cap", gate.Back);
        Assert.DoesNotContain("bedplate", gate.Back);
        Assert.Equal(["j-cap", "j-rodcap"], gate.Firm);
    }

    [Fact]
    public void Split_case_is_closed_by_its_second_half_before_any_piston()
    {
        var gate = Gates.Of(NamedEngines.Build("flat four, air, split case")).Single(g => g.Id == "GA2");
        Assert.Equal(["case-half.2"], gate.ClosedBy);
        Assert.DoesNotContain("piston", gate.Back);
    }

    [Theory]
    [MemberData(nameof(NamedEngines.Names), MemberType = typeof(NamedEngines))]
    public void Gate_never_asks_for_what_can_only_go_on_after_it(string name)
    {
        var model = NamedEngines.Build(name);
        foreach (var gate in Gates.Of(model))
            foreach (var closing in model.Parts.Values.Where(p => gate.ClosedBy.Contains(p.Kind) || gate.ClosedBy.Contains(p.Id)))
                Assert.DoesNotContain(Strip.Before(model, closing.Id), id => gate.Back.Contains(id[..id.LastIndexOf('.')].Split('.')[0]));
    }

    [Fact]
    public void Engine_grown_from_nothing_has_only_the_gates_of_its_parts()
    {
        var model = new EngineModel();
        model.Add(new Part("head.1", "head", "head", []));
        Assert.Equal(["GA3"], Gates.Of(model).Select(g => g.Id));
    }

    [Theory]
    [InlineData("", true)]
    [InlineData("act=finger lash=hydraulic", false)]
    public void Valve_clearance_is_asked_where_it_is_set(string line, bool asked)
    {
        var gate = Gates.Of(Anatomy.Build(NamedEngines.FromLine(line))).Single(g => g.Id == "GA4");
        Assert.Equal(asked, gate.Readings.Contains("valve-clearance"));
    }

    [Fact]
    public void Readings_of_parts_that_are_not_there_are_not_asked()
    {
        var gate = Gates.Of(NamedEngines.Build("single, air, split case")).Single(g => g.Id == "GA2");
        Assert.DoesNotContain("main-crush", gate.Readings);
        Assert.Contains("crank-end-float", gate.Readings);
    }
}
