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
        book.MapGet("/when", (Visit visit, TimeProvider clock, string? back) => new RazorComponentResult<WhenPage>(new { Visit = visit, Now = clock.GetLocalNow(), Back = back ?? "" }));
        book.MapPost("/when", When);
        book.MapPost("/say", Say);
        book.MapPost("/pieces", Pieces).WithMetadata(new LooksOnly());
        book.MapPost("/read-first", ReadFirst).WithMetadata(new LooksOnly());
        book.MapPost("/settled", StripSlice.Form(Settle));
        book.MapPost("/meant", StripSlice.Form(Meant));
        book.MapPost("/teach", StripSlice.Form(Teach));
    }

    private static async Task<IResult> Say(Visit visit, HttpRequest request)
    {
        var form = await request.ReadFormAsync();
        return Recording.Answer(visit, form, Telling.Record(visit.Book, form.Text("line"), visit.Sending(form), PieceFields.Read(form)));
    }

    /// <summary>What a line comes to, for the page to show while it is typed: a piece of a page, nothing for no words.</summary>
    private static async Task<IResult> Pieces(Visit visit, HttpRequest request)
    {
        var form = await request.ReadFormAsync();
        return form.Text("line").Length == 0 ? Results.NoContent() : new RazorComponentResult<PiecesList>(new { Sifted = Hear(visit, form), visit.Bench });
    }

    /// <summary>The same as a page, for who has no script.</summary>
    private static async Task<IResult> ReadFirst(Visit visit, HttpRequest request)
    {
        var form = await request.ReadFormAsync();
        return form.Text("line").Length == 0
            ? Recording.Answer(visit, form, Outcome.Refused<Reply>(Telling.NoWords))
            : new RazorComponentResult<ReadFirstPage>(new { Visit = visit, Form = form, Sifted = Hear(visit, form) });
    }

    private static Sifted Hear(Visit visit, IFormCollection form) =>
        Telling.Hear(visit.Bench, form.Text("line"), visit.Sending(form).At, PieceFields.Read(form));

    /// <summary>Sets or ends the time that what is sent from this browser was done at. No entry: nothing of the work is said yet.</summary>
    private static async Task<IResult> When(Visit visit, HttpRequest request, HttpResponse response, TimeProvider clock)
    {
        var form = await request.ReadFormAsync();
        var back = Back.To(visit.Plate.Href(form.Text("back")));
        if (form.Text("now").Length > 0)
        {
            WritingUp.End(response, visit.Plate);
            return back;
        }

        var typed = $"{form.Text("day")}T{form.Text("time")}";
        if (WritingUp.Read(typed) is not { } then)
            return Recording.Refused(visit, form, [new Refusal("when it was done", $"\"{form.Text("day")} {form.Text("time")}\"", "a day and a time, as 2026-01-31 and 19:40", "Fill in both fields")]);
        if (then > clock.GetLocalNow().DateTime)
            return Recording.Refused(visit, form, [new Refusal("when it was done", $"{form.Text("day")} {form.Text("time")}", "a time that has been", "What is still to be done is no entry yet: choose an earlier time")]);

        WritingUp.Begin(response, visit.Plate, then);
        return back;
    }

    /// <summary>One reading of one question, or of each of several.</summary>
    private static IReadOnlyList<Request> Meant(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var chosen = form["question"].Zip(form["way"], (question, way) => (Number: long.TryParse(question, out long number) ? number : 0, Echo: way ?? ""));
        if (Doubts.Choose(visit.Book, chosen, visit.Sending(form).At.Offset) is { Count: > 0 } requests)
            return requests;

        refusals.Add(new Refusal("open question", $"\"{form["way"]}\"", "one of the ways in which it can be read now", "Look at it on the findings page and choose again"));
        return [];
    }

    private static IReadOnlyList<Request> Teach(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var teach = OwnWords.Teach(visit.Bench, form.Text("word"), form.Text("term"), visit.Sending(form).At);
        refusals.AddRange(teach.Refusals);
        return teach.Ok ? teach.Value : [];
    }

    private static IReadOnlyList<Request> Settle(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        if (long.TryParse(form.Text("question"), out var number))
            return [new Tell(new Settled(number, form.Text("answer")))];

        refusals.Add(new Refusal("question", $"\"{form.Text("question")}\"", "the number of an open question", "Answer it on the findings page"));
        return [];
    }
}
