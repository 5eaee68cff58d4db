namespace Gudgeon.Engine.Building;

/// <summary>A part and its place, while the rest of the engine is tied to it.</summary>
internal sealed record Made(Part Part, Place Place);

/// <summary>Makes the parts: each row of the table that holds, once for each of its places.</summary>
internal static class PartMaker
{
    public static IReadOnlyList<Made> Make(AnatomyTables tables, EngineAnswers answers, Places places) =>
        [.. tables.Parts.Where(r => answers.Holds(r["if"])).SelectMany(r => OfRow(r, answers, places))];

    private static IEnumerable<Made> OfRow(Row row, EngineAnswers answers, Places places)
    {
        var kind = row["id"];
        var guess = Formula.Count(row["count"], answers.AllFigures);
        var counted = answers.Counts.TryGetValue(kind, out var count);
        // Of what may be missing, one is there until the owner says that it is not: a part too many is struck off with one
        // tap, one too few is not missed until its hole leaks.
        if (!counted)
            count = guess.Estimate ? Math.Max(1, guess.Fewest) : guess.Fewest;

        var each = row.List("names");
        return Spread(places.Over(row["per"]), count, each).Select(place => new Made(
            new Part($"{kind}.{string.Join('.', place.Index)}", kind, Name(row["name"], place, each), count == 1 ? [] : place.Index)
            {
                Zone = Zones[row["zone"]],
                Keeping = row["keep"].Split(' ').Aggregate(Keeping.Free, (all, one) => all | Keepings[one]),
                Renewal = Renewals[row["renew"]],
                Lift = Lifts[row["lift"]],
                Standing = counted ? Standing.Counted : Standing.Guess,
                Cylinder = place.Cylinder,
                Bank = place.Bank,
            },
            place));
    }

    /// <summary>
    /// Lays a count over places: one each, several each (a last number is added), or, where the count does not go evenly,
    /// a plain row that is tied to no place.
    /// </summary>
    public static IEnumerable<Place> Spread(IReadOnlyList<Place> over, int count, IReadOnlyList<string> each)
    {
        if (over.Count == 0 || count % over.Count != 0)
            return Enumerable.Range(1, count).Select(i => new Place { Index = [i], Behind = count == 1 ? "" : $"{i}" });

        var several = count / over.Count;
        if (several == 1)
            return over;
        // A lone camshaft, bank or head is not worth a number: cam cap 2, not cam cap 1.2.
        var bare = over.Count == 1 && over[0].Cylinder is null;
        return over.SelectMany(place => Enumerable.Range(1, several).Select(i => place with
        {
            Index = bare ? [i] : [.. place.Index, i],
            Behind = i <= each.Count ? place.Behind : Behind(place, i, several),
        }));
    }

    private static string Behind(Place place, int i, int several)
    {
        var inner = place.Cylinder is not null && several == 2 ? $"{(char)('a' + i - 1)}" : $"{i}";
        return place.Behind.Length == 0 ? inner : char.IsLetter(inner[0]) ? place.Behind + inner : $"{place.Behind}.{inner}";
    }

    private static string Name(string kind, Place place, IReadOnlyList<string> each)
    {
        var name = place.Index[^1] <= each.Count ? each[place.Index[^1] - 1] : kind;
        return string.Join(' ', new[] { place.Before, name, place.Behind }.Where(s => s.Length > 0));
    }

    internal static readonly Dictionary<string, Zone> Zones = new()
    {
        ["free-end"] = Zone.FreeEnd,
        ["drive-end"] = Zone.DriveEnd,
        ["top"] = Zone.Top,
        ["bottom"] = Zone.Bottom,
        ["side"] = Zone.Side,
        ["valley"] = Zone.Valley,
        ["inside"] = Zone.Inside,
    };

    internal static readonly Dictionary<string, Keeping> Keepings = new()
    {
        ["-"] = Keeping.Free,
        ["own-place"] = Keeping.OwnPlace,
        ["way-round"] = Keeping.WayRound,
        ["mated"] = Keeping.Mated,
        ["matched-set"] = Keeping.MatchedSet,
    };

    internal static readonly Dictionary<string, Renewal> Renewals = new()
    {
        ["kept"] = Renewal.Kept,
        ["wear"] = Renewal.ByWear,
        ["rebuild"] = Renewal.UsuallyInRebuild,
        ["strip"] = Renewal.EveryStrip,
    };

    internal static readonly Dictionary<string, LiftClass> Lifts = new()
    {
        ["hand"] = LiftClass.Hand,
        ["one"] = LiftClass.OnePerson,
        ["heavy"] = LiftClass.Heavy,
        ["two"] = LiftClass.TwoPersons,
        ["crane"] = LiftClass.Crane,
    };
}
