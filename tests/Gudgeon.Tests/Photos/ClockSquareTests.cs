using Gudgeon.Photos;
using SkiaSharp;

namespace Gudgeon.Tests.Photos;

public sealed class ClockSquareTests : IDisposable
{
    private static readonly DateTimeOffset shown = new(2026, 3, 29, 12, 3, 51, TimeSpan.Zero);
    private readonly string folder = Directory.CreateTempSubdirectory("gudgeon-clock-").FullName;

    [Theory]
    [InlineData(1, 0f)]
    [InlineData(6, 12f)]
    [InlineData(3, -20f)]
    public async Task Photo_of_the_square_tells_how_far_the_camera_is_ahead(ushort orientation, float askew)
    {
        var photo = new ExifBlock().Orientation(orientation).Model("Invented 1").Taken("2026:03:29 14:05:06").Offset("+02:00").Into(TestPictures.Jpeg(Square(ClockSquare.Text(shown), askew)));

        var clock = (await Read(photo)).Value;

        Assert.Equal(("Invented 1", TimeSpan.FromSeconds(75)), (clock.Camera, clock.Ahead));
        Assert.Empty(Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories));
    }

    [Fact]
    public async Task Photo_that_cannot_tell_is_refused_with_the_reason()
    {
        var dated = new ExifBlock().Taken("2026:03:29 14:05:06");
        Assert.Equal("clock.jpg: met a photo that does not say when it was taken; expected a photo as the camera made it. Take the photo again from nearer, or type both times below the square.",
            (await Read(TestPictures.Jpeg(Square(ClockSquare.Text(shown), 0)))).Refusals.Single().ToString());
        Assert.Contains("met no square that can be read", (await Read(dated.Into(TestPictures.Jpeg(800, 600)))).Refusals.Single().ToString());
        Assert.Contains("met another square than the clock's", (await Read(new ExifBlock().Taken("2026:03:29 14:05:06").Into(TestPictures.Jpeg(Square("HTTP://BENCH/K/3334", 0))))).Refusals.Single().ToString());
    }

    [Theory]
    [InlineData("2026-03-29 14:05:06", "2026-03-29 14:03:51", 75)]
    [InlineData("2026-03-29T14:03", "2026-03-29 14:05:06", -126)]
    public void Typed_times_tell_how_far_the_camera_is_ahead(string camera, string right, int seconds) =>
        Assert.Equal(TimeSpan.FromSeconds(seconds), ClockSquare.Typed(camera, right).Value);

    [Fact]
    public void Typed_times_that_are_none_are_both_said() =>
        Assert.Equal(["the time by the camera", "the right time"], ClockSquare.Typed("noon", "29.3.2026").Refusals.Select(r => r.Where));

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private Task<Gudgeon.Sums.Outcome<Gudgeon.Journal.CameraClock>> Read(byte[] photo) =>
        ClockSquare.Read(folder, new MemoryStream(photo), "clock.jpg", TimeZoneInfo.Utc, default);

    /// <summary>A screen with the square on a bench, seen a little askew.</summary>
    private static SKBitmap Square(string text, float askew)
    {
        const float module = 12;
        var (side, path) = Gudgeon.Pages.Squares.Draw(text);
        var picture = new SKBitmap(1600, 1200);
        using var canvas = new SKCanvas(picture);
        canvas.Clear(new SKColor(120, 115, 105));
        canvas.RotateDegrees(askew, 800, 600);
        canvas.Translate(800 - side * module / 2, 600 - side * module / 2);
        canvas.Scale(module);
        using var white = new SKPaint { Color = SKColors.White };
        using var black = new SKPaint { Color = new SKColor(25, 25, 25) };
        canvas.DrawRect(0, 0, side, side, white);
        using var modules = SKPath.ParseSvgPathData(path);
        canvas.DrawPath(modules, black);
        return picture;
    }
}
