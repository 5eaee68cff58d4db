using System.Globalization;
using Gudgeon.Engine;
using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Pages.Measure;

/// <summary>Measuring: what there is to read, one sheet a part, a keypad for the readings, verdicts as they land.</summary>
public sealed class MeasureSlice : ISlice
{
    public IEnumerable<NavItem> Nav => [new(NavPlace.Verb, 20, "measure", "Measure", "measure"), new(NavPlace.Shelf, 60, "instruments", "Instruments", "measure"), new(NavPlace.Shelf, 61, "limits", "Limits", "measure")];

    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/measure", (Visit visit) => new RazorComponentResult<MeasurePage>(new { Visit = visit, List = visit.Once(MeasureList.Of) }));
        book.MapGet("/measure/{part}", Sheet);
        book.MapGet("/measure/{part}/{characteristic}/{place:int}", (Visit visit, string part, string characteristic, int place) =>
            Keypad(visit, new KeypadAsked(part, characteristic, place, visit.Http.Request.Query["spot"].ToString(), visit.Http.Request.Query["with"].ToString(), Query(visit, "partc"), Query(visit, "gaugec"), Query(visit, "by")), "", []));
        book.MapGet("/measure.csv", (Visit visit) => TypedResults.Text(ReadingTable.Write(visit.Bench), "text/csv", System.Text.Encoding.UTF8));
        book.MapPost("/measure/table", Strip.StripSlice.Form((_, form, refusals) =>
        {
            var read = ReadingTable.Read(form.Text("table"));
            refusals.AddRange(read.Refusals);
            return read.Ok ? read.Value : [];
        }));
        book.MapPost("/measure/read", Read);
        book.MapPost("/measure/zero", Strip.StripSlice.Form(MeasureForms.Zero));
        book.MapPost("/measure/aside", Strip.StripSlice.Form((_, form, refusals) => MeasureForms.Aside(form, refusals)));
        book.MapPost("/measure/afresh", Strip.StripSlice.Form((_, form, refusals) =>
            form.Count("place", "place", refusals) is { } place ? [new MeasureAfresh(form.Text("part"), form.Text("characteristic"), place, form.Text("why"))] : []));
        book.MapPost("/measure/meant", Strip.StripSlice.Form((_, form, refusals) => MeasureForms.Meant(form, refusals)));
        book.MapPost("/measure/stands", Strip.StripSlice.Form((_, form, refusals) => MeasureForms.Stands(form, refusals)));
        book.MapPost("/measure/not-applicable", Strip.StripSlice.Form((_, form, _) =>
            [new Tell(new NotApplicable(form.Text("characteristic"), form.Text("everywhere") == "yes" ? [] : [.. Strip.StripSlice.Ids(form, "part")], form.Text("why").Trim()))]));
        book.MapPost("/measure/material", Strip.StripSlice.Form((_, form, _) => [new Tell(new MaterialTold(form.Text("part"), form.Text("material")))]));
        book.MapGet("/instruments", (Visit visit) => new RazorComponentResult<InstrumentsPage>(new { Visit = visit }));
        book.MapPost("/instruments/keep", Strip.StripSlice.Form(MeasureForms.Instrument));
        book.MapPost("/instruments/gone", Strip.StripSlice.Form(MeasureForms.Gone));
        book.MapPost("/instruments/habits", Strip.StripSlice.Form((visit, form, _) => MeasureForms.Habits(visit, form)));
        book.MapGet("/limits", (Visit visit) => new RazorComponentResult<LimitsPage>(new { Visit = visit, Asked = Query(visit, "of"), Low = Query(visit, "low"), High = Query(visit, "high"), Source = Query(visit, "source"), State = Query(visit, "state") }));
        book.MapPost("/limits/set", Strip.StripSlice.Form(MeasureForms.Limit));
        book.MapPost("/limits/grades", Strip.StripSlice.Form(MeasureForms.Grades));
    }

    private static IResult Sheet(Visit visit, string part)
    {
        if (visit.Bench.Engine.Parts.ContainsKey(part))
            return new RazorComponentResult<PartSheetPage>(new { Visit = visit, View = PartSheet.Of(visit.Bench, part) });
        return NotThere(new Refusal("the address", $"a part \"{part}\"", "a part of this engine", "Go to the Measure page and pick from there"));
    }

    private static IResult Keypad(Visit visit, KeypadAsked asked, string typed, IReadOnlyList<Refusal> refusals)
    {
        var view = KeypadView.Of(visit.Bench, asked);
        return view.TryGet(out var keypad)
            ? new RazorComponentResult<KeypadPage>(new { Visit = visit, View = keypad, Typed = typed, Refusals = refusals }) { StatusCode = refusals.Count > 0 ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK }
            : NotThere(view.Refusals[0]);
    }

    private static RazorComponentResult<MishapPage> NotThere(Refusal refusal) =>
        new(new { Refusals = (IReadOnlyList<Refusal>)[refusal] }) { StatusCode = StatusCodes.Status404NotFound };

    private static async Task<IResult> Read(Visit visit, HttpRequest request)
    {
        var form = await request.ReadFormAsync();
        var asked = new KeypadAsked(form.Text("part"), form.Text("characteristic"), int.TryParse(form.Text("place"), NumberStyles.None, CultureInfo.InvariantCulture, out var place) ? place : 0, form.Text("spot"), form.Text("with"), form.Text("partc"), form.Text("gaugec"), form.Text("by"));
        var readings = MeasureForms.Readings(visit.Bench, asked, form.Text("reading"), form.Text("meant"));
        if (!readings.TryGet(out var requests))
            return Keypad(visit, asked, form.Text("reading"), readings.Refusals);
        var outcome = visit.Book.Submit(visit.Sending(form), requests);
        if (!outcome.TryGet(out var reply))
            return Keypad(visit, asked, form.Text("reading"), outcome.Refusals);
        var view = KeypadView.Of(visit.Bench, asked).Value;
        var next = view.After(reply.Entries.Count);
        var told = reply.Entries.Count == 0 ? "" : $"&told={reply.Entries[0].Number}-{reply.Entries[^1].Number}";
        return Back.To($"{visit.Plate.Href(next.Path)}?spot={Uri.EscapeDataString(next.Spot)}&{asked.Carried}{told}");
    }

    private static string Query(Visit visit, string name) => visit.Http.Request.Query[name].ToString();
}
