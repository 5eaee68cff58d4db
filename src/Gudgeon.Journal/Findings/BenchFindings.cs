using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>What the book holds against the work as it stands: things to mend now, whatever comes next.</summary>
public static class BenchFindings
{
    /// <summary>Slices of the bench add their own findings here, each a function of the bench alone.</summary>
    private static readonly List<Func<Bench, IEnumerable<Finding>>> sources = [Joints, Parts, Lines, Questions, Overrides, MeasureFindings.Of, TighteningFindings.Of, PortCheck.Wrong, SmallThings.Short, SmallThings.WayRound, SmallThings.UsedAgain, SmallThings.NotWashed, GateFindings.Skipped, GateFindings.Unlooked];

    public static IReadOnlyList<Finding> Of(Bench bench) => [.. Exceptions.Open(bench, Everything(bench))];

    /// <summary>The same with what stands for a reason.</summary>
    internal static IEnumerable<Finding> Everything(Bench bench) => sources.SelectMany(source => source(bench));

    /// <summary>Findings about a book: those of its bench, and entries that cannot be read.</summary>
    public static IReadOnlyList<Finding> Of(Book book) => book.Read(bench => (IReadOnlyList<Finding>)
    [
        .. book.Unreadable.Select(u => new Finding(FindingNames.EntryUnreadable, "", $"entry {u.Key}", u.Value, "Use the program version that wrote it, or strike it out")),
        .. Of(bench),
    ]);

    private static IEnumerable<Finding> Joints(Bench bench)
    {
        foreach (var joint in bench.Engine.Joints.Values.Where(j => j.IsCounted && bench.IsTouched(j.Id)))
        {
            var state = bench.Joint(joint.Id);
            var name = bench.NameOf(joint.Id);
            if (state.Short > 0)
            {
                yield return new(FindingNames.CountShort, joint.Id, name, $"{state.Required - state.Short} of {state.Required} fasteners, {ShortWords(state)}", "Find them, or get new ones");
            }

            if (state.IsOpen && state.Required is null)
            {
                yield return new(FindingNames.NotCounted, joint.Id, name, "fasteners out, not counted", "Count them and say where they are");
            }

            if (state.Phase == JointPhase.HalfUndone)
            {
                yield return new(FindingNames.HalfUndone, joint.Id, name, "half undone", "Take the rest out, or put these back");
            }

            var unplaced = state.Lots.Where(l => l.Where.Spot == Spot.Unplaced).Sum(l => l.Count);
            if (unplaced > 0)
            {
                yield return new(FindingNames.FastenersUnplaced, joint.Id, name, $"{unplaced} fasteners out, no place said", "Say where they are");
            }
        }
    }

    private static string ShortWords(JointState state) => string.Join(", ", state.Lots
        .Where(l => l.Where.Spot is Spot.Lost or Spot.Broken or Spot.Unaccounted)
        .Select(l => $"{l.Count} {l.Where.Words(id => id)}"));

    private static IEnumerable<Finding> Parts(Bench bench) =>
        from part in bench.Engine.Parts.Values
        let state = bench.Part(part.Id)
        where state.Where.Spot == Spot.Unplaced
        select new Finding(FindingNames.PartUnplaced, part.Id, part.Name, "off, no place said", "Say where it is");

    private static IEnumerable<Finding> Lines(Bench bench) =>
        from line in bench.Engine.Lines.Values
        let state = bench.Line(line.Id)
        // An exhaust pipe finds its own way back; everything else can be put on the wrong port.
        where state is { IsParted: true, IsAbsent: false, Tag: "" } && line.Circuit != Circuit.Exhaust
        select new Finding(FindingNames.LineUntagged, line.Id, line.Name, state.IsImplied ? "parted with what came off, no tag" : "parted, no tag", "Tag both halves with the same number");

    private static IEnumerable<Finding> Questions(Bench bench) =>
        from question in bench.OpenQuestions.Values
        let asked = (Asked)question.Entry
        select new Finding(FindingNames.QuestionOpen, asked.What ?? "", $"entry {question.Number}", $"\"{asked.Text}\": {asked.Why}", "Answer it");

    private static IEnumerable<Finding> Overrides(Bench bench) =>
        from recorded in bench.Overrides
        let entry = (GateOverridden)recorded.Entry
        select new Finding(FindingNames.GateOverridden, entry.Gate, bench.Gate(entry.Gate)?.Name ?? entry.Gate, $"closed all the same, because {entry.Reason}", $"It stands in the book, entry {recorded.Number}: look at it again before the first start");
}
