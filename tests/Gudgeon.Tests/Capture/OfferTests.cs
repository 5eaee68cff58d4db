using Gudgeon.Capture;
using Gudgeon.Journal;
using Doubts = Gudgeon.Pages.Story.Doubts;

namespace Gudgeon.Tests.Capture;

/// <summary>What is understood but was said in a way that was never proven: offered, not recorded, until the owner takes it. Sentences invented, common practice, no source.</summary>
public sealed class OfferTests : LineTest
{
    /// <summary>A way in which no table says it.</summary>
    private const string Odd = "off of there wobbled the starter";

    /// <summary>All that is offered of the line, as a form or command carries it.</summary>
    private Choices All(string text) => new([], [.. Telling.Hear(Book.Bench, text, Story.Now, Choices.None).Offered.Select(o => PieceKey.Of(o.Doubt, o.Doubt.Readings[0]))]);

    private void Choose(params (long Number, string Echo)[] chosen) =>
        Assert.True(Book.Submit(Sending(), [.. Doubts.Choose(Book, chosen, Story.Now.Offset)!]).Ok);

    [Fact]
    public void Nothing_is_recorded_until_it_is_taken_and_then_it_is()
    {
        Say(Odd);
        Assert.False(Book.Bench.Part("starter.1").IsOff);
        var (number, question) = Assert.Single(Book.Bench.OpenQuestions);
        Choose((number, Assert.Single(Doubts.WaysOf(Book, question)).Echo));
        Assert.True(Book.Bench.Part("starter.1").IsOff);
        Assert.Empty(Book.Bench.OpenQuestions);
    }

    [Fact]
    public void What_was_taken_once_is_recorded_at_once_of_another_part()
    {
        Say(Odd, All(Odd));
        Assert.True(Book.Bench.Part("starter.1").IsOff);
        Say(Odd.Replace("starter", "alternator", StringComparison.Ordinal));
        Assert.True(Book.Bench.Part("alternator.1").IsOff);
        Assert.Empty(Book.Bench.OpenQuestions);
    }

    [Fact]
    public void A_way_struck_out_is_offered_again()
    {
        var reply = Say(Odd, All(Odd));
        long taken = reply.First(e => e.Entry is WaysTaken).Number;
        Assert.True(Book.Submit(Sending(), new StrikeOut(taken, "it was luck")).Ok);
        Say(Odd.Replace("starter", "alternator", StringComparison.Ordinal));
        Assert.False(Book.Bench.Part("alternator.1").IsOff);
        Assert.Single(Book.Bench.OpenQuestions);
    }

    [Fact]
    public void Each_of_two_questions_of_one_way_can_still_be_taken()
    {
        Say(Odd);
        Say(Odd.Replace("starter", "alternator", StringComparison.Ordinal));
        foreach (var (number, question) in Book.Bench.OpenQuestions.ToList())
            Choose((number, Assert.Single(Doubts.WaysOf(Book, question)).Echo));
        Assert.True(Book.Bench.Part("starter.1").IsOff);
        Assert.True(Book.Bench.Part("alternator.1").IsOff);
    }

    [Fact]
    public void What_is_no_longer_among_the_readings_is_not_recorded()
    {
        Say(Odd);
        long number = Assert.Single(Book.Bench.OpenQuestions).Key;
        Assert.Null(Doubts.Choose(Book, [(number, "alternator: off")], Story.Now.Offset));
    }

    [Fact]
    public void Taking_all_takes_what_was_shown_and_nothing_that_was_said_after()
    {
        var shown = All(Odd);
        Say($"{Odd}, {Odd.Replace("starter", "alternator", StringComparison.Ordinal)}", shown);
        Assert.True(Book.Bench.Part("starter.1").IsOff);
        Assert.False(Book.Bench.Part("alternator.1").IsOff);
        Assert.Single(Book.Bench.OpenQuestions);
    }
}
