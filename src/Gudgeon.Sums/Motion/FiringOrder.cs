using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Motion;

/// <summary>A step of setting clearances: turn on until one cylinder is at overlap, set the other.</summary>
/// <param name="Cylinder">The cylinder whose valves are closed and can be set.</param>
/// <param name="Overlapping">The cylinder whose valves rock at that moment, or null where none does (odd counts).</param>
/// <param name="CrankFromFirst">Crank angle on from the firing top of the first cylinder of the order.</param>
public sealed record ClearanceStep(int Cylinder, int? Overlapping, Angle CrankFromFirst);

/// <summary>The firing order of a four-stroke engine, and what can be told from it.</summary>
public static class FiringOrder
{
    private const double TwoTurns = 720;

    /// <summary>For each cylinder in firing order: where the crank stands when it fires, and which one is at overlap then.</summary>
    /// <remarks>
    /// Formula: the k-th fires at k·720°/n, or at its given angle; the one that fires 360° later is at overlap. Units: crank degrees.
    /// Range: every cylinder 1 to n once; angles rising from 0 to below 720°. Errors: exact; a pair counts when it is 360° apart within 1°. Source: the four-stroke cycle.
    /// </remarks>
    /// <param name="order">Cylinders as they fire.</param>
    /// <param name="firingAngles">Crank angle of each firing, first at 0, for an engine that fires unevenly; none for even firing.</param>
    public static Outcome<IReadOnlyList<ClearanceStep>> ClearanceTable(IReadOnlyList<int> order, IReadOnlyList<Angle>? firingAngles = null)
    {
        var check = Check(order);
        if (firingAngles is not null)
        {
            var degrees = firingAngles.Select(angle => angle.Degrees).ToList();
            check.That(degrees.Count == order.Count, "firing angles", $"{Show(degrees.Count)} for {Show(order.Count)} cylinders", "one for each cylinder", "Give the angle of each firing");
            if (check.Clean)
            {
                check.That(degrees[0] == 0 && degrees[^1] < TwoTurns && degrees.Zip(degrees.Skip(1)).All(pair => pair.First < pair.Second), "firing angles",
                    string.Join(", ", degrees.Select(Show)), "rising from 0 to less than 720°", "Count on from the first cylinder's firing");
            }
        }

        return check.Then<IReadOnlyList<ClearanceStep>>(() =>
        {
            var at = firingAngles?.Select(angle => angle.Degrees).ToList() ?? [.. Enumerable.Range(0, order.Count).Select(k => k * TwoTurns / order.Count)];
            return [.. order.Select((cylinder, k) => new ClearanceStep(cylinder, Opposite(order, at, k), Angle.FromDegrees(at[k])))];
        });
    }

    /// <summary>Where each cylinder of an evenly firing engine stands in its cycle, crank degrees after its own firing top.</summary>
    /// <remarks>
    /// Formula: position = (crank − k·720°/n) mod 720°. Units: crank degrees. Range: any crank angle. Errors: exact. Source: the four-stroke cycle.
    /// </remarks>
    /// <returns>Angle after firing top for cylinders 1 to n, in that order.</returns>
    public static Outcome<IReadOnlyList<Angle>> Positions(IReadOnlyList<int> order, Angle crankFromFirst) => Check(order).Then<IReadOnlyList<Angle>>(() =>
        [.. Enumerable.Range(1, order.Count).Select(cylinder => order.ToList().IndexOf(cylinder)).Select(k =>
        {
            var turned = (crankFromFirst.Degrees - k * TwoTurns / order.Count) % TwoTurns;
            return Angle.FromDegrees(turned < 0 ? turned + TwoTurns : turned);
        })]);

    private static int? Opposite(IReadOnlyList<int> order, List<double> at, int k)
    {
        for (var j = 0; j < order.Count; j++)
        {
            if (Math.Abs(Math.Abs(at[j] - at[k]) - TwoTurns / 2) <= 1)
                return order[j];
        }

        return null;
    }

    private static InputCheck Check(IReadOnlyList<int> order)
    {
        var check = new InputCheck().That(order.Count > 0, "firing order", "nothing", "each cylinder once", "Give the order, for instance 1 3 4 2");
        foreach (var cylinder in order.Where(cylinder => cylinder < 1 || cylinder > order.Count).Distinct())
            check.That(false, "firing order", $"cylinder {Show(cylinder)} among {Show(order.Count)}", $"1 to {Show(order.Count)}", "Number the cylinders from 1 without a gap");
        foreach (var twice in order.GroupBy(cylinder => cylinder).Where(group => group.Count() > 1))
            check.That(false, "firing order", $"cylinder {Show(twice.Key)} {Show(twice.Count())} times", "each cylinder once", "Read the order again");
        return check;
    }
}
