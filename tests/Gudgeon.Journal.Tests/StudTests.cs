namespace Gudgeon.Journal.Tests;

/// <summary>Studs that stay in the block when their nuts come off, and those that come out with them. The engine is invented.</summary>
public class StudTests
{
    private const string Joint = "j-own.head";

    private static TestBook Off()
    {
        var book = new TestBook();
        book.Good(new TakeOff("own.cover", [new OutLot(6, "M6x25", "bolt", "bag 2")], "shelf"), new TakeOff("own.head", [new OutLot(4, "M10", "nut", "bag 1")], "bench"));
        return book;
    }

    private static StudCount Studs(TestBook book) => book.Bench.Joint(Joint).Studs;

    [Fact]
    public void Studs_are_counted_and_those_that_came_out_are_missed_until_they_are_back()
    {
        using var book = Off();
        book.Good(new Tell(new StudsCounted(Joint, 4)));
        Assert.Equal("4 studs, all in", Studs(book).Words());
        book.Good(new Tell(new StudsOut(Joint, 2)));
        Assert.Equal("4 studs, 2 of them out", Studs(book).Words());
        var finding = Assert.Single(AllBack.MissingFrom(book.Bench), f => f.Name == FindingNames.StudOut);
        Assert.Equal((Joint, "2 studs out"), (finding.About, finding.Met));
        Assert.Contains("2 studs to screw in again first", new RefitWaits(book.Bench).Of("own.head"));
        book.Reopen();
        book.Good(new Tell(new StudsBack(Joint, 2)));
        Assert.DoesNotContain(AllBack.MissingFrom(book.Bench), f => f.Name == FindingNames.StudOut);
    }

    [Fact]
    public void No_nut_goes_on_where_the_stud_is_out()
    {
        using var book = Off();
        book.Good(new Tell(new StudsOut(Joint, 1)), new PutBack("own.head"));
        Assert.Contains("4 in with 1 stud out; expected each stud in before its nut. Screw the studs in again and say so.", book.Refused(new Tell(new FastenersIn(Joint, 4))), StringComparison.Ordinal);
        book.Good(new Tell(new FastenersIn(Joint, 3)));
        Assert.Contains("4 in with 1 stud out", book.Refused(new Tell(new FastenersIn(Joint, 1))), StringComparison.Ordinal);
        book.Good(new Tell(new StudsBack(Joint, 1)), new Tell(new FastenersIn(Joint, 1)));
        Assert.Equal(JointPhase.Done, book.Bench.Joint(Joint).Phase);
    }

    [Fact]
    public void Broken_stud_is_bought_and_only_a_new_one_takes_its_place()
    {
        using var book = Off();
        book.Good(new Tell(new StudsOut(Joint, 2, 1)));
        BuyLine Line() => Assert.Single(BuyList.Of(book.Bench), l => l.Thing == $"stud {Joint}");
        Assert.Equal((1, "to buy", "1 broken"), (Line().Need, Line().Stand, Line().Why));
        book.Good(new Tell(new Ordered($"stud {Joint}", 1)));
        Assert.Equal("ordered", Line().Stand);
        book.Good(new Tell(new Bought($"stud {Joint}", 1)));
        Assert.Equal("at hand", Line().Stand);
        Assert.Contains("2 old ones back; expected 1 at most, for 1 broke. Say how many are new.", book.Refused(new Tell(new StudsBack(Joint, 2))), StringComparison.Ordinal);
        book.Good(new Tell(new StudsBack(Joint, 2, 1)));
        Assert.DoesNotContain(BuyList.Of(book.Bench), l => l.Thing == $"stud {Joint}");
        Assert.Equal((0, 0), (Studs(book).Out, book.Bench.Bought[$"stud {Joint}"].AtHand));
    }

    [Fact]
    public void Nut_leans_on_its_stud_so_the_stud_is_not_struck_out_from_under_it()
    {
        using var book = Off();
        book.Good(new Tell(new StudsOut(Joint, 1)));
        var back = book.Good(new Tell(new StudsBack(Joint, 1))).Entries[0].Number;
        var nuts = book.Good(new PutBack("own.head"), new Tell(new FastenersIn(Joint, 4))).Entries[^1].Number;
        Assert.Contains($"entry {back}: met entry {nuts} leans on it", book.Refused(new Tell(new Struck(back))), StringComparison.Ordinal);
    }

    public static TheoryData<Entry, string> Bad => new()
    {
        { new StudsCounted("j-nowhere", 4), "j-nowhere" },
        { new StudsCounted(Joint, 0), "0 studs; expected 1 to 4, a fastener for each" },
        { new StudsCounted(Joint, 5), "5 studs; expected 1 to 4, a fastener for each" },
        { new StudsOut(Joint, 0), "0 studs out, 0 of them broken; expected 1 or more, and no more broken than came out" },
        { new StudsOut(Joint, 1, 2), "1 studs out, 2 of them broken" },
        { new StudsOut(Joint, 5), "5 studs out; expected 4 at most, as counted" },
        { new StudsOut("j-own.rail", 1), "it is not open; expected a joint with its nuts off" },
        { new StudsBack(Joint, 1), "1 stud back; expected a joint with studs out" },
        { new StudsBack(Joint, 1, 2), "1 stud back, 2 of them new" },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void Count_that_cannot_be_is_refused(Entry entry, string expected)
    {
        using var book = Off();
        Assert.Contains(expected, book.Refused(new Tell(entry)), StringComparison.Ordinal);
    }

    [Fact]
    public void Joint_that_is_tightened_by_stages_asks_for_free_threads_and_empty_holes()
    {
        using var book = Off();
        book.Good(new Tell(new ProcedureSet(Joint, [new Stage(StageSort.Torque, "30 Nm", 30)], "oiled", false)), new PutBack("own.head"), new Tell(new FastenersIn(Joint, 4)));
        Assert.Single(BenchFindings.Of(book.Bench), f => f is { Name: FindingNames.HolesNotBlown, About: Joint });
        var blown = book.Good(new Tell(new HolesBlown(Joint))).Entries[0].Number;
        Assert.DoesNotContain(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.HolesNotBlown);
        book.Good(new Tell(new Struck(blown)));
        Assert.Single(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.HolesNotBlown);
    }
}
