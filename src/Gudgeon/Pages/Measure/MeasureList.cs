using Gudgeon.Engine;
using Gudgeon.Journal;

namespace Gudgeon.Pages.Measure;

/// <summary>A part on the Measure page.</summary>
/// <param name="Read">How many places have a figure.</param>
/// <param name="All">How many there are to read.</param>
/// <param name="Worst">The worst call on it.</param>
public sealed record PartToMeasure(string Id, string Name, int Read, int All, Call Worst);

/// <summary>Parts of one area and kind.</summary>
public sealed record KindToMeasure(string Name, IReadOnlyList<PartToMeasure> Parts);

/// <summary>What there is to measure, by area.</summary>
/// <param name="Attention">Figures that are out or too close to call, worst first.</param>
public sealed record MeasureList(IReadOnlyList<(string Area, IReadOnlyList<KindToMeasure> Kinds)> Areas, IReadOnlyList<Assessment> Attention, IReadOnlyList<Doubt> Doubts, int Readings)
{
    public static MeasureList Of(Bench bench)
    {
        var started = new Assessor(bench).Started().ToArray();
        var byPart = started.ToLookup(a => a.Place.Part);
        var areas = bench.Engine.Parts.Values
            .Where(p => !bench.Part(p.Id).IsAbsent)
            .Select(p => (Part: p, On: bench.Places.On(p)))
            .Where(x => x.On.Count > 0 && x.Part.Kind != "own" || byPart[x.Part.Id].Any())
            .GroupBy(x => x.Part.Kind == "own" ? "Added parts" : x.On[0].Characteristic.Area)
            .Select(area => (area.Key, (IReadOnlyList<KindToMeasure>)[.. area.GroupBy(x => x.Part.Kind).Select(kind => new KindToMeasure(
                kind.Count() == 1 ? kind.First().Part.Name : bench.Several(kind.Select(x => x.Part.Id)),
                [.. kind.Select(x => new PartToMeasure(x.Part.Id, x.Part.Name, byPart[x.Part.Id].Count(a => a.Characteristic.IsRead), x.On.Where(o => o.Characteristic.IsRead).Sum(o => o.Places.Count), byPart[x.Part.Id].Select(a => a.Call).DefaultIfEmpty(Call.None).Max()))]))]));
        return new MeasureList([.. areas], [.. started.Where(a => a.Call >= Call.TooCloseToCall).OrderByDescending(a => a.Call)], Journal.Doubts.Of(bench), bench.Readings.Count);
    }
}

/// <summary>One place of a part on its sheet, folded or open.</summary>
/// <param name="IsOpen">Begun and not all read, or the first that waits: where the hand goes next.</param>
public sealed record PlaceOnSheet(string Name, IReadOnlyList<Assessment> Rows, bool IsOpen)
{
    public IReadOnlyList<Assessment> Started => [.. Rows.Where(r => r.IsStarted)];

    public Call Worst => Rows.Select(r => r.Call).DefaultIfEmpty(Call.None).Max();

    public int Read => Rows.Count(r => r.Characteristic.IsRead && r.IsStarted);

    public int All => Rows.Count(r => r.Characteristic.IsRead);

    /// <summary>Places in order. One alone is open, and so are those begun with spots still to read; else the first with something to read.</summary>
    public static IReadOnlyList<PlaceOnSheet> Of(Bench bench, IReadOnlyList<Assessment> all)
    {
        var places = all.GroupBy(a => a.Place.Name).Select(g => (g.Key, Rows: (IReadOnlyList<Assessment>)[.. g])).ToArray();
        bool Begun(IReadOnlyList<Assessment> rows) => rows.Any(r => r.IsStarted && r.Characteristic.IsRead && r.Missing > 0);
        var first = places.Any(p => Begun(p.Rows)) ? null : places.FirstOrDefault(p => p.Rows.Any(r => r.Characteristic.IsRead && !r.IsStarted && bench.WhyNot(r.Characteristic.Id, r.Place.Part) is null)).Key;
        return [.. places.Select(p => new PlaceOnSheet(p.Key, p.Rows, places.Length == 1 || Begun(p.Rows) || p.Key == first))];
    }
}

/// <summary>One part with everything that can be measured on it, place by place.</summary>
public sealed record PartSheet(string Part, string Name, IReadOnlyList<PlaceOnSheet> Places, IReadOnlyList<JudgedFigure> Spreads, IReadOnlyList<Doubt> Doubts, string Material)
{
    /// <summary>Every characteristic at every place of the part.</summary>
    public IReadOnlyList<Assessment> Rows => [.. Places.SelectMany(p => p.Rows)];

    /// <summary>Characteristics with a figure at two places or more, here and on parts of the same kind: side by side against one band.</summary>
    public IReadOnlyList<IReadOnlyList<Assessment>> Sets { get; init; } = [];

    public static PartSheet Of(Bench bench, string part)
    {
        var assessor = new Assessor(bench);
        var all = assessor.Sheet(part);
        if (bench.Engine.Parts[part].Kind == "own")
            all = [.. all.Where(a => a.IsStarted)];
        return new PartSheet(
            part,
            bench.NameOf(part),
            PlaceOnSheet.Of(bench, all),
            [.. all.Select(a => a.Characteristic).Distinct().Select(assessor.Spread).Where(s => s is not null).Select(s => s!)],
            [.. Journal.Doubts.Of(bench).Where(d => d.Reading.Taken.Part == part)],
            bench.Materials.GetValueOrDefault(part) ?? "")
        {
            Sets =
            [
                .. all.Where(a => a.IsStarted && a.Characteristic.Unit != Units.Look).Select(a => a.Characteristic).Distinct()
                    .Select(c => (IReadOnlyList<Assessment>)[.. bench.Places.All(c).Select(p => assessor.Of(c, p)).Where(a => a.IsStarted)])
                    .Where(set => set.Count > 1),
            ],
        };
    }
}
