namespace Gudgeon.Capture;

/// <summary>Reads days and spans of time as people say them, told from the moment of the note.</summary>
internal sealed class DueReader(IReadOnlyList<Token> tokens, string text, DateTimeOffset now)
{
    private static readonly string[] Days = ["sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"];
    private static readonly string[] Months = ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];

    private readonly DateOnly today = DateOnly.FromDateTime(now.DateTime);

    private string Word(int at) => at < tokens.Count && tokens[at].Sort is TokenSort.Word or TokenSort.Number ? tokens[at].Text : "";

    /// <summary>A time at the token, its preposition included.</summary>
    public (Due Due, int To)? At(int at)
    {
        int from = at;
        bool prep = Word(at) is "till" or "until" or "by" or "before" or "on" or "til" or "for" or "from";
        if (prep)
            at++;
        if (Word(at) is "the" or "about" or "around" or "maybe" && Word(at + 1) is not "")
        {
            if (Word(at) == "the" && Point(at) is { } dated)
                return Said(dated, from);
            if (Point(at + 1) is { } pointed && (Word(at) != "the" || pointed.Due.Said.Length > 0))
                return Said(pointed, from);
        }

        return Point(at) is { } point ? Said(point, from) : null;
    }

    private (Due Due, int To) Said((Due Due, int To) read, int from)
    {
        int start = tokens[from].Start;
        int skip = Word(from) is "till" or "until" or "by" or "before" or "on" or "til" or "for" or "from" ? tokens[from + 1].Start : start;
        int end = tokens[read.To - 1].Start + tokens[read.To - 1].Length;
        return (read.Due with { Said = text[skip..end] }, read.To);
    }

    private (Due Due, int To)? Point(int at)
    {
        string word = Word(at);
        switch (word)
        {
            case "tomorrow":
                return Part(today.AddDays(1), at + 1, false);
            case "tonight":
                return Part(today, at + 1, false);
            case "weekend":
                return Part(NextDay(6, 0), at + 1, true);
            case "christmas" or "easter":
                return (new Due(word == "christmas" ? Christmas() : null, "", true), at + 1);
            case "end" when Word(at + 1) == "of":
                return End(at + 2);
            case "next" or "this":
                return NextOrThis(at, word == "next");
            case "a" when Word(at + 1) is "week" && Word(at + 2) is "from" or "on" && Array.IndexOf(Days, Word(at + 3)) is var from1 and >= 0:
                return Part(NextDay(from1, 1).AddDays(7), at + 4, false);
            case "the" when NumberWords.At(tokens, at + 1) is { Sort: NumSort.Ordinal, Value: >= 2 and <= 31 } nth && (nth.To >= tokens.Count || tokens[nth.To].IsBreak) && at > 0 && Word(at - 1) is "say" or "says" or "by" or "till" or "until" or "on" or "before" or "now" or "for":
                return (new Due(OnDay(nth.Int), "", false), nth.To);
            case "a" when Word(at + 1) is "fortnight":
                return (new Due(today.AddDays(14), "", true), at + 2);
            case "fortnight":
                return (new Due(today.AddDays(14), "", true), at + 1);
            case "in" when Span(at + 1) is { } later:
                return later;
            case "new" when Word(at + 1) == "year":
                return (new Due(new DateOnly(today.Year + 1, 1, 1), "", true), at + 2);
        }

        int day = Array.IndexOf(Days, word.EndsWith('s') ? word[..^1] : word);
        if (day >= 0)
            return Part(NextDay(day, 1), at + 1, false);
        return Date(at) ?? Span(at);
    }

    private (Due Due, int To) Part(DateOnly day, int to, bool rough) =>
        (new Due(day, "", rough), Word(to) is "night" or "morning" or "evening" or "afternoon" or "lunchtime" or "week" ? to + 1 : to);

    private DateOnly Christmas() => new DateOnly(today.Year, 12, 25) is var day && day > today ? day : day.AddYears(1);

    /// <summary>The first such weekday from <paramref name="least"/> days on.</summary>
    private DateOnly NextDay(int weekday, int least) => today.AddDays((((weekday - (int)today.DayOfWeek - least) % 7) + 7) % 7 + least);

    private (Due Due, int To)? End(int at)
    {
        int to = Word(at) is "the" or "this" or "next" ? at + 1 : at;
        var friday = NextDay(5, 0);
        return Word(to) switch
        {
            "week" => (new Due(Word(at) == "next" ? ThisMonday().AddDays(11) : friday, "", true), to + 1),
            "month" => (new Due(new DateOnly(today.Year, today.Month, 1).AddMonths(Word(at) == "next" ? 2 : 1).AddDays(-1), "", true), to + 1),
            "year" => (new Due(new DateOnly(today.Year, 12, 31), "", true), to + 1),
            _ => null,
        };
    }

    private DateOnly ThisMonday() => today.AddDays(-(((int)today.DayOfWeek + 6) % 7));

    private (Due Due, int To)? NextOrThis(int at, bool next)
    {
        string word = Word(at + 1);
        int day = Array.IndexOf(Days, word);
        if (day >= 0)
        {
            var when = next ? ThisMonday().AddDays(7 + ((day + 6) % 7)) : NextDay(day, 1);
            return Part(when, at + 2, next);
        }

        return word switch
        {
            "week" => (new Due(next ? ThisMonday().AddDays(7) : NextDay(5, 0), "", true), at + 2),
            "month" => (new Due(new DateOnly(today.Year, today.Month, 1).AddMonths(next ? 1 : 0), "", true), at + 2),
            "weekend" => (new Due(next ? ThisMonday().AddDays(12) : NextDay(6, 0), "", true), at + 2),
            _ => null,
        };
    }

    /// <summary>"three weeks", "two days", "a couple of months", "ten days time".</summary>
    private (Due Due, int To)? Span(int at)
    {
        int to;
        decimal count;
        bool vague = false;
        if (NumberWords.At(tokens, at) is { Sort: NumSort.Whole or NumSort.Vague } n)
        {
            count = n.Sort == NumSort.Vague ? 3 : n.Value;
            vague = n.Sort == NumSort.Vague;
            to = n.To;
        }
        else if (Word(at) is "a" or "another")
        {
            count = 1;
            to = at + 1;
        }
        else
            return null;
        int days = tokens.ElementAtOrDefault(to).Stem switch { "day" => 1, "week" => 7, "fortnight" => 14, "month" => 30, _ => 0 };
        if (days == 0)
            return null;
        to++;
        if (Word(to) is "time" or "'s" or "away" or "now")
            to++;
        if (Word(to) == "time")
            to++;
        return (new Due(vague ? null : today.AddDays((int)count * days), "", vague || days > 1), to);
    }

    private (Due Due, int To)? Date(int at)
    {
        int month = Array.IndexOf(Months, Word(at)) + 1;
        if (month > 0 && NumberWords.At(tokens, at + 1) is { Sort: NumSort.Ordinal or NumSort.Whole } after && after.Value is >= 1 and <= 31)
            return (new Due(On(after.Int, month), "", false), after.To);
        if (NumberWords.At(tokens, at) is not { Sort: NumSort.Ordinal or NumSort.Whole } n || n.Value is < 1 or > 31)
            return null;
        int to = Word(n.To) == "of" ? n.To + 1 : n.To;
        month = Array.IndexOf(Months, Word(to)) + 1;
        return month > 0 ? (new Due(On(n.Int, month), "", false), to + 1) : null;
    }

    private DateOnly? OnDay(int day)
    {
        for (int month = 0; month < 3; month++)
        {
            var first = new DateOnly(today.Year, today.Month, 1).AddMonths(month);
            if (day <= DateTime.DaysInMonth(first.Year, first.Month) && first.AddDays(day - 1) > today)
                return first.AddDays(day - 1);
        }

        return null;
    }

    private DateOnly? On(int day, int month)
    {
        if (day > DateTime.DaysInMonth(today.Year, month))
            return null;
        var date = new DateOnly(today.Year, month, day);
        return date < today ? date.AddYears(1) : date;
    }
}
