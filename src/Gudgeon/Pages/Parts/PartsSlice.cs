using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Pages.Strip;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Pages.Parts;

/// <summary>One part with everything the book knows of it, and everything that can be said about it.</summary>
public sealed class PartsSlice : ISlice
{
    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/part/{id}", IResult (Visit visit, string id) => visit.Bench.Engine.Parts.TryGetValue(id, out var part)
            ? new RazorComponentResult<PartPage>(new { Visit = visit, Part = part })
            : Missing(visit, id));
        book.MapGet("/kind/{kind}", IResult (Visit visit, string kind) => visit.Bench.Engine.Parts.Values.Where(p => p.Kind == kind).ToArray() is { Length: > 0 } parts
            ? new RazorComponentResult<KindPage>(new { Visit = visit, Parts = parts })
            : Missing(visit, kind));
        book.MapPost("/took-off", StripSlice.Form(TookOff));
        book.MapPost("/noted", StripSlice.Form((_, form, _) => [new Tell(new Noted(form.Text("what"), form.Text("mark"), form.Text("text")))]));
        book.MapPost("/named", StripSlice.Form((_, form, _) => [new Tell(new PartNamed(form.Text("part"), form.Text("name")))]));
        book.MapPost("/counted", StripSlice.Form(Counted));
        book.MapPost("/sent", StripSlice.Form((_, form, _) => [new Tell(new PartSent(form.Text("part"), form.Text("shop"), form.Text("work")))]));
        book.MapPost("/returned", StripSlice.Form((_, form, _) => [new Tell(new PartReturned(form.Text("part"), form.Text("shop"), form.Place()))]));
        book.MapPost("/scrapped", StripSlice.Form((_, form, _) => [new Tell(new PartScrapped(form.Text("part"), form.Text("why")))]));
        book.MapPost("/renewed", StripSlice.Form((_, form, _) => [new Tell(new PartRenewed(form.Text("part"), form.Place()))]));
    }

    private static RazorComponentResult<RefusedPage> Missing(Visit visit, string id) =>
        new(new { Visit = visit, Form = FormCollection.Empty, Refusals = new[] { new Refusal("the address", $"\"{id}\"", "a part of this engine", "Look for it by name in the box at the top") } }) { StatusCode = StatusCodes.Status404NotFound };

    private static IReadOnlyList<Request> TookOff(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var part = form.Text("part");
        var count = form.Count("count", "how many came out", refusals);
        var lots = count is { } n ? new[] { new OutLot(n, form.Text("size"), "", form.Place()) } : null;
        var off = new TakeOff(part, lots, form.Text("lies") is { Length: > 0 } lies ? lies : null, All: form.Text("some").Length == 0);
        return form.Text("found") is { Length: > 0 } found ? [off, new Tell(new Noted(part, "found", found))] : [off];
    }

    private static IReadOnlyList<Request> Counted(Visit visit, IFormCollection form, List<Refusal> refusals) =>
        form.Count("count", "how many there are", refusals) is { } count ? [new Tell(new FastenersCounted(form.Text("joint"), count, form.Text("size")))] : [];
}
