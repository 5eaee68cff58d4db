using System.Globalization;
using Gudgeon.Engine;
using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Pages;
using Gudgeon.Photos;
using Gudgeon.Shop;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Labels;

/// <summary>Labels for bags, trays, boxes, parts and both halves of a hose; and the answer to what a label is on.</summary>
public sealed class LabelsSlice : ISlice
{
    /// <summary>Marks a place in the values of the form; ids of things have none.</summary>
    internal const string PlaceMark = "place:";

    /// <summary>Stands between a line and its end in the values of the form.</summary>
    internal const char EndMark = '@';

    public IEnumerable<NavItem> Nav => [new(NavPlace.Shelf, 40, "labels", "Labels", "label")];

    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/labels", (Visit visit) => new RazorComponentResult<LabelsPage>(new { Visit = visit }));
        book.MapPost("/labels", Make);
        book.MapGet("/labels/print", Print);
        app.MapGet("/k", (string? code) => Back.To(Href(code ?? "")));
        app.MapGet("/scan", () => new RazorComponentResult<ScanPage>(new { Refusals = Array.Empty<Refusal>() }));
        app.MapPost("/scan", Scan);
        app.MapGet("/k/{code}", Answer);
    }

    private static async Task<IResult> Make(Visit visit, HttpRequest request, Bookshelf shelf)
    {
        var form = await request.ReadFormAsync();
        var wanted = form["on"].Where(v => v is { Length: > 0 }).Select(v => v!).Concat(form.Text("place") is { Length: > 0 } typed ? [PlaceMark + typed] : []).Distinct().ToArray();
        if (wanted.Length == 0)
            return Recording.Refused(visit, form, [new Refusal("labels", "none chosen", "one thing or more", "Choose what the labels are for, or type a place")]);

        var used = shelf.Names.Where(n => n != visit.Plate.Slug).SelectMany(n => shelf.Open(n).TryGet(out var other) ? other.Read(b => b.Labels.Keys.ToArray()) : []).Concat(visit.Bench.Labels.Keys).ToHashSet();
        var next = Enumerable.Range(1, LabelCode.Count - 1).Select(LabelCode.Of).Where(c => !used.Contains(c)).GetEnumerator();
        var codes = new List<string>();
        var made = new List<Entry>();
        foreach (var value in wanted)
        {
            var (what, place, port) = Read(value);
            if (visit.Bench.LabelOn(what, place, port) is { } there)
            {
                codes.Add(there);
            }
            else if (next.MoveNext())
            {
                codes.Add(next.Current);
                made.Add(new LabelMade(next.Current, what, place, port));
            }
            else
            {
                return Recording.Refused(visit, form, [new Refusal("labels", $"{LabelCode.Count} codes in use", "a free code", "Use labels that are there")]);
            }
        }

        if (made.Count > 0 && visit.Book.Submit(visit.Sending(form), new Tell([.. made])) is { Ok: false } refused)
            return Recording.Refused(visit, form, refused.Refusals);

        return Back.To(visit.Plate.Href($"labels/print?sheet={Uri.EscapeDataString(form.Text("sheet"))}&from={Uri.EscapeDataString(form.Text("from"))}&codes={string.Join(',', codes)}"));
    }

    private static (string? What, string? Place, string? Port) Read(string value)
    {
        if (value.StartsWith(PlaceMark, StringComparison.Ordinal))
            return (null, value[PlaceMark.Length..], null);

        var end = value.IndexOf(EndMark, StringComparison.Ordinal);
        return end < 0 ? (value, null, null) : (value[..end], null, value[(end + 1)..]);
    }

    private static IResult Print(Visit visit, HostOptions options, string? sheet, string? from, string? codes)
    {
        var paper = LabelSheet.All.FirstOrDefault(s => s.Id == sheet) ?? LabelSheet.All[0];
        var start = int.TryParse(from, NumberStyles.None, CultureInfo.InvariantCulture, out var first) && first >= 1 && first <= paper.Each ? first - 1 : 0;
        LabelMade[] labels = [.. (codes ?? "").Split(',').Where(visit.Bench.Labels.ContainsKey).Select(c => visit.Bench.Labels[c])];
        return new RazorComponentResult<LabelPrintPage>(new { Visit = visit, Paper = paper, Start = start, Labels = labels, Address = ShopDoor.AddressFor(visit.Http, options), IsOpen = options.Shop });
    }

    internal static string Href(string code) => $"/k/{Uri.EscapeDataString(code)}";

    /// <summary>Reads the square in a photo and goes on to what its label says. The photo is not kept.</summary>
    private static async Task<IResult> Scan(HttpContext context, TimeProvider clock)
    {
        var read = Outcome.Refused<string>(new Refusal("photo of a label", "no file", "one photo", "Photograph the label, or type its code"));
        await PhotoDoor.EachFile(context, [], async (name, body) =>
            read = (await SquareReader.Read(Path.GetTempPath(), body, name, clock.LocalTimeZone, context.RequestAborted)).Then(seen => LabelSquare.CodeIn(seen.Text)));
        var byScript = context.Request.Headers.Accept.ToString().StartsWith("application/json", StringComparison.Ordinal);
        return (read.Ok, byScript) switch
        {
            (true, true) => Results.Json(new { href = Href(read.Value) }),
            (true, false) => Back.To(Href(read.Value)),
            (false, true) => Results.Json(new { refusals = read.Refusals }, statusCode: StatusCodes.Status422UnprocessableEntity),
            (false, false) => new RazorComponentResult<ScanPage>(new { read.Refusals }) { StatusCode = StatusCodes.Status422UnprocessableEntity },
        };
    }

    /// <summary>What is this and where does it go, in whichever book has the code.</summary>
    private static async Task<IResult> Answer(string code, Bookshelf shelf, Desks desks, HttpContext context)
    {
        var read = LabelCode.Read(code);
        var found = new List<CodeAnswer>();
        foreach (var name in read.Ok ? shelf.Names : [])
        {
            if (!shelf.Open(name).TryGet(out var book))
                continue;

            // Taking in what others wrote changes the bench: nobody may be reading it then.
            using (await desks.Of(name).Write(context.RequestAborted))
            {
                if (book.Read(bench => bench.Labels.TryGetValue(read.Value, out var label) ? CodeAnswer.Of(name, bench, label) : null) is { } answer)
                    found.Add(answer);
            }
        }

        return new RazorComponentResult<CodePage>(new { Code = read.Ok ? read.Value : code, Refusals = read.Refusals, Found = found })
        { StatusCode = read.Ok ? found.Count > 0 ? StatusCodes.Status200OK : StatusCodes.Status404NotFound : StatusCodes.Status422UnprocessableEntity };
    }
}
