using Gudgeon.Planning.Reach;

namespace Gudgeon.Planning.Tests.Reach;

/// <summary>Invented networks from a seed: the tests' small ones and the bench's large ones.</summary>
internal static class RandomNetworks
{
    /// <summary>Small and nasty: circles, blocked nodes, done nodes, ties, empty ways.</summary>
    public static AndOrNetwork Small(Random random, int count, bool withBlocks)
    {
        var nodes = new List<AndOrNode>();
        var forwardOnly = random.Next(3) > 0;
        int Other(int self) => forwardOnly && random.Next(4) > 0
            ? random.Next(Math.Max(1, self))
            : random.Next(count);
        for (var index = 0; index < count; index++)
        {
            var needs = Enumerable.Range(0, random.Next(4) / 2)
                .Select(_ => Other(index)).Where(other => other != index).Distinct()
                .Select(other => new Need(other, $"n{index} needs n{other}")).ToArray();
            var choices = Enumerable.Range(0, random.Next(5) / 2)
                .Select(k => new Choice(
                    [.. Enumerable.Range(0, 1 + random.Next(3))
                        .Select(_ => Enumerable.Range(0, 1 + random.Next(2)).Select(_ => Other(index)).Distinct().ToImmutable())],
                    $"n{index} choice {k}"))
                .ToArray();
            nodes.Add(new AndOrNode($"n{index}", random.Next(6))
            {
                FluidLines = random.Next(3) / 2,
                ThingsOff = random.Next(2),
                Needs = [.. needs],
                Choices = [.. choices],
                IsDone = random.Next(12) == 0,
                Blocks = withBlocks && random.Next(4) == 0 ? [new Block(BlockKind.Other, $"reason {random.Next(3)}")] : [],
            });
        }
        return new AndOrNetwork(nodes);
    }

    /// <summary>
    /// Shaped like an engine: each part rests on a few parts further out, and some have two to four ways with parts of their own and shared parts;
    /// some ways lean on later parts, so that circles occur.
    /// </summary>
    public static AndOrNetwork Large(Random random, int count, int choiceCount)
    {
        var hasChoice = new bool[count];
        for (var left = choiceCount; left > 0;)
        {
            var pick = count / 10 + random.Next(count - count / 10);
            if (hasChoice[pick])
                continue;
            hasChoice[pick] = true;
            left--;
        }
        var nodes = new List<AndOrNode>();
        for (var index = 0; index < count; index++)
        {
            // Rests on the newer half more often, so that the network grows deep rather than flat.
            int Below() => index - 1 - Math.Min(random.Next(index), random.Next(index));
            var needs = index == 0 ? [] : Enumerable.Range(0, random.Next(3)).Select(_ => Below()).Distinct()
                .Select(other => new Need(other, $"n{index} needs n{other}")).ToArray();
            Choice[] choices = [];
            if (hasChoice[index])
            {
                var ways = Enumerable.Range(0, 2 + random.Next(3)).Select(_ => Enumerable.Range(0, 1 + random.Next(3))
                    .Select(_ => random.Next(20) == 0 ? random.Next(count) : Below()).Where(other => other != index).Distinct().ToImmutable())
                    .Where(way => way.Length > 0).ToArray();
                choices = [new Choice([.. ways.Length > 0 ? ways : [[index - 1]]], $"n{index} choice")];
            }
            nodes.Add(new AndOrNode($"n{index}", 60 * (1 + random.Next(40)))
            {
                FluidLines = random.Next(8) == 0 ? 1 : 0,
                ThingsOff = random.Next(5) == 0 ? 0 : 1,
                Needs = [.. needs],
                Choices = [.. choices],
            });
        }
        return new AndOrNetwork(nodes);
    }

    private static System.Collections.Immutable.ImmutableArray<int> ToImmutable(this IEnumerable<int> items) => [.. items];
}
