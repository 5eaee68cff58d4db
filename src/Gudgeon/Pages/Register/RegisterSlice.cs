using System.Globalization;
using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Pages.Strip;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Pages.Register;

/// <summary>Small things that kill engines: what was put in, what lies between castings, what has a place and a way round.</summary>
public sealed class RegisterSlice : ISlice
{
    public IEnumerable<NavItem> Nav => [new(NavPlace.Shelf, 16, "small", "Small things", "book")];

    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/small", (Visit visit, TimeProvider clock) => new RazorComponentResult<RegisterPage>(new { Visit = visit, Now = clock.GetLocalNow() }));
        book.MapPost("/put-in", StripSlice.Form((_, form, refusals) => form.Count("count", "how many", refusals) is { } n ? [new Tell(new PutIn(form.Text("what"), form.Text("where"), n))] : []));
        book.MapPost("/taken-out", StripSlice.Form((_, form, _) => long.TryParse(form.Text("item"), NumberStyles.None, CultureInfo.InvariantCulture, out var item) ? [new Tell(new TakenOut(item))] : []));
        book.MapPost("/small-found", StripSlice.Form((_, form, refusals) => form.Count("count", "how many", refusals) is { } n ? [new Tell(new SmallFound(form.Text("joint"), form.Text("what"), n))] : []));
        book.MapPost("/small-fitted", StripSlice.Form((_, form, refusals) => form.Count("count", "how many", refusals) is { } n ? [new Tell(new SmallFitted(form.Text("joint"), form.Text("what"), n))] : []));
        book.MapPost("/way-round", StripSlice.Form((_, form, _) => [.. StripSlice.Ids(form, "part").Select(id => new Tell(new WayRoundSeen(id)))]));
    }
}
