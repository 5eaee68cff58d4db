using System.Globalization;

namespace Gudgeon.Capture;

/// <summary>Reads days and spans of time as people say them, told from the moment of the note.</summary>
internal sealed class DueReader(IReadOnlyList<Token> tokens, string text, DateTimeOffset now)
{
    private static readonly string[] Days = ["sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"];
    private static readonly string[] Months = ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];

    private static readonly Dictionary<string, string> Short = new()
    {
        ["mon"] = "monday",
        ["tue"] = "tuesday",
        ["tues"] = "tuesday",
        ["wed"] = "wednesday",
        ["weds"] = "wednesday",
        ["thu"] = "thursday",
        ["thur"] = "thursday",
        ["thurs"] = "thursday",
        ["fri"] = "friday",
        ["sat"] = "saturday",
        ["sun"] = "sunday",
        ["jan"] = "january",
        ["feb"] = "february",
        ["mar"] = "march",
        ["apr"] = "april",
        ["aug"] = "august",
        ["sept"] = "september",
        ["sep"] = "september",
        ["oct"] = "october",
        ["nov"] = "november",
        ["dec"] = "december",
        ["tmrw"] = "tomorrow",
        ["tomo"] = "tomorrow",
        ["tomorow"] = "tomorrow",
        ["tommorow"] = "tomorrow",
        ["tommorrow"] = "tomorrow",
        ["xmas"] = "christmas",
    };

    /// <summary>Ways to lead up to a day that say nothing more: expected Friday, should be here Friday, he said Friday.</summary>
    private static readonly string[][] Leads =
    [
        ["it", "'s", "due"], ["which", "is", "due"], ["expected"], ["arriving"], ["should", "be", "here"], ["will", "be", "here"], ["be", "here"], ["should", "come"], ["supposed", "to", "come"], ["supposed", "to", "be", "here"], ["here"], ["ready"], ["promised"],
        ["landing"], ["delivery"], ["it", "'s", "coming"], ["it", "comes"], ["he", "said"], ["they", "said"], ["they", "say"], ["he", "says"], ["she", "said"], ["the", "shop", "said"], ["he", "reckons"], ["they", "reckon"], ["reckons"], ["it", "'ll", "be"], ["it", "will", "be"], ["it", "'s"],
        ["takes"], ["taking"], ["it", "takes"], ["sometime"], ["some", "time"], ["later"], ["early"], ["late"], ["not", "before"], ["after"], ["over"], ["at"], ["in"], ["for"], ["due"], ["due", "in"], ["coming"], ["first", "thing"], ["roughly"], ["approximately"], ["probably"], ["hopefully"], ["back"], ["ready", "by"], ["another"], ["possibly"], ["so", "it", "'ll", "be"], ["within"], ["the", "start", "of"], ["start", "of"], ["beginning", "of"], ["the", "beginning", "of"], ["wait", "till"],
        ["they", "are", "telling"], ["they", "are", "saying"], ["they", "'re", "telling"], ["they", "'re", "saying"], ["he", "is", "saying"], ["he", "'s", "saying"], ["she", "says"], ["she", "is", "saying"], ["she", "'s", "saying"], ["they", "tell", "me"], ["he", "tells", "me"], ["she", "tells", "me"], ["they", "told", "me"], ["he", "told", "me"], ["they", "promise"], ["they", "promised"], ["he", "promised"], ["he", "thinks"], ["they", "think"], ["the", "shop", "says"], ["the", "man", "says"], ["the", "man", "said"], ["be", "back", "there"], ["be", "back"], ["back", "there"], ["be", "there"], ["have", "it", "back"],
    ];

    private readonly DateOnly today = DateOnly.FromDateTime(now.DateTime);

    private string Word(int at) => at >= 0 && at < tokens.Count && tokens[at].Sort is TokenSort.Word or TokenSort.Number ? Short.GetValueOrDefault(tokens[at].Text, tokens[at].Text) : "";

    /// <summary>A time at the token, its preposition and what leads up to it included.</summary>
    public (Due Due, int To)? At(int at)
    {
        if (Plain(at) is { } plain)
            return plain;
        if (at > 0 && Word(at - 1) is "come" or "comes" or "going" or "goes" or "go")
            return null;
        int from = at;
        bool rough = false;
        for (int round = 0; round < 3; round++)
        {
            if (Leads.Where(l => l.Index().All(w => Word(at + w.Index) == w.Item)).MaxBy(l => l.Length) is not { } lead)
                return null;
            rough |= (lead[^1] is "reckons" or "reckon" && (NumberWords.At(tokens, at + lead.Length) is not null || Word(at + lead.Length) is "about" or "a")) || lead[^1] is "roughly" or "approximately" or "takes" or "taking" or "sometime" or "time" or "early" or "late" or "later" or "probably" or "possibly" or "of";
            at += lead.Length;
            if (Plain(at) is { } read && (Sure(Word(from)) || read.Due.Day is not null && lead.Length > 1 || NumberWords.At(tokens, at) is null || Word(at - 1) is "within" or "another" or "takes"))
                return (read.Due with { Rough = read.Due.Rough || (rough && read.Due.Day > today) }, read.To);
        }

        return null;
    }

    /// <summary>Words that lead to nothing but a time.</summary>
    private static bool Sure(string word) => word is "expected" or "due" or "promised" or "delivery" or "it" or "he" or "they" or "she" or "should" or "supposed" or "within" or "roughly" or "probably" or "takes" or "another" or "arriving";

    private (Due Due, int To)? Plain(int at)
    {
        int from = at;
        bool prep = Word(at) is "till" or "until" or "by" or "before" or "on" or "til" or "for" or "from";
        if (prep)
            at++;
        if (Word(at) is "the" or "about" or "around" or "maybe" or "roughly" && Word(at + 1) is not "")
        {
            bool rough = Word(at) != "the";
            if (Word(at) == "the" && Point(at) is { } dated)
                return Said(dated, from);
            if (Word(at) == "the" && Date(at + 1) is { } day)
                return Said(day, from);
            if (Point(at + 1) is { } pointed && (Word(at) != "the" || pointed.Due.Said.Length > 0 || Word(at + 1) is "end" or "weekend" or "start" or "beginning" or "middle" or "new"))
                return Said((pointed.Due with { Rough = pointed.Due.Rough || rough }, pointed.To), from);
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
            case "today" when at > 0 && Word(at - 1) is "due" or "by" or "till" or "until" or "coming" or "later" or "arriving" or "expected" or "here":
                return Part(today, at + 1, false);
            case "this" when Word(at + 1) is "evening" or "afternoon":
                return (new Due(today, "", false), at + 2);
            case "month" when Word(at + 1) == "end":
                return (new Due(new DateOnly(today.Year, today.Month, 1).AddMonths(1).AddDays(-1), "", true), at + 2);
            case "a" when Word(at + 1) is "week" && Array.IndexOf(Days, Word(at + 2)) is var weekDay and >= 0:
                return Part(NextDay(weekDay, 1).AddDays(7), at + 3, false);
            case "week" when Word(at + 1) is "on" && Array.IndexOf(Days, Word(at + 2)) is var weekOn and >= 0:
                return Part(NextDay(weekOn, 1).AddDays(7), at + 3, false);
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
            case "the" when NumberWords.At(tokens, at + 1) is { Sort: NumSort.Ordinal, Value: >= 1 and <= 31 } nth && (nth.Int > 1 || Word(at - 1) is "due" or "by" or "till" or "until" or "on") && (nth.To >= tokens.Count || tokens[nth.To].IsBreak || Word(nth.To) is "and" or "at" or "now") && at > 0 && Word(at - 1) is "say" or "says" or "by" or "till" or "until" or "on" or "before" or "now" or "for" or "due" or "expected" or "arriving" or "said" or "around" or "about" or "promised":
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

        // "due 14th"
        if (at > 0 && Word(at - 1) is "due" or "expected" or "arriving" or "until" or "till" or "by" && NumberWords.At(tokens, at) is { Sort: NumSort.Ordinal, Value: >= 1 and <= 31 } dated && tokens[at].Sort == TokenSort.Number && (dated.To >= tokens.Count || tokens[dated.To].IsBreak))
            return (new Due(OnDay(dated.Int), "", false), dated.To);
        int day = Array.IndexOf(Days, word.EndsWith('s') ? word[..^1] : word);
        if (day >= 0 && Word(at + 1) == "after" && Word(at + 2) == "next")
            return (new Due(NextDay(day, 1).AddDays(7), "", false), at + 3);
        if (day >= 0 && Word(at + 1) == "week")
            return (new Due(NextDay(day, 1).AddDays(7), "", false), at + 2);
        if (day >= 0 && (tokens[at].Text is not ("sat" or "sun") || at == 0 || Word(at - 1) is "on" or "by" or "till" or "until" or "due" or "this" or "til"))
            return Part(NextDay(day, 1), at + 1, false);
        // "end of November", "early December"
        if (Array.IndexOf(Months, word) is var named and >= 0 && word is not ("march" or "may") && at > 0 && Word(at - 1) is "in" or "by" or "until" or "till" or "early" or "late" or "of" or "before" or "during" && NumberWords.At(tokens, Word(at + 1) == "the" ? at + 2 : at + 1) is null)
            return (new Due(named + 1 == today.Month ? LastOf(named + 1) : On(1, named + 1), "", true), at + 1);
        return Date(at) ?? Span(at);
    }

    private (Due Due, int To) Part(DateOnly day, int to, bool rough) =>
        (new Due(day, "", rough), Hour(to));

    /// <summary>One past a time of day that adds nothing to the day.</summary>
    private int Hour(int at)
    {
        if (Word(at) is "first" && Word(at + 1) is "thing")
            return at + 2;
        if (Word(at) is "dinner" or "lunch" or "tea" && Word(at + 1) == "time")
            return at + 2;
        int to = Word(at) is "night" or "morning" or "evening" or "afternoon" or "lunchtime" or "dinnertime" or "teatime" or "midday" or "noon" or "lunch" ? at + 1 : at;
        if (Word(to) == "at" && NumberWords.At(tokens, to + 1) is { IsCount: true, Value: >= 1 and <= 23 } hour && (hour.To >= tokens.Count || tokens[hour.To].IsBreak))
            return hour.To;
        return to;
    }

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
            var month when Array.IndexOf(Months, month) is var named and >= 0 => (new Due(LastOf(named + 1), "", true), to + 1),
            _ => null,
        };
    }

    /// <summary>The last day of the month, this year's or the next one's.</summary>
    private DateOnly LastOf(int month)
    {
        var last = new DateOnly(today.Year, month, DateTime.DaysInMonth(today.Year, month));
        return last >= today ? last : new DateOnly(today.Year + 1, month, DateTime.DaysInMonth(today.Year + 1, month));
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
        else if (Word(at) is "a" or "another" or "about" && Word(at + 1) is not "")
        {
            count = NumberWords.At(tokens, at + 1) is { Sort: NumSort.Whole } more ? more.Value : 1;
            to = NumberWords.At(tokens, at + 1) is { Sort: NumSort.Whole } m ? m.To : at + 1;
        }
        else
            return null;
        int days = tokens.ElementAtOrDefault(to).Stem switch { "day" => 1, "week" => 7, "fortnight" => 14, "month" => 30, _ => 0 };
        // Nobody waits a thousand weeks: such a number is no time.
        if (days == 0 || count > 1000)
            return null;
        to++;
        if (Word(to) is "time" or "'s" or "away" or "now" or "yet" or "out")
            to++;
        else if (Word(to) == "from" && Word(to + 1) is "now" or "today")
            to += 2;
        if (Word(to) == "time")
            to++;
        bool orSo = Word(to) == "or" && Word(to + 1) is "so" or "thereabouts";
        if (orSo)
            to += 2;
        return (new Due(vague ? null : today.AddDays((int)count * days), "", vague || orSo || days > 1), to);
    }

    private (Due Due, int To)? Date(int at)
    {
        int month = Array.IndexOf(Months, Word(at)) + 1;
        if (month > 0 && NumberWords.At(tokens, Word(at + 1) == "the" ? at + 2 : at + 1) is { Sort: NumSort.Ordinal or NumSort.Whole } after && after.Value is >= 1 and <= 31)
            return (new Due(On(after.Int, month), "", false), after.To);
        // 14/12: the day first, as the book writes it; 12/14 can only be the other way.
        if (at < tokens.Count && tokens[at].Sort == TokenSort.Number && tokens[at].Text.Split('/') is [var left, var right] && int.TryParse(left, NumberStyles.None, CultureInfo.InvariantCulture, out int d) && int.TryParse(right, NumberStyles.None, CultureInfo.InvariantCulture, out int m) && at > 0 && Word(at - 1) is "due" or "by" or "until" or "till" or "on" or "arriving" or "expected" && (d > 12 || m > 12) && Math.Min(d, m) >= 1 && Math.Max(d, m) <= 31 && Math.Min(d, m) <= 12)
            return (new Due(On(Math.Max(d, m), Math.Min(d, m)), "", false), at + 1);
        if (NumberWords.At(tokens, at) is not { Sort: NumSort.Ordinal or NumSort.Whole } n || n.Value is < 1 or > 31)
            return null;
        int to = Word(n.To) == "of" ? n.To + 1 : n.To;
        if (n.Sort == NumSort.Ordinal && Word(n.To) == "of" && Word(n.To + 1) is "next" or "this" && Word(n.To + 2) == "month")
        {
            var start = new DateOnly(today.Year, today.Month, 1).AddMonths(Word(n.To + 1) == "next" ? 1 : 0);
            return (new Due(n.Int <= DateTime.DaysInMonth(start.Year, start.Month) ? start.AddDays(n.Int - 1) : null, "", false), n.To + 3);
        }

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
