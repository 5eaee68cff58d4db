using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>Readings that a gate asks for and that were never taken, one line for each characteristic.</summary>
internal static class GateReadings
{
    public static IEnumerable<GateFinding> NotTaken(Bench bench, Gate gate, Part? closer, Func<Part, bool> concerns)
    {
        if (gate.Readings.Count == 0)
            return [];
        var open = closer is null || IsOpened(bench, gate, closer);
        return OpenReadings.Of(bench, gate.Readings, p => concerns(p) && (closer is null || WasApart(bench, gate, p, open)))
            .GroupBy(o => o.Characteristic)
            .Select(g => new GateFinding(Finding(bench, g.Key, [.. g]), false) { Characteristic = g.Key, Parts = [.. g.Select(o => o.Part).Distinct()] });
    }

    /// <summary>What nobody took off is as it was and is not asked for. What carries something of this gate that came off was opened with it.</summary>
    private static bool WasApart(Bench bench, Gate gate, Part part, bool open) =>
        bench.IsBase(part.Id) ? open : bench.Part(part.Id).OffBy is not null
            || bench.Engine.CarriedBy(part.Id).Any(c => bench.Part(c).OffBy is not null && gate.Back.Contains(bench.Engine.Parts[c].Kind));

    /// <summary>Whether something behind the gate came off, not only its lid.</summary>
    private static bool IsOpened(Bench bench, Gate gate, Part closer) =>
        closer.Kind == "crank" || bench.Engine.Parts.Values.Any(p => gate.Back.Contains(p.Kind) && bench.Part(p.Id).OffBy is not null);

    private static Finding Finding(Bench bench, string characteristic, OpenReading[] open)
    {
        var words = open.Select(o => o.Words).Distinct().ToArray();
        var met = words.Length == 1 && open.Length > 1 ? $"{words[0]} on {bench.Several(open.Select(o => o.Part))}"
            : open.Length == 1 ? $"{open[0].Words} ({bench.NameOf(open[0].Part)})"
            : string.Join("; ", open.Select(o => $"{bench.NameOf(o.Part)}: {o.Words}"));
        return new Finding(FindingNames.ReadingMissing, open[0].Part, Characteristics.Find(characteristic)!.Name, met, "Measure it, or say why it does not apply to this engine");
    }
}
