using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Pages.Strip;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Pages.Timing;

/// <summary>The degree wheel, lobe centres, valve clearances and their shims.</summary>
public sealed class TimingSlice : ISlice
{
    public IEnumerable<NavItem> Nav => [new(NavPlace.Shelf, 18, "timing", "Timing", "book")];

    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/timing", (Visit visit) => new RazorComponentResult<TimingPage>(new { Visit = visit }));
        book.MapPost("/top", StripSlice.Form((visit, form, refusals) =>
        {
            var (before, after) = (Figure(visit, form, "before", "deg", refusals), Figure(visit, form, "after", "deg", refusals));
            return refusals.Count > 0 ? [] : [new Tell(new TopFound(before, after))];
        }));
        book.MapPost("/lobe", StripSlice.Form((visit, form, refusals) =>
        {
            var lift = Figure(visit, form, "lift", "mm", refusals);
            var (opening, closing) = (Figure(visit, form, "opening", "deg", refusals), Figure(visit, form, "closing", "deg", refusals));
            double? wanted = form.Text("wanted").Length > 0 ? Figure(visit, form, "wanted", "deg", refusals) : null;
            return refusals.Count > 0 ? [] : [new Tell(new LobeRead(form.Text("lobe"), lift, opening, closing, wanted))];
        }));
        book.MapPost("/cam-drive", StripSlice.Form(Drive));
        book.MapPost("/static-timing", StripSlice.Form((_, form, _) => [new Tell(new StaticTimingNoted(form.Text("what"), form.Text("setting")))]));
        book.MapPost("/lash", StripSlice.Form(Lash));
        book.MapPost("/lash-limit", StripSlice.Form(Limit));
        book.MapPost("/shims", StripSlice.Form(Shims));
    }

    private static double Figure(Visit visit, IFormCollection form, string name, string unit, List<Refusal> refusals) =>
        Figure(visit, form.Text(name), name, unit, refusals);

    private static double Figure(Visit visit, string text, string where, string unit, List<Refusal> refusals)
    {
        var read = SpotText.Read(text, unit, visit.Bench.Units, null, where);
        refusals.AddRange(read.Refusals);
        return read.TryGet(out var value) ? value : 0;
    }

    private static IReadOnlyList<Request> Drive(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        double? Size(string name) => form.Text(name).Length > 0 ? Figure(visit, form, name, "mm", refusals) : null;
        var teeth = form.Count("teeth", "teeth on the crank", refusals) ?? 0;
        var (pitch, centres, skim, measured) = (Size("pitch"), Size("centres"), Size("skim"), Size("measured"));
        var links = form.Count("links", "pitches of the chain", refusals);
        if ((links is null) != (measured is null) || (measured is not null && pitch is null))
            refusals.Add(new Refusal("chain", "a length without its number of pitches and its pitch", "pitch, how many pitches, and what they measure", "Give all three, or none"));
        if (refusals.Count > 0)
            return [];
        double? stretch = links is { } n and > 0 && measured is { } length && pitch is { } p ? (length / (n * p)) - 1 : null;
        return [new Tell(new CamDriveTold(teeth, pitch, centres, stretch, skim))];
    }

    private static IReadOnlyList<Request> Lash(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var requests = new List<Request>();
        foreach (var line in LashSheet.Of(visit.Bench))
        {
            if (form.Text($"clearance.{line.Valve}") is { Length: > 0 } clearance)
                requests.Add(new TakeReading(LashSheet.SlotOf(line.Valve), clearance));
            if (form.Text($"shim.{line.Valve}") is { Length: > 0 } shim)
                requests.Add(new Tell(new ShimRead(line.Valve, Figure(visit, shim, $"shim of {visit.Bench.NameOf(line.Valve)}", "mm", refusals), shim)));
        }

        return requests;
    }

    private static IReadOnlyList<Request> Limit(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var (low, high) = (Figure(visit, form, "low", "mm", refusals), Figure(visit, form, "high", "mm", refusals));
        string[] valves = [.. visit.Bench.Engine.Parts.Values.Where(p => p.Kind == form.Text("kind")).Select(p => p.Id)];
        return refusals.Count > 0 || valves.Length == 0 ? [] : [new Tell(new LimitSet(LashSheet.Clearance, valves, LimitState.New, low, high, null, "mm", $"{form.Text("low")} to {form.Text("high")}", form.Text("source")))];
    }

    private static IReadOnlyList<Request> Shims(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var (thinnest, thickest, step) = (Figure(visit, form, "thinnest", "mm", refusals), Figure(visit, form, "thickest", "mm", refusals), Figure(visit, form, "step", "mm", refusals));
        double[] spares = [.. form.Text("spares").Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(s => Figure(visit, s, "spares", "mm", refusals))];
        return refusals.Count > 0 ? [] : [new Tell(new ShimsOffered(thinnest, thickest, step, spares))];
    }
}
