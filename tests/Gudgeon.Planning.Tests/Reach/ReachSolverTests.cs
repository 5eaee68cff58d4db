using Google.OrTools.Sat;
using Gudgeon.Planning.Reach;

namespace Gudgeon.Planning.Tests.Reach;

public class ReachSolverTests
{
    // Ten-part disassembly with AND/OR precedence, literature instance "P10" (Güngör and Gupta; data read in a public
    // model file of a paper on stochastic U-shaped disassembly lines). Times and precedence seen there; the least times
    // to free one part were recomputed by enumerating all removal orders.
    private static readonly long[] Times = [14, 10, 12, 18, 23, 16, 20, 36, 14, 10];

    [Theory]
    [InlineData(1, 24)]
    [InlineData(2, 10)]
    [InlineData(3, 12)]
    [InlineData(4, 64)]
    [InlineData(5, 89)]
    [InlineData(6, 82)]
    [InlineData(7, 66)]
    [InlineData(8, 46)]
    [InlineData(9, 24)]
    [InlineData(10, 20)]
    public void Reach_of_one_part_in_the_ten_part_instance_takes_the_least_time(int part, long expected)
    {
        var answer = ReachSolver.Solve(TenParts(), [part - 1])!;
        Assert.Equal(expected, answer.CostSeconds);
        Assert.Equal(expected, answer.CostBoundSeconds);
        Assert.True(answer.IsProven);
        Assert.Equal(part - 1, answer.Order[^1]);
    }

    [Fact]
    public void Reach_agrees_with_brute_force_on_random_small_networks()
    {
        for (var seed = 1; seed <= 6000; seed++)
        {
            var random = new Random(seed);
            var count = 2 + random.Next(seed % 20 == 0 ? 13 : 8);
            var network = RandomNetworks.Small(random, count, withBlocks: seed % 3 == 0);
            var target = random.Next(count);
            var expected = BruteForceReach.Best(network, target);
            var answer = ReachSolver.Solve(network, [target]);
            Assert.True((expected is null) == (answer is null), $"seed {seed}: brute force {expected}, answer {answer}");
            if (answer is null)
                continue;
            Assert.True(expected == (answer.CostSeconds, answer.FluidLines, answer.ThingsOff), $"seed {seed}: brute force {expected}, answer {answer}");
            Assert.True(answer.IsProven, $"seed {seed}");
            Assert.True(UndoOrder.FirstBreach(network, answer.Order) is null, $"seed {seed}: order breaks a rule at {UndoOrder.FirstBreach(network, answer.Order)}");
            Assert.True(network.Nodes[target].IsDone || answer.Order.Contains(target), $"seed {seed}");
        }
    }

    [Theory]
    [InlineData(60, 20, 40)]
    [InlineData(200, 60, 12)]
    [InlineData(600, 120, 4)]
    public void Reach_agrees_with_the_CP_SAT_model_on_larger_networks(int count, int choices, int seeds)
    {
        for (var seed = 1; seed <= seeds; seed++)
        {
            var network = RandomNetworks.Large(new Random(seed), count, choices);
            var target = count - 1 - seed % 3;
            var answer = ReachSolver.Solve(network, [target])!;
            var model = ReachYardstick.Solve(network, target, workers: 1, seconds: 30);
            Assert.Equal(CpSolverStatus.Optimal, model.Status);
            Assert.True(
                (model.Cost, model.FluidLines, model.ThingsOff) == (answer.CostSeconds, answer.FluidLines, answer.ThingsOff) && answer.IsProven,
                $"seed {seed}: model {model}, answer {answer}");
            Assert.Null(UndoOrder.FirstBreach(network, answer.Order));
        }
    }

