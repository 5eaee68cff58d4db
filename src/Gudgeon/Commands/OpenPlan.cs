using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text.Json.Nodes;
using Gudgeon.Planning.OpenData;
using Gudgeon.Planning.Reach;
using Gudgeon.Planning.Scheduling;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>The planner on open data: a public project file, or a network of alternatives.</summary>
internal static class OpenPlan
{
    private const double LongestSeconds = 3600;
    private const long LongestFile = 16 * 1024 * 1024;

    public static int Run(CommandLine line, ParseResult parsed, string path, double limit)
    {
        var json = line.Json(parsed);
        if (!(limit > 0 && limit <= LongestSeconds))
            return line.Desk.Refuse(json, [new Refusal("--limit", limit.ToString(CultureInfo.InvariantCulture), $"more than 0 and up to {LongestSeconds} seconds", "Give fewer seconds")]);
        if (Text(path, out var text) is { } missing)
            return line.Desk.Refuse(json, [missing]);
        return text.TrimStart().StartsWith('{') ? Network(line, json, text) : Schedule(line, json, text, limit);
    }

    private static int Schedule(CommandLine line, bool json, string text, double limit)
    {
        var read = ProjectFile.Read(text);
        if (!read.TryGet(out var project))
            return line.Desk.Refuse(json, read.Refusals);
        var clock = line.Desk.Clock;
        var began = clock.GetTimestamp();
        // Who breaks off gets the best so far, not nothing.
        using var breaking = new CancellationTokenSource();
        using var interrupted = PosixSignalRegistration.Create(PosixSignal.SIGINT, BreakOff);
        using var terminated = PosixSignalRegistration.Create(PosixSignal.SIGTERM, BreakOff);
        var answer = ProjectSolver.SolveWithin(project, TimeSpan.FromSeconds(limit), clock, breaking.Token);
        var took = clock.GetElapsedTime(began).TotalSeconds;
        var facts = new JsonObject
        {
            ["makespan"] = answer.Makespan,
            ["bound"] = answer.Bound,
            ["proven"] = answer.IsProven,
            ["seconds"] = Math.Round(took, 3),
            ["starts"] = new JsonArray([.. answer.Schedule.Starts.Select(s => JsonValue.Create(s))]),
        };
        return line.Desk.Show(json, "plan-file", facts,
        [
            string.Create(CultureInfo.InvariantCulture, $"makespan {answer.Makespan}"),
            string.Create(CultureInfo.InvariantCulture, $"bound {answer.Bound}{(answer.IsProven ? ", proven least" : "")}"),
            string.Create(CultureInfo.InvariantCulture, $"time {took:0.000} s"),
            $"starts {string.Join(' ', answer.Schedule.Starts)}",
        ]);

        void BreakOff(PosixSignalContext signal)
        {
            signal.Cancel = true;
            breaking.Cancel();
        }
    }

    private static int Network(CommandLine line, bool json, string text)
    {
        var read = NetworkFile.Read(text);
        if (!read.TryGet(out var file))
            return line.Desk.Refuse(json, read.Refusals);
        if (file.Targets.IsEmpty)
            return line.Desk.Refuse(json, [new Refusal("network file", "no targets", "a list \"targets\" with one id or more", "Add it")]);
        var clock = line.Desk.Clock;
        var began = clock.GetTimestamp();
        var answer = ReachSolver.Solve(file.Network, file.Targets);
        var took = clock.GetElapsedTime(began).TotalSeconds;
        if (answer is null)
        {
            var whys = file.Targets.Select(t => WhyNot.Ask(file.Network, t)).Where(w => !w.CanBeReached).ToArray();
            Refusal?[] reasons =
            [
                .. whys.SelectMany(w => w.Reasons).Select(r => r.Block.Reason).Distinct().Select(reason => new Refusal("network file, targets", reason, "targets that can be reached", "Lift this reason, or leave the target out")),
                whys.SelectMany(w => w.Contradiction?.Rules ?? []).Distinct().ToArray() is { Length: > 0 } rules
                    ? new Refusal("network file, targets", $"rules that contradict each other: {string.Join("; ", rules)}", "targets that can be reached", "Take out one of these rules") : null,
            ];
            return line.Desk.Refuse(json, [.. reasons.OfType<Refusal>()]);
        }

        var names = answer.Order.Select(n => file.Network.Nodes[n].Id).ToArray();
        var facts = new JsonObject
        {
            ["cost_seconds"] = answer.CostSeconds,
            ["bound_seconds"] = answer.CostBoundSeconds,
            ["proven"] = answer.IsProven,
            ["seconds"] = Math.Round(took, 3),
            ["order"] = ReachCommands.Strings(names),
        };
        return line.Desk.Show(json, "plan-network", facts,
        [
            string.Create(CultureInfo.InvariantCulture, $"cost {answer.CostSeconds} s"),
            string.Create(CultureInfo.InvariantCulture, $"bound {answer.CostBoundSeconds} s{(answer.IsProven ? ", proven least" : "")}"),
            string.Create(CultureInfo.InvariantCulture, $"time {took:0.000} s"),
            $"order {string.Join(' ', names)}",
        ]);
    }

    private static Refusal? Text(string path, out string text)
    {
        text = "";
        try
        {
            if (new FileInfo(path) is { Exists: true, Length: > LongestFile } large)
                return new Refusal(path, $"{large.Length} bytes", $"up to {LongestFile} bytes", "Give a smaller file");
            text = File.ReadAllText(path);
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            return new Refusal(path, fault.Message, "a .sm project or a JSON network that can be read", "Check its name");
        }
    }
}
