using Gudgeon.Planning.Reach;

namespace Gudgeon.Planning.Tests.Reach;

/// <summary>Which nodes can stand in a circle with each other: strongly connected parts, by walking both ways from each node.</summary>
internal static class Circles
{
    public static (int Leader, int Size)[] Of(AndOrNetwork network)
    {
        var below = network.Nodes.Select(node => node.Needs.Select(need => need.Node)
            .Concat(node.Choices.SelectMany(choice => choice.Alternatives.SelectMany(way => way))).Distinct().ToArray()).ToArray();
        var above = below.Select(_ => new List<int>()).ToArray();
        for (var index = 0; index < below.Length; index++)
        {
            foreach (var other in below[index])
                above[other].Add(index);
        }
        var result = new (int Leader, int Size)[below.Length];
        Array.Fill(result, (-1, 0));
        for (var index = 0; index < below.Length; index++)
        {
            if (result[index].Leader >= 0)
                continue;
            var down = Walk(index, node => below[node]);
            down.IntersectWith(Walk(index, node => above[node]));
            foreach (var member in down)
                result[member] = (index, down.Count);
        }
        return result;
    }

    private static HashSet<int> Walk(int from, Func<int, IEnumerable<int>> next)
    {
        var seen = new HashSet<int> { from };
        var stack = new Stack<int>([from]);
        while (stack.TryPop(out var node))
        {
            foreach (var other in next(node))
            {
                if (seen.Add(other))
                    stack.Push(other);
            }
        }
        return seen;
    }
}
