using Gudgeon.Host;
using Gudgeon.Journal;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Pages.Measure.Work;

/// <summary>Sums that serve many sheets, a page for each: fits, shapes, how well one repeats. All are asked by address, so that they can be kept and sent.</summary>
public sealed class WorkSlice : ISlice
{
    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/fit", (Visit visit) => new RazorComponentResult<FitPage>(new { Visit = visit, Size = Asked(visit, "size"), Classes = Asked(visit, "fit"), For = Asked(visit, "for") }));
        book.MapGet("/instruments/{id}/repeats", (Visit visit, string id) => visit.Bench.Instruments.TryGetValue(id, out var kept)
            ? (IResult)new RazorComponentResult<RepeatsPage>(new { Visit = visit, View = Repeats.Of(visit.Bench, kept), Table = Asked(visit, "table") })
            : NotThere(new Sums.Refusal("the address", $"an instrument \"{id}\"", "one of your list", "Go to the Instruments page and pick from there")));
        book.MapGet("/shape/{kind}", (Visit visit, string kind) => ShapeAsked.Kinds.ContainsKey(kind)
            ? (IResult)new RazorComponentResult<ShapePage>(new { Visit = visit, Asked = ShapeAsked.Of(visit.Http.Request.Query, kind) })
            : NotThere(new Sums.Refusal("the address", $"a shape \"{kind}\"", string.Join(", ", ShapeAsked.Kinds.Keys), "Go to the Measure page and pick from there")));
    }

    private static string Asked(Visit visit, string name) => visit.Http.Request.Query[name].ToString();

    private static RazorComponentResult<MishapPage> NotThere(Sums.Refusal refusal) =>
        new(new { Refusals = (IReadOnlyList<Sums.Refusal>)[refusal] }) { StatusCode = StatusCodes.Status404NotFound };
}
