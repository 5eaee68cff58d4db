using SkiaSharp;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>Invented photos on disk, to be chosen in a file box.</summary>
internal static class PhotoFiles
{
    public static string Jpeg(string folder, string name, int seed, int width = 1200, int height = 900)
    {
        using var picture = new SKBitmap(width, height);
        using var canvas = new SKCanvas(picture);
        canvas.Clear(new SKColor((byte)(90 + seed * 20), 110, 100));
        using var metal = new SKPaint { Color = new SKColor(190, 190, 185), IsAntialias = true };
        using var hole = new SKPaint { Color = new SKColor(40, 40, 40), IsAntialias = true };
        canvas.DrawRoundRect(SKRect.Create(width * .1f, height * .2f, width * .8f, height * .6f), 40, 40, metal);
        foreach (var (x, y) in Holes)
            canvas.DrawCircle(width * x, height * y, 22, hole);
        var file = Path.Combine(folder, name);
        using var data = picture.Encode(SKEncodedImageFormat.Jpeg, 85);
        File.WriteAllBytes(file, data.ToArray());
        return file;
    }

    /// <summary>Where the holes are, in parts of the photo.</summary>
    public static readonly (float X, float Y)[] Holes = [(.2f, .3f), (.8f, .3f), (.8f, .7f), (.2f, .7f)];

    public static string Text(string folder, string name, string text)
    {
        var file = Path.Combine(folder, name);
        File.WriteAllText(file, text);
        return file;
    }
}
