using System.Buffers.Binary;
using System.Globalization;
using MetadataExtractor;
using MetadataExtractor.Formats.Exif;
using MetadataExtractor.Formats.Heif;
using MetadataExtractor.Formats.Jpeg;
using MetadataExtractor.Formats.WebP;
using MetadataExtractor.IO;
using Directory = MetadataExtractor.Directory;

namespace Gudgeon.Photos;

/// <summary>What the camera wrote beside the picture and the book has a use for. Its place is never read.</summary>
/// <param name="Taken">By the camera's own clock; null where it does not say.</param>
/// <param name="KnowsOffset">Whether the file says how far its clock is from UTC; else the owner's own offset was taken.</param>
/// <param name="Camera">What the camera calls itself; empty where it does not.</param>
public sealed record CameraNotes(DateTimeOffset? Taken, bool KnowsOffset, string Camera)
{
    private const int TagOffsetTime = 0x9010;
    private const int TagOffsetTimeOriginal = 0x9011;

    /// <summary>Largest EXIF block of a PNG that is read: they are a few kilobytes.</summary>
    private const int LargestBlock = 1 << 20;

    private static readonly CameraNotes none = new(null, false, "");

    /// <summary>Reads the notes; a file without them, or with ones that cannot be read, has none.</summary>
    public static CameraNotes Read(Stream file, string type, TimeZoneInfo zone)
    {
        try
        {
            file.Position = 0;
            return Of(Directories(file, type), zone);
        }
        catch (Exception e) when (e is ImageProcessingException or IOException or MetadataException or ArgumentException or FormatException or OverflowException or IndexOutOfRangeException)
        {
            // The picture may be whole all the same: it is kept, and its time is asked for.
            return none;
        }
    }

    private static IReadOnlyList<Directory> Directories(Stream file, string type) => type switch
    {
        PhotoType.Jpeg => JpegMetadataReader.ReadMetadata(file, [new ExifReader()]),
        PhotoType.Heic => HeifMetadataReader.ReadMetadata(file),
        PhotoType.WebP => WebPMetadataReader.ReadMetadata(file),
        _ => PngExif(file),
    };

    /// <summary>Only the EXIF chunk: the text chunks of a PNG are compressed and may unfold to any size.</summary>
    private static IReadOnlyList<Directory> PngExif(Stream png)
    {
        Span<byte> head = stackalloc byte[8];
        png.Position = 8;
        while (png.ReadAtLeast(head, 8, throwOnEndOfStream: false) == 8)
        {
            var length = BinaryPrimitives.ReadUInt32BigEndian(head);
            if (head[4..].SequenceEqual("eXIf"u8) && length <= LargestBlock)
            {
                var block = new byte[length];
                png.ReadExactly(block);
                return new ExifReader().Extract(new ByteArrayReader(block));
            }

            png.Seek(length + 4L, SeekOrigin.Current);
        }

        return [];
    }

    private static CameraNotes Of(IReadOnlyList<Directory> directories, TimeZoneInfo zone)
    {
        var main = directories.OfType<ExifIfd0Directory>().FirstOrDefault();
        var sub = directories.OfType<ExifSubIfdDirectory>().FirstOrDefault(d => d.ContainsTag(ExifDirectoryBase.TagDateTimeOriginal));
        var camera = $"{Text(main, ExifDirectoryBase.TagMake)} {Text(main, ExifDirectoryBase.TagModel)}".Trim();
        if (Clock(Text(sub, ExifDirectoryBase.TagDateTimeOriginal)) is not { } clock)
            return new CameraNotes(null, false, camera);

        // Fractions of a second keep photos of one burst in order.
        if (Text(sub, ExifDirectoryBase.TagSubsecondTimeOriginal) is { Length: > 0 and < 8 } fraction && fraction.All(char.IsAsciiDigit))
            clock = clock.AddSeconds(double.Parse($"0.{fraction}", CultureInfo.InvariantCulture));

        var offset = Offset(Text(sub, TagOffsetTimeOriginal)) ?? Offset(Text(sub, TagOffsetTime));
        return new CameraNotes(new DateTimeOffset(clock, offset ?? zone.GetUtcOffset(clock)), offset is not null, camera);
    }

    private static DateTime? Clock(string text) =>
        DateTime.TryParseExact(text, "yyyy:MM:dd HH:mm:ss", CultureInfo.InvariantCulture, DateTimeStyles.None, out var clock) && clock.Year > 1970 ? clock : null;

    private static TimeSpan? Offset(string text) =>
        text.Length == 6 && text[0] is '+' or '-' && TimeSpan.TryParseExact(text[1..], @"hh\:mm", CultureInfo.InvariantCulture, out var span) && span <= TimeSpan.FromHours(14)
            ? (text[0] == '-' ? -span : span)
            : null;

    private static string Text(Directory? directory, int tag) => directory?.GetString(tag)?.Trim('\0', ' ') ?? "";
}
