using System.Globalization;
using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>Why a part that could go on by its place in the order had better wait.</summary>
public sealed class RefitWaits
{
    private readonly Bench bench;
    private readonly Dictionary<string, string> outside;

    public RefitWaits(Bench bench)
    {
        this.bench = bench;
        outside = bench.Readings.Count == 0 ? [] : new Assessor(bench).Started()
            .Where(a => a.Call == Call.Outside)
            .GroupBy(a => a.Place.Part)
            .ToDictionary(g => g.Key, g => g.Count() == 1 ? $"{g.First().Place.Name}, {g.First().Characteristic.Name}" : $"{g.Count()} figures");
    }

    /// <summary>Every reason, in words that follow "it waits:"; nothing when there is none.</summary>
    public IReadOnlyList<string> Of(string part)
    {
        var state = bench.Part(part);
        var reasons = new List<string>();
        if (state.Where.Spot == Spot.Shop)
            reasons.Add($"{state.Where.Words(bench.NameOf)}{(bench.ShopDue(part) is { } due ? $", promised for {due.ToString("d MMMM", CultureInfo.InvariantCulture)}" : "")}");
        if (state.Where.Spot == Spot.Scrap)
            reasons.Add("scrapped, and no new one has come");
        if (bench.Engine.Parts[part].Renewal == Renewal.EveryStrip && !state.Renewed)
            reasons.Add("it is renewed at every strip, and no new one is at hand");
        if (state.NeedsWash)
            reasons.Add("back from a shop and not washed since");
        if (outside.TryGetValue(part, out var figure))
            reasons.Add($"outside its limits: {figure}");
        foreach (var joint in bench.Engine.JointsOf(part).Select(id => bench.Engine.Joints[id]))
        {
            if (bench.Joint(joint.Id).Studs is { Out: > 0 } studs)
                reasons.Add($"{StudCount.Many(studs.Out)} to screw in again first");
            if (BuyList.NeedOf(bench, joint) is { Need: > 0 } need && need.Need - (bench.Bought.GetValueOrDefault(joint.Id)?.AtHand ?? 0) is > 0 and var missing)
                reasons.Add($"{missing} new {(missing == 1 ? "fastener" : "fasteners")} to get ({need.Why})");
        }

        return reasons;
    }
}
