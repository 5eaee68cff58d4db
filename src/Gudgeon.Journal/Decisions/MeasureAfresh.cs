using Gudgeon.Sums;

namespace Gudgeon.Journal;

/// <summary>A place was machined or renewed since: what was read on earlier days no longer counts there, and stays in the book.</summary>
/// <param name="Why">What was done: bored 0.50 over.</param>
public sealed record MeasureAfresh(string Part, string Characteristic, int Place, string Why) : Request
{
    public override Outcome<IReadOnlyList<Entry>> Decide(Bench bench)
    {
        var read = bench.Readings.Values.Where(r => r.Counts && r.Taken.Part == Part && r.Taken.Characteristic == Characteristic && r.Taken.Place == Place).ToArray();
        var name = bench.PlaceName(Part, Engine.Characteristics.Find(Characteristic), Place);
        if (read.Length == 0)
            return Outcome.Refused<IReadOnlyList<Entry>>(new Refusal(name, "no reading that counts", "readings of an earlier day", "Look at the sheet for what is read there"));
        if (string.IsNullOrWhiteSpace(Why))
            return Outcome.Refused<IReadOnlyList<Entry>>(new Refusal(name, "no reason", "what was done to it since", "Say it: bored, honed, ground, renewed"));
        var last = read.Max(r => r.At.Date);
        var earlier = read.Where(r => r.At.Date < last).ToArray();
        // With one day only, that day is the earlier one: what comes next is the new state.
        return Outcome.Of<IReadOnlyList<Entry>>([.. (earlier.Length > 0 ? earlier : read).Select(r => new ReadingSetAside(r.Number, Why.Trim()))]);
    }
}
