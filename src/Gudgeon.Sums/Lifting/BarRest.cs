using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Lifting;

/// <summary>Bar and engine at rest, seen from the left; pulls in kg of weight, leans and tilts in radians, front up counted positive.</summary>
internal sealed record BarRest(double FrontPull, double RearPull, double FrontLean, double RearLean, double Tilt, double BarTilt)
{
    /// <summary>The rest with both drops taut, or null where there is none.</summary>
    public static BarRest? Find(double mass, Point3 centre, Point3 front, Point3 rear, HangingBar bar) => new Linkage(mass, centre, front, rear, bar).Rest();

    /// <summary>Two freedoms: the bar turns about the hook, the engine swings in its drops. The hook is the origin, x to the front, z up.</summary>
    private sealed class Linkage(double mass, Point3 centre, Point3 front, Point3 rear, HangingBar bar)
    {
        private readonly double half = bar.Span.Millimetres / 2, over = bar.HookOver.Millimetres, forward = bar.HookForward.Millimetres;
        private readonly double frontDrop = bar.FrontDrop.Millimetres, rearDrop = bar.RearDrop.Millimetres, barMass = bar.Mass.Kilograms;
        private readonly double span = double.Hypot(front.X - rear.X, front.Z - rear.Z);

        public BarRest? Rest()
        {
            // Start with the front drop leaning so that both drops lean alike.
            var (turn, lean) = (0.0, Math.Asin(Math.Clamp((span / 2 - half) / frontDrop, -0.9, 0.9)));
            if (Height(turn, lean) is null)
                return null;
            var damping = 1.0;
            for (var step = 0; step < 500; step++)
            {
                var (slopeTurn, slopeLean, bendTurn, bendBoth, bendLean) = Slopes(turn, lean);
                if (double.IsNaN(slopeTurn + slopeLean + bendTurn + bendBoth + bendLean))
                    return null;
                if (Math.Abs(slopeTurn) + Math.Abs(slopeLean) < 1e-9 * span)
                    break;
                var (a, d) = (bendTurn + damping * span, bendLean + damping * span);
                var det = a * d - bendBoth * bendBoth;
                var (dTurn, dLean) = det > 0 && a > 0
                    ? (-(d * slopeTurn - bendBoth * slopeLean) / det, -(a * slopeLean - bendBoth * slopeTurn) / det)
                    : (-slopeTurn / (10 * span * (1 + damping)), -slopeLean / (10 * span * (1 + damping)));
                var scale = Math.Min(1, 0.2 / Math.Max(Math.Abs(dTurn), Math.Abs(dLean)));
                if (Height(turn + scale * dTurn, lean + scale * dLean) is { } next && next <= Height(turn, lean)!.Value + 1e-12 * span)
                    (turn, lean, damping) = (turn + scale * dTurn, lean + scale * dLean, Math.Max(damping / 4, 1e-9));
                else
                    damping *= 4;
                if (damping > 1e12)
                    break;
            }

            return AtRest(turn, lean);
        }

        private BarRest? AtRest(double turn, double lean)
        {
            if (Places(turn, lean) is not var (p, q, a, b))
                return null;
            var tilt = Tilt(a, b);
            var (ux, uz) = ((p.X - a.X) / frontDrop, (p.Z - a.Z) / frontDrop);
            var (vx, vz) = ((q.X - b.X) / rearDrop, (q.Z - b.Z) / rearDrop);
            var det = ux * vz - vx * uz;
            // Parallel drops share by the lever; others by the balance of the pulls across.
            var g = CentreAt(a, tilt);
            var (pullFront, pullRear) = Math.Abs(det) > 1e-4
                ? (-vx * mass / det, ux * mass / det)
                : (mass * (g.X - b.X) / (a.X - b.X), mass * (a.X - g.X) / (a.X - b.X));
            return pullFront > 0 && pullRear > 0 && Math.Abs(tilt) < Math.PI / 2
                ? new BarRest(pullFront, pullRear, Math.Atan2(-ux, uz), Math.Atan2(-vx, vz), tilt, turn)
                : null;
        }

        private (double, double, double, double, double) Slopes(double turn, double lean)
        {
            const double h = 1e-4;
            double At(double i, double j) => Height(turn + i * h, lean + j * h) ?? double.NaN;
            var middle = At(0, 0);
            return ((At(1, 0) - At(-1, 0)) / (2 * h), (At(0, 1) - At(0, -1)) / (2 * h),
                (At(1, 0) - 2 * middle + At(-1, 0)) / (h * h), (At(1, 1) - At(1, -1) - At(-1, 1) + At(-1, -1)) / (4 * h * h), (At(0, 1) - 2 * middle + At(0, -1)) / (h * h));
        }

        /// <summary>Height of the common centre of mass, mm.</summary>
        private double? Height(double turn, double lean)
        {
            if (Places(turn, lean) is not var (_, _, a, b))
                return null;
            var barHeight = Math.Cos(turn) * -over + Math.Sin(turn) * -forward;
            return (mass * CentreAt(a, Tilt(a, b)).Z + barMass * barHeight) / (mass + barMass);
        }

        private ((double X, double Z) P, (double X, double Z) Q, (double X, double Z) A, (double X, double Z) B)? Places(double turn, double lean)
        {
            var (sin, cos) = Math.SinCos(turn);
            (double X, double Z) End(double along) => (cos * along + sin * over, sin * along - cos * over);
            var (p, q) = (End(half - forward), End(-half - forward));
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
            return (p, q, a, b);
        }

        /// <summary>Front up, from the level in which the lifting points were measured.</summary>
        private double Tilt((double X, double Z) a, (double X, double Z) b) =>
            Math.IEEERemainder(Math.Atan2(a.Z - b.Z, a.X - b.X) - Math.Atan2(front.Z - rear.Z, front.X - rear.X), 2 * Math.PI);

        private (double X, double Z) CentreAt((double X, double Z) a, double tilt)
        {
            var (sin, cos) = Math.SinCos(tilt);
            var (dx, dz) = (centre.X - front.X, centre.Z - front.Z);
            return (a.X + cos * dx - sin * dz, a.Z + sin * dx + cos * dz);
        }
    }
}
