using Gudgeon.Journal;
using Gudgeon.Pictures;
using Gudgeon.Planning.OnTheBench;

namespace Gudgeon.Pages.Plan;

/// <summary>The steps of a way as a layered picture: like things of one layer in one box.</summary>
public static class WayPicture
{
    public static Layers Of(Bench bench, IReadOnlyList<ReachStep> steps)
    {
        var boxOf = steps.ToDictionary(s => s.Work.Id, s => BoxOf(bench, s));
        var items = steps.GroupBy(s => boxOf[s.Work.Id]).Select(g => new LayerItem(
            g.Key,
            Label(bench, [.. g.Select(s => s.Work)]),
            g.First().Layer,
            [.. g.SelectMany(s => s.After).Select(id => boxOf[id]).Where(id => id != g.Key).Distinct()]));
        return Layers.Of([.. items]);
    }

    private static string BoxOf(Bench bench, ReachStep step) => step.Work.Sort switch
    {
        WorkSort.Line => $"{step.Layer} lines",
        WorkSort.Part or WorkSort.Split when bench.Engine.Parts[step.Work.Id] is { Kind: not "own" } part => $"{step.Layer} {part.Kind}",
        _ => step.Work.Id,
    };

    private static string Label(Bench bench, IReadOnlyList<BenchWork> works) => works[0].Sort switch
    {
        WorkSort.Line => works.Count == 1 ? works[0].Name : $"part {works.Count} lines",
        WorkSort.Part or WorkSort.Split => bench.Several(works.Select(w => w.Id)),
        _ => works[0].Doing,
    };
}
