using System.Globalization;
using Gudgeon.Engine.Building;

namespace Gudgeon.Engine;

/// <summary>A sort of instrument: where an owner's list starts from. Common practice, no source: the owner's own figures replace it.</summary>
/// <param name="Resolution">Smallest step, in the unit; null where none can be stated.</param>
/// <param name="Expanded">U with k = 2 of a checked tool in careful hands, in the unit.</param>
/// <param name="Sees">What it cannot see, or empty.</param>
public sealed record ToolSort(string Id, string Name, string Unit, double? Resolution, double? Expanded, string Sees);

/// <summary>The sorts of instrument.</summary>
public static class ToolSorts
{
    public static IReadOnlyList<ToolSort> All { get; } = [.. Table.Read("tools.psv", Table.Own("tools.psv")).Select(Of)];

    public static ToolSort? Find(string id) => All.FirstOrDefault(t => t.Id == id);

    private static ToolSort Of(Row row) => new(row["id"], row["name"], row.Text("unit"), Number(row["resolution"]), Number(row["u"]), row.Text("sees"));

    private static double? Number(string text) => text == "-" ? null : double.Parse(text, CultureInfo.InvariantCulture);
}
