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

    // Invented inputs. One tooth of 18 is 360/18 = 20 crank degrees; stretch and skim as solved by bisection in python (see the sums' own tests).
    [Fact]
    public void Drive_tells_a_tooth_a_stretched_chain_and_a_skimmed_head()
    {
        using var book = new TestBook();
        book.Good(new Tell(new CamDriveTold(18, 9.525, 300, 0.005, 0.2)));
        var drive = book.Bench.CamDrive!;
        Assert.Equal(20, drive.OneTooth().Value.Degrees, 1e-12);
        Assert.Equal(3.132638, drive.LateByStretch()!.Value.Degrees, 1e-6);
        Assert.Equal(0.417684, drive.LateBySkim()!.Value.Degrees, 1e-6);
    }

    [Fact]
    public void Lobe_a_tooth_late_is_said_to_be_so_once_the_teeth_are_counted()
    {
        using var book = new TestBook();
        // Middle of -2 and 258 is 128, 20 after the card's 108: one tooth of 20.
        book.Good(new Tell(new LobeRead("inlet 1", 1, -2, 258, 108)));
        Assert.Equal("", TimingSheet.Of(book.Bench)[0].ToothWords);
        book.Good(new Tell(new CamDriveTold(18)));
        Assert.Equal("1 tooth late, 0° left over", TimingSheet.Of(book.Bench)[0].ToothWords);
    }

    [Fact]
    public void Lobe_half_a_tooth_off_is_too_close_to_call()
    {
        using var book = new TestBook();
        book.Good(new Tell(new LobeRead("inlet 1", 1, -12, 248, 108)), new Tell(new CamDriveTold(18)));
        Assert.EndsWith("too close to call, read it again", TimingSheet.Of(book.Bench)[0].ToothWords, StringComparison.Ordinal);
    }

    [Fact]
    public void Drive_with_a_stretch_and_no_pitch_is_refused()
    {
        using var book = new TestBook();
        Assert.Contains("without pitch and centres", book.Refused(new Tell(new CamDriveTold(18, null, null, 0.005))), StringComparison.Ordinal);
        Assert.Contains("6 or more", book.Refused(new Tell(new CamDriveTold(3))), StringComparison.Ordinal);
    }

    [Fact]
    public void Built_sheet_holds_stage_wrench_batch_timing_and_setting_in_one_table()
    {
        using var book = new TestBook();
        book.Good(new TakeOff("own.cover", [new OutLot(6, "M6x25", "bolt", "bag 2")], "shelf"), new PutBack("own.cover"), new Tell(new FastenersIn("j-own.cover", 6, 2)));
        book.Good(
            new Tell(new WrenchKept("long", "the long one", 5, 50)),
            new Tell(new ProcedureSet("j-own.cover", [new Stage(StageSort.Torque, "10 Nm", 10)], "dry", false)),
            new Tell(new StageDone("j-own.cover", 1, null, "long")),
            new Tell(new BuiltWith("own.injector", "grade B", "4711")),
            new Tell(new TopFound(322.5, 41)),
            new Tell(new StaticTimingNoted("ignition", "8° before top, cylinder 1")));
        var rows = BuiltSheet.Of(book.Bench);
        Assert.Contains(new BuiltRow("Joints", "cam cover joint", "10\u00A0N·m", "the long one", "done; 6 in, 2 new; threads dry"), rows);
        Assert.Contains(new BuiltRow("Shells, rings, batches", "injector", "grade B", "", "batch 4711"), rows);
        // Halfway between 322.5 and 41 over the top of the disc: (322.5 + 401)/2 = 361.75, which is 1.75.
        Assert.Contains(rows, r => r.Group == "Timing" && r.Figure == "1.75° of the disc");
        Assert.Contains(new BuiltRow("Timing", "ignition", "8° before top, cylinder 1"), rows);
    }
}
