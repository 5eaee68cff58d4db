namespace Gudgeon.Capture;

/// <summary>Errands: lists of what is to be bought.</summary>
internal sealed partial class Listener
{
    private static readonly PhraseBook<string> Errands = Lexicon.Book("errands");

    private static readonly HashSet<string> Small = [.. Lexicon.Rows("errands").Where(r => r[0] == "small").SelectMany(r => r[1].Split("; "))];

    /// <summary>Words between the things of a list.</summary>
    private static readonly HashSet<string> Links = ["and", "plus", "a", "an", "the", "new", "some", "of", "also", "then", "set", "kit", "full", "complete", "fresh", "maybe", "another", "my"];

    /// <summary>The head of a list that stood alone: what follows in the next sentences is on the list.</summary>
    private (int From, int To, string Seal)? head;

    private sealed class Wanted(Thing thing, int from)
    {
        public Thing Thing { get; set; } = thing;
        public List<Lot> Lots { get; } = [];
        public int From { get; } = from;
        public int To { get; set; }
    }

    /// <summary>"to order. head gasket, timing belt", "shopping list, ten head bolts M12 by 110": a head and things, nothing done with them.</summary>
    private int Shopping(int from, int to)
    {
        int at = from;
        int key = -1;
        string seal = "";
        while (at < to && !tokens[at].IsBreak)
        {
            int next = Errands.Longest(tokens, at) is { Values: ["head", ..] } found ? found.To : at;
            if (next == at && !Small.Contains(Word(at)))
                break;
            if (next > at)
                key = next;
            else if (tokens[at].Stem is "gasket" or "seal")
                seal = tokens[at].Stem;
            at = Math.Max(next, at + 1);
        }

        if (key < 0 || Word(from) is "what" && !tokens.Skip(from).Take(at - from).Any(t => t.Text is "need" or "needed" or "we" or "i"))
            return -1;
        at = phrases.FirstOrDefault(p => p.From < at && p.To > at && p is ThingPhrase or LotPhrase)?.From ?? at;
        bool apart = at >= to || tokens[at].IsBreak;
        // "the gaskets to order": its words name no thing; "need a gasket": they do.
        if (!apart && at > key && seal.Length > 0)
            return -1;
        if (apart && at >= to)
        {
            head = (from, to, seal);
            return to < tokens.Count ? to : -1;
        }

        var items = Listed(at, to, seal, apart || tokens[key - 1].Stem is not ("need" or "needing" or "needed" or "list"));
        if (items.Count == 0 || (items.Count == 1 && !apart && items[0].Lots.All(l => l.Size.IsEmpty)))
            return -1;
        Purchase(items, Range(from, at));
        return items[^1].To;
    }

    /// <summary>A whole sentence of things after a head that stood alone.</summary>
    private int MoreShopping(int from, int to)
    {
        if (head is not { } before || Listed(from, to, before.Seal, false) is not { Count: > 0 } items || items[^1].To < to)
        {
            head = null;
            return -1;
        }

        Purchase(items, Range(before.From, before.To));
        return to;
    }

    private void Purchase(List<Wanted> items, IEnumerable<int> opening)
    {
        Flush();
        Unsaid();
        var words = opening.Where(k => !tokens[k].IsBreak).ToList();
        foreach (var item in items)
            About(item.Thing, (item == items[0] ? words : []).Concat(Range(item.From, item.To)).Where(k => !tokens[k].IsBreak), t => new ToBuy(t, item.Lots));
        Speak(items[^1].Thing, items[^1].From);
    }

    /// <summary>The things of a list, up to where something else is told; none where that cuts a thought in two. <paramref name="goods"/>: a list also holds what no part is, a tube of sealant.</summary>
    private List<Wanted> Listed(int from, int to, string seal, bool goods)
    {
        var items = new List<Wanted>();
        for (int at = from; at < to;)
        {
            if (tokens[at].IsBreak || Links.Contains(Word(at)) && phrases.All(p => p.From != at || p is WordPhrase))
            {
                at++;
                continue;
            }

            int end = at;
            while (end < to && !tokens[end].IsBreak && (Word(end) is not ("and" or "plus") || Inside(end)))
                end++;
            // "a head gasket in the morning": when it is ordered.
            int when = Range(at + 1, end).FirstOrDefault(k => dues.At(k) is { } due && due.To == end || Word(k) == "in" && Word(k + 1) == "the" && Word(k + 2) is "morning" or "evening" or "afternoon" && k + 3 == end, end);
            if (when < end && Goods(at, when, seal, items))
            {
                items[^1].To = at = end;
                continue;
            }

            // "four valves, please, and a gasket"
            if (items.Count > 0 && Range(at, end).All(k => Word(k) is "please" or "kindly" or "thanks" or "thank" or "you" or "cheers"))
            {
                at = end;
                continue;
            }

            if (!Goods(at, end, seal, items) && !(goods && Nameless(at, end) is { } ware && In(at, end).All(p => p is not (ActPhrase { Act: not Act.Buy } or DuePhrase or TagPhrase or MeasurePhrase or FaultPhrase { Damage: true } or PlacePhrase { Place.Sort: PlaceSort.Container })) && Ware(ware, at, end, items)))
                return items.Count > 0 && tokens[at - 1].IsBreak ? items : [];
            at = end;
        }

        return items;
    }

