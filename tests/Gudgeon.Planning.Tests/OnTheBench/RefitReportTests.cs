using Gudgeon.Journal;
using Gudgeon.Planning.OnTheBench;

namespace Gudgeon.Planning.Tests.OnTheBench;

public class RefitReportTests
{
    private const int Effort = 200;

    private static readonly Circumstances Today = new(BenchBook.Now);

    [Theory]
    [MemberData(nameof(BenchBook.Engines), MemberType = typeof(BenchBook))]
    public void Whole_refit_holds_the_way_back_of_the_book_and_leaves_nothing_off(string engine)
    {
        using var book = new BenchBook(engine);
        var strip = StripReport.Of(book.Bench, Today, Effort).Steps.Select(s => s.Work).ToArray();
        BenchReplay.Holds(book, strip);
        var report = RefitReport.Of(book.Bench, Today, Effort);
        Assert.True(report.IsOfWhatIsOff);
        Assert.InRange(report.Plan.BoundSeconds, 1, report.Plan.TotalSeconds);
        var waits = book.Bench.WayBackOn().ToDictionary(s => s.Part, s => s.WaitsFor);
        var offAt = strip.Select((w, k) => (w.Id, k)).ToDictionary(x => x.Id, x => x.k);
        var on = new HashSet<string>();
        foreach (var step in report.Steps.Select(s => s.Work))
        {
            Assert.All(waits.GetValueOrDefault(step.Id, []), first => Assert.True(on.Contains(first), $"{step.Return} before the {first}"));
            // Whatever was done under an operation, or needed a line parted, is back before that is taken back.
            if (step.Sort is WorkSort.Operation or WorkSort.Line)
            {
                var users = strip.Where(w => offAt[w.Id] > offAt[step.Id] && waits.ContainsKey(w.Id) && book.Bench.Engine.Access.TryGetValue(w.Id, out var access) && access.First.Any(n => n.Id == step.Id));
                Assert.All(users, user => Assert.True(on.Contains(user.Id), $"{step.Return} before the {user.Name}"));
            }

            Assert.True(on.Add(step.Id), $"{step.Return} twice");
        }

        Assert.Equal(
            waits.Keys.Concat(book.Bench.Engine.Lines.Values.Where(l => !l.IsPassage && book.Bench.Line(l.Id).IsParted).Select(l => l.Id))
                .Concat(book.Bench.Engine.Operations.Values.Where(o => o.IsTakenBack && book.Bench.IsDone(o.Id)).Select(o => o.Id)).Order(StringComparer.Ordinal),
            on.Except(report.Steps.Where(s => s.Work.Sort is WorkSort.Ready or WorkSort.Read).Select(s => s.Work.Id)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Refit_before_anything_is_off_is_that_of_the_whole_strip()
    {
        using var book = new BenchBook("layout=inline n=4");
        var report = RefitReport.Of(book.Bench, Today, Effort);
        var strip = StripReport.Of(book.Bench, Today, StripReport.QuickEffort);
        Assert.False(report.IsOfWhatIsOff);
        Assert.Equal(
            strip.Steps.Where(s => s.Work.Sort == WorkSort.Part).Select(s => s.Work.Id).Order(StringComparer.Ordinal),
            report.Steps.Where(s => s.Work.Sort == WorkSort.Part).Select(s => s.Work.Id).Order(StringComparer.Ordinal));
        var place = report.Steps.Select((s, k) => (s.Work.Id, k)).ToDictionary(x => x.Id, x => x.k);
        Assert.All(report.Steps, step => Assert.All(step.After, first => Assert.True(place[first] < place[step.Work.Id], $"{step.Work.Return} before {first}")));
    }

    [Fact]
    public void Refit_fills_and_connects_the_battery_last()
    {
        using var book = new BenchBook("layout=inline n=4");
        BenchReplay.Holds(book, StripReport.Of(book.Bench, Today, Effort).Steps.Select(s => s.Work));
        var steps = RefitReport.Of(book.Bench, Today, Effort).Steps;
        Assert.Equal(["fill with coolant", "fill with oil", "connect the battery"], steps[^3..].Select(s => s.Work.Return));
        Assert.Equal(steps.Select(s => s.Work.Id), RefitReport.Of(book.Bench, Today, Effort).Steps.Select(s => s.Work.Id));
    }

    [Fact]
    public void Refit_follows_what_the_owner_learned()
    {
        using var book = new BenchBook("layout=inline n=4");
        var (starter, alternator) = (book.First("starter")!, book.First("alternator")!);
        book.Tell(new OperationDone("op:battery-off"));
        book.Send(new TakeOff(alternator, All: false));
        book.Send(new TakeOff(starter, All: false));
        book.Tell(new AccessLearned(starter, [alternator]));
        var order = RefitReport.Of(book.Bench, Today, Effort).Steps.Select(s => s.Work.Id).ToList();
        Assert.True(order.IndexOf(starter) < order.IndexOf(alternator));
    }
}
