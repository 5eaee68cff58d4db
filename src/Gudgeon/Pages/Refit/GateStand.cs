using Gudgeon.Engine;
using Gudgeon.Journal;

namespace Gudgeon.Pages.Refit;

/// <summary>One gate as it stands: what will close it, and what keeps it open.</summary>
/// <param name="Closing">Id of the part or operation that closes it.</param>
public sealed record GateStand(Gate Gate, string Closing, IReadOnlyList<GateFinding> Findings)
{
    public bool IsFirm => Findings.Any(f => f.IsFirm);

    public int Looks => Findings.Count(f => f.Finding.Name == FindingNames.LookOpen);

    /// <summary>How it stands, for a line: clear, or what is open.</summary>
    public string Words => Findings.Count == 0 ? "clear" : $"{Findings.Count - Looks} open, {Looks} to look at";

    /// <summary>A gate before this part or operation closes it.</summary>
    public static GateStand Of(Bench bench, Gate gate, string? closing = null)
    {
        var closers = bench.Engine.Parts.Values.Where(p => gate.ClosedBy.Contains(p.Kind) || gate.ClosedBy.Contains(p.Id)).ToArray();
        var by = closing is not null && (closers.Any(p => p.Id == closing) || gate.ClosedBy.Contains(closing))
            ? closing
            : (closers.FirstOrDefault(p => bench.Part(p.Id).IsOff) ?? closers.FirstOrDefault())?.Id ?? gate.ClosedBy[0];
        return new GateStand(gate, by, GateCheck.Of(bench, gate, by));
    }

    /// <summary>Gates that the strip went through: what closes them is off, or was undone.</summary>
    public static IReadOnlyList<GateStand> Open(Bench bench) =>
        [.. bench.Gates.Where(g => g.ClosedBy.Any(id => IsOpen(bench, id))).Select(g => Of(bench, g))];

    private static bool IsOpen(Bench bench, string id) =>
        id.StartsWith("op:", StringComparison.Ordinal) ? bench.IsDone(id) : bench.Engine.Parts.Values.Any(p => (p.Kind == id || p.Id == id) && bench.Part(p.Id).IsOff);
}
