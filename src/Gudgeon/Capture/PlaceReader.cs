using System.Globalization;

namespace Gudgeon.Capture;

/// <summary>Reads places (bag 12, third cup of the muffin tin, back in their holes finger tight) and tags (green tag three).</summary>
internal sealed partial class PlaceReader(IReadOnlyList<Token> tokens, PartIndex index)
{
    private static readonly HashSet<string> Prepositions = ["in", "into", "on", "onto", "under", "behind", "to", "inside", "beside", "underneath", "by", "against", "from", "through", "along", "near", "beneath", "alongside", "within", "atop"];
    private static readonly HashSet<string> Determiners = ["the", "a", "an", "my", "its", "their", "that", "this", "our", "own", "another", "some", "each"];
    private static readonly HashSet<string> Colours = ["red", "green", "blue", "yellow", "white", "black", "orange", "pink", "purple", "brown", "grey", "clear", "silver"];

    public static bool IsPreposition(string word) => Prepositions.Contains(word);

    public static bool IsColour(string word) => Colours.Contains(word);

    /// <summary>Words for laying something down, before or after what is laid.</summary>
    public static bool IsLaying(string word) => Lay.Contains(word);

    private static readonly HashSet<string> Lay = ["sitting", "lying", "standing", "leaning", "resting", "hanging", "living", "hung", "put", "laid", "stood", "leant", "stored", "stashed", "stowed", "parked", "propped", "dumped", "chucked", "placed", "left", "stacked", "piled", "kept", "hid", "hidden", "shoved", "lives", "live", "goes", "gone", "went", "moved", "slid", "pushed", "set", "stuck", "popped", "slung", "threw", "thrown", "tossed", "lobbed", "plonked", "plopped", "whacked", "tucked", "dropped", "bunged", "stuffed", "stick", "sat", "sits", "bagged", "boxed", "keeping", "bung", "chuck", "pop", "stash", "wrapped", "rests", "laying", "sit", "lie", "lies", "rest", "soaking", "steeping", "drying", "airing", "stewing", "strung", "threaded", "poked", "stands", "tipped"];

    /// <summary>Where something lies beside something else.</summary>
    private static readonly HashSet<string> Beside = ["under", "behind", "underneath", "beside", "against", "by", "near", "beneath", "below", "above", "alongside", "over"];

    private static readonly HashSet<string> NeedsHelp =
        ["tray", "tin", "box", "cup", "rack", "card", "folder", "wall", "pot", "corner", "boot", "hook", "pan", "bottle", "pallet", "bowl", "floor", "shed", "bench", "trestle", "shelf", "drawer", "jar", "bucket", "cupboard", "window sill", "envelope", "bag", "tub", "rag", "vice", "fridge"];

    private string Word(int at) => at >= 0 && at < tokens.Count && tokens[at].IsWord ? tokens[at].Text : "";

    public (Place Place, int To)? At(int at)
    {
        // "in order on the bench": the manner may come first.
        if (Word(at) == "in" && Word(at + 1) == "order" && Container(at + 2) is { } ordered)
            return (ordered.Place with { Manner = ordered.Place.Manner.Length > 0 ? $"in order, {ordered.Place.Manner}" : "in order" }, ordered.To);
        return OwnHoles(at) ?? WithPart(at) ?? Same(at) ?? Wrapped(at) ?? Container(at);
    }

    /// <summary>"finger tight", "loose", "hand tight".</summary>
    private (string Manner, int To)? Manner(int at) => (Word(at), Word(at + 1)) switch
    {
        ("finger" or "fingers" or "hand", "tight") => ($"{Word(at)} tight", at + 2),
        ("loose" or "loosely" or "slack", _) => ("loose", at + 1),
        ("fingertight" or "handtight", _) => (Word(at) == "fingertight" ? "finger tight" : "hand tight", at + 1),
        ("by", "hand") => ("by hand", at + 2),
        ("nipped", "up") => ("nipped up", at + 2),
        ("in", "order") => ("in order", at + 2),
        ("with", "arrows") when Word(at + 2) == "forward" => ("arrows forward", at + 3),
        ("front", "to") when Word(at + 2) is "back" or "rear" => ("front to back", at + 3),
        ("a", "couple") when Word(at + 2) == "of" && Word(at + 3) is "turns" or "threads" => ("a couple of turns", at + 4),
        ("a", "few") when Word(at + 2) is "turns" or "threads" => ("a few turns", at + 3),
        ("just", _) when Manner(at + 1) is { } later => later,
        _ => null,
    };

