namespace Gudgeon.Capture;

/// <summary>
/// Ways of telling a condition that are made up as people speak: caked in stuff, stuff in the bottom, spins freely, in good nick,
/// sounds like gravel. The table of conditions holds what has no such pattern.
/// </summary>
internal static class Sights
{
    private static readonly HashSet<string> Coated = ["covered", "coated", "caked", "drenched", "bathed", "smothered", "plastered", "slick", "dripping", "soaked", "swimming", "running", "thick", "black", "wet", "full", "caked", "clogged", "choked", "bunged", "blocked", "crusted", "gummed", "plugged", "jammed", "stuffed", "encrusted", "lined", "layered", "saturated", "awash", "stuck", "furred", "packed", "dusted", "splattered", "filled"];

    /// <summary>So told, whatever it is stops the flow.</summary>
    private static readonly HashSet<string> Stopping = ["closed", "shut", "choked", "clogged", "plugged", "blocked", "bunged", "packed", "jammed", "stuffed"];

    /// <summary>What is put into an opening on purpose.</summary>
    private static readonly HashSet<string> Stoppers = ["rag", "rags", "bung", "bungs", "cork", "corks", "plug", "plugs", "tape", "tissue", "cloth", "paper", "foil", "cap", "caps", "towel", "newspaper", "string", "wire", "something", "them", "it", "grease", "the", "that", "this", "film", "glove", "carrot", "dowel", "pencil", "stick"];

    private static readonly HashSet<string> Before = ["green", "black", "thick", "nasty", "old", "white", "brown", "horrible", "hard", "dried", "wet", "the", "some", "fine", "loose", "a", "an", "lots", "lot", "of", "bit", "bits", "layer", "film", "coat", "coating", "inch", "traces", "little", "heavy", "light", "dirty", "burnt", "baked", "solid", "engine", "grey", "sticky", "gooey", "small", "tiny", "big", "blobs", "globs", "gobs", "slivers", "flakes", "specks", "plenty", "loads", "much", "years", "fresh", "clean", "soft", "tons", "few", "red", "blue", "orange"];

    private static readonly Dictionary<string, string> Stuffs = Table(
        ("oily", "oil grease"),
        ("full", "water coolant fuel petrol diesel antifreeze"),
        ("coked", "carbon coke"),
        ("sludge", "sludge mayonnaise mayo gloop emulsion treacle tar custard jelly"),
        ("metal in oil", "metal glitter swarf flakes filings shavings slivers bronze brass sparkles sparkle aluminium"),
        ("rusty", "rust"),
        ("scale", "scale limescale lime"),
        ("sealant", "sealant silicone silicon rtv goo mastic sealer"),
        ("dirty", "dirt muck crud gunk gunge grime soot crap filth grit mud dust shit grot mess sand leaves chaff straw hay grass sawdust fluff hair seeds gravel silt clay sediment debris rubbish bits crumbs"));

    private static readonly Dictionary<string, string> Manners = Table(
        ("smooth", "freely easily smoothly nicely sweetly lovely free smooth beautifully sweet true silky"),
        ("notchy", "roughly rough lumpy notchy gritty badly"));

    private static readonly HashSet<string> Well = ["good", "great", "nice", "lovely", "excellent", "decent", "fair", "perfect", "top", "reasonable", "cracking", "beautiful", "fine", "amazing", "super", "remarkable", "surprisingly", "pretty", "very", "really"];
    private static readonly HashSet<string> Ill = ["bad", "poor", "terrible", "awful", "shocking", "rough", "sorry", "right", "dreadful", "horrible", "dire", "terrible", "hell", "real", "appalling"];
    private static readonly HashSet<string> States = ["nick", "condition", "shape", "order", "fettle", "state", "way", "health"];

    private static Dictionary<string, string> Table(params (string What, string Words)[] rows) =>
        rows.SelectMany(r => r.Words.Split(' '), (r, word) => (word, r.What)).ToDictionary(w => w.word, w => w.What);

    private static string Word(IReadOnlyList<Token> tokens, int at) => at >= 0 && at < tokens.Count && tokens[at].IsWord ? tokens[at].Text : "";

    /// <summary>The condition told at the token, whether it is damage, and one past it.</summary>
    public static (string Fault, bool Damage, int To)? At(IReadOnlyList<Token> tokens, int at) =>
        Smeared(tokens, at) ?? Holding(tokens, at) ?? Moving(tokens, at) ?? State(tokens, at) ?? Sound(tokens, at) ?? Denied(tokens, at);

