using System.Globalization;

namespace Gudgeon.Planning.Calendar;

/// <summary>Something that falls due on a day.</summary>
/// <param name="Id">Its own within the book, so that a later export replaces the earlier.</param>
public sealed record Reminder(string Id, DateOnly Day, string What);

/// <summary>Reminders as an iCalendar file (RFC 5545): one whole-day event each, with an alarm in the morning of its day.</summary>
public static class Reminders
{
    /// <param name="reminders">What falls due; one or more.</param>
    /// <param name="stamp">The instant at which it was made (DTSTAMP, UTC).</param>
    /// <param name="book">What no other book is called, part of each event's UID.</param>
    public static string Write(IReadOnlyList<Reminder> reminders, DateTimeOffset stamp, string book)
    {
        if (reminders.Count == 0)
            throw new ArgumentException("A calendar holds one component or more (RFC 5545, 3.6).", nameof(reminders));
        var text = CalendarExport.Begin("Reminders");
        foreach (var reminder in reminders)
        {
            CalendarExport.BeginEvent(text, $"{reminder.Id}@{book}", stamp);
            CalendarExport.Line(text, $"DTSTART;VALUE=DATE:{reminder.Day.ToString("yyyyMMdd", CultureInfo.InvariantCulture)}");
            CalendarExport.Line(text, $"SUMMARY:{CalendarExport.Escape(reminder.What)}");
            // 3.8.2.7: what falls due takes nobody's day.
            CalendarExport.Line(text, "TRANSP:TRANSPARENT");
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
