using System.Globalization;
using Gudgeon.Capture;
using Gudgeon.Journal;

namespace Gudgeon.Tests.Capture;

/// <summary>
/// Readings said aloud: on their sheet where the words say part, place and spot, else a note and a question. The figures are
/// the ones in the words, brought to the sheet's unit by the exact factors of the inch (25.4 mm, ISO 80000-3:2019) and of the
/// pound-force per square inch (0.06894757293 bar, from 0.45359237 kg, 9.80665 m/s² and 25.4 mm).
/// </summary>
public sealed class SpokenReadingTests() : LineTest("n=4 valves=1+1")
{
    [Fact]
    public void Reading_that_looks_odd_is_asked_about_at_once_and_kept_as_it_was_said()
    {
        Say("bore one top across eighty six oh one two");
        foreach (string bore in new[] { "two", "three", "four" })
            Say($"bore {bore} top across eighty six oh one four");
        Say("bore one top along ninety six oh one two");
        var doubt = Assert.Single(Doubts.Of(Book.Bench));
        Assert.Equal("ninety six oh one two", doubt.Reading.Taken.AsTyped);
    }

    [Fact]
    public void Table_of_readings_gives_back_the_figure_of_what_was_said()
    {
        Say("bore one top across eighty six oh one two");
        var read = Gudgeon.Pages.Measure.ReadingTable.Read(Gudgeon.Pages.Measure.ReadingTable.Write(Book.Bench));
        Assert.Equal("86.012 mm", Assert.IsType<TakeReading>(Assert.Single(read.Value)).Text);
    }

    [Fact]
    public void Reading_left_out_before_is_a_question_and_no_reading()
    {
        const string Line = "bore one top across eighty six oh one two";
        var heard = Telling.Hear(Book.Bench, Line, Story.Now, Choices.None).All;
        Assert.Equal("bore 1, bore diameter, top, across the crank", Assert.Single(Hearing.SpotsOf(heard.Facts[0], heard, Book.Bench)));
        var reply = Telling.Record(Book, Line, Sending(), new Choices([PieceKey.Of(heard.Facts[0])], []));
        Assert.DoesNotContain(reply.Value.Entries, e => e.Entry is ReadingTaken);
        Assert.Single(Book.Bench.OpenQuestions);
    }

    [Fact]
    public void Instrument_of_the_reading_before_goes_on_with_what_is_said()
    {
        Assert.True(Book.Submit(Sending(), new Tell(new InstrumentKept("bg", "bore gauge", "bg", "mm", 0.001, 0.006, 2)), new TakeReading(new Slot("block.1", "bore", 1, "top.across"), "86.012", "bg")).Ok);
        Assert.Equal("bg", Assert.Single(Say("bore one top along eighty six oh one two").Select(r => r.Entry).OfType<ReadingTaken>()).Instrument);
        Assert.Null(Assert.Single(Say("crank end float five thou").Select(r => r.Entry).OfType<ReadingTaken>()).Instrument);
    }

    private static string Shown(ReadingTaken r) => $"{r.Part} {r.Characteristic} {r.Place} {r.Spot} = {r.Value.ToString("0.######", CultureInfo.InvariantCulture)} {r.Unit}";

    [Theory]
    [InlineData("bore one top across eighty six oh one two", "block.1 bore 1 top.across = 86.012 mm")]
    [InlineData("bore three top across 86.012, along 86.004", "block.1 bore 3 top.across = 86.012 mm", "block.1 bore 3 top.along = 86.004 mm")]
    [InlineData("bore two bottom along three point three eight six inches", "block.1 bore 2 bottom.along = 86.0044 mm")]
    [InlineData("main three front vertical fifty four point nine eight", "crank.1 main-journal 3 front.upright = 54.98 mm")]
    [InlineData("top ring gap in bore two point three five", "piston.2 ring-gap-top 1 one = 0.35 mm")]
    [InlineData("second ring gap in bore four sixteen thou", "piston.4 ring-gap-second 1 one = 0.4064 mm")]
    [InlineData("number two inlet lash twelve thou", "valve-in.2.1 valve-clearance 1 one = 0.3048 mm")]
    [InlineData("crank end float five thou", "crank.1 crank-end-float 1 one = 0.127 mm")]
    [InlineData("compression on number two one sixty five psi", "block.1 compression-dry 2 one = 11.37635 bar")]
    [InlineData("compression one to four: 160, 165, 158 and 162 psi", "block.1 compression-dry 1 one = 11.031612 bar", "block.1 compression-dry 2 one = 11.37635 bar", "block.1 compression-dry 3 one = 10.893717 bar", "block.1 compression-dry 4 one = 11.169507 bar")]
    [InlineData("compression wet on four one forty psi", "block.1 compression-wet 4 one = 9.65266 bar")]
    [InlineData("compression one sixty, one sixty five, one fifty eight, one sixty two, front to back", "block.1 compression-dry 1 one = 11.031612 bar", "block.1 compression-dry 2 one = 11.37635 bar", "block.1 compression-dry 3 one = 10.893717 bar", "block.1 compression-dry 4 one = 11.169507 bar")]
    [InlineData("deck number one point three mm down over the pin", "piston.1 deck-height 1 pin1 = -0.3 mm")]
    [InlineData("piston one deck 0.30 and 0.32 mm down", "piston.1 deck-height 1 pin1 = -0.3 mm", "piston.1 deck-height 1 pin2 = -0.32 mm")]
    [InlineData("plastic strip on main three front two thou", "crank.1 main-clearance-strip 3 front = 0.0508 mm")]
    [InlineData("plug gap number three point eight", "plug.3 plug-gap 1 one = 0.8 mm")]
    public void Reading_goes_to_its_spot_on_the_sheet(string line, params string[] readings)
    {
        var entries = Say(line);
        Assert.Equal(string.Join(" | ", readings), string.Join(" | ", entries.Select(r => r.Entry).Where(e => e is not Said).Select(e => e is ReadingTaken taken ? Shown(taken) : e.Words(Book.Bench))));
    }

    [Theory]
    [InlineData("bore one 86.012", "the spot is not told")]
    [InlineData("bore four top 86.05 across 86.02 along", "the spot is not told")]
    [InlineData("big end two front forty seven point nine eight", "the spot is not told")]
    [InlineData("bore one top 86.012", "the spot is not told")]
    [InlineData("main two fifty four point nine eight", "the spot is not told")]
    [InlineData("compression 160, 165, 158, 162 psi", "which is which")]
    [InlineData("deck number one point three mm down", "over the pin")]
    [InlineData("top ring gap fourteen thou", "on which of the 4 was it read")]
    public void Reading_that_the_words_do_not_place_stays_a_note_and_is_asked(string line, string why)
    {
        var entries = Say(line).Select(r => r.Entry).ToArray();
        Assert.DoesNotContain(entries, e => e is ReadingTaken);
        Assert.Contains(entries, e => e is Journal.Noted);
        Assert.Contains(why, string.Join(" | ", entries.Select(e => e.Words(Book.Bench))), StringComparison.Ordinal);
        Assert.Single(entries.OfType<Journal.Asked>());
    }
}
