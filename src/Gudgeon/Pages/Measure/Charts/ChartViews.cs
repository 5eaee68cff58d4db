using System.Globalization;
using Gudgeon.Engine;
using Gudgeon.Journal;

namespace Gudgeon.Pages.Measure.Charts;

/// <summary>One row of a band chart.</summary>
/// <param name="Low">Smallest figure of the place.</param>
/// <param name="High">Largest figure.</param>
/// <param name="U">Expanded uncertainty; 0 where none is known.</param>
public sealed record BandRow(string Name, double Low, double High, double U, string Shown, Call Call)
{
    public double Middle => (Low + High) / 2;

    /// <summary>Rows of one characteristic, place by place.</summary>
    public static IReadOnlyList<BandRow> Of(IEnumerable<Assessment> places) =>
    [
        .. places.Where(a => a.IsStarted).Select(a => new BandRow(
            a.Place.Name,
            a.Figures.Min(f => f.Value),
            a.Figures.Max(f => f.Value),
            a.Figures.Max(f => f.Expanded ?? 0),
            a.Figures.Count == 1 ? a.Figures[0].Shown : $"{Units.Plain(a.Figures.Min(f => f.Value))} to {Units.Plain(a.Figures.Max(f => f.Value))}",
            a.Call)),
    ];
}

/// <summary>A point of a time line.</summary>
/// <param name="Counts">False for a reading that was set aside, as one from before the machining.</param>
public sealed record TimePoint(DateTimeOffset At, double Value, double U, string Spot, bool Counts)
{
    public string Day => At.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>Every reading at a place, in order.</summary>
    public static IReadOnlyList<TimePoint> Of(Bench bench, Assessment place) =>
    [
        .. bench.Readings.Values
            .Where(r => r.Taken.Part == place.Place.Part && r.Taken.Characteristic == place.Characteristic.Id && r.Taken.Place == place.Place.Number)
            .OrderBy(r => r.At)
            .Select(r => new TimePoint(r.At, r.Taken.Value, r.Taken.Instrument is { } id && bench.Instruments.TryGetValue(id, out var i) ? i.Expanded : 0, r.Taken.Spot, r.Counts)),
    ];
}

/// <summary>A bore as a map: micrometres over its smallest reading.</summary>
public sealed record BoreView(string Title, IReadOnlyList<string> Rows, IReadOnlyList<string> Columns, double?[][] Cells, bool TwoPoint, double Least)
{
    private const double WidestInPicture = 26;

    public static BoreView? Of(Bench bench, Assessment bore)
    {
        var grid = bore.Characteristic.Spots.Where(s => s.Column.Length > 0).ToArray();
        var rows = grid.Select(s => s.Row).Distinct().ToArray();
        var columns = grid.Select(s => s.Column).Distinct().ToArray();
        var values = bore.Figures.ToDictionary(f => f.Spot, f => f.Value);
        if (columns.Length != 2 || rows.Length < 2 || values.Count < 2)
            return null;
        var least = grid.Where(s => values.ContainsKey(s.Id)).Min(s => values[s.Id]);
        double? Over(string row, string column) => values.TryGetValue($"{row}.{column}", out var v) ? Math.Round((v - least) * 1000, 1) : null;
        var sees = bore.Characteristic.Tool is "bg" or "sg";
        return new BoreView(bore.Place.Name.Sentence(), rows, columns, [.. rows.Select(r => columns.Select(c => Over(r, c)).ToArray())], sees, Math.Round(least, 6));
    }

    private double Most => Cells.SelectMany(r => r).Max(c => c ?? 0);

    /// <summary>Hatching from 0 (as the smallest) to 4 (as the largest).</summary>
    public int Level(double over) => Most > 0 ? (int)Math.Round(over / Most * 4) : 0;

    /// <summary>Units of the picture for a micrometre on radius.</summary>
    public double PerMicrometre => Most > 0 ? WidestInPicture / Most : 0;

    /// <summary>How many times as large the section shows the wear, told roundly: a bore of 68 units stands for its diameter.</summary>
    public string Times => Most > 0 ? Math.Pow(10, Math.Round(Math.Log10(PerMicrometre * 1000 / 0.8))).ToString("0", CultureInfo.InvariantCulture) : "1";

    public string Aloud => $"{Title}: {string.Join("; ", Rows.Select((r, i) => $"{r} {string.Join(", ", Columns.Select((c, j) => Cells[i][j] is { } v ? $"{c} {v.ToString("0.#", CultureInfo.InvariantCulture)}" : $"{c} not read"))}"))} micrometres over the smallest";
}
