using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Lifting;

/// <summary>Every leg at one place of the centre of mass; pulls as parts of the weight, angles in radians, slack in mm.</summary>
internal sealed record LegStates(Rest Rest, double[] Pulls, double[] MostPulls, double[] Angles, double[] Slack)
{
    /// <summary>A leg that is slack by less than this part of its length may come tight by the links of a chain or the give of a strop.</summary>
    private const double MayComeTight = 0.01;

    public Angle Tilt => Angle.FromRadians(Rest.Up.AngleTo(new Point3(0, 0, 1)));

    public static LegStates? At(IReadOnlyList<Point3> points, IReadOnlyList<double> lengths, Point3 centre)
    {
        if (Settling.Find(points, lengths, centre) is not { } rest)
            return null;
        var count = points.Count;
        var slack = Enumerable.Range(0, count).Select(j => Math.Max(0, lengths[j] - (rest.Hook - points[j]).Norm)).ToArray();
        var pulls = new double[count];
        foreach (var (leg, pull) in rest.Carrying.Zip(Settling.Pulls(points, rest.Hook, rest.Up, rest.Carrying)!))
            pulls[leg] = Math.Max(0, pull);

        // Whatever way the legs share, the largest pull of each is found where at most three carry.
        var most = (double[])pulls.Clone();
        foreach (var legs in Settling.Subsets(count).Where(legs => legs.All(j => slack[j] <= MayComeTight * lengths[j])))
        {
            if (Settling.Pulls(points, rest.Hook, rest.Up, legs) is not { } shares)
                continue;
            for (var k = 0; k < legs.Length; k++)
                most[legs[k]] = Math.Max(most[legs[k]], shares[k]);
        }

        var angles = points.Select(point => (rest.Hook - point).AngleTo(rest.Up)).ToArray();
        for (var j = 0; j < count; j++)
        {
            if (slack[j] <= 1e-6 * lengths[j])
                slack[j] = 0;
        }

        return new LegStates(rest, pulls, most, angles, slack);
    }
}
