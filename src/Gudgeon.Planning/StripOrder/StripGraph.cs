using System.Collections.Immutable;
using Gudgeon.Planning.Calendar;
using Gudgeon.Planning.Reach;

namespace Gudgeon.Planning.StripOrder;

/// <summary>The network of a strip ready for fast walking: what is already done is counted in.</summary>
internal sealed class StripGraph
{
    public StripGraph(StripWork work, ImmutableArray<int> chosen)
    {
        Work = work;
        Nodes = [.. chosen.Order()];
        var nodes = work.Network.Nodes;
        IsChosen = new bool[nodes.Length];
        foreach (var node in chosen)
            IsChosen[node] = true;
        Wiring = new Wiring(
            [.. nodes.Select(node => node.IsDone ? [] : node.Needs.Select(need => need.Node).Distinct().ToArray())],
            [.. nodes.Select(node => node.IsDone ? [] : node.Choices.Select(choice => choice.Alternatives.Select(way => way.Distinct().ToArray()).ToArray()).ToArray())]);
        Met = new bool[Wiring.Owner.Length];
        Missing = new short[Wiring.Members.Length];
        for (var way = 0; way < Missing.Length; way++)
        {
            Missing[way] = (short)Wiring.Members[way].Count(member => !nodes[member].IsDone);
            Met[Wiring.ChoiceOf[way]] |= Missing[way] == 0;
        }
        Open = new short[nodes.Length];
        for (var node = 0; node < nodes.Length; node++)
            Open[node] = (short)(Wiring.Needs[node].Count(need => !nodes[need].IsDone) + Wiring.ChoicesOf[node].Count(choice => !Met[choice]));
        Wanted = [.. work.Setups.Select(setup => Enumerable.Range(0, setup.Labels.Length).Select(label => Nodes.Count(node => setup.LabelOf[node] == label)).ToArray())];
        var random = new SplitMix(1);
        Hashes = [.. nodes.Select(_ => random.Next())];
    }

    public StripWork Work { get; }

    /// <summary>The nodes to undo, by number.</summary>
    public int[] Nodes { get; }

    public bool[] IsChosen { get; }

    public Wiring Wiring { get; }

    public short[] Open { get; }

    public short[] Missing { get; }

    public bool[] Met { get; }

    public ulong[] Hashes { get; }

    /// <summary>Setup and state to how many nodes ask for it.</summary>
    public int[][] Wanted { get; }

    public bool Suits(int node, int[] labels)
    {
        for (var k = 0; k < labels.Length; k++)
        {
            var label = Work.Setups[k].LabelOf[node];
            if (label >= 0 && label != labels[k])
                return false;
        }
        return true;
    }
}
