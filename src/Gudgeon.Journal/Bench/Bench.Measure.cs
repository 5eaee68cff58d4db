using Gudgeon.Engine;
using Gudgeon.Sums;
using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

public sealed partial class Bench
{
    private readonly SortedDictionary<string, InstrumentKept> instruments = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Zero> zeros = [];
    private readonly Dictionary<string, List<StandingLimit>> limits = [];
    private readonly Dictionary<Slot, List<Reading>> readings = [];
    private readonly SortedDictionary<long, Reading> readingsByNumber = [];
    private readonly List<StandingReason> reasons = [];
    private readonly SortedDictionary<string, StandingGrades> grades = new(StringComparer.Ordinal);
    private MeasuringPlaces? places;

    /// <summary>What a bare figure means.</summary>
    public BookUnits Units { get; internal set; } = BookUnits.Metric;

    /// <summary>How wide a guard verdicts keep.</summary>
    public DecisionRule Rule { get; internal set; } = DecisionRule.ExpandedUncertainty;

    /// <summary>What parts are made of, where the owner said.</summary>
    public Dictionary<string, string> Materials { get; } = [];

    /// <summary>The owner's instruments by id.</summary>
    public IReadOnlyDictionary<string, InstrumentKept> Instruments => instruments;

    /// <summary>Every reading by the number of its entry, those set aside too.</summary>
    public IReadOnlyDictionary<long, Reading> Readings => readingsByNumber;

    /// <summary>Where things are measured on this engine.</summary>
    public MeasuringPlaces Places => places ??= new MeasuringPlaces(
        Engine.Parts.Values.Where(p => !Part(p.Id).IsAbsent),
        Answers.Count > 0 ? EngineAnswers.Read(Answers).Value : null);

    /// <summary>The parts of the engine changed: where things are measured and which gates there are is found again when it is asked for.</summary>
    internal void ForgetPlaces() => (places, gates) = (null, null);

    /// <summary>The setting that a gauge stands on, or null.</summary>
    public Zero? ZeroOf(string instrument) => zeros.GetValueOrDefault(instrument);

    /// <summary>Readings of a spot in order, those set aside too.</summary>
    public IReadOnlyList<Reading> ReadingsAt(Slot slot) => readings.GetValueOrDefault(slot) ?? [];

    /// <summary>Every limit typed, in order; a later one for the same thing stands in front of an earlier.</summary>
    public IEnumerable<StandingLimit> Limits => limits.Values.SelectMany(l => l).OrderBy(l => l.Number);

    /// <summary>Size grades by characteristic.</summary>
    public IReadOnlyDictionary<string, StandingGrades> Grades => grades;

    /// <summary>The limit that holds for a part: the last one that names it, else the last one for all.</summary>
    public StandingLimit? LimitOf(string characteristic, string part, LimitState state)
    {
        var all = limits.GetValueOrDefault(characteristic) ?? [];
        return all.FindLast(l => l.Limit.State == state && l.Limit.Parts.Contains(part))
            ?? all.FindLast(l => l.Limit.State == state && l.Limit.Parts.Count == 0);
    }

    /// <summary>Why a characteristic is not measured on a part of this engine: the last word on it; null where nobody said so, or it was read all the same.</summary>
    public StandingReason? WhyNot(string characteristic, string part) =>
        reasons.FindLast(r => r.Said.Characteristic == characteristic && (r.Said.Parts.Count == 0 || r.Said.Parts.Contains(part)))
            is { } reason && !IsRead(characteristic, part) ? reason : null;

    private bool IsRead(string characteristic, string part) =>
        readingsByNumber.Values.Any(r => r.Counts && r.Taken.Characteristic == characteristic && r.Taken.Part == part);

    /// <summary>Sizes that "two thou over" could be over: the bore that the owner told, then the limits that were typed.</summary>
    public IReadOnlyList<Nominal> NominalsOf(Slot slot)
    {
        var nominals = new List<Nominal>();
        void Add(string name, double? size)
        {
            if (size is { } mm && nominals.All(n => n.Size != mm))
                nominals.Add(new Nominal($"{name}, {Journal.Units.Plain(mm)} mm", mm));
        }

        if (slot.Characteristic == "bore" && double.TryParse(Answers.GetValueOrDefault("D"), System.Globalization.CultureInfo.InvariantCulture, out var bore))
            Add("the bore as you told it", bore);
        foreach (var state in (LimitState[])[LimitState.Service, LimitState.New])
        {
            if (LimitOf(slot.Characteristic, slot.Part, state)?.Limit is not { Unit: "mm" } limit)
                continue;
            Add($"the lower limit {LimitSet.StateWord(state)}", limit.Low);
            Add($"the upper limit {LimitSet.StateWord(state)}", limit.High);
        }

        return nominals;
    }

