using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Lifting;

/// <summary>
/// A body of six freedoms on stretching legs under a hook at the origin, brought to its least potential energy by damped Newton steps.
/// It knows nothing of the way the sums reckon: no taut legs are assumed, nothing is assumed about where the hook ends.
/// </summary>
internal sealed class PotentialEnergy
{
    private const double Arm = 300;
    private readonly Point3[] arms;
    private readonly double[] lengths, stiffness;
    private readonly double weight;
    private Point3 place;
    private Point3[] axes = [new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)];

    private PotentialEnergy(IReadOnlyList<Leg> legs, Point3 centre, double weight, double[] stiffness)
    {
        (this.weight, this.stiffness) = (weight, stiffness);
        arms = [.. legs.Select(leg => leg.LiftingPoint - centre)];
        lengths = [.. legs.Select(leg => leg.Length.Millimetres)];
        place = new(0, 0, -1.2 * lengths.Max());
    }

    public sealed record Rest(double[] Pulls, double[] Lengths, double[] AnglesDeg, double TiltDeg, double Imbalance);

    public static Rest Find(IReadOnlyList<Leg> legs, Point3 centre, double weight, params double[] stiffness)
    {
        stiffness = stiffness.Length == 1 ? [.. legs.Select(_ => stiffness[0])] : stiffness;
        var body = new PotentialEnergy(legs, centre, weight, stiffness);
        var damping = 1.0;
        for (var step = 0; step < 2000; step++)
        {
            var slope = body.Slope();
            if (Size(slope) < 1e-9 * weight)
                break;
            var before = body.Energy();
            var (oldPlace, oldAxes) = (body.place, body.axes);
            body.Move(Solve(body.Bend(), slope, damping * stiffness.Max()));
            // Close to rest the energy drowns in its own rounding, about 1e-12 of the weight: there a smaller slope tells a better place.
            var change = body.Energy() - before;
            if (change <= 1e-12 * weight || (change <= 1e-9 * weight && Size(body.Slope()) < Size(slope)))
            {
                damping = Math.Max(damping / 3, 1e-12);
            }
            else
            {
                (body.place, body.axes) = (oldPlace, oldAxes);
                damping *= 4;
            }
        }

        var ends = body.Ends();
        return new Rest(
            [.. ends.Select((end, j) => stiffness[j] * Math.Max(0, end.Norm - body.lengths[j]))],
            [.. ends.Select((end, j) => Math.Max(end.Norm, body.lengths[j]))],
            [.. ends.Select(end => Math.Acos(-end.Z / end.Norm) * 180 / Math.PI)],
            Math.Acos(Math.Clamp(body.axes[2].Z, -1, 1)) * 180 / Math.PI, Size(body.Slope()) / weight);
    }

    private Point3[] Ends() => [.. arms.Select(arm => place + Turned(arm))];

    private Point3 Turned(Point3 arm) => arm.X * axes[0] + arm.Y * axes[1] + arm.Z * axes[2];

    private double Energy() => weight * place.Z + Ends().Select((end, j) => (More: Math.Max(0, end.Norm - lengths[j]), Stiff: stiffness[j])).Sum(leg => leg.Stiff / 2 * leg.More * leg.More);

    private double[] Slope()
    {
        var force = new Point3(0, 0, weight);
        var turn = default(Point3);
        var ends = Ends();
        for (var j = 0; j < ends.Length; j++)
        {
            var pull = stiffness[j] * Math.Max(0, ends[j].Norm - lengths[j]) / ends[j].Norm * ends[j];
            force += pull;
            turn += Cross(Turned(arms[j]), pull);
        }

        return [force.X, force.Y, force.Z, turn.X / Arm, turn.Y / Arm, turn.Z / Arm];
    }

    // The slope's own slope, term by term: differences over a step go wrong where a leg is tauter by less than the step.
    private double[,] Bend()
    {
        var bend = new double[6, 6];
        var ends = Ends();
        for (var j = 0; j < ends.Length; j++)
        {
            var (end, arm, length) = (ends[j], Turned(arms[j]), ends[j].Norm);
            if (length <= lengths[j])
                continue;
            var taut = stiffness[j] * (1 - lengths[j] / length);
            for (var k = 0; k < 6; k++)
            {
                var unit = new Point3(k % 3 == 0 ? 1 : 0, k % 3 == 1 ? 1 : 0, k % 3 == 2 ? 1 : 0);
                var way = k < 3 ? unit : Cross(1 / Arm * unit, arm);
                var pull = taut * way + stiffness[j] * lengths[j] * Dot(end, way) / (length * length * length) * end;
                var turn = Cross(arm, pull) + (k < 3 ? default : Cross(way, taut * end));
                foreach (var (i, more) in new[] { pull.X, pull.Y, pull.Z, turn.X / Arm, turn.Y / Arm, turn.Z / Arm }.Index())
                    bend[i, k] += more;
            }
        }

        return bend;
    }

    private void Move(double[] way)
    {
        var longest = Size(way);
        var scale = longest > 100 ? 100 / longest : 1;
        place += new Point3(scale * way[0], scale * way[1], scale * way[2]);
        var turn = scale / Arm * new Point3(way[3], way[4], way[5]);
        var angle = turn.Norm;
        if (angle < 1e-300)
            return;
        var about = 1 / angle * turn;
        axes = [.. axes.Select(axis => Math.Cos(angle) * axis + Math.Sin(angle) * Cross(about, axis) + (1 - Math.Cos(angle)) * Dot(about, axis) * about)];
    }

    /// <summary>−(bend + damping)⁻¹·slope, by elimination with pivots.</summary>
    private static double[] Solve(double[,] bend, double[] slope, double damping)
    {
        var a = new double[6, 7];
        for (var i = 0; i < 6; i++)
        {
            for (var k = 0; k < 6; k++)
                a[i, k] = (bend[i, k] + bend[k, i]) / 2 + (i == k ? damping : 0);
            a[i, 6] = -slope[i];
        }

        for (var c = 0; c < 6; c++)
        {
            var pivot = Enumerable.Range(c, 6 - c).MaxBy(i => Math.Abs(a[i, c]));
            for (var k = 0; k < 7; k++)
                (a[c, k], a[pivot, k]) = (a[pivot, k], a[c, k]);
            for (var i = 0; i < 6; i++)
            {
                if (i == c)
                    continue;
                var times = a[i, c] / a[c, c];
                for (var k = c; k < 7; k++)
                    a[i, k] -= times * a[c, k];
            }
        }

        return [.. Enumerable.Range(0, 6).Select(i => a[i, 6] / a[i, i])];
    }

    private static double Size(double[] x) => Math.Sqrt(x.Sum(v => v * v));

    private static double Dot(Point3 a, Point3 b) => a.X * b.X + a.Y * b.Y + a.Z * b.Z;

    private static Point3 Cross(Point3 a, Point3 b) => new(a.Y * b.Z - a.Z * b.Y, a.Z * b.X - a.X * b.Z, a.X * b.Y - a.Y * b.X);
}
