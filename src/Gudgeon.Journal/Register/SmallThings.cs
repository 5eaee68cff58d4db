using System.Globalization;
using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>One thing of the register of caps, plugs, rags and tape.</summary>
/// <param name="Number">Of the entry that put it in.</param>
/// <param name="Left">How many are still in.</param>
public sealed record RegisterItem(long Number, PutIn Put, int Left)
{
    internal static string Key(string what) => what.Trim().ToLowerInvariant();

    /// <summary><c>2 rags</c>.</summary>
    internal static string Many(int count, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {Key(what)}{(count == 1 || Key(what) is "tape" || Key(what).EndsWith('s') ? "" : "s")}");
}

/// <summary>Small parts of one sort at one joint.</summary>
public sealed record SmallCount(int Found, int Fitted);

/// <summary>The small things that kill engines: what was put in, what lies between castings, what has a place and a way round.</summary>
public static class SmallThings
{
    /// <summary>What makes a part one to look at in its place.</summary>
    public const Keeping Kept = Keeping.OwnPlace | Keeping.WayRound | Keeping.Mated;

    /// <summary>Everything of the register that is still in.</summary>
    public static IEnumerable<Finding> StillIn(Bench bench) => bench.Register.Values.Where(i => i.Left > 0).Select(i => StillIn(bench, i));

    internal static Finding StillIn(Bench bench, RegisterItem item) =>
        new(FindingNames.StillIn, item.Put.Part ?? "", $"{RegisterItem.Many(item.Left, item.Put.What)}{item.Put.Place(bench)}", "put in to keep dirt out, and still in", "Take it out and say so");

    /// <summary>Joints that are closed with fewer small parts than were found there.</summary>
    public static IEnumerable<Finding> Short(Bench bench) =>
        from joint in bench.Engine.Joints.Values
        where bench.IsTouched(joint.Id) && bench.Joint(joint.Id).Small.Count > 0
        where !bench.Part(joint.Part).IsOff && !bench.Part(joint.Part).IsAbsent && !bench.Joint(joint.Id).IsOpen
        from finding in Short(bench, joint)
        select finding;

    internal static IEnumerable<Finding> Short(Bench bench, Joint joint) =>
        from small in bench.Joint(joint.Id).Small
        where small.Value.Fitted < small.Value.Found
        select new Finding(FindingNames.SmallShort, joint.Id, bench.NameOf(joint.Id), $"{small.Value.Fitted} of {RegisterItem.Many(small.Value.Found, small.Key)} fitted", "Fit what is missing, or open it again and look");

    /// <summary>Parts that are renewed at every strip and went back without a new one: one finding for each kind.</summary>
    public static IEnumerable<Finding> UsedAgain(Bench bench) => bench.Engine.Parts.Values
        .Where(p => p.Renewal == Renewal.EveryStrip && bench.Part(p.Id) is { OffBy: not null, Renewed: false } state && (state.IsOn || state.IsRiding))
        .GroupBy(p => p.Kind)
        .Select(g => new Finding(FindingNames.PartUsedAgain, g.First().Id, bench.Several(g.Select(p => p.Id)), "back, and no new one came", "Fit a new one, or say why the old one is used again"));

    /// <summary>Parts that came back from a shop, went on, and were not washed.</summary>
    public static IEnumerable<Finding> NotWashed(Bench bench) => bench.Engine.Parts.Values
        .Where(p => bench.Part(p.Id) is { NeedsWash: true } state && (state.IsRiding || (state.IsOn && !bench.IsBase(p.Id))))
        .Select(p => new Finding(FindingNames.NotWashed, p.Id, p.Name, "back from a shop and not washed since", "Take it off again and wash it: shop grit cuts bearings"));

    /// <summary>Parts that were off, are back, and nobody has looked at their place and way round.</summary>
    public static IEnumerable<Part> ToLookAt(Bench bench) => bench.Engine.Parts.Values
        .Where(p => (p.Keeping & Kept) != 0 && bench.Part(p.Id) is { OffBy: not null } state && (state.IsOn || state.IsRiding) && !bench.IsWayRoundSeen(p.Id));

    /// <summary>One finding for each kind of part, with its number: sixteen valves are one line.</summary>
    public static IEnumerable<Finding> WayRound(Bench bench) => ToLookAt(bench).GroupBy(p => p.Kind).Select(g =>
        new Finding(FindingNames.WayRoundOpen, g.First().Id, bench.Several(g.Select(p => p.Id)), "back, and nobody has looked at place and way round", "Look at each and tick it"));
}
