using Google.OrTools.Sat;
using Gudgeon.Planning.Scheduling;

namespace Gudgeon.Planning.Tests.Scheduling;

/// <summary>The yardstick: the plain CP-SAT model, intervals, precedence, one cumulative per resource, least makespan; nothing added.</summary>
internal static class PlainModel
{
    public static (bool Proven, int Makespan, int Bound, int[] Starts) Solve(Project project, int workers, double seconds)
    {
        var model = new CpModel();
        var horizon = project.Horizon;
        var starts = project.Tasks.Select(_ => model.NewIntVar(0, horizon, "")).ToArray();
        var intervals = project.Tasks.Select((task, index) => model.NewFixedSizeIntervalVar(starts[index], task.Duration, "")).ToArray();
        var makespan = model.NewIntVar(0, horizon, "");
        for (var task = 0; task < starts.Length; task++)
        {
            foreach (var next in project.Tasks[task].Successors)
                model.Add(starts[next] >= starts[task] + project.Tasks[task].Duration);
            model.Add(makespan >= starts[task] + project.Tasks[task].Duration);
        }
        for (var resource = 0; resource < project.Capacities.Length; resource++)
        {
            var cumulative = model.AddCumulative(project.Capacities[resource]);
            for (var task = 0; task < starts.Length; task++)
            {
                if (project.Tasks[task].Demands[resource] > 0)
                    cumulative.AddDemand(intervals[task], project.Tasks[task].Demands[resource]);
            }
        }
        model.Minimize(makespan);
        var solver = new CpSolver { StringParameters = FormattableString.Invariant($"num_workers:{workers} max_time_in_seconds:{seconds:0.000}") };
        var status = solver.Solve(model);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            return (false, int.MaxValue, (int)solver.BestObjectiveBound, []);
        return (status == CpSolverStatus.Optimal, (int)solver.ObjectiveValue, (int)Math.Ceiling(solver.BestObjectiveBound - 1e-6), [.. starts.Select(start => (int)solver.Value(start))]);
    }
}
