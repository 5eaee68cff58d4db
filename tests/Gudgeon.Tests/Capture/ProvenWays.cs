using Gudgeon.Capture;

namespace Gudgeon.Tests.Capture;

/// <summary>
/// The ways of saying that are heard rightly, found by hearing every file of stories and every table of ways of saying:
/// what the ear may record at once; all else it offers. A way counts when it was heard right more than twice as often as
/// wrong; one that our own files hold, and heard right wherever they hold it, when it was heard right half as often as wrong.
/// </summary>
internal static class ProvenWays
{
    private sealed record Tally(int Right, int Wrong, int OwnRight, int OwnWrong)
    {
        public bool Proven => Right > 0 && (OwnRight > 0 && OwnWrong == 0 ? 2 * Right >= Wrong : Right > 2 * Wrong);

        public Tally With(bool right, bool own) => new(Right + (right ? 1 : 0), Wrong + (right ? 0 : 1), OwnRight + (right && own ? 1 : 0), OwnWrong + (right || !own ? 0 : 1));
    }

    /// <summary>Rows of the table: the kind of fact, and one of its ways.</summary>
    public static IReadOnlyList<string> Rows(IEnumerable<string> files)
    {
        var heard = new Dictionary<string, Tally>();
        foreach (string file in files)
        {
            bool own = !Path.GetFileName(file).StartsWith("unseen", StringComparison.Ordinal);
            foreach (var (facts, due) in Path.GetFileName(file).StartsWith("phrases-", StringComparison.Ordinal) ? Ways(file) : Notes(file))
            {
                var wrong = SameMeaning.Compare(due, facts.Select(f => f.Code)).Wrong.ToList();
                foreach (var fact in facts)
                    heard[fact.Way] = (heard.GetValueOrDefault(fact.Way) ?? new Tally(0, 0, 0, 0)).With(!wrong.Remove(fact.Code), own);
            }
        }

        return [.. heard.Where(w => w.Value.Proven).Select(w => w.Key.Replace(" = ", "|", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
    }

    private static IEnumerable<(IReadOnlyList<Fact>, IReadOnlyList<string>)> Ways(string file) =>
        PhraseTable.Read(file, anyWay: true).Select(w => (w.Hear().Facts, w.Facts));

    private static IEnumerable<(IReadOnlyList<Fact>, IReadOnlyList<string>)> Notes(string file) =>
        Story.Mark(file, anyWay: true).Select(m => (m.Heard.Facts, m.Note.Facts));
}
