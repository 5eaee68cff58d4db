using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text.Json.Nodes;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>Readings in, verdicts and budgets out.</summary>
public static class MeasureCommands
{
    public static void Add(CommandLine line)
    {
        line.Root.Subcommands.Add(Measure(line));
        line.Root.Subcommands.Add(Verdict(line));
        line.Root.Subcommands.Add(Budget(line));
        line.Root.Subcommands.Add(Instrument(line));
        line.Root.Subcommands.Add(Limit(line));
        line.Root.Subcommands.Add(Sums(line));
    }

    private static Command Measure(CommandLine line)
    {
        var part = new Argument<string?>("part") { Description = "The part", Arity = ArgumentArity.ZeroOrOne };
        var what = new Argument<string?>("characteristic") { Description = "What is read, as bore or main-journal", Arity = ArgumentArity.ZeroOrOne };
        var readings = new Argument<string[]>("readings") { Description = "Readings as SPOT=FIGURE, as top.across=86.012; a bare figure where there is one spot", Arity = ArgumentArity.ZeroOrMore };
        var place = new Option<int>("--place") { Description = "Which one along the part, as bore 3 of a block", DefaultValueFactory = _ => 1, HelpName = "N" };
        var with = new Option<string?>("--with") { Description = "Id of the instrument", HelpName = "ID" };
        var partC = new Option<double?>("--part-c") { Description = "Temperature of the part in °C", HelpName = "C" };
        var gaugeC = new Option<double?>("--gauge-c") { Description = "Temperature of the gauge in °C", HelpName = "C" };
        var notHere = new Option<string?>("--not-applicable") { Description = "It does not apply to this engine, because of this", HelpName = "WHY" };
        var everywhere = new Option<bool>("--everywhere") { Description = "With --not-applicable: on every part that carries it" };
        var command = new Command("measure", "Records readings; without any, lists what is read where on the part. Example: gudgeon measure block bore --place 3 top.across=86.012 top.along=86.004 --with bg") { part, what, readings, place, with, partC, gaugeC, notHere, everywhere };
        line.OnBook(command, (parsed, book) =>
        {
            var json = line.Json(parsed);
            if (parsed.GetValue(part) is not { } words)
                return Started(line, json, book);
            var named = book.Read(bench => Naming.Part(bench, words));
            if (!named.TryGet(out var id))
                return line.Desk.Refuse(json, named.Refusals);
            if (parsed.GetValue(notHere) is { } why)
                return line.Desk.Show(json, book, book.Submit(line.Desk.Sending(), new Tell(new NotApplicable(parsed.GetValue(what) ?? "", parsed.GetValue(everywhere) ? [] : [id], why.Trim()))));
            if (parsed.GetValue(readings) is not { Length: > 0 } texts || parsed.GetValue(what) is not { } characteristic)
                return OfPart(line, json, book, id, parsed.GetValue(what));
            var requests = texts.Select(t => t.Split('=', 2)).Select(t => (Request)new TakeReading(
                new Slot(id, characteristic, parsed.GetValue(place), t.Length == 2 ? t[0] : "one"), t[^1], parsed.GetValue(with), parsed.GetValue(partC), parsed.GetValue(gaugeC))).ToArray();
            return line.Desk.Show(json, book, book.Submit(line.Desk.Sending(), requests));
        });
        return command;
    }

    private static int Started(CommandLine line, bool json, Book book)
    {
        var rows = book.Read(bench => new Assessor(bench).Started().Select(Row).ToArray());
        return line.Desk.Show(json, "measured", new JsonObject { ["figures"] = new JsonArray([.. rows.SelectMany(r => r.Json)]) },
            rows.SelectMany(r => r.Lines).DefaultIfEmpty("Nothing is measured yet. See gudgeon measure PART for what can be."));
    }

    private static int OfPart(CommandLine line, bool json, Book book, string part, string? what)
    {
        var there = book.Read(bench => bench.Places.On(bench.Engine.Parts[part])
            .Where(x => x.Characteristic.IsRead && (what is null || x.Characteristic.Id.StartsWith(what, StringComparison.OrdinalIgnoreCase))).ToArray());
        var facts = new JsonObject
        {
            ["part"] = part,
            ["characteristics"] = new JsonArray([.. there.Select(x => new JsonObject
            {
                ["characteristic"] = x.Characteristic.Id,
                ["name"] = x.Characteristic.Name,
                ["unit"] = x.Characteristic.Unit,
                ["places"] = x.Places.Count,
                ["spots"] = new JsonArray([.. x.Characteristic.Spots.Select(s => JsonValue.Create(s.Id))]),
            })]),
        };
        return line.Desk.Show(json, "measurable", facts, there.Select(x =>
            $"{x.Characteristic.Id,-24} {x.Characteristic.Name}{(x.Places.Count > 1 ? $", {x.Places.Count} places" : "")}: {string.Join(' ', x.Characteristic.Spots.Select(s => s.Id))}"));
    }

