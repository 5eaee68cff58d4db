using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text.Json.Nodes;
using Gudgeon.Journal;
using Gudgeon.Planning.OnTheBench;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>The least work that gets at something, and why something cannot be had.</summary>
public static class ReachCommands
{
    public static void Add(CommandLine line)
    {
        line.Root.Subcommands.Add(Reach(line));
        line.Root.Subcommands.Add(Why(line));
    }

    internal static Option<bool> Alone() => new("--alone") { Description = "Nobody is there to help" };

    internal static Option<string[]> Without() => new("--without") { Description = "Equipment that is not at hand now; may be repeated", HelpName = "EQUIPMENT" };

    internal static Circumstances Circumstances(CommandLine line, bool alone, string[]? without) => new(line.Desk.Now, alone) { Without = without ?? [] };

    private static Argument<string[]> Name() => new("name") { Description = "Part, line, operation, joint (joint of the starter) or port", Arity = ArgumentArity.OneOrMore };

    private static Command Reach(CommandLine line)
    {
        var name = Name();
        var measure = new Option<string?>("--measure") { Description = "Get at a characteristic of the part, to measure it", HelpName = "CHARACTERISTIC" };
        var place = new Option<int>("--place") { Description = "Which place of it, from 1", HelpName = "N", DefaultValueFactory = _ => 1 };
        var alone = Alone();
        var without = Without();
        var command = new Command("reach", "The least work that gets at something, in an order that works. Example: gudgeon reach starter --alone") { name, measure, place, alone, without };
        line.OnBook(command, (parsed, book) => book.Read(bench =>
        {
            var words = string.Join(' ', parsed.GetRequiredValue(name));
            var target = parsed.GetValue(measure) is { } characteristic
                ? Naming.Part(bench, words).Then(part => ReachTarget.Measuring(bench, part, characteristic, parsed.GetValue(place)))
                : TargetOf(bench, words);
            if (!target.TryGet(out var found))
                return line.Desk.Refuse(line.Json(parsed), target.Refusals);
            var ways = new BenchWays(bench, Circumstances(line, parsed.GetValue(alone), parsed.GetValue(without)));
            return ReachReport.Of(ways, found) is { } report
                ? Show(line, parsed, bench, report)
                : ShowWhy(line, parsed, bench, WhyReport.Of(ways, found));
        }));
        return command;
    }

    private static Command Why(CommandLine line)
    {
        var name = Name();
        var alone = Alone();
        var without = Without();
        var command = new Command("why", "Why something cannot come off now, in the fewest reasons. Example: gudgeon why crankshaft --without \"engine stand\"") { name, alone, without };
        line.OnBook(command, (parsed, book) => book.Read(bench =>
        {
            var target = TargetOf(bench, string.Join(' ', parsed.GetRequiredValue(name)));
            return target.TryGet(out var found)
                ? ShowWhy(line, parsed, bench, WhyReport.Of(bench, found, Circumstances(line, parsed.GetValue(alone), parsed.GetValue(without))))
                : line.Desk.Refuse(line.Json(parsed), target.Refusals);
        }));
        return command;
    }

    internal static Outcome<ReachTarget> TargetOf(Bench bench, string words)
    {
        const string JointOf = "joint of the ";
        if (words.StartsWith(JointOf, StringComparison.OrdinalIgnoreCase))
            return Naming.Joint(bench, words[JointOf.Length..]).Then(joint => ReachTarget.Of(bench, joint));
        if (ReachTarget.Of(bench, words) is { Ok: true } byId)
            return byId;
        return Naming.Part(bench, words) is { Ok: true } part ? ReachTarget.Of(bench, part.Value) : Naming.Thing(bench, words).Then(id => ReachTarget.Of(bench, id));
    }

    private static int Show(CommandLine line, ParseResult parsed, Bench bench, ReachReport report)
    {
        var cautions = report.CautionsOf(bench);
        var facts = new JsonObject
        {
            ["target"] = report.Target.Id,
            ["name"] = report.Target.Name,
            ["seconds"] = report.Seconds,
            ["least_seconds"] = report.BoundSeconds,
            ["proven"] = report.IsProven,
            ["guess"] = report.IsGuess,
            ["steps"] = new JsonArray([.. report.Steps.Select(s => Step(s.Work, s.After))]),
            ["equipment"] = Strings(report.Equipment),
            ["persons"] = report.Persons,
            ["parted"] = Strings(report.Parted.Select(w => w.Id)),
            ["drained"] = Strings(report.Drained.Select(w => w.Id)),
            ["looks"] = new JsonArray([.. (report.Looks?.Facts ?? []).Select(f => new JsonObject { ["fact"] = f.Id, ["question"] = f.Question })]),
            ["looks_save_seconds"] = report.Looks?.SavesSeconds,
            ["cautions"] = Strings(cautions.Select(c => c.Text)),
        };
        return line.Desk.Show(line.Json(parsed), "reach", facts, Lines(report).Concat(cautions.Select(c => $"Caution: {c.Text}")));
    }

