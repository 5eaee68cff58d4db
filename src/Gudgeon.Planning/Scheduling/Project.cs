using System.Collections.Immutable;

namespace Gudgeon.Planning.Scheduling;

/// <summary>A task of a project: whole time units, what it takes of each resource while it runs, which tasks follow it.</summary>
public sealed record ProjectTask(int Duration, ImmutableArray<int> Demands, ImmutableArray<int> Successors);

/// <summary>
/// Tasks with precedence and renewable resources of constant capacity; sought are starts with the least makespan
/// (the resource-constrained project scheduling problem).
/// </summary>
public sealed class Project
{
    public Project(IEnumerable<ProjectTask> tasks, IEnumerable<int> capacities)
    {
        Tasks = [.. tasks];
        Capacities = [.. capacities];
        for (var task = 0; task < Tasks.Length; task++)
            Check(task);
        Order = Topological();
        Predecessors = [.. Reverse().Select(list => list.ToImmutableArray())];
    }

    public ImmutableArray<ProjectTask> Tasks { get; }

    public ImmutableArray<int> Capacities { get; }

    /// <summary>An order in which every task follows its predecessors.</summary>
    public ImmutableArray<int> Order { get; }

    public ImmutableArray<ImmutableArray<int>> Predecessors { get; }

    /// <summary>All tasks one after the other: no schedule needs longer.</summary>
    public int Horizon => Tasks.Sum(task => task.Duration);

    /// <summary>The same with time running the other way: successors come first.</summary>
    public Project Reversed() => new(Tasks.Select((task, index) => task with { Successors = Predecessors[index] }), Capacities);

    /// <summary>True when two tasks want more of a resource together than there is: they never run at once. What takes no time excludes nothing.</summary>
    internal bool Excludes(int one, int other)
    {
        var (a, b) = (Tasks[one], Tasks[other]);
        if (a.Duration == 0 || b.Duration == 0)
            return false;
        for (var resource = 0; resource < Capacities.Length; resource++)
        {
            if (a.Demands[resource] + b.Demands[resource] > Capacities[resource])
                return true;
        }
        return false;
    }

    private void Check(int number)
    {
        var task = Tasks[number];
        if (task.Duration < 0 || task.Demands.Length != Capacities.Length)
            throw new ArgumentException($"task {number + 1}: a duration of zero or more and one demand for each of the {Capacities.Length} resources are expected");
        for (var resource = 0; resource < Capacities.Length; resource++)
        {
            if (task.Demands[resource] < 0 || (task.Duration > 0 && task.Demands[resource] > Capacities[resource]))
                throw new ArgumentException($"task {number + 1}: takes {task.Demands[resource]} of resource {resource + 1}, which has {Capacities[resource]}; it can never run");
        }
        foreach (var next in task.Successors)
        {
            if (next < 0 || next >= Tasks.Length)
                throw new ArgumentException($"task {number + 1}: is followed by task {next + 1}; there are {Tasks.Length}");
        }
    }

    private ImmutableArray<int> Topological()
    {
        var open = new int[Tasks.Length];
        foreach (var next in Tasks.SelectMany(task => task.Successors))
            open[next]++;
        var order = ImmutableArray.CreateBuilder<int>(Tasks.Length);
        for (var task = 0; task < open.Length; task++)
        {
            if (open[task] == 0)
                order.Add(task);
        }
        for (var k = 0; k < order.Count; k++)
        {
            foreach (var next in Tasks[order[k]].Successors)
            {
                if (--open[next] == 0)
                    order.Add(next);
            }
        }
        if (order.Count < Tasks.Length)
            throw new ArgumentException($"task {Array.FindIndex(open, left => left > 0) + 1}: lies on or after a circle of precedence; no order exists");
        return order.ToImmutable();
    }

    private List<int>[] Reverse()
    {
        var lists = Tasks.Select(_ => new List<int>()).ToArray();
        for (var task = 0; task < Tasks.Length; task++)
        {
            foreach (var next in Tasks[task].Successors.Distinct())
                lists[next].Add(task);
        }
        return lists;
    }
}

/// <summary>Starts of all tasks, checked or not: see <see cref="FirstFault"/>.</summary>
public sealed record ProjectSchedule(ImmutableArray<int> Starts)
{
    public int Makespan(Project project) =>
        Starts.Length == 0 ? 0 : Starts.Select((start, task) => start + project.Tasks[task].Duration).Max();

    /// <summary>Null when the schedule is feasible, else what is wrong with it, found without the help of any solver.</summary>
    public string? FirstFault(Project project)
    {
        if (Starts.Length != project.Tasks.Length)
            return $"{Starts.Length} starts for {project.Tasks.Length} tasks";
        for (var task = 0; task < Starts.Length; task++)
        {
            if (Starts[task] < 0)
                return $"task {task + 1} starts at {Starts[task]}, before the project";
            var end = Starts[task] + project.Tasks[task].Duration;
            foreach (var next in project.Tasks[task].Successors)
            {
                if (Starts[next] < end)
                    return $"task {next + 1} starts at {Starts[next]}, before task {task + 1} ends at {end}";
            }
        }
        for (var resource = 0; resource < project.Capacities.Length; resource++)
        {
            // Use can only rise at a start, so starts are the only instants to look at.
            foreach (var instant in Starts.Distinct())
            {
                var used = project.Tasks
                    .Where((task, index) => Starts[index] <= instant && instant < Starts[index] + task.Duration)
                    .Sum(task => task.Demands[resource]);
                if (used > project.Capacities[resource])
                    return $"at {instant} resource {resource + 1} is used {used} times of {project.Capacities[resource]}";
            }
        }
        return null;
    }
}
