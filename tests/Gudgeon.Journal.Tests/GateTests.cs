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
    public void Look_struck_out_after_its_gate_was_passed_is_found()
    {
        using var book = Opened();
        LookAtAll(book);
        book.Good(new PutBack("sump.1"));
        Assert.DoesNotContain(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.LookOpen);
        var tick = book.Book.Entries.First(r => r.Entry is GateLooked);
        book.Good(new StrikeOut(tick.Number));
        var found = Assert.Single(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.LookOpen);
        Assert.Contains(((GateLooked)tick.Entry).Look.TrimEnd('.'), found.Met, StringComparison.Ordinal);
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

    private static string[] Missing(TestBook book, string gate, string closing) =>
        [.. GateCheck.Of(book.Bench, book.Bench.Gate(gate)!, closing).Where(f => f.Finding.Name == FindingNames.ReadingMissing).Select(f => f.Characteristic)];

    [Fact]
    public void Readings_never_taken_are_asked_for_by_name_once_for_all_parts_that_lack_them()
    {
        using var book = Opened();
        foreach (var part in new[] { "pickup.1", "rod-cap.1", "rod-cap.2" })
            book.Good(new TakeOff(part, To: "tray"), new Tell(new PartOn(part)));
        var found = GateCheck.Of(book.Bench, book.Bench.Gate("GA2")!, "sump.1").Where(f => f.Finding.Name == FindingNames.ReadingMissing).ToArray();
        Assert.Equal(found.Select(f => f.Characteristic).Distinct().Count(), found.Length);
        var bolts = Assert.Single(found, f => f.Characteristic == "rod-bolt-length");
        Assert.Equal(["rod.1", "rod.2"], bolts.Parts);
        Assert.Equal("no reading on 2 connecting rods", bolts.Finding.Met);
        Assert.False(bolts.IsFirm);
    }

    [Fact]
    public void Readings_are_not_asked_for_where_only_the_lid_came_off()
    {
        using var book = Opened();
        Assert.Empty(Missing(book, "GA2", "sump.1"));
    }

    [Fact]
    public void Reading_that_is_said_not_to_apply_is_asked_for_no_longer()
    {
        using var book = Opened();
        book.Good(new TakeOff("rod-cap.1", To: "tray"), new Tell(new PartOn("rod-cap.1")));
        Assert.Contains("rod-bolt-length", Missing(book, "GA2", "sump.1"));
        book.Good(new Tell(new NotApplicable("rod-bolt-length", ["rod.1"], "new bolts")));
        Assert.DoesNotContain("rod-bolt-length", Missing(book, "GA2", "sump.1"));
    }

    [Fact]
    public void Part_that_closes_a_gate_and_went_on_without_it_is_a_finding_until_the_gate_is_closed()
    {
        using var book = Opened();
        book.Good(new Tell(new PartOn("sump.1")));
        var finding = Assert.Single(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.GateSkipped);
        Assert.Equal("long block closed", finding.Where);
        book.Good(new TakeOff("sump.1", To: "floor"), new PutBack("sump.1", Override: "an invented reason"));
        Assert.DoesNotContain(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.GateSkipped);
    }

    [Fact]
    public void Page_begun_without_its_gate_is_a_finding()
    {
        using var book = Opened();
        book.Good(new Tell(new PageBegun(BeginPage.FirstStart)));
        Assert.Equal("first turn on the starter", Assert.Single(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.GateSkipped).Where);
    }
}
