using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>
/// Works out which way the owner's own lines flow. Pressure falls from a pump's outlet to its inlet: with the loop cut at the pumps,
/// a branch that leaves one part and comes back to a part further down flows from the first to the second. Anything else stays undecided.
/// </summary>
internal sealed class WayFinder(IReadOnlyList<FlowLine> known, Func<string, bool> isPump)
{
    private readonly HashSet<string> met = [.. known.SelectMany(f => new[] { f.Line.From.Part, f.Line.To.Part })];

    private readonly ILookup<string, string> after = known.ToLookup(f => f.Line.From.Part, f => f.Line.To.Part);

    /// <summary>Every one of the open lines, settled or undecided.</summary>
    public IReadOnlyList<FlowLine> Settle(IReadOnlyList<Line> open)
    {
        var settled = new List<FlowLine>();
        var left = open.ToList();
        while (left.Count > 0)
        {
            var branch = Branch(left);
            left.RemoveAll(branch.Contains);
            settled.AddRange(Walk(branch) ?? branch.Select(l => new FlowLine(l, FlowWay.Undecided, false)));
        }

        return settled;
    }

    /// <summary>Lines that hang together by parts that only the owner's lines meet.</summary>
    private List<Line> Branch(List<Line> open)
    {
        var branch = new List<Line> { open[0] };
        for (var grown = true; grown;)
        {
            var parts = branch.SelectMany(Ends).Where(p => !IsFirm(p)).ToHashSet();
            var more = open.Where(l => !branch.Contains(l) && Ends(l).Any(parts.Contains)).ToArray();
            branch.AddRange(more);
            grown = more.Length > 0;
        }

        return branch;
    }

    /// <summary>The branch walked from its upper to its lower end; null when it has not exactly two, forks, or neither end is further down.</summary>
    private List<FlowLine>? Walk(List<Line> branch)
    {
        var ends = branch.SelectMany(Ends).Where(IsFirm).ToArray();
        if (ends.Length != 2 || branch.SelectMany(Ends).Where(p => !IsFirm(p)).GroupBy(p => p).Any(g => g.Count() != 2) || ends.Any(e => e == "ext" || isPump(e)))
            return null;
        var down = Reaches(ends[0], ends[1]);
        if (down == Reaches(ends[1], ends[0]))
            return null;
        var at = down ? ends[0] : ends[1];
        var walked = new List<FlowLine>();
        while (branch.FirstOrDefault(l => walked.All(w => w.Line != l) && Ends(l).Contains(at)) is { } line)
        {
            var forward = line.From.Part == at;
            walked.Add(new FlowLine(line, forward ? FlowWay.Forward : FlowWay.Backward, true));
            at = forward ? line.To.Part : line.From.Part;
        }

        return walked.Count == branch.Count ? walked : null;
    }

    private bool IsFirm(string part) => met.Contains(part) || part == "ext";

    private bool Reaches(string from, string to)
    {
        var seen = new HashSet<string> { from };
        var queue = new Queue<string>([from]);
        while (queue.TryDequeue(out var at))
        {
            if (at == to)
                return true;
            foreach (var next in after[at].Where(n => !isPump(n) && n != "ext" && seen.Add(n)))
                queue.Enqueue(next);
        }

        return false;
    }

    private static string[] Ends(Line line) => [line.From.Part, line.To.Part];
}
