namespace Gudgeon.Journal;

/// <summary>Findings that somebody lets stand, with a reason.</summary>
/// <param name="Number">Of the entry that says so.</param>
public sealed record ExceptionMade(Finding Finding, long Number, string Reason);

/// <summary>What may stay as it is for a reason, and what does.</summary>
public static class Exceptions
{
    /// <summary>What is left inside is never among them: a rag, a cap, a joint of which nobody knows whether it is tight.</summary>
    public static IReadOnlyList<string> Allowed { get; } =
    [
        FindingNames.PartOff, FindingNames.PartAway, FindingNames.PartScrapped, FindingNames.LineParted, FindingNames.OperationOpen, FindingNames.FluidShort,
        FindingNames.SmallShort, FindingNames.PartUsedAgain, FindingNames.OneUseAgain, FindingNames.CountShort, FindingNames.BoltStretched, FindingNames.NotWashed,
        FindingNames.JointOpen, FindingNames.StageDiffers, FindingNames.WrenchRange,
    ];

    /// <summary>Without those for which a reason stands.</summary>
    public static IEnumerable<Finding> Open(Bench bench, IEnumerable<Finding> findings) => findings.Where(f => Of(bench, f) is null);

    /// <summary>The exception that covers a finding, or null.</summary>
    public static ExceptionMade? Of(Bench bench, Finding finding) =>
        bench.Exceptions.TryGetValue((finding.Name, finding.About, finding.Met), out var made) ? new ExceptionMade(finding, made.Number, made.Reason) : null;

    /// <summary>Every exception that covers something that still stands.</summary>
    public static IReadOnlyList<ExceptionMade> Standing(Bench bench) => bench.Exceptions.Count == 0 ? [] :
    [
        .. AllBack.Everything(bench).Concat(BenchFindings.Everything(bench)).Select(f => Of(bench, f)).OfType<ExceptionMade>().DistinctBy(e => e.Number),
    ];
}
