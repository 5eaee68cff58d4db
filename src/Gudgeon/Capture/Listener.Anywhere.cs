namespace Gudgeon.Capture;

/// <summary>People put things anywhere: a place that no list knows is told by the words around it.</summary>
internal sealed partial class Listener
{
    private static readonly HashSet<string> PlaceWords = ["in", "into", "on", "onto", "inside", "under", "underneath", "behind", "through", "against", "beside"];

    private static readonly HashSet<string> OwnerWords = ["the", "a", "an", "my", "me", "his", "her", "our", "your", "their", "that", "this", "some", "one", "two"];

    /// <summary>What follows "in the" and is no place to look for a part.</summary>
    private static readonly HashSet<string> NoPlace =
    [
        "way", "end", "morning", "evening", "afternoon", "night", "dark", "rain", "cold", "wet", "minute", "moment", "hour", "second", "while", "bit", "row", "order", "half", "pair", "pairs", "mess", "state", "hurry", "go", "piece", "pieces", "bits", "lump", "time", "day", "week", "weekend", "hand", "hands", "arm", "arms", "lap", "hair", "life", "eye", "face", "road", "same", "job", "process", "meantime", "past", "future", "middle", "centre", "center", "corner", "side", "sides", "edge", "top", "bottom", "front", "back", "rear", "left", "right", "ends", "inside", "outside", "engine", "motor", "car", "bike", "boat", "tractor", "others", "other", "ones", "first", "last", "next", "thing", "lot", "best", "whole", "oil", "grease", "water", "coolant", "paraffin", "diesel", "petrol", "fuel", "muck", "rust", "dirt", "carbon", "soot", "socket", "spanner", "wrench", "bar", "hammer", "mallet", "chisel", "puller", "screwdriver", "drift", "press", "torch", "phone", "book", "list", "page", "manual", "note", "threads", "thread", "turn", "turns", "angle", "stage", "stages", "goes", "passes", "sequence", "pattern", "direction", "rotation", "clock", "line", "mark", "marks", "dowel", "dowels", "stand", "hoist", "crane", "teeth", "tooth", "picture", "photo", "photos", "mood", "fact", "wires", "wire", "hose", "hoses", "cable", "cables", "string", "strap", "straps", "studs", "case", "fit", "place", "position", "hole", "holes", "cylinder", "cylinders", "plating", "skim", "rebore", "clean", "wash", "soak", "good", "market", "house", "supplier", "shop", "course", "sun",
    ];

    /// <summary>"poked them through a beer box", "sitting on two bits of timber", "went in the trash".</summary>
    private List<Phrase> Anywhere(List<Phrase> list, int from, int to)
    {
        Bare(list, from, to);
        for (int at = from + 1; at < to - 1; at++)
        {
            if (!PlaceWords.Contains(Word(at)) || list.FirstOrDefault(p => p.From == at) is not WordPhrase || !OwnerWords.Contains(Word(at + 1)))
                continue;
            int end = at + 1;
            while (end < to && !tokens[end].IsBreak && Word(end) is not ("and" or "but" or "so" or "because" or "cos" or "then" or "with" or "till" or "until" or "for" or "where" or "which" or "while" or "when" or "to" or "now" or "if") && end - at < 8)
                end++;
            if (end == at + 2 && Word(at + 1) is "one" or "two")
                continue;
            int first = at + 1;
            while (first < end && (OwnerWords.Contains(Word(first)) || Word(first) is "'s"))
                first++;
            int start = ClauseStart(at, from);
            var words = list.Where(p => p.From >= first && p.To <= end).ToList();
            if (first >= end || words.Count == 0 || words.Any(p => p is not (WordPhrase or DetailPhrase or NumPhrase)) || words.OfType<WordPhrase>().All(w => w.Filler) || Range(first, end).Any(k => NoPlace.Contains(Word(k)) || Word(k) is "is" or "'s" or "are" or "was" or "were" or "has" or "have" or "i" or "it" or "they" or "not" or "no") || !Laid(list, start, at))
                continue;
            string label = string.Join(" ", Range(Word(at + 1) is "one" or "two" ? at + 1 : first, end).Select(k => tokens[k].Text)).Replace(" '", "'", StringComparison.Ordinal);
            string prep = Word(at) is "under" or "underneath" or "behind" or "beside" ? Word(at) + " " : "";
            list.RemoveAll(p => p.From >= at && p.To <= end);
            int where = list.FindIndex(p => p.From >= end);
            list.Insert(where < 0 ? list.Count : where, new PlacePhrase(at, end, new Place(PlaceSort.Container, prep + label)));
            at = end;
        }

        return list;
    }

