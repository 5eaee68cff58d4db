using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Text.Json.Nodes;
using Gudgeon.Journal;
using Gudgeon.Planning.Calendar;
using Gudgeon.Planning.OnTheBench;
using Gudgeon.Planning.StripOrder;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>The whole strip in order, the job on days, and what to do while something is waited for.</summary>
public static class PlanCommands
{
    private const int LongestWait = 24;

    public static void Add(CommandLine line)
    {
        line.Root.Subcommands.Add(Plan(line));
        line.Root.Subcommands.Add(Wait(line));
    }

    private static Command Plan(CommandLine line)
    {
        var days = new Option<bool>("--days") { Description = "Everything on your days, with the dates of the first start at 50 % and 90 %" };
        var ics = new Option<string?>("--ics") { Description = "Writes the days as an iCalendar file", HelpName = "FILE" };
        var back = new Option<bool>("--back") { Description = "The whole refit instead of the strip: everything that is off, in an order that works" };
        var keep = new Option<bool>("--keep") { Description = "Keeps this order in the book: later plans follow it where it still holds" };
        var file = new Option<string?>("--file") { Description = "Plans a public .sm project or a JSON network from a file instead; no book needed", HelpName = "FILE" };
        var limit = new Option<double>("--limit") { Description = "Longest time for --file, seconds; it ends sooner once the answer is proven, and Ctrl-C shows the best so far", HelpName = "SECONDS", DefaultValueFactory = _ => 25 };
        var command = new Command("plan", "An order for the whole strip or the whole refit, or the whole job on days. Example: gudgeon plan --days --ics plan.ics") { back, days, ics, keep, file, limit };
        command.SetAction(parsed => parsed.GetValue(file) is { } path
            ? OpenPlan.Run(line, parsed, path, parsed.GetValue(limit))
            : line.WithBook(parsed, book => parsed.GetValue(days) || parsed.GetValue(ics) is not null
                ? Days(line, parsed, book, parsed.GetValue(ics))
                : parsed.GetValue(back) ? Refit(line, parsed, book)
                : Order(line, parsed, book, parsed.GetValue(keep))));
        return command;
    }

    private static int Order(CommandLine line, ParseResult parsed, Book book, bool keep)
    {
        var report = book.Read(bench => StripReport.Of(bench, new Circumstances(line.Desk.Now)));
        if (keep && !report.Steps.IsEmpty)
        {
            var kept = book.Submit(line.Desk.Sending(), new Tell(new PlanKept([.. report.Steps.Select(s => s.Work.Id)], report.Plan.TotalSeconds, report.Plan.BoundSeconds)));
            if (!kept.Ok)
                return line.Desk.Refuse(line.Json(parsed), kept.Refusals);
        }

        var facts = new JsonObject
        {
            ["seconds"] = report.Plan.TotalSeconds,
            ["least_seconds"] = report.Plan.BoundSeconds,
            ["gap"] = report.Plan.Gap,
            ["steps"] = new JsonArray([.. report.Steps.Select(s => ReachCommands.Step(s.Work, s.After))]),
            ["left"] = new JsonArray([.. report.Left.Select(l => new JsonObject { ["name"] = l.Name, ["reasons"] = ReachCommands.Strings(l.Reasons.Select(r => r.Words)) })]),
            ["moved"] = new JsonArray([.. report.Moves.Select(m => new JsonObject { ["doing"] = m.Doing, ["why"] = m.Why })]),
            ["kept"] = keep,
        };
        return line.Desk.Show(line.Json(parsed), "plan", facts,
        [
            $"The whole strip: {report.Steps.Length} steps, about {PlanWords.Minutes(report.Plan.TotalSeconds)}, of it {PlanWords.Minutes(report.Plan.SetupSeconds)} for turning, help and spanners. No order takes less than {PlanWords.Minutes(report.Plan.BoundSeconds)}: at most {Percent(report.Plan.Gap)} above the least.",
            .. report.Steps.Select((s, k) => $"{k + 1,4}  {s.Work.Doing}{PlanWords.Minutes(s.Work)}"),
            .. report.Left.Select(l => $"Stays on: {l.Name}: {string.Join("; ", l.Reasons.Select(r => r.Words).DefaultIfEmpty("its rules contradict each other"))}"),
            .. report.Moves.Select(m => $"Moved: {m.Doing}: {m.Why}"),
            .. keep ? new[] { "Kept: later plans follow this order where it still holds." } : [],
        ]);
    }

