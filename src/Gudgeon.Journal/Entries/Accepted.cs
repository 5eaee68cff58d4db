using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(Accepted), "accepted")]
public abstract partial record Entry;

/// <summary>An exception: something stays as it is, with a reason. It holds while the book finds the same and no longer.</summary>
/// <param name="Finding">Name of the finding.</param>
/// <param name="Thing">Id that it is about; empty where there is none.</param>
/// <param name="Met">What stood there when it was accepted.</param>
public sealed record Accepted(string Finding, string Thing, string Met, string Reason) : Entry
{
    public override IEnumerable<string> About() => Thing.Length > 0 ? [Thing] : [];

    public override Refusal? Check(Bench bench) =>
        !Exceptions.Allowed.Contains(Finding) ? new Refusal("exception", $"\"{Finding}\"", string.Join(", ", Exceptions.Allowed), "This one can only be mended")
        : string.IsNullOrWhiteSpace(Reason) ? new Refusal(Finding, "no reason", "why it stays so", "Give the reason")
        : null;

    public override string Words(Bench bench) => $"{(Thing.Length > 0 ? $"{bench.NameOf(Thing)}: " : "")}stays so ({Finding}: {Met}), because {Reason}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Exceptions[(Finding, Thing, Met)] = (recorded.Number, Reason.Trim());
}
