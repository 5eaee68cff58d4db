using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Planning.OnTheBench;

namespace Gudgeon.Planning.Tests.OnTheBench;

/// <summary>
/// What waits on its way back, worked by hand on an engine of four parts: the lid comes off before the head, the
/// starter stands by itself. It is Monday 9 November 2026.
/// </summary>
public class BackWaitTests
{
    private const int Effort = 50;
    private const string Shop = "the invented shop";

    private static readonly Circumstances Today = new(BenchBook.Now);

    private static BenchBook Off()
    {
        var book = new BenchBook("");
        book.Tell(
            new PartAdded("own.block", "block", null, 0), new PartAdded("own.head", "head", "own.block", 4),
            new PartAdded("own.lid", "lid", "own.head", 2), new PartAdded("own.starter", "starter", "own.block", 2),
            new AccessLearned("own.head", ["own.lid"]));
        foreach (var part in new[] { "own.lid", "own.head", "own.starter" })
            book.Send(new TakeOff(part));
        return book;
    }

    private static DateTimeOffset In(int days) => BenchBook.Now.AddDays(days);

    private static RefitReport Back(BenchBook book) => RefitReport.Of(book.Bench, Today, Effort);

    /// <summary>Each stage as its day (or now, held) and the ids of its steps.</summary>
    private static string[] Told(RefitReport report) =>
        [.. report.Stages.Select(s => $"{(s.IsHeld ? "held" : s.Day?.ToString("yyyy-MM-dd", null) ?? "now")}: {string.Join(" ", s.Steps.Select(x => x.Work.Id).Order(StringComparer.Ordinal))}")];

    [Fact]
    public void Nothing_that_waits_is_one_stage_in_the_order_of_the_book()
    {
        using var book = Off();
        var report = Back(book);
        Assert.Equal(["now: own.head own.lid own.starter"], Told(report));
        Assert.Empty(report.Stages[0].Waits);
        Assert.Equal(["own.starter", "own.head", "own.lid"], report.Steps.Select(s => s.Work.Id));
    }

    [Fact]
    public void Part_promised_for_a_day_comes_no_sooner_nor_what_is_behind_it_and_is_washed_first()
    {
        using var book = Off();
        book.Tell(new PartSent("own.head", Shop, "skim", In(5)));
        var report = Back(book);
        Assert.Equal(["now: own.starter", "2026-11-14: own.head own.lid wash:own.head"], Told(report));
        Assert.Equal(["wash:own.head", "own.head", "own.lid"], report.Stages[1].Steps.Select(s => s.Work.Id));
        var wait = Assert.Single(report.Stages[1].Waits);
        Assert.Equal(("own.head", new DateOnly(2026, 11, 14), 1), (wait.Part, wait.Day, wait.HoldsUp));
        Assert.Equal(["waits: head: away at the invented shop, promised for 14 November; there on Sat 14 Nov 2026 (1 other step behind it)"], PlanWords.Waits(book.Bench, report.Stages[1]));
        // Nothing here costs a change of setup, so the plan is proven to be the least.
        Assert.Equal(report.Plan.BoundSeconds, report.Plan.TotalSeconds);
    }

    [Fact]
    public void Part_with_no_day_is_held_with_its_reason_and_the_rest_is_ordered()
    {
        using var book = Off();
        book.Tell(new PartSent("own.head", Shop, "skim"));
        var report = Back(book);
        Assert.Equal(["now: own.starter", "held: own.head own.lid wash:own.head"], Told(report));
        Assert.Equal(["held: head: away at the invented shop (1 other step behind it)"], PlanWords.Waits(book.Bench, report.Stages[1]));
    }

    [Fact]
    public void Each_day_has_its_own_stage_and_the_later_of_two_days_counts()
    {
        using var book = Off();
        book.Tell(new PartSent("own.head", Shop, "skim", In(5)), new PartScrapped("own.starter", "burnt"), new LeadTold("own.starter", 2, 20, 30));
        Assert.Equal(["2026-11-14: own.head own.lid wash:own.head", "2026-11-29: own.starter"], Told(Back(book)));
        book.Tell(new Waiting("paint", In(7), "own.lid"));
        Assert.Equal(["2026-11-14: own.head wash:own.head", "2026-11-16: own.lid", "2026-11-29: own.starter"], Told(Back(book)));
        // The lead time of a part stands before what its shop promised.
        book.Tell(new LeadTold("own.head", 8, 9, 10));
        Assert.Equal(["2026-11-18: own.head own.lid wash:own.head", "2026-11-29: own.starter"], Told(Back(book)));
    }

    [Fact]
    public void Fasteners_to_get_hold_a_part_until_a_day_is_told_for_them()
    {
        using var book = Off();
        book.Tell(new FastenersOut("j-own.head", [new OutLot(3, "M10x90", "bolt", "bag 1"), new OutLot(1, "M10x90", "bolt", Fate: Fate.Lost)]));
        var held = Back(book);
        Assert.Equal(["now: own.starter", "held: own.head own.lid"], Told(held));
        Assert.Equal(["1 new fastener to get (1 lost)"], Assert.Single(held.Stages[1].Waits).Reasons);
        book.Tell(new LeadTold("own.head", 1, 2, 3));
        Assert.Equal(["now: own.starter", "2026-11-11: own.head own.lid"], Told(Back(book)));
        book.Tell(new Bought("j-own.head", 1));
        book.Tell(new PartRenewed("own.head"));
        Assert.Equal(["now: own.head own.lid own.starter"], Told(Back(book)));
    }

