using Gudgeon.Engine.Building;

namespace Gudgeon.Engine.Tests;

public class CautionTests
{
    [Fact]
    public void Every_caution_ends_with_the_same_sentence() =>
        Assert.All(Cautions.All, c => Assert.EndsWith("Defer to local codes and licensed practice.", c.Text, StringComparison.Ordinal));

    [Fact]
    public void Every_caution_is_shown_somewhere()
    {
        var shown = Cautions.Pages.SelectMany(Cautions.ForPage)
            .Concat(AnatomyTables.Own.PartKinds.SelectMany(Cautions.For))
            .Concat(AnatomyTables.Own.Operations.SelectMany(r => Cautions.ForOperation(r["id"]))).Select(c => c.Id).ToHashSet();
        Assert.Empty(Cautions.All.Select(c => c.Id).Except(shown));
    }

    [Fact]
    public void Every_part_and_operation_that_pulls_a_caution_is_in_the_tables()
    {
        Assert.Empty(Cautions.Spoken("part").Except(AnatomyTables.Own.PartKinds));
        Assert.Empty(Cautions.Spoken("operation").Except(AnatomyTables.Own.Operations.Select(r => r["id"])));
    }

    [Fact]
    public void No_line_promises_safety() =>
        Assert.DoesNotContain(Cautions.All, c => c.Line.Contains("safe", StringComparison.OrdinalIgnoreCase));

    [Theory]
    [InlineData("circlip", "circlip-fly")]
    [InlineData("fuel-rail", "fuel-pressure")]
    [InlineData("ac-compressor", "aircon")]
    [InlineData("valve-ex", "sodium")]
    public void Part_pulls_its_caution(string kind, string caution) => Assert.Contains(Cautions.For(kind), c => c.Id == caution);

    [Fact]
    public void Hanging_the_engine_warns_of_the_load() => Assert.Contains(Cautions.ForOperation("op:hang"), c => c.Id == "lift-load");

    [Fact]
    public void Gate_page_warns_of_tiredness() => Assert.Equal(["tired"], Cautions.ForPage("gate").Select(c => c.Id));

    [Fact]
    public void Unknown_part_has_no_caution_of_its_own() => Assert.Empty(Cautions.For("own"));
}
