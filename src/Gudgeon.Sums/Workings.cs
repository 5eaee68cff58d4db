using System.Collections.Frozen;

namespace Gudgeon.Sums;

/// <summary>Makes workings: formula and source come from the catalogue, the figures from the sum that was done.</summary>
public static class Workings
{
    private static readonly FrozenDictionary<string, SumEntry> ById = SumCatalogue.All.ToFrozenDictionary(sum => sum.Id);

    /// <summary>The working of one figure.</summary>
    /// <param name="id">The sum's stable name in the catalogue; an unknown one is a bug.</param>
    /// <param name="what">What the figure is.</param>
    /// <param name="inputs">What went in.</param>
    /// <param name="result">What came out.</param>
    /// <param name="caution">What to beware of before acting on it, or null.</param>
    public static Working Of(string id, string what, IReadOnlyList<WorkingFigure> inputs, WorkingFigure result, string? caution = null) =>
        new(what, ById[id].Formula, inputs, result, ById[id].Source, caution);
}
