using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Lifting;

/// <summary>What hangs on the hook: mass and centre of mass, each with the most that it is believed to be off.</summary>
/// <param name="Mass">Mass.</param>
/// <param name="MassSpread">Most that the mass is off, either way.</param>
/// <param name="Centre">Centre of mass, mm.</param>
/// <param name="CentreSpread">Most that the centre is off along x, y and z, mm, either way.</param>
public sealed record HangingLoad(Mass Mass, Mass MassSpread, Point3 Centre, Point3 CentreSpread)
{
    internal InputCheck Check(InputCheck check) => check
        .Positive("mass", Mass).NotNegative("spread of the mass", MassSpread)
        .That(Centre.IsFinite, "centre of mass", "no number", "x, y and z in mm", "Give the centre from the same datum as the lifting points")
        .That(CentreSpread is { IsFinite: true, X: >= 0, Y: >= 0, Z: >= 0 }, "spread of the centre",
            $"{Show(CentreSpread.X)}, {Show(CentreSpread.Y)}, {Show(CentreSpread.Z)} mm", "0 mm or more each way", "Give how far off the centre may be");
}

/// <summary>One part of what hangs.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Mass">Its mass, weighed or guessed.</param>
/// <param name="MassSpread">Most that the mass is off, either way.</param>
/// <param name="Centre">Its centre of mass, mm.</param>
/// <param name="CentreSpread">Most that its centre is off in any direction.</param>
public sealed record MassPart(string Name, Mass Mass, Mass MassSpread, Point3 Centre, Length CentreSpread);

/// <summary>Centre of mass of the engine as it is now.</summary>
public static class CentreOfMass
{
    // Two standard uncertainties: about one case in twenty lies outside.
    private const double Coverage = 2;

    /// <summary>Mass and centre from parts; what is off is left out of the list.</summary>
    /// <remarks>
    /// Formula: M = Σm; x = Σ(m·x)/M; u²(x) = Σ[((x_i − x)/M·u(m_i))² + (m_i/M·u(x_i))²], each spread rectangular (half-width/√3); spreads given with k = 2.
    /// Units: kg, mm. Range: one part or more, masses above 0. Errors: first order in the spreads.
    /// Source: definition of the centre of mass; JCGM 100, 5.1.2.
    /// </remarks>
    public static Outcome<HangingLoad> FromParts(IReadOnlyList<MassPart> parts)
    {
        var check = new InputCheck().That(parts.Count > 0, "parts", "none", "one or more", "List what is still on the engine");
        foreach (var part in parts)
            Look(check, part);

        return check.Then(() =>
        {
            var total = parts.Sum(part => part.Mass.Kilograms);
            var centre = parts.Aggregate(default(Point3), (sum, part) => sum + part.Mass.Kilograms / total * part.Centre);
            double Spread(Func<Point3, double> axis) => Coverage / Math.Sqrt(3) * Math.Sqrt(parts.Sum(part =>
                Square(axis(part.Centre - centre) / total * part.MassSpread.Kilograms) + Square(part.Mass.Kilograms / total * part.CentreSpread.Millimetres)));
            var massSpread = Coverage / Math.Sqrt(3) * Math.Sqrt(parts.Sum(part => Square(part.MassSpread.Kilograms)));
            return new HangingLoad(Mass.FromKilograms(total), Mass.FromKilograms(massSpread), centre, new(Spread(p => p.X), Spread(p => p.Y), Spread(p => p.Z)));
        });
    }