    private (Place Place, int To)? OwnHoles(int at)
    {
        int to = at;
        if (Word(to) == "captive")
            return Finish(to + 1);
        if (Word(to) is "left" or "put" or "screwed" or "run" or "wound" or "threaded" or "popped" or "stuck" or "all" or "spun" or "ran" or "dropped" or "refitted" or "fitted" or "nipped" or "started" or "twirled" or "replaced" && (Word(to + 1) is "loosely" or "them" or "all" or "it" ? to + 2 : to + 1) is var turned && Word(turned) is "back" or "in" or "into")
        {
            // "wound back in", said of bolts just counted and with no place: the holes they came from.
            if (Word(to) is "wound" or "threaded" or "spun" or "screwed" or "run" or "ran" or "twirled" or "started" && Word(turned) == "back" && Word(turned + 1) == "in" && (turned + 2 >= tokens.Count || tokens[turned + 2].IsBreak || Manner(turned + 2) is not null || Word(turned + 2) is "a" or "and"))
                return Finish(turned + 2);
            to = turned;
        }

        bool back = Word(to) is "back" or "still" or "stay" or "stays" or "stayed" or "staying";
        if (back)
            to++;
        if (Word(to) is not ("in" or "into" or "where"))
            return null;
        if (back && Word(to) == "in" && Word(to + 1) == "where")
            to++;
        if (Word(to) == "where")
            return back && Word(to + 1) is "they" or "it" && Word(to + 2) is "came" or "go" or "belong" ? Finish(Word(to + 2) == "came" && Word(to + 3) == "from" ? to + 4 : to + 3) : null;
        int after = to + 1;
        if (Word(after) is "that" or "this")
            return null;
        while (Determiners.Contains(Word(after)) || Word(after) is "same" or "original" or "respective")
            after++;
        if (Word(after) is "hole" or "holes" or "position" or "positions" or "bore" or "bores" or "seats" or "sockets" && (back || after > to + 1))
            return Finish(after + 1);
        if (Word(after) is "place" && (back || Word(at) == "left"))
            return Finish(after + 1);
        if (back && after == to + 1 && Manner(after) is not null)
            return Finish(after);
        if ((back || Word(at) == "left") && index.Book.Longest(tokens, after) is { Values.Count: > 0 } part && (back || Manner(part.To) is not null || Lots(at)))
        {
            if (Lexicon.Containers.Longest(tokens, after).Values.Count > 0 && Manner(part.To) is null)
                return null;
            var own = Finish(part.To);
            return (own.Place with { PartAt = after }, own.To);
        }

        // "left in the bracket finger tight": whatever it is they stay in.
        for (int k = after; (back || Word(at) == "left") && after > to + 1 && k < after + 3 && Word(k).Length > 0; k++)
        {
            if (Manner(k + 1) is not null)
                return Finish(k + 1);
        }

        if (back && Word(to) == "in" && Word(after) == "by" && Word(after + 1) == "hand")
            return Finish(after);
        return back && Manner(to + 1) is not null ? Finish(to + 1) : null;
    }

    /// <summary>Fasteners were just spoken of, so what stays in a part is they.</summary>
    private bool Lots(int at) => at > 0 && Lexicon.Fasteners.Longest(tokens, at - 1).Values.Count > 0;

    private (Place Place, int To) Finish(int to)
    {
        string manner = "";
        if (Manner(to) is { } how)
            (manner, to) = how;
        return (new Place(PlaceSort.OwnHoles, "own holes") { Manner = manner }, to);
    }

