using System.Globalization;
using System.Text;
using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Pages.Strip;
using Gudgeon.Planning.Calendar;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Pages.Start;

/// <summary>Prime, first start, running in, and the sheet of the built engine.</summary>
public sealed class StartSlice : ISlice
{
    public IEnumerable<NavItem> Nav => [new(NavPlace.Shelf, 19, "first-start", "First start", "book")];

    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/first-start", IResult (Visit visit) => visit.Bench.Gates.Any(g => g.ClosedBy.Contains(BeginPage.FirstStart))
            ? new RazorComponentResult<StartPage>(new { Visit = visit })
            : Recording.Refused(visit, FormCollection.Empty, [new Refusal("first start", "an engine without a crank", "an engine that can be started", "Add its parts first")]));
        book.MapGet("/built", (Visit visit) => new RazorComponentResult<BuiltPage>(new { Visit = visit }));
        book.MapPost("/built-with", StripSlice.Form((_, form, _) => [new Tell(new BuiltWith(form.Text("part"), form.Text("what"), form.Text("batch")))]));
        book.MapGet("/running-in.ics", IResult (Visit visit, TimeProvider clock) => visit.Bench.RunningIn is { } running
            ? Results.File(Encoding.UTF8.GetBytes(Reminders.Write([.. running.Plan().Select(d => new Reminder(d.Due.Id, d.Day, d.Due.Do))], clock.GetUtcNow(), visit.Book.Key)), "text/calendar; charset=utf-8", "running-in.ics")
            : Recording.Refused(visit, FormCollection.Empty, [new Refusal("reminders", "no plan", "a running-in that was begun", "Plan the running in first")]));
        book.MapPost("/begin-start", StripSlice.Form((_, form, _) => [new BeginPage(BeginPage.FirstStart, form.Text("override") is { Length: > 0 } reason ? reason : null)]));
        book.MapPost("/start-step", StripSlice.Form((_, form, _) => [new Tell(new StartStepDone(form.Text("step"), form.Text("note")))]));
        book.MapPost("/running-in", StripSlice.Form((_, form, refusals) =>
        {
            var (hours, km) = (Rate(form, "hours", refusals), Rate(form, "km", refusals));
            return refusals.Count > 0 ? [] : [new Tell(new RunningInBegun(form.Text("day"), hours, km))];
        }));
    }

    private static double? Rate(IFormCollection form, string name, List<Refusal> refusals)
    {
        var text = form.Text(name).Replace(',', '.');
        if (text.Length == 0)
            return null;
        if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var rate))
            return rate;
        refusals.Add(new Refusal($"{name} a week", $"\"{text}\"", "a plain number", "Type it in figures"));
        return null;
    }
}
