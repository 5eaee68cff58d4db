using Gudgeon.Engine;
using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

/// <summary>What the tightening of joints holds against the work.</summary>
public static class TighteningFindings
{
    /// <summary>A longer pause than this inside a stage counts as broken off. Common practice, no source.</summary>
    public static readonly TimeSpan LongPause = TimeSpan.FromMinutes(30);

    /// <summary>A setting may differ from its stage by this part: a torque turned into other units is rounded. Common practice, no source.</summary>
    private const double SameTorque = 0.02;

    public static IEnumerable<Finding> Of(Bench bench)
    {
        foreach (var joint in bench.Engine.Joints.Values.Where(j => bench.IsTouched(j.Id) && !bench.Part(j.Part).IsAbsent))
        {
            if (UsedAgain(bench, joint) is { } again)
                yield return again;
            if (Stretched(bench, joint) is { } stretched)
                yield return stretched;
            if (!bench.Joint(joint.Id).IsOpen && !bench.IsFinal(joint.Id))
                yield return NotFinal(bench, joint);
            if (NotBlown(bench, joint) is { } wet)
                yield return wet;
            foreach (var finding in Ticks(bench, joint.Id))
                yield return finding;
        }
    }

    /// <summary>Joints whose fasteners are in and whose stages are not all done.</summary>
    internal static IEnumerable<Finding> NotFinal(Bench bench) => bench.Engine.Joints.Values
        .Where(j => bench.IsTouched(j.Id) && !bench.Part(j.Part).IsAbsent && !bench.Joint(j.Id).IsOpen && !bench.IsFinal(j.Id))
        .Select(j => NotFinal(bench, j));

    internal static Finding NotFinal(Bench bench, Joint joint)
    {
        var state = bench.Joint(joint.Id).Tightening;
        if (state.IsSpoilt)
            return new(FindingNames.JointNotFinal, joint.Id, bench.NameOf(joint.Id), "an angle stage was broken off", "Take all of them out, renew one-use ones, and start again");
        var next = state.Next(bench.Joint(joint.Id).Required ?? 0) ?? 1;
        return new(FindingNames.JointNotFinal, joint.Id, bench.NameOf(joint.Id), $"in, and stage {next} of {state.Procedure!.Stages.Count} ({state.Procedure.Stages[next - 1].Words()}) is not done all round", "Go on tightening it");
    }

    internal static Finding? UsedAgain(Bench bench, Joint joint)
    {
        var state = bench.Joint(joint.Id);
        return state.Tightening.UsedAgain > 0 && bench.IsOneUse(joint)
            ? new Finding(FindingNames.OneUseAgain, joint.Id, bench.NameOf(joint.Id), $"{state.Tightening.UsedAgain} used ones in again", "Take them out and fit new ones")
            : null;
    }

    internal static Finding? Stretched(Bench bench, Joint joint)
    {
        var state = bench.Joint(joint.Id);
        return state.Bolts is { } bolts && !state.IsOpen && bolts.Bad - (state.Fresh - state.FreshAtBolts) is > 0 and var bad
            ? new Finding(FindingNames.BoltStretched, joint.Id, bench.NameOf(joint.Id), $"{bad} that were measured too long or necked are in", "Take them out and fit new ones")
            : null;
    }

    /// <summary>Oil or coolant below a bolt makes its torque false and can burst the casting: asked of every joint that is tightened by stages.</summary>
    private static Finding? NotBlown(Bench bench, Joint joint) =>
        bench.Joint(joint.Id) is { IsOpen: false, Required: not null, Tightening: { Procedure: not null, HolesBlown: false } }
            ? new Finding(FindingNames.HolesNotBlown, joint.Id, bench.NameOf(joint.Id), "in, and nobody said that its threads were run free and its blind holes blown out", "Say so if it was done; else take them out, blow the holes out, eyes covered, and dry them")
            : null;

    private static IEnumerable<Finding> Ticks(Bench bench, string joint)
    {
        var state = bench.Joint(joint).Tightening;
        if (state.Procedure is not { } procedure)
            yield break;
        foreach (var stage in state.Ticks.Where(t => t.Fastener > 0).GroupBy(t => t.Stage))
        {
            var spec = procedure.Stages[stage.Key - 1];
            var where = $"{bench.NameOf(joint)}, stage {stage.Key}";
            var times = stage.Select(t => t.At).Order().ToArray();
            var pause = times.Zip(times.Skip(1), (a, b) => b - a).DefaultIfEmpty().Max();
            if (pause > LongPause)
                yield return new(FindingNames.StageInterrupted, joint, where, $"a pause of {Math.Round(pause.TotalMinutes)} minutes inside it", spec.Sort == StageSort.Angle ? "Slacken all, renew one-use ones, and start again" : "Do this stage again for all");
            if (!spec.HasTorque)
                continue;
            foreach (var set in stage.GroupBy(t => (t.Wrench, Torque: t.SettingFor(spec.Value!.Value), Reached: t.Reached(spec.Value.Value))))
            {
                var through = Math.Abs(set.Key.Torque - set.Key.Reached) > 1e-9 ? $", {Units.Show(Math.Round(set.Key.Reached, 1), "Nm")} at the fastener" : "";
                if (Math.Abs(set.Key.Reached - spec.Value!.Value) > SameTorque * spec.Value.Value)
                    yield return new(FindingNames.StageDiffers, joint, where, $"the wrench was set to {Units.Show(Math.Round(set.Key.Torque, 1), "Nm")}{through}, the stage says {spec.Words()}", "Look at the book and at the wrench; slacken and do it again if it was too much");
                if (Doubt(bench, set.Key.Wrench, set.Key.Torque) is { } doubt)
                    yield return new(FindingNames.WrenchRange, joint, where, doubt, "Do it again with a wrench that is at home there");
            }
        }
    }

    /// <summary>Why a wrench is not at home at a torque, or null.</summary>
    public static string? Doubt(Bench bench, string? wrench, double torqueNm)
    {
        if (wrench is null || !bench.Wrenches.TryGetValue(wrench, out var kept))
            return null;
        var asked = Wrench.Question(new WrenchRange(kept.Name, Torque.FromNewtonMetres(kept.LeastNm), Torque.FromNewtonMetres(kept.MostNm)), Torque.FromNewtonMetres(torqueNm));
        return asked.Ok ? null : string.Join("; ", asked.Refusals.Select(r => $"{r.Where} at {r.Met}, at home at {r.Expected}"));
    }
}
