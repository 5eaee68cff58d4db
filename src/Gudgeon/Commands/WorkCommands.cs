using System.CommandLine;
using System.Text.Json.Nodes;
using Gudgeon.Journal;
using Gudgeon.Pages.Measure.Work;
using Gudgeon.Sums;
using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Commands;

/// <summary>The sums that have a page of their own, by command: fits, shapes, how well one repeats.</summary>
internal static class WorkCommands
{
    public static Command Fit(CommandLine line)
    {
        var size = new Argument<string>("size") { Description = "Nominal size" };
        var classes = new Argument<string>("fit") { Description = "Hole and shaft, as H7/p6" };
        var command = new Command("fit", "Limits of a hole and a shaft by ISO 286, and their clearance. Example: gudgeon fit 36 H7/p6") { size, classes };
        command.SetAction(parsed =>
        {
            var json = line.Json(parsed);
            var outcome = FitView.Of(parsed.GetRequiredValue(size), parsed.GetRequiredValue(classes), BookUnits.Metric);
            if (!outcome.TryGet(out var view))
                return line.Desk.Refuse(json, outcome.Refusals);
            var facts = new JsonObject
            {
                ["hole_low_mm"] = view.HoleMm.Low,
                ["hole_high_mm"] = view.HoleMm.High,
                ["shaft_low_mm"] = view.ShaftMm.Low,
                ["shaft_high_mm"] = view.ShaftMm.High,
                ["clearance_low_mm"] = Math.Round(view.Fit.SmallestClearance.Millimetres, 7),
                ["clearance_high_mm"] = Math.Round(view.Fit.LargestClearance.Millimetres, 7),
                ["source"] = Source,
            };
            return line.Desk.Show(json, "fit", facts, [$"hole {view.Hole}   {FitView.Band(view.HoleMm)}", $"shaft {view.Shaft}  {FitView.Band(view.ShaftMm)}", $"This fit is {view.Words}.", $"Source: {Source}"]);
        });
        return command;
    }

    private const string Source = "ISO 286-1:2010 and ISO 286-2:2010, tables; d and e from memory";

    public static Command Shape(CommandLine line)
    {
        var kind = new Argument<string>("kind") { Description = $"{string.Join(", ", ShapeAsked.Kinds.Keys)}" };
        var file = new Argument<string>("file") { Description = "File with the readings: rows as on the page; for a Union Jack its eight lines in the order of the page" };
        var unit = new Option<string?>("--unit") { Description = "Unit of the readings: um, mm, thou; for a Union Jack s, s10, um, mm", HelpName = "UNIT" };
        var radius = new Option<string?>("--radius") { Description = "Radius that the readings are taken from, mm", HelpName = "MM" };
        var foot = new Option<string?>("--foot") { Description = "Length of the foot, mm", HelpName = "MM" };
        var command = new Command("shape", "Roundness, cylinder or flatness from readings, by least squares and by the narrowest zone. Example: gudgeon shape roundness bore1.txt --radius 43") { kind, file, unit, radius, foot };
        command.SetAction(parsed =>
        {
            var json = line.Json(parsed);
            var wanted = parsed.GetRequiredValue(kind);
            if (!ShapeAsked.Kinds.ContainsKey(wanted))
                return line.Desk.Refuse(json, [new Refusal("kind", $"\"{wanted}\"", string.Join(", ", ShapeAsked.Kinds.Keys), "Choose one of these")]);
            if (!File.Exists(parsed.GetRequiredValue(file)))
                return line.Desk.Refuse(json, [new Refusal("file", $"\"{parsed.GetValue(file)}\", which is not there", "a file with the readings", "Look at its name")]);
            var units = wanted == "union-jack" ? ShapeAsked.Slopes : ShapeAsked.Units;
            var said = parsed.GetValue(unit) ?? units.Keys.First();
            if (!units.ContainsKey(said))
                return line.Desk.Refuse(json, [new Refusal("--unit", $"\"{said}\"", string.Join(", ", units.Keys), "Choose one of these")]);
            var text = File.ReadAllText(parsed.GetRequiredValue(file));
            var lines = text.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            var walks = ShapeAsked.Walks.Select((w, i) => (w.Id, Text: wanted == "union-jack" && i < lines.Length ? lines[i] : "")).ToDictionary(w => w.Id, w => w.Text);
            var outcome = new ShapeAsked(wanted, "", text, said, parsed.GetValue(radius) ?? "", parsed.GetValue(foot) ?? "", walks).View(BookUnits.Metric);
            if (!outcome.TryGet(out var view))
                return line.Desk.Refuse(json, outcome.Refusals);
            var facts = new JsonObject { ["kind"] = wanted, ["figures"] = new JsonArray([.. view.Lines.Select(l => new JsonObject { ["name"] = l.Name, ["figure"] = l.Figure })]), ["source"] = view.Source };
            return line.Desk.Show(json, "shape", facts, view.Lines.Select(l => $"{l.Name}: {l.Figure}").Append($"Source: {view.Source}"));
        });
        return command;
    }

