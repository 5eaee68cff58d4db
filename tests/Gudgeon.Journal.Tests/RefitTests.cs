namespace Gudgeon.Journal.Tests;

public class RefitTests
{
    // One was told to come out, three went in, two of them new: two old ones more must have come out, and nothing more than three holes can be full.
    [Fact]
    public void Count_taken_after_new_ones_went_in_fills_no_hole_twice()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.injector", [new OutLot(1, "", "", "tray")], All: false), new Tell(new PartOn("own.injector")), new Tell(new FastenersIn("j-own.injector", 3, Fresh: 2)));

        book.Good(new Tell(new FastenersCounted("j-own.injector", 3)));

        var joint = book.Bench.Joint("j-own.injector");
        Assert.Equal((3, 3, 2, JointPhase.Done), (joint.Required, joint.In, joint.Fresh, joint.Phase));
        Assert.Equal([("engine", 3), ("scrap", 2)], joint.Lots.Select(l => (l.Where.Spot.ToString().ToLowerInvariant(), l.Count)));
    }

    [Fact]
    public void WayBackOn_is_the_other_way_round()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.starter", To: "bench"));
        book.Good(new TakeOff("own.cover", To: "shelf"));
        book.Good(new TakeOff("own.head", To: "shelf"));
        Assert.Equal(["own.head", "own.cover", "own.starter"], book.Bench.WayBackOn().Select(s => s.Part));
    }

    [Fact]
    public void WayBackOn_keeps_to_learned_access()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.cover", To: "shelf"));
        book.Good(new TakeOff("own.starter", To: "bench"));
        book.Good(new Tell(new AccessLearned("own.starter", ["own.cover"], "bolt behind it")));
        var steps = book.Bench.WayBackOn();
        Assert.Equal("own.starter", steps[0].Part);
        Assert.Equal(["own.starter"], steps.Single(s => s.Part == "own.cover").WaitsFor);
    }

    [Fact]
    public void AccessLearned_that_closes_a_ring_is_refused_with_the_chain()
    {
        using var book = new TestBook();
        book.Good(new Tell(new AccessLearned("own.starter", ["own.cover"])));
        Assert.Equal(
            "cam cover: met starter before it; expected an order that can be worked, for the book holds already: cam cover before starter. Strike out the one that is wrong.",
            book.Refused(new Tell(new AccessLearned("own.cover", ["own.starter"]))));
    }

    [Fact]
    public void TakeOff_before_what_was_learned_to_hold_it_corrects_the_book()
    {
        using var book = new TestBook();
        book.Good(new Tell(new AccessLearned("own.starter", ["own.cover"])));
        Assert.Equal("own.cover", Assert.Single(book.Bench.BlockersOf("own.starter").First).Id);
        book.Good(new TakeOff("own.starter", To: "bench"));
        Assert.Empty(book.Bench.Engine.Access["own.starter"].First);
    }

    [Fact]
    public void AllBack_is_empty_only_when_parts_joints_and_lines_are_back()
    {
        using var book = new TestBook();
        Assert.Empty(AllBack.MissingFrom(book.Bench));
        book.Good(new TakeOff("own.manifold", [new OutLot(4, "M8", "", "own holes")], "shelf"));
        Assert.Equal([FindingNames.PartOff, FindingNames.JointOpen, FindingNames.LineParted], AllBack.MissingFrom(book.Bench).Select(f => f.Name));
        book.Good(new Tell(new PartOn("own.manifold")));
        book.Good(new Tell(new FastenersIn("j-own.manifold", 3)));
        Assert.Equal(JointPhase.HalfDone, book.Bench.Joint("j-own.manifold").Phase);
        book.Good(new Tell(new FastenersIn("j-own.manifold", 1)));
        Assert.Equal("fuel feed hose", Assert.Single(AllBack.MissingFrom(book.Bench)).Where);
        book.Good(new Tell(new LineJoined("own.feed")));
        Assert.Empty(AllBack.MissingFrom(book.Bench));
    }

    [Fact]
    public void FastenersIn_new_ones_stand_in_for_the_lost_and_scrap_what_is_left_over()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.head", [new OutLot(3, "", "", "tray 1"), new OutLot(1, "", "", null, Fate.Broken)], "shelf"));
        Assert.Equal(1, book.Bench.Joint("j-own.head").Short);
        book.Good(new Tell(new PartOn("own.head")));
        book.Good(new Tell(new FastenersIn("j-own.head", 4, Fresh: 4)));
        var joint = book.Bench.Joint("j-own.head");
        Assert.Equal(JointPhase.Done, joint.Phase);
        Assert.Equal(0, joint.Short);
        Assert.Equal(3, joint.Lots.Single(l => l.Where.Spot == Spot.Scrap).Count);
        Assert.Equal(1, joint.Lots.Single(l => l.Where.Spot == Spot.Broken).Count);
    }

    [Fact]
    public void FastenersIn_before_the_part_is_refused()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.starter", To: "bench"));
        Assert.Equal(
            "starter joint: met the starter is still off; expected the part back on before its fasteners. Record the part as back on first.",
            book.Refused(new Tell(new FastenersIn("j-own.starter", 3))));
    }

    [Fact]
    public void FastenersIn_more_than_counted_is_refused()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.starter", [new OutLot(3)], "bench"));
        book.Good(new Tell(new PartOn("own.starter")));
        Assert.Equal(
            "starter joint: met 4 in; expected 3, as counted. Count again; correct the count if the engine has more.",
            book.Refused(new Tell(new FastenersIn("j-own.starter", 4))));
    }

    [Fact]
    public void PartOn_of_a_split_part_rides_until_its_carrier_is_on()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.manifold", To: "shelf"));
        book.Good(new TakeOff("own.rail", To: "tub"));
        book.Good(new Tell(new PartOn("own.rail")));
        Assert.Equal(Whereabouts.Riding("own.manifold"), book.Bench.Part("own.injector").Where);
        book.Good(new Tell(new PartOn("own.manifold")));
        Assert.True(book.Bench.Part("own.injector").IsOn);
    }
}
