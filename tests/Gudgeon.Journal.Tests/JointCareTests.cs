using Gudgeon.Sums.Fasteners;

namespace Gudgeon.Journal.Tests;

/// <summary>Fasteners for use again, inserts, something on the end of the wrench, what is to buy, and exceptions with a reason.</summary>
public class JointCareTests
{
    private static TestBook Off(int lost = 0, int broken = 0)
    {
        var book = new TestBook();
        List<OutLot> lots = [new OutLot(4 - lost - broken, "M10x90", "bolt", "bag 1")];
        if (lost > 0)
            lots.Add(new OutLot(lost, "M10x90", "bolt", null, Fate.Lost));
        if (broken > 0)
            lots.Add(new OutLot(broken, "M10x90", "bolt", null, Fate.Broken));
        book.Good(new TakeOff("own.cover", [new OutLot(6, "M6x25", "bolt", "bag 2")], "shelf"), new TakeOff("own.head", lots, "bench"));
        return book;
    }

    private static BuyLine? ToBuy(TestBook book, string thing) => BuyList.Of(book.Bench).SingleOrDefault(l => l.Thing == thing);

    [Fact]
    public void Bolts_longer_than_the_book_lets_and_those_the_pitch_gauge_rocks_on_are_bought_and_may_not_go_in_again()
    {
        using var book = Off();
        // Invented lengths; two over the most, one more that is necked.
        book.Good(new Tell(new BoltsMeasured("j-own.head", 92.6, [92.1, 92.7, 92.6, 92.9], 1, "invented book")));
        Assert.Equal((3, "3 stretched or necked"), (ToBuy(book, "j-own.head")!.Need, ToBuy(book, "j-own.head")!.Why));
        book.Good(new PutBack("own.head"), new Tell(new FastenersIn("j-own.head", 4)));
        var finding = Assert.Single(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.BoltStretched);
        Assert.Equal("3 that were measured too long or necked are in", finding.Met);
    }

    [Fact]
    public void Bolts_measured_bad_are_settled_by_as_many_new_ones()
    {
        using var book = Off();
        book.Good(new Tell(new BoltsMeasured("j-own.head", 92.6, [92.1, 92.7, 92.6, 92.9])));
        book.Good(new Tell(new Bought("j-own.head", 2)));
        Assert.Equal("at hand", ToBuy(book, "j-own.head")!.Stand);
        book.Good(new PutBack("own.head"), new Tell(new FastenersIn("j-own.head", 4, 2)));
        Assert.DoesNotContain(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.BoltStretched);
        Assert.Null(ToBuy(book, "j-own.head"));
        Assert.Equal(0, book.Bench.Bought["j-own.head"].AtHand);
    }

