using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Pages.Measure;

/// <summary>Which spot a keypad is asked for, with what is carried from one reading to the next.</summary>
public sealed record KeypadAsked(string Part, string Characteristic, int Place, string Spot, string With, string PartC, string GaugeC, string By)
{
    /// <summary>What the next spot's address carries on: instrument, temperatures, who reads.</summary>
    public string Carried => $"with={Uri.EscapeDataString(With)}&partc={Uri.EscapeDataString(PartC)}&gaugec={Uri.EscapeDataString(GaugeC)}&by={Uri.EscapeDataString(By)}";
}

/// <summary>A spot on the keypad page.</summary>
/// <param name="Shown">What is read there, or empty.</param>
public sealed record KeypadSpot(string Id, string Name, string Shown, bool IsNow);

/// <summary>Where the hand goes after a reading.</summary>
public sealed record NextSpot(string Path, string Spot, string Name);

/// <summary>Everything that the keypad page shows.</summary>
public sealed record KeypadView(
    KeypadAsked Asked,
    Characteristic Characteristic,
    MeasuringPlace Place,
    MeasuringSpot Spot,
    string Title,
    IReadOnlyList<KeypadSpot> Spots,
    IReadOnlyList<InstrumentKept> Instruments,
    IReadOnlyList<string> Persons,
    string ZeroWords,
    Assessment Now,
    IReadOnlyList<Assessment> Derived,
    IReadOnlyList<Doubt> Doubts,
    IReadOnlyList<Reading> Here,
    IReadOnlyList<Slot> Onwards,
    Bench Bench)
{
    public static Outcome<KeypadView> Of(Bench bench, KeypadAsked asked)
    {
        if (!bench.Engine.Parts.TryGetValue(asked.Part, out var part) || Characteristics.Find(asked.Characteristic) is not { IsRead: true } characteristic)
            return Outcome.Refused<KeypadView>(new Refusal("the address", $"\"{asked.Characteristic}\" of \"{asked.Part}\"", "something that is read on a part of this engine", "Go to the Measure page and pick from there"));
        if (bench.Places.On(part, characteristic).FirstOrDefault(p => p.Number == asked.Place) is not { } place)
            return Outcome.Refused<KeypadView>(new Refusal("the address", $"place {asked.Place} of the {part.Name}", "a place that is there", "Go to the Measure page and pick from there"));

        var grid = characteristic.Spots;
        var spot = characteristic.FindSpot(asked.Spot) ?? grid.FirstOrDefault(s => !IsRead(bench, place, characteristic, s)) ?? grid[0];
        var instruments = bench.Instruments.Values.Where(i => i.Unit == spot.Unit && !i.Gone).ToArray();
        var with = asked.With.Length > 0 ? asked.With : Usual(bench, characteristic, instruments);
        var assessor = new Assessor(bench);
        var now = assessor.Of(characteristic, place);
        var derived = bench.Places.On(part)
            .Where(x => x.Characteristic.From.Any(f => f.Characteristic == characteristic.Id))
            .SelectMany(x => x.Places.Where(p => p.Number == place.Number).Select(p => assessor.Of(x.Characteristic, p)))
            .Where(a => a.IsStarted).ToArray();
        var asSpot = asked with { Spot = spot.Id, With = with };
        return Outcome.Of(new KeypadView(
            asSpot,
            characteristic,
            place,
            spot,
            $"{Sentence(place.Name)}: {characteristic.Name}",
            [.. grid.Select(s => new KeypadSpot(s.Id, s.Name, now.Figures.FirstOrDefault(f => f.Spot == s.Id)?.Shown ?? Plain(bench, place, characteristic, s), s == spot))],
            instruments,
            [.. bench.Readings.Values.Select(r => r.Taken.By).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase)],
            ZeroOf(bench, with),
            now,
            derived,
            [.. Journal.Doubts.Of(bench).Where(d => d.Reading.Taken.Part == place.Part && d.Reading.Taken.Characteristic == characteristic.Id && d.Reading.Taken.Place == place.Number)],
            [.. bench.ReadingsAt(SlotOf(place, characteristic, spot))],
            SpotsFrom(bench, asSpot),
            bench));
    }

    /// <summary>The spots from the one asked for to the last of the characteristic on this kind of part.</summary>
    public static IReadOnlyList<Slot> SpotsFrom(Bench bench, KeypadAsked asked)
    {
        if (Characteristics.Find(asked.Characteristic) is not { } characteristic)
            return [];
        var all = bench.Places.All(characteristic)
            .SelectMany(p => characteristic.Spots.Where(s => !s.IsUnworn || asked.Spot == s.Id).Select(s => SlotOf(p, characteristic, s)))
            .ToList();
        var at = all.IndexOf(new Slot(asked.Part, asked.Characteristic, asked.Place, asked.Spot));
        return at < 0 ? [] : [.. all.Skip(at)];
    }

    /// <summary>Where to go when so many were read from here.</summary>
    public NextSpot After(int count)
    {
        var slot = Onwards.Count > count ? Onwards[count] : Onwards.Count > 0 ? Onwards[^1] : SlotOf(Place, Characteristic, Spot);
        return new NextSpot($"measure/{slot.Part}/{slot.Characteristic}/{slot.Place}", slot.Spot, Bench.NameOf(slot));
    }

    /// <summary>What the form read last, to be read out.</summary>
    public string Aloud(Recorded recorded) => recorded.Entry is ReadingTaken taken
        ? $"{Bench.NameOf(taken.Slot)}: {(taken.Unit == Units.Look ? taken.Value == 1 ? "passes" : "fails" : Units.Show(taken.Value, taken.Unit))}"
        : recorded.Entry.Words(Bench);

    public Call? CallOf(Recorded recorded) => CallOf(Bench, recorded);

    /// <summary>The verdict on the spot that a reading was taken at, as it stands with it; null without one.</summary>
    public static Call? CallOf(Bench bench, Recorded recorded) =>
        recorded.Entry is ReadingTaken taken
        && Characteristics.Find(taken.Characteristic) is { } characteristic
        && bench.Places.On(bench.Engine.Parts[taken.Part], characteristic).FirstOrDefault(p => p.Number == taken.Place) is { } place
        && new Assessor(bench).Of(characteristic, place).Figures.FirstOrDefault(f => f.Spot == taken.Spot || f.Spot.Length == 0) is { Call: not Call.None } figure
            ? figure.Call
            : null;

    private static bool IsRead(Bench bench, MeasuringPlace place, Characteristic characteristic, MeasuringSpot spot) => bench.ReadingsAt(SlotOf(place, characteristic, spot)).Any(r => r.Counts);

    private static string Plain(Bench bench, MeasuringPlace place, Characteristic characteristic, MeasuringSpot spot) =>
        bench.ReadingsAt(SlotOf(place, characteristic, spot)).LastOrDefault(r => r.Counts) is { } reading ? Units.Show(reading.Taken.Value, reading.Taken.Unit) : "";

    private static Slot SlotOf(MeasuringPlace place, Characteristic characteristic, MeasuringSpot spot) => new(place.Part, characteristic.Id, place.Number, spot.Id);

    /// <summary>The instrument that this was last read with, else the one of the usual sort, else the only one.</summary>
    private static string Usual(Bench bench, Characteristic characteristic, InstrumentKept[] instruments) =>
        bench.Readings.Values.LastOrDefault(r => r.Taken.Characteristic == characteristic.Id && r.Taken.Instrument is not null)?.Taken.Instrument
        ?? (instruments.FirstOrDefault(i => i.Tool == characteristic.Tool) ?? (instruments.Length == 1 ? instruments[0] : null))?.Instrument ?? "";

    private static string ZeroOf(Bench bench, string instrument) => bench.ZeroOf(instrument) is { } zero
        ? $"set to {Units.Show(zero.Setting.Size, bench.Instruments[instrument].Unit)}{(zero.Setting.On.Length > 0 ? $" on {zero.Setting.On}" : "")}; +43 is 43 µm over that"
        : "";

    private static string Sentence(string words) => words.Sentence();
}
