using Gudgeon.Sums;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

/// <summary>What a leg carries.</summary>
/// <param name="Pull">Way of its pull in the engine's axes.</param>
/// <param name="Wider">How much further from the upright the leg may come within the spread.</param>
public sealed record HungLeg(string Name, Point3 At, Force Likely, Force Most, Angle ToVertical, Angle MostToVertical, Point3 Pull, Angle Wider);

/// <summary>How the engine hangs.</summary>
/// <param name="HookZMm">The hook over the centre of the crank, in the engine's axes.</param>
/// <param name="OnHook">Largest pull below the hook, gear not counted.</param>
/// <param name="BarFrontUp">How far the front of the bar is up; null where there is no bar.</param>
public sealed record HungLoad(IReadOnlyList<HungLeg> Legs, double HookXMm, double HookZMm, Angle MostTilt, Angle FrontUp, Force OnHook, Mass BarMass, IReadOnlyList<Refusal> Warnings, IReadOnlyList<LiftFigure> Figures, Angle? BarFrontUp = null)
{
    internal static Outcome<HungLoad> Of(RigTold rig, HangingLoad load) => rig.Bar is { } bar ? UnderBar(rig, bar, load) : OnLegs(rig, load);

    private static Outcome<HungLoad> OnLegs(RigTold rig, HangingLoad load)
    {
        Leg[] legs = [.. rig.Legs.Select(leg => new Leg(leg.Name, Place(leg.At), Mm(leg.LengthMm)))];
        return Slinging.Hang(load, legs).Then(hanging =>
        {
            var workings = LiftWorkings.Legs(load, legs, hanging);
            var figures = hanging.Legs.Select((leg, i) => new LiftFigure($"{leg.Name}: largest pull, at {LiftText.Degrees(leg.MostToVertical.Degrees)} to the vertical", LiftText.Show(leg.Most.Newtons, "N"), workings[i]))
                .Append(new LiftFigure("tilt, front up", LiftText.Degrees(hanging.FrontUp.Degrees), Tilt("front up", hanging.FrontUp)))
                .Append(new LiftFigure("tilt, left side up", LiftText.Degrees(hanging.LeftUp.Degrees), Tilt("left side up", hanging.LeftUp)))
                .Append(new LiftFigure("largest tilt if the centre is off by its spread", LiftText.Degrees(hanging.MostTilt.Degrees), Tilt("largest tilt", hanging.MostTilt)));
            return Outcome.Of(new HungLoad(
                [.. hanging.Legs.Zip(legs, (carried, leg) => new HungLeg(leg.Name, leg.LiftingPoint, carried.Likely, carried.Most, carried.ToVertical, carried.MostToVertical, hanging.Hook - leg.LiftingPoint, Angle.FromDegrees(Math.Max(0, carried.MostToVertical.Degrees - carried.ToVertical.Degrees))))],
                hanging.Hook.X, hanging.Hook.Z, hanging.MostTilt, hanging.FrontUp, Force.FromKilogramsForce((load.Mass + load.MassSpread).Kilograms), Mass.Zero, hanging.Warnings, [.. figures]));

            Working Tilt(string what, Angle angle) => Workings.Of("lifting.hang", what,
                [.. workings[0].Inputs.Where(input => input.Symbol.StartsWith('G')), .. hanging.Legs.SelectMany(leg => new WorkingFigure[] { new("β", $"{leg.Name} to the vertical", leg.ToVertical.Degrees, "°") })], new("tilt", what, angle.Degrees, "°"), LiftingCautions.Hanging);
        });
    }

