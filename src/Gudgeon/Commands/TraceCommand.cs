using System.CommandLine;
using System.Text.Json.Nodes;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>Where a port leads, and whether a circuit is closed.</summary>
public static class TraceCommand
{
    public static void Add(CommandLine line)
    {
        var port = new Argument<string?>("port") { Description = "A port, as oil-pump.1.out; none lists the ports and how they stand", Arity = ArgumentArity.ZeroOrOne };
        var of = new Option<string?>("--of") { Description = "Only this fluid: oil, coolant, fuel, air", HelpName = "FLUID" };
        var trace = new Command("trace", "Follows a port both ways, or asks whether all is closed. Example: gudgeon trace oil-pump.1.out") { port, of };
        line.OnBook(trace, (parsed, book) =>
        {
            if (parsed.GetValue(port) is not { } wanted)
                return Closed(line, line.Json(parsed), book, parsed.GetValue(of));
            var told = book.Read(bench => Trace.From(bench, wanted) is { } found
                ? (Facts: new JsonObject { ["port"] = wanted, ["fluid"] = found.Family, ["down"] = Json(bench, found.Down), ["up"] = Json(bench, found.Up) },
                    Lines: (string[])[$"{bench.PortName(wanted)}, {found.Family}", "Leads to:", .. Text(bench, found.Down, 1), "Comes from:", .. Text(bench, found.Up, 1)])
                : default);
            return told.Facts is null
                ? line.Desk.Refuse(line.Json(parsed), [new Refusal("port", $"\"{wanted}\"", "a port of this engine", "See gudgeon trace without a port")])
                : line.Desk.Show(line.Json(parsed), "trace", told.Facts, told.Lines);
        });
        line.Root.Subcommands.Add(trace);
    }

    private static int Closed(CommandLine line, bool json, Book book, string? family)
    {
        var ports = book.Read(bench => PortCheck.Of(bench, family).Select(p => (p.Line, p.Port, p.Stand, p.Words, p.IsToSeeTo, Name: bench.PortName(p.Port.Id))).ToArray());
        if (family is not null && !book.Read(bench => bench.Engine.Lines.Values.Any(l => Family.Of(l.Circuit) == family)))
            return line.Desk.Refuse(json, [new Refusal("--of", $"\"{family}\"", "a fluid of this engine: oil, coolant, fuel, air, exhaust, breather, vacuum, electrical", "Choose one of them")]);
        var open = ports.Count(p => p.IsToSeeTo);
        var facts = new JsonObject
        {
            ["closed"] = open == 0,
            ["ports"] = new JsonArray([.. ports.Select(p => new JsonObject { ["port"] = p.Port.Id, ["line"] = p.Line.Id, ["stand"] = p.Stand.ToString(), ["words"] = p.Words })]),
        };
        return line.Desk.Show(json, "ports", facts, ports.Select(p => $"{p.Port.Id,-28} {p.Line.Name}: {p.Words}").Append(open == 0 ? "Closed." : $"Not closed: {open} to see to."), open == 0 ? Exit.Done : Exit.Refused);
    }

    private static IEnumerable<string> Text(Bench bench, TraceStep step, int depth)
    {
        foreach (var next in step.Next)
        {
            var name = next.Parts[0] == "ext" ? "vehicle" : bench.Several(next.Parts);
            var by = string.Join(", ", next.By.Where(l => l.Kind != "flow").Select(l => l.Name).Distinct());
            yield return $"{new string(' ', depth * 2)}{(next.ClosesAt ? "back to " : "")}{name}{(by.Length > 0 ? $" by {by}" : "")}{(next.IsOpen ? " (parted)" : "")}{(next.IsUndecided ? " (way not known)" : "")}";
            foreach (var below in Text(bench, next, depth + 1))
                yield return below;
        }
    }

    private static JsonObject Json(Bench bench, TraceStep step) => new()
    {
        ["parts"] = new JsonArray([.. step.Parts.Select(p => JsonValue.Create(p))]),
        ["lines"] = new JsonArray([.. step.By.Where(l => l.Kind != "flow").Select(l => JsonValue.Create(l.Id))]),
        ["parted"] = step.IsOpen,
        ["undecided"] = step.IsUndecided,
        ["closes"] = step.ClosesAt,
        ["next"] = new JsonArray([.. step.Next.Select(n => Json(bench, n))]),
    };
}
