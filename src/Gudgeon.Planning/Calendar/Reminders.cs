using System.Globalization;
using System.Text;

namespace Gudgeon.Planning.Calendar;

/// <summary>Something that falls due on a day.</summary>
/// <param name="Id">Its own within the book, so that a later export replaces the earlier.</param>
public sealed record Reminder(string Id, DateOnly Day, string What);

/// <summary>Reminders as an iCalendar file (RFC 5545): one whole-day event each, with an alarm in the morning of its day.</summary>
public static class Reminders
{
    /// <param name="reminders">What falls due.</param>
    /// <param name="stamp">The instant at which it was made (DTSTAMP, UTC).</param>
    /// <param name="book">A name for the book, part of each event's UID.</param>
    public static string Write(IReadOnlyList<Reminder> reminders, DateTimeOffset stamp, string book)
    {
        var text = new StringBuilder();
        CalendarExport.Line(text, "BEGIN:VCALENDAR");
        CalendarExport.Line(text, "VERSION:2.0");
        CalendarExport.Line(text, "PRODID:-//Gudgeon//Reminders//EN");
        foreach (var reminder in reminders)
        {
            CalendarExport.Line(text, "BEGIN:VEVENT");
            CalendarExport.Line(text, $"UID:{CalendarExport.Escape($"{reminder.Id}@{book}")}");
            CalendarExport.Line(text, $"DTSTAMP:{stamp.UtcDateTime.ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture)}");
            CalendarExport.Line(text, $"DTSTART;VALUE=DATE:{reminder.Day.ToString("yyyyMMdd", CultureInfo.InvariantCulture)}");
            CalendarExport.Line(text, $"SUMMARY:{CalendarExport.Escape(reminder.What)}");
            CalendarExport.Line(text, "BEGIN:VALARM");
            CalendarExport.Line(text, "ACTION:DISPLAY");
            CalendarExport.Line(text, $"DESCRIPTION:{CalendarExport.Escape(reminder.What)}");
            CalendarExport.Line(text, "TRIGGER:PT8H");
            CalendarExport.Line(text, "END:VALARM");
            CalendarExport.Line(text, "END:VEVENT");
        }

        CalendarExport.Line(text, "END:VCALENDAR");
        return text.ToString();
    }
}
