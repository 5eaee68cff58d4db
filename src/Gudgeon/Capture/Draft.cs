namespace Gudgeon.Capture;

/// <summary>The joint being told: its fasteners come in pieces over several clauses.</summary>
internal sealed class Draft(Thing of)
{
    public Thing Of { get; } = of;
    public List<LotPhrase> Lots { get; } = [];
    public Place? Place { get; set; }
    public List<int> Tokens { get; } = [];

    /// <summary>The part was named and nothing said of it but its fasteners.</summary>
    public bool FromPart { get; set; }
    public bool Undone { get; set; }
    public bool Fitting { get; set; }

    /// <summary>Fasteners named by what they hold are told to lie somewhere: no word of undoing them.</summary>
    public bool Lies { get; set; }

    /// <summary>"nine nuts off, the rest seized": the part is held yet.</summary>
    public bool Held { get; set; }

    /// <summary>Fasteners told before the part they hold.</summary>
    public bool Loose { get; set; }
    public List<string> Stages { get; } = [];

    /// <summary>"fifteen a side": each of the parts has as many.</summary>
    public bool PerSide { get; set; }

    /// <summary>Places told by side: "left in tub three and right in tub four".</summary>
    public Dictionary<string, Place> Sides { get; } = [];

    /// <summary>
    /// The lots with totals taken apart: "three bolts, one M10 by ninety, the others M8 by forty" is one and two;
    /// "all quarter twenty" sizes every lot; "two longer ones" have the thread of those before.
    /// </summary>
    public List<Lot> Settled()
    {
        var told = Lots.Where(l => l.Share is not ("all" or "both") || l.Lot.Count is not null || Lots.Count == 1).ToList();
        var forAll = Lots.LastOrDefault(l => l.Share is "all" or "both" && l.Lot.Count is null && !l.Lot.Size.IsEmpty && Lots.Count > 1)?.Lot.Size;
        var lots = told.Select(l => l.Lot).ToList();
        if (told.Count > 1 && told[0].Lot is { Count: { } total, Size.IsEmpty: true } && told[0].Lot.Where.Length == 0)
            lots = Split(told, total);
        else if (told.Count > 2 && told[0].Lot is { Count: { } all, Size: { Diameter: not null, Length: null } thread } && told.Skip(1).All(l => l.Lot is { Count: not null, Size: { Diameter: null, Length: not null } }) && told.Skip(1).Sum(l => l.Lot.Count) == all)
            lots = [.. told.Skip(1).Select(l => Named(l.Lot with { Size = l.Lot.Size.Or(thread) }, told[0].Lot))];
        int bare = !lots.Any(l => l.Count is null) ? 0 : lots.Skip(1).Count(l => l is { Count: null or 1, Uncounted: false, Size.Diameter: not null, Fastener: "" or "bolt" });
        if (lots.Count > 1 && lots[0].Count == bare + 1 && bare == lots.Count - 1 && lots[0].Size.Diameter is not null && told.Skip(1).All(l => l.Share.Length == 0))
            lots = [.. lots.Select(l => l with { Count = 1, Fastener = lots[0].Fastener })];
        for (int i = 1; i < lots.Count; i++)
        {
            if (lots[i].Size.Diameter is null && (lots[i].Note.Length > 0 || lots[i].Size.Length is not null) && lots[i].Fastener is "" or "bolt" && lots[i - 1].Size.Diameter is not null)
                lots[i] = lots[i] with { Size = lots[i].Size.Or(lots[i - 1].Size with { Length = null }) };
            if (lots[i] is { Count: null, Uncounted: false, Fastener: "nut" or "washer" } && lots[i - 1].Count is { } studs)
                lots[i] = lots[i] with { Count = studs };
        }

        if (forAll is not null)
            lots = [.. lots.Select(l => l with { Size = l.Size.Or(forAll) })];
        return lots;
    }

    private static List<Lot> Split(List<LotPhrase> told, int total)
    {
        // "three bolts, M8 by 90, M8 by 55 and an M10 by 40": as many sizes as bolts, one of each.
        if (told.Skip(1).All(l => l.Share.Length == 0 && IsPart(l.Lot) && !l.Lot.Size.IsEmpty && l.Lot.Count is null or 1) && told.Count - 1 == total)
            return [.. told.Skip(1).Select(l => Named(l.Lot with { Count = 1 }, told[0].Lot))];
        int counted = told.Skip(1).Where(l => l.Share != "others" && IsPart(l.Lot)).Sum(l => l.Lot.Count ?? 0);
        var others = told.FindIndex(1, l => l.Share == "others" && l.Lot.Count is null);
        if (counted > total || !told.Skip(1).Any(l => IsPart(l.Lot)))
            return [.. told.Select(l => l.Lot)];
        if (others < 0)
            return told.Skip(1).All(l => IsPart(l.Lot)) && counted == total ? [.. told.Skip(1).Select(l => Named(l.Lot, told[0].Lot))] : Rest(told, total - counted);
        return [.. told.Skip(1).Select((l, i) => Named(i + 1 == others ? l.Lot with { Count = total - counted } : l.Lot, told[0].Lot))];
    }

    /// <summary>Fewer told apart than there are: the rest keep what was said of all.</summary>
    private static List<Lot> Rest(List<LotPhrase> told, int rest) =>
        told.Skip(1).Any(l => l.Lot.Size.IsEmpty && l.Lot.Note.Length == 0)
            ? [.. told.Select(l => l.Lot)]
            : [told[0].Lot with { Count = rest }, .. told.Skip(1).Select(l => Named(l.Lot, told[0].Lot))];

    private static bool IsPart(Lot lot) => lot.Fastener is not ("nut" or "washer" or "clip") && (!lot.Size.IsEmpty || lot.Note.Length > 0);

    private static Lot Named(Lot lot, Lot from) => lot.Fastener.Length > 0 ? lot : lot with { Fastener = from.Fastener };
}
