using System.Runtime.CompilerServices;
using Gudgeon.Engine;

namespace Gudgeon.Capture;

/// <summary>
/// Understands what people say at the bench: one note in, typed facts out, with doubts for what can be read two ways
/// and a list of the words that were not used. The same words, engine and context always give the same answer; no
/// network, no clock, no chance.
/// </summary>
public static class Ear
{
    private static readonly ConditionalWeakTable<EngineModel, Built> Indexes = [];

    private sealed record Built(PartIndex Index, int Stamp);

    public static Heard Hear(string text, EngineModel engine, EarContext context)
    {
        var index = IndexOf(engine, context);
        return new Listener(text, index, context).Hear();
    }

    /// <summary>Builds what the first line would wait for: the index of this engine, and the ear's own tables.</summary>
    public static void MakeReady(EngineModel engine, EarContext context) => Hear("starter off, three M10 by 60, bag 4, bore one top across 86.012", engine, context);

    /// <summary>Whether a term names a kind of part or line, whole, so that a word of the owner's own can stand for it.</summary>
    public static bool Knows(string term, EngineModel engine, EarContext context) =>
        Tokeniser.Cut(term) is { Count: > 0 } tokens && IndexOf(engine, context).Book.Longest(tokens, 0) is { Values.Count: > 0 } found && found.To == tokens.Count;

    /// <summary>Words in no list: neither a part's nor plain ones. Words that stand together come as one, as they may be one name.</summary>
    public static IReadOnlyList<string> Unknown(string text, EngineModel engine, EarContext context)
    {
        var book = IndexOf(engine, context).Book;
        var tokens = Tokeniser.Cut(text);
        var unknown = new List<string>();
        int joined = -1;
        for (int at = 0; at < tokens.Count;)
        {
            int known = Math.Max(book.Longest(tokens, at).To, NumberWords.At(tokens, at)?.To ?? at);
            if (known == at && tokens[at].IsWord && !Lexicon.Common.Contains(tokens[at].Stem) && !Lexicon.Passing.Contains(tokens[at].Text))
            {
                if (joined == at)
                    unknown[^1] += $" {tokens[at].Text}";
                else
                    unknown.Add(tokens[at].Text);
                joined = at + 1;
            }

            at = Math.Max(known, at + 1);
        }

        return [.. unknown.Distinct()];
    }

    /// <summary>The index of an engine is built once and again only after the engine has grown or a part was renamed.</summary>
    private static PartIndex IndexOf(EngineModel engine, EarContext context)
    {
        int stamp = Stamp(engine, context);
        if (Indexes.TryGetValue(engine, out var built) && built.Stamp == stamp)
            return built.Index;
        var fresh = new Built(new PartIndex(engine, context.Taught), stamp);
        Indexes.AddOrUpdate(engine, fresh);
        return fresh.Index;
    }

    private static int Stamp(EngineModel engine, EarContext context)
    {
        var hash = new HashCode();
        foreach (var part in engine.Parts.Values)
            hash.Add(RuntimeHelpers.GetHashCode(part));
        foreach (var line in engine.Lines.Values)
            hash.Add(RuntimeHelpers.GetHashCode(line));
        foreach (var (word, term) in context.Taught.OrderBy(t => t.Key, StringComparer.Ordinal))
        {
            hash.Add(word, StringComparer.Ordinal);
            hash.Add(term, StringComparer.Ordinal);
        }

        return hash.ToHashCode();
    }
}
