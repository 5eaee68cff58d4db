namespace Gudgeon.Journal.Tests;

public class LiftFloorTests
{
    // Invented garage. The crane goes straight along x at y = 1500; its widest place is the legs' rectangle, 450 + 80 = 530 to either side,
    // and the engine's half diagonal side, 300. A bench from y = 2130 leaves 2130 − 2030 = 100 mm, less the 2 mm that the sum takes off.
    private static PlaceTold Garage(FloorThing thing) => LiftBook.Place with { RoomLengthMm = 8000, RoomWidthMm = 4000, Things = [thing], Way = [new(500, 1500, 0), new(3000, 1500, 0)] };

    [Fact]
    public void Way_beside_a_bench_says_what_is_to_spare()
    {
        using var book = LiftBook.Told(place: Garage(new("bench", 2000, 2130, 2000, 600)));
        Assert.Equal("98\u00a0mm", book.Check(LiftAssessor.FloorId).Figure("past bench"));
        Assert.True(book.Book.Read(LiftAssessor.Of).Passes);
    }

    [Fact]
    public void Way_into_a_pillar_fails_and_no_move_is_made_up()
    {
        using var book = LiftBook.Told(place: Garage(new("pillar", 3000, 1400, 300, 300)));
        var view = book.Book.Read(LiftAssessor.Of);
        var check = book.Check(LiftAssessor.FloorId);
        Assert.Equal((LiftStanding.Fails, 0, 0), (check.Standing, check.Figures.Count, view.Moves.Count));
        Assert.StartsWith("way past pillar: met touched with the post at", check.Refusals.Single().ToString(), StringComparison.Ordinal);
        Assert.False(view.Passes);
    }

    [Fact]
    public void Way_past_another_vehicle_lists_the_moves_and_stays_failed()
    {
        using var book = LiftBook.Told(place: Garage(new("other car", 3000, 1400, 3000, 1800, Moves: true)));
        var view = book.Book.Read(LiftAssessor.Of);
        Assert.False(view.Passes);
        Assert.Equal("Before anything hangs, move other car off the crane's way and secure it: brake on, wheels chocked", view.Moves[0]);
        Assert.Equal(4, view.Moves.Count);
    }

    // The car's nose from x = 2000 on, the hook over it at the start: the legs go under, the engine over it at the sill's height, which the headroom judges.
    [Fact]
    public void Engine_that_rises_over_the_sill_comes_out_over_the_nose_of_its_car()
    {
        var way = new FloorStop[] { new(1500, 1500, 0), new(300, 1500, 0) };
        using var nose = LiftBook.Told(place: Garage(new("car", 2000, 800, 1000, 1700, LegsPass: true)) with { Way = way });
        Assert.Equal(LiftStanding.Passes, nose.Check(LiftAssessor.FloorId).Standing);
        // By hand: post at 1500 + 80, nose at 2000: 420 left, less the 2 mm that the sum takes off.
        Assert.Equal("418\u00a0mm", nose.Check(LiftAssessor.FloorId).Figure("past car"));
        using var through = LiftBook.Told(place: Garage(new("car", 2000, 800, 1000, 1700)) with { Way = way });
        Assert.Equal(LiftStanding.Fails, through.Check(LiftAssessor.FloorId).Standing);
        // One sill too high for the hook: the floor is free, and the lift is still not possible.
        using var tooHigh = LiftBook.Told(place: Garage(new("car", 2000, 800, 1000, 1700, LegsPass: true)) with { Way = way, SillMm = 1400 });
        Assert.False(tooHigh.Book.Read(LiftAssessor.Of).Passes);
    }

    // By hand: the crane turns about the foot of its post by 90°; its front corner of the legs, √(1680² + 530²) = 1761.6 mm out, sweeps a quarter circle.
    // A pillar at 1200, 1600 from the post is 2000 mm away: it clears by 2000 − 1761.6 = 238.4 at most; the engine, out to 1200 + 300, half 300 wide, reaches √(1500² + 300²) = 1529.7.
    [Fact]
    public void Crane_that_turns_with_the_engine_sweeps_between_obstacles()
    {
        var turn = new FloorStop[] { new(3000, 1000, 0), new(3000, 1000, 90) };
        using var clear = LiftBook.Told(place: Garage(new("pillar", 4200, 2600, 200, 200)) with { Way = turn, RoomWidthMm = 6000 });
        var spare = clear.Check(LiftAssessor.FloorId).Figures.Single(f => f.What.Contains("pillar", StringComparison.Ordinal)).Working.Result.Value;
        Assert.InRange(spare, 238.4 - 2.1 - 0.2, 238.4 + 0.2);
        using var struck = LiftBook.Told(place: Garage(new("pillar", 4000, 2400, 200, 200)) with { Way = turn, RoomWidthMm = 6000 });
        Assert.Equal(LiftStanding.Fails, struck.Check(LiftAssessor.FloorId).Standing);
    }
}
