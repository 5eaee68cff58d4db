using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Lifting;

/// <summary>Bar and engine at rest, seen from the left; pulls in kg of weight, leans and tilts in radians, front up counted positive.</summary>
internal sealed record BarRest(double FrontPull, double RearPull, double FrontLean, double RearLean, double Tilt, double BarTilt)
{
    /// <summary>The rest with both drops taut, or null where there is none.</summary>
    public static BarRest? Find(double mass, Point3 centre, Point3 front, Point3 rear, HangingBar bar) => new Linkage(mass, centre, front, rear, bar).Rest();

    /// <summary>
    /// Two freedoms: the front drop leans against the bar, and all of it turns about the hook. Turned, the common centre hangs straight under the hook, as far
    /// under it as it lies from it: the rest is the lean at which that is farthest. Places are the bar's: the hook is the origin, x to the front, z up.
    /// </summary>
    private sealed class Linkage(double mass, Point3 centre, Point3 front, Point3 rear, HangingBar bar)
    {
        private const double Step = Math.PI / 60, Near = 1e-9;

        private readonly double half = bar.Span.Millimetres / 2, over = bar.HookOver.Millimetres, forward = bar.HookForward.Millimetres;
        private readonly double frontDrop = bar.FrontDrop.Millimetres, rearDrop = bar.RearDrop.Millimetres, barMass = bar.Mass.Kilograms;
        private readonly double span = double.Hypot(front.X - rear.X, front.Z - rear.Z);

        public BarRest? Rest()
        {
            // The farthest of all leans by steps of three degrees, then by thirds about it.
            var about = Enumerable.Range(-30, 61).Select(at => at * Step).MaxBy(Sag);
            var (low, high) = (about - Step, about + Step);
            while (high - low > Near)
            {
                var third = (high - low) / 3;
                if (Sag(low + third) < Sag(high - third))
                    low += third;
                else
                    high -= third;
            }
            return Closed(low) is { } linkage ? AtRest(linkage) : null;
        }

        private BarRest? AtRest(Joints at)
        {
            var (x, z) = Common(at);
            var turn = -Math.PI / 2 - Math.Atan2(z, x);
            var (hole, rearHole, a, b, g) = (Turned(at.FrontHole, turn), Turned(at.RearHole, turn), Turned(at.Front, turn), Turned(at.Rear, turn), Turned(at.Centre, turn));
            var (ux, uz) = ((hole.X - a.X) / frontDrop, (hole.Z - a.Z) / frontDrop);
            var (vx, vz) = ((rearHole.X - b.X) / rearDrop, (rearHole.Z - b.Z) / rearDrop);
            // Moments about the other lifting point.
            var (acrossX, acrossZ) = (a.X - b.X, a.Z - b.Z);
            var pullFront = mass * (g.X - b.X) / (acrossX * uz - acrossZ * ux);
            var pullRear = mass * (a.X - g.X) / (acrossX * vz - acrossZ * vx);
            var tilt = Math.IEEERemainder(at.Tilt + turn, 2 * Math.PI);
            return pullFront > 0 && pullRear > 0 && Math.Abs(tilt) < Math.PI / 2
                ? new BarRest(pullFront, pullRear, Math.Atan2(-ux, uz), Math.Atan2(-vx, vz), tilt, Math.IEEERemainder(turn, 2 * Math.PI))
                : null;
        }

        /// <summary>How far the common centre of mass is from the hook, mm; less than nothing where the linkage does not close.</summary>
        private double Sag(double lean) => Closed(lean) is { } linkage && Common(linkage) is var (x, z) ? double.Hypot(x, z) : double.NegativeInfinity;

        private (double X, double Z) Common(Joints at) =>
            ((mass * at.Centre.X - barMass * forward) / (mass + barMass), (mass * at.Centre.Z - barMass * over) / (mass + barMass));

        private Joints? Closed(double lean)
        {
            (double X, double Z) p = (half - forward, -over), q = (-half - forward, -over);
            (double X, double Z) a = (p.X + frontDrop * Math.Sin(lean), p.Z - frontDrop * Math.Cos(lean));
            var (dx, dz) = (q.X - a.X, q.Z - a.Z);
            var reach = double.Hypot(dx, dz);
            var along = (span * span - rearDrop * rearDrop + reach * reach) / (2 * reach);
            var square = span * span - along * along;
            if (square < 0)
                return null;
            // Of the two places that close the linkage the engine hangs in the lower one: left of the way from front point to rear hole.
            var across = Math.Sqrt(square);
            (double X, double Z) b = (a.X + (along * dx - across * dz) / reach, a.Z + (along * dz + across * dx) / reach);
            var tilt = Math.Atan2(a.Z - b.Z, a.X - b.X) - Math.Atan2(front.Z - rear.Z, front.X - rear.X);
            var (cx, cz) = Turned((centre.X - front.X, centre.Z - front.Z), tilt);
            return new(p, q, a, b, (a.X + cx, a.Z + cz), tilt);
        }

        private static (double X, double Z) Turned((double X, double Z) place, double by)
        {
            var (sin, cos) = Math.SinCos(by);
            return (cos * place.X - sin * place.Z, sin * place.X + cos * place.Z);
        }

        /// <summary>Holes of the bar, lifting points and centre of the engine, and its tilt, as the bar sees them.</summary>
        private readonly record struct Joints(
            (double X, double Z) FrontHole, (double X, double Z) RearHole, (double X, double Z) Front, (double X, double Z) Rear, (double X, double Z) Centre, double Tilt);
    }
}
