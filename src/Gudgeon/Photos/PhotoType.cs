using System.Buffers.Binary;
using System.Text;

namespace Gudgeon.Photos;

/// <summary>What a file is by its first bytes. Its name is not asked: names lie.</summary>
public static class PhotoType
{
    public const string Jpeg = "jpeg";
    public const string Png = "png";
    public const string WebP = "webp";
    public const string Heic = "heic";

    public static readonly IReadOnlyList<string> All = [Jpeg, Png, WebP, Heic];

    /// <summary>As many bytes as it takes to tell.</summary>
    public const int HeadLength = 32;

    private static readonly string[] heicBrands = ["heic", "heix", "heim", "heis", "hevc", "hevx", "mif1", "msf1"];

    /// <summary>The type, or null when it is no photo that this program takes.</summary>
    public static string? Of(ReadOnlySpan<byte> head) =>
        head.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]) ? Jpeg
        : head.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A]) ? Png
        : Is(head, 0, "RIFF") && Is(head, 8, "WEBP") ? WebP
        : Is(head, 4, "ftyp") && IsHeic(head) ? Heic
        : null;

    /// <summary>The ending under which it is kept.</summary>
    public static string Ending(string type) => type == Jpeg ? ".jpg" : $".{type}";

    public static string MediaType(string type) => $"image/{type}";

    /// <summary>Coded in passes over the whole picture, which must all be held in memory at once.</summary>
    public static bool IsProgressiveJpeg(Stream jpeg)
    {
        Span<byte> marker = stackalloc byte[4];
        jpeg.Position = 2;
        while (jpeg.ReadAtLeast(marker, 4, throwOnEndOfStream: false) == 4 && marker[0] == 0xFF)
        {
            // C0 to CF start a frame, but for the tables C4 and CC and the reserved C8.
            if (marker[1] is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC))
                return marker[1] is 0xC2 or 0xC6 or 0xCA or 0xCE;
            jpeg.Seek(BinaryPrimitives.ReadUInt16BigEndian(marker[2..]) - 2, SeekOrigin.Current);
        }

        return false;
    }

    private static bool IsHeic(ReadOnlySpan<byte> head)
    {
        var length = Math.Min(head.Length, (int)Math.Min(BinaryPrimitives.ReadUInt32BigEndian(head), int.MaxValue));
        for (var at = 8; at + 4 <= length; at += at == 8 ? 8 : 4)
        {
            if (heicBrands.Contains(Encoding.ASCII.GetString(head.Slice(at, 4))))
                return true;
        }

        return false;
    }

    private static bool Is(ReadOnlySpan<byte> head, int at, string text) =>
        head.Length >= at + text.Length && Encoding.ASCII.GetString(head.Slice(at, text.Length)) == text;
}
