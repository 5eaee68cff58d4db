using Gudgeon.Engine;

namespace Gudgeon.Journal.Tests;

public class FirstStartTests
{
    private static TestBook Four()
    {
        var book = new TestBook(engine: false);
        book.Good(new Tell(new BookStarted("Invented four", new Dictionary<string, string> { ["layout"] = "inline", ["n"] = "4" })));
        return book;
    }

    [Fact]
    public void First_start_is_refused_until_its_gate_is_clear()
    {
        using var book = Four();
        Assert.Contains("(look-open)", book.Refused(new BeginPage(BeginPage.FirstStart)), StringComparison.Ordinal);
        Assert.Contains("the gate before the first start closed", book.Refused(new Tell(new StartStepDone("seconds"))), StringComparison.Ordinal);
        book.Good(new Tell(new StartStepDone("pressure", "2 bar after 40 seconds")));
        foreach (var look in book.Bench.Gate("GA6")!.Looks)
            book.Good(new Tell(new GateLooked("GA6", look, BeginPage.FirstStart)));
        book.Good(new BeginPage(BeginPage.FirstStart));
        book.Good(new Tell(new StartStepDone("seconds")));
        Assert.True(book.Bench.IsBegun(BeginPage.FirstStart));
    }

    [Fact]
    public void First_start_with_a_rag_in_needs_a_reason()
    {
        using var book = Four();
        book.Good(new Tell(new PutIn("rag", "inlet")));
        Assert.Contains("(still-in)", book.Refused(new BeginPage(BeginPage.FirstStart)), StringComparison.Ordinal);
        book.Good(new BeginPage(BeginPage.FirstStart, "an invented reason"));
        Assert.Contains(BenchFindings.Of(book.Bench), f => f.Name == "gate-overridden");
    }

    [Theory]
    [InlineData(2.0, null, 4, 88)] // 1 h and 25 h at 2 h a week: 3.5 and 87.5 days, rounded up by hand
    [InlineData(null, 100.0, 4, 105)] // 50 km and 1500 km at 100 km a week: 3.5 and 105 days
    [InlineData(2.0, 1000.0, 1, 11)] // whichever is met first: 0.35 and 10.5 days
    public void Reminders_fall_due_by_hours_or_distance(double? hours, double? km, int first, int last)
    {
        var plan = new RunningInBegun("2026-05-01", hours, km).Plan();
        var start = new DateOnly(2026, 5, 1);
        Assert.Equal((first, last), (plan[0].Day.DayNumber - start.DayNumber, plan[^1].Day.DayNumber - start.DayNumber));
    }

    [Fact]
    public void Running_in_without_a_rate_or_a_day_is_refused()
    {
        using var book = Four();
        Assert.Contains("hours or kilometres a week", book.Refused(new Tell(new RunningInBegun("2026-05-01", null, null))), StringComparison.Ordinal);
        Assert.Contains("a day, as 2026-05-01", book.Refused(new Tell(new RunningInBegun("May", 2, null))), StringComparison.Ordinal);
        Assert.Contains("more than 0 a week", book.Refused(new Tell(new RunningInBegun("2026-05-01", 0, null))), StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_say_when_to_stop_and_have_names_of_their_own()
    {
        Assert.Equal(FirstStart.Steps.Count, FirstStart.Steps.Select(s => s.Id).Distinct().Count());
        Assert.All(FirstStart.Steps.Where(s => s.Phase == StartPhase.Watch), s => Assert.NotEqual("", s.Stop));
        Assert.All(FirstStart.RunningIn, d => Assert.True(d is { Hours: > 0, Km: > 0 }));
    }
}
