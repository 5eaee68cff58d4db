using Gudgeon.Capture;
using Gudgeon.Journal;

namespace Gudgeon.Tests.Capture;

/// <summary>Lines whose pieces were looked at before they were recorded: what is left out becomes a question, what is chosen is recorded, nothing is lost.</summary>
public sealed class SiftedTests : LineTest
{
    private Sifted Look(string text, Choices? choices = null) => Telling.Hear(Book.Bench, text, Story.Now, choices ?? Choices.None);

    private IReadOnlyList<Entry> Note(string text, Choices? choices = null) => [.. Say(text, choices).Select(r => r.Entry)];

    private static PieceKey Carried(PieceKey key) => PieceKey.Read(key.ToString());

    private static Choices Without(params PieceKey[] keys) => new([.. keys.Select(Carried)], []);

    private static Choices Meant(params PieceKey[] keys) => new([], [.. keys.Select(Carried)]);

    [Fact]
    public void Piece_left_out_is_no_fact_but_an_open_question_with_its_words()
    {
        const string Line = "thermostat housing off, two M6 by 22, bag 12, gasket stuck to the head";
        var off = Assert.Single(Look(Line).All.Facts, f => f is Off);
        var entries = Note(Line, Without(PieceKey.Of(off)));

        Assert.False(Book.Bench.Part("thermostat.1").IsOff);
        Assert.Equal(Line, Assert.Single(entries.OfType<Said>()).Text);
        var asked = Assert.Single(entries.OfType<Journal.Asked>());
        Assert.Contains("thermostat housing off", asked.Text, StringComparison.Ordinal);
        Assert.Contains(off.Echo, asked.Why, StringComparison.Ordinal);
        Assert.Contains(entries, e => e is FastenersOut { Lots: [{ Count: 2, Size: "M6x22" }] });
        Assert.Contains(entries, e => e is Journal.Noted { Mark: "odd" });
    }

    [Fact]
    public void Every_piece_left_out_leaves_the_note_and_its_questions()
    {
        const string Line = "alternator off, three M8 by 40, bag 4";
        var heard = Look(Line).All;
        var entries = Note(Line, Without([.. heard.Facts.Select(PieceKey.Of)]));
        Assert.All(entries, e => Assert.True(e is Said or Journal.Asked, e.GetType().Name));
        Assert.Equal(heard.Facts.Count, entries.OfType<Journal.Asked>().Count());
    }

    [Fact]
    public void Doubt_settled_before_is_recorded_and_not_asked()
    {
        const string Line = "deck one three tenths down";
        var doubt = Assert.Single(Look(Line).All.Doubts);
        var metric = doubt.Readings.First(r => r.Facts is [Measured { Values: [{ Unit: "mm" }] }]);
        var entries = Note(Line, Meant(PieceKey.Of(doubt, metric)));
        Assert.DoesNotContain(entries.OfType<Journal.Asked>(), a => a.Why.Contains(doubt.Question, StringComparison.Ordinal));
        Assert.Contains(entries.OfType<Journal.Noted>(), n => n.Text.Contains("0.3 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void Deed_that_was_asked_about_is_recorded_once_it_is_said_to_be_meant()
    {
        const string Line = "starter grumpled wobblewise off";
        var doubt = Assert.Single(Look(Line).All.Doubts);
        Note(Line, Meant(PieceKey.Of(doubt, Assert.Single(doubt.Readings))));
        Assert.True(Book.Bench.Part("starter.1").IsOff);
        Assert.Empty(Book.Bench.OpenQuestions);
    }

    [Fact]
    public void Choice_that_fits_nothing_is_a_question_never_silence()
    {
        var entries = Note("alternator off, three M8 by 40, bag 4", new Choices([PieceKey.Read("off water-pump.1")], [PieceKey.Read("off distributor.1 @400+12")]));
        Assert.True(Book.Bench.Part("alternator.1").IsOff);
        var asked = entries.OfType<Journal.Asked>().ToList();
        Assert.Equal(2, asked.Count);
        Assert.Contains(asked, a => a.Why.Contains("“off water-pump.1”", StringComparison.Ordinal));
        Assert.Contains(asked, a => a.Why.Contains("“off distributor.1”", StringComparison.Ordinal));
    }

    /// <summary>On the phone the starter came off and that was tapped away; when the line arrives, its words read as something else.</summary>
    [Fact]
    public void Words_that_were_left_out_and_read_otherwise_by_now_are_held_back()
    {
        const string Line = "starter off, three M8 by 40, bag 4";
        var off = Assert.Single(Look(Line).All.Facts, f => f is Off);
        var entries = Note(Line, Without(PieceKey.Of(off) with { Code = "off alternator.1" }));
        Assert.False(Book.Bench.Part("starter.1").IsOff);
        Assert.Contains("reads otherwise now", Assert.Single(entries.OfType<Journal.Asked>()).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Piece_stays_left_out_while_its_line_grows()
    {
        var away = PieceKey.Of(Assert.Single(Look("alternator off, three M8").All.Facts, f => f is Undone));
        var grown = Look("alternator off, three M8 by 40", Without(away));
        Assert.IsType<Undone>(Assert.Single(grown.Left).Fact);
        Assert.Contains(grown.Kept.Facts, f => f is Off);
        Assert.Empty(grown.Unfit);
    }

    [Fact]
    public void Same_again_does_not_bring_back_what_was_left_out()
    {
        const string Line = "alternator off, three M8 by 40, bag 4";
        Note(Line, Without([.. Look(Line).All.Facts.Where(f => f is Undone).Select(PieceKey.Of)]));
        Note("starter off, same");
        Assert.DoesNotContain(Book.Bench.Told, t => t.Entry is FastenersOut);
    }

    [Theory]
    [InlineData("off thermostat.1")]
    [InlineData("tagged l-rad-in.1 = green @3")]
    [InlineData("noted x @1+2,5+9")]
    [InlineData(" @")]
    [InlineData("x @1+2,-5+9")]
    [InlineData("")]
    public void Key_is_read_back_as_it_was_written(string text) => Assert.Equal(text, PieceKey.Read(text).ToString());
}
