namespace Gudgeon.Capture;

/// <summary>The whole name of a place as it was said: with what tells it apart, or bare after a pause.</summary>
internal sealed partial class PlaceReader
{
    private static readonly HashSet<string> Beyond = ["by", "near", "over", "above", "under", "behind", "beside", "below", "beneath", "underneath", "outside", "inside", "across", "against", "opposite", "alongside", "next"];

    /// <summary>Furniture stands where it stands, so a machine beside it is no part of the engine.</summary>
    private static readonly HashSet<string> Furniture = ["shelf", "bench", "cupboard", "rack", "wall", "corner", "drawer", "hook", "trestle", "window sill"];

    private static readonly HashSet<string> Measures = ["bit", "piece", "lump", "length", "strip", "sheet", "block", "scrap", "pair", "couple", "stack", "roll", "row", "bundle"];

    /// <summary>One past "by the window", "over the compressor", "in the hall", "across two trestles"; the token itself when the name ends there.</summary>
    private int Tail(int at, string container)
    {
        bool within = Word(at) is "in" or "on";
        if (!within && !Beyond.Contains(Word(at)))
            return at;
        int noun = Word(at) == "next" ? at + 2 : at + 1;
        int first = Owner(noun);
        if (first == noun && NumberWords.At(tokens, noun) is { IsCount: true, Value: > 1 } several && !IsLot(several) && tokens.ElementAtOrDefault(several.To).Plural && !within)
            first = several.To;
        if (first == noun)
            return at;
        // "in the shed on the shelf" is told in two steps; "in the press in the hall" is one name.
        if (within && Word(noun) is "a" or "an" || Word(at) == "under" && Enumerable.Range(first, 2).Any(k => tokens.ElementAtOrDefault(k).Stem is "tarp" or "tarpaulin" or "blanket" or "sheet" or "cloth" or "towel" or "cover"))
            return at;
        if (within)
            return container == "shed" || Counted(at) && Word(at) == "on" ? at : Room(first) is > 0 and var room ? room : at;
        if (Furniture.Contains(container) && first < tokens.Count && tokens[first].IsWord && (first + 1 >= tokens.Count || tokens[first + 1].IsBreak))
            return first + 1;
        int to = first;
        while (to < first + 2 && (Free(to) || Named(to, true) is not null) && !(to > first && Word(to) is "and" or "with" or "for" or "till" or "until" or "so" or "where" or "now" or "again" or "is" or "upside" or "wrapped"))
            to++;
        return to > first ? to : at;
    }

    /// <summary>One past "hall", "boiler room", "kitchen": a room or a piece of furniture, else 0.</summary>
    private int Room(int at)
    {
        for (int k = at; k < at + 3 && k < tokens.Count && tokens[k].IsWord; k++)
        {
            int to = Math.Max(Heads.Longest(tokens, k).To, Lexicon.Containers.Longest(tokens, k).To);
            to = Word(k) is "room" ? k + 1 : to;
            if (to > k)
                return Word(to) == "room" ? to + 1 : to;
            if (!Free(k) && !Adjective(k))
                return 0;
        }

        return 0;
    }

    /// <summary>What something is the top, the lid or the back of: a container, or a place by its last word.</summary>
    private (string Label, int To)? Whole(int at) =>
        Lexicon.Containers.Longest(tokens, at).Values.Count > 0 || Adjective(at) ? Named(at, true) ?? Headed(at)
        : Heads.Longest(tokens, at) is { Values.Count: > 0 } head ? (Text(at, head.To), head.To)
        : Lexicon.Containers.Longest(tokens, at + 1).Values.Count > 0 && tokens[at].IsWord && Named(at + 1, true) is { } adorned && index.Book.Longest(tokens, at).To <= at ? ($"{Word(at)} {adorned.Label}", adorned.To)
        : null;

    /// <summary>"the back of the pickup": there it is no strainer.</summary>
    private (string Label, int To)? Vehicle(int at) => Word(at) is "pickup" or "wagon" or "jeep" or "tractor" or "trailer" or "bus" ? (Word(at), at + 1) : null;

