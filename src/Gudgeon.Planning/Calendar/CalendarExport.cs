using System.Globalization;
using System.Text;

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
    /// <param name="book">A name for the book, part of each event's UID, so that a later export replaces the earlier.</param>
    public static string Write(DayPlan plan, DateTimeOffset stamp, string book)
    {
        var text = new StringBuilder();
        Line(text, "BEGIN:VCALENDAR");
        Line(text, "VERSION:2.0");
        Line(text, "PRODID:-//Gudgeon//Bench plan//EN");
        foreach (var placed in plan.Placed)
        {
            for (var piece = 0; piece < placed.Pieces.Length; piece++)
            {
                var part = placed.Pieces.Length > 1 ? $" ({piece + 1} of {placed.Pieces.Length})" : "";
                Line(text, "BEGIN:VEVENT");
                Line(text, $"UID:{Escape($"{placed.Task.Id}-{piece + 1}@{book}")}");
                Line(text, $"DTSTAMP:{stamp.UtcDateTime.ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture)}");
                Line(text, $"DTSTART:{Local(placed.Pieces[piece].From)}");
                Line(text, $"DTEND:{Local(placed.Pieces[piece].Until)}");
                Line(text, $"SUMMARY:{Escape(placed.Task.Title + part)}");
                if (!placed.Task.Wants.IsEmpty)
                    Line(text, $"DESCRIPTION:{Escape("Needs: " + string.Join(", ", placed.Task.Wants))}");
                Line(text, "END:VEVENT");
            }
        }
        Line(text, "END:VCALENDAR");
        return text.ToString();
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
