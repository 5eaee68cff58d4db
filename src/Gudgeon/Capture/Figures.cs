namespace Gudgeon.Capture;

/// <summary>Joins spoken number groups into one value, the way people read an instrument aloud.</summary>
internal static class Figures
{
    /// <summary>
    /// One value at a token. "eighty six oh one two" is 86.012; "one fifty" is 150; after a full value "nine eight one"
    /// keeps its whole part. Null when no number stands there.
    /// </summary>
    public static (decimal Value, int To, bool Joined)? At(IReadOnlyList<Token> tokens, int at, bool whole, decimal? before)
    {
        var groups = new List<Num>();
        int to = at;
        while (groups.Count < 8 && NumberWords.At(tokens, to) is { Sort: NumSort.Whole or NumSort.Decimal or NumSort.Fraction } n)
        {
            // "one thirty three point two"
            if (groups is [{ Value: > 0 and < 10 } hundreds] && n is { Sort: NumSort.Decimal, Value: >= 10 and < 100 } && tokens[n.From].IsWord && tokens[hundreds.From].IsWord)
                return ((hundreds.Value * 100) + n.Value, n.To, true);
            // "fifteen ten thousandths": the ten belongs to the unit.
            if (groups.Count > 0 && (n.Sort != NumSort.Whole || Units.At(tokens, to) is { Unit: "tenth thou" }))
                break;
            groups.Add(n);
            to = n.To;
            if (n.Sort != NumSort.Whole)
                break;
        }

        if (groups.Count == 0)
            return null;
        if (groups.Count == 1 || groups[0].Sort != NumSort.Whole)
            return (groups[0].Value, groups[0].To, false);
        return whole ? Whole(groups, tokens) : Parted(groups, before);
    }

    private static (decimal, int, bool)? Whole(List<Num> groups, IReadOnlyList<Token> tokens)
    {
        decimal first = groups[0].Value;
        // "one eighty one seventy five": the second one begins the next figure.
        if (first is > 0 and < 10 && groups.Count > 2 && groups[1] is { Value: > 20 and < 100 } mixed && mixed.Value % 10 == first && mixed.To - mixed.From == 2 && groups[2].Value is >= 10 and < 100 && tokens[mixed.From].IsWord)
            return ((first * 100) + mixed.Value - first, mixed.To - 1, true);
        if (first is > 0 and < 10 && groups[1].Value is >= 10 and < 100)
            return ((first * 100) + groups[1].Value, groups[1].To, true);
        if (first is > 0 and < 10 && groups[1].Value == 0 && groups.Count > 2 && groups[2].Value < 10)
            return ((first * 100) + groups[2].Value, groups[2].To, true);
        return (first, groups[0].To, false);
    }

    private static (decimal, int, bool)? Parted(List<Num> groups, decimal? before)
    {
        int singles = groups.TakeWhile(g => g.Value < 10).Count();
        if (singles >= 2 && before is { } full && full >= 10 && groups[0].Value != decimal.Truncate(full))
            return (decimal.Truncate(full) + Digits(groups.Take(Math.Min(singles, 3))), groups[Math.Min(singles, 3) - 1].To, true);
        var tail = groups.Skip(1).TakeWhile(g => g.Value < 10).Take(4).ToList();
        if (tail.Count > 0 && tail.Count < groups.Count - 1 && tail.All(t => t.Value == 0) && groups[1 + tail.Count].Value is >= 10 and < 100)
            return (groups[0].Value + (groups[1 + tail.Count].Value / Pow(tail.Count + 2)), groups[1 + tail.Count].To, true);
        if (tail.Count >= 2 || (tail.Count == 1 && groups[0].Value >= 10))
            return (groups[0].Value + Digits(tail), tail[^1].To, true);
        if (tail.Count == 0 && groups[0].Value >= 10 && groups[1].Value is >= 10 and < 100)
            return (groups[0].Value + (groups[1].Value / 100), groups[1].To, true);
        if (groups[1].Value is >= 100 and < 1000 && groups[0].Value >= 10)
            return (groups[0].Value + (groups[1].Value / 1000), groups[1].To, true);
        return (groups[0].Value, groups[0].To, false);
    }

    private static decimal Digits(IEnumerable<Num> singles)
    {
        decimal value = 0;
        decimal place = 1;
        foreach (var single in singles)
            value += single.Value * (place /= 10);
        return value;
    }

    private static decimal Pow(int places)
    {
        decimal value = 1;
        for (int i = 0; i < places; i++)
            value *= 10;
        return value;
    }
}
