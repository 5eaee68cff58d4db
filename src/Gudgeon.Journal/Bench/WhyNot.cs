using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>Why something cannot come off, in words.</summary>
public static class WhyNot
{
    /// <summary><c>under the cam cover; inlet manifold off, or "cover clear?" answered yes</c>. Empty when nothing is in the way.</summary>
    public static string Words(Bench bench, string target)
    {
        var blockers = bench.BlockersOf(target);
        var first = blockers.First
            .GroupBy(n => n.Sort)
            .Select(g => $"{Lead(g.Key)}{(g.Key == NeedSort.PartOff ? bench.Several(g.Select(n => n.Id)) : string.Join(" and ", g.Select(n => NeedName(bench, n))))}");
        var choices = blockers.Choices.Select(c => string.Join(", or ", c.Sets.Select(set => string.Join(" and ", set.Where(n => !bench.IsMet(n)).Select(n => NeedWords(bench, n))))));
        return string.Join("; ", first.Concat(choices));
    }

    private static string Lead(NeedSort sort) => sort switch
    {
        NeedSort.PartOff => "first off: ",
        NeedSort.LineParted => "first parted: ",
        NeedSort.Operation => "first: ",
        _ => "if so: ",
    };

    private static string NeedWords(Bench bench, Need need) => need.Sort switch
    {
        NeedSort.PartOff => $"{bench.NameOf(need.Id)} off",
        NeedSort.LineParted => $"{bench.NameOf(need.Id)} parted",
        _ => NeedName(bench, need),
    };

    private static string NeedName(Bench bench, Need need) => need.Sort == NeedSort.Fact && bench.Engine.Facts.TryGetValue(need.Id, out var fact)
        ? $"\"{fact.Question}\" yes"
        : bench.NameOf(need.Id);
}