    private static int Refit(CommandLine line, ParseResult parsed, Book book)
    {
        var (report, waits) = book.Read(bench =>
        {
            var found = RefitReport.Of(bench, new Circumstances(line.Desk.Now));
            return (found, found.Stages.ToDictionary(s => s, s => PlanWords.Waits(bench, s).ToArray()));
        });
        var facts = new JsonObject
        {
            ["of_what_is_off"] = report.IsOfWhatIsOff,
            ["seconds"] = report.Plan.TotalSeconds,
            ["least_seconds"] = report.Plan.BoundSeconds,
            ["gap"] = report.Plan.Gap,
            ["waits"] = new JsonArray([.. report.Stages.SelectMany(stage => stage.Waits).Select(w => new JsonObject { ["part"] = w.Part, ["name"] = w.Name, ["reasons"] = ReachCommands.Strings(w.Reasons), ["day"] = Iso(w.Day), ["holds_up"] = w.HoldsUp })]),
            ["steps"] = new JsonArray([.. report.Stages.SelectMany(stage => stage.Steps.Select(s => Back(stage, s)))]),
        };
        return line.Desk.Show(line.Json(parsed), "plan-back", facts, report.Steps.IsEmpty ? ["Nothing is off: nothing has to go back."] : BackLines(report, waits));
    }

    private static JsonObject Back(BackStage stage, BackStep step) => new()
    {
        ["id"] = step.Work.Id,
        ["sort"] = step.Work.Sort.ToString().ToLowerInvariant(),
        ["doing"] = step.Work.Return,
        ["low_minutes"] = step.Minutes.Low,
        ["high_minutes"] = step.Minutes.High,
        ["guess"] = step.Minutes.IsGuess,
        ["persons"] = step.Work.Persons,
        ["equipment"] = ReachCommands.Strings(step.Work.Equipment),
        ["after"] = ReachCommands.Strings(step.After),
        ["not_before"] = Iso(stage.Day),
        ["held"] = stage.IsHeld,
    };

    private static IEnumerable<string> BackLines(RefitReport report, IReadOnlyDictionary<BackStage, string[]> waits)
    {
        yield return $"{PlanWords.RefitHead(report)} {PlanWords.RefitTime(report)}";
        var number = 0;
        foreach (var stage in report.Stages)
        {
            if (report.Stages.Length > 1 || stage.Waits.Length > 0)
                yield return $"{PlanWords.StageHead(stage)}.";
            foreach (var wait in waits[stage])
                yield return $"  {wait}";
            foreach (var step in stage.Steps)
                yield return $"{++number,4}  {step.Work.Return}{PlanWords.Minutes(step.Minutes)}";
        }

        if (report.Stages[^1].IsHeld)
            yield return "Tell a day for what is on order or away (gudgeon lead), and the plan moves it to that day.";
    }

