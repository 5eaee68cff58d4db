using Gudgeon.Engine.Building;

namespace Gudgeon.Engine.Tests;

/// <summary>Looks for ids in the tables that lead nowhere, and for kinds that nothing speaks of.</summary>
internal static class TableCheck
{
    public static IReadOnlyList<string> Faults(AnatomyTables tables)
    {
        var faults = new List<string>();
        var operations = tables.Operations.Select(r => r["id"]).ToHashSet();
        var facts = tables.Facts.Select(r => r["id"]).ToHashSet();

        void Kind(Row row, string name)
        {
            var bare = name.TrimEnd('*');
            var known = bare is "ext" or "-" || bare.StartsWith('@') ? bare[0] != '@' || tables.Aliases.ContainsKey(bare) : tables.PartKinds.Contains(bare);
            if (!known)
                faults.Add($"{row.Where}: no part kind {bare}");
        }

        void Need(Row row, string need)
        {
            var bare = need.TrimEnd('*');
            var known = bare.StartsWith("op:", StringComparison.Ordinal) ? operations.Contains(bare)
                : bare.StartsWith("fact:", StringComparison.Ordinal) ? facts.Contains(bare)
                : tables.LineKinds.Contains(bare) || tables.PartKinds.Contains(bare.Split('.')[0]);
            if (!known)
                faults.Add($"{row.Where}: no {bare}");
        }

        foreach (var list in tables.Aliases.Values)
            foreach (var name in list)
                Kind(new Row("aliases.psv", new Dictionary<string, string>()), name);
        foreach (var row in tables.Joints)
        {
            Kind(row, row["part"]);
            foreach (var name in row["to"].Split(',', ';'))
                Kind(row, name);
        }

        foreach (var row in tables.Lines)
            foreach (var end in row.List("from").Concat(row.List("to")))
                Kind(row, end.Split('.')[0].Split(':')[0]);
        foreach (var row in tables.Access)
        {
            Need(row, row["target"]);
            foreach (var need in row.List("first").Concat(row["or"].Split('/', ',').Where(n => n is not ("-" or ""))))
                Need(row, need);
            foreach (var hold in row.List("holds").Where(h => h.StartsWith("loose:", StringComparison.Ordinal)))
                Kind(row, hold.Split(':')[1]);
        }

        var spoken = tables.Access.SelectMany(r => r.List("first").Concat(r["or"].Split('/', ','))).ToHashSet();
        faults.AddRange(facts.Except(spoken).Select(id => $"nothing asks {id}"));
        faults.AddRange(operations.Except(spoken).Select(id => $"nothing needs {id}"));
        var reached = tables.Access.Select(r => r["target"].Split('.')[0]).ToHashSet();
        faults.AddRange(tables.PartKinds.Except(reached).Select(id => $"no access row for {id}"));
        var tied = tables.Joints.Select(r => r["part"]).ToHashSet();
        faults.AddRange(tables.PartKinds.Except(tied).Except(["block", "crankcase"]).Select(id => $"no joint for {id}"));
        return faults;
    }

    /// <summary>A ring of parts and operations that each must be first, or null: nothing of it could ever begin.</summary>
    public static string? Ring(EngineModel model)
    {
        var state = new Dictionary<string, int>();
        foreach (var start in model.Access.Keys)
            if (Visit(start, []) is { } ring)
                return ring;
        return null;

        string? Visit(string at, List<string> path)
        {
            if (state.GetValueOrDefault(at) == 2)
                return null;
            if (path.IndexOf(at) is >= 0 and var i)
                return string.Join(" < ", path.Skip(i).Append(at));
            path.Add(at);
            if (model.Access.TryGetValue(at, out var rule))
                foreach (var need in rule.First)
                    if (Visit(need.Id, path) is { } ring)
                        return ring;
            path.RemoveAt(path.Count - 1);
            state[at] = 2;
            return null;
        }
    }

    /// <summary>What of an engine does not hang together; empty when all does.</summary>
    public static IReadOnlyList<string> Faults(EngineModel model)
    {
        var faults = new List<string>();
        bool Known(string id) => model.Parts.ContainsKey(id);
        foreach (var joint in model.Joints.Values)
            faults.AddRange(joint.FixedTo.Append(joint.Part).Where(id => !Known(id)).Select(id => $"{joint.Id} ties {id}"));
        foreach (var joint in model.Joints.Values.Where(j => j.IsCounted && (j.Guess.Fewest < 1 || j.Guess.Most < j.Guess.Fewest)))
            faults.Add($"{joint.Id} has {joint.Guess}");
        foreach (var line in model.Lines.Values)
            faults.AddRange(new[] { line.From, line.To }.Where(p => !p.IsOutside && !Known(p.Part)).Select(p => $"{line.Id} ends at {p.Id}"));
        foreach (var rule in model.Access.Values)
            foreach (var need in rule.First.Concat(rule.Choices.SelectMany(c => c.Sets).SelectMany(s => s)))
                if (need.Sort switch { NeedSort.PartOff => !Known(need.Id), NeedSort.LineParted => !model.Lines.ContainsKey(need.Id), NeedSort.Operation => !model.Operations.ContainsKey(need.Id), _ => !model.Facts.ContainsKey(need.Id) })
                    faults.Add($"{rule.Target} needs {need.Id}");
        faults.AddRange(model.Parts.Values.GroupBy(p => p.Name).Where(g => g.Count() > 1).Select(g => $"two parts are called {g.Key}"));
        faults.AddRange(model.Lines.Values.GroupBy(p => p.Name).Where(g => g.Count() > 1).Select(g => $"two lines are called {g.Key}"));
        faults.AddRange(model.Parts.Keys.Where(id => model.JointsOf(id).Count == 0 && id is not ("block.1" or "crankcase.1" or "case-half.1")).Select(id => $"{id} hangs on nothing"));
        faults.AddRange(model.Parts.Keys.Where(id => Root(model, id) is null).Select(id => $"{id} hangs in a ring"));
        if (Ring(model) is { } ring)
            faults.Add($"a ring: {ring}");
        return faults;
    }

    private static string? Root(EngineModel model, string part)
    {
        for (var steps = 0; steps < 20; steps++)
        {
            if (model.CarrierOf(part) is not { } carrier)
                return part;
            part = carrier;
        }

        return null;
    }
}
