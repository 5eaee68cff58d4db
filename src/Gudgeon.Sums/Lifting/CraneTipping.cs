using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Lifting;

/// <summary>A wheel on the floor, forward and left of the foot of the post, mm.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="X">Forward, mm.</param>
/// <param name="Y">Left, mm.</param>
public sealed record Wheel(string Name, double X, double Y);

/// <summary>A crane with its load, standing.</summary>
/// <param name="Wheels">Where it touches the floor.</param>
/// <param name="CraneMass">Mass of the crane without load.</param>
/// <param name="CraneCentre">Its centre of mass, forward, left and up, mm.</param>
/// <param name="Load">Mass on the hook, gear with it.</param>
/// <param name="Tip">Pin at the end of the boom, forward, left and up, mm: there the load pulls however it hangs.</param>
/// <param name="Swing">Largest angle of the rope to the vertical, either way.</param>
/// <param name="Slope">Slope of the floor, either way.</param>
public sealed record StandingCrane(IReadOnlyList<Wheel> Wheels, Mass CraneMass, Point3 CraneCentre, Mass Load, Point3 Tip, Angle Swing, Angle Slope);

/// <summary>Standing on one wheel line.</summary>
/// <param name="Line">The two wheels.</param>
/// <param name="Holding">Moment that holds the crane down, N·m.</param>
/// <param name="Tipping">Moment that tips it, N·m.</param>
/// <param name="SpareLoad">How much more on the hook would just tip it; none where no load does.</param>
public sealed record WheelLine(string Line, Torque Holding, Torque Tipping, Mass? SpareLoad)
{
    /// <summary>Holding over tipping; endless where nothing tips.</summary>
    public double Factor => Tipping.NewtonMetres > 0 ? Holding / Tipping : double.PositiveInfinity;
}

/// <summary>Every wheel line of a standing crane, the worst first.</summary>
/// <param name="Lines">The lines.</param>
/// <param name="Warnings">What is allowed and yet to be looked at.</param>
public sealed record Standing(IReadOnlyList<WheelLine> Lines, IReadOnlyList<Refusal> Warnings)
{
    /// <summary>The line over which the crane tips first.</summary>
    public WheelLine Worst => Lines[0];
}

/// <summary>Whether a crane stands.</summary>
public static class CraneTipping
{
    /// <summary>Below this factor a line is warned of: common practice, no source.</summary>
    public const double WarnFactor = 1.5;

    /// <summary>Moments about each wheel line with the load swung and the floor sloped straight across that line.</summary>
    /// <remarks>
    /// Formula: with d the distance inside the line and z the height, a weight w gives w·(d·cos σ − z·sin σ); the load on a rope swung by δ gives (w/cos δ)·(d·cos(σ + δ) − z·sin(σ + δ)) at the boom's end.
    /// Units: mm, kg, N·m, degrees. Range: three wheels or more, swing 0 to 30°, slope 0 to 10°; a crane that tips is refused.
    /// Errors: rigid crane and floor, loads at rest; a wheel in a drain or on a stone is a slope of its own. Source: moments about a line.
    /// </remarks>
    public static Outcome<Standing> Stands(StandingCrane crane)
    {
        var check = new InputCheck().Positive("mass of the crane", crane.CraneMass).NotNegative("load", crane.Load)
            .Within("swing", crane.Swing, 0, 30).Within("slope", crane.Slope, 0, 10)
            .That(crane.CraneCentre.IsFinite && crane.CraneCentre.Z >= 0, "centre of the crane", Place(crane.CraneCentre), "a place over the floor", "Measure it forward, left and up from the foot of the post")
            .That(crane.Tip.IsFinite && crane.Tip.Z > 0, "end of the boom", Place(crane.Tip), "a place over the floor", "Take it from the crane's pose");
        var hull = Footprint.Hull([.. crane.Wheels.Select(wheel => (wheel.X, wheel.Y))]);
        check.That(hull.Count >= 3 && hull.All(p => double.IsFinite(p.X) && double.IsFinite(p.Y)), "wheels", $"{Show(crane.Wheels.Count)}, {(hull.Count < 3 ? "all in one line" : "one without a number")}", "three or more round the crane", "Give each wheel forward and left of the foot of the post");
        if (check.Clean)
        {
            check.That(Footprint.Holds([.. crane.Wheels.Select(wheel => new Point3(wheel.X, wheel.Y, 0))], crane.CraneCentre), "centre of the crane", Place(crane.CraneCentre),
                "a place between the wheels", "Measure again: an empty crane stands");
        }

        return check.Go(() => Judge([.. Enumerable.Range(0, hull.Count).Select(i => About(crane, hull[i], hull[(i + 1) % hull.Count])).OrderBy(line => line.Factor)]));
    }

    private static Outcome<Standing> Judge(IReadOnlyList<WheelLine> lines)
    {
        var check = new InputCheck();
        foreach (var line in lines)
        {
            check.That(line.Factor > 1, line.Line, $"{Show(line.Tipping.NewtonMetres)} N·m tipping, {Show(line.Holding.NewtonMetres)} N·m holding", "more holding than tipping",
                "Draw the boom in, take mass off, or set the legs wider; do not hold it down by hand");
        }

        return check.Then(() => new Standing(lines, [.. lines.Where(line => line.Factor < WarnFactor).Select(line => new Refusal(line.Line,
            $"{Show(line.Factor)} times as much holding as tipping", $"{Show(WarnFactor)} or more (common practice, no source)", "Draw the boom in if there is room"))]));
    }

    private static WheelLine About(StandingCrane crane, (double X, double Y) a, (double X, double Y) b)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var length = double.Hypot(dx, dy);
        double Inside(Point3 p) => (dx * (p.Y - a.Y) - dy * (p.X - a.X)) / length / 1000;
        double Arm(Point3 p, double lean) => Inside(p) * Math.Cos(lean) - p.Z / 1000 * Math.Sin(lean);

        var own = Force.FromKilogramsForce(crane.CraneMass.Kilograms).Newtons * Arm(crane.CraneCentre, crane.Slope.Radians);
        var perKilogram = 9.80665 / Math.Cos(crane.Swing.Radians) * Arm(crane.Tip, crane.Slope.Radians + crane.Swing.Radians);
        var load = crane.Load.Kilograms * perKilogram;
        Mass? spare = perKilogram < 0 ? Mass.FromKilograms((own + load) / -perKilogram) : null;
        return new WheelLine($"{Name(crane, a)} to {Name(crane, b)}", Torque.FromNewtonMetres(Math.Max(own, 0) + Math.Max(load, 0)),
            Torque.FromNewtonMetres(Math.Max(-own, 0) + Math.Max(-load, 0)), spare);
    }

    private static string Name(StandingCrane crane, (double X, double Y) at) => crane.Wheels.First(wheel => wheel.X == at.X && wheel.Y == at.Y).Name;

    private static string Place(Point3 p) => $"{Show(p.X)}, {Show(p.Y)}, {Show(p.Z)} mm";
}
