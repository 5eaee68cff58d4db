using System.Globalization;

namespace Gudgeon.Pictures;

/// <summary>A piece of work on the days: what it is, which number it has in the list beside, how it is drawn.</summary>
/// <param name="Look">Class of the fill: <c>strip</c>, <c>between</c> or <c>refit</c>.</param>
public sealed record DayPiece(int Number, string Title, DateTime From, DateTime Until, string Look);

/// <summary>One bar in the picture.</summary>
public sealed record DayBar(DayPiece Piece, double X, double Width);

/// <summary>One day with its bars.</summary>
public sealed record DayRow(string Label, double Y, IReadOnlyList<DayBar> Bars);

/// <summary>Bars on days: a row for each day with work, the hours from left to right as far as any work reaches.</summary>
public sealed record DayBars(double Height, IReadOnlyList<DayRow> Rows, IReadOnlyList<(double X, string Hour)> Hours)
{
    public const double Width = 360;
    public const double Left = 78;
    public const double Top = 20;
    public const double RowHeight = 26;
    private const double Right = 6;
    private const int HourMarks = 5;

    /// <param name="pieces">Any order; a piece over midnight is cut there.</param>
    /// <param name="days">How many days with work are drawn.</param>
    public static DayBars Of(IEnumerable<DayPiece> pieces, int days)
    {
        var cut = pieces.SelectMany(AtMidnight).GroupBy(p => DateOnly.FromDateTime(p.From)).OrderBy(g => g.Key).Take(days).ToArray();
        if (cut.Length == 0)
            return new DayBars(0, [], []);
        var first = Math.Floor(cut.SelectMany(g => g).Min(p => p.From.TimeOfDay.TotalHours));
        var last = Math.Ceiling(cut.SelectMany(g => g).Max(p => EndHour(p)));
        var perHour = (Width - Left - Right) / Math.Max(1, last - first);
        var rows = cut.Select((day, k) => new DayRow(
            day.Key.ToString("ddd d MMM", CultureInfo.InvariantCulture),
            Top + (k * RowHeight),
            [.. day.Select(p => new DayBar(p, Left + ((p.From.TimeOfDay.TotalHours - first) * perHour), Math.Max(2, (EndHour(p) - p.From.TimeOfDay.TotalHours) * perHour)))]));
        var step = Math.Max(1, Math.Ceiling((last - first) / HourMarks));
        var hours = Enumerable.Range(0, (int)((last - first) / step) + 1).Select(k => (Left + (k * step * perHour), (first + (k * step)).ToString("00", CultureInfo.InvariantCulture)));
        return new DayBars(Top + (cut.Length * RowHeight) + 4, [.. rows], [.. hours]);
    }

    private static double EndHour(DayPiece piece) => piece.Until.Date > piece.From.Date ? 24 : piece.Until.TimeOfDay.TotalHours;

    private static IEnumerable<DayPiece> AtMidnight(DayPiece piece)
    {
        var from = piece.From;
        while (from < piece.Until)
        {
            var midnight = from.Date.AddDays(1);
            var until = piece.Until < midnight ? piece.Until : midnight;
            yield return piece with { From = from, Until = until };
            from = until;
        }
    }
}
