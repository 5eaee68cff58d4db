namespace Gudgeon.Journal;

public sealed partial class Bench
{
    /// <summary>Pages that were begun, as gates name them.</summary>
    internal HashSet<string> Begun { get; } = [];

    /// <summary>Steps of the first start that are done, with their notes.</summary>
    internal Dictionary<string, string> StartSteps { get; } = [];

    /// <summary>The running-in as it was begun last, or null.</summary>
    public RunningInBegun? RunningIn { get; internal set; }

    public bool IsBegun(string page) => Begun.Contains(page);

    /// <summary>What was noted at a step, or null.</summary>
    public string? NoteOfStep(string step) => StartSteps.GetValueOrDefault(step);

    public bool IsStepDone(string step) => StartSteps.ContainsKey(step);
}