    private static IEnumerable<string> Lines(ReachReport report)
    {
        if (report.Steps.IsEmpty)
        {
            yield return $"{report.Target.Name}: nothing is in the way.";
            yield break;
        }

        yield return $"To get at the {report.Target.Name}: {report.Steps.Length} steps, about {PlanWords.Minutes(report.Seconds)}{(report.IsGuess ? $" ({report.LowMinutes:0} to {report.HighMinutes:0} minutes, a guess)" : "")}.";
        foreach (var (step, number) in report.Steps.Select((s, k) => (s, k + 1)))
            yield return $"{number,4}  {step.Work.Doing}{PlanWords.Minutes(step.Work)}{PlanWords.Extras(step.Work)}";
        if (report.Persons > 1)
            yield return $"Persons: {report.Persons}.";
        if (report.Equipment.Count > 0)
            yield return $"At hand: {string.Join(", ", report.Equipment)}.";
        if (report.Drained.Count > 0)
            yield return $"Let out: {string.Join(", ", report.Drained.Select(w => w.Name))}.";
        if (report.Parted.Count > 0)
            yield return $"Lines parted: {string.Join(", ", report.Parted.Select(w => w.Name))}.";
        yield return PlanWords.Proof(report);
        if (report.Looks is { } looks)
            yield return $"Look first: {string.Join(" ", looks.Facts.Select(f => f.Question))} If so, {(looks.SavesSeconds is { } saved ? $"about {PlanWords.Minutes(saved)} less" : "there is a way")}.";
    }

    private static int ShowWhy(CommandLine line, ParseResult parsed, Bench bench, WhyReport why)
    {
        var facts = new JsonObject
        {
            ["target"] = why.Target.Id,
            ["name"] = why.Target.Name,
            ["done"] = why.IsDone,
            ["can_now"] = why.CanNow,
            ["reasons"] = new JsonArray([.. why.Reasons.Select(r => new JsonObject { ["kind"] = r.Kind.ToString().ToLowerInvariant(), ["reason"] = r.Words, ["holds_up"] = Strings(r.HoldsUp) })]),
            ["first"] = Strings(why.First),
            ["contradiction"] = Strings(why.Rules),
            ["made_by"] = new JsonArray([.. why.MadeBy.Select(n => JsonValue.Create(n))]),
            ["steps"] = why.Way?.Steps.Length,
            ["seconds"] = why.Way?.Seconds,
        };
        return line.Desk.Show(line.Json(parsed), "why", facts, PlanWords.Why(why).Concat(Behind(bench, why)));
    }

    /// <summary>What can be done about rules that contradict each other.</summary>
    private static IEnumerable<string> Behind(Bench bench, WhyReport why) => why.MadeBy.IsEmpty && !why.Rules.IsEmpty
        ? ["The tables made them all: open the pages (gudgeon serve) and say under \"The engine is otherwise\" what this engine has not."]
        : bench.Told.Where(r => why.MadeBy.Contains(r.Number)).Select(r => $"Entry {r.Number}, {r.Entry.Words(bench)}: if it is wrong, gudgeon strike {r.Number}");

    internal static JsonObject Step(BenchWork work, IEnumerable<string> after) => new()
    {
        ["id"] = work.Id,
        ["sort"] = work.Sort.ToString().ToLowerInvariant(),
        ["doing"] = work.Doing,
        ["low_minutes"] = work.Minutes.Low,
        ["high_minutes"] = work.Minutes.High,
        ["guess"] = work.Minutes.IsGuess,
        ["persons"] = work.Persons,
        ["equipment"] = Strings(work.Equipment),
        ["after"] = Strings(after),
    };

    internal static JsonArray Strings(IEnumerable<string> words) => new([.. words.Select(w => JsonValue.Create(w))]);
}
