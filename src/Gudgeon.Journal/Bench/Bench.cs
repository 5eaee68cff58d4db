using Gudgeon.Engine;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

/// <summary>
/// How things stand: folded from the entries, nothing else. Read by everyone, changed only by <see cref="Entry.Apply"/>.
/// Each subject adds its own part of this class in a file of its own.
/// </summary>
public sealed partial class Bench
{
    private readonly Dictionary<string, PartState> parts = [];
    private readonly Dictionary<string, JointState> joints = [];
    private readonly Dictionary<string, LineState> lines = [];
    private readonly HashSet<string> operationsDone = [];
    private readonly Dictionary<string, long> operationsDoneBy = [];
    private readonly Dictionary<string, bool> facts = [];
    private readonly List<Recorded> told = [];

    /// <summary>The engine as the tables built it and the owner corrected it.</summary>
    public EngineModel Engine { get; internal set; } = new();

    /// <summary>The owner's name for the book.</summary>
    public string Title { get; internal set; } = "";

    public bool IsStarted { get; internal set; }

    /// <summary>Entries that count, in order; struck ones are not here.</summary>
    public IReadOnlyList<Recorded> Told => told;

    public PartState Part(string id) => parts.GetValueOrDefault(id) ?? PartState.AsFound;

    public JointState Joint(string id) => joints.GetValueOrDefault(id) ?? JointState.AsFound;

    public LineState Line(string id) => lines.GetValueOrDefault(id) ?? LineState.AsFound;

    internal PartState ChangePart(string id) => State(parts, id);

    internal JointState ChangeJoint(string id) => State(joints, id);

    internal LineState ChangeLine(string id) => State(lines, id);

    public bool IsDone(string operation) => operationsDone.Contains(operation);

    /// <summary>The owner's answer to a fact of the tables, or null while nobody answered.</summary>
    public bool? Answer(string fact) => facts.TryGetValue(fact, out var yes) ? yes : null;

    public string NameOf(string id) =>
        Engine.Parts.TryGetValue(id, out var part) ? part.Name
        : Engine.Joints.TryGetValue(id, out var joint) ? JointName(joint)
        : Engine.Lines.TryGetValue(id, out var line) ? line.Name
        : Engine.Operations.TryGetValue(id, out var operation) ? operation.Name
        : id;

    /// <summary>A joint is called after the part that it lets go.</summary>
    public string JointName(Joint joint) =>
        Engine.JointsOf(joint.Part).Count > 1 && joint.FixedTo.Count > 0
            ? $"{NameOf(joint.Part)} to {NameOf(joint.FixedTo[0])} joint"
            : $"{NameOf(joint.Part)} joint";

    /// <summary>Number of the entry that did it last, or null.</summary>
    internal long? DoneBy(string operation) => operationsDoneBy.TryGetValue(operation, out var number) ? number : null;

    internal void SetDone(string operation, bool done, long number)
    {
        if (done)
        {
            operationsDone.Add(operation);
            operationsDoneBy[operation] = number;
        }
        else
        {
            operationsDone.Remove(operation);
        }
    }

    internal void SetFact(string fact, bool yes) => facts[fact] = yes;

    /// <summary>Takes one entry in. The caller has checked it.</summary>
    internal void Take(Recorded recorded)
    {
        recorded.Entry.Apply(this, recorded);
        told.Add(recorded);
    }

    /// <summary>Folds entries from nothing; an entry that cannot stand is left out and told.</summary>
    public static Bench Fold(IEnumerable<Recorded> entries, Action<Recorded, Refusal>? unfit = null)
    {
        var bench = new Bench();
        foreach (var recorded in entries)
        {
            if (recorded.Entry.Check(bench) is { } fault)
            {
                unfit?.Invoke(recorded, fault);
            }
            else
            {
                bench.Take(recorded);
            }
        }

        return bench;
    }

    private static T State<T>(Dictionary<string, T> map, string id)
        where T : new()
    {
        if (!map.TryGetValue(id, out var state))
        {
            map[id] = state = new T();
        }

        return state;
    }
}
