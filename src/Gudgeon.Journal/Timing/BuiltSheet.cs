using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>One line of the built engine's sheet.</summary>
/// <param name="Group">Under which heading.</param>
/// <param name="What">Part, joint or figure.</param>
/// <param name="Figure">What it was built to.</param>
/// <param name="By">Instrument or wrench; empty where none was told.</param>
/// <param name="Note">Verdict, count, state of the threads.</param>
public sealed record BuiltRow(string Group, string What, string Figure, string By = "", string Note = "");

/// <summary>What the engine was built to: every clearance, torque, stage, wrench, shim, shell and batch, and every exception, in one table.</summary>
public static class BuiltSheet
{
    public const string FiguresGroup = "Clearances and sizes";
    public const string ExceptionsGroup = "Exceptions";

    public static IReadOnlyList<BuiltRow> Of(Bench bench) =>
        [.. Exceptions(bench), .. Figures(bench), .. Shims(bench), .. Shells(bench), .. Joints(bench), .. Inserts(bench), .. Timing(bench)];

    private static IEnumerable<BuiltRow> Exceptions(Bench bench)
    {
        foreach (var recorded in bench.Overrides)
            if (recorded.Entry is GateOverridden { } entry)
                yield return new(ExceptionsGroup, $"gate: {bench.Gate(entry.Gate)?.Name ?? entry.Gate}", $"overridden, because {entry.Reason}", "", $"entry {recorded.Number}, {(entry.Findings.Count == 1 ? "1 finding" : $"{entry.Findings.Count} findings")} open then");
        foreach (var made in Journal.Exceptions.Standing(bench))
            yield return new(ExceptionsGroup, made.Finding.Where, $"{made.Finding.Met}: stays so, because {made.Reason}", "", $"entry {made.Number}, {made.Finding.Name}");
    }

    private static IEnumerable<BuiltRow> Figures(Bench bench) => bench.Readings.Count == 0 ? [] :
        from assessment in new Assessor(bench).Started()
        let figure = assessment.Deciding!
        select new BuiltRow(
            FiguresGroup,
            $"{assessment.Place.Name}, {assessment.Characteristic.Name}{(figure.Spot.Length > 0 && figure.Spot != "one" && figure.Unit != Units.Look ? $", {figure.Name}" : "")}",
            $"{figure.Shown} {figure.ShownUncertainty.Replace("± ", "±\u00A0", StringComparison.Ordinal)}".Trim(),
            string.Join(" and ", bench.Readings.Values.Where(r => r.Counts && r.Taken.Part == assessment.Place.Part && r.Taken.Characteristic == assessment.Characteristic.Id && r.Taken.Place == assessment.Place.Number)
                .Select(r => r.Taken.Instrument).OfType<string>().Distinct().Select(bench.InstrumentName)),
            figure.Unit == Units.Look ? "" : assessment.Call.Words());

    private static IEnumerable<BuiltRow> Shims(Bench bench) => bench.Shims.Select(s => new BuiltRow("Shims", bench.NameOf(s.Key), Units.Show(s.Value, "mm")));

    private static IEnumerable<BuiltRow> Shells(Bench bench) =>
        bench.BuiltWith.Values.Select(b => new BuiltRow("Shells, rings, batches", bench.NameOf(b.Part), b.What.Trim(), "", b.Batch.Trim().Length > 0 ? $"batch {b.Batch.Trim()}" : ""));

    private static IEnumerable<BuiltRow> Joints(Bench bench)
    {
        const string Group = "Joints";
        foreach (var joint in bench.Engine.Joints.Values.Where(j => bench.IsTouched(j.Id) && !bench.Part(j.Part).IsAbsent))
        {
            var state = bench.Joint(joint.Id);
            var name = bench.NameOf(joint.Id);
            if (state.Tightening.Procedure is { } procedure)
            {
                foreach (var (stage, number) in procedure.Stages.Select((s, i) => (s, i + 1)))
                    yield return new(Group, number == 1 ? name : $"{name}, stage {number}", stage.Words(), WrenchWords(bench, state, number), StageNote(state, procedure, number));
            }
            else if (joint.IsCounted && state.Phase is JointPhase.Done or JointPhase.HalfDone)
            {
                yield return new(Group, name, state.How.Length > 0 ? state.How : "tightness not told", "", InWords(state));
            }
        }
    }

    private static string InWords(JointState state) => $"{state.In}{(state.Required is { } needed && needed != state.In ? $" of {needed}" : "")} in{(state.FreshIn > 0 ? $", {state.FreshIn} new" : "")}";

    private static string StageNote(JointState state, ProcedureSet procedure, int number)
    {
        var done = state.Tightening.IsDone(number, state.Required ?? 0) ? "done" : "NOT done";
        return number > 1 ? done : string.Join("; ", new[] { done, InWords(state), $"threads {procedure.Lubricant}", procedure.Source }.Where(w => w.Length > 0));
    }

    private static string WrenchWords(Bench bench, JointState state, int number) => string.Join(" and ", state.Tightening.Ticks.Where(t => t.Stage == number && t.Wrench is not null)
        .Select(t => $"{bench.WrenchName(t.Wrench!)}{(t.Extension is null ? "" : " with an extension")}").Distinct());

    private static IEnumerable<BuiltRow> Inserts(Bench bench) =>
        from joint in bench.Engine.Joints.Keys
        from insert in bench.Joint(joint).Inserts
        select new BuiltRow("Thread inserts", bench.NameOf(joint), insert.Insert, "", insert.Hole > 0 ? $"hole {insert.Hole}" : "");

    private static IEnumerable<BuiltRow> Timing(Bench bench)
    {
        const string Group = "Timing";
        if (bench.Top?.Top() is { Ok: true } top)
            yield return new(Group, "top dead centre by piston stop", $"{Deg(top.Value.DiscAtTop.Degrees)} of the disc", "degree disc", $"standard uncertainty {Deg(top.Value.StandardUncertainty.Degrees)}");
        foreach (var lobe in TimingSheet.Of(bench))
            yield return new(Group, $"{lobe.Lobe}, lobe centre", TimingSheet.FromTop(lobe.Centre.Centre.Degrees), "degree disc", lobe.WantedDeg is { } card ? $"card {TimingSheet.FromTop(card)}" : "no card");
        foreach (var noted in bench.StaticTiming.Values)
            yield return new(Group, noted.What.Trim(), noted.Setting.Trim());
    }

    private static string Deg(double degrees) => Units.Show(Math.Round(degrees, 2), "deg");
}