    /// <summary>"caked in burnt oil", "thick with soot", "full of glitter".</summary>
    private static (string, bool, int)? Smeared(IReadOnlyList<Token> tokens, int at)
    {
        // "half blocked with rubbish": how far, and whatever it is.
        int how = at + 1;
        if (Word(tokens, at) is "half" or "most" && Word(tokens, how) == "of" && Word(tokens, how + 1) is "it" or "them")
            how += 2;
        if (Word(tokens, how) is "is" or "'s" && Word(tokens, at) is "half" or "most")
            how++;
        if (Word(tokens, at) is "half" or "most" or "part" or "partly" or "partially" or "nearly" or "almost" or "mostly" or "completely" or "totally" && Stopping.Contains(Word(tokens, how)))
        {
            int with = Word(tokens, how + 1) is "up" or "solid" or "off" ? how + 2 : how + 1;
            if (Word(tokens, with) is not ("with" or "from" or "by"))
                return null;
            return Stuff(tokens, with + 1) is { } of ? (of.What is "sealant" or "coked" or "scale" ? of.What : "blocked", false, of.To) : Stopped(tokens, with + 1);
        }

        if (!Coated.Contains(Word(tokens, at)))
            return null;
        int to = Word(tokens, at + 1) is "up" or "solid" or "all" or "absolutely" or "right" or "tight" ? at + 2 : at + 1;
        if (Word(tokens, to) is not ("in" or "with" or "of") || (Word(tokens, to) == "of" && Word(tokens, at) != "full"))
            return null;
        if (Stuff(tokens, to + 1) is not { } stuff)
            return Stopping.Contains(Word(tokens, at)) && Word(tokens, to) == "with" ? Stopped(tokens, to + 1) : null;
        string what = stuff.What == "full" && Word(tokens, at) is not ("full" or "filled") ? "wet" : stuff.What;
        return (what, false, stuff.To);
    }

    /// <summary>"choked with salt", "plugged with corn husks": whatever it is, nothing gets through; a rag or a bung was put there.</summary>
    private static (string, bool, int)? Stopped(IReadOnlyList<Token> tokens, int at)
    {
        int to = at;
        while (Before.Contains(Word(tokens, to)))
            to++;
        if (Word(tokens, to).Length < 3 || Stoppers.Contains(Word(tokens, to)) || Lexicon.Fasteners.Longest(tokens, to).Values.Count > 0)
            return null;
        int end = to + 1;
        if (end < tokens.Count && tokens[end].IsWord && !Lexicon.Fillers.Contains(Word(tokens, end)) && Lexicon.Acts.Longest(tokens, end).Values.Count == 0 && Lexicon.Faults.Longest(tokens, end).Values.Count == 0)
            end++;
        return ("blocked", false, end);
    }

    /// <summary>"has tar in the bottom", "bits of bronze in it": there is stuff in or on it.</summary>
    private static (string, bool, int)? Holding(IReadOnlyList<Token> tokens, int at)
    {
        if (Word(tokens, at) is not ("has" or "had" or "have" or "got" or "'s" or "with" or "there") && at > 0 && !(Word(tokens, at - 1) is "has" or "had" or "have" or "got" or "is" or "was"))
            return null;
        int from = Word(tokens, at) is "has" or "had" or "have" or "'s" && Word(tokens, at + 1) == "got" ? at + 2 : at + 1;
        if (Word(tokens, at) is not ("has" or "had" or "have" or "got" or "'s") || Stuff(tokens, from) is not { } stuff || Word(tokens, at) == "'s" && from == at + 1)
            return null;
        if (Word(tokens, stuff.To) is not ("in" or "on" or "all" or "everywhere" or "round" or "inside" or "down"))
            return null;
        int to = stuff.To;
        while (Word(tokens, to) is "in" or "on" or "all" or "over" or "it" or "them" or "the" or "bottom" or "everywhere" or "inside" or "top" or "round" or "down" or "side" or "sides")
            to++;
        return Word(tokens, to - 1) is "the" or "in" or "on" or "all" or "over" or "down" ? null : (stuff.What, false, to);
    }

