using System.Text.Json.Serialization;
using Gudgeon.Engine;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(LimitSet), "limit-set")]
public abstract partial record Entry;

/// <summary>What a limit is for.</summary>
public enum LimitState
{
    /// <summary>A part in service: beyond it the part is worn out.</summary>
    Service,

    /// <summary>A new or rebuilt part.</summary>
    New,
}

/// <summary>A limit that the owner typed from a book or a sheet. The last one for the same thing, state and parts counts.</summary>
/// <param name="Parts">Ids of the parts it holds for; empty for all that have the characteristic.</param>
/// <param name="Low">Lower limit in the unit of the characteristic; null for none.</param>
/// <param name="High">Upper limit.</param>
/// <param name="Spread">Most that a set may differ, largest less smallest.</param>
/// <param name="AsTyped">As typed.</param>
/// <param name="Source">Book or sheet, and its edition.</param>
/// <param name="Page">Page in it.</param>
public sealed record LimitSet(
    string Characteristic,
    IReadOnlyList<string> Parts,
    LimitState State,
    double? Low,
    double? High,
    double? Spread,
    string Unit,
    string AsTyped,
    string Source,
    string Page = "") : Entry
{
    public override IEnumerable<string> About() => Parts;

    public override Refusal? Check(Bench bench)
    {
        if (Engine.Characteristics.Find(Characteristic) is not { } characteristic)
            return new Refusal("limit", $"\"{Characteristic}\"", "a characteristic of the list", "Look at its name on the Measure page");
        var kinds = characteristic.Limits;
        return Unit != characteristic.Unit ? new Refusal(characteristic.Name, $"the unit {Unit}", characteristic.Unit, "Give the limit in the unit of the figure")
            : kinds.HasFlag(LimitKinds.Look) ? new Refusal(characteristic.Name, "a limit in figures", "no limit: it passes or fails by look", "Say pass or fail where it is looked at")
            : Low is null && High is null && Spread is null ? new Refusal(characteristic.Name, "no limit", "a lower or an upper limit, or a spread", "Type at least one of them")
            : new[] { Low, High, Spread }.Any(l => l is { } value && !double.IsFinite(value)) ? new Refusal(characteristic.Name, "a limit that is no number", "a number", "Type it again")
            : Low > High ? new Refusal(characteristic.Name, $"a lower limit of {Units.Show(Low.Value, Unit)} above an upper one of {Units.Show(High.Value, Unit)}", "lower first, upper second", "Change them round, or look at the book again")
            : Spread < 0 ? new Refusal(characteristic.Name, $"a spread of {Units.Show(Spread.Value, Unit)}", "0 or more", "Type it again")
            : string.IsNullOrWhiteSpace(Source) ? new Refusal(characteristic.Name, "a limit without a source", "the book, sheet or person that it comes from", "Say where it stands; the page too if there is one")
            : Parts.Select(bench.NoSuchPart).FirstOrDefault(f => f is not null);
    }

    public override string Words(Bench bench) =>
        $"{Name} limit, {StateWord(State)}: {Units.Band(Low, High, Unit)}{(Spread is { } spread ? $"{(Low ?? High) switch { null => "", _ => "; " }}within {Units.Show(spread, Unit)} of each other" : "")}"
        + $"{(Parts.Count > 0 ? $", for {bench.Several(Parts)}" : "")}, by {Source}{(Page.Length > 0 ? $", page {Page}" : "")}";

    private string Name => Engine.Characteristics.Find(Characteristic) is { Name: var name } ? char.ToUpperInvariant(name[0]) + name[1..] : Characteristic;

    public static string StateWord(LimitState state) => state == LimitState.New ? "new" : "in service";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Set(this, recorded);
}
