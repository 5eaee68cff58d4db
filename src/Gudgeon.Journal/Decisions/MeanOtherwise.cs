using Gudgeon.Sums;

namespace Gudgeon.Journal;

/// <summary>A reading that looked like a slip was one: it counts as what it was taken for. What was typed is kept.</summary>
/// <param name="Reading">Number of the entry that holds it.</param>
public sealed record MeanOtherwise(long Reading) : Request
{
    public override Outcome<IReadOnlyList<Entry>> Decide(Bench bench)
    {
        if (bench.NoSuchReading(Reading) is { } missing)
            return Outcome.Refused<IReadOnlyList<Entry>>(missing);
        if (Doubts.Of(bench).FirstOrDefault(d => d.Reading.Number == Reading) is not { Suggested: { } meant } doubt)
            return Outcome.Refused<IReadOnlyList<Entry>>(new Refusal($"reading {Reading}", "no other way to read it", "a reading that looks like a slip of one kind", "Type what it should be as a reading of its own, and set this one aside"));
        var taken = doubt.Reading.Taken;
        return Outcome.Of<IReadOnlyList<Entry>>(
        [
            new ReadingSetAside(Reading, $"meant as {doubt.ShownSuggestion}"),
            taken with { Value = meant, Repeat = bench.ReadingsAt(taken.Slot).Count + 1 },
        ]);
    }
}