    private (Place Place, int To)? WithPart(int at)
    {
        if (Word(at) is not ("kept" or "stay" or "stays" or "staying" or "stored" or "left") || Word(at + 1) is not ("with" or "beside" or "on"))
            return null;
        int after = at + 2;
        while (Determiners.Contains(Word(after)))
            after++;
        return index.Book.Longest(tokens, after) is { Values.Count: > 0 } part && Word(at + 1) == "with"
            ? (new Place(PlaceSort.With, $"with {string.Join(" ", Enumerable.Range(after, part.To - after).Select(Word))}"), part.To)
            : null;
    }

    private (Place Place, int To)? Container(int at)
    {
        int to = at;
        string prep = "";
        // What it is wrapped in is no place to look.
        if (Word(at - 1) is "wrapped" or "covered" or "smothered" or "caked" or "soaked" or "swimming" && Word(at) is "in" or "with")
            return null;
        if (Prepositions.Contains(Word(to)) || (Word(to) == "at" && Word(to + 1) == "the" && Word(to + 2) is "left" or "right" or "far" or "near" or "back" or "front" or "other" && Word(to + 3) is "side" or "end" && Word(to + 4) == "of"))
            prep = Word(to++);
        if (prep == "back" || (prep == "on" && Word(to) == "to"))
            to++;
        if (prep.Length == 0 && Word(to) == "next" && Word(to + 1) == "to")
            (prep, to) = ("next to", to + 2);
        // What is on the courier's van is on its way.
        if (prep.Length > 0 && Enumerable.Range(to, 3).Any(k => Word(k) is "courier" or "postman" or "carrier" or "delivery" && Word(k + 1) is "'s" or "van" or "lorry" or "truck"))
            return null;
        bool determined = Determiners.Contains(Word(to)) || Word(to) is "her" or "his" or "your";
        if (prep.Length > 0 && Owner(to) is var owned && owned > to && Word(owned - 1) == "'s")
            (determined, to) = (true, owned);
        while (Determiners.Contains(Word(to)) || Word(to) is "all" or "her" or "his" or "your" || Word(to) == "one" && prep.Length > 0 && Named(to + 1, true) is { } single && !tokens[single.To - 1].Plural)
            to++;
        if (prep.Length > 0 && Word(to) is "lid" or "bottom" or "top" && Word(to + 1) == "of" && Whole(Owner(to + 2)) is { } of1)
            return Placed((Word(to) == "lid" ? $"{of1.Label} lid" : Word(to) == "top" && prep == "on" ? $"top of the {of1.Label}" : of1.Label, of1.To), prep);
        // "on the left side of the bench"
        if (prep.Length > 0 && Word(to) is "left" or "right" or "far" or "near" or "back" or "front" or "other" or "top" or "bottom" or "middle" && (Word(to + 1) is "side" or "end" or "half" or "corner" or "part" ? to + 2 : Word(to + 1) == "hand" && Word(to + 2) is "side" or "end" ? to + 3 : to + 1) is var of && Word(of) == "of" && (Whole(Owner(of + 1)) ?? (Word(to) == "back" ? Vehicle(Owner(of + 1)) : null)) is { } whole1)
            return Placed(($"{string.Join(" ", Enumerable.Range(to, of - to).Select(i => tokens[i].Text))} of the {whole1.Label}", whole1.To), prep);
        if (prep.Length > 0 && prep is not ("from" or "to" or "by") && Measured(to) is { } measured)
            return Placed(measured, prep);

        // third cup of the muffin tin; second row of the tray
        if (NumberWords.At(tokens, to) is { Sort: NumSort.Ordinal } nth && tokens.ElementAtOrDefault(nth.To).Stem is "cup" or "row" or "hole" or "slot" or "compartment" or "pocket" or "section" or "cell" or "drawer" or "shelf" or "layer" or "bay" && Word(nth.To + 1) is "of" or "in" or "down" or "up" or "on")
        {
            int inner = nth.To + 2;
            while (Determiners.Contains(Word(inner)))
                inner++;
            string cup = $"{tokens[nth.To].Stem} {nth.Int}";
            if (Word(nth.To + 1) is "down" or "up")
                return (new Place(PlaceSort.Container, cup), nth.To + 2);
            if (Named(inner, true) is { } tin)
                return (new Place(PlaceSort.Container, $"{tin.Label}, {cup}"), tin.To);
        }

        // "cup three of the muffin tin", "slot 4 in the rack"
        if (tokens.ElementAtOrDefault(to).Stem is "cup" or "row" or "hole" or "slot" or "compartment" or "pocket" or "section" or "cell" or "hollow" && NumberWords.At(tokens, Word(to + 1) is "number" or "no" ? to + 2 : to + 1) is { IsCount: true } cell && Word(cell.To) is "of" or "in")
        {
            int holder = cell.To + 1;
            while (Determiners.Contains(Word(holder)))
                holder++;
            if (Lexicon.Containers.Longest(tokens, holder).Values.Count > 0 && Named(holder, true) is { } celled)
                return (new Place(PlaceSort.Container, $"{celled.Label}, {(tokens[to].Stem == "hollow" ? "cup" : tokens[to].Stem)} {cell.Int.ToString(CultureInfo.InvariantCulture)}"), celled.To);
        }

        if (NumberWords.At(tokens, to) is { Sort: NumSort.Ordinal } shelf && Lexicon.Containers.Longest(tokens, shelf.To) is { Values.Count: > 0 } counted && prep.Length > 0)
            return Placed((Text(to, counted.To), counted.To), prep);
        bool alone = at == 0 || tokens[at - 1].IsBreak;
        // "out of the muffin tin": where it was, not where it is.
        if (prep.Length == 0 && Source(at))
            return null;
        if (prep.Length == 0 && Bare(at) is { } bare)
            return bare;
        if (alone && prep.Length == 0 && Named(to, true) is { } lone && lone.Label.Contains(' ', StringComparison.Ordinal) && Placed(lone, prep) is var whole && (whole.To >= tokens.Count || tokens[whole.To].IsBreak))
            return whole;
        if (prep.Length > 0 && prep is not ("from" or "to") && determined && Named(to, true) is null && (Described(to) ?? (Lies(at) && Somewhere(to) is { } some && !(Headed(to)?.To > some.To) ? some : null)) is { } described)
            return Placed(described, prep);
        if (prep is "in" or "into" or "on" or "onto" or "under" or "underneath" or "behind" or "inside" or "beside" or "against" && Named(to, true) is null && Headed(to) is { } headed && (headed.To > to + 1 || (determined && Word(to - 1) is not ("this" or "that"))))
            return Placed(headed, prep);
        return Named(to, prep.Length > 0) is { } named && (prep != "to" || determined || HasId(named.Label)) && !(prep is "from")
            ? Placed(named, prep)
            : null;
    }

