using System.Text.Json.Serialization;
using Gudgeon.Engine;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(EquipmentTold), "equipment-told")]
[JsonDerivedType(typeof(HoursTold), "hours-told")]
[JsonDerivedType(typeof(MinutesTold), "minutes-told")]
[JsonDerivedType(typeof(LeadTold), "lead-told")]
[JsonDerivedType(typeof(PlanKept), "plan-kept")]
public abstract partial record Entry;

/// <summary>Whether a piece of equipment or a helper is there, and when. What nobody tells of counts as there.</summary>
/// <param name="What">As people call it: <c>engine stand</c>, <c>second person</c>.</param>
/// <param name="From">First instant at which it is there; null for since ever.</param>
/// <param name="Until">When it is gone again; null for never.</param>
public sealed record EquipmentTold(string What, bool Have, DateTimeOffset? From = null, DateTimeOffset? Until = null) : Entry
{
    /// <summary>The name under which a helper is told of.</summary>
    public const string SecondPerson = "second person";

    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        string.IsNullOrWhiteSpace(What) ? new Refusal("equipment", "nothing", "what it is, such as engine stand", "Name it")
        : !Have && (From is not null || Until is not null) ? new Refusal(What, "days for what is not there", "days only for what comes or goes", "Leave out the days, or say that you have it then")
        : From is { } from && Until is { } until && until <= from ? new Refusal(What, $"until {until:d MMM yyyy HH:mm}, from {from:d MMM yyyy HH:mm}", "an end after its beginning", "Correct one of them")
        : null;

    public override string Words(Bench bench) =>
        $"{What.Trim()}: {(!Have ? "not there" : From is null && Until is null ? "there" : $"there{(From is { } from ? $" from {from:ddd d MMM yyyy HH:mm}" : "")}{(Until is { } until ? $" until {until:ddd d MMM yyyy HH:mm}" : "")}")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Tell(this);
}

/// <summary>When the owner can be at the bench in a usual week, by the owner's clock. Replaces what was told before.</summary>
public sealed record HoursTold(IReadOnlyList<DayHours> Week) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        Week.Count == 0 ? new Refusal("hours", "none", "one evening or more, such as mon-fri 19-22", "Say when you can be at the bench")
        : Week.FirstOrDefault(h => h.From == h.Until) is { } empty ? new Refusal($"hours on {empty.Day}", $"{empty.From:HH:mm} to {empty.Until:HH:mm}", "an end after its beginning", "Correct it")
        : null;

    public override string Words(Bench bench) => $"At the bench: {DayHours.Words(Week)}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Hours = Week;
}

/// <summary>What a piece of work takes on this engine, as its owner knows it. Stands before every guess.</summary>
/// <param name="What">Part, line or operation; <see cref="Washing"/> or <see cref="Reading"/> for one of that kind.</param>
public sealed record MinutesTold(string What, int Minutes) : Entry
{
    /// <summary>Washing one part that is back from a shop.</summary>
    public const string Washing = "wash";

    /// <summary>Taking one reading and writing it down.</summary>
    public const string Reading = "read";

    private const int Most = 6000;

    private bool IsOfAKind => What is Washing or Reading;

    public override IEnumerable<string> About() => IsOfAKind ? [] : [What];

    public override Refusal? Check(Bench bench) =>
        !bench.Knows(What) && !IsOfAKind ? new Refusal("minutes", $"\"{What}\"", "a part, line or operation of this engine", "Look at its name")
        : Minutes is < 1 or > Most ? new Refusal(Name(bench), $"{Minutes} minutes", $"1 to {Most} minutes", "Say how long it takes")
        : null;

    public override string Words(Bench bench) => $"{Name(bench)}: {Minutes} minutes";

    private string Name(Bench bench) => IsOfAKind ? Guides.Minutes(What)!.What : bench.NameOf(What);

    internal override void Apply(Bench bench, Recorded recorded) => bench.TellMinutes(What, Minutes);
}

/// <summary>How many days from now something for a part is away: a part on order, or work at a shop. The last told stands.</summary>
/// <param name="Part">The part that cannot go back before.</param>
/// <param name="BestDays">At best.</param>
/// <param name="LikelyDays">Most likely.</param>
/// <param name="WorstDays">At worst.</param>
public sealed record LeadTold(string Part, int BestDays, int LikelyDays, int WorstDays) : Entry
{
    private const int Most = 1000;

    public override IEnumerable<string> About() => [Part];

    public override Refusal? Check(Bench bench) =>
        !bench.Engine.Parts.ContainsKey(Part) ? new Refusal("lead time", $"\"{Part}\"", "a part of this engine", "Look at its name")
        : BestDays < 0 || WorstDays > Most || BestDays > LikelyDays || LikelyDays > WorstDays
            ? new Refusal(bench.NameOf(Part), $"{BestDays}, {LikelyDays}, {WorstDays} days", $"days at best, most likely and at worst, rising, from 0 to {Most}", "Give the three in that order")
        : null;

    public override string Words(Bench bench) => $"{bench.NameOf(Part)}: {BestDays} to {WorstDays} days away, most likely {LikelyDays}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.TellLead(this, recorded.At);
}

/// <summary>A plan that is worked to, with what it came to: later plans keep to its order where it still holds.</summary>
/// <param name="Order">Ids of parts, lines and operations in turn.</param>
/// <param name="BoundSeconds">No order of this work can take less.</param>
public sealed record PlanKept(IReadOnlyList<string> Order, long Seconds, long BoundSeconds) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        Order.Count == 0 ? new Refusal("plan", "no steps", "one step or more", "Plan first, then keep it")
        : Seconds < BoundSeconds || BoundSeconds < 0 ? new Refusal("plan", $"{Seconds} seconds under a bound of {BoundSeconds}", "a plan that takes no less than its bound", "Plan again, then keep it")
        : null;

    public override string Words(Bench bench) => $"Plan kept: {Order.Count} steps, {Seconds / 60} minutes";

    internal override void Apply(Bench bench, Recorded recorded) => bench.KeptPlan = recorded;
}
