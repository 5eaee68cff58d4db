using Gudgeon.Engine;
using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Quantities;
using Gudgeon.Sums.Statistics;

namespace Gudgeon.Journal;

/// <summary>Turns readings into figures with uncertainty: instrument, its setting and calibration, repeats, temperature.</summary>
/// <remarks>
/// How much of an instrument's U is common to its readings is known only from the owner's own repeats. Until there are
/// some, half of the variance is taken as common: common practice, no source.
/// </remarks>
public sealed class GaugeDesk(Bench bench)
{
    private const double EnoughFreedom = 5;
    private const double GaugeSteel = 11.5e-6;
    private const double AlikeWithinKelvins = 1;
    private readonly Dictionary<string, (double Deviation, double Freedom)> repeatability = Repeatability(bench);

    /// <summary>What every reading of an instrument brings: the same for each, so put into words once.</summary>
    private readonly Dictionary<string, (BudgetLine Scatter, IReadOnlyList<Cause> Common)> brought = [];

    /// <summary>The mean of the readings of a spot that count, or null when there is none.</summary>
    public Gauged? At(Slot slot, MeasuringSpot spot)
    {
        var used = bench.ReadingsAt(slot).Where(r => r.Counts).ToArray();
        if (used.Length == 0)
            return null;
        var single = used.Select(r => One(r, spot)).ToArray();
        if (single.Length == 1)
            return single[0];
        var parts = single.Select(g => (1.0 / single.Length, g)).ToArray();
        return new Gauged(spot.Id, $"{spot.Name}, mean of {single.Length}", Samples.Mean(single.Select(g => g.Value).ToArray()), spot.Unit, Combined.Causes(parts), string.Join("; ", single.Select(g => g.AsTyped)));
    }

    /// <summary>The owner's own spread with an instrument, pooled over all spots read more than once; null with too few.</summary>
    public (double Deviation, double Freedom)? SpreadOf(string instrument) =>
        repeatability.TryGetValue(instrument, out var known) && known.Freedom >= EnoughFreedom ? known : null;

    /// <summary>What one reading scatters by, and what is common to all readings of the instrument.</summary>
    public (double Scatter, double Common, double Freedom, string Basis) Shares(InstrumentKept instrument)
    {
        var u = instrument.StandardUncertainty;
        if (SpreadOf(instrument.Instrument) is { } own)
            return (own.Deviation, Math.Sqrt(Math.Max(0, u * u - own.Deviation * own.Deviation)), own.Freedom, $"your own repeats, {own.Freedom:0} degrees of freedom");
        return (u / Math.Sqrt(2), u / Math.Sqrt(2), double.PositiveInfinity, "half the variance of the instrument, until you have repeats");
    }

    private Gauged One(Reading reading, MeasuringSpot spot)
    {
        var taken = reading.Taken;
        if (taken.Instrument is null || !bench.Instruments.TryGetValue(taken.Instrument, out var instrument))
            return new Gauged(spot.Id, spot.Name, taken.Value, taken.Unit, null, taken.AsTyped);
        if (!brought.TryGetValue(instrument.Instrument, out var brings))
            brought[instrument.Instrument] = brings = Brings(instrument);
        List<Cause> causes = [new($"reading {reading.Number}", brings.Scatter), .. brings.Common];
        var value = taken.Value - (instrument.CalibrationError ?? 0);
        if (taken.Unit == "mm")
            value = At20(value, taken, instrument, causes);
        return new Gauged(spot.Id, spot.Name, value, taken.Unit, causes, taken.AsTyped);
    }

    private (BudgetLine Scatter, IReadOnlyList<Cause> Common) Brings(InstrumentKept instrument)
    {
        var (scatter, common, freedom, basis) = Shares(instrument);
        List<Cause> shared = [new($"gauge {instrument.Instrument}", new BudgetLine($"{instrument.Name}, common to its readings", common, $"U = {Units.Show(instrument.Expanded, instrument.Unit)}, k = {Units.Plain(instrument.CoverageFactor)}, less the scatter"))];
        if (instrument.CalibrationExpanded is > 0 and var certificate)
            shared.Add(new($"certificate {instrument.Instrument}", BudgetLine.Certificate($"certificate of {instrument.Name}", certificate)));
        if (bench.ZeroOf(instrument.Instrument)?.Setting.Expanded is > 0 and var setting)
            shared.Add(new($"setting {instrument.Instrument}", BudgetLine.Certificate($"setting of {instrument.Name}", setting)));
        return (new BudgetLine($"scatter of a reading, {instrument.Name}", scatter, basis, DegreesOfFreedom: freedom), shared);
    }

    /// <summary>ISO 1: sizes are stated at 20 °C.</summary>
    private double At20(double value, ReadingTaken taken, InstrumentKept instrument, List<Cause> causes)
    {
        var size = Math.Abs(value);
        var gaugePerKelvin = instrument.ExpansionPerKelvin ?? GaugeSteel;
        if (taken.PartC is not { } partC)
        {
            causes.Add(new("temperature", BudgetLine.Rectangular("temperature not noted: part and gauge alike to 1 K", size * gaugePerKelvin * AlikeWithinKelvins)));
            return value;
        }

        var gaugeC = taken.GaugeC ?? partC;
        if (!bench.Materials.TryGetValue(taken.Part, out var id) || ExpansionTable.Find(id) is not { } material)
        {
            // Of steel or of light alloy: what that could make is doubt, not a correction.
            causes.Add(new("temperature", BudgetLine.Rectangular("temperature noted, material of the part not said: not corrected", size * (Math.Abs(partC - 20) * 12e-6 + Math.Abs(partC - gaugeC) * gaugePerKelvin))));
            return value;
        }

        causes.Add(new($"expansion {id}", new BudgetLine($"expansion of {material.Name}", size * Math.Abs(partC - 20) * material.StandardUncertainty, "handbook value, rectangular")));
        causes.Add(new("temperature", BudgetLine.Rectangular("part and gauge alike to 1 K", size * material.PerKelvin * AlikeWithinKelvins)));
        return ThermalExpansion.At20(Length.FromMillimetres(value), Temperature.FromCelsius(partC), material.PerKelvin, Temperature.FromCelsius(gaugeC), gaugePerKelvin).Millimetres;
    }

    private static Dictionary<string, (double, double)> Repeatability(Bench bench) => bench.Readings.Values
        .Where(r => r.Counts && r.Taken.Instrument is not null)
        .GroupBy(r => (r.Taken.Instrument, r.Taken.Slot))
        .Where(g => g.Count() > 1)
        .GroupBy(g => g.Key.Instrument!)
        .ToDictionary(g => g.Key, g => Samples.Pooled(g.Select(s => (s.Count(), Samples.StandardDeviation(s.Select(r => r.Taken.Value).ToArray()))).ToArray()));
}
