using Gudgeon.Engine;
using Gudgeon.Journal;

namespace Gudgeon.Pages;

/// <summary>How pages word what the model holds.</summary>
public static class WordsOnPages
{
    /// <summary>A capital at the front; the rest as it is.</summary>
    public static string Sentence(this string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>The fasteners of a joint: counted, or the guess of the tables and said to be one.</summary>
    public static string Fasteners(this Bench bench, Joint joint)
    {
        if (!joint.IsCounted)
            return "nothing to count";

        var size = bench.Joint(joint.Id).Lots.Select(l => l.Size).FirstOrDefault(s => s.Length > 0) ?? "";
        if (bench.Joint(joint.Id).Required is { } counted)
            return $"{Many($"{counted}", counted, joint)}{(size.Length > 0 ? $", {size}" : "")}, counted";

        var (fewest, most) = joint.Guess;
        var count = fewest == most ? $"{fewest}" : $"{fewest} to {most}";
        var guess = joint.SizeGuess.Replace("..", " to ", StringComparison.Ordinal);
        return $"{Many(count, most, joint)}{(guess.Length > 0 ? $", {guess}" : "")}, a guess";
    }

    /// <summary>What is on a screw, in words: a part that is its own fastener has a thread of its own.</summary>
    private static string Many(string count, int most, Joint joint) => joint.Fasteners.SequenceEqual(["self"])
        ? "its own thread"
        : $"{count} {string.Join(" or ", joint.Fasteners.Select(f => f == "self" ? "own thread" : most == 1 ? f : f + "s"))}";

    /// <summary>Where fasteners lie, as on tags: <c>4 M8x30 in bag 12</c>.</summary>
    public static IEnumerable<string> Lots(this Bench bench, Joint joint) =>
        bench.Joint(joint.Id).Lots.Where(l => l.Where.Spot != Spot.Engine).Select(l => $"{l.Count} {l.Size} {l.Where.Words(bench.NameOf)}".Replace("  ", " ", StringComparison.Ordinal));

    /// <summary>What lifting it takes, where it takes anything.</summary>
    public static string? Lifting(this Part part) => part.Lift switch
    {
        LiftClass.Heavy => "15 to 25 kg, about",
        LiftClass.TwoPersons => "over 25 kg: two persons or a hoist",
        LiftClass.Crane => "hoist only",
        _ => null,
    };

    /// <summary>What to keep of it when it comes off.</summary>
    public static IEnumerable<string> Keepings(this Part part)
    {
        if (part.Keeping.HasFlag(Keeping.OwnPlace))
            yield return "goes back to its own place: mark it";
        if (part.Keeping.HasFlag(Keeping.WayRound))
            yield return "has a way round: mark the front";
        if (part.Keeping.HasFlag(Keeping.Mated))
            yield return "keep it with its partner";
        if (part.Keeping.HasFlag(Keeping.MatchedSet))
            yield return "one of a matched set";
        if (part.Renewal == Renewal.EveryStrip)
            yield return "renewed at every strip";
    }

    /// <summary>What still stands in the way, in one sentence.</summary>
    public static string Why(this Bench bench, Blockers blockers)
    {
        var first = blockers.First.Select(n => Need(bench, n)).ToArray();
        var choices = blockers.Choices.Select(c => string.Join(" or ", Told(c).Select(set => string.Join(" and ", set.Where(n => !bench.IsMet(n)).Select(n => Need(bench, n))))));
        return string.Join("; ", new[] { Row(first) }.Concat(choices).Where(t => t.Length > 0));
    }

    /// <summary>The ways that work opens; a way that only a yes or no opens is asked for elsewhere, unless it is the only one.</summary>
    private static IEnumerable<IReadOnlyList<Need>> Told(Choice choice)
    {
        var work = choice.Sets.Where(set => set.All(n => n.Sort != NeedSort.Fact)).ToArray();
        return work.Length > 0 ? work : choice.Sets;
    }

    /// <summary>One need in words, as something to be done.</summary>
    public static string Need(Bench bench, Need need) => need.Sort switch
    {
        NeedSort.LineParted => $"undo the {bench.NameOf(need.Id)}",
        NeedSort.Fact => bench.Engine.Facts.TryGetValue(need.Id, out var fact) ? $"(if yes: {fact.Question})" : need.Id,
        _ => bench.NameOf(need.Id),
    };

    private static string Row(IReadOnlyList<string> words) => words.Count switch
    {
        0 => "",
        1 => words[0],
        <= 6 => $"{string.Join(", ", words.Take(words.Count - 1))} and {words[^1]}",
        _ => $"{string.Join(", ", words.Take(5))} and {words.Count - 5} more",
    };
}