    [Fact]
    public void Day_that_is_past_is_no_day()
    {
        using var book = Off();
        book.Tell(new PartSent("own.head", Shop, "skim", In(-2)));
        var report = Back(book);
        Assert.True(report.Stages[1].IsHeld);
        Assert.EndsWith("; Sat 7 Nov 2026 is past", Assert.Single(Assert.Single(report.Stages[1].Waits).Reasons), StringComparison.Ordinal);
    }

    [Fact]
    public void Part_back_from_its_shop_is_washed_now_with_the_guess_or_the_owners_minutes()
    {
        using var book = Off();
        book.Tell(new PartSent("own.head", Shop, "skim", In(5)));
        book.Tell(new PartReturned("own.head", Shop, "bench"));
        var wash = Back(book).Steps.Single(s => s.Work.Sort == WorkSort.Ready);
        // The tables' own minutes, not those of taking off one and a half to two times.
        Assert.Equal(new Span(15, 45, true), wash.Minutes);
        Assert.Equal("wash the head, back from its shop", wash.Work.Return);
        book.Tell(new MinutesTold(MinutesTold.Washing, 20));
        Assert.Equal(new Span(20, 20, false), Back(book).Steps.Single(s => s.Work.Sort == WorkSort.Ready).Minutes);
        book.Tell(new PartWashed("own.head"));
        Assert.DoesNotContain(Back(book).Steps, s => s.Work.Sort == WorkSort.Ready);
    }

    [Fact]
    public void Studs_that_came_out_are_screwed_in_first()
    {
        using var book = Off();
        book.Tell(new StudsOut("j-own.head", 3));
        var report = Back(book);
        Assert.Equal(["now: own.head own.lid own.starter studs:own.head"], Told(report));
        var order = report.Steps.Select(s => s.Work.Id).ToList();
        Assert.True(order.IndexOf("studs:own.head") < order.IndexOf("own.head"));
        // Three of one to two minutes.
        Assert.Equal(new Span(3, 6, true), report.Steps.Single(s => s.Work.Id == "studs:own.head").Minutes);
    }

    [Fact]
    public void Lead_time_ends_when_the_part_has_come()
    {
        using var book = Off();
        book.Tell(new LeadTold("own.starter", 2, 20, 30));
        Assert.Equal("2026-11-29: own.starter", Told(Back(book))[1]);
        book.Tell(new PartRenewed("own.starter"));
        Assert.Equal(["now: own.head own.lid own.starter"], Told(Back(book)));
    }

    [Fact]
    public void Readings_that_a_gate_asks_for_come_before_the_part_that_closes_it()
    {
        using var book = new BenchBook("layout=inline n=4");
        BenchReplay.Holds(book, StripReport.Of(book.Bench, Today, Effort).Steps.Select(s => s.Work));
        var report = Back(book);
        var order = report.Steps.Select(s => s.Work.Id).ToList();
        foreach (var read in report.Steps.Where(s => s.Work.Sort == WorkSort.Read))
        {
            var closer = read.Work.Id["read:".Length..];
            Assert.NotNull(book.Bench.GateClosedBy(closer));
            Assert.True(order.IndexOf(read.Work.Id) < order.IndexOf(closer), read.Work.Return);
        }

        // Four cylinders of four valves: sixteen clearances, one to two minutes each.
        var cover = report.Steps.Single(s => s.Work.Id == $"read:{book.First("cam-cover")}");
        Assert.Equal("read, before the cam cover goes on: valve clearance (16 readings)", cover.Work.Return);
        Assert.Equal(new Span(16, 32, true), cover.Minutes);
        book.Tell(new NotApplicable("valve-clearance", [], "checked by the invented shop"));
        Assert.DoesNotContain(Back(book).Steps, s => s.Work.Id == cover.Work.Id);
    }

    [Theory]
    [MemberData(nameof(BenchBook.Engines), MemberType = typeof(BenchBook))]
    public void Each_step_is_in_the_first_stage_that_it_can_be_in(string engine)
    {
        using var book = new BenchBook(engine);
        BenchReplay.Holds(book, StripReport.Of(book.Bench, Today, Effort).Steps.Select(s => s.Work));
        var off = book.Bench.WayBackOn().Select(s => s.Part).ToArray();
        // Everything that is renewed is there but every fifth, which comes in its own number of days.
        foreach (var (part, k) in off.Where(p => book.Bench.Engine.Parts[p].Renewal == Renewal.EveryStrip).Select((p, k) => (p, k)))
            book.Tell(k % 5 == 4 ? new LeadTold(part, k, k + 1, k + 2) : new PartRenewed(part));
        var report = Back(book);
        Assert.InRange(report.Plan.BoundSeconds, 1, report.Plan.TotalSeconds);
        var stageOf = report.Stages.SelectMany((s, k) => s.Steps.Select(x => (x.Work.Id, k))).ToDictionary(x => x.Id, x => x.k);
        foreach (var (stage, k) in report.Stages.Select((s, k) => (s, k)))
        {
            var waiting = stage.Waits.Select(w => w.Part).ToHashSet();
            foreach (var step in stage.Steps)
            {
                var latest = step.After.Select(id => stageOf[id]).DefaultIfEmpty(0).Max();
                Assert.True(latest <= k, $"{step.Work.Return} before what it waits for");
                Assert.True(latest == k || k == 0 || waiting.Contains(step.Work.Id) || step.Work.Sort == WorkSort.Ready, $"{step.Work.Return} could be done earlier");
            }
        }
    }
}
