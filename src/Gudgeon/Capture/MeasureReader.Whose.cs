namespace Gudgeon.Capture;

/// <summary>Whose a figure is, told before it, and how often it was read.</summary>
internal sealed partial class MeasureReader
{
    /// <summary>"liner one stands four hundredths proud", "the pump gears have four thou of end float": whose it is, before the figure.</summary>
    private MeasureRead? Held(int at, int end)
    {
        if (at > 0 && !tokens[at - 1].IsBreak && Word(at - 1) is not ("and" or "but" or "so" or "that" or "while"))
            return null;
        int verb = at + 1;
        while (verb < end && verb < at + 7 && !tokens[verb].IsBreak && !(Has(verb) && NumberWords.At(tokens, Figure(verb)) is { Sort: NumSort.Whole or NumSort.Decimal or NumSort.Fraction }))
            verb++;
        if (verb >= end || !Has(verb) || new ThingReader(tokens, index, resolver).At(at) is not { Thing: { Sort: ThingSort.Part, Ids.Count: > 0, Others.Count: 0, Detail: "" } whose } phrase || phrase.To != verb)
            return null;
        if (Reversed(Figure(verb), end) is not { } read || read.Readings[0].What is var what && !(what is "end float" or "run-out" or "side play" || read.Thing is null || read.Thing.Kind == whose.Kind))
            return null;
        return read with { From = at, Thing = whose, Readings = [.. read.Readings.Select(r => r with { Thing = read.Thing?.Kind == whose.Kind && read.Thing.Where.Length > 0 ? r.Thing : whose })] };
    }

    private bool Has(int at) => Word(at) is "have" or "has" or "had" or "'ve" or "stands" or "stand" or "stood" or "sits" or "sit" or "sticks" or "stick" or "shows" or "show" or "'s" or "is" or "are" or "got";

    /// <summary>Where the figure after the verb begins.</summary>
    private int Figure(int verb)
    {
        int to = verb + 1;
        while (Word(to) is "got" or "up" or "about" or "only" or "just" or "roughly" or "still")
            to++;
        return to;
    }

    /// <summary>"I have taken three times", "checked twice": how often it was read is no figure of it; one past it.</summary>
    private int? Times(int at)
    {
        int to = at;
        bool read = false;
        while (Word(to) is "i" or "we" or "have" or "'ve" or "has" or "had" or "was" or "it" or "is" or "been" or "taken" or "took" or "measured" or "checked" or "clocked" or "read" or "tried" or "did" or "done" or "over" or "that")
            read |= Word(to++) is "taken" or "took" or "measured" or "checked" or "clocked" or "read" or "tried" or "did" or "done";
        if (!read)
            return null;
        if (Word(to) is "twice" or "thrice")
            to++;
        else if (NumberWords.At(tokens, to) is { IsCount: true } n && Word(n.To) is "times" or "time" or "goes")
            to = n.To + 1;
        else
            return null;
        while (Word(to) is "now" or "over" or "and" or "to" or "be" or "sure" or "same" or "each" or "every" or "time" or "always" or "it" or "got" or "still" || (to < tokens.Count && tokens[to].Sort == TokenSort.Comma))
            to++;
        return to;
    }
}
