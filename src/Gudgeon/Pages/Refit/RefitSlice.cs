using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Pages.Strip;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Pages.Refit;

/// <summary>Putting back: the next part, its joints with their fasteners and where these lie, and whether it is all back.</summary>
public sealed class RefitSlice : ISlice
{
    public IEnumerable<NavItem> Nav => [new(NavPlace.Verb, 50, "refit", "Refit", "refit"), new(NavPlace.Shelf, 17, "buy", "Buy", "book")];

    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/refit", (Visit visit) => new RazorComponentResult<RefitPage>(new { Visit = visit, Plan = visit.Once(RefitList.Of) }));
        book.MapGet("/all-back", (Visit visit) => new RazorComponentResult<AllBackPage>(new { Visit = visit }));
        book.MapGet("/gate/{id}", IResult (Visit visit, string id, string? part) => visit.Bench.Gate(id) is { } gate
            ? new RazorComponentResult<GatePage>(new { Visit = visit, Stand = GateStand.Of(visit.Bench, gate, part) })
            : Recording.Refused(visit, FormCollection.Empty, [new Refusal("the address", $"gate \"{id}\"", "a gate of this engine", "Go to Refit and pick one")]));
        book.MapPost("/looked", StripSlice.Form((_, form, _) => [.. form["look"].Where(l => l is { Length: > 0 }).Select(l => new Tell(new GateLooked(form.Text("gate"), l!, form.Text("closing"))))]));
        book.MapPost("/begin", StripSlice.Form((_, form, _) => [new BeginPage(form.Text("page"), Reason(form))]));
        book.MapPost("/accepted", StripSlice.Form((_, form, _) => [new Tell(new Gudgeon.Journal.Accepted(form.Text("finding"), form.Text("thing"), form.Text("met"), form.Text("why")))]));
        book.MapPost("/washed", StripSlice.Form((_, form, _) => [new Tell([.. StripSlice.Ids(form, "part").Select(p => new PartWashed(p))])]));
        book.MapGet("/buy", (Visit visit) => new RazorComponentResult<BuyPage>(new { Visit = visit }));
        book.MapPost("/ordered", StripSlice.Form((_, form, refusals) => form.Count("count", "how many", refusals) is { } count ? [new Tell([.. StripSlice.Ids(form, "thing").Select(t => new Ordered(t, count))])] : []));
        book.MapPost("/bought", StripSlice.Form((visit, form, refusals) => form.Count("count", "how many", refusals) is { } count ? [new Tell([.. StripSlice.Ids(form, "thing").Select(t => GotIt(visit.Bench, t, count))])] : []));
        book.MapPost("/undone", StripSlice.Form((_, form, _) => [new UndoOperation(form.Text("operation"), Override: Reason(form))]));
        book.MapPost("/on", StripSlice.Form((_, form, _) => [new PutBack(form.Text("part"), Override: Reason(form))]));
        book.MapPost("/in", StripSlice.Form(FastenersBack));
        book.MapPost("/joined", StripSlice.Form((visit, form, _) =>
        {
            var line = form.Text("line");
            IEnumerable<Entry> caps = form.Text("caps") == "out" ? visit.Bench.Line(line).Caps.Select(port => new PortOpened(line, port)) : [];
            return [new Tell([.. caps, new LineJoined(line)])];
        }));
        book.MapPost("/opened", StripSlice.Form((_, form, _) => [new Tell(new PortOpened(form.Text("line"), form.Text("port")))]));
        book.MapPost("/lost-found", StripSlice.Form((_, form, refusals) => form.Count("count", "how many turned up", refusals) is { } count ? [new Tell(new FastenersFound(form.Text("joint"), count, form.Place()))] : []));
    }

    /// <summary>A part that came is a renewal; fasteners and shims are counted.</summary>
    private static Entry GotIt(Bench bench, string thing, int count) => bench.Engine.Parts.ContainsKey(thing) ? new PartRenewed(thing) : new Bought(thing, count);

    private static string? Reason(IFormCollection form) => form.Text("override") is { Length: > 0 } reason ? reason : null;

    private static IReadOnlyList<Request> FastenersBack(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var count = form.Count("count", "how many went in", refusals);
        var fresh = form.Count("fresh", "how many of them are new", refusals) ?? 0;
        var all = form.Text("all").Length > 0;
        return count is { } n ? [new Tell(new FastenersIn(form.Text("joint"), n, fresh, all, form.Text("how")))] : [];
    }
}
