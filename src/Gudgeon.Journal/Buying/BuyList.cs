using System.Globalization;
using Gudgeon.Engine;
using Gudgeon.Sums;
using Gudgeon.Sums.Motion;

namespace Gudgeon.Journal;

/// <summary>One thing to buy.</summary>
/// <param name="Thing">Id of the part or joint; <c>shim</c> and a size in mm; <c>stud</c> and its joint.</param>
/// <param name="What">As one asks for it over the counter.</param>
/// <param name="Need">How many new ones the engine wants, those at hand among them.</param>
/// <param name="Why">Broken, lost, used once, stretched, scrapped, renewed at every strip.</param>
public sealed record BuyLine(string Thing, string What, int Need, int Ordered, int AtHand, string Why)
{
    /// <summary>Ids of the parts that the line holds; the thing alone for fasteners and shims.</summary>
    public IReadOnlyList<string> Things { get; init; } = [Thing];

    public int ToGet => Math.Max(0, Need - AtHand);

    /// <summary>In one word: at hand, ordered, to buy.</summary>
    public string Stand => ToGet == 0 ? "at hand" : Ordered >= ToGet ? "ordered" : "to buy";
}

/// <summary>What has to be bought before the engine is whole: snapped, lost and stretched fasteners, those that are used once, parts that are renewed, shims.</summary>
public static class BuyList
{
    private const string Shim = "shim ";
    private const string Stud = "stud ";

    public static IReadOnlyList<BuyLine> Of(Bench bench) => [.. Parts(bench), .. Fasteners(bench), .. Studs(bench), .. Shims(bench)];

    /// <summary>Parts that the owner may well renew as they are off: usually renewed in a full rebuild. Common practice, no source.</summary>
    public static IReadOnlyList<string> Usual(Bench bench) =>
        [.. bench.Engine.Parts.Values.Where(p => p.Renewal == Renewal.UsuallyInRebuild && bench.Part(p.Id) is { IsOff: true, Renewed: false }).Select(p => p.Id)];

    internal static Refusal? NoSuch(Bench bench, string thing) =>
        bench.Engine.Parts.ContainsKey(thing) ? bench.NoSuchPart(thing)
        : IsShim(thing) ? null
        : IsStud(thing) ? bench.NoSuchJoint(thing[Stud.Length..])
        : bench.NoSuchJoint(thing);

    internal static string NameOf(Bench bench, string thing) => IsShim(thing) ? $"{thing} mm" : IsStud(thing) ? $"{bench.NameOf(thing[Stud.Length..])} (studs)" : bench.NameOf(thing);

    /// <summary>What the studs of a joint are called in the list.</summary>
    internal static string StudsOf(string joint) => Stud + joint;

    private static bool IsStud(string thing) => thing.StartsWith(Stud, StringComparison.Ordinal);

    private static bool IsShim(string thing) =>
        thing.StartsWith(Shim, StringComparison.Ordinal) && double.TryParse(thing[Shim.Length..], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var mm) && mm > 0;

    /// <summary>New fasteners that a joint still wants, and why; nothing where it wants none.</summary>
    internal static (int Need, string Why) NeedOf(Bench bench, Joint joint)
    {
        var state = bench.Joint(joint.Id);
        // A plug or a switch is its own fastener: it stands among the parts.
        if (!bench.IsTouched(joint.Id) || bench.Part(joint.Part).IsAbsent || joint.Fit == "self" || state.Required is not { } required)
            return (0, "");
        if (state.IsOpen && bench.IsOneUse(joint))
            return (required - state.In, "used once");
        var bad = state.Bolts is { } bolts && state.IsOpen ? Math.Max(0, bolts.Bad - (state.Fresh - state.FreshAtBolts)) : 0;
        var gone = state.Lots.Where(l => l.Where.Spot is Spot.Lost or Spot.Broken or Spot.Unaccounted).GroupBy(l => l.Where.Spot)
            .Select(g => $"{g.Sum(l => l.Count)} {g.First().Where.Words(id => id)}");
        var need = Math.Min(required - state.In, state.Short + bad);
        return need > 0 ? (need, string.Join(", ", (state.Short > 0 ? gone : []).Concat(bad > 0 ? [$"{bad} stretched or necked"] : []))) : (0, "");
    }

