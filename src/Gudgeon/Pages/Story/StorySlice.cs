using System.Text;
using Gudgeon.Capture;
using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Pages.Strip;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Pages.Story;

/// <summary>What was said and what came of it: the box, the journal, the findings, the whole book.</summary>
public sealed class StorySlice : ISlice
{
    public IEnumerable<NavItem> Nav =>
    [
        new(NavPlace.Shelf, 20, "findings", "Findings", "book"),
        new(NavPlace.Shelf, 30, "journal", "Journal", "book"),
        new(NavPlace.Shelf, 40, "book", "Book", "book"),
    ];

    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/journal", (Visit visit, long? before) => new RazorComponentResult<JournalPage>(new { Visit = visit, Before = before ?? long.MaxValue }));
        book.MapGet("/findings", (Visit visit) => new RazorComponentResult<FindingsPage>(new { Visit = visit }));
        book.MapGet("/book", (Visit visit) => new RazorComponentResult<BookPage>(new { Visit = visit }));
        book.MapGet("/book.html", async (Visit visit, TimeProvider clock) =>
            Results.File(Encoding.UTF8.GetBytes(await BookFile.Html(visit.Book, clock.GetLocalNow())), "text/html; charset=utf-8", $"{visit.Book.Name}.html"));
        book.MapPost("/say", Say);
        book.MapPost("/settled", StripSlice.Form(Settle));
        book.MapPost("/meant", StripSlice.Form(Meant));
    }

    private static async Task<IResult> Say(Visit visit, HttpRequest request)
    {
        var form = await request.ReadFormAsync();
        return Recording.Answer(visit, form, Telling.Record(visit.Book, form.Text("line"), visit.Sending(form)));
    }

    private static IReadOnlyList<Request> Meant(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var offset = visit.Sending(form).At.Offset;
        if (long.TryParse(form.Text("question"), out var number) && Doubts.Choose(visit.Book, number, form["way"].ToString(), offset) is { } requests)
            return requests;

        refusals.Add(new Refusal("open question", $"\"{form.Text("way")}\"", "one of the ways in which it can be read now", "Look at it on the findings page and choose again"));
        return [];
    }

    private static IReadOnlyList<Request> Settle(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        if (long.TryParse(form.Text("question"), out var number))
            return [new Tell(new Settled(number, form.Text("answer")))];

        refusals.Add(new Refusal("question", $"\"{form.Text("question")}\"", "the number of an open question", "Answer it on the findings page"));
        return [];
    }
}
