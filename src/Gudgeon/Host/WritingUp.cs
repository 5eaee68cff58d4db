using System.Globalization;
using Gudgeon.Pages.Elements;

namespace Gudgeon.Host;

/// <summary>
/// The work of an evening, written up the next day: for a while everything that this browser sends to one book was done
/// at the time that its owner chose. The time stands in every form, so that one that waits in a phone keeps it.
/// </summary>
public static class WritingUp
{
    /// <summary>Name of the cookie, and of the field that every form then carries.</summary>
    public const string Field = "done-at";

    private const string Pattern = "yyyy-MM-dd'T'HH:mm";

    /// <summary>Long enough for an evening; short enough that tomorrow's work is not dated yesterday.</summary>
    private static readonly TimeSpan lasts = TimeSpan.FromHours(3);

    public static DateTime? Of(HttpRequest request) => Read(request.Cookies[Field]);

    public static DateTime? Read(string? text) =>
        DateTime.TryParseExact(text, Pattern, CultureInfo.InvariantCulture, DateTimeStyles.None, out var then) ? then : null;

    public static string Text(DateTime then) => then.ToString(Pattern, CultureInfo.InvariantCulture);

    public static void Begin(HttpResponse response, BookPlate book, DateTime then) =>
        response.Cookies.Append(Field, Text(then), Options(book, lasts));

    public static void End(HttpResponse response, BookPlate book) => response.Cookies.Delete(Field, Options(book, null));

    private static CookieOptions Options(BookPlate book, TimeSpan? age) =>
        new() { HttpOnly = true, SameSite = SameSiteMode.Strict, IsEssential = true, Path = book.Href(""), MaxAge = age };
}
