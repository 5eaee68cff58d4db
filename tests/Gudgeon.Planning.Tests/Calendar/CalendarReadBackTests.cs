using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using CsCheck;
using Gudgeon.Journal;
using Gudgeon.Planning.Calendar;
using Ical.Net.CalendarComponents;

namespace Gudgeon.Planning.Tests.Calendar;

/// <summary>What is written is read back by a general calendar library, and held line by line against RFC 5545.</summary>
public class CalendarReadBackTests
{
    private static readonly DateTimeOffset stamp = new(2030, 5, 1, 12, 0, 0, TimeSpan.FromHours(2));

    // Every character there is: marks that must be escaped, line ends of every sort, control signs, signs of two, three and four octets.
    private static readonly string[] hard =
        [",", ";", "\\", "\n", "\r", "\t", "\u0007", "\u007f", ":", "\"", "\\n", "\\,", " ", "\r\n", "Ö", "→", "\u2028", "\u0085", "🔧", "\ufeff"];

    private static readonly Gen<string> anyText = Gen.OneOf(
        Gen.Int[0, hard.Length - 1].Select(i => hard[i]),
        Gen.Char[' ', '~'].Select(c => c.ToString())).Array[1, 120].Select(string.Concat);

    [Fact]
    public void Reminders_of_any_text_come_back_as_they_were() =>
        anyText.Array[1, 5].Sample(texts =>
        {
            var day = new DateOnly(2031, 2, 27);
            var written = Reminders.Write([.. texts.Select((t, i) => new Reminder($"due {i}, {t}", day.AddDays(i), t))], stamp, "a book; of mine");
            HoldsToTheForm(written);
            var events = Read(written);
            Assert.Equal(texts.Select(Kept), events.Select(e => e.Summary));
            Assert.Equal(texts.Select((t, i) => Kept($"due {i}, {t}@a book; of mine")), events.Select(e => e.Uid));
            Assert.All(events.Select((e, i) => (e, i)), x =>
            {
                Assert.False(x.e.DtStart!.HasTime);
                Assert.Equal(day.AddDays(x.i), x.e.DtStart.Date);
                Assert.Equal(new DateTime(2030, 5, 1, 10, 0, 0), x.e.DtStamp!.AsUtc);
                var alarm = Assert.Single(x.e.Alarms);
                Assert.Equal(("DISPLAY", x.e.Summary), (alarm.Action!.ToUpperInvariant(), alarm.Description));
                Assert.Equal(TimeSpan.FromHours(8), alarm.Trigger!.Duration!.Value.ToTimeSpanUnspecified());
            });
        });

    [Fact]
    public void Plan_of_any_titles_comes_back_as_it_was() =>
        Gen.Select(anyText, Gen.OneOf(Gen.Const(0), Gen.Int[1, 7200]), Gen.Bool).Array[1, 6].Sample(drawn =>
        {
            var begun = new DateTime(2030, 5, 3, 18, 0, 0);
            var placed = drawn.Select((d, i) =>
            {
                var (title, seconds, split) = d;
                var from = begun.AddDays(i);
                var task = new PlanTask($"task {i}", title, seconds) { Wants = ["stand", "second person; strong"] };
                return new PlacedTask(task, split && seconds > 1
                    ? [new Window(from, from.AddSeconds(seconds / 2)), new Window(from.AddHours(20), from.AddHours(20).AddSeconds(seconds - seconds / 2))]
                    : [new Window(from, from.AddSeconds(seconds))]);
            }).ToImmutableArray();
            var written = CalendarExport.Write(new DayPlan(begun, placed, [], [], begun), stamp, "book").Value;
            HoldsToTheForm(written);
            var pieces = placed.SelectMany(p => p.Pieces.Select((piece, n) => (p.Task, Piece: piece, Part: p.Pieces.Length > 1 ? $" ({n + 1} of {p.Pieces.Length})" : ""))).ToArray();
            var events = Read(written);
            Assert.Equal(pieces.Select(p => Kept(p.Task.Title + p.Part)), events.Select(e => e.Summary));
            foreach (var (e, p) in events.Zip(pieces))
            {
                Assert.Equal("Needs: stand, second person; strong", e.Description);
                Assert.True(e.DtStart is { HasTime: true, IsFloating: true });
                Assert.Equal(p.Piece.From, e.DtStart.Value);
                // 3.6.1: an event that takes no time has no end.
                Assert.Equal(p.Piece.Until > p.Piece.From ? p.Piece.Until : null, e.DtEnd?.Value);
            }
        });

