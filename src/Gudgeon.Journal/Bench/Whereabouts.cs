using System.Text.RegularExpressions;

namespace Gudgeon.Journal;

/// <summary>The sort of account that holds a thing. Every thing is in exactly one.</summary>
public enum Spot
{
    /// <summary>On the engine: fitted, or a fastener in its joint and not undone.</summary>
    Engine,

    /// <summary>A fastener undone and left in its own hole.</summary>
    OwnHoles,

    /// <summary>A part still joined to one that is off.</summary>
    Riding,

    /// <summary>In a bag, tray, box, on a shelf.</summary>
    Place,

    /// <summary>Off, and nobody said where it went.</summary>
    Unplaced,

    /// <summary>Away at a shop.</summary>
    Shop,

    /// <summary>A fastener that is known to be lost.</summary>
    Lost,

    /// <summary>A fastener broken or spoilt.</summary>
    Broken,

    /// <summary>A fastener that should have come out and was not counted.</summary>
    Unaccounted,

    /// <summary>Scrapped.</summary>
    Scrap,

    /// <summary>This engine never had it.</summary>
    Absent,
}

/// <summary>Where a thing is: one account of the book's double entry.</summary>
/// <param name="Name">Place, shop or carrying part; empty for the other spots.</param>
public readonly partial record struct Whereabouts(Spot Spot, string Name = "")
{
    public static readonly Whereabouts Engine = new(Spot.Engine);
    public static readonly Whereabouts OwnHoles = new(Spot.OwnHoles);
    public static readonly Whereabouts Unplaced = new(Spot.Unplaced);
    public static readonly Whereabouts Lost = new(Spot.Lost);
    public static readonly Whereabouts Broken = new(Spot.Broken);
    public static readonly Whereabouts Unaccounted = new(Spot.Unaccounted);
    public static readonly Whereabouts Scrap = new(Spot.Scrap);
    public static readonly Whereabouts Absent = new(Spot.Absent);

    /// <summary>Names of places as people number them: bag 2 before bag 12.</summary>
    public static readonly IComparer<string> ByName = Comparer<string>.Create((one, other) => string.CompareOrdinal(Numbered(one), Numbered(other)));

    /// <summary>The name under which "own holes" is typed and stored.</summary>
    public const string OwnHolesName = "own holes";

    public static Whereabouts Riding(string carrier) => new(Spot.Riding, carrier);

    public static Whereabouts AtShop(string shop) => new(Spot.Shop, shop);

    /// <summary>Reads what a person calls a place: <c>Bag 12</c>, <c>own holes</c>, nothing at all.</summary>
    public static Whereabouts Place(string? typed)
    {
        var name = PlaceName(typed);
        return name switch
        {
            "" => Unplaced,
            OwnHolesName => OwnHoles,
            _ => new(Spot.Place, name),
        };
    }

    /// <summary>One spelling for a place: lower case, single spaces. <c>Bag  12</c> and <c>bag 12</c> are one bag.</summary>
    public static string PlaceName(string? typed) =>
        string.Join(' ', (typed ?? "").ToLowerInvariant().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    /// <summary>Whether a fastener there can go back into its joint.</summary>
    public bool IsAtHand => Spot is Spot.OwnHoles or Spot.Place or Spot.Unplaced or Spot.Shop;

    private static readonly string[] surfaces = ["shelf", "bench", "floor", "wall", "hook", "stand", "rack", "table", "pallet", "board", "windowsill"];

    /// <summary><c>in bag 12</c>, <c>on the top shelf</c>.</summary>
    private static string PlaceWords(string name)
    {
        var words = name.Split(' ');
        var lead = surfaces.Any(s => words.Contains(s)) ? "on" : "in";
        var isNumbered = (words.Length > 1 && words[0] is "bag" or "tray" or "box" or "tub" or "tin" or "drawer" or "cup") || words[^1].Length == 1 || char.IsAsciiDigit(words[^1][0]) || words[^1].StartsWith('"');
        var isNamed = words[0] is "the" or "my" or "a" or "his" or "her" or "their" or "in" or "on" or "under" or "behind" or "at";
        return isNamed ? (words[0] is "in" or "on" or "under" or "behind" or "at" ? name : $"{lead} {name}") : isNumbered ? $"{lead} {name}" : $"{lead} the {name}";
    }

    /// <summary>In the book's words, after "is": <c>in bag 12</c>.</summary>
    public string Words(Func<string, string> nameOfPart) => Spot switch
    {
        Spot.Engine => "on the engine",
        Spot.OwnHoles => "in their own holes",
        Spot.Riding => $"still on the {nameOfPart(Name)}",
        Spot.Place => PlaceWords(Name),
        Spot.Unplaced => "somewhere not said",
        Spot.Shop => $"away at {Name}",
        Spot.Lost => "lost",
        Spot.Broken => "broken",
        Spot.Unaccounted => "not accounted for",
        Spot.Scrap => "scrapped",
        _ => "not on this engine",
    };

    // The culture's own numeric order does nothing where no culture data is built in, as here.
    private static string Numbered(string name) => Numbers().Replace(name, n => n.Value.PadLeft(9, '0'));

    [GeneratedRegex("[0-9]{1,9}")]
    private static partial Regex Numbers();
}
