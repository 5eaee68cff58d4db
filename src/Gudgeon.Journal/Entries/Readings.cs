using System.Globalization;
using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(ReadingTaken), "reading-taken")]
[JsonDerivedType(typeof(ReadingSetAside), "reading-set-aside")]
[JsonDerivedType(typeof(ReadingStands), "reading-stands")]
public abstract partial record Entry;

/// <summary>One reading, as it was typed and as it was understood.</summary>
/// <param name="Place">From 1, along the part; 1 where the part is the place.</param>
/// <param name="Spot">Where on the place: <c>top.across</c>.</param>
/// <param name="AsTyped">What was typed or said.</param>
/// <param name="Value">What it was understood as, in the unit; for a look 1 is a pass and 0 a fail.</param>
/// <param name="Instrument">Id of the instrument, or null where none is needed or known.</param>
/// <param name="Repeat">1 for the first reading of the spot, 2 for the next.</param>
/// <param name="PartC">Temperature of the part in °C, or null.</param>
/// <param name="GaugeC">Temperature of the gauge in °C, or null.</param>
/// <param name="By">Who took it, or null where nobody said.</param>
public sealed record ReadingTaken(
    string Part,
    string Characteristic,
    int Place,
    string Spot,
    string AsTyped,
    double Value,
    string Unit,
    string? Instrument = null,
    int Repeat = 1,
    double? PartC = null,
    double? GaugeC = null,
    string? By = null) : Entry
{
    private const int LongestName = 60;

    [JsonIgnore]
    public Slot Slot => new(Part, Characteristic, Place, Spot);

    public override IEnumerable<string> About() => [Part];

    public override Refusal? Check(Bench bench) =>
        bench.NoSuchSpot(Slot, out var spot)
        ?? (Unit != spot!.Unit ? new Refusal(bench.NameOf(Slot), $"a reading in {Unit}", spot.Unit, "Read it in the unit of the figure")
        : !double.IsFinite(Value) ? new Refusal(bench.NameOf(Slot), "no number", "a number", "Type the reading again")
        : Unit == Units.Look && Value is not (0 or 1) ? new Refusal(bench.NameOf(Slot), $"\"{AsTyped}\"", "pass or fail", "Say which")
        : Instrument is not null && bench.NoSuchInstrument(Instrument) is { } missing ? missing
        : Instrument is not null && bench.Instruments[Instrument].Unit != Unit ? new Refusal(bench.NameOf(Slot), $"{bench.InstrumentName(Instrument)}, which reads {Units.Sign(bench.Instruments[Instrument].Unit)}", $"an instrument that reads {Units.Sign(Unit)}", "Choose another instrument")
        : By is not null && (string.IsNullOrWhiteSpace(By) || By.Length > LongestName) ? new Refusal(bench.NameOf(Slot), By.Length > LongestName ? $"a name of {By.Length} signs" : "no name", $"who took it, in {LongestName} signs at most", "Type a short name, or leave it out")
        : PartC is < -40 or > 200 || GaugeC is < -40 or > 200 ? new Refusal(bench.NameOf(Slot), "a temperature outside the workshop", "-40 to 200 °C", "Type it again")
        : null);

    public override string Words(Bench bench) =>
        $"{bench.NameOf(Slot)}: {(Unit == Units.Look ? Value == 1 ? "passes" : "fails" : Units.Show(Value, Unit))}"
        + $"{(Understood ? $" (typed \"{AsTyped}\")" : "")}{(Instrument is null ? "" : $", {bench.InstrumentName(Instrument)}")}{(Repeat > 1 ? $", reading {Repeat}" : "")}{(By is null ? "" : $", by {By}")}"
        + (PartC is { } part ? $", part at {Units.Plain(part)} °C{(GaugeC is { } gauge ? $", gauge at {Units.Plain(gauge)} °C" : "")}" : "");

    /// <summary>True when what was typed is not the figure itself.</summary>
    private bool Understood => !double.TryParse(AsTyped.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var typed) || Math.Abs(typed - Value) > 1e-12;

    internal override void Apply(Bench bench, Recorded recorded) => bench.Take(this, recorded);
}

/// <summary>A reading is not used. It stays in the book with the reason.</summary>
/// <param name="Reading">Number of the entry that holds it.</param>
public sealed record ReadingSetAside(long Reading, string Why) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        bench.NoSuchReading(Reading)
        ?? (string.IsNullOrWhiteSpace(Why) ? new Refusal($"reading {Reading}", "no reason", "why it is set aside", "Say why: wrong place, dirt, a slip of the hand") : null);

    public override string Words(Bench bench) => $"{bench.NameOfReading(Reading)} set aside: {Why}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.ChangeReading(Reading).SetAside = Why;
}

/// <summary>A reading that looked odd was looked at again and stands.</summary>
public sealed record ReadingStands(long Reading) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) => bench.NoSuchReading(Reading);

    public override string Words(Bench bench) => $"{bench.NameOfReading(Reading)} stands as it was read";

    internal override void Apply(Bench bench, Recorded recorded) => bench.ChangeReading(Reading).Stands = true;
}
