namespace Gudgeon.Journal.Tests;

// Slips as people make them. Readings are invented; an inch is 25.4 mm exactly.
public class DoubtTests
{
    private static string? Why(MeasureBook book, long number) => Doubts.Of(book.Bench).FirstOrDefault(d => d.Reading.Number == number)?.Why;

    [Fact]
    public void First_reading_is_held_against_the_bore_as_told()
    {
        using var book = new MeasureBook();
        var inch = book.Read("block.1", "bore", 1, "top.across", "3.3863", "fg");
        Assert.Equal("3.3863 mm: it may be in inches. Was it 86.01202 mm?", Why(book, inch));
        Assert.Equal("86.01202 mm", Doubts.Of(book.Bench).Single().ShownSuggestion.Replace('\u00a0', ' '));
    }

    [Fact]
    public void First_reading_is_held_against_a_narrow_limit()
    {
        using var book = new MeasureBook();
        book.Limit("main-journal", 57.98, 58.00);
        var slip = book.Read("crank.1", "main-journal", 1, "front.upright", "5.799");
        Assert.Equal("5.799 mm: the decimal mark may have slipped. Was it 57.99 mm?", Why(book, slip));
        var good = book.Read("crank.1", "main-journal", 1, "front.level", "57.99");
        Assert.Null(Why(book, good));
    }

    [Fact]
    public void First_reading_is_held_against_the_setting_of_its_gauge()
    {
        using var book = new MeasureBook();
        book.Good(new Tell(new GaugeZeroed("bg", 58, "58", "ring")));
        var slip = book.Read("crank.1", "main-journal", 1, "front.upright", "579.9", "bg");
        Assert.Equal("579.9 mm: the decimal mark may have slipped. Was it 57.99 mm?", Why(book, slip));
    }

    [Fact]
    public void Wide_limit_is_no_measure_of_a_slip()
    {
        using var book = new MeasureBook();
        book.Limit("crank-end-float", 0.07, 0.30);
        Assert.Null(Why(book, book.Read("crank.1", "crank-end-float", 1, "one", "0.02")));
    }

    [Fact]
    public void Second_slip_does_not_hide_behind_the_first()
    {
        using var book = new MeasureBook();
        foreach (var (spot, text) in new[] { ("top.across", "86.010"), ("middle.across", "86.012"), ("bottom.across", "86.014"), ("top.along", "86.011") })
            book.Read("block.1", "bore", 1, spot, text, "bg");
        var first = book.Read("block.1", "bore", 1, "middle.along", "8.6012", "bg");
        var second = book.Read("block.1", "bore", 1, "bottom.along", "3.3863", "bg");
        Assert.NotNull(Why(book, first));
        Assert.NotNull(Why(book, second));
    }

    [Fact]
    public void Repeats_farther_apart_than_the_instrument_explains_are_asked_about()
    {
        // U = 6 µm, u = 3 µm: three of them are 9 µm.
        using var book = new MeasureBook();
        book.Read("block.1", "bore", 1, "top.across", "86.010", "bg");
        Assert.Null(Why(book, book.Read("block.1", "bore", 1, "top.across", "86.019", "bg")));
        var far = book.Read("block.1", "bore", 1, "top.across", "86.020", "bg");
        Assert.Equal("The 3 readings of this place lie 0.01 apart, more than the instrument explains. Read it again?", Why(book, far));
        book.Good(new Tell(new ReadingStands(far)));
        Assert.Empty(Doubts.Of(book.Bench));
    }

    [Fact]
    public void Slip_that_was_one_counts_as_meant_and_stays_as_typed()
    {
        using var book = new MeasureBook();
        var slip = book.Read("block.1", "bore", 1, "top.across", "3.3863", "bg");
        var entries = book.Good(new MeanOtherwise(slip)).Entries;
        Assert.Equal(2, entries.Count);
        Assert.Equal("meant as 86.01202 mm", book.Bench.Readings[slip].SetAside!.Replace('\u00a0', ' '));
        var meant = book.Bench.Readings[entries[1].Number];
        Assert.Equal(("3.3863", 86.01202, "bg", 2), (meant.Taken.AsTyped, meant.Taken.Value, meant.Taken.Instrument, meant.Taken.Repeat));
        Assert.Empty(Doubts.Of(book.Bench));
    }

    [Fact]
    public void Reading_that_nobody_doubts_has_no_other_meaning()
    {
        using var book = new MeasureBook();
        var good = book.Read("block.1", "bore", 1, "top.across", "86.01", "bg");
        Assert.Equal($"reading {good}: met no other way to read it; expected a reading that looks like a slip of one kind. Type what it should be as a reading of its own, and set this one aside.", book.Refused(new MeanOtherwise(good)));
        Assert.Equal("reading 99: met no such reading; expected the number of an entry that holds a reading. Look at the sheet for its number.", book.Refused(new MeanOtherwise(99)));
    }

    [Fact]
    public void Over_and_under_are_offered_beside_each_size_that_is_known()
    {
        using var book = new MeasureBook();
        book.Limit("main-journal", 57.98, 58.00);
        var refused = Assert.IsType<Gudgeon.Sums.Refusal>(new TakeReading(new Slot("crank.1", "main-journal", 1, "front.upright"), "one thou under").Decide(book.Bench).Refusals[0]);
        // One thou is 0.0254 mm exactly.
        Assert.Equal(
            ["one thou under the lower limit in service, 57.98 mm: 57.9546 mm", "one thou under the upper limit in service, 58 mm: 57.9746 mm"],
            refused.Choices.Select(c => $"{c.Words}: {c.Means}".Replace('\u00a0', ' ')));
        book.Good(new TakeReading(new Slot("crank.1", "main-journal", 1, "front.upright"), "one thou under", "mic", Meant: refused.Choices[1].Words));
        Assert.Equal((57.9746, "one thou under"), (book.Bench.Readings.Values.Last().Taken.Value, book.Bench.Readings.Values.Last().Taken.AsTyped));
    }

    [Fact]
    public void Over_what_is_refused_where_no_size_is_known()
    {
        using var book = new MeasureBook();
        Assert.Contains("where no nominal size is known", book.Refused(new TakeReading(new Slot("crank.1", "main-journal", 1, "front.upright"), "two thou over")));
    }

    [Fact]
    public void Meaning_that_was_not_offered_settles_nothing()
    {
        using var book = new MeasureBook();
        Assert.Contains("which can be read in 2 ways", book.Refused(new TakeReading(new Slot("crank.1", "crank-end-float", 1, "one"), "three tenths", Meant: "a mile")));
    }
}
