using Gudgeon.Host;
using Gudgeon.Planning.OnTheBench;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Pages.Plan;

/// <summary>What to do next: the way to anything.</summary>
public sealed class PlanSlice : ISlice
{
    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/reach", Reach);
    }

    private static IResult Reach(Visit visit, TimeProvider clock, string? what)
    {
        var target = ReachTarget.Of(visit.Bench, what ?? "");
        if (!target.TryGet(out var found))
            return Recording.Refused(visit, FormCollection.Empty, target.Refusals);
        var circumstances = new Circumstances(clock.GetLocalNow());
        var way = ReachReport.Of(visit.Bench, found, circumstances);
        return new RazorComponentResult<ReachPage>(new
        {
            Visit = visit,
            Target = found,
            At = $"reach?what={Uri.EscapeDataString(what!)}",
            Way = way,
            Why = way is null ? WhyReport.Of(visit.Bench, found, circumstances) : null,
            Looks = way is null ? ReachReport.LooksFor(visit.Bench, found, circumstances) : null,
        });
    }
}
