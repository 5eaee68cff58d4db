using System.Text.RegularExpressions;
using Gudgeon.Engine;
using Gudgeon.Journal;

namespace Gudgeon.Pages.Strip;

/// <summary>Parts of one kind that stand alike: all can come off, or all are held back by the same.</summary>
/// <param name="Helps">For how many held-back parts one of these is in the way.</param>
public sealed record StripGroup(string Name, IReadOnlyList<Part> Parts, int Helps, string Why);

/// <summary>What the Strip page shows, worked out once a visit.</summary>
public sealed partial record StripList(
    IReadOnlyList<StripGroup> Now, IReadOnlyList<StripGroup> NotYet, IReadOnlyList<Line> Lines, IReadOnlyList<Operation> Operations, IReadOnlyList<Fact> Facts, int Off, int All)
{
    public static StripList Of(Bench bench)
    {
        var held = bench.HeldBack().Select(p => (Part: p, Blockers: bench.BlockersOf(p.Id))).ToArray();
        var asked = held.SelectMany(h => Needs(h.Blockers))
            .Concat(bench.Engine.Operations.Keys.Where(o => !bench.IsDone(o)).SelectMany(o => Needs(bench.BlockersOf(o))))
            .GroupBy(n => n.Id).ToDictionary(g => g.Key, g => g.Count());

        var now = bench.CanComeOff()
            .GroupBy(p => (Kind(p), bench.Part(p.Id).Where))
            .Select(g => new StripGroup(Named(bench, [.. g]), [.. g], g.Max(p => asked.GetValueOrDefault(p.Id)), bench.Part(g.First().Id).IsRiding ? bench.Part(g.First().Id).Where.Words(bench.NameOf) : ""))
            .OrderBy(g => g.Why.Length > 0).ThenByDescending(g => g.Helps)
            .ToArray();
        var notYet = held
            .GroupBy(h => (Kind(h.Part), Why: PlaceNumber().Replace(bench.Why(h.Blockers), "")))
            .Select(g => (Group: new StripGroup(Named(bench, [.. g.Select(h => h.Part)]), [.. g.Select(h => h.Part)], 0, g.Count() == 1 ? bench.Why(g.First().Blockers) : $"{g.Key.Why}, each"), g.First().Blockers))
            .OrderBy(g => g.Blockers.First.Count + g.Blockers.Choices.Count)
            .Select(g => g.Group);
        var lines = bench.Engine.Lines.Values.Where(l => !l.IsPassage && bench.Line(l.Id) is { IsParted: false, IsAbsent: false });
        var operations = bench.Engine.Operations.Values.Where(o => o.Lasts && !bench.IsDone(o.Id) && asked.ContainsKey(o.Id));
        var facts = bench.Engine.Facts.Values.Where(f => bench.Answer(f.Id) is null && asked.ContainsKey(f.Id));
        var there = bench.Engine.Parts.Keys.Where(id => !bench.Part(id).IsAbsent).ToArray();
        return new StripList(
            now, [.. notYet],
            [.. lines.OrderByDescending(l => asked.GetValueOrDefault(l.Id))],
            [.. operations.OrderByDescending(o => bench.BlockersOf(o.Id).IsNone).ThenByDescending(o => asked[o.Id])],
            [.. facts], there.Count(id => !bench.Part(id).IsOn), there.Length);
    }

    /// <summary>Piston 1 waits for circlip 1 and piston 2 for circlip 2: said once, without the numbers.</summary>
    [GeneratedRegex(@" \d+(\.\d+)*\b")]
    private static partial Regex PlaceNumber();

    private static IEnumerable<Need> Needs(Blockers blockers) =>
        blockers.First.Concat(blockers.Choices.SelectMany(c => c.Sets).SelectMany(s => s)).Distinct();

    /// <summary>Upper and lower shells are one kind of the tables and two sorts of thing in the hand.</summary>
    private static string Kind(Part part) => part.Kind == "own" ? part.Id : $"{part.Kind}/{PlaceNumber().Replace(part.Name, "")}";

    private static string Named(Bench bench, IReadOnlyList<Part> parts) =>
        parts.Count == 1 ? parts[0].Name : bench.Several(parts.Select(p => p.Id));
}
