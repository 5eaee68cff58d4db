using Gudgeon.Capture;
using Gudgeon.Journal;

namespace Gudgeon.Tests.Capture;

/// <summary>Notes recorded in a real book: what the ear heard, decided against the bench.</summary>
public sealed class HearingTests : LineTest
{
    private List<string> Questions() => [.. Book.Bench.Told.Select(t => t.Entry).OfType<Journal.Asked>().Select(a => a.Text)];

    private JointState Joint(string part) => Book.Bench.Joint(Book.Bench.Engine.JointsOf(part).First(id => Book.Bench.Engine.Joints[id].IsCounted));

    [Fact]
    public void Part_off_with_its_bolts_in_a_bag_balances()
    {
        Say("thermostat housing off, two M6 by 22, bag 12, gasket stuck to the head");
        Assert.True(Book.Bench.Part("thermostat.1").IsOff);
        var lot = Assert.Single(Joint("thermostat.1").Lots);
        Assert.Equal((2, "M6x22", "bag 12"), (lot.Count, lot.Size, lot.Where.Name));
        Assert.Contains(Book.Bench.Told, t => t.Entry is Journal.Noted { Mark: "odd" });
        Assert.Empty(Questions());
    }

    [Fact]
    public void Bolts_left_in_their_holes_are_there()
    {
        Say("starter's out, three bolts left in the bell housing finger tight");
        Assert.Equal(Spot.OwnHoles, Assert.Single(Joint("starter.1").Lots).Where.Spot);
    }

    [Fact]
    public void Access_learned_is_kept_or_asked_when_its_parts_are_unknown()
    {
        Say("couldn't get the alternator off until the oil cooler was out");
        Assert.Contains(Book.Bench.Told, t => t.Entry is Journal.AccessLearned { Target: "alternator.1", Needs: ["oil-cooler.1"] });
        Say("dipstick tube had to come out before the union nut would turn");
        Assert.True(Book.Bench.Part("dipstick.1").IsOff);
        Assert.Contains(Questions(), q => q.Contains("union nut", StringComparison.Ordinal));
    }

    [Fact]
    public void Part_that_the_book_lacks_is_added_on_the_spot()
    {
        Say("little brass thing with two pipes under the manifold, no idea what it is");
        Assert.Contains(Book.Bench.Engine.Parts.Values, p => p.Kind == "own" && p.Name == "little brass thing with two pipes");
    }

    [Fact]
    public void What_is_not_understood_stays_as_an_open_question()
    {
        Say("flurble the wotsit sideways");
        Assert.Contains("flurble the wotsit sideways", Questions());
    }

    [Fact]
    public void What_can_be_read_two_ways_records_nothing_and_asks()
    {
        Say("deck one three tenths down");
        Assert.Single(Questions());
        Assert.DoesNotContain(Book.Bench.Told, t => t.Entry is Journal.Noted);
    }

    [Fact]
    public void Correction_of_a_count_reaches_the_joint()
    {
        Say("water pump off, seven M6 by 25, bag eight");
        Say("no, eight bolts not seven");
        Assert.Equal(8, Joint("water-pump.1").Required);
    }

    [Fact]
    public void Scrap_that_strikes_out_the_note_before()
    {
        Say("alternator off, three M8, bag 4");
        Say("scrap that");
        Assert.False(Book.Bench.Part("alternator.1").IsOff);
    }

    [Fact]
    public void Same_again_leans_on_the_note_before()
    {
        Say("plugs out, all four");
        Say("alternator off, three M8 by 40, bag 4");
        Say("starter off, same");
        Assert.Equal("M8x40", Assert.Single(Joint("starter.1").Lots).Size);
    }

    [Fact]
    public void Hose_parted_tagged_and_capped_is_so_on_the_bench()
    {
        Say("bottom hose off, green tag three, capped with a cork");
        var line = Book.Bench.Line("l-rad-in.1");
        Assert.True(line.IsParted);
        Assert.Equal("green 3", line.Tag);
        Assert.NotEmpty(line.Caps);
    }

    [Fact]
    public void Word_taught_in_passing_is_understood_from_then_on()
    {
        Say("when I say flurble I mean the thermostat");
        Assert.Contains(Book.Bench.Told, t => t.Entry is WordTaught { Word: "flurble", Term: "thermostat" });
        Say("flurble off, two M6 by 22, bag 12");
        Assert.True(Book.Bench.Part("thermostat.1").IsOff);
    }

    [Fact]
    public void Mil_taught_once_is_asked_no_more()
    {
        Say("cylinder two's cracked, about six mil");
        int asked = Questions().Count;
        Say("a mil means a millimetre");
        Say("cylinder three's cracked, about six mil");
        Assert.Equal(asked, Questions().Count);
    }

    [Fact]
    public void Found_it_means_what_was_told_as_missing()
    {
        Say("alternator off, three M8 by 40, bag 4");
        Say("one alternator bolt's gone missing");
        Say("found it, under the bench");
        Assert.Contains(Book.Bench.Told, t => t.Entry is Journal.Noted { What: "alternator.1", Mark: "found" });
    }

    [Fact]
    public void Deed_told_with_too_many_strange_words_is_asked_and_chosen_with_one_tap()
    {
        Say("starter grumpled wobblewise off");
        Assert.False(Book.Bench.Part("starter.1").IsOff);
        var question = Assert.Single(Book.Bench.OpenQuestions);
        var way = Assert.Single(Gudgeon.Pages.Story.Doubts.WaysOf(Book, question.Value));
        Assert.Equal("starter: off", way.Echo);
    }

    [Theory]
    [InlineData("it's the thermostat")]
    [InlineData("Thermostat.")]
    [InlineData("that is a thermostat")]
    public void Word_that_raised_a_question_is_offered_to_be_taught_once_it_is_answered(string answer)
    {
        Say("flurble the wotsit sideways");
        var settled = Book.Submit(Sending(), new Tell(new Settled(Book.Bench.OpenQuestions.Keys.First(), answer))).Value.Entries[0];
        var offered = OwnWords.Offered(Book, settled)[0];
        Assert.Equal(("flurble", "thermostat"), (offered.Word, offered.Term));

        Assert.True(Book.Submit(Sending(), OwnWords.Teach(Book.Bench, offered.Word, offered.Term, Story.Now).Value).Ok);
        Assert.DoesNotContain(OwnWords.Offered(Book, settled), o => o.Word == "flurble");
        Say("flurble off, two M6 by 22, bag 12");
        Assert.True(Book.Bench.Part("thermostat.1").IsOff);
    }

    [Theory]
    [InlineData("no idea")]
    [InlineData("it was nothing")]
    public void Nothing_is_offered_where_the_answer_names_no_part(string answer)
    {
        Say("flurble the wotsit sideways");
        var settled = Book.Submit(Sending(), new Tell(new Settled(Book.Bench.OpenQuestions.Keys.First(), answer))).Value.Entries[0];
        Assert.Empty(OwnWords.Offered(Book, settled));
    }
}
