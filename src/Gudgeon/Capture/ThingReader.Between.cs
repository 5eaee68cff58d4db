using Gudgeon.Engine;

namespace Gudgeon.Capture;

/// <summary>What runs from one part to another: "pipe from the air filter to the turbo", "hose between A and B", "A to B hose".</summary>
internal sealed partial class ThingReader
{
    private static readonly HashSet<string> Runs = ["pipe", "hose", "trunk", "trunking", "duct", "ducting", "tube", "line"];

    private static readonly HashSet<string> RunAdjectives = ["steel", "rubber", "metal", "plastic", "copper", "thin", "thick", "long", "short", "big", "little", "small", "fat", "old", "braided", "black", "wee"];

    private ThingPhrase? Between(int from)
    {
        int at = from;
        while (Loose.Contains(Word(at)) || Word(at) is "the" or "that" or "my" || RunAdjectives.Contains(Word(at)))
            at++;
        string first;
        if (Runs.Contains(Stem(at)))
        {
            int link = Word(at + 1) is "that" or "which" && Word(at + 2) is "goes" or "runs" ? at + 3 : at + 1;
            first = Word(link);
            string second = first is "from" ? "to" : first is "between" ? "and" : first is "off" ? "to" : "";
            if (second.Length == 0 || End(link + 1) is not { } start || Word(start.To) != second || End(start.To + 1) is not { } stop)
                return null;
            return Running(from, stop.To, start, stop);
        }

        // "air filter to turbo hose"
        return Word(from - 1) is not ("from" or "between") && End(from) is { } one && one.Words > 0 && Word(one.To) == "to" && End(one.To + 1) is { } two && Runs.Contains(Stem(two.To)) ? Running(from, two.To + 1, one, two) : null;
    }

    /// <summary>What one end is on: the parts that the words may name, else something of the vehicle.</summary>
    private (HashSet<string> Ids, string Outside, int To, int Words)? End(int at)
    {
        int start = at;
        while (Word(start) is "the" or "my" or "its")
            start++;
        string word = Stem(start);
        if (word is "intercooler" or "cooler" or "rad" or "radiator" or "heater" && Longest(start).Values.All(v => index.Parts(v.Kind).Count == 0 || word is "cooler"))
            return ([.. Longest(start).Values.SelectMany(v => index.Parts(v.Kind)).Select(p => p.Id)], word is "intercooler" ? "cooler" : word == "rad" ? "radiator" : word, start + 1, 1);
        if (Longest(start) is not { Values.Count: > 0 } found)
            return word == "filter" ? ([.. index.Engine.Parts.Values.Where(p => p.Name.Contains("filter", StringComparison.Ordinal)).Select(p => p.Id)], "", start + 1, 1) : null;
        HashSet<string> ids = [.. found.Values.SelectMany(v => index.Parts(v.Kind)).Select(p => p.Id)];
        int to = found.To;
        if (NumberWords.At(tokens, to) is { IsCount: true } n && ids.Any(i => i.EndsWith($".{n.Int}", StringComparison.Ordinal)))
            (ids, to) = ([.. ids.Where(i => i.EndsWith($".{n.Int}", StringComparison.Ordinal))], n.To);
        if (word == "filter")
            ids.UnionWith(index.Engine.Parts.Values.Where(p => p.Name.Contains("filter", StringComparison.Ordinal)).Select(p => p.Id));
        return ids.Count > 0 ? (ids, "", to, to - start) : null;
    }

    private ThingPhrase? Running(int from, int to, (HashSet<string> Ids, string Outside, int To, int Words) one, (HashSet<string> Ids, string Outside, int To, int Words) two)
    {
        bool On(Port port, (HashSet<string> Ids, string Outside, int To, int Words) end) => end.Ids.Contains(port.Part) || port.IsOutside && end.Outside.Length > 0 && port.Name.Contains(end.Outside, StringComparison.Ordinal);
        var all = index.Engine.Lines.Values.Where(l => !l.IsPassage && l.Circuit != Circuit.Electrical).ToList();
        var joining = all.Where(l => (On(l.From, one) && On(l.To, two)) || (On(l.From, two) && On(l.To, one))).ToList();
        bool plural = tokens[to - 1].Plural && Runs.Contains(Stem(to - 1)) || Enumerable.Range(from, to - from).Any(k => Runs.Contains(Stem(k)) && tokens[k].Plural);
        if (joining.Count > 0)
        {
            var lines = joining.Select(l => new Thing(ThingSort.Line, l.Kind, [l.Id], l.Name)).ToList();
            bool same = joining.All(l => l.Kind == joining[0].Kind);
            return new ThingPhrase(from, to, plural && same ? lines[0] with { Ids = [.. joining.Select(l => l.Id)] } : lines[0] with { Others = [.. lines.Skip(1)] }, plural, false);
        }

        // A pipe that is a part of its own, with a union at either end.
        IEnumerable<string> Beside((HashSet<string> Ids, string Outside, int To, int Words) end) => all.Where(l => On(l.From, end) || On(l.To, end)).SelectMany(l => new[] { l.From, l.To }).Where(p => !On(p, end)).Select(p => p.Part);
        var pipes = Beside(one).Intersect(Beside(two)).Where(id => index.Engine.Parts.TryGetValue(id, out var part) && Runs.Contains(part.Name.Split(' ').Select(Token.StemOf).FirstOrDefault(Runs.Contains) ?? "")).Select(id => index.Engine.Parts[id]).ToList();
        if (pipes.Count == 0 || pipes.Any(p => p.Kind != pipes[0].Kind))
            return null;
        var things = pipes.Select(p => new Thing(ThingSort.Part, p.Kind, [p.Id], p.Name)).ToList();
        return new ThingPhrase(from, to, plural || things.Count == 1 ? things[0] with { Ids = [.. pipes.Select(p => p.Id)] } : things[0] with { Others = [.. things.Skip(1)] }, plural, false);
    }
}
