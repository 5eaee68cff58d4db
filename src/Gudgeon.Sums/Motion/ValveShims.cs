using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Motion;

/// <summary>One valve as measured, with the shim that is in it.</summary>
/// <param name="Name">What the valve is called: 3 inlet rear.</param>
/// <param name="Clearance">Clearance as measured.</param>
/// <param name="Shim">Thickness of the shim that is in it.</param>
/// <param name="Least">Least clearance that is allowed.</param>
/// <param name="Most">Most clearance that is allowed.</param>
public sealed record MeasuredValve(string Name, Length Clearance, Length Shim, Length Least, Length Most);

/// <summary>The sizes that a shim can be bought in.</summary>
/// <param name="Thinnest">Thinnest shim of the range.</param>
/// <param name="Thickest">Thickest shim of the range.</param>
/// <param name="Step">Step between sizes.</param>
public sealed record ShimRange(Length Thinnest, Length Thickest, Length Step);

/// <summary>Where a chosen shim comes from.</summary>
public enum ShimSource
{
    /// <summary>It stays where it is.</summary>
    Stays,

    /// <summary>It comes from another valve of the set.</summary>
    FromValve,

    /// <summary>It is a spare at hand.</summary>
    Spare,

    /// <summary>It has to be bought.</summary>
    Bought,
}

/// <summary>What goes into one valve.</summary>
/// <param name="Valve">The valve.</param>
/// <param name="Shim">Thickness to fit.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="FromValve">The valve that it comes out of, when it comes from one.</param>
/// <param name="Clearance">The clearance that it gives.</param>
public sealed record ShimChoice(string Valve, Length Shim, ShimSource Source, string? FromValve, Length Clearance);

/// <summary>Choosing shims for a whole set of valves at once.</summary>
public static class ValveShims
{
    // One bought shim outweighs any number of moves, one move any sum of deviations (below 10⁶ µm over the set).
    private const long Buy = 1_000_000_000_000;
    private const long Move = 1_000_000_000;
    private const long Never = 1_000_000_000_000_000;

    /// <summary>The shims for every valve: as few bought as can be, then as few moved as can be, then nearest to the middle of the limits.</summary>
    /// <remarks>
    /// Formula: new clearance = measured + old shim − new shim, within the valve's limits; exact assignment of shims to valves (Hungarian method).
    /// Units: mm; compared to the tenth of a micrometre. Range: 1 to 500 valves; clearances and limits to 10 mm, shims 0.1 to 50 mm.
    /// Errors: the clearance and shim readings' own. Ties: the thinner size is bought; the same lists give the same answer.
    /// Source: geometry; Kuhn, Naval Research Logistics Quarterly 2 (1955) 83 for the method.
    /// </remarks>
    public static Outcome<IReadOnlyList<ShimChoice>> LeastNew(IReadOnlyList<MeasuredValve> valves, IReadOnlyList<Length> spares, ShimRange shop)
    {
        var check = Check(valves, spares, shop);
        if (!check.Clean)
            return check.Then<IReadOnlyList<ShimChoice>>(() => []);

        var shims = valves.Select(valve => valve.Shim).Concat(spares).ToList();
        var cost = new long[valves.Count, shims.Count + valves.Count];
        var bought = new Length?[valves.Count];
        for (var v = 0; v < valves.Count; v++)
        {
            for (var s = 0; s < shims.Count; s++)
                cost[v, s] = Fits(valves[v], shims[s]) ? (s == v ? 0 : Move) + Deviation(valves[v], shims[s]) : Never;
            bought[v] = FromShop(valves[v], shop);
            for (var b = 0; b < valves.Count; b++)
                cost[v, shims.Count + b] = b == v && bought[v] is { } size ? Buy + Move + Deviation(valves[v], size) : Never;
        }

        var chosen = Assignment.Least(cost);
        for (var v = 0; v < valves.Count; v++)
        {
            check.That(cost[v, chosen[v]] < Never, valves[v].Name, $"a shim of {Needed(valves[v])} needed",
                $"a size at hand or {Show(shop.Thinnest.Millimetres)} to {Show(shop.Thickest.Millimetres)} mm by {Show(shop.Step.Millimetres)} mm",
                "Measure shim and clearance again; a seat that has sunk this far needs the valve or the seat looked at");
        }

        return check.Then<IReadOnlyList<ShimChoice>>(() => [.. chosen.Select((s, v) => Choice(valves, shims, bought, v, s))]);
    }

