using Gudgeon.Capture;
using Gudgeon.Journal;

namespace Gudgeon.Tests.Capture;

/// <summary>A book of an in-line four in a folder of its own, to say lines into.</summary>
public abstract class LineTest : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gudgeon-line-").FullName;
    private int sent;

    protected LineTest(string answers = "n=4 opt=starter,alternator,oilcooler")
    {
        Book = Book.Open(folder);
        var given = answers.Split(' ').Select(a => a.Split('=', 2)).ToDictionary(a => a[0], a => a[1]);
        Assert.True(Book.Submit(Sending(), new Tell(new BookStarted("lines", given))).Ok);
    }

    protected Book Book { get; }

    public void Dispose()
    {
        Book.Dispose();
        Directory.Delete(folder, true);
        GC.SuppressFinalize(this);
    }

    /// <summary>One more sending, at the moment of the stories.</summary>
    protected Sending Sending() => new($"sent-{++sent}", Story.Now, Story.Now, "test");

    /// <summary>Records the line; what was recorded of it.</summary>
    private protected IReadOnlyList<Recorded> Say(string text, Choices? choices = null)
    {
        var reply = Telling.Record(Book, text, Sending(), choices);
        Assert.True(reply.Ok);
        return reply.Value.Entries;
    }
}
