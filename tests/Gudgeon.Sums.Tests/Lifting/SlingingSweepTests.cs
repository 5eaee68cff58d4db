using CsCheck;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Lifting;

/// <summary>The sums of slinging against a body that is let fall into its least potential energy.</summary>
public class SlingingSweepTests
{
    private const double Weight = 1500;
    private const double Stiffness = 1500; // N/mm: a leg gives about half a millimetre

    private static readonly (double X, double Y)[][] Layouts =
    [
        [(1, 0.1), (-1, -0.1)],
        [(1, 0.6), (1, -0.6), (-1, 0)],
        [(1, 0.6), (1, -0.6), (-1, -0.6), (-1, 0.6)],
    ];

    private static readonly Gen<(Leg[] Legs, Point3 Centre)> Rigs =
        Gen.Select(Gen.Int[0, 2], Gen.Double[200, 350], Gen.Double[-1, 1].Array[20], (layout, reach, odd) =>
        {
            var legs = Layouts[layout].Select((p, j) => new Leg($"leg {j + 1}",
                new Point3(reach * p.X + 40 * odd[3 * j], reach * p.Y + 40 * odd[3 * j + 1], 50 * odd[3 * j + 2]),
                Length.FromMillimetres(2.4 * reach + 60 * odd[12 + j]))).ToArray();
            return (legs, new Point3(0.3 * reach * odd[16], 0.12 * reach * odd[17], -150 + 60 * odd[18]));
        });

    [Fact]
    public void Pulls_angles_and_tilt_are_those_of_least_energy() => Rigs.Sample(rig =>
    {
        var rest = PotentialEnergy.Find(rig.Legs, rig.Centre, Weight, Stiffness);
        Assert.True(rest.Imbalance < 1e-6, $"the check did not come to rest: {rest.Imbalance}");
        if (!Slinging.Hang(Load(rig.Centre), Stretched(rig.Legs, rest)).TryGet(out var hanging))
            return;
        Assert.Equal(rest.TiltDeg, hanging.Tilt.Degrees, 1e-3);
        foreach (var (leg, j) in hanging.Legs.Select((leg, j) => (leg, j)))
        {
            Assert.Equal(rest.AnglesDeg[j], leg.ToVertical.Degrees, 2e-3);
            if (rig.Legs.Length < 4)
                Assert.Equal(rest.Pulls[j], leg.Likely.Newtons, 1e-4 * Weight);
            Assert.True(leg.Most.Newtons >= rest.Pulls[j] - 1e-5 * Weight, $"{leg.Name}: {leg.Most} below the true {rest.Pulls[j]} N");
        }
    }, iter: 300);

    [Fact]
    public void Most_pull_is_never_below_the_true_one_within_the_spread() =>
        Gen.Select(Rigs, Gen.Double[-1, 1].Array[4], Gen.Double[0, 60], Gen.Double[0, 200]).Sample((rig, off, centreSpread, massSpread) =>
        {
            var spread = new Point3(centreSpread, 0.5 * centreSpread, centreSpread);
            var centre = rig.Centre + new Point3(off[0] * spread.X, off[1] * spread.Y, off[2] * spread.Z);
            var weight = Weight + off[3] * massSpread;
            var rest = PotentialEnergy.Find(rig.Legs, centre, weight, Stiffness);
            var load = Load(rig.Centre) with { MassSpread = Mass.FromKilograms(massSpread / 9.80665), CentreSpread = spread };
            if (!Slinging.Hang(load, Stretched(rig.Legs, rest)).TryGet(out var hanging))
                return;
            foreach (var (leg, j) in hanging.Legs.Select((leg, j) => (leg, j)))
            {
                Assert.True(leg.Most.Newtons >= rest.Pulls[j] - 1e-5 * Weight, $"{leg.Name}: {leg.Most} below the true {rest.Pulls[j]} N");
                Assert.True(leg.MostToVertical.Degrees >= rest.AnglesDeg[j] - 2e-3, $"{leg.Name}: {leg.MostToVertical.Degrees}° below the true {rest.AnglesDeg[j]}°");
            }
        }, iter: 300);

    // Chain beside strop: legs that give differently share differently. However four share, none carries more than is told.
    [Fact]
    public void Most_pull_holds_for_legs_that_give_differently() =>
        Gen.Select(Rigs, Gen.Double[-1.5, 1.5].Array[4]).Sample((rig, odd) =>
        {
            var rest = PotentialEnergy.Find(rig.Legs, rig.Centre, Weight, [.. rig.Legs.Select((_, j) => Stiffness * Math.Exp(odd[j]))]);
            if (rest.Imbalance > 1e-6 || !Slinging.Hang(Load(rig.Centre), Stretched(rig.Legs, rest)).TryGet(out var hanging))
                return;
            foreach (var (leg, j) in hanging.Legs.Select((leg, j) => (leg, j)))
                Assert.True(leg.Most.Newtons >= rest.Pulls[j] - 1e-5 * Weight, $"{leg.Name}: {leg.Most} below the true {rest.Pulls[j]} N");
        }, iter: 300);

    [Fact]
    public void Most_rigs_of_the_sweep_are_lifts()
    {
        var (tried, lifted) = (0, 0);
        Rigs.Sample(rig =>
        {
            Interlocked.Increment(ref tried);
            if (Slinging.Hang(Load(rig.Centre), rig.Legs).Ok)
                Interlocked.Increment(ref lifted);
        }, iter: 300);
        Assert.True(lifted > 0.9 * tried, $"{lifted} of {tried}");
    }

    private static Leg[] Stretched(Leg[] legs, PotentialEnergy.Rest rest) =>
        [.. legs.Select((leg, j) => leg with { Length = Length.FromMillimetres(rest.Lengths[j]) })];

    private static HangingLoad Load(Point3 centre) => new(Mass.FromKilograms(Weight / 9.80665), Mass.Zero, centre, default);
}
