using Gudgeon.Capture;

namespace Gudgeon.Tests.Capture;

/// <summary>Figures that dictation writes in odd ways or that mean two amounts. Common practice, no source.</summary>
public class NumberTrapTests
{
    private static readonly Gudgeon.Engine.EngineModel Engine = Story.Build("n=4 opt=starter,alternator");

    private static Heard Hear(string note, Func<EarContext, EarContext>? with = null)
    {
        var context = new EarContext { Now = Story.Now, AnyWay = true };
        return Ear.Hear(note, Engine, with is null ? context : with(context));
    }

    private static string Value(Heard heard) => string.Join(" ", Assert.IsType<Measured>(Assert.Single(heard.Facts)).Values.Select(v => v.Code));

    [Theory]
    [InlineData("bore one eighty-six oh one two", "86.012 mm")]
    [InlineData("end float ten thou", "0.01 in")]
    [InlineData("end float ten though", "0.01 in")]
    [InlineData("end float ten thousand", "0.01 in")]
    [InlineData("end float two hundredths", "0.02 mm")]
    [InlineData("exhaust gap point two two", "0.22 mm")]
    [InlineData("mains are ten under", "-0.01 in")]
    [InlineData("compression number two one fifty", "150 psi")]
    [InlineData("main two sixty-three nine seven eight", "63.978 mm")]
    public void Figure_as_said_means_one_amount(string said, string amount) => Assert.Equal(amount, Value(Hear(said)));

    [Fact]
    public void Tenths_in_a_metric_book_are_asked_with_both_readings()
    {
        var doubt = Assert.Single(Hear("deck one three tenths down").Doubts);
        Assert.Equal(["0.3 mm", "0.0003 in"], doubt.Readings.Select(r => ((Measured)r.Facts[0]).Values[0].Code));
    }

    [Fact]
    public void Tenths_in_an_inch_book_are_ten_thousandths() =>
        Assert.Equal("0.0018 in", Value(Hear("clearance eighteen tenths", c => c with { Unit = BookUnit.Inch })));

    [Fact]
    public void Mil_is_asked_until_the_owner_has_a_habit()
    {
        Assert.Single(Hear("cylinder two's cracked, about six mil").Doubts);
        Assert.Empty(Hear("cylinder two's cracked, about six mil", c => c with { MilIsMillimetre = true }).Doubts);
    }

    [Fact]
    public void Socket_size_is_never_stored_as_a_thread()
    {
        var count = Assert.IsType<Count>(Assert.Single(Hear("thirteen mil socket on the big ones", c => c with { LastJoint = "alternator.1", LastThing = "alternator.1" }).Facts));
        Assert.Null(count.Lots[0].Size.Diameter);
        Assert.Equal(13, count.Lots[0].Size.AcrossFlats);
    }

    [Fact]
    public void Ten_by_one_and_a_quarter_is_a_pitch_in_a_metric_book_and_asked_in_an_inch_one()
    {
        var metric = Hear("alternator off, two bolts ten by one and a quarter");
        Assert.Contains(metric.Facts, f => f.Code == "undone alternator.1: 2 M10x1.25");
        var inch = Hear("alternator off, two bolts ten by one and a quarter", c => c with { Unit = BookUnit.Inch });
        Assert.Equal(2, Assert.Single(inch.Doubts).Readings.Count);
    }

    [Theory]
    [InlineData("sump off, a couple of bolts", "undone sump.1: 2", 0)]
    [InlineData("sump off, a few bolts", "undone sump.1: ?", 1)]
    public void Couple_is_two_and_few_is_asked(string said, string code, int questions)
    {
        var heard = Hear(said);
        Assert.Contains(heard.Facts, f => f.Code == code);
        Assert.Equal(questions, heard.Doubts.Count);
    }

    [Theory]
    [InlineData("thermostat off, two M8 by thirty five", "2 M8x35")]
    [InlineData("thermostat off, two seven sixteenths UNF", "2 7/16 UNF")]
    [InlineData("thermostat off, two bolts, three eighths", "2 3/8")]
    [InlineData("thermostat off, two at inch and a quarter", "2 1 1/4 in long")]
    [InlineData("thermostat off, two 1/2-13", "2 1/2-13")]
    [InlineData("thermostat off, two M8x35s", "2 M8x35")]
    [InlineData("thermostat off, two 7/16-20 x 1 1/2", "2 7/16-20 x 1 1/2 in")]
    [InlineData("thermostat off, two quarter twenty by three quarters", "2 1/4-20 x 3/4 in")]
    public void Size_as_said_is_read(string said, string lot) =>
        Assert.Contains(Hear(said).Facts, f => f.Code == $"undone thermostat.1: {lot}");

    [Theory]
    [InlineData("the stand has to go back Monday night", "2026-11-30")]
    [InlineData("exhaust manifold stays on, soaking till Saturday", "2026-11-28")]
    [InlineData("waiting for the rings until tomorrow", "2026-11-26")]
    [InlineData("waiting for the rings till the third of december", "2026-12-03")]
    public void Day_is_told_from_the_moment_of_the_note(string said, string day) =>
        Assert.Contains(Hear(said).Facts, f => f.Code.EndsWith(day, StringComparison.Ordinal));

    [Fact]
    public void Left_without_names_for_the_banks_is_asked()
    {
        var engine = Story.Build("layout=vee n=6 angle=60 banks=numbers");
        var heard = Ear.Hear("left cam cover off", engine, new EarContext { Now = Story.Now, AnyWay = true });
        Assert.Equal(2, Assert.Single(heard.Doubts).Readings.Count);
        Assert.Equal("off cam-cover.2", Assert.Single(Ear.Hear("left cam cover off", engine, new EarContext { Now = Story.Now, AnyWay = true, LeftBank = 2 }).Facts).Code);
    }

    [Fact]
    public void The_one_on_the_far_bank_is_the_other_of_what_was_spoken_of()
    {
        var engine = Story.Build("layout=vee n=6 angle=60");
        var context = new EarContext { Now = Story.Now, AnyWay = true };
        context = context.After(Ear.Hear("left cam cover's off", engine, context));
        Assert.Equal("off cam-cover.2", Assert.Single(Ear.Hear("the one on the far bank is off too", engine, context).Facts).Code);
    }
}
