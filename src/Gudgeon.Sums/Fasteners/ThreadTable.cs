using System.Collections.Frozen;
using System.Globalization;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Fasteners;

/// <summary>The sizes that a bolt from a shelf has: ISO metric coarse and fine, unified coarse and fine.</summary>
/// <remarks>
/// Formula: none, a table; the diameters follow from <see cref="ScrewThread"/>.
/// Units: designation in, millimetres inside.
/// Range: M3 to M36, 1/4 to 1 in.
/// Errors: none; a size that is not listed is refused, not guessed.
/// Source: ISO 261 and ISO 262 (pitches; M6 to M14 read in reproductions, the others from memory), ASME B1.1 (UNC, UNF).
/// </remarks>
public static class ThreadTable
{
    private static readonly (double Diameter, double[] Pitches)[] Metric =
    [
        (3, [0.5]), (4, [0.7]), (5, [0.8]), (6, [1]), (7, [1]), (8, [1.25, 1]), (10, [1.5, 1.25, 1]),
        (12, [1.75, 1.5, 1.25]), (14, [2, 1.5]), (16, [2, 1.5]), (18, [2.5, 2, 1.5]), (20, [2.5, 2, 1.5]),
        (22, [2.5, 2, 1.5]), (24, [3, 2]), (27, [3, 2]), (30, [3.5, 2]), (33, [3.5, 2]), (36, [4, 3]),
    ];

    private static readonly (string Size, double Inch, int Coarse, int Fine)[] Inch =
    [
        ("1/4", 0.25, 20, 28), ("5/16", 0.3125, 18, 24), ("3/8", 0.375, 16, 24), ("7/16", 0.4375, 14, 20),
        ("1/2", 0.5, 13, 20), ("9/16", 0.5625, 12, 18), ("5/8", 0.625, 11, 18), ("3/4", 0.75, 10, 16),
        ("7/8", 0.875, 9, 14), ("1", 1, 8, 12),
    ];

    private static readonly (ScrewThread Thread, string[] Names)[] Listed = [.. Rows()];

    private static readonly FrozenDictionary<string, ScrewThread> ByName =
        Listed.SelectMany(row => row.Names.Select(name => (Name: Key(name), row.Thread))).ToFrozenDictionary(x => x.Name, x => x.Thread);

    /// <summary>Every listed thread, coarse before fine at each size.</summary>
    public static IReadOnlyList<ScrewThread> All { get; } = [.. Listed.Select(row => row.Thread)];

    /// <summary>
    /// The thread of a designation: "M10" (its coarse pitch), "M10x1.25", "7/16-20", "7/16-20 UNF". Case, blanks and × do not matter.
    /// </summary>
    public static Outcome<ScrewThread> Find(string designation)
    {
        ArgumentNullException.ThrowIfNull(designation);
        return ByName.TryGetValue(Key(designation), out var thread)
            ? Outcome.Of(thread)
            : Outcome.Refused<ScrewThread>(new Refusal("thread", designation, "a listed size such as M10, M10x1.25 or 7/16-20",
                "Measure the outside diameter and the pitch and give both"));
    }

    private static IEnumerable<(ScrewThread Thread, string[] Names)> Rows()
    {
        foreach (var (diameter, pitches) in Metric)
        {
            foreach (var pitch in pitches)
            {
                var full = string.Create(CultureInfo.InvariantCulture, $"M{diameter}x{pitch}");
                var coarse = string.Create(CultureInfo.InvariantCulture, $"M{diameter}");
                var isCoarse = pitch == pitches[0];
                yield return (ScrewThread.Of(isCoarse ? coarse : full, ThreadFamily.Metric, Length.FromMillimetres(diameter), Length.FromMillimetres(pitch)).Value, isCoarse ? [coarse, full] : [full]);
            }
        }

        foreach (var (size, inch, coarse, fine) in Inch)
        {
            yield return UnifiedRow(size, inch, coarse, "UNC");
            yield return UnifiedRow(size, inch, fine, "UNF");
        }
    }

    private static (ScrewThread, string[]) UnifiedRow(string size, double inch, int perInch, string series)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"{size}-{perInch}");
        return (ScrewThread.Of(name, ThreadFamily.Unified, Length.FromInches(inch), Length.FromInches(1) / perInch).Value, [name, $"{name} {series}", $"{size} {series}"]);
    }

    private static string Key(string text) =>
        string.Concat(text.ToLowerInvariant().Replace('×', 'x').Where(c => !char.IsWhiteSpace(c)));
}