    /// <summary>"the golden syrup tin": a thing to put things in, with words of its own before it.</summary>
    private (string Label, int To)? Described(int at)
    {
        for (int k = at + 1; k <= at + 3 && k < tokens.Count && Free(k - 1); k++)
        {
            if (Named(k, true) is { } named && Lexicon.Containers.Longest(tokens, k).Values.Count > 0)
                return ($"{string.Join(" ", Enumerable.Range(at, k - at).Select(i => tokens[i].Text))} {named.Label}", named.To);
        }

        return null;
    }

    /// <summary>Any place that is told as one: sitting on the dryer, it's under the stairs, leaning against the tyre.</summary>
    private (string Label, int To)? Somewhere(int at)
    {
        int to = at;
        while (to < at + 4 && Free(to) && !(to > at && Word(to) is "and" or "but" or "so" or "with" or "then" or "which" or "because" or "for" or "in" or "on" or "from" or "to" or "till" or "until" or "is" or "'s" or "are" or "by" or "near" or "under" or "at" or "of" or "now" or "again" or "where" or "if" or "upside" or "wrapped" or "covered" or "face" or "again" or "tonight"))
            to++;
        if (to == at || Word(to - 1) is "side" or "end" or "way" or "morning" or "evening" or "night" or "list" or "middle" or "order" or "edge" or "outside" or "inside" or "car" or "phone" or "same" or "one" or "ones" or "job" or "day" or "week" or "first" or "time" or "moment" or "meantime" or "lot" or "hand" or "go" or "bank" or "top" or "bottom" or "front" or "back" or "rear" or "left" or "right" or "spot" or "area" or "face" or "stroke" or "cold" or "dark" or "way" or "whole" or "post" or "ends" or "drink" or "new" or "fresh")
            return null;
        return (string.Join(" ", Enumerable.Range(at, to - at).Select(i => tokens[i].Text)), to);
    }

