using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Pages.Strip;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Pages.Account;

/// <summary>What is off and where, and the one box that finds it.</summary>
public sealed class AccountSlice : ISlice
{
    public IEnumerable<NavItem> Nav => [new(NavPlace.Shelf, 10, "account", "Account", "book")];

    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/account", (Visit visit) => new RazorComponentResult<AccountPage>(new { Visit = visit }));
        book.MapGet("/find", (Visit visit, string? q) => new RazorComponentResult<FindPage>(new { Visit = visit, Query = (q ?? "").Trim() }));
        book.MapPost("/put", StripSlice.Form((_, form, _) => Put(form)));
    }

    private static IReadOnlyList<Request> Put(IFormCollection form) => (form.Text("part"), form.Text("joint"), form.Place() ?? "") switch
    {
        ({ Length: > 0 } part, _, var place) => [new Tell(new PartPut(part, place))],
        (_, { Length: > 0 } joint, var place) => [new Tell(new FastenersPut(joint, place))],
        _ => [],
    };
}
