using System.CommandLine;
using System.Text.Json.Nodes;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>What must be true before a point of no easy return.</summary>
public static class GateCommand
{
    public static void Add(CommandLine line)
    {
        var id = new Argument<string?>("gate") { Description = "Id of a gate; none lists all", Arity = ArgumentArity.ZeroOrOne };
        var look = new Option<int?>("--look") { Description = "Says yes to the look of that number", HelpName = "N" };
        var closing = new Option<string?>("--part") { Description = "The part that will close it, where there are several", HelpName = "PART" };
        var close = new Option<bool>("--close") { Description = "Closes a gate that no part closes: the first start, closing the job" };
        var because = new Option<string?>("--because") { Description = "With --close: why it is closed over its findings", HelpName = "WHY" };
        var gate = new Command("gate", "Lists the gates of the refit and what keeps each open. Example: gudgeon gate GA3 --look 1") { id, look, closing, close, because };
        line.OnBook(gate, (parsed, book) =>
        {
            var json = line.Json(parsed);
            var wanted = parsed.GetValue(id);
            var gates = book.Read(bench => bench.Gates.Where(g => wanted is null || g.Id.Equals(wanted, StringComparison.OrdinalIgnoreCase)).ToArray());
            if (gates.Length == 0)
            {
                return line.Desk.Refuse(json, [new Refusal("gate", $"\"{wanted}\"", string.Join(", ", book.Read(bench => bench.Gates.Select(g => g.Id))), "Choose one of them")]);
            }

            if (parsed.GetValue(look) is { } n)
            {
                return n < 1 || n > gates[0].Looks.Count || wanted is null
                    ? line.Desk.Refuse(json, [new Refusal("--look", $"{n}", $"1 to {gates[0].Looks.Count} of one gate", "See gudgeon gate")])
                    : line.Desk.Show(json, book, book.Submit(line.Desk.Sending(), new Tell(new GateLooked(gates[0].Id, gates[0].Looks[n - 1], book.Read(bench => Closing(bench, gates[0], parsed.GetValue(closing)))))));
            }

            if (parsed.GetValue(close))
            {
                var page = wanted is null ? null : gates[0].ClosedBy.FirstOrDefault(c => c.StartsWith("page:", StringComparison.Ordinal));
                return page is null
                    ? line.Desk.Refuse(json, [new Refusal("--close", wanted is null ? "no gate" : $"{gates[0].Id}, which a part or an operation closes", "a gate that is closed by itself, such as GA6", "Put its part back on, or take its operation back")])
                    : line.Desk.Show(json, book, book.Submit(line.Desk.Sending(), new BeginPage(page, parsed.GetValue(because))));
            }

            var found = book.Read(bench => gates.Select(g => (Gate: g, Findings: GateCheck.Of(bench, g, Closing(bench, g, parsed.GetValue(closing))))).ToArray());
            var facts = new JsonObject
            {
                ["gates"] = new JsonArray([.. found.Select(f => new JsonObject
                {
                    ["gate"] = f.Gate.Id,
                    ["name"] = f.Gate.Name,
                    ["findings"] = new JsonArray([.. f.Findings.Select(x => x.Finding.Json())]),
                })]),
            };
            var lines = found.SelectMany(f => f.Findings
                .Select(x => $"    {x.Finding}{(x.IsFirm ? " No override helps here." : "")}")
                .Prepend($"{f.Gate.Id} {f.Gate.Name}: {(f.Findings.Count == 0 ? "clear" : $"{f.Findings.Count} findings")}"));
            var cautions = Cautions.ForPage("gate").Select(c => c.Text);
            return line.Desk.Show(json, "gates", facts, cautions.Concat(lines), found.All(f => f.Findings.Count == 0) ? Exit.Done : Exit.Refused);
        });
        line.Root.Subcommands.Add(gate);
    }

    /// <summary>The part that closes the gate: the one named, else the first of its kind that is off, else the first.</summary>
    private static string Closing(Bench bench, Gate gate, string? named)
    {
        var closers = bench.Engine.Parts.Values.Where(p => gate.ClosedBy.Contains(p.Kind) || gate.ClosedBy.Contains(p.Id)).ToArray();
        return named is not null && Naming.Part(bench, named) is { Ok: true } part ? part.Value
            : (closers.FirstOrDefault(p => bench.Part(p.Id).IsOff) ?? closers.FirstOrDefault())?.Id ?? gate.ClosedBy[0];
    }
}