    private static Outcome<HungLoad> UnderBar(RigTold rig, RigBar told, HangingLoad load)
    {
        var (front, rear) = rig.Legs[0].At.X >= rig.Legs[1].At.X ? (rig.Legs[0], rig.Legs[1]) : (rig.Legs[1], rig.Legs[0]);
        var bar = new HangingBar(Mm(told.SpanMm), Mm(told.HookOverMm), Mm(told.HookForwardMm), Mass.FromKilograms(told.MassKg), Mm(front.LengthMm), Mm(rear.LengthMm));
        return BarRig.HangUnderBar(load, Place(front.At), Place(rear.At), bar).Then(hanging =>
        {
            WorkingFigure[] inputs =
                [
                    new("m", "mass with its spread", (load.Mass + load.MassSpread).Kilograms, "kg"), new("Gx", "centre of mass to the front", load.Centre.X, "mm", load.CentreSpread.X / 2), new("Gz", "centre of mass up", load.Centre.Z, "mm", load.CentreSpread.Z / 2),
                    new("s", "span of the bar", told.SpanMm, "mm"), new("h", "hook over the bar", told.HookOverMm, "mm"), new("c", "hook forward of the middle", told.HookForwardMm, "mm"),
                    new("l1", "front drop", front.LengthMm, "mm"), new("l2", "rear drop", rear.LengthMm, "mm"),
                ];
            Working Of(string what, WorkingFigure result) => Workings.Of("lifting.hang-under-bar", what, inputs, result, LiftingCautions.Hanging);
            List<LiftFigure> figures =
            [
                new($"{front.Name}: largest pull, at {LiftText.Degrees(hanging.FrontToVertical.Degrees)} to the vertical", LiftText.Show(hanging.FrontPull.Newtons, "N"), Of("largest pull of the front drop", new("T1", "pull", hanging.FrontPull.Newtons, "N"))),
                new($"{rear.Name}: largest pull, at {LiftText.Degrees(hanging.RearToVertical.Degrees)} to the vertical", LiftText.Show(hanging.RearPull.Newtons, "N"), Of("largest pull of the rear drop", new("T2", "pull", hanging.RearPull.Newtons, "N"))),
                new("tilt, front up", LiftText.Degrees(hanging.FrontUp.Degrees), Of("tilt", new("tilt", "front up", hanging.FrontUp.Degrees, "°"))),
                new("largest tilt if the centre is off by its spread", LiftText.Degrees(hanging.MostTilt.Degrees), Of("largest tilt", new("tilt", "front up or down", hanging.MostTilt.Degrees, "°"))),
                new("bending of a bar that hangs from its middle", LiftText.Show(hanging.Bending.NewtonMetres, "N·m"), Of("bending moment of the bar", new("M", "moment", hanging.Bending.NewtonMetres, "N·m"))),
            ];
            if (BarRig.LevelCarrier(load, Place(front.At), Place(rear.At), bar, Mm(0.45 * told.SpanMm)).TryGet(out var level))
            {
                figures.Add(new("carrier that hangs the engine level, forward of the bar's middle", LiftText.Show(level.Millimetres, "mm"),
                    Workings.Of("lifting.level-carrier", "carrier for a level engine", inputs, new("c", "hook forward of the middle", level.Millimetres, "mm"), LiftingCautions.Hanging)));
            }

            // The hook over the engine: up each drop as it leans, along the bar to the carrier, up to the hook.
            var share = 0.5 + told.HookForwardMm / told.SpanMm;
            var over = share * (front.At.Z + front.LengthMm * Math.Cos(hanging.FrontToVertical.Radians)) + (1 - share) * (rear.At.Z + rear.LengthMm * Math.Cos(hanging.RearToVertical.Radians)) + told.HookOverMm;
            var upright = new Point3(0, 0, 1);
            return Outcome.Of(new HungLoad(
                [
                    new(front.Name, Place(front.At), hanging.FrontPull, hanging.FrontPull, hanging.FrontToVertical, hanging.FrontToVertical, upright, hanging.FrontToVertical),
                    new(rear.Name, Place(rear.At), hanging.RearPull, hanging.RearPull, hanging.RearToVertical, hanging.RearToVertical, upright, hanging.RearToVertical),
                ],
                load.Centre.X, over, hanging.MostTilt, hanging.FrontUp, Force.FromKilogramsForce((load.Mass + load.MassSpread).Kilograms), bar.Mass, hanging.Warnings, figures, hanging.BarFrontUp));
        });
    }

    private static Point3 Place(EnginePlace at) => new(at.X, at.Y, at.Z);

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
