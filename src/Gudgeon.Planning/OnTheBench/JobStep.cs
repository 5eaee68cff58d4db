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
    public static IReadOnlyList<JobStep> Strip(IEnumerable<ReachStep> steps) =>
        [.. steps.Where(s => s.Work.Sort is not WorkSort.Body).Select(s => new JobStep(s.Work.Id, Phase.Strip, s.Work, s.After))];

    /// <summary>Everything back: what still comes off, and what is off already.</summary>
    public static IReadOnlyList<JobStep> Refit(Bench bench, IReadOnlyList<JobStep> strip) => new WayBack(bench, strip).Steps();
}
