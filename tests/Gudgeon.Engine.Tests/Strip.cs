namespace Gudgeon.Engine.Tests;

/// <summary>Takes an engine apart on paper, as far as its access rules let it, round by round.</summary>
internal static class Strip
{
    /// <summary>Targets in the order in which they could be done; whatever is missing is stuck.</summary>
    public static IReadOnlyList<string> Order(EngineModel model, bool facts)
    {
        var done = new HashSet<string>();
        var order = new List<string>();
        var open = model.Parts.Keys.Concat(model.Operations.Keys).ToHashSet();
        bool Met(Need need) => need.Sort switch
        {
            NeedSort.Fact => facts,
            NeedSort.LineParted => true,
            _ => done.Contains(need.Id),
        };
        while (true)
        {
            var now = open.Where(id => !model.Access.TryGetValue(id, out var rule)
                || rule.First.All(Met) && rule.Choices.All(c => c.Sets.Any(s => s.All(Met)))).ToList();
            if (now.Count == 0)
                return order;
            foreach (var id in now)
            {
                open.Remove(id);
                done.Add(id);
                order.Add(id);
            }
        }
    }

    /// <summary>What cannot be done, with what it waits for.</summary>
    public static string Stuck(EngineModel model, bool facts)
    {
        var order = Order(model, facts).ToHashSet();
        var stuck = model.Parts.Keys.Concat(model.Operations.Keys).Where(id => !order.Contains(id));
        return string.Join("\n", stuck.Select(id => $"{id} waits for {string.Join(", ", model.Access[id].First.Select(n => n.Id).Where(n => !order.Contains(n)))} / {string.Join(" & ", model.Access[id].Choices.Select(c => string.Join(" or ", c.Sets.Select(s => string.Join("+", s)))))}"));
    }

    /// <summary>Every part that must be off before this one, whatever is chosen.</summary>
    public static IReadOnlySet<string> Before(EngineModel model, string target)
    {
        var found = new HashSet<string>();
        var open = new Stack<string>([target]);
        while (open.TryPop(out var at))
        {
            if (!model.Access.TryGetValue(at, out var rule))
                continue;
            foreach (var need in rule.First.Where(n => n.Sort is NeedSort.PartOff or NeedSort.Operation && found.Add(n.Id)))
                open.Push(need.Id);
        }

        found.RemoveWhere(id => id.StartsWith("op:", StringComparison.Ordinal));
        return found;
    }
}