    [Fact]
    public void Reach_agrees_with_the_CP_SAT_model_where_there_are_many_circles()
    {
        for (var seed = 1; seed <= 150; seed++)
        {
            var random = new Random(seed);
            var count = 20 + random.Next(40);
            var network = RandomNetworks.Small(random, count, withBlocks: seed % 3 == 0);
            var target = random.Next(count);
            var answer = ReachSolver.Solve(network, [target]);
            var model = ReachYardstick.Solve(network, target, workers: 1, seconds: 30);
            Assert.True((answer is null) == (model.Status == CpSolverStatus.Infeasible), $"seed {seed}: model {model}, answer {answer}");
            if (answer is null)
                continue;
            Assert.Equal(CpSolverStatus.Optimal, model.Status);
            Assert.True(
                (model.Cost, model.FluidLines, model.ThingsOff) == (answer.CostSeconds, answer.FluidLines, answer.ThingsOff) && answer.IsProven,
                $"seed {seed}: model {model}, answer {answer}");
            Assert.Null(UndoOrder.FirstBreach(network, answer.Order));
        }
    }

    [Fact]
    public void Reach_with_equal_cost_parts_fewer_fluid_lines_then_keeps_more_on()
    {
        var network = new AndOrNetwork(
        [
            new AndOrNode("wet", 10) { FluidLines = 1 },
            new AndOrNode("dry, two things", 10) { ThingsOff = 2 },
            new AndOrNode("dry, one thing", 10),
            new AndOrNode("target", 5) { Choices = [new Choice([[0], [1], [2]], "target")] },
        ]);
        Assert.Equal([2, 3], ReachSolver.Solve(network, [3])!.Order);
    }

    [Fact]
    public void Reach_does_not_let_two_things_hold_each_other_up()
    {
        // a rests on b or x, b rests on a or y: the circle a-b costs nothing more but is no way.
        var network = new AndOrNetwork(
        [
            new AndOrNode("a", 1) { Choices = [new Choice([[1], [2]], "a")] },
            new AndOrNode("b", 1) { Choices = [new Choice([[0], [3]], "b")] },
            new AndOrNode("x", 50),
            new AndOrNode("y", 20),
            new AndOrNode("target", 1) { Needs = [new Need(0, "t a"), new Need(1, "t b")] },
        ]);
        var answer = ReachSolver.Solve(network, [4])!;
        Assert.Equal(23, answer.CostSeconds);
        Assert.Equal([3, 1, 0, 4], answer.Order);
    }

    [Fact]
    public void Reach_of_what_is_already_off_asks_for_nothing()
    {
        var answer = ReachSolver.Solve(new AndOrNetwork([new AndOrNode("a", 5) { IsDone = true }]), [0])!;
        Assert.Empty(answer.Order);
        Assert.Equal(0, answer.CostSeconds);
    }

    [Fact]
    public void Reach_stopped_early_shows_a_bound_below_its_cost()
    {
        var network = RandomNetworks.Large(new Random(5), 2000, 700);
        var answer = ReachSolver.Solve(network, [1999], steps: 1)!;
        Assert.True(answer.CostBoundSeconds <= answer.CostSeconds);
        Assert.Null(UndoOrder.FirstBreach(network, answer.Order));
    }

    [Fact]
    public void Reach_stops_soon_after_the_steps_it_was_given()
    {
        // A hard one: proving it takes some hundred steps.
        var random = new Random(390);
        var network = RandomNetworks.Small(random, 20 + random.Next(180), withBlocks: false);
        var proven = ReachSolver.Solve(network, [102])!;
        var answer = ReachSolver.Solve(network, [102], steps: 5)!;
        Assert.True(proven.IsProven && proven.Steps > 50, $"took {proven.Steps} steps");
        Assert.False(answer.IsProven);
        Assert.InRange(answer.Steps, 6, 15);
        Assert.InRange(proven.CostSeconds, answer.CostBoundSeconds, answer.CostSeconds);
        Assert.Null(UndoOrder.FirstBreach(network, answer.Order));
    }

    private static AndOrNetwork TenParts()
    {
        var needs = new Dictionary<int, int> { [7] = 8, [4] = 8, [5] = 7, [6] = 7 };
        int[] eitherTwoOrThree = [1, 8, 9, 10];
        return new AndOrNetwork(Times.Select((time, index) => new AndOrNode($"part {index + 1}", time)
        {
            Needs = needs.TryGetValue(index + 1, out var first) ? [new Need(first - 1, $"{index + 1} after {first}")] : [],
            Choices = eitherTwoOrThree.Contains(index + 1) ? [new Choice([[1], [2]], $"{index + 1} after 2 or 3")] : [],
        }));
    }
}
