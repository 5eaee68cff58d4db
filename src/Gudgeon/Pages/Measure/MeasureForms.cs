using System.Globalization;
using Gudgeon.Engine;
using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Sums;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Pages.Measure;

/// <summary>Forms of the Measure pages, understood once, at the door.</summary>
internal static class MeasureForms
{
    /// <summary>One reading, or a column of them from a spreadsheet: a line for each spot from the one asked for on.</summary>
    public static Outcome<IReadOnlyList<Request>> Readings(Bench bench, KeypadAsked asked, string text, string meant)
    {
        var faults = new List<Refusal>();
        var partC = Temperature(bench, asked.PartC, "temperature of the part", faults);
        var gaugeC = Temperature(bench, asked.GaugeC, "temperature of the gauge", faults);
        if (faults.Count > 0)
            return Outcome.Refused<IReadOnlyList<Request>>(faults);
        var lines = text.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (lines.Length <= 1)
            return Outcome.Of<IReadOnlyList<Request>>([new TakeReading(new Slot(asked.Part, asked.Characteristic, asked.Place, asked.Spot), text, Instrument(asked), partC, gaugeC, meant, asked.By)]);
        var spots = KeypadView.SpotsFrom(bench, asked);
        if (lines.Length > spots.Count)
            return Outcome.Refused<IReadOnlyList<Request>>(new Refusal("the column", $"{lines.Length} readings", $"at most {spots.Count}, one for each spot from here on", "Paste those of this part only"));
        return Outcome.Of<IReadOnlyList<Request>>([.. lines.Zip(spots, (line, slot) => new TakeReading(slot, line, Instrument(asked), partC, gaugeC, By: asked.By))]);
    }

    public static IReadOnlyList<Request> Zero(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var (instrument, size, drift) = (form.Text("instrument"), form.Text("size"), form.Text("drift"));
        if (!visit.Bench.Instruments.TryGetValue(instrument, out var kept))
        {
            refusals.Add(new Refusal("instrument", $"\"{instrument}\"", "one of your list", "Put it into the list of instruments first"));
            return [];
        }

        if (drift.Length > 0 && visit.Bench.ZeroOf(instrument)?.Setting is { } setting)
            return Number(visit.Bench, drift, kept.Unit, "what it shows on the ring now", refusals) is { } off ? [new Tell(setting with { Drift = off })] : [];
        var at = Number(visit.Bench, size, kept.Unit, "size that the gauge is set to", refusals);
        var u = form.Text("u").Length == 0 ? null : Number(visit.Bench, form.Text("u"), kept.Unit, "U of the ring or block", refusals);
        return refusals.Count > 0 ? [] : [new Tell(new GaugeZeroed(instrument, at!.Value, size, form.Text("on"), u))];
    }

    public static IReadOnlyList<Request> Aside(IFormCollection form, List<Refusal> refusals) =>
        Reading(form, refusals) is { } number ? [new Tell(new ReadingSetAside(number, form.Text("why") is { Length: > 0 } why ? why : "looked like a slip"))] : [];

    public static IReadOnlyList<Request> Meant(IFormCollection form, List<Refusal> refusals) =>
        Reading(form, refusals) is { } number ? [new MeanOtherwise(number)] : [];

    public static IReadOnlyList<Request> Stands(IFormCollection form, List<Refusal> refusals) =>
        Reading(form, refusals) is { } number ? [new Tell(new ReadingStands(number))] : [];

    public static IReadOnlyList<Request> Instrument(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var tool = ToolSorts.Find(form.Text("tool"));
        var name = form.Text("name") is { Length: > 0 } given ? given : tool?.Name ?? "";
        var unit = form.Text("unit") is { Length: > 0 } said ? said : tool is { Unit.Length: > 0 } ? tool.Unit : "mm";
        double? Field(string field, string where) => form.Text(field).Length == 0 ? null : Number(visit.Bench, form.Text(field), unit, where, refusals);
        var resolution = Field("resolution", "resolution") ?? tool?.Resolution ?? 0;
        var expanded = Field("u", "U of one reading") ?? tool?.Expanded ?? 0;
        var k = form.Text("k").Length == 0 ? 2 : Number(visit.Bench, form.Text("k"), "1", "k of that U", refusals) ?? 2;
        var error = Field("error", "error by the certificate");
        var certificate = Field("certificate", "U of the certificate");
        if (refusals.Count > 0)
            return [];
        var wanted = Visit.IdOf(name);
        var id = form.Text("id") is { Length: > 0 } old ? old : wanted;
        for (var i = 2; form.Text("id").Length == 0 && visit.Bench.Instruments.ContainsKey(id); i++)
            id = $"{wanted}-{i}";
        return [new Tell(new InstrumentKept(id, name, tool?.Id ?? "", unit, resolution, expanded, k, form.Text("calibrated"), error, certificate))];
    }

