using Gudgeon.Engine;
using Gudgeon.Sums;
using Gudgeon.Sums.Motion;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

/// <summary>One valve of the sheet.</summary>
/// <param name="ClearanceMm">The last reading that counts; null while there is none.</param>
/// <param name="Low">Least of the owner's limit, mm.</param>
/// <param name="High">Most of it.</param>
public sealed record LashLine(string Valve, double? ClearanceMm, double? ShimMm, double? Low, double? High)
{
    /// <summary>Whether the clearance is within the limits; null where one of them is missing.</summary>
    public bool? IsWithin => ClearanceMm is { } c && Low is { } low && High is { } high ? c >= low && c <= high : null;
}

/// <summary>Valve clearances with the shims that settle them.</summary>
public static class LashSheet
{
    /// <summary>The characteristic that holds the clearance.</summary>
    public const string Clearance = "valve-clearance";

    /// <summary>Where on a valve it is read.</summary>
    public static Slot SlotOf(string valve) => new(valve, Clearance, 1, "one");

    public static bool IsValve(Part part) => part.Kind is "valve-in" or "valve-ex";

    public static IReadOnlyList<LashLine> Of(Bench bench) => [.. bench.Engine.Parts.Values.Where(p => IsValve(p) && !bench.Part(p.Id).IsAbsent).Select(p => Line(bench, p.Id))];

    private static LashLine Line(Bench bench, string valve)
    {
        var limit = bench.LimitOf(Clearance, valve, LimitState.New)?.Limit ?? bench.LimitOf(Clearance, valve, LimitState.Service)?.Limit;
        return new LashLine(
            valve,
            bench.ReadingsAt(SlotOf(valve)).LastOrDefault(r => r.Counts)?.Taken.Value,
            bench.Shims.TryGetValue(valve, out var shim) ? shim : null,
            limit?.Low,
            limit?.High);
    }

    /// <summary>The shims for every valve that is read, measured and limited: fewest bought, then fewest moved.</summary>
    public static Outcome<IReadOnlyList<ShimChoice>> Choose(Bench bench)
    {
        var lines = Of(bench);
        var ready = lines.Where(l => l is { ClearanceMm: not null, ShimMm: not null, Low: not null, High: not null }).ToArray();
        if (ready.Length == 0)
            return Outcome.Refused<IReadOnlyList<ShimChoice>>(new Refusal("valve clearances", $"{lines.Count(l => l.ClearanceMm is not null)} read, {lines.Count(l => l.ShimMm is not null)} shims measured, {lines.Count(l => l.High is not null)} with a limit", "at least one valve with all three", "Type clearance, shim and the limits of your book"));
        if (bench.ShimsOffered is not { } offered)
            return Outcome.Refused<IReadOnlyList<ShimChoice>>(new Refusal("shims", "no list", "the shims that can be had", "Type thinnest, thickest and step of the shop's list"));
        return ValveShims.LeastNew(
            [.. ready.Select(l => new MeasuredValve(bench.NameOf(l.Valve), Mm(l.ClearanceMm!.Value), Mm(l.ShimMm!.Value), Mm(l.Low!.Value), Mm(l.High!.Value)))],
            [.. offered.SparesMm.Select(Mm)],
            new ShimRange(Mm(offered.ThinnestMm), Mm(offered.ThickestMm), Mm(offered.StepMm)));
    }

    /// <summary>A choice in words: <c>2.35 mm from inlet valve 3</c>.</summary>
    public static string Words(ShimChoice choice) => choice.Source switch
    {
        ShimSource.Stays => $"keep {Size(choice.Shim)}",
        ShimSource.FromValve => $"{Size(choice.Shim)} from {choice.FromValve}",
        ShimSource.Spare => $"{Size(choice.Shim)} from the spares",
        _ => $"buy {Size(choice.Shim)}",
    } + $", gives {Size(choice.Clearance)}";

    private static string Size(Length length) => Units.Show(Math.Round(length.Millimetres, 4), "mm");

    private static Length Mm(double mm) => Length.FromMillimetres(mm);
}
