using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Lifting;

/// <summary>A bar under the hook with a drop leg from either end: a spreader bar or a load leveller, seen from the side.</summary>
/// <param name="Span">Between the two holes that the drops hang from.</param>
/// <param name="HookOver">Height of the hook's bearing point over the line of those holes.</param>
/// <param name="HookForward">Hook forward of the middle of the bar; a leveller's carrier moves it, a spreader bar with even top legs has none.</param>
/// <param name="Mass">Mass of the bar, at its middle.</param>
/// <param name="FrontDrop">Length of the front drop leg.</param>
/// <param name="RearDrop">Length of the rear drop leg.</param>
public sealed record HangingBar(Length Span, Length HookOver, Length HookForward, Mass Mass, Length FrontDrop, Length RearDrop);

/// <summary>How an engine hangs under a bar.</summary>
/// <param name="FrontPull">Largest pull of the front drop within the spread.</param>
/// <param name="RearPull">Largest pull of the rear drop within the spread.</param>
/// <param name="FrontToVertical">Largest angle of the front drop to the vertical.</param>
/// <param name="RearToVertical">Largest angle of the rear drop to the vertical.</param>
/// <param name="FrontUp">How far the engine's front is up with the centre as given; down counts negative.</param>
/// <param name="BarFrontUp">How far the bar's front is up.</param>
/// <param name="Bending">Largest bending moment of a bar that hangs from its carrier.</param>
/// <param name="OnHook">Largest pull on the hook.</param>
/// <param name="Warnings">What is allowed and yet to be looked at.</param>
/// <param name="MostTilt">Largest tilt of the engine within the spread of the centre, front up or down.</param>
public sealed record BarHanging(
    Force FrontPull, Force RearPull, Angle FrontToVertical, Angle RearToVertical, Angle FrontUp, Angle BarFrontUp, Torque Bending, Force OnHook, IReadOnlyList<Refusal> Warnings, Angle MostTilt);

/// <summary>An engine under a spreader bar or a load leveller.</summary>
public static class BarRig
{
    /// <summary>Pulls, angles and tilt of an engine that hangs from two places under a bar.</summary>
    /// <remarks>
    /// Formula: bar and engine come to rest where their common potential energy is least, the drops taut; pulls from ΣT·u = W on the engine;
    /// bending = pull across the bar × distance from the carrier. Most over the corners of the spread, with the largest mass and a second-order part between corners.
    /// Units: mm, kg, N, N·m, degrees. Range: side view; centre between the lifting points and under them; drops within 60° of the vertical. Errors: rigid bar, drops that do not stretch.
    /// Source: least potential energy; statics of a rigid body.
    /// </remarks>
    /// <param name="load">What hangs; its y is not used.</param>
    /// <param name="front">Front lifting point.</param>
    /// <param name="rear">Rear lifting point.</param>
    /// <param name="bar">The bar.</param>
    public static Outcome<BarHanging> HangUnderBar(HangingLoad load, Point3 front, Point3 rear, HangingBar bar) => Check(load, front, rear, bar).Go(() =>
    {
        var centred = BarRest.Find(load.Mass.Kilograms, load.Centre, front, rear, bar);
        var mass = load.Mass + load.MassSpread;
        var worst = (from x in new[] { -1, 0, 1 }
                     from z in new[] { -1, 0, 1 }
                     select BarRest.Find(mass.Kilograms, load.Centre + new Point3(x * load.CentreSpread.X, 0, z * load.CentreSpread.Z), front, rear, bar)).ToList();
        if (centred is null || worst.Contains(null))
            return Outcome.Refused<BarHanging>(new Refusal("bar", "no rest with both drops taut", "a centre of mass that hangs between and under its lifting points", "Shift the carrier towards the heavy end, or lift from higher points"));

        var between = 1 + Math.Pow(load.CentreSpread.Norm / (bar.HookOver.Millimetres + Math.Min(bar.FrontDrop.Millimetres, bar.RearDrop.Millimetres)), 2);
        Force Most(Func<BarRest, double> of) => Force.FromKilogramsForce(between * worst.Max(rest => of(rest!)));
        Angle Widest(Func<BarRest, double> of) => Angle.FromRadians(worst.Max(rest => Math.Abs(of(rest!))));
        var (frontAngle, rearAngle) = (Widest(rest => rest.FrontLean), Widest(rest => rest.RearLean));
        var bending = between * worst.Max(rest => Math.Max(rest!.FrontPull * Math.Abs(Math.Cos(rest.FrontLean - rest.BarTilt)) * (bar.Span / 2 - bar.HookForward).Metres,
            rest.RearPull * Math.Abs(Math.Cos(rest.RearLean - rest.BarTilt)) * (bar.Span / 2 + bar.HookForward).Metres));
        var check = new InputCheck();
        Limit(check, "front drop", frontAngle);
        Limit(check, "rear drop", rearAngle);
        return check.Then(() => new BarHanging(Most(rest => rest.FrontPull), Most(rest => rest.RearPull), frontAngle, rearAngle,
            Angle.FromRadians(centred.Tilt), Angle.FromRadians(centred.BarTilt), Torque.FromNewtonMetres(Force.FromKilogramsForce(bending).Newtons),
            Force.FromKilogramsForce((mass + bar.Mass).Kilograms),
            [.. new[] { ("front drop", frontAngle), ("rear drop", rearAngle) }.Where(drop => drop.Item2.Degrees > Slinging.WarnDeg + 1e-9)
                .Select(drop => new Refusal(drop.Item1, $"{Slinging.Above(drop.Item2)}° to the vertical", $"{Show(Slinging.WarnDeg)}° or less", "Take longer drops or a bar nearer to the span of the lifting points"))],
            Widest(rest => rest.Tilt)));
    });

