namespace Gudgeon.Sums.Tests;

public class CatalogueTests
{
    public static TheoryData<string> Ids => new(SumCatalogue.All.Select(sum => sum.Id));

    [Theory]
    [MemberData(nameof(Ids))]
    public void Sum_everyPart_isThere(string id)
    {
        var sum = SumCatalogue.All.Single(entry => entry.Id == id);
        Assert.Matches("^[a-z0-9]+([.-][a-z0-9]+)+$", sum.Id);
        Assert.All([sum.Title, sum.Formula, sum.ResultUnit, sum.ValidRange, sum.Source, sum.Worked.Given, sum.Worked.Origin],
            part => Assert.False(string.IsNullOrWhiteSpace(part)));
        Assert.NotEmpty(sum.Inputs);
        Assert.All(sum.Inputs, input => Assert.All([input.Symbol, input.Meaning, input.Unit], part => Assert.False(string.IsNullOrWhiteSpace(part))));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Sum_workedNumber_isReproduced(string id)
    {
        var worked = SumCatalogue.All.Single(entry => entry.Id == id).Worked;
        Assert.True(worked.Tolerance >= 0);
        Assert.Equal(worked.Expected, worked.Compute(), worked.Tolerance);
    }

    [Fact]
    public void Ids_areTakenOnce() => Assert.Empty(SumCatalogue.All.GroupBy(sum => sum.Id).Where(group => group.Count() > 1).Select(group => group.Key));
}