    /// <summary>A word that names no part, fastener, fault or figure.</summary>
    private bool Free(int at) =>
        Word(at).Length > 1 && !Determiners.Contains(Word(at)) && !Prepositions.Contains(Word(at)) && !index.Book.Longest(tokens, at).Values.Any(v => v.Rank < 2 && (v.IsLine ? index.Lines(v.Kind).Count : index.Parts(v.Kind).Count) > 0)
        && Lexicon.Fasteners.Longest(tokens, at).Values.Count == 0 && Lexicon.Faults.Longest(tokens, at).Values.Count == 0 && Lexicon.Acts.Longest(tokens, at).Values.Count == 0 && Lexicon.Details.Longest(tokens, at).Values.Count == 0
        && NumberWords.At(tokens, at) is null && Word(at) is not ("thrust" or "hole" or "holes" or "studs" or "water" or "oil" or "engine" or "bores" or "timing" or "pump" or "joint" or "bearing" or "drive");

    /// <summary>What stands before says that something lies or was put there.</summary>
    private bool Lies(int at) => Word(at - 1) is "all" or "newspaper" or "up" or "down" || Lay.Contains(Word(at - 1)) || (Word(at - 1) is "'s" or "are" or "'re" or "is" && Word(at - 2) is "it" or "they" or "that" or "those" or "them") || Laid(at);

    /// <summary>"put the starter in the dishwasher": the verb opens the clause, the thing stands between.</summary>
    private bool Laid(int at)
    {
        if (Word(at) is not ("in" or "into" or "on" or "onto" or "under" or "behind" or "inside"))
            return false;
        for (int k = at - 2; k >= 0 && k >= at - 6 && !tokens[k].IsBreak; k--)
        {
            if (Lay.Contains(Word(k)) && Word(k) is not ("went" or "gone" or "left" or "set" or "lives" or "live" or "goes" or "stuck") && (k == 0 || tokens[k - 1].IsBreak || Word(k - 1) is "i" or "we" or "and" or "'ve" or "then" or "just" or "have"))
                return true;
        }

        return false;
    }

    private static bool HasId(string label) => char.IsAsciiDigit(label[^1]);

