namespace Gudgeon.Capture;

/// <summary>Words that people use for parts and lines beyond the list of terms. Common practice, no source.</summary>
internal static class MoreWords
{
    /// <summary>Listed words that mean too many other things at a bench to stand for a part alone.</summary>
    public static readonly HashSet<string> TooPlain =
        new(StringComparer.OrdinalIgnoreCase) { "top", "inner", "outer", "return", "feed", "hydraulic", "biscuit", "unit", "post", "pad", "adjuster", "gasket", "inlet", "exhaust", "intake", "cylinder", "upper cover", "lower cover", "upper/lower cover", "tin", "bush", "insert", "seal", "main", "pump", "switch", "sender", "cover", "cap", "shaft", "nozzle", "rubber", "chain case", "bridge", "rail", "tube", "rotor set", "inner/outer", "left half", "right half", "slipper", "shim plate" };

    public static IEnumerable<(string Kind, string Word)> Parts => Words("part-words");

    public static IEnumerable<(string Kind, string Word)> Lines => Words("line-words");

    private static IEnumerable<(string Kind, string Word)> Words(string table) => Lexicon.Rows(table).SelectMany(r => r[1].Split("; "), (r, word) => (r[0], word));

    /// <summary>Whose joint is meant when fasteners are named after another part: rod bolts hold the rod cap.</summary>
    public static readonly Dictionary<string, string> BoltsOf = new()
    {
        ["rod"] = "rod-cap",
        ["rod-shell"] = "rod-cap",
        ["main-shell"] = "main-cap",
        ["crank"] = "damper",
        ["cam"] = "cam-sprocket",
        ["head-gasket"] = "head",
        ["cylinder"] = "head",
    };

    /// <summary>Words that dictation writes for a part and that are also plain English: taken for the part only where nothing else fits.</summary>
    public static readonly HashSet<string> PlainMisheard =
        ["some", "sum", "come", "can", "not", "knot", "shall", "load", "globe", "black", "line", "seed", "stood", "shame", "shin", "top", "dual", "foul", "cab", "crab", "rocket", "racket", "basket", "collects", "loon", "dungeon", "towel", "hed", "in"];
}
