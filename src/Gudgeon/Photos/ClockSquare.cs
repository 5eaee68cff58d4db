using System.Globalization;
using Gudgeon.Journal;
using Gudgeon.Pages;
using Gudgeon.Sums;
using SkiaSharp;
using ZXing;
using ZXing.Common;

namespace Gudgeon.Photos;

/// <summary>
/// The book's own clock as a QR square: a photo of it holds two times, that of the book in the picture and that of the camera in the file.
/// Their difference is how far the camera is ahead.
/// </summary>
public static class ClockSquare
{
    private const string Mark = "GUDGEON CLOCK ";
    private const string Instant = "yyyyMMddHHmmss";

    /// <summary>Large enough for the square to be read when it fills a third of the picture.</summary>
    private const int ReadPixels = 2000;

    public static string Svg(DateTimeOffset now) => Squares.Svg(Text(now));

    public static string Text(DateTimeOffset now) => Mark + now.UtcDateTime.ToString(Instant, CultureInfo.InvariantCulture);

    /// <summary>Reads a photo of the square. The photo itself is not kept.</summary>
    public static async Task<Outcome<CameraClock>> Read(string bookFolder, Stream body, string name, TimeZoneInfo zone, CancellationToken cancel)
    {
        var aside = new PhotoFolder(Path.Combine(bookFolder, "photos", $"clock-{Guid.NewGuid():N}"));
        try
        {
            return (await aside.Take(body, name, zone, cancel)).Then(arrival =>
                arrival.Notes.Taken is not { } taken ? Refuse(name, "a photo that does not say when it was taken", "a photo as the camera made it")
                : arrival.Width == 0 ? Refuse(name, "a photo that cannot be opened here", "a JPEG")
                : Picture.Open(aside.Original(arrival.Hash, arrival.Type), arrival.Type, name).Then(picture => InstantIn(picture, name))
                    .Then(instant => Outcome.Of(new CameraClock(arrival.Notes.Camera, TimeSpan.FromSeconds(Math.Round((taken - instant).TotalSeconds))))));
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(aside.Folder)!, recursive: true);
        }
    }

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

    private static Outcome<DateTimeOffset> InstantIn(Picture picture, string name)
    {
        using (picture)
        {
            return picture.Decode(ReadPixels, name).Then(bitmap =>
            {
                using (bitmap)
                {
                    var text = Decode(bitmap);
                    return text?.StartsWith(Mark, StringComparison.Ordinal) == true
                        && DateTimeOffset.TryParseExact(text[Mark.Length..], Instant, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var instant)
                        ? Outcome.Of(instant)
                        : Refuse<DateTimeOffset>(name, text is null ? "no square that can be read" : "another square than the clock's", "the square of the clock page, sharp and whole");
                }
            });
        }
    }

    private static string? Decode(SKBitmap bitmap)
    {
        var reader = new BarcodeReaderGeneric { Options = new DecodingOptions { TryHarder = true, PossibleFormats = [BarcodeFormat.QR_CODE] } };
        return reader.Decode(new RGBLuminanceSource(bitmap.Bytes, bitmap.Width, bitmap.Height, RGBLuminanceSource.BitmapFormat.RGBA32))?.Text;
    }

    private static Outcome<CameraClock> Refuse(string name, string met, string expected) => Refuse<CameraClock>(name, met, expected);

    private static Outcome<T> Refuse<T>(string name, string met, string expected) =>
        Outcome.Refused<T>(new Refusal(name, met, expected, "Take the photo again from nearer, or type both times below the square"));
}
