using Gudgeon.Engine;

namespace Gudgeon.Journal.Tests;

public class CircuitTests
{
    private static TestBook Four()
    {
        var book = new TestBook(engine: false);
        book.Good(new Tell(new BookStarted("Invented four", new Dictionary<string, string> { ["layout"] = "inline", ["n"] = "4" })));
        return book;
    }

    private static IEnumerable<TraceStep> All(TraceStep step) => step.Next.SelectMany(All).Prepend(step);

    /// <summary>Sump, pickup, pump, filter, gallery, mains, crank, big ends, back to the sump: common practice, no source.</summary>
    [Fact]
    public void Oil_traced_from_the_pump_goes_round_to_the_sump_and_comes_from_it()
    {
        using var book = Four();
        var trace = Trace.From(book.Bench, "oil-pump.1.out")!;
        var down = All(trace.Down).SelectMany(s => s.Parts).Select(p => book.Bench.Engine.Parts[p].Kind).ToArray();
        Assert.Equal("oil", trace.Family);
        Assert.All(new[] { "oil-filter", "block", "crank", "rod-shell", "head", "sump" }, kind => Assert.Contains(kind, down));
        Assert.True(Array.IndexOf(down, "oil-filter") < Array.IndexOf(down, "block"));
        Assert.Contains(All(trace.Down), s => s.ClosesAt);
        var up = All(trace.Up).Select(s => book.Bench.Engine.Parts[s.Parts[0]].Kind).ToArray();
        Assert.Equal(["oil-pump", "pickup", "sump"], up.Take(3));
    }

    [Fact]
    public void Trace_of_a_port_that_no_line_ends_at_is_none()
    {
        using var book = Four();
        Assert.Null(Trace.From(book.Bench, "oil-pump.1.nothing"));
    }

    /// <summary>Pressure falls from the pump's outlet to its inlet, so a branch from the block to the sump flows to the sump whichever way it was told. Reasoned by hand.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Way_of_an_added_branch_is_worked_out_where_pump_and_return_fix_it(bool toldBackwards)
    {
        using var book = Four();
        (string From, string To) feed = ("block.1", "own.filter"), back = ("own.filter", "sump.1");
        if (toldBackwards)
            (feed, back) = ((feed.To, feed.From), (back.To, back.From));
        book.Good(new Tell(
            new PartAdded("own.filter", "second oil filter", "block.1", 2, "M8"),
            new LineAdded("own.feed", "feed of the second filter", Circuit.OilPressure, feed.From, feed.To),
            new LineAdded("own.back", "return of the second filter", Circuit.OilDrain, back.From, back.To)));
        var ways = Trace.Lines(book.Bench, "oil").Where(f => f.Line.Kind == "own").ToDictionary(f => f.Line.Id);
        var expected = toldBackwards ? FlowWay.Backward : FlowWay.Forward;
        Assert.All(ways.Values, f => Assert.Equal((expected, true), (f.Way, f.IsWorkedOut)));
        Assert.Equal(2, ways.Count);
        var filter = All(Trace.From(book.Bench, "oil-pump.1.out")!.Down).First(s => s.Parts.Contains("own.filter"));
        Assert.False(filter.IsUndecided);
    }

    [Fact]
    public void Way_of_an_added_line_that_nothing_fixes_is_shown_as_undecided()
    {
        using var book = Four();
        book.Good(new Tell(
            new PartAdded("own.tank", "header tank", null, 0),
            new LineAdded("own.dead", "hose of the tank", Circuit.Coolant, "own.tank", "head.1"),
            new LineAdded("own.pump", "hose at the pump", Circuit.OilPressure, "own.tank", "oil-pump.1")));
        Assert.Equal(FlowWay.Undecided, Trace.Lines(book.Bench, "coolant").Single(f => f.Line.Id == "own.dead").Way);
        Assert.Equal(FlowWay.Undecided, Trace.Lines(book.Bench, "oil").Single(f => f.Line.Id == "own.pump").Way);
        Assert.Contains(All(Trace.From(book.Bench, book.Bench.Engine.Lines["own.dead"].To.Id)!.Down), s => s.IsUndecided);
    }

