using Gudgeon.Capture;
using Gudgeon.Journal;
using Doubts = Gudgeon.Pages.Story.Doubts;

namespace Gudgeon.Tests.Capture;

/// <summary>What is understood but was said in a way that was never proven: offered, not recorded, until the owner takes it. Sentences invented, common practice, no source.</summary>
public sealed class OfferTests : IDisposable
{
    /// <summary>A way in which no table says it.</summary>
    private const string Odd = "off of there wobbled the starter";

    private readonly string folder = Directory.CreateTempSubdirectory("gudgeon-offer-").FullName;
    private readonly Book book;
    private int notes;

    public OfferTests()
    {
        book = Book.Open(folder);
        var answers = new Dictionary<string, string> { ["n"] = "4", ["opt"] = "starter,alternator,oilcooler" };
        Assert.True(book.Submit(new Sending("start", Story.Now, Story.Now, "test"), new Tell(new BookStarted("offers", answers))).Ok);
    }

    public void Dispose()
    {
        book.Dispose();
        Directory.Delete(folder, true);
    }

    private Reply Note(string text, Choices? choices = null)
    {
        var reply = Telling.Record(book, text, new Sending($"note-{++notes}", Story.Now, Story.Now, "test"), choices);
        Assert.True(reply.Ok);
        return reply.Value;
    }

    private void Choose(params (long Number, string Echo)[] chosen) =>
        Assert.True(book.Submit(new Sending($"meant-{++notes}", Story.Now, Story.Now, "test"), [.. Doubts.Choose(book, chosen, Story.Now.Offset)!]).Ok);

    [Fact]
    public void Nothing_is_recorded_until_it_is_taken_and_then_it_is()
    {
        Note(Odd);
        Assert.False(book.Bench.Part("starter.1").IsOff);
        var (number, question) = Assert.Single(book.Bench.OpenQuestions);
        Choose((number, Assert.Single(Doubts.WaysOf(book, question)).Echo));
        Assert.True(book.Bench.Part("starter.1").IsOff);
        Assert.Empty(book.Bench.OpenQuestions);
    }

    [Fact]
    public void What_was_taken_once_is_recorded_at_once_of_another_part()
    {
        Note(Odd, new Choices([], [], All: true));
        Assert.True(book.Bench.Part("starter.1").IsOff);
        Note(Odd.Replace("starter", "alternator", StringComparison.Ordinal));
        Assert.True(book.Bench.Part("alternator.1").IsOff);
        Assert.Empty(book.Bench.OpenQuestions);
    }

    [Fact]
    public void A_way_struck_out_is_offered_again()
    {
        var reply = Note(Odd, new Choices([], [], All: true));
        long taken = reply.Entries.First(e => e.Entry is WaysTaken).Number;
        Assert.True(book.Submit(new Sending("strike", Story.Now, Story.Now, "test"), new StrikeOut(taken, "it was luck")).Ok);
        Note(Odd.Replace("starter", "alternator", StringComparison.Ordinal));
        Assert.False(book.Bench.Part("alternator.1").IsOff);
        Assert.Single(book.Bench.OpenQuestions);
    }

    [Fact]
    public void Each_of_two_questions_of_one_way_can_still_be_taken()
    {
        Note(Odd);
        Note(Odd.Replace("starter", "alternator", StringComparison.Ordinal));
        foreach (var (number, question) in book.Bench.OpenQuestions.ToList())
            Choose((number, Assert.Single(Doubts.WaysOf(book, question)).Echo));
        Assert.True(book.Bench.Part("starter.1").IsOff);
        Assert.True(book.Bench.Part("alternator.1").IsOff);
    }

    [Fact]
    public void What_is_no_longer_among_the_readings_is_not_recorded()
    {
        Note(Odd);
        long number = Assert.Single(book.Bench.OpenQuestions).Key;
        Assert.Null(Doubts.Choose(book, [(number, "alternator: off")], Story.Now.Offset));
    }
}
