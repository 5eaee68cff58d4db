using Microsoft.Playwright;
using static Gudgeon.FrontDoor.Tests.BrowserFixture;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>The job from end to end as a person does it, on a phone and at a desk. The engine is invented.</summary>
public sealed class WholePathTests(BrowserFixture browser, Workshop workshop) : IClassFixture<Workshop>
{
    public static TheoryData<int, int> Sizes => new() { { Phone.Width, Phone.Height }, { Desk.Width, Desk.Height } };

    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task Engine_taken_apart_and_put_back_reads_all_back(int width, int height)
    {
        var page = await browser.Open(workshop.Address, new ViewportSize { Width = width, Height = height });
        await page.GotoAsync("/");
        await page.LookAt("01-home");
        await StartBook(page, $"Hill climb four {width}");
        await page.LookAt("03-strip");

        await Do(page, "drain the coolant");
        await Do(page, "drain the oil");
        await TakeOff(page, "exhaust pipe");
        await page.LookAt("04-took-off");
        await CountFasteners(page, "3", "M10 by 40", "bag", "12");
        await page.LookAt("05-counted");
        await TakeOff(page, "drain plug");
        await TakeOff(page, "heat shield");
        await page.LookAt("06-strip-later");

        await Visit(page, "Account");
        await page.LookAt("07-account");
        await page.GetByRole(AriaRole.Searchbox).FillAsync("bag 12");
        await page.GetByRole(AriaRole.Searchbox).PressAsync("Enter");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("3 M10 by 40");
        await page.LookAt("08-found");

        await Visit(page, "Journal");
        await page.LookAt("09-journal");
        await Visit(page, "Findings");
        await page.LookAt("10-findings");
        await Visit(page, "Book");
        await page.LookAt("11-book");
        await page.GetByRole(AriaRole.Link, new() { Name = "Refit" }).ClickAsync();
        await page.LookAt("12-refit");
        await page.GetByRole(AriaRole.Link, new() { Name = "Exhaust pipe", Exact = true }).First.ClickAsync();
        await page.LookAt("13-part");
    }

    private static async Task StartBook(IPage page, string title)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = "Start a book" }).ClickAsync();
        await page.LookAt("02-start");
        await page.GetByLabel("What do you call it?").FillAsync(title);
        await page.GetByLabel("in line").CheckAsync();
        await page.GetByLabel("How many cylinders?").FillAsync("4");
        await page.GetByRole(AriaRole.Button, new() { Name = "Start the book" }).ClickAsync();
    }

    private static async Task Do(IPage page, string operation)
    {
        var button = page.GetByRole(AriaRole.Button, new() { Name = $"Done {operation}" });
        if (!await button.IsVisibleAsync())
            await page.GetByText("more, for later").ClickAsync();
        await button.ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("Done");
    }

    private static async Task TakeOff(IPage page, string part)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = $"Took it off {part}", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync($"{char.ToUpperInvariant(part[0])}{part[1..]} off");
    }

    private static async Task CountFasteners(IPage page, string count, string size, string sort, string place)
    {
        await page.Locator(".echo summary").First.ClickAsync();
        var form = page.Locator(".echo form.fastener-line").First;
        await form.GetByLabel("How many came out").FillAsync(count);
        await form.GetByLabel("Size").FillAsync(size);
        await form.GetByLabel(sort, new() { Exact = true }).CheckAsync();
        await form.GetByLabel("Written on it").FillAsync(place);
        await form.GetByRole(AriaRole.Button, new() { Name = "Record the fasteners" }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync($"{count} {size}");
    }

    private static async Task Visit(IPage page, string shelf) =>
        await page.GetByRole(AriaRole.Navigation, new() { Name = "Look up" }).GetByRole(AriaRole.Link, new() { Name = shelf }).ClickAsync();
}
