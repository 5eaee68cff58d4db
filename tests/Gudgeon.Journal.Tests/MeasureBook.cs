namespace Gudgeon.Journal.Tests;

/// <summary>An invented in-line four with its bores in the block, and instruments whose U is as the test wants it.</summary>
public sealed class MeasureBook : IDisposable
{
    private readonly TestBook book = new(engine: false);

    public MeasureBook()
    {
        book.Good(new Tell(new BookStarted("Invented four", new Dictionary<string, string> { ["layout"] = "inline", ["n"] = "4", ["D"] = "86", ["S"] = "86" })));
        book.Good(new Tell(
            new InstrumentKept("mic", "micrometer", "mic", "mm", 0.001, 0.004),
            new InstrumentKept("bg", "bore gauge", "bg", "mm", 0.002, 0.006),
            new InstrumentKept("fg", "feeler gauge", "fg", "mm", 0.01, 0.01)));
    }

    public Bench Bench => book.Bench;
    public TestBook Inner => book;

    public Reply Good(params IReadOnlyList<Request> requests) => book.Good(requests);

    public string Refused(params IReadOnlyList<Request> requests) => book.Refused(requests);

    public long Read(string part, string characteristic, int place, string spot, string text, string? instrument = "mic") =>
        Good(new TakeReading(new Slot(part, characteristic, place, spot), text, instrument)).Entries[0].Number;

    public void Limit(string characteristic, double? low, double? high, LimitState state = LimitState.Service, double? spread = null) =>
        Good(new Tell(new LimitSet(characteristic, [], state, low, high, spread, Gudgeon.Engine.Characteristics.Find(characteristic)!.Unit, "", "invented book", "1")));

    public Assessment Assess(string part, string characteristic, int place = 1)
    {
        var found = Gudgeon.Engine.Characteristics.Find(characteristic)!;
        return new Assessor(Bench).Of(found, Bench.Places.On(Bench.Engine.Parts[part], found).Single(p => p.Number == place));
    }

    public string Part(string kind) => Bench.Engine.Parts.Values.First(p => p.Kind == kind).Id;

    public void Dispose() => book.Dispose();
}
