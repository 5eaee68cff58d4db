using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>Which way a line flows.</summary>
public enum FlowWay
{
    /// <summary>From its first end to its second.</summary>
    Forward,
    Backward,

    /// <summary>Nothing that is known of this engine settles it.</summary>
    Undecided,
}

/// <summary>One line on the way.</summary>
/// <param name="Way">Which way it flows.</param>
/// <param name="IsWorkedOut">True when only the network fixes it: the pump on one side, the return on the other.</param>
public sealed record FlowLine(Line Line, FlowWay Way, bool IsWorkedOut);

/// <summary>One step of a way round: the lines that lead into a group of like parts.</summary>
/// <param name="Parts">Like parts: one, or all that are fed alike.</param>
/// <param name="By">Lines by which they are reached; empty at the start.</param>
/// <param name="IsOpen">True when one of these lines is parted.</param>
/// <param name="IsUndecided">True when nobody knows that it flows this way.</param>
/// <param name="Next">Where it goes on to.</param>
/// <param name="ClosesAt">True when the way has been there already: it is a way round.</param>
public sealed record TraceStep(IReadOnlyList<string> Parts, IReadOnlyList<Line> By, bool IsOpen, bool IsUndecided, IReadOnlyList<TraceStep> Next, bool ClosesAt);

/// <summary>A port with where it leads, both ways.</summary>
/// <param name="Down">With the flow.</param>
/// <param name="Up">Against the flow: where it comes from.</param>
public sealed record PortTrace(Port Port, string Family, TraceStep Down, TraceStep Up);

/// <summary>Follows a fluid from a port through the parts that pass it.</summary>
public static class Trace
{
    /// <summary>What the vehicle holds is beyond the book: radiator, tank and cooler are one part. Its wires are not followed.</summary>
    private const string Vehicle = "ext";

    private static readonly HashSet<string> pumps = ["oil-pump", "scavenge-pump", "water-pump", "lift-pump", "hp-pump", "fan", "turbo", "blower"];

    /// <summary>The trace from a port; null when no line ends there.</summary>
    public static PortTrace? From(Bench bench, string port)
    {
        var line = bench.Engine.Lines.Values.FirstOrDefault(l => !bench.Line(l.Id).IsAbsent && (l.From.Id == port || l.To.Id == port));
        if (line is null)
            return null;
        var family = Family.Of(line.Circuit);
        var flows = Lines(bench, family);
        var at = line.From.Id == port ? line.From : line.To;
        return new PortTrace(at, family, Follow(bench, flows, at.Part, down: true), Follow(bench, flows, at.Part, down: false));
    }

    /// <summary>Every line of a fluid with the way it flows: from the tables where they know, worked out from pump and return where these fix it.</summary>
    public static IReadOnlyList<FlowLine> Lines(Bench bench, string family)
    {
        var lines = bench.Engine.Lines.Values.Where(l => Family.Of(l.Circuit) == family && !bench.Line(l.Id).IsAbsent).ToArray();
        // Lines of the tables are written from the giving to the taking end; what the owner added has no way of its own.
        var known = lines.Where(l => l.Kind != "own").Concat(FlowGuide.Of(bench, family, lines)).Select(l => new FlowLine(l, FlowWay.Forward, false)).ToList();
        var finder = new WayFinder(known, part => bench.Engine.Parts.TryGetValue(part, out var found) && pumps.Contains(found.Kind));
        return [.. known, .. finder.Settle([.. lines.Where(l => l.Kind == "own")])];
    }

    private static (string From, string To) Ends(FlowLine flow) => flow.Way == FlowWay.Backward
        ? (flow.Line.To.Part, flow.Line.From.Part)
        : (flow.Line.From.Part, flow.Line.To.Part);

    private static TraceStep Follow(Bench bench, IReadOnlyList<FlowLine> flows, string start, bool down)
    {
        // Breadth first settles at which step each part is met; each is told once, and again only as the end of a way round.
        var met = new HashSet<string> { start };
        var root = new Grow([start], [], false, false);
        var queue = new Queue<Grow>([root]);
        while (queue.TryDequeue(out var step))
        {
            var ways = flows.SelectMany(f => Ways(f, step.Parts, down)).ToArray();
            foreach (var group in ways.GroupBy(w => (Kind: KindOf(bench, w.To), w.Flow.Way == FlowWay.Undecided)))
            {
                var fresh = group.Where(w => met.Add(w.To)).ToArray();
                var old = group.Where(w => !fresh.Contains(w) && !fresh.Any(f => f.To == w.To)).ToArray();
                foreach (var (some, closes) in new[] { (group.Where(w => fresh.Any(f => f.To == w.To)).ToArray(), false), (old, true) })
                {
                    // Back along the very line by which one came is no way round.
                    var lines = some.Select(w => w.Flow.Line).Distinct().Where(l => !closes || !step.By.Contains(l)).ToArray();
                    if (lines.Length == 0)
                        continue;
                    var next = new Grow([.. some.Select(w => w.To).Distinct()], lines, lines.Any(l => PortCheck.IsApart(bench, l)), group.Key.Item2) { Closes = closes };
                    step.Next.Add(next);
                    if (!closes && !(next.Parts[0] == Vehicle && lines[0].Circuit == Circuit.Electrical))
                        queue.Enqueue(next);
                }
            }
        }

        return root.Done();
    }

    private static string KindOf(Bench bench, string part) =>
        part == Vehicle ? Vehicle : bench.Engine.Parts.TryGetValue(part, out var found) && found.Kind != "own" ? found.Kind : part;

    private static IEnumerable<(FlowLine Flow, string To)> Ways(FlowLine flow, IReadOnlyList<string> from, bool down)
    {
        var (a, b) = Ends(flow);
        if (flow.Way == FlowWay.Undecided)
        {
            if (from.Contains(a))
                yield return (flow, b);
            if (from.Contains(b))
                yield return (flow, a);
        }
        else if (from.Contains(down ? a : b))
        {
            yield return (flow, down ? b : a);
        }
    }

    private sealed class Grow(IReadOnlyList<string> parts, IReadOnlyList<Line> by, bool open, bool undecided)
    {
        public IReadOnlyList<string> Parts => parts;
        public IReadOnlyList<Line> By => by;
        public bool Closes { get; init; }
        public List<Grow> Next { get; } = [];

        public TraceStep Done() => new(parts, by, open, undecided, [.. Next.Select(n => n.Done())], Closes);
    }
}
