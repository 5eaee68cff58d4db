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
        var (row, way, common) = (Bits.Empty(wiring.Count), Bits.Empty(wiring.Count), Bits.Empty(wiring.Count));
        // Counts rows worked out: a node whose inputs have not shrunk since its own row was is left as it is.
        var now = 0;
        var changedAt = new int[wiring.Count];
        var workedOutAt = new int[wiring.Count];
        bool changed;
        do
        {
            changed = false;
            foreach (var node in order)
            {
                if (must[node] is not null && !HasShrunk(wiring, node, changedAt, workedOutAt[node]))
                    continue;
                workedOutAt[node] = ++now;
                WorkOut(wiring, must, node, row, way, common);
                if (must[node] is not { } before)
                    must[node] = (ulong[])row.Clone();
                else if (Bits.Same(row, before))
                    continue;
                else
                    row.CopyTo(before, 0);
                changedAt[node] = ++now;
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

    private static bool HasShrunk(Wiring wiring, int node, int[] changedAt, int since)
    {
        foreach (var need in wiring.Needs[node])
        {
            if (changedAt[need] > since)
                return true;
        }
        foreach (var choice in wiring.ChoicesOf[node])
        {
            foreach (var alternative in wiring.AlternativesOf[choice])
            {
                foreach (var member in wiring.Members[alternative])
                {
                    if (changedAt[member] > since)
                        return true;
                }
            }
        }
        return false;
    }

    /// <summary>The row of a node, into <paramref name="row"/>; the other two are for the work.</summary>
    private static void WorkOut(Wiring wiring, ulong[][] must, int node, ulong[] row, ulong[] way, ulong[] common)
    {
        Array.Clear(row);
        Bits.Add(row, node);
        foreach (var need in wiring.Needs[node])
            Bits.Unite(row, must[need]);
        foreach (var choice in wiring.ChoicesOf[node])
        {
            var isFirst = true;
            foreach (var alternative in wiring.AlternativesOf[choice])
            {
                // A member not met yet still stands for everything, so this way takes nothing from the common part.
                if (!AreKnown(must, wiring.Members[alternative]))
                    continue;
                Array.Clear(way);
                foreach (var member in wiring.Members[alternative])
                    Bits.Unite(way, must[member]);
                if (isFirst)
                    way.CopyTo(common, 0);
                else
                    Bits.Intersect(common, way);
                isFirst = false;
            }
            if (!isFirst)
                Bits.Unite(row, common);
        }
    }

    private static bool AreKnown(ulong[][] must, int[] members)
    {
        foreach (var member in members)
        {
            if (must[member] is null)
                return false;
        }
        return true;
    }

    private static ulong[] Everything(int count)
    {
        var row = Bits.Empty(count);
        for (var item = 0; item < count; item++)
            Bits.Add(row, item);
        return row;
    }
}
