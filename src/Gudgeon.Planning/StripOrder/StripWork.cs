using System.Collections.Immutable;
using Gudgeon.Planning.Reach;

namespace Gudgeon.Planning.StripOrder;

/// <summary>
/// Something that has to be set before a node can be undone, and costs time to change: the tool in hand, how the engine
/// lies on the stand, whether a second person is there, the wash bath.
/// </summary>
/// <param name="Name">What is set, in the owner's words.</param>
/// <param name="Labels">Its states.</param>
/// <param name="SecondsInto">Time to change into each state.</param>
/// <param name="LabelOf">For each node the state it asks for; -1 when any will do.</param>
/// <param name="Begins">The state at the start; -1 when nothing is set yet.</param>
public sealed record Setup(string Name, ImmutableArray<string> Labels, ImmutableArray<long> SecondsInto, ImmutableArray<int> LabelOf, int Begins = -1);

/// <summary>A network to strip and what has to be set for its nodes.</summary>
public sealed class StripWork
{
    public StripWork(AndOrNetwork network, IEnumerable<Setup> setups)
    {
        Network = network;
        Setups = [.. setups];
        foreach (var setup in Setups)
        {
            if (setup.LabelOf.Length != network.Nodes.Length || setup.SecondsInto.Length != setup.Labels.Length)
                throw new ArgumentException($"setup {setup.Name}: one state for each of the {network.Nodes.Length} nodes and one time for each of the {setup.Labels.Length} states are expected");
            if (setup.LabelOf.Append(setup.Begins).Any(label => label < -1 || label >= setup.Labels.Length) || setup.SecondsInto.Any(seconds => seconds < 0))
                throw new ArgumentException($"setup {setup.Name}: states run from 0 to {setup.Labels.Length - 1} (-1 for any), times from 0 up");
        }
    }

    public AndOrNetwork Network { get; }

    public ImmutableArray<Setup> Setups { get; }

    /// <summary>Time that setting things costs when nodes are undone in this order.</summary>
    public long SetupSeconds(IEnumerable<int> order)
    {
        var state = Setups.Select(setup => setup.Begins).ToArray();
        var seconds = 0L;
        foreach (var node in order)
        {
            for (var k = 0; k < state.Length; k++)
            {
                var label = Setups[k].LabelOf[node];
                if (label < 0 || label == state[k])
                    continue;
                seconds += Setups[k].SecondsInto[label];
                state[k] = label;
            }
        }
        return seconds;
    }

    public long WorkSeconds(IEnumerable<int> order) => order.Sum(node => Network.Nodes[node].CostSeconds);
}

/// <summary>
/// An order for everything that can come off. No order takes less than <see cref="BoundSeconds"/>.
/// <see cref="Left"/>: things that cannot come off as matters stand; ask why of each.
/// </summary>
public sealed record StripPlan(ImmutableArray<int> Order, long WorkSeconds, long SetupSeconds, long BoundSeconds, ImmutableArray<int> Left)
{
    public long TotalSeconds => WorkSeconds + SetupSeconds;

    /// <summary>How far above the least the plan can be at most, as a share of the whole.</summary>
    public double Gap => TotalSeconds == 0 ? 0 : (TotalSeconds - BoundSeconds) / (double)TotalSeconds;
}
