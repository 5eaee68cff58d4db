using System.Globalization;
using Gudgeon.Journal;
using Gudgeon.Pages;
using Gudgeon.Sums;

namespace Gudgeon.Photos;

/// <summary>
/// The book's own clock as a QR square: a photo of it holds two times, that of the book in the picture and that of the camera in the file.
/// Their difference is how far the camera is ahead.
/// </summary>
public static class ClockSquare
{
    private const string Mark = "GUDGEON CLOCK ";
    private const string Instant = "yyyyMMddHHmmss";

    private const string Expected = "the square of the clock page, sharp and whole";

    public static string Svg(DateTimeOffset now) => Squares.Svg(Text(now));

    public static string Text(DateTimeOffset now) => Mark + now.UtcDateTime.ToString(Instant, CultureInfo.InvariantCulture);

    /// <summary>Reads a photo of the square. The photo itself is not kept.</summary>
    public static async Task<Outcome<CameraClock>> Read(string bookFolder, Stream body, string name, TimeZoneInfo zone, CancellationToken cancel) =>
        (await SquareReader.Read(bookFolder, body, name, zone, cancel)).Then(seen =>
            seen.Notes.Taken is not { } taken ? Refuse(name, "a photo that does not say when it was taken", "a photo as the camera made it")
            : seen.Text is null ? Refuse(name, "no square that can be read", Expected)
            : InstantIn(seen.Text) is not { } instant ? Refuse(name, "another square than the clock's", Expected)
            : Outcome.Of(new CameraClock(seen.Notes.Camera, TimeSpan.FromSeconds(Math.Round((taken - instant).TotalSeconds)))));

    /// <summary>How far the first clock is ahead of the second, both typed as <c>2026-03-29 14:05:06</c>.</summary>
    public static Outcome<TimeSpan> Typed(string camera, string right)
    {
        var refusals = new List<Refusal>();
        var (first, second) = (Clock("the time by the camera", camera, refusals), Clock("the right time", right, refusals));
        return refusals.Count > 0 ? Outcome.Refused<TimeSpan>(refusals) : Outcome.Of(first - second);
    }

    private static DateTime Clock(string where, string text, List<Refusal> refusals)
    {
        if (!DateTime.TryParseExact(text, ["yyyy-MM-dd HH:mm:ss", "yyyy-MM-dd HH:mm", "yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd'T'HH:mm"], CultureInfo.InvariantCulture, DateTimeStyles.AllowWhiteSpaces, out var clock))
            refusals.Add(new Refusal(where, $"\"{text}\"", "a date and a time as in 2026-03-29 14:05:06", "Type both as the camera shows them"));
        return clock;
    }

    private static DateTimeOffset? InstantIn(string text) =>
        text.StartsWith(Mark, StringComparison.Ordinal) && DateTimeOffset.TryParseExact(text[Mark.Length..], Instant, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var instant) ? instant : null;

    private static Outcome<CameraClock> Refuse(string name, string met, string expected) =>
        Outcome.Refused<CameraClock>(new Refusal(name, met, expected, "Take the photo again from nearer, or type both times below the square"));
}
