using Microsoft.Playwright;
using static Gudgeon.FrontDoor.Tests.BrowserFixture;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>The demo opened by its button, and in it what becomes of a part: laid somewhere, sent away, come back, scrapped, renewed; and work written up afterwards.</summary>
public sealed class PartFateTests(BrowserFixture browser, Workshop workshop) : IClassFixture<Workshop>
{
    [Fact]
    public async Task Demo_opens_by_its_button_and_a_part_goes_away_comes_back_is_scrapped_and_renewed()
    {
        var page = await browser.Open(workshop.Address, Phone);
        await page.GotoAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Open the demo book" }).ClickAsync();
        await page.WaitForURLAsync("**/books/**");
        var book = new Uri(page.Url).AbsolutePath.Split('/')[2];
        await page.LookAt("demo-opened");

        await page.GotoAsync($"/books/{book}/part/water-pump.1");
        await page.LookAt("fate-off");
        await page.GetByText("Send it away").ClickAsync();
        await page.GetByLabel("Where to").FillAsync("the machine shop");
        await page.GetByLabel("What for").FillAsync("new bearing");
        await Told(page, "It went away", "machine shop");
        await page.LookAt("fate-away");

        await page.GetByRole(AriaRole.Textbox, new() { Name = "Where it lies now" }).FillAsync("shelf 3");
        await Told(page, "It came back", "shelf 3");
        await page.GetByText("It will not be used again").ClickAsync();
        await page.GetByLabel("Why", new() { Exact = true }).FillAsync("cracked");
        await Told(page, "Scrap it", "cracked");
        await page.LookAt("fate-scrapped");
        await Told(page, "New one at hand", "New water pump at hand");
        await page.LookAt("fate-renewed");
    }

    [Fact]
    public async Task Work_of_yesterday_is_written_up_at_its_own_time_until_back_to_now()
    {
        var book = await workshop.StartBook("Written up later");
        var page = await browser.Open(workshop.Address, Phone);
        await page.GotoAsync($"{book}/strip");
        await page.GetByRole(AriaRole.Link, new() { Name = "Done earlier?" }).ClickAsync();
        await page.LookAt("when");
        await page.GetByLabel("Day").FillAsync("2026-01-09");
        await page.GetByLabel("Time").FillAsync("21:10");
        await page.GetByRole(AriaRole.Button, new() { Name = "Write up that time" }).ClickAsync();
        await Assertions.Expect(page.Locator(".writing-up")).ToContainTextAsync("Friday 9 January, 21:10");
        await page.LookAt("writing-up");
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Say what you did" }).FillAsync("heat shield off, two M8 by 20, bag 7");
        await Told(page, "Record", "Heat shield off");
        await page.LookAt("writing-up-told");
        await page.GetByRole(AriaRole.Button, new() { Name = "Back to now" }).ClickAsync();
        await Assertions.Expect(page.Locator(".writing-up")).ToHaveCountAsync(0);

        // It is a night and more ago: the page says where the work was left.
        await Assertions.Expect(page.Locator(".left")).ToContainTextAsync("You stopped on");
        await page.GotoAsync($"{book}/journal");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Friday 9 January 2026");
    }

    private static async Task Told(IPage page, string button, string words)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).First.ClickAsync();
        await Assertions.Expect(page.Locator(".echo").First).ToContainTextAsync(words);
    }
}
