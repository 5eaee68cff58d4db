using System.Collections.Immutable;

namespace Gudgeon.Planning.StripOrder;

/// <summary>
/// Beam search over changes of setup: in each round every kept state tries every change that frees a node, and the
/// most promising states are kept. Wider beams follow while the effort lasts; the best order of all is the answer.
/// </summary>
internal sealed class SequenceSearch
{
    private readonly StripWork work;
    private readonly StripGraph graph;
    private readonly SetupDemand demand;
    private int opened;

    public SequenceSearch(StripWork work, ImmutableArray<int> chosen)
    {
        this.work = work;
        graph = new StripGraph(work, chosen);
        demand = new SetupDemand(graph);
    }

    public List<int> Run(int effort)
    {
        StripState? best = null;
        for (var width = 1; opened < effort || best is null; width *= 4)
        {
            var found = Beam(width, best is null ? int.MaxValue : effort, best?.Seconds ?? long.MaxValue);
            if (found is not null && (best is null || found.Seconds < best.Seconds))
                best = found;
            if (width >= 4096)
                break;
        }
        return best!.Trail.Order();
    }

    private StripState? Beam(int width, int effort, long below)
    {
        StripState? best = null;
        var level = new List<(StripState State, long Guess)> { (new StripState(graph), 0) };
        while (level.Count > 0)
        {
            var next = new Dictionary<ulong, (StripState State, long Guess)>();
            foreach (var (state, _) in level)
            {
                if (state.IsWhole)
                {
                    if (state.Seconds < below)
                        (best, below) = (state, state.Seconds);
                    continue;
                }
                foreach (var node in Changes(state))
                {
                    if (opened++ > effort)
                        return best;
                    var child = state.Then(node);
                    var guess = child.Seconds + demand.Rest(child);
                    if (guess >= below || (next.TryGetValue(child.Key, out var known) && known.State.Seconds <= child.Seconds))
                        continue;
                    next[child.Key] = (child, guess);
                }
            }
            level = [.. next.Values
                .OrderBy(entry => entry.Guess).ThenByDescending(entry => entry.State.DoneCount).ThenBy(entry => entry.State.Hash)
                .Take(width)];
        }
        return best;
    }

    /// <summary>One ready node for each different change of setup.</summary>
    private List<int> Changes(StripState state)
    {
        var seen = new HashSet<long>();
        var changes = new List<int>();
        foreach (var node in state.Ready)
        {
            var key = 0L;
            for (var k = 0; k < work.Setups.Length; k++)
            {
                var label = work.Setups[k].LabelOf[node];
                key = key * 1000 + (label < 0 ? state.Labels[k] : label) + 1;
            }
            if (seen.Add(key))
                changes.Add(node);
        }
        return changes;
    }
}
