namespace Gudgeon.Planning.Scheduling;

/// <summary>
/// Two workers on one project: schedules are bred, delaying alternatives tried from both ends of time, and CP-SAT asked whether
/// anything shorter than the best exists. What one finds the others use at once.
/// </summary>
internal sealed class Race
{
    private const int Chunk = 500;
    private const long QuickSteps = 60_000;
    private const long LongSteps = 40_000_000;
    private const long SideSteps = 4_000_000;

    private readonly Project project;
    private readonly ProjectBounds bounds;
    private readonly Improver improver;
    private readonly TimeProvider clock;
    private readonly long begun;
    private readonly TimeSpan limit;
    private readonly CancellationToken cancel;
    private readonly Lock gate = new();
    private readonly Prover first;
    private readonly Prover second;
    private readonly bool isEnumerable;
    private volatile int makespan;
    private volatile int bound;

    public Race(Project project, ProjectBounds bounds, Improver improver, TimeSpan limit, long begun, TimeProvider clock, CancellationToken cancel)
    {
        this.project = project;
        this.bounds = bounds;
        this.improver = improver;
        this.limit = limit;
        this.clock = clock;
        this.begun = begun;
        this.cancel = cancel;
        Best = improver.Best.Starts;
        makespan = improver.Best.Makespan;
        bound = bounds.Least;
        first = new Prover(project, bounds);
        second = new Prover(project, bounds);
        isEnumerable = Delaying.Takes(project);
    }

    public int[] Best { get; private set; }

    public int Bound => bound;

    private bool IsOver => makespan <= bound || Left <= TimeSpan.Zero || cancel.IsCancellationRequested;

    private TimeSpan Left => limit - clock.GetElapsedTime(begun);

    private bool IsSmall => project.Tasks.Length <= 40;

    private bool IsMiddling => project.Tasks.Length <= 70;

    public void Run()
    {
        if (IsOver)
            return;
        using var stopping = cancel.Register(() =>
        {
            first.Stop();
            second.Stop();
        });
        // Most small projects end here, before any solver is loaded.
        if (isEnumerable && (Enumerate(project, bounds, false, QuickSteps) || Enumerate(project, bounds, true, QuickSteps)))
            return;
        var tight = isEnumerable ? SharedResources.Added(project, bounds, makespan - 1) : project;
        var tightBounds = new ProjectBounds(tight);
        Raise(tightBounds.Least);
        if (IsOver)
            return;
        var proving = Task.Factory.StartNew(() => ProveFirst(tight, tightBounds), TaskCreationOptions.LongRunning);
        if (IsSmall)
            Enumerate(tight, tightBounds, false, LongSteps);
        Breed();
        if (!IsOver)
        {
            Climb(second, ProverStyle.LearningBackwards, limit / 20);
            Prove(second, ProverStyle.LearningBackwards, limit);
        }
        // A stop asked for before the search has begun is lost, so it is asked again until the worker is home.
        while (!proving.Wait(TimeSpan.FromMilliseconds(2)))
            first.Stop();
        proving.GetAwaiter().GetResult();
    }

    /// <summary>On a large project the last step is seldom decided; half the time then goes to raising the bound that is shown.</summary>
    private void ProveFirst(Project tight, ProjectBounds tightBounds)
    {
        if (isEnumerable)
        {
            Enumerate(tight, tightBounds, true, SideSteps);
            if (!IsSmall)
                Enumerate(tight, tightBounds, false, SideSteps);
        }
        if (!IsMiddling)
        {
            Prove(first, ProverStyle.Learning, limit / 2);
            Climb(first, ProverStyle.Learning, limit / 4);
        }
        Prove(first, ProverStyle.Learning, limit);
    }

    /// <summary>Tries delaying alternatives; true when none is left, so that the best is proven.</summary>
    private bool Enumerate(Project tight, ProjectBounds tightBounds, bool isBackwards, long steps)
    {
        if (IsOver)
            return makespan <= bound;
        var turned = isBackwards ? tight.Reversed() : tight;
        Delaying? search = null;
        search = new Delaying(turned, isBackwards ? new ProjectBounds(turned) : tightBounds, project.Capacities.Length)
        {
            Found = starts => Take(isBackwards ? Turned(starts) : starts),
            IsOver = () =>
            {
                search!.Aim(makespan - 1);
                return IsOver;
            },
        };
        if (!search.Run(makespan - 1, steps))
            return false;
        Raise(makespan);
        first.Stop();
        return true;
    }

    private int[] Turned(int[] starts)
    {
        var ends = Enumerable.Range(0, starts.Length).Select(task => starts[task] + project.Tasks[task].Duration).ToArray();
        return [.. ends.Select(end => ends.Max() - end)];
    }

    private void Breed()
    {
        // Small projects run dry early, and then a second proof is worth more than more schedules.
        var patience = IsSmall ? 20_000L : IsMiddling ? 600_000L : long.MaxValue;
        for (var idle = 0L; !IsOver && idle < patience; idle += Chunk)
        {
            var target = makespan;
            if (target < improver.Best.Makespan)
                improver.Offer(Best);
            improver.Run(Chunk, bound);
            if (improver.Best.Makespan < target)
            {
                Take(improver.Best.Starts);
                idle = 0;
            }
            first.StopIfAnswered(makespan);
        }
    }

    /// <summary>Asks for something shorter than the best, until that is proven impossible or <paramref name="until"/> has passed.</summary>
    private void Prove(Prover prover, ProverStyle style, TimeSpan until)
    {
        while (!IsOver && Left > limit - until)
        {
            var length = makespan - 1;
            Settle(length, prover.Ask(length, style, (Left - (limit - until)).TotalSeconds, isSteady: false));
        }
        if (IsOver)
            (prover == first ? second : first).Stop();
    }

    /// <summary>Raises the bound by halving: lengths halfway to the best are shown impossible, or given up after a while.</summary>
    private void Climb(Prover prover, ProverStyle style, TimeSpan share)
    {
        var until = Left - share;
        for (var high = makespan - 1; !IsOver && Left > until && bound < high;)
        {
            var length = (bound + high) / 2;
            if (!Settle(length, prover.Ask(length, style, Math.Min((Left - until).TotalSeconds, share.TotalSeconds / 4), isSteady: false)))
                high = length;
        }
    }

    /// <summary>Takes in an answer; true when it raised the bound.</summary>
    private bool Settle(int length, (bool IsImpossible, int[]? Starts) answer)
    {
        if (answer.Starts is not null)
            Take(answer.Starts);
        if (answer.IsImpossible)
            Raise(length + 1);
        return answer.IsImpossible;
    }

    private void Raise(int least)
    {
        lock (gate)
            bound = Math.Max(bound, least);
    }

    private void Take(int[] starts)
    {
        var found = ProjectSolver.MakespanOf(project, starts);
        lock (gate)
        {
            if (found >= makespan)
                return;
            Best = starts;
            makespan = found;
        }
    }
}
