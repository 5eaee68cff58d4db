using Gudgeon.Journal;
using Microsoft.Playwright;
using static Gudgeon.FrontDoor.Tests.BrowserFixture;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>Measuring as a person does it with a phone in one hand. The engine, its readings and its limits are invented.</summary>
public sealed class MeasureTests(BrowserFixture browser, Workshop workshop) : IClassFixture<Workshop>
{
    // Invented readings; taper 0.013 and out-of-round 0.012 worked by hand as differences (common practice, no standard defines them).
    private static readonly string[] bore = ["86.012", "86,004", "+25", "86.013", "86.018", "86.014"];

    [Fact]
    public async Task Whole_bore_sheet_is_typed_by_keypad()
    {
        var page = await Open("bore by keypad", Phone);
        await page.GotoAsync(page.Url.Replace("/strip", "/instruments", StringComparison.Ordinal));
        await page.LookAt("measure-01-instruments-empty");
        await page.GetByLabel("Sort").SelectOptionAsync("bg2");
        await page.GetByLabel("What you call it").FillAsync("bore gauge");
        await page.GetByLabel("U of one reading").FillAsync("0.006");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add it" }).ClickAsync();
        await page.LookAt("measure-02-instruments");

        await Limit(page, "bore", "85.99", "86.02");
        await Limit(page, "bore-taper", null, "0.05");
        await page.LookAt("measure-03-limits");

        await page.GetByRole(AriaRole.Link, new() { Name = "Measure", Exact = true }).ClickAsync();
        await page.LookAt("measure-04-list");
        await page.GetByRole(AriaRole.Link, new() { Name = "Cylinder block" }).ClickAsync();
        await page.LookAt("measure-05-sheet-empty");
        await page.GetByText("Not read yet").First.ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Bore diameter of bore 1" }).ClickAsync();
        await page.GetByText("Set the gauge").ClickAsync();
        await page.GetByLabel("Set to, mm").FillAsync("86.000");
        await page.GetByLabel("On", new() { Exact = true }).FillAsync("setting ring");
        await page.GetByRole(AriaRole.Button, new() { Name = "It is set" }).ClickAsync();
        await page.LookAt("measure-06-keypad");

        foreach (var reading in bore)
        {
            foreach (var key in reading)
                await page.Locator(".keys button", new() { HasTextString = key.ToString() }).First.ClickAsync();
            await page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }).ClickAsync();
            await Assertions.Expect(page.Locator("#aloud")).ToContainTextAsync("Bore 1, bore diameter");
            await Assertions.Expect(page.Locator("#reading")).ToHaveValueAsync("");
            if (reading == bore[2])
            {
                await Assertions.Expect(page.Locator("#aloud")).ToContainTextAsync("86.025");
                await page.LookAt("measure-07-instant-verdict");
            }
        }

        await page.GetByRole(AriaRole.Link, new() { Name = "The whole sheet" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Measure", Exact = true }).ClickAsync();
        await page.LookAt("measure-08-list-begun");
        await page.GetByRole(AriaRole.Link, new() { Name = "Cylinder block" }).ClickAsync();
        await Assertions.Expect(page.Locator("#bore-taper-1")).ToContainTextAsync("0.013");
        await Assertions.Expect(page.Locator("#bore-taper-1")).ToContainTextAsync("within limits");
        await Assertions.Expect(page.Locator("#bore-roundness-1")).ToContainTextAsync("0.012");
        await Assertions.Expect(page.Locator("#bore-1")).ToContainTextAsync("too close to call");
        await page.LookAt("measure-09-sheet");
        await page.Locator("#bore-taper-1 summary", new() { HasTextString = "Working" }).ClickAsync();
        await page.Locator("#bore-taper-1 summary", new() { HasTextString = "Uncertainty budget" }).ClickAsync();
        await page.LookAt("measure-10-working");
    }

    [Fact]
    public async Task Reading_works_without_script_and_keeps_what_was_refused()
    {
        var page = await Open("no script", Phone, script: false);
        await page.GotoAsync(page.Url.Replace("/strip", "/measure/crank.1/crank-end-float/1", StringComparison.Ordinal));
        await page.GetByLabel("Crank end float, mm").FillAsync("three tenths");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".refusal")).ToContainTextAsync("Type it with its unit");
        await Assertions.Expect(page.Locator("#reading")).ToHaveValueAsync("three tenths");
        await page.Locator("#reading").FillAsync("0.15");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator("#aloud")).ToContainTextAsync("Crankshaft, crank end float: 0.15");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("likely good");
        await page.ScreenshotAsync(new() { Path = Path.Combine(Screens, "measure-12-thumb-390.png"), FullPage = true });
    }

    [Fact]
    public async Task Refused_reading_stays_in_its_box()
    {
        var page = await Open("refused", Phone);
        await page.GotoAsync(page.Url.Replace("/strip", "/measure/crank.1/crank-end-float/1", StringComparison.Ordinal));
        await page.Locator("#reading").FillAsync("three tenths");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".refusal")).ToContainTextAsync("Type it with its unit");
        await page.LookAt("measure-11-refused");
    }

    [Fact]
    public async Task Slip_is_asked_at_once_and_a_column_is_pasted()
    {
        var page = await Open("slip", Desk);
        await page.GotoAsync(page.Url.Replace("/strip", "/measure/block.1/bore/2", StringComparison.Ordinal));
        await page.GetByText("Paste a column").ClickAsync();
        await page.GetByLabel("One reading a line").FillAsync("86.010\n86.012\n86.011\n86.512");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record the column" }).ClickAsync();
        await Assertions.Expect(page.Locator(".ask")).ToContainTextAsync("a turn of the thimble?");
        await page.LookAt("measure-13-doubt");
        await page.GetByRole(AriaRole.Button, new() { Name = "Set it aside" }).ClickAsync();
        await Assertions.Expect(page.Locator(".ask")).ToHaveCountAsync(0);
        await page.LookAt("measure-14-set-aside");
    }

    private async Task<IPage> Open(string title, ViewportSize size, bool script = true)
    {
        using var shelf = new Bookshelf(workshop.BooksFolder);
        var started = shelf.Start(title, new Dictionary<string, string> { ["layout"] = "inline", ["n"] = "4" }, new Sending(title, DateTimeOffset.UnixEpoch, DateTimeOffset.UnixEpoch, "test"));
        var page = await browser.Open(workshop.Address, size, script: script);
        await page.GotoAsync($"/books/{started.Value.Name}/strip");
        return page;
    }

    private static async Task Limit(IPage page, string of, string? low, string? high)
    {
        await page.GotoAsync($"{page.Url.Split("/instruments")[0].Split("/limits")[0]}/limits?of={of}");
        if (low is not null)
            await page.GetByLabel("At least").FillAsync(low);
        if (high is not null)
            await page.GetByLabel("At most").FillAsync(high);
        await page.GetByLabel("Book or sheet").FillAsync("invented book");
        await page.GetByLabel("Page", new() { Exact = true }).FillAsync("12");
        await page.GetByRole(AriaRole.Button, new() { Name = "Set the limit" }).ClickAsync();
    }
}
