using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>What to look at when a book has slept. Common practice, no source.</summary>
public static class AfterGap
{
    internal static readonly TimeSpan Night = TimeSpan.FromHours(8);
    private static readonly TimeSpan weeks = TimeSpan.FromDays(14);
    private static readonly TimeSpan months = TimeSpan.FromDays(60);

    /// <summary>When the last work was done; null for an empty book.</summary>
    public static DateTimeOffset? LastWork(Bench bench) => bench.Told.Count == 0 ? null : bench.Told.Max(r => r.At);

    /// <summary>The list, from how long the book slept and from how it was left. Empty while work goes on.</summary>
    public static IReadOnlyList<string> Of(Bench bench, DateTimeOffset now)
    {
        if (LastWork(bench) is not { } last || now - last < Night)
            return [];
        var slept = now - last;
        var list = new List<string>();
        list.AddRange(HalfWay(bench));
        if (slept >= Night)
            list.Add("Is it covered, and are bare faces oiled?");
        if (slept >= weeks)
            list.AddRange([
                "Fog the bores and turn the crank a part turn by hand, if both its ends are oiled and the belt or chain is known to be right.",
                "Oil the shells again if they are fitted, and note the stage.",
            ]);
        if (slept >= months)
            list.AddRange([
                "Lift one main cap and one rod cap and look; measure the length of their bolts before they are used again.",
                "Renew sealant whose bead was opened; old tubes are out of date.",
                "Look at the bolts of the stand, for rust, and for mice.",
                "Prime the oil again before it turns under power.",
            ]);
        return list;
    }

    /// <summary>What was left half way: things still in, joints half undone or half done, stages broken off, open ports.</summary>
    internal static IEnumerable<string> HalfWay(Bench bench)
    {
        foreach (var item in bench.Register.Values.Where(i => i.Left > 0))
            yield return $"Still in: {RegisterItem.Many(item.Left, item.Put.What)}{item.Put.Place(bench)}.";
        foreach (var joint in bench.Engine.Joints.Keys.Where(j => bench.IsTouched(j) && bench.Joint(j).Phase is JointPhase.HalfUndone or JointPhase.HalfDone))
            yield return $"Left half way: {bench.NameOf(joint)}, {bench.Joint(joint).In} of {bench.Joint(joint).Required?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "an unknown number"} in.";
        foreach (var finding in TighteningFindings.NotFinal(bench))
            yield return $"Not final: {finding.Where}, {finding.Met}. A stage that was broken off is done again for all.";
        foreach (var line in bench.Engine.Lines.Values.Where(l => bench.Line(l.Id) is { IsParted: true, IsAbsent: false, Caps.Count: 0 } && !l.IsPassage && l.Circuit is Circuit.OilPressure or Circuit.Fuel))
            yield return $"Open and not capped: {line.Name}.";
    }
}
