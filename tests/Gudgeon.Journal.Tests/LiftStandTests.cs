namespace Gudgeon.Journal.Tests;

public class LiftStandTests
{
    public static readonly StandTold Stand = new(1500, 150, 0,
        [new("1", 130, 100), new("2", -130, 100), new("3", 130, -100), new("4", -130, -100)], "M12", "8.8", 0, 20, "cast iron");

    // By hand: 200 kg, 250 mm out and 150 mm to the post: 200·9.80665·0.4 = 784.5 N·m.
    [Fact]
    public void Moment_at_the_post_is_mass_times_distance()
    {
        using var book = LiftBook.Told();
        book.Good(new Tell(Stand));
        Assert.Equal("785\u00a0N·m", book.Book.Read(LiftAssessor.Of).Stand.Figure("moment at the post"));
    }

    [Fact]
    public void Bolts_whose_class_cannot_be_read_and_a_plate_that_is_too_weak_give_no_figure()
    {
        using var book = LiftBook.Told();
        book.Good(new Tell(Stand with { Strength = "" }));
        Assert.Equal((LiftStanding.Fails, 0), (book.Book.Read(LiftAssessor.Of).Stand.Standing, book.Book.Read(LiftAssessor.Of).Stand.Figures.Count));
        book.Good(new Tell(Stand with { PlateMomentNm = 700 }));
        Assert.Equal("stand: met 784.532 N·m at the post; expected 700 N·m at most by its plate. Strip the engine further before it goes on, or take a stronger stand.", book.Book.Read(LiftAssessor.Of).Stand.Refusals.Single().ToString());
    }

    [Fact]
    public void Arm_and_bolt_that_were_measured_are_judged()
    {
        using var book = LiftBook.Told();
        book.Good(new Tell(Stand));
        Assert.Equal(["bolt and hole", "arms of the stand"], book.Book.Read(LiftAssessor.Of).Stand.Warnings.Select(w => w.Where));
        book.Good(new Tell(Stand with { Hole = new(65, 45, 0), Finger = new(120, 50, 50, 50, 5) }));
        var judged = book.Book.Read(LiftAssessor.Of).Stand;
        Assert.Empty(judged.Warnings);
        Assert.Contains(judged.Figures, f => f.What.StartsWith("stress at the root of the worst arm", StringComparison.Ordinal));
        book.Good(new Tell(Stand with { Finger = new(250, 50, 40, 8, 0) }));
        Assert.Equal((LiftStanding.Fails, 0), (book.Book.Read(LiftAssessor.Of).Stand.Standing, book.Book.Read(LiftAssessor.Of).Stand.Figures.Count));
    }

    [Fact]
    public void Before_turning_names_what_is_not_done_and_what_nothing_holds()
    {
        using var book = new TestBook(engine: false);
        book.Good(new Tell(new BookStarted("Guessed four", new Dictionary<string, string> { ["layout"] = "inline", ["n"] = "4" })));
        var before = book.Book.Read(LiftAssessor.Of).BeforeTurning;
        Assert.Contains(before, line => line.Contains("drain the oil", StringComparison.OrdinalIgnoreCase) || line.Contains("oil", StringComparison.OrdinalIgnoreCase));
        Assert.Contains(before, line => line.EndsWith("gearbox off", StringComparison.Ordinal));
    }
}
