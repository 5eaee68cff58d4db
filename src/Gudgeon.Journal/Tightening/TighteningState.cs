namespace Gudgeon.Journal;

/// <summary>One stage of one fastener, done.</summary>
/// <param name="Stage">From 1.</param>
/// <param name="Fastener">Its hole, from 1; 0 for a stage that is done once for the joint.</param>
/// <param name="Wrench">Id of the wrench, or null.</param>
/// <param name="Value">What the wrench was set to or the angle turned, when it was told.</param>
/// <param name="Entry">Number of the entry that holds it.</param>
/// <param name="Extension">What was on the end of the wrench, or null.</param>
public sealed record Tick(int Stage, int Fastener, string? Wrench, double? Value, long Entry, DateTimeOffset At, ExtensionSet? Extension = null)
{
    /// <summary>What the wrench was set to for a stage of that torque, N·m.</summary>
    internal double SettingFor(double torqueNm) => Value ?? (Extension?.Setting(torqueNm) is { Ok: true } set ? set.Value.NewtonMetres : torqueNm);

    /// <summary>What the fastener got, N·m.</summary>
    internal double Reached(double torqueNm) => Value is not { } set ? torqueNm : Extension?.Reaches(set) is { Ok: true } got ? got.Value.NewtonMetres : set;
}

/// <summary>How a joint is to be tightened, and how far that has come since it was last undone.</summary>
public sealed class TighteningState
{
    private readonly List<Tick> ticks = [];

    /// <summary>What the owner's manual says; null while nothing was typed.</summary>
    public ProcedureSet? Procedure { get; internal set; }

    /// <summary>How the fasteners sit, as the owner said; null while nobody did.</summary>
    public PatternChosen? Pattern { get; internal set; }

    /// <summary>What stands on the end of the wrench, or null.</summary>
    public ExtensionSet? Extension { get; internal set; }

    /// <summary>What to set on the scale for a stage, N·m, with what stands on the end of the wrench; null for a stage without a torque.</summary>
    public double? SettingOf(Stage stage) => stage is { HasTorque: true, Value: { } torque }
        ? Extension?.Setting(torque) is { Ok: true } set ? set.Value.NewtonMetres : torque
        : null;

    public IReadOnlyList<Tick> Ticks => ticks;

    /// <summary>Fasteners that were out and went in again, though they came from the engine, since the joint was last undone.</summary>
    public int UsedAgain { get; internal set; }

    /// <summary>An angle stage was broken off: all of them must be slackened, and one-use ones renewed.</summary>
    public bool IsSpoilt { get; internal set; }

    /// <summary>Threads were run free and blind holes blown out, since the joint was last undone.</summary>
    public bool HolesBlown { get; internal set; }

    public bool IsTicked(int stage, int fastener) => ticks.Any(t => t.Stage == stage && t.Fastener == fastener);

    /// <summary>Whether a stage is done on every one of so many fasteners.</summary>
    public bool IsDone(int stage, int fasteners) => Procedure is { } procedure && stage <= procedure.Stages.Count
        && (procedure.Stages[stage - 1].IsEach ? Enumerable.Range(1, fasteners).All(f => IsTicked(stage, f)) : IsTicked(stage, 0));

    /// <summary>The first stage that is not done, from 1; null when all are.</summary>
    public int? Next(int fasteners) => Procedure is null ? null
        : Enumerable.Range(1, Procedure.Stages.Count).Where(s => !IsDone(s, fasteners)).Select(s => (int?)s).FirstOrDefault();

    internal void Add(Tick tick) => ticks.Add(tick);

    internal void Redo(int stage) => ticks.RemoveAll(t => t.Stage == stage);

    /// <summary>The joint is undone: whatever was done to it counts no more.</summary>
    internal void Undo()
    {
        ticks.Clear();
        UsedAgain = 0;
        IsSpoilt = false;
        HolesBlown = false;
    }

    internal void Spoil()
    {
        ticks.Clear();
        IsSpoilt = true;
    }
}
