using Gudgeon.Journal;
using Gudgeon.Planning.OnTheBench;

namespace Gudgeon.Planning.Tests.OnTheBench;

public class JobOnTheBenchTests
{
    private const int Effort = 200;

    private static readonly Circumstances Today = new(BenchBook.Now);

    [Theory]
    [MemberData(nameof(BenchBook.Engines), MemberType = typeof(BenchBook))]
    public void Whole_strip_replayed_in_the_book_holds_and_leaves_only_what_it_says(string engine)
    {
        using var book = new BenchBook(engine);
        var report = StripReport.Of(book.Bench, Today, Effort);
        Assert.InRange(report.Plan.BoundSeconds, 1, report.Plan.TotalSeconds);
        BenchReplay.Holds(book, report.Steps.Select(s => s.Work));
        var left = report.Left.Select(l => l.Name).ToHashSet();
        Assert.All(book.Bench.Engine.Parts.Values.Where(p => book.Bench.Part(p.Id).IsOn && book.Bench.Engine.CarrierOf(p.Id) is not null), p => Assert.Contains(p.Name, left));
        Assert.All(report.Left, l => Assert.NotEmpty(l.Reasons));
    }

    [Fact]
    public void Plan_kept_is_followed_after_an_entry_and_tells_what_moved()
    {
        using var book = new BenchBook("layout=inline n=4");
        var first = StripReport.Of(book.Bench, Today, Effort);
        var ids = first.Steps.Select(s => s.Work.Id).ToArray();
        book.Tell(new PlanKept(ids, first.Plan.TotalSeconds, first.Plan.BoundSeconds));
        Assert.Equal(ids, StripReport.Of(book.Bench, Today, Effort).Steps.Select(s => s.Work.Id));

        var starter = Array.FindIndex(ids, id => book.Bench.Engine.Parts.TryGetValue(id, out var p) && p.Kind == "starter");
        var later = ids.Skip(starter + 1).First(id => book.Bench.Engine.Parts.TryGetValue(id, out var p) && p.Kind is "cam-cover" or "tensioner" or "timing-cover");
        book.Tell(new AccessLearned(ids[starter], [later]));
        var again = StripReport.Of(book.Bench, Today, Effort);
        Assert.Contains(again.Moves, m => m.Doing.Contains("starter", StringComparison.Ordinal));
        // Only the starter and what follows it move: everything else keeps its turn.
        Assert.All(again.Moves, m => Assert.StartsWith("waits for ", m.Why, StringComparison.Ordinal));
        Assert.InRange(again.Moves.Length, 1, again.Steps.Length / 10);
        BenchReplay.Holds(book, again.Steps.Select(s => s.Work));
    }

    [Fact]
    public void Days_keep_to_the_hours_the_windows_and_the_order()
    {
        using var book = new BenchBook("layout=inline n=4");
        var stand = new DateTimeOffset(2026, 11, 21, 9, 0, 0, TimeSpan.FromHours(1));
        book.Tell(new EquipmentTold("engine stand", true, stand), new HoursTold(DayHours.Read("sat 10-18, wed 19-22").Value));
        var days = DaysReport.Of(book.Bench, Today, Effort, trials: 3, draws: 50);
        Assert.Empty(days.Plan.Unplaced);
        var finish = days.Plan.Placed.ToDictionary(p => p.Task.Id, p => p.Finish);
        foreach (var placed in days.Plan.Placed)
        {
            Assert.All(placed.Task.After, before => Assert.True(finish[before] <= placed.Start, $"{placed.Task.Title} begins before {before} ends"));
            Assert.All(placed.Pieces, piece => Assert.True(
                piece.From.DayOfWeek == DayOfWeek.Saturday && piece.From.Hour >= 10 && piece.Until.TimeOfDay <= TimeSpan.FromHours(18)
                || piece.From.DayOfWeek == DayOfWeek.Wednesday && piece.From.Hour >= 19 && piece.Until.TimeOfDay <= TimeSpan.FromHours(22), $"{placed.Task.Title}: {piece}"));
            if (placed.Task.Wants.Contains("engine stand"))
                Assert.True(placed.Start >= stand.DateTime);
        }

        Assert.True(days.StripDone < days.AllBack);
        Assert.True(days.Odds.Half <= days.Odds.NineInTen);
    }