    [Fact]
    public void Port_is_closed_when_joined_capped_or_named_as_open_and_not_otherwise()
    {
        using var book = Four();
        var hose = book.Bench.Engine.Lines.Values.First(l => l.Kind == "l-rad-out");
        Assert.All(PortCheck.Of(book.Bench), p => Assert.Equal(PortStand.Joined, p.Stand));
        book.Good(new Tell(new LineParted(hose.Id, "3")));
        Assert.Equal(2, PortCheck.Of(book.Bench, "coolant").Count(p => p.Stand == PortStand.Open));
        book.Good(new Tell(new PortCapped(hose.Id, hose.From.Id)));
        book.Good(new Tell(new PortLeftOpen(hose.To.Id, "radiator is out")));
        Assert.Equal([PortStand.Capped, PortStand.LeftOpen], PortCheck.Of(book.Bench, "coolant").Where(p => p.Line == hose).Select(p => p.Stand));
        book.Good(new Tell(new PortLeftOpen(hose.To.Id, "")));
        Assert.Contains(PortCheck.Of(book.Bench), p => p.Stand == PortStand.Open);
        Assert.Contains("no reason", book.Refused(new Tell(new PortLeftOpen(hose.To.Id, " "))), StringComparison.Ordinal);
    }

    [Fact]
    public void Circuit_is_not_closed_while_a_part_of_its_way_is_off()
    {
        using var book = Four();
        book.Good(new TakeOff("oil-pump.1", null, "bench"));
        var open = Assert.Single(PortCheck.Of(book.Bench, "oil"), p => p.Stand == PortStand.PartOff);
        Assert.Equal(("oil-pump.1", "the oil pump is off", true), (open.Port.Part, open.Words, open.IsToSeeTo));
        Assert.DoesNotContain(PortCheck.Of(book.Bench, "coolant"), p => p.Stand == PortStand.PartOff);
        book.Good(new Tell(new PartOn("oil-pump.1")));
        Assert.DoesNotContain(PortCheck.Of(book.Bench), p => p.Stand == PortStand.PartOff);
    }

    [Fact]
    public void Line_on_another_port_or_with_another_tag_is_a_finding_until_it_is_parted()
    {
        using var book = Four();
        var hose = book.Bench.Engine.Lines.Values.First(l => l.Kind == "l-rad-out");
        var other = book.Bench.Engine.Lines.Values.First(l => l.Kind == "l-rad-in").To;
        book.Good(new Tell(new EndJoined(hose.Id, hose.From.Id, other.Id)));
        Assert.Contains(BenchFindings.Of(book.Bench), f => f.Name == "port-wrong" && f.About == hose.Id);
        book.Good(new Tell(new LineParted(hose.Id, "7")), new Tell(new LineJoined(hose.Id)));
        Assert.DoesNotContain(BenchFindings.Of(book.Bench), f => f.Name == "port-wrong");
        book.Good(new Tell(new EndJoined(hose.Id, hose.From.Id, hose.From.Id, "9")));
        Assert.Contains(BenchFindings.Of(book.Bench), f => f.Name == "port-wrong" && f.Met.Contains("\"9\"", StringComparison.Ordinal));
        book.Good(new Tell(new EndJoined(hose.Id, hose.From.Id, hose.From.Id, " 7")));
        Assert.DoesNotContain(BenchFindings.Of(book.Bench), f => f.Name == "port-wrong");
    }

    [Fact]
    public void Fluid_account_holds_what_was_drained_against_what_was_filled()
    {
        using var book = Four();
        book.Good(new Tell(new FluidMoved("Oil", FluidWay.Drained, 4200, "4.2 l"), new FluidMoved("oil", FluidWay.Filled, 4000, "4 l")));
        book.Good(new TakeOff("sump.1", To: "floor"));
        var oil = Assert.Single(FluidAccount.Of(book.Bench));
        Assert.Equal(("oil", 4200, 4000, -200), (oil.Fluid, oil.DrainedCm3, oil.FilledCm3, oil.DifferenceCm3));
        Assert.Contains("sump.1", oil.LowParts);
        Assert.Contains("more than 0", book.Refused(new Tell(new FluidMoved("oil", FluidWay.Filled, 0, "0"))), StringComparison.Ordinal);
    }
}
