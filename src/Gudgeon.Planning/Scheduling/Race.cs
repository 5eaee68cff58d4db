namespace Gudgeon.Planning.Scheduling;

/// <summary>
/// Two workers on one project: one breeds schedules, the other asks whether anything shorter than the best exists.
/// What one finds the other uses at once. On small projects the breeder, once dry, turns into a second prover.
/// </summary>
internal sealed class Race
{
    private const int Chunk = 500;

    private readonly Project project;
    private readonly ProjectBounds bounds;
    private readonly Improver improver;
    private readonly TimeProvider clock;
    private readonly long begun;
    private readonly TimeSpan limit;
    private readonly Lock gate = new();
    private readonly Prover first;
    private readonly Prover second;
    private int makespan;

    public Race(Project project, ProjectBounds bounds, Improver improver, TimeSpan limit, TimeProvider clock)
    {
        this.project = project;
        this.bounds = bounds;
        this.improver = improver;
        this.limit = limit;
        this.clock = clock;
        begun = clock.GetTimestamp();
        Best = improver.Best.Starts;
        makespan = improver.Best.Makespan;
        Bound = bounds.Least;
        first = new Prover(project, bounds);
        second = new Prover(project, bounds);
    }

    public int[] Best { get; private set; }

    public int Bound { get; private set; }

    private bool IsOver => Volatile.Read(ref makespan) <= Bound || Left <= TimeSpan.Zero;

    private TimeSpan Left => limit - clock.GetElapsedTime(begun);

    public void Run()
    {
        if (IsOver)
            return;
        var proving = Task.Factory.StartNew(() => ProveFirst(), TaskCreationOptions.LongRunning);
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

    private bool IsSmall => project.Tasks.Length <= 70;

    /// <summary>On a large project the last step is seldom decided; half the time then goes to raising the bound that is shown.</summary>
    private void ProveFirst()
    {
        if (!IsSmall)
        {
            Prove(first, ProverStyle.Learning, limit / 2);
            Climb(first, ProverStyle.Learning, limit / 4);
        }
        Prove(first, ProverStyle.Learning, limit);
    }

    private void Breed()
    {
        // Small projects run dry early, and then a second proof is worth more than more schedules.
        var patience = project.Tasks.Length <= 40 ? 20_000L : IsSmall ? 600_000L : long.MaxValue;
        for (var idle = 0L; !IsOver && idle < patience; idle += Chunk)
        {
            var target = Volatile.Read(ref makespan);
            if (target < improver.Best.Makespan)
                improver.Offer(Best);
            improver.Run(Chunk, Bound);
            if (improver.Best.Makespan < target)
            {
                Take(improver.Best.Starts);
                idle = 0;
            }
            first.StopIfAnswered(Volatile.Read(ref makespan));
        }
    }

    /// <summary>Asks for something shorter than the best, until that is proven impossible or <paramref name="until"/> has passed.</summary>
    private void Prove(Prover prover, ProverStyle style, TimeSpan until)
    {
        while (!IsOver && Left > limit - until)
        {
            var length = Volatile.Read(ref makespan) - 1;
            Settle(length, prover.Ask(length, style, (Left - (limit - until)).TotalSeconds, isSteady: false));
        }
        if (IsOver)
            (prover == first ? second : first).Stop();
    }

    /// <summary>Raises the bound by halving: lengths halfway to the best are shown impossible, or given up after a while.</summary>
    private void Climb(Prover prover, ProverStyle style, TimeSpan share)
    {
        var until = Left - share;
        for (var high = Volatile.Read(ref makespan) - 1; !IsOver && Left > until && Bound < high;)
        {
            var length = (Bound + high) / 2;
            if (!Settle(length, prover.Ask(length, style, Math.Min((Left - until).TotalSeconds, share.TotalSeconds / 4), isSteady: false)))
                high = length;
        }
    }

    /// <summary>Takes in an answer; true when it raised the bound.</summary>
    private bool Settle(int length, (bool IsImpossible, int[]? Starts) answer)
    {
        if (answer.Starts is not null)
            Take(answer.Starts);
        if (!answer.IsImpossible)
            return false;
        lock (gate)
            Bound = Math.Max(Bound, length + 1);
        return true;
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
