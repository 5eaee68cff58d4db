namespace Gudgeon.Engine.Building;

/// <summary>Finds, for something at a place, the parts of other kinds at the same place.</summary>
internal sealed class Ties
{
    private readonly AnatomyTables tables;
    private readonly ILookup<string, Made> byKind;

    /// <summary>Most places have a cylinder: this saves looking through the valves of all the others.</summary>
    private readonly ILookup<(string Kind, int? Cylinder), Made> byCylinder;
    private readonly bool flat;

    public Ties(AnatomyTables tables, IReadOnlyList<Made> parts, EngineAnswers answers)
    {
        this.tables = tables;
        byKind = parts.ToLookup(m => m.Part.Kind);
        byCylinder = parts.ToLookup(m => (m.Part.Kind, m.Place.Cylinder));
        flat = answers["layout"] == "flat";
    }

    public IEnumerable<Made> All(string kind) => byKind[kind];

    /// <summary>Those of the kind at the place; all of the kind where nothing ties them to a place.</summary>
    public IReadOnlyList<Made> At(string kind, Place place) =>
        [.. (place.Cylinder is null ? byKind[kind] : byCylinder[(kind, null)].Concat(byCylinder[(kind, place.Cylinder)])).Where(m => m.Place.Meets(place))];

    /// <summary>
    /// What a list such as <c>head,@body</c> stands for at a place: the first kind that is there. A star takes all of it;
    /// without one, what is tied to the place comes whole (a head sits on all barrels of its row) and what is not, once.
    /// </summary>
    public IReadOnlyList<Made> First(IEnumerable<string> list, Place place)
    {
        foreach (var entry in list)
        {
            var all = entry.EndsWith('*');
            foreach (var kind in tables.Kinds(entry.TrimEnd('*')))
            {
                var found = kind == "case-half" ? CaseHalf(entry, place) : At(kind, place);
                if (found.Count > 0)
                    return all || found.Count == 1 ? found : found.Where(m => m.Place.Shares(place)).DefaultIfEmpty(found[0]).ToList();
            }
        }

        return [];
    }

    /// <summary>
    /// Of two case halves: the one of the bank in a flat engine; else the first carries what stands above, the second closes
    /// it from below.
    /// </summary>
    private IReadOnlyList<Made> CaseHalf(string entry, Place place)
    {
        var half = place.Half ?? (flat ? place.Bank ?? 1 : entry == "@under" ? 2 : 1);
        return [.. byKind["case-half"].Where(m => m.Place.Half == half)];
    }
}
