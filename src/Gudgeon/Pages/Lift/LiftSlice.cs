using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Pages.Strip;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Pages.Lift;

/// <summary>Lifting, moving, holding: what is told of it, and what the sums say to that.</summary>
public sealed class LiftSlice : ISlice
{
    /// <summary>The pose that the picture shows first: half way up.</summary>
    private const int Middle = 6;

    public IEnumerable<NavItem> Nav => [new(NavPlace.Shelf, 25, "lift", "Lift", "book")];

    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/lift", (Visit visit, int? stroke) => new RazorComponentResult<LiftPage>(new { Visit = visit, View = LiftAssessor.Of(visit.Bench), Stroke = stroke ?? Middle }));
        book.MapGet("/lift/mass", (Visit visit) => new RazorComponentResult<MassForm>(new { Visit = visit }));
        book.MapGet("/lift/rig", (Visit visit) => new RazorComponentResult<RigForm>(new { Visit = visit }));
        book.MapGet("/lift/crane", (Visit visit) => new RazorComponentResult<CraneForm>(new { Visit = visit }));
        book.MapGet("/lift/place", (Visit visit) => new RazorComponentResult<PlaceForm>(new { Visit = visit }));
        book.MapGet("/lift/stand", (Visit visit) => new RazorComponentResult<StandForm>(new { Visit = visit }));
        book.MapPost("/lift/mass", StripSlice.Form(LiftForms.Mass));
        book.MapPost("/lift/weighed", StripSlice.Form(LiftForms.Weighed));
        book.MapPost("/lift/rig", StripSlice.Form(LiftForms.Rig));
        book.MapPost("/lift/crane", StripSlice.Form(LiftMachineForms.Crane));
        book.MapPost("/lift/place", StripSlice.Form(LiftMachineForms.Place));
        book.MapPost("/lift/stand", StripSlice.Form(LiftMachineForms.Stand));
        book.MapPost("/lift/checked", StripSlice.Form((_, form, _) => [new Tell(new LiftChecked([.. form["look"].Where(l => l is { Length: > 0 }).Select(l => l!)]))]));
    }
}
