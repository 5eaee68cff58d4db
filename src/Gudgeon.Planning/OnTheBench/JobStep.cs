using System.Collections.Immutable;
using Gudgeon.Journal;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>Which part of the whole job a piece of work belongs to.</summary>
public enum Phase
{
    Strip,

    /// <summary>Cleaning, measuring, deciding, and what is away meanwhile.</summary>
    Between,
    Refit,
}

/// <summary>One thing to do in its place in the order, with what it follows.</summary>
internal sealed record JobStep(string Id, Phase Phase, BenchWork Work, IReadOnlyList<string> After)
{
    private const double RefitLeast = 1.5;
    private const double RefitMost = 2;

    /// <summary>Minutes of this phase: refitting takes one and a half to two times as long as taking off.</summary>
    public Span Minutes => Phase == Phase.Refit && Work.Minutes.IsGuess ? new Span(Work.Minutes.Low * RefitLeast, Work.Minutes.High * RefitMost, true) : Work.Minutes;
}

/// <summary>The order of the whole job, step by step: what still comes off, then everything back the other way round.</summary>
internal static class JobOrder
{
    private const string Back = "back:";

    public static IReadOnlyList<JobStep> Strip(IEnumerable<ReachStep> steps) =>
        [.. steps.Where(s => s.Work.Sort is not WorkSort.Body).Select(s => new JobStep(s.Work.Id, Phase.Strip, s.Work, s.After))];

    /// <summary>What comes off is put back in the reverse order; what is off already follows as the bench says.</summary>
    public static IReadOnlyList<JobStep> Refit(Bench bench, IReadOnlyList<JobStep> strip)
    {
        var doing = strip.Where(s => s.Work.Sort is WorkSort.Part or WorkSort.Split or WorkSort.Line or WorkSort.Operation).ToArray();
        var ids = doing.Select(s => s.Id).ToHashSet();
        var users = doing.SelectMany(s => s.After.Where(ids.Contains).Select(first => (First: first, Then: s.Id))).ToLookup(x => x.First, x => Back + x.Then);
        var back = new List<JobStep>();
        foreach (var step in doing.Reverse())
            back.Add(new JobStep(Back + step.Id, Phase.Refit, step.Work, [.. users[step.Id]]));
        back.AddRange(OffAlready(bench, ids));
        return back;
    }

    private static List<JobStep> OffAlready(Bench bench, HashSet<string> stripped)
    {
        var steps = bench.WayBackOn().ToDictionary(s => s.Part, s => s.WaitsFor);
        var deeper = stripped.Where(bench.Engine.Access.ContainsKey)
            .SelectMany(id => bench.Engine.Access[id].First.Concat(bench.Engine.Access[id].Choices.SelectMany(c => c.Sets).SelectMany(s => s)).Select(n => (Outer: n.Id, Deeper: id)))
            .ToLookup(x => x.Outer, x => Back + x.Deeper);
        var ordered = new List<JobStep>();
        var placed = new HashSet<string>();
        while (steps.FirstOrDefault(s => !placed.Contains(s.Key) && s.Value.All(w => placed.Contains(w) || !steps.ContainsKey(w))) is { Key: { } part } next)
        {
            placed.Add(part);
            var work = new BenchWork(part, WorkSort.Part, bench.NameOf(part), WorkMinutes.OfPart(bench, bench.Engine.Parts[part]));
            ordered.Add(new JobStep(Back + part, Phase.Refit, work, [.. next.Value.Where(steps.ContainsKey).Select(w => Back + w), .. deeper[part].Distinct()]));
        }

        return ordered;
    }
}