    /// <summary>"twelve bolts, feed bucket": a pause, words that name nothing, and a thing to put things in.</summary>
    private void Bare(List<Phrase> list, int from, int to)
    {
        for (int start = from; start < to;)
        {
            int end = start;
            while (end < to && !tokens[end].IsBreak)
                end++;
            int k = Math.Max(start, end - 2);
            while (k < end && !(Lexicon.Containers.Longest(tokens, k) is { Values.Count: > 0 } box && box.To == end))
                k++;
            var words = list.Where(p => p.From >= start && p.To <= end).ToList();
            if (start > from && k < end && k > start && end - start <= 4 && words.Count > 1 && words.All(p => p is WordPhrase { Filler: false } or PlacePhrase || p is FaultPhrase { } f && f.To == f.From + 1) && words[0] is not PlacePhrase && !PlaceReader.IsLaying(Word(start)) && !Lexicon.Persons.Contains(Word(start)) && list.Any(p => p.To <= start && p is LotPhrase or ThingPhrase { Thing.Sort: ThingSort.Fasteners }))
            {
                list.RemoveAll(p => p.From >= start && p.To <= end);
                int where = list.FindIndex(p => p.From >= end);
                list.Insert(where < 0 ? list.Count : where, new PlacePhrase(start, end, new Place(PlaceSort.Container, string.Join(" ", Range(start, end).Select(i => tokens[i].Text)))));
            }

            start = end + 1;
        }
    }

    private int ClauseStart(int at, int from)
    {
        int k = at;
        while (k > from && !tokens[k - 1].IsBreak && Word(k - 1) is not ("but" or "so" or "because" or "then"))
            k--;
        return k;
    }

    /// <summary>Something is said to lie, go or be put: a bare part or fasteners, or a word of laying, with nothing said of mending or finding.</summary>
    private bool Laid(List<Phrase> list, int from, int at)
    {
        var before = list.Where(p => p.From >= from && p.To <= at).ToList();
        if (before.Any(p => p is FaultPhrase or MeasurePhrase or AmountPhrase or PlacePhrase or ActPhrase { Act: Act.On or Act.Tighten or Act.Mark or Act.Cap or Act.Find or Act.Miss or Act.Buy or Act.Send or Act.Stay or Act.Drain or Act.Return }))
            return false;
        bool laying = Range(from, at).Any(k => PlaceReader.IsLaying(Word(k)) || Word(k) is "go" or "poked" or "keep" or "lies" or "hangs" or "tipped" or "carried" or "lugged");
        bool subject = before.Any(p => p is ThingPhrase or LotPhrase) || Range(from, at).Any(k => Word(k) is "it" or "they" or "them" or "those" or "these" or "that" or "em");
        bool bare = subject && before.All(p => p is ThingPhrase or LotPhrase or BreakPhrase or NumPhrase or WordPhrase { Filler: true } or ActPhrase { Act: Act.Off or Act.Put or Act.Undo }) && Word(at) is "in" or "into" or "on" or "onto" or "under" or "inside" or "through";
        return subject && (laying || before.Any(p => p is ActPhrase { Act: Act.Put }) || (bare && (Word(at) is not "on" || Range(from, at).Any(k => Word(k) is "is" or "'s" or "are" or "'re"))));
    }
}
