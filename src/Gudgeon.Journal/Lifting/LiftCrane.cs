using Gudgeon.Sums;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

/// <summary>The crane under its load, along its stroke.</summary>
internal static class LiftCrane
{
    public const int Poses = 13;

    public static CraneGeometry Geometry(CraneTold told) => new(
        Mm(told.PivotForwardMm), Mm(told.PivotHeightMm), Mm(told.RamFootForwardMm), Mm(told.RamFootHeightMm), Mm(told.RamPinAlongMm), Mm(told.RamShortestMm), Mm(told.RamLongestMm), Mm(told.HookDropMm),
        [.. told.Holes.Select(hole => new BoomHole(Mm(hole.BoomMm), Mass.FromKilograms(hole.RatingKg)))]);

    /// <summary>Everything on the crane's hook, at its most.</summary>
    public static Mass OnCrane(HangingLoad load, RigTold rig, HungLoad hung) => load.Mass + load.MassSpread + Mass.FromKilograms(rig.GearMassKg) + hung.BarMass;

    public static Outcome<IReadOnlyList<LiftFigure>> Plate(CraneTold told, Mass load)
    {
        var geometry = Geometry(told);
        return CraneBoom.OnPlate(geometry, told.Hole - 1, load).Then(part => CraneBoom.RamForce(geometry, told.Hole - 1, geometry.RamShortest, load).Then(ram => Outcome.Of<IReadOnlyList<LiftFigure>>(
        [
            new($"load on the plate's {LiftText.Show(told.Holes[told.Hole - 1].RatingKg, "kg")} at hole {told.Hole}", LiftText.Percent(part), Workings.Of("lifting.on-plate", "load over the plate's figure",
                [new("m", "engine with its spread, and gear", load.Kilograms, "kg"), new("plate", "figure at the hole", told.Holes[told.Hole - 1].RatingKg, "kg")], new("part", "load over plate", part, "1"), LiftingCautions.Crane)),
            new("force in the ram, boom lowest", LiftText.Show(ram.Newtons, "N"), Workings.Of("lifting.ram-force", "force in the ram, boom lowest",
                [new("m", "load", load.Kilograms, "kg"), new("c", "ram", told.RamShortestMm, "mm"), new("L", "boom", told.Holes[told.Hole - 1].BoomMm, "mm")], new("F", "force", ram.Newtons, "N"), LiftingCautions.Crane)),
        ])));
    }

    /// <summary>The worst standing along the stroke.</summary>
    public static Outcome<(IReadOnlyList<LiftFigure> Figures, IReadOnlyList<Refusal> Warnings)> Stands(CraneTold told, Mass load, IReadOnlyList<CranePose> stroke)
    {
        (StandingCrane Crane, Standing Standing, CranePose Pose)? worst = null;
        double? spare = null;
        foreach (var pose in stroke)
        {
            var crane = new StandingCrane([.. told.Wheels.Select(wheel => new Wheel(wheel.Name, wheel.XMm, wheel.YMm))], Mass.FromKilograms(told.MassKg), new(told.CentreXMm, 0, told.CentreZMm), load,
                new(pose.Reach.Millimetres, 0, pose.TipHeight.Millimetres), Angle.FromDegrees(told.SwingDeg), Angle.FromDegrees(told.SlopeDeg));
            var stands = CraneTipping.Stands(crane);
            if (!stands.TryGet(out var standing))
                return Outcome.Refused<(IReadOnlyList<LiftFigure>, IReadOnlyList<Refusal>)>([.. stands.Refusals.Select(r => r with { Where = $"{r.Where}, hook {LiftText.Show(pose.Reach.Millimetres, "mm")} forward" })]);
            spare = standing.Lines.Where(line => line.SpareLoad is not null).Select(line => (double?)line.SpareLoad!.Value.Kilograms).Append(spare).Min();
            if (worst is null || standing.Worst.Factor < worst.Value.Standing.Worst.Factor)
                worst = (crane, standing, pose);
        }

        var (at, judged, where) = worst!.Value;
        var workings = LiftWorkings.WheelLines(at, judged);
        var figures = judged.Lines.Select((line, i) => (Line: line, Working: workings[i])).Where(x => double.IsFinite(x.Line.Factor))
            .Select(x => new LiftFigure($"over the line {x.Line.Line}, hook {LiftText.Show(where.Reach.Millimetres, "mm")} forward: holding over tipping", x.Line.Factor.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture), x.Working)).ToList();
        if (figures.Count == 0)
        {
            var least = judged.Lines.MinBy(line => line.Holding.NewtonMetres)!;
            figures.Add(new LiftFigure($"nothing tips it; least that holds, over the line {least.Line}", LiftText.Show(least.Holding.NewtonMetres, "N·m"), Workings.Of("lifting.stands", $"moment that holds on the line {least.Line}",
                [.. workings[0].Inputs.Where(input => input.Symbol is not ("hold" or "tip"))], new("hold", "moment that holds", least.Holding.NewtonMetres, "N·m"), LiftingCautions.Crane)));
        }
        else if (spare is { } kg)
            figures.Add(new LiftFigure("more on the hook that would just tip it", LiftText.Show(kg, "kg"), figures[0].Working));
        return Outcome.Of<(IReadOnlyList<LiftFigure>, IReadOnlyList<Refusal>)>((figures, judged.Warnings));
    }

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
