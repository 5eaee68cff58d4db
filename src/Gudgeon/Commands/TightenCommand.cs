using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Text.Json.Nodes;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>Tightening a joint by the stages of the owner's book.</summary>
public static class TightenCommand
{
    public static void Add(CommandLine line)
    {
        var name = new Argument<string[]>("joint") { Description = "The part that it holds, or the joint's id", Arity = ArgumentArity.OneOrMore };
        var set = new Option<string?>("--set") { Description = "Types what your book says: stages parted by semicolons", HelpName = "STAGES" };
        var threads = new Option<string?>("--threads") { Description = "With --set: state of the threads: dry, oiled", HelpName = "STATE" };
        var renew = new Option<bool>("--renew") { Description = "With --set: new fasteners each time" };
        var washers = new Option<string?>("--washers") { Description = "With --set: number and way round", HelpName = "TEXT" };
        var source = new Option<string?>("--source") { Description = "With --set: book and page", HelpName = "TEXT" };
        var pattern = new Option<string?>("--pattern") { Description = "How they sit: 5x2 for five columns and two rows, circle 8, row 6, rim 6x5 with corners counted twice", HelpName = "PATTERN" };
        var stage = new Option<int?>("--stage") { Description = "Ticks this stage", HelpName = "N" };
        var numbers = new Option<string?>("--numbers") { Description = "With --stage: numbers of the order, as 1,2,5; else all that are left", HelpName = "LIST" };
        var wrench = new Option<string?>("--wrench") { Description = "With --stage: the wrench, by its id", HelpName = "ID" };
        var setting = new Option<string?>("--setting") { Description = "With --stage: what it was set to, if other than the stage says", HelpName = "TEXT" };
        var broken = new Option<int?>("--broken-off") { Description = "The work was broken off inside this stage", HelpName = "N" };
        var bolts = new Option<string?>("--bolts") { Description = "Lengths for use again, hole by hole", HelpName = "LENGTHS" };
        var most = new Option<string?>("--most") { Description = "With --bolts: longest that goes in again, by your book", HelpName = "LENGTH" };
        var rocks = new Option<int>("--pitch-rocks") { Description = "With --bolts: on how many others the pitch gauge rocks", HelpName = "N" };
        var insert = new Option<string?>("--insert") { Description = "A thread insert went in; --hole says where", HelpName = "TEXT" };
        var hole = new Option<int>("--hole") { Description = "With --insert: its hole", HelpName = "N" };
        var studs = new Option<int?>("--studs") { Description = "So many studs stand in the case, head or block, those that came out among them", HelpName = "N" };
        var studsOut = new Option<int?>("--studs-out") { Description = "So many studs came out with their nuts", HelpName = "N" };
        var studsBroken = new Option<int>("--studs-broken") { Description = "With --studs-out: how many of them broke", HelpName = "N" };
        var studsBack = new Option<int?>("--studs-back") { Description = "So many studs are screwed in again", HelpName = "N" };
        var studsNew = new Option<int>("--studs-new") { Description = "With --studs-back: how many of them are new", HelpName = "N" };
        var holes = new Option<bool>("--holes-blown") { Description = "Threads were run free, blind holes blown out and dry" };
        var lever = new Option<string?>("--lever") { Description = "With --extension: from the square to the hand", HelpName = "LENGTH" };
        var extension = new Option<string?>("--extension") { Description = "Something stands on the end of the wrench: from the square to the fastener", HelpName = "LENGTH" };
        var angle = new Option<double>("--angle") { Description = "With --extension: 0 straight out, 90 square across", HelpName = "DEG" };
        var tighten = new Command("tighten", "Shows the order and the stages of a joint, and ticks them. Example: gudgeon tighten head --stage 1 --wrench long") { name, set, threads, renew, washers, source, pattern, stage, numbers, wrench, setting, broken, bolts, most, rocks, insert, hole, studs, studsOut, studsBroken, studsBack, studsNew, holes, lever, extension, angle };
        line.OnBook(tighten, (parsed, book) =>
        {
            var found = book.Read(bench => Naming.Joint(bench, string.Join(' ', parsed.GetRequiredValue(name))));
            if (!found.TryGet(out var joint))
                return line.Desk.Refuse(line.Json(parsed), found.Refusals);
            var request = book.Read<Outcome<Entry>?>(bench =>
                parsed.GetValue(set) is { } stages ? StageText.Read(stages, bench.Units).Then(s => Outcome.Of<Entry>(new ProcedureSet(joint, s, parsed.GetValue(threads) ?? "", parsed.GetValue(renew), parsed.GetValue(washers) ?? "", null, parsed.GetValue(source) ?? "")))
                : parsed.GetValue(pattern) is { } sits ? Pattern(joint, sits)
                : parsed.GetValue(bolts) is { } lengths ? Bolts(bench, joint, lengths, parsed.GetValue(most), parsed.GetValue(rocks), parsed.GetValue(source))
                : parsed.GetValue(insert) is { } went ? Outcome.Of<Entry>(new InsertFitted(joint, parsed.GetValue(hole), went))
                : parsed.GetValue(studs) is { } stand ? Outcome.Of<Entry>(new StudsCounted(joint, stand))
                : parsed.GetValue(studsOut) is { } came ? Outcome.Of<Entry>(new StudsOut(joint, came, parsed.GetValue(studsBroken)))
                : parsed.GetValue(studsBack) is { } back ? Outcome.Of<Entry>(new StudsBack(joint, back, parsed.GetValue(studsNew)))
                : parsed.GetValue(holes) ? Outcome.Of<Entry>(new HolesBlown(joint))
                : parsed.GetValue(extension) is { } longer ? Extension(bench, joint, parsed.GetValue(lever), longer, parsed.GetValue(angle))
                : parsed.GetValue(broken) is { } off ? Outcome.Of<Entry>(new StageBrokenOff(joint, off, ""))
                : parsed.GetValue(stage) is { } n ? Holes(bench, joint, parsed.GetValue(numbers)).Then(at => TakeStage.Read(bench, joint, n, at, parsed.GetValue(wrench), parsed.GetValue(setting) ?? "")).Then(done => Outcome.Of<Entry>(done))
                : null);
            if (request is null)
                return Show(line, parsed, book, joint);
            return request.TryGet(out var entry)
                ? line.Desk.Show(line.Json(parsed), book, book.Submit(line.Desk.Sending(), new Tell(entry)))
                : line.Desk.Refuse(line.Json(parsed), request.Refusals);
        });
        line.Root.Subcommands.Add(tighten);
        line.Root.Subcommands.Add(Wrenches(line));
    }

