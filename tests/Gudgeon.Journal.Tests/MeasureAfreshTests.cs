namespace Gudgeon.Journal.Tests;

// Invented readings before and after a bore is machined.
public class MeasureAfreshTests
{
    private static void Read(MeasureBook book, int day, string text)
    {
        var at = new DateTimeOffset(2026, 3, day, 19, 0, 0, TimeSpan.Zero);
        Assert.True(book.Inner.Book.Submit(new Sending($"{day} {text}", at, at, "test"), [new TakeReading(new Slot("block.1", "bore", 1, "top.across"), text, "bg")]).Ok);
    }

    [Fact]
    public void Earlier_days_no_longer_count_and_stay_in_the_book()
    {
        using var book = new MeasureBook();
        Read(book, 1, "86.071");
        Read(book, 9, "86.512");
        book.Good(new MeasureAfresh("block.1", "bore", 1, "bored 0.50 over"));
        Assert.Equal(86.512, Assert.Single(book.Assess("block.1", "bore").Figures).Value, 9);
        Assert.Equal(["bored 0.50 over", null], book.Bench.ReadingsAt(new Slot("block.1", "bore", 1, "top.across")).Select(r => r.SetAside));
    }

    [Fact]
    public void One_day_alone_is_the_earlier_one()
    {
        using var book = new MeasureBook();
        Read(book, 1, "86.071");
        book.Good(new MeasureAfresh("block.1", "bore", 1, "bored"));
        Assert.Empty(book.Assess("block.1", "bore").Figures);
        Read(book, 9, "86.512");
        Assert.Equal(86.512, Assert.Single(book.Assess("block.1", "bore").Figures).Value, 9);
    }

    [Theory]
    [InlineData(2, "bored", "bore 2: met no reading that counts; expected readings of an earlier day. Look at the sheet for what is read there.")]
    [InlineData(1, " ", "bore 1: met no reason; expected what was done to it since. Say it: bored, honed, ground, renewed.")]
    public void What_cannot_be_is_refused_in_four_parts(int place, string why, string message)
    {
        using var book = new MeasureBook();
        Read(book, 1, "86.071");
        Assert.Equal(message, book.Refused(new MeasureAfresh("block.1", "bore", place, why)));
    }
}
