using System.Globalization;
using Google.OrTools.Sat;

namespace Gudgeon.Planning.Scheduling;

/// <summary>How a prover searches: constants only, because a misspelt solver parameter ends the process.</summary>
internal enum ProverStyle
{
    /// <summary>No linear relaxation: clause learning alone closes most proofs soonest.</summary>
    Learning,

    /// <summary>The same on the project run backwards, with an overload check: a second opinion with other luck.</summary>
    LearningBackwards,
}

/// <summary>
/// Asks CP-SAT one question: is there a schedule of at most so many units? "No" is a proof (destructive bound).
/// Time windows come from heads and tails; tasks that can never run side by side are told as no-overlap sets.
/// </summary>
internal sealed class Prover
{
    private readonly Project project;
    private readonly ProjectBounds bounds;
    private readonly List<int[]> exclusive;
    private volatile CpSolver? running;
    private volatile int asked = -1;

    public Prover(Project project, ProjectBounds bounds)
    {
        this.project = project;
        this.bounds = bounds;
        exclusive = ExclusiveSets();
    }

    /// <summary>Asks a search under way to end; harmless when none is. Lost if the search is only about to begin, so ask again.</summary>
    public void Stop() => running?.StopSearch();

    /// <summary>Stops a search whose question has been answered by a schedule of <paramref name="makespan"/>.</summary>
    public void StopIfAnswered(int makespan)
    {
        if (asked >= makespan)
            Stop();
    }

    /// <param name="length">Longest makespan allowed.</param>
    /// <param name="style">How to search.</param>
    /// <param name="limit">Solver's effort: seconds of the clock, or of its own count when <paramref name="isSteady"/>.</param>
    /// <param name="isSteady">Effort by the solver's own count, so that the outcome is the same on every machine.</param>
    /// <returns>Proven impossible; or starts; or neither.</returns>
    public (bool IsImpossible, int[]? Starts) Ask(int length, ProverStyle style, double limit, bool isSteady)
    {
        var count = project.Tasks.Length;
        var model = new CpModel();
        var backwards = style == ProverStyle.LearningBackwards;
        var starts = new IntVar[count];
        var intervals = new IntervalVar[count];
        for (var task = 0; task < count; task++)
        {
            var duration = project.Tasks[task].Duration;
            var (head, tail) = backwards ? (bounds.Tails[task], bounds.Heads[task]) : (bounds.Heads[task], bounds.Tails[task]);
            if (head + duration + tail > length)
                return (true, null);
            starts[task] = model.NewIntVar(head, length - tail - duration, "");
            intervals[task] = model.NewFixedSizeIntervalVar(starts[task], duration, "");
        }
        for (var task = 0; task < count; task++)
        {
            foreach (var next in project.Tasks[task].Successors)
            {
                var (first, second) = backwards ? (next, task) : (task, next);
                model.Add(starts[second] >= starts[first] + project.Tasks[first].Duration);
            }
        }
        for (var resource = 0; resource < project.Capacities.Length; resource++)
        {
            var cumulative = model.AddCumulative(project.Capacities[resource]);
            for (var task = 0; task < count; task++)
            {
                if (project.Tasks[task] is { Duration: > 0 } work && work.Demands[resource] > 0)
                    cumulative.AddDemand(intervals[task], work.Demands[resource]);
            }
        }
        foreach (var set in exclusive)
            model.AddNoOverlap(set.Select(task => intervals[task]));

        using var solver = new CpSolver
        {
            StringParameters = string.Create(CultureInfo.InvariantCulture,
                $"num_workers:1 linearization_level:0 use_disjunctive_constraint_in_cumulative:false {(backwards ? "use_overload_checker_in_cumulative:true random_seed:7 " : "")}{(isSteady ? "max_deterministic_time" : "max_time_in_seconds")}:{Math.Max(limit, 0.001):0.000}"),
        };
        asked = length;
        running = solver;
        var status = solver.Solve(model);
        running = null;
        asked = -1;
        return status switch
        {
            CpSolverStatus.Infeasible => (true, null),
            CpSolverStatus.Optimal or CpSolverStatus.Feasible => (false, [.. starts.Select((start, task) =>
                backwards ? length - (int)solver.Value(start) - project.Tasks[task].Duration : (int)solver.Value(start))]),
            _ => (false, null),
        };
    }

    /// <summary>Greedy sets of tasks of which no two can run together; together they name every such pair once or more.</summary>
    private List<int[]> ExclusiveSets()
    {
        var count = project.Tasks.Length;
        var sets = new List<int[]>();
        var named = new HashSet<(int, int)>();
        for (var one = 0; one < count; one++)
        {
            for (var other = one + 1; other < count; other++)
            {
                if (IsOrdered(one, other) || !Excludes(one, other) || named.Contains((one, other)))
                    continue;
                var set = new List<int> { one, other };
                for (var task = 0; task < count; task++)
                {
                    if (!set.Contains(task) && set.TrueForAll(member => Excludes(member, task)))
                        set.Add(task);
                }
                foreach (var a in set)
                {
                    foreach (var b in set)
                        named.Add((a, b));
                }
                sets.Add([.. set]);
            }
        }
        return sets;
    }

    private bool IsOrdered(int one, int other) => bounds.Reaches[one][other] || bounds.Reaches[other][one];

    private bool Excludes(int one, int other) =>
        project.Excludes(one, other) || (project.Tasks[one].Duration > 0 && project.Tasks[other].Duration > 0 && IsOrdered(one, other));
}