    private static ShimChoice Choice(IReadOnlyList<MeasuredValve> valves, List<Length> shims, Length?[] bought, int v, int s)
    {
        var shim = s < shims.Count ? shims[s] : bought[v]!.Value;
        var source = s == v ? ShimSource.Stays : s < valves.Count ? ShimSource.FromValve : s < shims.Count ? ShimSource.Spare : ShimSource.Bought;
        return new ShimChoice(valves[v].Name, shim, source, source == ShimSource.FromValve ? valves[s].Name : null, valves[v].Clearance + valves[v].Shim - shim);
    }

    /// <summary>Lengths as whole tenths of a micrometre, so that a limit met exactly is met.</summary>
    private static long Tenths(Length length) => (long)Math.Round(length.Micrometres * 10);

    private static long ClearanceWith(MeasuredValve valve, Length shim) => Tenths(valve.Clearance) + Tenths(valve.Shim) - Tenths(shim);

    private static bool Fits(MeasuredValve valve, Length shim) =>
        ClearanceWith(valve, shim) >= Tenths(valve.Least) && ClearanceWith(valve, shim) <= Tenths(valve.Most);

    private static long Deviation(MeasuredValve valve, Length shim) => Math.Abs(2 * ClearanceWith(valve, shim) - Tenths(valve.Least) - Tenths(valve.Most)) / 2;

    private static Length? FromShop(MeasuredValve valve, ShimRange shop)
    {
        Length? best = null;
        for (var i = 0; Tenths(shop.Thinnest) + i * Tenths(shop.Step) <= Tenths(shop.Thickest); i++)
        {
            var size = shop.Thinnest + shop.Step * i;
            if (Fits(valve, size) && (best is null || Deviation(valve, size) < Deviation(valve, best.Value)))
                best = size;
        }

        return best;
    }

    private static string Needed(MeasuredValve valve)
    {
        var sum = valve.Clearance + valve.Shim;
        return $"{Show((sum - valve.Most).Millimetres)} to {Show((sum - valve.Least).Millimetres)} mm";
    }

    private static InputCheck Check(IReadOnlyList<MeasuredValve> valves, IReadOnlyList<Length> spares, ShimRange shop)
    {
        var check = new InputCheck()
            .That(valves.Count is > 0 and <= 500, "valves", Show(valves.Count), "1 to 500", "Give each valve's clearance and shim")
            .Within("thinnest shim", shop.Thinnest.Millimetres, 0.1, 50, "mm").That(shop.Step.Micrometres >= 1, "step of the shims", $"{Show(shop.Step.Millimetres)} mm", "0.001 mm or more", "Read the shim list again")
            .That(shop.Thickest >= shop.Thinnest && shop.Thickest.Millimetres <= 50, "thickest shim", $"{Show(shop.Thickest.Millimetres)} mm", $"{Show(shop.Thinnest.Millimetres)} to 50 mm", "Read the shim list again");
        foreach (var valve in valves)
        {
            check.Within($"{valve.Name}, clearance", valve.Clearance.Millimetres, 0, 10, "mm").Within($"{valve.Name}, shim", valve.Shim.Millimetres, 0.1, 50, "mm")
                .That(valve.Least.Millimetres >= 0 && valve.Most > valve.Least && valve.Most.Millimetres <= 10, $"{valve.Name}, limits", $"{Show(valve.Least.Millimetres)} to {Show(valve.Most.Millimetres)} mm",
                    "least before most, 0 to 10 mm", "Read the book's limits again");
        }

        for (var i = 0; i < spares.Count; i++)
            check.Within($"spare shim {i + 1}", spares[i].Millimetres, 0.1, 50, "mm");
        return check;
    }
}
