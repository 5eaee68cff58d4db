using Gudgeon.Capture;
using Gudgeon.Journal;
using Asked = Gudgeon.Journal.Asked;
using Doubt = Gudgeon.Capture.Doubt;
using Reading = Gudgeon.Capture.Reading;

namespace Gudgeon.Pages.Story;

/// <summary>
/// What was said and can be read two ways, or in one that was not proven: the ways, to be chosen from with one tap. The
/// words are heard again as they stand in the book, after those before them, so that nothing but the words has to be kept.
/// </summary>
public static class Doubts
{
    /// <summary>So many lines before may be leant on: "five's oily" speaks of the plugs just told.</summary>
    private const int LinesBefore = 2;

    /// <summary>The ways to read an open question; none where it was not said in a line, or is clear by now.</summary>
    public static IReadOnlyList<Reading> WaysOf(Book book, Recorded question) => Heard(book, question)?.Doubt.Readings ?? [];

    private static (Said Said, Doubt Doubt)? Heard(Book book, Recorded question)
    {
        if (question.Entry is not Asked asked || book.Entries.FirstOrDefault(r => r.Act == question.Act && r.Entry is Said) is not { Entry: Said said } line)
            return null;

        // Without the ways taken since, which would make a fact of what is still asked.
        var bench = book.Bench;
        var context = Telling.Habits(bench, question.At) with { Ways = new HashSet<string>(), Off = new HashSet<string>() };
        foreach (var before in book.Entries.Where(r => r.Number < line.Number && r.Entry is Said && !book.IsStruck(r.Number)).TakeLast(LinesBefore))
            context = context.After(Ear.Hear(((Said)before.Entry).Text, bench.Engine, context));
        var doubts = Ear.Hear(said.Text, bench.Engine, context).Doubts.Where(d => d.Words == asked.Text).ToList();
        var doubt = doubts.Find(d => asked.Why.EndsWith(d.Question, StringComparison.Ordinal)) ?? doubts.Find(d => d.Sort != DoubtSort.Unproven);
        return doubt is null ? null : (said, doubt);
    }

    /// <summary>
    /// What choosing readings records: their facts, those of one line together as if they had been clear at once, that the
    /// questions are settled, and that what is said so is understood. Null when one is no longer among the ways.
    /// </summary>
    public static IReadOnlyList<Request>? Choose(Book book, IEnumerable<(long Number, string Echo)> choices, TimeSpan offset)
    {
        var chosen = new List<(Said Said, Doubt Doubt, Reading Way, Settled Settled)>();
        foreach (var (number, echo) in choices)
        {
            if (!book.Bench.OpenQuestions.TryGetValue(number, out var question) || Heard(book, question) is not { } heard || heard.Doubt.Readings.FirstOrDefault(w => w.Echo == echo) is not { } way)
                return null;
            chosen.Add((heard.Said, heard.Doubt, way, new Settled(number, echo)));
        }

        return
        [
            .. chosen.GroupBy(c => c.Said, ReferenceEqualityComparer.Instance).SelectMany(line => Hearing.ToRequests(new Heard(line.First().Said.Text, [.. line.SelectMany(c => c.Way.Facts)], [], []), book.Bench, offset)),
            .. chosen.Select(c => new Tell(c.Settled)),
            .. OwnWords.Taken(chosen.Select(c => (c.Doubt, c.Way)), book.Bench),
        ];
    }
}
