using System.Globalization;
using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Pages;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Photos;

/// <summary>Pins on photos: which fastener, port or part is where; and the card with a hole for each bolt that they make.</summary>
public sealed class PinsSlice : ISlice
{
    /// <summary>Places are kept to a ten-thousandth of the photo: finer than a finger, coarser than noise.</summary>
    private const int Places = 4;

    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/photo/{hash}", IResult (Visit visit, string hash, string? on) => visit.Bench.Photos.TryGetValue(hash, out var photo)
            ? new RazorComponentResult<PhotoPage>(new { Visit = visit, Photo = photo, On = on })
            : Recording.Refused(visit, FormCollection.Empty, [new Refusal("photo", $"\"{hash}\"", "a photo of this book", "Pick it from the photos")]));
        book.MapPost("/pin-set", Pages.Strip.StripSlice.Form(Set));
        book.MapPost("/pin-moved", Pages.Strip.StripSlice.Form((_, form, refusals) => Place(form, refusals) is var (x, y) ? [new Tell(new PinMoved(form.Text("photo"), form.Text("pin"), x, y))] : []));
        book.MapPost("/pin-marked", Pages.Strip.StripSlice.Form(Marked));
        book.MapPost("/pin-removed", Pages.Strip.StripSlice.Form((_, form, _) => [new Tell(new PinRemoved(form.Text("photo"), form.Text("pin")))]));
        book.MapGet("/card/{joint}", IResult (Visit visit, string joint) => visit.Bench.Engine.Joints.TryGetValue(joint, out var found)
            ? new RazorComponentResult<CardPage>(new { Visit = visit, Joint = found })
            : Recording.Refused(visit, FormCollection.Empty, [new Refusal("joint", $"\"{joint}\"", "a joint of this engine", "Open its part and go on from there")]));
    }

    private static IReadOnlyList<Request> Set(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var (photo, what) = (form.Text("photo"), form.Text("what"));
        var number = form.Count("number", "which fastener", refusals);
        if (Place(form, refusals) is not var (x, y) || refusals.Count > 0)
            return [];

        var isJoint = visit.Bench.Engine.Joints.ContainsKey(what);
        return [new Tell(new PinSet(photo, form.Text("sender"), x, y, what.Length > 0 ? what : null, number ?? (isJoint ? NextNumber(visit.Bench, photo, what) : null), form.Text("name")))];
    }

    /// <summary>The lowest number that no pin of the joint has in this photo.</summary>
    internal static int NextNumber(Bench bench, string photo, string joint)
    {
        var taken = bench.Photos.GetValueOrDefault(photo)?.Pins.Values.Where(p => p.What == joint).Select(p => p.Number).ToHashSet() ?? [];
        return Enumerable.Range(1, taken.Count + 1).First(n => !taken.Contains(n));
    }

    private static IReadOnlyList<Request> Marked(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var back = form.Text("back-in");
        return [new Tell(new PinMarked(form.Text("photo"), form.Text("pin"), Told(form, "size"), back.Length == 0 ? null : back == "yes", Told(form, "name")))];
    }

    /// <summary>A field that the form has, empty or not; null where it has none.</summary>
    private static string? Told(IFormCollection form, string name) => form.ContainsKey(name) ? form.Text(name) : null;

    private static (decimal X, decimal Y)? Place(IFormCollection form, List<Refusal> refusals)
    {
        var (x, y) = (Part(form, "x", "from the left", refusals), Part(form, "y", "from the top", refusals));
        return x is { } left && y is { } top ? (left, top) : null;
    }

    /// <summary>Pages ask for hundredths of the photo, which people can type; the book keeps parts of one.</summary>
    private static decimal? Part(IFormCollection form, string name, string where, List<Refusal> refusals)
    {
        var text = form.Text(name).Replace(',', '.');
        if (decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent) && percent <= 100)
            return Math.Round(percent / 100, Places);

        refusals.Add(new Refusal(where, $"\"{form.Text(name)}\"", "0 to 100, in hundredths of the photo", "Type a figure, or tap on the photo"));
        return null;
    }
}