    private static int Days(CommandLine line, ParseResult parsed, Book book, string? ics)
    {
        var (report, leftOut) = book.Read(bench => DaysReport.Of(bench, new Circumstances(line.Desk.Now), StripReport.QuickEffort) is var found ? (found, PlanWords.LeftOut(bench, found)) : default);
        if (ics is not null)
        {
            var written = CalendarExport.Write(report.Plan, line.Desk.Now, book.Key);
            if (!written.TryGet(out var text))
                return line.Desk.Refuse(line.Json(parsed), written.Refusals);
            try
            {
                File.WriteAllText(ics, text);
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
            {
                return line.Desk.Refuse(line.Json(parsed), [new Refusal("--ics", fault.Message, "a file that can be written", "Name another file or folder")]);
            }
        }

        var facts = new JsonObject
        {
            ["strip_done"] = Iso(report.StripDone),
            ["all_back"] = Iso(report.AllBack),
            ["finish_50"] = Iso(report.Odds.Half),
            ["finish_90"] = Iso(report.Odds.NineInTen),
            ["no_order_before"] = Iso(report.Plan.FinishBound),
            ["draws"] = report.Odds.Draws,
            ["method"] = FinishOdds.Method,
            ["hours_told"] = report.HoursTold,
            ["tasks"] = new JsonArray([.. report.Plan.Placed.Select(p => new JsonObject
            {
                ["id"] = p.Task.Id,
                ["title"] = p.Task.Title,
                ["phase"] = report.PhaseOf(p.Task.Id).ToString().ToLowerInvariant(),
                ["pieces"] = new JsonArray([.. p.Pieces.Select(w => new JsonObject { ["from"] = Iso(w.From), ["until"] = Iso(w.Until) })]),
            })]),
            ["unplaced"] = new JsonArray([.. report.Plan.Unplaced.Select(u => new JsonObject { ["title"] = u.Task.Title, ["why"] = u.Reason })]),
            ["no_day_known"] = ReachCommands.Strings(report.Held.Select(w => w.Name)),
            ["ics"] = ics,
        };
        return line.Desk.Show(line.Json(parsed), "plan-days", facts, DaysLines(report).Concat(new[] { leftOut, ics is null ? null : $"Written: {ics}" }.OfType<string>()));
    }

    private static IEnumerable<string> DaysLines(DaysReport report)
    {
        foreach (var placed in report.Plan.Placed)
            yield return $"{Day(placed.Start)} to {(placed.Start.Date == placed.Finish.Date ? placed.Finish.ToString("HH:mm", CultureInfo.InvariantCulture) : Day(placed.Finish))}  {placed.Task.Title}";
        foreach (var unplaced in report.Plan.Unplaced)
            yield return $"No place: {unplaced.Task.Title}: {unplaced.Reason}";
        if (!report.HoursTold)
            yield return $"Nobody told your hours; taken: {DayHours.Words(JobTasks.UsualWeek)}. Tell them with gudgeon hours.";
        if (report.StripDone is { } off)
            yield return $"All off: {Day(off)}.";
        if (report.AllBack is { } back)
            yield return $"First start, if every time is as planned: {Day(back)}. By {Date(report.Odds.Half)} in half of {report.Odds.Draws} drawn futures, by {Date(report.Odds.NineInTen)} in nine of ten.";
        yield return FinishOdds.Method;
    }

    private static Command Wait(CommandLine line)
    {
        var hours = new Option<double>("--hours") { Description = "Hours at hand", HelpName = "HOURS", DefaultValueFactory = _ => 2 };
        var alone = ReachCommands.Alone();
        var without = ReachCommands.Without();
        var command = new Command("wait", "What is worth doing now, best first, in the hours at hand. Example: gudgeon wait --hours 2 --alone") { hours, alone, without };
        line.OnBook(command, (parsed, book) =>
        {
            var time = parsed.GetValue(hours);
            if (!(time > 0 && time <= LongestWait))
                return line.Desk.Refuse(line.Json(parsed), [new Refusal("--hours", time.ToString(CultureInfo.InvariantCulture), $"more than 0 and up to {LongestWait} hours", "Say how long you have")]);
            var circumstances = ReachCommands.Circumstances(line, parsed.GetValue(alone), parsed.GetValue(without));
            var report = book.Read(bench =>
            {
                var everybody = new Circumstances(line.Desk.Now);
                return WaitReport.Of(bench, circumstances, (long)(time * 3600), JobTasks.Of(bench, everybody, StripReport.Of(bench, everybody, StripReport.QuickEffort).Steps));
            });
            var facts = new JsonObject
            {
                ["offers"] = new JsonArray([.. report.Offers.Select(o => new JsonObject { ["id"] = o.Task.Id, ["title"] = o.Task.Title, ["seconds"] = o.Task.Seconds, ["opens"] = o.Opens, ["saves_seconds"] = (long)o.Saves.TotalSeconds, ["fits"] = o.FitsWhole })]),
            };
            return line.Desk.Show(line.Json(parsed), "wait", facts, report.Offers.Select((o, k) => $"{k + 1,4}  {PlanWords.Offer(o)}").DefaultIfEmpty("Nothing can be done in that time with what is there."));
        });
        return command;
    }

    private static string Percent(double share) => (share * 100).ToString("0.0", CultureInfo.InvariantCulture) + " %";

    private static string Day(DateTime time) => time.ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture);

    private static string Date(DateTime? time) => time?.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture) ?? "no date, something finds no place";

    private static string? Iso(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string? Iso(DateTime? time) => time?.ToString("yyyy-MM-dd'T'HH:mm:ss", CultureInfo.InvariantCulture);
}
