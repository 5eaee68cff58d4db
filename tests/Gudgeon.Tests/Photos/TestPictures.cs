using System.Buffers.Binary;
using System.IO.Compression;
using SkiaSharp;

namespace Gudgeon.Tests.Photos;

/// <summary>Invented pictures, good and bad.</summary>
internal static class TestPictures
{
    /// <summary>Red top left, green top right, blue bottom left, yellow bottom right.</summary>
    public static readonly SKColor[] Corners = [SKColors.Red, SKColors.Lime, SKColors.Blue, SKColors.Yellow];

    /// <summary>The four corners, width by height, upright.</summary>
    public static SKBitmap FourCorners(int width, int height)
    {
        var picture = new SKBitmap(width, height);
        using var canvas = new SKCanvas(picture);
        for (var i = 0; i < Corners.Length; i++)
        {
            using var paint = new SKPaint { Color = Corners[i] };
            canvas.DrawRect(SKRect.Create(i % 2 * (width / 2), i / 2 * (height / 2), width, height), paint);
        }

        return picture;
    }

    public static byte[] Jpeg(SKBitmap picture, int quality = 92) => picture.Encode(SKEncodedImageFormat.Jpeg, quality).ToArray();

    public static byte[] Jpeg(int width = 160, int height = 120) => Jpeg(FourCorners(width, height));

    public static byte[] Png(int width = 64, int height = 48) => FourCorners(width, height).Encode(SKEncodedImageFormat.Png, 100).ToArray();

    public static byte[] WebP(int width = 64, int height = 48) => FourCorners(width, height).Encode(SKEncodedImageFormat.Webp, 90).ToArray();

    /// <summary>A true, small PNG file that unfolds to a white square of any side: rows of one bit a pixel, all alike.</summary>
    public static byte[] WhiteSquarePng(int side)
    {
        var row = new byte[1 + (side + 7) / 8];
        Array.Fill(row, (byte)0xFF, 1, row.Length - 1);
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            for (var i = 0; i < side; i++)
                zlib.Write(row);
        }

        var size = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(size, side);
        return [0x89, .. "PNG\r\n\u001a\n"u8, .. Chunk("IHDR"u8, [.. size, .. size, 1, 0, 0, 0, 0]), .. Chunk("IDAT"u8, packed.ToArray()), .. Chunk("IEND"u8, [])];
    }

    /// <summary>The head of an HEIC container with nothing to see behind it.</summary>
    public static byte[] HeicHead() => [0, 0, 0, 24, .. "ftypheic"u8, 0, 0, 0, 0, .. "mif1heic"u8, 0, 0, 0, 8, .. "mdat"u8];

    public static byte[] Chunk(ReadOnlySpan<byte> name, byte[] body)
    {
        var length = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(length, body.Length);
        byte[] named = [.. name, .. body];
        var crc = new byte[4];
        BinaryPrimitives.WriteUInt32BigEndian(crc, Crc(named));
        return [.. length, .. named, .. crc];
    }

    /// <summary>ISO 3309, as the PNG specification (W3C, annex D) asks for.</summary>
    private static uint Crc(byte[] bytes)
    {
        var crc = uint.MaxValue;
        foreach (var b in bytes)
        {
            crc ^= b;
            for (var i = 0; i < 8; i++)
                crc = (crc & 1) == 1 ? 0xEDB88320 ^ (crc >> 1) : crc >> 1;
        }

        return ~crc;
    }
}
