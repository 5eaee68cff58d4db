using Gudgeon.Sums;

namespace Gudgeon.Journal;

/// <summary>What no lift in a workshop has, said where it is told. What a lift may not have is judged by the sums.</summary>
internal static class LiftChecks
{
    /// <summary>Nothing on this floor weighs or measures more.</summary>
    private const double Most = 100_000;

    public static Refusal? Above0(string where, string what, double value, string unit, string remedy) => value is > 0 and <= Most ? null
        : new Refusal(where, $"{what} {Of(what)}{Units.Plain(value)} {unit}".Trim(), $"more than 0 {unit}, {Units.Plain(Most)} {unit} at most", remedy);

    public static Refusal? From0(string where, string what, double value, string unit, string remedy) => value is >= 0 and <= Most ? null
        : new Refusal(where, $"{what} {Of(what)}{Units.Plain(value)} {unit}".Trim(), $"0 {unit} or more, {Units.Plain(Most)} {unit} at most", remedy);

    public static Refusal? Far(string where, double value) => Math.Abs(value) <= Most ? null
        : new Refusal(where, $"{Units.Plain(value)} mm", $"within {Units.Plain(Most)} mm", "Measure it again, in mm");

    public static Refusal? Named(string where, string name) => string.IsNullOrWhiteSpace(name) || name.Length > 60
        ? new Refusal(where, name.Length > 60 ? "a name of more than 60 letters" : "no name", "a short name", "Call it what you like")
        : null;

    public static Refusal? First(IEnumerable<Refusal?> faults) => faults.FirstOrDefault(fault => fault is not null);

    private static string Of(string what) => what.Length > 0 ? "of " : "";
}