    public static IReadOnlyList<Request> Gone(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        if (visit.Bench.Instruments.TryGetValue(form.Text("id"), out var kept))
            return [new Tell(kept with { Gone = true })];
        refusals.Add(new Refusal("instrument", $"\"{form.Text("id")}\"", "one of your list", "Look at the list again"));
        return [];
    }

    public static IReadOnlyList<Request> Habits(Visit visit, IFormCollection form)
    {
        var entries = new List<Entry>();
        var units = form.Text("units") == "inch" ? BookUnits.Inch : BookUnits.Metric;
        if (units != visit.Bench.Units)
            entries.Add(new UnitsChosen(units));
        if (RuleChosen.Rules.TryGetValue(form.Text("rule"), out var rule) && rule != visit.Bench.Rule)
            entries.Add(new RuleChosen(form.Text("rule")));
        return entries.Count == 0 ? [] : [new Tell([.. entries])];
    }

    public static IReadOnlyList<Request> Limit(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        if (Characteristics.Find(form.Text("characteristic")) is not { } characteristic)
        {
            refusals.Add(new Refusal("what the limit is for", $"\"{form.Text("characteristic")}\"", "something of the list", "Choose it from the list"));
            return [];
        }

        double? Side(string field, string where) => form.Text(field).Length == 0 ? null : Number(visit.Bench, form.Text(field), characteristic.Unit, where, refusals);
        var (low, high, spread) = (Side("low", "lower limit"), Side("high", "upper limit"), Side("spread", "spread of the set"));
        if (refusals.Count > 0)
            return [];
        var typed = string.Join(" to ", new[] { form.Text("low"), form.Text("high") }.Where(t => t.Length > 0));
        return
        [
            new Tell(new LimitSet(characteristic.Id, [.. form["part"].Where(p => p is { Length: > 0 }).Select(p => p!)], form.Text("state") == "new" ? LimitState.New : LimitState.Service,
                low, high, spread, characteristic.Unit, typed.Length > 0 ? typed : form.Text("spread"), form.Text("source"), form.Text("page"))),
        ];
    }

    public static IReadOnlyList<Request> Grades(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        if (Characteristics.Find(form.Text("characteristic")) is not { } characteristic)
        {
            refusals.Add(new Refusal("what the grades are for", $"\"{form.Text("characteristic")}\"", "something of the list", "Choose it from the list"));
            return [];
        }

        var read = GradeChooser.Read(form.Text("grades"), characteristic.Unit, visit.Bench.Units);
        refusals.AddRange(read.Refusals);
        return read.TryGet(out var grades) ? [new Tell(new GradesSet(characteristic.Id, grades, characteristic.Unit, form.Text("source"), form.Text("page")))] : [];
    }

    private static string? Instrument(KeypadAsked asked) => asked.With.Length > 0 ? asked.With : null;

    private static double? Number(Bench bench, string text, string unit, string where, List<Refusal> refusals)
    {
        var read = SpotText.Read(text, unit, bench.Units, null, where);
        refusals.AddRange(read.Refusals);
        return read.Ok ? read.Value : null;
    }

    private static double? Temperature(Bench bench, string text, string where, List<Refusal> refusals) =>
        text.Length == 0 ? null : Number(bench, text, "C", where, refusals);

    private static long? Reading(IFormCollection form, List<Refusal> refusals)
    {
        if (long.TryParse(form.Text("reading"), NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            return number;
        refusals.Add(new Refusal("reading", $"\"{form.Text("reading")}\"", "the number of an entry", "Go back to the sheet and choose it there"));
        return null;
    }
}