    /// <summary>"a bit of wire", "two lengths of timber", "two egg boxes": so much of something to lay things on or in.</summary>
    private (string Label, int To)? Measured(int at)
    {
        // "a couple egg cartons"
        if (Word(at) == "couple" && Named(at + 1, true) is { } pair)
            return pair;
        int unit = NumberWords.At(tokens, at) is { IsCount: true, Value: > 1 } n && !IsLot(n) ? n.To : at;
        if (unit < tokens.Count && Measures.Contains(tokens[unit].Stem) && Word(unit + 1) == "of" && Owner(unit + 2) is var of)
            return Named(of, true) is { } named ? ($"{Text(at, of)} {named.Label}", named.To)
                : Headed(of) is { } headed ? ($"{Text(at, of)} {headed.Label}", headed.To)
                : Free(of) && !Lexicon.Fillers.Contains(Word(of)) ? (Text(at, of + 1), of + 1)
                : null;
        return unit > at && Named(unit, true) is { } plural && tokens[plural.To - 1].Plural ? ($"{Text(at, unit)} {plural.Label}", plural.To) : null;
    }

    /// <summary>
    /// "two M8 by 30, windowsill", "carburettor off. two nuts. mustard tin": a pause, and what fills the words to the next one is a
    /// place by its last word, with something counted or taken off before it.
    /// </summary>
    private (Place Place, int To)? Bare(int at)
    {
        if (at < 2 || !tokens[at - 1].IsBreak || !Told(at))
            return null;
        int end = at;
        while (end < tokens.Count && !tokens[end].IsBreak && Word(end) is not ("for" or "so"))
            end++;
        int first = Owner(at);
        while (first < end && Word(first) is "numbered" or "marked" or "labelled" or "labeled")
            first++;
        for (int k = first; k < end && k <= first + 3 && tokens[k].IsWord; k++)
        {
            // The last of several words counts: a thing to put things in, or a head of the table.
            (string Label, int To)? found = Named(k, true) ?? (Heads.Longest(tokens, k) is { Values.Count: > 0 } head ? (Text(k, head.To), head.To) : null);
            if (found is { } place && Placed(place, "") is var whole && whole.To == end)
            {
                bool part = index.Book.Longest(tokens, k) is { Values.Count: > 0 } own && own.To == end && own.Values.Any(v => v.Rank < 2 && (v.IsLine ? index.Lines(v.Kind).Count : index.Parts(v.Kind).Count) > 0);
                return part && k == first && !HasId(place.Label) && Word(k) != "bucket" ? null : (whole.Place with { Label = $"{Text(Owner(at), k)} {whole.Place.Label}".Trim() }, whole.To);
            }

            if (Lexicon.Faults.Longest(tokens, k).Values.Count > 0 && !Adjective(k) || NumberWords.At(tokens, k) is not null || Word(k) is "same" or "no" or "not" or "sorry" || Lexicon.Fasteners.Longest(tokens, k).Values.Count > 0 || Prepositions.Contains(Word(k)) || Lexicon.Persons.Contains(Word(k)) || (Lexicon.Fillers.Contains(Word(k)) && !Adjective(k)))
                return null;
        }

        return null;
    }

