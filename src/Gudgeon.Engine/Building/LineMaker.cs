namespace Gudgeon.Engine.Building;

/// <summary>A line and its place, while the access rules are tied to it.</summary>
internal sealed record MadeLine(Line Line, Place Place);

/// <summary>Makes the lines: each row of the table whose two ends exist, once for each of its places.</summary>
internal static class LineMaker
{
    public static IReadOnlyList<MadeLine> Make(AnatomyTables tables, EngineAnswers answers, Places places, Ties ties) =>
        [.. tables.Lines.Where(r => answers.Holds(r["if"])).SelectMany(r => OfRow(r, answers, places, ties))];

    private static IEnumerable<MadeLine> OfRow(Row row, EngineAnswers answers, Places places, Ties ties)
    {
        var guess = Formula.Count(row["count"], answers.AllFigures);
        foreach (var place in PartMaker.Spread(places.Over(row["per"]), guess.Fewest, []))
        {
            if (End(row["from"], place, ties) is not { } from || End(row["to"], place, ties) is not { } to)
                continue;

            var kind = row["id"];
            var name = string.Join(' ', new[] { place.Before, row["name"], place.Behind }.Where(s => s.Length > 0));
            yield return new MadeLine(
                new Line($"{kind}.{string.Join('.', place.Index)}", kind, name, from, to, Circuits[row["circuit"]])
                {
                    IsPassage = kind.StartsWith("g-", StringComparison.Ordinal),
                    RunsOut = row.Text("spills"),
                },
                place);
        }
    }

    private static Port? End(string list, Place place, Ties ties)
    {
        foreach (var end in list.Split(','))
        {
            var (part, port) = end.Split('.') is [var p, var q] ? (p, q) : throw new FormatException($"'{end}' is not part.port");
            if (part == "ext")
                return new Port(part, port);
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
