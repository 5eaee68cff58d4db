namespace Gudgeon.Planning.Reach;

/// <summary>
/// What every way of undoing a node has in common: itself, all that its needs have, and all that the
/// alternatives of each choice share. The greatest solution of these equations, found by shrinking from
/// "everything" in an order in which the nodes can be undone, as dominators of a flow graph are found.
/// </summary>
internal static class MustSets
{
    public static ulong[][] Of(Wiring wiring)
    {
        var order = wiring.Derive(_ => true);
        var must = new ulong[wiring.Count][];
        var known = new bool[wiring.Count];
        bool changed;
        do
        {
            changed = false;
            foreach (var node in order)
            {
                var row = Row(wiring, must, known, node);
                if (known[node] && Bits.Same(row, must[node]))
                    continue;
                must[node] = row;
                known[node] = true;
                changed = true;
            }
        }
        while (changed && wiring.Members.Length > 0);
        for (var node = 0; node < wiring.Count; node++)
            must[node] ??= Everything(wiring.Count);
        return must;
    }

    public static ulong[][] OfAlternatives(Wiring wiring, ulong[][] must)
    {
        var rows = new ulong[wiring.Members.Length][];
        for (var alternative = 0; alternative < rows.Length; alternative++)
        {
            rows[alternative] = Bits.Empty(wiring.Count);
            foreach (var member in wiring.Members[alternative])
                Bits.Unite(rows[alternative], must[member]);
        }
        return rows;
    }

    private static ulong[] Row(Wiring wiring, ulong[][] must, bool[] known, int node)
    {
        var row = Bits.Empty(wiring.Count);
        Bits.Add(row, node);
        foreach (var need in wiring.Needs[node])
            Bits.Unite(row, must[need]);
        foreach (var choice in wiring.ChoicesOf[node])
        {
            ulong[]? common = null;
            foreach (var alternative in wiring.AlternativesOf[choice])
            {
                // A member not met yet still stands for everything, so this way takes nothing from the common part.
                if (wiring.Members[alternative].Any(member => !known[member]))
                    continue;
                var way = Bits.Empty(wiring.Count);
                foreach (var member in wiring.Members[alternative])
                    Bits.Unite(way, must[member]);
                if (common is null)
                    common = way;
                else
                    Bits.Intersect(common, way);
            }
            if (common is not null)
                Bits.Unite(row, common);
        }
        return row;
    }

    private static ulong[] Everything(int count)
    {
        var row = Bits.Empty(count);
        for (var item = 0; item < count; item++)
            Bits.Add(row, item);
        return row;
    }
}
