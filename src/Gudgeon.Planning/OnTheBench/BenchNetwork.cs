using System.Collections.Immutable;
using Gudgeon.Journal;
using Gudgeon.Planning.Reach;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>
/// The bench as a network of what must be undone before what: parts, lines, operations, open questions. What is done
/// already costs nothing; what cannot be done now carries its reason.
/// </summary>
public sealed class BenchNetwork
{
    private readonly IReadOnlyDictionary<string, int> numberOf;
    private readonly string? placeId;

    /// <param name="numberOf">Node of each id; without the place, where there is one.</param>
    /// <param name="placeId">The place to get at: the last node; null for none.</param>
    internal BenchNetwork(ImmutableArray<BenchWork> work, IReadOnlyDictionary<string, int> numberOf, AndOrNetwork network, string? placeId = null)
    {
        Work = work;
        this.numberOf = numberOf;
        Network = network;
        this.placeId = placeId;
    }

    public AndOrNetwork Network { get; }

    /// <summary>What each node is.</summary>
    public ImmutableArray<BenchWork> Work { get; }

    /// <summary>The node of a thing, or -1.</summary>
    public int IndexOf(string id) => numberOf.TryGetValue(id, out var number) ? number : id == placeId ? Work.Length - 1 : -1;

    /// <summary>The bench as it stands; open questions are taken as not to be counted on.</summary>
    public static BenchNetwork Of(Bench bench, Circumstances circumstances) => new BenchWays(bench, circumstances).Network();
}
