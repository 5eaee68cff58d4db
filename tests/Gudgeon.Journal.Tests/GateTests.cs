namespace Gudgeon.Journal.Tests;

public class GateTests
{
    private static TestBook Opened()
    {
        var book = new TestBook(engine: false);
        book.Good(new Tell(new BookStarted("Invented four", new Dictionary<string, string> { ["layout"] = "inline", ["n"] = "4" })));
        book.Good(new TakeOff("sump.1", To: "floor"));
        return book;
    }

    private static void LookAtAll(TestBook book)
    {
        foreach (var look in book.Bench.Gate("GA2")!.Looks)
        {
            book.Good(new Tell(new GateLooked("GA2", look, "sump.1")));
        }
    }

    [Fact]
    public void PutBack_of_the_sump_is_refused_with_the_gates_findings_by_name()
    {
        using var book = Opened();
        book.Good(new TakeOff("pickup.1", [new Journal.OutLot(2, "M6x16", "", "bag 4")], "tray"));
        var refused = book.Refused(new PutBack("sump.1"));
        Assert.Contains("oil pickup: met in the tray (part-off); expected clear, before long block closed. Put it back first.", refused, StringComparison.Ordinal);
        Assert.Contains("(bag-full)", refused, StringComparison.Ordinal);
        Assert.Contains("(look-open)", refused, StringComparison.Ordinal);
        Assert.False(book.Bench.Part("sump.1").IsOn);
    }

    [Fact]
    public void PutBack_passes_the_gate_when_nothing_is_open()
    {
        using var book = Opened();
        LookAtAll(book);
        foreach (var finding in GateCheck.Of(book.Bench, book.Bench.Gate("GA2")!, "sump.1"))
        {
            Assert.Fail($"still open: {finding.Finding}");
        }

        var reply = book.Good(new PutBack("sump.1"));
        Assert.Equal(["Gate passed: long block closed", "sump back on"], reply.Entries.Select(e => e.Entry.Words(book.Bench)));
    }

    [Fact]
    public void Override_needs_a_reason_and_stands_in_the_book()
    {
        using var book = Opened();
        Assert.Contains("no reason", book.Refused(new PutBack("sump.1", Override: " ")), StringComparison.Ordinal);
        book.Good(new PutBack("sump.1", Override: "moving house tomorrow"));
        Assert.True(book.Bench.Part("sump.1").IsOn);
        var finding = Assert.Single(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.GateOverridden);
        Assert.Equal("closed all the same, because moving house tomorrow", finding.Met);
    }

    [Fact]
    public void Override_does_not_help_where_a_main_cap_is_not_tight()
    {
        using var book = Opened();
        book.Good(new Tell(new FastenersOut("j-cap.3", [new OutLot(2, "", "", "tray")])));
        LookAtAll(book);
        var refused = book.Refused(new PutBack("sump.1", Override: "it will be fine"));
        Assert.Equal(
            "main cap 3 joint: met 0 of 2 fasteners in (joint-open); expected clear, and no override helps here, before long block closed. Tighten it, and say how many.",
            refused);
    }

    [Fact]
    public void Look_counts_only_since_the_closing_part_came_off()
    {
        using var book = Opened();
        LookAtAll(book);
        book.Good(new PutBack("sump.1"));
        book.Good(new TakeOff("sump.1", To: "floor"));
        Assert.Contains("(look-open)", book.Refused(new PutBack("sump.1")), StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_that_a_gate_asks_for_keep_it_open_while_they_are_out()
    {
        using var book = Opened();
        LookAtAll(book);
        book.Good(new Tell(new InstrumentKept("dial", "dial gauge", "di", "mm", 0.01, 0.01)));
        book.Good(new Tell(new LimitSet("crank-end-float", [], LimitState.Service, null, 0.20, null, "mm", "0.20", "invented sheet")));
        book.Good(new TakeReading(new Slot("crank.1", "crank-end-float", 1, "one"), "0.31", "dial"));
        Assert.Contains("(reading-outside)", book.Refused(new PutBack("sump.1")), StringComparison.Ordinal);
    }
}