    [Fact]
    public void Lengths_none_or_out_of_reach_or_too_many_bad_ones_are_refused()
    {
        using var book = Off();
        Assert.Contains("no length", book.Refused(new Tell(new BoltsMeasured("j-own.head", 92, []))), StringComparison.Ordinal);
        Assert.Contains("a length out of reach", book.Refused(new Tell(new BoltsMeasured("j-own.head", 92, [-1]))), StringComparison.Ordinal);
        Assert.Contains("5 bad ones", book.Refused(new Tell(new BoltsMeasured("j-own.head", 92, [], 5))), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("92.1 92.7", new[] { 92.1, 92.7 })]
    [InlineData("92,1; 92,7", new[] { 92.1, 92.7 })]
    [InlineData("3.5 in; 3 1/2 in", new[] { 88.9, 88.9 })] // 25.4 mm to the inch exactly, international yard and pound agreement 1959
    public void Lengths_are_read_as_people_type_them(string text, double[] expected) =>
        Assert.Equal(expected, BoltText.Lengths(text, Gudgeon.Sums.Quantities.BookUnits.Metric).Value.Select(l => Math.Round(l, 9)));

    [Fact]
    public void Snapped_and_lost_fasteners_are_on_the_buy_list_with_size_and_reason_until_they_are_in()
    {
        using var book = Off(lost: 1, broken: 1);
        var line = ToBuy(book, "j-own.head")!;
        Assert.Equal(("M10x90 bolt for the head joint", 2, "1 lost, 1 broken", "to buy"), (line.What, line.Need, line.Why, line.Stand));
        book.Good(new Tell(new Ordered("j-own.head", 2, "the fastener shop")));
        Assert.Equal("ordered", ToBuy(book, "j-own.head")!.Stand);
        book.Good(new Tell(new Bought("j-own.head", 1)));
        Assert.Equal((1, "ordered"), (ToBuy(book, "j-own.head")!.ToGet, ToBuy(book, "j-own.head")!.Stand));
        Assert.Equal(["1 new fastener to get (1 lost, 1 broken)"], new RefitWaits(book.Bench).Of("own.head"));
        book.Good(new Tell(new Bought("j-own.head", 1)));
        Assert.Empty(new RefitWaits(book.Bench).Of("own.head"));
        book.Good(new PutBack("own.head"), new Tell(new FastenersIn("j-own.head", 4, 2)));
        Assert.Null(ToBuy(book, "j-own.head"));
    }

    [Fact]
    public void Fasteners_that_turn_up_are_no_longer_to_buy()
    {
        using var book = Off(lost: 1);
        book.Good(new Tell(new FastenersFound("j-own.head", 1, "bag 1")));
        Assert.Null(ToBuy(book, "j-own.head"));
    }

    [Fact]
    public void Part_back_from_a_shop_waits_to_be_washed_and_is_a_finding_when_it_went_on_unwashed()
    {
        using var book = Off();
        book.Good(new Tell(new PartSent("own.head", "the invented shop", "skim")));
        Assert.Contains("away at the invented shop", new RefitWaits(book.Bench).Of("own.head")[0], StringComparison.Ordinal);
        book.Good(new Tell(new PartReturned("own.head", "the invented shop", "bench")));
        Assert.Equal(["back from a shop and not washed since"], new RefitWaits(book.Bench).Of("own.head"));
        book.Good(new PutBack("own.head"));
        Assert.Single(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.NotWashed);
        book.Good(new Tell(new PartWashed("own.head")));
        Assert.DoesNotContain(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.NotWashed);
    }

    [Fact]
    public void Extension_in_line_lowers_the_setting_and_the_stage_is_met_through_it()
    {
        using var book = Off();
        book.Good(new PutBack("own.head"), new Tell(new FastenersIn("j-own.head", 4)));
        book.Good(new Tell(new ProcedureSet("j-own.head", [new Stage(StageSort.Torque, "60 Nm", 60)], "oiled", false), new ExtensionSet("j-own.head", 300, 100)));
        // Lever: 60 N·m · 300/(300 + 100) = 45 N·m.
        Assert.Equal(45, book.Bench.Joint("j-own.head").Tightening.SettingOf(new Stage(StageSort.Torque, "60 Nm", 60))!.Value, 1e-9);
        book.Good(new Tell(new StageDone("j-own.head", 1, [1, 2], null, "45 Nm", 45)), new Tell(new StageDone("j-own.head", 1, [3])));
        Assert.DoesNotContain(TighteningFindings.Of(book.Bench), f => f.Name == FindingNames.StageDiffers);
        // The scale at 60 would have given the fastener 80 N·m.
        book.Good(new Tell(new StageDone("j-own.head", 1, [4], null, "60 Nm", 60)));
        Assert.Contains("60\u00A0N·m, 80\u00A0N·m at the fastener", Assert.Single(TighteningFindings.Of(book.Bench), f => f.Name == FindingNames.StageDiffers).Met, StringComparison.Ordinal);
    }

    [Fact]
    public void Extension_folded_back_too_far_is_refused_and_none_takes_it_off()
    {
        using var book = Off();
        Assert.Contains("Turn the extension outwards", book.Refused(new Tell(new ExtensionSet("j-own.head", 300, 200, 180))), StringComparison.Ordinal);
        book.Good(new Tell(new ExtensionSet("j-own.head", 300, 100, 90)), new Tell(new ExtensionSet("j-own.head", 1, 0)));
        Assert.Null(book.Bench.Joint("j-own.head").Tightening.Extension);
    }

    [Fact]
    public void Insert_is_kept_with_its_hole_and_refused_where_there_is_none()
    {
        using var book = Off();
        Assert.Contains("hole 5", book.Refused(new Tell(new InsertFitted("j-own.head", 5, "M10 wire"))), StringComparison.Ordinal);
        book.Good(new Tell(new InsertFitted("j-own.head", 3, "M10 wire")));
        Assert.Contains(BuiltSheet.Of(book.Bench), r => r is { Group: "Thread inserts", Figure: "M10 wire", Note: "hole 3" });
    }

    [Fact]
    public void Exception_with_a_reason_covers_a_finding_while_it_says_the_same_and_stands_on_the_sheet()
    {
        using var book = Off(lost: 1);
        book.Good(new PutBack("own.head"), new Tell(new FastenersIn("j-own.head", 3)), new PutBack("own.cover"), new Tell(new FastenersIn("j-own.cover", 6), new LineJoined("own.feed")));
        var open = Assert.Single(AllBack.MissingFrom(book.Bench));
        Assert.Contains("no reason", book.Refused(new Tell(new Accepted(open.Name, open.About, open.Met, " "))), StringComparison.Ordinal);
        book.Good(new Tell(new Accepted(open.Name, open.About, open.Met, "the hole is for a bracket that is not fitted")));
        Assert.Empty(AllBack.MissingFrom(book.Bench));
        Assert.Equal("the hole is for a bracket that is not fitted", Assert.Single(Exceptions.Standing(book.Bench)).Reason);
        Assert.Contains(BuiltSheet.Of(book.Bench), r => r.Group == "Exceptions" && r.Figure.Contains("bracket", StringComparison.Ordinal));
        book.Good(new Tell(new FastenersOut("j-own.head", [new OutLot(1, "M10x90", "bolt", "bag 1")], false)));
        Assert.NotEmpty(AllBack.MissingFrom(book.Bench));
    }

    [Fact]
    public void What_is_left_inside_can_be_no_exception()
    {
        using var book = Off();
        Assert.Contains("This one can only be mended", book.Refused(new Tell(new Accepted(FindingNames.StillIn, "", "put in", "it will burn"))), StringComparison.Ordinal);
        Assert.DoesNotContain(FindingNames.CapIn, Exceptions.Allowed);
        Assert.DoesNotContain(FindingNames.JointNotFinal, Exceptions.Allowed);
    }

    [Theory]
    [InlineData(18, 5, 6)]
    [InlineData(10, 2, 5)]
    public void Rim_has_its_holes_round_a_rectangle_and_an_order_of_each_once(int count, int down, int along)
    {
        var rim = new PatternChosen("j-own.head", PatternSort.Rim, count, down);
        var places = rim.Places();
        Assert.Equal(count, places.Distinct().Count());
        Assert.Equal(count, (2 * (along + down)) - 4);
        Assert.All(places, p => Assert.True(p.X == 0 || p.X == along - 1 || p.Y == 0 || p.Y == down - 1));
        Assert.Equal(Enumerable.Range(0, count), TighteningOrder.SpiralFromCentre(places).Value.Order());
    }

    [Fact]
    public void Rim_that_cannot_be_is_refused()
    {
        using var book = new TestBook();
        Assert.Contains("round a rim", book.Refused(new Tell(new PatternChosen("j-own.cover", PatternSort.Rim, 6, 5))), StringComparison.Ordinal);
    }
}
