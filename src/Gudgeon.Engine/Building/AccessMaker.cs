namespace Gudgeon.Engine.Building;

/// <summary>What a rule is about: a part of a kind at its place, or an operation.</summary>
internal sealed record Target(string Id, string Kind, Place Place);

/// <summary>Makes the access rules: the rows of one target added up, each need tied to what is at the target's place.</summary>
internal sealed class AccessMaker(AnatomyTables tables, EngineAnswers answers, Ties ties, IReadOnlyList<MadeLine> lines)
{
    private readonly ILookup<string, MadeLine> linesByKind = lines.ToLookup(l => l.Line.Kind);

    public IEnumerable<Access> Make() =>
        tables.Access.Where(r => answers.Holds(r["if"])).GroupBy(r => r["target"])
            .SelectMany(rows => Targets(rows.Key).Select(target => Rule(target, [.. rows])));

    /// <summary>A kind, one part of it (<c>case-half.2</c>), or an operation.</summary>
    private IEnumerable<Target> Targets(string target)
    {
        if (target.StartsWith("op:", StringComparison.Ordinal))
            return [new Target(target, "", new Place())];
        var kind = target.Split('.')[0];
        return ties.All(kind).Where(m => target == kind || m.Part.Id == target).Select(m => new Target(m.Part.Id, kind, m.Place));
    }

    private Access Rule(Target target, IReadOnlyList<Row> rows)
    {
        var first = rows.SelectMany(r => r.List("first")).SelectMany(need => Needs(need, target)).Where(need => need.Id != target.Id).Distinct();
        var choices = rows.Where(r => r["or"] is not ("-" or "")).Select(r => Choice(r["or"], target)).OfType<Choice>();
        return new Access(target.Id, [.. first], [.. choices], [.. rows.SelectMany(r => r.List("holds")).Distinct()]);
    }

    private Choice? Choice(string or, Target target)
    {
        var sets = or.Split('/')
            .Select(set => set.Split(',').SelectMany(need => Needs(need, target)).ToList())
            .Where(set => set.Count > 0).ToList();
        return sets.Any(set => set.Any(need => need.Sort != NeedSort.Fact)) ? new Choice(sets) : null;
    }

    private IEnumerable<Need> Needs(string need, Target target)
    {
        if (new Need(need).Sort is NeedSort.Operation or NeedSort.Fact)
            return [new Need(need)];
        var all = need.EndsWith('*');
        var (kind, where) = (need.TrimEnd('*'), all ? new Place() : target.Place);
        if (tables.LineKinds.Contains(kind))
            return linesByKind[kind].Where(l => all || l.Meets(target.Id, target.Kind, where)).Select(l => new Need(l.Line.Id));
        return kind.Split('.') is [var of, _]
            ? ties.All(of).Where(m => m.Part.Id == kind).Select(m => new Need(m.Part.Id))
            : ties.At(kind, where).Select(m => new Need(m.Part.Id));
    }
}
