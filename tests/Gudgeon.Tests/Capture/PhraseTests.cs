namespace Gudgeon.Tests.Capture;

/// <summary>Tables of the many ways in which one thing is said, each by itself. Common practice, no source.</summary>
public class PhraseTests
{
    private static string PathOf(string table) => Path.Combine(AppContext.BaseDirectory, "Capture", "Data", $"phrases-{table}.txt");

    [Theory]
    [InlineData("parts", 800)]
    [InlineData("which", 295)]
    [InlineData("places", 370)]
    [InlineData("speech", 80)]
    [InlineData("sizes", 300)]
    [InlineData("days", 255)]
    [InlineData("faults", 830)]
    [InlineData("deeds", 485)]
    [InlineData("readings", 395)]
    [InlineData("rows", 154)]
    [InlineData("lying", 560)]
    [InlineData("refit", 640)]
    [InlineData("book", 12)]
    [InlineData("errands", 400)]
    [InlineData("fasteners", 245)]
    [InlineData("bench", 385)]
    [InlineData("states", 180)]
    public void Every_way_of_saying_it_is_heard_alike(string table, int least)
    {
        var ways = PhraseTable.Read(PathOf(table)).ToList();
        Assert.True(ways.Count >= least, $"{ways.Count} ways in {table}");
        var wrong = ways.Select(w => (Way: w, Heard: w.Hear())).Where(w => !w.Way.IsRight(w.Heard))
            .Select(w => $"{w.Way.Line}: {w.Way.Text} => {string.Join(" & ", w.Heard.Facts.Select(f => f.Code))}{string.Concat(w.Heard.Doubts.Select(d => $" ? {d.Question}"))}")
            .ToList();
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }
}
