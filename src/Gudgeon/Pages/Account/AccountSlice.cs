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

    private static IReadOnlyList<Request> Put(IFormCollection form)
    {
        var place = form.Place() ?? "";
        return
        [
            .. StripSlice.Ids(form, "part").Select(part => new Tell(new PartPut(part, place))),
            .. StripSlice.Ids(form, "joint").Distinct().Select(joint => new Tell(new FastenersPut(joint, place))),
        ];
    }
}