    // By hand, 2 hours or 100 km a week from 1 May 2026: 5 hours come after 2.5 weeks, before 500 km after 5; 25 hours after 12.5 weeks, before 1500 km after 15.
    [Fact]
    public void Running_in_by_hours_and_distance_falls_on_its_days()
    {
        var due = new RunningInBegun("2026-05-01", 2, 100).Plan();
        var written = Reminders.Write([.. due.Select(d => new Reminder(d.Due.Id, d.Day, d.Due.Do))], stamp, "book");
        HoldsToTheForm(written);
        var events = Read(written).ToDictionary(e => e.Uid!, e => (e.DtStart!.Date, e.Summary));
        Assert.Equal(due.Count, events.Count);
        Assert.Equal(new DateOnly(2026, 5, 19), events["oil-first@book"].Date);
        Assert.Equal(new DateOnly(2026, 5, 19), events["retorque@book"].Date);
        Assert.Equal(new DateOnly(2026, 7, 28), events["lash@book"].Date);
        Assert.Equal("Valve clearance cold; drive belt tension.", events["lash@book"].Summary);
    }

    [Fact]
    public void Calendar_without_anything_in_it_is_not_written()
    {
        // RFC 5545, 3.6: a calendar holds one component or more.
        Assert.Throws<ArgumentException>(() => Reminders.Write([], stamp, "book"));
        Assert.Equal(
            "the calendar file: met nothing on any day; expected work that has its days. Look at the plan for why.",
            Assert.Single(CalendarExport.Write(new DayPlan(default, [], [], [], default), stamp, "book").Refusals).ToString());
    }

    private static IReadOnlyList<CalendarEvent> Read(string text)
    {
        var calendar = Ical.Net.Calendar.Load(text)!;
        Assert.Equal("2.0", calendar.Version);
        return [.. calendar.Events];
    }

    /// <summary>Text as the form can hold it: line ends are one sort, other control signs are their pictures.</summary>
    private static string Kept(string text) => string.Concat(text.ReplaceLineEndings("\n").Select(c => c is '\n' or '\t' ? c : c < ' ' ? (char)(0x2400 + c) : c == '\u007f' ? '\u2421' : c));

    /// <summary>RFC 5545: 3.1 content lines and folding, 3.3.11 text, 3.4 the object, 3.6 and 3.6.1 its properties, 3.8.4.7 UID, 3.8.7.2 DTSTAMP.</summary>
    private static void HoldsToTheForm(string text)
    {
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.DoesNotContain('\r', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.DoesNotContain(text, c => c < ' ' && c is not ('\r' or '\n' or '\t') || c == '\u007f');
        var utf8 = new UTF8Encoding(false, throwOnInvalidBytes: true);
        Assert.All(text.Split("\r\n"), line => Assert.True(utf8.GetByteCount(line) <= 75, line));
        var lines = text.Replace("\r\n ", "", StringComparison.Ordinal).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(("BEGIN:VCALENDAR", "END:VCALENDAR"), (lines[0], lines[^1]));
        Assert.Single(lines, l => l.StartsWith("PRODID:", StringComparison.Ordinal));
        Assert.Single(lines, l => l == "VERSION:2.0");
        var begun = lines.Count(l => l == "BEGIN:VEVENT");
        Assert.True(begun > 0);
        Assert.Equal(begun, lines.Count(l => l == "END:VEVENT"));
        Assert.Equal(begun, lines.Where(l => l.StartsWith("UID:", StringComparison.Ordinal)).Distinct().Count());
        Assert.Equal(begun, lines.Count(l => l.StartsWith("DTSTART", StringComparison.Ordinal)));
        // 3.3.11: in a text, backslash, semicolon and comma stand only behind a backslash.
        Assert.All(
            lines.Where(l => l.StartsWith("UID:", StringComparison.Ordinal) || l.StartsWith("SUMMARY:", StringComparison.Ordinal) || l.StartsWith("DESCRIPTION:", StringComparison.Ordinal)),
            l => Assert.Matches(@"^[A-Z]+:(?:[^\\;,]|\\[\\;,nN])*$", l));
        var stamps = lines.Where(l => l.StartsWith("DTSTAMP:", StringComparison.Ordinal)).ToArray();
        Assert.Equal(begun, stamps.Length);
        Assert.All(stamps, s => Assert.True(DateTime.TryParseExact(s[8..], "yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture, DateTimeStyles.None, out _), s));
    }
}