    private static (string What, int To)? Stuff(IReadOnlyList<Token> tokens, int at)
    {
        int to = at;
        while (Before.Contains(Word(tokens, to)) && !(Stuffs.ContainsKey(Word(tokens, to)) && Word(tokens, to + 1) is not ("of" or "metal" or "oil")))
            to++;
        return Stuffs.TryGetValue(Word(tokens, to), out string? what) && Word(tokens, to + 1) is not ("pump" or "filter" or "pipe" or "seal" or "feed" or "ring" or "rings" or "gallery" or "cooler" or "tank" or "hose" or "jet" or "gasket" or "deposits")
            ? (what, to + 1)
            : null;
    }

    /// <summary>"spins freely", "turns over nicely", "doesn't turn easily".</summary>
    private static (string, bool, int)? Moving(IReadOnlyList<Token> tokens, int at)
    {
        if (tokens[at].Stem is not ("spin" or "turn" or "rotate" or "run" or "roll" or "slide" or "move" or "feel" or "rock"))
            return null;
        int to = Word(tokens, at + 1) is "over" or "round" or "nice" or "very" or "really" or "quite" or "lovely" ? at + 2 : at + 1;
        if (Word(tokens, to) == "and" && Word(tokens, at + 1) == "nice")
            to++;
        return Manners.TryGetValue(Word(tokens, to), out string? how) && !(tokens[at].Stem == "feel" && Word(tokens, to) is "free" or "true" or "lovely" or "nicely" or "badly" or "easily") ? (how, false, to + 1) : null;
    }

    /// <summary>"in cracking nick", "in a shocking state".</summary>
    private static (string, bool, int)? State(IReadOnlyList<Token> tokens, int at)
    {
        if (Word(tokens, at) != "in")
            return null;
        int to = Word(tokens, at + 1) is "a" or "an" ? at + 2 : at + 1;
        bool well = false;
        bool ill = false;
        while (Well.Contains(Word(tokens, to)) || Ill.Contains(Word(tokens, to)))
        {
            ill |= Ill.Contains(Word(tokens, to));
            well |= Well.Contains(Word(tokens, to));
            to++;
        }

        if ((!well && !ill) || !States.Contains(Word(tokens, to)))
            return null;
        return ill ? ("damaged", true, to + 1) : ("fine", false, to + 1);
    }

    /// <summary>"sounds like a cement mixer", "making a horrible noise".</summary>
    private static (string, bool, int)? Sound(IReadOnlyList<Token> tokens, int at)
    {
        if (Word(tokens, at) is "sounds" or "sounded" or "sound" && Word(tokens, at + 1) is "like" or "rough" or "bad" or "horrible" or "awful" or "dreadful" or "terrible" or "wrong" or "rotten" or "grim" && Word(tokens, at + 2) is not ("new" or "it" or "he" or "they"))
        {
            int to = at + 2;
            if (Word(tokens, at + 1) == "like")
            {
                while (to < tokens.Count && to < at + 9 && !tokens[to].IsBreak && Word(tokens, to) is not ("and" or "but" or "so" or "when"))
                    to++;
            }

            return ("notchy", false, to);
        }

        if (Word(tokens, at) is "makes" or "making" or "made" or "makin" && Word(tokens, at + 1) is "a" or "an" or "some")
        {
            int to = at + 2;
            while (to < at + 6 && Word(tokens, to) is not ("noise" or "racket" or "sound" or "squeal" or "rumble" or "din" or ""))
                to++;
            return Word(tokens, to) is "noise" or "racket" or "sound" or "squeal" or "rumble" or "din" ? ("notchy", false, to + 1) : null;
        }

        return null;
    }

    /// <summary>"doesn't leak", "don't wobble": told as not there.</summary>
    private static (string, bool, int)? Denied(IReadOnlyList<Token> tokens, int at)
    {
        int verb = Word(tokens, at) is "doesnt" or "dont" or "didnt" ? at + 1 : Word(tokens, at) is "does" or "do" or "did" && Word(tokens, at + 1) == "not" ? at + 2 : -1;
        if (verb < 0)
            return null;
        if (Word(tokens, verb) is "seem" or "look" or "appear" or "feel")
            verb += Word(tokens, verb + 1) == "to" ? 2 : 1;
        return Lexicon.Faults.Longest(tokens, verb) is { Values: [var fault, ..] } found && Word(tokens, verb) is "leak" or "weep" or "wobble" or "rattle" or "drip" or "rock" or "seep" or "blow" or "rumble" or "grumble" or "sweat" ? ($"not {fault.Fault}", false, found.To) : null;
    }
}
