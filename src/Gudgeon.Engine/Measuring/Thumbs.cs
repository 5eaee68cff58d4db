using System.Globalization;
using Gudgeon.Engine.Building;

namespace Gudgeon.Engine;

/// <summary>A rule of thumb: common practice, no source. It never makes a verdict.</summary>
/// <param name="AppliesTo">What it is said of, or empty.</param>
/// <param name="Caution">What to beware of, or empty.</param>
public sealed record Thumb(string Characteristic, string AppliesTo, string UsualLow, string UsualHigh, string RejectLow, string RejectHigh, string Caution)
{
    /// <summary>What every rule of thumb is marked with.</summary>
    public const string Mark = "common practice, no source";

    /// <summary>The four bounds at a bore D and a shaft d, or null when a bound needs one that is not known.</summary>
    public (double? UsualLow, double? UsualHigh, double? RejectLow, double? RejectHigh)? At(double? bore, double? shaft)
    {
        var known = new Dictionary<string, double>();
        if (bore is { } b)
            known["D"] = b;
        if (shaft is { } s)
            known["d"] = s;
        string[] bounds = [UsualLow, UsualHigh, RejectLow, RejectHigh];
        if (bounds.Any(t => (t.Contains('D', StringComparison.Ordinal) && bore is null) || (t.Contains('d', StringComparison.Ordinal) && shaft is null)))
            return null;
        return (Bound(UsualLow, known), Bound(UsualHigh, known), Bound(RejectLow, known), Bound(RejectHigh, known));
    }

    private static double? Bound(string text, Dictionary<string, double> known) =>
        text == "-" ? null : double.TryParse(text, CultureInfo.InvariantCulture, out var plain) ? plain : Formula.Value(text, known);
}

/// <summary>The rules of thumb. Many characteristics have none, and then none is shown.</summary>
public static class Thumbs
{
    private static readonly ILookup<string, Thumb> byCharacteristic =
        Table.Read("thumbs.psv", Table.Own("thumbs.psv")).Select(Of).ToLookup(t => t.Characteristic);

    public static IEnumerable<Thumb> All => byCharacteristic.SelectMany(g => g);

    public static IReadOnlyList<Thumb> For(string characteristic) => [.. byCharacteristic[characteristic]];

    private static Thumb Of(Row row) => new(
        row["characteristic"], row.Text("applies to"), row["usual low"], row["usual high"], row["reject below"], row["reject above"], row.Text("caution"));
}
