using System.CommandLine;
using System.Text.Json.Nodes;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>Instruments and limits: what a verdict stands on.</summary>
internal static class InstrumentCommands
{
    public static Command Instrument(CommandLine line)
    {
        var id = new Argument<string>("id") { Description = "Short id to call it by" };
        var tool = new Option<string>("--sort") { Description = $"Sort: {string.Join(", ", ToolSorts.All.Where(t => t.Expanded is not null).Select(t => t.Id))}", HelpName = "SORT", Required = true };
        var name = new Option<string?>("--name") { Description = "What you call it", HelpName = "TEXT" };
        var u = new Option<string?>("--u") { Description = "U (k = 2) of one reading in your hands; else the usual guess of its sort", HelpName = "U" };
        var resolution = new Option<string?>("--resolution") { Description = "Smallest step", HelpName = "STEP" };
        var zero = new Option<string?>("--set-to") { Description = "It was set to this size", HelpName = "SIZE" };
        var on = new Option<string?>("--on") { Description = "What it was set on", HelpName = "TEXT" };
        var command = new Command("instrument", "Puts an instrument into the list, or sets a gauge. Example: gudgeon instrument bg --sort bg --u 0.006 --set-to 86 --on ring") { id, tool, name, u, resolution, zero, on };
        line.OnBook(command, (parsed, book) =>
        {
            var json = line.Json(parsed);
            if (ToolSorts.Find(parsed.GetRequiredValue(tool)) is not { Expanded: not null } sort)
                return line.Desk.Refuse(json, [new Refusal("--sort", $"\"{parsed.GetValue(tool)}\"", string.Join(", ", ToolSorts.All.Where(t => t.Expanded is not null).Select(t => t.Id)), "Choose one of these")]);
            var key = parsed.GetRequiredValue(id);
            var faults = new List<Refusal>();
            var (own, step, size) = (MeasureCommands.Figure(book, parsed, u, sort.Unit, faults), MeasureCommands.Figure(book, parsed, resolution, sort.Unit, faults), MeasureCommands.Figure(book, parsed, zero, sort.Unit, faults));
            if (faults.Count > 0)
                return line.Desk.Refuse(json, faults);
            var entries = new List<Entry> { new InstrumentKept(key, parsed.GetValue(name) ?? sort.Name, sort.Id, sort.Unit, step ?? sort.Resolution!.Value, own ?? sort.Expanded.Value) };
            if (size is { } at)
                entries.Add(new GaugeZeroed(key, at, parsed.GetRequiredValue(zero)!, parsed.GetValue(on) ?? ""));
            return line.Desk.Show(json, book, book.Submit(line.Desk.Sending(), new Tell([.. entries])));
        });
        return command;
    }

    public static Command Limit(CommandLine line)
    {
        var what = new Argument<string>("characteristic") { Description = "What the limit is for" };
        var low = new Option<string?>("--low") { Description = "At least", HelpName = "FIGURE" };
        var high = new Option<string?>("--high") { Description = "At most", HelpName = "FIGURE" };
        var spread = new Option<string?>("--spread") { Description = "Within a set, at most this far apart", HelpName = "FIGURE" };
        var isNew = new Option<bool>("--new") { Description = "For a new or rebuilt part; else for one in service" };
        var source = new Option<string>("--source") { Description = "Book or sheet", HelpName = "TEXT", Required = true };
        var page = new Option<string?>("--page") { Description = "Page in it", HelpName = "PAGE" };
        var grades = new Option<string?>("--grades") { Description = "Size grades in place of limits, parted by semicolons, as A 85.990 86.000; B 86.000 86.010", HelpName = "TABLE" };
        var command = new Command("limit", "Types a limit with where it comes from. Example: gudgeon limit bore --low 85.99 --high 86.03 --source \"workshop manual\" --page 41") { what, low, high, spread, grades, isNew, source, page };
        line.OnBook(command, (parsed, book) =>
        {
            var json = line.Json(parsed);
            if (Characteristics.Find(parsed.GetRequiredValue(what)) is not { } characteristic)
                return line.Desk.Refuse(json, [new Refusal("characteristic", $"\"{parsed.GetValue(what)}\"", "one of the list", "Look at gudgeon measure PART for its name")]);
            var faults = new List<Refusal>();
            double? Side(Option<string?> option) => MeasureCommands.Figure(book, parsed, option, characteristic.Unit, faults);
            if (parsed.GetValue(grades) is { } table)
            {
                var read = book.Read(bench => GradeChooser.Read(table, characteristic.Unit, bench.Units));
                return read.TryGet(out var rows)
                    ? line.Desk.Show(json, book, book.Submit(line.Desk.Sending(), new Tell(new GradesSet(characteristic.Id, rows, characteristic.Unit, parsed.GetRequiredValue(source), parsed.GetValue(page) ?? ""))))
                    : line.Desk.Refuse(json, read.Refusals);
            }

            var limit = new LimitSet(characteristic.Id, [], parsed.GetValue(isNew) ? LimitState.New : LimitState.Service, Side(low), Side(high), Side(spread), characteristic.Unit,
                string.Join(" to ", new[] { parsed.GetValue(low), parsed.GetValue(high) }.Where(t => t is not null)), parsed.GetRequiredValue(source), parsed.GetValue(page) ?? "");
            return faults.Count > 0 ? line.Desk.Refuse(json, faults) : line.Desk.Show(json, book, book.Submit(line.Desk.Sending(), new Tell(limit)));
        });
        return command;
    }
}
