namespace Gudgeon.Engine.Building;

/// <summary>A line and its place, while the access rules are tied to it.</summary>
/// <param name="Of">The part that it is one for each of, or null.</param>
internal sealed record MadeLine(Line Line, Place Place, Part? Of)
{
    /// <summary>Whether the line bears on something of a kind at a place: of two turbochargers, each has its own pipes.</summary>
    public bool Meets(string target, string kind, Place place) =>
        Of is { } of && of.Kind == kind ? of.Id == target : Place.Meets(place);
}

/// <summary>Makes the lines: each row of the table whose two ends exist, once for each of its places.</summary>
internal static class LineMaker
{
    public static IReadOnlyList<MadeLine> Make(AnatomyTables tables, EngineAnswers answers, Places places, Ties ties) =>
        [.. tables.Lines.Where(r => answers.Holds(r["if"])).SelectMany(r => OfRow(r, answers, places, ties))];

    private static IEnumerable<MadeLine> OfRow(Row row, EngineAnswers answers, Places places, Ties ties)
    {
        var kind = row["id"];
        foreach (var (place, of) in Over(row, answers, places, ties))
        {
            if (End(row["from"], place, of, ties) is not { } from || End(row["to"], place, of, ties) is not { } to)
                continue;
            var name = string.Join(' ', new[] { place.Before, row["name"], place.Behind }.Where(s => s.Length > 0));
            var line = new Line($"{kind}.{string.Join('.', place.Index)}", kind, name, from, to, Circuits[row["circuit"]])
            {
                IsPassage = row["opens"] == "with its joint",
                RunsOut = row.Text("spills"),
            };
            yield return new MadeLine(line, place, of);
        }
    }

    private static IEnumerable<(Place Place, Part? Of)> Over(Row row, EngineAnswers answers, Places places, Ties ties)
    {
        var per = row["per"];
        if (per.StartsWith("of:", StringComparison.Ordinal))
            return ties.All(per[3..]).Select(m => (m.Place, (Part?)m.Part));
        var count = Formula.Count(row["count"], answers.AllFigures).Fewest;
        return PartMaker.Spread(places.Over(per), count, []).Select(place => (place, (Part?)null));
    }

    private static Port? End(string list, Place place, Part? of, Ties ties)
    {
        foreach (var end in list.Split(','))
        {
            var (part, port) = end.Split('.') is [var p, var q] ? (p, q) : throw new FormatException($"'{end}' is not part.port");
            if (part == "ext")
                return new Port(part, port);
            if (of is not null && part == of.Kind)
                return new Port(of.Id, port);
            if (part.Split(':') is [var kind, var number])
                return ties.All(kind).Where(m => m.Part.Id == $"{kind}.{number}").Select(m => new Port(m.Part.Id, port)).FirstOrDefault();
            if (ties.First([part], place) is [var found, ..])
                return new Port(found.Part.Id, port);
        }

        return null;
    }

    internal static readonly Dictionary<string, Circuit> Circuits = new()
    {
        ["oil-pressure"] = Circuit.OilPressure,
        ["oil-drain"] = Circuit.OilDrain,
        ["oil-scavenge"] = Circuit.OilScavenge,
        ["coolant"] = Circuit.Coolant,
        ["fuel"] = Circuit.Fuel,
        ["air"] = Circuit.Air,
        ["exhaust"] = Circuit.Exhaust,
        ["breather"] = Circuit.Breather,
        ["vacuum"] = Circuit.Vacuum,
        ["electrical"] = Circuit.Electrical,
        ["refrigerant"] = Circuit.Refrigerant,
        ["hydraulic"] = Circuit.Hydraulic,
    };
}
