using System.Diagnostics;
using Gudgeon.Journal;
using Gudgeon.Photos;
using SkiaSharp;

namespace Gudgeon.Bench;

/// <summary>
/// Photos of 12 megapixels into a book (streamed to disk, hashed, header checked, upright thumbnail, durable entry), against the image library's
/// own way to a thumbnail of the same size from the same bytes in memory, turn about in one run.
/// </summary>
internal static class PhotoBench
{
    private const int Usual = 500;
    private const int Different = 8;
    private const int Width = 4032;
    private const int Height = 3024;
    private const int Warm = 5;

    /// <param name="count">How many photos; fewer where time is short, and said.</param>
    public static async Task Run(int? count)
    {
        var many = count ?? Usual;
        var folder = Directory.CreateTempSubdirectory("gudgeon-bench-").FullName;
        try
        {
            using var book = Books.Start(folder, "photos");
            var photos = new PhotoFolder(book.Folder);
            byte[][] pictures = [.. Enumerable.Range(0, Different).Select(Picture)];
            var (ours, yardstick) = (new Sample(), new Sample());
            for (var i = 0; i < many + Warm; i++)
            {
                var file = Marked(pictures[i % Different], i);
                var watch = Stopwatch.StartNew();
                var arrival = await photos.Take(new MemoryStream(file), $"{i}.jpg", TimeZoneInfo.Utc, default);
                var answer = PhotoAnswer.Record(book, $"{i}.jpg", arrival, null, $"photo-{i}", "bench", DateTimeOffset.UnixEpoch);
                var mine = watch.Elapsed;
                if (answer.Hash is null || answer.WasThere)
                {
                    throw new InvalidOperationException($"photo {i} was not taken: {string.Join(' ', answer.Refusals)}");
                }

                watch.Restart();
                var size = Thumbnail(file);
                var theirs = watch.Elapsed;
                if (size == 0)
                {
                    throw new InvalidOperationException("the yardstick made nothing");
                }

                if (i >= Warm)
                {
                    ours.Add(mine);
                    yardstick.Add(theirs);
                }
            }

            using var process = Process.GetCurrentProcess();
            Console.WriteLine($"photo: {many} photos of {Width} x {Height} ({pictures.Average(p => p.Length) / 1e6:0.0} MB) taken in {Sample.Show(ours.Median)} ms each, library thumbnail {Sample.Show(yardstick.Median)} ms (medians), ratio {Sample.Show(ours.Median / yardstick.Median)}; peak memory of the run {process.PeakWorkingSet64 >> 20} MB");
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    /// <summary>Decoded at the nearest scale that the library offers, drawn small, encoded: nothing checked, turned or kept.</summary>
    private static long Thumbnail(byte[] file)
    {
        using var data = SKData.CreateCopy(file);
        using var codec = SKCodec.Create(data);
        var scaled = codec.GetScaledDimensions(PhotoLimits.ThumbPixels / (float)codec.Info.Width);
        using var raw = new SKBitmap(codec.Info.WithSize(scaled.Width, scaled.Height));
        codec.GetPixels(raw.Info, raw.GetPixels());
        using var small = raw.Resize(new SKImageInfo(PhotoLimits.ThumbPixels, PhotoLimits.ThumbPixels * Height / Width), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        using var encoded = small.Encode(SKEncodedImageFormat.Jpeg, 82);
        return encoded.Size;
    }

    /// <summary>Invented: soft shapes with grain, so that it packs about as a photograph does.</summary>
    private static byte[] Picture(int seed)
    {
        using var picture = new SKBitmap(Width, Height);
        using (var canvas = new SKCanvas(picture))
        {
            using var grain = new SKPaint { Shader = SKShader.CreatePerlinNoiseFractalNoise(0.02f, 0.03f, 5, seed) };
            using var metal = new SKPaint { Color = new SKColor(150, 150, 145, 150), IsAntialias = true };
            canvas.Clear(new SKColor(80, 75, 70));
            canvas.DrawRect(0, 0, Width, Height, grain);
            for (var i = 0; i < 40; i++)
            {
                canvas.DrawCircle((i * 911 + seed * 97) % Width, i * 577 % Height, 40 + i * 7 % 160, metal);
            }
        }

        return picture.Encode(SKEncodedImageFormat.Jpeg, 88).ToArray();
    }

    /// <summary>The picture with a comment of its own behind its start: another file, another hash, the same work.</summary>
    private static byte[] Marked(byte[] jpeg, int number) =>
        [.. jpeg.AsSpan(0, 2), 0xFF, 0xFE, 0, 6, (byte)(number >> 24), (byte)(number >> 16), (byte)(number >> 8), (byte)number, .. jpeg.AsSpan(2)];
}