    /// <summary>Mass and centre from two hook scales, front and rear, that hold the level engine at once.</summary>
    /// <remarks>
    /// Formula: M = m1 + m2; x = (m1·p1 + m2·p2)/M; u(x) = |p2 − p1|·u·√(m1² + m2²)/M²; spreads with k = 2, the scale's tolerance rectangular. Height is not weighed: it is given.
    /// Units: kg, mm. Range: both scales above 0, ropes upright, hooks apart. Errors: a rope 5° off the upright reads 0.4 % high and pulls the engine along.
    /// Source: moments about either hook.
    /// </remarks>
    public static Outcome<HangingLoad> FromTwoScales(Mass front, Point3 frontHook, Mass rear, Point3 rearHook, Mass tolerance, Length height, Length heightSpread) => new InputCheck()
        .Positive("front scale", front).Positive("rear scale", rear).NotNegative("tolerance of the scales", tolerance).NotNegative("spread of the height", heightSpread)
        .That(frontHook.IsFinite && rearHook.IsFinite && (frontHook - rearHook).Norm >= 50, "hooks", $"{Show((frontHook - rearHook).Norm)} mm apart", "50 mm apart or more",
            "Hang the engine from two places well apart")
        .Then(() =>
        {
            var (m1, m2) = (front.Kilograms, rear.Kilograms);
            var total = m1 + m2;
            var centre = m1 / total * frontHook + m2 / total * rearHook;
            var u = tolerance.Kilograms / Math.Sqrt(3);
            var along = Coverage * u * Math.Sqrt(m1 * m1 + m2 * m2) / (total * total);
            var arm = frontHook - rearHook;
            return new HangingLoad(Mass.FromKilograms(total), Mass.FromKilograms(Coverage * Math.Sqrt(2) * u), centre with { Z = height.Millimetres },
                new(Math.Abs(arm.X) * along, Math.Abs(arm.Y) * along, heightSpread.Millimetres));
        });

    /// <summary>Mass and centre of a whole after parts came off it or went on it since it was weighed or guessed.</summary>
    /// <remarks>
    /// Formula: M = M0 ± Σm; x = (M0·x0 ± Σ(m·x))/M; spreads with k = 2 by first order: (x0 − x)/M of u(M0), M0/M of u(x0), ±(x_i − x)/M of u(m_i), ±m_i/M of u(x_i); spreads of parts rectangular.
    /// Units: kg, mm. Range: what is left above its own spread; else refused. Errors: first order in the spreads. Source: definition of the centre of mass; JCGM 100, 5.1.2.
    /// </remarks>
    /// <param name="whole">What was weighed or guessed.</param>
    /// <param name="off">Parts that were on it then and are off now.</param>
    /// <param name="on">Parts that were off then and are on now.</param>
    public static Outcome<HangingLoad> AsItIsNow(HangingLoad whole, IReadOnlyList<MassPart> off, IReadOnlyList<MassPart> on)
    {
        var check = whole.Check(new InputCheck());
        foreach (var part in off.Concat(on))
            Look(check, part);
        if (!check.Clean)
            return check.Then(() => whole);
        var changes = off.Select(part => (Sign: -1.0, Part: part)).Concat(on.Select(part => (Sign: 1.0, Part: part))).ToList();
        var left = whole.Mass.Kilograms + changes.Sum(change => change.Sign * change.Part.Mass.Kilograms);
        var spread = Math.Sqrt(Square(whole.MassSpread.Kilograms) + changes.Sum(change => Square(Rectangular(change.Part.MassSpread.Kilograms))));
        return check.That(left > spread, "what is left", $"{Show(left)} kg, give or take {Show(spread)} kg", "a mass above its own spread", "Weigh what hangs, or tell its mass as it is now")
            .Then(() =>
            {
                var centre = 1 / left * changes.Aggregate(whole.Mass.Kilograms * whole.Centre, (sum, change) => sum + change.Sign * change.Part.Mass.Kilograms * change.Part.Centre);
                double Spread(Func<Point3, double> axis) => Math.Sqrt(Square(axis(whole.Centre - centre) / left * whole.MassSpread.Kilograms) + Square(whole.Mass.Kilograms / left * axis(whole.CentreSpread))
                    + changes.Sum(change => Square(axis(change.Part.Centre - centre) / left * Rectangular(change.Part.MassSpread.Kilograms)) + Square(change.Part.Mass.Kilograms / left * Rectangular(change.Part.CentreSpread.Millimetres))));
                return new HangingLoad(Mass.FromKilograms(left), Mass.FromKilograms(spread), centre, new(Spread(p => p.X), Spread(p => p.Y), Spread(p => p.Z)));
            });
    }

    private static double Rectangular(double halfWidth) => Coverage / Math.Sqrt(3) * halfWidth;

    private static void Look(InputCheck check, MassPart part) => check.Positive($"mass of {part.Name}", part.Mass).NotNegative($"spread of {part.Name}", part.MassSpread)
        .NotNegative($"spread of the centre of {part.Name}", part.CentreSpread)
        .That(part.Centre.IsFinite, $"centre of {part.Name}", "no number", "x, y and z in mm", "Measure it from the same datum as the others");

    private static double Square(double x) => x * x;
}
