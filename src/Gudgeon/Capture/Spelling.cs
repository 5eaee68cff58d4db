using System.Collections.Concurrent;

namespace Gudgeon.Capture;

/// <summary>Long listed words as a hurried thumb or a dictation writes them: one letter short, one too many, one wrong, or two the wrong way round.</summary>
internal sealed class Spelling
{
    /// <summary>Shorter words are too near to others.</summary>
    private const int Shortest = 7;

    private readonly HashSet<string> words = [];
    private readonly Dictionary<string, List<string>> shortened = [];

    /// <summary>What was looked up lately: every word of a line is met many times over.</summary>
    private readonly ConcurrentDictionary<string, string?> looked = new();

    private const int MostLooked = 4096;

    public void Add(string word)
    {
        if (!words.Add(word) || word.Length < Shortest)
            return;
        foreach (string form in Shorter(word))
        {
            if (!shortened.TryGetValue(form, out var list))
                shortened[form] = list = [];
            list.Add(word);
        }
    }

    /// <summary>The one listed word that is a single slip away; null for a listed word, and where several or none are.</summary>
    public string? Nearest(string word)
    {
        if (word.Length < Shortest - 1 || words.Contains(word) || word.EndsWith("ed", StringComparison.Ordinal) || word.EndsWith("ing", StringComparison.Ordinal))
            return null;
        if (looked.Count > MostLooked)
            looked.Clear();
        return looked.GetOrAdd(word, Search);
    }

    private string? Search(string word)
    {
        string? nearest = null;
        foreach (string form in Shorter(word).Prepend(word))
        {
            foreach (string known in shortened.GetValueOrDefault(form) ?? [])
            {
                if (known == nearest || known[0] != word[0] || !Slip(known, word))
                    continue;
                if (nearest is not null)
                    return null;
                nearest = known;
            }

            if (form.Length >= Shortest && words.Contains(form) && form != nearest && form[0] == word[0])
            {
                if (nearest is not null)
                    return null;
                nearest = form;
            }
        }

        return nearest;
    }

    private static IEnumerable<string> Shorter(string word) => Enumerable.Range(0, word.Length).Select(i => word.Remove(i, 1)).Distinct();

    private static bool Slip(string left, string right)
    {
        int from = 0;
        while (from < left.Length && from < right.Length && left[from] == right[from])
            from++;
        int tail = 0;
        while (tail < left.Length - from && tail < right.Length - from && left[^(tail + 1)] == right[^(tail + 1)])
            tail++;
        int l = left.Length - from - tail;
        int r = right.Length - from - tail;
        return (l <= 1 && r <= 1) || (l == 2 && r == 2 && left[from] == right[from + 1] && left[from + 1] == right[from]);
    }
}
