namespace Gudgeon.Journal;

/// <summary>One line of the account: a thing, how many, and where.</summary>
/// <param name="Thing">Id of the part or joint.</param>
/// <param name="What">In words: <c>thermostat</c>, <c>2 M6x22 of the thermostat joint</c>.</param>
public sealed record AccountLine(string Thing, string What, int Count, string Size, Whereabouts Where, bool IsFasteners);

/// <summary>What is off and where: every thing in exactly one place, and the fasteners add up.</summary>
public static class Account
{
    /// <summary>Everything that is not on the engine, in the order of the tables: parts first, then fasteners.</summary>
    public static IReadOnlyList<AccountLine> Of(Bench bench) => [.. Parts(bench), .. Fasteners(bench)];

    /// <summary>What matches the words: a place (<c>bag 12</c>), a part, a size, a tag. Every word must be found.</summary>
    public static IReadOnlyList<AccountLine> Find(Bench bench, string words)
    {
        var wanted = words.ToLowerInvariant().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        var all = Of(bench).Concat(OnEngine(bench)).ToArray();
        // A place by its whole name comes alone: bag 1 is not bag 12.
        var place = Whereabouts.PlaceName(words);
        var there = all.Where(l => l.Where.Name == place && l.Where.Spot is Spot.Place or Spot.Shop && l.Where.Name == place).ToArray();
        return there.Length > 0 ? there
            : wanted.Length == 0 ? []
            : [.. all.Where(l => wanted.All(w => $"{l.What} {l.Where.Words(bench.NameOf)} {l.Thing}".Contains(w, StringComparison.OrdinalIgnoreCase)))];
    }

    private static IEnumerable<AccountLine> Parts(Bench bench) =>
        from part in bench.Engine.Parts.Values
        let at = bench.Part(part.Id).Where
        where at.Spot is not (Spot.Engine or Spot.Absent)
        select new AccountLine(part.Id, part.Name, 1, "", at, false);

    private static IEnumerable<AccountLine> OnEngine(Bench bench) =>
        from part in bench.Engine.Parts.Values
        let at = bench.Part(part.Id).Where
        where at.Spot is Spot.Engine
        select new AccountLine(part.Id, part.Name, 1, "", at, false);

    private static IEnumerable<AccountLine> Fasteners(Bench bench) =>
        from joint in bench.Engine.Joints.Values
        where bench.IsTouched(joint.Id)
        from lot in bench.Joint(joint.Id).Lots
        where lot.Where.Spot is not Spot.Engine
        select new AccountLine(joint.Id, $"{lot.Words} of the {bench.NameOf(joint.Id)}", lot.Count, lot.Size, lot.Where, true);
}
