using Gudgeon.Sums;
using SkiaSharp;
using ZXing;
using ZXing.Common;

namespace Gudgeon.Photos;

/// <summary>What a photo of a QR square holds: what the camera wrote into the file, and the words of the square; none where no square can be read.</summary>
public sealed record SquareSeen(CameraNotes Notes, string? Text);

/// <summary>Reads the QR square (ISO/IEC 18004) in a photo. The photo is looked at and not kept.</summary>
public static class SquareReader
{
    /// <summary>Longer sides in pixels at which a square is looked for: a small square in a large photo needs many, a blurred one is read better in few.</summary>
    private static readonly int[] sizes = [2000, 800];

    /// <param name="folder">Where the file lies while it is looked at; nothing of it is left there.</param>
    public static async Task<Outcome<SquareSeen>> Read(string folder, Stream body, string name, TimeZoneInfo zone, CancellationToken cancel)
    {
        var home = Path.Combine(folder, $"square-{Guid.NewGuid():N}");
        var aside = new PhotoFolder(home);
        try
        {
            return (await aside.Take(body, name, zone, cancel)).Then(arrival => arrival.Width == 0
                ? Outcome.Refused<SquareSeen>(new Refusal(name, "a photo that cannot be opened here", "a JPEG", "Set the camera to JPEG, or type what stands beside the square"))
                : TextIn(aside.Original(arrival.Hash, arrival.Type), arrival.Type, name).Then(text => Outcome.Of(new SquareSeen(arrival.Notes, text.Length > 0 ? text : null))));
        }
        finally
        {
            Directory.Delete(home, recursive: true);
        }
    }

    private static Outcome<string> TextIn(string file, string type, string name)
    {
        var text = Outcome.Of("");
        foreach (var size in sizes)
        {
            text = Picture.Open(file, type, name).Then(picture =>
            {
                using (picture)
                    return picture.Decode(size, name).Then(Decoded);
            });
            if (!text.Ok || text.Value.Length > 0)
                break;
        }

        return text;
    }

    private static Outcome<string> Decoded(SKBitmap bitmap)
    {
        using (bitmap)
        {
            var reader = new BarcodeReaderGeneric { Options = new DecodingOptions { TryHarder = true, PossibleFormats = [BarcodeFormat.QR_CODE] } };
            return Outcome.Of(reader.Decode(new RGBLuminanceSource(bitmap.Bytes, bitmap.Width, bitmap.Height, RGBLuminanceSource.BitmapFormat.RGBA32))?.Text ?? "");
        }
    }
}
