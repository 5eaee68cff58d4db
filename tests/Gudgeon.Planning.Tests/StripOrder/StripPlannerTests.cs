using Gudgeon.Planning.Reach;
using Gudgeon.Planning.StripOrder;

namespace Gudgeon.Planning.Tests.StripOrder;

public class StripPlannerTests
{
    [Fact]
    public void Plan_of_random_small_strips_holds_and_its_bound_lies_below_brute_force()
    {
        var (same, all) = (0, 0);
        for (var seed = 1; seed <= 2000; seed++)
        {
            var random = new Random(seed);
            var count = 2 + random.Next(8);
            var work = RandomStrips.Small(random, count, withBlocks: seed % 3 == 0);
            var plan = StripPlanner.Plan(work, 500);
            var things = Enumerable.Range(0, count).Where(node => work.Network.Nodes[node] is { IsDone: false, ThingsOff: > 0 }).ToArray();
            var least = BruteForceStrip.Least(work, [.. things.Except(plan.Left)]);

            Assert.True(UndoOrder.FirstBreach(work.Network, plan.Order) is null, $"seed {seed}");
            Assert.True(things.Except(plan.Left).All(plan.Order.Contains), $"seed {seed}: a thing is left on");
            Assert.All(plan.Left, node => Assert.False(WhyNot.Ask(work.Network, node).CanBeReached));
            Assert.True(plan.BoundSeconds <= least && least <= plan.TotalSeconds, $"seed {seed}: bound {plan.BoundSeconds}, least {least}, plan {plan.TotalSeconds}");
            all++;
            same += plan.TotalSeconds == least ? 1 : 0;
        }
        // The set of least work is fixed before the order, so a few plans may lie above the least.
        Assert.True(same > 0.95 * all, $"only {same} of {all} plans are the least");
    }

    [Fact]
    public void Plan_batches_the_work_on_each_side_of_the_engine()
    {
        // Invented: six free parts, three to each lie of the engine; one turn is enough.
        var network = new AndOrNetwork(Enumerable.Range(0, 6).Select(k => new AndOrNode($"p{k}", 60)));
        var work = new StripWork(network, [new Setup("lies", ["up", "down"], [600, 600], [0, 1, 0, 1, 0, 1], 0)]);
        var plan = StripPlanner.Plan(work);
        Assert.Equal([0, 2, 4, 1, 3, 5], plan.Order);
        Assert.Equal((960, 960), (plan.TotalSeconds, plan.BoundSeconds));
    }

    [Fact]
    public void Plan_drains_before_it_opens_a_port_and_keeps_what_is_held()
    {
        var network = new AndOrNetwork(
        [
            new AndOrNode("hose", 120) { FluidLines = 1, Needs = [new Need(1, "drain before a port opens")] },
            new AndOrNode("op:drain-coolant", 900) { ThingsOff = 0 },
            new AndOrNode("eye bracket", 60) { Blocks = [new Block(BlockKind.Held, "the engine hangs from it")] },
        ]);
        var plan = StripPlanner.Plan(new StripWork(network, []));
        Assert.Equal([1, 0], plan.Order);
        Assert.Equal([2], plan.Left);
    }

    [Fact]
    public void Replan_after_a_thing_is_done_moves_nothing_else_without_cause()
    {
        var stayed = 0;
        for (var seed = 1; seed <= 20; seed++)
        {
            var work = RandomStrips.Large(seed, 120, 15);
            var plan = StripPlanner.Plan(work, 10_000);
            var replan = StripReplanner.After(With(work, plan.Order[0], node => node with { IsDone = true }), plan.Order);
            Assert.Null(UndoOrder.FirstBreach(With(work, plan.Order[0], node => node with { IsDone = true }).Network, replan.Plan.Order));
            Assert.Contains(replan.Moves, move => move.Node == plan.Order[0] && move.Why == "is done");
            // Either nothing else moves, or a fresh order saves enough and says so of each move.
            if (replan.Moves.Length == 1)
                Assert.Equal(plan.Order.Skip(1), replan.Plan.Order);
            else
                Assert.All(replan.Moves.Where(move => move.Why != "is done"), move => Assert.Matches("^the new order saves [0-9]{2,} minutes in all$", move.Why));
            stayed += replan.Moves.Length == 1 ? 1 : 0;
        }
        Assert.True(stayed >= 15, $"only {stayed} of 20 plans stayed as they were");
    }

    [Fact]
    public void Replan_after_a_new_access_rule_moves_what_waits_for_it_and_names_the_rule()
    {
        var network = new AndOrNetwork("abcd".Select(id => new AndOrNode(id.ToString(), 60)));
        var learned = new AndOrNetwork(network.Nodes.Select((node, k) => k == 1 ? node with { Needs = [new Need(2, "entry 7: under c")] } : node));
        var replan = StripReplanner.After(new StripWork(learned, []), [0, 1, 2, 3]);
        Assert.Equal([0, 2, 1, 3], replan.Plan.Order);
        Assert.Equal("waits for c (entry 7: under c)", replan.Moves.Single(move => move.Node == 1).Why);
    }

    [Fact]
    public void Replan_on_random_changes_always_holds()
    {
        for (var seed = 1; seed <= 300; seed++)
        {
            var random = new Random(seed);
            var count = 3 + random.Next(9);
            var work = RandomStrips.Small(random, count, withBlocks: false);
            var plan = StripPlanner.Plan(work, 100);
            var changed = random.Next(count);
            var next = With(work, changed, node => random.Next(3) switch
            {
                0 => node with { IsDone = true },
                1 => node with { Blocks = [new Block(BlockKind.Held, "held")] },
                _ => node with { Needs = [.. node.Needs, new Need((changed + 1) % count, "learned")] },
            });
            var replan = StripReplanner.After(next, plan.Order);
            Assert.True(UndoOrder.FirstBreach(next.Network, replan.Plan.Order) is null, $"seed {seed}");
            foreach (var node in plan.Order.Except(replan.Plan.Order))
                Assert.Contains(replan.Moves, move => move.Node == node && move.To == -1);
            foreach (var node in replan.Plan.Order.Except(plan.Order))
                Assert.Contains(replan.Moves, move => move.Node == node && move.From == -1);
        }
    }

    private static StripWork With(StripWork work, int changed, Func<AndOrNode, AndOrNode> change) =>
        new(new AndOrNetwork(work.Network.Nodes.Select((node, k) => k == changed ? change(node) : node)), work.Setups);
}
