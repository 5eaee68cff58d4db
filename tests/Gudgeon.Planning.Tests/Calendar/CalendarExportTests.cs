using System.Text;
using Gudgeon.Planning.Calendar;

namespace Gudgeon.Planning.Tests.Calendar;

public class CalendarExportTests
{
    [Fact]
    public void Unfolding_the_standard_example_gives_its_line()
    {
        // RFC 5545, 3.1: the example of a folded DESCRIPTION and the line it stands for (seen). Proves the unfolder used below.
        const string Folded = "DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line.\r\n";
        Assert.Equal("DESCRIPTION:This is a long description that exists on a long line.", Unfold(Folded).Single());
    }

    [Fact]
    public void Escape_writes_the_standard_example()
    {
        // RFC 5545, 3.3.11: this value stands for three lines of text (from memory).
        Assert.Equal(@"Project XYZ Final Review\nConference Room - 3B\nCome Prepared.",
            CalendarExport.Escape("Project XYZ Final Review\nConference Room - 3B\r\nCome Prepared."));
    }

    [Theory]
    [InlineData(@"a\b", @"a\\b")]
    [InlineData("a;b,c", @"a\;b\,c")]
    [InlineData("a\u0007b", "a\u2407b")]
    public void Escape_keeps_every_sign(string text, string expected) => Assert.Equal(expected, CalendarExport.Escape(text));

    [Theory]
    [InlineData(75, 1)]
    [InlineData(76, 2)]
    [InlineData(149, 2)]
    [InlineData(150, 3)]
    public void Line_is_folded_beyond_75_octets(int length, int rows)
    {
        var text = new StringBuilder();
        CalendarExport.Line(text, new string('x', length));
        var written = text.ToString().Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(rows, written.Length);
        Assert.All(written, row => Assert.True(row.Length <= 75));
        Assert.Equal(new string('x', length), Unfold(text.ToString()).Single());
    }

    [Fact]
    public void Line_with_wide_characters_is_folded_between_them()
    {
        var line = "SUMMARY:" + string.Concat(Enumerable.Repeat("Ölwanne 🔧 ", 30));
        var text = new StringBuilder();
        CalendarExport.Line(text, line);
        foreach (var row in text.ToString().Split("\r\n"))
        {
            Assert.True(Encoding.UTF8.GetByteCount(row) <= 75);
            Assert.DoesNotContain('\uFFFD', Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(row)));
        }
        Assert.Equal(line, Unfold(text.ToString()).Single());
    }

    [Fact]
    public void Write_gives_an_event_for_each_piece()
    {
        var task = new PlanTask("head", "Head off; careful", 7200) { Wants = ["stand", "second person"] };
        var day = new DateTime(2030, 5, 3, 18, 0, 0);
        var plan = new DayPlan(day, [new PlacedTask(task, [new Window(day, day.AddHours(1)), new Window(day.AddDays(1), day.AddDays(1).AddHours(1))])], [], ["head"], day);
        Assert.Equal(
        [
            "BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Gudgeon//Bench plan//EN",
            "BEGIN:VEVENT", "UID:head-1@book", "DTSTAMP:20300501T100000Z", "DTSTART:20300503T180000", "DTEND:20300503T190000",
            @"SUMMARY:Head off\; careful (1 of 2)", @"DESCRIPTION:Needs: stand\, second person", "END:VEVENT",
            "BEGIN:VEVENT", "UID:head-2@book", "DTSTAMP:20300501T100000Z", "DTSTART:20300504T180000", "DTEND:20300504T190000",
            @"SUMMARY:Head off\; careful (2 of 2)", @"DESCRIPTION:Needs: stand\, second person", "END:VEVENT",
            "END:VCALENDAR",
        ],
        Unfold(CalendarExport.Write(plan, new DateTimeOffset(2030, 5, 1, 12, 0, 0, TimeSpan.FromHours(2)), "book").Value));
    }

    private static string[] Unfold(string text) => text.Replace("\r\n ", "").Replace("\r\n\t", "").Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
}
