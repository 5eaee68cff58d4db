using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Lifting;
using Gudgeon.Pages.Strip;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Components;
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
        book.MapGet("/lift", (Visit visit, int? stroke, TimeProvider clock) => new RazorComponentResult<LiftPage>(new { Visit = visit, View = LiftAssessor.Of(visit.Bench), Now = clock.GetLocalNow(), Stroke = stroke ?? Middle }));
        MapForm<MassForm>(book, "mass", LiftWas.Weighed, LiftForms.Mass);
        book.MapPost("/lift/weighed", Told<MassForm>(LiftForms.Weighed));
        MapForm<RigForm>(book, "rig", LiftWas.Rig, LiftForms.Rig);
        MapForm<CraneForm>(book, "crane", LiftWas.Crane, LiftMachineForms.Crane);
        MapForm<PlaceForm>(book, "place", LiftWas.Place, LiftMachineForms.Place);
        MapForm<StandForm>(book, "stand", LiftWas.Stand, LiftMachineForms.Stand);
        book.MapPost("/lift/checked", StripSlice.Form((_, form, _) => [new Tell(new LiftChecked([.. form["look"].Where(l => l is { Length: > 0 }).Select(l => l!)]))]));
    }

    private static void MapForm<TForm>(RouteGroupBuilder book, string name, Func<Bench, IReadOnlyDictionary<string, string>> was, Func<Bench, LiftFields, Entry> read)
        where TForm : IComponent
    {
        book.MapGet($"/lift/{name}", (Visit visit) => new RazorComponentResult<TForm>(new { Visit = visit, Was = was(visit.Bench) }));
        book.MapPost($"/lift/{name}", Told<TForm>(read));
    }

    /// <summary>Records what the form comes to; one that is not taken comes back with everything that was typed.</summary>
    private static Delegate Told<TForm>(Func<Bench, LiftFields, Entry> read)
        where TForm : IComponent => async (Visit visit, HttpRequest request) =>
    {
        var form = await request.ReadFormAsync();
        var refusals = new List<Refusal>();
        var entry = read(visit.Bench, new LiftFields(form.Text, refusals));
        var outcome = refusals.Count > 0 ? Outcome.Refused<Reply>([.. refusals]) : visit.Book.Submit(visit.Sending(form), [new Tell(entry)]);
        return outcome.Ok
            ? Recording.Answer(visit, form, outcome)
            : new RazorComponentResult<TForm>(new { Visit = visit, Was = form.ToDictionary(field => field.Key, field => field.Value.ToString()), Refusals = outcome.Refusals }) { StatusCode = StatusCodes.Status422UnprocessableEntity };
    };
}
