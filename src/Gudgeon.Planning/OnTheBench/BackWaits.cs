using System.Globalization;
using Gudgeon.Engine;
using Gudgeon.Journal;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>What one part waits for before it can go back.</summary>
/// <param name="Part">Its id.</param>
/// <param name="Reasons">In words that follow "it waits:".</param>
/// <param name="Day">The day before which it cannot go back; null where a reason has no day: it is held.</param>
public sealed record BackWait(string Part, string Name, IReadOnlyList<string> Reasons, DateOnly? Day)
{
    /// <summary>How many other steps cannot be done before.</summary>
    public int HoldsUp { get; init; }
}

/// <summary>Which parts wait on their way back, for what and how long: the reasons of the refit with the days that were told.</summary>
internal static class BackWaits
{
    /// <param name="parts">The parts that go back, in the order in which they are told.</param>
    public static IEnumerable<BackWait> Of(Bench bench, DateTimeOffset now, IEnumerable<string> parts)
    {
        var waits = new RefitWaits(bench);
        var told = bench.Waits.Values.Select(r => (Waiting)r.Entry).Where(w => w.What is not null && !(w.Until <= now))
            .ToLookup(w => bench.Engine.Joints.TryGetValue(w.What!, out var joint) ? joint.Part : w.What!);
        foreach (var part in parts)
        {
            var lead = Lead(bench, part);
            var reasons = new List<(string Words, DateTimeOffset? Due)>();
            // What nobody took off yet lacks nothing yet; only what was told of it counts.
            foreach (var wait in bench.Part(part).IsOff ? waits.Reasons(part).Where(w => w.Kind is not (RefitWaitKind.Wash or RefitWaitKind.Studs)) : [])
                reasons.Add((wait.Words, wait.Kind == RefitWaitKind.Outside ? null : lead ?? wait.Due));
            if (reasons.Count == 0 && lead > now)
                reasons.Add(("something for it is on order or at a shop", lead));
            reasons.AddRange(told[part].Select(w => ($"waits for {w.For}", w.Until)));
            if (reasons.Count > 0)
                yield return new BackWait(part, bench.NameOf(part), [.. reasons.Select(r => Dated(r.Words, r.Due, now))], Latest(reasons.Select(r => r.Due), now));
        }
    }

    /// <summary>The day on which a part is back from its shop; null where none is known. What is not away is here since ever.</summary>
    public static DateOnly? BackFromShop(Bench bench, string part, DateTimeOffset now) =>
        bench.Part(part).Where.Spot == Spot.Shop ? Latest([Lead(bench, part) ?? bench.ShopDue(part)], now) : DateOnly.MinValue;

    /// <summary>When it most likely comes, as the owner told it.</summary>
    private static DateTimeOffset? Lead(Bench bench, string part) =>
        bench.Leads.TryGetValue(part, out var lead) ? lead.At.AddDays(lead.Told.LikelyDays) : null;

    private static string Dated(string words, DateTimeOffset? due, DateTimeOffset now) =>
        due is not { } day ? words
        : day <= now ? $"{words}; {Local(day, now)} is past"
        : $"{words}; there on {Local(day, now)}";

    private static string Local(DateTimeOffset day, DateTimeOffset now) => day.ToOffset(now.Offset).ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>The latest of the days; null where one is not known or is past without its thing having come.</summary>
    private static DateOnly? Latest(IEnumerable<DateTimeOffset?> dues, DateTimeOffset now)
    {
        var latest = DateOnly.MinValue;
        foreach (var due in dues)
        {
            if (due is not { } day || day <= now)
                return null;
            var date = DateOnly.FromDateTime(day.ToOffset(now.Offset).DateTime);
            latest = date > latest ? date : latest;
        }

        return latest;
    }
}
