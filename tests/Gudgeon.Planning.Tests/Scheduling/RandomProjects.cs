using Gudgeon.Planning.Scheduling;

namespace Gudgeon.Planning.Tests.Scheduling;

/// <summary>
/// Our own invented projects, made with the parameters of the public generator's idea (Kolisch, Sprecher and Drexl 1995, from memory):
/// network complexity (arcs per task), resource factor (share of resources a task uses), resource strength
/// (0: capacity just lets each task run; 1: the earliest schedule fits).
/// </summary>
internal static class RandomProjects
{
    public static Project Make(int seed, int jobs, double complexity, double factor, double strength, int resources = 4)
    {
        var random = new Random(seed);
        var count = jobs + 2;
        var follows = Network(random, count, complexity);
        var durations = Enumerable.Range(0, count).Select(task => task == 0 || task == count - 1 ? 0 : 1 + random.Next(10)).ToArray();
        var demands = durations.Select(duration => Demands(random, duration, factor, resources)).ToArray();
        var capacities = Enumerable.Range(0, resources).Select(resource =>
        {
            var least = demands.Max(demand => demand[resource]);
            var most = Math.Max(least, EarliestPeak(follows, durations, demands, resource));
            return Math.Max(1, least + (int)Math.Round(strength * (most - least)));
        }).ToArray();
        return new Project(durations.Select((duration, task) => new ProjectTask(duration, [.. demands[task]], [.. follows[task].Order()])), capacities);
    }

    /// <summary>The grid of the public sets: 3 complexities, 4 factors, 4 strengths.</summary>
    public static IEnumerable<(double Complexity, double Factor, double Strength)> Grid() =>
        from complexity in new[] { 1.5, 1.8, 2.1 }
        from factor in new[] { 0.25, 0.5, 0.75, 1.0 }
        from strength in new[] { 0.2, 0.5, 0.7, 1.0 }
        select (complexity, factor, strength);

    private static SortedSet<int>[] Network(Random random, int count, double complexity)
    {
        var follows = Enumerable.Range(0, count).Select(_ => new SortedSet<int>()).ToArray();
        var before = new int[count];
        void Arc(int from, int to)
        {
            if (follows[from].Add(to))
                before[to]++;
        }
        for (var task = 1; task <= 3; task++)
            Arc(0, task);
        for (var task = 4; task < count - 1; task++)
            Arc(Pick(task), task);
        for (var tries = 0; tries < 100_000 && follows.Sum(list => list.Count) < complexity * count - 3; tries++)
        {
            var from = 1 + random.Next(count - 5);
            var to = from + 1 + random.Next(count - 2 - from);
            if (to < 4 || to >= count - 1 || follows[from].Count >= 3 || before[to] >= 3 || Reaches(from, to))
                continue;
            Arc(from, to);
        }
        for (var task = 1; task < count - 1; task++)
        {
            if (follows[task].Count == 0)
                Arc(task, count - 1);
        }
        return follows;

        int Pick(int task)
        {
            while (true)
            {
                var from = 1 + random.Next(task - 1);
                if (follows[from].Count < 3)
                    return from;
            }
        }

        bool Reaches(int from, int to) => from == to || follows[from].Any(next => next <= to && Reaches(next, to));
    }

    private static int[] Demands(Random random, int duration, double factor, int resources)
    {
        var demand = new int[resources];
        if (duration == 0)
            return demand;
        var used = (int)Math.Floor(factor * resources + random.NextDouble());
        foreach (var resource in Enumerable.Range(0, resources).OrderBy(_ => random.Next()).Take(Math.Max(1, used)))
            demand[resource] = 1 + random.Next(10);
        return demand;
    }

    private static int EarliestPeak(SortedSet<int>[] follows, int[] durations, int[][] demands, int resource)
    {
        var start = new int[durations.Length];
        for (var task = 0; task < durations.Length; task++)
        {
            foreach (var next in follows[task])
                start[next] = Math.Max(start[next], start[task] + durations[task]);
        }
        return start.Max(instant => Enumerable.Range(0, durations.Length)
            .Where(task => start[task] <= instant && instant < start[task] + durations[task])
            .Sum(task => demands[task][resource]));
    }
}
