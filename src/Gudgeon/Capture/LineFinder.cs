using Gudgeon.Engine;

namespace Gudgeon.Capture;

/// <summary>
/// Finds hoses, pipes and wires by the words that describe them (turbo oil return, heater hose, pipe to the filter head), from what
/// flows in each and what it joins, so that no list need hold every name.
/// </summary>
internal sealed class LineFinder
{
    private static readonly Dictionary<string, string> Heads = new()
    {
        ["hose"] = "",
        ["pipe"] = "",
        ["line"] = "",
        ["tube"] = "",
        ["union"] = "",
        ["feed"] = "feed",
        ["supply"] = "feed",
        ["return"] = "back",
        ["drain"] = "back",
        ["vent"] = "vent",
        ["lead"] = "wire",
        ["wire"] = "wire",
        ["wiring"] = "wire",
        ["cable"] = "wire",
        ["connector"] = "wire",
        ["plug"] = "wire",
        ["multiplug"] = "wire",
        ["strap"] = "wire",
    };

    private static readonly HashSet<string> Plain = ["the", "my", "both", "old", "rubber", "little", "small", "big", "short", "long", "braided", "metal", "steel", "flexible", "copper", "plastic", "wee", "tiny", "all", "that", "other", "two", "its", "thick", "thin", "fat", "main", "corrugated", "old"];

    private readonly List<(Line Line, HashSet<string> Words)> lines = [];
    private readonly HashSet<string> known = [];

    public LineFinder(EngineModel engine, Func<string, IEnumerable<string>> wordsOfKind)
    {
        foreach (var line in engine.Lines.Values.Where(l => !l.IsPassage))
        {
            HashSet<string> words = [.. Stems(line.Name), .. Stems(Flows(line.Circuit))];
            foreach (var port in new[] { line.From, line.To })
            {
                words.UnionWith(Stems(port.Name.Replace('-', ' ')));
                if (engine.Parts.TryGetValue(port.Part, out var part) && part.Kind is not ("block" or "head"))
                {
                    words.UnionWith(Stems(part.Name));
                    words.UnionWith(wordsOfKind(part.Kind).SelectMany(Stems));
                }
            }

            words.ExceptWith(["of", "the", "to", "from", "and", "a", "in", "out", "hose", "pipe", "line"]);
            if (words.Contains("return") || words.Contains("drain") || words.Contains("back"))
                words.UnionWith(["return", "drain", "back"]);
            lines.Add((line, words));
            known.UnionWith(words);
        }
    }

    private static IEnumerable<string> Stems(string text) => Tokeniser.Plain(text).Where(t => t.IsWord).Select(t => t.Stem);

    private static string Flows(Circuit circuit) => circuit switch
    {
        Circuit.OilPressure or Circuit.OilDrain or Circuit.OilScavenge => "oil",
        Circuit.Coolant => "coolant water",
        Circuit.Fuel => "fuel petrol diesel",
        Circuit.Air => "air boost intake",
        Circuit.Exhaust => "exhaust",
        Circuit.Breather => "breather crankcase",
        Circuit.Vacuum => "vacuum vac",
        Circuit.Electrical => "wire",
        Circuit.Refrigerant => "aircon air con gas refrigerant",
        Circuit.Hydraulic => "steering power hydraulic pas",
        _ => "",
    };

    /// <summary>The lines that the words at the token describe, and one past the last word; null when they describe none.</summary>
    public (IReadOnlyList<Line> Lines, int To, bool Plural, int Words)? At(IReadOnlyList<Token> tokens, int from, string near, Func<int, (IReadOnlyList<string> Ids, int To)?> partAt)
    {
        int at = from;
        while (at < tokens.Count && Plain.Contains(tokens[at].Text))
            at++;
        var said = new List<string>();
        int end = -1;
        string head = "";
        for (int k = at; k < tokens.Count && k < at + 6 && tokens[k].IsWord; k++)
        {
            bool ends = Heads.TryGetValue(tokens[k].Stem, out string? sort);
            if (!ends && !known.Contains(tokens[k].Stem))
                break;
            if (ends)
                (end, head) = (k + 1, head is "wire" || sort is "wire" ? "wire" : "flow");
            if (!(ends && sort is "" or "wire"))
                said.Add(ends && sort == "back" ? "back" : tokens[k].Stem);
        }

        // "drain the sump" is no pipe: a feed or drain alone needs a word of what flows in it.
        if (end < 0)
            return null;
        string word = end < tokens.Count ? tokens[end].Text : "";
        var owner = word is "to" or "from" or "on" or "for" or "of" or "into" or "at" ? partAt(tokens.ElementAtOrDefault(end + 1).Text is "the" or "my" ? end + 2 : end + 1) : null;
        bool alone = end == at + 1 && tokens[at].Stem is "feed" or "supply" or "drain" or "return" or "vent" or "plug" or "lead";
        // "plug on the alternator" is its wire: an alternator has no other plug.
        if (alone && !(tokens[at].Stem is "plug" or "lead" && word is "on" or "to" or "from" && owner is { } wired && lines.Any(l => l.Line.Circuit == Circuit.Electrical && (wired.Ids.Contains(l.Line.From.Part) || wired.Ids.Contains(l.Line.To.Part)))))
            return null;
        said = [.. said.Take(Enumerable.Range(at, end - at).Count(k => !(Heads.TryGetValue(tokens[k].Stem, out string? s) && s is "" or "wire")))];
        bool plural = tokens[end - 1].Plural || tokens[from].Text == "both";
        var found = lines.Where(l => l.Line.Circuit == Circuit.Electrical == (head == "wire") && said.All(l.Words.Contains)).Select(l => l.Line).ToList();
        int to = end;
        if (owner is { } part)
        {
            var joined = found.Where(l => part.Ids.Contains(l.From.Part) || part.Ids.Contains(l.To.Part)).ToList();
            if (joined.Count > 0)
                (found, to) = (joined, part.To);
        }

        if (found.Count > 1 || (said.Count <= 1 && found.Count > 0))
        {
            var beside = found.Where(l => l.From.Part == near || l.To.Part == near).ToList();
            if (beside.Count > 0)
                found = beside;
        }

        if (found.Count == 0 || (said.Count == 0 && to == end && !(near.Length > 0 && found.All(l => l.From.Part == near || l.To.Part == near))) || found.Count > 6)
            return null;
        return (found, to, plural, to - at);
    }
}
