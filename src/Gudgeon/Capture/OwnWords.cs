using System.Text.RegularExpressions;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Capture;

/// <summary>Words of the owner's own: taught by a command, in passing, or from the answer to the question that one raised.</summary>
public static partial class OwnWords
{
    private const string Mil = "mil";

    /// <summary>More words than this in a question are a story, not a name.</summary>
    private const int Most = 4;

    [GeneratedRegex(@"^\s*(?:(?:it|that|this|they|those|these)(?:'s|’s| is| was| are| were| means)? )?(?:(?:the|a|an|my) )?(?<term>.+?)[\s.!]*$", RegexOptions.IgnoreCase)]
    private static partial Regex Answer();

    /// <summary>The word for the ear from now on, or why its meaning is none that the book knows.</summary>
    public static Outcome<IReadOnlyList<Request>> Teach(Bench bench, string word, string term, DateTimeOffset now)
    {
        bool mil = word.Trim().Equals(Mil, StringComparison.OrdinalIgnoreCase);
        return (mil ? term is "mm" or "thou" : Ear.Knows(term, bench.Engine, Telling.Habits(bench, now)))
            ? Outcome.Of<IReadOnlyList<Request>>([new Tell(new WordTaught(word, term))])
            : Outcome.Refused<IReadOnlyList<Request>>(new Refusal("meaning", $"\"{term}\"", mil ? "mm or thou" : "the name of a part, hose or wire", "Name it as the book does"));
    }

    /// <summary>What can be taught after a question was answered with the name of a part: each word of it that nobody knows, as that part.</summary>
    public static IReadOnlyList<WordTaught> Offered(Book book, Recorded recorded)
    {
        if (recorded.Entry is not Settled settled || book.Entries.FirstOrDefault(r => r.Number == settled.Question)?.Entry is not Journal.Asked asked)
            return [];
        var context = Telling.Habits(book.Bench, recorded.At);
        string term = Answer().Match(settled.Answer).Groups["term"].Value.ToLowerInvariant();
        return Ear.Knows(term, book.Bench.Engine, context) ? [.. Ear.Unknown(asked.Text, book.Bench.Engine, context).Take(Most).Select(word => new WordTaught(word, term))] : [];
    }

    /// <summary>What the owner takes by choosing the one way to read what was only offered: from now on it is understood when it is said so. Nothing when that is known already.</summary>
    public static IEnumerable<Request> Taken(IEnumerable<(Doubt Doubt, Reading Chosen)> chosen, Bench bench)
    {
        var ways = chosen.Where(c => c.Doubt.Sort == DoubtSort.Unproven).SelectMany(c => c.Chosen.Facts, (c, fact) => (fact.Way, c.Doubt.Words))
            .Where(w => w.Way.Length > 0 && !bench.Ways.Contains(w.Way)).DistinctBy(w => w.Way).ToList();
        return ways.Count == 0 ? [] : [new Tell(new WaysTaken([.. ways.Select(w => w.Way)], [.. ways.Select(w => w.Words).Distinct()]))];
    }
}
