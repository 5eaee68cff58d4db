namespace Gudgeon.Journal.Tests;

public class LiftMassTests
{
    // By hand: 200 kg at 250 mm less 40 kg at 450 mm: 160 kg at (50000 − 18000)/160 = 200 mm.
    [Fact]
    public void Part_that_came_off_since_is_off()
    {
        using var book = LiftBook.Told();
        book.Good(new Tell(new MassTold("own.head", 40, 0, "invented", new EnginePlace(450, 0, 0))));
        book.Good(new TakeOff("own.head"));
        var check = book.Check(LiftAssessor.LoadId);
        Assert.Equal("160 ± 0\u00a0kg", check.Figure("mass as it hangs"));
        Assert.Equal("200 ± 0\u00a0mm", check.Figure("centre of mass forward"));
    }

    [Fact]
    public void Part_that_was_off_when_the_whole_was_told_is_not_taken_off_again_and_adds_when_it_goes_on()
    {
        using var book = new TestBook();
        book.Good(new Tell(new MassTold("own.starter", 10, 0, "invented", new EnginePlace(0, 0, 0))));
        book.Good(new TakeOff("own.starter"));
        book.Good(new Tell(LiftBook.Engine));
        Assert.Equal("200 ± 0\u00a0kg", book.Check(LiftAssessor.LoadId).Figure("mass as it hangs"));
        book.Good(new PutBack("own.starter"));
        Assert.Equal("210 ± 0\u00a0kg", book.Check(LiftAssessor.LoadId).Figure("mass as it hangs"));
    }

    // The table's range for an inline four of petrol is 110 to 180 kg, the gearbox 30 to 90: 145 + 60, spreads 35 and 30·2/√3 = 34.6 in quadrature: 49.
    [Fact]
    public void Guess_is_a_guess_and_says_so()
    {
        using var book = new TestBook(engine: false);
        book.Good(new Tell(new BookStarted("Guessed four", new Dictionary<string, string> { ["layout"] = "inline", ["n"] = "4" })));
        Assert.Equal("205 ± 49\u00a0kg", book.Check(LiftAssessor.LoadId).Figure("mass as it hangs"));
        Assert.Contains("A guess", book.Book.Read(LiftAssessor.Of).LoadNotes[0], StringComparison.Ordinal);
        Assert.Contains("common practice, no source", book.Book.Read(LiftAssessor.Of).LoadNotes[0], StringComparison.Ordinal);
    }

    // 205 + 49 = 254 kg at most: the plate of the crane, the hook and the stand are held against that, never against the likely mass.
    [Fact]
    public void Guess_is_warned_of_and_counts_with_its_most()
    {
        using var book = new TestBook(engine: false);
        book.Good(new Tell(new BookStarted("Guessed four", new Dictionary<string, string> { ["layout"] = "inline", ["n"] = "4" })));
        var view = book.Book.Read(LiftAssessor.Of);
        Assert.Equal("mass: met a guess: 156\u00a0kg to 254\u00a0kg; expected a mass that somebody weighed. Weigh it front and rear before you choose gear; until then every check counts with 254\u00a0kg.", view.Doubts[0].ToString());
        Assert.Equal("centre of mass", view.Doubts[1].Where);
        // A rig round the guessed centre, invented: four legs well outside its spread.
        var at = view.Load!.Centre;
        RigLeg[] legs = [.. from x in new[] { -300.0, 300.0 } from y in new[] { -250.0, 250.0 } select new RigLeg($"{x} {y}", new(at.X + x, at.Y + y, at.Z + 400), 900)];
        var gear = legs.Select(leg => new RigGear("chain", leg.Name, "chain", "8", "10")).Append(new("hook", RigGear.OnHook, "other, rated", RatingKg: 1000));
        book.Good(new Tell(new RigTold(legs, [.. gear], 6), LiftBook.Crane, LiftBook.Place with { Heights = [new(MassTold.WholeEngine, 450, -250)] }));
        var most = view.Load.Mass.Kilograms + view.Load.MassSpread.Kilograms + 6;
        Assert.Equal(LiftText.Percent(most / 500), book.Check(LiftAssessor.PlateId).Figure("load on the plate"));
        Assert.Equal(LiftText.Percent(most / 1000), book.Check(LiftAssessor.GearId).Figures.Single(f => f.What.Contains("hook", StringComparison.Ordinal)).Value);
        Assert.Equal(most, book.Check(LiftAssessor.TippingId).Figures[0].Working.Inputs.Single(i => i.Symbol == "m").Value, 1e-9);
    }

    [Fact]
    public void Mass_that_was_weighed_is_not_doubted()
    {
        using var book = LiftBook.Told();
        Assert.Empty(book.Book.Read(LiftAssessor.Of).Doubts);
    }

    [Fact]
    public void More_off_than_the_guess_can_bear_is_refused()
    {
        using var book = LiftBook.Told();
        book.Good(new Tell(new MassTold("own.head", 250, 0, "invented", new EnginePlace(450, 0, 0))));
        book.Good(new TakeOff("own.head"));
        Assert.Equal("what is left: met -50 kg, give or take 0 kg; expected a mass above its own spread. Weigh what hangs, or tell its mass as it is now.", book.Check(LiftAssessor.LoadId).Refusals.Single().ToString());
    }

    [Theory]
    [InlineData(-5, 0, "the engine: met a mass of −5 kg; expected more than 0 kg, 100000 kg at most. Read the scale again, in kg.")]
    [InlineData(150, -1, "the engine: met a spread of −1 kg; expected 0 kg or more, 100000 kg at most. Say how far off the mass may be.")]
    [InlineData(150, 150, "the engine: met 150 kg, give or take 150 kg; expected a spread below the mass. Weigh it.")]
    public void Mass_that_cannot_be_is_refused(double mass, double spread, string message)
    {
        using var book = new TestBook();
        Assert.Equal(message, book.Refused(new Tell(new MassTold(MassTold.WholeEngine, mass, spread, "scale"))));
    }

    [Fact]
    public void Hooks_at_one_place_weigh_nothing()
    {
        using var book = new TestBook();
        Assert.Equal("hooks: met 20 mm from rear to front; expected 50 mm or more. Measure both forward from the bell-housing face.", book.Refused(new Tell(new Weighed(100, 120, 100, 100, 1, 0, 0, 20))));
    }

    [Theory]
    [InlineData("legs: met 0; expected one to four. Give each leg from the hook to the engine.", 0, "chain", "front")]
    [InlineData("chain: met \"rope\"; expected chain, choked chain, wire rope, choked wire rope, textile sling, choked textile sling, eye bolt, shackle, other, rated. Choose one of these.", 1, "rope", "front")]
    [InlineData("chain: met \"left\"; expected hook or front. Say which leg it is in.", 1, "chain", "left")]
    public void Rig_that_cannot_be_is_refused(string message, int legs, string sort, string on)
    {
        using var book = new TestBook();
        Assert.Equal(message, book.Refused(new Tell(new RigTold([.. Enumerable.Repeat(new RigLeg("front", new(0, 0, 0), 500), legs)], [new("chain", on, sort)], 0))));
    }
}