    private (Place Place, int To) Placed((string Label, int To) named, string prep)
    {
        int slot = named.To < tokens.Count && tokens[named.To].Sort == TokenSort.Comma ? named.To + 1 : named.To;
        if (tokens.ElementAtOrDefault(slot).Stem is "cup" or "row" or "slot" or "compartment" or "section" or "hole" or "pocket" or "cell" && NumberWords.At(tokens, Word(slot + 1) is "number" or "no" ? slot + 2 : slot + 1) is { IsCount: true } nth && !IsLot(nth))
            named = ($"{named.Label}, {tokens[slot].Stem} {nth.Int.ToString(CultureInfo.InvariantCulture)}", nth.To);
        // "bucket of paraffin"
        if (Word(named.To) is "of" or "full" && (Word(named.To) == "full" ? named.To + 2 : named.To + 1) is var fluid && Word(fluid) is "paraffin" or "petrol" or "diesel" or "degreaser" or "cleaner" or "water" or "kerosene" or "thinners" or "oil" or "solvent" or "white" or "vinegar" or "acid" or "gasoline" or "sawdust" or "sand")
            named = ($"{named.Label} of {Word(fluid)}{(Word(fluid) == "white" && Word(fluid + 1) == "spirit" ? " spirit" : "")}", Word(fluid) == "white" && Word(fluid + 1) == "spirit" ? fluid + 2 : fluid + 1);
        // "top drawer of the toolbox"
        if (Word(named.To) == "of" && Owner(named.To + 1) is var owner && owner > named.To + 1 && Math.Max(Heads.Longest(tokens, owner).To, Lexicon.Containers.Longest(tokens, owner).To) is var whole && whole > owner)
            named = ($"{named.Label} of the {Text(owner, whole)}", whole);
        string label = prep == "next to" || Beside.Contains(prep) ? $"{prep} the {named.Label}" : named.Label;
        int to = named.To;
        string manner = "";
        while (Manner(to) is { } how)
        {
            manner = manner.Length > 0 ? $"{manner}, {how.Manner}" : how.Manner;
            to = how.To;
        }

        if (Tail(to, Lexicon.Containers.Longest(tokens, named.To - 1).Values.FirstOrDefault("")) is var tail && tail > to)
        {
            label = $"{label} {Text(to, tail)}";
            to = tail;
        }

        // "in the loft in a feed sack", "on the pallet under a tarp": the place stands; what it is in or under there goes with it.
        if (to == named.To && Word(to) is "in" or "under" && Word(to + 1) is "a" or "an" && !Counted(to) && Container(to) is { } wrap)
        {
            manner = manner.Length > 0 ? $"{manner}, {Text(to, wrap.To)}" : Text(to, wrap.To);
            to = wrap.To;
        }

        if (Word(to) is "strapped" or "tied" or "leaning" or "standing" or "upright" or "wrapped" or "flat" or "covered" or "lying" or "chained" or "propped")
        {
            int end = to;
            while (end < tokens.Count && !tokens[end].IsBreak && Word(end) is not ("and" or "but"))
                end++;
            string how = string.Join(" ", Enumerable.Range(to, end - to).Select(i => tokens[i].Text));
            manner = manner.Length > 0 ? $"{manner}, {how}" : how;
            to = end;
        }

        return (new Place(PlaceSort.Container, label) { Manner = manner }, to);
    }

    /// <summary>Fasteners are spoken of in the same breath.</summary>
    private bool Counted(int at)
    {
        for (int k = at - 1; k >= 0 && !tokens[k].IsEnd; k--)
        {
            if (Lexicon.Fasteners.Longest(tokens, k).Values.Count > 0)
                return true;
        }

        return false;
    }

