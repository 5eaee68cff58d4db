using System.Globalization;
using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>One fluid: what was drained against what was filled since it was first drained.</summary>
/// <param name="Fluid">Its name.</param>
/// <param name="DrainedCm3">In all.</param>
/// <param name="FilledCm3">In all.</param>
/// <param name="LowParts">Parts at the bottom that were off: what lay in them ran out unmeasured.</param>
public sealed record FluidLine(string Fluid, double DrainedCm3, double FilledCm3, IReadOnlyList<string> LowParts)
{
    /// <summary>Filled less drained.</summary>
    public double DifferenceCm3 => FilledCm3 - DrainedCm3;
}

/// <summary>Fluids drained and filled.</summary>
public static class FluidAccount
{
    public static IReadOnlyList<FluidLine> Of(Bench bench) =>
    [
        .. bench.Fluids.Select(r => (FluidMoved)r.Entry).GroupBy(f => Key(f.Fluid)).Select(g => new FluidLine(
            g.Key,
            g.Where(f => f.Way == FluidWay.Drained).Sum(f => f.Cm3),
            g.Where(f => f.Way == FluidWay.Filled).Sum(f => f.Cm3),
            LowParts(bench, g.Key))),
    ];

    /// <summary>Less than this part of what was drained counts as short: some stays in the can. Common practice, no source.</summary>
    private const double Enough = 0.9;

    /// <summary>Fluids of which less was filled than was drained.</summary>
    public static IEnumerable<Finding> Short(Bench bench) => Of(bench)
        .Where(f => f.FilledCm3 < Enough * f.DrainedCm3)
        .Select(f => new Finding(FindingNames.FluidShort, "", f.Fluid, $"{Litres(f.DrainedCm3)} drained, {Litres(f.FilledCm3)} filled", "Fill it to its mark and say how much went in"));

    /// <summary>Litres to the hundredth, as people pour.</summary>
    public static string Litres(double cm3) => string.Create(CultureInfo.InvariantCulture, $"{cm3 / 1000:0.##} litres").Replace("1 litres", "1 litre", StringComparison.Ordinal);

    internal static string Key(string fluid) => fluid.Trim().ToLowerInvariant();

    /// <summary>Parts of the fluid's circuits that sit low and came off: more is filled than was measured when draining.</summary>
    private static string[] LowParts(Bench bench, string fluid)
    {
        var lines = bench.Engine.Lines.Values.Where(l => Family.Of(l.Circuit) == fluid).ToArray();
        return [.. lines.SelectMany(l => new[] { l.From, l.To }).Select(p => p.Part).Distinct()
            .Where(id => bench.Engine.Parts.TryGetValue(id, out var part) && part.Zone == Zone.Bottom && bench.Part(id).OffBy is not null)];
    }
}

/// <summary>Circuits that carry one fluid.</summary>
public static class Family
{
    /// <summary>Oil under pressure, drained and scavenged is one oil.</summary>
    public static string Of(Circuit circuit) => circuit switch
    {
        Circuit.OilPressure or Circuit.OilDrain or Circuit.OilScavenge => "oil",
        Circuit.Coolant => "coolant",
        Circuit.Fuel => "fuel",
        Circuit.Air => "air",
        Circuit.Exhaust => "exhaust",
        Circuit.Breather => "breather",
        Circuit.Vacuum => "vacuum",
        Circuit.Electrical => "electrical",
        Circuit.Refrigerant => "refrigerant",
        _ => "hydraulic",
    };
}