    private bool Ware(Thing ware, int from, int to, List<Wanted> items)
    {
        while (from < to && Links.Contains(Word(from)))
            from++;
        items.Add(new Wanted(ware with { Name = Said(from, to) }, from) { To = to });
        return from < to;
    }

    /// <summary>One stretch of a list: a thing, how many of it and what size.</summary>
    private bool Goods(int from, int to, string seal, List<Wanted> items)
    {
        int before = items.Count;
        LotPhrase? sized = null;
        int? count = null;
        DetailPhrase? piece = null;
        foreach (var phrase in phrases.Where(p => p.From >= from && p.To <= to))
        {
            switch (phrase)
            {
                case WordPhrase word when Links.Contains(word.Word) || word.Word is "its" or "their" || (word.Word is "for" or "of" && (piece is not null || sized is not null)):
                    break;
                case AmountPhrase { Amount.Unit: "mm" or "in" } when items.Count > before:
                    break;
                case NumPhrase { Num.IsCount: true } num:
                    count = num.Num.Int;
                    break;
                case LotPhrase { Share: "", Lot: { Count: null, Fastener: "" or "bolt" } } lot when sized is null && items is [.., { Thing.Sort: ThingSort.Fasteners, Lots.Count: > 0 } last]:
                    last.Lots[^1] = last.Lots[^1] with { Size = lot.Lot.Size.Or(last.Lots[^1].Size) };
                    last.To = lot.To;
                    break;
                case LotPhrase { Share: "", Lot.Size.IsEmpty: false } lot when sized is null:
                    sized = lot;
                    break;
                case DetailPhrase { Detail: "gasket" or "seal" or "O-ring" } detail when Word(detail.From - 1) is "its" or "their" && items is [.., { Thing.Sort: ThingSort.Part } owner]:
                    items.Add(new Wanted(Gasketed(owner.Thing, detail.Detail), detail.From) { To = detail.To });
                    break;
                case DetailPhrase { Detail: "gasket" or "seal" or "O-ring" } detail when Word(detail.To) is "for" or "of":
                    piece = detail;
                    break;
                case ThingPhrase { Thing.Sort: not ThingSort.Outside } named:
                    var thing = piece is not null ? Gasketed(named.Thing, piece.Detail) : seal.Length > 0 && named.Thing.Sort == ThingSort.Part ? Gasketed(named.Thing, seal) : named.Thing;
                    if (sized is not null && thing.Sort == ThingSort.Part)
                        thing = things.Joint(thing, sized.Lot.Fastener.Length > 0 ? sized.Lot.Fastener : "bolt");
                    var item = new Wanted(thing, sized?.From ?? piece?.From ?? named.From) { To = named.To };
                    if (thing.Sort == ThingSort.Fasteners)
                        item.Lots.Add((sized?.Lot ?? new Lot()) with { Count = sized?.Lot.Count ?? named.Told ?? count, Fastener = thing.Fastener });
                    else if ((named.Number ?? count) is { } n and > 1)
                    {
                        item.Thing = thing.Ids.Count > 0 ? thing with { Others = [] } : All(thing with { Others = [] });
                        item.Lots.Add(new Lot { Count = n, Fastener = "part" });
                    }

                    if (item.Lots is [{ Count: null, Size.IsEmpty: true }])
                        item.Lots.Clear();
                    items.Add(item);
                    (sized, count, piece) = (null, null, null);
                    break;
                default:
                    items.RemoveRange(before, items.Count - before);
                    return false;
            }
        }

        return sized is null && count is null && piece is null;
    }
}
