using Gudgeon.Engine;
using Gudgeon.Sums.Metrology;

namespace Gudgeon.Journal;

/// <summary>What the readings hold against the work.</summary>
public static class MeasureFindings
{
    public static IEnumerable<Finding> Of(Bench bench)
    {
        if (bench.Readings.Count == 0)
            yield break;
        var assessor = new Assessor(bench);
        var started = assessor.Started().ToArray();
        foreach (var assessment in started)
            foreach (var finding in Calls(assessment))
                yield return finding;
        foreach (var set in started.Select(a => a.Characteristic).Distinct())
            if (assessor.Spread(set) is { Call: Call.Outside or Call.TooCloseToCall } spread)
                yield return Finding(spread, set.Id, $"{set.Name}, spread of the set");
        foreach (var characteristic in started.Where(a => a.Characteristic.Figure != FigureKind.Look).GroupBy(a => a.Characteristic))
            if (characteristic.Key.Limits != LimitKinds.Spread && characteristic.All(a => a.Figures.All(f => f.Service is null && f.New is null && f.Budget is not null)))
                yield return new(FindingNames.LimitMissing, characteristic.First().Place.Part, characteristic.Key.Name, "read, and no limit is typed", "Type the limit of your book, or leave it open");
        foreach (var doubt in Doubts.Of(bench))
            yield return new(FindingNames.ReadingDoubted, doubt.Reading.Taken.Part, bench.NameOf(doubt.Reading.Taken.Slot), $"{Units.Show(doubt.Reading.Taken.Value, doubt.Reading.Taken.Unit)} (typed \"{doubt.Reading.Taken.AsTyped}\", entry {doubt.Reading.Number}). {doubt.Why}", "Read it again; say that it stands, or set it aside");
        foreach (var part in bench.Readings.Values.Where(r => r.Counts && r.Taken is { Instrument: null, Unit: not (Units.Look or "1") }).GroupBy(r => (r.Taken.Part, r.Taken.Characteristic)))
            yield return new(FindingNames.InstrumentMissing, part.Key.Part, $"{bench.NameOf(part.Key.Part)}, {Characteristics.Find(part.Key.Characteristic)!.Name}", $"{part.Count()} readings without an instrument", "Read them again with one of your list: without its uncertainty there is no verdict");
        foreach (var (id, instrument) in bench.Instruments)
            if (bench.ZeroOf(id)?.Drift is { } drift && Math.Abs(drift) > 2 * instrument.Resolution)
                yield return new(FindingNames.ZeroMoved, "", instrument.Name, $"its zero moved by {Units.Show(drift, instrument.Unit)} over the session", "Read again what was read with it");
    }

    /// <summary>Figures of these characteristics that are outside their limits or too close to call.</summary>
    public static IEnumerable<Finding> Against(Bench bench, IReadOnlyList<string> characteristics) => bench.Readings.Count == 0 || characteristics.Count == 0
        ? []
        : new Assessor(bench).Started().Where(a => characteristics.Contains(a.Characteristic.Id)).SelectMany(Calls);

    /// <summary>What of these characteristics was never read and has no reason why not.</summary>
    public static IEnumerable<Finding> NotTaken(Bench bench, IReadOnlyList<string> characteristics, Func<Part, bool>? concerns = null) =>
        OpenReadings.Of(bench, characteristics, concerns).Select(o => new Finding(
            FindingNames.ReadingMissing, o.Part, $"{bench.NameOf(o.Part)}, {Characteristics.Find(o.Characteristic)!.Name}", o.Words, "Measure it, or say why it does not apply to this engine"));

    private static IEnumerable<Finding> Calls(Assessment assessment)
    {
        if (assessment.Deciding is { Call: Call.Outside or Call.TooCloseToCall } worst)
            yield return Finding(worst, assessment.Place.Part, $"{assessment.Place.Name}, {assessment.Characteristic.Name}{(worst.Spot.Length > 0 && worst.Spot != "one" ? $", {worst.Name}" : "")}");
    }

    private static Finding Finding(JudgedFigure figure, string about, string where) => new(
        figure.Call == Call.Outside ? FindingNames.ReadingOutside : FindingNames.ReadingTooClose,
        about,
        where,
        figure.Unit == Units.Look ? "it fails" : $"{figure.Shown} {figure.ShownUncertainty}, {Limit(figure.Service ?? figure.New!, figure.Unit)}: {figure.Call.Words()}",
        figure.Next.Length > 0 ? figure.Next : "Decide what to do with it");

    private static string Limit(Verdict verdict, string unit) => $"limit {Units.Band(verdict.Limits.Lower, verdict.Limits.Upper, unit)}";
}
