namespace Gudgeon.Journal.Tests;

public class StripTests
{
    [Fact]
    public void TakeOff_carries_what_is_still_joined()
    {
        using var book = new TestBook();
        var reply = book.Good(new TakeOff("own.manifold", [new OutLot(4, "M8x35", "stud", "own holes")], "top shelf"));
        Assert.Equal(Spot.Riding, book.Bench.Part("own.rail").Where.Spot);
        Assert.Equal("own.manifold", book.Bench.Part("own.injector").Where.Name);
        Assert.Equal(
            ["inlet manifold joint: 4 M8x35 studs out, in their own holes", "inlet manifold off with fuel rail and injector still on it; it is on the top shelf"],
            reply.Entries.Select(r => r.Entry.Words(book.Bench)));
    }

    [Fact]
    public void TakeOff_of_a_rider_splits_the_unit_on_the_bench()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.manifold", To: "shelf"));
        var reply = book.Good(new TakeOff("own.rail", [new OutLot(2, "M6x16", "", "bag 4")], "tub"));
        Assert.Equal(new Whereabouts(Spot.Place, "tub"), book.Bench.Part("own.rail").Where);
        Assert.Equal(Whereabouts.Riding("own.rail"), book.Bench.Part("own.injector").Where);
        Assert.Equal(new Whereabouts(Spot.Place, "shelf"), book.Bench.Part("own.manifold").Where);
        Assert.Equal("fuel rail off the inlet manifold with injector still on it; it is in the tub", reply.Entries[1].Entry.Words(book.Bench));
    }

    [Fact]
    public void TakeOff_parts_the_lines_that_leave_the_unit()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.manifold"));
        Assert.True(book.Bench.Line("own.feed").IsParted);
        Assert.True(book.Bench.Line("own.feed").IsImplied);
        book.Good(new Tell(new LineParted("own.feed", "7", ["own.rail.own.feed-from"])));
        Assert.Equal("7", book.Bench.Line("own.feed").Tag);
    }

    [Fact]
    public void TakeOff_twice_is_refused_in_four_parts()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.starter", To: "Bag  3"));
        Assert.Equal(
            "starter: met it is off already, in bag 3; expected a part that is still on. Strike out the entry that took it off, or say where you put it.",
            book.Refused(new TakeOff("own.starter")));
    }

    [Fact]
    public void FastenersOut_fewer_than_counted_leaves_the_rest_unaccounted()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.starter", [new OutLot(2, "", "", "bag 3")]));
        var joint = book.Bench.Joint("j-own.starter");
        Assert.Equal(1, joint.Short);
        var finding = Assert.Single(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.CountShort);
        Assert.Equal("count-short: starter joint: 2 of 3 fasteners, 1 not accounted for. Find them, or get new ones.", finding.ToString());
        book.Good(new Tell(new FastenersFound("j-own.starter", 1, "bag 3")));
        Assert.DoesNotContain(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.CountShort);
        Assert.Equal(3, joint.Lots.Sum(l => l.Count));
    }

    [Fact]
    public void FastenersOut_more_than_counted_corrects_the_count()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.starter", [new OutLot(4, "M10x60", "", "bag 3")]));
        Assert.Equal(4, book.Bench.Joint("j-own.starter").Required);
        Assert.Equal(0, book.Bench.Joint("j-own.starter").Short);
    }

    [Fact]
    public void FastenersOut_of_a_guessed_joint_counts_it()
    {
        using var book = new TestBook();
        Assert.Null(book.Bench.Joint("j-own.manifold").Required);
        book.Good(new TakeOff("own.manifold", [new OutLot(6, "M8x35", "", "tray 3"), new OutLot(2, "M8x60", "", "tray 3")]));
        Assert.Equal(8, book.Bench.Joint("j-own.manifold").Required);
        Assert.Equal(Gudgeon.Engine.Standing.Counted, book.Bench.Joint("j-own.manifold").Standing);
    }

    [Fact]
    public void FastenersOut_half_is_a_state()
    {
        using var book = new TestBook();
        book.Good(new Tell(new FastenersOut("j-own.head", [new OutLot(3, "", "", "tray 1")], All: false)));
        Assert.Equal(JointPhase.HalfUndone, book.Bench.Joint("j-own.head").Phase);
        Assert.Contains(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.HalfUndone);
    }

    [Fact]
    public void FastenersOut_when_all_are_out_is_refused()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.starter", [new OutLot(3, "", "", "bag 3")]));
        Assert.Equal(
            "starter joint: met all 3 are out already; expected fasteners that are still in. Correct the count, or strike out the entry that took them out.",
            book.Refused(new Tell(new FastenersOut("j-own.starter", [new OutLot(1)]))));
    }

    [Fact]
    public void PartOff_untold_fasteners_that_were_counted_are_out_and_unplaced()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.starter", To: "bench"));
        Assert.Equal(3, book.Bench.Joint("j-own.starter").Lots.Single(l => l.Where.Spot == Spot.Unplaced).Count);
        Assert.Contains(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.FastenersUnplaced);
        book.Good(new Tell(new FastenersPut("j-own.starter", "bag 9")));
        Assert.DoesNotContain(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.FastenersUnplaced);
    }

    [Fact]
    public void PartAbsent_takes_what_it_carries_with_it()
    {
        using var book = new TestBook();
        book.Good(new Tell(new PartAbsent("own.manifold")));
        Assert.True(book.Bench.Part("own.injector").IsAbsent);
        Assert.Equal(
            "injector: met this engine does not have it; expected a part of this engine. Strike out the entry that said so if it does.",
            book.Refused(new TakeOff("own.injector")));
    }

    [Fact]
    public void Find_place_comes_alone_and_words_match_all()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.starter", [new OutLot(3, "M10x60", "bolt", "bag 1")], "bag 12"));
        Assert.Equal(["3 M10x60 bolts of the starter joint"], Account.Find(book.Bench, "Bag 1").Select(l => l.What));
        Assert.Equal(["starter"], Account.Find(book.Bench, "bag 12").Select(l => l.What));
        Assert.Equal(["fuel rail"], Account.Find(book.Bench, "fuel rail").Select(l => l.What));
        Assert.Empty(Account.Find(book.Bench, "dynamo"));
    }

    [Fact]
    public void Block_goes_to_the_shop_with_what_is_still_on_it_and_comes_back_as_the_engine()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.head", To: "bench"));
        book.Good(new Tell(new PartSent("own.block", "the machine shop", "bore and hone")));
        Assert.Equal(Whereabouts.Riding("own.block"), book.Bench.Part("own.starter").Where);
        Assert.Contains(AllBack.MissingFrom(book.Bench), f => f.Name == FindingNames.PartAway);
        book.Good(new Tell(new PartReturned("own.block", "the machine shop")));
        Assert.True(book.Bench.Part("own.block").IsOn);
        Assert.True(book.Bench.Part("own.starter").IsOn);
        Assert.False(book.Bench.Part("own.head").IsOn);
    }

    [Fact]
    public void FastenersOut_lots_without_a_place_are_not_taken_for_each_other()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.manifold", [new OutLot(2, "", "bolt"), new OutLot(1, "", "", null, Fate.Broken)]));
        var joint = book.Bench.Joint("j-own.manifold");
        Assert.Equal((3, 1), (joint.Required, joint.Short));
        Assert.Equal(2, joint.Lots.Single(l => l.Where.Spot == Spot.Unplaced).Count);
    }
}
