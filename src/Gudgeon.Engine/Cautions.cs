using Gudgeon.Engine.Building;

namespace Gudgeon.Engine;

/// <summary>A line of usual care, shown where the work is and before it.</summary>
/// <param name="Why">What happens otherwise.</param>
/// <param name="Source">A document seen in part, "from memory", or "common practice", which has no source.</param>
public sealed record Caution(string Id, string Line, string Why, string Source)
{
    /// <summary>The line as it is shown on a page, in a command and in print.</summary>
    public string Text => $"{Line} {Cautions.LastSentence}";
}

/// <summary>Which cautions a part, an operation or a page shows. An id that has none gives an empty list.</summary>
public static class Cautions
{
    public const string LastSentence = "Defer to local codes and licensed practice.";

    public static IReadOnlyList<Caution> All { get; } =
        [.. Table.Read("cautions.psv", Table.Own("cautions.psv")).Select(r => new Caution(r["id"], r["line"], r["why"], r["source"]))];

    private static readonly Dictionary<string, Caution> ById = All.ToDictionary(c => c.Id);

    private static readonly ILookup<(string Sort, string Id), Caution> Pulls = Table.Read("pulls.psv", Table.Own("pulls.psv"))
        .SelectMany(r => r.List("ids").SelectMany(id => r.List("cautions").Select(c => (Key: (r["sort"], id), Caution: ById[c]))))
        .Distinct()
        .ToLookup(x => x.Key, x => x.Caution);

    /// <summary>What handling a part of this kind calls for.</summary>
    public static IReadOnlyList<Caution> For(string partKind) => [.. Pulls[("part", partKind)]];

    /// <summary>What an operation calls for, by its id with the prefix: <c>op:hang</c>.</summary>
    public static IReadOnlyList<Caution> ForOperation(string operation) => [.. Pulls[("operation", operation)]];

    /// <summary>What a page calls for: <c>strip</c>, <c>lift</c>, <c>first-start</c> and the others of <see cref="Pages"/>.</summary>
    public static IReadOnlyList<Caution> ForPage(string page) => [.. Pulls[("page", page)]];

    /// <summary>The pages and kinds of work that have cautions.</summary>
    public static IReadOnlyList<string> Pages { get; } = [.. Pulls.Where(g => g.Key.Sort == "page").Select(g => g.Key.Id)];

    /// <summary>Ids that the table speaks of, for a check against the other tables.</summary>
    internal static IEnumerable<string> Spoken(string sort) => Pulls.Where(g => g.Key.Sort == sort).Select(g => g.Key.Id);
}