    /// <summary>"in with the others", "same place": where those before went.</summary>
    private (Place Place, int To)? Same(int at)
    {
        int to = Word(at) is "in" && Word(at + 1) == "with" ? at + 2 : Word(at) == "alongside" ? at + 1 : 0;
        if (to > 0)
        {
            to = Determiners.Contains(Word(to)) ? to + 1 : to;
            to = Word(to) is "others" or "rest" or "other" or "them" or "those" or "lot" || Word(to) == "it" && (to + 1 >= tokens.Count || tokens[to + 1].IsBreak) ? to + (Word(to) == "other" && Word(to + 1) is "ones" or "bolts" or "nuts" or "screws" ? 2 : 1) : 0;
        }
        else
        {
            // "the cams are up there beside it"
            int there = Word(at) is "up" or "down" or "over" or "in" or "out" && Word(at + 1) == "there" ? at + 2 : Word(at) == "there" ? at + 1 : at;
            int beside = Word(there) == "next" && Word(there + 1) == "to" ? there + 2 : Word(there) is "beside" or "alongside" or "with" && there > at || Word(there) == "with" && Word(at - 1) is "is" or "'s" or "are" or "'re" or "put" or "lies" or "lie" || Word(there) is "beside" or "alongside" ? there + 1 : 0;
            if (beside > 0 && Word(beside) is "it" or "them" or "that" && (beside + 1 >= tokens.Count || tokens[beside + 1].IsBreak || Word(beside + 1) is "and" or "now" or "too"))
                return (new Place(PlaceSort.Container, "same place"), beside + 1);
            if (Word(at) == "in" && Word(at + 1) == "there" && Word(at + 2) is "too" or "also" && (at + 3 >= tokens.Count || tokens[at + 3].IsBreak))
                return (new Place(PlaceSort.Container, "same place"), at + 3);
            int same = Word(at) is "in" or "to" ? at + 1 : at;
            same = Determiners.Contains(Word(same)) ? same + 1 : same;
            to = Word(same) == "same" && Word(same + 1) is "place" or "spot" ? same + 2 : 0;
        }

        return to > 0 && (to >= tokens.Count || tokens[to].IsBreak || Word(to) is "and" or "now" or "again" or "too") ? (new Place(PlaceSort.Container, "same place"), to) : null;
    }

    /// <summary>"wrapped in an old curtain on the top shelf": where it is, with what is round it.</summary>
    private (Place Place, int To)? Wrapped(int at)
    {
        if (Word(at) is not ("wrapped" or "rolled" or "bundled") || (Word(at + 1) == "up" ? at + 2 : at + 1) is var round && Word(round) is not ("in" or "with"))
            return null;
        for (int k = round + 2; k <= round + 4 && k < tokens.Count && tokens[k].IsWord; k++)
        {
            if (Prepositions.Contains(Word(k)) && Container(k) is { } lies)
                return (lies.Place with { Manner = Text(at, k) }, lies.To);
        }

        return null;
    }

    /// <summary>"in the red box, four to six in the green one": the thing told before in another colour.</summary>
    private string? Like(int at)
    {
        for (int k = at - 1; k > 0; k--)
        {
            if (Colours.Contains(Word(k)) && Word(k + 1) is not ("one" or "ones") && Named(k, true) is { } before && before.To < at)
                return $"{Word(at)} {before.Label[(Word(k).Length + 1)..]}";
        }

        return null;
    }

    /// <summary>What stands here is told as where something came from: out of the tin, from the tray.</summary>
    private bool Source(int at)
    {
        int k = at - 1;
        while (k >= 0 && Determiners.Contains(Word(k)))
            k--;
        return Word(k) == "from" || Word(k) == "of" && Word(k - 1) is "out" or "off";
    }

    /// <summary>One past "out of the muffin tin"; the token itself when that is not said here.</summary>
    public int OutOf(int at) =>
        Word(at) == "out" && Word(at + 1) == "of" && Owner(at + 2) is var box && box > at + 2 && Named(box, true) is { } named && index.Book.Longest(tokens, box).Values.All(v => v.Rank > 1) ? named.To : at;

    /// <summary>Fasteners were counted before, or something came off.</summary>
    private bool Told(int at)
    {
        for (int k = 0; k < at; k++)
        {
            if (Lexicon.Fasteners.Longest(tokens, k).Values.Count > 0 || (Word(k) == "m" && NumberWords.At(tokens, k + 1) is { IsCount: true }) || Lexicon.Acts.Longest(tokens, k).Values.Any(a => a is Act.Off or Act.Undo))
                return true;
        }

        return false;
    }
}
