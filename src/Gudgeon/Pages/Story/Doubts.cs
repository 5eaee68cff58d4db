using Gudgeon.Capture;
using Gudgeon.Journal;
using Asked = Gudgeon.Journal.Asked;
using Reading = Gudgeon.Capture.Reading;

namespace Gudgeon.Pages.Story;

/// <summary>
/// What was said and can be read two ways: the ways, to be chosen from with one tap. The words are heard again as they
/// stand in the book, so that nothing but the words has to be kept.
/// </summary>
public static class Doubts
{
    /// <summary>The ways to read an open question; none where it was not said in a line, or reads one way by now.</summary>
    public static IReadOnlyList<Reading> WaysOf(Book book, Recorded question)
    {
        if (question.Entry is not Asked asked || book.Entries.FirstOrDefault(r => r.Act == question.Act && r.Entry is Said)?.Entry is not Said said)
            return [];

        var bench = book.Bench;
        var context = Telling.Habits(bench, question.At);
        return Ear.Hear(said.Text, bench.Engine, context).Doubts.FirstOrDefault(d => d.Words == asked.Text)?.Readings ?? [];
    }

    /// <summary>What choosing one way records: its facts, and that the question is settled. Null when it is no longer one of the ways.</summary>
    public static IReadOnlyList<Request>? Choose(Book book, long number, string echo, TimeSpan offset)
    {
        if (!book.Bench.OpenQuestions.TryGetValue(number, out var question) || WaysOf(book, question).FirstOrDefault(w => w.Echo == echo) is not { } way)
            return null;

        var heard = new Heard(((Asked)question.Entry).Text, way.Facts, [], []);
        return [.. Hearing.ToRequests(heard, book.Bench, offset).Where(r => r is not Tell { Entries: [Said] }), new Tell(new Settled(number, echo))];
    }
}
