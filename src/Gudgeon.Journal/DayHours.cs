using System.Globalization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

/// <summary>Hours of one weekday. An end before the beginning lies on the next day.</summary>
public sealed record DayHours(DayOfWeek Day, TimeOnly From, TimeOnly Until)
{
    private static readonly string[] days = ["sun", "mon", "tue", "wed", "thu", "fri", "sat"];

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{days[(int)Day]} {From:HH\\:mm}-{Until:HH\\:mm}");

    /// <summary>A week as it is typed, days in a row with the same hours together: <c>mon-fri 19:00-22:00, sat-sun 10:00-17:00</c>. <see cref="Read"/> reads it back.</summary>
    public static string Words(IReadOnlyList<DayHours> week)
    {
        var runs = new List<List<DayHours>>();
        foreach (var day in week)
        {
            if (runs.Count > 0 && runs[^1][^1] is var last && (last.From, last.Until) == (day.From, day.Until) && ((int)last.Day + 1) % 7 == (int)day.Day && runs[^1].Count < 7)
                runs[^1].Add(day);
            else
                runs.Add([day]);
        }

        return string.Join(", ", runs.Select(run => run.Count == 1 ? run[0].ToString() : $"{days[(int)run[0].Day]}-{run[^1]}"));
    }

    /// <summary>Reads <c>mon-fri 19-22, sat 10:00-17:30</c>; days may run over the weekend.</summary>
    public static Outcome<IReadOnlyList<DayHours>> Read(string text)
    {
        var week = new List<DayHours>();
        var refusals = new List<Refusal>();
        foreach (var part in text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var words = part.ToLowerInvariant().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
            if (words.Length == 2 && Days(words[0]) is { Count: > 0 } found && Times(words[1]) is (var from, var until) && from != until)
                week.AddRange(found.Select(day => new DayHours(day, from, until)));
            else
                refusals.Add(new Refusal("hours", $"\"{part}\"", "days and times such as mon-fri 19-22 or sat 10:00-17:30", "Write it so"));
        }

        if (week.Count == 0 && refusals.Count == 0)
            refusals.Add(new Refusal("hours", "nothing", "days and times such as mon-fri 19-22, sat 10-17", "Say when you can be at the bench"));
        return refusals.Count > 0 ? Outcome.Refused<IReadOnlyList<DayHours>>(refusals) : Outcome.Of<IReadOnlyList<DayHours>>(week);
    }

    private static List<DayOfWeek>? Days(string word)
    {
        var ends = word.Split('-').Select(DayNumber).ToArray();
        if (ends.Length is 0 or > 2 || ends.Any(d => d < 0))
            return null;
        var list = new List<DayOfWeek> { (DayOfWeek)ends[0] };
        while (ends.Length == 2 && (int)list[^1] != ends[1])
            list.Add((DayOfWeek)(((int)list[^1] + 1) % 7));
        return list;
    }

    private static int DayNumber(string word) => word.Length < 3 ? -1 : Array.FindIndex(days, d => word.StartsWith(d, StringComparison.Ordinal));

    private static (TimeOnly From, TimeOnly Until)? Times(string word) =>
        word.Split('-') is [var from, var until] && Time(from) is { } a && Time(until) is { } b ? (a, b) : null;

    private static TimeOnly? Time(string word) =>
        word == "24" || word == "24:00" ? TimeOnly.MinValue
        : TimeOnly.TryParseExact(word, ["H:mm", "HH:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var exact) ? exact
        : int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var hour) && hour < 24 ? new TimeOnly(hour, 0)
        : null;
}
