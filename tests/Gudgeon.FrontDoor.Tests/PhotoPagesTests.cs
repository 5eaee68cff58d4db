using Gudgeon.Journal;
using Microsoft.Playwright;
using static Gudgeon.FrontDoor.Tests.BrowserFixture;

namespace Gudgeon.FrontDoor.Tests;

public sealed class PhotoPagesTests(BrowserFixture browser) : IDisposable
{
    private static readonly string photosPath = $"/books/{ShopFloor.Slug}/photos";
    private readonly string files = Directory.CreateTempSubdirectory("gudgeon-files-").FullName;

    [Fact]
    public async Task Photos_many_at_once_are_taken_and_a_bad_one_costs_no_other()
    {
        await using var floor = await ShopFloor.Open();
        var page = await browser.Open(floor.Laptop, Phone);
        await page.GotoAsync(photosPath);
        await page.LookAt("photos-empty");

        string[] chosen = [.. Enumerable.Range(0, 6).Select(i => PhotoFiles.Jpeg(files, $"cover-{i}.jpg", i)), PhotoFiles.Text(files, "notes.jpg", "<script>alert(1)</script>")];
        await page.GetByLabel("Add photos").SetInputFilesAsync(chosen);
        await page.GetByRole(AriaRole.Button, new() { Name = "Add them" }).ClickAsync();

        await Assertions.Expect(page.Locator(".photo-progress")).ToContainTextAsync("7 of 7, 1 not taken");
        await Assertions.Expect(page.Locator(".photo-refused")).ToContainTextAsync("notes.jpg: met a file that is no photo, whatever its name says");
        await page.LookAt("photos-sent");
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator(".tiles li")).ToHaveCountAsync(6);
        await page.Locator(".tiles img").First.EvaluateAsync("i => i.decode()");
        await page.LookAt("photos");
        Assert.Equal(6, floor.Journal().Count(r => r.Entry is PhotoTaken));
    }

    [Fact]
    public async Task Photos_are_taken_without_script_and_the_same_ones_again_change_nothing()
    {
        await using var floor = await ShopFloor.Open();
        var page = await browser.Open(floor.Laptop, Desk, script: false);
        string[] chosen = [PhotoFiles.Jpeg(files, "a.jpg", 1), PhotoFiles.Text(files, "b.jpg", "no photo"), PhotoFiles.Jpeg(files, "c.jpg", 2)];
        for (var i = 0; i < 2; i++)
        {
            await page.GotoAsync($"{photosPath}?of=own.head");
            await page.GetByLabel("Add photos").SetInputFilesAsync(chosen);
            await page.GetByRole(AriaRole.Button, new() { Name = "Add them" }).ClickAsync();
            await Assertions.Expect(page.Locator("main")).ToContainTextAsync("2 taken");
            await Assertions.Expect(page.Locator(".refusal")).ToContainTextAsync("b.jpg");
        }

        var taken = floor.Journal().Select(r => r.Entry).OfType<PhotoTaken>().ToArray();
        Assert.Equal(["a.jpg", "c.jpg"], taken.Select(t => t.Name));
        Assert.All(taken, t => Assert.Equal(["own.head"], t.Of));
    }

    [Fact]
    public async Task Pins_by_touch_become_the_card_and_the_order()
    {
        await using var floor = await ShopFloor.Open();
        var page = await OpenPhoto(floor, Phone);
        var board = page.Locator("svg.pinboard");
        await board.ScrollIntoViewIfNeededAsync();
        var place = (await board.BoundingBoxAsync())!;
        foreach (var ((x, y), i) in PhotoFiles.Holes.Select((h, i) => (h, i)))
        {
            await page.Touchscreen.TapAsync(place.X + place.Width * x, place.Y + place.Height * y);
            await Assertions.Expect(page.Locator(".pin-said")).ToContainTextAsync($"Pin {i + 1} put");
        }

        await page.LookAt("pins-tapped");
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator("ul.pins li[data-row]")).ToHaveCountAsync(4);
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("Back in.*fastener 2 of the head joint") }).ClickAsync();
        await Assertions.Expect(page.Locator(".pin.back")).ToHaveCountAsync(1);
        await page.LookAt("pins");

        var pins = floor.Journal().Select(r => r.Entry).OfType<PinSet>().ToArray();
        Assert.Equal([1, 2, 3, 4], pins.Select(p => p.Number));
        foreach (var (pin, hole) in pins.Zip(PhotoFiles.Holes))
        {
            Assert.InRange((float)pin.X, hole.X - .01f, hole.X + .01f);
            Assert.InRange((float)pin.Y, hole.Y - .01f, hole.Y + .01f);
        }

        await page.GetByRole(AriaRole.Link, new() { Name = "Card and order of the head joint" }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("1 of 4 are back");
        await Assertions.Expect(page.Locator(".order").First).ToContainTextAsync("·");
        await page.LookAt("card");
    }

    [Fact]
    public async Task Pin_is_moved_by_mouse_and_by_keyboard()
    {
        await using var floor = await ShopFloor.Open();
        var page = await OpenPhoto(floor, Desk);
        var board = page.Locator("svg.pinboard");
        await page.GetByRole(AriaRole.Button, new() { Name = "Put the pin" }).ClickAsync();
        var pin = page.Locator("g.pin");
        await Assertions.Expect(pin).ToHaveCountAsync(1);

        await board.ScrollIntoViewIfNeededAsync();
        var place = (await board.BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(place.X + place.Width / 2, place.Y + place.Height / 2);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(place.X + place.Width * .3f, place.Y + place.Height * .4f, new() { Steps = 6 });
        await page.Mouse.UpAsync();
        var byMouse = await Eventually(() => floor.Journal().Select(r => r.Entry).OfType<PinMoved>().LastOrDefault(), m => m is not null);
        Assert.InRange(byMouse!.X, .29m, .31m);
        Assert.InRange(byMouse.Y, .39m, .41m);

        await pin.FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("ArrowDown");
        var byKey = await Eventually(() => floor.Journal().Select(r => r.Entry).OfType<PinMoved>().LastOrDefault(), m => m != byMouse);
        Assert.Equal(byMouse.X + .01m, byKey!.X, 3);
        Assert.Equal(byMouse.Y + .005m, byKey.Y, 3);
        await page.LookAt("pins-desk");
    }

    [Fact]
    public async Task Pins_work_without_script_by_their_places()
    {
        await using var floor = await ShopFloor.Open();
        var page = await OpenPhoto(floor, Phone, script: false);
        await page.GetByLabel("From the left, %").FillAsync("12.5");
        await page.GetByLabel("From the top, %").FillAsync("101");
        await page.GetByRole(AriaRole.Button, new() { Name = "Put the pin" }).ClickAsync();
        await Assertions.Expect(page.Locator(".refusal")).ToContainTextAsync("0 to 100, in hundredths of the photo");

        await page.GoBackAsync();
        await page.GetByLabel("From the left, %").FillAsync("12,5");
        await page.GetByLabel("From the top, %").FillAsync("25");
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Name" }).FillAsync("<b>long</b> one");
        await page.GetByRole(AriaRole.Button, new() { Name = "Put the pin" }).ClickAsync();
        await Assertions.Expect(page.Locator("ul.pins")).ToContainTextAsync("<b>long</b> one (fastener 1 of the head joint)");
        var pin = Assert.Single(floor.Journal().Select(r => r.Entry).OfType<PinSet>());
        Assert.Equal((.125m, .25m), (pin.X, pin.Y));
    }

    [Fact]
    public async Task Clock_page_square_photographed_puts_the_camera_right()
    {
        await using var floor = await ShopFloor.Open();
        var page = await browser.Open(floor.Laptop, Phone);
        await page.GotoAsync($"/books/{ShopFloor.Slug}/clock");
        await page.LookAt("clock");

        await page.GetByText("Type both times instead").ClickAsync();
        await page.GetByLabel("Time by the camera").FillAsync("2026-03-29 14:05:06");
        await page.GetByLabel("Right time at that moment").FillAsync("2026-03-29 14:03:51");
        await page.GetByRole(AriaRole.Button, new() { Name = "Put it right" }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("0.00:01:15 ahead");
        Assert.Equal(TimeSpan.FromSeconds(75), floor.Journal().Select(r => r.Entry).OfType<CameraClock>().Single().Ahead);
    }

    public void Dispose() => Directory.Delete(files, recursive: true);

    private async Task<IPage> OpenPhoto(ShopFloor floor, ViewportSize size, bool script = true)
    {
        var page = await browser.Open(floor.Laptop, size, script: script);
        await page.GotoAsync($"{photosPath}?of=own.head");
        await page.GetByLabel("Add photos").SetInputFilesAsync(PhotoFiles.Jpeg(files, "head.jpg", 3));
        await page.GetByRole(AriaRole.Button, new() { Name = "Add them" }).ClickAsync();
        if (!script)
            await page.GetByRole(AriaRole.Link, new() { Name = "To the photos" }).ClickAsync();
        await page.Locator(".tiles a").First.ClickAsync();
        await Assertions.Expect(page.Locator("svg.pinboard")).ToBeVisibleAsync();
        return page;
    }

    private static async Task<T> Eventually<T>(Func<T> look, Func<T, bool> good)
    {
        for (var i = 0; i < 50; i++)
        {
            if (look() is var seen && good(seen))
                return seen;
            await Task.Delay(100);
        }

        Assert.Fail("it did not come about in 5 s");
        return default!;
    }
}