    /// <summary>Adjectives, container, id: "top shelf", "blue bag", "bag 12", "bag marked sump".</summary>
    private (string Label, int To)? Named(int at, bool helped)
    {
        int to = at;
        var before = new List<string>();
        while (to - at < 3 && Lexicon.Containers.Longest(tokens, to).Values.Count == 0 && Word(to).Length > 2 && (Colours.Contains(Word(to)) || Adjective(to)))
            before.Add(Word(to++));
        if (to == at + 1 && Colours.Contains(before[0]) && Word(to) is "one" or "ones" && Like(at) is { } like)
            return (like, to + 1);
        var (values, end) = Lexicon.Containers.Longest(tokens, to);
        if (values.Count == 0)
            return null;
        string name = values[0];
        // "garage shelf", "kitchen drawer"
        if (end < tokens.Count && !tokens[end].IsBreak && Lexicon.Containers.Longest(tokens, end) is { Values: [var within, ..] } deeper && Word(end) is not ("cup" or "cups" or "card" or "boot" or "can" or "board" or "file" or "press"))
            (name, end) = (within, deeper.To);
        if (Word(end) is "lid" or "lids")
            end++;
        int lidded = Word(end) == "with" && Word(end + 1) is "the" or "a" && Colours.Contains(Word(end + 2)) && Word(end + 3) is "lid" or "top" or "cap" ? end + 4 : end;
        int said = end;
        string? id = null;
        if (Word(end) is "number" or "no" && NumberWords.At(tokens, end + 1) is { IsCount: true } numbered)
            (id, end) = (numbered.Int.ToString(CultureInfo.InvariantCulture), numbered.To);
        else if (NumberWords.At(tokens, end) is { IsCount: true } n && !IsLot(n) && Word(n.To) is not ("to" or "through"))
            (id, end) = (n.Int.ToString(CultureInfo.InvariantCulture), n.To);
        else if (Word(end) is "numbered" && NumberWords.At(tokens, end + 1) is { IsCount: true } figured)
            (id, end) = (figured.Int.ToString(CultureInfo.InvariantCulture), figured.To);
        else if (Word(end) is "letter" && Word(end + 1).Length == 1)
            (id, end) = (Word(end + 1).ToUpperInvariant(), end + 2);
        else if (Marks(end) is { } mark && NumberWords.At(tokens, mark) is { IsCount: true } wrote && (wrote.To >= tokens.Count || tokens[wrote.To].IsBreak || Word(wrote.To) is "and"))
            (id, end) = (wrote.Int.ToString(CultureInfo.InvariantCulture), wrote.To);
        else if (Marks(end) is { } marked && Quoted(marked) is { } quoted)
            (id, end) = (quoted.Label.Length == 1 ? quoted.Label.ToUpperInvariant() : $"“{quoted.Label}”", quoted.To);
        else if (Word(end) == "with" && Quoted(end + 1) is { } written && Word(written.To) == "on" && Word(written.To + 1) is "it" or "them")
            (id, end) = ($"“{written.Label}”", written.To + 2);
        else if (Word(end).Length == 1 && Word(end) is not ("a" or "i" or "x" or "s") && !tokens[end].Glued)
            (id, end) = (Word(end).ToUpperInvariant(), end + 1);
        else if (Word(end) == "a" && (end + 1 >= tokens.Count || tokens[end + 1].IsBreak))
            (id, end) = ("A", end + 1);
        if (id is null && !helped && NeedsHelp.Contains(name) && before.All(b => !Colours.Contains(b)))
            return null;
        if (end < tokens.Count && id is not null && NumberWords.At(tokens, end) is null && Word(end).Length == 1 && tokens[end].Glued)
            (id, end) = (id + Word(end).ToUpperInvariant(), end + 1);
        // "ice cream tub" stays what the person calls it, and will look for.
        string spoken = name == "bag" && said - to == 1 && Word(to) is not ("sack" or "pouch" or "sacks" or "carrier" or "bags") ? name : id is null ? Text(to, said) : $"{Text(to, said - 1)} {tokens[said - 1].Stem}".Trim();
        if (id is not null && before.Any(b => b is "top" or "bottom" or "left" or "right" or "middle" or "front" or "back"))
            return null;
        string label = string.Join(" ", before.Append(spoken));
        // "in the mug with the rest"
        if (id is null && Word(end) == "with" && Word(end + 1) == "the" && Word(end + 2) is "rest" or "others" or "other")
            return (label, Word(end + 2) == "other" && Word(end + 3) is "ones" or "bolts" or "nuts" or "screws" ? end + 4 : end + 3);
        if (id is null && lidded == end && helped && Word(end) == "with" && (Determiners.Contains(Word(end + 1)) ? end + 2 : end + 1) is var inside && (Free(inside) || Within.Contains(Word(inside))) && (inside + 1 >= tokens.Count || tokens[inside + 1].IsBreak || Word(inside + 1) is "in" or "on" or "and" or "so") && (Within.Contains(Word(inside)) || inside > end + 1 || Lexicon.Containers.Longest(tokens, inside).Values.Count == 0))
            return (Word(inside) == "holes" ? label : $"{label} {Text(end, inside + 1)}", Word(inside + 1) is "in" or "on" && Word(inside + 2) is "it" or "them" ? inside + 3 : inside + 1);
        if (id is null && lidded > end)
            return ($"{label} {string.Join(" ", Enumerable.Range(end, lidded - end).Select(i => tokens[i].Text))}", lidded);
        return (id is null ? label : $"{label} {id}", end);
    }

    /// <summary>"marked", "that says", "I've called": where the words of the label begin.</summary>
    private int? Marks(int at)
    {
        if (Word(at) is "marked" or "labelled" or "labeled" or "called" or "saying" or "tagged" or "named")
            return Word(at + 1) == "as" ? at + 2 : at + 1;
        return Word(at) is "that" or "which" && Word(at + 1) is "says" or "reads" ? at + 2 : null;
    }

