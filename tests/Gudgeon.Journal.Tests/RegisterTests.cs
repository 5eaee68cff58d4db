namespace Gudgeon.Journal.Tests;

public class RegisterTests
{
    private static readonly DateTimeOffset left = new(2026, 3, 1, 22, 0, 0, TimeSpan.Zero);

    private static TestBook Four()
    {
        var book = new TestBook(engine: false);
        book.Good(new Tell(new BookStarted("Invented four", new Dictionary<string, string> { ["layout"] = "inline", ["n"] = "4" })));
        return book;
    }

    [Fact]
    public void Rag_that_went_in_keeps_the_account_and_the_gate_open_until_it_is_out()
    {
        using var book = Four();
        book.Good(new TakeOff("sump.1", To: "floor"));
        var reply = book.Good(new Tell(new PutIn("Rag", "bore 3", 2)));
        var item = reply.Entries[0].Number;
        Assert.Contains("(still-in)", book.Refused(new PutBack("sump.1")), StringComparison.Ordinal);
        book.Good(new Tell(new TakenOut(item, 1)));
        Assert.Contains(AllBack.MissingFrom(book.Bench), f => f.Name == "still-in" && f.Where.StartsWith("1 rag", StringComparison.Ordinal));
        Assert.Contains("2 out; expected 1 to 1", book.Refused(new Tell(new TakenOut(item, 2))), StringComparison.Ordinal);
        book.Good(new Tell(new TakenOut(item)));
        Assert.DoesNotContain(AllBack.MissingFrom(book.Bench), f => f.Name == "still-in");
        Assert.Contains("all out already", book.Refused(new Tell(new TakenOut(item))), StringComparison.Ordinal);
    }

    [Fact]
    public void Dowel_left_out_is_a_finding_once_the_joint_is_closed_and_keeps_its_gate_open_before()
    {
        using var book = Four();
        book.Good(new TakeOff("head.1", [new OutLot(10, "M10", "", "bag 1")], "bench"));
        book.Good(new Tell(new SmallFound("j-head.1", "dowel", 2)));
        Assert.Contains("0 of 2 dowels fitted (small-short)", book.Refused(new PutBack("head.1")), StringComparison.Ordinal);
        book.Good(new Tell(new SmallFitted("j-head.1", "Dowel", 1)));
        Assert.Contains("3 fitted; expected 2, as found", book.Refused(new Tell(new SmallFitted("j-head.1", "dowel", 2))), StringComparison.Ordinal);
        book.Good(new PutBack("head.1", Override: "an invented reason"), new Tell(new FastenersIn("j-head.1", 10)));
        Assert.Contains(AllBack.MissingFrom(book.Bench), f => f.Name == "small-short");
        book.Good(new TakeOff("head.1", [new OutLot(10, "M10", "", "bag 1")], "bench"));
        Assert.Equal(new SmallCount(2, 0), book.Bench.Joint("j-head.1").Small["dowel"]);
    }

    [Fact]
    public void Part_with_a_way_round_is_looked_at_after_it_came_back_and_again_after_the_next_time()
    {
        using var book = Four();
        Assert.Contains("nothing to look at", book.Refused(new Tell(new WayRoundSeen("starter.1"))), StringComparison.Ordinal);
        var part = book.Bench.Engine.Parts.Values.First(p => (p.Keeping & Gudgeon.Engine.Keeping.WayRound) != 0 && book.Bench.Engine.CarrierOf(p.Id) is not null).Id;
        book.Good(new TakeOff(part, To: "shelf"));
        Assert.Contains("a part that is back", book.Refused(new Tell(new WayRoundSeen(part))), StringComparison.Ordinal);
        book.Good(new Tell(new PartOn(part)));
        Assert.Contains(SmallThings.ToLookAt(book.Bench), p => p.Id == part);
        Assert.Contains(BenchFindings.Of(book.Bench), f => f.Name == "way-round-open");
        book.Good(new Tell(new WayRoundSeen(part)));
        Assert.DoesNotContain(SmallThings.ToLookAt(book.Bench), p => p.Id == part);
        book.Good(new TakeOff(part, To: "shelf"));
        book.Good(new Tell(new PartOn(part)));
        Assert.Contains(SmallThings.ToLookAt(book.Bench), p => p.Id == part);
    }

    /// <summary>A night, weeks, months: common practice, no source.</summary>
    [Theory]
    [InlineData(7.9, 0)]
    [InlineData(8, 1)]
    [InlineData(14 * 24 - 1, 1)]
    [InlineData(14 * 24, 3)]
    [InlineData(60 * 24 - 1, 3)]
    [InlineData(60 * 24, 7)]
    public void List_after_a_gap_grows_with_the_gap(double hours, int lines)
    {
        using var book = new TestBook(engine: false);
        Assert.Empty(AfterGap.Of(book.Bench, left));
        Assert.True(book.Book.Submit(new Sending("a", left, left, "test"), new Tell(new BookStarted("Invented", new Dictionary<string, string>()))).Ok);
        Assert.Equal(lines, AfterGap.Of(book.Bench, left.AddHours(hours)).Count);
    }

    [Fact]
    public void List_after_a_gap_names_what_was_left_half_way()
    {
        using var book = Four();
        book.Good(new TakeOff("head.1", [new OutLot(10, "M10", "", "bag 1")], "bench"));
        book.Good(new Tell(new PartOn("head.1")), new Tell(new FastenersIn("j-head.1", 4)), new Tell(new PutIn("rag", "valley")));
        var list = AfterGap.Of(book.Bench, AfterGap.LastWork(book.Bench)!.Value.AddDays(1));
        Assert.Contains("Still in: 1 rag, valley.", list);
        Assert.Contains(list, l => l.StartsWith("Left half way: ", StringComparison.Ordinal) && l.EndsWith("4 of 10 in.", StringComparison.Ordinal));
    }
}
