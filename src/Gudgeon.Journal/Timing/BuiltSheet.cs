namespace Gudgeon.Journal;

/// <summary>One line of the built engine's sheet.</summary>
public sealed record BuiltRow(string What, string How);

/// <summary>What the engine was built to: stages and wrenches, readings, shims, exceptions, in one table.</summary>
public static class BuiltSheet
{
    public static IReadOnlyList<BuiltRow> Of(Bench bench) => [.. Joints(bench), .. Readings(bench), .. Shims(bench), .. Exceptions(bench)];

    private static IEnumerable<BuiltRow> Joints(Bench bench) =>
        from joint in bench.Engine.Joints.Values
        where bench.IsTouched(joint.Id) && !bench.Part(joint.Part).IsAbsent
        let state = bench.Joint(joint.Id)
        where state.Tightening.Procedure is not null || state.Phase is JointPhase.Done or JointPhase.HalfDone
        select new BuiltRow(bench.NameOf(joint.Id), JointWords(bench, state));

    private static string JointWords(Bench bench, JointState state)
    {
        var words = new List<string> { $"{state.In} in{(state.Fresh > 0 ? $", {state.Fresh} new" : "")}" };
        if (state.Tightening.Procedure is { } procedure)
        {
            words.AddRange(procedure.Stages.Select((stage, i) => StageWords(bench, state, stage, i + 1)));
            words.Add($"threads {procedure.Lubricant}");
        }

        return string.Join("; ", words);
    }

    private static string StageWords(Bench bench, JointState state, Stage stage, int number)
    {
        var wrenches = string.Join(" and ", state.Tightening.Ticks.Where(t => t.Stage == number).Select(t => t.Wrench).OfType<string>().Distinct().Select(bench.WrenchName));
        return $"{stage.Words()} {(state.Tightening.IsDone(number, state.Required ?? 0) ? "done" : "NOT done")}{(wrenches.Length > 0 ? $" with {wrenches}" : "")}";
    }

    private static IEnumerable<BuiltRow> Readings(Bench bench) =>
        from reading in bench.Readings.Values
        where reading.Counts
        group reading by reading.Taken.Slot into slot
        let last = slot.Last().Taken
        select new BuiltRow(
            bench.NameOf(slot.Key),
            $"{(last.Unit == Units.Look ? (last.Value == 1 ? "passes" : "fails") : Units.Show(last.Value, last.Unit))}{(last.Instrument is null ? "" : $", {bench.InstrumentName(last.Instrument)}")}{(slot.Count() > 1 ? $", last of {slot.Count()}" : "")}");

    private static IEnumerable<BuiltRow> Shims(Bench bench) =>
        bench.Shims.Select(s => new BuiltRow($"shim of {bench.NameOf(s.Key)}", Units.Show(s.Value, "mm")));

    private static IEnumerable<BuiltRow> Exceptions(Bench bench) =>
        bench.Overrides.Select(r => new BuiltRow($"exception, entry {r.Number}", r.Entry.Words(bench)));
}
