using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>Finds what a person means by a name in a command: an id, or a name that only one thing has.</summary>
public static class Naming
{
    public static Outcome<string> Part(Bench bench, string words) =>
        Choose("part", words, bench.Engine.Parts.Values.Where(p => !bench.Part(p.Id).IsAbsent).Select(p => (p.Id, p.Name)));

    public static Outcome<string> Line(Bench bench, string words) =>
        Choose("line", words, bench.Engine.Lines.Values.Where(l => !bench.Line(l.Id).IsAbsent && !l.IsPassage).Select(l => (l.Id, l.Name)));

    public static Outcome<string> Operation(Bench bench, string words) =>
        Choose("operation", words, bench.Engine.Operations.Values.Where(o => o.Lasts).Select(o => (o.Id, o.Name)));

    /// <summary>A part, a line, or an operation.</summary>
    public static Outcome<string> Thing(Bench bench, string words) => Choose(
        "thing",
        words,
        bench.Engine.Parts.Values.Select(p => (p.Id, p.Name))
            .Concat(bench.Engine.Lines.Values.Where(l => !l.IsPassage).Select(l => (l.Id, l.Name)))
            .Concat(bench.Engine.Operations.Values.Where(o => o.Lasts).Select(o => (o.Id, o.Name))));

    /// <summary>The joint of a part that has fasteners, by the part's name or the joint's id.</summary>
    public static Outcome<string> Joint(Bench bench, string words) =>
        bench.Engine.Joints.ContainsKey(words) ? Outcome.Of(words) : Part(bench, words).Then(part =>
            bench.Engine.JointsOf(part).OrderByDescending(id => bench.Engine.Joints[id].IsCounted).FirstOrDefault() is { } joint
                ? Outcome.Of(joint)
                : Outcome.Refused<string>(new Refusal(bench.NameOf(part), "no joint", "a part that something holds", "Name another part")));

    private static Outcome<string> Choose(string sort, string words, IEnumerable<(string Id, string Name)> things)
    {
        var wanted = words.Trim();
        var all = things.ToArray();
        // "starter" is starter.1 where there is only one of the kind.
        var kind = all.Where(t => t.Id.StartsWith($"{wanted}.", StringComparison.OrdinalIgnoreCase)).ToArray();
        var exact = all.Where(t => Same(t.Id, wanted) || Same(t.Name, wanted) || (kind.Length == 1 && t == kind[0])).ToArray();
        var matches = exact.Length > 0 ? exact : [.. all.Where(t => t.Name.Contains(wanted, StringComparison.OrdinalIgnoreCase) && wanted.Length > 2)];
        return matches switch
        {
            [var one] => Outcome.Of(one.Id),
            [] => Outcome.Refused<string>(new Refusal(sort, $"\"{wanted}\"", $"a {sort} of this engine", "Look at gudgeon next, or at the pages")),
            _ => Outcome.Refused<string>(new Refusal(sort, $"\"{wanted}\", which {matches.Length} answer to", string.Join(", ", matches.Take(6).Select(m => m.Name)) + (matches.Length > 6 ? "..." : ""), "Name one of them")),
        };
    }

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
