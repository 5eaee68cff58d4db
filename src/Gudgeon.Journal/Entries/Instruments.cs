using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(InstrumentKept), "instrument-kept")]
[JsonDerivedType(typeof(GaugeZeroed), "gauge-zeroed")]
public abstract partial record Entry;

/// <summary>An instrument of the owner's list, or what is newly known of it. The last entry of its id counts.</summary>
/// <param name="Instrument">Short id: <c>mic-1</c>.</param>
/// <param name="Tool">Sort of instrument, an id of the tools, or empty.</param>
/// <param name="Unit">What it reads: mm, g, cm3, N, Nm, bar, deg, C, um, HB.</param>
/// <param name="Resolution">Smallest step that is read.</param>
/// <param name="Expanded">U of one reading in the owner's hands, all in.</param>
/// <param name="CoverageFactor">The k of that U.</param>
/// <param name="CalibratedOn">Day of the calibration, year first, or empty.</param>
/// <param name="CalibrationError">What it shows too much, by the certificate; taken off every reading.</param>
/// <param name="CalibrationExpanded">U (k = 2) that the certificate states.</param>
/// <param name="ExpansionPerKelvin">Of the gauge or its setting master, 1/K; null takes gauge steel.</param>
/// <param name="Gone">True when it is no longer used.</param>
public sealed record InstrumentKept(
    string Instrument,
    string Name,
    string Tool,
    string Unit,
    double Resolution,
    double Expanded,
    double CoverageFactor = 2,
    string CalibratedOn = "",
    double? CalibrationError = null,
    double? CalibrationExpanded = null,
    double? ExpansionPerKelvin = null,
    bool Gone = false) : Entry
{
    [JsonIgnore]
    public double StandardUncertainty => Expanded / CoverageFactor;

    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        string.IsNullOrWhiteSpace(Instrument) || string.IsNullOrWhiteSpace(Name) ? new Refusal("instrument", "no name", "a name for it", "Call it what you like: the red micrometer")
        : !Units.All.Contains(Unit) ? new Refusal(Name, $"the unit \"{Unit}\"", string.Join(", ", Units.All), "Choose one of these")
        : !(Resolution >= 0) || double.IsInfinity(Resolution) ? new Refusal(Name, $"a resolution of {Units.Plain(Resolution)}", "0 or more", "Give the smallest step that you read")
        : !(Expanded > 0) || double.IsInfinity(Expanded) ? new Refusal(Name, $"an uncertainty of {Units.Plain(Expanded)}", "more than 0: no instrument is exact", "Give U of one reading in your hands; the list of sorts has a guess")
        : !(CoverageFactor is >= 1 and <= 10) ? new Refusal(Name, $"k = {Units.Plain(CoverageFactor)}", "1 to 10", "Take 2 unless the certificate says otherwise")
        : CalibrationExpanded < 0 ? new Refusal(Name, $"a certificate with U = {Units.Plain(CalibrationExpanded.Value)}", "0 or more", "Look at the certificate again")
        : ExpansionPerKelvin is < 0 or > 1e-4 ? new Refusal(Name, $"an expansion of {Units.Plain(ExpansionPerKelvin.Value)} per kelvin", "0 to 0.0001", "Gauge steel is 0.0000115")
        : null;

    public override string Words(Bench bench) => Gone
        ? $"{Name} is no longer used"
        : $"Instrument {Name}: reads to {Units.Show(Resolution, Unit)}, U = {Units.Show(Expanded, Unit)} (k = {Units.Plain(CoverageFactor)}){(CalibratedOn.Length > 0 ? $", calibrated {CalibratedOn}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Keep(this);
}

/// <summary>A gauge was set on a ring, block or micrometer, or looked at again on it after the work.</summary>
/// <param name="Size">Size that it was set to, in the unit of the instrument.</param>
/// <param name="AsTyped">The size as typed.</param>
/// <param name="On">What it was set on.</param>
/// <param name="Expanded">U (k = 2) of that, or null when it is within the U of the instrument.</param>
/// <param name="Drift">What it showed there after the work, off zero; null for a setting.</param>
public sealed record GaugeZeroed(string Instrument, double Size, string AsTyped, string On, double? Expanded = null, double? Drift = null) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        bench.NoSuchInstrument(Instrument)
        ?? (!double.IsFinite(Size) || Size <= 0 ? new Refusal(bench.InstrumentName(Instrument), $"a setting of {Units.Plain(Size)}", "the size that it was set to", "Type the size of the ring or block")
        : Expanded < 0 ? new Refusal(bench.InstrumentName(Instrument), $"a setting with U = {Units.Plain(Expanded.Value)}", "0 or more", "Look at the ring's certificate again")
        : null);

    public override string Words(Bench bench) => Drift is { } drift
        ? $"{bench.InstrumentName(Instrument)} looked at again on {On}: {Units.Show(drift, bench.Instruments[Instrument].Unit)} off zero"
        : $"{bench.InstrumentName(Instrument)} set to {Units.Show(Size, bench.Instruments[Instrument].Unit)}{(On.Length > 0 ? $" on {On}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Zero(this, recorded);
}
