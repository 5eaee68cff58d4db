namespace Gudgeon.Capture;

/// <summary>Pieces told before their part, bores, and things that are no part of the engine at all.</summary>
internal sealed partial class ThingReader
{
    private static readonly PhraseBook<string> Strangers = StrangerBook();

    /// <summary>Stands for the kind of what is no part.</summary>
    private const string Strange = "?";

    private static PhraseBook<string> StrangerBook()
    {
        var book = new PhraseBook<string>();
        foreach (string word in Lexicon.Rows("strangers").SelectMany(r => r[1].Split("; ")))
            book.Add(word, word);
        return book;
    }

    /// <summary>"the sea water pump", "fuel filter": no part of this engine, whatever its last word says.</summary>
    private ThingPhrase? Stranger(int from)
    {
        int at = from;
        while (Loose.Contains(Word(at)) && Word(at).Length > 0)
            at++;
        if (Strangers.Longest(tokens, at) is not { Values: [var name, ..] } found || found.To < at + 2 || index.Book.Longest(tokens, at).Values.Any(v => v.Rank < 2 && (v.IsLine ? index.Lines(v.Kind).Count : index.Parts(v.Kind).Count) > 0) && index.Book.Longest(tokens, at).To >= found.To)
            return null;
        int end = found.To;
        if (Word(end) is "hose" or "pipe" or "line" or "cap" or "gasket" or "seal" or "lead" or "leads" or "plug" or "wire" or "wires" or "belt" or "switch" or "element")
            return null;
        bool plural = tokens[end - 1].Plural;
        string fastener = Fastener(ref end, out bool boltsPlural);
        var thing = new Thing(ThingSort.Unknown, "", [], name);
        lastKind = Strange;
        return new ThingPhrase(from, end, fastener.Length > 0 ? Joint(thing, fastener) : thing, plural || boltsPlural, false);
    }

    /// <summary>"the thread in the head", "crown of piston two", "second groove on number one": a piece of a part, told before it.</summary>
    private ThingPhrase? PieceOf(int from)
    {
        int at = Word(from) is "the" or "its" or "a" or "both" or "all" ? from + 1 : from;
        if (Lexicon.Details.Longest(tokens, at) is not { Values: [var piece, ..] } found || Lexicon.Fasteners.Longest(tokens, at).Values.Count > 0 || Word(found.To) is not ("in" or "of" or "on"))
            return null;
        // "the cap on the end of it": where on it does not matter.
        int of = found.To + 1;
        if (Word(of) == "the" && Word(of + 1) is "end" or "top" or "bottom" or "back" or "front" or "side" or "ends" && Word(of + 2) == "of")
            of += 3;
        var listed = Longest(at);
        if (Word(of) is "it" && Word(at - 1) != "a" && (Word(of + 1) is "'s" or "is" or "are" or "was" or "has" or "looks" or "feels" || Lexicon.Faults.Longest(tokens, of + 1).Values.Count > 0 || of + 1 >= tokens.Count || (tokens[of + 1].IsBreak ? Word(found.To) == "of" : Sights.At(tokens, of + 1) is not null)) && lastKind != Strange && listed.To <= found.To && index.Engine.Parts.TryGetValue(resolver.Near, out var near) && listed.Values.All(v => !PartIndex.Owns(v.Kind, near.Kind)))
            return new ThingPhrase(from, of + 1, new Thing(ThingSort.Part, near.Kind, [near.Id], near.Name) { Detail = piece }, false, false);
        if (!PieceHead(of))
            return null;
        if (listed.Values.Count > 0)
        {
            // "cap of the plug lead": of a part that has no such part.
            return listed.To <= found.To && At(of) is { Thing: { Sort: ThingSort.Part, Detail: "", Fastener: "", Kind: var owner } } owning && listed.Values.All(v => v.Kind != owner && !PartIndex.Owns(v.Kind, owner)) && Lexicon.PiecesOf[owner].Contains(piece)
                ? owning with { From = from, Thing = owning.Thing with { Detail = piece, Others = [.. owning.Thing.Others.Select(o => o with { Detail = piece })] } }
                : null;
        }

        if (Word(found.To) == "on" && Word(found.To + 1) == "number" && NumberWords.At(tokens, found.To + 2) is { IsCount: true } n && (n.To >= tokens.Count || tokens[n.To].IsBreak || Word(n.To) is "'s" or "is" or "has" or "was" or "looks") && resolver.Numbered(n.Int) is { } one)
            return new ThingPhrase(from, n.To, one with { Detail = piece }, false, false);
        return At(of) is { Thing: { Sort: ThingSort.Part, Detail: "", Fastener: "" } } whole
            ? whole with { From = from, Thing = whole.Thing with { Detail = piece, Others = [.. whole.Thing.Others.Select(o => o with { Detail = piece })] } }
            : null;
    }

