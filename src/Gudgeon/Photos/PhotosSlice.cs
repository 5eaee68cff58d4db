using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Pages;
using Gudgeon.Shop;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Photos;

/// <summary>
/// Photos: many at once, in any order, later. Files come and go by addresses of their own: a slow phone that sends fifty photos must not
/// hold the book still meanwhile.
/// </summary>
public sealed class PhotosSlice : ISlice
{
    private const string Kept = "private, max-age=31536000, immutable";

    public IEnumerable<NavItem> Nav => [new(NavPlace.Shelf, 30, "photos", "Photos", "photo")];

    public void AddServices(IServiceCollection services) => services.AddSingleton<PhotoDoor>();

    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/photos", (Visit visit, string? of) => new RazorComponentResult<PhotosPage>(new { Visit = visit, Of = of is not null && visit.Bench.Knows(of) ? of : null }));
        book.MapPost("/photo-about", Pages.Strip.StripSlice.Form((_, form, _) => [new Tell(new PhotoAbout(form.Text("photo"), [.. form["of"].Where(id => id is { Length: > 0 }).Select(id => id!)]))]));
        book.MapGet("/clock", (Visit visit, TimeProvider clock) => new RazorComponentResult<ClockPage>(new { Visit = visit, Now = clock.GetLocalNow() }));
        book.MapPost("/clock-told", Pages.Strip.StripSlice.Form(ClockTold));
        app.MapGet("/clock.svg", (TimeProvider clock) => Results.Text(ClockSquare.Svg(clock.GetUtcNow()), "image/svg+xml"));
        app.MapPost("/intake/{book}/photos", Take);
        app.MapPost("/intake/{book}/clock", ReadClock);
        app.MapGet("/picture/{book}/{hash:length(64)}/{size}", Picture);
    }

    private static async Task<IResult> Take(HttpContext context, string book, PhotoDoor door)
    {
        var taken = await door.Take(context, book);
        var answers = taken.Ok ? taken.Value : [new PhotoAnswer("photo", null, false, taken.Refusals)];
        return context.Request.Headers.Accept.ToString().StartsWith("application/json", StringComparison.Ordinal)
            ? Results.Json(answers, statusCode: answers.All(a => a.Refusals.Count == 0) ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity)
            : new RazorComponentResult<SentPage>(new { Slug = book, Answers = answers });
    }

    private static IResult Picture(HttpContext context, Bookshelf shelf, string book, string hash, string size)
    {
        if (!shelf.Open(book).TryGet(out var opened) || !hash.All(c => char.IsAsciiDigit(c) || c is >= 'a' and <= 'f'))
            return Results.NotFound();

        var photos = new PhotoFolder(opened.Folder);
        var type = PhotoType.All.FirstOrDefault(t => File.Exists(photos.Original(hash, t)));
        var file = type is null ? null : size switch
        {
            "thumb" => photos.Thumb(hash),
            "view" => type != PhotoType.Heic && photos.View(hash, type).TryGet(out var view) ? view : null,

            // What the camera wrote into the file, its place too, goes to the laptop alone.
            "original" => context.Connection.IsLaptop() ? photos.Original(hash, type) : null,
            _ => null,
        };
        if (file is null || !File.Exists(file))
            return Results.NotFound();

        context.Response.Headers.CacheControl = Kept;
        return size == "original" ? Results.File(file, PhotoType.MediaType(type!), $"{hash[..12]}{PhotoType.Ending(type!)}") : Results.File(file, "image/jpeg");
    }

    private static IReadOnlyList<Request> ClockTold(Visit visit, IFormCollection form, List<Refusal> refusals) =>
        ClockSquare.Typed(form.Text("camera-time"), form.Text("right-time")).TryGet(out var ahead)
            ? [new Tell(new CameraClock(form.Text("camera"), ahead))]
            : Add(refusals, ClockSquare.Typed(form.Text("camera-time"), form.Text("right-time")).Refusals);

    private static IReadOnlyList<Request> Add(List<Refusal> refusals, IReadOnlyList<Refusal> more)
    {
        refusals.AddRange(more);
        return [];
    }

    private static async Task<IResult> ReadClock(HttpContext context, string book, Bookshelf shelf, Desks desks, TimeProvider clock)
    {
        if (!shelf.Open(book).TryGet(out var opened))
            return Results.NotFound();

        var fields = new Dictionary<string, string>();
        var read = Outcome.Refused<CameraClock>(new Refusal("photo of the clock page", "no file", "one photo", "Choose the photo that shows the square"));
        await PhotoDoor.EachFile(context, fields, async (name, body) => read = await ClockSquare.Read(opened.Folder, body, name, clock.LocalTimeZone, context.RequestAborted));
        using (await desks.Of(book).Write(context.RequestAborted))
        {
            var now = clock.GetLocalNow();
            var sending = new Sending(fields.GetValueOrDefault("sender", Guid.CreateVersion7().ToString()), now, now, Visit.SenderOf(context));
            var reply = read.Then(told => opened.Submit(sending, new Tell(told)));
            return reply.Ok
                ? Back.To($"/books/{Uri.EscapeDataString(book)}/clock?told={reply.Value.Entries[0].Number}-{reply.Value.Entries[^1].Number}")
                : new RazorComponentResult<SentPage>(new { Slug = book, Answers = new[] { new PhotoAnswer("photo of the clock page", null, false, reply.Refusals) } }) { StatusCode = StatusCodes.Status422UnprocessableEntity };
        }
    }
}
