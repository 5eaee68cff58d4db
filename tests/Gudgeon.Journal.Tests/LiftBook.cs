namespace Gudgeon.Journal.Tests;

/// <summary>A book of an invented engine with an invented rig, crane and garage in which the lift goes.</summary>
internal static class LiftBook
{
    public static readonly MassTold Engine = new(MassTold.WholeEngine, 200, 0, "invented", new EnginePlace(250, 0, 0));

    public static readonly RigTold Rig = new(
        [new("front", new(500, 0, 300), 500), new("rear", new(0, 0, 300), 500)],
        [
            new("crane hook", RigGear.OnHook, "other, rated", RatingKg: 1000),
            new("chain", "front", "chain", "8", "8"), new("eye bolt", "front", "eye bolt", "DIN 580", "M16"),
            new("chain", "rear", "chain", "8", "8"), new("eye bolt", "rear", "eye bolt", "DIN 580", "M16"),
        ],
        10);

    public static readonly CraneTold Crane = new(
        0, 1500, 0, 900, 400, 550, 950, 120, [new(1000, 700), new(1200, 500)], 2,
        [new("front left", 1600, 450), new("front right", 1600, -450), new("rear right", 0, -350), new("rear left", 0, 350)], 75, 550, 500, 150, 60, 3, 1);

    public static readonly PlaceTold Place = new(2700, 850, 220, 0, 30, 600, 500, [new(MassTold.WholeEngine, 450, -250), new("own.manifold", 560, 300)]);

    public static TestBook Told(MassTold? engine = null, RigTold? rig = null, CraneTold? crane = null, PlaceTold? place = null)
    {
        var book = new TestBook();
        book.Good(new Tell(engine ?? Engine, rig ?? Rig, crane ?? Crane, place ?? Place));
        return book;
    }

    public static LiftCheck Check(this TestBook book, string id) => book.Book.Read(LiftAssessor.Of).Checks.Single(check => check.Id == id);

    public static string Figure(this LiftCheck check, string what) => check.Figures.Single(figure => figure.What.Contains(what, StringComparison.Ordinal)).Value;
}