    private static Command Verdict(CommandLine line)
    {
        var part = new Argument<string?>("part") { Description = "The part; all that is measured without it", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("verdict", "Judges what was measured against the limits that were typed. Ends with 1 when a figure is out or too close to call. Example: gudgeon verdict crank") { part };
        line.OnBook(command, (parsed, book) =>
        {
            var json = line.Json(parsed);
            var named = parsed.GetValue(part) is { } words ? book.Read(bench => Naming.Part(bench, words)) : Outcome.Of("");
            if (!named.TryGet(out var id))
                return line.Desk.Refuse(json, named.Refusals);
            var rows = book.Read(bench =>
            {
                var assessor = new Assessor(bench);
                return (id.Length == 0 ? assessor.Started() : assessor.Sheet(id)).Where(a => a.IsStarted).Select(a => (a.Call, Row: Row(a))).ToArray();
            });
            var facts = new JsonObject { ["figures"] = new JsonArray([.. rows.SelectMany(r => r.Row.Json)]) };
            return line.Desk.Show(json, "verdict", facts, rows.SelectMany(r => r.Row.Lines).DefaultIfEmpty("Nothing is measured there yet."),
                rows.Any(r => r.Call >= Call.TooCloseToCall) ? Exit.Refused : Exit.Done);
        });
        return command;
    }

    private static Command Budget(CommandLine line)
    {
        var part = new Argument<string>("part") { Description = "The part" };
        var what = new Argument<string>("characteristic") { Description = "What was measured or worked out" };
        var place = new Option<int>("--place") { Description = "Which one along the part", DefaultValueFactory = _ => 1, HelpName = "N" };
        var command = new Command("budget", "Shows what the uncertainty of a figure is made of, and its working. Example: gudgeon budget block bore-taper --place 3") { part, what, place };
        line.OnBook(command, (parsed, book) =>
        {
            var json = line.Json(parsed);
            var found = book.Read(bench => Naming.Part(bench, parsed.GetRequiredValue(part)).Then(id => Place(bench, id, parsed.GetRequiredValue(what), parsed.GetValue(place)))
                .Then(a => Outcome.Of((Assessment: a, Trial: new Assessor(bench).Trial(a.Characteristic, a.Place)))));
            if (!found.TryGet(out var shown))
                return line.Desk.Refuse(json, found.Refusals);
            var facts = new JsonObject { ["figures"] = new JsonArray([.. shown.Assessment.Figures.Select(f => BudgetJson(shown.Assessment, f))]) };
            var lines = shown.Assessment.Figures.SelectMany(f => BudgetLines(shown.Assessment, f)).DefaultIfEmpty("Nothing is measured there yet.");
            if (shown.Trial is var (run, beside))
            {
                var (low, high) = run.Symmetric(0.95);
                facts["trial"] = new JsonObject { ["mean"] = run.Mean, ["u_standard"] = run.StandardUncertainty, ["low_95"] = low, ["high_95"] = high, ["first_order_serves"] = beside.FirstOrderServes };
                lines = lines.Append($"    By 100,000 draws (JCGM 101): mean {run.Mean:G6}, u {run.StandardUncertainty:G3}, 95 % between {low:G6} and {high:G6}; first order {(beside.FirstOrderServes ? "serves" : "does not serve: take these")}");
            }

            return line.Desk.Show(json, "budget", facts, lines);
        });
        return command;
    }

    private static Outcome<Assessment> Place(Bench bench, string part, string what, int number)
    {
        if (Characteristics.Find(what) is not { } characteristic)
            return Outcome.Refused<Assessment>(new Refusal("characteristic", $"\"{what}\"", "one of the list", "Look at gudgeon measure PART for its name"));
        return bench.Places.On(bench.Engine.Parts[part], characteristic).FirstOrDefault(p => p.Number == number) is { } place
            ? Outcome.Of(new Assessor(bench).Of(characteristic, place))
            : Outcome.Refused<Assessment>(new Refusal(bench.NameOf(part), $"{characteristic.Name}, place {number}", "a place that is there", "Look at gudgeon measure PART"));
    }

    private static Command Instrument(CommandLine line)
    {
        var id = new Argument<string>("id") { Description = "Short id to call it by" };
        var tool = new Option<string>("--sort") { Description = $"Sort: {string.Join(", ", ToolSorts.All.Where(t => t.Expanded is not null).Select(t => t.Id))}", HelpName = "SORT", Required = true };
        var name = new Option<string?>("--name") { Description = "What you call it", HelpName = "TEXT" };
        var u = new Option<double?>("--u") { Description = "U (k = 2) of one reading in your hands; else the usual guess of its sort", HelpName = "U" };
        var resolution = new Option<double?>("--resolution") { Description = "Smallest step", HelpName = "STEP" };
        var zero = new Option<double?>("--set-to") { Description = "It was set to this size", HelpName = "SIZE" };
        var on = new Option<string?>("--on") { Description = "What it was set on", HelpName = "TEXT" };
        var command = new Command("instrument", "Puts an instrument into the list, or sets a gauge. Example: gudgeon instrument bg --sort bg --u 0.006 --set-to 86 --on ring") { id, tool, name, u, resolution, zero, on };
        line.OnBook(command, (parsed, book) =>
        {
            var json = line.Json(parsed);
            if (ToolSorts.Find(parsed.GetRequiredValue(tool)) is not { Expanded: not null } sort)
                return line.Desk.Refuse(json, [new Refusal("--sort", $"\"{parsed.GetValue(tool)}\"", string.Join(", ", ToolSorts.All.Where(t => t.Expanded is not null).Select(t => t.Id)), "Choose one of these")]);
            var key = parsed.GetRequiredValue(id);
            var entries = new List<Entry> { new InstrumentKept(key, parsed.GetValue(name) ?? sort.Name, sort.Id, sort.Unit, parsed.GetValue(resolution) ?? sort.Resolution!.Value, parsed.GetValue(u) ?? sort.Expanded.Value) };
            if (parsed.GetValue(zero) is { } size)
                entries.Add(new GaugeZeroed(key, size, Units.Plain(size), parsed.GetValue(on) ?? ""));
            return line.Desk.Show(json, book, book.Submit(line.Desk.Sending(), new Tell([.. entries])));
        });
        return command;
    }

    private static Command Limit(CommandLine line)
    {
        var what = new Argument<string>("characteristic") { Description = "What the limit is for" };
        var low = new Option<string?>("--low") { Description = "At least", HelpName = "FIGURE" };
        var high = new Option<string?>("--high") { Description = "At most", HelpName = "FIGURE" };
        var spread = new Option<string?>("--spread") { Description = "Within a set, at most this far apart", HelpName = "FIGURE" };
        var isNew = new Option<bool>("--new") { Description = "For a new or rebuilt part; else for one in service" };
        var source = new Option<string>("--source") { Description = "Book or sheet", HelpName = "TEXT", Required = true };
        var page = new Option<string?>("--page") { Description = "Page in it", HelpName = "PAGE" };
        var command = new Command("limit", "Types a limit with where it comes from. Example: gudgeon limit bore --low 85.99 --high 86.03 --source \"workshop manual\" --page 41") { what, low, high, spread, isNew, source, page };
        line.OnBook(command, (parsed, book) =>
        {
            var json = line.Json(parsed);
            if (Characteristics.Find(parsed.GetRequiredValue(what)) is not { } characteristic)
                return line.Desk.Refuse(json, [new Refusal("characteristic", $"\"{parsed.GetValue(what)}\"", "one of the list", "Look at gudgeon measure PART for its name")]);
            var faults = new List<Refusal>();
            double? Side(Option<string?> option)
            {
                if (parsed.GetValue(option) is not { } text)
                    return null;
                var read = book.Read(bench => SpotText.Read(text, characteristic.Unit, bench.Units, null, option.Name));
                faults.AddRange(read.Refusals);
                return read.Ok ? read.Value : null;
            }

            var limit = new LimitSet(characteristic.Id, [], parsed.GetValue(isNew) ? LimitState.New : LimitState.Service, Side(low), Side(high), Side(spread), characteristic.Unit,
                string.Join(" to ", new[] { parsed.GetValue(low), parsed.GetValue(high) }.Where(t => t is not null)), parsed.GetRequiredValue(source), parsed.GetValue(page) ?? "");
            return faults.Count > 0 ? line.Desk.Refuse(json, faults) : line.Desk.Show(json, book, book.Submit(line.Desk.Sending(), new Tell(limit)));
        });
        return command;
    }

    private static Command Sums(CommandLine line)
    {
        var find = new Argument<string?>("word") { Description = "Only those with this word in them", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("sums", "Lists every sum with its formula, where it holds and its source. Example: gudgeon sums torque") { find };
        command.SetAction(parsed =>
        {
            var word = parsed.GetValue(find) ?? "";
            var sums = SumCatalogue.All.Where(s => $"{s.Id} {s.Title}".Contains(word, StringComparison.OrdinalIgnoreCase)).ToArray();
            var facts = new JsonObject
            {
                ["sums"] = new JsonArray([.. sums.Select(s => new JsonObject
                {
                    ["id"] = s.Id,
                    ["title"] = s.Title,
                    ["formula"] = s.Formula,
                    ["unit"] = s.ResultUnit,
                    ["valid"] = s.ValidRange,
                    ["source"] = s.Source,
                    ["inputs"] = new JsonArray([.. s.Inputs.Select(i => new JsonObject { ["symbol"] = i.Symbol, ["meaning"] = i.Meaning, ["unit"] = i.Unit })]),
                    ["check"] = new JsonObject { ["given"] = s.Worked.Given, ["expected"] = s.Worked.Expected, ["origin"] = s.Worked.Origin },
                })]),
            };
            return line.Desk.Show(line.Json(parsed), "sums", facts, sums.SelectMany(s => new[] { $"{s.Id}: {s.Title}", $"    {s.Formula}  [{s.ResultUnit}]", $"    {s.ValidRange}. Source: {s.Source}" }).DefaultIfEmpty("No sum has that word."));
        });
        return command;
    }

    private static (IEnumerable<string> Lines, IEnumerable<JsonNode> Json) Row(Assessment a) => (
        a.Figures.Select(f => $"{Name(a, f)}: {f.Shown} {f.ShownUncertainty}".TrimEnd() + $", {f.Call.Words()}{(f.Next.Length > 0 ? $". {f.Next}" : "")}{string.Concat(f.Thumbs.Select(t => $" [rule of thumb, {Thumb.Mark}: {t.Word.Words()}; {t.Band}]"))}").ToArray(),
        a.Figures.Select(f => (JsonNode)Json(a, f)).ToArray());

    private static string Name(Assessment a, JudgedFigure f) =>
        $"{a.Place.Name}, {a.Characteristic.Name}{(f.Spot.Length > 0 ? a.Characteristic.FindSpot(f.Spot) is { Id: not "one" } spot ? $", {spot.Name}" : "" : a.Figures.Count > 1 ? $", {f.Name}" : "")}";

    private static JsonObject Json(Assessment a, JudgedFigure f) => new()
    {
        ["part"] = a.Place.Part,
        ["place"] = a.Place.Number,
        ["characteristic"] = a.Characteristic.Id,
        ["spot"] = f.Spot,
        ["value"] = f.Value,
        ["unit"] = f.Unit,
        ["u_expanded"] = f.Expanded,
        ["call"] = f.Call.Words(),
        ["probability"] = f.Probability,
        ["next"] = f.Next,
        ["thumbs"] = new JsonArray([.. f.Thumbs.Select(t => new JsonObject { ["applies_to"] = t.Thumb.AppliesTo, ["says"] = t.Word.Words(), ["band"] = t.Band, ["source"] = Thumb.Mark })]),
    };

    private static JsonObject BudgetJson(Assessment a, JudgedFigure f)
    {
        var json = Json(a, f);
        json["formula"] = f.Working.Formula;
        json["source"] = f.Working.Source;
        json["lines"] = new JsonArray([.. (f.Budget?.Lines ?? []).Select(l => new JsonObject { ["cause"] = l.Name, ["u_standard"] = l.StandardUncertainty, ["basis"] = l.Basis })]);
        json["u_standard"] = f.Budget?.StandardUncertainty;
        return json;
    }

    private static IEnumerable<string> BudgetLines(Assessment a, JudgedFigure f)
    {
        yield return $"{Name(a, f)}: {f.Shown} {f.ShownUncertainty}".TrimEnd();
        yield return $"    {f.Working.Formula}";
        foreach (var input in f.Working.Inputs)
            yield return $"    {input.Symbol} = {Units.Plain(input.Value)} {input.Unit}, {input.Meaning}{(input.AsTyped is { } typed ? $", typed \"{typed}\"" : "")}";
        foreach (var line in f.Budget?.Lines ?? [])
            yield return $"    u {line.StandardUncertainty:G3}  {line.Name} ({line.Basis})";
        yield return f.Budget is { } budget ? $"    u {budget.StandardUncertainty:G3} together; U {budget.Expanded():G3} with k = 2. Source: {f.Working.Source}" : "    no instrument named: no uncertainty";
    }
}
