using Gudgeon.Engine;
using Gudgeon.Journal;

namespace Gudgeon.Pages.Refit;

/// <summary>What the Refit page shows, worked out once a visit.</summary>
/// <param name="Now">Parts that can go on, the other way round than they came off.</param>
/// <param name="Better">Parts that could go on by their place, and why each had better wait.</param>
/// <param name="Waiting">Parts that wait for deeper ones.</param>
/// <param name="Joints">Joints that are open though their part is back.</param>
/// <param name="Lines">Lines that are parted though both ends are back.</param>
public sealed record RefitList(IReadOnlyList<Part> Now, IReadOnlyList<(Part Part, IReadOnlyList<string> Why)> Better, IReadOnlyList<RefitStep> Waiting, IReadOnlyList<Joint> Joints, IReadOnlyList<Line> Lines, IReadOnlyList<(Line Line, string Port)> Caps, IReadOnlyList<GateStand> Gates, IReadOnlyList<Operation> Done, int Back, int All)
{
    public static RefitList Of(Bench bench)
    {
        var steps = bench.WayBackOn();
        var engine = bench.Engine;
        var joints = engine.Joints.Values.Where(j => bench.IsTouched(j.Id) && bench.Joint(j.Id).IsOpen && IsHere(j.Part));
        var lines = engine.Lines.Values.Where(l => bench.Line(l.Id) is { IsParted: true, IsAbsent: false } && !l.IsPassage).ToArray();
        var touched = engine.Parts.Keys.Count(id => bench.Part(id).OffBy is not null);
        var waits = new RefitWaits(bench);
        var ready = steps.Where(s => s.IsReady).Select(s => (Part: engine.Parts[s.Part], Why: waits.Of(s.Part))).ToArray();
        return new RefitList(
            [.. ready.Where(r => r.Why.Count == 0).Select(r => r.Part)],
            [.. ready.Where(r => r.Why.Count > 0)],
            [.. steps.Where(s => !s.IsReady)],
            [.. joints.Where(j => bench.Part(j.Part).IsOn).Concat(joints.Where(j => !bench.Part(j.Part).IsOn))],
            [.. lines.Where(l => new[] { l.From, l.To }.All(p => p.IsOutside || IsHere(p.Part)))],
            [.. lines.SelectMany(l => bench.Line(l.Id).Caps.Select(port => (l, port)))],
            GateStand.Open(bench),
            [.. engine.Operations.Values.Where(o => bench.IsDone(o.Id))],
            touched - steps.Count, touched);

        bool IsHere(string part) => !engine.Parts.ContainsKey(part) || bench.Part(part) is { IsOn: true } or { IsRiding: true } or { IsAbsent: true };
    }
}
