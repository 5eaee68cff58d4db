using System.Buffers.Binary;
using System.Text;

namespace Gudgeon.Tests.Photos;

/// <summary>Writes an EXIF block from the layout of TIFF 6.0 section 2 and the tags of EXIF 2.32: an oracle that owes nothing to the reader.</summary>
internal sealed class ExifBlock
{
    private readonly List<(ushort Tag, ushort Type, byte[] Value)> main = [];
    private readonly List<(ushort Tag, ushort Type, byte[] Value)> photo = [];
    private readonly List<(ushort Tag, ushort Type, byte[] Value)> place = [];

    public ExifBlock Orientation(ushort value) => Add(main, 0x0112, 3, Short(value));

    public ExifBlock Model(string text) => Add(main, 0x0110, 2, Ascii(text));

    public ExifBlock Taken(string clock) => Add(photo, 0x9003, 2, Ascii(clock));

    public ExifBlock Offset(string offset) => Add(photo, 0x9011, 2, Ascii(offset));

    /// <summary>An invented place in the open sea.</summary>
    public ExifBlock Place()
    {
        Add(place, 0x0001, 2, Ascii("N"));
        return Add(place, 0x0002, 5, [.. Ratio(41), .. Ratio(30), .. Ratio(0)]);
    }

    /// <summary>The block as it stands in a PNG or behind the mark of a JPEG.</summary>
    public byte[] Tiff()
    {
        var ifd0 = 8;
        var extra = (photo.Count > 0 ? 1 : 0) + (place.Count > 0 ? 1 : 0);
        var photoAt = ifd0 + Size(main, extra);
        var placeAt = photoAt + (photo.Count > 0 ? Size(photo, 0) : 0);
        if (photo.Count > 0)
            Add(main, 0x8769, 4, Long(photoAt));
        if (place.Count > 0)
            Add(main, 0x8825, 4, Long(placeAt));
        return [.. "II*\0"u8, .. Long(ifd0), .. Write(main, ifd0), .. photo.Count > 0 ? Write(photo, photoAt) : [], .. place.Count > 0 ? Write(place, placeAt) : []];
    }

    /// <summary>The JPEG with this block right behind its start.</summary>
    public byte[] Into(byte[] jpeg)
    {
        byte[] body = [.. "Exif\0\0"u8, .. Tiff()];
        var length = new byte[2];
        BinaryPrimitives.WriteUInt16BigEndian(length, (ushort)(body.Length + 2));
        return [.. jpeg[..2], 0xFF, 0xE1, .. length, .. body, .. jpeg[2..]];
    }

    private ExifBlock Add(List<(ushort, ushort, byte[])> to, ushort tag, ushort type, byte[] value)
    {
        to.Add((tag, type, value));
        return this;
    }

    private static int Size(List<(ushort, ushort, byte[] Value)> ifd, int extra) =>
        2 + (ifd.Count + extra) * 12 + 4 + ifd.Where(e => e.Value.Length > 4).Sum(e => e.Value.Length);

    private static byte[] Write(List<(ushort Tag, ushort Type, byte[] Value)> ifd, int at)
    {
        var head = new List<byte>([.. Short((ushort)ifd.Count)]);
        var tail = new List<byte>();
        var tailAt = at + 2 + ifd.Count * 12 + 4;
        foreach (var (tag, type, value) in ifd)
        {
            var count = value.Length / type switch { 3 => 2, 4 => 4, 5 => 8, _ => 1 };
            head.AddRange([.. Short(tag), .. Short(type), .. Long(count)]);
            if (value.Length <= 4)
            {
                head.AddRange([.. value, .. new byte[4 - value.Length]]);
            }
            else
            {
                head.AddRange(Long(tailAt + tail.Count));
                tail.AddRange(value);
            }
        }

        return [.. head, .. Long(0), .. tail];
    }

    private static byte[] Ascii(string text) => [.. Encoding.ASCII.GetBytes(text), 0];

    private static byte[] Short(ushort value) => [(byte)value, (byte)(value >> 8)];

    private static byte[] Long(int value) => [(byte)value, (byte)(value >> 8), (byte)(value >> 16), (byte)(value >> 24)];

    private static byte[] Ratio(int value) => [.. Long(value), .. Long(1)];
}