    /// <summary>Where a leveller's carrier stands for a level engine.</summary>
    /// <remarks>
    /// Formula: the carrier's place at which <see cref="HangUnderBar"/> gives no tilt, by halving. Units: mm. Range: carrier within a given travel either side of the middle.
    /// Errors: 0.01 mm of carrier. Source: as <see cref="HangUnderBar"/>.
    /// </remarks>
    public static Outcome<Length> LevelCarrier(HangingLoad load, Point3 front, Point3 rear, HangingBar bar, Length travel) => Check(load, front, rear, bar)
        .That(travel.Millimetres > 0 && travel.Millimetres < bar.Span.Millimetres / 2, "travel of the carrier", $"{Show(travel.Millimetres)} mm", $"more than 0, less than half the bar, {Show(bar.Span.Millimetres / 2)} mm", "Measure how far the carrier goes from the middle")
        .Go(() =>
        {
            double? Tilt(double at) => BarRest.Find(load.Mass.Kilograms, load.Centre, front, rear, bar with { HookForward = Length.FromMillimetres(at) })?.Tilt;
            var (low, high) = (-travel.Millimetres, travel.Millimetres);
            if (Tilt(low) is not { } atLow || Tilt(high) is not { } atHigh || atLow * atHigh > 0)
            {
                return Outcome.Refused<Length>(new Refusal("carrier", $"no level engine within {Show(travel.Millimetres)} mm of the middle", "a place of the carrier that levels it",
                    "Change the length of one drop, or lift from other points"));
            }

            while (high - low > 0.01)
            {
                var middle = (low + high) / 2;
                if (Tilt(middle) is { } tilt && tilt * atLow > 0)
                    low = middle;
                else
                    high = middle;
            }

            return Outcome.Of(Length.FromMillimetres((low + high) / 2));
        });

    private static void Limit(InputCheck check, string drop, Angle angle) => check.That(angle.Degrees <= Slinging.RefuseDeg + 1e-9, drop, $"{Slinging.Above(angle)}° to the vertical",
        $"{Show(Slinging.RefuseDeg)}° at most", "Take longer drops or a bar nearer to the span of the lifting points");

    private static InputCheck Check(HangingLoad load, Point3 front, Point3 rear, HangingBar bar)
    {
        var check = load.Check(new InputCheck()).Positive("span of the bar", bar.Span).Positive("hook over the bar", bar.HookOver).NotNegative("mass of the bar", bar.Mass)
            .Positive("front drop", bar.FrontDrop).Positive("rear drop", bar.RearDrop)
            .That(Math.Abs(bar.HookForward.Millimetres) < bar.Span.Millimetres / 2, "carrier", $"{Show(bar.HookForward.Millimetres)} mm forward", $"within the bar, {Show(bar.Span.Millimetres / 2)} mm either way", "Measure from the middle of the bar")
            .That(front.IsFinite && rear.IsFinite && front.X - rear.X >= 50, "lifting points", $"{Show(front.X - rear.X)} mm from rear to front", "50 mm or more", "Give the front point and the rear point, x to the front");
        return check.Clean
            ? check.That(load.Centre.X > rear.X && load.Centre.X < front.X, "centre of mass", $"{Show(load.Centre.X)} mm, outside {Show(rear.X)} to {Show(front.X)} mm", "a centre between the lifting points", "Move a lifting point so that the centre lies between them")
                .That(bar.FrontDrop.Millimetres + bar.RearDrop.Millimetres + bar.Span.Millimetres > front.X - rear.X, "drops", $"{Show((bar.FrontDrop + bar.RearDrop).Millimetres)} mm of drops on a bar of {Show(bar.Span.Millimetres)} mm",
                    $"more together than the {Show(front.X - rear.X)} mm between the lifting points", "Take longer drops or a longer bar")
            : check;
    }
}
