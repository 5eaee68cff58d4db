using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text.Json.Nodes;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>Verdicts, and what stands behind a figure.</summary>
internal static class VerdictCommands
{
    public static Command Verdict(CommandLine line)
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

    public static Command Budget(CommandLine line)
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

    public static (IEnumerable<string> Lines, IEnumerable<JsonNode> Json) Row(Assessment a) => (
        a.Figures.Select(f => $"{Name(a, f)}: {f.Shown} {f.ShownUncertainty}".TrimEnd() + $", {f.Call.Words()}{(f.Grade.Length > 0 ? $", {f.Grade}" : "")}{(f.Next.Length > 0 ? $". {f.Next}" : "")}{string.Concat(f.Thumbs.Select(t => $" [rule of thumb, {Thumb.Mark}: {t.Word.Words()}; {t.Band}]"))}").ToArray(),
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
        ["grade"] = f.Grade,
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
