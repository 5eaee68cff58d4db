using Gudgeon.Engine.Building;

namespace Gudgeon.Engine;

/// <summary>
/// Builds an engine from answers. Every part, count and rule of it is a guess from common practice, with no source:
/// a starting point that the owner's eyes and counts overrule.
/// </summary>
public static class Anatomy
{
    public static EngineModel Build(EngineAnswers answers) => Build(answers, AnatomyTables.Own);

    internal static EngineModel Build(EngineAnswers answers, AnatomyTables tables)
    {
        var model = new EngineModel();
        var places = new Places(answers);
        var parts = PartMaker.Make(tables, answers, places);
        var ties = new Ties(tables, parts, answers);
        var lines = LineMaker.Make(tables, answers, places, ties);

        foreach (var made in parts)
            model.Add(made.Part);
        foreach (var joint in JointMaker.Make(tables, answers, ties))
            model.Add(joint);
        foreach (var made in lines)
            model.Add(made.Line);
        foreach (var rule in new AccessMaker(tables, answers, ties, lines).Make())
            model.Set(rule);
        AddMeans(model, tables);
        return model;
    }

    /// <summary>The operations and facts that this engine's rules speak of; the rest would be questions about nothing.</summary>
    private static void AddMeans(EngineModel model, AnatomyTables tables)
    {
        var used = model.Access.Values
            .SelectMany(a => a.First.Concat(a.Choices.SelectMany(c => c.Sets).SelectMany(s => s)).Select(n => n.Id).Append(a.Target))
            .ToHashSet();
        foreach (var row in tables.Operations.Where(r => used.Contains(r["id"])))
            model.Add(new Operation(row["id"], row["name"], row.List("equipment"), int.Parse(row["persons"], System.Globalization.CultureInfo.InvariantCulture), row["why"], row["lasts"] == "yes") { IsTakenBack = row["back"] == "yes" });
        foreach (var row in tables.Facts.Where(r => used.Contains(r["id"])))
            model.Add(new Fact(row["id"], row["question"]));
    }
}
