namespace Gudgeon.Journal.Tests;

public class MeansTests
{
    private static readonly DateTimeOffset friday = new(2026, 11, 13, 17, 0, 0, TimeSpan.FromHours(1));

    [Fact]
    public void Equipment_told_last_stands_whatever_its_spelling()
    {
        using var book = new TestBook();
        book.Good(new Tell(new EquipmentTold("Engine  stand", false)));
        book.Good(new Tell(new EquipmentTold("engine stand", true, friday)));
        Assert.Equal([new EquipmentTold("engine stand", true, friday)], book.Bench.Equipment.Values);
        book.Reopen();
        Assert.Equal([new EquipmentTold("engine stand", true, friday)], book.Bench.Equipment.Values);
        Assert.Equal("engine stand: there from Fri 13 Nov 2026 17:00", book.Bench.Equipment["engine stand"].Words(book.Bench));
    }

    [Theory]
    [InlineData(" ", true, 0, 0, "equipment: met nothing; expected what it is, such as engine stand. Name it.")]
    [InlineData("puller", false, 1, 0, "puller: met days for what is not there; expected days only for what comes or goes. Leave out the days, or say that you have it then.")]
    [InlineData("puller", true, 2, 1, "puller: met until 14 Nov 2026 17:00, from 15 Nov 2026 17:00; expected an end after its beginning. Correct one of them.")]
    public void Equipment_that_cannot_be_is_refused(string what, bool have, int from, int until, string message)
    {
        using var book = new TestBook();
        Assert.Equal(message, book.Refused(new Tell(new EquipmentTold(what, have, from == 0 ? null : friday.AddDays(from), until == 0 ? null : friday.AddDays(until)))));
    }

    [Theory]
    [InlineData("mon-fri 19-22, sat 10:00-17:30", "mon 19:00-22:00, tue 19:00-22:00, wed 19:00-22:00, thu 19:00-22:00, fri 19:00-22:00, sat 10:00-17:30")]
    [InlineData("Saturday 20-24", "sat 20:00-00:00")]
    [InlineData("fri-mon 9-10", "fri 09:00-10:00, sat 09:00-10:00, sun 09:00-10:00, mon 09:00-10:00")]
    public void Hours_are_read_as_people_write_them(string text, string week) => Assert.Equal(week, string.Join(", ", DayHours.Read(text).Value));

    [Theory]
    [InlineData("")]
    [InlineData("evenings")]
    [InlineData("mon 19")]
    [InlineData("mon 19-19")]
    [InlineData("mon 25-26")]
    [InlineData("mo 19-22")]
    [InlineData("mon-fri-sun 19-22")]
    public void Hours_that_are_none_are_refused_with_an_example(string text) =>
        Assert.Contains("mon-fri 19-22", string.Join(" ", DayHours.Read(text).Refusals), StringComparison.Ordinal);

    [Theory]
    [InlineData("mon-fri 19-22, sat-sun 10-17", "mon-fri 19:00-22:00, sat-sun 10:00-17:00")]
    [InlineData("mon 19-22, wed 19-22, fri-mon 8-9", "mon 19:00-22:00, wed 19:00-22:00, fri-mon 08:00-09:00")]
    [InlineData("mon-sun 9-18, mon 19-20", "mon-sun 09:00-18:00, mon 19:00-20:00")]
    [InlineData("sat 10-12, sat 14-18", "sat 10:00-12:00, sat 14:00-18:00")]
    public void Week_is_told_as_it_is_typed_and_read_back_the_same(string typed, string told)
    {
        var week = DayHours.Read(typed).Value;
        Assert.Equal(told, DayHours.Words(week));
        Assert.Equal(week, DayHours.Read(told).Value);
    }

    [Fact]
    public void Hours_and_minutes_survive_the_disk()
    {
        using var book = new TestBook();
        book.Good(new Tell(new HoursTold(DayHours.Read("sat 10-17").Value), new MinutesTold("own.starter", 25)));
        book.Reopen();
        Assert.Equal(["sat 10:00-17:00"], book.Bench.Hours.Select(h => h.ToString()));
        Assert.Equal(25, book.Bench.MinutesOf("own.starter"));
        Assert.Null(book.Bench.MinutesOf("own.head"));
    }

    [Theory]
    [InlineData("own.dynamo", 5, "minutes: met \"own.dynamo\"; expected a part, line or operation of this engine. Look at its name.")]
    [InlineData("own.starter", 0, "starter: met 0 minutes; expected 1 to 6000 minutes. Say how long it takes.")]
    [InlineData("own.starter", 6001, "starter: met 6001 minutes; expected 1 to 6000 minutes. Say how long it takes.")]
    public void Minutes_that_cannot_be_are_refused(string what, int minutes, string message)
    {
        using var book = new TestBook();
        Assert.Equal(message, book.Refused(new Tell(new MinutesTold(what, minutes))));
    }

    [Fact]
    public void Plan_kept_is_there_with_its_inputs()
    {
        using var book = new TestBook();
        book.Good(new Tell(new PlanKept(["own.starter", "own.cover"], 3600, 3000)));
        book.Reopen();
        Assert.Equal(["own.starter", "own.cover"], ((PlanKept)book.Bench.KeptPlan!.Entry).Order);
        Assert.Equal("plan: met 10 seconds under a bound of 20; expected a plan that takes no less than its bound. Plan again, then keep it.", book.Refused(new Tell(new PlanKept(["own.starter"], 10, 20))));
    }
}
