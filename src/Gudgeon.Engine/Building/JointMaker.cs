namespace Gudgeon.Engine.Building;

/// <summary>Makes the joints: one for each part of a row, fixed to what is at its place.</summary>
internal static class JointMaker
{
    /// <summary>
    /// Ways to hold with nothing to count: pressed, laid in, pushed in with a seal ring, a ring in a groove, or screwed in by
    /// its own thread (a spark plug is no fastener of itself).
    /// </summary>
    private static readonly string[] Uncounted = ["press", "loose", "oring", "circlip", "self"];

    public static IEnumerable<Joint> Make(AnatomyTables tables, EngineAnswers answers, Ties ties)
    {
        foreach (var row in tables.Joints.Where(r => answers.Holds(r["if"])))
        {
            var parts = ties.All(row["part"]).ToList();
            var figures = new Dictionary<string, double>(answers.AllFigures) { ["a"] = parts.Count };
            foreach (var made in parts)
            {
                if (Fixed(row, made, ties) is { } joined)
                    yield return Of(row, made, joined, figures);
            }
        }
    }

    /// <summary>What the part is fixed to; empty for the vehicle; null when the joint does not exist on this engine.</summary>
    private static IReadOnlyList<string>? Fixed(Row row, Made made, Ties ties)
    {
        var to = row["to"];
        if (to == "ext")
            return [];
        // Two of a kind bolted to each other are one joint: the second comes away from the first.
        if (to == made.Part.Kind)
            return made.Place.Half == 2 ? [.. ties.All(to).Where(m => m.Place.Half == 1).Select(m => m.Part.Id)] : null;

        var sides = to.Split(';');
        var side = sides[Math.Min((made.Place.Half ?? 1) - 1, sides.Length - 1)];
        var found = ties.First(side.Split(','), made.Place);
        return found.Count > 0 ? [.. found.Select(m => m.Part.Id)] : null;
    }

    private static Joint Of(Row row, Made made, IReadOnlyList<string> joined, Dictionary<string, double> figures)
    {
        var ways = row.List("fasteners");
        var fasteners = Uncounted.Contains(ways[0]) ? [] : ways.Except(Uncounted).ToList();
        var count = fasteners.Count == 0 ? default : Formula.Count(row["count"], figures);
        return new Joint($"{row["id"]}.{string.Join('.', made.Place.Index)}", row["id"], made.Part.Id, joined)
        {
            Fasteners = fasteners,
            Fit = fasteners.Count == 0 ? ways[0] : "",
            Guess = (count.Fewest, count.Most),
            SizeGuess = row.Text("size"),
            Tightening = row.List("tight"),
            OneUse = row["once"] switch { "y" => OneUse.Yes, "n" => OneUse.No, _ => OneUse.Ask },
            Seals = row.List("seal"),
        };
    }
}
