using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Pages.Strip;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Pages.Circuits;

/// <summary>Oil, coolant, fuel, air, gas, wires: where a port leads, what is not closed, what was drained and filled.</summary>
public sealed class CircuitsSlice : ISlice
{
    private const string First = "oil";

    public IEnumerable<NavItem> Nav => [new(NavPlace.Shelf, 14, "circuits", "Circuits", "book")];

    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/circuits", (Visit visit, string? of) => new RazorComponentResult<CircuitsPage>(new { Visit = visit, Of = Known(visit, of) }));
        book.MapGet("/trace", IResult (Visit visit, string? port) => Trace.From(visit.Bench, port ?? "") is { } found
            ? new RazorComponentResult<TracePage>(new { Visit = visit, Found = found })
            : Recording.Refused(visit, FormCollection.Empty, [new Refusal("port", $"\"{port}\"", "a port of this engine", "Go to Circuits and pick one")]));
        book.MapPost("/left-open", StripSlice.Form((_, form, _) => [new Tell(new PortLeftOpen(form.Text("port"), form.Text("why")))]));
        book.MapPost("/end-joined", StripSlice.Form((_, form, _) => form.Text("end").Split(' ') is [var line, var port]
            ? [new Tell(new EndJoined(line, port, form.Text("at"), form.Text("tag")))]
            : []));
        book.MapPost("/fluid", StripSlice.Form(Fluid));
    }

    private static string Known(Visit visit, string? of) =>
        visit.Bench.Engine.Lines.Values.Select(l => Family.Of(l.Circuit)).Distinct().FirstOrDefault(f => f == of) ?? First;

    private static IReadOnlyList<Request> Fluid(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var read = SpotText.Read(form.Text("amount"), "cm3", visit.Bench.Units, null, form.Text("fluid"));
        refusals.AddRange(read.Refusals);
        var way = form.Text("way") == nameof(FluidWay.Filled) ? FluidWay.Filled : FluidWay.Drained;
        return read.TryGet(out var cm3) ? [new Tell(new FluidMoved(form.Text("fluid"), way, cm3, form.Text("amount")))] : [];
    }
}
