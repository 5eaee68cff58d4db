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

    [Fact]
    public void Legs_go_under_the_car_but_the_engine_does_not_go_through_it()
    {
        // The car's nose from x = 2000 on; the legs reach 500 + 1680 = 2180 under it, the engine to 500 + 1200 + 300 = 2000 at its farthest.
        var way = new FloorStop[] { new(490, 1500, 0), new(300, 1500, 0) };
        using var under = LiftBook.Told(place: Garage(new("car", 2000, 800, 4000, 1700, LegsPass: true)) with { Way = way });
        Assert.Equal(LiftStanding.Passes, under.Check(LiftAssessor.FloorId).Standing);
        using var through = LiftBook.Told(place: Garage(new("car", 2000, 800, 4000, 1700)) with { Way = way });
        Assert.Equal(LiftStanding.Fails, through.Check(LiftAssessor.FloorId).Standing);
    }
}