    [Fact]
    public void Days_are_the_same_each_time()
    {
        using var book = new BenchBook("layout=inline n=4");
        var (one, other) = (DaysReport.Of(book.Bench, Today, Effort, 3, 50), DaysReport.Of(book.Bench, Today, Effort, 3, 50));
        Assert.Equal(one.Plan.Order, other.Plan.Order);
        Assert.Equal(one.Odds, other.Odds);
    }

    [Fact]
    public void Everything_that_comes_off_goes_back_on()
    {
        using var book = new BenchBook("layout=inline n=4");
        book.Send(new TakeOff(book.First("exhaust-pipe")!));
        var tasks = DaysReport.Of(book.Bench, Today, Effort, 0, 1).Tasks;
        var off = tasks.Where(t => t.Phase == Phase.Strip).SelectMany(t => t.Ids).Where(book.Bench.Engine.Parts.ContainsKey).Append(book.First("exhaust-pipe")!);
        var on = tasks.Where(t => t.Phase == Phase.Refit).SelectMany(t => t.Ids).Where(book.Bench.Engine.Parts.ContainsKey);
        Assert.Equal(off.Order(), on.Order());
    }

    [Fact]
    public void Offers_for_two_hours_alone_can_be_done_so()
    {
        using var book = new BenchBook("layout=inline n=4");
        var tasks = JobTasks.Of(book.Bench, Today, StripReport.Of(book.Bench, Today, Effort).Steps);
        var alone = WaitReport.Of(book.Bench, Today with { Alone = true, Without = ["pan"] }, 7200, tasks);
        Assert.NotEmpty(alone.Offers);
        Assert.All(alone.Offers, o =>
        {
            Assert.DoesNotContain("second person", o.Task.Wants);
            Assert.DoesNotContain("pan", o.Task.Wants);
            Assert.True(o.FitsWhole || o.Task.MaySplit);
            BenchWork? first = null;
            foreach (var id in tasks.First(t => t.Task.Id == o.Task.Id).Ids)
                first ??= book.Bench.BlockersOf(id).IsNone ? new BenchWork(id, WorkSort.Part, id, default) : null;
            Assert.NotNull(first);
        });
        Assert.Equal(alone.Offers.Select(o => o.Saves), alone.Offers.Select(o => o.Saves).OrderDescending());
    }

    [Fact]
    public void Part_on_order_goes_back_no_sooner_and_its_three_points_move_the_dates()
    {
        using var book = new BenchBook("layout=inline n=4");
        book.Tell(new HoursTold(DayHours.Read("mon-sun 8-20").Value));
        var sooner = DaysReport.Of(book.Bench, Today, Effort, 0, 200);
        var gasket = book.First("head-gasket")!;
        book.Tell(new LeadTold(gasket, 20, 40, 90));
        var later = DaysReport.Of(book.Bench, Today, Effort, 0, 200);
        var back = later.Plan.Placed.Single(p => later.PhaseOf(p.Task.Id) == Phase.Refit && later.Tasks.Single(t => t.Task.Id == p.Task.Id).Ids.Contains(gasket));
        Assert.True(back.Start >= BenchBook.Now.DateTime.AddDays(40), $"{back.Start}");
        Assert.True(later.Odds.Half > sooner.Odds.Half?.AddDays(15));
        Assert.True(later.Odds.NineInTen > later.Odds.Half?.AddDays(10));
    }

    [Theory]
    [InlineData(5, 3, 10)]
    [InlineData(-1, 3, 10)]
    [InlineData(1, 3, 1001)]
    public void Lead_time_that_does_not_rise_is_refused(int best, int likely, int worst)
    {
        using var book = new BenchBook("layout=inline n=4");
        var outcome = book.Book.Submit(new Sending("x", BenchBook.Now, BenchBook.Now, "test"), new Tell(new LeadTold(book.First("head-gasket")!, best, likely, worst)));
        Assert.Equal($"head gasket: met {best}, {likely}, {worst} days; expected days at best, most likely and at worst, rising, from 0 to 1000. Give the three in that order.", Assert.Single(outcome.Refusals).ToString());
    }
}
