using Gudgeon.Sums;

namespace Gudgeon.Journal;

/// <summary>A page of work is begun, through the gate that it closes.</summary>
/// <param name="Page">As gates name it.</param>
/// <param name="Override">Why the gate is closed over its findings; null to let it refuse.</param>
public sealed record BeginPage(string Page, string? Override = null) : Request
{
    /// <summary>The first turn on the starter.</summary>
    public const string FirstStart = "page:first-start";

    /// <summary>The job is closed, after running in.</summary>
    public const string Close = "page:close";

    public override Outcome<IReadOnlyList<Entry>> Decide(Bench bench)
    {
        if (bench.Gates.FirstOrDefault(g => g.ClosedBy.Contains(Page)) is not { } gate)
            return Outcome.Refused<IReadOnlyList<Entry>>(new Refusal("page", $"\"{Page}\"", "a page that a gate names", "Look at the list of gates"));
        var (closed, refusals) = GateDecision.Close(bench, gate, Page, Override);
        return closed is null ? Outcome.Refused<IReadOnlyList<Entry>>(refusals) : Outcome.Of<IReadOnlyList<Entry>>([closed, new PageBegun(Page)]);
    }
}
