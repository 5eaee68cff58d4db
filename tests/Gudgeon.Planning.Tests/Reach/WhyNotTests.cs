using Gudgeon.Planning.Reach;

namespace Gudgeon.Planning.Tests.Reach;

public class WhyNotTests
{
    [Fact]
    public void WhyNot_names_the_fewest_reasons_on_random_networks()
    {
        var (blocked, contradicted) = (0, 0);
        for (var seed = 1; seed <= 3000; seed++)
        {
            var random = new Random(seed);
            var count = 2 + random.Next(9);
            var network = RandomNetworks.Small(random, count, withBlocks: true);
            var target = random.Next(count);
            var all = network.Nodes.Where(node => !node.IsDone).SelectMany(node => node.Blocks).Distinct().ToArray();
            var fewest = Enumerable.Range(0, 1 << all.Length)
                .Where(set => BruteForceReach.Best(network, target, block => (set & (1 << Array.IndexOf(all, block))) != 0) is not null)
                .Select(set => (int?)System.Numerics.BitOperations.PopCount((uint)set)).Min();

            var answer = WhyNot.Ask(network, target);

            Assert.True((fewest is null) == (answer.Contradiction is not null), $"seed {seed}");
            if (fewest is null)
            {
                contradicted++;
                continue;
            }
            Assert.True(fewest == answer.Reasons.Length, $"seed {seed}: fewest {fewest}, named {answer.Reasons.Length}");
            var named = answer.Reasons.Select(reason => reason.Block).ToHashSet();
            Assert.True(BruteForceReach.Best(network, target, named.Contains) is not null, $"seed {seed}: lifting what was named is not enough");
            foreach (var spared in named)
                Assert.True(BruteForceReach.Best(network, target, block => block != spared && named.Contains(block)) is null, $"seed {seed}: {spared} was not needed");
            Assert.All(answer.Reasons, reason => Assert.NotEmpty(reason.Nodes));
            blocked += named.Count > 0 ? 1 : 0;
        }
        Assert.True(blocked > 300 && contradicted > 100, $"the random cases are too tame: {blocked} blocked, {contradicted} contradicted");
    }

    [Fact]
    public void Contradiction_on_random_networks_is_one_and_comes_free_without_any_of_its_rules()
    {
        var met = 0;
        for (var seed = 1; seed <= 3000; seed++)
        {
            var random = new Random(seed);
            var count = 2 + random.Next(9);
            var network = RandomNetworks.Small(random, count, withBlocks: false);
            var target = random.Next(count);
            if (Contradiction.Smallest(network, target) is not { } found)
                continue;
            met++;
            Assert.True(SmallestStuckSet(network, target) == found.Nodes.Length, $"seed {seed}: not the smallest");
            Assert.True(NoneCanBeFirst(network, found.Nodes, found.Rules), $"seed {seed}: not stuck");
            for (var k = 0; k < found.Rules.Length; k++)
            {
                var fewer = found.Rules.RemoveAt(k);
                Assert.False(NoneCanBeFirst(network, found.Nodes, fewer), $"seed {seed}: rule {found.Rules[k]} is not needed");
            }
        }
        Assert.True(met > 100, $"only {met} contradictions met");
    }

    [Fact]
    public void Contradiction_of_three_rules_in_a_circle_names_the_three()
    {
        // Invented: the cover waits for the pump, the pump for the belt, the belt for the cover; the target waits for the cover.
        var network = new AndOrNetwork(
        [
            new AndOrNode("cover", 1) { Needs = [new Need(1, "entry 12"), new Need(4, "entry 3")] },
            new AndOrNode("pump", 1) { Needs = [new Need(2, "entry 15")] },
            new AndOrNode("belt", 1) { Choices = [new Choice([[0], [0, 4]], "entry 20")] },
            new AndOrNode("target", 1) { Needs = [new Need(0, "entry 1")] },
            new AndOrNode("free", 1),
        ]);
        var answer = WhyNot.Ask(network, 3);
        Assert.False(answer.CanBeReached);
        Assert.Equal([0, 1, 2], answer.Contradiction!.Nodes);
        Assert.Equal(["entry 12", "entry 15", "entry 20"], answer.Contradiction.Rules);
    }

    [Fact]
    public void WhyNot_of_what_can_be_reached_says_so()
    {
        Assert.True(WhyNot.Ask(new AndOrNetwork([new AndOrNode("a", 1)]), 0).CanBeReached);
    }

    /// <summary>With only these rules, one per node in the order given, no node of the set can come off before another of the set.</summary>
    private static bool NoneCanBeFirst(AndOrNetwork network, IReadOnlyList<int> set, IReadOnlyCollection<string> rules) =>
        set.All(index => network.Nodes[index].Needs.Any(need => rules.Contains(need.Rule) && set.Contains(need.Node))
            || network.Nodes[index].Choices.Any(choice => rules.Contains(choice.Rule) && choice.Alternatives.All(way => way.Any(set.Contains))));

    /// <summary>Among the nodes that the target waits for and that no order can free.</summary>
    private static int SmallestStuckSet(AndOrNetwork network, int target)
    {
        var stuck = new HashSet<int>();
        var stack = new Stack<int>([target]);
        while (stack.TryPop(out var index))
        {
            if (BruteForceReach.Best(network, index) is not null || !stuck.Add(index))
                continue;
            var node = network.Nodes[index];
            foreach (var below in node.Needs.Select(need => need.Node).Concat(node.Choices.SelectMany(choice => choice.Alternatives.SelectMany(way => way))))
                stack.Push(below);
        }
        int[] all = [.. stuck];
        return Enumerable.Range(1, (1 << all.Length) - 1)
            .Where(bits => all.Where((_, k) => (bits & (1 << k)) != 0).ToArray() is var set && set.All(index =>
                network.Nodes[index].Needs.Any(need => set.Contains(need.Node))
                || network.Nodes[index].Choices.Any(choice => choice.Alternatives.All(way => way.Any(set.Contains)))))
            .Min(bits => System.Numerics.BitOperations.PopCount((uint)bits));
    }
}
