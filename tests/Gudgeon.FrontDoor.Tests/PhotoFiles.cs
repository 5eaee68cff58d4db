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

    /// <summary>A label with a QR square, held a little askew before a bench.</summary>
    public static SKBitmap Label(string square, int width, int height)
    {
        var picture = new SKBitmap(width, height);
        using var canvas = new SKCanvas(picture);
        canvas.Clear(new SKColor(120, 115, 105));
        var (side, path) = Gudgeon.Pages.Squares.Draw(square);
        canvas.Translate(width / 2f, height / 2f);
        canvas.RotateDegrees(9);
        canvas.Scale(height * .45f / side);
        canvas.Translate(-side / 2f, -side / 2f);
        using var white = new SKPaint { Color = SKColors.White };
        using var black = new SKPaint { Color = new SKColor(25, 25, 25) };
        canvas.DrawRect(0, 0, side * 1.8f, side, white);
        using var modules = SKPath.ParseSvgPathData(path);
        canvas.DrawPath(modules, black);
        return picture;
    }

    /// <summary>A film of pictures, one a second, as raw frames (YUV4MPEG2, grey): the form in which a browser takes a camera's part from a file.</summary>
    public static string Film(string folder, params SKBitmap[] pictures)
    {
        var file = Path.Combine(folder, "camera.y4m");
        using var film = File.Create(file);
        film.Write(System.Text.Encoding.ASCII.GetBytes($"YUV4MPEG2 W{pictures[0].Width} H{pictures[0].Height} F1:1 Ip A1:1 C420jpeg\n"));
        foreach (var picture in pictures)
        {
            film.Write("FRAME\n"u8);
            film.Write(picture.Pixels.Select(p => (byte)((p.Red + p.Green + p.Blue) / 3)).ToArray());
            film.Write(Enumerable.Repeat((byte)128, picture.Width * picture.Height / 2).ToArray());
        }

        return file;
    }

    public static string Text(string folder, string name, string text)
    {
        var file = Path.Combine(folder, name);
        File.WriteAllText(file, text);
        return file;
    }
}
