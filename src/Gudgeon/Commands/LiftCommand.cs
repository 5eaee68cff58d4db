using System.CommandLine;
using System.Text.Json.Nodes;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Lifting;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>The lift as it is told so far: cautions, then what the sums find, check by check.</summary>
public static class LiftCommand
{
    public static void Add(CommandLine line)
    {
        var lift = new Command("lift", "Judges the lift as it is told: what hangs, rig, gear, crane, headroom, floor, stand. Example: gudgeon lift");
        line.OnBook(lift, (parsed, book) =>
        {
            var (view, told, gains) = book.Read(bench =>
            {
                var seen = LiftAssessor.Of(bench);
                return (seen, bench.Stand is not null, seen.Headroom is { } room ? GainWay.Of(bench, room.Tightest, line.Desk.Now) : []);
            });
            string[] cautions = [.. Cautions.ForPage("lift").Concat(Cautions.ForOperation("op:engine-out")).Concat(told ? Cautions.ForPage("stand") : []).Select(c => c.Text).Distinct()];
            IReadOnlyList<LiftCheck> checks = [.. view.Checks, .. told ? [view.Stand] : Array.Empty<LiftCheck>()];
            var facts = new JsonObject
            {
                ["cautions"] = new JsonArray([.. cautions.Select(c => JsonValue.Create(c))]),
                ["verdict"] = Verdict(view),
                ["guessed"] = new JsonArray([.. view.Doubts.Select(Json)]),
                ["load_from"] = new JsonArray([.. view.LoadNotes.Select(n => JsonValue.Create(n))]),
                ["checks"] = new JsonArray([.. checks.Select(Json)]),
                ["tightest"] = view.Headroom is { } headroom ? new JsonObject { ["point"] = headroom.Tightest.Name, ["spare_mm"] = headroom.Tightest.Spare.Millimetres } : null,
                ["gains"] = new JsonArray([.. gains.Select(g => new JsonObject { ["part"] = g.Part, ["name"] = g.Gain.Item, ["gain_mm"] = g.Gain.Gain.Millimetres, ["steps"] = g.Way?.Steps.Length, ["low_min"] = g.Way?.LowMinutes, ["high_min"] = g.Way?.HighMinutes, ["guess"] = g.Way?.IsGuess })]),
                ["moves"] = new JsonArray([.. view.Moves.Select(m => JsonValue.Create(m))]),
                ["before_turning"] = new JsonArray([.. view.BeforeTurning.Select(b => JsonValue.Create(b))]),
                ["to_look_at"] = new JsonArray([.. Open(view).Select(l => new JsonObject { ["number"] = l.Number, ["look"] = l.Look })]),
            };
            return line.Desk.Show(line.Json(parsed), "lift", facts, Lines(view, cautions, checks, gains), view.Passes ? Exit.Done : Exit.Refused);
        });
        LiftTellCommands.Add(line, lift);
        line.Root.Subcommands.Add(lift);
    }

    private static string Verdict(LiftView view) => view.Passes ? view.Doubts.Count > 0 ? "every check passes on a guess" : "every check passes" : view.Fails ? "not possible as it stands" : "not all told yet";

    private static IEnumerable<string> Lines(LiftView view, IEnumerable<string> cautions, IReadOnlyList<LiftCheck> checks, IReadOnlyList<GainWay> gains) =>
    [
        .. cautions,
        "",
        $"The lift: {Verdict(view)}.",
        .. view.LoadNotes,
        .. checks.SelectMany(check => check.Figures.Select(figure => $"    {figure.What}: {figure.Value}")
            .Concat(check.Refusals.Select(refusal => $"    {refusal}"))
            .Concat(check.Warnings.Select(warning => $"    look at this: {warning}"))
            .Prepend($"{check.Title}: {Word(check.Standing)}")),
        .. view.Headroom is { Tightest: var tight } ? [$"Tightest: {tight.Name}, {(tight.Spare.Millimetres < 0 ? $"{LiftText.Show(-tight.Spare.Millimetres, "mm")} short" : $"{LiftText.Show(tight.Spare.Millimetres, "mm")} to spare")}"] : Array.Empty<string>(),
        .. gains.Select(gain => $"    {gain.Gain.Item} off: {LiftText.Show(gain.Gain.Gain.Millimetres, "mm")} gained; {gain.Work}{(gain.Part is { } part ? $" (gudgeon reach {part})" : "")}"),
        .. view.Moves.Count > 0 ? view.Moves.Prepend("What would clear the way:") : [],
        .. view.BeforeTurning.Count > 0 && view.Checks.Count < checks.Count ? view.BeforeTurning.Prepend("Before it is turned on the stand:") : [],
        .. view.OpenLooks.Count > 0 ? Open(view).Select(l => $"{l.Number,4}  {l.Look}").Prepend("Before you lift, look at these, then say so with gudgeon lift looked and their numbers:") : [],
    ];

    private static IEnumerable<(int Number, string Look)> Open(LiftView view) => LiftList.Looks.Select((look, i) => (i + 1, look)).Where(l => view.OpenLooks.Contains(l.look));

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