    /// <summary>A spot as it is read out: <c>bore 3, top, across the crank</c>.</summary>
    public string NameOf(Slot slot)
    {
        var characteristic = Characteristics.Find(slot.Characteristic);
        var place = PlaceName(slot.Part, characteristic, slot.Place);
        var spot = characteristic?.FindSpot(slot.Spot);
        var what = characteristic is null ? slot.Characteristic : characteristic.Name;
        return spot is null or { Id: "one" } ? $"{place}, {what}" : $"{place}, {what}, {spot.Name}";
    }

    /// <summary>The name of a place: <c>bore 3</c> on a block, else the part's own.</summary>
    public string PlaceName(string part, Characteristic? characteristic, int number) =>
        characteristic is not null && Engine.Parts.TryGetValue(part, out var there)
            ? Places.On(there, characteristic).FirstOrDefault(p => p.Number == number)?.Name ?? NameOf(part)
            : NameOf(part);

    public string InstrumentName(string instrument) => instruments.TryGetValue(instrument, out var kept) ? kept.Name : instrument;

    internal string NameOfReading(long number) => readingsByNumber.TryGetValue(number, out var reading)
        ? $"{NameOf(reading.Taken.Slot)}, {(reading.Taken.Unit == Journal.Units.Look ? reading.Taken.AsTyped : Journal.Units.Show(reading.Taken.Value, reading.Taken.Unit))}"
        : $"Reading {number}";

    internal Refusal? NoSuchInstrument(string id) => instruments.ContainsKey(id)
        ? null
        : new Refusal("instrument", $"\"{id}\"", instruments.Count == 0 ? "an instrument of your list; it is empty" : $"one of {string.Join(", ", instruments.Keys)}", "Put it into the list of instruments first");

    internal Refusal? NoSuchReading(long number) => readingsByNumber.ContainsKey(number)
        ? null
        : new Refusal($"reading {number}", "no such reading", "the number of an entry that holds a reading", "Look at the sheet for its number");

    internal Refusal? NoSuchSpot(Slot slot, out MeasuringSpot? spot)
    {
        spot = null;
        if (NoSuchPart(slot.Part) is { } missing)
            return missing;
        if (Characteristics.Find(slot.Characteristic) is not { } characteristic)
            return new Refusal(NameOf(slot.Part), $"\"{slot.Characteristic}\"", "a characteristic of the list", "Look at its name on the Measure page");
        if (!characteristic.IsRead)
            return new Refusal(NameOf(slot.Part), $"a reading of {characteristic.Name}", $"readings of {string.Join(" and ", characteristic.From.Select(f => Characteristics.Find(f.Characteristic)!.Name))}, from which it is worked out", "Read those");
        var there = Places.On(Engine.Parts[slot.Part], characteristic);
        if (there.Count == 0)
            return new Refusal(NameOf(slot.Part), $"a reading of {characteristic.Name}", "a part that has it on this engine", "Look at the Measure page for where it is read");
        if (there.All(p => p.Number != slot.Place))
            return new Refusal(NameOf(slot.Part), $"{(characteristic.Place.Length > 0 ? characteristic.Place : "place")} {slot.Place}", $"1 to {there.Count}", "Count them again");
        spot = characteristic.FindSpot(slot.Spot);
        return spot is not null ? null
            : new Refusal(characteristic.Name, $"the spot \"{slot.Spot}\"", string.Join(", ", characteristic.Spots.Select(s => s.Id)), "Choose one of these");
    }

    internal Reading ChangeReading(long number) => readingsByNumber[number];

    internal void Set(GradesSet set, Recorded recorded) => grades[set.Characteristic] = new StandingGrades(recorded.Number, set);

    internal void Waive(NotApplicable said, Recorded recorded) => reasons.Add(new StandingReason(recorded.Number, said));

    internal void Keep(InstrumentKept instrument) => instruments[instrument.Instrument] = instrument;

    internal void Zero(GaugeZeroed zeroed, Recorded recorded) =>
        zeros[zeroed.Instrument] = zeroed.Drift is { } drift && zeros.TryGetValue(zeroed.Instrument, out var zero)
            ? zero with { Drift = drift }
            : new Zero(zeroed, recorded.At, zeroed.Drift);

    internal void Set(LimitSet limit, Recorded recorded)
    {
        if (!limits.TryGetValue(limit.Characteristic, out var all))
            limits[limit.Characteristic] = all = [];
        all.Add(new StandingLimit(recorded.Number, limit));
    }

    internal void Take(ReadingTaken taken, Recorded recorded)
    {
        var reading = new Reading(recorded, taken);
        readingsByNumber[recorded.Number] = reading;
        if (!readings.TryGetValue(taken.Slot, out var there))
            readings[taken.Slot] = there = [];
        there.Add(reading);
    }
}
