using Gudgeon.Planning.Reach;
using Gudgeon.Planning.StripOrder;
using Gudgeon.Planning.Tests.Reach;

namespace Gudgeon.Planning.Tests.StripOrder;

/// <summary>Invented strips: the random networks with tools, the lie of the engine and a second person.</summary>
internal static class RandomStrips
{
    public static StripWork Small(Random random, int count, bool withBlocks) => new(
        RandomNetworks.Small(random, count, withBlocks),
        [Labels(random, "tool", count, [3, 2, 4], 4, 0), Labels(random, "lie", count, [20, 10], 3, -1)]);

    /// <summary>Parts near each other in the network tend to share a tool and a lie, as on an engine.</summary>
    public static StripWork Large(int seed, int count, int choices)
    {
        var random = new Random(seed);
        var network = RandomNetworks.Large(random, count, choices);
        var tools = Enumerable.Range(0, 14).Select(k => $"tool {k}").ToArray();
        int Near(int node, int states, int anyInTen) => random.Next(10) < anyInTen ? -1 : (node * states / count + random.Next(3) + states - 1) % states;
        return new StripWork(network,
        [
            new Setup("tool", [.. tools], [.. tools.Select(_ => 60L)], [.. Enumerable.Range(0, count).Select(node => random.Next(5) == 0 ? random.Next(14) : Near(node, 14, 2))]),
            new Setup("engine lies", ["head up", "sump up", "on its side"], [600, 600, 600], [.. Enumerable.Range(0, count).Select(node => Near(node, 3, 6))], 0),
            new Setup("persons", ["alone", "two"], [0, 1800], [.. Enumerable.Range(0, count).Select(_ => random.Next(40) == 0 ? 1 : 0)], 0),
        ]);
    }

    private static Setup Labels(Random random, string name, int count, long[] seconds, int any, int begins) => new(
        name, [.. seconds.Select((_, k) => $"{name} {k}")], [.. seconds],
        [.. Enumerable.Range(0, count).Select(_ => random.Next(any) == 0 ? -1 : random.Next(seconds.Length))], begins);
}