    /// <summary>"shaft has play" after a turbo: a piece of what is spoken of, whatever part has that name elsewhere.</summary>
    private bool OwnPiece(int from)
    {
        int at = from;
        while (Word(at) is "the" or "its" or "his" or "front" or "rear" or "back")
            at++;
        string spoken = lastKind.Length > 0 ? lastKind : resolver.LastKind;
        return Lexicon.Details.Longest(tokens, at) is { Values: [var piece, ..] } found && Longest(at).To <= found.To && Lexicon.PiecesOf[spoken].Contains(piece) && Lexicon.Fasteners.Longest(tokens, found.To).Values.Count == 0;
    }

    /// <summary>Broken, cracked or worn is said from here on, with or without a verb.</summary>
    private bool Spoilt(int at)
    {
        int to = at;
        while (Word(to) is "'s" or "is" or "has" or "got" or "a" or "was" or "all" or "badly" or "had")
            to++;
        return Lexicon.Faults.Longest(tokens, to) is { Values: [{ Damage: true, Fault: not "leaking" }, ..] };
    }

    /// <summary>A part is named here, and not a place to lay things.</summary>
    private bool PieceHead(int at) =>
        Word(at) is "the" or "number" or "piston" or "my" || Longest(at).Values.Count > 0 && Lexicon.Containers.Longest(tokens, at).Values.Count == 0;

    /// <summary>"bore five is oval", "cylinder two wall": the bore, wherever this engine has it.</summary>
    private ThingPhrase? Bore(int from)
    {
        int at = Word(from) is "the" ? from + 1 : from;
        if (Word(at) is "bores" or "liners" && Word(at + 1) is "look" or "are" or "feel" or "all" or "have" or "seem" or "were" or "'re")
        {
            string kind1 = new[] { "liner", "barrel" }.FirstOrDefault(k => index.Parts(k).Count > 0) ?? "";
            if (kind1.Length > 0)
                return new ThingPhrase(from, at + 1, resolver.Resolve([new PartWord(kind1, false, null, 0)], new Selectors(), true, kind1), true, false);
            if (index.Parts("block").Concat(index.Parts("crankcase")).FirstOrDefault() is { } bored)
                return new ThingPhrase(from, at + 1, new Thing(ThingSort.Part, "block", [bored.Id], "bores") { Where = "bores" }, true, false);
        }

        int told = Word(at) is "number" or "no" ? at + 1 : at;
        bool before = NumberWords.At(tokens, told) is { Sort: NumSort.Whole or NumSort.Ordinal } led && Word(led.To) is "bore" or "cylinder" && (Word(at - 1) is "in" or "down" or "inside" or "on" or "of") && Seen(at - 1);
        if ((!before && Word(at) is not ("bore" or "cylinder")) || NumberWords.At(tokens, before ? told : at + 1) is not { Sort: NumSort.Whole or NumSort.Ordinal } n || (!before && !n.IsCount) || n.Int is < 1 or > 28)
            return null;
        int end = before ? n.To + 1 : n.To;
        bool wall = Word(end) is "wall" or "bore" or "walls" || before || (Word(at) == "bore" && Word(at - 1) is "in" or "down" or "inside" && Seen(at - 1));
        bool closed = wall && Word(end) is not ("wall" or "bore" or "walls");
        if (wall && !closed)
            end++;
        if (!wall && Word(at) == "cylinder" && Word(end) is "has" or "'s" or "had" && Enumerable.Range(end + 1, 4).Any(k => Lexicon.Faults.Longest(tokens, k).Values.Count > 0 && Word(k) is not ("good" or "wet" or "dry")) && Word(end + 1) is "a" or "got" or "some")
            wall = true;
        if (!wall && !(Word(end) is "'s" or "is" or "was" or "has" or "looks" or "feels" || Lexicon.Faults.Longest(tokens, end).Values.Count > 0) || (Word(at) == "cylinder" && !wall && Lexicon.Faults.Longest(tokens, Word(end) is "'s" or "is" or "has" ? end + 1 : end).Values.Count == 0))
            return null;
        foreach (string kind in new[] { "liner", "barrel" })
        {
            if (index.Parts(kind).Count > 0)
            {
                var selectors = new Selectors();
                selectors.Numbers.Add(n.Int);
                return new ThingPhrase(from, end, resolver.Resolve([new PartWord(kind, false, null, 0)], selectors, false, kind), false, false);
            }
        }

        var block = index.Parts("block").Concat(index.Parts("crankcase")).FirstOrDefault();
        return block is null ? null : new ThingPhrase(from, end, new Thing(ThingSort.Part, "block", [block.Id], $"bore {n.Int}") { Where = $"bore {n.Int}" }, false, false);
    }

    /// <summary>Something was seen just before: rust in number three bore.</summary>
    private bool Seen(int at) => Enumerable.Range(Math.Max(0, at - 3), Math.Min(3, at)).Any(k => Lexicon.Faults.Longest(tokens, k) is { Values.Count: > 0 } fault && fault.To <= at && fault.To >= at - 1 && !tokens.Skip(k).Take(at - k).Any(t => t.IsBreak));
}
