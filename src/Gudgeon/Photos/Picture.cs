using Gudgeon.Sums;
using SkiaSharp;

namespace Gudgeon.Photos;

/// <summary>A picture file, opened as far as its header. Decoding turns it upright.</summary>
public sealed class Picture : IDisposable
{
    private const int JpegQuality = 82;
    private static readonly SemaphoreSlim decoding = new(PhotoLimits.AtOnce);
    private readonly SKCodec codec;

    private Picture(SKCodec codec) => this.codec = codec;

    /// <summary>Pixels across, turned upright.</summary>
    public int Width => IsOnItsSide ? codec.Info.Height : codec.Info.Width;

    /// <summary>Pixels down, turned upright.</summary>
    public int Height => IsOnItsSide ? codec.Info.Width : codec.Info.Height;

    private bool IsOnItsSide => codec.EncodedOrigin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;

    /// <summary>Reads the header and refuses what is no picture or would not fit into memory; nothing is decoded.</summary>
    public static Outcome<Picture> Open(string file, string type, string name)
    {
        var codec = SKCodec.Create(file);
        if (codec is null)
            return Outcome.Refused<Picture>(new Refusal(name, $"a {type} file whose header cannot be read", "a whole picture", "Send it again from the phone, or take the photo again"));

        var whole = type == PhotoType.Png || (type == PhotoType.Jpeg && IsProgressive(file));
        var most = whole ? PhotoLimits.WholePixels : PhotoLimits.ScaledPixels;
        if ((long)codec.Info.Width * codec.Info.Height > most)
        {
            var met = $"{codec.Info.Width} × {codec.Info.Height} pixels";
            codec.Dispose();
            return Outcome.Refused<Picture>(new Refusal(name, met, $"at most {most / 1_000_000} million pixels for this kind of file", "Send a smaller copy"));
        }

        return Outcome.Of(new Picture(codec));
    }

    /// <summary>An upright JPEG of the picture whose longer side is no more than <paramref name="longest"/>; carries nothing of what the camera wrote beside the picture.</summary>
    public Outcome<byte[]> Shrink(int longest, string name) => Decode(longest, name).Then(small =>
    {
        using (small)
        using (var data = small.Encode(SKEncodedImageFormat.Jpeg, JpegQuality))
            return Outcome.Of(data.ToArray());
    });

    /// <summary>The picture, upright, its longer side no more than <paramref name="longest"/>.</summary>
    public Outcome<SKBitmap> Decode(int longest, string name)
    {
        decoding.Wait();
        try
        {
            using var raw = new SKBitmap();
            return DecodeInto(raw, longest) is { } fault
                ? Outcome.Refused<SKBitmap>(new Refusal(name, fault, "a whole picture", "Send it again from the phone, or take the photo again"))
                : Outcome.Of(Upright(raw, longest));
        }
        finally
        {
            decoding.Release();
        }
    }

    public void Dispose() => codec.Dispose();

    private static bool IsProgressive(string file)
    {
        using var stream = File.OpenRead(file);
        return PhotoType.IsProgressiveJpeg(stream);
    }

    private string? DecodeInto(SKBitmap raw, int longest)
    {
        var info = new SKImageInfo(codec.Info.Width, codec.Info.Height, SKColorType.Rgba8888, SKAlphaType.Premul);
        var size = codec.GetScaledDimensions(Math.Min(1f, longest / (float)Math.Max(info.Width, info.Height)));
        if (Math.Max(size.Width, size.Height) < Math.Min(longest, Math.Max(info.Width, info.Height)))
            size = codec.GetScaledDimensions(Math.Min(1f, (longest + longest / 4f) / Math.Max(info.Width, info.Height)));
        info = info.WithSize(size.Width, size.Height);
        if (!raw.TryAllocPixels(info))
            return $"{info.Width} × {info.Height} pixels, for which there is no memory";

        return codec.GetPixels(info, raw.GetPixels()) switch
        {
            SKCodecResult.Success => null,
            SKCodecResult.IncompleteInput => "a file that ends in the middle of the picture",
            var result => $"a damaged picture ({result})",
        };
    }

    private SKBitmap Upright(SKBitmap raw, int longest)
    {
        // By the whole picture's sides: those of the decoded one are rounded already.
        var scale = Math.Min(1f, longest / (float)Math.Max(Width, Height));
        var (w, h) = (Math.Max(1, (int)MathF.Round(codec.Info.Width * scale)), Math.Max(1, (int)MathF.Round(codec.Info.Height * scale)));
        var upright = new SKBitmap(new SKImageInfo(IsOnItsSide ? h : w, IsOnItsSide ? w : h, SKColorType.Rgba8888, SKAlphaType.Premul));
        using var canvas = new SKCanvas(upright);
        using var image = SKImage.FromPixels(raw.PeekPixels());

        // What is transparent would come out black in a JPEG.
        canvas.Clear(SKColors.White);
        canvas.SetMatrix(Turn(codec.EncodedOrigin, w, h));
        canvas.DrawImage(image, SKRect.Create(w, h), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        return upright;
    }

    /// <summary>From the picture as it lies in the file, w by h, to the upright one.</summary>
    private static SKMatrix Turn(SKEncodedOrigin origin, float w, float h) => origin switch
    {
        SKEncodedOrigin.TopRight => new SKMatrix(-1, 0, w, 0, 1, 0, 0, 0, 1),
        SKEncodedOrigin.BottomRight => new SKMatrix(-1, 0, w, 0, -1, h, 0, 0, 1),
        SKEncodedOrigin.BottomLeft => new SKMatrix(1, 0, 0, 0, -1, h, 0, 0, 1),
        SKEncodedOrigin.LeftTop => new SKMatrix(0, 1, 0, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightTop => new SKMatrix(0, -1, h, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightBottom => new SKMatrix(0, -1, h, -1, 0, w, 0, 0, 1),
        SKEncodedOrigin.LeftBottom => new SKMatrix(0, 1, 0, -1, 0, w, 0, 0, 1),
        _ => SKMatrix.Identity,
    };
}