    /// <summary>Parts of a kind that stand alike are one line: four spark plugs.</summary>
    private static IEnumerable<BuyLine> Parts(Bench bench) => Single(bench)
        .GroupBy(l => (bench.Engine.Parts[l.Thing].Kind == "own" ? l.Thing : bench.Engine.Parts[l.Thing].Kind, l.Why, l.Stand))
        .Select(g => g.Count() == 1 ? g.First() : g.First() with
        {
            What = bench.Several(g.Select(l => l.Thing)).Split(' ', 2)[1],
            Need = g.Count(),
            Ordered = g.Sum(l => l.Ordered),
            AtHand = g.Sum(l => l.AtHand),
            Things = [.. g.Select(l => l.Thing)],
        });

    private static IEnumerable<BuyLine> Single(Bench bench) =>
        from part in bench.Engine.Parts.Values
        let state = bench.Part(part.Id)
        let why = state.Where.Spot == Spot.Scrap ? "scrapped" : part.Renewal == Renewal.EveryStrip && state is { IsOff: true } ? "renewed at every strip" : state is { Renewed: true, IsOff: true } ? "renewed" : ""
        where why.Length > 0
        select new BuyLine(part.Id, part.Name, 1, bench.Bought.GetValueOrDefault(part.Id)?.Ordered ?? 0, state.Renewed && state.Where.Spot != Spot.Scrap ? 1 : 0, why);

    private static IEnumerable<BuyLine> Fasteners(Bench bench)
    {
        foreach (var joint in bench.Engine.Joints.Values)
        {
            var (need, why) = NeedOf(bench, joint);
            if (need == 0)
                continue;
            var lot = bench.Joint(joint.Id).Lots.Where(l => l.Size.Length > 0).MaxBy(l => l.Count);
            var size = lot?.Size ?? joint.SizeGuess;
            var bought = bench.Bought.GetValueOrDefault(joint.Id);
            var what = string.Join(' ', new[] { size, lot is { Fastener.Length: > 0 } ? lot.Fastener : joint.Fasteners.FirstOrDefault() ?? "fastener", $"for the {bench.NameOf(joint.Id)}" }.Where(w => w.Length > 0));
            yield return new BuyLine(joint.Id, lot is null && size.Length > 0 ? $"{what} (size by the tables: measure one)" : what, need, bought?.Ordered ?? 0, bought?.AtHand ?? 0, why);
        }
    }

    private static IEnumerable<BuyLine> Studs(Bench bench) =>
        from joint in bench.Engine.Joints.Values
        where bench.IsTouched(joint.Id) && !bench.Part(joint.Part).IsAbsent
        let broken = bench.Joint(joint.Id).Studs.Broken
        where broken > 0
        let bought = bench.Bought.GetValueOrDefault(StudsOf(joint.Id))
        select new BuyLine(StudsOf(joint.Id), $"stud for the {bench.NameOf(joint.Id)} (measure one: both threads and its length)", broken, bought?.Ordered ?? 0, bought?.AtHand ?? 0, $"{broken} broken");

    private static IEnumerable<BuyLine> Shims(Bench bench)
    {
        if (bench.Shims.Count == 0 || bench.ShimsOffered is null || LashSheet.Choose(bench) is not { Ok: true } chosen)
            return [];
        return chosen.Value.Where(c => c.Source == ShimSource.Bought).GroupBy(c => Units.Plain(Math.Round(c.Shim.Millimetres, 4))).Select(g =>
        {
            var state = bench.Bought.GetValueOrDefault($"{Shim}{g.Key}");
            return new BuyLine($"{Shim}{g.Key}", $"shim {g.Key} mm", g.Count(), state?.Ordered ?? 0, state?.AtHand ?? 0, $"for {string.Join(", ", g.Select(c => c.Valve))}");
        });
    }
}
