using Gudgeon.Engine;
using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Pages.Books;

/// <summary>The first page, and how a book is started: from the questions, or from nothing.</summary>
public sealed class BooksSlice : ISlice
{
    private const string FromNothing = "nothing";

    public void MapPages(IEndpointRouteBuilder app)
    {
        app.MapGet("/", async (Bookshelf shelf, Desks desks, CancellationToken cancel) =>
        {
            var covers = new List<BookCover>();
            foreach (var name in shelf.Names)
                covers.Add(await Cover(shelf, desks, name, cancel));
            return new RazorComponentResult<HomePage>(new { Books = covers });
        });
        app.MapGet("/start", () => Ask([], new Dictionary<string, string>()));
        app.MapPost("/start", Start);
        app.MapPost("/demo", (Bookshelf shelf) => DemoBook.Open(shelf) is { } demo && demo.TryGet(out var book)
            ? Back.To($"/books/{book.Name}")
            : Ask(DemoBook.Open(shelf).Refusals, new Dictionary<string, string>()));
        app.MapGet("/books/{book}", (Visit visit) => Back.To(visit.Plate.Href(IsOnTheWayBack(visit.Bench) ? "refit" : "strip")));
    }

    private static bool IsOnTheWayBack(Bench bench) => bench.WayBackOn().Count > 0 && !bench.CanComeOff().Any();

    /// <summary>A book that cannot be opened still lies there, and says why.</summary>
    private static async Task<BookCover> Cover(Bookshelf shelf, Desks desks, string name, CancellationToken cancel)
    {
        if (!shelf.Open(name).TryGet(out var book))
            return new BookCover(name, name, null, shelf.Open(name).Refusals);
        using (await desks.Of(name).Write(cancel))
            return book.Read(bench => new BookCover(name, bench.Title, book.Entries.LastOrDefault(), []));
    }

    private static RazorComponentResult<StartPage> Ask(IReadOnlyList<Refusal> refusals, IReadOnlyDictionary<string, string> answers) =>
        new(new { Refusals = refusals, Answers = answers }) { StatusCode = refusals.Count > 0 ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK };

    private static async Task<IResult> Start(HttpRequest request, Bookshelf shelf, TimeProvider clock)
    {
        var form = await request.ReadFormAsync();
        var answers = Answers(form);
        var sender = form.Text("sender");

        // The same form twice starts one book: the first entry of a book carries the id that its form was sent with.
        if (shelf.Names.FirstOrDefault(n => shelf.Open(n).TryGet(out var book) && book.Entries is [{ } first, ..] && first.Act == sender) is { } there)
            return Back.To($"/books/{there}/strip");

        var given = form.Text("from") == FromNothing ? new Dictionary<string, string>() : answers.Where(a => a.Key != "title").ToDictionary();
        var now = clock.GetLocalNow();
        var outcome = shelf.Start(form.Text("title"), given, new Sending(sender, now, now, "page"));
        return outcome.TryGet(out var started) ? Back.To($"/books/{started.Name}/strip") : Ask(outcome.Refusals, answers);
    }

    /// <summary>What was answered; an empty field is no answer and takes what is usual.</summary>
    private static Dictionary<string, string> Answers(IFormCollection form)
    {
        var answers = new Dictionary<string, string>();
        foreach (var question in Questions.All)
        {
            var text = question.Kind == QuestionKind.Many ? string.Join(',', form[question.Id].Where(v => v is { Length: > 0 } && v != "none")) : form.Text(question.Id);
            if (text.Length > 0 || (question.Kind == QuestionKind.Many && form[question.Id].Count > 0))
                answers[question.Id] = text;
        }

        // An answer to a question that the other answers make idle is a leftover of a change of mind.
        foreach (var idle in Questions.All.Where(q => answers.ContainsKey(q.Id) && !Questions.IsAsked(q, answers)).ToArray())
            answers.Remove(idle.Id);
        // Nothing answered is still an answer: the usual engine, not an empty book.
        answers.TryAdd(Questions.Basic[0].Id, Questions.DefaultOf(Questions.Basic[0], answers));
        answers["title"] = form.Text("title");
        return answers;
    }
}

/// <summary>A book as it lies on the first page.</summary>
public sealed record BookCover(string Slug, string Title, Recorded? Last, IReadOnlyList<Refusal> Shut);
