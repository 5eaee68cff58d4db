using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(PartOff), "part-off")]
[JsonDerivedType(typeof(PartOn), "part-on")]
[JsonDerivedType(typeof(PartPut), "part-put")]
[JsonDerivedType(typeof(PartSent), "part-sent")]
[JsonDerivedType(typeof(PartReturned), "part-returned")]
[JsonDerivedType(typeof(PartScrapped), "part-scrapped")]
[JsonDerivedType(typeof(PartRenewed), "part-renewed")]
public abstract partial record Entry;

/// <summary>A part came off, with what was still joined to it; or was split from a unit on the bench.</summary>
/// <param name="With">Parts that came along, still joined.</param>
/// <param name="To">Where it went; null when nobody said.</param>
/// <param name="From">The unit that it was split from on the bench; null when it came off the engine.</param>
public sealed record PartOff(string Part, IReadOnlyList<string> With, string? To = null, string? From = null) : Entry
{
    public override IEnumerable<string> About() => With.Prepend(Part);

    public override Refusal? Check(Bench bench) =>
        bench.NoSuchPart(Part)
        ?? With.Select(bench.NoSuchPart).FirstOrDefault(f => f is not null)
        ?? bench.NoPlaceForPart(Part, To)
        ?? (bench.Part(Part) is { IsOn: true } or { IsRiding: true }
            ? null
            : new Refusal(bench.NameOf(Part), $"it is off already, {bench.Part(Part).Where.Words(bench.NameOf)}", "a part that is still on", "Strike out the entry that took it off, or say where you put it"));

    public override string Words(Bench bench)
    {
        var split = From is not null ? $" the {bench.NameOf(From)}" : "";
        var with = With.Count > 0 ? $" with {bench.Several(With)} still on it" : "";
        var to = Whereabouts.Place(To) is { Spot: not Spot.Unplaced } place ? $"; it is {place.Words(bench.NameOf)}" : "";
        return $"{bench.NameOf(Part)} off{split}{with}{to}";
    }

    internal override void Apply(Bench bench, Recorded recorded) =>
        bench.MoveOff(Part, With, Whereabouts.Place(To), recorded);
}

/// <summary>A part is back where it is carried, with what rides on it. Its joints are told by their fasteners.</summary>
public sealed record PartOn(string Part) : Entry
{
    public override IEnumerable<string> About() => [Part];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchPart(Part) is { } missing)
        {
            return missing;
        }

        var state = bench.Part(Part);
        return state.Where.Spot switch
        {
            Spot.Engine or Spot.Riding => new Refusal(bench.NameOf(Part), $"it is {state.Where.Words(bench.NameOf)} already", "a part that is off", "Tell its fasteners instead, or strike out the entry that put it back"),
            Spot.Shop => new Refusal(bench.NameOf(Part), $"it is {state.Where.Words(bench.NameOf)}", "a part that is at hand", "Say that it came back first"),
            Spot.Scrap => new Refusal(bench.NameOf(Part), "it was scrapped and no new one has come", "a part that is at hand", "Record the new one first"),
            Spot.Absent => new Refusal(bench.NameOf(Part), "this engine does not have it", "a part of this engine", "Strike out the entry that said so if it does"),
            _ => null,
        };
    }

    public override string Words(Bench bench) => $"{bench.NameOf(Part)} back on";

    internal override void Apply(Bench bench, Recorded recorded) => bench.MoveOn(Part);
}

/// <summary>A part that is off was put somewhere.</summary>
public sealed record PartPut(string Part, string To) : Entry
{
    public override IEnumerable<string> About() => [Part];

    public override Refusal? Check(Bench bench) =>
        bench.NoSuchPart(Part) ?? bench.NotAtHand(Part) ?? bench.NoPlaceForPart(Part, To)
        ?? (Whereabouts.Place(To).Spot == Spot.Place ? null : new Refusal(bench.NameOf(Part), $"\"{To}\" as its place", "a bag, tray, box, shelf or other place", "Say where you put it"));

