using System.Globalization;
using System.Reflection;
using Gudgeon.Journal;
using Gudgeon.Pages.Elements;

namespace Gudgeon.Host;

/// <summary>One request to one book: what every page of the book has at hand. The book stands still meanwhile.</summary>
public sealed class Visit(HttpContext http, Book book, TimeProvider clock, WorkedOut workedOut)
{
    /// <summary>A form that waited longer says nothing that can be relied on.</summary>
    private static readonly TimeSpan LongestWait = TimeSpan.FromDays(366);

    public Book Book => book;

    public Bench Bench => book.Bench;

    /// <inheritdoc cref="WorkedOut.Once"/>
    public T Once<T>(Func<Bench, T> work, object? with = null) => workedOut.Once(book, work, with);

    public BookPlate Plate { get; } = new(book.Name, book.Bench.Title);

    public HttpContext Http => http;

    /// <summary>What was recorded just now, to be echoed: the numbers that the last form left in the address.</summary>
    public IReadOnlyList<Recorded> Echo { get; } = Told(http.Request.Query["told"].ToString(), book);

    /// <summary>The page of a part; of the part that a joint holds.</summary>
    public string Href(string thing) =>
        Bench.Engine.Parts.ContainsKey(thing) ? Plate.Href($"part/{thing}")
        : Bench.Engine.Joints.TryGetValue(thing, out var joint) ? Plate.Href($"part/{joint.Part}")
        : Plate.Href($"find?q={Uri.EscapeDataString(Bench.NameOf(thing))}");

    /// <summary>Who sends, and when; the sender's own id makes a second sending harmless.</summary>
    public Sending Sending(IFormCollection form)
    {
        var now = clock.GetLocalNow();
        var id = form["sender"].ToString();
        return new Sending(id.Length is > 0 and <= 80 ? id : Guid.CreateVersion7().ToString(), DoneAt(form, now), now, SenderOf(http));
    }

    /// <summary>The paired phone that sends, by the name that its owner gave it; else the laptop's own pages.</summary>
    public static string SenderOf(HttpContext http) => http.User.Identity?.Name ?? "page";

    /// <summary>The time of the work that is being written up afterwards; null when it is recorded as it is done.</summary>
    public DateTime? WritingUp { get; } = Host.WritingUp.Of(http.Request);

    /// <summary>
    /// When the work was done: the time that is being written up, which stands in the form; else, for a form that
    /// waited in a phone, as long ago as it says, which is right even when the phone's clock is not.
    /// </summary>
    private static DateTimeOffset DoneAt(IFormCollection form, DateTimeOffset now) =>
        Host.WritingUp.Read(form[Host.WritingUp.Field].ToString()) is { } then && new DateTimeOffset(then, TimeZoneInfo.Local.GetUtcOffset(then)) is var at && at <= now ? at
        : double.TryParse(form["ago"], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var seconds) && seconds < LongestWait.TotalSeconds ? now.AddSeconds(-seconds) : now;

    /// <summary>A short id out of what a person calls a thing: lower-case letters, digits, dashes.</summary>
    public static string IdOf(string name)
    {
        var letters = name.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-').ToArray();
        return string.Join('-', new string(letters).Split('-', StringSplitOptions.RemoveEmptyEntries)) is { Length: > 0 } id ? id[..Math.Min(id.Length, 40)] : "part";
    }

    public static ValueTask<Visit?> BindAsync(HttpContext context, ParameterInfo parameter) => ValueTask.FromResult((Visit?)context.Items[typeof(Visit)]);

    private static Recorded[] Told(string range, Book book)
    {
        var ends = range.Split('-');
        return ends.Length == 2 && long.TryParse(ends[0], out var from) && long.TryParse(ends[1], out var to) && to - from < 200
            ? [.. book.Entries.Where(r => r.Number >= from && r.Number <= to)]
            : [];
    }
}

/// <summary>Marks a form that records nothing: it is answered while others read.</summary>
public sealed record LooksOnly;

/// <summary>Opens the book that the address names, and holds it still while its page is made.</summary>
public sealed class VisitGate(RequestDelegate next, Bookshelf shelf, Desks desks, WorkedOut workedOut, ReadyEar ear, TimeProvider clock)
{
    public async Task InvokeAsync(HttpContext context)
    {
        var parts = context.Request.Path.Value!.Split('/', StringSplitOptions.RemoveEmptyEntries);
        if (parts is not ["books", { } slug, ..])
        {
            await next(context);
            return;
        }

        if (!shelf.Open(slug).TryGet(out var book))
        {
            await Mishap.Refuse(context, StatusCodes.Status404NotFound, shelf.Open(slug).Refusals);
            return;
        }

        var desk = desks.Of(slug);
        var looksOnly = HttpMethods.IsGet(context.Request.Method) || HttpMethods.IsHead(context.Request.Method)
            || context.GetEndpoint()?.Metadata.GetMetadata<LooksOnly>() is not null;

        // Another program may have written since: a note from the command line shows on the next page. Nobody who only
        // looks has to wait for the other readers when nothing was written.
        if (!looksOnly || book.Newest() != book.Version)
        {
            using (await desk.Write(context.RequestAborted))
            {
                book.Refresh();
                if (!looksOnly)
                {
                    await Go(context, book);
                    return;
                }
            }
        }

        using (await desk.Read(context.RequestAborted))
            await Go(context, book);
        if (context.Response.ContentType?.StartsWith("text/html", StringComparison.Ordinal) == true)
            ear.For(slug, book);
    }

    private Task Go(HttpContext context, Book book)
    {
        context.Items[typeof(Visit)] = new Visit(context, book, clock, workedOut);
        return next(context);
    }
}
