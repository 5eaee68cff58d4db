using System.Globalization;

namespace Gudgeon.Capture;

public enum ThingSort
{
    /// <summary>Parts of this engine.</summary>
    Part,

    /// <summary>The fasteners that hold these parts.</summary>
    Fasteners,

    /// <summary>Hoses, pipes, cables.</summary>
    Line,

    /// <summary>A kind of part that the words name but this engine's book does not hold.</summary>
    Lacking,

    /// <summary>Something that no list knows; kept under the words it was given.</summary>
    Unknown,

    /// <summary>A stand, a tool, money: not of the engine.</summary>
    Outside,
}

/// <summary>
/// What a fact is about.
/// </summary>
/// <param name="Kind">Kind of part or line in the tables; empty for what they do not know.</param>
/// <param name="Ids">The engine's ids; empty when the words do not say which, or the engine has none.</param>
/// <param name="Name">In the app's own words.</param>
public sealed record Thing(ThingSort Sort, string Kind, IReadOnlyList<string> Ids, string Name)
{
    /// <summary>Which of them, when no id says so: second, rear, upper, inlet.</summary>
    public string Where { get; init; } = "";

    /// <summary>A piece or feature of it that is no part of its own: gasket, hole, thread, lobe.</summary>
    public string Detail { get; init; } = "";

    /// <summary>The other ways to read the words; the first way is this one.</summary>
    internal IReadOnlyList<Thing> Others { get; init; } = [];

    /// <summary>Bolts, studs, nuts: as said, in the singular.</summary>
    internal string Fastener { get; init; } = "";

    public bool Equals(Thing? other) =>
        other is not null && Sort == other.Sort && Kind == other.Kind && Where == other.Where && Detail == other.Detail && Ids.SequenceEqual(other.Ids) && (Ids.Count > 0 || Name == other.Name);

    public override int GetHashCode() => HashCode.Combine(Sort, Kind, Where, Detail, Ids.Count > 0 ? Ids[0] : Name);

    public string Code
    {
        get
        {
            string core = Ids.Count > 0 ? Compact(Ids) : Kind.Length > 0 ? "?" + Kind : $"'{Name}'";
            if (Where.Length > 0 && Sort != ThingSort.Unknown)
                core += "/" + Where;
            return Detail.Length > 0 ? $"{core}/{Detail}" : core;
        }
    }

    /// <summary>The name with the piece spoken of: thermostat gasket.</summary>
    public string Full
    {
        get
        {
            string name = Sort == ThingSort.Fasteners ? $"{Name} {(Fastener.Length > 0 ? Fastener : "bolt")}s" : Name;
            if (Where.Length > 0 && Sort != ThingSort.Unknown && !name.Contains(Where, StringComparison.Ordinal))
                name = $"{Where} {name}";
            return Detail.Length > 0 ? $"{name}, {Detail}" : name;
        }
    }

    /// <summary>Ids written short: plug.1, plug.2, plug.3 become plug.1-3.</summary>
    public static string Compact(IReadOnlyList<string> ids)
    {
        var done = new List<string>();
        for (int from = 0; from < ids.Count;)
        {
            int to = from + 1;
            while (to < ids.Count && Follows(ids[to - 1], ids[to]))
                to++;
            done.Add(to - from > 1 ? $"{ids[from]}-{ids[to - 1][(ids[to - 1].LastIndexOf('.') + 1)..]}" : ids[from]);
            from = to;
        }

        return string.Join(",", done);
    }

    private static bool Follows(string left, string right)
    {
        int l = left.LastIndexOf('.');
        int r = right.LastIndexOf('.');
        return l > 0 && r > 0 && left[..l] == right[..r]
            && int.TryParse(left[(l + 1)..], CultureInfo.InvariantCulture, out int a) && int.TryParse(right[(r + 1)..], CultureInfo.InvariantCulture, out int b) && b == a + 1;
    }
}

public enum PlaceSort
{
    /// <summary>Tray, bag, box, shelf: somewhere to look.</summary>
    Container,

    /// <summary>Back in the holes they came from.</summary>
    OwnHoles,

    /// <summary>Kept with a part.</summary>
    With,

    /// <summary>At a machine shop or with somebody else.</summary>
    Away,
}

/// <summary>Where something was put. <paramref name="Label"/> is how the app writes it: <c>bag 12</c>, <c>muffin tin, cup 3</c>.</summary>
public sealed record Place(PlaceSort Sort, string Label)
{
    /// <summary>in order, front to back, finger tight.</summary>
    public string Manner { get; init; } = "";

    /// <summary>Token of the part whose holes are meant, or -1.</summary>
    internal int PartAt { get; init; } = -1;

    public string Code => Label;
    public string Text => Manner.Length > 0 ? $"{Label}, {Manner}" : Label;
}

/// <summary>Like fasteners told together.</summary>
public sealed record Lot
{
    public int? Count { get; init; }

    /// <summary>A few, some, the rest: more than none, but nobody counted.</summary>
    public bool Uncounted { get; init; }
    public string Fastener { get; init; } = "";
    public ThreadSize Size { get; init; } = new();

    /// <summary>Where in the joint: at the ends, top right seen from the front.</summary>
    public string Where { get; init; } = "";

    /// <summary>longer, new, two copper washers.</summary>
    public string Note { get; init; } = "";

    public string Code => string.Join(" ", new[] { Count?.ToString(CultureInfo.InvariantCulture) ?? (Uncounted ? "?" : ""), Fastener is "bolt" or "part" or "" ? "" : Fastener, Size.ToString() }.Where(s => s.Length > 0));

    public string Text
    {
        get
        {
            string noun = Fastener.Length > 0 ? Fastener : "fastener";
            if (Count is not 1)
                noun += "s";
            string head = $"{Count?.ToString(CultureInfo.InvariantCulture) ?? "some"} {noun}";
            return string.Join(" ", new[] { head, Size.ToString(), Note.Length > 0 ? $"({Note})" : "", Where }.Where(s => s.Length > 0));
        }
    }
}

/// <summary>A day, or a time of day, as said; <paramref name="Rough"/> when it cannot be told to the day.</summary>
public sealed record Due(DateOnly? Day, string Said, bool Rough)
{
    public string Code => (Rough ? "~" : "") + (Day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? Said);
    public string Text => Day is { } day ? $"{Said} ({(Rough ? "about " : "")}{day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture)})" : Said;
}
