using System.Globalization;
using System.Text;
using Gudgeon.Sums;

namespace Gudgeon.Planning.Calendar;

/// <summary>
/// A day plan as an iCalendar file (RFC 5545): one event for each piece. Times are floating local times (3.3.5, form 1),
/// because an evening at the bench stays an evening wherever the file is read.
/// </summary>
public static class CalendarExport
{
    private const int MostOctets = 75;

    /// <param name="plan">The plan.</param>
    /// <param name="stamp">The instant at which it was made (DTSTAMP, UTC).</param>
    /// <param name="book">What no other book is called, part of each event's UID, so that a later export replaces the earlier.</param>
    public static Outcome<string> Write(DayPlan plan, DateTimeOffset stamp, string book)
    {
        // 3.6: a calendar holds one component or more.
        if (plan.Placed.IsEmpty)
            return Outcome.Refused<string>(new Refusal("the calendar file", "nothing on any day", "work that has its days", "Look at the plan for why"));
        var text = Begin("Bench plan");
        foreach (var placed in plan.Placed)
        {
            for (var piece = 0; piece < placed.Pieces.Length; piece++)
            {
                var part = placed.Pieces.Length > 1 ? $" ({piece + 1} of {placed.Pieces.Length})" : "";
                var (from, until) = (Local(placed.Pieces[piece].From), Local(placed.Pieces[piece].Until));
                BeginEvent(text, $"{placed.Task.Id}-{piece + 1}@{book}", stamp);
                Line(text, $"DTSTART:{from}");
                // 3.8.2.2: an end is later than its start; what takes no time has none.
                if (until != from)
                    Line(text, $"DTEND:{until}");
                Line(text, $"SUMMARY:{Escape(placed.Task.Title + part)}");
                if (!placed.Task.Wants.IsEmpty)
                    Line(text, $"DESCRIPTION:{Escape("Needs: " + string.Join(", ", placed.Task.Wants))}");
                Line(text, "END:VEVENT");
            }
        }
        Line(text, "END:VCALENDAR");
        return Outcome.Of(text.ToString());
    }

    /// <summary>A calendar up to its first component.</summary>
    internal static StringBuilder Begin(string product)
    {
        var text = new StringBuilder();
        Line(text, "BEGIN:VCALENDAR");
        Line(text, "VERSION:2.0");
        Line(text, $"PRODID:-//Gudgeon//{product}//EN");
        return text;
    }

    /// <summary>An event up to its own times.</summary>
    internal static void BeginEvent(StringBuilder text, string uid, DateTimeOffset stamp)
    {
        Line(text, "BEGIN:VEVENT");
        Line(text, $"UID:{Escape(uid)}");
        Line(text, $"DTSTAMP:{stamp.UtcDateTime.ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture)}");
    }

    /// <summary>TEXT (3.3.11): backslash, semicolon, comma and line break are escaped. Other control signs, which the form forbids, become their pictures.</summary>
    internal static string Escape(string value)
    {
        var text = new StringBuilder();
        foreach (var sign in value.ReplaceLineEndings("\n"))
        {
            text.Append(sign switch
            {
                '\\' => "\\\\",
                ';' => "\\;",
                ',' => "\\,",
                '\n' => "\\n",
                '\t' => "\t",
                < ' ' => ((char)('\u2400' + sign)).ToString(),
                '\u007f' => "\u2421",
                _ => sign.ToString(),
            });
        }
        return text.ToString();
    }

    /// <summary>Content line (3.1): at most 75 octets, continued after CRLF and a blank, never inside a character.</summary>
    internal static void Line(StringBuilder text, string line)
    {
        var octets = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > MostOctets)
            {
                text.Append("\r\n ");
                octets = 1;
            }
            text.Append(rune.ToString());
            octets += rune.Utf8SequenceLength;
        }
        text.Append("\r\n");
    }

    private static string Local(DateTime time) => time.ToString("yyyyMMdd'T'HHmmss", CultureInfo.InvariantCulture);
}
