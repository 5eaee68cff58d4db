using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Gudgeon.FrontDoor.Tests.BrowserFixture;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>The job from end to end as a person does it, on a phone and at a desk. The engine is invented.</summary>
public sealed partial class WholePathTests(BrowserFixture browser, Workshop workshop) : IClassFixture<Workshop>
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
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Say what you did" }).FillAsync("heat shield off, two M8 by 20, bag 7");
        await Tap(page, page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }));
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("Heat shield off");
        await page.LookAt("05-said");
        for (var off = 2; off < 10; off++)
            await TakeOffNext(page);
        await page.LookAt("06-strip-later");
        await StrikeOutLast(page);
        await page.LookAt("07-struck");

        await Visit(page, "Account");
        await page.LookAt("08-account");
        await page.GetByRole(AriaRole.Searchbox).FillAsync("bag 12");
        await page.GetByRole(AriaRole.Searchbox).PressAsync("Enter");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("3 M10 by 40");
        await page.LookAt("09-found");

        await Visit(page, "Journal");
        await page.LookAt("10-journal");
        await Visit(page, "Findings");
        await page.LookAt("11-findings");
        await Visit(page, "Book");
        await page.LookAt("12-book");
        await Go(page, "Refit");
        await page.LookAt("13-refit");
        await page.GetByRole(AriaRole.Link, new() { Name = "Exhaust pipe", Exact = true }).First.ClickAsync();
        await page.LookAt("14-part");

        await Go(page, "Refit");
        await page.GetByRole(AriaRole.Link, new() { Name = "Is it all back?" }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("not back");
        await page.LookAt("15-not-all-back");
        await Go(page, "Refit");
        await PutAllBack(page);
        await page.LookAt("16-refit-done");
        await page.GetByRole(AriaRole.Link, new() { Name = "Is it all back?" }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("All back.");
        await page.LookAt("17-all-back");
    }

    private static async Task TakeOffNext(IPage page) => await Tap(page, page.Locator("main").GetByRole(AriaRole.Button, new() { NameRegex = TookOff() }).First);

    private static async Task StrikeOutLast(IPage page)
    {
        await Tap(page, page.Locator(".echo").GetByRole(AriaRole.Button, new() { NameRegex = StrikeOut() }).First);
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("Struck out:");
    }

    /// <summary>Does whatever the Refit page offers first, until it offers nothing.</summary>
    private static async Task PutAllBack(IPage page)
    {
        for (var steps = 0; steps < 60; steps++)
        {
            var main = page.Locator("main");
            var oneTap = main.GetByRole(AriaRole.Button, new() { NameRegex = BackOrIn() });
            var uncounted = main.Locator("details", new() { HasText = "Say how many" });
            if (await uncounted.CountAsync() > 0)
            {
                await uncounted.First.Locator("summary").ClickAsync();
                await uncounted.First.GetByLabel("How many went in").FillAsync("2");
                await Tap(page, uncounted.First.GetByRole(AriaRole.Button, new() { Name = "They are in" }));
            }
            else if (await oneTap.CountAsync() > 0)
                await Tap(page, oneTap.First);
            else
                return;
        }

        Assert.Fail("sixty steps and not all back");
    }

    /// <summary>A tap that records: waits until the page has come back with its echo.</summary>
    private static async Task Tap(IPage page, ILocator button)
    {
        var before = page.Url;
        await button.ClickAsync();
        await page.WaitForURLAsync(url => url != before && url.Contains("told=", StringComparison.Ordinal), new() { WaitUntil = WaitUntilState.DOMContentLoaded });
    }

    [GeneratedRegex("^Took (it|all)")]
    private static partial Regex TookOff();

    [GeneratedRegex("^Strike out")]
    private static partial Regex StrikeOut();

    [GeneratedRegex("^(Back on|All \\d+ in|It is in|It is back|Joined|New ones? at hand|Taken back)")]
    private static partial Regex BackOrIn();

    private static async Task Go(IPage page, string verb) =>
        await page.GetByRole(AriaRole.Navigation, new() { Name = "The job" }).GetByRole(AriaRole.Link, new() { Name = verb }).ClickAsync();

    private static async Task StartBook(IPage page, string title)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = "Start a book" }).ClickAsync();
        await page.LookAt("02-start");
        await page.GetByLabel("What do you call it?").FillAsync(title);
        await page.GetByLabel("in line").CheckAsync();
        await page.GetByLabel("How many cylinders?").FillAsync("4");
        await page.GetByRole(AriaRole.Button, new() { Name = "Start the book" }).ClickAsync();
        await page.WaitForURLAsync("**/strip");
    }

    private static async Task Do(IPage page, string operation)
    {
        var button = page.GetByRole(AriaRole.Button, new() { Name = $"Done {operation}" });
        if (!await button.IsVisibleAsync())
            await page.GetByText("more, for later").ClickAsync();
        await Tap(page, button);
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync($"Done: {operation}");
    }

    private static async Task TakeOff(IPage page, string part)
    {
        await Tap(page, page.GetByRole(AriaRole.Button, new() { Name = $"Took it off {part}", Exact = true }));
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
        await Tap(page, form.GetByRole(AriaRole.Button, new() { Name = "Record the fasteners" }));
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync($"{count} {size}");
    }

    private static async Task Visit(IPage page, string shelf) =>
        await page.GetByRole(AriaRole.Navigation, new() { Name = "Look up" }).GetByRole(AriaRole.Link, new() { Name = shelf, Exact = true }).ClickAsync();
}
