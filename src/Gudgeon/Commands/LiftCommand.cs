using System.CommandLine;
using System.Text.Json.Nodes;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>The lift as it is told so far: cautions, then what the sums find, check by check.</summary>
public static class LiftCommand
{
    public static void Add(CommandLine line)
    {
        var lift = new Command("lift", "Judges the lift as it is told on the Lift page: what hangs, rig, gear, crane, headroom, floor, stand. Example: gudgeon lift");
        line.OnBook(lift, (parsed, book) =>
        {
            var (view, told) = book.Read(bench => (LiftAssessor.Of(bench), bench.Stand is not null));
            string[] cautions = [.. Cautions.ForPage("lift").Concat(Cautions.ForOperation("op:engine-out")).Concat(told ? Cautions.ForPage("stand") : []).Select(c => c.Text).Distinct()];
            IReadOnlyList<LiftCheck> checks = [.. view.Checks, .. told ? [view.Stand] : Array.Empty<LiftCheck>()];
            var facts = new JsonObject
            {
                ["cautions"] = new JsonArray([.. cautions.Select(c => JsonValue.Create(c))]),
                ["verdict"] = Verdict(view),
                ["load_from"] = new JsonArray([.. view.LoadNotes.Select(n => JsonValue.Create(n))]),
                ["checks"] = new JsonArray([.. checks.Select(Json)]),
                ["moves"] = new JsonArray([.. view.Moves.Select(m => JsonValue.Create(m))]),
                ["before_turning"] = new JsonArray([.. view.BeforeTurning.Select(b => JsonValue.Create(b))]),
                ["to_look_at"] = new JsonArray([.. view.OpenLooks.Select(l => JsonValue.Create(l))]),
            };
            return line.Desk.Show(line.Json(parsed), "lift", facts, Lines(view, cautions, checks), view.Passes ? Exit.Done : Exit.Refused);
        });
        line.Root.Subcommands.Add(lift);
    }

    private static string Verdict(LiftView view) => view.Passes ? "every check passes" : view.Fails ? "not possible as it stands" : "not all told yet";

    private static IEnumerable<string> Lines(LiftView view, IEnumerable<string> cautions, IReadOnlyList<LiftCheck> checks) =>
    [
        .. cautions,
        "",
        $"The lift: {Verdict(view)}.",
        .. view.LoadNotes,
        .. checks.SelectMany(check => check.Figures.Select(figure => $"    {figure.What}: {figure.Value}")
            .Concat(check.Refusals.Select(refusal => $"    {refusal}"))
            .Concat(check.Warnings.Select(warning => $"    look at this: {warning}"))
            .Prepend($"{check.Title}: {Word(check.Standing)}")),
        .. view.Moves.Count > 0 ? view.Moves.Prepend("What would clear the way:") : [],
        .. view.BeforeTurning.Count > 0 && view.Checks.Count < checks.Count ? view.BeforeTurning.Prepend("Before it is turned on the stand:") : [],
        .. view.OpenLooks.Count > 0 ? view.OpenLooks.Select(look => $"    {look}").Prepend("Before you lift, look at:") : [],
    ];

    private static string Word(LiftStanding standing) => standing switch
    {
        LiftStanding.Passes => "passes",
        LiftStanding.Fails => "fails",
        LiftStanding.NotTold => "not told",
        _ => "waits",
    };

    private static JsonObject Json(LiftCheck check) => new()
    {
        ["id"] = check.Id,
        ["title"] = check.Title,
        ["standing"] = Word(check.Standing),
        ["caution"] = check.Caution,
        ["figures"] = new JsonArray([.. check.Figures.Select(f => new JsonObject { ["what"] = f.What, ["shown"] = f.Value, ["value"] = f.Working.Result.Value, ["unit"] = f.Working.Result.Unit })]),
        ["refusals"] = new JsonArray([.. check.Refusals.Select(Json)]),
        ["warnings"] = new JsonArray([.. check.Warnings.Select(Json)]),
    };

    private static JsonObject Json(Refusal refusal) => new() { ["where"] = refusal.Where, ["met"] = refusal.Met, ["expected"] = refusal.Expected, ["do"] = refusal.Remedy };
}
