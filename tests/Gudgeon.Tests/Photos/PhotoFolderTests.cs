using Gudgeon.Photos;
using Gudgeon.Sums;
using SkiaSharp;

namespace Gudgeon.Tests.Photos;

public sealed class PhotoFolderTests : IDisposable
{
    private static readonly TimeZoneInfo ownZone = TimeZoneInfo.CreateCustomTimeZone("invented", TimeSpan.FromHours(2), null, null);
    private readonly string folder = Directory.CreateTempSubdirectory("gudgeon-photos-").FullName;

    private PhotoFolder Photos => new(folder);

    /// <summary>Where row 0 and column 0 of the file lie on the upright picture: EXIF 2.32 (CIPA DC-008-2019), table of tag 0x0112; from memory.</summary>
    [Theory]
    [InlineData(1, "top", "left")]
    [InlineData(2, "top", "right")]
    [InlineData(3, "bottom", "right")]
    [InlineData(4, "bottom", "left")]
    [InlineData(5, "left", "top")]
    [InlineData(6, "right", "top")]
    [InlineData(7, "right", "bottom")]
    [InlineData(8, "left", "bottom")]
    public async Task Orientation_is_turned_upright(ushort orientation, string rowZero, string columnZero)
    {
        var file = new ExifBlock().Orientation(orientation).Into(TestPictures.Jpeg(Stored(TestPictures.FourCorners(160, 120), rowZero, columnZero)));

        var arrival = (await Take(file)).Value;

        Assert.Equal((160, 120), (arrival.Width, arrival.Height));
        using var thumb = SKBitmap.Decode(Photos.Thumb(arrival.Hash));
        Assert.Equal((160, 120), (thumb.Width, thumb.Height));
        (int X, int Y)[] places = [(20, 20), (140, 20), (20, 100), (140, 100)];
        foreach (var (place, colour) in places.Zip(TestPictures.Corners))
            AssertNear(colour, thumb.GetPixel(place.X, place.Y));
    }

    [Fact]
    public async Task Time_with_an_offset_is_an_instant()
    {
        var file = new ExifBlock().Model("Invented 1").Taken("2026:03:29 14:05:06").Offset("-03:30").Into(TestPictures.Jpeg());

        var notes = (await Take(file)).Value.Notes;

        Assert.Equal(new DateTimeOffset(2026, 3, 29, 14, 5, 6, TimeSpan.FromHours(-3.5)), notes.Taken);
        Assert.True(notes.KnowsOffset);
        Assert.Equal("Invented 1", notes.Camera);
    }

    [Fact]
    public async Task Time_without_an_offset_is_read_in_the_owners_zone()
    {
        var notes = (await Take(new ExifBlock().Taken("2026:03:29 14:05:06").Into(TestPictures.Jpeg()))).Value.Notes;

        Assert.Equal(new DateTimeOffset(2026, 3, 29, 14, 5, 6, TimeSpan.FromHours(2)), notes.Taken);
        Assert.False(notes.KnowsOffset);
    }

    [Theory]
    [InlineData("0000:00:00 00:00:00")]
    [InlineData("2026:13:41 25:00:00")]
    [InlineData("yesterday")]
    public async Task Time_that_is_none_leaves_the_photo_without_one(string clock)
    {
        Assert.Null((await Take(new ExifBlock().Taken(clock).Into(TestPictures.Jpeg()))).Value.Notes.Taken);
    }

    [Fact]
    public async Task Broken_exif_does_not_cost_the_photo()
    {
        var block = new ExifBlock().Taken("2026:03:29 14:05:06").Into(TestPictures.Jpeg());
        block.AsSpan(20, 30).Fill(0xFF);

        Assert.Null((await Take(block)).Value.Notes.Taken);
    }

    [Fact]
    public async Task Png_time_is_read_from_its_exif_chunk()
    {
        var png = TestPictures.Png();
        byte[] dated = [.. png[..33], .. TestPictures.Chunk("eXIf"u8, new ExifBlock().Taken("2026:03:29 14:05:06").Offset("+00:00").Tiff()), .. png[33..]];

        Assert.Equal(new DateTimeOffset(2026, 3, 29, 14, 5, 6, TimeSpan.Zero), (await Take(dated)).Value.Notes.Taken);
    }

