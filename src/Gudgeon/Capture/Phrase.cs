namespace Gudgeon.Capture;

internal enum Act
{
    Off,
    On,
    Undo,
    Put,
    Part,
    Cap,
    Drain,
    Find,
    Miss,
    Buy,
    Mark,
    Send,
    Return,
    Stay,
    Tighten,
}

/// <summary>One step up from tokens: words that belong together and what sort of thing they say.</summary>
/// <param name="From">First token.</param>
/// <param name="To">One past the last token.</param>
internal abstract record Phrase(int From, int To);

internal sealed record ThingPhrase(int From, int To, Thing Thing, bool Plural, bool All) : Phrase(From, To)
{
    /// <summary>"four thermostat bolts": how many, when fasteners are named after their part.</summary>
    public int? Told { get; init; }

    /// <summary>"four new liners": how many parts were said.</summary>
    public int? Number { get; init; }

    /// <summary>"left one", "two and four": told without its name, of the kind spoken of.</summary>
    public bool Unnamed { get; init; }
}

/// <summary>Fasteners with what was told of them. <paramref name="Share"/>: others, rest, all, both, or empty.</summary>
internal sealed record LotPhrase(int From, int To, Lot Lot, string Share, ThreadSize? Other = null) : Phrase(From, To);

internal sealed record PlacePhrase(int From, int To, Place Place) : Phrase(From, To);

internal sealed record ActPhrase(int From, int To, Act Act, string Word) : Phrase(From, To);

internal sealed record FaultPhrase(int From, int To, string Fault, bool Damage) : Phrase(From, To);

/// <summary>A number with a unit.</summary>
internal sealed record AmountPhrase(int From, int To, Amount Amount) : Phrase(From, To);

internal sealed record NumPhrase(int From, int To, Num Num) : Phrase(From, To);

internal sealed record DuePhrase(int From, int To, Due Due) : Phrase(From, To);

internal sealed record TagPhrase(int From, int To, string Tag) : Phrase(From, To);

/// <summary>A piece of a part, or of nothing yet named: gasket, hole, thread.</summary>
internal sealed record DetailPhrase(int From, int To, string Detail, string Which) : Phrase(From, To);

/// <summary>Where in a part or joint: top right, at the ends, underneath.</summary>
internal sealed record WherePhrase(int From, int To, string Where) : Phrase(From, To);

internal sealed record WordPhrase(int From, int To, string Word, bool Filler) : Phrase(From, To);

internal sealed record BreakPhrase(int From, int To, bool End, bool Question) : Phrase(From, To);

/// <summary>A reading off an instrument, already understood.</summary>
internal sealed record MeasurePhrase(int From, int To, MeasureRead Read) : Phrase(From, To);