    private static Command Wrenches(CommandLine line)
    {
        var name = new Argument<string?>("name") { Description = "Adds a wrench of that name; none lists them", Arity = ArgumentArity.ZeroOrOne };
        var least = new Option<string?>("--least") { Description = "Lowest mark of its scale", HelpName = "TORQUE" };
        var most = new Option<string?>("--most") { Description = "Highest mark of its scale", HelpName = "TORQUE" };
        var wrench = new Command("wrench", "Lists the torque wrenches, or adds one. Example: gudgeon wrench long --least \"40 Nm\" --most \"210 Nm\"") { name, least, most };
        line.OnBook(wrench, (parsed, book) =>
        {
            if (parsed.GetValue(name) is not { } called)
            {
                var kept = book.Read(bench => bench.Wrenches.Values.Where(w => !w.Gone).Select(w => (w.Wrench, Words: w.Words(bench), w.LeastNm, w.MostNm)).ToArray());
                var facts = new JsonObject { ["wrenches"] = new JsonArray([.. kept.Select(w => new JsonObject { ["wrench"] = w.Wrench, ["least_nm"] = w.LeastNm, ["most_nm"] = w.MostNm })]) };
                return line.Desk.Show(line.Json(parsed), "wrenches", facts, kept.Select(w => $"{w.Wrench}: {w.Words}").DefaultIfEmpty("No wrench in the list."));
            }

            var units = book.Read(bench => bench.Units);
            var low = SpotText.Read(parsed.GetValue(least) ?? "", "Nm", units, null, "--least");
            var high = SpotText.Read(parsed.GetValue(most) ?? "", "Nm", units, null, "--most");
            return low.Ok && high.Ok
                ? line.Desk.Show(line.Json(parsed), book, book.Submit(line.Desk.Sending(), new Tell(new WrenchKept(called.ToLowerInvariant().Replace(' ', '-'), called, low.Value, high.Value, $"{parsed.GetValue(least)} to {parsed.GetValue(most)}"))))
                : line.Desk.Refuse(line.Json(parsed), [.. low.Refusals, .. high.Refusals]);
        });
        return wrench;
    }

    private static Outcome<Entry> Bolts(Bench bench, string joint, string lengths, string? most, int rocks, string? source)
    {
        var (read, limit) = (BoltText.Lengths(lengths, bench.Units), SpotText.Read(most ?? "", "mm", bench.Units, null, "--most"));
        return read.Ok && limit.Ok ? Outcome.Of<Entry>(new BoltsMeasured(joint, limit.Value, read.Value, rocks, source ?? "")) : Outcome.Refused<Entry>([.. read.Refusals, .. limit.Refusals]);
    }

    private static Outcome<Entry> Extension(Bench bench, string joint, string? lever, string extension, double angle)
    {
        var (arm, more) = (SpotText.Read(lever ?? "", "mm", bench.Units, null, "--lever"), SpotText.Read(extension, "mm", bench.Units, null, "--extension"));
        return arm.Ok && more.Ok ? Outcome.Of<Entry>(new ExtensionSet(joint, arm.Value, more.Value, angle)) : Outcome.Refused<Entry>([.. arm.Refusals, .. more.Refusals]);
    }

