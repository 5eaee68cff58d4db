using Gudgeon.Engine;
using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Pages.Strip;

/// <summary>Taking apart: what can come off now, and everything that is said about what came off.</summary>
public sealed class StripSlice : ISlice
{
    public IEnumerable<NavItem> Nav => [new(NavPlace.Verb, 10, "strip", "Strip", "strip")];

    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/strip", (Visit visit) => new RazorComponentResult<StripPage>(new { Visit = visit, Plan = visit.Once(StripList.Of) }));
        book.MapGet("/otherwise", (Visit visit) => new RazorComponentResult<OtherwisePage>(new { Visit = visit }));
        book.MapPost("/off", Form((visit, form, _) => [.. Ids(form, "part").Select(id => new TakeOff(id))]));
        book.MapPost("/absent", Form((_, form, _) => [.. Ids(form, "part").Select(id => new Tell(new PartAbsent(id)))]));
        book.MapPost("/absent-line", Form((_, form, _) => [.. Ids(form, "line").Select(id => new Tell(new LineAbsent(id)))]));
        book.MapPost("/parted", Form((_, form, _) => [.. Ids(form, "line").Select(id => new Tell(new LineParted(id)))]));
        book.MapPost("/done", Form((_, form, _) => [new Tell(new OperationDone(form.Text("operation")))]));
        book.MapPost("/answer", Form((_, form, _) => [new Tell(new FactAnswered(form.Text("fact"), form.Text("yes") == "yes"))]));
        book.MapPost("/fasteners", Form(Fasteners));
        book.MapPost("/tag", Form(Tag));
        book.MapPost("/add-part", Form(AddPart));
        book.MapPost("/learned", Form((_, form, _) => [new Tell(new AccessLearned(form.Text("target"), [.. Ids(form, "need")]))]));
        book.MapPost("/strike", Form(Strike));
    }

    /// <summary>A form that becomes requests: what cannot be read is refused at once, the rest is decided by the book.</summary>
    internal static Delegate Form(Func<Visit, IFormCollection, List<Refusal>, IReadOnlyList<Request>> read) => async (Visit visit, HttpRequest request) =>
    {
        var form = await request.ReadFormAsync();
        var refusals = new List<Refusal>();
        var requests = read(visit, form, refusals);
        if (refusals.Count == 0 && requests.Count == 0)
            refusals.Add(new Refusal("the form", "nothing filled in", "one field or more", "Fill in what you know"));
        return refusals.Count > 0 ? Recording.Refused(visit, form, refusals) : Recording.Record(visit, form, requests);
    };

    internal static IEnumerable<string> Ids(IFormCollection form, string name) => form[name].Where(id => id is { Length: > 0 }).Select(id => id!);

    private static IReadOnlyList<Request> Fasteners(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var joint = form.Text("joint");
        var count = form.Count("count", "how many came out", refusals);
        var (size, place, found) = (form.Text("size"), form.Place(), form.Text("found"));
        var entries = new List<Entry>();
        if (count is { } n)
            entries.Add(new FastenersOut(joint, [new OutLot(n, size, "", place)]));
        else if (place is not null)
            entries.Add(new FastenersPut(joint, place));
        if (count is null && size.Length > 0)
            refusals.Add(new Refusal("how many came out", "nothing", $"how many of {size}", "Say how many there were"));
        if (found.Length > 0)
            entries.Add(new Noted(joint, "found", found));
        return entries.Count == 0 ? [] : [new Tell([.. entries])];
    }

    private static IReadOnlyList<Request> Tag(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var (line, tag) = (form.Text("line"), form.Text("tag"));
        var entries = new List<Entry>();
        if (tag.Length > 0)
            entries.Add(new LineTagged(line, tag));
        entries.AddRange(Ids(form, "cap").Select(port => new PortCapped(line, port)));
        return entries.Count == 0 ? [] : [new Tell([.. entries])];
    }

    private static IReadOnlyList<Request> AddPart(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var name = form.Text("name");
        var count = form.Count("count", "how many hold it", refusals);
        var wanted = $"own.{Visit.IdOf(name)}";
        var id = wanted;
        for (var i = 2; visit.Bench.Engine.Parts.ContainsKey(id); i++)
            id = $"{wanted}-{i}";
        var added = new PartAdded(id, name, form.Text("on") is { Length: > 0 } on ? on : null, count, form.Text("size"));
        return form.Text("off").Length > 0 ? [new Tell(added), new TakeOff(id)] : [new Tell(added)];
    }

    private static IReadOnlyList<Request> Strike(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        if (long.TryParse(form.Text("number"), out var number))
            return [new StrikeOut(number)];

        refusals.Add(new Refusal("entry", $"\"{form.Text("number")}\"", "the number of an entry", "Strike it out on the journal page"));
        return [];
    }
}