    private bool IsLot(Num n) => Lexicon.Fasteners.Longest(tokens, n.To).Values.Count > 0 || (Word(n.To) == "m" && NumberWords.At(tokens, n.To + 1) is not null);

    /// <summary>What a box or a board may have to keep things apart.</summary>
    private static readonly HashSet<string> Within = ["holes", "nails", "pegs", "dividers", "slots", "lids", "labels", "compartments", "hooks", "pins", "foam", "handles", "wheels"];

    private static readonly HashSet<string> Ornaments = [.. PlaceWords("ornament")];

    /// <summary>Worn things make good trays: no fault of a part is told where a place follows at once.</summary>
    private static readonly HashSet<string> Flawed = [.. PlaceWords("flawed")];

    private static readonly PhraseBook<string> Heads = HeadBook();

    private static IEnumerable<string> PlaceWords(string sort) => Lexicon.Rows("place-words").Where(r => r[0] == sort).SelectMany(r => r[1].Split("; "));

    private static PhraseBook<string> HeadBook()
    {
        var book = new PhraseBook<string>();
        foreach (string word in PlaceWords("head"))
            book.Add(word, word);
        return book;
    }

    private bool Adjective(int at) => Ornaments.Contains(Word(at)) || (Flawed.Contains(Word(at)) && Lexicon.Containers.Longest(tokens, at + 1).Values.Count > 0);

    /// <summary>"the chest freezer", "the left pocket of my coat", "the back seat of the car": a place by its last word, with what adorns it.</summary>
    private (string Label, int To)? Headed(int at)
    {
        int to = at;
        int head = -1;
        while (to < at + 5 && to < tokens.Count && tokens[to].IsWord)
        {
            if (Heads.Longest(tokens, to) is { Values.Count: > 0 } found)
                head = to = found.To;
            else if (head >= 0 || !(Ornaments.Contains(Word(to)) || Flawed.Contains(Word(to)) || (Free(to) && !Lexicon.Fillers.Contains(Word(to)))))
                break;
            else
                to++;
        }

        // What a part is called is no place: the rail, the cap, the block.
        if (head < 0 || (head == at + 1 && index.Book.Longest(tokens, at).Values.Any(v => v.Rank < 2)) || Lexicon.Fasteners.Longest(tokens, head).Values.Count > 0 || index.Book.Longest(tokens, head - 1).To > head)
            return null;
        string label = string.Join(" ", Enumerable.Range(at, head - at).Select(i => tokens[i].Text));
        if (Word(head) != "of" || Word(head + 1) == "all")
            return (label, head);
        int whole = Owner(head + 1);
        return Heads.Longest(tokens, whole) is { Values.Count: > 0 } of ? ($"{label} of the {Text(whole, of.To)}", of.To)
            : whole > head + 1 && Free(whole) ? ($"{label} of the {Word(whole)}", whole + 1)
            : (label, head);
    }

    private string Text(int from, int to) => string.Join(" ", Enumerable.Range(from, to - from).Select(i => tokens[i].Text));

    /// <summary>One past "the", "my", "the wife's", "Dave's": whose place it is tells nothing of where it is.</summary>
    private int Owner(int at)
    {
        int to = at;
        while (Determiners.Contains(Word(to)) || Word(to) is "her" or "his" or "your" or "all")
            to++;
        for (int k = to; k < to + 3 && Word(k).Length > 1 && Free(k); k++)
        {
            if (Word(k + 1) == "'s")
                return k + 2;
        }

        return to;
    }

    private (string Label, int To)? Quoted(int at)
    {
        int to = at;
        while (to < tokens.Count && to - at < 4 && !tokens[to].IsBreak && tokens[to].Sort is TokenSort.Word or TokenSort.Number && !(to > at && Word(to) is "and" or "with" or "on" or "in" or "but" or "is" or "plus"))
            to++;
        return to > at ? (string.Join(" ", Enumerable.Range(at, to - at).Select(i => tokens[i].Text)), to) : null;
    }
}
