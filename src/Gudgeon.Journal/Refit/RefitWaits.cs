using System.Globalization;
using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>What a part waits for on its way back.</summary>
public enum RefitWaitKind
{
    /// <summary>It is away at a shop.</summary>
    Shop,

    /// <summary>The old one is scrapped and no new one has come.</summary>
    Scrap,

    /// <summary>It is renewed at every strip, and no new one is at hand.</summary>
    Renewal,

    /// <summary>It is back from a shop and wants washing.</summary>
    Wash,

    /// <summary>A figure of it is outside its limits.</summary>
    Outside,

    /// <summary>Studs of it came out and are screwed in again first.</summary>
    Studs,

    /// <summary>Fasteners of it are to get.</summary>
    Fasteners,
}

/// <summary>One reason why a part had better wait.</summary>
/// <param name="Words">In words that follow "it waits:".</param>
/// <param name="Due">When it is promised; null when nobody said.</param>
public sealed record RefitWait(RefitWaitKind Kind, string Words, DateTimeOffset? Due = null);

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
    public IReadOnlyList<string> Of(string part) => [.. Reasons(part).Select(r => r.Words)];

    /// <summary>Every reason; nothing when there is none.</summary>
    public IEnumerable<RefitWait> Reasons(string part)
    {
        var state = bench.Part(part);
        if (state.Where.Spot == Spot.Shop)
        {
            var due = bench.ShopDue(part);
            yield return new RefitWait(RefitWaitKind.Shop, $"{state.Where.Words(bench.NameOf)}{(due is { } day ? $", promised for {day.ToString("d MMMM", CultureInfo.InvariantCulture)}" : "")}", due);
        }

        if (state.Where.Spot == Spot.Scrap)
            yield return new RefitWait(RefitWaitKind.Scrap, "scrapped, and no new one has come");
        if (bench.Engine.Parts[part].Renewal == Renewal.EveryStrip && !state.Renewed)
            yield return new RefitWait(RefitWaitKind.Renewal, "it is renewed at every strip, and no new one is at hand");
        if (state.NeedsWash)
            yield return new RefitWait(RefitWaitKind.Wash, "back from a shop and not washed since");
        if (outside.TryGetValue(part, out var figure))
            yield return new RefitWait(RefitWaitKind.Outside, $"outside its limits: {figure}");
        foreach (var joint in bench.Engine.JointsOf(part).Select(id => bench.Engine.Joints[id]))
        {
            if (bench.Joint(joint.Id).Studs is { Out: > 0 } studs)
                yield return new RefitWait(RefitWaitKind.Studs, $"{StudCount.Many(studs.Out)} to screw in again first");
            if (BuyList.NeedOf(bench, joint) is { Need: > 0 } need && need.Need - (bench.Bought.GetValueOrDefault(joint.Id)?.AtHand ?? 0) is > 0 and var missing)
                yield return new RefitWait(RefitWaitKind.Fasteners, $"{missing} new {(missing == 1 ? "fastener" : "fasteners")} to get ({need.Why})");
        }
    }
}
