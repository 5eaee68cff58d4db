namespace Gudgeon.Journal.Tests;

// Invented engine and readings; what is asked follows from the tables (common practice, no source).
public class OpenReadingsTests
{
    private static string[] Open(MeasureBook book, params string[] characteristics) =>
        [.. OpenReadings.Of(book.Bench, characteristics).Select(o => $"{o.Part} {o.Characteristic}: {o.Words}")];

    [Fact]
    public void Nothing_read_is_told_place_by_place()
    {
        using var book = new MeasureBook();
        Assert.Equal(["block.1 bore: no reading at bore 1, bore 2, bore 3, bore 4"], Open(book, "bore"));
        book.Read("block.1", "bore", 2, "top.across", "86.01");
        Assert.Equal(["block.1 bore: no reading at bore 1, bore 3, bore 4"], Open(book, "bore"));
    }

    [Fact]
    public void Part_that_is_the_place_itself_is_told_once()
    {
        using var book = new MeasureBook();
        Assert.Equal(["crank.1 crank-end-float: no reading"], Open(book, "crank-end-float"));
        book.Read("crank.1", "crank-end-float", 1, "one", "0.15");
        Assert.Empty(Open(book, "crank-end-float"));
    }

    [Fact]
    public void Reading_set_aside_is_no_reading()
    {
        using var book = new MeasureBook();
        var number = book.Read("crank.1", "crank-end-float", 1, "one", "0.15");
        book.Good(new Tell(new ReadingSetAside(number, "dirt")));
        Assert.Equal(["crank.1 crank-end-float: no reading"], Open(book, "crank-end-float"));
    }

    [Fact]
    public void Figure_that_is_worked_out_asks_for_its_readings_once()
    {
        using var book = new MeasureBook();
        Assert.Equal(["block.1 bore: no reading at bore 1, bore 2, bore 3, bore 4"], Open(book, "bore", "bore-taper", "bore-roundness"));
        Assert.Contains("crank.1 crankpin: no reading at crankpin 1, crankpin 2, crankpin 3, crankpin 4", Open(book, "rod-clearance"));
    }

    [Fact]
    public void Figure_that_lacks_one_spot_names_it()
    {
        using var book = new MeasureBook();
        for (var i = 1; i <= 4; i++)
            book.Read("block.1", "bore", i, "top.across", "86.01");
        Assert.All(Open(book, "bore-wear"), o => Assert.StartsWith("block.1 bore-wear: no reading of bore diameter, top, along the crank; middle", o, StringComparison.Ordinal));
    }

    [Fact]
    public void Face_read_in_part_says_how_far()
    {
        using var book = new MeasureBook();
        book.Read("block.1", "deck-face", 1, "near.g1", "0.01");
        book.Read("block.1", "deck-face", 1, "near.g2", "0.01");
        Assert.Equal(["block.1 deck-face: 2 of 15 read at deck"], Open(book, "deck-face"));
    }

    [Fact]
    public void Reason_closes_it_for_one_part_and_for_all()
    {
        using var book = new MeasureBook();
        book.Good(new Tell(new NotApplicable("piston-skirt", ["piston.2"], "new pistons, size on the box")));
        Assert.Equal(["piston.1", "piston.3", "piston.4"], OpenReadings.Of(book.Bench, ["piston-skirt"]).Select(o => o.Part));
        book.Good(new Tell(new NotApplicable("piston-skirt", [], "all new")));
        Assert.Empty(Open(book, "piston-skirt"));
        Assert.Equal("all new", book.Bench.WhyNot("piston-skirt", "piston.2")!.Said.Why);
    }

    [Fact]
    public void Reason_for_a_source_closes_what_is_worked_out_from_it()
    {
        using var book = new MeasureBook();
        book.Good(new Tell(new NotApplicable("bore", [], "bored by the shop, their sheet counts")));
        Assert.Empty(Open(book, "bore-taper"));
    }

    [Fact]
    public void Reason_struck_out_opens_it_again()
    {
        using var book = new MeasureBook();
        var number = book.Good(new Tell(new NotApplicable("crank-end-float", ["crank.1"], "thrust washers away"))).Entries[0].Number;
        book.Good(new StrikeOut(number));
        Assert.Equal(["crank.1 crank-end-float: no reading"], Open(book, "crank-end-float"));
    }

    [Fact]
    public void Reading_taken_after_all_stands_before_the_reason()
    {
        using var book = new MeasureBook();
        book.Good(new Tell(new NotApplicable("crank-end-float", ["crank.1"], "no gauge here")));
        book.Read("crank.1", "crank-end-float", 1, "one", "0.15");
        Assert.Null(book.Bench.WhyNot("crank-end-float", "crank.1"));
    }

    [Fact]
    public void Only_the_parts_that_concern_are_asked()
    {
        using var book = new MeasureBook();
        Assert.Equal(["piston.3"], OpenReadings.Of(book.Bench, ["piston-skirt"], p => p.Cylinder == 3).Select(o => o.Part));
    }

    [Fact]
    public void Finding_says_what_to_do()
    {
        using var book = new MeasureBook();
        Assert.Equal(
            "reading-missing: crankshaft, crank end float: no reading. Measure it, or say why it does not apply to this engine.",
            Assert.Single(MeasureFindings.NotTaken(book.Bench, ["crank-end-float"])).ToString());
    }

    [Fact]
    public void Not_applicable_is_told_in_words()
    {
        using var book = new MeasureBook();
        Assert.Equal("crankshaft: crank end float not applicable to this engine, because thrust washers away", new NotApplicable("crank-end-float", ["crank.1"], "thrust washers away").Words(book.Bench));
        Assert.Equal("crank end float not applicable to this engine, because thrust washers away", new NotApplicable("crank-end-float", [], "thrust washers away").Words(book.Bench));
    }

    [Theory]
    [InlineData("no-such", "crank.1", "why", "not applicable: met \"no-such\"; expected a characteristic of the list. Look at its name on the Measure page.")]
    [InlineData("crank-end-float", "crank.1", " ", "crank end float: met no reason; expected why it is not measured on this engine. Say why: the part has none, it was replaced, the book gives no figure.")]
    [InlineData("crank-end-float", "piston.1", "why", "piston 1: met crank end float as not applicable; expected a part that has it on this engine. Leave it: nothing asks for it there.")]
    [InlineData("piston-skirt", "piston.1", "why", "piston 1: met piston skirt diameter at its gauge height, square to the pin as not applicable, with 1 reading of it; expected no reading that counts. Set its readings aside first, or leave it as it is.")]
    public void Not_applicable_is_refused_in_four_parts(string characteristic, string part, string why, string expected)
    {
        using var book = new MeasureBook();
        book.Read("piston.1", "piston-skirt", 1, "one", "85.96");
        Assert.Equal(expected, book.Refused(new Tell(new NotApplicable(characteristic, [part], why))));
    }
}
