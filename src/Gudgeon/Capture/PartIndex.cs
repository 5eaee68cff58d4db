using Gudgeon.Engine;

namespace Gudgeon.Capture;

/// <summary>One way to say a kind of part. <paramref name="Rank"/>: 0 its name, 1 another word, 2 what dictation makes of it.</summary>
internal readonly record struct PartWord(string Kind, bool IsLine, string? Id, int Rank);

/// <summary>Words and parts of one engine, built once and then only looked up.</summary>
internal sealed class PartIndex
{
    private readonly Dictionary<string, List<Part>> parts = [];
    private readonly Dictionary<string, List<Line>> lines = [];
    private readonly Dictionary<string, string> names = [];

    public PartIndex(EngineModel engine, IReadOnlyDictionary<string, string> taught)
    {
        Engine = engine;
        foreach (var part in engine.Parts.Values)
            Of(parts, part.Kind == "own" ? part.Id : part.Kind).Add(part);
        foreach (var line in engine.Lines.Values)
            Of(lines, line.Kind == "own" ? line.Id : line.Kind).Add(line);
        foreach (var term in Vocabulary.Words.Where(w => w.Sort == WordSort.Part))
        {
            // A timing belt is no word for a timing chain: of a kind with variants only this engine's own is meant.
            if (term.Kind is "timing-loop" or "chain-guide" && Vocabulary.Of(term.Kind) is { Count: > 1 } variants && parts.TryGetValue(term.Kind, out var own) && !own.Any(p => p.Name.Contains(term.British, StringComparison.OrdinalIgnoreCase)) && variants.Any(v => own.Any(p => p.Name.Contains(v.British, StringComparison.OrdinalIgnoreCase))))
                continue;
            names.TryAdd(term.Kind, term.British);
            Book.Add(term.British, new PartWord(term.Kind, false, null, 0));
            foreach (string word in term.AlsoSaid.Append(term.American).Where(w => !MoreWords.TooPlain.Contains(w)))
                Book.Add(word, new PartWord(term.Kind, false, null, 1));
            foreach (string word in term.Misheard)
                Book.Add(word, new PartWord(term.Kind, false, null, 2));
        }

        foreach (var (kind, word) in MoreWords.Parts)
            Book.Add(word, new PartWord(kind, false, null, 1));

        // A belt alone is the timing belt where there is one.
        if (!(parts.TryGetValue("timing-loop", out var loops) && loops.Any(l => l.Name.Contains("belt", StringComparison.OrdinalIgnoreCase))))
            Book.Add("belt", new PartWord("aux-belt", false, null, 1));
        foreach (var (kind, word) in MoreWords.Lines)
            Book.Add(word, new PartWord(kind, true, null, 1));

        foreach (var part in engine.Parts.Values.Where(p => p.Kind == "own"))
            Book.Add(part.Name, new PartWord(part.Id, false, part.Id, 0));
        foreach (var (word, term) in taught)
        {
            foreach (var known in Book.Longest(Tokeniser.Cut(term), 0).Values.Take(1))
                Book.Add(word, known with { Rank = 0 });
        }

        var words = MoreWords.Parts.Where(w => w.Word.Contains(' ', StringComparison.Ordinal) is false).ToLookup(w => w.Kind, w => w.Word);
        Pipes = new LineFinder(engine, kind => words[kind].Append(NameOf(kind)));
        foreach (var line in engine.Lines.Values.Where(l => !l.IsPassage && l.Name.Length > 0))
            Book.Add(line.Name, new PartWord(line.Kind == "own" ? line.Id : line.Kind, true, line.Id, 0));
    }

    public EngineModel Engine { get; }

    public PhraseBook<PartWord> Book { get; } = new(stem => !Lexicon.Common.Contains(stem));

    /// <summary>Hoses, pipes and wires by description.</summary>
    public LineFinder Pipes { get; }

    /// <summary>Whether a part of the first kind may be told by the name of the second: a tensioner by its chain.</summary>
    public static bool Owns(string kind, string owner) => Owners.TryGetValue(kind, out var owners) && owners.Contains(owner);

    /// <summary>Kinds that may be told by the name of the owner and are here.</summary>
    public IEnumerable<string> OwnedBy(string owner) => Owners.Where(o => o.Value.Contains(owner) && Parts(o.Key).Count > 0).Select(o => o.Key);

    private static readonly Dictionary<string, HashSet<string>> Owners = Lexicon.Rows("compounds").ToDictionary(r => r[0], r => r[1].Split("; ").ToHashSet());

    public IReadOnlyList<Part> Parts(string kind) => parts.GetValueOrDefault(kind) ?? [];

    public IReadOnlyList<Line> Lines(string kind) => lines.GetValueOrDefault(kind) ?? [];

    public string NameOf(string kind) => names.GetValueOrDefault(kind, kind);

    private static List<T> Of<T>(Dictionary<string, List<T>> map, string key)
    {
        if (!map.TryGetValue(key, out var list))
            map[key] = list = [];
        return list;
    }
}