    private static Outcome<Entry> Pattern(string joint, string text)
    {
        var lower = text.Trim().ToLowerInvariant();
        var words = lower.Split([' ', 'x'], StringSplitOptions.RemoveEmptyEntries);
        var sort = lower.StartsWith("circle", StringComparison.Ordinal) ? PatternSort.Circle : lower.StartsWith("row", StringComparison.Ordinal) ? PatternSort.Line : lower.StartsWith("rim", StringComparison.Ordinal) ? PatternSort.Rim : PatternSort.Grid;
        var figures = words.Select(w => int.TryParse(w, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : 0).Where(n => n > 0).ToArray();
        return (sort, figures) switch
        {
            (PatternSort.Grid, [var columns, var rows]) when columns < 200 && rows < 200 => Outcome.Of<Entry>(new PatternChosen(joint, sort, columns * rows, rows)),
            (PatternSort.Rim, [var along, var down]) when along is > 1 and < 200 && down is > 1 and < 200 => Outcome.Of<Entry>(new PatternChosen(joint, sort, (2 * (along + down)) - 4, down)),
            (PatternSort.Circle or PatternSort.Line, [var count]) => Outcome.Of<Entry>(new PatternChosen(joint, sort, count)),
            _ => Outcome.Refused<Entry>(new Refusal("--pattern", $"\"{text}\"", "5x2, circle 8, row 6 or rim 6x5", "Write it so")),
        };
    }

    /// <summary>Holes by their numbers in the order; null for all that are left.</summary>
    private static Outcome<IReadOnlyList<int>?> Holes(Bench bench, string joint, string? numbers)
    {
        if (numbers is null)
            return Outcome.Of<IReadOnlyList<int>?>(null);
        var plan = TighteningPlan.Of(bench, joint);
        var holes = new List<int>();
        foreach (var word in numbers.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries))
        {
            if (!int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var n) || n < 1 || (plan is not null && n > plan.Order.Count))
                return Outcome.Refused<IReadOnlyList<int>?>(new Refusal("--numbers", $"\"{word}\"", plan is null ? "numbers such as 1,2,5" : $"1 to {plan.Order.Count}", "See gudgeon tighten without --stage"));
            holes.Add(plan?.Order[n - 1] ?? n);
        }

        return Outcome.Of<IReadOnlyList<int>?>(holes);
    }

    private static int Show(CommandLine line, ParseResult parsed, Book book, string joint)
    {
        var (facts, text, final) = book.Read(bench =>
        {
            var state = bench.Joint(joint);
            var plan = TighteningPlan.Of(bench, joint);
            var count = state.Required ?? 0;
            var stages = (state.Tightening.Procedure?.Stages ?? []).Select((s, i) => (Words: s.Words(), Done: state.Tightening.IsDone(i + 1, count), Ticked: state.Tightening.Ticks.Count(t => t.Stage == i + 1), Set: state.Tightening.SettingOf(s))).ToArray();
            var findings = TighteningFindings.Of(bench).Where(f => f.About == joint).ToArray();
            var facts = new JsonObject
            {
                ["joint"] = joint,
                ["final"] = bench.IsFinal(joint) && state.Tightening.Procedure is not null && !state.IsOpen,
                ["order"] = plan is null ? null : new JsonArray([.. plan.Order.Select(h => JsonValue.Create(h))]),
                ["order_from"] = plan?.From,
                ["stages"] = new JsonArray([.. stages.Select(s => new JsonObject { ["stage"] = s.Words, ["done"] = s.Done, ["ticked"] = s.Ticked, ["set_nm"] = s.Set })]),
                ["studs"] = state.Studs.IsKnown ? new JsonObject { ["counted"] = state.Studs.Counted, ["out"] = state.Studs.Out, ["broken"] = state.Studs.Broken } : null,
                ["findings"] = new JsonArray([.. findings.Select(f => f.Json())]),
            };
            string[] text =
            [
                .. Cautions.ForPage("tighten").Select(c => c.Text),
                $"{bench.NameOf(joint)}: {(state.Required is { } n ? $"{state.In} of {n} in" : "not counted")}",
                .. stages.Select((s, i) => $"  {i + 1}. {s.Words}: {(s.Done ? "done" : s.Ticked > 0 ? $"{s.Ticked} of {count} done" : "to do")}{(state.Tightening.Extension is not null && s.Set is { } set ? $"; set the wrench to {Units.Show(Math.Round(set, 1), "Nm")} for what is on its end" : "")}"),
                .. state.Bolts is { } kept ? [kept.Words(bench)] : Array.Empty<string>(),
                .. state.Studs.IsKnown ? [$"{bench.NameOf(joint)}: {state.Studs.Words()}"] : Array.Empty<string>(),
                .. bench.InsertsOf(joint).Select(i => i.Words(bench)),
                plan is null ? "No order: say how they sit, with --pattern." : $"Order by hole: {string.Join(" ", plan.Order)} ({plan.From})",
                .. findings.Select(f => f.ToString()),
            ];
            return (facts, text, findings.Length == 0);
        });
        return line.Desk.Show(line.Json(parsed), "tighten", facts, text, final ? Exit.Done : Exit.Refused);
    }
}
