using Gudgeon.Journal;
using Gudgeon.Pages.Measure;

namespace Gudgeon.Tests.Measure;

/// <summary>Readings out to a spreadsheet and back. Engine and readings are invented.</summary>
public class ReadingTableTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gudgeon-table-").FullName;
    private readonly Bookshelf shelf;
    private readonly Book book;

    public ReadingTableTests()
    {
        shelf = new Bookshelf(folder);
        book = shelf.Open(shelf.Start("Table", new Dictionary<string, string> { ["layout"] = "inline", ["n"] = "4" }, Sending("start")).Value.Name).Value;
        Good(new Tell(new InstrumentKept("bg", "bore gauge", "bg", "mm", 0.002, 0.006), new GaugeZeroed("bg", 86, "86", "ring")));
    }

    private static Sending Sending(string id) => new(id, new DateTimeOffset(2026, 3, 1, 19, 0, 0, TimeSpan.FromHours(1)), DateTimeOffset.UnixEpoch, "test");

    private void Good(params IReadOnlyList<Request> requests)
    {
        var outcome = book.Submit(Sending(Guid.NewGuid().ToString("N")), requests);
        Assert.True(outcome.Ok, string.Join(' ', outcome.Refusals));
    }

    private string Written() => book.Read(ReadingTable.Write);

    [Fact]
    public void Step_from_zero_comes_back_from_a_spreadsheet_as_it_was()
    {
        Good(new TakeReading(new Slot("block.1", "bore", 1, "top.across"), "+43", "bg", 21.5, 20));
        Good(new TakeReading(new Slot("block.1", "bore", 1, "top.along"), "-2", "bg"));
        var table = Written();
        Assert.Contains(",'+43,86.043,mm,bg,21.5,20,", table);
        Assert.Contains(",'-2,85.998,mm,bg,,,", table);
        Good(ReadingTable.Read(table).Value);
        Assert.Equal([86.043, 85.998, 86.043, 85.998], book.Read(b => b.Readings.Values.Select(r => r.Taken.Value).ToArray()));
        Assert.Equal([21.5, null, 21.5, null], book.Read(b => b.Readings.Values.Select(r => r.Taken.PartC).ToArray()));
    }

    [Fact]
    public void Who_read_comes_back_with_the_reading()
    {
        Good(new TakeReading(new Slot("block.1", "bore", 1, "top.across"), "86.012", "bg", By: "Anna, the elder"));
        Assert.Contains(",86.012,86.012,mm,bg,,,\"Anna, the elder\",", Written());
        Good(ReadingTable.Read(Written()).Value);
        Assert.Equal(["Anna, the elder", "Anna, the elder"], book.Read(b => b.Readings.Values.Select(r => r.Taken.By).ToArray()));
    }

    [Fact]
    public void Size_below_nought_stays_a_number_for_the_spreadsheet()
    {
        Good(new TakeReading(new Slot("block.1", "deck-face", 1, "near.g1"), "-0.020"));
        Assert.Contains(",-0.020,-0.02,mm,", Written());
    }

    [Fact]
    public void Cell_with_a_comma_or_quotes_is_quoted()
    {
        Good(new TakeReading(new Slot("block.1", "bore", 1, "top.across"), "86,012", "bg"));
        Good(new TakeReading(new Slot("block.1", "bore", 1, "top.along"), "3.3862\"", "bg"));
        Assert.Contains(",\"86,012\",86.012,", Written());
        Assert.Contains(",\"3.3862\"\"\",", Written());
        Good(ReadingTable.Read(Written()).Value);
        Assert.Equal("3.3862\"", book.Read(b => b.Readings.Values.Last().Taken.AsTyped));
    }

    [Theory]
    [InlineData("", "the table: met nothing; expected a row of column names and a row for each reading. Copy the table with its heading.")]
    [InlineData("part,characteristic,reading", "the table: met one row; expected a row of column names and a row for each reading. Copy the table with its heading.")]
    [InlineData("a,b\n1,2", "the heading: met a, b; expected part, characteristic and reading among the columns. Name the columns so; write the table out first to see them.")]
    [InlineData("part,characteristic,reading\nblock.1,bore", "row 2: met 2 cells; expected 3, as in the heading. Mend the row; put a cell with a comma in it into quotes.")]
    [InlineData("part,characteristic,place,reading\nblock.1,bore,x,86", "row 2: met place \"x\"; expected a whole number. Mend the row.")]
    [InlineData("part;characteristic;reading;part_c\nblock.1;bore;86;warm", "row 2, part_c: met \"warm\", which has no figure; expected a temperature such as 20 °C or 68 °F. Type the figure first, then its unit.")]
    public void Table_that_cannot_be_read_says_which_row(string text, string message) =>
        Assert.Equal(message, string.Join(' ', ReadingTable.Read(text).Refusals));

    [Fact]
    public void Table_from_a_spreadsheet_may_part_its_cells_with_tabs()
    {
        Good(ReadingTable.Read("Part\tCharacteristic\tPlace\tSpot\tReading\tgauge_c\nblock.1\tbore\t2\ttop.across\t86,015\t19,5\n").Value);
        var taken = book.Read(b => b.Readings.Values.Single().Taken);
        Assert.Equal((2, "top.across", 86.015, 19.5), (taken.Place, taken.Spot, taken.Value, taken.GaugeC!.Value));
    }

    public void Dispose()
    {
        shelf.Dispose();
        Directory.Delete(folder, true);
    }
}
