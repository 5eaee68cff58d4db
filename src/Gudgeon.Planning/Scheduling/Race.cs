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
        var proving = Task.Factory.StartNew(() => Prove(first, ProverStyle.Learning), TaskCreationOptions.LongRunning);
        Breed();
        if (!IsOver)
            Prove(second, ProverStyle.LearningBackwards);
        // A stop asked for before the search has begun is lost, so it is asked again until the worker is home.
        while (!proving.Wait(TimeSpan.FromMilliseconds(2)))
            first.Stop();
        proving.GetAwaiter().GetResult();
    }

    private void Breed()
    {
        // Small projects run dry early, and then a second proof is worth more than more schedules.
        var patience = project.Tasks.Length <= 40 ? 20_000L : project.Tasks.Length <= 70 ? 600_000L : long.MaxValue;
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

    private void Prove(Prover prover, ProverStyle style)
    {
        while (!IsOver)
        {
            var length = Volatile.Read(ref makespan) - 1;
            var (isImpossible, starts) = prover.Ask(length, style, Left.TotalSeconds, isSteady: false);
            if (starts is not null)
                Take(starts);
            if (!isImpossible)
                continue;
            lock (gate)
                Bound = Math.Max(Bound, length + 1);
        }
        (prover == first ? second : first).Stop();
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
