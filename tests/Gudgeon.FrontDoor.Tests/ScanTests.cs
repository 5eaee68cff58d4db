using Gudgeon.Journal;
using Gudgeon.Labels;
using Microsoft.Playwright;
using SkiaSharp;
using static Gudgeon.FrontDoor.Tests.BrowserFixture;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>What is this and where does it go: a label before the camera, or on a photo.</summary>
public sealed class ScanTests(BrowserFixture browser) : IDisposable
{
    private static readonly string Code = LabelCode.Of(7);
    private readonly string files = Directory.CreateTempSubdirectory("gudgeon-scan-").FullName;

    [Fact]
    public async Task Label_held_before_the_camera_opens_what_it_is_on()
    {
        await using var floor = await LabelledFloor();
        // The bench first, then another square, then the label as it was printed when the laptop had another address.
        using var bench = PhotoFiles.Label("A RECEIPT", 640, 480);
        using var label = PhotoFiles.Label(LabelSquare.Text("http://192.168.7.9:5080", Code), 640, 480);
        await using var own = await browser.LaunchWithCamera(PhotoFiles.Film(files, bench, bench, label, label));
        var page = await Open(own, floor.Laptop, Phone);
        await page.GotoAsync($"/books/{ShopFloor.Slug}/find");
        await page.GetByRole(AriaRole.Link, new() { Name = "Scan a label" }).ClickAsync();
        await page.LookAt("scan");
        await page.GetByRole(AriaRole.Button, new() { Name = "Open the camera" }).ClickAsync();
        await Assertions.Expect(page.Locator(".scan-words")).ToContainTextAsync("A RECEIPT");
        await page.ScreenshotAsync(new() { Path = Path.Combine(Screens, "scan-open-390.png") });
        await page.WaitForURLAsync($"**/k/{Code}");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Bag 12");
    }

    [Fact]
    public async Task Camera_that_is_refused_leaves_the_photo_and_the_code()
    {
        await using var floor = await LabelledFloor();
        var page = await browser.Open(floor.Laptop, Phone);
        await page.AddInitScriptAsync("navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('no', 'NotAllowedError'))");
        await page.GotoAsync("/scan");
        await page.GetByRole(AriaRole.Button, new() { Name = "Open the camera" }).ClickAsync();
        await Assertions.Expect(page.Locator(".scan-words")).ToContainTextAsync("does not let this page use the camera");
        await page.GetByLabel("Photograph the label").SetInputFilesAsync(PhotoFiles.Jpeg(files, "bench.jpg", 1));
        await Assertions.Expect(page.Locator(".refusal")).ToContainTextAsync("no square that can be read");
        await page.LookAt("scan-refused");
        await page.GetByLabel("Photograph the label").SetInputFilesAsync(Photo("label.jpg", LabelSquare.Text("http://192.168.7.9:5080", Code)));
        await page.WaitForURLAsync($"**/k/{Code}");
    }

    [Fact]
    public async Task Photo_of_a_label_is_read_without_script_and_one_of_none_is_refused()
    {
        await using var floor = await LabelledFloor();
        var page = await browser.Open(floor.Laptop, Phone, script: false);
        await page.GotoAsync("/scan");
        foreach (var (photo, met) in new[]
        {
            (PhotoFiles.Jpeg(files, "bench.jpg", 1), "no square that can be read"),
            (Photo("receipt.jpg", "A RECEIPT"), "a square that is no label's: \"A RECEIPT\""),
            (Photo("worn.jpg", LabelSquare.Text("http://192.168.7.9:5080", "3334")), "3334"),
            (PhotoFiles.Text(files, "notes.jpg", "no photo"), "a file that is no photo"),
        })
        {
            await page.GetByLabel("Photograph the label").SetInputFilesAsync(photo);
            await page.GetByRole(AriaRole.Button, new() { Name = "Read it" }).ClickAsync();
            await Assertions.Expect(page.Locator(".refusal")).ToContainTextAsync(met);
        }

        await page.GetByLabel("Photograph the label").SetInputFilesAsync(Photo("label.jpg", LabelSquare.Text("http://192.168.7.9:5080", Code)));
        await page.GetByRole(AriaRole.Button, new() { Name = "Read it" }).ClickAsync();
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync($"Label {Code}");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Bag 12");
        Assert.Empty(Directory.EnumerateDirectories(Path.GetTempPath(), "square-*"));
    }

    public void Dispose() => Directory.Delete(files, recursive: true);

    private static async Task<ShopFloor> LabelledFloor()
    {
        var floor = await ShopFloor.Open();
        floor.ByCommand(new Tell(new LabelMade(Code, null, "bag 12", null)));
        return floor;
    }

    private string Photo(string name, string square)
    {
        using var picture = PhotoFiles.Label(square, 3000, 2250);
        using var data = picture.Encode(SKEncodedImageFormat.Jpeg, 85);
        var file = Path.Combine(files, name);
        File.WriteAllBytes(file, data.ToArray());
        return file;
    }
}