    public override string Words(Bench bench) => $"{bench.NameOf(Part)} put {Whereabouts.Place(To).Words(bench.NameOf)}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.ChangePart(Part).Where = Whereabouts.Place(To);
}

/// <summary>A part went away to a shop.</summary>
/// <param name="Due">When it is promised, or null.</param>
public sealed record PartSent(string Part, string Shop, string Work, DateTimeOffset? Due = null) : Entry
{
    public override IEnumerable<string> About() => [Part];

    // The block carries all the rest and never comes off anything: it goes as it is, with what is still on it.
    public override Refusal? Check(Bench bench) => bench.NoSuchPart(Part) ?? (bench.IsBase(Part) && bench.Part(Part).IsOn ? null : bench.NotAtHand(Part))
        ?? (string.IsNullOrWhiteSpace(Shop) ? new Refusal(bench.NameOf(Part), "no shop", "the name of where it went", "Say where you sent it") : null);

    public override string Words(Bench bench) =>
        $"{bench.NameOf(Part)} sent to {Shop}{(Work.Length > 0 ? $" for {Work}" : "")}{(Due is { } due ? $", due {due:d MMM yyyy}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        if (bench.IsBase(Part))
        {
            bench.MoveBaseAway(Part);
        }

        bench.ChangePart(Part).Where = Whereabouts.AtShop(Shop.Trim());
        bench.Away[Part] = this;
    }
}

/// <summary>A part came back from a shop; what was done to it is measured before it counts.</summary>
public sealed record PartReturned(string Part, string Shop, string? To = null) : Entry
{
    public override IEnumerable<string> About() => [Part];

    public override Refusal? Check(Bench bench) => bench.NoSuchPart(Part) ?? bench.NoPlaceForPart(Part, To)
        ?? (bench.Part(Part).Where.Spot == Spot.Shop ? null : new Refusal(bench.NameOf(Part), $"it is {bench.Part(Part).Where.Words(bench.NameOf)}", "a part that is away at a shop", "Say where it is now instead"));

    public override string Words(Bench bench) =>
        $"{bench.NameOf(Part)} back from {Shop}{(Whereabouts.Place(To) is { Spot: Spot.Place } place ? $", {place.Words(bench.NameOf)}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        bench.ChangePart(Part).Where = Whereabouts.Place(To);
        bench.ChangePart(Part).NeedsWash = true;
        bench.Away.Remove(Part);
        bench.EndLead(Part);
        if (bench.IsBase(Part))
        {
            bench.MoveOn(Part);
        }
    }
}

/// <summary>A part will not be used again.</summary>
public sealed record PartScrapped(string Part, string Why) : Entry
{
    public override IEnumerable<string> About() => [Part];

    public override Refusal? Check(Bench bench) => bench.NoSuchPart(Part)
        ?? (bench.Part(Part).IsRiding ? new Refusal(bench.NameOf(Part), $"it is {bench.Part(Part).Where.Words(bench.NameOf)}", "a part that is off by itself", "Split it off first") : bench.NotAtHand(Part));

    public override string Words(Bench bench) => $"{bench.NameOf(Part)} scrapped{(Why.Length > 0 ? $": {Why}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.ChangePart(Part).Where = Whereabouts.Scrap;
}

/// <summary>A new part is at hand in place of the old one.</summary>
public sealed record PartRenewed(string Part, string? To = null) : Entry
{
    public override IEnumerable<string> About() => [Part];

    public override Refusal? Check(Bench bench) => bench.NoSuchPart(Part) ?? bench.NoPlaceForPart(Part, To)
        ?? (bench.Part(Part).Where.Spot is Spot.Scrap ? null : bench.NotAtHand(Part));

    public override string Words(Bench bench) =>
        $"New {bench.NameOf(Part)} at hand{(Whereabouts.Place(To) is { Spot: Spot.Place } place ? $", {place.Words(bench.NameOf)}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        bench.ChangePart(Part).Where = Whereabouts.Place(To);
        bench.ChangePart(Part).Renewed = true;
        bench.ChangePart(Part).NeedsWash = false;
        bench.EndLead(Part);
    }
}
