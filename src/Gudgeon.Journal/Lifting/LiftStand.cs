using Gudgeon.Engine;
using Gudgeon.Sums;
using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

/// <summary>The engine on its stand.</summary>
internal static class LiftStand
{
    private const string Id = "stand", Title = "On the stand";

    public static LiftCheck Check(Bench bench, HangingLoad? load)
    {
        if (bench.Stand is not { } told)
            return LiftCheck.Untold(Id, Title, LiftingCautions.Stand, "stand", "its plate, its bolts, how far the engine hangs out", "Tell the stand");
        if (load is null)
            return LiftCheck.Waiting(Id, Title, LiftingCautions.Stand, "the mass of the engine");
        var face = told.Face switch { "steel" => HoleMaterial.Steel, "light alloy" => HoleMaterial.LightAlloy, _ => HoleMaterial.CastIron };
        var judged = ThreadTable.Find(told.Thread).Then(thread => PropertyClass.Of(told.Strength, Mm(thread.NominalMm)).Then(strength =>
        {
            var onAxis = load with { Centre = load.Centre - new Point3(0, 0, told.AxisOverCrankMm) };
            var mounted = new MountedEngine(onAxis, Mm(told.FaceToPostMm), [.. told.Bolts.Select(bolt => new PlateBolt(bolt.Name, bolt.YMm, bolt.ZMm - told.AxisOverCrankMm))], thread, strength, Mm(told.FreeArmMm), Mm(told.EngagementMm), face,
                told.Hole is { } hole ? new BoltInHole(Mm(hole.BoltMm), Mm(hole.ThroughMm), Mm(hole.DepthMm)) : null,
                told.Finger is { } finger ? new StandArm(Mm(finger.ReachMm), Mm(finger.OffMm), Mm(finger.WideMm), Mm(finger.ThickMm), Mm(finger.WallMm)) : null);
            return EngineStand.Mount(mounted, Torque.FromNewtonMetres(told.PlateMomentNm)).Then(stand => Outcome.Of((Mounted: mounted, Stand: stand)));
        }));
        if (!judged.TryGet(out var good))
            return LiftCheck.Bad(Id, Title, LiftingCautions.Stand, judged.Refusals);
        var working = LiftWorkings.Stand(good.Mounted, good.Stand);
        Working Of(string what, WorkingFigure result, params IEnumerable<WorkingFigure> more) => Workings.Of("lifting.mount", what, [.. working.Inputs, .. more], result, LiftingCautions.Stand);
        List<LiftFigure> figures =
        [
            new($"moment at the post, of {LiftText.Show(told.PlateMomentNm, "N·m")} on its plate", LiftText.Show(good.Stand.PostMoment.NewtonMetres, "N·m"), working),
            new("torque to turn the heavy side over", LiftText.Show(good.Stand.TurningTorque.NewtonMetres, "N·m"), Of("turning torque", new("T", "torque", good.Stand.TurningTorque.NewtonMetres, "N·m"),
                [new("y", "centre left of the axis", good.Mounted.Load.Centre.Y, "mm"), new("z", "centre over the axis", good.Mounted.Load.Centre.Z, "mm")])),
            new($"pull of the worst bolt, {good.Stand.WorstBolt}", LiftText.Show(good.Stand.BoltPull.Newtons, "N"), Of("pull of the worst bolt", new("F", "pull", good.Stand.BoltPull.Newtons, "N"))),
            new("stress of that bolt, of its yield", LiftText.Percent(good.Stand.YieldPart), Of("stress over yield", new("part", "stress over yield", good.Stand.YieldPart, "1"), [new("σ", "stress", good.Stand.BoltStressMpa, "MPa"), new("a", "free arm", told.FreeArmMm, "mm")])),
        ];
        if (good.Stand.Arm is { } arm)
        {
            figures.Add(new($"stress at the root of the worst arm, {arm.Bolt}, of the yield of plain steel", LiftText.Percent(arm.StressMpa / StandArm.YieldMpa), Workings.Of("lifting.arm-stress", "stress at the root of the worst arm",
                [
                    new("F", "along the bolt", arm.Along.Newtons, "N"), new("V", "across the bolt", arm.Across.Newtons, "N"), new("r", "reach", told.Finger!.ReachMm, "mm"), new("s", "face to arm", told.Finger.OffMm, "mm"),
                    new("w", "width", told.Finger.WideMm, "mm"), new("t", "thickness", told.Finger.ThickMm, "mm"), new("h", "wall, 0 for a solid bar", told.Finger.WallMm, "mm"), new("Re", "yield counted on", StandArm.YieldMpa, "MPa"),
                ],
                new("σv", "stress", arm.StressMpa, "MPa"), LiftingCautions.Stand)));
        }

        return LiftCheck.Good(Id, Title, LiftingCautions.Stand, figures, good.Stand.Warnings);
    }

    /// <summary>What has to be done or off before the engine is turned on its stand: needs of the work itself, and what nothing holds any more.</summary>
    public static IReadOnlyList<string> BeforeTurning(Bench bench)
    {
        if (!bench.Engine.Access.ContainsKey("op:turn-down") && !bench.Engine.Operations.ContainsKey("op:turn-down"))
            return [];
        var open = bench.BlockersOf("op:turn-down").First.Concat(bench.IsDone("op:on-stand") ? [] : bench.BlockersOf("op:on-stand").First)
            .Select(need => need.Sort == NeedSort.PartOff ? $"{bench.NameOf(need.Id)} off" : bench.NameOf(need.Id));
        var loose = bench.Engine.Access.Values.Where(access => bench.Engine.Parts.ContainsKey(access.Target) && bench.Part(access.Target).IsOff)
            .SelectMany(access => access.Holds.Where(hold => hold.StartsWith("loose:", StringComparison.Ordinal)).Select(hold => (Kind: hold["loose:".Length..], By: access.Target)))
            .Select(hold => (hold.By, Parts: bench.Engine.Parts.Values.Where(part => part.Kind == hold.Kind && bench.Part(part.Id).IsOn && SamePlace(bench.Engine.Parts[hold.By], part)).Select(part => part.Id).ToArray()))
            .Where(hold => hold.Parts.Length > 0)
            .Select(hold => $"{bench.Several(hold.Parts)} off or tied: nothing holds {(hold.Parts.Length == 1 ? "it" : "them")} since the {bench.NameOf(hold.By)} came off");
        return [.. open.Concat(loose).Distinct()];
    }

    private static bool SamePlace(Part holder, Part held) =>
        (holder.Cylinder is null || held.Cylinder is null || holder.Cylinder == held.Cylinder) && (holder.Bank is null || held.Bank is null || holder.Bank == held.Bank);

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
