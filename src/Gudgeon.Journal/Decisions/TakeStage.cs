using Gudgeon.Sums;

namespace Gudgeon.Journal;

/// <summary>A stage as a person tells it: which fasteners, which wrench, set to what.</summary>
public static class TakeStage
{
    /// <summary>The entry, with the setting understood in the unit of the stage; an empty setting is what the stage says.</summary>
    public static Outcome<StageDone> Read(Bench bench, string joint, int stage, IReadOnlyList<int>? fasteners, string? wrench, string setting)
    {
        var spec = bench.Joint(joint).Tightening.Procedure?.Stages.ElementAtOrDefault(stage - 1);
        if (setting.Length == 0 || spec is null)
            return Outcome.Of(new StageDone(joint, stage, fasteners, wrench));
        if (!spec.HasTorque && spec.Sort != StageSort.Angle)
            return Outcome.Refused<StageDone>(new Refusal(bench.NameOf(joint), $"\"{setting}\" at a stage that says {spec.Words()}", "no figure there", "Leave the setting empty"));
        return SpotText.Read(setting, spec.HasTorque ? "Nm" : "deg", bench.Units, null, $"{bench.NameOf(joint)}, stage {stage}")
            .Then(value => Outcome.Of(new StageDone(joint, stage, fasteners, wrench, setting, value)));
    }
}
