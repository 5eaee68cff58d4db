namespace Gudgeon.Engine.Building;

/// <summary>Makes the access rules: the rows of one target added up, each need tied to what is at the target's place.</summary>
internal sealed class AccessMaker(AnatomyTables tables, EngineAnswers answers, Ties ties, IReadOnlyList<MadeLine> lines)
{
    private readonly ILookup<string, MadeLine> linesByKind = lines.ToLookup(l => l.Line.Kind);

    public IEnumerable<Access> Make() =>
        tables.Access.Where(r => answers.Holds(r["if"])).GroupBy(r => r["target"])
            .SelectMany(rows => Targets(rows.Key).Select(target => Rule(target.Id, target.Place, [.. rows])));

    /// <summary>A kind, one part of it (<c>case-half.2</c>), or an operation.</summary>
    private IEnumerable<(string Id, Place Place)> Targets(string target)
    {
        if (target.StartsWith("op:", StringComparison.Ordinal))
            return [(target, new Place())];
        var kind = target.Split('.')[0];
        return ties.All(kind).Where(m => target == kind || m.Part.Id == target).Select(m => (m.Part.Id, m.Place));
    }

    private Access Rule(string id, Place place, IReadOnlyList<Row> rows)
    {
        var first = rows.SelectMany(r => r.List("first")).SelectMany(need => Needs(need, place)).Where(need => need.Id != id).Distinct();
        var choices = rows.Where(r => r["or"] is not ("-" or "")).Select(r => Choice(r["or"], place)).OfType<Choice>();
        return new Access(id, [.. first], [.. choices], [.. rows.SelectMany(r => r.List("holds")).Distinct()]);
    }

    private Choice? Choice(string or, Place place)
    {
        var sets = or.Split('/')
            .Select(set => set.Split(',').SelectMany(need => Needs(need, place)).ToList())
            .Where(set => set.Count > 0).ToList();
        return sets.Any(set => set.Any(need => need.Sort != NeedSort.Fact)) ? new Choice(sets) : null;
    }

    private IEnumerable<Need> Needs(string need, Place place)
    {
        if (new Need(need).Sort is NeedSort.Operation or NeedSort.Fact)
            return [new Need(need)];
        var (kind, where) = need.EndsWith('*') ? (need[..^1], new Place()) : (need, place);
        if (tables.LineKinds.Contains(kind))
            return linesByKind[kind].Where(l => l.Place.Meets(where)).Select(l => new Need(l.Line.Id));
        return kind.Split('.') is [var of, _]
            ? ties.All(of).Where(m => m.Part.Id == kind).Select(m => new Need(m.Part.Id))
            : ties.At(kind, where).Select(m => new Need(m.Part.Id));
    }
}
