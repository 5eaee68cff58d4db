using System.Globalization;

namespace Gudgeon.Capture;

/// <summary>One thing that the note says. <see cref="Code"/> is short and stable, for lists and tests; <see cref="Echo"/> is what the person reads back.</summary>
public abstract record Fact
{
    /// <summary>The words it came from.</summary>
    public IReadOnlyList<TextSpan> Spans { get; init; } = [];

    /// <summary>How it was said, without what it was said of; see <see cref="WayOfSaying"/>.</summary>
    public string Way { get; init; } = "";

    public abstract string Code { get; }
    public abstract string Echo { get; }

    internal static string LotsText(IReadOnlyList<Lot> lots) => string.Join(" + ", lots.Select(l => l.Text));

    internal static string LotsCode(IReadOnlyList<Lot> lots) => string.Join(" + ", lots.Select(l => l.Code));

    internal static string PlaceText(Place? place) => place is null ? "" : $" → {place.Text}";

    internal static string PlaceCode(Place? place) => place is null ? "" : $" -> {place.Code}";
}

/// <summary>A part came off. <paramref name="With"/>: what came with it, still joined.</summary>
public sealed record Off(Thing Thing, IReadOnlyList<Thing> With) : Fact
{
    public override string Code => $"off {Thing.Code}{(With.Count > 0 ? " with " + string.Join(",", With.Select(w => w.Code)) : "")}";
    public override string Echo => $"{Thing.Full}: off{(With.Count > 0 ? ", as one with " + string.Join(", ", With.Select(w => w.Full)) : "")}";
}

/// <summary>A part went back on.</summary>
public sealed record On(Thing Thing) : Fact
{
    public override string Code => $"on {Thing.Code}";
    public override string Echo => $"{Thing.Full}: on";
}

/// <summary>Fasteners of a joint were undone. No place: not told.</summary>
public sealed record Undone(Thing Of, IReadOnlyList<Lot> Lots, Place? Place) : Fact
{
    public override string Code => $"undone {Of.Code}: {LotsCode(Lots)}{PlaceCode(Place)}";
    public override string Echo => $"{Of.Full}: undone {LotsText(Lots)}{PlaceText(Place)}";
}

/// <summary>Fasteners were counted or sized, with no word of undoing them.</summary>
public sealed record Count(Thing Of, IReadOnlyList<Lot> Lots) : Fact
{
    public override string Code => $"count {Of.Code}: {LotsCode(Lots)}";
    public override string Echo => $"{Of.Full}: counted {LotsText(Lots)}";
}

/// <summary>Fasteners went back and how they were tightened, as told.</summary>
public sealed record Tightened(Thing Of, IReadOnlyList<Lot> Lots, IReadOnlyList<string> Stages) : Fact
{
    public override string Code => $"tightened {Of.Code}: {string.Join(" + ", new[] { LotsCode(Lots) }.Concat(Stages).Where(s => s.Length > 0))}";
    public override string Echo => $"{Of.Full}: tightened {string.Join(", then ", Stages)}{(Lots.Count > 0 ? ", " + LotsText(Lots) : "")}";
}

/// <summary>Something was put or lies somewhere.</summary>
public sealed record Put(Thing Thing, Place Place) : Fact
{
    public override string Code => $"put {(Thing.Sort == ThingSort.Fasteners ? "bolts of " : "")}{Thing.Code}{PlaceCode(Place)}";
    public override string Echo => $"{Thing.Full}{PlaceText(Place)}";
}

/// <summary>A hose, pipe, cable or plug was parted.</summary>
public sealed record Parted(Thing Line) : Fact
{
    public override string Code => $"parted {Line.Code}";
    public override string Echo => $"{Line.Full}: parted";
}

/// <summary>A label was put on it. <paramref name="Tag"/>: as the app writes it, green 3.</summary>
public sealed record Tagged(Thing Thing, string Tag) : Fact
{
    public override string Code => $"tagged {Thing.Code} = {Tag}";
    public override string Echo => $"{Thing.Full}: tagged {Tag}";
}

public sealed record Capped(Thing Thing, string With) : Fact
{
    public override string Code => $"capped {Thing.Code}";
    public override string Echo => $"{Thing.Full}: capped{(With.Length > 0 ? " with " + With : "")}";
}

public sealed record Drained(string Fluid, Amount? Amount, Thing? From) : Fact
{
    public override string Code => $"drained {Fluid}{(Amount is null ? "" : " " + Amount.Code)}";
    public override string Echo => $"{Fluid}: drained{(Amount is null ? "" : " " + Amount.Text)}{(From is null ? "" : " from " + From.Full)}";
}

/// <summary>Something that was short has turned up.</summary>
public sealed record Found(Thing Thing, IReadOnlyList<Lot> Lots, string Where) : Fact
{
    public override string Code => $"found {Thing.Code}{(Lots.Count > 0 ? ": " + LotsCode(Lots) : "")}";
    public override string Echo => $"found {(Lots.Count > 0 ? LotsText(Lots) + (Thing.Ids.Count > 0 ? " of the " + Thing.Full : "") : Thing.Full)}{(Where.Length > 0 ? " " + Where : "")}";
}

/// <summary>Damage. <paramref name="Fault"/> is the listed word, <paramref name="Words"/> what was said.</summary>
public sealed record Damaged(Thing Thing, string Fault, string Words, int? Count) : Fact
{
    public override string Code => $"damaged {(Thing.Sort == ThingSort.Fasteners ? "bolt of " : "")}{Thing.Code}: {(Count is { } n ? n.ToString(CultureInfo.InvariantCulture) + " " : "")}{Fault}";
    public override string Echo => $"{Thing.Full}: {(Count is { } n ? n.ToString(CultureInfo.InvariantCulture) + " " : "")}{Fault} (“{Words}”)";
}

/// <summary>A condition that is no damage: oily, fine, stuck.</summary>
public sealed record Seen(Thing Thing, string Condition, string Words) : Fact
{
    public override string Code => $"seen {(Thing.Sort == ThingSort.Fasteners ? "bolts of " : "")}{Thing.Code}: {Condition}";
    public override string Echo => $"{Thing.Full}: {Condition} (“{Words}”)";
}

/// <summary>Not there, or not where it should be.</summary>
public sealed record Missing(Thing Thing, IReadOnlyList<Lot> Lots) : Fact
{
    public override string Code => $"missing {Thing.Code}{(Lots.Count > 0 ? ": " + LotsCode(Lots) : "")}";
    public override string Echo => $"missing: {(Lots.Count > 0 ? LotsText(Lots) + " of the " : "")}{Thing.Full}";
}

public sealed record ToBuy(Thing Thing, IReadOnlyList<Lot> Lots) : Fact
{
    public override string Code => $"buy {Thing.Code}{(Lots.Count > 0 ? ": " + LotsCode(Lots) : "")}";
    public override string Echo => $"to buy: {(Lots.Count > 0 ? LotsText(Lots) + " for the " : "")}{Thing.Full}";
}
