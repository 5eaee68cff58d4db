using Gudgeon.Engine.Building;

namespace Gudgeon.Engine;

/// <summary>Which way oil, coolant, fuel, air or gas goes, from part to part.</summary>
/// <param name="Kinds">Part kinds in the order of the flow; <c>ext</c> is the vehicle.</param>
/// <param name="Lines">Line kinds on the way.</param>
public sealed record Flow(string Id, string Name, IReadOnlyList<string> Kinds, IReadOnlyList<string> Lines);

/// <summary>The flows of an engine: what it lacks is passed by.</summary>
public static class Flows
{
    internal static IReadOnlyList<Row> Rows { get; } = Table.Read("flows.psv", Table.Own("flows.psv"));

    public static IReadOnlyList<Flow> Of(EngineAnswers answers, EngineModel engine)
    {
        var kinds = engine.Parts.Values.Select(p => p.Kind).Append("ext").ToHashSet();
        var lines = engine.Lines.Values.Select(l => l.Kind).ToHashSet();
        return [.. Rows.Where(r => answers.Holds(r["if"])).Select(r => new Flow(
            r["id"],
            r["name"],
            [.. r.List("kinds").Select(k => AnatomyTables.Own.Kinds(k).FirstOrDefault(kinds.Contains)).OfType<string>()],
            [.. r.List("lines").Where(lines.Contains)]))];
    }
}
