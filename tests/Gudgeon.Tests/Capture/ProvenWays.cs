using Gudgeon.Capture;

namespace Gudgeon.Tests.Capture;

/// <summary>
/// The ways of saying that were heard rightly in files of stories and of ways of saying: at least once, and wrongly at most
/// once in twenty. What the ear may record at once; all else it offers.
/// </summary>
internal static class ProvenWays
{
    /// <summary>Of how many times a way was heard one may have been wrong.</summary>
    private const int Doubtful = 3;

    /// <summary>Rows of the table: the kind of fact, and its ways.</summary>
    public static IReadOnlyList<string> Rows(IEnumerable<string> files)
    {
        var heard = new Dictionary<string, (int Right, int Wrong)>();
        foreach (string file in files)
        {
            foreach (var (facts, due) in Path.GetFileName(file).StartsWith("phrases-", StringComparison.Ordinal) ? Ways(file) : Notes(file))
            {
                var wrong = SameMeaning.Compare(due, facts.Select(f => f.Code)).Wrong.ToList();
                foreach (var fact in facts)
                {
                    var (right, not) = heard.GetValueOrDefault(fact.Way);
                    heard[fact.Way] = wrong.Remove(fact.Code) ? (right, not + 1) : (right + 1, not);
                }
            }
        }

        return [.. heard.Where(w => w.Value.Right > 0 && w.Value.Wrong * Doubtful <= w.Value.Right + w.Value.Wrong).Select(w => w.Key.Split(" = ", 2)).Where(w => w.Length == 2)
            .GroupBy(w => w[0], w => w[1]).OrderBy(g => g.Key, StringComparer.Ordinal).SelectMany(g => g.Order(StringComparer.Ordinal).Select(way => $"{g.Key}|{way}"))];
    }

    private static IEnumerable<(IReadOnlyList<Fact>, IReadOnlyList<string>)> Ways(string file) =>
        PhraseTable.Read(file, anyWay: true).Select(w => (w.Hear().Facts, w.Facts));

    private static IEnumerable<(IReadOnlyList<Fact>, IReadOnlyList<string>)> Notes(string file) =>
        Story.Mark(file, anyWay: true).Select(m => (m.Heard.Facts, m.Note.Facts));
}
