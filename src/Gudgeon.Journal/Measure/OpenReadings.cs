using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>Something that is asked for on a part and has neither a figure nor a reason why not.</summary>
/// <param name="Words">What is missing: <c>no reading at bore 2, bore 3</c>.</param>
public sealed record OpenReading(string Part, string Characteristic, string Words);

/// <summary>What was never measured.</summary>
public static class OpenReadings
{
    /// <summary>
    /// Of these characteristics, those without a figure and without a reason, part by part. A figure that is worked out
    /// is asked for by the readings it lacks.
    /// </summary>
    /// <param name="concerns">Which parts are asked; null for all that are on this engine's list.</param>
    public static IReadOnlyList<OpenReading> Of(Bench bench, IReadOnlyList<string> characteristics, Func<Part, bool>? concerns = null)
    {
        var assessor = new Assessor(bench);
        var open = new List<(MeasuringPlace Place, Characteristic Characteristic, string Words)>();
        foreach (var characteristic in characteristics.Select(Characteristics.Find))
            if (characteristic is not null)
                foreach (var place in bench.Places.All(characteristic).Where(p => bench.Engine.Parts[p.Part] is { Kind: not "own" } part && (concerns?.Invoke(part) ?? true)))
                    open.AddRange(At(bench, assessor, characteristic, place));
        return
        [
            .. open.DistinctBy(o => (o.Place.Part, o.Place.Number, o.Characteristic.Id))
                .GroupBy(o => (o.Place.Part, o.Characteristic.Id, o.Words))
                .Select(g => new OpenReading(g.Key.Part, g.Key.Id, g.Count() == 1 && g.First().Place.Name == bench.NameOf(g.Key.Part) ? g.Key.Words : $"{g.Key.Words} at {string.Join(", ", g.Select(o => o.Place.Name))}")),
        ];
    }

    private static IEnumerable<(MeasuringPlace, Characteristic, string)> At(Bench bench, Assessor assessor, Characteristic characteristic, MeasuringPlace place)
    {
        if (bench.WhyNot(characteristic.Id, place.Part) is not null || assessor.Of(characteristic, place) is not { IsStarted: false } assessment)
            yield break;
        if (characteristic.IsRead)
        {
            var spots = characteristic.Spots.Count(s => !s.IsUnworn);
            yield return (place, characteristic, assessment.Missing < spots ? $"{spots - assessment.Missing} of {spots} read" : "no reading");
            yield break;
        }

        var sources = characteristic.From.Select(f => Characteristics.Find(f.Characteristic)!).Distinct()
            .Select(s => (Source: s, Place: bench.Places.Mate(place, characteristic, s)))
            .ToArray();
        // Where a mate is not there, or is not measured for a reason, the figure cannot be asked for.
        if (sources.Any(s => s.Place is null || bench.WhyNot(s.Source.Id, s.Place.Part) is not null))
            yield break;
        var lacking = sources.SelectMany(s => At(bench, assessor, s.Source, s.Place!)).ToArray();
        foreach (var lack in lacking)
            yield return lack;
        if (lacking.Length == 0)
            yield return (place, characteristic, NotWorkedOut(bench, sources[0].Source, sources[0].Place!));
    }

    /// <summary>Read in part: the figure needs the spots that are still open.</summary>
    private static string NotWorkedOut(Bench bench, Characteristic source, MeasuringPlace place)
    {
        var spots = source.Spots.Where(s => bench.ReadingsAt(new Slot(place.Part, source.Id, place.Number, s.Id)).All(r => !r.Counts)).Select(s => s.Name).ToArray();
        return spots.Length is 0 or > 6 ? $"too few readings of {source.Name}" : $"no reading of {source.Name}, {string.Join("; ", spots)}";
    }
}