    [Fact]
    public async Task Original_is_kept_to_the_byte_under_its_hash()
    {
        var file = TestPictures.Jpeg();
        var arrival = (await Take(file)).Value;

        Assert.Equal(Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(file)), arrival.Hash);
        Assert.Equal(file, await File.ReadAllBytesAsync(Photos.Original(arrival.Hash, arrival.Type)));
    }

    [Fact]
    public async Task Same_photo_twice_is_kept_once()
    {
        await Take(TestPictures.Jpeg());
        await Take(TestPictures.Jpeg());

        Assert.Equal(2, Directory.GetFiles(Photos.Folder).Length);
    }

    [Fact]
    public async Task Type_is_told_by_content_not_by_name()
    {
        Assert.Equal(PhotoType.Png, (await Take(TestPictures.Png(), "holiday.jpg")).Value.Type);
        Assert.Equal(PhotoType.WebP, (await Take(TestPictures.WebP(), "holiday.jpg")).Value.Type);
        Assert.Equal(PhotoType.Jpeg, (await Take(TestPictures.Jpeg(), "holiday.png")).Value.Type);
    }

    [Fact]
    public async Task File_that_only_calls_itself_a_photo_is_refused()
    {
        await Refused("<html><script>alert(1)</script>"u8.ToArray(),
            "cover.jpg: met a file that is no photo, whatever its name says; expected a JPEG, PNG, WebP or HEIC picture. Send the photo itself.");
        await Refused("GIF89a\u0001\0\u0001\0"u8.ToArray(),
            "cover.jpg: met a file that is no photo, whatever its name says; expected a JPEG, PNG, WebP or HEIC picture. Send the photo itself.");
        await Refused([], "cover.jpg: met an empty file; expected a JPEG, PNG, WebP or HEIC picture. Send the photo itself.");
    }

    [Fact]
    public async Task Jpeg_mark_with_nothing_behind_it_is_refused()
    {
        await Refused([0xFF, 0xD8, 0xFF, 0xE0, .. new byte[200]],
            "cover.jpg: met a jpeg file whose header cannot be read; expected a whole picture. Send it again from the phone, or take the photo again.");
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(0.6)]
    [InlineData(0.95)]
    public async Task Photo_that_breaks_off_is_refused(double part)
    {
        using var noise = Noise(800, 600);
        var whole = TestPictures.Jpeg(noise);

        await Refused(whole[..(int)(whole.Length * part)],
            "cover.jpg: met a file that ends in the middle of the picture; expected a whole picture. Send it again from the phone, or take the photo again.");
    }

    [Theory]
    [InlineData(20_000)]
    [InlineData(60_000)]
    public async Task Png_that_would_unfold_to_gigabytes_is_refused_by_its_header(int side)
    {
        var bomb = TestPictures.WhiteSquarePng(side);
        var before = Environment.WorkingSet;

        await Refused(bomb, $"cover.jpg: met {side} × {side} pixels; expected at most 50 million pixels for this kind of file. Send a smaller copy.");

        // One byte a pixel would already be 400 MB: it cannot have been decoded within this.
        Assert.InRange(Environment.WorkingSet - before, long.MinValue, 100L << 20);
    }

    [Fact]
    public async Task Png_just_within_the_limit_is_taken()
    {
        Assert.Equal(7071, (await Take(TestPictures.WhiteSquarePng(7071))).Value.Width);
        Assert.False((await Take(TestPictures.WhiteSquarePng(7072))).Ok);
    }

    [Fact]
    public async Task File_over_the_size_limit_is_refused_and_nothing_of_it_stays()
    {
        await using var endless = new Endless(PhotoLimits.FileBytes + 1);

        var outcome = await Photos.Take(endless, "long.jpg", ownZone, default);

        Assert.Equal("long.jpg: met more than 64 MB; expected a photo of at most 64 MB. Send a smaller copy.", outcome.Refusals.Single().ToString());
        Assert.Empty(Directory.GetFiles(Photos.Folder));
    }

    [Fact]
    public async Task Heic_is_kept_though_it_cannot_be_shown()
    {
        var arrival = (await Take(TestPictures.HeicHead())).Value;

        Assert.Equal((PhotoType.Heic, 0, 0), (arrival.Type, arrival.Width, arrival.Height));
        Assert.True(File.Exists(Photos.Original(arrival.Hash, PhotoType.Heic)));
    }

    [Fact]
    public async Task What_is_shown_and_shared_carries_no_place()
    {
        var file = new ExifBlock().Model("Invented 1").Taken("2026:03:29 14:05:06").Place().Into(TestPictures.Jpeg(2400, 1800));
        var given = MetadataExtractor.ImageMetadataReader.ReadMetadata(new MemoryStream(file));
        Assert.Contains(given, d => d is MetadataExtractor.Formats.Exif.GpsDirectory);

        var arrival = (await Take(file)).Value;
        foreach (var shared in new[] { Photos.Thumb(arrival.Hash), Photos.View(arrival.Hash, arrival.Type).Value })
        {
            Assert.DoesNotContain(MetadataExtractor.ImageMetadataReader.ReadMetadata(shared), d => d is MetadataExtractor.Formats.Exif.ExifDirectoryBase or MetadataExtractor.Formats.Xmp.XmpDirectory);
            Assert.DoesNotContain("Exif", System.Text.Encoding.Latin1.GetString(await File.ReadAllBytesAsync(shared)), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(4032, 3024, 480, 360)]
    [InlineData(3024, 4032, 360, 480)]
    [InlineData(100, 50, 100, 50)]
    [InlineData(5000, 10, 480, 1)]
    public async Task Thumb_fits_and_keeps_its_shape(int width, int height, int thumbWidth, int thumbHeight)
    {
        var arrival = (await Take(TestPictures.Jpeg(width, height))).Value;

        using var thumb = SKBitmap.Decode(Photos.Thumb(arrival.Hash));
        Assert.Equal((thumbWidth, thumbHeight), (thumb.Width, thumb.Height));
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private Task<Outcome<Arrival>> Take(byte[] file, string name = "cover.jpg") => Photos.Take(new MemoryStream(file), name, ownZone, default);

    private async Task Refused(byte[] file, string message)
    {
        var outcome = await Take(file);

        Assert.Equal(message, Assert.Single(outcome.Refusals).ToString());
        Assert.Empty(Directory.GetFiles(Photos.Folder));
    }

    private static void AssertNear(SKColor expected, SKColor met) =>
        Assert.True(Math.Abs(expected.Red - met.Red) + Math.Abs(expected.Green - met.Green) + Math.Abs(expected.Blue - met.Blue) < 40, $"{expected} expected, {met} met");

    /// <summary>The picture as a sensor lying that way stores it: for each stored pixel, the upright one that the definition names.</summary>
    private static SKBitmap Stored(SKBitmap upright, string rowZero, string columnZero)
    {
        var sideways = rowZero is "left" or "right";
        var stored = sideways ? new SKBitmap(upright.Height, upright.Width) : new SKBitmap(upright.Width, upright.Height);
        for (var row = 0; row < stored.Height; row++)
        {
            for (var column = 0; column < stored.Width; column++)
            {
                var (x, y) = sideways ? (row, column) : (column, row);
                if (rowZero == "right" || columnZero == "right")
                    x = upright.Width - 1 - x;
                if (rowZero == "bottom" || columnZero == "bottom")
                    y = upright.Height - 1 - y;
                stored.SetPixel(column, row, upright.GetPixel(x, y));
            }
        }

        return stored;
    }

    private static SKBitmap Noise(int width, int height)
    {
        var random = new Random(5);
        var picture = new SKBitmap(width, height);
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
                picture.SetPixel(x, y, new SKColor((uint)random.Next() | 0xFF000000));
        }

        return picture;
    }

    /// <summary>A JPEG mark and then nothing but zeros, without holding them.</summary>
    private sealed class Endless(long length) : Stream
    {
        private long at;

        public override bool CanRead => true;
        public override bool CanSeek => false;
        public override bool CanWrite => false;
        public override long Length => length;
        public override long Position { get => at; set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var n = (int)Math.Min(count, length - at);
            Array.Clear(buffer, offset, n);
            at += n;
            return n;
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