    public static Command Repeats(CommandLine line)
    {
        var id = new Argument<string>("id") { Description = "Id of the instrument" };
        var file = new Option<string?>("--table") { Description = "A gauge study from a file instead: a line for each reading, with part, person and figure", HelpName = "FILE" };
        var command = new Command("repeats", "How well you repeat with an instrument, from the readings of the book; a gauge study where several days or persons have it. Example: gudgeon repeats bg") { id, file };
        line.OnBook(command, (parsed, book) =>
        {
            var json = line.Json(parsed);
            var name = parsed.GetRequiredValue(id);
            var found = book.Read(bench => bench.Instruments.TryGetValue(name, out var kept)
                ? Outcome.Of(Journal.Repeats.Of(bench, kept))
                : Outcome.Refused<Repeats>(new Refusal("instrument", $"\"{name}\"", bench.Instruments.Count == 0 ? "an instrument of your list; it is empty" : $"one of {string.Join(", ", bench.Instruments.Keys)}", "Put it into the list of instruments first")));
            if (!found.TryGet(out var repeats))
                return line.Desk.Refuse(json, found.Refusals);
            var study = repeats.Days?.Table;
            if (parsed.GetValue(file) is { } path)
            {
                if (!File.Exists(path))
                    return line.Desk.Refuse(json, [new Refusal("--table", $"\"{path}\", which is not there", "a file with the readings", "Look at its name")]);
                var read = StudyTable.Read(File.ReadAllText(path));
                if (!read.TryGet(out study))
                    return line.Desk.Refuse(json, read.Refusals);
            }

            var facts = new JsonObject { ["instrument"] = name, ["spots"] = repeats.Spots.Count, ["deviation"] = repeats.Pooled?.Deviation, ["freedom"] = repeats.Pooled?.Freedom, ["deviation_by_range"] = repeats.ByRange, ["unit"] = repeats.Instrument.Unit };
            var lines = new List<string>
            {
                repeats.Pooled is var (deviation, freedom)
                    ? $"One reading scatters by {Show(deviation, repeats)}, pooled over {repeats.Spots.Count} spots, {freedom} degrees of freedom{(repeats.ByRange is { } range ? $"; {Show(range, repeats)} by the ranges" : "")}"
                    : "No spot is read twice with it yet.",
            };
            if (study is not null)
                facts["study"] = Study(study, repeats, lines);
            if (repeats.Persons is { } persons)
                facts["study_by_person"] = Study(persons.Table, repeats, lines);
            return line.Desk.Show(json, "repeats", facts, lines);
        });
        return command;
    }

    private static JsonObject Study(StudyTable study, Repeats repeats, List<string> lines)
    {
        var (anova, _) = GaugeStudy.ByAnova(study.Readings);
        var byRange = study.SuitsRange ? GaugeStudy.ByRange(study.Readings) : null;
        lines.Add($"Gauge study of {study.Parts.Count} parts by {string.Join(", ", study.Operators)}, {study.Readings.GetLength(2)} readings of each:");
        lines.Add($"    by analysis of variance: repeats {Show(Math.Sqrt(anova.Repeatability), repeats)}, between {Show(Math.Sqrt(anova.Reproducibility), repeats)}, measuring {anova.GaugeShare * 100:0.0} % of all");
        if (byRange is not null)
            lines.Add($"    by average and range: repeats {Show(Math.Sqrt(byRange.Repeatability), repeats)}, between {Show(Math.Sqrt(byRange.Reproducibility), repeats)}, measuring {byRange.GaugeShare * 100:0.0} % of all");
        return new JsonObject { ["parts"] = study.Parts.Count, ["operators"] = study.Operators.Count, ["trials"] = study.Readings.GetLength(2), ["anova"] = Json(anova), ["range"] = byRange is null ? null : Json(byRange) };
    }

    private static JsonObject Json(GaugeStudy study) => new()
    {
        ["repeatability"] = Math.Sqrt(study.Repeatability),
        ["reproducibility"] = Math.Sqrt(study.Reproducibility),
        ["gauge"] = Math.Sqrt(study.Gauge),
        ["part"] = Math.Sqrt(study.Part),
        ["gauge_share"] = study.GaugeShare,
    };

    private static string Show(double u, Repeats repeats) => Units.Joined(u > 0 ? Figures.To(u, u) : "0", repeats.Instrument.Unit);
}
