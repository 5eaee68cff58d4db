using Google.OrTools.Sat;
using Gudgeon.Planning.Reach;

namespace Gudgeon.Planning.Tests.Reach;

/// <summary>
/// The same question as a CP-SAT model: one truth for each node and way, places in the order only where nodes
/// can stand in a circle (elsewhere any closed set has an order), one weighted objective.
/// </summary>
internal static class ReachYardstick
{
    public static (CpSolverStatus Status, long Cost, int FluidLines, int ThingsOff) Solve(AndOrNetwork network, int target, int workers, double seconds)
    {
        var model = new CpModel();
        var nodes = network.Nodes;
        var undone = nodes.Select(node => model.NewBoolVar(node.Id)).ToArray();
        var circle = Circles.Of(network);
        var place = nodes.Select((_, index) => circle[index].Size > 1 ? model.NewIntVar(0, circle[index].Size, "") : null).ToArray();
        for (var index = 0; index < nodes.Length; index++)
        {
            var node = nodes[index];
            if (node.IsDone)
                continue;
            if (node.Blocks.Length > 0)
                model.Add(undone[index] == 0);
            foreach (var need in node.Needs.Where(need => !nodes[need.Node].IsDone))
                Before(need.Node, index, undone[index]);
            foreach (var choice in node.Choices)
            {
                var ways = new List<ILiteral> { undone[index].Not() };
                foreach (var way in choice.Alternatives)
                {
                    var taken = model.NewBoolVar("");
                    ways.Add(taken);
                    foreach (var member in way.Where(member => !nodes[member].IsDone))
                        Before(member, index, taken);
                }
                model.AddBoolOr(ways);
            }
        }
        model.Add(undone[target] == 1);
        var open = Enumerable.Range(0, nodes.Length).Where(index => !nodes[index].IsDone).ToArray();
        var perFluid = open.Sum(index => nodes[index].ThingsOff) + 1L;
        var perSecond = (open.Sum(index => nodes[index].FluidLines) + 1L) * perFluid;
        model.Minimize(LinearExpr.WeightedSum(
            open.Select(index => undone[index]),
            open.Select(index => nodes[index].CostSeconds * perSecond + nodes[index].FluidLines * perFluid + nodes[index].ThingsOff)));
        var solver = new CpSolver { StringParameters = FormattableString.Invariant($"num_workers:{workers} max_time_in_seconds:{seconds:0.0}") };
        var status = solver.Solve(model);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            return (status, 0, 0, 0);
        var set = open.Where(index => solver.Value(undone[index]) == 1).Select(index => nodes[index]).ToArray();
        return (status, set.Sum(node => node.CostSeconds), set.Sum(node => node.FluidLines), set.Sum(node => node.ThingsOff));

        void Before(int first, int second, BoolVar when)
        {
            model.AddImplication(when, undone[first]);
            if (circle[first].Leader == circle[second].Leader && place[first] is { } one && place[second] is { } other)
                model.Add(one + 1 <= other).OnlyEnforceIf(when);
            else if (first == second)
                model.Add(when == 0);
        }
    }
}
