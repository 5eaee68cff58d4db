using Gudgeon.Sums;

namespace Gudgeon.Journal;

/// <summary>A reading as it was typed, for one spot.</summary>
/// <param name="Text">What was typed: a size, a distance from the gauge's zero, or pass or fail.</param>
/// <param name="Meant">Where it can be read in several ways: the one that is meant, in the words of the refusal.</param>
/// <param name="By">Who took it; null or empty where nobody said.</param>
/// <param name="Said">The words it was said in, kept instead of the figure that they came to; null where it was typed.</param>
public sealed record TakeReading(Slot Slot, string Text, string? Instrument = null, double? PartC = null, double? GaugeC = null, string? Meant = null, string? By = null, string? Said = null) : Request
{
    public override Outcome<IReadOnlyList<Entry>> Decide(Bench bench)
    {
        if (bench.NoSuchSpot(Slot, out var spot) is { } missing)
            return Outcome.Refused<IReadOnlyList<Entry>>(missing);
        var zero = Instrument is null ? null : bench.ZeroOf(Instrument)?.Setting.Size;
        return SpotText.Read(Text, spot!.Unit, bench.Units, zero, bench.NameOf(Slot), bench.NominalsOf(Slot), Meant).Then(value => Outcome.Of<IReadOnlyList<Entry>>(
        [
            new ReadingTaken(Slot.Part, Slot.Characteristic, Slot.Place, Slot.Spot, Said ?? Text.Trim(), value, spot.Unit,
                spot.Unit == Units.Look ? null : Instrument, bench.ReadingsAt(Slot).Count + 1, PartC, GaugeC, string.IsNullOrWhiteSpace(By) ? null : By.Trim()),
        ]));
    }
}
