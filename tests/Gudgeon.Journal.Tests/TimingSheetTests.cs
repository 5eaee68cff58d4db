using Gudgeon.Sums.Motion;

namespace Gudgeon.Journal.Tests;

/// <summary>Figures are invented input; expected values are worked by hand beside them. The sums have their own checks.</summary>
public class TimingSheetTests
{
    private static TestBook Four()
    {
        var book = new TestBook(engine: false);
        book.Good(new Tell(new BookStarted("Invented four", new Dictionary<string, string> { ["layout"] = "inline", ["n"] = "4", ["vt"] = "dohc" })));
        return book;
    }

    [Fact]
    public void Stop_readings_halve_to_top()
    {
        using var book = Four();
        book.Good(new Tell(new TopFound(322.5, 41)));
        // From 322.5° on to 41° is 78.5°; half is 39.25°; 322.5 + 39.25 = 361.75, one turn less 1.75°.
        Assert.Equal(1.75, book.Bench.Top!.Top().Value.DiscAtTop.Degrees, 9);
        Assert.Contains("turn between the stops", book.Refused(new Tell(new TopFound(10, 12))), StringComparison.Ordinal);
    }

    [Fact]
    public void Lobe_read_at_two_lifts_gives_the_mean_of_the_middles_and_their_spread()
    {
        using var book = Four();
        book.Good(new Tell(new LobeRead("Inlet 1", 1, -12, 228, 108)), new Tell(new LobeRead("inlet 1", 3, 20, 198)));
        var lobe = Assert.Single(TimingSheet.Of(book.Bench));
        // Middles (−12 + 228)/2 = 108 and (20 + 198)/2 = 109: mean 108.5, spread 1.
        Assert.Equal((108.5, 1.0), (Math.Round(lobe.Centre.Centre.Degrees, 9), Math.Round(lobe.Centre.Spread.Degrees, 9)));
        Assert.Equal((2, 108.0), (lobe.Readings, lobe.WantedDeg));
    }

    [Fact]
    public void Two_valves_that_can_change_shims_buy_none()
    {
        using var book = Four();
        string[] valves = [.. book.Bench.Engine.Parts.Values.Where(p => p.Kind == "valve-in").Take(2).Select(p => p.Id)];
        Assert.Contains("at least one valve with all three", LashSheet.Choose(book.Bench).Refusals[0].ToString(), StringComparison.Ordinal);
        book.Good(new Tell(new LimitSet("valve-clearance", valves, LimitState.New, 0.15, 0.25, null, "mm", "0.15 to 0.25", "own book")));
        book.Good(new TakeReading(LashSheet.SlotOf(valves[0]), "0.10 mm"), new TakeReading(LashSheet.SlotOf(valves[1]), "0.30 mm"));
        book.Good(new Tell(new ShimRead(valves[0], 2.40, "2.40"), new ShimRead(valves[1], 2.30, "2.30"), new ShimsOffered(2, 3, 0.05, [])));
        Assert.Equal([false, false], LashSheet.Of(book.Bench).Where(l => valves.Contains(l.Valve)).Select(l => l.IsWithin!.Value));
        var choice = LashSheet.Choose(book.Bench).Value;
        // 0.10 + 2.40 − 2.30 = 0.20 and 0.30 + 2.30 − 2.40 = 0.20: both in the middle, nothing bought.
        Assert.All(choice, c => Assert.Equal((ShimSource.FromValve, 0.2), (c.Source, Math.Round(c.Clearance.Millimetres, 9))));
        Assert.Contains("a valve", book.Refused(new Tell(new ShimRead("starter.1", 2, "2"))), StringComparison.Ordinal);
    }
}
